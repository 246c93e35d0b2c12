"""Tables for the studio's exact papers: the card that goes with a lot, a kit's card with its dates, a packing list. "" is a line to write on."""

from collections.abc import Sequence
from datetime import date

from ...core.answer import Table
from ...core.day import write_date

BOX = "☐"


def lot_card(lot: str, base: str, color: str, put_up: str) -> tuple[Table, ...]:
    """A card that stays with a dye lot from the pot to the shelf; what is not known yet is a line to write on."""
    head = Table("This lot", ("What", "Here"), (("Lot", lot), ("Base", base), ("Color", color), ("Put-up", put_up), ("Mill lot", ""), ("Dye jars, batch sheet", ""), ("Dyed on, by", ""), ("Skeins; seconds", "")))
    on = Table("Where it went", ("What", "Skeins", "Order or kit numbers", "Done"), tuple((what, "", "", BOX) for what in ("Kits, sets", "Club", "Shop", "Kept back")))
    return head, on


def kit_card(parts: Sequence[tuple[str, date]], skeins: Sequence[tuple[str, str]]) -> tuple[Table, ...]:
    """A card for a kit: which part comes on which day, and which skein is for what.

    parts   name and day of each, in order
    skeins  its letter or color, and what it is for
    """
    dates = Table("When the parts come", ("Part", "Day", "Done"), tuple((name, write_date(day), BOX) for name, day in parts))
    inside = Table("In the kit", ("Skein", "For"), tuple(skeins))
    return (dates, inside) if skeins else (dates,)


def packing_list(order: str, lines: Sequence[tuple[str, str, int]]) -> tuple[Table, ...]:
    """What goes into one parcel: by order number only, never a customer's name.

    lines  what, its lot, how many
    """
    rows = tuple((what, lot, str(count), BOX) for what, lot, count in lines)
    return (Table(f"Order {order}", ("What", "Lot", "Count", "Packed"), rows, f"{sum(count for _, _, count in lines)} pieces in all."),)
