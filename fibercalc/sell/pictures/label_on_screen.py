"""A label on the screen: the very drawing that is printed, in its true proportions, large enough
to be read on a phone.
"""

from ...core.answer import Picture
from ...core.label.draw import drawn
from ...core.label.label import Laid
from ...core.markup import tag
from .labels import BAND, FOLD, SIZES

WIDTH, EDGE = 360.0, 2.0  # drawing units
LARGE, MIDDLE = (
    5.67,
    4.4,
)  # units to a millimeter: 6.1 pt stand 12 units high at the first, 7 pt 11 at the second


def label_picture(kind: str, laid: list[Laid], alt: str) -> Picture:
    """One label, or the first and the last of several; a band as its front beside its back."""
    name, width, height = SIZES[kind]
    title = f"{name}, {width:g} × {height:g} mm"
    if kind == BAND:
        parts = [(laid[0], 0.0, FOLD), (laid[0], FOLD, height - FOLD)]
        title += ": front and back side by side"
    else:
        parts = [(each, 0.0, height) for each in dict.fromkeys((laid[0], laid[-1]))]
        title += ": the first and the last" if len(parts) > 1 else ""
    scale = min(
        LARGE if len(parts) == 1 else MIDDLE,
        (WIDTH - 2 * EDGE) / (len(parts) * width + (len(parts) - 1)),
    )
    tallest = max(high for _, _, high in parts) * scale + 2 * EDGE
    gap = (WIDTH - len(parts) * width * scale) / (len(parts) + 1)
    views = [
        tag(
            "svg",
            drawn(each),
            x=f"{gap + at * (width * scale + gap):.2f}",
            y=f"{EDGE:g}",
            width=f"{width * scale:.2f}",
            height=f"{high * scale:.2f}",
            viewBox=f"0 {top:g} {width:g} {high:g}",
            overflow="hidden",
        )
        for at, (each, top, high) in enumerate(parts)
    ]
    svg = tag(
        "svg",
        *views,
        xmlns="http://www.w3.org/2000/svg",
        class_="picture label",
        viewBox=f"0 0 {WIDTH:g} {tallest:.1f}",
        role="img",
        aria_label=alt,
        font_family="inherit",
    )
    return Picture(title, alt, svg, tallest)
