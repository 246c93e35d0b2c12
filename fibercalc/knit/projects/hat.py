"""A hat: a tube around the head, and a crown that narrows to nothing."""

from math import pi

from ...core.card import CHOICE, Input, Option
from ...core.problem import Refused
from ...core.table import read_table
from ...core.units import LENGTH, PERCENT
from ..shapes import rectangle, tapered
from . import Cloth
from .measure import OWN, TABLE, measure, piece

MAKES = {"make": ("hat",)}
INPUTS = (
    Input(
        CHOICE,
        "Head",
        default="woman",
        when=MAKES | {"size_by": (TABLE,)},
        options=tuple(
            Option(row["key"], row["label"]) for row in read_table("knit", "head-girths").rows
        ),
        name="head_size",
    ),
    measure(
        "head",
        "Around the head",
        "56 cm",
        "90 cm",
        ("30 cm", "62 cm"),
        MAKES | {"size_by": (OWN,)},
        "Above the ears.",
        least="15 cm",
        rough="0.5 cm",
    ),
    Input(
        PERCENT,
        "Smaller than the head by",
        default="8 %",
        allowed=("-30 %", "30 %"),
        usual=("5 %", "10 %"),
        rough="2 %",
        when=MAKES,
        measure="A hat stretches to stay on. Negative for a loose one.",
        name="hat_ease",
    ),
    measure(
        "hat_height",
        "Height, edge to top",
        "22 cm",
        "60 cm",
        ("12 cm", "28 cm"),
        MAKES,
        "Laid flat, an edge that is turned up not counted twice.",
    ),
    measure(
        "turn_up",
        "Turned up at the edge",
        "0 cm",
        "30 cm",
        ("0 cm", "8 cm"),
        MAKES,
        "How much of it lies double; 0 for none.",
        least="0 cm",
        rough="0.5 cm",
    ),
)


def cloth(w, m: dict) -> Cloth:
    """The pieces of a hat, from its measures m in cm (or a head of the table)."""
    head, ease, height = m["head"], m["hat_ease"], m["hat_height"]
    if m["size_by"] == TABLE:
        head = w.looked_up(
            "head",
            "knit",
            "head-girths",
            "key",
            m["head_size"],
            "girth",
            LENGTH,
            "cm",
            "Around the head",
        )
    around = w.step(
        "hat_around",
        "head * (1 - hat_ease / 100)",
        head * (1 - ease / 100),
        LENGTH,
        "cm",
        "Around the hat",
    )
    crown = w.step(
        "crown",
        "hat_around / (2 * pi)",
        around / (2 * pi),
        LENGTH,
        "cm",
        "Crown, edge to middle: a flat round",
    )
    if height < crown:
        raise Refused(
            f"Height, edge to top: the crown alone reaches {crown:.3g} cm; give a taller hat.",
            "hat_height",
        )
    side = piece(
        w,
        "side_area",
        "hat_around * (hat_height - crown)",
        rectangle(around, height - crown),
        "Side",
    )
    top = piece(w, "crown_area", "hat_around * crown / 2", tapered(around, 0.0, crown), "Crown")
    double = piece(
        w, "turn_up_area", "hat_around * turn_up", rectangle(around, m["turn_up"]), "Turned up"
    )
    return Cloth((side, top, double), m | {"hat_around": around, "crown": crown})
