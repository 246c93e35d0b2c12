"""Whether what is left on the ball is enough: from two weighings, for straight pieces and for those that grow."""

from ...core.card import CHOICE, MODEL, Basis, Card, Carry, Caution, Chance, Input, Option, Result
from ...core.problem import Refused
from ...core.units import COUNT, MASS, NUMBER, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, MUNDEN_1959
from ..left import (
    bind_off_rows,
    last_row,
    mass_of_stitches,
    mass_per_stitch,
    row_at_share,
    rows_before_weighing,
    rows_that_fill,
    stitches_in_row,
    stitches_through,
    stitches_to_come,
    weighing_error,
)
from ..pictures.left import yarn_used_by_row

STRAIGHT, GROWS = "straight", "grows"
START, TWO = "start", "two"
STRAY = 0.04  # 95 %: how far the rest may differ from what was knitted so far (common practice)
FINE_ENOUGH = 10.0  # %: yarn in a stitch known so far is good enough to go by (our own edge)


def answer(
    w, shape, first, grow, rows, row, weighed, row_before, mass_before, mass_now, edging, bind_off
):
    if shape == STRAIGHT:  # then a row is the unit, and its stitches do not matter
        first, grow = 1.0, 0.0
    row_before = row_before or 0
    if row > rows:
        raise Refused(
            f"Rows done: {row} given, but the whole piece has {rows}; give fewer, or more rows in"
            " all.",
            "row",
        )
    if row_before >= row:
        raise Refused(
            f"Row of the first weighing: it must come before the {row} rows done now.",
            "row_before" if weighed == TWO else "row",
        )
    if mass_now >= mass_before:
        raise Refused(
            f"Left now: {mass_now:g} g, no less than the {mass_before:g} g before; weigh both times"
            " the same way, without the knitting.",
            "mass_now",
        )
    end = w.step(
        "end_rows",
        "edging + bind_off / 4",
        edging + bind_off_rows(bind_off),
        NUMBER,
        label=(
            "Edging and binding off, in rows of the last width (a stitch holds about 4 of its"
            " widths)"
        ),
    )
    between = _through(
        w,
        "knit_between",
        "Knitted between the weighings",
        shape,
        row,
        first,
        grow,
        "row",
        row_before,
        "row_before" if weighed == TWO else "",
    )
    each = mass_per_stitch(mass_before, mass_now, between)
    w.step(
        "each",
        "(mass_before - mass_now) / knit_between",
        each,
        MASS,
        label=f"Yarn in a {'row' if shape == STRAIGHT else 'stitch'}",
    )
    to_come = stitches_to_come(row, rows, first, grow, end)
    last_text = "end_rows" if shape == STRAIGHT else "end_rows * (first + grow * (rows - 1))"
    ahead = _through(
        w,
        "knit_ahead",
        "Still to knit, without the end",
        shape,
        rows,
        first,
        grow,
        "rows",
        row,
        "row",
    )
    w.step(
        "to_come",
        f"knit_ahead + {last_text}",
        to_come,
        NUMBER,
        label=f"Still to knit, in {'rows' if shape == STRAIGHT else 'stitches'}",
    )
    rest = w.step(
        "rest", "to_come * each", mass_of_stitches(to_come, each), MASS, label="Yarn for the rest"
    )
    spare = w.step("spare", "mass_now - rest", mass_now - rest, MASS, label="To spare at the end")
    w.error("spare", STRAY * rest)
    w.error("rest", STRAY * rest)
    have = mass_now / each
    more = rows_that_fill(have, stitches_in_row(row + 1, first, grow), grow)
    edge_at = last_row(have, row, first, grow, end)
    w.band(
        "edge_at",
        last_row(have / (1 + STRAY), row, first, grow, end),
        last_row(have / (1 - STRAY), row, first, grow, end),
    )
    w.error("more", STRAY * more)
    half = row_at_share(0.5, rows, first, grow, end)
    return {
        "spare": spare,
        "rest": rest,
        "more": more,
        "edge_at": float(edge_at),
        "half": half,
        "first": first,
        "grow": grow,
        "end_rows": end,
        "each": each,
        "used": mass_before - mass_now,
        "ahead": ahead,
    }


