"""What is asked about a sett: the yarn and how thick it is, the weave, the use, what is at hand."""

from __future__ import annotations

from ....core.card import CHOICE, TEXT, Between, Case, Input, Option, Plain, Result, Row, Rows
from ....core.table import read_table
from ....core.units import COUNT, LINEAR_DENSITY, NUMBER, PER_LENGTH, PERCENT
from ....yarn.diameter import ashenhurst_constants
from ...setting import interlacings
from ...settings import INCH, METRIC, OWN, REED, RIGID, Threading

ASHENHURST_K, PEIRCE, PACKED = "ashenhurst", "peirce", "packed"
COUNT_UNITS = ("m/100 g", "yd/lb", "yd/100 g", "tex", "Nm", "Ne", "Nw", "run", "lea", "yd/oz")
WEAVES = {row["key"]: row for row in interlacings().rows}
USES = {row["key"]: row for row in read_table("weave", "sett-uses").rows}
RELAXED = (
    "a relaxed hand wrap counts about half the diameters in an inch, and no two hands wrap alike:"
    " the cloth would be half as close as it should be. Push the turns together until they touch,"
    " or go by the yarn’s length and weight"
)


class Heddle(Row):
    """One heddle."""

    dents = Input[float](
        PER_LENGTH,
        "Dents",
        default="40 per 10 cm",
        allowed=("1 per in", "60 per in"),
        usual=("2 per in", "40 per in"),
        units=("per 10 cm", "per in"),
        unit="per in",
    )


