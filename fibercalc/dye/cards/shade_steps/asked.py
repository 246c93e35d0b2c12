"""What is asked of a set of shades, and what follows."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Input, Many, Option, Plain, Result, Row, Rows
from ....core.units import COUNT, MASS, NUMBER, PERCENT, VOLUME
from ...color.asked import DEPTH, GRAY, IN_A_PHOTO, NAME, SAMPLE, SEEN, UNDYED
from ...color.steps import Ladder
from ...inputs import SCALE_STEP, STRENGTH, SYRINGE_ERROR

STRAIGHT, THROUGH = "straight", "through"
POWDER, STOCK = "powder", "stock"
DEPTH_OF_SKEIN = replace(DEPTH, allowed=("0 %", "12 %"), usual=("0 %", "4 %"))


class Dye(Row):
    """One dye, with a sample of it alone."""

    name = replace(NAME)
    sample = replace(SAMPLE, default="#7a4a2b")
    percent = replace(DEPTH)
    first = replace(DEPTH_OF_SKEIN, label="Depth on the first skein", default="0.05 %")
    last = replace(DEPTH_OF_SKEIN, label="Depth on the last skein", default="1 %")

    depth_of_set = Between[float](PERCENT, "All depths of it added, as weighed")
    stock = Between[float](VOLUME, "Stock for all skeins")


class ShadeSteps(Case):
    """Dyes from a first to a last skein, and the steps between in several ways."""

    undyed = replace(UNDYED, measure="Wound close, in daylight.")
    dyes = Rows(
        Dye,
        "Dyes",
        "dye",
        least=1,
        most=3,
        measure=(
            "A full-strength sample of each, and how much of it the first and the last skein get."
        ),
        default=(
            {
                "name": "navy",
                "sample": "#27406a",
                "percent": "2 %",
                "first": "0.08 %",
                "last": "1.92 %",
            },
        ),
    )
    way = Input[str](
        CHOICE,
        "With several dyes",
        default=STRAIGHT,
        options=(
            Option(STRAIGHT, "All of them from first to last"),
            Option(THROUGH, "From one dye to the next, each at its last depth"),
        ),
    )
    count = Input[int](COUNT, "Skeins", default="12", allowed=("2", "60"), usual=("3", "30"))
    fiber = Input[float](
        MASS,
        "Yarn of each shade",
        default="501 g",
        allowed=("1 g", "50 kg"),
        usual=("20 g", "2 kg"),
        units=("g", "oz"),
        strict=True,
        measure="What is really dyed, spares and all.",
    )
    dose_by = Input[str](
        CHOICE,
        "Dosed as",
        default=POWDER,
        options=(Option(POWDER, "Powder, on the scale"), Option(STOCK, "Stock, by syringe")),
    )
    FROM_STOCK = {dose_by: (STOCK,)}
    AS_POWDER = {dose_by: (POWDER,)}
    scale_step = replace(SCALE_STEP, when=AS_POWDER)
    strength = replace(STRENGTH, when=FROM_STOCK)
    syringe_step = replace(SYRINGE_ERROR, when=FROM_STOCK)
    seen = replace(SEEN, label="How the colors were seen", default="photo")
    gray = replace(
        GRAY,
        when={seen: IN_A_PHOTO},
        measure=(
            "Undyed fiber and samples in one photo with it: an 18 % card in the same light;"
            " blank where the photo was balanced on it already."
        ),
    )

    even = Plain[Ladder]()
    real = Plain[Ladder]()  # the even one, as it can be weighed
    by_percent = Plain[Ladder]()
    by_ratio = Plain[Ladder]()
    gaps = Many(NUMBER, "Step {}, CIEDE2000")
    farthest = Between[float](NUMBER, "The step farthest from the mean, CIEDE2000")
    depths = Many(PERCENT, "Depth of skein {}")
    total_depth = Between[float](PERCENT, "All depths of the skeins added")
    geometric_depth = Between[float](PERCENT, "All depths of a geometric ladder added")
    pieces = Between[int](COUNT, "Skeins of about 100 g in each shade")
    skein_mass = Between[float](MASS, "One of these skeins")

    mean = Result[float](NUMBER, "A step, CIEDE2000", finest=(0.1,), floor=0.0)
    uneven = Result[float](PERCENT, "Even steps, off by", finest=(1,), floor=0.0)
    weighed = Result[float](PERCENT, "as weighed, off by", finest=(1,), floor=0.0)
    geometric = Result[float](PERCENT, "Geometric ladder, off by", finest=(1,), floor=0.0)
    equal = Result[float](PERCENT, "Equal percents, off by", finest=(1,), floor=0.0)
    ratio = Result[float](NUMBER, "Ratio of a geometric ladder", finest=(0.001,))
    dye_total = Result[float](
        MASS, "Dye in all shades, even steps", units=("g",), finest=(0.1,), rounding="up"
    )
    geometric_total = Result[float](
        MASS, "Dye in all shades, geometric", units=("g",), finest=(0.1,), rounding="up"
    )
