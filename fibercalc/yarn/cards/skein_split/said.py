"""The answer about the small skeins in words."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import LENGTH
from ...putup import printed_grams
from ...split import most_turns_for_count
from .asked import SkeinSplit


def say(out: Outcome[SkeinSplit]) -> str | tuple[str, ...]:
    count, turns = out.value(SkeinSplit.count), out.value(SkeinSplit.turns)
    first = (
        f"Each skein gives {count} small {'skein' if count == 1 else 'skeins'} of {turns}"
        f" {'turn' if turns == 1 else 'turns'}."
    )
    each = (
        f"Each holds {out.said(SkeinSplit.small_length)} and may be labeled"
        f" {out.number(printed_grams(out.value(SkeinSplit.small_mass)))} g"
    )
    left = f"{out.text(SkeinSplit.left, 'm')} ({out.text(SkeinSplit.left_mass, 'g')}) is left over"
    short = f"chance that the last one is short: {out.text(SkeinSplit.last_short)}"
    total = (
        f" For {out.number(out.case.total)} small skeins, cut"
        f" {out.number(out.value(SkeinSplit.full_skeins))} full ones."
        if out.case.total is not None
        else ""
    )
    return first, f"{each}; {left}; {short}.{total}"


def notes(out: Outcome[SkeinSplit]) -> list[str]:
    said = []
    more = out.value(SkeinSplit.count) + 1
    turns = most_turns_for_count(out.case.usable, more, out.case.reel, out.case.loss_per_cut)
    if turns >= 1 and turns >= 0.75 * out.value(SkeinSplit.turns):
        said.append(
            f"At {turns} turns each, {out.amount(turns * out.case.reel, LENGTH, 'm')}, it would"
            f" give {more}."
        )
    if 100 > out.value(SkeinSplit.last_short) > 5:
        said.append(
            "To be surer of the last one, take a turn off each, or measure the full skein better."
        )
    if out.has(SkeinSplit.full_skeins):
        said.append(
            "That is for small skeins cut first or all of one color. Dyed whole and cut afterward,"
            " each shade rounds up by itself: ask once for each shade and add."
        )
    return said
