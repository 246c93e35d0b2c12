"""Setts: fewer crossings, more ends; threads that touch cannot come closer; the plainest threading that is near enough comes first."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.problem import BadInputs, OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.weave.cover import closest_picks, cloth_cover
from fibercalc.weave.ends import ends_by_color, ends_for_width, ends_that_fit
from fibercalc.weave.heddle import dents_per_10_cm, dents_per_inch, heddle_list
from fibercalc.weave.setting import (
    brierley_maximum,
    interlacings,
    maximum_sett,
    sett_in_another_weave,
)
from fibercalc.weave.settings import METRIC, REED, RIGID, nearest, threadings

SETT = find_card("sett")
RELAXED = "a relaxed hand wrap"


def sett(**given_):
    return work_card(SETT, given_).outcome


@given(st.floats(1.0, 300.0), st.integers(2, 20), st.integers(2, 20))
def test_no_sett_is_closer_than_the_threads_touching_or_than_plain_weave_is_open(
    diameters, ends, crossings
):
    if crossings > ends:
        return
    found = maximum_sett(diameters, ends, crossings)
    assert diameters / 2 - 1e-9 <= found < diameters


@given(st.floats(1.0, 100.0))
def test_to_another_weave_and_back(one):
    twill = sett_in_another_weave(one, 2, 2, 4, 2)
    assert sett_in_another_weave(twill, 4, 2, 2, 2) == pytest.approx(one)


def test_the_two_rules_agree_for_cotton_within_a_tenth():
    """Ashenhurst (K 0.92) and Brierley (K 200) were found apart from each other: plain weave and twills of cotton lie near."""
    for row in interlacings().rows:
        if row["key"].startswith(("plain", "twill")):
            by_count = maximum_sett(0.92 * 840**0.5, row["ends"], row["crossings"])
            assert brierley_maximum(
                1.0, row["ends"] / row["crossings"], row["exponent"]
            ) == pytest.approx(by_count, rel=0.10)


def test_longest_floats_of_regular_weaves_are_those_of_their_repeats():
    """Drawn by hand, a filled cell where the warp lies on top: the longest run in any row or column, the repeat laid again."""
    drawn = {
        "plain": ("#.", ".#"),
        "twill-2-1": ("##.", ".##", "#.#"),
        "twill-2-2": ("##..", ".##.", "..##", "#..#"),
        "twill-3-1": ("###.", ".###", "#.##", "##.#"),
        "basket-2-2": ("##..", "##..", "..##", "..##"),
        "satin-5": ("#....", "..#..", "....#", ".#...", "...#."),
    }
    for key, rows in drawn.items():
        row = interlacings().row("key", key)
        lines = [*rows, *("".join(column) for column in zip(*rows))]
        runs = [
            max(len(run) for run in (line * 2).replace("#.", "# .").replace(".#", ". #").split())
            for line in lines
        ]
        changes = {
            sum(1 for here, after in zip(line, line[1:] + line[0]) if here != after)
            for line in lines
        }
        assert (max(runs), len(rows[0]), changes) == (
            row["longest_float"],
            row["ends"],
            {row["crossings"]},
        ), key


@given(st.floats(2.0, 27.0))
def test_jamming_goes_both_ways(ends):
    """If so many picks jam at so many ends, as many ends jam at as many picks, up to where threads touch."""
    diameter = 1 / 28
    picks = closest_picks(ends, diameter, diameter)
    assert picks <= 28 + 1e-9
    if ends > 14.5 and picks < 27.9:
        assert closest_picks(picks, diameter, diameter) == pytest.approx(ends, rel=1e-6)


@given(st.floats(0.0, 28.0), st.floats(0.0, 28.0))
def test_cover_is_at_least_each_alone_and_at_most_all(warp, weft):
    both = cloth_cover(warp, weft)
    assert max(warp, weft) - 1e-9 <= both <= min(28.0, warp + weft) + 1e-9


def test_overlapping_ends_are_refused():
    with pytest.raises(OutOfRange):
        closest_picks(30, 1 / 28, 1 / 28)


@given(st.floats(0.5, 200.0))
def test_metric_and_inch_lead_back(number):
    assert dents_per_10_cm(dents_per_inch(number)) == pytest.approx(number)


def test_metric_heddles_in_inches_as_they_are_printed():
    """20 = 5.08, 25 = 6.35, 30 = 7.62, 40 = 10.16, 45 = 11.43, 50 = 12.70, 60 = 15.24: number times 0.254, by hand."""
    exact = [
        round(dents_per_inch(row["number"]), 2)
        for row in heddle_list().rows
        if row["per"] == "10 cm"
    ]
    assert exact == [5.08, 6.35, 7.62, 10.16, 11.43, 12.70, 15.24]


def test_one_heddle_comes_before_two_and_even_dents_before_uneven():
    assert (
        nearest(threadings(RIGID, METRIC), 4.1)[0].words(RIGID) == "one end in each hole and slot"
    )
    assert len(nearest(threadings(REED, METRIC), 6.0)[0].order) == 1


def test_two_heddles_reach_what_one_cannot():
    found = nearest(threadings(RIGID, METRIC), 8.0)[0]
    assert (found.name, found.heddles, found.sett) == ("40/10", 2, pytest.approx(8.0))


@pytest.mark.parametrize("word", ["hand wrap", "relaxed", "wpi", "ruler"])
def test_a_hand_wrap_is_refused_by_name_with_the_reason(word):
    with pytest.raises(BadInputs, match=RELAXED):
        work_card(SETT, {"by": word})


@pytest.mark.parametrize(
    "wraps, refused",
    [("11 per in", True), ("18 per in", True), ("24 per in", False), ("26 per in", False)],
)
def test_a_loose_wrap_is_found_by_the_count_beside_it(wraps, refused):
    """843 yd/lb: a relaxed wrap counts about 11, a ruler wrap 18, a close one 24 to 26 (0.84 to 0.90 times its root, 29.0)."""
    given_ = {"by": "packed", "wraps": wraps}
    if refused:
        with pytest.raises(BadInputs, match=RELAXED):
            work_card(SETT, given_)
    else:
        assert sett(**given_).value("closest") == pytest.approx(float(wraps.split()[0]) / 2 / 2.54)


def test_without_a_count_the_wrap_is_taken_as_told_and_cover_is_not_known():
    found = sett(by="packed", wraps="11 per in", known_count="")
    assert found.value("closest") == pytest.approx(5.5 / 2.54) and not found.has("cover")


def test_nothing_near_is_said():
    worked = work_card(SETT, {"count": "30 tex", "made": "own", "own.1.dents": "5 per in"})
    assert "Nothing at hand comes near" in worked.sentences()[0]


def test_own_heddles_are_chosen_from():
    assert sett(made="own", **{"own.1.dents": "30 per 10 cm", "own.2.dents": "40 per 10 cm"}).value(
        "sett"
    ) == pytest.approx(4.0)


@given(st.floats(1.0, 200.0), st.floats(0.5, 30.0), st.integers(1, 40))
def test_ends_fill_the_width_and_never_more_than_a_multiple_over(width, per_cm, multiple):
    ends = ends_for_width(width, per_cm, multiple)
    assert (
        ends % multiple == 0
        and ends >= width * per_cm * (1 - 1e-9)
        and ends < width * per_cm + multiple
    )
    held = ends_that_fit(width, per_cm, multiple)
    assert held % multiple == 0 and width * per_cm - multiple < held <= width * per_cm * (1 + 1e-9)


@given(
    st.lists(st.tuples(st.sampled_from("abcd"), st.integers(1, 30)), min_size=1, max_size=8),
    st.integers(0, 500),
)
def test_colors_add_up_to_the_ends_as_a_walk_counts_them(order, ends):
    walk = [color for color, stripe in order for _ in range(stripe)]
    counted = {}
    for place in range(ends):
        counted[walk[place % len(walk)]] = counted.get(walk[place % len(walk)], 0) + 1
    assert ends_by_color(order, ends) == counted
