"""Pooling: the walk takes the colors in proportion, stacks where the shift is nothing, and is the same every time."""

import time
from itertools import groupby

import pytest
from hypothesis import assume, given
from hypothesis import strategies as some

from fibercalc.core.problem import OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.knit import pooling

SKEIN = [0.40, 0.30, 0.50, 0.30]  # one turn of 1.5 m
LOOP = 0.0125  # 120 stitches a turn: 32, 24, 40 and 24
FLAT = some.booleans()


def in_knitting_order(rows, flat):
    """Colors as the yarn ran: from the right in the round and on right-side rows, from the left on the way back."""
    return [
        color
        for number, row in enumerate(rows)
        for color in (row if flat and number % 2 else row[::-1])
    ]


@given(stitches=some.integers(1, 150), rows=some.integers(1, 30), flat=FLAT)
def test_the_walk_is_the_skein_unwound(stitches, rows, flat):
    """With even tension stitch i has the color that lies at (i + 1/2) loops along the yarn."""
    edges = [32, 56, 96, 120]
    expected = [
        next(color for color, edge in enumerate(edges) if (i + 0.5) % 120 < edge)
        for i in range(stitches * rows)
    ]
    assert in_knitting_order(pooling.fabric(SKEIN, LOOP, stitches, rows, flat), flat) == expected


@given(stitches=some.integers(20, 120), wobble=some.floats(0.0, 5.0), flat=FLAT)
def test_each_color_has_its_share(stitches, wobble, flat):
    """Over whole turns of the skein, to a few stitches of a turn."""
    colors = in_knitting_order(pooling.fabric(SKEIN, LOOP, stitches, 60, flat, wobble), flat)
    for color, length in enumerate(SKEIN):
        assert colors.count(color) == pytest.approx(
            len(colors) * length / 1.5, abs=0.06 * len(colors) + 45
        )


def test_a_round_of_one_repeat_stacks_and_half_a_repeat_flat_stacks_every_second_row():
    """The shift is nothing, so rows are alike."""
    around = pooling.fabric(SKEIN, LOOP, 120, 20)
    assert all(row == around[0] for row in around)
    flat = pooling.fabric(SKEIN, LOOP, 60, 20, flat=True)
    assert all(row == flat[number % 2] for number, row in enumerate(flat)) and flat[0] != flat[1]


@given(stitches=some.integers(100, 140))
def test_the_colors_move_by_the_shift(stitches):
    """The next round is the one before, that many stitches further along the yarn."""
    moved = round(pooling.shift(stitches, 120))
    one, two = (row[::-1] for row in pooling.fabric(SKEIN, LOOP, stitches, 2))
    inside = [(place, place + moved) for place in range(stitches) if 0 <= place + moved < stitches]
    assert all(two[place] == one[other] for place, other in inside)


@given(stitches=some.integers(1, 2000), repeat=some.floats(5.0, 2000.0), flat=FLAT)
def test_the_shift_is_to_the_nearest_repeat(stitches, repeat, flat):
    """Within half a repeat, and a whole number of repeats from what was knit."""
    moved = pooling.shift(stitches, repeat, flat)
    assert abs(moved) <= repeat / 2 * (1 + 1e-9)
    turns = ((2 if flat else 1) * stitches - moved) / repeat
    assert turns == pytest.approx(round(turns), abs=1e-6)


@given(
    repeat=some.floats(10.0, 300.0),
    low=some.integers(1, 400),
    more=some.integers(0, 400),
    flat=FLAT,
)
def test_stacking_counts_have_no_shift_and_none_is_missed(repeat, low, more, flat):
    """One in every repeat (flat: half repeat)."""
    found = pooling.stacking_counts(repeat, low, low + more, flat)
    assert all(abs(pooling.shift(count, repeat, flat)) < 1e-6 for count in found)
    assert abs(len(found) - more / (repeat / 2 if flat else repeat)) <= 1


def longest_column(rows, every):
    """The most rows, of every row (or every second), for which one color stands above itself in some column."""
    most = 0
    for column in zip(*rows[::every]):
        run = 1
        for below, above in zip(column, column[1:]):
            run = run + 1 if above == below else 1
            most = max(most, run * every)
    return most


