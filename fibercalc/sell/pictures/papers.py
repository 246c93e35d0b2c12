"""The card that stays with a dye lot, as tables for an exact paper. "" is a line to write on."""

from ...core.answer import Table

BOX = "☐"


def lot_card(lot: str, base: str, color: str, put_up: str) -> tuple[Table, ...]:
    """From the pot to the shelf and to whoever has it; what is not known yet is a line to write
    on.
    """
    head = Table(
        "This lot",
        ("What", "Here"),
        (
            ("Lot", lot),
            ("Base", base),
            ("Color", color),
            ("Put-up", put_up),
            ("Mill lot", ""),
            ("Dye jars, batch sheet", ""),
            ("Dyed on, by", ""),
            ("Skeins; seconds", ""),
        ),
    )
    on = Table(
        "Where it went",
        ("What", "Skeins", "Order or kit numbers", "Done"),
        tuple((what, "", "", BOX) for what in ("Kits, sets", "Club", "Shop", "Kept back")),
    )
    return head, on
