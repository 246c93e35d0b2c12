"""Rounds, yarn and stretch of a pair of socks."""

from __future__ import annotations

from ....core.problem import Refused
from ....core.steps import looked_up
from ...loop import stitch_length
from ...sock import (
    about_a_third,
    foot_rounds,
    hem_rounds,
    mock_rib_share,
    pair_length,
    rounded,
    rounds_for_length,
    short_row_depth,
    short_row_stitches,
    short_rows,
    sock_foot_length,
    sock_stitches,
    stretch_needed,
    tube_girth,
    worked_needles,
)
from .asked import MOCK, CrankSocks

# 95 %: machine loops keep the constants' proportions better than hand loops (common practice)
LOOP_ERROR = 0.05


def answer(case: CrankSocks) -> None:
    _count_rounds(case)
    case.loop_constant = looked_up("wash", "munden-constants", "state", case.state, "Ks")
    case.loop = stitch_length(case.stitches, case.rows, case.loop_constant)
    worked: float = case.sock
    if case.rib == MOCK:
        case.knitting = worked_needles(case.needles, case.rib_in, case.rib_out)
        widths = 100 * case.loop * case.stitches
        case.rib_share = mock_rib_share(case.rib_in, case.rib_out, widths)
        case.saved = case.needles * case.leg_rounds * (1 - case.rib_share)
        worked = case.sock - case.saved / 2  # floats save anything from nothing to the most
    case.pair = pair_length(worked, case.loop)
    case.tex = 1000 * case.skein_mass / case.skein_length
    case.pair_mass = case.pair * case.tex / 1000
    case.over = case.skein_length - case.pair
    _say_how_good(case)
    case.girth = tube_girth(case.needles, case.stitches)
    case.stretch = stretch_needed(case.heel_girth, case.girth)
    case.snug = stretch_needed(case.foot_girth, case.girth)


def _count_rounds(case: CrankSocks) -> None:
    """Find the rounds of each part and the stitches of one sock."""
    if case.needles % 2:
        raise Refused(
            f"Needles of the cylinder: heel and toe take half of them, and {case.needles} is odd;"
            " give an even number.",
            CrankSocks.needles,
        )
    case.half = case.needles // 2
    given = case.maybe(CrankSocks.left)
    case.narrowest = about_a_third(case.half) if given is None else given
    if case.narrowest >= case.half:
        raise Refused(
            f"Needles left at the narrowest: heel and toe are worked on {case.half}; give fewer"
            " than that.",
            CrankSocks.left,
        )
    case.hem_rounds = hem_rounds(case.hem, case.rows)
    case.leg_rounds = rounded(rounds_for_length(case.leg, case.rows))
    case.pocket_rows = short_rows(case.half, case.narrowest)
    case.pocket_stitches = short_row_stitches(case.half, case.narrowest)
    case.pocket_depth = short_row_depth(case.half, case.narrowest, case.rows)
    case.knitted = sock_foot_length(case.foot_length, case.shorter)
    foot = foot_rounds(case.knitted, case.pocket_depth, case.pocket_depth, case.rows)
    case.foot_rounds = rounded(foot)
    rounds = case.hem_rounds + case.leg_rounds + case.foot_rounds
    case.sock = sock_stitches(case.needles, rounds, 2 * case.pocket_stitches)


def _say_how_good(case: CrankSocks) -> None:
    """The model's error in the yarn, and what floats in a rib may save."""
    saved = case.maybe(CrankSocks.saved)
    for result, middle, scale in (
        (CrankSocks.pair, case.pair, 1.0),
        (CrankSocks.pair_mass, case.pair_mass, case.tex / 1000),
        (CrankSocks.over, case.over, 1.0),
    ):
        case.error(result, LOOP_ERROR * case.pair * scale)
        if saved:
            within = saved * case.loop * scale
            case.band(result, middle - within, middle + within)
