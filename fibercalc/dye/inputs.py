"""What several cards ask or answer alike: stocks and powders of dye, the bath, and the
way of skeins through it. A card takes one with `replace`, and says what differs there.
"""

from dataclasses import replace

from ..core.card import Input, Result
from ..core.units import CONCENTRATION, COUNT, LENGTH, MASS, NUMBER, PERCENT, TIME, VOLUME
from ..held import RECORD
from ..yarn.inputs import SKEIN_MASS

DYED_SKEIN = replace(SKEIN_MASS, rough="1 g", strict=True)
STRENGTH = Input[float](
    CONCENTRATION,
    "Strength of the stock",
    default="1 g/100 mL",
    allowed=("0.005 g/100 mL", "20 g/100 mL"),
    usual=("0.1 g/100 mL", "5 g/100 mL"),
    units=("g/100 mL", "g/L"),
    strict=True,
)
SYRINGE_ERROR = Input[float](
    VOLUME,
    "The syringe is read to",
    default="1 mL",
    allowed=("0.01 mL", "50 mL"),
    usual=("0.1 mL", "2 mL"),
    units=("mL",),
    strict=True,
)
SCALE_ERROR = Input[float](
    MASS,
    "The scale is good to",
    default="0.02 g",
    allowed=("0.0005 g", "2 g"),
    usual=("0.005 g", "0.1 g"),
    units=("g",),
    strict=True,
)
SCALE_STEP = Input[float](
    MASS,
    "The scale shows steps of",
    default="0.01 g",
    allowed=("0.0001 g", "1 g"),
    usual=("0.001 g", "0.1 g"),
    units=("g",),
    strict=True,
)
LIQUOR_RATIO = Input[float](
    NUMBER, "Bath for each gram of yarn, mL", default="20", allowed=("2", "120"), usual=("15", "40")
)
RAIL = Input[int](
    COUNT, "Skeins that hang on the rail", default="48", allowed=("1", "2000"), usual=("10", "200")
)
DRIES_IN = Input[float](
    TIME,
    "They dry in",
    default="40 h",
    allowed=("0 h", "160 h"),
    usual=("12 h", "72 h"),
    units=("h", "day"),
)
ACID_SHARE = Input[float](
    PERCENT,
    "Acid, percent of the yarn",
    default="1 %",
    allowed=("0 %", "20 %"),
    usual=("1 %", "4 %"),
    strict=True,
)
YARN_IN_BATH = Input[float](
    MASS,
    "Yarn in it, dry",
    default="400 g",
    allowed=("0 g", "50 kg"),
    usual=("50 g", "2 kg"),
    units=("g", "oz"),
    strict=True,
)
BATH = Input[float](
    VOLUME,
    "Bath",
    default="9 L",
    allowed=("0.1 L", "500 L"),
    usual=("1 L", "40 L"),
    rough="3 %",
    units=("L", "mL", "gal"),
    bench=RECORD.bench.pots.fill,
    strict=True,
)
POT_FILL = Input[float](
    VOLUME,
    "Filled to at most",
    default="9 L",
    allowed=("0.1 L", "500 L"),
    units=("L", "qt", "gal"),
    strict=True,
)
ALTITUDE = Input[float](
    LENGTH,
    "Height above the sea",
    default="900 m",
    allowed=("-400 m", "5000 m"),
    usual=("0 m", "2500 m"),
    units=("m", "ft"),
    bench=RECORD.bench.altitude,
    strict=True,
)
LOADS = Result[int](COUNT, "Loads", rounding="up")
DYE_DAYS = Result[int](COUNT, "Dye days", rounding="up")
DRYING_DAYS = Result[int](COUNT, "Drying days after that", rounding="up")
