"""Chart of boiling points by altitude: what the hottest bath can be, and the highest
temperature worth asking for."""

from ...core.answer import Picture, Table
from ...core.number import write_number
from ...core.picture import INK, LINE, SOFT, Drawing, Scale
from ...core.units import METERS_PER_INCH, TEMPERATURE
from ..water import boiling_point, highest_setting

ALTITUDES = tuple(range(0, 3001, 300))  # m
FEET = 12 * METERS_PER_INCH
WEATHER = 0.8  # °C either way, see water.air_pressure


def boiling_points() -> list[Picture | Table]:
    """Boiling point of water by altitude, drawn and listed, with the highest setting of a bath.

    Source: antoine-water and standard-atmosphere (from memory), checked against pocket-ref-boiling.
    """
    rows = tuple(
        (
            f"{altitude:,} m ({write_number(round(altitude / FEET, -1), 0)} ft)",
            _both(boiling_point(altitude)),
            _both(highest_setting(altitude)),
        )
        for altitude in ALTITUDES
    )
    return [
        _curve(),
        Table(
            "Where water boils, and the highest setting of a bath",
            ("Altitude", "Boils at", "Set at most"),
            rows,
            "Set at most: 1 °C below boiling (common practice). Weather moves all of it by about"
            f" {WEATHER:g} °C either way (from memory, unverified). Computed here from the pressure"
            " of the air and of water vapor, constants from memory, unverified; within 0.5 °C of"
            " points read in a handbook quoted by a web page.",
            ("antoine-water", "standard-atmosphere", "pocket-ref-boiling", "common-practice"),
        ),
    ]


def _both(celsius: float) -> str:
    return f"{celsius:.1f} °C ({TEMPERATURE.unit('°F').from_base(celsius):.0f} °F)"


def _curve() -> Picture:
    drawing = Drawing(236)
    across, up = Scale(0, 3000, 44, 344), Scale(88, 101, 186, 10)
    for tick in (88, 90, 92, 94, 96, 98, 100):
        drawing.line(across(0), up(tick), across(3000), up(tick), stroke=LINE)
        drawing.text(38, up(tick) + 5, f"{tick}", anchor="end", fill=SOFT)
    for tick in (0, 1000, 2000, 3000):
        drawing.text(across(tick), 206, f"{tick:,} m", anchor="middle", fill=SOFT)
    drawing.text(across(1500), 228, "altitude", anchor="middle", fill=SOFT)
    altitudes = range(0, 3001, 100)
    drawing.path([(across(one), up(boiling_point(one))) for one in altitudes], width=2)
    drawing.path(
        [(across(one), up(highest_setting(one))) for one in altitudes], stroke=INK, dash="6 3"
    )
    drawing.text(across(1250), up(boiling_point(1250)) - 10, "water boils", halo=True)
    drawing.text(
        across(1150), up(highest_setting(1150)) + 22, "set at most", anchor="end", halo=True
    )
    drawing.text(44, 16, "°C", halo=True)
    said = ", ".join(f"{one:,} m {boiling_point(one):.1f} °C" for one in (0, 900, 1500, 3000))
    return drawing.picture(
        "Boiling point against altitude; dashed, the highest setting of a bath",
        f"Water boils at a lower temperature the higher you are: {said}.",
    )