def _through(w, name, label, shape, upper, first, grow, upper_name, lower, lower_name):
    """Stitches (straight: rows) from the end of one row to the end of another, as a step."""
    if shape == STRAIGHT:
        text = f"{upper_name} - {lower_name}" if lower_name else upper_name
    else:
        parts = [
            f"{each} * first + grow * {each} * ({each} - 1) / 2"
            for each in (upper_name, lower_name)
            if each
        ]
        text = parts[0] if len(parts) == 1 else f"{parts[0]} - ({parts[1]})"
    return w.step(
        name,
        text,
        stitches_through(upper, first, grow) - stitches_through(lower, first, grow),
        NUMBER,
        label=label,
    )


def _half_step(r):
    """What the scale does not show, either way, as typed or as declared; a scale is never perfect."""
    return max(r.readings["mass_now"].rough, 0.005)


def weigh_again(r):
    """Rows to knit before another weighing is worth it; none where the two weighings say enough already."""
    if weighing_error(_half_step(r), r.kept["used"]) <= FINE_ENOUGH:
        return None
    return rows_before_weighing(
        _half_step(r),
        FINE_ENOUGH,
        r.kept["each"],
        stitches_in_row(r.given["row"] + 1, r.kept["first"], r.kept["grow"]),
        r.kept["grow"],
    )


def say(r):
    chance = r.value("lasts")
    words = f"chance {r.text('lasts')}"
    first = (
        f"It will likely be enough: {words}."
        if chance >= 80
        else (
            f"It will likely not be enough: {words}."
            if chance <= 20
            else f"It is too close to say: {words} that it is enough."
        )
    )
    need = (
        f"About {r.text('rest', 'g')} are needed ({r.span('rest', 'g')}),"
        f" {r.amount(r.given['mass_now'], MASS, 'g')} are left."
    )
    row = r.given["row"]
    if r.value("edge_at") < row:
        return first, f"{need} There is not enough even to end now."
    sure, (the_end, end_it) = _nearly_sure(r), _end(r)
    if chance >= 80:
        return (
            first,
            (
                f"{need} {the_end} could wait until row"
                f" {r.text('edge_at')}{f'; until row {sure} to be nearly sure' if sure else ''}."
            ),
        )
    if not sure:
        return (
            first,
            (
                f"{need} {end_it.capitalize()} after row {r.text('edge_at')} at the latest; nearly"
                " sure of an end you are not even now."
            ),
        )
    if r.value("edge_at") >= r.given["rows"]:
        return first, f"{need} To be nearly sure of an end, {end_it} after row {sure}."
    return (
        first,
        (
            f"{need} {end_it.capitalize()} after row {r.text('edge_at')} at the latest; after row"
            f" {sure} to be nearly sure."
        ),
    )


def _end(r):
    """What the end begins with, and to begin it: a piece without an edging is only bound off."""
    return ("The edging", "start the edging") if r.given["edging"] else ("Binding off", "bind off")


def _nearly_sure(r):
    """The row after which the end still works out 39 times in 40; None where that row is past."""
    sure = int(r.low("edge_at"))
    return sure if sure >= r.given["row"] else None


def notes(r):
    said = []
    error = weighing_error(_half_step(r), r.kept["used"])
    if r.has("weigh_again"):
        said.append(
            "The scale is too coarse for so little knitting: yarn in a row is known to ±"
            f" {error:.0f} % only. Knit about {r.text('weigh_again')} rows more and weigh again,"
            f" then it is known to ± {FINE_ENOUGH:.0f} %."
        )
    else:
        said.append(
            f"By the scale, yarn in a row is known to ± {max(error, 1):.0f} %; rows that differ"
            " come on top."
        )
    half = r.value("half")
    if r.kept["grow"]:
        said.append(
            f"Half of the yarn is used at about row {half:.0f} of {r.given['rows']}, not halfway:"
            " later rows are longer."
        )
    if _nearly_sure(r):
        said.append("Nearly sure: 39 times in 40.")
    return said


def picture(r):
    marks = [("weighed now", float(r.given["row"])), ("half of the yarn used", r.value("half"))]
    if r.given["weighed"] == TWO:
        marks.insert(0, ("weighed before", float(r.given["row_before"])))
    edge = r.value("edge_at")
    if r.given["row"] <= edge < r.given["rows"]:
        marks.append((f"last row before you {_end(r)[1]}", edge))
    stop = r.given["row"] + r.value("more")
    return yarn_used_by_row(
        r.given["rows"],
        r.kept["first"],
        r.kept["grow"],
        r.kept["end_rows"],
        marks,
        stop if stop < r.given["rows"] else 0.0,
    )


