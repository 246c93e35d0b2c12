"""What is asked about a price, and what follows from it."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Input, Option, Result
from ....core.ref import FieldRef
from ....core.units import COUNT, MONEY, NUMBER, PERCENT, TIME
from ....held import RECORD
from ...inputs import SKEINS_IN_LOAD, TICKET

ASKED, MARGIN = "asked", "margin"
INSIDE, OUTSIDE, NO_TAX = "inside", "outside", "none"
ON_PAID, ON_NET = "paid", "net"


def _cost(
    label: str,
    default: str,
    usual: tuple[str, str],
    measure: str = "",
    record: FieldRef | None = None,
) -> Input[float]:
    return Input(
        MONEY,
        label,
        record=record,
        default=default,
        allowed=("0", "100000"),
        usual=usual,
        measure=measure,
    )


class Price(Case):
    """A price that is thought of, or a margin it must leave: what is left after all costs."""

    go_by = Input[str](
        CHOICE,
        "You start from",
        default=ASKED,
        options=(Option(ASKED, "A price you have in mind"), Option(MARGIN, "A margin you need")),
    )
    NEEDED = {go_by: (MARGIN,)}
    PRICED = {go_by: (ASKED,)}
    asked = replace(TICKET, when=PRICED)
    wanted_margin = Input[float](
        PERCENT,
        "Margin you need",
        default="30 %",
        allowed=("0 %", "90 %"),
        usual=("5 %", "60 %"),
        when=NEEDED,
        measure="Of the price before tax, after your own wage.",
    )
    tax_place = Input[str](
        CHOICE,
        "Sales tax",
        default=INSIDE,
        options=(
            Option(INSIDE, "Is in the ticket price"),
            Option(OUTSIDE, "Is added at the till"),
            Option(NO_TAX, "None is due"),
        ),
    )
    TAXED = {tax_place: (INSIDE, OUTSIDE)}
    tax = Input[float](
        PERCENT,
        "Tax rate",
        default="20 %",
        allowed=("0 %", "100 %"),
        usual=("0 %", "30 %"),
        when=TAXED,
        lent=True,
        measure="Yours, for this kind of goods and place: 20 is an example, no country’s.",
    )
    base = _cost(
        "Base yarn, a skein",
        "9.20",
        ("2", "40"),
        "Landed: with its share of carriage and duty.",
        RECORD.base.cost,
    )
    dye = _cost("Dye, a skein", "0.45", ("0.05", "3"))
    energy = _cost("Acid and energy, a skein", "0.60", ("0.05", "3"))
    minutes = Input[float](
        TIME,
        "Your time, a skein",
        record=RECORD.product.work_each,
        default="9 min",
        allowed=("0 min", "40 h"),
        usual=("2 min", "90 min"),
        rough="1 min",
        units=("min", "h"),
        measure=(
            "Dyeing, rinsing, winding, labeling, listing, packing: time a whole batch once and"
            " divide."
        ),
    )
    wage = _cost(
        "Your wage, an hour", "18", ("5", "80"), "What you would pay someone who does it as well."
    )
    loss = Input[float](
        PERCENT,
        "Spoilt",
        default="3 %",
        allowed=("0 %", "60 %"),
        usual=("0 %", "20 %"),
        measure="Of all that goes into pots; seconds sold cheap count in part.",
    )
    pot = replace(SKEINS_IN_LOAD, label="Skeins in a pot")
    label = _cost("Label and packing, a skein", "0.28", ("0", "5"))
    overhead = _cost(
        "Overhead, a skein’s share",
        "1.60",
        ("0", "15"),
        "Rent, insurance, site, software, samples: a year of it, divided by the skeins of a year.",
    )
    fee_percent = Input[float](
        PERCENT,
        "Payment and shop fee",
        default="1.9 %",
        allowed=("0 %", "50 %"),
        usual=("0 %", "20 %"),
        lent=True,
        measure="Add up fees that are taken from the same amount.",
    )
    fee_fixed = Input[float](
        MONEY, "and for each payment", default="0.25", allowed=("0", "100"), usual=("0", "1")
    )
    fee_on = Input[str](
        CHOICE,
        "The fee is taken from",
        default=ON_PAID,
        options=(
            Option(ON_PAID, "What the buyer pays, tax and all"),
            Option(ON_NET, "The price before tax"),
        ),
    )
    order = Input[float](
        NUMBER,
        "Sold in one payment",
        default="1",
        allowed=("1", "1000"),
        usual=("1", "6"),
        measure="On average; the fixed fee is shared by them.",
    )
    trade = Input[float | None](
        PERCENT,
        "A shop takes off",
        default="50 %",
        allowed=("0 %", "95 %"),
        usual=("30 %", "55 %"),
        optional=True,
        measure=(
            "Of the price before tax. Half is a habit of the trade, not a law; blank if you"
            " sell to none."
        ),
    )
    month_costs = Input[float | None](
        MONEY,
        "Fixed costs of a month",
        default="80",
        allowed=("0", "1000000"),
        usual=("0", "3000"),
        optional=True,
        measure="What the overhead is meant to pay: here 50 skeins at 1.60.",
    )
    skeins = Input[float](
        NUMBER,
        "Skeins in one that is sold",
        record=RECORD.product.skeins_in,
        default="1",
        allowed=("0.05", "60"),
        usual=("1", "12"),
        measure=(
            "A kit holds several, a set a share of each: what is said of a skein counts so many"
            " times, the price once."
        ),
    )

    labor = Between[float](MONEY, "Labor in one")
    one = Between[float](MONEY, "Every one that goes into a pot")
    good = Between[float](MONEY, "Every good one, which carries the spoilt ones")
    made = Between[float](MONEY, "Made, labeled, overhead paid")
    exact = Between[float](MONEY, "Price before tax, grossed up for fee and margin")
    # A ticket for a margin is a decision in whole cents: what follows from it is the spread of that
    # price, not of changed prices.
    ticket_needed = Between[float](MONEY, "On the ticket, in whole cents", fixed=True)
    ticket_asked = Between[float](MONEY, "On the ticket, in whole cents")
    taken = Between[float](MONEY, "Fee")

    price = Result[float](MONEY, "Ticket price", finest=(0.01,), rounding="up")
    paid = Result[float](MONEY, "The buyer pays", finest=(0.01,))
    net = Result[float](MONEY, "Before tax", finest=(0.01,))
    cost = Result[float](MONEY, "It costs", finest=(0.01,))
    left = Result[float](MONEY, "Left of each", finest=(0.01,))
    brings = Result[float](
        MONEY, "A sale brings, after tax and fee", finest=(0.01,), rounding="down"
    )
    one_more = Result[float](MONEY, "One more costs, overhead apart", finest=(0.01,), rounding="up")
    margin = Result[float](PERCENT, "Margin, of the price before tax", finest=(0.1,))
    markup = Result[float](PERCENT, "Markup, on the cost", finest=(0.1,))
    contribution = Result[float](MONEY, "Contribution before labor and overhead", finest=(0.01,))
    lowest = Result[float](MONEY, "Nothing left at", finest=(0.01,), rounding="up")
    trade_price = Result[float](MONEY, "A shop pays you, before tax", finest=(0.01,))
    trade_left = Result[float](MONEY, "Left of each at wholesale", finest=(0.01,))
    break_even = Result[int](COUNT, "So many a month pay the fixed costs", rounding="up")
    pot_loss = Result[float](MONEY, "One spoilt pot costs", finest=(0.01,), rounding="up")
    make_good = Result[int](COUNT, "Sold, whose earnings that takes", rounding="up")
    work = Result[float](TIME, "Your time in one", units=("min", "h"), finest=(0.1, 0.01))
