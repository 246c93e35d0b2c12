"""What is said of the air of a room."""

from __future__ import annotations

from ....core.card import Result
from ....core.outcome import Outcome
from ....core.table import read_table
from ...exposure import stricter_short
from .asked import CHILDREN, FOOD, LIMITS, LUNGS, NOBODY, POWDER, PREGNANT, RoomAir

STOPS = {
    PREGNANT: (
        "Stop: pregnant or nursing, leave this work to someone else until a doctor has seen the"
        " data sheets."
    ),
    LUNGS: "Stop: with asthma or a dye allergy, keep out of the room; ask a doctor first.",
    CHILDREN: "Stop: no powder, acid or boiling bath while children or pets are in the room.",
    FOOD: "Stop: no dyeing where food is made; no pot, spoon or sink goes back to food.",
}
# Each share of a limit that is answered: when it is meant, and of what it is a share.
SHARES: dict[Result[float], tuple[str, str]] = {
    RoomAir.index: ("Over the day", "the stricter 8-hour limit"),
    RoomAir.short: ("In the worst quarter of an hour", "the stricter 15-minute limit"),
    RoomAir.ceiling: ("At its highest", "the published ceiling"),
    RoomAir.idlh: ("At its highest", "the level immediately dangerous to life or health"),
}
VERDICTS = ("likely below", "it may lie above", "it likely lies above", "it lies above")
LEAVE = "Leave, air the room, and do not go back in without fresh air."


def say(out: Outcome[RoomAir]) -> tuple[str, ...]:
    if out.case.what == POWDER:
        first, rest = (
            "Keep the dust down: no limit stands for dye dust.",
            (
                "A dye whose hazard statements you do not know counts as a sensitizer: once"
                " sensitized, very little sets it off again, for life."
            ),
        )
    else:
        first, rest = _of_the_worst(out)
    if out.case.stop != NOBODY:
        return STOPS[out.case.stop], f"{first} {rest}"
    return first, rest


def _of_the_worst(out: Outcome[RoomAir]) -> tuple[str, str]:
    worst, *others = sorted(
        (share for share in SHARES if out.has(share)),
        key=lambda share: (
            share is RoomAir.idlh and _verdict(out, share) > 0,
            _verdict(out, share),
            out.high(share),
        ),
        reverse=True,
    )
    leave = f"{LEAVE} " if worst is RoomAir.idlh and _verdict(out, worst) else ""
    also = "".join(f"; also {_share(out, share)}" for share in others if _verdict(out, share))
    return (
        f"{leave}{SHARES[worst][0]} {_share(out, worst)}.",
        (
            f"From {out.span(worst)}{also}. Nobody knows a pot’s emission without measuring it."
            " Right over the pot it is far worse."
        ),
    )


def _verdict(out: Outcome[RoomAir], share: Result[float]) -> int:
    """How surely a share lies above its limit: 0 when no end does, 3 when even the low one does."""
    return sum(end > 100 for end in (out.high(share), out.value(share), out.low(share)))


def _share(out: Outcome[RoomAir], share: Result[float]) -> str:
    return f"about {out.text(share)} of {SHARES[share][1]}: {VERDICTS[_verdict(out, share)]}"


def notes(out: Outcome[RoomAir]) -> list[str]:
    if out.case.what == POWDER:
        clear = out.span(RoomAir.clear) or out.text(RoomAir.clear)
        return [
            "After a spill or cloud leave the room, air it, then wipe wet; never sweep.",
            f"At this airing the air is down to 1 % after {clear}.",
        ]
    said = [
        "Left out: the plume over the pot, drafts, steam that condenses and drips, other sources,"
        " and that part of the acid is held by fiber and salts (counted as free here, the careful"
        " side). Each spell starts in clean air and counts at the level of its end; spells that"
        " follow at once are one longer spell."
    ]
    none = [
        read_table("safe", LIMITS).row("key", vapor)["label"]
        for vapor in dict.fromkeys(spell.vapor for spell in out.case.times)
        if stricter_short(vapor) is None
    ]
    if none:
        said.append(f"No short-term limit was found for {', '.join(none)}.")
    return said