GROWING = {"shape": (GROWS,)}

CARD = Card(
    id="enough-left",
    chapter="knit",
    place=40,
    question="Is what is left enough to finish?",
    inputs=(
        Input(
            CHOICE,
            "The piece",
            default=GROWS,
            options=(
                Option(GROWS, "Grows: each row longer than the last"),
                Option(STRAIGHT, "Straight: every row the same"),
            ),
            name="shape",
        ),
        Input(
            NUMBER,
            "Stitches in the first row",
            default="7",
            allowed=("1", "2000"),
            usual=("1", "150"),
            when=GROWING,
            name="first",
        ),
        Input(
            NUMBER,
            "Stitches added per row",
            default="2",
            allowed=("0", "50"),
            usual=("0.5", "6"),
            when=GROWING,
            measure="On average: 4 on every other row is 2.",
            name="grow",
        ),
        Input(
            COUNT,
            "Rows in all, before edging and binding off",
            default="120",
            allowed=("2", "5000"),
            usual=("20", "600"),
            name="rows",
        ),
        Input(
            COUNT, "Rows done", default="100", allowed=("1", "5000"), usual=("5", "600"), name="row"
        ),
        Input(
            CHOICE,
            "You weighed",
            default=START,
            options=(
                Option(START, "The whole ball before starting, and what is left"),
                Option(TWO, "What was left, at two rows"),
            ),
            name="weighed",
        ),
        Input(
            COUNT,
            "Rows done at the first weighing",
            default="60",
            allowed=("1", "5000"),
            usual=("1", "600"),
            when={"weighed": (TWO,)},
            name="row_before",
        ),
        Input(
            MASS,
            "Weight then",
            default="100 g",
            allowed=("1 g", "10 kg"),
            usual=("20 g", "500 g"),
            rough="0.5 g",
            units=("g", "oz"),
            measure="Yarn only, no core. A kitchen scale shows whole grams: that is ± 0.5 g.",
            name="mass_before",
        ),
        Input(
            MASS,
            "Left now",
            default="30.5 g",
            allowed=("0.1 g", "10 kg"),
            usual=("3 g", "400 g"),
            rough="0.5 g",
            units=("g", "oz"),
            measure="The same way, as dry as before.",
            name="mass_now",
        ),
        Input(
            NUMBER,
            "Edging, rows",
            default="0",
            allowed=("0", "300"),
            usual=("0", "30"),
            measure="At the last width; the yarn of an edging counts in rows like those before it.",
            name="edging",
        ),
        Input(
            NUMBER,
            "Binding off takes, in widths of the edge",
            default="3.5",
            allowed=("1", "12"),
            usual=("3", "6"),
            rough="0.5",
            measure="Three to four times the edge is common practice; a stretchy one takes more.",
            name="bind_off",
        ),
    ),
    results=(
        Result(
            PERCENT, "Chance that it is enough", chance=Chance("spare", above=0.0), name="lasts"
        ),
        Result(
            MASS,
            "Needed for the rest",
            units=("g", "oz"),
            finest=(0.1, 0.01),
            rounding="up",
            floor=0.0,
            name="rest",
        ),
        Result(
            MASS,
            "To spare at the end",
            units=("g", "oz"),
            finest=(0.1, 0.01),
            rounding="down",
            name="spare",
        ),
        Result(
            NUMBER,
            "Last row before edging and binding off",
            finest=(1,),
            rounding="down",
            floor=0.0,
            name="edge_at",
        ),
        Result(
            NUMBER,
            "Rows that could still be knitted",
            finest=(1,),
            rounding="down",
            floor=0.0,
            name="more",
        ),
        Result(
            NUMBER, "Row at which half of the yarn is used", finest=(1,), floor=0.0, name="half"
        ),
        Result(
            COUNT, "Rows to knit before weighing again", decided=weigh_again, name="weigh_again"
        ),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        MODEL,
        "Every stitch takes the same yarn; a row takes its number of them. The rest may stray 4 %"
        " from what was knitted so far, and binding off takes 3 to 4 widths of the edge: both"
        " common practice.",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC, MUNDEN_1959),
    cautions=(
        Caution(
            "The odds are of this scale and this hand.",
            "A pattern that changes (lace, beads, a denser border) changes the yarn in a row: weigh"
            " again after the first repeat of it.",
        ),
    ),
    carry=(Carry("yarn-needed", "How many skeins would the next one take?", {}),),
)
