"""What the wash took, in words, and what caused it."""

from __future__ import annotations

from ....core.card import Result
from ....core.outcome import Outcome
from ...shrink import change_percent, compounded
from .asked import OTHER, TREATED, WORKED, Shrinkage

SHORT_OF_MARKS = 35.0  # cm between marks, ISO 3759
AHEAD = 5  # further washes looked at as a worst case


def say(out: Outcome[Shrinkage]) -> tuple[str, ...]:
    first = (
        f"In the first wash the length {_moved(out, Shrinkage.length_change)} and the width"
        f" {_moved(out, Shrinkage.width_change)}; the area {_moved(out, Shrinkage.area_change)}."
    )
    parts = []
    if out.has(Shrinkage.total_length):
        parts.append(
            f"In {1 + len(out.case.later)} washes: length {_moved(out, Shrinkage.total_length)},"
            f" width {_moved(out, Shrinkage.total_width)}."
        )
    if out.case.next_apart:
        parts.append(
            f"A next piece likely loses {out.span(Shrinkage.length_lost)} and"
            f" {out.span(Shrinkage.width_lost)}."
        )
    else:
        parts.append("One sample says nothing of how the next one differs: wash three.")
    return first, " ".join(parts)


def _moved(out: Outcome[Shrinkage], change: Result[float]) -> str:
    """A change as people say it: "lost 18 %" or "grew 3 %"."""
    text = out.text(change).replace("−", "").replace("-", "")
    return f"lost {text}" if out.value(change) < 0 else f"grew {text}"


def signed(out: Outcome[Shrinkage], value: float) -> str:
    """A change in % with its sign."""
    return f"{'−' if value < 0 else '+'}{out.number(abs(value), 1)} %"


def notes(out: Outcome[Shrinkage]) -> list[str]:
    said = [_cause(out), *_ahead(out)]
    said.append(
        "Percents of length and width do not add to the area:"
        f" {out.text(Shrinkage.length_change)} and {out.text(Shrinkage.width_change)} make"
        f" {out.text(Shrinkage.area_change)}."
    )
    if min(min(sample.length, sample.width) for sample in out.case.samples) < SHORT_OF_MARKS:
        said.append(
            f"The standard marks {SHORT_OF_MARKS:.0f} cm apart and more, 5 cm from the edges;"
            " shorter marks make the tape’s error larger, which is in the range."
        )
    return said


def _cause(out: Outcome[Shrinkage]) -> str:
    if out.case.fiber == OTHER:
        return (
            "This fiber cannot felt: all of it is relaxing, the strain of making going out, mostly"
            " in the first wash."
        )
    if out.case.fiber == TREATED:
        return (
            "Superwash wool hardly felts: what it loses is relaxing. It grows when it is hung wet."
        )
    if out.case.first == WORKED:
        return (
            "The first wash worked the wool, so relaxing and felting are mixed in it. Soak another"
            " sample without rubbing to part them."
        )
    return (
        "The first wash was gentle, so that is relaxing; what the later washes took is felting,"
        " which nothing undoes."
    )


def _ahead(out: Outcome[Shrinkage]) -> list[str]:
    """Where it would come to if each further wash took what the last one took."""
    if not out.has(Shrinkage.later_length):
        return []
    later = (out.value(Shrinkage.later_length), out.value(Shrinkage.later_width))
    if max(abs(change) for change in later) <= 0.05:
        return []
    first, washes = out.case.samples[0], out.case.later
    lengths = [first.length_after, *(wash.length for wash in washes)]
    widths = [first.width_after, *(wash.width for wash in washes)]
    length = [change_percent(*lengths[-2:])] * AHEAD
    width = [change_percent(*widths[-2:])] * AHEAD
    return [
        f"Should each further wash take what the last one took, {AHEAD} more make"
        f" {signed(out, compounded([out.value(Shrinkage.total_length), *length]))} and"
        f" {signed(out, compounded([out.value(Shrinkage.total_width), *width]))} in all: a worst"
        " case, most cloth settles."
    ]
