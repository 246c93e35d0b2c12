"""A pH between its limits, on a scale from 0 to 14."""

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, MADDER, SOFT, Drawing, Scale


def ph_on_scale(
    ph: float, rough: float, low: float, high: float, target: float | None = None
) -> Picture:
    """The reading with its roughness, the range between the limits, and the target where
    something is stirred in.

    ph, rough  the reading and its half-width
    low, high  the limits
    target     where the dose leads, or None
    """
    scale = Scale(0, 14, 14, 346)
    drawing = Drawing(112)
    drawing.rect(scale(low), 40, scale(high) - scale(low), 26, fill=INDIGO_WASH, stroke=INDIGO)
    drawing.line(14, 66, 346, 66)
    for tick in range(0, 15, 2):
        drawing.line(scale(tick), 66, scale(tick), 71)
        drawing.text(scale(tick), 86, str(tick), anchor="middle", size=13, fill=SOFT)
    drawing.text(
        (scale(low) + scale(high)) / 2,
        104,
        f"limits {low:g} to {high:g}",
        anchor="middle",
        size=13,
        fill=INDIGO,
    )
    if rough:
        drawing.line(scale(ph - rough), 53, scale(ph + rough), 53, stroke=MADDER, width=3)
    drawing.circle(scale(ph), 53, 6, fill=MADDER, stroke=MADDER)
    drawing.text(scale(ph), 30, f"now {ph:g}", anchor="middle", size=13, bold=True, halo=True)
    said = f"pH {ph:g}, give or take {rough:g}; limits {low:g} to {high:g}"
    if target is not None:
        drawing.line(scale(ph), 53, scale(target), 53, stroke=INK, dash="4 3")
        drawing.circle(scale(target), 53, 5, fill="none", stroke=INK, width=2)
        drawing.text(
            scale(target),
            14 if abs(scale(target) - scale(ph)) < 90 else 30,
            f"aim {target:g}",
            anchor="middle",
            size=13,
            halo=True,
        )
        said += f"; aim {target:g}"
    return drawing.picture("The bath’s pH", said + ".")
