"""A sample beside its label: each skein a mark on one scale, the label and the limits as lines."""

from collections.abc import Callable, Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INK, LINE, MADDER, SOFT, Drawing, Scale, nice_ticks

LEFT, RIGHT, TOP, STEP, RADIUS = 14, 346, 46, 11, 4.5


def sample_dots(
    values: Sequence[float],
    label: float,
    mean: float,
    limits: Sequence[tuple[str, float]],
    written: Callable[[float], str],
) -> Picture:
    """Skeins as dots stacked where they fall; the label a full line, the mean a wedge, limits
    broken lines with their names.

    values   measured, in the unit shown
    label    of the label, same unit
    mean     of the values
    limits   (what, value) of each limit for one skein
    written  writes a value with its unit
    Raises nothing.
    """
    low, high = min(*values, label, *(value for _, value in limits)), max(*values, label)
    room = (high - low) * 0.06 or 1.0
    scale = Scale(low - room, high + room, LEFT, RIGHT)
    stacked: dict[int, int] = {}
    places = []
    for value in sorted(values):
        column = round(scale(value) / (2 * RADIUS))
        stacked[column] = stacked.get(column, 0) + 1
        places.append((scale(value), stacked[column]))
    bottom = TOP + STEP * max(stacked.values()) + 14
    drawing = Drawing(bottom + 56 + 19 * len(limits))
    for tick in nice_ticks(scale.low, scale.high, 5):
        drawing.line(scale(tick), bottom, scale(tick), bottom + 5, stroke=SOFT)
        drawing.text(scale(tick), bottom + 28, f"{tick:g}", anchor="middle", size=13, fill=SOFT)
    drawing.line(LEFT, bottom, RIGHT, bottom, stroke=LINE)
    drawing.line(scale(label), 24, scale(label), bottom, stroke=INK, width=2)
    drawing.text(scale(label), 17, f"label {written(label)}", anchor="middle", size=13, bold=True)
    for x, height in places:
        drawing.circle(x, bottom - STEP * height + 3, RADIUS, fill=INDIGO, stroke=INDIGO)
    drawing.path(
        [(scale(mean), bottom + 1), (scale(mean) - 6, bottom + 11), (scale(mean) + 6, bottom + 11)],
        fill=INK,
        closed=True,
    )
    drawing.path(
        [(LEFT + 14, bottom + 37), (LEFT + 8, bottom + 47), (LEFT + 20, bottom + 47)],
        fill=INK,
        closed=True,
    )
    drawing.text(LEFT + 36, bottom + 48, f"mean: {written(mean)}", size=13)
    for place, (name, value) in enumerate(limits):
        dash = "5 3" if place == 0 else "2 3"
        drawing.line(scale(value), 28, scale(value), bottom, stroke=MADDER, width=1.6, dash=dash)
        drawing.line(
            LEFT,
            bottom + 62 + 19 * place,
            LEFT + 28,
            bottom + 62 + 19 * place,
            stroke=MADDER,
            width=1.6,
            dash=dash,
        )
        drawing.text(LEFT + 36, bottom + 67 + 19 * place, f"{name}: {written(value)}", size=13)
    said = "; ".join(f"{name} {written(value)}" for name, value in limits)
    return drawing.picture(
        "The sample beside the label",
        f"{len(values)} skeins from {written(min(values))} to {written(max(values))}, mean"
        f" {written(mean)}; label {written(label)}" + (f"; {said}." if said else "."),
    )
