"""Yarn left: rows add up, what is turned around comes back, and the last row is really the last."""

from math import sqrt

import pytest
from hypothesis import assume, given
from hypothesis import strategies as some

from fibercalc.core.problem import OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.knit import left

rows = some.integers(1, 400)
firsts = some.integers(1, 300)
grows = some.floats(0.0, 8.0)
ends = some.floats(0.0, 20.0)


@given(row=rows, first=firsts, grow=grows)
def test_stitches_through_a_row_are_the_rows_counted_one_by_one(row, first, grow):
    """The short sum against the long one."""
    one_by_one = sum(left.stitches_in_row(k, first, grow) for k in range(1, row + 1))
    assert left.stitches_through(row, first, grow) == pytest.approx(one_by_one)


@given(count=rows, first=firsts, grow=grows, end=ends)
def test_fractions_of_a_shawl_add_to_one(count, first, grow, end):
    """Each row's share, and the end's."""
    whole = left.stitches_to_come(0, count, first, grow, end)
    shares = [
        left.share_used(k, count, first, grow, end)
        - left.share_used(k - 1, count, first, grow, end)
        for k in range(1, count + 1)
    ]
    assert sum(shares) + end * left.stitches_in_row(count, first, grow) / whole == pytest.approx(
        1.0
    )


@given(row=some.floats(1.0, 400.0), first=firsts, grow=grows)
def test_rows_and_stitches_turn_around(row, first, grow):
    """Rows that fill what the rows hold; a row of a shawl that grows faster than it began is only whole rows."""
    if grow > first:
        row = float(int(row))
    assert left.rows_that_fill(
        left.stitches_through(row, first, grow), first, grow
    ) == pytest.approx(row, rel=1e-6)


@given(count=some.integers(2, 500), grow=some.floats(0.1, 8.0))
def test_half_of_a_triangle_from_the_top_is_used_at_rows_over_root_two(count, grow):
    """Exact when the first row is half of what a row grows by; that is how stitches in row k are g (k - 1/2)."""
    assert left.row_at_share(0.5, count, grow / 2, grow) == pytest.approx(count / sqrt(2))


@given(count=some.integers(20, 500), first=some.integers(1, 6), grow=some.floats(0.5, 8.0))
def test_a_real_triangle_is_near_that(count, first, grow):
    """A few stitches to begin with move the half row by less than a few rows."""
    assert (
        abs(left.row_at_share(0.5, count, first, grow) - count / sqrt(2)) < 0.5 * first / grow + 0.5
    )


@given(count=rows, first=firsts)
def test_at_constant_width_half_the_rows_are_half_the_yarn(count, first):
    """A scarf."""
    assert left.row_at_share(0.5, count, first) == pytest.approx(count / 2)


@given(spare=some.floats(0.0, 1e5), row=rows, first=firsts, grow=grows, end=ends)
def test_the_end_can_start_after_the_last_row_and_not_one_later(spare, row, first, grow, end):
    """Tried from below and from above."""
    last = left.last_row(spare, row, first, grow, end)
    assume(last < left.MOST_ROWS)

    def needed(after):
        return (
            left.stitches_through(after, first, grow)
            - left.stitches_through(row, first, grow)
            + end * left.stitches_in_row(max(after, 1), first, grow)
        )

    if last > row:
        assert needed(last) <= spare + 1e-3
    if last >= row:
        assert needed(last + 1) > spare - 1e-3
    else:
        assert needed(row) > spare - 1e-3


@given(
    spare=some.floats(0.0, 1e5),
    more=some.floats(0.0, 1e4),
    row=rows,
    first=firsts,
    grow=grows,
    end=ends,
)
def test_more_yarn_never_ends_sooner(spare, more, row, first, grow, end):
    """Monotone in what is left, and in how short the edging is."""
    assert left.last_row(spare + more, row, first, grow, end) >= left.last_row(
        spare, row, first, grow, end
    )
    assert left.last_row(spare, row, first, grow, end) >= left.last_row(
        spare, row, first, grow, end + 1
    )


