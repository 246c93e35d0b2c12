"""The answer about painted skeins in words."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import MASS
from .asked import STEAM, PaintPlan, Section


def say(out: Outcome[PaintPlan]) -> tuple[str, ...]:
    parts = [f"{liquor_of(out, section)} for {section.name}" for section in out.case.sections]
    listed = parts[0] if len(parts) == 1 else f"{', '.join(parts[:-1])} and {parts[-1]}"
    steam = STEAM[out.case.fiber]
    return (
        f"Each skein takes {listed}.",
        (
            f"That is {out.text(PaintPlan.liquor, 'mL')} in all. Steam {steam['low']:g} to"
            f" {steam['high']:g} minutes once it is hot through, in {_rounds(out.case.rounds)}."
        ),
    )


def liquor_of(out: Outcome[PaintPlan], section: Section) -> str:
    """What one skein takes in a section, in sentence and picture as in the table."""
    return out.times(PaintPlan.liquor, section.volume / out.value(PaintPlan.liquor), "mL")


def yarn_of(out: Outcome[PaintPlan], section: Section) -> str:
    return out.measured(section.mass, MASS, "g", 1)


def _rounds(count: int) -> str:
    return f"{count:.0f} {'round' if count == 1 else 'rounds'}"


def notes(out: Outcome[PaintPlan]) -> list[str]:
    said = [
        (
            "More liquor than the yarn takes up runs to the low end and muddies: stop when it is"
            " wet through, blot what stands."
        ),
        "Steam times are common practice; no published time was found."
        f" {STEAM[out.case.fiber]['note']}".strip(),
    ]
    whole = sum(section.share for section in out.case.sections)
    if abs(whole - 100) > 0.5:
        said.append(f"The sections add up to {whole:g}; that was taken as the whole skein.")
    return said
