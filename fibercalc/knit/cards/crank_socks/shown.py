"""The sock with its rounds, and the rounds for other feet."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.units import LENGTH
from ...pictures.sock import sock_schematic
from ...sock import foot_rounds_by_length
from .asked import MOCK, CrankSocks

FEET = tuple(centimeters / 100 for centimeters in range(20, 31))


def picture(out: Outcome[CrankSocks]) -> Picture | None:
    half, left = out.case.half, out.case.narrowest
    pocket = (half, left, out.case.pocket_rows)
    unit = out.units(CrankSocks.girth)[0].sign
    rib = f"mock rib: {out.case.rib_in} in, {out.case.rib_out} out" if out.case.rib == MOCK else ""
    extra = [f"A pair: {out.both(CrankSocks.pair)}, {out.text(CrankSocks.pair_mass, 'g')}"]
    return sock_schematic(
        out.case.hem_rounds,
        out.case.leg_rounds,
        pocket,
        out.case.foot_rounds,
        pocket,
        out.case.between,
        out.text(CrankSocks.girth, unit),
        out.case.needles,
        out.amount(out.case.knitted, LENGTH, unit, 3),
        rib,
        extra,
    )


def feet(out: Outcome[CrankSocks]) -> Table | None:
    """Foot rounds for other feet on the same cylinder at the same gauge."""
    case = out.case
    found = foot_rounds_by_length(FEET, case.half, case.narrowest, case.rows, case.shorter)
    if not found:
        return None
    rows = tuple(
        (out.amount(length, LENGTH, "cm", 3), out.amount(length, LENGTH, "in", 3), str(count))
        for length, count in found
    )
    return Table("Foot rounds for other feet, same gauge", ("Foot", "Inches", "Rounds"), rows)
