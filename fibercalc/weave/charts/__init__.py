"""Wall charts of the weave chapter: tables made by the chapter's own formulas, each on one
printed page.
"""

from .draw_downs import draw_downs
from .heddles import denting, ends_in_width, heddles
from .percentages import crimp_and_take_up, percentages
from .setts import setts
from .structures import structures
from .warping import warping

__all__ = [
    "crimp_and_take_up",
    "denting",
    "draw_downs",
    "ends_in_width",
    "heddles",
    "percentages",
    "setts",
    "structures",
    "warping",
]
