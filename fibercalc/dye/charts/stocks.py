"""Charts of stock solutions: powder for a volume, thinning, what a scale's error does, which
strength for what.
"""

from ...core.answer import Table
from ...core.number import write_number, write_plain
from ...core.table import read_table
from ..measuring import error_share
from ..stock import powder_for_stock, stock_to_dilute, strength_if_added

VOLUMES = (50, 100, 200, 250, 500, 1000, 2000)  # mL
STRENGTHS = (0.1, 0.5, 1.0, 2.0, 5.0)  # g in 100 mL
THINNED = (500.0, (5.0, 2.0, 1.0, 0.5))  # mL made, and the stocks it is made from
SCALE_ERROR = (
    0.02  # g either way: what a pocket scale that shows 0.01 g really does (common practice)
)
JUG_ERROR = 5.0  # % (common practice)
POWDERS = (0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0)  # g


def stock_strengths() -> list[Table]:
    """Usual strengths and what each is good for.

    Source: common practice.
    """
    table = read_table("dye", "stock-strengths")
    rows = tuple(
        (
            f"{write_plain(row['percent'])} %",
            f"{write_plain(row['percent'])} g",
            f"{write_plain(10 * row['percent'])} g",
            row["use"],
        )
        for row in table.rows
    )
    return [
        Table(
            "Strengths of stock",
            ("Strength", "In 100 mL", "In 1 L", "Good for"),
            rows,
            table.note + " Common practice, no published source.",
            (table.source,),
        )
    ]


def stock_makeup() -> list[Table]:
    """Powder for a final volume of stock, thinning a stronger stock, and what weighing errors do.

    Source: arithmetic (strength is grams in 100 mL of finished stock); errors of scale and jug
    are common practice.
    """
    volume, stocks = THINNED
    makes = tuple(
        (
            f"{one:,} mL",
            *(f"{write_plain(powder_for_stock(one, strength))} g" for strength in STRENGTHS),
        )
        for one in VOLUMES
    )
    thins = tuple(
        (
            f"{have:g} %",
            *(
                f"{write_plain(stock_to_dilute(volume, wanted, have))} mL" if wanted < have else "–"
                for wanted in (0.01, 0.1, 0.5, 1.0, 2.0)
            ),
        )
        for have in stocks
    )
    errors = tuple(
        (
            f"{write_plain(powder)} g",
            f"{write_number(error_share(SCALE_ERROR, powder), 1 if powder > 0.5 else 0)} %",
        )
        for powder in POWDERS
    )
    added = strength_if_added(powder_for_stock(1000, 5.0), 1000)
    return [
        Table(
            "Powder for a stock, made up to a final volume",
            ("Final volume", *(f"{strength:g} %" for strength in STRENGTHS)),
            makes,
            "Paste the powder in a little hot water, dilute, let it cool, then fill up TO the"
            f" mark. Powder added to the whole water makes a weaker stock: at 5 % about {added:.2f}"
            " % (a gram takes up 0.5 to 0.8 mL, from memory, unverified). Computed here.",
            ("arithmetic", "trade-memory"),
        ),
        Table(
            f"Stock to fill up to {volume:.0f} mL with water",
            ("From", *(f"to {wanted:g} %" for wanted in (0.01, 0.1, 0.5, 1.0, 2.0))),
            thins,
            "mL = volume x wanted / have. For 250 mL take half of it. Computed here.",
            ("arithmetic",),
        ),
        Table(
            "What a pocket scale does to a weight of powder",
            ("Powder", "Off by"),
            errors,
            f"For a scale that shows 0.01 g and is right to {SCALE_ERROR:g} g either way (common"
            f" practice). A kitchen jug adds {JUG_ERROR:g} % of its own: make stocks in a measuring"
            " cylinder, or weigh the water (1 mL is 1 g, near enough).",
            ("common-practice",),
        ),
    ]
