"""Whether a cold, closed load may be lifted: the NIOSH equation. A hot or open pot is not carried at all."""

from math import ceil

from ...core.card import CHOICE, STANDARD, TEXT, Basis, Card, Caution, Input, Option, Result
from ...core.table import read_table
from ...core.units import ANGLE, COUNT, LENGTH, MASS, NUMBER, TEMPERATURE, VOLUME
from ...sources import ARITHMETIC, COMMON_PRACTICE, NIOSH_94_110, NIOSH_RWL_TEXT
from ..lift import LOAD, LOW_HANDS, frequency_row, horizontal, travel, twist, vertical, weight_limit
from ..limits import published
from ..pictures.bars import shares_of_limit
from ..scald import HANDS

BOX, BUCKET, HOT = "box", "bucket", "hot"
HOURS = {"hour": "Up to 1 hour", "two": "1 to 2 hours", "eight": "2 to 8 hours"}


def answer(w, load, volume, jug, mass, reach, start, end, angle, often, lasting, grip):
    limit = published(f"{LOAD:g} kg at best, less by six multipliers", "niosh-rwl-text")
    if load == HOT:
        return {
            "jugs": float(
                w.step(
                    "jugs",
                    "ceil(volume / jug)",
                    ceil(volume / jug - 1e-9),
                    COUNT,
                    label="Jugs to bail",
                )
            ),
            "limit": published("a hot or open load is outside the equation", "niosh-94-110"),
        }
    h = w.step(
        "h",
        "25 / max(reach, 25)" if reach <= 63 else "0",
        horizontal(reach),
        NUMBER,
        label="How far in front",
    )
    v = w.step(
        "v",
        (
            "min(1 - 0.003 * abs(start - 75), 1 - 0.003 * abs(end - 75))"
            if max(start, end) <= 175
            else "0"
        ),
        min(vertical(start), vertical(end)),
        NUMBER,
        label="Height of the hands, the worse end",
    )
    way = abs(end - start)
    d = w.step(
        "d",
        "0.82 + 4.5 / max(abs(end - start), 25)" if way <= 175 else "0",
        travel(way),
        NUMBER,
        label="How far up or down",
    )
    a = w.step(
        "a", "1 - 0.0032 * angle" if angle <= 135 else "0", twist(angle), NUMBER, label="Turning"
    )
    side = "low" if min(start, end) < LOW_HANDS else "high"
    f = w.looked_up(
        "f",
        "safe",
        "lift-frequency",
        "key",
        frequency_row(often),
        f"{lasting}_{side}",
        NUMBER,
        label="How often and how long",
    )
    c = w.looked_up("c", "safe", "lift-grip", "key", grip, side, NUMBER, label="Grip")
    best = w.step(
        "rwl",
        f"{LOAD:g} * h * v * d * a * f * c",
        weight_limit(h, v, d, a, f, c),
        MASS,
        "kg",
        label="Recommended weight limit",
    )
    index = (
        w.step("index", "mass / rwl", mass / best, NUMBER, label="Load over the limit")
        if best > 0
        else None
    )
    return {"rwl": 1000 * best, "index": index, "limit": limit}


def say(r):
    if r.given["load"] == HOT:
        return (
            "Do not carry it.",
            (
                f"Let it cool where it stands, then bail it out in {r.text('jugs')} jugs of"
                f" {r.amount(r.given['jug'], VOLUME, 'L')}, or drain it. A hot or open pot is"
                " outside the lifting equation."
            ),
        )
    if not r.has("index"):
        return (
            "Do not lift it this way.",
            (
                "Too far, too high, too long or too often: the published limit here is 0 kg. Bring"
                " the load closer and higher, use a cart, or share it out."
            ),
        )
    mass = r.amount(1000 * r.given["mass"], MASS, r.readings["mass"].amount.unit.sign)
    above, close = r.value("index") > 1, r.high("index") > 1
    first = (
        f"{mass} lies"
        f" {'above' if above else 'so close that it counts as above' if close else 'below'} the"
        f" recommended weight limit of {r.said('rwl')} for this lift."
    )
    if close:
        return (
            first,
            (
                f"It is {r.text('index')} times the limit: take less at a time, bring it closer, or"
                " use a cart."
            ),
        )
    return (
        first,
        (
            "Likely bearable for nearly all healthy workers, as NIOSH words it; not a promise for"
            " your back."
        ),
    )


def notes(r):
    if r.given["load"] == HOT:
        return [
            "Cool: with a lid on a full pan takes hours; stand it in cold water only if it stands"
            " firm. Hands go in, and it goes down the drain, at "
            + r.amount(HANDS, TEMPERATURE, "°C", 3)
            + " or less."
        ]
    said = [
        "The equation is for two hands, standing, a load that does not shift, a dry floor and a"
        " room neither hot nor cold. It is not for carrying, pushing, one hand, sitting, or a wet"
        " floor."
    ]
    if r.given["load"] == BUCKET:
        said.append(
            "Wet skeins count only in a lidded bucket, without loose water: what slops shifts the"
            " load."
        )
    weakest = min(
        (
            ("bring it closer to the body", horizontal(r.given["reach"])),
            (
                "lift it between hip and chest",
                min(vertical(r.given["start"]), vertical(r.given["end"])),
            ),
            ("turn with the feet", twist(r.given["angle"])),
        ),
        key=lambda each: each[1],
    )
    if weakest[1] < 0.95:
        said.append(f"What would help most here: {weakest[0]}.")
    return said


