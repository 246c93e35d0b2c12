"""What other counts would bring, and past sales beside demand."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ...demand import expected_profit, expected_short
from ...pictures.demand import demand_picture
from .asked import CountToDye

NORMAL_90 = 0.95


def other_counts(out: Outcome[CountToDye]) -> Table:
    demand, count, whole = out.case.demand, out.case.count, out.case.whole
    step = max(round(count / 8), 1)
    rows = []
    for other in range(max(count - 3 * step, 1), count + 3 * step + 1, step):
        short = expected_short(other, demand.mean, whole, demand.degrees)
        money = expected_profit(
            other,
            demand.mean,
            whole,
            out.case.price,
            out.case.cost,
            out.case.left_value,
            short=short,
        )
        rows.append(
            (
                str(other),
                out.in_100(demand.chance_enough(other)),
                out.number(demand.mean - short),
                out.number(other - demand.mean + short),
                out.number(short),
                ("−" if money < 0 else "") + out.settings.money + out.number(abs(money)),
            )
        )
    return Table(
        "Other counts",
        ("To sell", "Enough in", "Sold", "Left", "In vain", "Brings"),
        tuple(rows),
        "On average, over many releases like these; “brings” is after cost.",
    )


def picture(out: Outcome[CountToDye]) -> Picture:
    demand = out.case.demand
    return demand_picture(
        [(row.name, row.offered, row.sold) for row in out.case.releases],
        demand.mean,
        demand.count_for(1 - NORMAL_90),
        demand.count_for(NORMAL_90),
        out.case.count,
    )
