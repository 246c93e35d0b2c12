"""A pattern's yarn replaced by another: by length, with the traps of put-ups and the cloth's tightness."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, Basis, Card, Carry, Caution, Chance, Input, Option, Result
from ...core.picture import INDIGO, INDIGO_WASH, INK, SOFT, Drawing, Scale
from ...core.units import (
    COUNT,
    LENGTH,
    LINEAR_DENSITY,
    MASS,
    METERS_PER_YARD,
    NUMBER,
    PER_LENGTH,
    PERCENT,
)
from ...sources import ARITHMETIC, COMMON_PRACTICE, CRAFT_YARN_COUNCIL, MUNDEN_1959
from ..loop import LOOSEST, TIGHTEST, stitch_length
from ..odds import each_count, smallest_enough
from ..swap import APART, CLOSE, grist_ratio, tightness

SKEINS, LENGTH_GIVEN = "skeins", "length"


def answer(
    w,
    theirs_mass,
    theirs_length,
    need_by,
    theirs_skeins,
    need_length,
    stitches,
    rows,
    mine_mass,
    mine_length,
    sure,
):
    if need_by == SKEINS:
        need = w.step(
            "need",
            "theirs_skeins * theirs_length",
            theirs_skeins * theirs_length,
            LENGTH,
            label="Length that the pattern asks for",
        )
    else:
        need = w.step(
            "need", "need_length", need_length, LENGTH, label="Length that the pattern asks for"
        )
    skeins = w.step(
        "skeins", "need / mine_length", need / mine_length, NUMBER, label="In my skeins"
    )
    mass = w.step(
        "mass",
        "need * mine_mass / mine_length",
        need * mine_mass / mine_length,
        MASS,
        label="What that weighs in my yarn",
    )
    theirs = w.step(
        "theirs_tex",
        "1000 * theirs_mass / theirs_length",
        1000 * theirs_mass / theirs_length,
        LINEAR_DENSITY,
        label="Their yarn",
    )
    mine = w.step(
        "mine_tex",
        "1000 * mine_mass / mine_length",
        1000 * mine_mass / mine_length,
        LINEAR_DENSITY,
        label="My yarn",
    )
    ratio = grist_ratio(mine_length, mine_mass, theirs_length, theirs_mass)
    finer = w.step(
        "finer",
        "100 * (theirs_tex / mine_tex - 1)",
        100 * (ratio - 1),
        PERCENT,
        label="More meters in a gram than theirs, by",
    )
    found = {
        "need": need,
        "skeins": skeins,
        "mass": mass,
        "theirs_tex": theirs,
        "mine_tex": mine,
        "finer": finer,
        "theirs_tight": None,
        "mine_tight": None,
    }
    if stitches and rows:
        constant = w.looked_up(
            "loop_constant",
            "wash",
            "munden-constants",
            "state",
            "wet",
            "Ks",
            label="Loop constant Ks",
        )
        stitch = w.step(
            "stitch",
            "1000 * sqrt(loop_constant / (stitches * rows)) / 100",
            1000 * stitch_length(stitches, rows, constant),
            LENGTH,
            "mm",
            "Yarn in a stitch at the pattern’s gauge",
        )
        found["theirs_tight"] = w.step(
            "theirs_tight",
            "sqrt(theirs_tex) / stitch",
            tightness(theirs, stitch / 1000),
            NUMBER,
            label="Tightness with their yarn",
        )
        found["mine_tight"] = w.step(
            "mine_tight",
            "sqrt(mine_tex) / stitch",
            tightness(mine, stitch / 1000),
            NUMBER,
            label="Tightness with mine",
        )
    return found


def to_buy(r):
    return smallest_enough(r.value("skeins"), r.found["skeins"].parts, float(r.given["sure"]) / 100)


def say(r):
    count = r.value("buy")
    words = f"{count:.0f} {'skein' if count == 1 else 'skeins'}"
    return (
        f"Take {words} of mine: {_match(r)}.",
        (
            f"The pattern asks for {r.said('need')}; that is {r.text('mass', 'g')} of my yarn."
            f" {_feel(r)}"
        ),
    )


def _match(r):
    apart = r.value("finer") / 100
    if abs(apart) < CLOSE:
        return "much the same thickness"
    how = "a little" if abs(apart) < APART else "much"
    return f"{how} {'finer' if apart > 0 else 'thicker'} than theirs"


def _feel(r):
    apart = r.value("finer") / 100
    if abs(apart) < CLOSE:
        return "The cloth will likely feel much the same, as far as thickness goes."
    if apart > 0:
        return "At the same gauge the cloth will likely be thinner and drape more" + (
            ", perhaps too open." if apart > APART else "."
        )
    return "At the same gauge the cloth will likely be thicker and firmer" + (
        ", perhaps stiff." if apart < -APART else "."
    )


def _read_otherwise(r):
    """The two put-ups that are mistaken for each other, where their figures lie close: yards in 50 g and meters in 100 g."""
    theirs = r.given["theirs_length"] / r.given["theirs_mass"]
    yards_50, meters_100 = theirs * 50 / METERS_PER_YARD, theirs * 100
    return yards_50, meters_100


def notes(r):
    yards_50, meters_100 = _read_otherwise(r)
    said = [
        f"Mind the put-up: theirs is {r.number(yards_50)} yd in 50 g, which is"
        f" {r.number(meters_100)} m in 100 g. One read as the other is off by"
        f" {100 * (meters_100 / yards_50 - 1):.0f} %."
    ]
    by_mass = r.value("need") * r.value("theirs_tex") / 1000
    if abs(r.value("finer")) >= 100 * CLOSE:
        wrong = by_mass / r.given["mine_mass"]
        said.append(
            f"By weight it would have been {r.amount(by_mass, MASS, 'g', 3)}, {r.number(wrong, 1)}"
            f" of my skeins: {'too much' if r.value('finer') > 0 else 'too little'} by"
            f" {100 * abs(by_mass / r.value('mass') - 1):.0f} %. Never by weight alone."
        )
    if r.has("mine_tight"):
        tight = r.value("mine_tight")
        words = (
            "looser than hand knitting usually is: try a smaller needle"
            if tight < LOOSEST
            else (
                "firmer than hand knitting usually is: try a larger needle"
                if tight > TIGHTEST
                else "within what hand knitting usually is"
            )
        )
        said.append(
            f"At the pattern’s gauge my yarn has a tightness of {r.text('mine_tight')}, theirs"
            f" {r.text('theirs_tight')}; mine is {words} ({LOOSEST:g} to {TIGHTEST:g})."
        )
    said.append(
        "Fiber decides the rest: superwash wool grows in the wash, alpaca and silk hang longer,"
        " cotton does not spring back. Swatch and wash before you cast on."
    )
    if r.given["need_by"] == SKEINS:
        said.append(
            "A pattern that counts skeins has rounded up already: up to one skein of theirs may be"
            " spare. If the pattern gives a length, use that."
        )
    return said


def odds(r):
    counts = each_count(r.value("skeins"), r.found["skeins"].parts)
    rows = tuple(
        (
            str(count),
            r.amount(count * r.given["mine_length"], LENGTH, "yd"),
            r.amount(count * r.given["mine_length"], LENGTH, "m"),
            r.in_100(chance),
        )
        for count, chance in counts
    )
    return Table(
        "How many of mine, and the chance that they hold the pattern’s length",
        ("Skeins", "Yards", "Meters", "Chance"),
        rows,
    )


def picture(r):
    """Both yarns as threads of their thickness, one gram of each as long as it is."""
    theirs, mine = (1000 / r.value(name) for name in ("theirs_tex", "mine_tex"))  # m in a gram
    scale = Scale(0, max(theirs, mine), 16, 340)
    drawing = Drawing(112)
    for y, words, length, tex in (
        (20, "Theirs", theirs, r.value("theirs_tex")),
        (68, "Mine", mine, r.value("mine_tex")),
    ):
        thick = min(max(0.6 * tex**0.5, 3.0), 24.0)
        drawing.text(
            16,
            y,
            f"{words}: one gram is {r.amount(length, LENGTH, 'm', 3)}"
            f" ({r.amount(length, LENGTH, 'yd', 3)})",
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


GAUGE_UNITS = ("per 10 cm", "per 4 in", "per in", "per cm")

CARD = Card(
    id="yarn-instead",
    chapter="knit",
    place=20,
    question="Can I use this yarn instead?",
    inputs=(
        Input(
            MASS,
            "The pattern’s yarn: a skein weighs",
            default="50 g",
            allowed=("5 g", "2 kg"),
            usual=("20 g", "250 g"),
            units=("g", "oz"),
            measure=(
                "Both from the same line of the pattern: yards in 50 g are not meters in 100 g."
            ),
            name="theirs_mass",
        ),
        Input(
            LENGTH,
            "A skein of theirs holds",
            default="115 yd",
            allowed=("5 m", "10000 m"),
            usual=("50 m", "900 m"),
            rough="1.5 %",
            units=("yd", "m"),
            name="theirs_length",
        ),
        Input(
            CHOICE,
            "The pattern asks for",
            default=SKEINS,
            options=(Option(SKEINS, "So many skeins"), Option(LENGTH_GIVEN, "A length")),
            name="need_by",
        ),
        Input(
            COUNT,
            "Skeins of theirs",
            default="8",
            allowed=("1", "100"),
            usual=("1", "25"),
            when={"need_by": (SKEINS,)},
            name="theirs_skeins",
        ),
        Input(
            LENGTH,
            "Length",
            default="920 yd",
            allowed=("5 m", "20000 m"),
            usual=("100 m", "2500 m"),
            units=("yd", "m"),
            when={"need_by": (LENGTH_GIVEN,)},
            name="need_length",
        ),
        Input(
            PER_LENGTH,
            "The pattern’s stitches",
            default="21 per 10 cm",
            allowed=("2 per 10 cm", "200 per 10 cm"),
            usual=("10 per 10 cm", "40 per 10 cm"),
            optional=True,
            units=GAUGE_UNITS,
            name="stitches",
        ),
        Input(
            PER_LENGTH,
            "The pattern’s rows",
            default="28 per 10 cm",
            allowed=("2 per 10 cm", "300 per 10 cm"),
            usual=("12 per 10 cm", "60 per 10 cm"),
            optional=True,
            units=GAUGE_UNITS,
            name="rows",
        ),
        Input(
            MASS,
            "My yarn: a skein weighs",
            record="base.mass",
            default="100 g",
            allowed=("5 g", "2 kg"),
            usual=("20 g", "250 g"),
            rough="1.5 %",
            units=("g", "oz"),
            bench="bases.mass",
            name="mine_mass",
        ),
        Input(
            LENGTH,
            "A skein of mine holds",
            record="base.length",
            default="230 m",
            allowed=("5 m", "10000 m"),
            usual=("50 m", "900 m"),
            rough="1.5 %",
            units=("m", "yd"),
            bench="bases.length",
            name="mine_length",
        ),
        Input(
            CHOICE,
            "How sure of that length",
            default="95",
            options=tuple(Option(each, f"{each} in 100") for each in ("80", "90", "95")),
            name="sure",
        ),
    ),
    results=(
        Result(COUNT, "Skeins of mine", rounding="up", decided=to_buy, name="buy"),
        Result(
            PERCENT,
            "Chance that they hold that length",
            chance=Chance("skeins", below=lambda r: r.value("buy")),
            name="enough",
        ),
        Result(
            LENGTH,
            "Length asked for",
            units=("yd", "m"),
            finest=(1, 1),
            rounding="up",
            floor=0.0,
            name="need",
        ),
        Result(NUMBER, "In my skeins", finest=(0.01,), rounding="up", floor=0.0, name="skeins"),
        Result(
            MASS,
            "Its weight in my yarn",
            units=("g", "oz"),
            finest=(1, 0.1),
            rounding="up",
            floor=0.0,
            name="mass",
        ),
        Result(PERCENT, "More meters in a gram than theirs, by", finest=(1,), name="finer"),
        Result(
            LINEAR_DENSITY,
            "Their yarn",
            units=("m/100 g", "yd/100 g", "tex"),
            finest=(1, 1, 1),
            name="theirs_tex",
        ),
        Result(
            LINEAR_DENSITY,
            "My yarn",
            units=("m/100 g", "yd/100 g", "tex"),
            finest=(1, 1, 1),
            name="mine_tex",
        ),
        Result(NUMBER, "Tightness with theirs", finest=(0.01,), floor=0.0, name="theirs_tight"),
        Result(NUMBER, "Tightness with mine", finest=(0.01,), floor=0.0, name="mine_tight"),
    ),
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
            {"skein_mass": "mine_mass", "skein_length": "mine_length"},
        ),
    ),
)
