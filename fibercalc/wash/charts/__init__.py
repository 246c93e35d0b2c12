"""Wall charts of the wash chapter: tables and pictures made by the chapter's own formulas, each
on one printed page.
"""

from .care import care_dyes, care_fibers, care_words
from .fastness import fluff_or_dye, gray_scales, tests_at_home
from .marking import marking
from .shrink import relaxation, shrink_ranges, size_to_make

__all__ = [
    "care_dyes",
    "care_fibers",
    "care_words",
    "fluff_or_dye",
    "gray_scales",
    "marking",
    "relaxation",
    "shrink_ranges",
    "size_to_make",
    "tests_at_home",
]
