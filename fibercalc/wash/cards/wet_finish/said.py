"""What the constants say and what the own swatch did, in words."""

from __future__ import annotations

from ....core.card import Result
from ....core.outcome import Outcome
from .asked import CONSTANTS, DRY, OFF, OWN, WAYS, WetFinish


def say(out: Outcome[WetFinish]) -> tuple[str, ...]:
    first = (
        "By the constants of plain wool knitting it changes by"
        f" {out.text(WetFinish.width_likely)} in width and {out.text(WetFinish.height_likely)} in"
        " height."
    )
    if not out.has(WetFinish.width_own):
        return (
            first,
            f"From {out.span(WetFinish.width_likely)} and {out.span(WetFinish.height_likely)};"
            " measure yours after the wash to see how it differs.",
        )
    beyond = [way for way in WAYS if _differs(out, way)]
    yours = (
        f"Yours changed by {_signed(out, WetFinish.width_own)} and"
        f" {_signed(out, WetFinish.height_own)}"
    )
    apart = f"in {' and '.join(beyond)} it is another cloth than they describe"
    return first, f"{yours}: {apart if beyond else 'as they say, as far as a tape can tell'}."


def _differs(out: Outcome[WetFinish], way: str) -> bool:
    """Whether the own change lies beyond what constants and tape leave open."""
    return not out.low(OFF[way]) <= 0 <= out.high(OFF[way])


def _signed(out: Outcome[WetFinish], change: Result[float]) -> str:
    return f"{'+' if out.value(change) > 0 else ''}{out.text(change)}"


def notes(out: Outcome[WetFinish]) -> list[str]:
    said = [*_why_it_differs(out)]
    if out.has(WetFinish.proportion):
        state = CONSTANTS.row("state", DRY)
        said.append(
            f"Rows over stitches: {out.text(WetFinish.proportion)}; the constants have"
            f" {out.number(state['Kc'] / state['Kw'], 2)}. Hand knitting lies anywhere from 1.3 to"
            " 1.45."
        )
    said.append(
        "Off the needles means rested a day, flat, not pinned. The constants are of wool stocking"
        " stitch: no rib, no garter, no lace."
    )
    return said


def _why_it_differs(out: Outcome[WetFinish]) -> list[str]:
    if not out.has(WetFinish.width_own):
        return []
    grew = [way for way in WAYS if out.value(OWN[way]) > 0.5]
    if grew:
        return [
            f"It grew in {' and '.join(grew)}. Superwash wool, alpaca, silk and cotton do; so does"
            " a swatch that was tight on the needles or was pinned out. Trust your own swatch."
        ]
    if any(_differs(out, way) for way in WAYS):
        return [
            "More than the constants say is felting, or a swatch that had not rested; less is yarn"
            " with little spring."
        ]
    return []
