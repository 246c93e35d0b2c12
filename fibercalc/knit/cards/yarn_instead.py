"""A pattern's yarn replaced by another: by length, with the traps of put-ups and the tightness."""

from __future__ import annotations

from dataclasses import replace

from ...core.answer import Picture, Table
from ...core.card import (
    CHOICE,
    MODEL,
    Basis,
    Between,
    Card,
    Carry,
    Case,
    Caution,
    Chance,
    Input,
    Option,
    Result,
)
from ...core.outcome import Outcome
from ...core.picture import INDIGO, INDIGO_WASH, INK, SOFT, Drawing, Scale
from ...core.steps import looked_up
from ...core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, METERS_PER_YARD, NUMBER, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, CRAFT_YARN_COUNCIL, MUNDEN_1959
from ..inputs import PATTERN_ROWS, PATTERN_STITCHES, SKEIN_LENGTH, SKEIN_MASS
from ..loop import LOOSEST, TIGHTEST, stitch_length
from ..odds import each_count, smallest_enough, spread_of
from ..swap import APART, CLOSE, grist_ratio, tightness

SKEINS, LENGTH_GIVEN = "skeins", "length"


def to_buy(out: Outcome[YarnInstead]) -> int:
    """The fewest skeins of mine that hold the length with the wished chance."""
    spread = spread_of(out, YarnInstead.skeins)
    return smallest_enough(out.case.skeins, spread, float(out.case.sure) / 100)


class YarnInstead(Case):
    """A pattern's yarn and one's own: the length that is asked for in skeins of the other."""

    theirs_mass = Input[float](
        MASS,
        "The pattern’s yarn: a skein weighs",
        default="50 g",
        allowed=("5 g", "2 kg"),
        usual=("20 g", "250 g"),
        units=("g", "oz"),
        measure="Both from the same line of the pattern: yards in 50 g are not meters in 100 g.",
    )
    theirs_length = Input[float](
        LENGTH,
        "A skein of theirs holds",
        default="115 yd",
        allowed=("5 m", "10000 m"),
        usual=("50 m", "900 m"),
        rough="1.5 %",
        units=("yd", "m"),
    )
    need_by = Input[str](
        CHOICE,
        "The pattern asks for",
        default=SKEINS,
        options=(Option(SKEINS, "So many skeins"), Option(LENGTH_GIVEN, "A length")),
    )
    theirs_skeins = Input[int](
        COUNT,
        "Skeins of theirs",
        default="8",
        allowed=("1", "100"),
        usual=("1", "25"),
        when={"need_by": (SKEINS,)},
    )
    need_length = Input[float](
        LENGTH,
        "Length",
        default="920 yd",
        allowed=("5 m", "20000 m"),
        usual=("100 m", "2500 m"),
        units=("yd", "m"),
        when={"need_by": (LENGTH_GIVEN,)},
    )
    stitches = replace(PATTERN_STITCHES, optional=True)
    rows = replace(PATTERN_ROWS, optional=True)
    mine_mass = replace(SKEIN_MASS, label="My yarn: a skein weighs")
    mine_length = replace(SKEIN_LENGTH, label="A skein of mine holds")
    sure = Input[str](
        CHOICE,
        "How sure of that length",
        default="95",
        options=tuple(Option(each, f"{each} in 100") for each in ("80", "90", "95")),
    )

    loop_constant = Between[float](NUMBER, "Loop constant Ks")
    stitch = Between[float](LENGTH, "Yarn in a stitch at the pattern’s gauge")

    buy = Result[int](COUNT, "Skeins of mine", rounding="up", decided=to_buy)
    enough = Result[float](
        PERCENT,
        "Chance that they hold that length",
        chance=Chance("skeins", below=lambda out: out.value(YarnInstead.buy)),
    )
    need = Result[float](
        LENGTH, "Length asked for", units=("yd", "m"), finest=(1, 1), rounding="up", floor=0.0
    )
    skeins = Result[float](NUMBER, "In my skeins", finest=(0.01,), rounding="up", floor=0.0)
    mass = Result[float](
        MASS, "Its weight in my yarn", units=("g", "oz"), finest=(1, 0.1), rounding="up", floor=0.0
    )
    finer = Result[float](PERCENT, "More meters in a gram than theirs, by", finest=(1,))
    theirs_tex = Result[float](
        LINEAR_DENSITY, "Their yarn", units=("m/100 g", "yd/100 g", "tex"), finest=(1, 1, 1)
    )
    mine_tex = Result[float](
        LINEAR_DENSITY, "My yarn", units=("m/100 g", "yd/100 g", "tex"), finest=(1, 1, 1)
    )
    theirs_tight = Result[float](NUMBER, "Tightness with theirs", finest=(0.01,), floor=0.0)
    mine_tight = Result[float](NUMBER, "Tightness with mine", finest=(0.01,), floor=0.0)


