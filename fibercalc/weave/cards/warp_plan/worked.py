"""How ends, lengths, picks and yarn follow from the pieces, each loss divided out in its place."""

from __future__ import annotations

from math import ceil

from ....core.arithmetic import smallest, total
from ....core.problem import Refused
from ....core.steps import at_least, at_most, searched
from ....wash.shrink import size_after, size_before
from ...chain import finished_width, pick_length, warp_for_woven, whole_picks, width_in_heddle
from ...ends import ends_by_color, ends_for_width, ends_that_fit
from ...pictures.written import name_of
from ...run import reached
from .asked import ENDS, FRINGE, HEM, ONCE, ONE, OTHER, Share, WarpPlan


def answer(case: WarpPlan) -> None:
    _ends(case)
    case.heddle_width = case.ends_across / case.sett
    case.finished_width = finished_width(case.heddle_width, case.width_shrink, case.draw_in)
    _lengths(case)
    _warp(case)
    case.pick = pick_length(case.heddle_width, case.weft_take_up) / 100
    _picks(case)
    _weft(case)
    if fine_hems(case):
        _hem_yarn(case)
    case.shares = _shares(case)


def fine_hems(case: WarpPlan) -> bool:
    """Whether the hems are woven in a finer yarn, and counted apart."""
    return case.finish == HEM and case.hem_yarn == OTHER


def _some_alike(case: WarpPlan) -> bool:
    """Whether a row of pieces stands for more than one."""
    return any(piece.many > 1 for piece in case.pieces)


def _all(values: list[float]) -> float:
    """Their sum; one alone is itself."""
    return total(values) if len(values) > 1 else values[0]


def _ends(case: WarpPlan) -> None:
    """The ends to thread: those wanted, or as many as the loom holds."""
    multiple = 1
    if case.warp_colors == ONCE:
        case.ends_wanted = _all([stripe.ends for stripe in case.stripes])
    elif case.go_by == ENDS:
        case.ends_wanted = case.ends_given
    else:
        multiple = int(case.multiple)
        case.width_needed = width_in_heddle(case.width, case.width_shrink, case.draw_in)
        case.ends_by_width = ends_for_width(float(case.width_needed), float(case.sett), multiple)
        case.ends_wanted = searched(
            case.ends_by_width,
            lambda ends: (at_least(ends, case.width_needed * case.sett),),
            lambda: case.width_needed * case.sett,
        )
    case.ends_that_fit = searched(
        ends_that_fit(float(case.loom_width), float(case.sett), multiple),
        lambda ends: (at_most(ends, case.loom_width * case.sett),),
        lambda: case.loom_width * case.sett,
    )
    if case.ends_that_fit < 1:
        raise Refused(
            f"Width of the loom: not even {multiple} {'end fits' if multiple == 1 else 'ends fit'}"
            " in it at this sett.",
            WarpPlan.loom_width,
        )
    case.ends_across = smallest(case.ends_wanted, case.ends_that_fit)
    case.ends = case.ends_across + case.edge_ends
    _too_wide(case)


def _too_wide(case: WarpPlan) -> None:
    """How wide the cloth was wanted, where the loom does not hold its ends."""
    case.too_wide = case.ends_wanted > case.ends_that_fit
    if not case.too_wide:
        return
    if case.has(WarpPlan.width):
        case.width_asked = case.width
    else:
        case.width_needed = case.ends_wanted / case.sett
        case.width_asked = finished_width(case.width_needed, case.width_shrink, case.draw_in)


def _lengths(case: WarpPlan) -> None:
    """How long each piece is woven: settled once, or the plan itself would change with the
    roughness of the shrinkage."""
    hems: float = 0
    if case.finish == HEM:
        case.hem_woven = size_before(case.hem, case.length_shrink)
        hems = 2 * case.hem
    case.lengths_woven = [
        size_before(piece.length + hems, case.length_shrink) for piece in case.pieces
    ]
    for piece, woven in zip(case.pieces, case.lengths_woven):
        piece.woven = woven
    washed = size_after(case.pieces[0].woven, case.length_shrink)
    case.finished_length = washed - hems if hems else washed


def _warp(case: WarpPlan) -> None:
    """The warp from end to end, and its yarn."""
    for piece in case.pieces:
        piece.woven_alike = piece.many * piece.woven if piece.many > 1 else piece.woven
    case.pieces_in_all = _all([piece.many for piece in case.pieces])
    dividers = case.divider * (case.pieces_in_all + 1)
    alike = _some_alike(case)
    lengths = [piece.woven_alike if alike else piece.woven for piece in case.pieces]
    case.on_loom = _all(lengths) + dividers + case.sample
    never_woven = case.waste
    if case.finish == FRINGE:
        case.never_woven = 2 * case.fringe * case.pieces_in_all + case.waste
        never_woven = case.never_woven
    case.warp_length = (warp_for_woven(case.on_loom, case.take_up) + never_woven) / 100
    limit = case.maybe(WarpPlan.limit)
    if limit is not None:
        case.spare = limit - case.warp_length
        case.available = 100 * limit - case.waste
    case.warp_yarn = case.ends * case.warp_length
    case.warp_weight = case.warp_yarn * case.skein_mass / case.skein_length
    case.warp_balls = case.warp_yarn / case.skein_length


