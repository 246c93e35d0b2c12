"""Charts of price words: what each means, markup beside margin, what a discount asks for."""

from ...core.answer import Table
from ...core.number import write_number
from ..pricing import margin_from_markup, volume_after_discount

MARKUPS = (10, 20, 25, 33, 40, 50, 60, 75, 80, 100, 120, 150, 200, 250, 300, 400)
MARGINS, DISCOUNTS = (20, 30, 40, 50, 60, 70), (5, 10, 15, 20, 25, 30, 40, 50)
WORDS = (
    (
        "Cost",
        (
            "All that one good skein costs: base, dye, energy, your labor, its share of spoilt"
            " ones, label, overhead, fee"
        ),
    ),
    ("Net price", "What the price is before tax: yours to share out"),
    ("Markup", "(price − cost) ÷ cost: what was put on the cost"),
    ("Margin", "(price − cost) ÷ price: what is left of the price"),
    (
        "Contribution",
        "Price less what this one skein took out of your pocket: pays labor and overhead first",
    ),
    ("Break-even", "Fixed costs ÷ contribution: sold, the rest earns"),
    (
        "Wholesale",
        "What a shop pays you, before tax; half the retail price is a habit of the trade",
    ),
    ("Keystone", "Wholesale 2 × cost, retail 2 × wholesale: a habit, no law"),
    ("Tax inside", "Net = price ÷ (1 + tax): at 20 % a sixth of the price is tax, not a fifth"),
    ("Tax outside", "Paid = price × (1 + tax)"),
    ("Grossed up", "(wanted + fixed fee) ÷ (1 − fee): adding the fee on falls short"),
)


def price_words() -> list[Table]:
    """What the words of a price mean.

    Source: definitions (arithmetic); wholesale at half and keystone, common practice from memory
    (trade-memory).
    """
    return [
        Table(
            "Price words",
            ("Word", "What it is"),
            WORDS,
            "Wholesale and keystone as habits of the trade, from memory; the rest is definition.",
            ("arithmetic", "trade-memory"),
        )
    ]


def markup_and_margin() -> list[Table]:
    """Markup, and the margin that is the same money.

    Source: definitions (arithmetic).
    """
    rows = tuple(
        (
            f"{percent} %",
            f"{write_number(margin_from_markup(percent), 1)} %",
            write_number(1 + percent / 100, 2),
            write_number(10 * (1 + percent / 100), 2),
        )
        for percent in MARKUPS
    )
    return [
        Table(
            "Markup is not margin",
            ("Markup, on the cost", "Margin, of the price", "Cost times", "A cost of 10 sells at"),
            rows,
            "margin = markup ÷ (1 + markup). Computed here from the definitions.",
            ("arithmetic",),
        )
    ]


def discount_volume() -> list[Table]:
    """How many times as many must sell after a discount, by margin.

    Source: arithmetic (margin over margin less discount).
    """
    rows = tuple(
        (
            f"{off} %",
            *(
                (
                    f"{write_number(volume_after_discount(percent, off), 2)} ×"
                    if off < percent
                    else "never"
                )
                for percent in MARGINS
            ),
        )
        for off in DISCOUNTS
    )
    return [
        Table(
            "A discount has to sell this many times as many, at a margin of",
            ("Off", *(f"{percent} %" for percent in MARGINS)),
            rows,
            "To earn the same money. Margin here is contribution, % of the price before tax."
            " Computed here.",
            ("arithmetic",),
        )
    ]
