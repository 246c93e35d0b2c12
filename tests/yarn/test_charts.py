"""Wall charts of the yarn chapter: what each must show."""

from fibercalc.core.answer import Table
from fibercalc.yarn import charts


def test_the_disagreements_are_shown():
    """Wool's four regains, super bulky's two gauges, woolen's two constants and the three ways to wrap all stand in the charts or tables."""
    text = str(
        [
            part
            for name in charts.__all__
            for part in getattr(charts, name)()
            if isinstance(part, Table)
        ]
    )
    for disagreement in (
        "13.6*",
        "18.25",
        "6-11* or 7-11†",
        "0.84, 0.90 and 0.92",
        "Relaxed hand wrap",
        "Close-packed wrap",
    ):
        assert disagreement in text, disagreement


def test_the_council_is_credited_by_its_own_line():
    """The credit line that its publisher asks for."""
    assert any(
        "Source: Craft Yarn Council's www.YarnStandards.com" in part.note
        for part in charts.weight_classes()
        if isinstance(part, Table)
    )
