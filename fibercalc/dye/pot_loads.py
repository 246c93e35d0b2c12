"""What fits in a pot, into how many loads skeins fall, and how many days that is at so many
rounds a day.
"""

from collections.abc import Sequence
from math import ceil, floor

from ..core.problem import OutOfRange, require
from ..core.steps import at_least, searched

MOST_SKEINS = 5000
NOISE = 1e-9
USUAL_SKEIN = 100.0  # g


def skeins_that_fit(
    fill: float, skein_mass: float, liquor_ratio: float, displaced: float = 0.0
) -> int:
    """Whole skeins that one pot takes at a liquor ratio without passing its fill line.

    fill          the pot up to its fill line, mL, above 0 to 1,000,000
    skein_mass    dry mass of one skein, g, above 0 to 10,000
    liquor_ratio  mL of bath for each gram of dry fiber, 1 to 200
    displaced     mL that each gram of fiber itself takes up, 0 to 5 (0: the ratio is meant to
                  hold the fiber too)
    Raises OutOfRange outside these, and where not one skein fits.
    Source: arithmetic (the definition of the liquor ratio).
    """
    require("fill", fill, 0.0, 1_000_000.0, above=0.0)
    require("skein_mass", skein_mass, 0.0, 10_000.0, above=0.0)
    require("liquor_ratio", liquor_ratio, 1.0, 200.0)
    require("displaced", displaced, 0.0, 5.0)
    needed = skein_mass * (liquor_ratio + displaced)
    count = floor(fill / needed + NOISE)
    if count < 1:
        raise OutOfRange(
            "fill",
            fill,
            reason=(
                f"one skein of {skein_mass:g} g needs {needed / 1000:.3g} L at {liquor_ratio:g} :"
                f" 1, and the pot is filled to {fill / 1000:.3g} L; take a larger pot, a smaller"
                " skein or a lower liquor ratio"
            ),
        )
    return count


def fewest_loads(skeins: int, largest: int) -> int:
    """The fewest loads that hold the skeins of one color.

    skeins   of the color, 1 to 5,000
    largest  that a load may have, 1 and up
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("skeins", skeins, 1, MOST_SKEINS)
    require("largest", largest, 1)
    return ceil(skeins / largest)


def even_loads(skeins: int, largest: int) -> list[int]:
    """The fewest loads that hold the skeins of one color, as even as whole skeins allow: pots of
    one color then come out alike.

    skeins   of the color, 1 to 5,000
    largest  that a load may have, 1 and up
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    count = fewest_loads(skeins, largest)
    return [skeins // count + (place < skeins % count) for place in range(count)]


def loads_needed(skeins: Sequence[int], largest: int) -> int:
    """Loads in all when no two colors share a pot.

    skeins   of each color, 1 to 5,000
    largest  that a load may have, 1 and up
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("largest", largest, 1)
    return sum(fewest_loads(count, largest) for count in skeins)


def days_at_rounds(loads: int, pots: int, rounds: float) -> int:
    """Days that the loads take when every pot does so many rounds a day.

    loads   0 to 5,000
    pots    1 and up
    rounds  of each pot in a day, 1 and up
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("loads", loads, 0, MOST_SKEINS)
    require("pots", pots, 1)
    require("rounds", rounds, 1)
    return ceil(loads / (pots * rounds) - NOISE)


def skeins_for(fiber: float, skein_mass: float = USUAL_SKEIN) -> int:
    """Whole skeins that an amount of yarn is wound into, none heavier than a usual one.

    fiber       g of dry yarn, above 0 to 100,000
    skein_mass  g of a usual skein, above 0 to 10,000
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("fiber", fiber, 0.0, 100_000.0, above=0.0)
    require("skein_mass", skein_mass, 0.0, 10_000.0, above=0.0)
    return ceil(fiber / skein_mass - NOISE)


def skeins_found(fiber: float) -> int:
    """The same as a step of a working: the fewest skeins of which none is heavier than a usual one.

    fiber  g of dry yarn, above 0 to 100,000
    Raises OutOfRange outside this.
    Source: arithmetic.
    """
    return searched(
        skeins_for(float(fiber)),
        lambda skeins: (at_least(skeins * USUAL_SKEIN, fiber),),
        lambda: fiber / USUAL_SKEIN,
    )
