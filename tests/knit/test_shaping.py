"""Even shaping: gaps add up and differ by one at most, and whoever follows the words ends with the right stitches."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as some

from fibercalc.core.problem import OutOfRange
from fibercalc.knit import shaping

CHANGES = {
    "make 1": (0, 1),
    "knit front and back": (1, 1),
    "knit 2 together": (2, -1),
    "slip 1, knit 2 together, pass over": (3, -2),
}


@given(plain=some.integers(0, 800), changes=some.integers(1, 300))
def test_gaps_of_a_round_add_up_and_differ_by_one_at_most(plain, changes):
    gaps = shaping.even_gaps(plain, changes, closed=True)
    assert len(gaps) == changes and sum(gaps) == plain
    assert max(gaps) - min(gaps) <= 1


@given(plain=some.integers(0, 800), changes=some.integers(1, 300), edge=some.integers(0, 10))
def test_gaps_of_a_row_add_up_and_its_ends_are_half(plain, changes, edge):
    """Inner gaps differ by one at most, the two ends by one at most, and together they are one inner gap (and the edges)."""
    if 2 * edge > plain:
        with pytest.raises(OutOfRange):
            shaping.even_gaps(plain, changes, False, edge)
        return
    gaps = shaping.even_gaps(plain, changes, False, edge)
    inner = gaps[1:-1]
    assert len(gaps) == changes + 1 and sum(gaps) == plain
    assert min(gaps[0], gaps[-1]) >= edge and abs(gaps[0] - gaps[-1]) <= 1
    if inner:
        assert max(inner) - min(inner) <= 1
        assert min(inner) - 1 <= gaps[0] + gaps[-1] - 2 * edge <= max(inner) + 1


def follow(words: str, change: str) -> tuple[int, int]:
    """Knit what the words say: (plain stitches knit, changes made)."""
    plain = changes = 0
    text = words.lower().rstrip(".").replace(change, "CHANGE")
    for inside, times, outside in re.findall(
        r"\[([^\]]+)\] (\d+) times|((?:knit \d+|CHANGE)(?:, CHANGE|, knit \d+)*)", text
    ):
        part, count = (inside, int(times)) if inside else (outside, 1)
        plain += count * sum(map(int, re.findall(r"knit (\d+)", part)))
        changes += count * part.count("CHANGE")
    return plain, changes


@given(
    stitches=some.integers(1, 400),
    changes=some.integers(1, 120),
    closed=some.booleans(),
    change=some.sampled_from(sorted(CHANGES)),
)
def test_whoever_follows_the_words_ends_with_the_right_stitches(stitches, changes, closed, change):
    taken, step = CHANGES[change]
    if changes * taken > stitches or stitches + changes * step < 1:
        with pytest.raises(OutOfRange):
            (
                shaping.plain_stitches(stitches, changes, taken),
                shaping.stitches_after(stitches, changes, step),
            )
        return
    gaps = shaping.even_gaps(shaping.plain_stitches(stitches, changes, taken), changes, closed)
    knit, made = follow(shaping.row_words(gaps, closed, change), change)
    assert (knit + made * taken, made) == (stitches, changes)
    assert knit + made * (taken + step) == shaping.stitches_after(stitches, changes, step)


@given(gaps=some.lists(some.integers(0, 3), max_size=60))
def test_repeats_written_out_are_the_gaps(gaps):
    """Nothing is lost in brackets, and brackets never make it longer."""
    repeats = shaping.in_repeats(gaps)
    assert [gap for repeat in repeats for _ in range(repeat.times) for gap in repeat.gaps] == gaps
    assert sum(len(repeat.gaps) for repeat in repeats) <= len(gaps)


def test_the_words_are_short():
    """54 stitches flat, and 100 in the round with 17."""
    assert (
        shaping.row_words(shaping.even_gaps(54, 6, False), False, "make 1")
        == "Knit 4, make 1; [knit 9, make 1] 5 times; knit 5."
    )
    assert (
        shaping.row_words(shaping.even_gaps(100, 17, True), True, "make 1")
        == "Knit 5, make 1; [knit 6, make 1] 7 times; knit 5, make 1; [knit 6, make 1] 8 times."
    )
    assert (
        shaping.row_words(shaping.even_gaps(0, 10, True), True, "knit 2 together")
        == "[Knit 2 together] 10 times."
    )


@given(rows=some.integers(1, 500), changes=some.integers(1, 200), every=some.sampled_from([1, 2]))
def test_shaping_rows_fit_their_rows(rows, changes, every):
    """On right-side rows only each takes an even number; at most one odd row is left over."""
    if changes > rows // every:
        with pytest.raises(OutOfRange):
            shaping.even_rows(rows, changes, every)
        return
    takes = shaping.even_rows(rows, changes, every)
    assert len(takes) == changes and 0 <= rows - sum(takes) < every
    assert all(take % every == 0 for take in takes) and max(takes) - min(takes) <= every


def test_rows_in_words():
    """As patterns say it."""
    assert (
        shaping.rows_words(shaping.even_rows(83, 12, 2), 83, "increase")
        == "Increase on every 6th row 7 times, then on every 8th row 5 times; then knit 1 row"
        " plain."
    )
    assert (
        shaping.rows_words(shaping.even_rows(9, 2), 9, "decrease")
        == "Decrease on the 4th row, then on the 5th row after that."
    )
