"""What leftover weft weaves: each ball's length, its picks, and the cloth they make together."""

from __future__ import annotations

from ....core.arithmetic import total
from ....core.problem import Refused
from ....wash.shrink import size_after
from ...leftovers import pick_length, picks_from, yarn_length
from .asked import Ball, WeftLeft


def answer(case: WeftLeft) -> None:
    if 2 * case.hem >= case.piece_picks:
        raise Refused(
            f"Hems of {case.hem} picks: two of them leave nothing of the {case.piece_picks} picks"
            " of a piece; give fewer.",
            WeftLeft.hem,
        )
    case.pick = pick_length(case.width, case.take_up)
    for number, ball in enumerate(case.balls, 1):
        if ball.mass <= case.tare:
            raise Refused(
                f"Ball {number} weighs {ball.mass:g} g, no more than its shuttle or core of"
                f" {case.tare:g} g.",
                WeftLeft.balls.each(Ball.mass, row=number),
            )
        ball.length = yarn_length(ball.mass, case.tare, case.yarn)
        ball.picks = picks_from(ball.length, case.pick, case.pieces * case.stripes, case.tail)
    case.picks = (
        total(ball.picks for ball in case.balls) if len(case.balls) > 1 else case.balls[0].picks
    )
    case.on_loom = case.picks / case.beat
    case.after = size_after(case.on_loom, case.shrink) if case.on_loom else 0.0
