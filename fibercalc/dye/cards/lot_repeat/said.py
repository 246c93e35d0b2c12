"""What is said of two lots."""

from __future__ import annotations

from ....core.outcome import Outcome
from ...color.asked import WAYS_OF_SEEING
from ...color.seeing import likely_seen
from .asked import LotRepeat


def say(out: Outcome[LotRepeat]) -> tuple[str, str]:
    moves = [
        f"{dye.name} {_signed(100 * dye.change / dye.depth)}"
        for dye in out.case.dyes
        if dye.depth > 0 and abs(dye.change) > 0.005 * dye.depth
    ]
    left = likely_seen(out.case.after)
    then = (
        f"Next time change {', '.join(moves)}: the difference left is then {left}."
        if moves
        else "No change of these dyes brings it closer."
    )
    return f"The difference is {out.case.seen_as}.", f"{then} It is a new lot either way."


def _signed(percent: float) -> str:
    return f"{'+' if percent > 0 else '−'}{abs(percent):.0f} %"


def notes(out: Outcome[LotRepeat]) -> list[str]:
    row = WAYS_OF_SEEING[out.case.seen]
    before = out.text(LotRepeat.before), out.span(LotRepeat.before)
    said = [
        (
            f"The colors were seen so: {row['words']}. Between two such colors that leaves ±"
            f" {row['between']:g}: a difference of {before[0]} may be {before[1]}."
        )
    ]
    if out.case.has(LotRepeat.gray):
        said.append(
            "Both colors were corrected by the gray card in the photo: "
            + " and ".join(
                f"L* {each.lightness:.0f}, a* {each.a:.0f}, b* {each.b:.0f}"
                for each in out.case.colors
            )
            + "."
        )
    if out.value(LotRepeat.before) < row["between"]:
        said.append(
            "What was seen is less than the way of seeing can tell: compare dry yarn side by side"
            " in daylight before you change anything."
        )
    if out.case.only_add == "yes":
        said.append(
            "Only additions are counted, since this lot goes back into the pot: what is too dark"
            " cannot be made lighter."
        )
    said.append(
        "Always label it as a new lot. Screens and phone cameras lie; a match is decided on dry"
        " yarn in daylight and under a lamp."
    )
    return said
