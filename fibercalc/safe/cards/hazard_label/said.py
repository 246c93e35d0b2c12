"""What is said of a bottle's label."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.table import STATUS_WORDS, read_table
from ...label import ASKED
from .asked import HazardLabel


def say(out: Outcome[HazardLabel]) -> tuple[str, ...]:
    signal, sure, asked = out.case.signal, out.case.sure, out.case.asked
    if not sure and not asked:
        missing = (
            f" No entry was found for {', '.join(out.case.missing)}: the data sheet decides."
            if out.case.missing
            else ""
        )
        return (
            "By these limits no hazard statement is called for.",
            f"What is not classified can still harm.{missing}",
        )
    first = (
        f"{'No signal word' if signal == 'none' else signal}: {', '.join(sure)}."
        if sure
        else f"{signal}, until the data sheet says otherwise: {', '.join(asked)}."
    )
    rest = (
        f"The data sheet must say on {', '.join(asked)}; until it does, act as if they hold."
        if asked and sure
        else ""
    )
    return first, rest or "In words below; take the wording from the data sheet."


def notes(out: Outcome[HazardLabel]) -> list[str]:
    case = out.case
    said = [
        "Not legal advice: what you sell or hand on must be labeled by the law of the place, from"
        " the supplier’s data sheet."
    ]
    if any(row.what == "dye-unknown" for row in case.contents):
        said.insert(
            0,
            "A dye whose statements are not known counts as a sensitizer of category 1A, from"
            f" {ASKED:g} %: H317 and H334 until its data sheet says otherwise. Categories 1 and 1B"
            " count from 1 %.",
        )
    if case.missing:
        said.insert(
            0,
            f"No published classification was found for {', '.join(case.missing)}: none is made up"
            " here. Ask for the data sheet.",
        )
    if "EUH208" in case.sure:
        said.append(
            "Below its limit a sensitizer is still named on the label, from a tenth of it: EUH208"
            f" ({STATUS_WORDS['memory']})."
        )
    memory = [
        row.what
        for row in case.contents
        if read_table("safe", "label-limits").row("key", row.what)["status"] == "memory"
    ]
    if memory:
        said.append(f"Limits for {', '.join(dict.fromkeys(memory))} are {STATUS_WORDS['memory']}.")
    return said
