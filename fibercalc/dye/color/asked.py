"""What cards ask of colors and of the dyes that made them, and what they make of it."""

from __future__ import annotations

from collections.abc import Sequence

from ...core.card import CHOICE, COLOR, TEXT, Input, Option
from ...core.color import Color
from ...core.problem import OutOfRange, Refused
from ...core.table import read_table
from ...core.units import PERCENT
from .kubelka_munk import Palette, palette
from .seeing import corrected_by_card

IN_A_PHOTO = ("together", "photo")  # the ways of seeing in which a gray card can be there
WAYS_OF_SEEING = {row["how"]: row for row in read_table("dye", "color-seeing").rows}

NAME: Input[str] = Input(TEXT, "Name", default="brown", longest=14)
SAMPLE: Input[Color] = Input(COLOR, "Color of its sample")
DEPTH: Input[float] = Input(
    PERCENT,
    "Depth of that sample",
    default="1.5 %",
    allowed=("0.05 %", "12 %"),
    usual=("0.5 %", "4 %"),
    strict=True,
)
UNDYED: Input[Color] = Input(COLOR, "Undyed fiber", default="#efe6d2")
SEEN: Input[str] = Input(
    CHOICE,
    "How they were seen",
    options=tuple(
        Option(how, row["words"][0].upper() + row["words"][1:])
        for how, row in WAYS_OF_SEEING.items()
    ),
)
GRAY: Input[Color | None] = Input(COLOR, "The gray card in that photo", optional=True)


def corrected(colors: Sequence[Color], gray: Color | None) -> list[Color]:
    """Colors by the gray card in their photo; as they are where there is none.

    colors  as they were seen
    gray    the card's color, or None
    Raises Refused for a card that the camera has cut off.
    Source: common practice (see seeing.corrected_by_card).
    """
    if gray is None:
        return list(colors)
    try:
        return [corrected_by_card(color, gray) for color in colors]
    except OutOfRange as error:
        raise Refused(f"{error.reason[0].upper()}{error.reason[1:]}.", "gray") from None


def mixer(undyed: Color, samples: Sequence[tuple[Color, float]]) -> Palette:
    """What is known of the fiber and the dyes.

    undyed   color of the fiber
    samples  for each dye the color of a sample and the percent of dye on it
    Raises Refused for samples that tell nothing (see kubelka_munk.palette).
    Source: km-application-note: K/S is linear in dye and adds to that of the fiber.
    """
    try:
        return palette(undyed, samples)
    except OutOfRange as error:
        raise Refused(
            f"Dyes: {error.reason or 'a sample must be darker than the undyed fiber'}.",
            "dyes.1.sample",
        ) from None