def answer(case: YarnInstead) -> None:
    if case.need_by == SKEINS:
        case.need = case.theirs_skeins * case.theirs_length
    else:
        case.need = case.need_length
    case.skeins = case.need / case.mine_length
    case.mass = case.need * case.mine_mass / case.mine_length
    case.theirs_tex = 1000 * case.theirs_mass / case.theirs_length
    case.mine_tex = 1000 * case.mine_mass / case.mine_length
    ratio = grist_ratio(case.mine_length, case.mine_mass, case.theirs_length, case.theirs_mass)
    case.finer = 100 * (ratio - 1)
    if case.has(YarnInstead.stitches) and case.has(YarnInstead.rows):
        case.loop_constant = looked_up("wash", "munden-constants", "state", "wet", "Ks")
        case.stitch = stitch_length(case.stitches, case.rows, case.loop_constant)
        case.theirs_tight = tightness(case.theirs_tex, case.stitch)
        case.mine_tight = tightness(case.mine_tex, case.stitch)


def say(out: Outcome[YarnInstead]) -> str | tuple[str, ...]:
    count = out.value(YarnInstead.buy)
    words = f"{count:.0f} {'skein' if count == 1 else 'skeins'}"
    return (
        f"Take {words} of mine: {_match(out.case)}.",
        (
            f"The pattern asks for {out.said(YarnInstead.need)}; that is"
            f" {out.text(YarnInstead.mass, 'g')} of my yarn. {_feel(out.case)}"
        ),
    )


def _match(case: YarnInstead) -> str:
    apart = case.finer / 100
    if abs(apart) < CLOSE:
        return "much the same thickness"
    how = "a little" if abs(apart) < APART else "much"
    return f"{how} {'finer' if apart > 0 else 'thicker'} than theirs"


def _feel(case: YarnInstead) -> str:
    apart = case.finer / 100
    if abs(apart) < CLOSE:
        return "The cloth will likely feel much the same, as far as thickness goes."
    if apart > 0:
        return "At the same gauge the cloth will likely be thinner and drape more" + (
            ", perhaps too open." if apart > APART else "."
        )
    return "At the same gauge the cloth will likely be thicker and firmer" + (
        ", perhaps stiff." if apart < -APART else "."
    )


def _read_otherwise(case: YarnInstead) -> tuple[float, float]:
    """Yards in 50 g and meters in 100 g: put-ups that are mistaken for each other, being close."""
    theirs = case.theirs_length / case.theirs_mass
    yards_50, meters_100 = theirs * 50 / METERS_PER_YARD, theirs * 100
    return yards_50, meters_100


