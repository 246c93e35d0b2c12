"""A label drawn in black on white, in millimeters, for the screen and for paper alike."""

from collections.abc import Callable

from ..markup import Child, Markup, inner, tag
from .face import MM_PER_POINT, is_known
from .label import Code, Laid, Line

HAIR = 0.12  # mm: about a third of a point, which every printer draws
BLACK, WHITE = "#000", "#fff"
FINDERS = 7, 25  # squares of a code's corner mark, and of the smallest code that has three


def mm(value: float) -> str:
    """A length in mm, to a thousandth."""
    return f"{value:.3f}".rstrip("0").rstrip(".")


def drawn(laid: Laid, code: Callable[[Code], Markup] | None = None, outline: bool = True) -> Markup:
    """The label at the origin. code draws what stands in a code's box; without it a likeness that
    no reader takes for one stands there.
    """
    label = laid.label
    parts: list[Markup] = []
    if outline:
        parts.append(_edge(laid))
    if label.hole:
        x, y, radius = label.hole
        parts.append(tag("circle", cx=mm(x), cy=mm(y), r=mm(radius), **_stroke()))
    parts += [
        tag("line", x1=mm(x1), y1=mm(y1), x2=mm(x2), y2=mm(y2), **_stroke())
        for x1, y1, x2, y2 in label.rules
    ]
    parts += [
        tag("line", x1=mm(x1), y1=mm(y1), x2=mm(x2), y2=mm(y2), stroke_dasharray="1 1", **_stroke())
        for x1, y1, x2, y2 in label.folds
    ]
    parts += [text(line) for line in laid.lines]
    parts += [code(each) if code else likeness(each) for each in label.codes]
    return inner(*parts)


def _stroke() -> dict[str, str]:
    return {"fill": "none", "stroke": BLACK, "stroke_width": mm(HAIR)}


def _edge(laid: Laid) -> Markup:
    label = laid.label
    if label.round:
        return tag(
            "circle",
            cx=mm(label.width / 2),
            cy=mm(label.height / 2),
            r=mm(label.width / 2),
            class_="cut",
            fill=WHITE,
            stroke=BLACK,
            stroke_width=mm(HAIR),
        )
    return tag(
        "rect",
        x="0",
        y="0",
        width=mm(label.width),
        height=mm(label.height),
        class_="cut",
        fill=WHITE,
        stroke=BLACK,
        stroke_width=mm(HAIR),
    )


def text(line: Line) -> Markup:
    """One line; letters that the book's own face lacks are held to the width they were given."""
    held = (
        {}
        if is_known(line.words)
        else {"textLength": mm(line.wide), "lengthAdjust": "spacingAndGlyphs"}
    )
    return tag(
        "text",
        line.words,
        x=mm(line.x),
        y=mm(line.y),
        font_size=mm(line.size * MM_PER_POINT),
        font_weight="600" if line.bold else None,
        text_anchor="middle" if line.anchor == "middle" else None,
        fill=BLACK,
        **held,
    )


def likeness(code: Code) -> Markup:
    """Where a code will stand: its three corner marks and a cross; the real one needs the address
    of the book, which only printing knows.
    """
    square = code.side / (FINDERS[1] + 8)
    inside = code.side - 8 * square
    corners = ((0, 0), (inside - FINDERS[0] * square, 0), (0, inside - FINDERS[0] * square))
    marks = []
    for x, y in corners:
        left, top = code.x + 4 * square + x, code.y + 4 * square + y
        marks.append(
            tag(
                "rect",
                x=mm(left + square / 2),
                y=mm(top + square / 2),
                width=mm(6 * square),
                height=mm(6 * square),
                fill="none",
                stroke=BLACK,
                stroke_width=mm(square),
            )
        )
        marks.append(
            tag(
                "rect",
                x=mm(left + 2 * square),
                y=mm(top + 2 * square),
                width=mm(3 * square),
                height=mm(3 * square),
                fill=BLACK,
            )
        )
    left, top, end = code.x + 4 * square, code.y + 4 * square, inside
    cross = (
        f"M{mm(left + 8 * square)} {mm(top + 8 * square)}L{mm(left + end)}"
        f" {mm(top + end)}M{mm(left + end)} {mm(top + 8 * square)}L{mm(left + 8 * square)}"
        f" {mm(top + end)}"
    )
    return inner(*marks, tag("path", d=cross, **_stroke()))


def svg(width: float, height: float, *children: Child, **attributes: str | float | None) -> Markup:
    """A drawing of so many mm, at its true size."""
    return tag(
        "svg",
        *children,
        xmlns="http://www.w3.org/2000/svg",
        width=f"{mm(width)}mm",
        height=f"{mm(height)}mm",
        viewBox=f"0 0 {mm(width)} {mm(height)}",
        **attributes,
    )
