"""What is said of a set of shades."""

from __future__ import annotations

from ....core.outcome import Outcome
from ...color.asked import WAYS_OF_SEEING
from ...color.kubelka_munk import (
    ERROR_OF_A_MIXTURE,
    ERROR_OF_ONE_DYE,
    TRUSTED_REFLECTANCE,
    least_reflectance,
)
from .asked import ShadeSteps


def say(out: Outcome[ShadeSteps]) -> tuple[str, str]:
    count = out.case.count
    first = f"{count} skeins in even steps of about {out.text(ShadeSteps.mean)} (CIEDE2000)."
    others = f"equal percents {out.text(ShadeSteps.equal)}"
    if out.has(ShadeSteps.geometric):
        others = f"geometric steps would be {out.text(ShadeSteps.geometric)} off, {others}"
    return (
        first,
        (
            f"As weighed the steps are within {out.text(ShadeSteps.weighed)} of even; {others}."
            f" It takes {out.text(ShadeSteps.dye_total)} of dye."
        ),
    )


def notes(out: Outcome[ShadeSteps]) -> list[str]:
    said: list[str] = []
    row = WAYS_OF_SEEING[out.case.seen]
    said.append(
        f"The colors were seen so: {row['words']}. That is good to ± {row['half_width']:g} units,"
        " so the whole strip may be lighter or darker than drawn; its evenness suffers less."
    )
    if out.case.has(ShadeSteps.gray):
        said.append("Undyed fiber and samples were corrected by the gray card in their photo.")
    mixed = len(out.case.dyes) > 1
    said.append(
        "The model itself is off by up to about"
        f" {ERROR_OF_A_MIXTURE if mixed else ERROR_OF_ONE_DYE:g} in nine cases of ten"
        f" ({'mixtures' if mixed else 'one dye'}; tried on paint charts, never on yarn)."
    )
    ends = out.case.even.colors[0], out.case.even.colors[-1]
    if any(least_reflectance(color) < TRUSTED_REFLECTANCE for color in ends):
        said.append("The darkest skein is darker than the model can be trusted with: dip that one.")
    if out.value(ShadeSteps.weighed) > 15:
        said.append(
            "Weighing makes the steps uneven at the pale end: dose from a stock, or a weaker one."
        )
    said.append("A screen color is an estimate: a sample dip decides.")
    return said
