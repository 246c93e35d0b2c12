"""How many labels go on how many sheets, what they promise, and what cannot be printed."""

from __future__ import annotations

from math import ceil
from typing import Any

from ....core.card import Input
from ....core.label import PAGES, TooLong, fits_on, smallest
from ....core.label.label import Laid
from ....core.label.sheet import MOST, ROUND_GAP
from ....core.problem import OutOfRange, Refused
from ....core.settings import Settings
from ....core.steps import at_least, at_most, searched
from ....core.units import GRAMS_PER_OUNCE, METERS_PER_YARD
from ....yarn.putup import printed_grams, printed_meters, printed_ounces, printed_yards
from ...label_text import shares_of
from ...pictures.labels import BOTTLE, PRICE, SIZES, STICKER
from .asked import ALONE, PRECUT, SKEINS, Label
from .shown import labels_of

NEAR = 0.05  # mm: what measures typed to a tenth may be off by


FARTHEST_ALONE = 0.0015  # m: what a label printed alone can be moved until its words are cut


UNNAMED = {
    PRICE: "Price: give it; a ticket says nothing else.",
    BOTTLE: "Dye or other stock: give its name; a bottle that nobody can name is a danger.",
}
# The input that holds what does not fit.
NAMES = {
    "Name": "name",
    "Color": "color",
    "Maker": "maker",
    "Fiber content": "fiber",
    "Care": "care_1",
    "Lot": "lot",
    "Set": "of_set",
    "Made in": "origin",
    "Price": "price",
    "Strength": "strength",
    "Hazard statements": "contents.1.what",
    "Put-up": "length",
    "Length": "length",
    "Weight": "mass",
    "Kit": "kit",
    "Dates": "parts",
}


def answer(case: Label) -> None:
    _refuse_words(case)
    count = _to_print(case)
    _fill_sheets(case, count)
    if case.kind in SKEINS:
        _promise(case)
    case.smallest = min(smallest(laid) for laid in _laid(case))


def _refuse_words(case: Label) -> None:
    """Refuse shares that do not add up, and a label without what it is for."""
    if fiber := case.maybe(Label.fiber):
        try:
            shares_of(fiber)
        except OutOfRange as wrong:
            raise Refused(f"Fiber content: {wrong.reason}.", Label.fiber) from None
    must: tuple[tuple[str, Input[Any]], ...] = ((PRICE, Label.price), (BOTTLE, Label.stock))
    for kind, needed in must:
        if case.kind == kind and not case.maybe(needed):
            raise Refused(UNNAMED[kind], needed)
    if case.kind == STICKER and case.last < case.first:
        raise Refused(
            f"Last number: {case.last:g} is before the first, {case.first:g}.", Label.last
        )
    if case.page == ALONE and max(abs(case.right), abs(case.down)) > FARTHEST_ALONE:
        raise Refused(
            f"Moved right, moved down: a label printed alone can be moved {1000 * FARTHEST_ALONE:g}"
            " mm at most; more would cut its words off.",
            Label.right,
        )


def _to_print(case: Label) -> int:
    """How many labels are printed."""
    count = case.copies
    if case.kind == STICKER:
        case.count = (case.last - case.first + 1) * case.copies
        count = case.count
    if count > MOST:
        raise Refused(
            f"Labels: that makes {count:g}; {MOST} at a time can be printed.", Label.copies
        )
    return count


def _fill_sheets(case: Label, count: int) -> None:
    """How many labels are on a sheet, and how many sheets that takes."""
    if case.page == ALONE:
        case.per_sheet, case.sheets = 1, count
        return
    _, width, height = SIZES[case.kind]
    wanted = count
    if case.sheet == PRECUT:
        _refuse_overlap(case, width, height)
        _refuse_beyond(case, width, height)
        case.per_sheet = case.across * case.rows
        wanted = count + case.used if case.used else count
    else:
        gap = ROUND_GAP if case.kind == STICKER else 0.0
        case.fit_across, case.fit_down = fits_on(case.page, width, height, gap)
        case.per_sheet = case.fit_across * case.fit_down
    case.sheets = searched(
        ceil(float(wanted) / float(case.per_sheet)),
        lambda sheets: (at_least(sheets * case.per_sheet, wanted),),
        lambda: wanted / case.per_sheet,
    )


def _promise(case: Label) -> None:
    """What the label promises: in each unit no more than there is."""
    length, mass = float(case.length), float(case.mass)
    case.yards = searched(
        printed_yards(length),
        lambda yards: (at_most(yards * METERS_PER_YARD, case.length),),
        lambda: case.length / METERS_PER_YARD,
    )
    case.meters = searched(
        printed_meters(length), lambda meters: (at_most(meters, case.length),), lambda: case.length
    )
    case.grams = searched(
        printed_grams(mass), lambda grams: (at_most(grams, case.mass),), lambda: case.mass
    )
    case.ounces = searched(
        printed_ounces(mass),
        lambda ounces: (at_most(ounces * GRAMS_PER_OUNCE, case.mass),),
        lambda: case.mass / GRAMS_PER_OUNCE,
    )
    case.printed_length, case.printed_mass = case.length, case.mass


def _laid(case: Label) -> list[Laid]:
    """The labels as given, laid out; refused when their words do not fit, or say too much."""
    try:
        return labels_of(
            case, case.maybe(Label.mass) or 0.0, case.maybe(Label.length) or 0.0, Settings()
        )
    except TooLong as wrong:
        _, width, height = SIZES[case.kind]
        bottle = case.kind == BOTTLE and wrong.what == "Name"
        raise Refused(
            f"{wrong.what}: it does not fit on {width:g} × {height:g} mm even in the smallest"
            " letters; shorten it, or choose a larger label.",
            "stock" if bottle else NAMES.get(wrong.what, "kind"),
        ) from None


def _refuse_overlap(case: Label, width: float, height: float) -> None:
    """Refuse a bought sheet whose labels of so many mm would lie over one another."""
    for many, step, side, words, name in (
        (case.across, 1000 * case.step_across, width, "across", "step_across"),
        (case.rows, 1000 * case.step_down, height, "down", "step_down"),
    ):
        if many > 1 and step < side - NEAR:
            raise Refused(
                f"From one label to the next, {words}: {step:g} mm, but the label is {side:g} mm;"
                " they would overlap. Measure from edge to the same edge.",
                name,
            )


def _refuse_beyond(case: Label, width: float, height: float) -> None:
    """Refuse a bought sheet whose labels do not lie on the paper, or that is used up."""
    wide, high = PAGES[case.page]
    right = 1000 * (case.left + (case.across - 1) * case.step_across) + width
    bottom = 1000 * (case.top + (case.rows - 1) * case.step_down) + height
    for end, paper, words, name in ((right, wide, "wide", "left"), (bottom, high, "high", "top")):
        if end > paper + NEAR:
            raise Refused(
                f"The sheet: its labels end at {end:g} mm, and the paper is {paper:g} mm {words};"
                " check the measures.",
                name,
            )
    if case.used >= case.across * case.rows:
        raise Refused(
            f"Places already used: the sheet has {case.across * case.rows:g}.", Label.used
        )
