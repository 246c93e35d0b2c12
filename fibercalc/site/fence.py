"""Fenced blocks of a page, run when the site is built: ```card, ```chart, ```contents, ```bench,
```helper-link, ```workbook, ```demo, ```fair and ```library become HTML.

An unknown name stops the build; nothing half-made is published.
"""

from importlib import import_module
from typing import Any

from ..core.answer import Picture, Table
from ..core.card import CHAPTERS
from ..core.markup import Markup, inner, tag
from ..core.reading import read_inputs
from ..core.registry import chapter_cards, find_card
from ..core.settings import Settings
from ..sources import all_sources
from ..workbook.base_link import LINK
from ..workbook.bench import BENCH
from ..workbook.exchange import FORMAT, KEPT_REMOVED, LARGEST
from ..workbook.records import SCHEMA
from .form import form
from .page import card_element
from .parts import figure, listing, sources

# What stands beside the chapters: title, then address and question of each.
BESIDE = (
    (
        "Customers",
        (
            ("helper-link/", "How do I give customers the yardage helper?"),
            ("counter/", "A customer at the stall asks: how many skeins?"),
            ("helper/", "What does a customer see who came without a link?"),
        ),
    ),
    (
        "Records",
        (
            ("workbook/", "What have I written down?"),
            ("bench/", "What is on my bench?"),
            ("tour/", "How does a release go through the book?"),
            ("no-signal/", "Does the book work with no signal?"),
            ("library/", "Can I use the cards from Python?"),
        ),
    ),
)


def formatter(
    source: str, language: str, css_class: str, options: dict[str, Any], md: Any, **kwargs: Any
) -> str:
    """A custom fence for pymdownx.superfences."""
    return FENCES[language](source.strip())


def card(name: str) -> Markup:
    """```card: a card's id."""
    return card_element(find_card(name))


def chart(name: str) -> Markup:
    """```chart: chapter.name, a function of the chapter's charts module that returns tables and
    pictures.
    """
    chapter, _, function = name.partition(".")
    parts = getattr(import_module(f"fibercalc.{chapter}.charts"), function)()
    made: list[Markup | None] = []
    for part in parts:
        if isinstance(part, Picture):
            made.append(figure(part))
        elif isinstance(part, Table):
            made += [
                listing(part),
                (
                    sources(tuple(all_sources()[each] for each in part.sources))
                    if part.sources
                    else None
                ),
            ]
    return tag("section", *made, class_="chart", data_chart=name)


def contents(name: str) -> Markup:
    """```contents: the questions of all chapters that have cards, or of the one chapter named."""
    chapters = [name] if name else [chapter for chapter in CHAPTERS if chapter_cards(chapter)]
    up = "../" if name else ""
    made = []
    for chapter in chapters:
        lines = [
            tag("li", tag("a", card.question, href=f"{up}{chapter}/{card.id}/"))
            for card in chapter_cards(chapter)
        ]
        made.append(
            inner(
                (
                    None
                    if name
                    else tag("h2", tag("a", chapter.capitalize(), href=f"{chapter}/"), id=chapter)
                ),
                tag("ul", *lines),
            )
        )
    for title, pages in () if name else BESIDE:
        made.append(
            inner(
                tag("h2", tag("a", title, href=pages[0][0]), id=title.lower()),
                tag("ul", *(tag("li", tag("a", words, href=place)) for place, words in pages)),
            )
        )
    return tag("div", *made, class_="contents")


def bench(name: str) -> Markup:
    """```bench: the form of My bench."""
    settings = Settings()
    buttons = (
        ("save", "Save my bench", "first"),
        ("export", "Save a copy as a file", None),
        ("import", "Read a file", None),
        ("erase", "Remove everything", None),
    )
    return tag(
        "bench-mine",
        form(BENCH, read_inputs(BENCH, {}, settings), settings),
        tag(
            "p",
            *(
                tag("button", words, type="button", data_do=do, class_=look)
                for do, words, look in buttons
            ),
            class_="do",
        ),
        tag("p", class_="kept", hidden=True),
        tag("p", "Nothing is saved yet.", class_="state", role="status"),
        data_card=BENCH.id,
    )


