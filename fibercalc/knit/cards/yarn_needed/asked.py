"""What is asked of a project and its yarn, and what is found."""

from __future__ import annotations

from dataclasses import dataclass, replace

from ....core.card import CHOICE, TEXT, Between, Chance, Input, Option, Result, Row, Rows
from ....core.outcome import Outcome
from ....core.spread import Parts
from ....core.table import read_table
from ....core.units import AREA, COUNT, LENGTH, LINEAR_DENSITY, MASS, NUMBER, PERCENT
from ....held import RECORD
from ...inputs import ROWS, SKEIN_LENGTH, SKEIN_MASS, STATE, STITCHES
from ...odds import share_of, smallest_enough
from ...projects.flat import FlatMeasures
from ...projects.hat import HatMeasures
from ...projects.measure import GAUGE, PATTERN, SWATCH, YARN, Made, piece
from ...projects.mittens import MittensMeasures
from ...projects.shawl import ShawlMeasures
from ...projects.socks import SocksMeasures
from ...projects.sweater import SweaterMeasures

STRUCTURES = {row["key"]: row for row in read_table("knit", "structure-factors").rows}
MADE = {Made.known: (YARN, GAUGE, SWATCH)}
COUNTED, WEIGHED, PRINTED = (
    {Made.known: ways} for ways in ((GAUGE, SWATCH), (SWATCH,), (PATTERN,))
)


@dataclass(frozen=True)
class Bought:
    """One color: skeins needed of it, how they are spread, and how many to buy."""

    name: str
    needed: float
    spread: Parts
    count: int

    @property
    def chance(self) -> float:
        """The chance that what is bought is enough."""
        return self.spread.chance_below(self.count - self.needed)


def wished(case: YarnNeeded) -> float:
    """The wished chance, 0 to 1."""
    return float(case.sure) / 100


def spread_of(out: Outcome[YarnNeeded]) -> Parts:
    """What lends to the range of the skeins needed."""
    return out.found[YarnNeeded.skeins.name].parts or Parts()


def by_color(out: Outcome[YarnNeeded]) -> list[Bought]:
    """What is bought of each color."""
    case = out.case
    whole = sum(color.share for color in case.colors)
    spread, found = spread_of(out), []
    for number, color in enumerate(case.colors, 1):
        rough = out.readings[YarnNeeded.colors.each(Color.share).of(number)].rough
        needed, parts = share_of(case.skeins, spread, color.share / whole, min(rough / whole, 1.0))
        count = smallest_enough(needed, parts, wished(case))
        found.append(Bought(color.name, needed, parts, count))
    return found


def to_buy(out: Outcome[YarnNeeded]) -> int:
    """How many skeins to buy, so that the wished chance holds; of several, color by color."""
    if out.case.many == "yes":
        return sum(color.count for color in by_color(out))
    return smallest_enough(out.case.skeins, spread_of(out), wished(out.case))


def chance_of_enough(out: Outcome[YarnNeeded]) -> float:
    """The chance, 0 to 1, that what is bought is enough; of several colors, of the tightest."""
    if out.case.many == "yes":
        return min(color.chance for color in by_color(out))
    return out.chance_below(YarnNeeded.skeins, out.value(YarnNeeded.buy))


class Color(Row):
    """One color."""

    name = Input[str](TEXT, "Name", default="Another color", longest=30, lent=False)
    share = Input[float](NUMBER, "Share", default="20", allowed=("0.5", "1000"), rough="2")


IN_SKEINS = Result[float](NUMBER, "In skeins", finest=(0.01,), rounding="up", floor=0.0)


