"""Whether a cold, closed load may be lifted: the NIOSH equation. A hot pot is not carried at all."""

from __future__ import annotations

from math import ceil

from ...core.answer import Picture
from ...core.arithmetic import smallest
from ...core.card import (
    CHOICE,
    STANDARD,
    TEXT,
    Basis,
    Between,
    Card,
    Case,
    Caution,
    Input,
    Option,
    Result,
)
from ...core.outcome import Outcome
from ...core.steps import at_least, looked_up, searched
from ...core.table import read_table
from ...core.units import ANGLE, COUNT, LENGTH, MASS, NUMBER, TEMPERATURE, VOLUME
from ...sources import ARITHMETIC, COMMON_PRACTICE, NIOSH_94_110, NIOSH_RWL_TEXT
from ..lift import LOAD, LOW_HANDS, frequency_row, horizontal, travel, twist, vertical, weight_limit
from ..limits import published
from ..pictures.bars import shares_of_limit
from ..scald import HANDS

BOX, BUCKET, HOT = "box", "bucket", "hot"
HOURS = {"hour": "Up to 1 hour", "two": "1 to 2 hours", "eight": "2 to 8 hours"}
COLD = {"load": (BOX, BUCKET)}


def _cm(
    label: str, default: str, allowed: tuple[str, str], usual: tuple[str, str], measure: str = ""
) -> Input[float]:
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
        measure=measure,
    )


class Lift(Case):
    """One way of lifting a cold, closed load, or a hot pot that is to be bailed out instead."""

    load = Input[str](
        CHOICE,
        "The load",
        default=BUCKET,
        options=(
            Option(BUCKET, "Wet skeins in a lidded bucket, cold"),
            Option(BOX, "A box, cold and stable"),
            Option(HOT, "A hot or open pot"),
        ),
    )
    volume = Input[float](
        VOLUME,
        "Bath in the pot",
        default="9 L",
        allowed=("0.1 L", "500 L"),
        usual=("1 L", "60 L"),
        units=("L", "qt", "gal"),
        when={"load": (HOT,)},
    )
    jug = Input[float](
        VOLUME,
        "Jug to bail with",
        default="1 L",
        allowed=("0.1 L", "10 L"),
        usual=("0.5 L", "3 L"),
        units=("L", "qt"),
        when={"load": (HOT,)},
    )
    mass = Input[float](
        MASS,
        "Weight",
        default="8 kg",
        allowed=("0.1 kg", "100 kg"),
        usual=("1 kg", "30 kg"),
        rough="5 %",
        units=("kg", "lb", "g"),
        unit="kg",
        when=COLD,
        measure="Skeins from the spinner weigh about 1.5 times their dry weight, dripping ones 3"
        " times.",
    )
    reach = _cm(
        "Hands in front of the ankles",
        "35 cm",
        ("0 cm", "120 cm"),
        ("25 cm", "63 cm"),
        "From between the ankles to between the hands, at the farther end of the lift.",
    )
    start = _cm(
        "Hands at the start, from the floor", "40 cm", ("0 cm", "220 cm"), ("0 cm", "150 cm")
    )
    end = _cm("Hands at the end, from the floor", "90 cm", ("0 cm", "220 cm"), ("0 cm", "175 cm"))
    angle = Input[float](
        ANGLE,
        "Turn of the trunk",
        default="30°",
        allowed=("0°", "180°"),
        usual=("0°", "90°"),
        rough="10°",
        when=COLD,
    )
    often = Input[float](
        NUMBER,
        "Lifts in a minute",
        default="0.2",
        allowed=("0.01", "15"),
        usual=("0.02", "9"),
        when=COLD,
        measure="Once in five minutes is 0.2.",
    )
    lasting = Input[str](
        CHOICE,
        "For",
        default="hour",
        options=tuple(Option(key, words) for key, words in HOURS.items()),
        when=COLD,
    )
    grip = Input[str](
        CHOICE,
        "Grip",
        default="fair",
        options=tuple(
            Option(row["key"], row["label"]) for row in read_table("safe", "lift-grip").rows
        ),
        when=COLD,
    )

    horizontal = Between[float](NUMBER, "How far in front")
    vertical = Between[float](NUMBER, "Height of the hands, the worse end")
    travel = Between[float](NUMBER, "How far up or down")
    twist = Between[float](NUMBER, "Turning")
    frequency = Between[float](NUMBER, "How often and how long")
    coupling = Between[float](NUMBER, "Grip")

    rwl = Result[float](
        MASS,
        "Recommended weight limit",
        units=("kg", "lb"),
        finest=(0.1, 0.2),
        rounding="down",
        floor=0.0,
        unit="kg",
    )
    index = Result[float](NUMBER, "Load over the limit", finest=(0.01,), rounding="up", floor=0.0)
    jugs = Result[float](COUNT, "Jugs to bail")
    limit = Result[str](TEXT, "Published limit")


