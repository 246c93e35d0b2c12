"""Short lines as a maker writes them: a recipe ("navy 0.62, black 0.24") and what a product holds
("2 Wet Slate, Peat Gold").
"""

import re

from ..core.problem import OutOfRange
from ..dye.recipe import DEEPEST

DOSE = re.compile(r"\s*([^\d,;+]*[^\d,;+\s])\s*[: ]\s*(\d+(?:[.,]\d+)?)\s*%?\s*(?:[,;+]\s*|$)")
HELD = re.compile(r"(?:(\d{1,3})\s*(?:[x×]\s*)?\s)?\s*(.*\S)", re.IGNORECASE)
MOST_EACH = 60


def read_recipe(text: str) -> tuple[tuple[str, float], ...]:
    """Dyes and their depths, % of the dry yarn, from one line; the same dye twice is added up.

    text  names, each with its depth after it, with commas between: "navy 0.62, black 0.24"; point
          or comma in a number
    Raises OutOfRange, with how to write it, for anything else and for a depth over 20 %.
    Source: common practice (as it stands on recipe cards).
    """
    found: dict[str, float] = {}
    at = 0
    while text[at:].strip(" ,;+"):
        match = DOSE.match(text, at)
        if not match:
            raise OutOfRange(
                "text",
                0.0,
                reason=(
                    f"“{text[at:].strip()}” cannot be read; write each dye with its percent, such"
                    " as navy 0.62, black 0.24"
                ),
            )
        name, depth = " ".join(match[1].rstrip(" :").split()), float(match[2].replace(",", "."))
        if depth > DEEPEST:
            raise OutOfRange(
                "text",
                depth,
                0.0,
                DEEPEST,
                f"{depth:g} % of {name} is deeper than any dye goes; percent is of the dry yarn",
            )
        found[name] = found.get(name, 0.0) + depth
        at = match.end()
    return tuple(found.items())


def read_held(text: str) -> tuple[tuple[str, int], ...]:
    """Colorways and how many skeins of each, from one line; one where no number stands; the same
    one twice is added up.

    text  names with commas between, each with its number before it: "2 Wet Slate, Peat Gold"
    Raises OutOfRange, with how to write it, for an empty line and for no or more than 60 skeins
    of one.
    Source: common practice (as it stands on packing lists).
    """
    found: dict[str, int] = {}
    for part in re.split(r"[,;+]", text):
        match = HELD.fullmatch(" ".join(part.split()))
        if not match:  # nothing stands between two commas
            continue
        count, name = int(match[1] or 1), match[2]
        if not 1 <= count <= MOST_EACH:
            raise OutOfRange(
                "text", count, 1, MOST_EACH, f"{count} of {name}; give 1 to {MOST_EACH}"
            )
        found[name] = found.get(name, 0) + count
    if not found:
        raise OutOfRange(
            "text", 0.0, reason="give at least one colorway, such as 2 Wet Slate, Peat Gold"
        )
    return tuple(found.items())
