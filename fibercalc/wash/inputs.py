"""What several cards ask or answer alike: a tape before and after the wash, and what follows.
A card takes one with `replace`, and says what differs there.
"""

from ..core.card import Input, Result
from ..core.units import LENGTH, PERCENT

TAPE_BEFORE = Input[float](
    LENGTH,
    "Before",
    allowed=("2 cm", "1000 cm"),
    usual=("8 cm", "100 cm"),
    rough="0.1 cm",
    units=("cm", "in"),
    unit="cm",
    instrument="tape before",
)
SIZE_WASHED = Result[float](
    LENGTH, "Size", units=("cm", "in"), finest=(0.1, 0.1), floor=0.0, unit="cm"
)
CHANGE_WASHED = Result[float](PERCENT, "Change", finest=(0.1,))
