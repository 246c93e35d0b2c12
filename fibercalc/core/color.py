"""Colors as people give them: a screen color (#6b7f8f) or measured L*, a*, b*; turned into each
other.

Source: IEC 61966-2-1:1999 (sRGB transfer function and matrix) and CIE 15:2004 (L*a*b*, D65
white), both from memory and checked against an independent library in the tests. A screen color
is an estimate of a dyed one, never a measurement.
"""

import re
from dataclasses import dataclass

D65 = (0.95047, 1.0, 1.08883)  # CIE 15:2004, 2 degree observer
TO_XYZ = (
    (0.4124564, 0.3575761, 0.1804375),
    (0.2126729, 0.7151522, 0.0721750),
    (0.0193339, 0.1191920, 0.9503041),
)
TO_RGB = (
    (3.2404542, -1.5371385, -0.4985314),
    (-0.9692660, 1.8760108, 0.0415560),
    (0.0556434, -0.2040259, 1.0572252),
)
EPSILON, KAPPA = 216 / 24389, 24389 / 27

HEX = re.compile(r"#?([0-9a-f]{3}|[0-9a-f]{6})", re.IGNORECASE)
LAB = re.compile(r"lab\(\s*([-+\d.]+)%?[\s,]+([-+\d.]+)[\s,]+([-+\d.]+)\s*\)", re.IGNORECASE)


@dataclass(frozen=True)
class Color:
    """A color as L* (0 to 100), a* and b*; text is its canonical form (#rrggbb or lab(L a b))."""

    lightness: float
    a: float
    b: float
    text: str

    @property
    def hex(self) -> str:
        """The nearest screen color, clipped to what a screen can show."""
        return hex_from_lab(self.lightness, self.a, self.b)

    def moved(self, axis: str, by: float) -> "Color":
        """This color with one of lightness, a, b moved; lightness stays within 0 to 100."""
        parts = {"lightness": self.lightness, "a": self.a, "b": self.b}
        parts[axis] += by
        parts["lightness"] = min(max(parts["lightness"], 0.0), 100.0)
        return from_lab(*parts.values())


def from_lab(lightness: float, a: float, b: float) -> Color:
    """A Color from measured values."""
    return Color(lightness, a, b, f"lab({lightness:.6g} {a:.6g} {b:.6g})")


def read_color(text: str) -> Color:
    """A Color from "#6b7f8f", "6b7f8f", "#abc" or "lab(52 -3 -9)". Raises ValueError for anything
    else.
    """
    text = text.strip()
    if match := HEX.fullmatch(text):
        digits = match[1].lower()
        digits = "".join(digit * 2 for digit in digits) if len(digits) == 3 else digits
        return Color(*lab_from_hex(digits), f"#{digits}")
    if match := LAB.fullmatch(text):
        lightness, a, b = (float(number) for number in match.groups())
        if 0 <= lightness <= 100 and abs(a) <= 150 and abs(b) <= 150:
            return from_lab(lightness, a, b)
    raise ValueError(text)


def lab_from_hex(digits: str) -> tuple[float, float, float]:
    """L*, a*, b* of a six-digit screen color."""
    linear = []
    for at in (0, 2, 4):
        share = int(digits[at : at + 2], 16) / 255
        linear.append(share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4)
    x, y, z = (sum(k * v for k, v in zip(row, linear)) / white for row, white in zip(TO_XYZ, D65))
    fx, fy, fz = (v ** (1 / 3) if v > EPSILON else (KAPPA * v + 16) / 116 for v in (x, y, z))
    return 116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)


def hex_from_lab(lightness: float, a: float, b: float) -> str:
    """The nearest screen color of L*, a*, b*."""
    fy = (lightness + 16) / 116
    fx, fz = fy + a / 500, fy - b / 200
    x, z = ((f**3 if f**3 > EPSILON else (116 * f - 16) / KAPPA) for f in (fx, fz))
    y = fy**3 if lightness > KAPPA * EPSILON else lightness / KAPPA
    xyz = [v * white for v, white in zip((x, y, z), D65)]
    out = "#"
    for row in TO_RGB:
        v = min(max(sum(k * c for k, c in zip(row, xyz)), 0.0), 1.0)
        v = 12.92 * v if v <= 0.0031308 else 1.055 * v ** (1 / 2.4) - 0.055
        out += f"{round(v * 255):02x}"
    return out