# What the last of the bases declares is asked first.
class YarnNeeded(
    ShawlMeasures, FlatMeasures, SocksMeasures, MittensMeasures, HatMeasures, SweaterMeasures
):
    """What is made and how much is known of its yarn: the skeins that are enough."""

    structure = Input[str](
        CHOICE,
        "Stitch",
        default="plain",
        when=MADE,
        options=tuple(Option(key, row["label"]) for key, row in STRUCTURES.items()),
    )
    stitches = replace(
        STITCHES,
        when=COUNTED,
        measure="In stocking stitch, washed and dry, counted over as much as you have.",
    )
    rows = replace(ROWS, when=COUNTED)
    state = replace(STATE, when=COUNTED)
    swatch_width = Input[float](
        LENGTH,
        "Swatch, width",
        default="15 cm",
        allowed=("4 cm", "200 cm"),
        usual=("10 cm", "30 cm"),
        rough="0.2 cm",
        units=("cm", "in"),
        unit="cm",
        when=WEIGHED,
        instrument="swatch tape",
        measure="The whole piece that you weigh, edge to edge.",
    )
    swatch_length = Input[float](
        LENGTH,
        "Swatch, length",
        default="15 cm",
        allowed=("4 cm", "200 cm"),
        usual=("10 cm", "30 cm"),
        rough="0.2 cm",
        units=("cm", "in"),
        unit="cm",
        when=WEIGHED,
        instrument="swatch tape",
    )
    swatch_mass = Input[float](
        MASS,
        "Swatch, weight",
        default="10.3 g",
        allowed=("0.2 g", "2 kg"),
        usual=("3 g", "60 g"),
        rough="0.1 g",
        units=("g", "oz"),
        when=WEIGHED,
        measure="Washed, dry and rested, with its ends: a swatch carries its share of casting on"
        " and weaving in.",
    )
    pattern_length = Input[float](
        LENGTH,
        "Yarn, as the pattern gives it",
        default="900 m",
        allowed=("1 m", "20000 m"),
        usual=("100 m", "2000 m"),
        units=("m", "yd"),
        when=PRINTED,
        measure="For your size, as length; a weight says nothing without its yarn.",
    )
    pattern_buffer = Input[str](
        CHOICE,
        "Does that figure hold a buffer already?",
        default="unknown",
        when=PRINTED,
        options=(
            Option("unknown", "It does not say"),
            Option("held", "Yes, some is added"),
            Option("none", "No, it is what was used"),
        ),
    )
    skein_mass = replace(SKEIN_MASS)
    skein_length = replace(
        SKEIN_LENGTH, measure="As on its band, in meters or yards; grams are not asked here."
    )
    ends = Input[float](
        LENGTH,
        "Ends, seams, fringe",
        default="0 m",
        allowed=("0 m", "2000 m"),
        usual=("0 m", "40 m"),
        units=("m", "yd"),
        measure="Casting on and weaving in are in the swatch or the spread already; give pompons,"
        " seams and fringe.",
    )
    needle = Input[float](
        LENGTH,
        "Needle",
        record=RECORD.measurement.needle,
        allowed=("1 mm", "60 mm"),
        usual=("2 mm", "10 mm"),
        units=("mm",),
        unit="mm",
        optional=True,
        when=COUNTED,
        measure="Only for a rule of the trade that goes by it.",
    )
    many = Input[str](
        CHOICE, "Colors", default="no", options=(Option("no", "One"), Option("yes", "Several"))
    )
    colors = Rows(
        Color,
        "Colors",
        "color",
        least=2,
        most=12,
        when={many: ("yes",)},
        measure="By share of the yarn: what they add up to is taken as the whole.",
        default=(
            {"name": "Main", "share": "50"},
            {"name": "Second", "share": "27"},
            {"name": "Third", "share": "23"},
        ),
    )
    sure = Input[str](
        CHOICE,
        "How sure",
        default="95",
        options=tuple(
            Option(each, f"{each} in 100{' (gauge and swatch measured)' if each == '99' else ''}")
            for each in ("80", "90", "95", "99")
        ),
    )

    tex = Between[float](LINEAR_DENSITY, "The yarn")
    bare = Between[float](LENGTH, "The pattern’s figure without a buffer")
    loop_constant = Between[float](NUMBER, "Loop constant Ks")
    stitch = Between[float](LENGTH, "Yarn in one stitch, as this yarn is usually knitted")
    on_area = Between[float](NUMBER, "Yarn in a square centimeter, cm")
    factor = Between[float](NUMBER, "This stitch against stocking stitch")
    swatch_area = piece("Swatch")
    count = Between[float](NUMBER, "Stitches in all")

    buy = Result[int](COUNT, "Skeins to buy", rounding="up", decided=to_buy)
    enough = Result[float](PERCENT, "Enough for", chance=Chance(IN_SKEINS, by=chance_of_enough))
    need = Result[float](
        LENGTH, "Yarn needed", units=("yd", "m"), finest=(1, 1), rounding="up", floor=0.0
    )
    mass = Result[float](
        MASS, "Its weight", units=("g", "oz"), finest=(1, 0.1), rounding="up", floor=0.0
    )
    skeins = IN_SKEINS
    area = Result[float](AREA, "Cloth", units=("cm²", "in²"), unit="cm²", finest=(1, 1), floor=0.0)
    by_swatch = Result[float](
        LENGTH, "By the weighed swatch", units=("yd", "m"), finest=(1, 1), rounding="up", floor=0.0
    )
    by_loop = Result[float](
        LENGTH, "By the loop model", units=("yd", "m"), finest=(1, 1), rounding="up", floor=0.0
    )
    by_area_rule = Result[float](
        LENGTH, "Trade rule, by stitches", units=("yd", "m"), finest=(1, 1), rounding="up"
    )
    by_needle_rule = Result[float](
        LENGTH, "Trade rule, by needle", units=("yd", "m"), finest=(1, 1), rounding="up"
    )
