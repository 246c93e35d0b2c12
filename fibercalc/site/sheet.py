"""One card as half a printed page, or as a whole one where it stands beside the work: question, what was given, the answer, its picture, cautions and sources."""

from datetime import date

from .. import __version__
from ..core.amount import NO_BREAK
from ..core.card import CHOICE
from ..core.markup import Markup, inner, tag
from ..core.day import write_date
from ..core.work import Worked
from . import parts

READABLE = 130  # characters: a longer address on a paper is typed by nobody and fills it
TALLEST = 200  # drawing units: a taller picture does not fit half a page beside the numbers


def sheet(worked: Worked, address: str, today: date | None = None) -> Markup:
    """The content of the compact sheet for "print this card alone"; the browser puts it into the sheet."""
    card = worked.card
    pictures = [
        picture for picture in worked.pictures() if card.tall_sheet or picture.height <= TALLEST
    ]
    cited = "; ".join(dict.fromkeys(parts.cited(source) for source in card.sources))
    foot = f"Bench Book {__version__} · printed {write_date(today or date.today())}"
    return inner(
        tag("header", tag("b", "Bench Book"), tag("span", card.question)),
        tag("p", parts.answer(worked), class_="answer"),
        tag(
            "div",
            parts.numbers(worked),
            tag("div", _given(worked), class_="known"),
            class_="columns",
        ),
        parts.figure(pictures[0]) if pictures else parts.tables(worked),
        parts.cautions(worked),
        tag(
            "p",
            f"{card.basis.kind}: {card.basis.text} Sources, in full at the address below: {cited}.",
            class_="sources",
        ),
        tag("footer", tag("span", foot), tag("span", address, class_="address")),
    )


def paper(worked: Worked, number: int, address: str, today: date | None = None) -> Markup:
    """One of a card's exact papers: what it answers, its tables, its cautions. Raises IndexError for a number it does not have."""
    card, wanted = worked.card, worked.card.papers[number]
    address = address if len(address) <= READABLE else address.partition("?")[0]
    return tag(
        "div",
        tag("header", tag("b", "Bench Book"), tag("span", wanted.title)),
        tag("p", worked.sentences()[0], class_="answer"),
        *(parts.listing(table) for table in wanted.tables(worked.outcome)),
        *(
            tag("p", tag("b", f"Caution: {caution.title} "), caution.text, class_="caution")
            for caution in worked.cautions()
        ),
        tag(
            "footer",
            tag("span", f"{__version__} · {write_date(today or date.today())}"),
            tag("span", address, class_="address"),
        ),
        class_=f"paper paper-{wanted.size.lower()}",
    )


def _given(worked: Worked) -> Markup:
    """What was given, without what was left blank; a row of a list stands in one line."""
    lines: dict[str, tuple[str, list[str]]] = {}
    for name, reading in worked.given.readings.items():
        if not reading.asked or reading.value is None:
            continue
        said = reading.echo.removeprefix("read as ") or reading.text
        if reading.input.kind == CHOICE:
            said = next(
                option.label for option in reading.input.options if option.value == reading.value
            )
        if reading.rough and reading.amount is not None and reading.amount.typed_rough is None:
            said += ", " + f"± {reading.input.rough}".replace(" ", NO_BREAK)
        where = name.split(".")
        label = (
            f"{worked.card.item(where[0]).one.capitalize()} {where[1]}"
            if len(where) == 3
            else reading.input.label
        )
        lines.setdefault(".".join(where[:2]), (label, []))[1].append(said)
    rows = [
        tag("tr", tag("th", label, scope="row"), tag("td", "; ".join(said)))
        for label, said in lines.values()
    ]
    return tag("table", tag("tbody", *rows), class_="given")
