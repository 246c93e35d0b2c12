"""How many turns of a reel for a wanted length or weight, and what one turn more or less comes to."""

from math import ceil

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, Basis, Card, Carry, Caution, Chance, Input, Option, Result
from ...core.picture import INDIGO, INDIGO_WASH, MADDER, SOFT, Drawing, Scale
from ...core.problem import Refused
from ...core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, NUMBER, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, TRADE_MEMORY
from ..putup import printed_grams
from ..reel import mass_of_turns, turns_for_length, whole_turns_for_length
from ..skein import length_by_turns, relaxed_circumference

BY_LENGTH, BY_MASS, BY_TURNS = "length", "mass", "turns"
MOST_TURNS = 100_000  # more than a day of winding: a unit was mistaken
NEIGHBORS = 2  # turns shown on either side


def answer(w, wanted_by, wanted_length, wanted_mass, wanted_turns, count, turn, stretch):
    rested = w.step(
        "rested_turn",
        "turn / (1 + stretch / 100)",
        relaxed_circumference(turn, stretch),
        LENGTH,
        label="One turn, rested",
    )
    found = {"need": None, "margin": None, "mass": None, "turn_mass": None, "rested_turn": rested}
    if wanted_by == BY_TURNS:
        turns, name = wanted_turns, "wanted_turns"
    else:
        wanted, wanted_name = _wanted(w, wanted_by, wanted_length, wanted_mass, count)
        found["need"] = w.step(
            "need",
            f"{wanted_name} / rested_turn",
            turns_for_length(wanted, rested),
            NUMBER,
            label="Turns, with the part turn",
        )
        if found["need"] > MOST_TURNS:
            raise Refused(
                f"That would be {found['need']:,.0f} turns of this reel; look at the units, or ask"
                " for less.",
                f"wanted_{wanted_by}",
            )
        turns, name = w.decide("turns", whole_turns_for_length(wanted, rested)), "turns"
        w.searched(
            "turns",
            turns,
            (f"turns * rested_turn >= {wanted_name}",),
            f"{wanted_name} / rested_turn",
            label="Whole turns, so that none is short",
        )
        found |= {"wanted": wanted}
    length = w.step(
        "length",
        f"{name} * rested_turn",
        length_by_turns(turns, rested),
        LENGTH,
        label="Length of those turns",
    )
    if wanted_by != BY_TURNS:
        found["margin"] = w.step(
            "margin",
            f"length - {wanted_name}",
            length - wanted,
            LENGTH,
            label="Over the wanted length",
        )
    if count is not None:
        found["mass"] = w.step(
            "mass",
            f"{name} * rested_turn * count / 1000",
            mass_of_turns(turns, rested, count),
            MASS,
            label="Weight of those turns",
        )
        found["turn_mass"] = w.step(
            "turn_mass",
            "rested_turn * count / 1000",
            mass_of_turns(1, rested, count),
            MASS,
            label="Weight of one turn",
        )
    return found | {"turns": turns, "length": length}


def _wanted(w, wanted_by, wanted_length, wanted_mass, count):
    """The wanted length and its name in the working."""
    if wanted_by == BY_LENGTH:
        return wanted_length, "wanted_length"
    if count is None:
        raise Refused(
            "Count of the yarn: nothing given; a weight can be turned into a length only by the"
            " count.",
            "count",
        )
    return (
        w.step(
            "length_for_weight",
            "1000 * wanted_mass / count",
            1000 * wanted_mass / count,
            LENGTH,
            label="Length of that weight",
        ),
        "length_for_weight",
    )


def surely(r):
    """The whole turns that are enough even at the short end of the reel's roughness."""
    return ceil(r.high("need") * (1 - 1e-9))


def say(r):
    turns = r.value("turns")
    words = f"{r.number(turns)} turn{'s' * (turns != 1)}"
    weight = f", {r.text('mass')}" if r.has("mass") else ""
    one = f"One turn is {r.said('rested_turn')}" + (
        f" and {r.text('turn_mass')}." if r.has("turn_mass") else "."
    )
    if not r.has("need"):
        return f"{words} hold{'s' * (turns == 1)} {r.said('length')}{weight}.", one
    holds = f"{'It holds' if turns == 1 else 'They hold'} about {r.said('length')}{weight}."
    if r.rough("need") and surely(r) > turns:
        return (
            f"Wind {words}.",
            (
                f"{holds} The reel is not known exactly: wind {r.number(surely(r))} to be nearly"
                f" sure that none is short. {one}"
            ),
        )
    return f"Wind {words}.", f"{holds} {one}"


