"""What is said of a new base."""

from __future__ import annotations

from ....core.outcome import Outcome
from ...base_factor import AS_USUAL, CHANGED, HUE_TURNS, LITTLE_CHANGE, MUCH_CHANGE
from .asked import BaseTest

SAYS = {
    "go": "Go: dye it as usual.",
    "go with changes": "Go, with changed recipes.",
    "no-go": "Not yet: test again before a whole lot.",
}


def say(out: Outcome[BaseTest]) -> tuple[str, str]:
    more = out.value(BaseTest.mean_factor)
    words = (
        "as much dye as"
        if abs(more - 1) < 0.02
        else f"{out.text(BaseTest.mean_factor)} times the dye of"
    )
    return (
        SAYS[out.value(BaseTest.verdict)],
        (
            f"It takes {words} the usual base for the same shade, and changes by"
            f" {out.text(BaseTest.longer)} in length and {out.text(BaseTest.heavier)} in weight."
        ),
    )


def notes(out: Outcome[BaseTest]) -> list[str]:
    said: list[str] = []
    dye, length, mass = out.case.verdicts
    if out.value(BaseTest.apart) > HUE_TURNS:
        said.append(
            f"The factors lie {out.text(BaseTest.apart)} times apart: one factor for all would"
            " turn the hue. Change each dye by its own."
        )
    if dye == "no-go":
        said.append(
            f"A factor beyond {CHANGED:g} is another kind of fiber to the dye: test each shade, do"
            " not calculate it."
        )
    if "no-go" in (length, mass):
        said.append(
            f"A change over {MUCH_CHANGE:g} % is felting, an oil that washed out, or a reading gone"
            " wrong: find out which."
        )
    elif (length, mass) != ("go", "go"):
        said.append(f"Over {LITTLE_CHANGE:g} %: measure dyed, rested yarn for the label.")
    said.append(
        f"The edges ({AS_USUAL:g} and {CHANGED:g} for factors, {LITTLE_CHANGE:g} and"
        f" {MUCH_CHANGE:g} % for changes) are our own, to be moved by what you see."
    )
    return said
