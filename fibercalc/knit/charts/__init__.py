"""Wall charts of the knit chapter: tables and pictures made by the chapter's own formulas, each on one printed page."""

from .bodies import body_measures, children_sizes, ease, men_sizes, women_sizes
from .gauge import cast_on, gauge, swatch_error
from .needles import needle_sizes
from .shawls import shawl_shapes, shawl_yarn
from .structures import loop_constants, structures

__all__ = ["body_measures", "cast_on", "children_sizes", "ease", "gauge", "loop_constants", "men_sizes", "needle_sizes", "shawl_shapes", "shawl_yarn",
           "structures", "swatch_error", "women_sizes"]
