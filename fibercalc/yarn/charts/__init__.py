"""Wall charts of the yarn chapter: tables and pictures made by the chapter's own formulas, each
on one printed page.
"""

from .counts import count_ladder, count_systems
from .fibers import fiber_density, regain, regain_against_humidity, wool_regains
from .label import label_figures, put_up_limits
from .reel import mini_skeins, reel_lengths, regain_weights
from .wraps import weight_classes, wrapping

__all__ = [
    "count_ladder",
    "count_systems",
    "fiber_density",
    "label_figures",
    "mini_skeins",
    "put_up_limits",
    "reel_lengths",
    "regain",
    "regain_against_humidity",
    "regain_weights",
    "weight_classes",
    "wool_regains",
    "wrapping",
]
