"""What is asked about a kit, and what goes in it; first, how the skeins are settled last."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, TEXT, Between, Case, Input, Option, Plain, Result, Row, Rows
from ....core.outcome import Outcome
from ....core.spread import Parts
from ....core.units import COUNT, LENGTH, NUMBER, PERCENT
from ....dye.inputs import DYE_DAYS, LOADS
from ....dye.pot_loads import MOST_SKEINS, days_at_rounds, loads_needed
from ....held import RECORD
from ....knit.needs import BUFFERS, KNITTER_ERROR
from ....knit.odds import smallest_enough
from ....yarn.inputs import AROUND, SKEIN_LENGTH, SKEIN_MASS, WINDING_LOSS
from ...inputs import LOADS_IN_DAY, SKEINS_IN_LOAD
from ...kits import chance_short, color_in_skeins, spare_share


class Color(Row):
    """One color."""

    name = Input[str](TEXT, "Name", default="D", longest=40, lent=False)
    needed = Input[float](
        LENGTH,
        "Yarn, by the pattern",
        default="100 m",
        allowed=("0.5 m", "20000 m"),
        usual=("10 m", "2000 m"),
        rough="5 m",
        units=("m", "yd"),
    )
    give = Input[int | None](
        COUNT,
        "Skeins, if you have settled it",
        record=RECORD.product.parts.skeins,
        allowed=("1", "60"),
        optional=True,
    )

    bare = Between[float](LENGTH, "The pattern’s figure without a buffer")
    taken = Between[float](NUMBER, "In skeins")
    in_skeins = Plain[float]()  # what it takes, as taken, with its spread
    spread = Plain[Parts]()
    skeins = Plain[int]()  # given in a kit
    short = Plain[float]()  # the chance, 0 to 1, that they are not enough


def packed_colors(out: Outcome[KitYarn]) -> list[Color]:
    """The colors with their spread, the skeins given and the chance that they are short.

    They are found once, when the first result is settled: roughness is known by then.
    """
    colors, length = out.case.colors, KitYarn.skein_length.name
    if colors[0].maybe(Color.skeins) is None:
        holds, half = BUFFERS[out.case.buffer]
        for number, color in enumerate(colors, 1):
            color.in_skeins, color.spread = color_in_skeins(
                color.needed,
                out.readings[KitYarn.colors.each(Color.needed).of(number)].rough,
                out.case.skein_length,
                out.readings[length].rough,
                holds,
                half,
                KNITTER_ERROR,
            )
            color.skeins = color.give or smallest_enough(
                color.in_skeins, color.spread, float(out.case.sure) / 100
            )
            color.short = chance_short(color.skeins, color.in_skeins, color.spread)
    return colors


def spare_in(out: Outcome[KitYarn], color: Color) -> float:
    """What is given of a color over the pattern's figure, %."""
    return spare_share(color.needed, color.skeins, out.case.skein_length)


def tightest_of(out: Outcome[KitYarn]) -> Color:
    """The color of which most run short."""
    return max(
        packed_colors(out),
        key=lambda color: (round(color.short, 4), color.in_skeins / color.skeins),
    )


def in_a_kit(out: Outcome[KitYarn]) -> int:
    return sum(color.skeins for color in packed_colors(out))


def in_all_kits(out: Outcome[KitYarn]) -> int:
    return out.case.packed * in_a_kit(out)


def loads_of(out: Outcome[KitYarn]) -> int | None:
    """Loads of all colors; no room is planned for more skeins than so many."""
    skeins = [out.case.packed * color.skeins for color in packed_colors(out)]
    return loads_needed(skeins, out.case.load) if sum(skeins) <= MOST_SKEINS else None


def days_of(out: Outcome[KitYarn]) -> int | None:
    if not out.has(KitYarn.loads):
        return None
    return days_at_rounds(out.value(KitYarn.loads), 1, out.case.a_day)


class KitYarn(Case):
    """A kit of several colors by its pattern: skeins of each, and how sure they are."""

    kits = Input[int](
        COUNT, "Kits to sell", default="16", allowed=("1", "1000"), usual=("4", "100")
    )
    spare = Input[int](
        COUNT,
        "Spare kits",
        default="2",
        allowed=("0", "200"),
        usual=("0", "10"),
        measure="For lost parcels; see “How many should I dye?”.",
    )
    skein_mass = replace(SKEIN_MASS, allowed=("5 g", "2 kg"))
    skein_length = replace(SKEIN_LENGTH, measure="In meters or yards; grams are not asked here.")
    colors = Rows(
        Color,
        "Colors",
        "color",
        record=RECORD.product.parts,
        least=1,
        most=40,
        measure="Each color’s length as the pattern gives it, for the size you pack.",
        default=(
            {"name": "A", "needed": "640 m"},
            {"name": "B", "needed": "350 m"},
            {"name": "C", "needed": "300 m"},
        ),
    )
    buffer = Input[str](
        CHOICE,
        "Do these figures hold a buffer already?",
        default="unknown",
        options=(
            Option("unknown", "It does not say"),
            Option("held", "Yes, some is added"),
            Option("none", "No, it is what was used"),
        ),
    )
    sure = Input[str](
        CHOICE,
        "Enough in each color for",
        default="95",
        options=tuple(Option(each, f"{each} in 100 knitters") for each in ("80", "90", "95", "99")),
    )
    load = replace(SKEINS_IN_LOAD)
    a_day = replace(LOADS_IN_DAY, measure="Pots times rounds.")
    reel = replace(AROUND, label="One turn of your reel, rested", rough="")
    loss_share = replace(WINDING_LOSS, label="Lost in winding, when a skein is cut", rough="")

    packed = Result[int](COUNT, "Kits to pack")
    in_kit = Result[int](COUNT, "Skeins in a kit", rounding="up", decided=in_a_kit)
    in_all = Result[int](COUNT, "Skeins in all kits", rounding="up", decided=in_all_kits)
    # What is decided is declared a number in the core; this is a name.
    tightest = Result[str](
        TEXT,
        "Tightest color",
        decided=lambda out: tightest_of(out).name,  # type: ignore[arg-type,return-value]
    )
    spare_share = Result[float](
        PERCENT,
        "Spare in it, over the pattern",
        finest=(1,),
        rounding="down",
        decided=lambda out: spare_in(out, tightest_of(out)),
    )
    short = Result[float](
        PERCENT,
        "Knitters who run short in it",
        finest=(0.1,),
        at_step=True,
        rounding="up",
        decided=lambda out: 100 * tightest_of(out).short,
    )
    loads = replace(LOADS, decided=loads_of)
    dye_days = replace(DYE_DAYS, decided=days_of)
