"""Labels on paper: each page one drawing at its true size, with cut marks and a bar that shows
whether the printer kept it.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import TYPE_CHECKING, Any

from ..core.day import today as this_day
from ..core.day import write_date
from ..core.label import PAGES, Area, Block, Code, TooLong, gap_of, has_foot
from ..core.label.draw import BLACK, HAIR, drawn, mm, svg, text
from ..core.label.label import Laid, Line, fitted
from ..core.label.sheet import EDGE, FOOT, Sheets, leaves
from ..core.markup import Markup, inner, tag
from ..core.number import write_plain
from ..core.paper import Labels
from ..core.work import Worked
from ..version import __version__
from ..workbook.base_link import RULES, BaseLink, clean, write_link
from .link_maker import LOCAL, home_of, host_of, out_of_range
from .qr import LEAST_MODULE, code_of, code_shapes, module_in

if TYPE_CHECKING:
    from segno import QRCode

BAR = 100.0  # mm
TICK, AWAY = 3.0, 1.0  # mm: a cut mark, and how far it stays from the labels
SIZE = 8.2  # pt of what stands beside the labels


def labels_paper(
    worked: Worked, number: int, here: str, today: date | None = None
) -> dict[str, Any]:
    """A card's labels as pages: {"html", "kind", "said"}, or {"html": "", "refused"} in one line.
    Raises ModuleNotFoundError until the library that makes codes is there, and IndexError for
    a paper the card does not have.

    here  the address of the book that the page is in: what a code leads to
    """
    wanted = worked.card.papers[number]
    if not isinstance(wanted, Labels):
        raise TypeError(f"{wanted.title}: these are no labels")
    sheets = wanted.sheets(worked.outcome)
    codes: dict[Code, Linked] = {}
    for laid, _ in sheets.labels:
        for code in laid.label.codes:
            codes[code] = _link(code, here)
            if codes[code].wrong:
                return {"html": "", "refused": codes[code].wrong}
    foot = f"Bench Book {__version__} · {write_date(today or this_day())}"
    pages = [_page(sheets, leaf, codes, foot) for leaf in leaves(sheets)]
    return {
        "html": inner(*pages),
        "kind": "labels",
        "said": " ".join(dict.fromkeys(link.said for link in codes.values())),
    }


class Linked:
    """Where a code leads: its drawing's code, the address to type, what to tell the maker, or
    what is wrong.
    """

    def __init__(
        self, code: QRCode | None = None, short: str = "", said: str = "", wrong: str = ""
    ) -> None:
        self.code, self.short, self.said, self.wrong = code, short, said, wrong

    def shapes(self, x: float, y: float, side: float) -> Markup:
        """The code in a square of a drawing. Raises ValueError where it could not be made."""
        if self.code is None:
            raise ValueError(self.wrong)
        return code_shapes(self.code, x, y, side)


def _link(code: Code, here: str) -> Linked:
    """The link of a base, as much of it as a code of this side can hold: lot, then name, are left
    out before squares grow too small to be read.
    """
    home, wrong = home_of(here)
    if wrong:
        return Linked(
            wrong=(
                "The code cannot be made: where the book stands is not known. Open it at its"
                " address on the web."
            )
        )
    about = dict(code.about)
    base = BaseLink(
        "base",
        about["grams"],
        about["meters"],
        about["weight_class"],
        clean(about["name"], RULES["texts"]["n"]),
        clean(about["lot"], RULES["texts"]["l"]),
    )
    if wrong := out_of_range(base):
        return Linked(wrong=f"The code cannot be made. {wrong}")
    for left_out, smaller in (
        ("", base),
        (" The lot is left out of it to keep it readable.", replace(base, lot="")),
        (" Name and lot are left out of it to keep it readable.", replace(base, lot="", name="")),
    ):
        link = write_link(home, smaller)
        made = code_of(link)
        if module_in(made, code.side) >= LEAST_MODULE:
            local = (
                " That is this machine only: print from the book where it stands on the web."
                if host_of(home) in LOCAL
                else ""
            )
            return Linked(
                made,
                link.partition("#")[0].partition("://")[2],
                f"The code leads to {link} and has squares of"
                f" {write_plain(module_in(made, code.side), digits=2)} mm.{left_out}{local}",
            )
    return Linked(
        wrong=(
            "The code cannot be made: the address of the book is too long for this label. Choose a"
            " larger one."
        )
    )


def _page(
    sheets: Sheets, leaf: list[tuple[Laid, float, float]], codes: dict[Code, Linked], foot: str
) -> Markup:
    first = leaf[0][0]
    alone = sheets.page == "alone"
    width, height = (first.label.width, first.label.height) if alone else PAGES[sheets.page]

    def code(each: Code) -> Markup:
        return inner(
            codes[each].shapes(each.x, each.y, each.side),
            *(text(line) for line in _address(each, codes[each].short)),
        )

    cut = not alone and not sheets.precut
    parts = [
        tag(
            "g",
            drawn(laid, code, outline=cut),
            transform=f"translate({mm(x)} {mm(y)})",
            class_="label",
        )
        for laid, x, y in leaf
    ]
    if cut:
        parts.append(_cut_marks(leaf))
    if has_foot(sheets):
        parts.append(_foot(sheets, width, height, foot))
    name = f"{width:g}x{height:g}".replace(".", "-") if alone else sheets.page
    return tag("div", svg(width, height, *parts), class_=f"label-page label-page-{name}")


def _address(code: Code, short: str) -> list[Line]:
    """The address in letters under its code, broken before its question mark; left off where it
    does not fit.
    """
    x, y, width, height = code.address
    page, mark, asks = short.partition("?")
    try:
        return fitted(
            Area(
                x,
                y,
                width,
                height,
                (
                    Block("Address", page, 6.5, lines=2),
                    Block("Address", mark + asks, 6.5, gap=0, lines=2),
                ),
                "middle",
            )
        )[0]
    except TooLong:
        return []


def _cut_marks(leaf: list[tuple[Laid, float, float]]) -> Markup:
    """Short lines outside the block of labels, in line with every straight cut."""
    if gap_of(leaf[0][0]):
        return inner()
    width, height = leaf[0][0].label.width, leaf[0][0].label.height
    xs = sorted({round(at, 3) for _, x, _ in leaf for at in (x, x + width)})
    ys = sorted({round(at, 3) for _, _, y in leaf for at in (y, y + height)})
    upright = [
        (x, y, x, y + side * TICK)
        for x in xs
        for y, side in ((ys[0] - AWAY, -1), (ys[-1] + AWAY, 1))
    ]
    level = [
        (x, y, x + side * TICK, y)
        for y in ys
        for x, side in ((xs[0] - AWAY, -1), (xs[-1] + AWAY, 1))
    ]
    return inner(
        *(
            tag(
                "line",
                x1=mm(x1),
                y1=mm(y1),
                x2=mm(x2),
                y2=mm(y2),
                stroke=BLACK,
                stroke_width=mm(HAIR),
                class_="mark",
            )
            for x1, y1, x2, y2 in (*upright, *level)
        )
    )


def _foot(sheets: Sheets, width: float, height: float, words: str) -> Markup:
    """The bar of 100 mm with a tick at each 10, what it is for, and what printed this when."""
    left, top = (width - BAR) / 2 + sheets.right, height - EDGE - FOOT + 6 + sheets.down
    ticks = "".join(
        f"M{mm(left + 10 * tick)} {mm(top)}v{2 if tick % 5 else 3}" for tick in range(11)
    )
    line = Line(
        width / 2 + sheets.right,
        top + 6.5,
        f"Print at 100 %: this bar must measure 100 mm. {words}",
        SIZE,
        False,
        "middle",
        0.0,
    )
    return inner(
        tag(
            "path",
            d=f"M{mm(left)} {mm(top)}h{mm(BAR)}",
            stroke=BLACK,
            stroke_width=mm(2 * HAIR),
            fill="none",
            class_="bar",
        ),
        tag("path", d=ticks, stroke=BLACK, stroke_width=mm(HAIR), fill="none"),
        text(line),
    )
