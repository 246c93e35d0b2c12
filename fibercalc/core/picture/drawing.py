"""A drawing board: shapes and labels on a sheet 360 units wide. Labels are kept inside the sheet,
never clipped.
"""

from collections.abc import Iterable
from typing import TypeAlias

from ..answer import Picture
from ..markup import Markup, tag

Points: TypeAlias = Iterable[tuple[float, float]]

WIDTH = 360
TEXT = 14  # the size labels are read at on a phone
# Mean width of a character of our typeface, in em; a little wide, so that labels never clip
CHARACTER = 0.56

# The site's own colors, with the light scheme's values where a picture stands alone.
INK, SOFT, LINE = "var(--ink, #1f2328)", "var(--soft, #555a5f)", "var(--line, #d9d3c4)"
INDIGO, INDIGO_WASH = "var(--indigo, #27407a)", "var(--indigo-wash, #e8ecf5)"
MADDER, MADDER_WASH = "var(--madder, #8c2f22)", "var(--madder-wash, #f8ebe6)"
PAPER, SHEET = "var(--paper, #f7f4ec)", "var(--sheet, #fffdf8)"

HALO = {"paint_order": "stroke", "stroke": SHEET, "stroke_width": "4", "stroke_linejoin": "round"}


def n(value: float) -> str:
    """A coordinate, short."""
    return f"{value:.1f}".removesuffix(".0")


def through(points: Points) -> str:
    """The data of a path from point to point."""
    return "M" + "L".join(f"{n(x)} {n(y)}" for x, y in points)


def short(name: str, most: int) -> str:
    """A name in so many characters: its beginning and its end, since the names of one studio
    often differ only there.
    """
    if len(name) <= most:
        return name
    end = most // 3
    return f"{name[: most - 1 - end].rstrip()}…{name[-end:].lstrip()}"


class Drawing:
    """Collects shapes; picture() gives the finished SVG with its title and words."""

    def __init__(self, height: float, width: float = WIDTH):
        self.width, self.height = width, height
        self._parts: list[Markup] = []
        self.labels: list[
            tuple[float, float, float, str]
        ] = []  # left, right, baseline, text: for the test that nothing clips

    def add(self, part: Markup) -> None:
        """A finished element: what a part of the board of its own has made."""
        self._parts.append(part)

    def _shape(
        self,
        name: str,
        *,
        stroke: str,
        stroke_width: float,
        fill: str | None = None,
        dash: str = "",
        **geometry: str,
    ) -> None:
        """One outlined element: how it is drawn, after where it is."""
        self._parts.append(
            tag(
                name,
                **geometry,
                fill=fill,
                stroke=stroke,
                stroke_width=n(stroke_width),
                stroke_dasharray=dash or None,
            )
        )

    def line(
        self,
        x1: float,
        y1: float,
        x2: float,
        y2: float,
        stroke: str = INK,
        width: float = 1.0,
        dash: str = "",
    ) -> None:
        self._shape(
            "line",
            x1=n(x1),
            y1=n(y1),
            x2=n(x2),
            y2=n(y2),
            stroke=stroke,
            stroke_width=width,
            dash=dash,
        )

    def rect(
        self,
        x: float,
        y: float,
        width: float,
        height: float,
        fill: str = "none",
        stroke: str = INK,
        stroke_width: float = 1.0,
    ) -> None:
        self._shape(
            "rect",
            x=n(x),
            y=n(y),
            width=n(max(width, 0)),
            height=n(max(height, 0)),
            fill=fill,
            stroke=stroke,
            stroke_width=stroke_width,
        )

    def circle(
        self,
        x: float,
        y: float,
        radius: float,
        fill: str = "none",
        stroke: str = INK,
        width: float = 1.0,
    ) -> None:
        self._shape(
            "circle", cx=n(x), cy=n(y), r=n(radius), fill=fill, stroke=stroke, stroke_width=width
        )

    def ellipse(
        self,
        x: float,
        y: float,
        rx: float,
        ry: float,
        fill: str = "none",
        stroke: str = INK,
        width: float = 1.0,
    ) -> None:
        self._shape(
            "ellipse",
            cx=n(x),
            cy=n(y),
            rx=n(rx),
            ry=n(ry),
            fill=fill,
            stroke=stroke,
            stroke_width=width,
        )

    def path(
        self,
        points: Points,
        fill: str = "none",
        stroke: str = INK,
        width: float = 1.0,
        closed: bool = False,
        dash: str = "",
    ) -> None:
        """A line through points."""
        data = through(points) + ("Z" if closed else "")
        self._shape("path", d=data, fill=fill, stroke=stroke, stroke_width=width, dash=dash)

    def boxes(
        self,
        boxes: Iterable[tuple[float, float, float, float]],
        fill: str,
        stroke: str = "none",
        width: float = 1.0,
    ) -> None:
        """Many boxes (x, y, width, height) as one path: a fabric of thousands of stitches stays a
        few elements.
        """
        data = "".join(
            f"M{n(x)} {n(y)}h{n(wide)}v{n(high)}h{n(-wide)}z" for x, y, wide, high in boxes
        )
        if data:
            self._shape("path", d=data, fill=fill, stroke=stroke, stroke_width=width)

    def strokes(
        self, lines: Iterable[Points], stroke: str = INK, width: float = 1.0, dash: str = ""
    ) -> None:
        """Many separate lines, each through its own points, as one path."""
        data = "".join(through(points) for points in lines)
        if data:
            self._shape("path", d=data, fill="none", stroke=stroke, stroke_width=width, dash=dash)

    def hatch(
        self, x: float, y: float, width: float, height: float, gap: float = 6.0, stroke: str = INK
    ) -> None:
        """Slanting lines across a box, as one path: a filling that needs no color."""
        at, data = -height, ""
        while at < width:
            x1, x2 = max(at, 0), min(at + height, width)
            if x2 > x1:
                data += (
                    f"M{n(x + x1)} {n(y + height - (x1 - at))}L{n(x + x2)}"
                    f" {n(y + height - (x2 - at))}"
                )
            at += gap
        if data:
            self._shape("path", d=data, fill="none", stroke=stroke, stroke_width=0.8)

    def text(
        self,
        x: float,
        y: float,
        words: str,
        anchor: str = "start",
        size: float = TEXT,
        bold: bool = False,
        fill: str = INK,
        halo: bool = False,
    ) -> None:
        """A label; moved sideways where it would leave the sheet. A halo keeps it readable across
        lines.
        """
        wide = len(words) * size * CHARACTER * (1.06 if bold else 1.0)
        left = x - {"start": 0.0, "middle": wide / 2, "end": wide}[anchor]
        moved = min(max(left, 1.0), max(self.width - wide - 1.0, 1.0)) - left
        self.labels.append((left + moved, left + moved + wide, y, words))
        self._parts.append(
            tag(
                "text",
                words,
                x=n(x + moved),
                y=n(y),
                text_anchor=anchor if anchor != "start" else None,
                font_size=n(size),
                font_weight="600" if bold else None,
                fill=fill,
                **(HALO if halo else {}),
            )
        )

    def picture(self, title: str, alt: str) -> Picture:
        """The finished picture."""
        svg = tag(
            "svg",
            *self._parts,
            xmlns="http://www.w3.org/2000/svg",
            class_="picture",
            viewBox=f"0 0 {n(self.width)} {n(self.height)}",
            role="img",
            aria_label=alt,
            font_family="inherit",
        )
        return Picture(title, alt, svg, self.height)
