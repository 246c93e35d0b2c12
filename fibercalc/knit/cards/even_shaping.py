"""Increases or decreases spread evenly: over a round, over a flat row, or over rows."""

from __future__ import annotations

from ...core.answer import Picture
from ...core.card import CHOICE, STANDARD, Basis, Between, Card, Case, Input, Option, Plain, Result
from ...core.outcome import Outcome
from ...core.problem import Refused
from ...core.steps import at_most, searched
from ...core.units import COUNT, NUMBER
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ..pictures.shaping import shaped_row, shaping_rows
from ..shaping import even_gaps, even_rows, plain_stitches, row_words, rows_words, stitches_after

ROUND, FLAT, ROWS = "round", "flat", "rows"
# What one change is called, the stitches it is worked on, the stitches it adds.
CHANGES = {
    "make-1": ("make 1", 0, 1),
    "front-and-back": ("knit front and back", 1, 1),
    "together": ("knit 2 together", 2, -1),
    "double": ("decrease 2 over 3", 3, -2),
}


class EvenShaping(Case):
    """Increases or decreases to spread, and the plain stitches or rows between them."""

    over = Input[str](
        CHOICE,
        "Spread over",
        default=ROUND,
        options=(Option(ROUND, "A round"), Option(FLAT, "A flat row"), Option(ROWS, "Rows")),
    )
    ACROSS, DOWN = {over: (ROUND, FLAT)}, {over: (ROWS,)}
    stitches = Input[int](
        COUNT, "Stitches now", default="64", allowed=("2", "5000"), usual=("8", "400"), when=ACROSS
    )
    changes = Input[int](
        COUNT,
        "How many increases or decreases",
        default="7",
        allowed=("1", "2000"),
        usual=("1", "60"),
        when=ACROSS,
    )
    change = Input[str](
        CHOICE,
        "Each one",
        default="make-1",
        when=ACROSS,
        options=(
            Option("make-1", "Make 1, between two stitches"),
            Option("front-and-back", "Knit front and back of one stitch"),
            Option("together", "Knit 2 together"),
            Option("double", "Double decrease: 3 become 1"),
        ),
    )
    edge = Input[int](
        COUNT,
        "Plain stitches kept at both edges",
        default="0",
        allowed=("0", "20"),
        usual=("0", "4"),
        when={over: (FLAT,)},
    )
    rows = Input[int](
        COUNT,
        "Rows to shape in",
        default="84",
        allowed=("1", "5000"),
        usual=("10", "200"),
        when=DOWN,
        measure="A sleeve, from cuff to underarm.",
    )
    shaping_rows_wanted = Input[int](
        COUNT,
        "Shaping rows",
        default="12",
        allowed=("1", "2000"),
        usual=("1", "40"),
        when=DOWN,
        measure="Each adds or takes off at both ends, as the pattern says.",
    )
    every = Input[str](
        CHOICE,
        "Shape on",
        default="2",
        when=DOWN,
        options=(Option("2", "Right-side rows only"), Option("1", "Any row")),
    )

    plain = Between[int](COUNT, "Stitches that stay plain")
    mean_gap = Between[float](NUMBER, "Plain stitches for each change, before rounding")
    mean_rows = Between[float](NUMBER, "Rows for each, before rounding")
    rows_shaped = Between[int](COUNT, "Rows up to the last shaping row")
    plain_rows = Between[int](COUNT, "Rows over, knit plain at the end")
    gaps = Plain[list[int]]()
    takes = Plain[list[int]]()

    after = Result[int](COUNT, "Stitches afterward")
    least = Result[float](COUNT, "The shorter gaps")
    most = Result[int](COUNT, "The longer gaps")


def answer(case: EvenShaping) -> None:
    if case.over == ROWS:
        _over_rows(case)
        return
    _, taken, step = CHANGES[case.change]
    case.plain = plain_stitches(case.stitches, case.changes, taken)
    case.after = stitches_after(case.stitches, case.changes, step)
    case.mean_gap = case.plain / case.changes
    closed = case.over == ROUND
    edge = case.maybe(EvenShaping.edge) or 0
    case.gaps = even_gaps(int(case.plain), int(case.changes), closed, int(edge))
    inner = case.gaps if closed or len(case.gaps) < 3 else case.gaps[1:-1]
    case.least, case.most = min(inner), max(inner)


def _over_rows(case: EvenShaping) -> None:
    rows, wanted, every = int(case.rows), int(case.shaping_rows_wanted), int(case.every)
    if wanted > rows // every:
        raise Refused(
            f"Shaping rows: {wanted} do not fit in {rows}"
            f" rows{' on right-side rows only' if every == 2 else ''}; give"
            f" {rows // every} or fewer.",
            EvenShaping.shaping_rows_wanted,
        )
    case.takes = even_rows(rows, wanted, every)
    case.mean_rows = case.rows / case.shaping_rows_wanted
    case.least = searched(
        min(case.takes), lambda least: (at_most(least, case.mean_rows),), lambda: case.mean_rows
    )
    case.most = max(case.takes)
    case.rows_shaped = sum(case.takes)
    case.plain_rows = case.rows - case.rows_shaped


def say(out: Outcome[EvenShaping]) -> str | tuple[str, ...]:
    case = out.case
    if case.over == ROWS:
        return (
            rows_words(case.takes, case.rows, "shape"),
            f"{case.shaping_rows_wanted} shaping rows in {case.rows} rows.",
        )
    words, _, _ = CHANGES[case.change]
    return (
        row_words(case.gaps, case.over == ROUND, words),
        f"{case.stitches} stitches become {case.after}, with {case.changes} changes.",
    )


def notes(out: Outcome[EvenShaping]) -> list[str]:
    if out.case.over == FLAT:
        return [
            "The first and the last gap are about half as wide, so that the row looks the same from"
            " both edges."
        ]
    if out.case.over == ROWS:
        return [
            "The shorter gaps come first. Rows count from the last shaping row, the shaping row"
            " itself included."
        ]
    return ["Each change follows its plain stitches, so the last one ends the round."]


def picture(out: Outcome[EvenShaping]) -> Picture | None:
    if out.case.over == ROWS:
        return shaping_rows(out.case.takes, out.case.rows)
    _, taken, step = CHANGES[out.case.change]
    return shaped_row(out.case.gaps, out.case.over == ROUND, step, taken)


CARD = Card(
    id="even-shaping",
    chapter="knit",
    place=50,
    question="How do I spread increases or decreases evenly?",
    case=EvenShaping,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        STANDARD, "Whole stitches only: the gaps differ by one at most and add up to what there is."
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE),
)
