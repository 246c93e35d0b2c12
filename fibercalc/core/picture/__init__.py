"""Pictures as SVG text, drawn to be read at 358 px wide and in black and white, each with the words that stand for it."""

from .contrast import against, dash_of
from .drawing import INDIGO, INDIGO_WASH, INK, LINE, MADDER, MADDER_WASH, PAPER, SHEET, SOFT, Drawing, short
from .grid import Grid
from .scale import Scale, nice_ticks

__all__ = ["INDIGO", "INDIGO_WASH", "INK", "LINE", "MADDER", "MADDER_WASH", "PAPER", "SHEET", "SOFT", "Drawing", "Grid", "Scale", "against", "dash_of",
           "nice_ticks", "short"]
