"""A part of a drawing ruled in threads: cloth of 400 by 400 threads as a few elements.

A thread that goes up and down in a regular order is one dashed line. So cloth is bands of weft,
and over them the warp as dashed lines, each color and each column of the repeat as one path.
Rejected: a box for each crossing (160,000 of them), and patterns or masks, which need names of
their own in the page and vanish where the first picture of that name is hidden.
"""

from collections.abc import Sequence

from ..markup import tag
from .drawing import INK, Drawing


class Grid:
    """Cells counted from the left and from the bottom up, each across x up units on the sheet;
    whole numbers keep its paths short.
    """

    def __init__(self, drawing: Drawing, left: float, bottom: float, across: float, up: float):
        self._add = drawing.add
        self._cells = f"matrix({across:.4f} 0 0 {-up:.4f} {left:.2f} {bottom:.2f})"
        self._columns = (  # a column's line runs through its middle
            f"matrix({across:.4f} 0 0 {-up:.4f} {left + across / 2:.3f} {bottom:.2f})"
        )

    def boxes(
        self,
        boxes: Sequence[tuple[int, int, int, int]],
        fill: str,
        stroke: str = "none",
        width: float = 0.0,
        opacity: float = 1.0,
    ) -> None:
        """Many boxes (first column, first row, columns, rows) as one path; width of the outline
        in sheet units; opacity of the filling 0 to 1.
        """
        if boxes:
            data = "".join(f"M{x} {y}h{wide}v{high}h{-wide}z" for x, y, wide, high in boxes)
            outline = (
                {
                    "stroke": stroke,
                    "stroke_width": f"{width:g}",
                    "vector_effect": "non-scaling-stroke",
                }
                if width
                else {}
            )
            self._add(
                tag(
                    "path",
                    d=data,
                    fill=fill,
                    transform=self._cells,
                    fill_opacity=f"{opacity:.3g}" if opacity < 1 else None,
                    **outline,
                )
            )

    def columns(
        self,
        places: Sequence[int],
        first: int,
        last: int,
        runs: Sequence[int] = (),
        stroke: str = INK,
    ) -> None:
        """Whole columns from row first to row last as one path. runs: rows shown, rows not shown,
        and so on over and over from row first (begin with 0 where the first are not shown);
        without runs all are shown.
        """
        if places:
            data = "".join(f"M{x} {first}V{last}" for x in places)
            dashes = " ".join(map(str, runs)) or None
            self._add(
                tag(
                    "path",
                    d=data,
                    fill="none",
                    stroke=stroke,
                    transform=self._columns,
                    stroke_dasharray=dashes,
                )
            )
