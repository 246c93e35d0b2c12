"""What one skein must be sold at: own labor, losses, fees; margin, markup; what moves it."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution, Save
from ....held import RECORD
from ....sources import ARITHMETIC, COMMON_PRACTICE
from .asked import Price
from .said import notes, say
from .shown import bars, discounts, split_table, tornado
from .worked import answer

CARD = Card(
    id="price",
    chapter="sell",
    place=65,
    tall_sheet=True,
    question="What must this skein sell at so that I am paid?",
    case=Price,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(bars, tornado),
    tables=(split_table, discounts),
    basis=Basis(
        MODEL,
        "Cost of goods, own labor, losses carried by the good skeins, overhead, and a fee that is"
        " grossed up rather than added on. No tax rate, fee or wage is known here: all are yours.",
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE),
    cautions=(
        Caution(
            "No accountant.",
            "Whether a tax is due, on what and how it is rounded is for your tax office. A margin"
            " is not a wage: yours is in the cost only if you put it there.",
        ),
    ),
    carry=(
        Carry(
            "fair-stock",
            "What must sell to pay for a fair?",
            {"contribution": Price.contribution, "price": Price.paid},
        ),
        Carry(
            "count-to-dye",
            "How many should I dye?",
            {"price": Price.brings, "cost": Price.one_more},
        ),
        Carry("label", "A price card", {"price": Price.paid}),
    ),
    link_version=2,
    upgrades={1: dict},  # skeins came last
    saves=(
        Save(
            RECORD.product,
            "A product: its price, cost and your time",
            {
                RECORD.product.price: Price.price,
                RECORD.product.net: Price.net,
                RECORD.product.cost: Price.cost,
                RECORD.product.work: Price.work,
            },
        ),
    ),
)
