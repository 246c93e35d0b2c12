"""The answer about turns of a reel in words."""

from __future__ import annotations

from ....core.outcome import Outcome
from ...putup import printed_grams, whole_above
from .asked import ReelTurns


def surely(out: Outcome[ReelTurns]) -> int:
    """The whole turns that are enough even at the short end of the reel's roughness."""
    return whole_above(out.high(ReelTurns.need))


def say(out: Outcome[ReelTurns]) -> str | tuple[str, ...]:
    turns = out.value(ReelTurns.turns)
    words = f"{out.number(turns)} turn{'s' * (turns != 1)}"
    weight = f", {out.text(ReelTurns.mass)}" if out.has(ReelTurns.mass) else ""
    one = f"One turn is {out.said(ReelTurns.rested_turn)}" + (
        f" and {out.text(ReelTurns.turn_mass)}." if out.has(ReelTurns.turn_mass) else "."
    )
    if not out.has(ReelTurns.need):
        return f"{words} hold{'s' * (turns == 1)} {out.said(ReelTurns.length)}{weight}.", one
    holds = (
        f"{'It holds' if turns == 1 else 'They hold'} about {out.said(ReelTurns.length)}{weight}."
    )
    if out.rough(ReelTurns.need) and surely(out) > turns:
        return (
            f"Wind {words}.",
            (
                f"{holds} The reel is not known exactly: wind {out.number(surely(out))} to be"
                f" nearly sure that none is short. {one}"
            ),
        )
    return f"Wind {words}.", f"{holds} {one}"


def notes(out: Outcome[ReelTurns]) -> list[str]:
    said = []
    if out.has(ReelTurns.mass):
        grams = printed_grams(out.value(ReelTurns.mass))
        if grams >= 1:
            said.append(
                f"A label for it may say {out.number(grams)} g: what is promised rounds down."
            )
    if out.has(ReelTurns.need) and out.value(ReelTurns.need) < 20:
        said.append(
            "With so few turns the rounding shows: one turn is"
            f" {out.number(100 / out.value(ReelTurns.turns), 1)} % of the skein. A smaller reel"
            " comes closer."
        )
    said.append(
        "Wind at the tension at which the turn was measured, and measure again after a repair or on"
        " another yarn: thick yarn lies further out."
    )
    return said
