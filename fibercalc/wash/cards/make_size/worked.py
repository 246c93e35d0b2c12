"""The size to make in each direction, the stitches for it, and how much more cloth that is."""

from __future__ import annotations

from ....core.steps import looked_up
from ....core.table import read_table
from ...shrink import change_percent, size_after, size_before
from .asked import COUNTED, FINISHED, MAKE, OWN, PUBLISHED, SHRINK, SWATCH, MakeSize


def answer(case: MakeSize) -> None:
    _length(case)
    _width(case)
    if case.has(MakeSize.make_length) and case.has(MakeSize.make_width):
        made, left = case.make_length * case.make_width, case.wanted_length * case.wanted_width
        case.more = 100 * (made / left - 1)
    if case.how == PUBLISHED:
        _bands(case)


def _length(case: MakeSize) -> None:
    if case.how == OWN:
        case.length_shrink = case.length_percent
    elif case.how == SWATCH:
        case.length_shrink = -change_percent(case.swatch_length, case.swatch_length_after)
    elif _ends(case, "length"):
        case.length_least = looked_up("wash", "shrink-ranges", "key", case.cloth, "length_low")
        case.length_most = looked_up("wash", "shrink-ranges", "key", case.cloth, "length_high")
        case.length_shrink = (case.length_least + case.length_most) / 2
    else:
        return
    case.make_length = size_before(case.wanted_length, case.length_shrink)
    case.length_made = case.make_length
    case.finished_length = size_after(case.length_made, case.length_shrink)
    if case.rows is not None:
        case.along = case.make_length * case.rows


def _width(case: MakeSize) -> None:
    if case.how == OWN:
        case.width_shrink = case.width_percent
    elif case.how == SWATCH:
        case.width_shrink = -change_percent(case.swatch_width, case.swatch_width_after)
    elif _ends(case, "width"):
        case.width_least = looked_up("wash", "shrink-ranges", "key", case.cloth, "width_low")
        case.width_most = looked_up("wash", "shrink-ranges", "key", case.cloth, "width_high")
        case.width_shrink = (case.width_least + case.width_most) / 2
    else:
        return
    case.make_width = size_before(case.wanted_width, case.width_shrink)
    case.width_made = case.make_width
    case.finished_width = size_after(case.width_made, case.width_shrink)
    if case.stitches is not None:
        case.across = case.make_width * case.stitches


def _ends(case: MakeSize, way: str) -> tuple[float, float] | None:
    """Both ends of a published range; None where there is none in that direction."""
    row = read_table("wash", "shrink-ranges").row("key", case.cloth)
    low, high = row[f"{way}_low"], row[f"{way}_high"]
    return (low, high) if isinstance(low, float) and isinstance(high, float) else None


def _bands(case: MakeSize) -> None:
    """What a published range leaves open: each result at both of its ends."""
    lengths, widths = _ends(case, "length"), _ends(case, "width")
    if lengths:
        _band(case, "length", lengths, case.wanted_length, case.length_made, case.rows)
    if widths:
        _band(case, "width", widths, case.wanted_width, case.width_made, case.stitches)
    if lengths and widths:
        more = [size_before(1, long) * size_before(1, wide) for long, wide in zip(lengths, widths)]
        case.band(MakeSize.more, *(100 * (factor - 1) for factor in more))


def _band(
    case: MakeSize,
    way: str,
    ends: tuple[float, float],
    wanted: float,
    made: float,
    gauge: float | None,
) -> None:
    cm = MAKE[way].work_unit
    case.band(SHRINK[way], *ends)
    case.band(MAKE[way], *(cm.to_base(size_before(wanted, end)) for end in ends))
    case.band(FINISHED[way], *(cm.to_base(size_after(made, end)) for end in ends))
    if gauge is not None:
        case.band(COUNTED[way], *(gauge * size_before(wanted, end) for end in ends))
