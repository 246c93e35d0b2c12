"""What the size to make asks: the size wanted, and how much the cloth shrinks."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Input, Option, Plain, Result
from ....core.table import read_table
from ....core.units import LENGTH, NUMBER, PER_LENGTH, PERCENT
from ....held import RECORD
from ...inputs import SIZE_WASHED, TAPE_BEFORE

SWATCH, OWN, PUBLISHED = "swatch", "percent", "published"
CLOTHS = tuple(
    row
    for row in read_table("wash", "shrink-ranges").rows
    if isinstance(row["length_high"], float) and row["length_high"] > row["length_low"]
)
GAUGE_UNITS = ("per cm", "per 10 cm", "per 4 in", "per in")

WANTED = Input[float](
    LENGTH,
    "Wanted",
    allowed=("2 cm", "2000 cm"),
    usual=("5 cm", "500 cm"),
    units=("cm", "in"),
    unit="cm",
)
SWATCH_BEFORE = replace(TAPE_BEFORE, label="Swatch before", default="35 cm")
SWATCH_AFTER = replace(SWATCH_BEFORE, usual=("5 cm", "100 cm"), instrument="tape after")
PERCENT_KNOWN = Input[float](
    PERCENT, "It shrinks by", allowed=("-50 %", "80 %"), usual=("-15 %", "50 %"), rough="2 %"
)
SIZE = replace(SIZE_WASHED)


class MakeSize(Case):
    """A size wanted and a shrinkage, of its own or from a table: the size to make."""

    wanted_length = replace(
        WANTED,
        label="Wanted length, washed",
        default="63 cm",
        measure="Along the rows’ way up, or the warp; hems included.",
    )
    wanted_width = replace(WANTED, label="Wanted width, washed", default="34 cm")
    how = Input[str](
        CHOICE,
        "Shrinkage from",
        default=OWN,
        options=(
            Option(OWN, "A percentage that I know"),
            Option(SWATCH, "A swatch, measured twice"),
            Option(PUBLISHED, "A published range"),
        ),
    )
    length_percent = replace(
        PERCENT_KNOWN,
        label="It shrinks in length by",
        default="18 %",
        when={how: (OWN,)},
        record=RECORD.measurement.length_change,
    )
    width_percent = replace(
        PERCENT_KNOWN,
        label="and in width by",
        default="14 %",
        when={how: (OWN,)},
        record=RECORD.measurement.width_change,
    )
    BY_SWATCH = {how: (SWATCH,)}
    swatch_length = replace(
        SWATCH_BEFORE,
        label="Swatch length before",
        when=BY_SWATCH,
        measure="Between marks, rested and flat.",
    )
    swatch_length_after = replace(
        SWATCH_AFTER, label="Swatch length after", default="28.7 cm", when=BY_SWATCH
    )
    swatch_width = replace(SWATCH_BEFORE, label="Swatch width before", when=BY_SWATCH)
    swatch_width_after = replace(
        SWATCH_AFTER, label="Swatch width after", default="30.1 cm", when=BY_SWATCH
    )
    cloth = Input[str](
        CHOICE,
        "Cloth",
        default="woven-plain",
        options=tuple(Option(row["key"], row["label"]) for row in CLOTHS),
        when={how: (PUBLISHED,)},
    )
    stitches = Input[float | None](
        PER_LENGTH,
        "Stitches or ends, unwashed",
        default="4.26 per cm",
        allowed=("0.2 per cm", "60 per cm"),
        usual=("0.8 per cm", "30 per cm"),
        optional=True,
        units=GAUGE_UNITS,
        measure="Off the needles or off the loom; leave blank if you only want the size.",
    )
    rows = Input[float | None](
        PER_LENGTH,
        "Rows or picks, unwashed",
        default="5 per cm",
        allowed=("0.2 per cm", "80 per cm"),
        usual=("1 per cm", "40 per cm"),
        optional=True,
        units=GAUGE_UNITS,
    )

    length_least = Between[float](PERCENT, "Shrinkage in length, least")
    length_most = Between[float](PERCENT, "Shrinkage in length, most")
    width_least = Between[float](PERCENT, "Shrinkage in width, least")
    width_most = Between[float](PERCENT, "Shrinkage in width, most")
    length_made = Plain[float](fixed=True)
    width_made = Plain[float](fixed=True)

    make_length = replace(SIZE, label="Length to make")
    make_width = replace(SIZE, label="Width to make")
    across = Result[float](NUMBER, "Stitches or ends for it", finest=(1,), floor=0.0)
    along = Result[float](NUMBER, "Rows or picks for it", finest=(1,), floor=0.0)
    finished_length = replace(SIZE, label="Length after washing")
    finished_width = replace(SIZE, label="Width after washing")
    length_shrink = Result[float](PERCENT, "Shrinkage in length", finest=(0.1,))
    width_shrink = Result[float](PERCENT, "Shrinkage in width", finest=(0.1,))
    more = Result[float](PERCENT, "More cloth to make", finest=(1,))


# The two directions of the cloth, what is said of its size in each, and their parts.
WAYS = {"length": "long", "width": "wide"}
WISHED = {"length": MakeSize.wanted_length, "width": MakeSize.wanted_width}
SHRINK = {"length": MakeSize.length_shrink, "width": MakeSize.width_shrink}
MAKE = {"length": MakeSize.make_length, "width": MakeSize.make_width}
FINISHED = {"length": MakeSize.finished_length, "width": MakeSize.finished_width}
COUNTED = {"length": MakeSize.along, "width": MakeSize.across}