@given(
    half_step=some.floats(0.01, 2.0),
    wanted=some.floats(1.0, 30.0),
    per_stitch=some.floats(0.001, 0.05),
    next_row=firsts,
    grow=grows,
)
def test_after_that_many_rows_the_scale_knows_enough(half_step, wanted, per_stitch, next_row, grow):
    """And after one fewer it does not."""
    count = left.rows_before_weighing(half_step, wanted, per_stitch, next_row, grow)
    assume(count <= left.MOST_ROWS)

    def error(done):
        return left.weighing_error(
            half_step,
            left.mass_of_stitches(left.stitches_through(done, next_row, grow), per_stitch),
        )

    assert error(count) <= wanted * (1 + 1e-6)
    if count > 1:
        assert error(count - 1) > wanted * (1 - 1e-6)


def test_weighing_error_holds_95_of_100_pairs_of_rounded_weights():
    """Two roundings, every pair of a fine grid: 95 % of differences lie within."""
    steps = [(k + 0.5) / 400 - 0.5 for k in range(400)]  # errors of a 1 g scale
    within = left.weighing_error(0.5, 100.0)
    assert sum(abs(a - b) <= within for a in steps for b in steps) / 400**2 == pytest.approx(
        0.95, abs=0.003
    )


@given(
    first=firsts,
    grow=grows,
    row=some.integers(1, 200),
    more=some.integers(1, 200),
    grams=some.floats(0.001, 0.05),
)
def test_two_weighings_and_start_and_now_agree(first, grow, row, more, grams):
    """Both ways find the grams in a stitch that the yarn has."""

    def ball(after):
        return 20_000 - grams * left.stitches_through(after, first, grow)

    from_start = left.mass_per_stitch(20_000, ball(row), left.stitches_through(row, first, grow))
    between = left.mass_per_stitch(
        ball(row),
        ball(row + more),
        left.stitches_through(row + more, first, grow) - left.stitches_through(row, first, grow),
    )
    assert from_start == pytest.approx(grams, rel=1e-4)
    assert between == pytest.approx(grams, rel=1e-4)


def test_a_ball_that_grew_is_refused():
    """More yarn after knitting than before is a slip of the pen."""
    with pytest.raises(OutOfRange) as found:
        left.mass_per_stitch(40, 41, 100)
    assert found.value.name == "mass_before"


@pytest.mark.parametrize("mass_now", ["20 g", "29 g", "30.5 g", "60 g"])
def test_a_piece_without_an_edging_is_bound_off(mass_now):
    """The example has no edging: neither its words nor its picture speak of one; with ten rows of it they do."""
    for edging in ("0", "10"):
        worked = work_card(find_card("enough-left"), {"mass_now": mass_now, "edging": edging})
        said = " ".join(worked.sentences()) + worked.pictures()[0].alt
        assert ("edging" in said) == (edging == "10") and ("ind" in said and "off" in said) == (
            edging == "0"
        ), said


def test_nobody_is_nearly_sure_of_a_row_that_is_past():
    """By hand: 100 rows of a straight piece took 99 g; 0.87 rows of binding off take 0.87 g. With 0.9 g left that is likely, with a scale of ± 0.5 g never sure."""
    worked = work_card(
        find_card("enough-left"),
        {"shape": "straight", "mass_now": "0.9 g", "mass_before": "99.9 g"},
    )
    assert worked.outcome.value("edge_at") == 100 and worked.outcome.low("edge_at") < 100
    assert "not even now" in worked.sentences()[1] and not any(
        "39 times" in note for note in worked.notes()
    )


def test_rows_that_do_not_grow_are_not_called_longer():
    assert not any(
        "longer" in note for note in work_card(find_card("enough-left"), {"grow": "0"}).notes()
    )
    assert any("longer" in note for note in work_card(find_card("enough-left"), {}).notes())


@pytest.mark.parametrize(("row", "used"), [(15, 7.0), (15, 3.0), (40, 5.5)])
def test_after_the_rows_it_names_the_card_asks_for_no_more(row, used):
    """What is used already counts too: that many rows later the two weighings say enough, one row sooner they do not."""
    card, stitches = find_card("enough-left"), left.stitches_through(row, 5, 3)

    def asked_for(done):
        left_now = 168 - used * left.stitches_through(done, 5, 3) / stitches
        texts = {"first": "5", "grow": "3", "rows": "86", "row": str(done)}
        texts |= {"mass_before": "168 g", "mass_now": f"{left_now:.6f} g"}
        out = work_card(card, texts).outcome
        return int(out.value("weigh_again")) if out.has("weigh_again") else 0

    count = asked_for(row)
    assert count >= 1 and asked_for(row + count) == 0
    assert asked_for(row + count - 1) >= 1
