"""What to pack, how the days should go, what may be wanted, and the float."""

from __future__ import annotations

from math import ceil

from ....core.answer import Picture, Table
from ....core.outcome import Outcome, with_money
from ....core.units import NUMBER
from ...money import change, split
from ...pictures.fair import fair_line
from .asked import FairStock
from .said import money

SHARES = (0.1, 0.25, 0.5, 0.75, 0.9)
PARTS_OF_DAY = 4


def _by_color(out: Outcome[FairStock], skeins: int) -> list[int]:
    return split(skeins, [color.share for color in out.case.colors])


def packing(out: Outcome[FairStock]) -> Table:
    """What to pack of each color, and what of it must sell."""
    bring, pays = _by_color(out, out.case.bring), _by_color(out, out.case.with_wage)
    rows = tuple(
        (row.name or "–", str(count), str(must))
        for row, count, must in zip(out.case.colors, bring, pays)
    )
    return Table(
        "Of each color",
        ("Color", "Bring", "Must sell, wage and all"),
        (*rows, ("In all", str(sum(bring)), str(sum(pays)))),
        "By the shares you gave; whole skeins that add up to the total.",
    )


def pace(out: Outcome[FairStock]) -> Table:
    """How many should be gone by then, at an even pace.

    Under the first number the wage does not come in; over the second it will sell out.
    """
    parts = out.case.days * PARTS_OF_DAY
    rows = []
    for part in range(1, parts + 1):
        day, quarter = divmod(part - 1, PARTS_OF_DAY)
        share = part / parts
        hour = out.case.hours / 60 * (quarter + 1) / PARTS_OF_DAY
        rows.append(
            (
                f"Day {day + 1}, {out.amount(hour, NUMBER, digits=3)} h",
                str(ceil(out.case.with_wage * share - 1e-9)),
                str(int(out.case.bring * share + 1e-9)),
            )
        )
    step = max(1, -(-len(rows) // 8))
    return Table(
        "By the hour",
        ("When", "Wage needs", "Even pace sells out"),
        tuple(rows[step - 1 :: step]),
        "Restock, or save the rest for the next day, when a color runs ahead of an even pace.",
    )


def floats(out: Outcome[FairStock]) -> Table:
    """The change for one such sale, and for all of them."""
    made = change(round(out.case.due))
    rows = [
        (
            money(out, coin / 100),
            str(count),
            str(count * out.case.cash_sales),
            money(out, coin / 100 * count * out.case.cash_sales),
        )
        for coin, count in made.items()
    ]
    if not rows:
        rows = [("none needed", "–", "–", money(out, 0))]
    return Table(
        "Float",
        ("Note or coin", "For one sale", "In all", "Worth"),
        tuple(rows),
        f"Each pays {money(out, out.case.price)} with the largest note,"
        f" {money(out, out.case.note)}; money in steps of 1, 2 and 5.",
    )


def odds(out: Outcome[FairStock]) -> Table:
    """What demand may be."""
    demand = out.case.demand
    return Table(
        "How many may be wanted",
        ("Enough for", "Skeins"),
        tuple(
            (f"{100 * share:.0f} in 100 such fairs", out.number(ceil(demand.count_for(share))))
            for share in SHARES
        ),
        "From past fairs; sold out counts as “at least”.",
    )


def picture(out: Outcome[FairStock]) -> Picture:
    past = [(row.sold, row.sold >= row.brought) for row in out.case.past]
    return fair_line(
        out.case.fixed,
        out.case.pay,
        out.case.contribution,
        out.case.bring,
        past,
        lambda amount: with_money(out.number(amount, 0), out.settings.money),
    )


def packing_list(out: Outcome[FairStock]) -> tuple[Table, ...]:
    """To tick off while loading, and to count by on the way home."""
    bring = _by_color(out, out.case.bring)
    colors = Table(
        "Yarn",
        ("Color", "Out", "Packed", "Home", "Sold out at"),
        tuple(
            (row.name or "–", str(count), "☐", "", "") for row, count in zip(out.case.colors, bring)
        ),
    )
    takings = Table(
        "Money",
        ("What", "How much", "Done"),
        (
            ("Float", out.text(FairStock.float), "☐"),
            ("Must sell, wage and all", out.text(FairStock.with_wage), "☐"),
            ("Takings, day by day", "", "☐"),
        ),
    )
    rest = Table(
        "Also",
        ("What", "Packed"),
        tuple(
            (what, "☐")
            for what in (
                "Price cards, samples, yardage chart",
                "Card reader, charger, receipt book",
                "Bags, scissors, tape, pins, labels",
                "Table, cloth, shelves, lamp, lead",
                "Lot list, stall papers",
                "Water, food, layers, chair",
            )
        ),
    )
    return colors, takings, rest
