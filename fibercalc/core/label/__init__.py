"""Exact labels: what stands where on a small piece of paper, laid out in millimeters, and how
many go on a sheet. Knows no trade.
"""

from .label import LEAST, Area, Block, Code, Label, TooLong, laid_out, smallest
from .sheet import PAGES, Precut, Sheets, fits_on, gap_of, grid, has_foot

__all__ = [
    "LEAST",
    "PAGES",
    "Area",
    "Block",
    "Code",
    "Label",
    "Precut",
    "Sheets",
    "TooLong",
    "fits_on",
    "gap_of",
    "grid",
    "has_foot",
    "laid_out",
    "smallest",
]
