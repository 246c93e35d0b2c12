"""What is said of a price."""

from __future__ import annotations

from collections.abc import Callable

from ....core.outcome import Outcome, with_money
from .asked import INSIDE, MARGIN, NO_TAX, OUTSIDE, Price


def money_of(out: Outcome[Price]) -> Callable[[float], str]:
    """How an amount of money is written."""
    return lambda amount: with_money(out.number(amount, 2), out.settings.money)


def called(out: Outcome[Price]) -> str:
    """What one that is sold is called."""
    return "skein" if out.case.skeins == 1 else "piece"


def say(out: Outcome[Price]) -> tuple[str, ...]:
    ticket, margin, left = (out.text(part) for part in (Price.price, Price.margin, Price.left))
    each = (
        f"{left} of each {called(out)} is left"
        if out.value(Price.left) >= 0
        else f"every {called(out)} loses {left.replace('−', '')}"
    )
    tail = {
        INSIDE: "tax in it",
        OUTSIDE: f"tax on top, {out.text(Price.paid)} in all",
        NO_TAX: "no tax",
    }[out.case.tax_place]
    first = (
        f"Ask {ticket} ({tail}): {each}, {margin} of the price before tax."
        if out.case.go_by == MARGIN
        else f"At {ticket} ({tail}) {each}: {margin} of the price before tax."
    )
    cost, lowest = out.text(Price.cost), out.text(Price.lowest)
    return (first, f"It costs {cost}, your own labor in it. Below {lowest} you pay to sell it.")


def notes(out: Outcome[Price]) -> list[str]:
    margin, markup, left = (out.text(part) for part in (Price.margin, Price.markup, Price.left))
    said = [
        (
            f"Margin {margin} and markup {markup} are the same {left}:"
            " one is of the price, the other of the cost."
        )
    ]
    if out.has(Price.trade_left):
        left = out.text(Price.trade_left)
        ends = (
            f"leaves {left}"
            if out.value(Price.trade_left) >= 0
            else f"loses {left.replace('−', '')}"
        )
        said.append(
            f"At wholesale a {called(out)} brings {out.text(Price.trade_price)} and {ends};"
            " taken as paid without a fee."
        )
    if out.has(Price.break_even) and out.case.month_costs is not None:
        said.append(
            f"{out.text(Price.break_even)} {called(out)}s a month pay"
            f" {money_of(out)(out.case.month_costs)} of fixed costs; your labor is paid in every"
            " one of them."
        )
    spoilt = f"A spoilt pot of {out.case.pot} costs {out.text(Price.pot_loss)}"
    said.append(
        f"{spoilt}: the earnings of {out.text(Price.make_good)} {called(out)}s."
        if out.has(Price.make_good)
        else f"{spoilt}."
    )
    said.append(
        "The ticket and what the buyer pays are whole cents, rounded once; sums behind them are"
        " kept exact, and where the price is split, whole cents add up to it. Tax authorities round"
        " by line or by invoice: use theirs."
    )
    return said
