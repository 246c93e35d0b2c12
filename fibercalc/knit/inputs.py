"""What several cards of the chapter ask alike. A card takes one with `replace`, and says what
differs there.
"""

from dataclasses import replace

from ..core.card import CHOICE, Input, Option
from ..core.table import read_table
from ..core.units import NUMBER, PER_LENGTH
from ..held import RECORD
from ..yarn import inputs as yarn

GAUGE_UNITS = ("per 10 cm", "per 4 in", "per in", "per cm")

PATTERN_STITCHES = Input[float](
    PER_LENGTH,
    "The pattern’s stitches",
    default="21 per 10 cm",
    allowed=("2 per 10 cm", "200 per 10 cm"),
    usual=("10 per 10 cm", "40 per 10 cm"),
    units=GAUGE_UNITS,
)
PATTERN_ROWS = Input[float](
    PER_LENGTH,
    "The pattern’s rows",
    default="28 per 10 cm",
    allowed=("2 per 10 cm", "300 per 10 cm"),
    usual=("12 per 10 cm", "60 per 10 cm"),
    units=GAUGE_UNITS,
)
STITCHES = Input[float](
    PER_LENGTH,
    "Stitches",
    record=RECORD.measurement.stitches,
    default="20 per 10 cm",
    allowed=("2 per 10 cm", "200 per 10 cm"),
    usual=("10 per 10 cm", "40 per 10 cm"),
    rough="0.5 per 10 cm",
    units=GAUGE_UNITS,
)
ROWS = Input[float](
    PER_LENGTH,
    "Rows",
    record=RECORD.measurement.rows,
    default="27 per 10 cm",
    allowed=("2 per 10 cm", "300 per 10 cm"),
    usual=("12 per 10 cm", "60 per 10 cm"),
    rough="0.5 per 10 cm",
    units=GAUGE_UNITS,
)
STATE = Input[str](
    CHOICE,
    "The gauge was counted",
    record=RECORD.measurement.state,
    default="wet",
    options=tuple(
        Option(row["state"], row["label"]) for row in read_table("wash", "munden-constants").rows
    ),
)
SKEIN_MASS = replace(yarn.SKEIN_MASS, allowed=("5 g", "2 kg"), rough="1.5 %")
SKEIN_LENGTH = replace(yarn.SKEIN_LENGTH, default="230 m")
FIRST_ROW = Input[float](
    NUMBER, "Stitches in the first row", default="7", allowed=("1", "2000"), usual=("1", "150")
)
GROWTH = Input[float](
    NUMBER, "Stitches added per row", default="2", allowed=("0", "50"), usual=("0.5", "6")
)
