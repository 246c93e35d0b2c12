"""What several cards ask or answer alike: the warp and its picks.
A card takes one with `replace`, and says what differs there.
"""

from ..core.card import Input
from ..core.units import COUNT, PER_LENGTH

WARP_ENDS = Input[int](
    COUNT, "Ends in the warp", default="160", allowed=("4", "2000"), usual=("30", "800")
)
PICKS = Input[float](
    PER_LENGTH,
    "Picks on the loom",
    default="5 per cm",
    allowed=("0.5 per cm", "60 per cm"),
    usual=("2 per cm", "14 per cm"),
    rough="0.2 per cm",
    units=("per cm", "per in", "per 10 cm"),
)
HEM_PICKS = Input[int](
    COUNT, "Picks of each hem", default="24", allowed=("0", "400"), usual=("0", "80")
)
