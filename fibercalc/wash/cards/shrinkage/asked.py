"""What shrinkage asks: samples before and after a wash, and the later washes of one."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, Between, Case, Input, Option, Plain, Row, Rows
from ....core.units import PERCENT
from ...inputs import CHANGE_WASHED, TAPE_BEFORE

FELTS, TREATED, OTHER = "felts", "treated", "other"
GENTLE, WORKED = "gentle", "worked"
YES, NO = "yes", "no"

BEFORE = replace(TAPE_BEFORE, default="35 cm", usual=("8 cm", "300 cm"))
AFTER = replace(BEFORE, instrument="tape after")
LATER = replace(BEFORE, instrument="tape later")
CHANGE = replace(CHANGE_WASHED)


class Sample(Row):
    """One sample between its marks, before and after the first wash."""

    length = replace(BEFORE, label="Length before")
    length_after = replace(AFTER, label="Length after one wash", default="28.7 cm")
    width = replace(BEFORE, label="Width before")
    width_after = replace(AFTER, label="Width after one wash", default="30.1 cm")

    length_change = Between[float](PERCENT, "Length, first wash")
    width_change = Between[float](PERCENT, "Width, first wash")


class Wash(Row):
    """The first sample after one later wash."""

    length = replace(LATER, label="Length", default="28.5 cm")
    width = replace(LATER, label="Width", default="29.9 cm")


def _sample(length_after: str, width_after: str) -> dict[str, str]:
    return {
        "length": "35 cm",
        "length_after": length_after,
        "width": "35 cm",
        "width_after": width_after,
    }


class Shrinkage(Case):
    """Samples washed once, one of them perhaps again: what each direction lost, and the area."""

    samples = Rows(
        Sample,
        "Samples, between marks",
        "sample",
        least=1,
        most=6,
        measure="Rested and flat, the same way each time; three samples say more than one.",
        default=(
            _sample("28.7 cm", "30.1 cm"),
            _sample("28.5 cm", "30 cm"),
            _sample("28.9 cm", "30.2 cm"),
        ),
    )
    fiber = Input[str](
        CHOICE,
        "Fiber",
        default=OTHER,
        options=(
            Option(OTHER, "Plant fiber, silk or man-made"),
            Option(FELTS, "Wool or hair, not superwash"),
            Option(TREATED, "Superwash wool"),
        ),
    )
    first = Input[str](
        CHOICE,
        "The first wash",
        default=WORKED,
        options=(Option(WORKED, "In a machine, or rubbed"), Option(GENTLE, "Soaked, not worked")),
    )
    again = Input[str](
        CHOICE, "Washed again?", default=YES, options=(Option(YES, "Yes"), Option(NO, "No"))
    )
    later = Rows(
        Wash,
        "Sample 1 after each later wash",
        "wash",
        least=1,
        most=8,
        when={again: (YES,)},
        measure="Between the same marks.",
        default=({"length": "28.5 cm", "width": "29.9 cm"},),
    )

    next_apart = Plain[float]()  # how far a next piece may lie from the mean, %; 0 is not known

    length_change = replace(CHANGE, label="Length, first wash")
    width_change = replace(CHANGE, label="Width, first wash")
    area_change = replace(CHANGE, label="Area, first wash")
    later_length = replace(CHANGE, label="Length, later washes")
    later_width = replace(CHANGE, label="Width, later washes")
    total_length = replace(CHANGE, label="Length, all washes")
    total_width = replace(CHANGE, label="Width, all washes")
    length_lost = replace(CHANGE, label="Next piece loses, length")
    width_lost = replace(CHANGE, label="Next piece loses, width")
