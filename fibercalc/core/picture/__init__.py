"""Pictures as SVG text, drawn to be read at 358 px wide and in black and white, each with the words that stand for it."""

from .drawing import INDIGO, INDIGO_WASH, INK, LINE, MADDER, MADDER_WASH, PAPER, SHEET, SOFT, Drawing
from .scale import Scale, nice_ticks

__all__ = ["INDIGO", "INDIGO_WASH", "INK", "LINE", "MADDER", "MADDER_WASH", "PAPER", "SHEET", "SOFT", "Drawing", "Scale", "nice_ticks"]
