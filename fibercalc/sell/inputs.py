"""What several cards ask or answer alike: loads and packs, prices, and closed days.
A card takes one with `replace`, and says what differs there.
"""

from datetime import date

from ..core.card import DATE, Input, Row, Rows
from ..core.units import COUNT, MONEY
from ..held import RECORD

SKEINS_IN_LOAD = Input[int](
    COUNT, "Skeins in a load", default="4", allowed=("1", "200"), usual=("1", "20")
)
LOADS_IN_DAY = Input[int](
    COUNT, "Loads in a day", default="6", allowed=("1", "100"), usual=("1", "12")
)
PACK = Input[int](COUNT, "Skeins in a pack", default="10", allowed=("1", "1000"))
PACK_PRICE = Input[float](
    MONEY, "A pack costs", default="92", allowed=("0", "20000"), record=RECORD.base.pack_price
)
TICKET = Input[float](
    MONEY,
    "Price on the ticket",
    default="27",
    allowed=("0.01", "100000"),
    usual=("5", "80"),
    record=RECORD.product.price,
)


class Stretch(Row):
    """One stretch of days on which nothing is done."""

    first = Input[date](DATE, "From", default="2027-02-01")
    last = Input[date](DATE, "to", default="2027-02-01")


CLOSED = Rows(
    Stretch,
    "Closed days",
    "stretch",
    record=RECORD.plan.closed,
    lent=True,
    least=0,
    most=12,
    default=({"first": "2026-12-24", "last": "2027-01-02"},),
)
