"""Increases or decreases spread evenly: over a round, over a flat row, or over rows."""

from ...core.card import CHOICE, STANDARD, Basis, Card, Input, Option, Result
from ...core.problem import Refused
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


def answer(w, over, stitches, changes, change, edge, rows, shaping_rows_wanted, every):
    if over == ROWS:
        if shaping_rows_wanted > rows // int(every):
            raise Refused(
                f"Shaping rows: {shaping_rows_wanted} do not fit in {rows}"
                f" rows{' on right-side rows only' if every == '2' else ''}; give"
                f" {rows // int(every)} or fewer.",
                "shaping_rows_wanted",
            )
        takes = even_rows(rows, shaping_rows_wanted, int(every))
        w.step(
            "mean_gap",
            "rows / shaping_rows_wanted",
            rows / shaping_rows_wanted,
            NUMBER,
            label="Rows for each, before rounding",
        )
        w.searched(
            "least",
            min(takes),
            ("least <= mean_gap",),
            "mean_gap",
            label="Rows for the shorter ones",
        )
        over_plain = rows - sum(takes)
        w.step(
            "plain_rows",
            f"rows - {sum(takes)}",
            over_plain,
            COUNT,
            label="Rows over, knit plain at the end",
        )
        return {
            "least": min(takes),
            "most": max(takes),
            "after": None,
            "takes": takes,
            "gaps": None,
        }
    _, taken, step = CHANGES[change]
    plain = plain_stitches(stitches, changes, taken)
    w.step("plain", f"stitches - changes * {taken}", plain, COUNT, label="Stitches that stay plain")
    after = stitches_after(stitches, changes, step)
    w.step(
        "after",
        f"stitches + changes * {step}" if step > 0 else f"stitches - changes * {-step}",
        after,
        COUNT,
        label="Stitches afterward",
    )
    gaps = even_gaps(plain, changes, over == ROUND, edge or 0)
    w.step(
        "mean_gap",
        "plain / changes",
        plain / changes,
        NUMBER,
        label="Plain stitches for each change, before rounding",
    )
    inner = gaps if over == ROUND or len(gaps) < 3 else gaps[1:-1]
    return {"least": min(inner), "most": max(inner), "after": after, "gaps": gaps, "takes": None}


def say(r):
    if r.given["over"] == ROWS:
        return (
            rows_words(r.kept["takes"], r.given["rows"], "shape"),
            f"{r.given['shaping_rows_wanted']} shaping rows in {r.given['rows']} rows.",
        )
    words, _, _ = CHANGES[r.given["change"]]
    closed = r.given["over"] == ROUND
    return (
        row_words(r.kept["gaps"], closed, words),
        (
            f"{r.given['stitches']} stitches become {r.value('after')}, with {r.given['changes']}"
            " changes."
        ),
    )


def notes(r):
    if r.given["over"] == FLAT:
        return [
            "The first and the last gap are about half as wide, so that the row looks the same from"
            " both edges."
        ]
    if r.given["over"] == ROWS:
        return [
            "The shorter gaps come first. Rows count from the last shaping row, the shaping row"
            " itself included."
        ]
    return ["Each change follows its plain stitches, so the last one ends the round."]


def picture(r):
    if r.given["over"] == ROWS:
        return shaping_rows(r.kept["takes"], r.given["rows"])
    _, taken, step = CHANGES[r.given["change"]]
    return shaped_row(r.kept["gaps"], r.given["over"] == ROUND, step, taken)


ACROSS, DOWN = {"over": (ROUND, FLAT)}, {"over": (ROWS,)}

CARD = Card(
    id="even-shaping",
    chapter="knit",
    place=50,
    question="How do I spread increases or decreases evenly?",
    inputs=(
        Input(
            CHOICE,
            "Spread over",
            default=ROUND,
            options=(Option(ROUND, "A round"), Option(FLAT, "A flat row"), Option(ROWS, "Rows")),
            name="over",
        ),
        Input(
            COUNT,
            "Stitches now",
            default="64",
            allowed=("2", "5000"),
            usual=("8", "400"),
            when=ACROSS,
            name="stitches",
        ),
        Input(
            COUNT,
            "How many increases or decreases",
            default="7",
            allowed=("1", "2000"),
            usual=("1", "60"),
            when=ACROSS,
            name="changes",
        ),
        Input(
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
            name="change",
        ),
        Input(
            COUNT,
            "Plain stitches kept at both edges",
            default="0",
            allowed=("0", "20"),
            usual=("0", "4"),
            when={"over": (FLAT,)},
            name="edge",
        ),
        Input(
            COUNT,
            "Rows to shape in",
            default="84",
            allowed=("1", "5000"),
            usual=("10", "200"),
            when=DOWN,
            measure="A sleeve, from cuff to underarm.",
            name="rows",
        ),
        Input(
            COUNT,
            "Shaping rows",
            default="12",
            allowed=("1", "2000"),
            usual=("1", "40"),
            when=DOWN,
            measure="Each adds or takes off at both ends, as the pattern says.",
            name="shaping_rows_wanted",
        ),
        Input(
            CHOICE,
            "Shape on",
            default="2",
            when=DOWN,
            options=(Option("2", "Right-side rows only"), Option("1", "Any row")),
            name="every",
        ),
    ),
    results=(
        Result(COUNT, "Stitches afterward", name="after"),
        Result(COUNT, "The shorter gaps", name="least"),
        Result(COUNT, "The longer gaps", name="most"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        STANDARD, "Whole stitches only: the gaps differ by one at most and add up to what there is."
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE),
)
