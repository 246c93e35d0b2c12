"""What is said of color that comes off."""

from __future__ import annotations

from ....core.outcome import Outcome
from ...bleed import UNKNOWN, YES, bleed_causes, likely_causes, lint_or_dye, whole_rinses
from .asked import BleedCheck

CAUSES = {row["cause"]: row for row in bleed_causes().rows}
WORDS = {
    "lint": "Loose fiber, not dye.",
    "dye": "Dye comes off.",
    "both": "Dye and loose fiber both come off.",
    "neither": "Neither fiber nor dye on the cloth.",
    UNKNOWN: "",
}


def say(out: Outcome[BleedCheck]) -> tuple[str, str]:
    causes = likely_causes(out.case.signs)
    first = (
        f"Likely: {_lower(CAUSES[causes[0][0]]['label'])}."
        if causes
        else f"About {out.text(BleedCheck.left)} of the color is left in the bath."
    )
    left = f"{out.text(BleedCheck.left)} of its color ({out.span(BleedCheck.left)})"
    parts = [f"The bath holds about {left}."]
    if out.has(BleedCheck.more):
        count = whole_rinses(out.value(BleedCheck.more))
        parts.append(
            f"About {count} more {'rinse' if count == 1 else 'rinses'} at this pace."
            if count
            else "The last rinse is as pale as you want it."
        )
    elif out.case.rinsed == YES:
        parts.append("The rinses do not get paler: rinsing alone will not end it.")
    return first, " ".join(parts)


def _lower(text: str) -> str:
    return text[0].lower() + text[1:]


def notes(out: Outcome[BleedCheck]) -> list[str]:
    said: list[str] = []
    told = WORDS[lint_or_dye(out.case.fibers_seen, out.case.cloth_stain)]
    if told:
        said.append(f"By the damp white cloth: {_lower(told)}")
    if out.case.maybe(BleedCheck.gives_off):
        said.append(
            f"Each rinse leaves {out.text(BleedCheck.share)} of the color where the water held by"
            f" the yarn explains {out.text(BleedCheck.by_water)}: the yarn itself gives off dye."
        )
    causes = likely_causes(out.case.signs)
    if not causes:
        said.append(
            "Nothing you saw points at a cause yet. Answer what you can; “not known” is fine."
        )
    said.append("Never call it colorfast: say what was tested, and how.")
    return said