def answer(case: Lift) -> None:
    if case.load == HOT:
        case.jugs = searched(
            ceil(case.volume / case.jug - 1e-9),
            lambda jugs: (at_least(jugs * case.jug, case.volume),),
            lambda: case.volume / case.jug,
        )
        case.limit = published("a hot or open load is outside the equation", "niosh-94-110")
        return
    case.limit = published(f"{LOAD:g} kg at best, less by six multipliers", "niosh-rwl-text")
    side = "low" if min(case.start, case.end) < LOW_HANDS else "high"
    row = frequency_row(case.often)
    case.horizontal = horizontal(case.reach)
    case.vertical = smallest(vertical(case.start), vertical(case.end))
    case.travel = travel(abs(case.end - case.start))
    case.twist = twist(case.angle)
    case.frequency = looked_up("safe", "lift-frequency", "key", row, f"{case.lasting}_{side}")
    case.coupling = looked_up("safe", "lift-grip", "key", case.grip, side)
    case.rwl = weight_limit(
        case.horizontal, case.vertical, case.travel, case.twist, case.frequency, case.coupling
    )
    if case.rwl > 0:
        case.index = case.mass / case.rwl


def say(out: Outcome[Lift]) -> tuple[str, ...]:
    if out.case.load == HOT:
        jug = out.amount(out.case.jug, VOLUME, "L")
        return (
            "Do not carry it.",
            (
                f"Let it cool where it stands, then bail it out in {out.text(Lift.jugs)} jugs of"
                f" {jug}, or drain it. A hot or open pot is outside the lifting equation."
            ),
        )
    if not out.has(Lift.index):
        return (
            "Do not lift it this way.",
            (
                "Too far, too high, too long or too often: the published limit here is 0 kg. Bring"
                " the load closer and higher, use a cart, or share it out."
            ),
        )
    return _beside_the_limit(out)


def _beside_the_limit(out: Outcome[Lift]) -> tuple[str, ...]:
    given = out.readings["mass"].amount
    mass = out.amount(1000 * out.case.mass, MASS, given.unit.sign if given else "")
    close = out.high(Lift.index) > 1
    near = "so close that it counts as above" if close else "below"
    lies = "above" if out.value(Lift.index) > 1 else near
    first = (
        f"{mass} lies {lies} the recommended weight limit of {out.said(Lift.rwl)} for this lift."
    )
    if close:
        return (
            first,
            (
                f"It is {out.text(Lift.index)} times the limit: take less at a time, bring it"
                " closer, or use a cart."
            ),
        )
    return (
        first,
        (
            "Likely bearable for nearly all healthy workers, as NIOSH words it; not a promise for"
            " your back."
        ),
    )


def notes(out: Outcome[Lift]) -> list[str]:
    case = out.case
    if case.load == HOT:
        return [
            "Cool: with a lid on a full pan takes hours; stand it in cold water only if it stands"
            " firm. Hands go in, and it goes down the drain, at "
            + out.amount(HANDS, TEMPERATURE, "°C", 3)
            + " or less."
        ]
    said = [
        "The equation is for two hands, standing, a load that does not shift, a dry floor and a"
        " room neither hot nor cold. It is not for carrying, pushing, one hand, sitting, or a wet"
        " floor."
    ]
    if case.load == BUCKET:
        said.append(
            "Wet skeins count only in a lidded bucket, without loose water: what slops shifts the"
            " load."
        )
    weakest, what = min(
        (case.horizontal, "bring it closer to the body"),
        (case.vertical, "lift it between hip and chest"),
        (case.twist, "turn with the feet"),
        key=lambda each: each[0],
    )
    if weakest < 0.95:
        said.append(f"What would help most here: {what}.")
    return said


def picture(out: Outcome[Lift]) -> Picture | None:
    index = Lift.index
    if not out.has(index):
        return None
    return shares_of_limit(
        "Load against the limit",
        [("This load", out.value(index), out.low(index), out.high(index))],
        "recommended weight limit",
        most=3.0,
    )


CARD = Card(
    id="lift",
    chapter="safe",
    place=70,
    question="May I lift this?",
    case=Lift,
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
