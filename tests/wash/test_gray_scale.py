"""Gray scales: one color and itself are grade 5, more difference is never a better grade, and steps, formulas and limits agree."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.color import from_lab
from fibercalc.core.registry import find_card
from fibercalc.core.table import read_table
from fibercalc.core.work import work_card
from fibercalc.wash.gray_scale import (
    change_grade,
    color_difference,
    grade_words,
    half_grade,
    staining_difference,
    staining_grade,
)

STEPS = read_table("wash", "gray-scale-steps").rows
differences = st.floats(0.0, 150.0)


@given(differences, differences)
def test_more_difference_is_never_a_better_grade(one, other):
    less, more = sorted((one, other))
    assert change_grade(more) <= change_grade(less) + 1e-12
    # The two branches of the staining formula miss each other by 0.02 where they meet.
    assert staining_grade(more) <= staining_grade(less) + 0.02


def test_no_difference_is_the_best_grade_of_both():
    gray = from_lab(40, 0, 0)
    assert change_grade(color_difference(gray, gray)) == staining_grade(0.0) == 5.0


def test_limits_between_half_grades_lie_midway_between_the_printed_steps():
    """The recalled limits of A05 are the midpoints of the steps of A02, which were read: one recalled, one read."""
    limits = (0.40, 1.25, 2.10, 2.95, 4.10, 5.80, 8.20, 11.60)
    steps = [row["change"] for row in STEPS]
    assert [round((one + other) / 2, 2) for one, other in zip(steps, steps[1:])] == list(limits)
    for limit, row, after in zip(limits, STEPS, STEPS[1:]):
        near = max(
            0.06, 0.03 * limit
        )  # limits are printed to a tenth or two; half grades of the formula fall that near to them
        assert half_grade(change_grade(limit - near)) == row["grade"]
        assert half_grade(change_grade(limit + near)) == after["grade"]


def test_lightness_alone_is_not_lessened_and_hue_is():
    assert staining_difference(10, 10) == staining_difference(10, -10) == 10
    assert staining_difference(10, 0) == pytest.approx(6)


def test_grades_are_written_as_the_trade_writes_them():
    assert [grade_words(row["grade"]) for row in STEPS] == [
        "5",
        "4-5",
        "4",
        "3-4",
        "3",
        "2-3",
        "2",
        "1-2",
        "1",
    ]
    assert [grade_words(grade) for grade in (4.74, 4.75, 1.24)] == ["4-5", "5", "1"]


@pytest.mark.parametrize(
    "texts",
    [
        {"judged": "change"},
        {"judged": "staining"},
        {"by": "eye", "stain_seen": "5"},
        {"by": "eye", "judged": "change", "change_seen": "1"},
        {"white": "lab(93 0 0)", "stained": "lab(20 60 -60)"},
        {"white": "lab(93 0 0)", "stained": "lab(93 0 0)"},
    ],
)
def test_a_grade_and_its_range_stay_on_the_scale(texts):
    outcome = work_card(find_card("fastness"), texts).outcome
    assert 1 <= outcome.low("grade") <= outcome.value("grade") <= outcome.high("grade") <= 5


def test_the_eye_alone_is_a_grade_either_way():
    outcome = work_card(find_card("fastness"), {"by": "eye", "stain_seen": "3"}).outcome
    assert (outcome.value("grade"), outcome.low("grade"), outcome.high("grade")) == pytest.approx(
        (3, 2.05, 3.95)
    )


def test_no_card_of_the_chapter_promises_that_a_color_holds():
    """Neither in its example nor in any of its choices."""
    for card_id in ("fastness", "shedding", "care-label"):
        worked = work_card(find_card(card_id), {})
        said = " ".join(
            [
                *worked.sentences(),
                *worked.notes(),
                *(caution.title + caution.text for caution in worked.cautions()),
            ]
        ).lower()
        assert "colorfast" not in said.replace("never call it colorfast", "")
