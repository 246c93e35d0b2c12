"""QR codes: of a link, as a drawing in exact millimeters, as part of a larger drawing, and as a
picture file.
"""

from __future__ import annotations

from base64 import b64encode
from io import BytesIO
from typing import TYPE_CHECKING

from ..core.label.draw import BLACK, WHITE, mm
from ..core.markup import Markup, inner, tag

if TYPE_CHECKING:
    from segno import QRCode

QUIET = 4  # modules of white around a code, which readers need
LEAST_MODULE = 0.4  # mm: phones fail under it (from memory, unverified)
PNG_PIXELS = 12  # for one module


def code_of(link: str) -> QRCode:
    """A link's code. Raises ModuleNotFoundError until the library that makes codes is there."""
    import segno  # pure Python, fetched only here

    return segno.make(link, error="m", micro=False)


def code_svg(code: QRCode, module: float) -> Markup:
    """The code in exact millimeters, with the quiet zone that readers need. Drawn by the library
    from squares alone: no text is in it.
    """
    return Markup(code.svg_inline(unit="mm", scale=module, border=QUIET, light=WHITE, dark=BLACK))


def code_png(code: QRCode) -> str:
    picture = BytesIO()
    code.save(picture, kind="png", scale=PNG_PIXELS, border=QUIET)
    return b64encode(picture.getvalue()).decode()


def module_in(code: QRCode, side: float) -> float:
    """How wide a module is, mm, when the code with its quiet zone fills a square of this side,
    mm.
    """
    return side / code.symbol_size(border=QUIET)[0]


def code_shapes(code: QRCode, x: float, y: float, side: float) -> Markup:
    """The code as shapes of a drawing in mm, filling a square with its quiet zone: each row's
    runs of dark modules as boxes of one path.
    """
    module, runs = module_in(code, side), []
    for row, modules in enumerate(code.matrix, QUIET):
        start = None
        for column, dark in enumerate([*modules, 0], QUIET):
            if dark and start is None:
                start = column
            elif not dark and start is not None:
                runs.append(f"M{start} {row}h{column - start}v1h{start - column}z")
                start = None
    return inner(
        tag("rect", x=mm(x), y=mm(y), width=mm(side), height=mm(side), fill=WHITE),
        tag(
            "path",
            d="".join(runs),
            transform=f"translate({mm(x)} {mm(y)}) scale({module:.5f})",
            fill=BLACK,
            shape_rendering="crispEdges",
            class_="code",
        ),
    )
