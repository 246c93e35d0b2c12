"""Wall charts of the dye chapter: tables and pictures made by the chapter's own formulas, each on
one printed page.
"""

from .acids import acid_equivalence
from .bath import auxiliaries, liquor_ratios, steam_times
from .boiling import boiling_points
from .classes import dye_classes, fibers_in_the_bath
from .depth import depth_to_volume, depth_words
from .ladder import dilution_ladder
from .mordants import mordants
from .stocks import stock_makeup, stock_strengths
from .troubles import troubles

__all__ = [
    "acid_equivalence",
    "auxiliaries",
    "boiling_points",
    "depth_to_volume",
    "depth_words",
    "dilution_ladder",
    "dye_classes",
    "fibers_in_the_bath",
    "liquor_ratios",
    "mordants",
    "steam_times",
    "stock_makeup",
    "stock_strengths",
    "troubles",
]
