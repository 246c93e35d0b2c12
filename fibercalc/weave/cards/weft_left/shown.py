"""Leftover weft shown: ball by ball, the order of a piece, and the piece with its stripes."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.units import LENGTH, MASS
from ....wash.shrink import size_after
from ...leftovers import laid_out
from ...pictures.key import Yarn
from ...pictures.stripes import piece_of_stripes
from .asked import Ball, WeftLeft, dealt, ranges, room


def balls_table(out: Outcome[WeftLeft]) -> Table | None:
    found = zip(out.case.balls, ranges(out), dealt(out))
    rows = tuple(
        (
            f"{number} {ball.name}",
            out.amount(ball.length, LENGTH, "m", 3),
            out.amount(ball.length, LENGTH, "yd", 3),
            f"{low:.0f} to {high:.0f}",
            str(stripe) if stripe else "–",
            out.amount(_over(out.case, ball, stripe), MASS, "g", 2),
        )
        for number, (ball, (low, high), stripe) in enumerate(found, 1)
    )
    return Table(
        "Ball by ball",
        ("Ball", "Meters", "Yards", "Picks", "Stripe", "Over"),
        rows,
        "Stripe: picks of one. Over: what is likely left of the ball.",
    )


def _over(case: WeftLeft, ball: Ball, stripe: int) -> float:
    """What is likely left of a ball, g, once its stripes are woven."""
    used = case.pieces * case.stripes * (stripe * case.pick + case.tail) if stripe else 0.0
    return max(ball.length - used, 0.0) * case.yarn / 1000


def _layout(out: Outcome[WeftLeft]) -> list[tuple[int, int]]:
    return laid_out(dealt(out), out.case.stripes, room(out))


def order(out: Outcome[WeftLeft]) -> Table | None:
    """The weft of each piece, from its first pick."""
    names = {number: ball.name for number, ball in enumerate(out.case.balls)} | {-1: "Main yarn"}
    hem = [("Hem", out.case.hem)] if out.case.hem else []
    runs = [*hem, *((names[color], count) for color, count in _layout(out)), *hem]
    rows, done = [], 0
    for name, count in runs:
        rows.append(
            (f"{done + 1} to {done + count}" if count > 1 else str(done + 1), name, str(count))
        )
        done += count
    return Table("Every piece, from its first pick", ("Picks", "Weft", "How many"), tuple(rows))


def picture(out: Outcome[WeftLeft]) -> Picture | None:
    case = out.case
    yarns = [Yarn(ball.name, ball.color.hex) for ball in case.balls]
    along = size_after(case.piece_picks / case.beat, case.shrink)
    return piece_of_stripes(_layout(out), yarns, case.hem, case.pieces, 100 * case.width, along)
