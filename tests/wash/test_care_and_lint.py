"""What goes on a label is never more than its most delicate part and what was tried; fluff is told from dye by signs, not by hope."""

import pytest

from fibercalc.core.problem import BadInputs
from fibercalc.core.registry import find_card
from fibercalc.core.table import read_table
from fibercalc.core.work import work_card
from fibercalc.wash.care import TREATMENTS, care_words, strictest
from fibercalc.wash.lint import what_comes_off

CARE = find_card("care-label")
YARN = {"fibers.1.fiber": "cotton", "fibers.1.percent": "100 %"}
BOLD = {
    "dye": "undyed",
    "finish": "none",
    "proof": "normal60",
    "tumbled": "yes",
    "stains": "undyed",
}
FIBERS = [row["key"] for row in read_table("wash", "care-fibers").rows]


def label(**changed):
    return work_card(CARE, YARN | BOLD | changed).outcome


def test_undyed_cotton_that_was_boiled_and_tumbled_may_be():
    said = label()
    assert (
        said.value("wash") == "Machine wash at 60 °C"
        and said.value("bleach") == "Any bleach"
        and said.value("tumble") == "Tumble dry"
    )


@pytest.mark.parametrize(
    "changed, treatment, words",
    [
        ({"proof": "none"}, "wash", "Wash by hand, water up to 30 °C"),
        ({"tumbled": "no"}, "tumble", "Do not tumble dry"),
        ({"dye": "unknown"}, "wash", "Wash by hand, water up to 30 °C"),
        ({"dye": "reactive"}, "bleach", "Do not bleach"),
        ({"finish": "trim"}, "clean", "Do not dry clean"),
    ],
)
def test_what_is_not_known_or_not_tried_is_read_as_the_stricter(changed, treatment, words):
    assert label(**changed).value(treatment) == words


@pytest.mark.parametrize("other", FIBERS)
def test_a_fiber_more_never_loosens_a_label(other):
    """Each treatment of a blend is at most that of each of its fibers."""
    blend = {
        "fibers.1.fiber": "cotton",
        "fibers.1.percent": "50 %",
        "fibers.2.fiber": other,
        "fibers.2.percent": "50 %",
    }
    alone = [
        work_card(
            CARE, BOLD | {"fibers.1.fiber": one, "fibers.1.percent": "100 %"}
        ).outcome.case.gentlest
        for one in ("cotton", other)
    ]
    both = work_card(CARE, BOLD | blend).outcome.case.gentlest
    assert len(both) == len(TREATMENTS)
    assert all(level == min(levels[each] for levels in alone) for each, level in both.items())


def test_fibers_that_do_not_come_to_a_hundred_are_refused():
    with pytest.raises(BadInputs, match="100"):
        work_card(CARE, {"fibers.1.fiber": "wool", "fibers.1.percent": "60 %"})


def test_every_level_that_a_table_names_has_words():
    for name in ("care-fibers", "care-dyes", "care-finishes", "care-proofs"):
        table = read_table("wash", name)
        for row in table.rows:
            for treatment in TREATMENTS:
                if isinstance(row.get(treatment), float):
                    assert care_words({treatment: row[treatment]})


def test_the_gentlest_of_several():
    assert strictest([3.0, 0.0, 6.0]) == 0.0


SIGNS = {
    ("yes", "no", "no"): "lint",
    ("no", "yes", "not known"): "dye",
    ("yes", "no", "yes"): "both",
    ("no", "no", "no"): "neither",
    ("yes", "no", "not known"): "not known",
    ("not known", "yes", "yes"): "not known",
}


@pytest.mark.parametrize("signs, found", SIGNS.items())
def test_signs_lead_to_what_comes_off_and_open_ones_to_nothing(signs, found):
    assert what_comes_off(*signs) == found


def test_a_damp_room_hides_any_loss():
    """1.6 g of 96.4 g are 1.7 %; moisture alone may be 2.5 %."""
    worked = work_card(find_card("shedding"), {"rested": "no"})
    assert worked.outcome.low("lost") < 0 < worked.outcome.high("lost")
    assert "cannot tell" in " ".join(worked.sentences())