def workbook(name: str) -> Markup:
    """```workbook: the page of her own records, as it stands before any script has run."""
    first = (
        ("demo", "Load the demo workbook", "first"),
        ("from-bench", "Bring in the bases of My bench", None),
        ("import", "Read a file", None),
        ("export", "Save a copy as a file", None),
        ("undo", "Undo", None),
        ("drop-demo", "Remove the demo", None),
    )
    asked = tag(
        "form",
        tag("label", "Lot, order number, mill lot or jar lot", for_="workbook-asked"),
        tag(
            "div",
            tag(
                "input",
                id="workbook-asked",
                type="text",
                autocomplete="off",
                autocapitalize="off",
                spellcheck="false",
                enterkeyhint="search",
            ),
            class_="entry",
        ),
        tag(
            "p",
            tag("button", "Trace it", type="submit", class_="first"),
            tag("button", "Print", type="button", data_do="print-trace", hidden=True),
            class_="do",
        ),
        data_part="asked",
        novalidate=True,
    )
    return tag(
        "bench-workbook",
        tag("p", class_="reminder", role="status", hidden=True),
        tag("p", class_="held", hidden=True),
        tag(
            "p",
            "Nothing is written down yet. A record is one thing that you would otherwise type again"
            " and again: a base, a recipe, a lot. Write one down, keep one from a card, or load the"
            " demo workbook of an invented studio and look around.",
            class_="empty",
        ),
        tag(
            "p",
            *(
                tag(
                    "button",
                    words,
                    type="button",
                    data_do=do,
                    class_=look,
                    hidden=do in ("from-bench", "undo", "drop-demo"),
                )
                for do, words, look in first
            ),
            class_="do",
            data_part="actions",
        ),
        tag("p", class_="said", role="status", hidden=True),
        tag(
            "section",
            tag("div", data_slot="drafts"),
            tag("div", data_slot="list"),
            tag("div", data_slot="removed"),
            data_part="list",
        ),
        tag("section", data_part="record", hidden=True),
        tag("section", data_part="import", hidden=True),
        tag(
            "section",
            tag("h2", "Trace a lot"),
            asked,
            tag("div", data_slot="trace", role="status"),
            data_part="trace",
        ),
        tag(
            "p",
            "What you save is kept in this browser on this device only. Nothing is sent anywhere.",
            class_="state",
            role="status",
        ),
        tag(
            "noscript",
            tag(
                "p",
                "This part of the book needs scripts: without them nothing can be kept in a"
                " browser.",
            ),
        ),
        data_search_exclude=True,
        data_format=FORMAT,
        data_schema=str(SCHEMA),
        data_largest=str(LARGEST),
        data_keeps=str(KEPT_REMOVED),
    )


def demo(name: str) -> Markup:
    """```demo: the button that loads the demo workbook, on a page that speaks of it."""
    button = tag(
        "button", "Load the demo workbook", type="button", data_do="load-demo", class_="first"
    )
    return tag(
        "div",
        tag("p", button, class_="do"),
        tag(
            "p",
            "It is kept beside your own records and can be taken out again with one press.",
            data_demo_result=True,
            role="status",
        ),
        class_="fair",
    )


def helper_link(name: str) -> Markup:
    """```helper-link: the form that makes a base's link, and room for what comes of it."""
    settings = Settings()
    buttons = (
        ("copy-link", "Copy the link", "first"),
        ("copy-snippet", "Copy the lines for a shop page", None),
        ("copy-listener", "Copy the script", None),
        ("save-svg", "Code as SVG", None),
        ("save-png", "Code as PNG", None),
        ("print-booth", "Print the booth card", None),
        ("print-stand", "Print the stand, A4", None),
    )
    made = tag(
        "section",
        tag("h2", "The link"),
        tag(
            "output",
            "The link is made here as soon as the calculator has started.",
            class_="answer",
            role="status",
            aria_live="polite",
            data_slot="link",
        ),
        tag("p", class_="kept", hidden=True),
        tag("p", data_slot="about"),
        tag("div", data_slot="code", class_="code"),
        tag(
            "p",
            *(
                tag("button", words, type="button", data_do=do, class_=look)
                for do, words, look in buttons
            ),
            class_="do",
        ),
        tag("p", class_="said", role="status", hidden=True),
        tag(
            "details",
            tag("summary", "The lines for a shop page"),
            tag("pre", tag("code", data_slot="snippet")),
            tag(
                "p",
                "Where the shop allows scripts, this one lets the frame be as high as what is"
                " in it:",
            ),
            tag("pre", tag("code", data_slot="listener")),
        ),
        aria_label="The link",
    )
    return tag(
        "bench-link",
        form(LINK, read_inputs(LINK, {}, settings), settings),
        made,
        tag("p", class_="state", role="status"),
        data_card=LINK.id,
    )


def fair(name: str) -> Markup:
    """```fair: the button that says whether the book will work with no signal, by trying it on
    the card named.
    """
    button = tag(
        "button",
        "Fair check",
        type="button",
        data_do="fair-check",
        data_card=find_card(name).id,
        class_="first",
    )
    return tag(
        "div",
        tag("p", button, class_="do"),
        tag("div", data_fair_result=True, role="status"),
        class_="fair",
    )


def library(name: str) -> Markup:
    """```library: the functions of a chapter."""
    from .library import functions  # not in the browser's copy

    return functions(name)


FENCES = {
    "card": card,
    "chart": chart,
    "contents": contents,
    "bench": bench,
    "fair": fair,
    "helper-link": helper_link,
    "workbook": workbook,
    "demo": demo,
    "library": library,
}