def notes(r):
    said = []
    if r.has("mass"):
        grams = printed_grams(r.value("mass"))
        if grams >= 1:
            said.append(
                f"A label for it may say {r.number(grams)} g: what is promised rounds down."
            )
    if r.has("need") and r.value("need") < 20:
        said.append(
            "With so few turns the rounding shows: one turn is"
            f" {r.number(100 / r.value('turns'), 1)} % of the skein. A smaller reel comes closer."
        )
    said.append(
        "Wind at the tension at which the turn was measured, and measure again after a repair or on"
        " another yarn: thick yarn lies further out."
    )
    return said


def neighbors(r):
    """Some turns fewer and more: length and weight of each."""
    turns, rested, tex = r.value("turns"), r.value("rested_turn"), r.given["count"]
    rows = []
    for number in range(max(1, turns - NEIGHBORS), turns + NEIGHBORS + 1):
        row = [
            r.number(number),
            r.amount(number * rested, LENGTH, "yd", 4),
            r.amount(number * rested, LENGTH, "m", 4),
        ]
        rows.append(
            tuple(
                row + [r.amount(mass_of_turns(number, rested, tex), MASS, "g", 4)]
                if tex is not None
                else row
            )
        )
    return Table(
        "A turn more or less",
        ("Turns", "Yards", "Meters") + (("Weight",) if tex is not None else ()),
        tuple(rows),
    )


def picture(r):
    """Whole turns as marks on a line of length, the wanted length among them, and how sure the chosen mark is."""
    turns, rested, tex = r.value("turns"), r.value("rested_turn"), r.given["count"]
    marks = range(max(1, turns - NEIGHBORS), turns + NEIGHBORS + 1)
    scale = Scale((marks[0] - 0.45) * rested, (marks[-1] + 0.45) * rested, 8, 352)
    signs = [unit.sign for unit in r.units("length")]
    drawing = Drawing(126 + 18 * (len(signs) + (tex is not None)))
    line = 72
    drawing.rect(
        scale(r.low("length")),
        line - 9,
        scale(r.high("length")) - scale(r.low("length")),
        18,
        fill=INDIGO_WASH,
        stroke=INDIGO,
    )
    drawing.line(8, line, 352, line)
    for number in marks:
        at, chosen = scale(number * rested), number == turns
        drawing.line(
            at,
            line - (16 if chosen else 8),
            at,
            line + (16 if chosen else 8),
            stroke=INDIGO,
            width=4 if chosen else 1.5,
        )
        drawing.text(at, line - 22, r.number(number), anchor="middle", bold=chosen, size=14)
        y = line + 34
        for sign in signs:
            drawing.text(
                at, y, _short(r, number * rested, sign), anchor="middle", size=12, bold=chosen
            )
            y += 18
        if tex is not None:
            drawing.text(
                at,
                y,
                r.amount(mass_of_turns(number, rested, tex), MASS, "g", 3),
                anchor="middle",
                size=12,
                bold=chosen,
            )
    drawing.text(8, 16, "turns", fill=SOFT)
    words = ""
    if r.has("need"):
        at = scale(r.kept["wanted"])
        for top, bottom in (
            (22, line - 36),
            (line - 17, line + 20),
        ):  # past the number of turns, not through it
            drawing.line(at, top, at, bottom, stroke=MADDER, width=2, dash="5 3")
        as_typed = (
            r.readings["wanted_length"].amount.unit.sign
            if r.given["wanted_by"] == BY_LENGTH
            else signs[0]
        )
        wanted = r.amount(r.kept["wanted"], LENGTH, as_typed)
        drawing.text(at, 16, f"wanted {wanted}", anchor="middle")
        words = f", {wanted} wanted"
    drawing.text(8, drawing.height - 8, "shaded: how sure the length is", fill=SOFT)
    return drawing.picture(
        "Whole turns around the wanted length" if words else "A turn more or less",
        f"Marks for {r.number(marks[0])} to {r.number(marks[-1])} turns on a line of length{words}."
        f" {r.number(turns)} turns hold {r.text('length')}"
        + (f", {r.span('length')}." if r.span("length") else "."),
    )


def _short(r, length, sign):
    """A length for a label: one decimal, none from a thousand on."""
    number = LENGTH.unit(sign).from_base(length)
    return f"{r.number(number, 1 if number < 1000 else 0)} {sign}"


