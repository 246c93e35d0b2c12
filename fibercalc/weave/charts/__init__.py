"""Wall charts of the weave chapter: tables and pictures made by the chapter's own formulas, each on one printed page."""

from .structures import structures

__all__ = ["structures"]
