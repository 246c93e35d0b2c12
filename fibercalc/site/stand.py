"""The stand for a stall: one sheet of A4 with a base's code, large, and a chart of how many
skeins each project takes.
"""

from datetime import date
from typing import Any

from ..core.day import today as this_day
from ..core.day import write_date
from ..core.markup import Markup, tag
from ..core.number import write_plain
from ..core.reading import Given
from ..core.settings import Settings
from ..version import __version__
from ..workbook.base_link import BaseLink, write_link
from . import helper
from .link_maker import base_and_home, yards_of
from .qr import QUIET, code_of, code_svg

CODE_MM = 52.0  # the code with its white edge: read from two steps away
SURE = "90"
BODIES = "Sweaters: long sleeves, 10 cm wider around than the body; children 8 cm, babies 5 cm."


def stand(given: Given, here: str, settings: Settings, today: date | None = None) -> dict[str, Any]:
    """The stand of a base as typed: {"html", "refused"}. Raises ModuleNotFoundError until the
    library that makes codes is there.

    here  the address of the book that the page is in
    """
    base, home, wrong = base_and_home(given, here, settings)
    if wrong:
        return {"html": "", "refused": wrong}
    link = write_link(home, base)
    code = code_of(link)
    put_up = (
        f"{write_plain(base.grams, settings.style)} g, {write_plain(base.meters, settings.style)} m"
        f" ({yards_of(base)} yd) in a skein"
    )
    said = [
        put_up,
        f"Lot {base.lot}" if base.lot else "",
        f"{base.price} a skein" if base.price else "",
    ]
    head = tag(
        "header",
        tag(
            "div",
            tag("p", "How many skeins do I need?", class_="asks"),
            tag("p", base.name, class_="names") if base.name else None,
            *(tag("p", line) for line in said if line),
        ),
        code_svg(code, CODE_MM / code.symbol_size(border=QUIET)[0]),
    )
    foot = tag(
        "footer",
        tag("span", link.partition("#")[0].partition("://")[2]),
        tag("span", f"Bench Book {__version__} · {write_date(today or this_day())}"),
    )
    words = (
        f"Skeins to buy so that {SURE} in 100 knitters have enough: no padding, odds. {BODIES} Scan"
        " for your own size, and for how sure you want to be. Buy from one lot."
    )
    return {
        "html": tag(
            "div", head, chart(base), tag("p", words, class_="assumes"), foot, class_="stand"
        ),
        "refused": "",
    }


def chart(base: BaseLink) -> Markup:
    """Every project and size that the helper offers, with its number of skeins from the same full
    calculation.
    """
    phrases = helper.phrases()
    rows = []
    for project in helper.projects():
        cells = []
        for size in project.sizes:
            count = helper.say(
                helper.work(base.grams, base.meters, project.key, size.key), SURE, phrases
            )["count"]
            cells.append(
                tag(
                    "span",
                    tag("span", size.label),
                    " ",
                    tag("b", str(count) if count else "ask"),
                    class_="size",
                )
            )
        rows.append(tag("tr", tag("th", project.label, scope="row"), tag("td", *cells)))
    return tag("table", tag("caption", "Skeins to buy"), tag("tbody", *rows))
