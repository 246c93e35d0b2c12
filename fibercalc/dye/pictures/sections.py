"""A skein laid open with its painted sections, and what goes on each."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import Drawing
from .parts import numbered_bar

MOST = 24


def sections_picture(
    names: Sequence[str],
    masses: Sequence[float],
    volumes: Sequence[str],
    colors: Sequence[str] = (),
) -> Picture:
    """Sections around the opened skein in proportion, numbered, with the liquor of each listed
    below.

    names    of the sections' colors
    masses   g of yarn in each, as paint.section_masses gives them
    volumes  liquor for each, as written
    colors   a screen color for each; without them hatching alternates
    Raises nothing.
    """
    names, masses, volumes = list(names)[:MOST], list(masses)[:MOST], list(volumes)[:MOST]
    drawing = Drawing(76 + 20 * len(names))
    numbered_bar(drawing, 14, 12, 332, 44, masses, list(colors)[:MOST])
    said = []
    for number, (name, volume) in enumerate(zip(names, volumes), 1):
        said.append(f"{name if len(name) <= 26 else name[:25] + '…'}: {volume}")
        drawing.text(14, 60 + 20 * number, f"{number}  {said[-1]}")
    return drawing.picture("Once around the skein", "; ".join(said) + ".")
