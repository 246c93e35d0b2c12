"""What seeing does to a color: how wrong it may be, what a gray card corrects, and which
differences are likely seen."""

from math import sqrt
from typing import Any

from ...core.color import TO_RGB, TO_XYZ, Color, from_lab
from ...core.problem import OutOfRange, require
from ...core.table import read_table
from .channels import lab_from_xyz, xyz_of
from .difference import between

GRAY_CARD = (
    0.18  # reflectance of the usual gray card: common practice; its back or a white card may be 0.9
)
LEAST_LIGHT, MOST_LIGHT = (
    0.02,
    0.97,
)  # of the camera's range, between which a card's picture can be used
AXES = ("lightness", "a", "b")


def half_width(how: str) -> float:
    """CIELAB units either side, on each axis, of a color seen in some way.

    how  instrument, together, photo, swatch, plain or screen
    Raises OutOfRange for any other.
    Source: common practice (table color-seeing): wide, and no published figure for yarn.
    """
    half: float = _row(how)["half_width"]
    return half


def half_width_between(how: str) -> float:
    """Half-width of the CIEDE2000 between two colors that were seen in the same way.

    how  instrument, together, photo, swatch, plain or screen
    Raises OutOfRange for any other.
    Source: common practice (table color-seeing).
    """
    half: float = _row(how)["between"]
    return half


def _row(how: str) -> dict[str, Any]:
    try:
        return read_table("dye", "color-seeing").row("how", how)
    except KeyError:
        raise OutOfRange(
            "how", float("nan"), reason="a way of seeing a color that is not in the table"
        ) from None


def half_width_of_difference(
    first: Color, second: Color, first_half: float, second_half: float
) -> float:
    """Half-width of CIEDE2000 between two colors that were seen apart, each
    with an error of its own.

    first        one color
    second       the other
    first_half   its half-width on each axis, 0 to 50
    second_half  that of the other, 0 to 50
    Raises OutOfRange outside these.
    Source: first-order propagation: what each of the six numbers does when moved to its end, as a
    root of the sum of squares.
    """
    require("first_half", first_half, 0.0, 50.0)
    require("second_half", second_half, 0.0, 50.0)
    middle, total = between(first, second), 0.0
    for axis in AXES:
        for moved, by, other in ((first, first_half, second), (second, second_half, first)):
            total += (
                max(abs(between(moved.moved(axis, way * by), other) - middle) for way in (-1, 1))
                ** 2
            )
    return sqrt(total)


def likely_seen(difference: float) -> str:
    """What a difference looks like, in words.

    difference  CIEDE2000, 0 and up
    Raises OutOfRange below 0.
    Source: common practice (table visible-differences; edges of our own).
    """
    require("difference", difference, 0.0)
    words: str = [
        row for row in read_table("dye", "visible-differences").rows if row["above"] <= difference
    ][-1]["words"]
    return words


def corrected_by_card(photo: Color, card: Color, reflectance: float = GRAY_CARD) -> Color:
    """A color in a photo, corrected by a gray card in the same photo and the same light: each of
    red, green and blue scaled in linear light.

    photo        color of the yarn in the photo
    card         color of the card in the photo
    reflectance  of the card, 0.05 to 1
    Raises OutOfRange outside these, or for a card so dark or bright in the photo that
    the camera has cut it off.
    Source: common practice (gray balance in linear light); iec-61966 (linear
    light of a screen color).
    """
    require("reflectance", reflectance, 0.05, 1.0)
    seen = _linear(card)
    if min(seen) < LEAST_LIGHT or max(seen) > MOST_LIGHT:
        raise OutOfRange(
            "card",
            max(seen),
            reason="the gray card is too dark or too bright in the photo: take it again",
        )
    red, green, blue = (
        light * reflectance / of_card for light, of_card in zip(_linear(photo), seen)
    )
    lightness, a, b = lab_from_xyz(
        *(row[0] * red + row[1] * green + row[2] * blue for row in TO_XYZ)
    )
    return from_lab(min(max(lightness, 0.0), 100.0), a, b)


def _linear(color: Color) -> list[float]:
    """Red, green and blue of a screen, in linear light."""
    x, y, z = xyz_of(color)
    return [max(row[0] * x + row[1] * y + row[2] * z, 0.0) for row in TO_RGB]
