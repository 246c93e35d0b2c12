"""The picture and the tables of a plan: light, whole, labels apart, and the same times in both."""

from dataclasses import replace
from xml.etree import ElementTree

import pytest

from fibercalc.core.picture.drawing import CHARACTER
from fibercalc.dye.pictures.timeline import room_timeline
from fibercalc.dye.schedule.plan import make_plan
from fibercalc.dye.schedule.room import Room
from fibercalc.dye.schedule.timetable import clock, hands_table, load_table, moment

from .test_pots import STEPS, STUDIO, as_recipes

NINE = 9 * 60
PLANS = {
    "the set": lambda: make_plan(as_recipes([6] * 12), STUDIO),
    "the kit": lambda: make_plan(as_recipes([36, 18, 18]), STUDIO),
    "one load": lambda: make_plan(as_recipes([1]), replace(STUDIO, drying=0)),
    "overnight": lambda: make_plan(as_recipes([4] * 8), Room((4,), 1, 1, 300)),
    "many pots": lambda: make_plan(
        as_recipes([5] * 24), Room((4, 4, 2, 2, 1, 6), 5, 3, 600, 48, 2400)
    ),
    "the most pots": lambda: make_plan(
        as_recipes([1] * 100), Room((1,) * 20, 20, 20, 600, 200, 2400)
    ),
    "many days": lambda: make_plan(as_recipes([4] * 110), replace(STUDIO, day=240)),
    "all day": lambda: make_plan(as_recipes([4] * 9), replace(STUDIO, day=1440)),
    "an hour": lambda: make_plan(
        as_recipes([4] * 3, (replace(STEPS[2], minutes=20.0),)), replace(STUDIO, day=60)
    ),
}
every_plan = pytest.mark.parametrize("name", PLANS)


@every_plan
def test_the_picture_is_light_and_its_labels_are_whole_and_apart(name):
    picture = room_timeline(PLANS[name](), NINE)
    elements = list(ElementTree.fromstring(picture.svg).iter())
    texts = [part for part in elements if part.tag.endswith("text")]
    assert len(elements) <= 300 and len(picture.svg) < 60_000 and len(picture.alt) > 60
    found = []
    for text in texts:
        size, words = float(text.get("font-size")), "".join(text.itertext())
        wide = len(words) * size * CHARACTER * (1.06 if text.get("font-weight") else 1.0)
        left = float(text.get("x")) - {"middle": wide / 2, "end": wide}.get(
            text.get("text-anchor"), 0.0
        )
        found.append(
            (
                left,
                left + wide,
                float(text.get("y")) - 0.75 * size,
                float(text.get("y")) + 0.2 * size,
                words,
            )
        )
        assert (
            size >= 12
            and left >= 0
            and left + wide <= 360.5
            and float(text.get("y")) <= picture.height
        ), words
    for place, one in enumerate(found):
        for other in found[place + 1 :]:
            assert (
                one[1] <= other[0] or other[1] <= one[0] or one[3] <= other[2] or other[3] <= one[2]
            ), (one[4], other[4])


def test_the_picture_says_the_days_and_the_bound():
    alt = room_timeline(PLANS["the set"](), NINE).alt
    assert all(f"Day {day}: loads {6 * day - 5} to {6 * day}" in alt for day in (1, 2, 3, 4))
    assert "no plan takes less than" in alt


def test_days_that_are_left_out_are_said():
    picture = room_timeline(PLANS["many days"](), NINE)
    assert "days more: see the table" in picture.svg


def test_the_loads_stand_in_the_table_with_their_times():
    """By hand: 9:00 + 30 wetting out; 10 filling; 88 on the burner; 50 cooling; 15 rinsing; 40 hours on the rail."""
    plan = make_plan(as_recipes([4]), STUDIO)
    table = load_table(plan, NINE)
    assert dict(zip(table.columns, table.rows[0])) == {
        "Load": "1",
        "Color": "shade 1",
        "Skeins": "4",
        "Pot": "1",
        "Day": "1",
        "In the pot": "9:30",
        "Burner on": "9:40",
        "Burner off": "11:08",
        "Out": "11:58",
        "Done": "12:13",
        "Dry": "day 3, 4:13",
    }
    assert [row[:2] for row in hands_table(plan, NINE, 1).rows] == [
        ("9:00", "wet out"),
        ("9:30", "fill, pot 1"),
        ("9:40", "heat, pot 1"),
        ("10:23", "hold, pot 1"),
        ("11:08", "cool, pot 1"),
        ("11:58", "rinse"),
    ]


def test_what_is_done_on_another_day_says_so():
    table = load_table(PLANS["overnight"](), NINE)
    assert "–" not in str(table.rows) and any("day 2" in cell for cell in table.rows[1])


def test_every_step_stands_in_one_day_of_the_sheet():
    plan = PLANS["the set"]()
    assert sum(
        len(hands_table(plan, NINE, day).rows) for day in range(1, plan.dye_days + 1)
    ) == 24 * len(STEPS)


def test_clock_times_pass_midnight():
    assert (
        clock(0, NINE) == (1, "9:00")
        and clock(15 * 60, NINE) == (2, "0:00")
        and moment(1440 + 5.4, NINE) == "day 2, 9:05"
    )
