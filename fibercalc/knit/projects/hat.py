"""A hat: a tube around the head, and a crown that narrows to nothing."""

from __future__ import annotations

from math import pi

from ...core.card import CHOICE, Input, Option
from ...core.problem import Refused
from ...core.steps import looked_up
from ...core.table import read_table
from ...core.units import PERCENT
from ..shapes import rectangle, tapered
from .measure import OWN, TABLE, Made, found, measure, piece

MAKES = {Made.make: ("hat",)}


class HatMeasures(Made):
    """A head and a height, cm."""

    head_size = Input[str](
        CHOICE,
        "Head",
        default="woman",
        when=MAKES | {Made.size_by: (TABLE,)},
        options=tuple(
            Option(row["key"], row["label"]) for row in read_table("knit", "head-girths").rows
        ),
    )
    head = measure(
        "Around the head",
        "56 cm",
        "90 cm",
        ("30 cm", "62 cm"),
        MAKES | {Made.size_by: (OWN,)},
        "Above the ears.",
        least="15 cm",
        rough="0.5 cm",
    )
    hat_ease = Input[float](
        PERCENT,
        "Smaller than the head by",
        default="8 %",
        allowed=("-30 %", "30 %"),
        usual=("5 %", "10 %"),
        rough="2 %",
        when=MAKES,
        measure="A hat stretches to stay on. Negative for a loose one.",
    )
    hat_height = measure(
        "Height, edge to top",
        "22 cm",
        "60 cm",
        ("12 cm", "28 cm"),
        MAKES,
        "Laid flat, an edge that is turned up not counted twice.",
    )
    turn_up = measure(
        "Turned up at the edge",
        "0 cm",
        "30 cm",
        ("0 cm", "8 cm"),
        MAKES,
        "How much of it lies double; 0 for none.",
        least="0 cm",
        rough="0.5 cm",
    )

    table_head = found("Around the head")
    hat_around = found("Around the hat")
    crown = found("Crown, edge to middle: a flat round")
    side_area = piece("Side")
    crown_area = piece("Crown")
    turn_up_area = piece("Turned up")


def cloth(case: HatMeasures) -> tuple[float, ...]:
    """The pieces of a hat, cm²."""
    if case.size_by == TABLE:
        case.table_head = looked_up("knit", "head-girths", "key", case.head_size, "girth")
    head = case.table_head if case.size_by == TABLE else case.head
    case.hat_around = head * (1 - case.hat_ease / 100)
    case.crown = case.hat_around / 2 / pi
    if case.hat_height < case.crown:
        raise Refused(
            f"Height, edge to top: the crown alone reaches {case.crown:.3g} cm; give a taller hat.",
            HatMeasures.hat_height,
        )
    case.side_area = rectangle(case.hat_around, case.hat_height - case.crown)
    case.crown_area = tapered(case.hat_around, 0.0, case.crown)
    case.turn_up_area = rectangle(case.hat_around, case.turn_up)
    return case.side_area, case.crown_area, case.turn_up_area
