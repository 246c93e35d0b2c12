"""What is asked of two lots and their dyes, and what follows."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import (
    CHOICE,
    COLOR,
    TEXT,
    Between,
    Case,
    Input,
    Option,
    Plain,
    Result,
    Row,
    Rows,
)
from ....core.color import Color
from ....core.units import COUNT, MASS, NUMBER, PERCENT
from ....held import RECORD
from ...color.asked import DEPTH, GRAY, IN_A_PHOTO, NAME, SAMPLE, SEEN, UNDYED


class Dye(Row):
    """One dye of the recipe, with a sample of it alone."""

    name = replace(NAME)
    sample = replace(SAMPLE, default="#5a3a28")
    percent = replace(DEPTH)
    depth = replace(
        DEPTH, label="Depth used", default="0.04 %", allowed=("0 %", "12 %"), usual=("0 %", "4 %")
    )

    change = Between[float](PERCENT, "Change that brings the color nearest")
    next_depth = Between[float](PERCENT, "Depth next time")
    change_mass = Between[float](MASS, "More of it on this yarn")


class LotRepeat(Case):
    """An old lot and a new one, and the dyes that are changed to bring the next one nearer."""

    old = Input[Color](
        COLOR, "The old lot", record=RECORD.colorway.color, default="lab(29.2 -0.8 -12.4)"
    )
    new = Input[Color](COLOR, "The new lot", default="lab(31.8 -1 -11.4)")
    seen = replace(SEEN, default="together")
    undyed = replace(UNDYED)
    dyes = Rows(
        Dye,
        "Dyes of the recipe",
        "dye",
        least=1,
        most=3,
        measure="A full-strength sample of each; the depth used for the new lot.",
        default=(
            {"name": "navy", "sample": "#27406a", "percent": "2 %", "depth": "0.62 %"},
            {"name": "black", "sample": "#22262b", "percent": "2 %", "depth": "0.24 %"},
            {"name": "brown", "sample": "#5a3a28", "percent": "1.5 %", "depth": "0.04 %"},
        ),
    )
    fiber = Input[float](
        MASS,
        "Yarn of the next lot",
        default="400 g",
        allowed=("1 g", "50 kg"),
        usual=("20 g", "2 kg"),
        units=("g", "oz"),
        strict=True,
    )
    only_add = Input[str](
        CHOICE,
        "Does the new lot itself go back into the pot?",
        default="no",
        options=(
            Option("no", "No, the next lot is changed"),
            Option("yes", "Yes, dye can only be added"),
        ),
    )
    gray = replace(
        GRAY,
        when={seen: IN_A_PHOTO},
        measure="An 18 % card in the same light; blank where the photo was balanced on it already.",
    )

    colors = Plain[tuple[Color, Color]]()  # of the old lot and the new one, as corrected
    next_color = Plain[Color]()
    old_lightness = Between[float](NUMBER, "Old lot: L*")
    old_a = Between[float](NUMBER, "Old lot: a*")
    old_b = Between[float](NUMBER, "Old lot: b*")
    new_lightness = Between[float](NUMBER, "New lot: L*")
    new_a = Between[float](NUMBER, "New lot: a*")
    new_b = Between[float](NUMBER, "New lot: b*")
    next_lightness = Between[float](NUMBER, "Once the changed dyes are mixed: L*")
    next_a = Between[float](NUMBER, "Once the changed dyes are mixed: a*")
    next_b = Between[float](NUMBER, "Once the changed dyes are mixed: b*")
    pieces = Between[int](COUNT, "Skeins of about 100 g")
    skein_mass = Between[float](MASS, "One of these skeins")

    seen_as = Result[str](TEXT, "Side by side")
    before = Result[float](NUMBER, "Difference, CIEDE2000", finest=(0.1,), floor=0.0)
    after = Result[float](NUMBER, "Left of it after the nudge", finest=(0.1,), floor=0.0)
