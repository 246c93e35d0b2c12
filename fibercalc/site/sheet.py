"""One card as half a printed page, or as a whole one where it stands beside the work: question,
what was given, the answer, its picture, cautions and sources.
"""

from collections.abc import Callable
from datetime import date

from ..core.amount import NO_BREAK
from ..core.card import CHOICE
from ..core.day import today as this_day
from ..core.day import write_date
from ..core.lent import LENT, left_open, still_lent
from ..core.markup import Markup, in_texts, inner, tag
from ..core.number import write_number
from ..core.outcome import with_money
from ..core.paper import Labels
from ..core.units import MONEY
from ..core.work import Worked
from ..version import __version__
from . import parts

READABLE = 130  # characters: a longer address on a paper is typed by nobody and fills it
TALLEST = 200  # drawing units: a taller picture does not fit half a page beside the numbers


def sheet(worked: Worked, address: str, today: date | None = None) -> Markup:
    """The content of the compact sheet for "print this card alone"; the browser puts it into the
    sheet. A tall picture cannot be parted between two columns, so there the cautions fill the
    first one and it has the second to itself.
    """
    card = worked.card
    open_ = _opener(worked)
    pictures = [
        picture for picture in worked.pictures() if card.tall_sheet or picture.height <= TALLEST
    ]
    shown = (
        open_(parts.figure(pictures[0]) if pictures else parts.tables(worked)),
        parts.cautions(worked),
    )
    cited = "; ".join(dict.fromkeys(parts.cited(source) for source in card.sources))
    foot = f"Bench Book {__version__} · printed {write_date(today or this_day())}"
    return inner(
        tag("header", tag("b", "Bench Book"), tag("span", card.question)),
        open_(
            tag(
                "p",
                *worked.sentences()[:1],
                tag("small", " ".join(worked.sentences()[1:])),
                tag("small", worked.still(), class_="still") if worked.still() else None,
                class_="answer",
            )
        ),
        tag(
            "div",
            open_(parts.numbers(worked)),
            tag("div", _given(worked), class_="known"),
            class_="columns",
        ),
        *(reversed(shown) if card.tall_sheet else shown),
        tag(
            "p",
            f"{card.basis.kind}: {card.basis.text} Sources, in full at the address below: {cited}.",
            class_="sources",
        ),
        tag("footer", tag("span", foot), tag("span", address, class_="address")),
    )


def _opener(worked: Worked) -> Callable[[Markup], Markup]:
    """What leaves a line to write on wherever finished HTML holds a value that is still the
    example's.
    """
    lent = still_lent(worked.given)
    if not lent:
        return lambda html: html
    sums = {
        with_money(
            write_number(reading.value, places, worked.settings.style), worked.settings.money
        )
        for reading in lent
        if reading.input.of is MONEY
        for places in (0, 2)
        if round(reading.value, places) == reading.value
    }
    return lambda html: in_texts(html, lambda text: left_open(text, lent, sums))


def paper(worked: Worked, number: int, address: str, today: date | None = None) -> Markup:
    """One of a card's exact papers: what it answers, its tables, its cautions. Raises IndexError
    for a number it does not have.
    """
    wanted = worked.card.papers[number]
    if isinstance(wanted, Labels):
        raise TypeError(f"{wanted.title}: labels are drawn, not listed")
    address = address if len(address) <= READABLE else address.partition("?")[0]
    return tag(
        "div",
        tag("header", tag("b", "Bench Book"), tag("span", wanted.title)),
        _opener(worked)(tag("p", worked.sentences()[0], class_="answer")),
        tag("p", worked.still(), class_="still") if worked.still() else None,
        *(_opener(worked)(parts.listing(table)) for table in wanted.tables(worked.outcome)),
        *(
            tag("p", tag("b", f"Caution: {caution.title} "), caution.text, class_="caution")
            for caution in worked.cautions()
        ),
        tag(
            "footer",
            tag("span", f"{__version__} · {write_date(today or this_day())}"),
            tag("span", address, class_="address"),
        ),
        class_=f"paper paper-{wanted.size.lower()}",
    )


def _given(worked: Worked) -> Markup:
    """What was given, without what was left blank; a row of a list stands in one line."""
    lines: dict[str, tuple[str, list[str]]] = {}
    for name, reading in worked.given.readings.items():
        if not reading.asked or reading.value is None or reading.whose == LENT:
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
            f"{worked.card.rows(where[0]).one.capitalize()} {where[1]}"
            if len(where) == 3
            else reading.input.label
        )
        lines.setdefault(".".join(where[:2]), (label, []))[1].append(said)
    rows = [
        tag("tr", tag("th", label, scope="row"), tag("td", "; ".join(said)))
        for label, said in lines.values()
    ]
    return tag("table", tag("tbody", *rows), class_="given")