def _picks(case: WarpPlan) -> None:
    """Picks of a hem, of each piece and in all; those of a hem in a finer yarn apart."""
    fine = fine_hems(case)
    if fine:
        case.picks_in_hem = ceil(case.hem_woven * case.hem_picks - 0.001)
    else:
        case.picks_in_hem = round(case.hem_woven * case.picks) if case.finish == HEM else 0
    for piece in case.pieces:
        cloth = piece.woven - 2 * case.hem_woven if fine else piece.woven
        piece.picks = whole_picks(cloth, case.picks)
        piece.picks_alike = piece.many * piece.picks if piece.many > 1 else piece.picks
        piece.picks_with_hems = piece.picks + 2 * case.picks_in_hem if fine else piece.picks
    case.first_picks = case.pieces[0].picks_with_hems
    alike = _some_alike(case)
    picks = _all([piece.picks_alike if alike else piece.picks for piece in case.pieces])
    if case.sample:
        case.sample_picks = whole_picks(case.sample, case.picks)
        picks += case.sample_picks
    case.weft_picks = picks


def _weft(case: WarpPlan) -> None:
    mass, length = case.skein_mass, case.skein_length
    if case.weft_from == OTHER:
        mass, length = case.weft_mass, case.weft_length
    case.weft_yarn = case.weft_picks * case.pick
    case.weft_weight = case.weft_yarn * mass / length
    case.weft_balls = case.weft_yarn / length
    case.weft_count = 1000 * mass / length


def _hem_yarn(case: WarpPlan) -> None:
    case.hem_thread = 2 * case.pieces_in_all * case.picks_in_hem * case.pick
    case.hem_weight = case.hem_thread * case.hem_mass / case.hem_length
    case.hem_balls = case.hem_thread / case.hem_length


def pieces_in_order(case: WarpPlan) -> list[tuple[str, int]]:
    """Each piece's name and its row, one after another as they are woven."""
    found = []
    for at, piece in enumerate(case.pieces):
        name = name_of(piece)
        found += [
            (name if piece.many == 1 else f"{name} {number}", at)
            for number in range(1, piece.many + 1)
        ]
    return found


def warp_each(case: WarpPlan) -> list[float]:
    """Warp that each piece takes, its fringes with it, cm."""
    fringes = 2 * case.fringe if case.finish == FRINGE else 0.0
    return [
        warp_for_woven(case.pieces[at].woven, case.take_up) + fringes
        for _, at in pieces_in_order(case)
    ]


def ends_at(case: WarpPlan) -> list[float]:
    """Warp used when each piece is off, cm."""
    return reached(
        warp_each(case),
        warp_for_woven(case.divider, case.take_up),
        warp_for_woven(case.sample, case.take_up),
    )


def stripes_of(case: WarpPlan) -> list[tuple[str, int]]:
    """The order of colors across the warp."""
    if case.warp_colors == ONE:
        return [(case.warp_color or "one color", max(int(case.ends_across), 1))]
    return [(stripe.color or "–", int(stripe.ends)) for stripe in case.stripes]


def _ends_by_color(case: WarpPlan) -> dict[str, int]:
    """Ends of each color, with the extra ones at the first and the last end in their colors."""
    order, ends, extra = stripes_of(case), int(case.ends_across), int(case.edge_ends)
    found = ends_by_color(order, ends)
    if extra:
        first, last = order[0][0], _color_at(order, ends - 1)
        found[first] = found.get(first, 0) + (extra + 1) // 2
        found[last] = found.get(last, 0) + extra // 2
    return found


def _color_at(order: list[tuple[str, int]], place: int) -> str:
    place %= sum(ends for _, ends in order)
    for color, ends in order:
        if place < ends:
            return color
        place -= ends
    raise IndexError(place)


def _picks_by_color(case: WarpPlan) -> dict[str, int]:
    """Picks of each color; a sample is woven in the first piece's."""
    found: dict[str, int] = {}
    for at, piece in enumerate(case.pieces):
        picks = int(piece.picks_alike)
        if at == 0 and case.sample:
            picks += int(case.sample_picks)
        found[piece.color or "–"] = found.get(piece.color or "–", 0) + picks
    return found


def _shares(case: WarpPlan) -> list[Share]:
    """Each color's part of warp and weft. Warp and weft of one yarn are bought together."""
    ends, picks = _ends_by_color(case), _picks_by_color(case)
    all_ends, all_picks = sum(ends.values()), sum(picks.values())
    warp = {color: count / all_ends for color, count in ends.items()}
    weft = {color: count / all_picks if all_picks else 0.0 for color, count in picks.items()}
    if case.weft_from == OTHER:
        return [Share(color, "warp", part, 0.0) for color, part in warp.items()] + [
            Share(color, "weft", 0.0, part) for color, part in weft.items()
        ]
    uses = dict.fromkeys(warp, "warp") | {
        color: "warp and weft" if color in warp else "weft" for color in weft
    }
    return [Share(color, uses[color], warp.get(color, 0.0), weft.get(color, 0.0)) for color in uses]
