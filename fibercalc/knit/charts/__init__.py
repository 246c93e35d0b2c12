"""Wall charts of the knit chapter: tables and pictures made by the chapter's own formulas, each
on one printed page.
"""

from .bodies import body_measures, children_sizes, ease, men_sizes, women_sizes
from .gauge import cast_on, gauge, swatch_error
from .needles import needle_sizes
from .projects import skeins_by_project, yarn_by_project
from .shawls import shawl_shapes, shawl_yarn
from .socks import sock_rounds
from .structures import loop_constants, structures

__all__ = [
    "body_measures",
    "cast_on",
    "children_sizes",
    "ease",
    "gauge",
    "loop_constants",
    "men_sizes",
    "needle_sizes",
    "shawl_shapes",
    "shawl_yarn",
    "skeins_by_project",
    "sock_rounds",
    "structures",
    "swatch_error",
    "women_sizes",
    "yarn_by_project",
]
