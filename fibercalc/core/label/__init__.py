"""Exact labels: what stands where on a small piece of paper, laid out in millimeters, and how many go on a sheet. Knows no trade."""

from .label import LEAST, Area, Block, Code, Label, TooLong, laid_out, smallest
from .sheet import PAGES, Sheets, fits_on, gap_of, grid

__all__ = ["LEAST", "PAGES", "Area", "Block", "Code", "Label", "Sheets", "TooLong", "fits_on", "gap_of", "grid", "laid_out", "smallest"]