CARD = Card(
    id="reel-turns",
    chapter="yarn",
    place=25,
    question="How many turns of my reel for this length?",
    inputs=(
        Input(
            CHOICE,
            "What you want",
            default=BY_LENGTH,
            options=(
                Option(BY_LENGTH, "A length"),
                Option(BY_MASS, "A weight"),
                Option(BY_TURNS, "I have the turns: what do they hold?"),
            ),
            name="wanted_by",
        ),
        Input(
            LENGTH,
            "Wanted length",
            default="84 m",
            allowed=("0.1 m", "5000 m"),
            usual=("10 m", "1000 m"),
            units=("m", "yd"),
            when={"wanted_by": (BY_LENGTH,)},
            measure="At rest, as it is promised.",
            name="wanted_length",
        ),
        Input(
            MASS,
            "Wanted weight",
            default="20 g",
            allowed=("0.1 g", "5 kg"),
            usual=("5 g", "250 g"),
            units=("g", "oz"),
            when={"wanted_by": (BY_MASS,)},
            measure="Rested and dry, without ties.",
            name="wanted_mass",
        ),
        Input(
            COUNT,
            "Turns on the reel",
            default="54",
            allowed=("1", "20000"),
            usual=("10", "600"),
            when={"wanted_by": (BY_TURNS,)},
            name="wanted_turns",
        ),
        Input(
            LINEAR_DENSITY,
            "Count of the yarn",
            default="238 tex",
            allowed=("0.5 tex", "100000 tex"),
            usual=("15 tex", "2000 tex"),
            rough="2 %",
            optional=True,
            units=("tex", "yd/lb", "m/100 g", "yd/100 g", "Nm", "Ne", "Nw"),
            measure="For the weight of a turn. Leave it blank if only length matters.",
            name="count",
        ),
        Input(
            LENGTH,
            "Once around the reel",
            default="1.50 m",
            allowed=("0.1 m", "10 m"),
            usual=("0.5 m", "2 m"),
            rough="0.5 %",
            units=("m", "cm", "in", "yd"),
            instrument="reel",
            bench="reels.circumference",
            measure=(
                "Measure on the yarn as it lies on the reel: unwind ten turns, lay them straight,"
                " divide by ten."
            ),
            name="turn",
        ),
        Input(
            PERCENT,
            "Stretch on the reel",
            default="0 %",
            allowed=("0 %", "20 %"),
            usual=("0 %", "3 %"),
            rough="0.5 %",
            bench="reels.stretch",
            measure=(
                "How much longer the yarn is on the reel than at rest. 0 if you measured once"
                " around on rested yarn."
            ),
            name="stretch",
        ),
    ),
    results=(
        Result(COUNT, "Whole turns", rounding="up", name="turns"),
        Result(
            LENGTH,
            "Length of those turns",
            units=("yd", "m"),
            finest=(1, 0.1),
            rounding="down",
            name="length",
        ),
        Result(MASS, "Weight of those turns", units=("g", "oz"), finest=(0.1, 0.01), name="mass"),
        Result(NUMBER, "Turns needed, with the part turn", finest=(0.01,), name="need"),
        Result(
            LENGTH, "Over the wanted length", units=("m", "yd"), finest=(0.1, 0.1), name="margin"
        ),
        Result(
            PERCENT, "Chance that it is short", chance=Chance("margin", below=0.0), name="short"
        ),
        Result(
            LENGTH, "One turn, rested", units=("in", "cm"), finest=(0.1, 0.1), name="rested_turn"
        ),
        Result(
            MASS, "Weight of one turn", units=("g", "oz"), finest=(0.001, 0.0001), name="turn_mass"
        ),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(neighbors,),
    basis=Basis(
        MODEL,
        "A turn holds what it measures on the reel, less what the yarn was stretched; turns are"
        " whole, and rounded up so that none is short. Weight is proportional to length. A stretch"
        " of 1 to 3 % is usual (from memory, unverified).",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC, TRADE_MEMORY),
    cautions=(
        Caution(
            "One wrong turn length makes every skein short.",
            "Wind the first skein, let it rest, measure or weigh it, and only then wind the rest.",
        ),
    ),
    carry=(
        Carry(
            "skein-length",
            "How much is really in it?",
            {"circumference": "turn", "stretch": "stretch", "turns": "turns"},
        ),
        Carry(
            "skein-split",
            "Cut full skeins into such small ones",
            {"reel": "rested_turn", "wanted_mass": "mass"},
        ),
        Carry("yarn-count", "This yarn in every count", {"count": "count", "mass": "mass"}),
    ),
)