class Sett(Case):
    """A yarn to be set for a weave and a use, on a heddle or reed at hand."""

    by = Input[str](
        CHOICE,
        "Thickness from",
        default=ASHENHURST_K,
        options=(
            Option(ASHENHURST_K, "Length and weight, by the kind of yarn (Ashenhurst)"),
            Option(PEIRCE, "Length and weight, cotton (Peirce)"),
            Option(PACKED, "A close-packed wrap"),
        ),
        refused=dict.fromkeys(
            (
                "relaxed",
                "hand",
                "hand wrap",
                "relaxed wrap",
                "relaxed hand wrap",
                "ruler",
                "wraps",
                "wpi",
                "wraps per inch",
            ),
            RELAXED,
        ),
    )
    GOING_BY = {by: (ASHENHURST_K, PEIRCE)}
    count = Input[float](
        LINEAR_DENSITY,
        "Count of the yarn",
        default="170 m/100 g",
        allowed=("0.5 tex", "50000 tex"),
        usual=("15 tex", "2000 tex"),
        rough="3 %",
        units=COUNT_UNITS,
        unit="tex",
        when=GOING_BY,
        measure="From its label or a weighed length, never from a hand wrap.",
    )
    kind = Input[str](
        CHOICE,
        "Kind of yarn",
        default="cotton",
        options=tuple(Option(row["name"], row["label"]) for row in ashenhurst_constants().rows),
        when={by: (ASHENHURST_K,)},
    )
    wraps = Input[float](
        PER_LENGTH,
        "Turns pushed together",
        default="25 per in",
        allowed=("1 per in", "300 per in"),
        usual=("4 per in", "80 per in"),
        rough="1 per in",
        units=("per in", "per cm"),
        unit="per in",
        when={by: (PACKED,)},
        measure="Around a smooth rod, pushed close until no more go in. A relaxed wrap is no use"
        " here.",
    )
    known_count = Input[float | None](
        LINEAR_DENSITY,
        "Its count, to test the wraps",
        default="170 m/100 g",
        allowed=("0.5 tex", "50000 tex"),
        usual=("15 tex", "2000 tex"),
        optional=True,
        units=COUNT_UNITS,
        unit="tex",
        when={by: (PACKED,)},
        measure="Blank if it is not known; then a loose wrap cannot be told from a close one.",
    )
    weave = Input[str](
        CHOICE,
        "Weave",
        default="plain",
        options=tuple(Option(key, row["label"]) for key, row in WEAVES.items()),
    )
    use = Input[str](
        CHOICE,
        "For",
        default="cloth",
        options=tuple(Option(key, row["label"]) for key, row in USES.items()),
    )
    picks = Input[float | None](
        PER_LENGTH,
        "Picks, as you beat",
        default="5 per cm",
        allowed=("0.2 per cm", "60 per cm"),
        usual=("1 per cm", "30 per cm"),
        rough="0.2 per cm",
        units=("per cm", "per in", "per 10 cm"),
        unit="per in",
        optional=True,
        measure="On the loom, in the same yarn. Blank for as many as ends.",
    )
    on = Input[str](
        CHOICE,
        "Set in",
        default=RIGID,
        options=(Option(RIGID, "A rigid heddle"), Option(REED, "A reed")),
    )
    made = Input[str](
        CHOICE,
        "At hand",
        default=METRIC,
        options=(
            Option(METRIC, "The usual metric ones"),
            Option(INCH, "The usual inch ones"),
            Option(OWN, "My own"),
        ),
    )
    own = Rows(
        Heddle,
        "My own",
        "heddle",
        least=1,
        most=10,
        when={made: (OWN,)},
        measure="Holes and slots together, or dents, as printed on it.",
        default=({"dents": "30 per 10 cm"}, {"dents": "40 per 10 cm"}),
    )

    yards_per_pound = Between[float](LINEAR_DENSITY, "Yards in a pound", unit="yd/lb")
    cotton_count = Between[float](LINEAR_DENSITY, "Cotton hanks in a pound", unit="Ne")
    wrap_ratio = Plain[float](fixed=True)
    constant = Between[float](NUMBER, "Ashenhurst’s constant for this kind of yarn")
    ends = Between[float](COUNT, "Ends in a repeat of the weave")
    crossings = Between[float](COUNT, "Crossings in a repeat of the weave")
    share_low = Between[float](PERCENT, "Share of it for this use, low")
    share_high = Between[float](PERCENT, "Share of it for this use, high")
    ways = Plain[list[Threading]](fixed=True)
    dents_in_10_cm = Between[float](PER_LENGTH, "Dents in 10 cm of it", unit="per 10 cm")
    dents = Between[float](PER_LENGTH, "Dents in an inch of it", unit="per in")
    heddles = Between[int](COUNT, "Heddles")
    ends_of_the_order = Between[int](COUNT, "Ends of its denting order")
    dents_of_the_order = Between[int](COUNT, "Dents of its denting order")
    warp_cover = Between[float](NUMBER, "Peirce’s cover factor of the warp; threads touch at 28")
    weft_cover = Between[float](NUMBER, "Peirce’s cover factor of the weft")
    diameter = Between[float](NUMBER, "Diameter after Peirce, in inches")
    reach = Between[float](NUMBER, "Left for the picks to bend (jammed, both ways add up to 1)")

    working = Result[float](
        PER_LENGTH, "Working sett", unit="per in", units=("per cm", "per in"), finest=(0.1, 0.1)
    )
    threading = Result[str](TEXT, "Nearest at hand")
    sett = Result[float](
        PER_LENGTH,
        "Ends that it gives",
        unit="per in",
        units=("per cm", "per in"),
        finest=(0.01, 0.1),
    )
    closest = Result[float](
        PER_LENGTH,
        "Closest sett",
        unit="per in",
        units=("per cm", "per in"),
        finest=(0.1, 0.1),
        rounding="down",
    )
    closeness = Result[float](PERCENT, "Of the closest", finest=(1,))
    diameters = Result[float](
        PER_LENGTH,
        "Diameters side by side",
        unit="per in",
        units=("per cm", "per in"),
        finest=(0.1, 0.1),
    )
    balance = Result[float](NUMBER, "Picks for each end", finest=(0.01,))
    cover = Result[float](PERCENT, "Covered by thread", finest=(1,))
    most_picks = Result[float](
        PER_LENGTH,
        "Picks when it jams",
        unit="per in",
        units=("per cm", "per in"),
        finest=(0.1, 0.1),
        rounding="down",
    )
