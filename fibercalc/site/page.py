"""A card as it stands in a page: form, the example's full answer, and what it was checked
against.
"""

import sys
from datetime import date
from importlib import import_module

from ..core.card import Card
from ..core.checks import Check, read_checks
from ..core.day import write_date
from ..core.markup import Markup, inner, tag
from ..core.number import write_plain
from ..core.reading import read_inputs
from ..core.settings import Settings
from ..core.table import STATUS_WORDS
from ..core.work import work_given
from ..sources import all_sources
from .form import form
from .parts import slots, source_line

ACTIONS = (
    ("copy-link", "Copy link", "first"),
    ("print-card", "Print this card alone", None),
    ("print-page", "Print the page", None),
    ("keep", "Save to the workbook", None),
    ("start-over", "Back to the example", None),
)
KINDS = {
    "published": "Published",
    "common practice": "Common practice",
    "by hand": "Worked by hand",
}

USUAL = Settings()


def card_element(card: Card, settings: Settings = USUAL) -> Markup:
    """The whole card, complete and printable before any script has run."""
    given = read_inputs(card, {}, settings)
    made = slots(work_given(given, settings))
    head = tag(
        "section",
        tag("h2", "What follows"),
        tag(
            "output",
            made.pop("answer"),
            class_="answer",
            role="status",
            aria_live="polite",
            aria_atomic="true",
            data_slot="answer",
        ),
        tag("p", class_="kept", hidden=True),
        class_="head",
        aria_label="The answer",
    )
    rest = tag(
        "section",
        *(tag("div", html, data_slot=name) for name, html in made.items()),
        class_="rest",
        aria_label="How it follows",
    )
    buttons = [
        tag("button", words, type="button", data_do=do, class_=look) for do, words, look in ACTIONS
    ]
    buttons += [
        tag(
            "button",
            f"Print: {paper.title}",
            type="button",
            data_do="print-paper",
            data_paper=number,
        )
        for number, paper in enumerate(card.papers)
    ]
    return inner(
        tag(
            "bench-card",
            form(card, given, settings),
            head,
            rest,
            tag("p", *buttons, class_="do", data_search_exclude=True),
            tag(
                "p",
                "Reading page: the example answer is complete.",
                class_="state",
                data_state="reading",
            ),
            data_card=card.id,
        ),
        checked(card),
    )


def checked(card: Card) -> Markup:
    """The worked examples that this card and its formulas are checked against, with their
    sources.
    """
    rows = [_check_row(check) for check in checks_of(card) if check.kind in KINDS]
    if not rows:
        return inner()
    head = tag(
        "thead",
        tag(
            "tr",
            *(
                tag("th", words, scope="col")
                for words in ("Worked example", "Expected", "Kind and source")
            ),
        ),
    )
    table = tag(
        "table",
        tag("caption", "Checked against", class_="unseen"),
        head,
        tag("tbody", *rows),
        class_="listing",
    )
    examples = f"{len(rows)} worked example{'s' if len(rows) > 1 else ''}"
    return tag(
        "details",
        tag("summary", f"Checked against {examples}"),
        tag(
            "p",
            "Each time the book is built, and again in the browser’s own Python, these examples are"
            " worked and compared.",
        ),
        tag(
            "div",
            table,
            class_="listing-box",
            tabindex="0",
            role="region",
            aria_label="Checked against",
        ),
        class_="checked",
        data_search_exclude=True,
    )


def checks_of(card: Card) -> list[Check]:
    """The checks of this card and of every formula its file calls by name."""
    used = {
        id(thing) for thing in vars(sys.modules[card.answer.__module__]).values() if callable(thing)
    }

    def belongs(check: Check) -> bool:
        if check.is_card:
            return check.of == card.id
        module, _, function = check.of.rpartition(".")
        return id(getattr(import_module(f"fibercalc.{module}"), function)) in used

    return [check for check in read_checks(card.chapter) if belongs(check)]


def _expected(value: float | str | date) -> str:
    if isinstance(value, str):
        return value
    return write_date(value) if isinstance(value, date) else write_plain(value)


def _check_row(check: Check) -> Markup:
    expected = ", ".join(
        f"{name.replace('_', ' ')} {_expected(value)}".strip()
        for name, value in check.expect.items()
    )
    if check.tolerance:
        expected += f" ± {write_plain(check.tolerance, digits=2)}"
    source = all_sources().get(check.source)
    parts = [KINDS[check.kind]]
    if source is not None:
        parts.append(source_line(source))
    parts += [
        part
        for part in (check.where, STATUS_WORDS.get(check.status, "") if source is None else "")
        if part
    ]
    return tag(
        "tr",
        tag("th", check.claim, scope="row"),
        tag("td", expected, data_label="Expected"),
        tag("td", "; ".join(parts), data_label="Kind and source"),
    )