def picture(r):
    if not r.has("index"):
        return None
    return shares_of_limit(
        "Load against the limit",
        [("This load", r.value("index"), r.low("index"), r.high("index"))],
        "recommended weight limit",
        most=3.0,
    )


COLD = {"load": (BOX, BUCKET)}


def _cm(name, label, default, allowed, usual, said=""):
    return Input(
        LENGTH,
        label,
        default=default,
        allowed=allowed,
        usual=usual,
        rough="3 cm",
        units=("cm", "in"),
        unit="cm",
        when=COLD,
        measure=said,
        name=name,
    )


CARD = Card(
    id="lift",
    chapter="safe",
    place=70,
    question="May I lift this?",
    inputs=(
        Input(
            CHOICE,
            "The load",
            default=BUCKET,
            options=(
                Option(BUCKET, "Wet skeins in a lidded bucket, cold"),
                Option(BOX, "A box, cold and stable"),
                Option(HOT, "A hot or open pot"),
            ),
            name="load",
        ),
        Input(
            VOLUME,
            "Bath in the pot",
            default="9 L",
            allowed=("0.1 L", "500 L"),
            usual=("1 L", "60 L"),
            units=("L", "qt", "gal"),
            when={"load": (HOT,)},
            name="volume",
        ),
        Input(
            VOLUME,
            "Jug to bail with",
            default="1 L",
            allowed=("0.1 L", "10 L"),
            usual=("0.5 L", "3 L"),
            units=("L", "qt"),
            when={"load": (HOT,)},
            name="jug",
        ),
        Input(
            MASS,
            "Weight",
            default="8 kg",
            allowed=("0.1 kg", "100 kg"),
            usual=("1 kg", "30 kg"),
            rough="5 %",
            units=("kg", "lb", "g"),
            unit="kg",
            when=COLD,
            measure=(
                "Skeins from the spinner weigh about 1.5 times their dry weight, dripping ones 3"
                " times."
            ),
            name="mass",
        ),
        _cm(
            "reach",
            "Hands in front of the ankles",
            "35 cm",
            ("0 cm", "120 cm"),
            ("25 cm", "63 cm"),
            "From between the ankles to between the hands, at the farther end of the lift.",
        ),
        _cm(
            "start",
            "Hands at the start, from the floor",
            "40 cm",
            ("0 cm", "220 cm"),
            ("0 cm", "150 cm"),
        ),
        _cm(
            "end",
            "Hands at the end, from the floor",
            "90 cm",
            ("0 cm", "220 cm"),
            ("0 cm", "175 cm"),
        ),
        Input(
            ANGLE,
            "Turn of the trunk",
            default="30°",
            allowed=("0°", "180°"),
            usual=("0°", "90°"),
            rough="10°",
            when=COLD,
            name="angle",
        ),
        Input(
            NUMBER,
            "Lifts in a minute",
            default="0.2",
            allowed=("0.01", "15"),
            usual=("0.02", "9"),
            when=COLD,
            measure="Once in five minutes is 0.2.",
            name="often",
        ),
        Input(
            CHOICE,
            "For",
            default="hour",
            options=tuple(Option(key, words) for key, words in HOURS.items()),
            when=COLD,
            name="lasting",
        ),
        Input(
            CHOICE,
            "Grip",
            default="fair",
            options=tuple(
                Option(row["key"], row["label"]) for row in read_table("safe", "lift-grip").rows
            ),
            when=COLD,
            name="grip",
        ),
    ),
    results=(
        Result(
            MASS,
            "Recommended weight limit",
            units=("kg", "lb"),
            finest=(0.1, 0.2),
            rounding="down",
            floor=0.0,
            name="rwl",
        ),
        Result(
            NUMBER, "Load over the limit", finest=(0.01,), rounding="up", floor=0.0, name="index"
        ),
        Result(COUNT, "Jugs to bail", name="jugs"),
        Result(TEXT, "Published limit", name="limit"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        STANDARD,
        "NIOSH lifting equation, revised 1991: 23 kg times six multipliers, the worse end of the"
        " lift for the height. Between rows of a table the stricter one.",
    ),
    sources=(NIOSH_94_110, NIOSH_RWL_TEXT, COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "Never carry a hot or open pot.",
            "Cool, bail or drain it where it stands. A wet floor is outside the equation: dry it"
            " first.",
        ),
        Caution(
            "Pain decides before any figure.",
            "After a back injury, in pregnancy or when it hurts: do not lift, ask a doctor.",
        ),
    ),
    handles=("load", "heat"),
)
