"""The two sizes as a picture, and what another shrinkage would leave."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ...pictures.cloth import cloth_sizes
from ...shrink import MOST_GROWTH, MOST_SHRINK, size_after, size_before
from .asked import MAKE, SHRINK, WAYS, WISHED, MakeSize
from .said import in_units


def table(out: Outcome[MakeSize]) -> Table | None:
    """What the wanted size becomes at each shrinkage around the own one."""
    way = next((way for way in WAYS if out.has(MAKE[way])), None)
    if way is None:
        return None
    low, high = sorted((out.low(SHRINK[way]), out.high(SHRINK[way])))
    made: float = getattr(out.case, MAKE[way].name)
    wanted: float = getattr(out.case, WISHED[way].name)
    places = (
        [low + (high - low) * quarter / 4 for quarter in range(5)]
        if high - low > 0.2
        else [low - 2, low, low + 2]
    )
    places = [shrink for shrink in places if -MOST_GROWTH <= shrink <= MOST_SHRINK]
    rows = tuple(
        (
            f"{out.number(shrink, 1)} %",
            in_units(out, size_before(wanted, shrink)),
            in_units(out, size_after(made, shrink)),
        )
        for shrink in places
    )
    return Table(
        f"If the {way} shrinks otherwise",
        ("Shrinkage", "Should have been made", "Made as above, is left"),
        rows,
    )


def picture(out: Outcome[MakeSize]) -> Picture | None:
    if not (out.has(MakeSize.make_length) and out.has(MakeSize.make_width)):
        return None
    case = out.case
    sizes = [
        ("make", case.make_length, case.make_width),
        ("after washing", case.finished_length, case.finished_width),
    ]
    sign, each = ("in", 2.54) if out.settings.system == "us" else ("cm", 1.0)
    return cloth_sizes(
        "As made, and as it will likely be",
        sizes,
        [
            f"{out.number(length / each, 1)} x {out.number(width / each, 1)} {sign}"
            for _, length, width in sizes
        ],
    )