@given(stitches=some.integers(40, 200), flat=FLAT)
def test_the_word_is_what_the_fabric_shows(stitches, flat):
    """Rows for which a color stays above itself, measured in the walked fabric against the arithmetic behind the word."""
    judged = pooling.judge(stitches, 120.0, 40.0, flat)
    assume(judged.kind != pooling.STRIPES)
    seen = longest_column(pooling.fabric(SKEIN, LOOP, stitches, 100, flat), 2 if flat else 1)
    every = 2 if flat else 1
    # A color of 40 stitches that moves on by whole stitches stays in a column for 40 / shift rounds, rounded either way.
    assert seen >= min(every * (judged.stacked / every // 1), 98)
    if judged.stacked < 40:
        assert seen <= every * (judged.stacked / every // 1 + 1)


def test_the_words_in_the_round_around_one_repeat():
    """120 stitches stack, 121 stay for 40 rounds, 127 lean, 150 jump by 30 of a color of 40, a block; a row of 40 is all stripe."""
    kinds = {count: pooling.judge(count, 120.0, 40.0).kind for count in (40, 120, 121, 127, 150)}
    assert kinds == {40: "stripes", 120: "pools", 121: "pools", 127: "spirals", 150: "blocks"}
    assert (
        pooling.judge(480, 120.0, 12.0).kind == "flashes"
        and pooling.judge(150, 120.0, 12.0).kind == "flecks"
    )


@given(
    stitches=some.integers(4, 2000),
    loop=some.floats(0.004, 0.03),
    first=some.floats(0.1, 3.0),
    flat=FLAT,
)
def test_broad_and_narrow_are_what_the_picture_shows(stitches, loop, first, flat):
    """Dashes measured in the drawn rows: the longest is an eighth of their width, or more, where the word speaks of breadth."""
    lengths = [first, 0.2, first / 2]
    repeat, patch = sum(lengths) / loop, first / loop
    judged = pooling.judge(stitches, repeat, max(patch, 0.2 / loop), flat)
    shown = min(stitches, 120)
    drawn = pooling.fabric(lengths, loop, stitches, 40, flat, columns=shown)
    longest = max(len(list(run)) for row in drawn for _, run in groupby(row))
    if judged.kind in (pooling.POOLS, pooling.BLOCKS):
        # A window on a wide fabric may cut a dash off at its edge, and does not see one that stacks outside it.
        assert (
            longest >= min(shown / 8, max(patch, 0.2 / loop)) - 1
            or stitches > 120
            and judged.kind == pooling.POOLS
        )
    if judged.kind in (pooling.FLASHES, pooling.FLECKS):
        assert longest <= shown / 8 + 1


def test_the_card_says_blocks_over_a_picture_of_blocks():
    """By hand: 60 stitches of a skein that comes round every 108 and whose longest color makes 43: 43 of 60 are no fleck."""
    worked = work_card(find_card("pool-picture"), {"count": "60"})
    assert worked.outcome.value("kind") == "blocks" and worked.sentences()[0].startswith(
        "On 60 stitches in the round it will likely make blocks: broad blocks"
    )
    assert next(row[2] for row in worked.tables()[0].rows if row[0] == "60") == "blocks"


def test_a_skein_of_one_color_fills_every_row():
    rows = {"colors.1.name": "Slate", "colors.1.color": "#3d4a5c", "colors.1.length": "60 cm"}
    assert work_card(find_card("pool-picture"), rows).outcome.value("kind") == "stripes"


def test_tension_that_wanders_breaks_the_words_as_it_breaks_the_picture():
    """By hand: 121 stitches at 30 % drift 121 x 0.3 / sqrt(3) = 21 in one round, so a color of 40 is off after (40 / 21)^2 = 3.6 rounds."""
    judged = pooling.judge(121, 120.0, 40.0, wobble=30.0)
    assert judged.stacked == pytest.approx(3.6, abs=0.1) and judged.kind == "spirals"
    assert pooling.judge(121, 120.0, 40.0).stacked == pytest.approx(40)


def test_counts_near_the_wanted_one_keep_the_stitch_pattern():
    """A pattern over 8: two eights either way."""
    assert [near.stitches for near in pooling.judge_near(124, 20, 120.0, 40.0, step=8)] == [
        108,
        116,
        124,
        132,
        140,
    ]


def test_the_wobble_is_a_fixed_one_and_moves_the_edges():
    """Twice the same, and not the same as even tension."""
    wobbled = pooling.fabric(SKEIN, LOOP, 120, 20, wobble=3.0)
    assert wobbled == pooling.fabric(SKEIN, LOOP, 120, 20, wobble=3.0)
    assert wobbled != pooling.fabric(SKEIN, LOOP, 120, 20)


def test_drift_is_what_the_walk_does_on_average():
    """Root mean square over the ends of many walks of the fixed sequence: its rows are evenly spread and independent."""
    noise = pooling._noise()
    walks = [sum(next(noise) for _ in range(12)) for _ in range(2000)]
    measured = (sum(walk * walk for walk in walks) / len(walks)) ** 0.5
    assert pooling.drift(100, 3.0, 12) == pytest.approx(3 * measured, rel=0.05)


@given(
    columns=some.integers(1, 120),
    rows=some.integers(1, 30),
    flat=FLAT,
    wobble=some.floats(0.0, 5.0),
)
def test_a_window_is_the_right_edge_of_the_whole(columns, rows, flat, wobble):
    whole = pooling.fabric(SKEIN, LOOP, 120, rows, flat, wobble)
    assert pooling.fabric(SKEIN, LOOP, 120, rows, flat, wobble, columns) == [
        row[-columns:] for row in whole
    ]


def test_two_skeins_alternate_and_each_goes_on_where_it_stopped():
    """Bands of two rounds; skein two begins half a turn on."""
    mixed = pooling.fabric(SKEIN, LOOP, 50, 8, starts=(0.0, 0.75), change_every=2)
    alone = [pooling.fabric(SKEIN, LOOP, 50, 4, starts=(start,)) for start in (0.0, 0.75)]
    assert mixed == [*alone[0][:2], *alone[1][:2], *alone[0][2:], *alone[1][2:]]


def test_alternating_skeins_break_up_a_pool():
    """One repeat to the round stacks every column for ever; from two skeins half a turn apart, fewer than half of them."""
    two = pooling.fabric(SKEIN, LOOP, 120, 40, starts=(0.0, 0.75))
    stacked = [all(row[column] == two[0][column] for row in two) for column in range(120)]
    assert sum(stacked) < 60


@given(bands=some.lists(some.integers(0, 40), min_size=1, max_size=5))
def test_bands_are_all_used_and_evenly_spread(bands):
    """At every place each skein is within about one band of its share."""
    order = pooling.alternating_order(bands)
    assert [order.count(skein) for skein in range(len(bands))] == bands
    for place in range(1, len(order) + 1):
        for skein, count in enumerate(bands):
            assert abs(order[:place].count(skein) - count * place / len(order)) < len(bands)


@given(bands=some.lists(some.integers(1, 400), min_size=1, max_size=4))
def test_a_short_order_is_never_knitted_further_than_any_skein_lasts(bands):
    order, times = pooling.order_in_turn(bands)
    used = [times * order.count(skein) for skein in range(len(bands))]
    assert all(1 <= each <= count for each, count in zip(used, bands))
    assert any(count < (times + 1) * order.count(skein) for skein, count in enumerate(bands)), (
        "once more through is too far for one of them"
    )
    assert sum(used) >= 0.95 * len(bands) * min(bands), (
        "never worse than plain turns, but for the 5 % that a shorter order may cost"
    )


def test_a_skein_of_half_the_weight_comes_half_as_often():
    """170 and 85 bands: 1, 2, 1 or the like, 85 times, and nothing is over."""
    order, times = pooling.order_in_turn([170, 85])
    assert (sorted(order), times) == ([0, 0, 1], 85)
    assert pooling.order_in_turn([170, 168]) == ([0, 1], 168)


def test_cloth_follows_the_order():
    mixed = pooling.fabric(SKEIN, LOOP, 50, 6, starts=(0.0, 0.75), change_every=2, order=(0, 1, 0))
    alone = [pooling.fabric(SKEIN, LOOP, 50, 4, starts=(start,)) for start in (0.0, 0.75)]
    assert mixed == [*alone[0][:2], *alone[1][:2], *alone[0][2:]]


def test_equal_skeins_take_turns():
    assert pooling.alternating_order([3, 3]) == [0, 1, 0, 1, 0, 1]


def test_no_color_and_too_large_a_fabric_are_refused():
    with pytest.raises(OutOfRange):
        pooling.turn_length([])
    with pytest.raises(OutOfRange):
        pooling.fabric(SKEIN, LOOP, 2000, 100)


def test_sixty_by_sixty_is_quick():
    """Best of five, so that a busy machine does not decide: 10 ms."""
    times = []
    for _ in range(5):
        began = time.perf_counter()
        pooling.fabric(SKEIN, LOOP, 60, 60, wobble=2.0)
        times.append(time.perf_counter() - began)
    assert min(times) < 0.010


def test_notes_name_the_nearest_stacks_and_no_drift_where_there_is_none():
    """By hand: a turn of 108 stacks at 18 and 19 turns, 1,944 and 2,052: the nearest below 2,000 is named."""
    notes = work_card(find_card("pool-picture"), {"count": "2000", "wobble": "0 %"}).notes()
    assert any("1944" in note for note in notes) and not any("tension" in note for note in notes)
