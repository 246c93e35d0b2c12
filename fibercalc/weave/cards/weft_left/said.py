"""What is said of leftover weft."""

from __future__ import annotations

from ....core.outcome import Outcome
from .asked import WeftLeft, dealt, even, room

MOST_NAMED = 4


def say(out: Outcome[WeftLeft]) -> str | tuple[str, ...]:
    case = out.case
    first = (
        f"{'This weaves' if len(case.balls) == 1 else 'Together they weave'} about"
        f" {out.text(WeftLeft.picks)} picks: {out.said(WeftLeft.on_loom)} of cloth on the loom,"
        f" {out.said(WeftLeft.after)} once washed."
    )
    named = [(ball.name, count) for ball, count in zip(case.balls, dealt(out)) if count]
    if not named:
        return (
            first,
            "That is too little for a pair of picks in every stripe: ask for fewer stripes.",
        )
    listed = ", ".join(
        f"{count}{' picks' if at == 0 else ''} of {name}"
        for at, (name, count) in enumerate(named[:MOST_NAMED])
    ) + (", …" if len(named) > MOST_NAMED else "")
    each = "the piece" if case.pieces == 1 else f"each of {case.pieces} pieces"
    stripes = f"{case.stripes} {'stripe' if case.stripes == 1 else 'stripes'}"
    return first, f"Even across {each}: {stripes} a color: {listed}."


def notes(out: Outcome[WeftLeft]) -> list[str]:
    said = [
        "Stripes are whole pairs of picks, so that each ends at the edge where it began, and are"
        " dealt from the low end of what a ball weaves: the last piece is not short."
    ]
    if out.case.stripes * sum(even(out)) > room(out):
        said.append(
            "There is more than the pieces hold: every stripe was made smaller in proportion, to"
            f" {room(out)} picks a piece at most."
        )
    short = [ball.name for ball, count in zip(out.case.balls, dealt(out)) if not count]
    if short:
        said.append(f"Too little for a pair of picks in every stripe: {', '.join(short)}.")
    return said
