"""The parts of an answer as HTML, one for each slot of a card, and those that a print sheet uses too."""


import re
from functools import lru_cache

from ..core.answer import Picture, Table
from ..core.link import query_of_texts
from ..core.markup import Markup, inner, tag
from ..core.onward import is_hers, said_in_link, ways_on
from ..core.registry import UnknownCard, find_card
from ..core.work import Worked
from ..sources import Source

TALL = 480  # drawing units: paper must not shrink such a picture to the height of the others, or its words grow too small
NUMBER_CELL = re.compile(r"[−–<]?\d|–?$")
MOST_OPEN = 4  # links of one way on that stand open; more are folded away
LONGEST_TIMER = 1440  # min: what is waited for longer is a matter for a calendar
HOW = {"read": "read", "secondary": "read in a page that quotes it", "memory": "from memory, unverified", "practice": "no published source"}


def answer(worked: Worked) -> Markup:
    """The answer in words; the first sentence is the large one."""
    first, *rest = worked.sentences()
    still = worked.still()
    return inner(first, tag("small", " ".join(rest)) if rest else None, tag("small", still, class_="still") if still else None)


def numbers(worked: Worked) -> Markup:
    """The results with their ranges, in all units in use."""
    outcome = worked.outcome
    rows = []
    for name, found in outcome.found.items():
        head = tag("th", outcome.label(name), scope="row")
        if isinstance(found.value, str):  # words run on where numbers stand in line
            rows.append(tag("tr", head, tag("td", outcome.text(name), class_="words", colspan="2")))
        else:
            rows.append(tag("tr", head, tag("td", outcome.both(name), class_="n"), tag("td", outcome.span(name), class_="r")))
    head = tag("thead", tag("tr", tag("th", "What", scope="col"), tag("th", "Value", scope="col"), tag("th", "95 % range", scope="col")), class_="unseen")
    return tag("table", head, tag("tbody", *rows), class_="numbers")


def timers(worked: Worked) -> Markup:
    """Times that are waited for, each as an offer to start a timer."""
    found = [one for one in worked.outcome.found.values() if one.result.timer and isinstance(one.value, (int, float)) and 0 < one.value <= LONGEST_TIMER]
    offers = []
    for one in found:
        label = worked.outcome.label(one.result.name)
        words = f"Start a timer: {label[0].lower()}{label[1:]}, {worked.outcome.text(one.result.name)}"
        offers.append(tag("button", words, type="button", data_do="start-timer", data_label=label, data_minutes=f"{one.value:.3f}"))
    return tag("p", *offers, class_="timer-offers", data_search_exclude=True) if offers else inner()


def pictures(worked: Worked) -> Markup:
    return inner(*(figure(picture) for picture in worked.pictures()))


def figure(picture: Picture) -> Markup:
    """One picture with its title. Its SVG comes from our own drawing board, which escapes."""
    return tag("figure", Markup(picture.svg), tag("figcaption", picture.title), class_="tall" if picture.height > TALL else None)


def tables(worked: Worked) -> Markup:
    return inner(*(listing(table) for table in worked.tables()))


def listing(table: Table) -> Markup:
    """A table with its caption and note; it may scroll sideways in its own box, which the keyboard can reach."""
    looks = [_number_look([row[at] for row in table.rows]) for at in range(len(table.columns))]
    head = tag("thead", tag("tr", *(tag("th", column, scope="col", class_=look) for column, look in zip(table.columns, looks))))
    rows = []
    for row in table.rows:
        cells = [tag("td", cell, data_label=column, class_=look) for cell, column, look in zip(row[1:], table.columns[1:], looks[1:])]
        rows.append(tag("tr", tag("th", row[0], scope="row"), *cells))
    made = tag("table", tag("caption", table.title), head, tag("tbody", *rows), class_="listing")
    box = tag("div", made, class_="listing-box", tabindex="0", role="region", aria_label=table.title)
    return inner(box, tag("p", table.note, class_="table-note") if table.note else None)


def _number_look(cells: list[str]) -> str | None:
    """The class that lines a column of short numbers up on the right."""
    return "n" if all(NUMBER_CELL.match(cell) and len(cell) <= 18 for cell in cells) else None


def notes(worked: Worked) -> Markup:
    found = worked.notes()
    return tag("ul", *(tag("li", note) for note in found), class_="notes") if found else inner()


def cautions(worked: Worked) -> Markup:
    return inner(*(tag("div", tag("b", f"Caution: {caution.title} "), caution.text, class_="caution", role="note") for caution in worked.cautions()))


def working(worked: Worked) -> Markup:
    """Every step: what it is, the formula, the numbers filled in, the value."""
    steps = []
    for step in worked.working():
        lines = [tag("span", step["label"], class_="label"), tag("span", step["text"], class_="value"), tag("span", step["formula"], class_="formula")]
        if step["filled"] != step["formula"]:
            lines.append(tag("span", ("" if step["kind"] == "looked up" else "= ") + step["filled"], class_="filled"))
        if "bound" in step:
            lines.append(tag("span", step["bound"], class_="filled"))
        steps.append(tag("li", *lines))
    return tag("details", tag("summary", "Show the working"), tag("ol", *steps), class_="working", open=True, data_search_exclude=True)


def basis(worked: Worked) -> Markup:
    return _basis(worked.card)


@lru_cache(16)
def _basis(card) -> Markup:
    return tag("div", tag("b", card.basis.kind), tag("span", card.basis.text), sources(card.sources), class_="basis")


def sources(found: tuple[Source, ...]) -> Markup:
    return tag("ul", *(tag("li", source_line(source)) for source in found), class_="sources")


def source_line(source: Source) -> str:
    """A source as one line: body, title, year, and how it was come by."""
    parts = [part for part in (source.body, source.title, source.year) if part]
    how = HOW[source.how] + (f" {source.read}" if source.read else "")
    return ", ".join(parts) + (f" ({how})" if source.how != "practice" else "")


def cited(source: Source) -> str:
    """A source as short as where there is no room for its line: who and when; what has no author, by the head of its title."""
    name = f"{source.body} {source.year}".strip() if source.body else re.split(r" \(|,", source.title)[0]
    return name + (" (unverified)" if source.how == "memory" else "")


def carry(worked: Worked, trail: tuple[tuple[str, str], ...] = ()) -> Markup:
    """Ways on to the next card, with what is known already in the link, spread and all."""
    links, hers = [], is_hers(worked, trail)
    for onward in worked.card.carry:
        try:
            other = find_card(onward.card)
        except UnknownCard:
            continue
        made = [tag("a", words, href=_address(other, texts, counts, hers), data_carry=other.id) for words, texts, counts in ways_on(worked, onward, trail)]
        links.append(tag("details", tag("summary", onward.words.partition("{}")[0].strip(), " …"), *made) if len(made) > MOST_OPEN else inner(*made))
    return tag("div", *links, class_="carry") if links else inner()


def _address(other, texts: dict[str, str], counts: dict[str, int], hers: bool) -> str:
    query = query_of_texts(other, texts, counts, said_in_link(other, texts, hers))
    return f"../../{other.chapter}/{other.id}/{'?' + query if query else ''}"


SLOTS = {"answer": answer, "timers": timers, "pictures": pictures, "numbers": numbers, "tables": tables, "notes": notes, "cautions": cautions, "working": working,
         "basis": basis}


def slots(worked: Worked, trail: tuple[tuple[str, str], ...] = ()) -> dict[str, Markup]:
    """Every slot's HTML. trail: the cards before, for the ways on (see core.onward)."""
    return {name: make(worked) for name, make in SLOTS.items()} | {"carry": carry(worked, trail)}
