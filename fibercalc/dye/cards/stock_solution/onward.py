"""Where a stock goes on to, and what it can be kept as."""

from __future__ import annotations

from ....core.card import Carry, Save
from ....core.outcome import Outcome
from ....held import RECORD
from .asked import MAKE, StockSolution


def _contents(out: Outcome[StockSolution]) -> list[dict[str, str]]:
    """What the bottle holds: the powder as weighed, where the jar is of another strength."""
    strength = out.case.holds if out.has(StockSolution.holds) else out.case.wanted
    return [{"what": "dye-unknown", "strength": f"{strength:.4g}%"}]


CARRY = (
    Carry(
        "dye-recipe",
        "How much of it for this pot?",
        {"dyes.1.name": StockSolution.name, "dyes.1.strength": StockSolution.wanted},
    ),
    Carry("hazard-label", "What hazards go on the bottle?", {"contents": _contents}),
)
SAVES = (
    Save(
        RECORD.bottle,
        "A stock bottle",
        {
            RECORD.bottle.name: StockSolution.name,
            RECORD.bottle.strength: StockSolution.wanted,
            RECORD.bottle.left: StockSolution.final,
            RECORD.bottle.made_on: StockSolution.made,
            RECORD.bottle.weeks: StockSolution.weeks,
        },
        when={StockSolution.do: (MAKE,)},
    ),
)
