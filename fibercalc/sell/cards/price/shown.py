"""Where the price goes, what moves what is left of it, and what a lower one does."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.card import Input
from ....core.outcome import Outcome
from ...money import cents, in_whole
from ...pictures.money_bars import what_moves_it, where_it_goes
from .asked import Price
from .said import called, money_of
from .worked import left_at

DISCOUNTS = (5, 10, 15, 20, 25, 30)


MOVED = {
    Price.asked: "Price",
    Price.base: "Base yarn",
    Price.dye: "Dye",
    Price.energy: "Acid, energy",
    Price.minutes: "Minutes",
    Price.wage: "Wage",
    Price.loss: "Spoilt pots",
    Price.label: "Label",
    Price.overhead: "Overhead",
    Price.fee_percent: "Fee, percent",
    Price.fee_fixed: "Fee, fixed",
}
SHOWN = 8  # of them in the picture


def parts_in_cents(out: Outcome[Price]) -> list[tuple[str, int]]:
    """What a buyer pays, in whole cents that add up to it.

    Tax and what is left are those that the results say.
    """
    case, spoilt = out.case, out.case.good - out.case.one
    paid, net, left = (cents(out.value(part)) for part in (Price.paid, Price.net, Price.left))
    exact = [
        ("Base yarn", case.skeins * case.base),
        ("Dye", case.skeins * case.dye),
        ("Acid, energy", case.skeins * case.energy),
        ("Labor", case.labor),
        ("Spoilt pots", spoilt),
        ("Label", case.skeins * case.label),
        ("Overhead", case.skeins * case.overhead),
        ("Fee", case.taken),
    ]
    whole = in_whole([100 * amount for _, amount in exact], net - left)
    return [
        ("Tax", paid - net),
        *((name, amount) for (name, _), amount in zip(exact, whole)),
        ("Left for you", left),
    ]


def bars(out: Outcome[Price]) -> Picture:
    money = money_of(out)
    return where_it_goes(parts_in_cents(out), lambda amount: money(amount / 100))


def tornado(out: Outcome[Price]) -> Picture:
    """Each thing a tenth less and a tenth more, one at a time; the widest first."""
    rows = []
    for part, words in MOVED.items():
        less, more = _moved(out.case, part, 0.9), _moved(out.case, part, 1.1)
        if less != more:
            rows.append((words, less, more))
    # Minutes and wage move it alike: their order is not left to a float's last bit.
    rows.sort(key=lambda row: -round(abs(row[2] - row[1]), 6))
    return what_moves_it(rows[:SHOWN], out.value(Price.left), money_of(out))


def _moved(case: Price, part: Input[float], by: float) -> float:
    """What is left when one thing is so many times as much."""
    if part is Price.asked:
        return left_at(case, case.price * by)
    return left_at(case, case.price, **{part.name: vars(case)[part.name] * by})


def split_table(out: Outcome[Price]) -> Table:
    money, parts = money_of(out), parts_in_cents(out)
    total = sum(amount for _, amount in parts)
    rows = [
        (name, money(amount / 100), f"{out.number(100 * amount / total, 1)} %" if total else "–")
        for name, amount in parts
        if amount
    ]
    return Table(
        "Where it goes, to the cent",
        ("Part", f"Of one {called(out)}", "Of what is paid"),
        (*rows, ("The buyer pays", money(total / 100), "100 %" if total else "–")),
    )


def discounts(out: Outcome[Price]) -> Table:
    """What a lower price does: what is left, and how many times as many must sell for as much."""
    money, price, rows = money_of(out), out.value(Price.price), []
    overhead = out.case.skeins * out.case.overhead
    now = out.value(Price.left) + overhead
    for percent in DISCOUNTS:
        lower = cents(price * (1 - percent / 100)) / 100
        left = left_at(out.case, lower)
        earns = left + overhead
        rows.append(
            (
                f"{percent} %",
                money(lower),
                money(left),
                f"× {out.number(now / earns, 2)}" if now > 0 and earns > 0 else "never",
            )
        )
    return Table(
        "A lower price",
        ("Off", "Price", "Left", "Must sell"),
        tuple(rows),
        "Times as many, to earn as much. Your labor counted as a cost of each skein, overhead as"
        " coming anyway.",
    )
