"""Where an order goes on to."""

from __future__ import annotations

from ....core.card import Carry
from ...plans import ways
from .asked import BaseOrder

CARRY = (
    Carry(
        "back-plan",
        "By when must I do what?",
        {
            "check": BaseOrder.check,
            "supplier_quick": BaseOrder.lead_low,
            "supplier": BaseOrder.lead,
            "supplier_slow": BaseOrder.lead_high,
            "closed": ways.closed_days,
            "today": BaseOrder.today,
        },
    ),
    Carry("stock-solution", "Make up a stock", {}),
    Carry("true-weight", "It says 100 g, mine says 103", {}),
)
