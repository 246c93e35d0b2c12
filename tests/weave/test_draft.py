"""The draw-down engine against drawings by hand, against counting cell by cell, and against weaving its own pick list again."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.problem import OutOfRange
from fibercalc.weave.draft.floats import floats_of
from fibercalc.weave.draft.loom_words import shed_rows, sheds_in_turn, way_words
from fibercalc.weave.draft.order import (
    merged,
    read_order,
    repeats,
    stripes,
    there_and_back,
    threads_by_stripe,
)
from fibercalc.weave.draft.piece import (
    HEM,
    floats_of_piece,
    lifts_in_turn,
    pick_list,
    rows_of_piece,
    sections_of,
    weft_of,
)
from fibercalc.weave.draft.repeat import checked, columns_of, rows_of, width_of
from fibercalc.weave.draft.sheds import (
    DOWN,
    EDGE,
    FLAT,
    SHEDS,
    UP,
    Lift,
    lifts_of,
    raised,
    read_sheds,
    repeat_of_sheds,
)
from fibercalc.weave.draft.structures import ALL, structure

from .hand_drawn import COUNTED, DRAWN, repeat_of

ON_ONE_HEDDLE = ("plain", "weft-floats", "warp-floats", "offset-floats", "waffle", "lace")


@st.composite
def weaves(draw):
    """A weave in which every pick has warp and weft on top somewhere: anything a loom could hold."""
    width = draw(st.integers(2, 8))
    rows = draw(
        st.lists(
            st.text("01", min_size=width, max_size=width).filter(
                lambda row: "0" in row and "1" in row
            ),
            min_size=1,
            max_size=8,
        )
    )
    return tuple(rows)


@st.composite
def pick_ups(draw):
    """Sheds of one heddle and one stick: what the stick takes up, and a few picks."""
    setting = draw(
        st.text("01", min_size=2, max_size=6).filter(lambda text: "0" in text and "1" in text)
    )
    sheds = draw(st.lists(st.sampled_from(SHEDS), min_size=1, max_size=10))
    return tuple(Lift(shed, 1 if shed in (EDGE, FLAT) else 0) for shed in sheds), setting


def longest_by_walking(cells, sign):
    """The longest run of one value in a list, one step at a time."""
    best = here = 0
    for cell in cells:
        here = here + 1 if cell == sign else 0
        best = max(best, here)
    return best


def around_by_walking(rows, from_left):
    """The weft walked as one thread: the longest run that goes around an edge, and the turns whose two picks pass the edge on one side."""
    path = []
    for pick, row in enumerate(rows):
        right = (pick % 2 == 0) == from_left
        path += [
            (pick, row[end]) for end in (range(len(row)) if right else reversed(range(len(row))))
        ]
    longest = missed = begin = 0
    for place in range(1, len(path) + 1):
        if place < len(path) and path[place][0] != path[place - 1][0]:
            missed += path[place][1] == path[place - 1][1]
        if place == len(path) or path[place][1] != path[begin][1]:
            if path[place - 1][0] != path[begin][0]:
                longest = max(longest, place - begin)
            begin = place
    return longest, missed


@pytest.mark.parametrize("key", DRAWN)
def test_each_weave_is_as_drawn_by_hand(key):
    assert structure(key).repeat == repeat_of(DRAWN[key])


def test_every_weave_has_a_drawing_by_hand():
    assert {each.key for each in ALL} == set(DRAWN)


def test_plain_weave_by_its_definition():
    """An end lies over a pick where their numbers add up to an odd one."""
    for pick, row in enumerate(rows_of(structure("plain").repeat, 9, 7), 1):
        assert [sign == "1" for sign in row] == [(end + pick) % 2 == 1 for end in range(1, 10)]


@pytest.mark.parametrize("key", ["twill-2-1", "twill-2-2", "twill-3-1"])
def test_a_twill_moves_one_end_to_the_right_with_each_pick(key):
    repeat = structure(key).repeat
    for below, above in zip(repeat, repeat[1:] + repeat[:1]):
        assert above == below[-1] + below[:-1]


@pytest.mark.parametrize("key", COUNTED)
def test_floats_are_as_counted_by_eye(key):
    repeat = repeat_of(DRAWN[key])
    floats = floats_of(rows_of(repeat, 10 * len(repeat[0]), 10 * len(repeat)))
    assert (floats.warp_face, floats.warp_back, floats.weft_face, floats.weft_back) == COUNTED[key]


@given(weaves(), st.integers(2, 30), st.integers(1, 30), st.booleans())
def test_floats_are_those_found_cell_by_cell(repeat, ends, picks, from_left):
    """Every end and pick walked by itself, the weft also as one thread around the edges."""
    rows = rows_of(repeat, max(ends, len(repeat[0])), picks)
    floats = floats_of(rows, len(repeat[0]), from_left)
    columns = [[row[end] for row in rows] for end in range(len(rows[0]))]
    assert floats.warp_face == max(longest_by_walking(column, "1") for column in columns)
    assert floats.warp_back == max(longest_by_walking(column, "0") for column in columns)
    assert floats.weft_face == max(longest_by_walking(row, "0") for row in rows)
    assert floats.weft_back == max(longest_by_walking(row, "1") for row in rows)
    assert (floats.edge, floats.missed) == around_by_walking(rows, from_left)
    assert floats.turns == picks - 1 and floats.longest == max(
        floats.warp, floats.weft, floats.edge
    )


@given(weaves(), st.integers(1, 40), st.integers(0, 12), st.integers(8, 24))
def test_a_piece_keeps_the_better_side_and_counts_its_whole_cloth(repeat, body, hem, ends):
    picks = body + 2 * hem
    rows = rows_of_piece(sections_of(repeat, picks, hem), ends)
    assert len(rows) == picks and {len(row) for row in rows} == {ends}
    floats, from_left = floats_of_piece(repeat, picks, hem, ends)
    ways = {side: around_by_walking(rows, side) for side in (True, False)}
    assert floats.missed == ways[from_left][1] == min(missed for _, missed in ways.values())


@given(pick_ups(), st.integers(1, 40), st.integers(1, 40))
def test_the_pick_list_woven_again_gives_the_same_draw_down(pick_up, ends, picks):
    """The sheds read back from the draw-down alone raise the same ends, pick by pick."""
    sheds, setting = pick_up
    repeat = repeat_of_sheds(sheds, (setting,))
    assert tuple(raised(lift.shed, setting, len(repeat[0])) for lift in sheds) == repeat
    lifts = lifts_of(repeat)
    assert lifts.by_hand == 0 and len(lifts.settings) <= 1
    again = [
        raised(lift.shed, lifts.settings[lift.setting - 1] if lift.setting else "0", ends)
        for lift in lifts_in_turn(repeat, picks)
    ]
    assert again == rows_of(repeat, ends, picks)


@given(
    st.lists(st.integers(1, 40), min_size=1, max_size=6), st.integers(1, 300), st.integers(0, 20)
)
def test_the_short_list_woven_again_gives_the_same_weft(counts, body, hem):
    """Blocks written out pick by pick are the order over and over, between two hems."""
    blocks = pick_list(counts, body + 2 * hem, hem)
    woven = [place for place, count in weft_of(blocks) for _ in range(count)]
    order = [place for place, count in enumerate(counts) for _ in range(count)]
    assert woven == [HEM] * hem + [order[pick % len(order)] for pick in range(body)] + [HEM] * hem
    assert sum(block.picks for block in blocks) == body + 2 * hem and len(blocks) <= 4


@given(st.lists(st.integers(1, 40), min_size=1, max_size=6), st.integers(0, 300))
def test_stripes_fill_the_warp_and_no_more(counts, total):
    runs = stripes(counts, total)
    assert sum(count for _, count in runs) == total == sum(threads_by_stripe(runs, len(counts)))
    times, rest = repeats(counts, total)
    assert times * sum(counts) + sum(count for _, count in rest) == total and sum(
        count for _, count in rest
    ) < sum(counts)
    joined = merged(runs, [place % 2 for place in range(len(counts))])
    assert sum(count for _, count in joined) == total and all(
        one[0] != other[0] for one, other in zip(joined, joined[1:])
    )


def test_a_mirrored_order_turns_at_both_ends():
    assert (
        there_and_back([1, 1, 1, 1]) == [0, 1, 2, 3, 2, 1]
        and there_and_back([1]) == [0]
        and there_and_back([1, 1]) == [0, 1]
    )


@given(weaves(), st.integers(1, 30), st.integers(1, 10))
def test_no_shed_comes_twice_where_a_hem_meets_the_weave(repeat, body, hem):
    """The same shed twice would let the weft out again."""
    rows = rows_of_piece(sections_of(repeat, body + 2 * hem, hem), 2 * len(repeat[0]))
    for first in (hem - 1, hem + body - 1):
        assert rows[first] != rows[first + 1]


@pytest.mark.parametrize("each", ALL, ids=lambda each: each.key)
def test_one_heddle_and_one_stick_weave_just_these(each):
    """Whether end 1 stands in a slot or in a hole: shifted by one end, no other weave becomes possible."""
    shifted = tuple((row * 2)[1 : 1 + len(row)] for row in each.repeat)
    possible = lifts_of(each.repeat).by_hand == 0 or lifts_of(shifted).by_hand == 0
    assert possible == (each.key in ON_ONE_HEDDLE)


def test_sheds_are_told_as_they_are_done():
    assert [row[1:] for row in shed_rows(structure("waffle").repeat)] == [
        ("at rest", "forward, on edge"),
        ("up", "back"),
        ("at rest", "forward, on edge"),
        ("down", "back"),
        ("up", "forward, flat"),
        ("down", "back"),
    ]
    assert shed_rows(structure("twill-2-2").repeat)[0] == (
        "1",
        "at rest",
        "by hand: over it ends 1, 2 of 4",
    )
    assert shed_rows(structure("offset-floats").repeat)[5][2] == "forward, on edge, setting 2"
    assert way_words(structure("plain").repeat) == "one heddle makes it" and "2 ways" in way_words(
        structure("offset-floats").repeat
    )
    assert (
        sheds_in_turn(14, 6) == "1 to 6, 2 times, then 1 to 2"
        and sheds_in_turn(4, 6) == "1 to 4"
        and sheds_in_turn(1, 6) == "1"
    )


def test_what_rises_in_each_shed():
    """By hand, for ends slot, hole, slot, hole, slot; the stick takes up every second slot."""
    assert {shed: raised(shed, "10", 5) for shed in SHEDS} == {
        UP: "01010",
        DOWN: "10101",
        EDGE: "10001",
        FLAT: "11011",
    }


@pytest.mark.parametrize("bad", [(), ("",), ("10", "1"), ("1x",), ("1" * 65,)])
def test_what_is_no_weave_is_refused(bad):
    with pytest.raises(OutOfRange):
        checked(bad)


@given(weaves(), st.integers(1, 20), st.integers(1, 20))
def test_columns_are_the_rows_turned(repeat, ends, picks):
    rows = rows_of(repeat, ends, picks)
    assert columns_of(columns_of(rows)) == rows and width_of((repeat,)) == len(repeat[0])


YARNS = ("Natural", "Slate", "Deep sea", "A la mode")


@pytest.mark.parametrize(
    "text, order",
    [
        ("10 A, 4 B", [(0, 10), (1, 4)]),
        ("10a 4b;2C", [(0, 10), (1, 4), (2, 2)]),
        ("12 Natural, 4 deep sea, slate", [(0, 12), (2, 4), (1, 1)]),
        ("C", [(2, 1)]),
        ("3 x A 2 × b", [(0, 3), (1, 2)]),
        (" 5 A la mode + 1 A", [(3, 5), (0, 1)]),
    ],
)
def test_an_order_is_read_as_weavers_write_it(text, order):
    assert list(read_order(text, YARNS)) == order


@pytest.mark.parametrize(
    "text",
    [
        "",
        "10",
        "10 Q",
        "A 10",
        "10 A, 4",
        "0 A",
        "5000 A",
        "Naturals",
        "A" * 3,
        ", ".join(["A"] * 65),
    ],
)
def test_what_is_no_order_is_refused(text):
    with pytest.raises(OutOfRange):
        read_order(text, YARNS)


@given(
    st.lists(st.tuples(st.integers(0, 3), st.integers(1, 4000)), min_size=1, max_size=20),
    st.booleans(),
)
def test_an_order_written_out_is_read_back(order, by_name):
    text = ", ".join(
        f"{count} {YARNS[place] if by_name else 'ABCD'[place]}" for place, count in order
    )
    assert list(read_order(text, YARNS)) == order


@given(st.text(max_size=60), st.lists(st.text(max_size=10), max_size=5))
def test_any_text_is_an_order_or_refused_in_one_line(text, names):
    try:
        assert read_order(text, tuple(names))
    except OutOfRange as error:
        assert "\n" not in error.reason


def test_sheds_are_read_by_word_or_letter():
    assert read_sheds("up, DOWN e f") == [Lift(UP), Lift(DOWN), Lift(EDGE, 1), Lift(FLAT, 1)]
    for bad in ("", "sideways", "up " * 65):
        with pytest.raises(OutOfRange):
            read_sheds(bad)
