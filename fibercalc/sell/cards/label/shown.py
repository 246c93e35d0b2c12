"""The labels laid out, on the screen and on their sheets; the lot's card; what laws ask of them."""

from __future__ import annotations

from datetime import timedelta

from ....core.amount import NO_BREAK
from ....core.answer import Picture, Table
from ....core.day import write_date
from ....core.label import Label as Layout
from ....core.label import Precut, Sheets, laid_out
from ....core.label.label import Laid
from ....core.number import write_number, write_plain
from ....core.outcome import Outcome, with_money
from ....core.part import Part
from ....core.problem import Refused
from ....core.settings import Settings
from ...label_text import ASKED, Hazards, hazards, length_words, mass_words, missing
from ...pictures.label_on_screen import label_picture
from ...pictures.labels import (
    BOTTLE,
    DRAWN,
    KIT,
    SIZES,
    STICKER,
    WITH_CODE,
    Skein,
    bottle_label,
    day_sticker,
    kit_card,
)
from ...pictures.papers import lot_card
from .asked import PRECUT, Label, Substance

WRITE = "____________"


def labels_of(case: Label, mass: float, length: float, settings: Settings) -> list[Laid]:
    """The labels of a kind, laid out: one, or one for each number of a set. Raises TooLong.

    mass, length  of a skein; only the labels of one say them
    """
    if case.kind == STICKER:
        numbers = range(int(case.first), int(case.last) + 1)
        return [laid_out(day_sticker(number, case.of_set or "")) for number in numbers]
    if case.kind == BOTTLE:
        return [laid_out(_bottle(case, settings))]
    if case.kind == KIT:
        days = tuple(_part(case, part) for part in range(int(case.parts)))
        words = (case.kit or "", case.maker or "", case.color or "", case.lot or "")
        return [laid_out(kit_card(*words, days))]
    return [laid_out(DRAWN[case.kind](_skein(case, mass, length, settings)))]


def _bottle(case: Label, settings: Settings) -> Layout:
    found = hazards_in(case)
    strength = write_plain(case.strength, settings.style)
    return bottle_label(
        case.stock or "",
        f"{strength} % stock: {strength} g in 100{NO_BREAK}mL",
        f"Made {write_date(case.made)}",
        case.jar or "",
        found.signal,
        found.lines,
    )


def _part(case: Label, part: int) -> str:
    """One line of a kit card; with no day to write by hand where the first is not known."""
    day = case.start and write_date(case.start + timedelta(days=part * int(case.every)))
    return f"Part {part + 1}: {day or WRITE}"


def _skein(case: Label, mass: float, length: float, settings: Settings) -> Skein:
    name, lot, origin = (_words(case, part) for part in (Label.name, Label.lot, Label.origin))
    care = (_words(case, part) for part in (Label.care_1, Label.care_2))
    weight_class = case.maybe(Label.weight_class)
    return Skein(
        name,
        _words(case, Label.color),
        _words(case, Label.maker),
        _words(case, Label.fiber),
        length_words(length),
        mass_words(mass, settings.style),
        lot,
        tuple(line for line in care if line),
        f"Made in {origin}" if origin else "",
        _price(case.maybe(Label.price), settings),
        (
            ("grams", round(mass, 1)),
            ("meters", round(length, 1)),
            ("weight_class", "" if weight_class in (None, "none") else weight_class),
            ("name", name),
            ("lot", lot),
        ),
    )


def _words(case: Label, part: Part[str | None]) -> str:
    """Words as typed; "" where they were left off, or not asked."""
    words = case.maybe(part)
    return words or ""


def _price(price: float | None, settings: Settings) -> str:
    if price is None:
        return ""
    decimals = 0 if price == round(price) else 2
    return with_money(write_number(price, decimals, settings.style), settings.money)


def hazards_in(case: Label) -> Hazards:
    """What the contents of a bottle call for; refused where they are more than it holds."""
    mixed: dict[str, float] = {}
    for row in case.contents:
        mixed[row.what] = mixed.get(row.what, 0.0) + row.share
    if sum(mixed.values()) > 100.0001:
        raise Refused(
            f"Contents: together they are {sum(mixed.values()):.4g} %; a bottle holds no more than"
            " 100 %.",
            Label.contents.each(Substance.share, row=1),
        )
    return hazards(mixed)


def finished(out: Outcome[Label]) -> list[Laid]:
    """The labels as they are printed: with the low ends of what is rough, in the user's style."""
    skein = out.has(Label.printed_mass)
    mass = out.low(Label.printed_mass) if skein else 0.0
    length = out.low(Label.printed_length) if skein else 0.0
    return labels_of(out.case, mass, length, out.settings)


def sheets(out: Outcome[Label]) -> Sheets:
    case, precut = out.case, None
    if case.maybe(Label.sheet) == PRECUT:
        precut = Precut(
            int(case.across),
            int(case.rows),
            1000 * case.left,
            1000 * case.top,
            1000 * case.step_across,
            1000 * case.step_down,
            int(case.used),
        )
    return Sheets(
        case.page,
        tuple((laid, int(case.copies)) for laid in finished(out)),
        1000 * case.right,
        1000 * case.down,
        precut,
    )


def lacking(out: Outcome[Label]) -> tuple[str, ...]:
    """The items asked of a yarn's label that this one does not say."""
    case = out.case
    said = {
        "fiber": _words(case, Label.fiber),
        "maker": _words(case, Label.maker),
        "origin": _words(case, Label.origin),
        "mass": "yes",
        "length": "yes",
        "lot": _words(case, Label.lot),
        "care": _words(case, Label.care_1) + _words(case, Label.care_2),
    }
    return missing(said)


def asked_for(out: Outcome[Label]) -> Table | None:
    """What laws and buyers ask of a yarn's label, and whether this one says it."""
    if out.case.kind not in WITH_CODE:
        return None
    lacks = lacking(out)
    return Table(
        "What the label says",
        ("Item", "Here", "Asked for by"),
        tuple((item, "missing" if key in lacks else "yes", by) for key, item, by in ASKED),
        "Not legal advice: the law of the place of sale decides.",
        ("cfr-16-303", "wool-act", "eu-1007-2011", "nist-hb-130", "ri-6-10"),
    )


def picture(out: Outcome[Label]) -> Picture:
    laid, kind = finished(out), out.case.kind
    words = ". ".join(dict.fromkeys(line.words for line in laid[0].lines))
    code = ", with the place of its code" if laid[0].label.codes else ""
    return label_picture(
        kind, laid, f"{SIZES[kind][0]} at its true proportions{code}. It reads: {words}."
    )


def lot_paper(out: Outcome[Label]) -> tuple[Table, ...]:
    lot, name, color = (_words(out.case, part) for part in (Label.lot, Label.name, Label.color))
    put_up: tuple[str, ...] = ()
    if out.has(Label.printed_mass):
        put_up = (
            *length_words(out.low(Label.printed_length)),
            *mass_words(out.low(Label.printed_mass), out.settings.style),
        )
    return lot_card(lot, name, color, ", ".join(put_up))
