"""How the price follows from its costs, or what is left from a price."""

from __future__ import annotations

from math import ceil

from ....core.problem import OutOfRange, Refused
from ....core.traced import named
from ...money import cents, cents_up
from ...pricing import (
    break_even,
    cost_with_loss,
    fee,
    margin,
    markup,
    net_of_tax,
    paid_with_tax,
    price_for,
)
from .asked import INSIDE, MARGIN, NO_TAX, ON_PAID, OUTSIDE, Price

CENT = 0.01  # less than a cent left pays for nothing, in any number of skeins
NEAREST_CENT = named("nearest cent", lambda amount: cents(amount) / 100)
NEXT_CENT = named("next whole cent", lambda amount: cents_up(amount) / 100)


def answer(case: Price) -> None:
    _make(case)
    _sell(case, _ticket(case))
    case.margin = margin(case.net, case.cost)
    case.markup = markup(case.net, case.cost)
    materials = cost_with_loss(case.base + case.dye + case.energy, case.loss)
    case.contribution = case.net - case.taken - case.skeins * (case.label + materials)
    lowest = price_for(case.made, case.fee_percent, case.fee_fixed / case.order, _tax_in_fee(case))
    case.lowest = paid_with_tax(lowest, case.tax) if case.tax_place == INSIDE else lowest
    if case.trade is not None:
        case.trade_price = case.net * (1 - case.trade / 100)
        case.trade_left = case.trade_price - case.made
    earned = case.left + case.skeins * case.overhead
    if case.month_costs is not None and earned >= CENT:
        case.break_even = ceil(break_even(case.month_costs, earned))
    case.pot_loss = case.pot * case.one / case.skeins
    case.work = case.skeins * case.minutes
    if case.left >= CENT:
        case.make_good = ceil(break_even(case.pot_loss, case.left))


def _make(case: Price) -> None:
    """What one costs until it is ready to be sold."""
    case.labor = case.skeins * case.minutes * case.wage / 60
    case.one = case.skeins * (case.base + case.dye + case.energy) + case.labor
    case.good = cost_with_loss(case.one, case.loss)
    case.made = case.good + case.skeins * (case.label + case.overhead)


def _ticket(case: Price) -> float:
    """The price on the ticket, in whole cents."""
    if case.go_by != MARGIN:
        case.ticket_asked = NEAREST_CENT(case.asked)
        return case.ticket_asked
    try:
        case.exact = price_for(
            case.made,
            case.fee_percent,
            case.fee_fixed / case.order,
            _tax_in_fee(case),
            case.wanted_margin,
        )
    except OutOfRange:
        raise Refused(
            f"Margin you need: {case.wanted_margin:g} % and the fee together are all of the price;"
            " give less.",
            Price.wanted_margin,
        ) from None
    inside = case.tax_place == INSIDE
    case.ticket_needed = NEXT_CENT(paid_with_tax(case.exact, case.tax) if inside else case.exact)
    return case.ticket_needed


def _tax_in_fee(case: Price) -> float:
    """The tax, %, that the fee is taken from as well."""
    return case.tax if case.tax_place != NO_TAX and case.fee_on == ON_PAID else 0.0


def _sell(case: Price, ticket: float) -> None:
    """What a sale at a ticket price brings, and what is left of it."""
    case.price = ticket
    case.net = net_of_tax(ticket, case.tax) if case.tax_place == INSIDE else ticket
    case.paid = (
        NEAREST_CENT(paid_with_tax(ticket, case.tax)) if case.tax_place == OUTSIDE else ticket
    )
    from_this = case.paid if case.fee_on == ON_PAID else case.net
    case.taken = fee(from_this, case.fee_percent, case.fee_fixed / case.order)
    case.brings = case.net - case.taken
    case.one_more = case.good + case.skeins * case.label
    case.cost = case.made + case.taken
    case.left = case.net - case.cost


def left_at(case: Price, ticket: float, **changed: float) -> float:
    """What is left of one at another ticket price, or with other costs: by the same sums."""
    given = {part.name: case.maybe(part) for part in Price.inputs if case.has(part)}
    other = Price(given | changed)
    _make(other)
    _sell(other, ticket)
    return other.left
