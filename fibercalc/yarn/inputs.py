"""What several cards ask or answer alike: a skein, a reel, and small skeins of a full one.
A card takes one with `replace`, and says what differs there.
"""

from dataclasses import replace

from ..core.card import Input, Result
from ..core.units import COUNT, LENGTH, MASS, PERCENT
from ..held import RECORD

SKEIN_MASS = Input[float](
    MASS,
    "A skein weighs",
    default="100 g",
    allowed=("1 g", "5 kg"),
    usual=("20 g", "250 g"),
    units=("g", "oz"),
    bench=RECORD.bench.bases.mass,
    record=RECORD.base.mass,
)
SKEIN_LENGTH = Input[float](
    LENGTH,
    "A skein holds",
    default="420 m",
    allowed=("5 m", "10000 m"),
    usual=("50 m", "900 m"),
    rough="1.5 %",
    units=("m", "yd"),
    bench=RECORD.bench.bases.length,
    record=RECORD.base.length,
)
FULL_MASS = replace(SKEIN_MASS, label="A full skein weighs", usual=("50 g", "250 g"), rough="1 %")
FULL_LENGTH = replace(
    SKEIN_LENGTH, label="A full skein holds", allowed=("1 m", "20000 m"), usual=("100 m", "800 m")
)
AROUND = Input[float](
    LENGTH,
    "Once around the reel",
    default="1.50 m",
    allowed=("0.05 m", "10 m"),
    usual=("0.5 m", "2 m"),
    rough="0.5 %",
    units=("m", "cm", "in", "yd"),
    bench=RECORD.bench.reels.circumference,
)
STRETCH = Input[float](
    PERCENT,
    "Stretch on the reel",
    default="0 %",
    allowed=("0 %", "20 %"),
    usual=("0 %", "3 %"),
    rough="0.5 %",
    bench=RECORD.bench.reels.stretch,
)
WINDING_LOSS = Input[float](
    PERCENT,
    "Lost in winding",
    default="2 %",
    allowed=("0 %", "50 %"),
    usual=("1 %", "3 %"),
    rough="0.5 %",
)
SMALL_TURNS = Input[int](
    COUNT, "Turns for a small skein", default="54", allowed=("1", "5000"), usual=("10", "150")
)
SMALL_MASS = Input[float](
    MASS,
    "Weight of a small skein",
    default="20 g",
    allowed=("0.5 g", "1 kg"),
    usual=("5 g", "50 g"),
    units=("g", "oz"),
)
SMALL_COUNT = Input[int](
    COUNT, "How many from one skein", default="5", allowed=("1", "500"), usual=("2", "20")
)
SHARE = Input[float](PERCENT, "Share", default="25 %", allowed=("0 %", "100 %"))
SMALL_OF_ONE = Result[int](COUNT, "Small skeins from one", rounding="down", fixed=True)
SMALL_WOUND = Result[int](COUNT, "Turns for each", fixed=True)
SMALL_HOLDS = Result[float](
    LENGTH, "Length of a small skein", units=("m", "yd"), finest=(0.1, 1), rounding="down"
)
SMALL_WEIGHS = Result[float](
    MASS, "Weight of a small skein", units=("g", "oz"), finest=(0.1, 0.01), rounding="down"
)
LEFT_OF_ONE = Result[float](LENGTH, "Left of each full skein", units=("m", "yd"), finest=(0.1, 0.1))
