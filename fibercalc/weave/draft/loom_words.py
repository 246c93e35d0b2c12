"""A weave and a weft order in the words of the loom: heddle up or down, stick forward or back, so
many picks of a color.
"""

from collections.abc import Mapping, Sequence
from itertools import groupby

from ...core.problem import require
from .repeat import WARP
from .sheds import HAND, SHED_WORDS, TAKEN, lifts_of


def stick_words(setting: str) -> str:
    """What the stick takes up, in words.

    setting  a sign for each end in a slot: "1" the stick takes it up, "0" it leaves it
    Raises nothing.
    Source: common practice (the rigid heddle itself).
    """
    return ", ".join(
        f"{'take up' if sign == TAKEN else 'leave'} {len(list(run))}"
        for sign, run in groupby(setting)
    )


def settings_words(settings: Sequence[str]) -> str:
    """How the stick is set for a weave, in one or two sentences; "" where there is none to set.

    settings  what the stick takes up, as sheds.lifts_of gives them
    Raises nothing.
    Source: common practice (the rigid heddle itself).
    """
    if not settings:
        return ""
    where = "End 1, at the left, stands in a slot."
    said = [stick_words(setting) for setting in settings]
    if len(said) == 1:
        return (
            f"Set the stick once, heddle down, on the ends in slots from the left: {said[0]}, over"
            f" and over. {where}"
        )
    return (
        "Heddle down, on the ends in slots from the left, over and over; "
        + "; ".join(f"setting {number}: {text}" for number, text in enumerate(said, 1))
        + f". {where}"
    )


def shed_rows(repeat: tuple[str, ...]) -> list[tuple[str, str, str]]:
    """The sheds of a weave: number, heddle, stick.

    repeat  the weave (see repeat.checked)
    Raises OutOfRange outside these.
    Source: common practice (the rigid heddle itself).
    """
    lifts = lifts_of(repeat)
    rows = []
    for number, (lift, row) in enumerate(zip(lifts.picks, repeat), 1):
        heddle, stick = SHED_WORDS[lift.shed]
        if lift.shed == HAND:
            raised = (
                ", ".join(str(end) for end, sign in enumerate(row, 1) if sign == WARP) or "none"
            )
            stick = f"by hand: over it ends {raised} of {len(row)}"
        elif lift.setting and len(lifts.settings) > 1:
            stick += f", setting {lift.setting}"
        rows.append((str(number), heddle, stick))
    return rows


def way_words(repeat: tuple[str, ...]) -> str:
    """What it takes to weave it, as the end of a sentence.

    repeat  the weave (see repeat.checked)
    Raises OutOfRange outside these.
    Source: common practice (the rigid heddle itself).
    """
    lifts = lifts_of(repeat)
    if lifts.by_hand:
        return (
            f"one heddle and one stick cannot make it: {lifts.by_hand} of {len(lifts.picks)} picks"
            " are picked up by hand"
        )
    if len(lifts.settings) > 1:
        return f"one heddle makes it, with a stick set in {len(lifts.settings)} ways"
    return "one heddle and one stick make it" if lifts.settings else "one heddle makes it"


def block_words(times: int, runs: Sequence[tuple[int, int]], names: Mapping[int, str]) -> str:
    """Stripes of weft as a weaver notes them: "14 × (20 Natural, 4 Slate)".

    times  so many times over, 1 or more
    runs   stripes (place in the order, picks), as piece.pick_list gives them
    names  the yarn of each place of the order; piece.HEM for the hem's
    Raises OutOfRange outside this, KeyError for a place without a yarn.
    Source: arithmetic.
    """
    require("times", times, 1)
    said = [f"{count} {names[place]}" for place, count in runs]
    if times == 1:
        return ", ".join(said)
    return f"{times} × {said[0]}" if len(said) == 1 else f"{times} × ({', '.join(said)})"


def sheds_in_turn(picks: int, size: int) -> str:
    """Which sheds some picks of a weave use, from its first.

    picks  in a row, 1 or more
    size   picks of the repeat, 1 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("picks", picks, 1)
    require("size", size, 1)
    if picks <= size:
        return f"1 to {picks}" if picks > 1 else "1"
    times, rest = divmod(picks, size)
    return f"1 to {size}, {times} times" + (
        f", then {f'1 to {rest}' if rest > 1 else '1'}" if rest else ""
    )


def begins_with(repeat: tuple[str, ...]) -> str:
    """The shed of the first pick of a weave: whether a hem begins with the heddle up or down.

    repeat  the weave (see repeat.checked)
    Raises OutOfRange outside these.
    Source: common practice (hems in plain weave).
    """
    return lifts_of(repeat).picks[0].shed
