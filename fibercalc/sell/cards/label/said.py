"""What is said of the labels."""

from __future__ import annotations

from typing import Any

from ....core.card import Input
from ....core.day import write_date
from ....core.label import has_foot, smallest
from ....core.number import write_plain
from ....core.outcome import Outcome
from ...label_text import ASKED, length_words, mass_words
from ...pictures.labels import BOTTLE, KIT, SIZES, SMALL, STICKER, WITH_CODE
from .asked import A4, ALONE, PRECUT, SKEINS, Label
from .shown import finished, hazards_in, lacking, sheets

# What is still the example's, and so stands on no label.
LABELED: dict[str, tuple[tuple[str, Input[Any]], ...]] = {
    STICKER: (("No set", Label.of_set),),
    KIT: (("No kit", Label.kit), ("No day", Label.start)),
} | dict.fromkeys(SKEINS, (("No name of a base", Label.name),))


def say(out: Outcome[Label]) -> tuple[str, ...]:
    case = out.case
    title, width, height = SIZES[case.kind]
    count = int(case.count if case.kind == STICKER else case.copies)
    if case.page == ALONE:
        where = f"{count} printed alone"
    else:
        sheets_of = "sheet" if case.sheets == 1 else "sheets"
        paper = "A4" if case.page == A4 else "US Letter"
        where = f"{count} on {case.sheets} {sheets_of} of {paper}, {case.per_sheet:g} to a sheet"
    return f"{_what(out)}.", f"{title}, {width:g} × {height:g} mm: {where}."


def _what(out: Outcome[Label]) -> str:
    """What the label is of."""
    case = out.case
    if case.kind == STICKER:
        return f"{case.of_set or 'A set'}, {case.first:g} to {case.last:g}"
    if case.kind == KIT:
        first = f" from {write_date(case.start)}" if case.start else ""
        parts = "part" if case.parts == 1 else "parts"
        return f"{case.kit or 'A kit'}: {case.parts:g} {parts}{first}"
    if case.kind == BOTTLE:
        signal = hazards_in(case).signal
        strength = write_plain(case.strength, out.settings.style)
        danger = "" if signal == "none" else f": {signal}"
        return f"{(case.stock or '').capitalize()}, {strength} %{danger}"
    return f"{case.name or 'A skein'}: {_promise(out)}"


def _promise(out: Outcome[Label]) -> str:
    yards, meters = length_words(out.low(Label.printed_length))
    grams, ounces = mass_words(out.low(Label.printed_mass), out.settings.style)
    if out.case.kind == SMALL:
        return f"{grams}, {yards}"
    return f"{yards} ({meters}), {grams} ({ounces})"


def notes(out: Outcome[Label]) -> list[str]:
    kind, laid = out.case.kind, finished(out)
    said = [
        f"{words} stands on it: the example’s is not yours."
        for words, part in LABELED.get(kind, ())
        if not out.case.maybe(part)
    ]
    shrunk = list(dict.fromkeys(each for one in laid for each in one.shrunk))
    if shrunk:
        said.append(
            f"To fit, these are in smaller letters than usual: {', '.join(shrunk).lower()}. The"
            f" smallest are {min(smallest(each) for each in laid):.1f} pt."
        )
    if kind in WITH_CODE:
        said += _of_the_code(out)
    if kind == BOTTLE:
        said += _of_the_bottle(out.case)
    return [*said, _of_printing(out)]


def _of_the_code(out: Outcome[Label]) -> list[str]:
    """What a label that says all of it lacks, and where its code leads."""
    lacks = lacking(out)
    items = ", ".join(item[0].lower() + item[1:] for key, item, _ in ASKED if key in lacks)
    code = (
        "The code is drawn when you print: it leads to the yardage helper of the book you print"
        " from, with this base filled in."
    )
    return [f"The label lacks: {items}.", code] if lacks else [code]


def _of_the_bottle(case: Label) -> list[str]:
    found, said = hazards_in(case), []
    if found.asks:
        said.append(
            "Statements marked “until its data sheet says otherwise” are those of the pure"
            " substance, or of a dye whose data sheet was not asked."
        )
    if not found.lines:
        said.append(
            "By the limits looked up no statement is called for. What is not classified can still"
            " harm."
        )
    return said


def _of_printing(out: Outcome[Label]) -> str:
    how = (
        "Give the label printer this very paper size."
        if out.case.page == ALONE
        else "The bar at the foot of the sheet must measure 100 mm."
    )
    if out.case.maybe(Label.sheet) == PRECUT and not has_foot(sheets(out)):
        how = (
            "Print one on plain paper first and hold it against the sheet: there is no room for the"
            " bar of 100 mm."
        )
    return f"Print at 100 %, without “fit to page”. {how}"
