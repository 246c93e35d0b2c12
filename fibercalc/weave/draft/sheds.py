"""What rises in each shed of a rigid heddle with a pick-up stick, and which weaves it can make so.

In a rigid heddle every second end runs through a hole and is held there; the ends between run
through slots and are free (here end 1, at the left, always stands in a slot). Up lifts the ends
in holes, down lowers them, so that those in slots lie on top. With the heddle down, a stick
behind it takes up some of the ends in slots. Turned on edge with the heddle at rest, it lifts
just these; lying flat behind the heddle that is up, it lifts these beside all ends in holes. More
one heddle and one stick cannot do: the ends in holes always move together.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache

from ...core.problem import OutOfRange, require
from .repeat import LARGEST, MOST_ENDS, WARP, WEFT, checked, filled

UP, DOWN, EDGE, FLAT, HAND = "up", "down", "edge", "flat", "hand"
SHEDS = (UP, DOWN, EDGE, FLAT)  # HAND is no shed: its ends are picked up one by one
SHED_WORDS = {  # heddle, stick
    UP: ("up", "back"),
    DOWN: ("down", "back"),
    EDGE: ("at rest", "forward, on edge"),
    FLAT: ("up", "forward, flat"),
    HAND: ("at rest", "by hand"),
}
TAKEN, LEFT = "1", "0"  # an end in a slot, by the stick


@dataclass(frozen=True)
class Lift:
    """One pick at the loom: the shed, and which of the stick's settings it uses (from 1; 0 where
    the stick rests).
    """

    shed: str
    setting: int = 0


@dataclass(frozen=True)
class Lifts:
    """How a weave is made: a Lift for each pick of its repeat; what the stick takes up for each
    setting, a sign for each slot of the repeat; picks that no shed makes.
    """

    picks: tuple[Lift, ...]
    settings: tuple[str, ...]
    by_hand: int


def read_sheds(text: str) -> list[Lift]:
    """Sheds as a weaver notes them, one word or letter each: "up, down", "e u e d f d"; on edge
    and flat use the stick.

    text  words or first letters of up, down, edge, flat
    Raises OutOfRange for any other word, for none, and for more than 64.
    Source: common practice (the rigid heddle itself).
    """
    words = text.replace(",", " ").lower().split()
    found = []
    for word in words:
        shed = next((each for each in SHEDS if word in (each, each[0])), "")
        if not shed:
            raise OutOfRange(
                "text",
                0,
                reason=(
                    f"“{word[:12]}” is no shed; write up, down, edge, flat, or their first letters"
                ),
            )
        found.append(Lift(shed, 1 if shed in (EDGE, FLAT) else 0))
    if not 1 <= len(found) <= LARGEST:
        raise OutOfRange("text", len(found), reason=f"{len(found)} sheds; give 1 to {LARGEST}")
    return found


def raised(shed: str, stick: str, ends: int) -> str:
    """The ends that lie on top in one shed, from the left: "1" for each that does.

    shed   one of up, down, edge (at rest, stick forward on edge), flat (up, stick forward and flat)
    stick  a sign for each end in a slot, over and over: "1" the stick takes it up, "0" it leaves
           it; not empty
    ends   1 to 2,000
    Raises OutOfRange outside these.
    Source: common practice (the rigid heddle itself).
    """
    if shed not in SHEDS:
        raise OutOfRange("shed", 0, reason=f"one of {', '.join(SHEDS)}")
    require("ends", ends, 1, MOST_ENDS)
    if not 1 <= len(stick) <= LARGEST or set(stick) - {TAKEN, LEFT}:
        raise OutOfRange("stick", len(stick), 1, LARGEST)
    taken = {UP: "0", DOWN: "1", EDGE: stick, FLAT: stick}[shed]
    hole = WARP if shed in (UP, FLAT) else WEFT
    slots = filled(taken, -(-int(ends) // 2))
    return "".join(slot + hole for slot in slots)[: int(ends)]


def repeat_of_sheds(sheds: Sequence[Lift], settings: Sequence[str]) -> tuple[str, ...]:
    """The weave that some sheds make.

    sheds     a Lift for each pick, 1 to 64
    settings  what the stick takes up, as raised has it; all of one length, 1 to 32
    Raises OutOfRange outside these.
    Source: common practice (the rigid heddle itself).
    """
    require("sheds", len(sheds), 1, LARGEST)
    slots = len(settings[0]) if settings else 1
    require("settings", slots, 1, LARGEST // 2)
    return checked(
        tuple(
            raised(lift.shed, settings[lift.setting - 1] if lift.setting else LEFT, 2 * slots)
            for lift in sheds
        )
    )


@cache
def lifts_of(repeat: tuple[str, ...]) -> Lifts:
    """How a rigid heddle and a stick make a weave.

    repeat  the weave (see repeat.checked)
    Raises OutOfRange outside these.
    Source: common practice (the rigid heddle itself).
    """
    wide = 2 if len(checked(repeat)[0]) % 2 else 1  # a repeat of whole pairs of slot and hole
    settings: list[str] = []
    picks = []
    for row in repeat:
        slots, holes = (row * wide)[::2], (row * wide)[1::2]
        shed, setting = _shed(slots, holes), 0
        if shed in (EDGE, FLAT):
            if slots not in settings:
                settings.append(slots)
            setting = settings.index(slots) + 1
        picks.append(Lift(shed, setting))
    return Lifts(tuple(picks), tuple(settings), sum(lift.shed == HAND for lift in picks))


def _shed(slots: str, holes: str) -> str:
    """The shed in which just these ends lie on top; by hand where there is none."""
    some = WARP in slots and WEFT in slots
    if WEFT not in holes:
        return UP if WARP not in slots else FLAT if some else HAND
    if WARP not in holes:
        return DOWN if WEFT not in slots else EDGE if some else HAND
    return HAND
