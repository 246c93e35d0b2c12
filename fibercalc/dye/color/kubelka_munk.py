"""Kubelka-Munk: what dyes make of an undyed fiber, from the color of the fiber and of one
dyed sample for each dye.

Absorption over scattering, K/S, is linear in dye and adds over dyes and fiber; here in three
channels instead of wavelength by wavelength. Against reflectance curves of paint charts mixed
wavelength by wavelength, the three channels miss the color of one dye at other strengths by
CIEDE2000 0.8 in the middle and 3 for nine in ten, and of a mixture of two dyes by 2 and 6.5. Real
fiber adds errors of its own: dye that stays in the bath, surface shine, fluorescence, very dark
shades (reflectance under 0.05). So a sample dip decides.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt

from ...core.color import Color
from ...core.problem import OutOfRange, require
from .channels import LIGHTEST, Three, channels_of, color_of, lab_of

MOST_PERCENT = 20.0  # of dye on the fiber; beyond lies a slip of the pen
MOST_DYES = 3
TRUSTED_REFLECTANCE = 0.05  # km-application-note: weak below
ERROR_OF_ONE_DYE = 3.0  # CIEDE2000, nine in ten, by the test against reflectance curves
ERROR_OF_A_MIXTURE = 6.5
BLACKEST = 1e9  # K/S beyond which no light is left


def k_over_s(reflectance: float) -> float:
    """Absorption over scattering of an opaque layer: (1 - R)² / 2R.

    reflectance  share of light returned, above 0 to 1
    Raises OutOfRange outside this.
    Source: km-application-note.
    """
    require("reflectance", reflectance, high=LIGHTEST, above=0.0)
    return (1 - reflectance) ** 2 / (2 * reflectance)


def reflectance(k_over_s: float) -> float:
    """Share of light returned by an opaque layer: 1 + K/S - √((K/S)² + 2 K/S).

    k_over_s  absorption over scattering, 0 to 1e9
    Raises OutOfRange outside this.
    Source: km-application-note (solved for R).
    """
    require("k_over_s", k_over_s, 0.0, BLACKEST)
    return _returned(k_over_s)


def _returned(q: float) -> float:
    return 1 / (
        1 + q + sqrt(q * (q + 2))
    )  # the same root, without the difference of two near numbers


def absorption(color: Color) -> Three:
    """K/S of a color in each of the three channels.

    color  of an opaque surface
    Raises nothing.
    Source: km-application-note, in channels of our own.
    """
    red, green, blue = ((1 - share) ** 2 / (2 * share) for share in channels_of(color))
    return red, green, blue


def color_from(absorbed: Sequence[float]) -> Color:
    """The color that has these K/S.

    absorbed  K/S in red, green and blue; below 0 counts as 0
    Raises OutOfRange unless there are three.
    Source: km-application-note, in channels of our own.
    """
    if len(absorbed) != 3:
        raise OutOfRange("absorbed", len(absorbed), reason="absorption is given in three channels")
    red, green, blue = (_returned(max(q, 0.0)) for q in absorbed)
    return color_of((red, green, blue))


@dataclass(frozen=True)
class Palette:
    """An undyed fiber's K/S, and for each dye the K/S that 1 % of it (on the weight of fiber) adds,
    in red, green and blue."""

    undyed: Three
    dyes: tuple[Three, ...]

    def absorption(self, recipe: Sequence[float]) -> list[float]:
        """K/S with so many percent of each dye."""
        return [
            q + sum(percent * dye[at] for percent, dye in zip(recipe, self.dyes))
            for at, q in enumerate(self.undyed)
        ]

    def lab(self, recipe: Sequence[float]) -> Three:
        """L*, a*, b* with so many percent of each dye; written out and free of checks, as it is
        called a thousand times for each answer."""
        red, green, blue = self.undyed
        for percent, (in_red, in_green, in_blue) in zip(recipe, self.dyes):
            red += percent * in_red
            green += percent * in_green
            blue += percent * in_blue
        return lab_of(_returned(red), _returned(green), _returned(blue))

    def color(self, recipe: Sequence[float]) -> Color:
        """The color with so many percent of each dye."""
        return color_from(self.absorption(recipe))


def palette(undyed: Color, samples: Sequence[tuple[Color, float]]) -> Palette:
    """What is known of a fiber and its dyes from the undyed fiber and one dyed sample for each dye.

    undyed   color of the undyed fiber
    samples  for each dye the color of a sample and the percent of dye on it, above 0
             to 20; one to three of them
    Raises OutOfRange for another number of samples, a percent outside that, or a sample that is no
    darker than the undyed fiber. Where a sample is lighter in one channel only, as a vivid yellow
    may be, the dye is taken to absorb nothing there.
    Source: km-application-note: K/S is linear in dye and adds to that of the fiber.
    """
    if not 1 <= len(samples) <= MOST_DYES:
        raise OutOfRange(
            "samples",
            len(samples),
            1,
            MOST_DYES,
            "a shade is mixed here from one, two or three dyes",
        )
    ground = absorption(undyed)
    dyes = []
    for color, percent in samples:
        require("percent", percent, high=MOST_PERCENT, above=0.0)
        red, green, blue = (
            max(full - bare, 0.0) / percent for full, bare in zip(absorption(color), ground)
        )
        if max(red, green, blue) <= 0:
            raise OutOfRange(
                "samples", percent, reason="the dyed sample is no darker than the undyed fiber"
            )
        dyes.append((red, green, blue))
    return Palette(ground, tuple(dyes))


def least_reflectance(color: Color) -> float:
    """The reflectance in the darkest channel; under 0.05 Kubelka-Munk is weak.

    color  of a dyed fiber
    Raises nothing.
    Source: km-application-note.
    """
    return min(channels_of(color))
