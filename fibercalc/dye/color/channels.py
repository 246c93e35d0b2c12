"""A color as three reflectances: the linear light of wide red, green and blue primaries, each a
share of a perfect white.

Three numbers stand in for a whole reflectance curve. The primaries are those of ITU-R BT.2020: they
are nearly single wavelengths, so that a channel is a narrow band and every dyed color lies inside.
Kubelka-Munk in these channels was tried against the reflectance curves of paint charts, mixed
wavelength by wavelength (tests/against/test_against_spectra.py): they came nearer than the
primaries of a screen (sRGB), than X, Y, Z and than cone responses, which overlap.
"""

from ...core.color import D65, EPSILON, KAPPA, Color, from_lab
from ...core.problem import require

# ITU-R BT.2020 primaries with our D65 white; tests work both out again from the primaries and
# hold them against a library.
TO_CHANNELS = (
    (1.71651067, -0.355641670, -0.253345542),
    (-0.666693001, 1.616502208, 0.015768750),
    (0.017643639, -0.042779782, 0.942305073),
)
FROM_CHANNELS = (
    (0.637010191, 0.144615027, 0.168844781),
    (0.262721717, 0.677989276, 0.059289007),
    (0.0, 0.028072329, 1.060757671),
)

DARKEST = (
    0.003  # no dyed fiber returns less light: some is thrown back by its surface (common practice)
)
LIGHTEST = 1.0

Three = tuple[float, float, float]


def channels_of(color: Color) -> Three:
    """Reflectance in red, green and blue, each held to 0.003 to 1.

    color  any color; one more vivid or brighter than a dyed fiber can be is drawn to the edge
    Raises nothing.
    Source: itu-bt2020 (primaries); cie-15 (CIELAB).
    """
    x, y, z = xyz_of(color)
    red, green, blue = (
        min(max(row[0] * x + row[1] * y + row[2] * z, DARKEST), LIGHTEST) for row in TO_CHANNELS
    )
    return red, green, blue


def lab_of(red: float, green: float, blue: float) -> Three:
    """L*, a* and b* of three reflectances.

    red    reflectance in red, 0 to 1
    green  reflectance in green, 0 to 1
    blue   reflectance in blue, 0 to 1
    Raises OutOfRange outside these.
    Source: itu-bt2020 (primaries); cie-15 (CIELAB).
    """
    for name, given in (("red", red), ("green", green), ("blue", blue)):
        require(name, given, 0.0, 1.0)
    first, second, third = FROM_CHANNELS
    return lab_from_xyz(
        first[0] * red + first[1] * green + first[2] * blue,
        second[0] * red + second[1] * green + second[2] * blue,
        third[0] * red + third[1] * green + third[2] * blue,
    )


def xyz_of(color: Color) -> Three:
    """X, Y and Z of a color, Y of white being 1.

    color  any color
    Raises nothing.
    Source: cie-15 (CIELAB).
    """
    fy = (color.lightness + 16) / 116
    x, y, z = (
        _light(f) * white for f, white in zip((fy + color.a / 500, fy, fy - color.b / 200), D65)
    )
    return x, y, z


def lab_from_xyz(x: float, y: float, z: float) -> Three:
    """L*, a* and b* of X, Y and Z.

    x  X, Y of white being 1
    y  Y
    z  Z
    Raises nothing.
    Source: cie-15 (CIELAB).
    """
    fx, fy, fz = _root(x / D65[0]), _root(y / D65[1]), _root(z / D65[2])
    return 116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)


def color_of(channels: Three) -> Color:
    """The Color of three reflectances.

    channels  reflectance in red, green and blue, 0 to 1
    Raises OutOfRange outside this.
    Source: itu-bt2020 (primaries); cie-15 (CIELAB).
    """
    lightness, a, b = lab_of(*channels)
    return from_lab(min(max(lightness, 0.0), 100.0), a, b)


def _light(f: float) -> float:
    return f**3 if f**3 > EPSILON else (116 * f - 16) / KAPPA


def _root(light: float) -> float:
    return light ** (1 / 3) if light > EPSILON else (KAPPA * light + 16) / 116
