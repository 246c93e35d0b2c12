"""What stands on the bottle."""

from __future__ import annotations

from ....core.answer import Table
from ....core.day import write_date
from ....core.outcome import Outcome
from ....core.paper import Paper
from .asked import EXTEND, StockSolution


def label(out: Outcome[StockSolution]) -> Table:
    """What the bottle's label says."""
    strength = f"{out.case.wanted:g} g in 100 mL"
    # From a jar of another strength the bottle holds another weight than it works as: both stand
    # on it, each with its jar.
    jars = (
        [
            ("Works as", f"{strength}, of a jar of strength {out.case.old_jar:g}"),
            (
                "Holds",
                (
                    f"{out.text(StockSolution.holds)},"
                    f" {'topped up from a' if out.case.do == EXTEND else 'of this'} jar of"
                    f" strength {out.case.new_jar:g}"
                ),
            ),
        ]
        if out.has(StockSolution.holds)
        else [("Strength", strength)]
    )
    lines = [
        ("Name", out.case.name),
        *jars,
        ("Made", write_date(out.case.made)),
        ("Lot of the jar", out.case.lot or "–"),
        ("Hazards", out.case.hazards or "see the maker’s safety data sheet"),
        ("Use", "dye only; not for food or drink"),
    ]
    return Table("Bottle label", ("Line", "Text"), tuple(lines))


PAPERS = (Paper("Bottle label, A6", "A6", lambda out: (label(out),)),)
