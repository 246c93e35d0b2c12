"""What is said of a release, and what is short."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import MASS
from ...release import SET_CUT, SET_WHOLE
from .asked import ReleasePlan
from .onward import MOST_IN_KIT, MOST_LOTS, kits_too_large
from .worked import AS_TYPED, colors_dyed, jars_by_dye

MOST_SAID = 4  # shortages in the answer's sentence


def _many(count: int, what: str) -> str:
    return f"{count} {what}{'' if count == 1 else 's'}"


def shortages(out: Outcome[ReleasePlan]) -> list[str]:
    """What is short, in words."""
    case = out.case
    said = [f"{base.short} skeins of {base.name}" for base in case.bases if base.short]
    said += [
        f"{out.measured(grams, MASS, 'g', 0.1, 'up')} of {name}"
        for name, grams in case.short_dyes.items()
    ]
    acid, days = case.maybe(ReleasePlan.short_acid), case.maybe(ReleasePlan.short_days)
    if acid:
        said.append(f"{out.amount(acid, MASS, 'g', 3)} of acid")
    if days:
        said.append(_many(days, "dye day"))
    return said


def say(out: Outcome[ReleasePlan]) -> tuple[str, ...]:
    case, short = out.case, shortages(out)
    more = f" and {len(short) - MOST_SAID} more" if len(short) > MOST_SAID else ""
    return (
        (
            f"Dye {_many(case.skeins, 'skein')} in {_many(case.loads, 'load')},"
            f" {_many(case.dye_days, 'dye day')} and {case.drying_days} to dry; order"
            f" {_many(case.packs, 'pack')} of base."
        ),
        (
            f"Short: {', '.join(short[:MOST_SAID]) + more if short else 'nothing'}; if all is sold"
            f" it brings {out.text(ReleasePlan.takings)}, and {out.text(ReleasePlan.left)} is left"
            " for labor, fees and overhead."
        ),
    )


def notes(out: Outcome[ReleasePlan]) -> list[str]:
    case = out.case
    said = [_of_parting(case)]
    jars = jars_by_dye(case)
    missing = [name for name in case.dyes if name.lower() not in jars]
    if missing:
        said.append(f"Not in the list of jars, so counted as none and free: {', '.join(missing)}.")
    if any(product.kind in (SET_WHOLE, SET_CUT) for product in case.products):
        said.append(
            "A set’s depth here is the mean of its shades, and a small skein is taken as its share"
            " of a full one; “How do I plan a numbered set?” has each shade."
        )
    if case.by_rail > case.by_pots:
        said.append("The rail sets the pace, not the pots: hang more, or dry faster.")
    if case.scale != AS_TYPED:
        said.append(
            f"What if: all numbers to sell at {case.scale:g} %, rounded up; spares as they are."
        )
    large = kits_too_large(out)
    if large:
        said.append(
            f"Not offered to be shared out by lot, since that takes up to {MOST_LOTS} loads and"
            f" {MOST_IN_KIT} colors of a kit: {', '.join(large)}."
        )
    said.append(
        "Spares bring nothing in this sum until they are sold. Labor is counted by the skein dyed;"
        " sets take more of it."
    )
    return said


def _of_parting(case: ReleasePlan) -> str:
    parted = [colorway.name for colorway in colors_dyed(case) if colorway.parted]
    if not parted:
        return (
            "No kit crosses two lots: skeins of one color that go into one kit are dyed in one pot."
        )
    return (
        f"Larger than a load, so it must cross two pots: {', '.join(parted)}. Share one stock over"
        " both pots, dye them in one round, and take skeins from both alike; or take a larger pot."
    )