def notes(out: Outcome[YarnInstead]) -> list[str]:
    case = out.case
    yards_50, meters_100 = _read_otherwise(case)
    said = [
        f"Mind the put-up: theirs is {out.number(yards_50)} yd in 50 g, which is"
        f" {out.number(meters_100)} m in 100 g. One read as the other is off by"
        f" {100 * (meters_100 / yards_50 - 1):.0f} %."
    ]
    by_mass = case.need * case.theirs_tex / 1000
    if abs(case.finer) >= 100 * CLOSE:
        wrong = by_mass / case.mine_mass
        said.append(
            f"By weight it would have been {out.amount(by_mass, MASS, 'g', 3)},"
            f" {out.number(wrong, 1)} of my skeins:"
            f" {'too much' if case.finer > 0 else 'too little'} by"
            f" {100 * abs(by_mass / case.mass - 1):.0f} %. Never by weight alone."
        )
    if out.has(YarnInstead.mine_tight):
        words = (
            "looser than hand knitting usually is: try a smaller needle"
            if case.mine_tight < LOOSEST
            else (
                "firmer than hand knitting usually is: try a larger needle"
                if case.mine_tight > TIGHTEST
                else "within what hand knitting usually is"
            )
        )
        said.append(
            "At the pattern’s gauge my yarn has a tightness of"
            f" {out.text(YarnInstead.mine_tight)}, theirs {out.text(YarnInstead.theirs_tight)};"
            f" mine is {words} ({LOOSEST:g} to {TIGHTEST:g})."
        )
    said.append(
        "Fiber decides the rest: superwash wool grows in the wash, alpaca and silk hang longer,"
        " cotton does not spring back. Swatch and wash before you cast on."
    )
    if case.need_by == SKEINS:
        said.append(
            "A pattern that counts skeins has rounded up already: up to one skein of theirs may be"
            " spare. If the pattern gives a length, use that."
        )
    return said


def odds(out: Outcome[YarnInstead]) -> Table | None:
    counts = each_count(out.case.skeins, spread_of(out, YarnInstead.skeins))
    rows = tuple(
        (
            str(count),
            out.amount(count * out.case.mine_length, LENGTH, "yd"),
            out.amount(count * out.case.mine_length, LENGTH, "m"),
            out.in_100(chance),
        )
        for count, chance in counts
    )
    return Table(
        "How many of mine, and the chance that they hold the pattern’s length",
        ("Skeins", "Yards", "Meters", "Chance"),
        rows,
    )


def picture(out: Outcome[YarnInstead]) -> Picture | None:
    """Both yarns as threads of their thickness, one gram of each as long as it is."""
    case = out.case
    theirs, mine = 1000 / case.theirs_tex, 1000 / case.mine_tex  # m in a gram
    scale = Scale(0, max(theirs, mine), 16, 340)
    drawing = Drawing(112)
    for y, words, length, tex in (
        (20, "Theirs", theirs, case.theirs_tex),
        (68, "Mine", mine, case.mine_tex),
    ):
        thick = min(max(0.6 * tex**0.5, 3.0), 24.0)
        drawing.text(
            16,
            y,
            f"{words}: one gram is {out.amount(length, LENGTH, 'm', 3)}"
            f" ({out.amount(length, LENGTH, 'yd', 3)})",
            bold=words == "Mine",
        )
        drawing.rect(
            16,
            y + 19 - thick / 2,
            scale(length) - 16,
            thick,
            fill=INDIGO if words == "Mine" else INDIGO_WASH,
            stroke=INK,
        )
    drawing.text(344, 106, "length and thickness in proportion", anchor="end", size=12, fill=SOFT)
    return drawing.picture(
        "One gram of each",
        f"One gram of their yarn is {theirs:.2f} m long, one gram of mine {mine:.2f} m; the longer"
        " thread is the thinner one.",
    )


CARD = Card(
    id="yarn-instead",
    chapter="knit",
    place=20,
    question="Can I use this yarn instead?",
    case=YarnInstead,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(odds,),
    basis=Basis(
        MODEL,
        "A project needs a length; skeins follow from the length that each holds. Tightness is √tex"
        " over the loop length in millimeters (Munden’s loop).",
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE, MUNDEN_1959, CRAFT_YARN_COUNCIL),
    cautions=(
        Caution(
            "The odds here are of the length alone.",
            "Whether your hands need more than the pattern’s is another question: ask “How many"
            " skeins do I need?” with a swatch.",
        ),
    ),
    carry=(
        Carry(
            "yarn-needed",
            "How many skeins with my own swatch?",
            {"skein_mass": YarnInstead.mine_mass, "skein_length": YarnInstead.mine_length},
        ),
    ),
)
