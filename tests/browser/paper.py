"""A page printed by the browser, and the paper read back: words in the order in which they are drawn, sizes, edges."""

import io
import re
import subprocess
import unicodedata
from dataclasses import dataclass
from functools import cached_property

import pdfplumber
from playwright.sync_api import Page, expect

from .waiting import until

MM = 72 / 25.4
PAPERS = {"A4": (210, 297), "Letter": (215.9, 279.4)}


def squeezed(text: str) -> str:
    """Without any white space: where a line breaks is no difference."""
    # A typeface may draw the apostrophe and the modifier letter with one glyph; a file then names it by either.
    return re.sub(r"\s+", "", unicodedata.normalize("NFKC", text)).replace("\u02bc", "\u2019")


@dataclass
class Leaf:
    """One printed page. chars and drawn are pdfplumber's, in points from the top left; what is only white, as the paper, is left out."""

    width: float
    height: float
    chars: list
    drawn: list

    @cached_property
    def flow(self) -> str:
        """All words in the order in which they are drawn, which is the document's, squeezed."""
        return squeezed("".join(char["text"] for char in self.chars))


@dataclass
class Printed:
    """A page on paper."""

    pdf: bytes
    leaves: list[Leaf]

    @property
    def flow(self) -> str:
        return "".join(leaf.flow for leaf in self.leaves)

    def darkest_background(self) -> int:
        """The gray (255 is white) that most of a page has, of the page where it is darkest."""
        made = subprocess.run(
            ["pdftoppm", "-r", "20", "-gray", "-"], input=self.pdf, capture_output=True, check=True
        ).stdout
        darkest, at = 255, 0
        for (
            _
        ) in self.leaves:  # P5, width and height, 255, then the pixels; one picture after another
            head = re.match(rb"P5\s(\d+) (\d+)\s255\s", made[at:])
            size = int(head[1]) * int(head[2])
            pixels = made[at + head.end() : at + head.end() + size]
            darkest = min(darkest, max(set(pixels), key=pixels.count))
            at += head.end() + size
        return darkest


def _is_white(drawn) -> bool:
    return not drawn["stroke"] and all(part == 1 for part in drawn["non_stroking_color"] or (0,))


def printed(page: Page, paper: str) -> Printed:
    """The page as it leaves the printer that holds this paper."""
    pdf = page.pdf(format=paper, prefer_css_page_size=True, print_background=True)
    with pdfplumber.open(io.BytesIO(pdf)) as document:
        leaves = [
            Leaf(
                float(each.width),
                float(each.height),
                [char for char in each.chars if char["text"].strip()],
                [line for line in (*each.rects, *each.lines, *each.curves) if not _is_white(line)],
            )
            for each in document.pages
        ]
    return Printed(pdf, leaves)


# The address follows an answer when typing has rested; where there is none, the card says so at once.
TAKEN = """(search) => location.search !== search ? "answered" : document.querySelector("bench-card .kept").checkVisibility() && "refused" """


def enter_two(page: Page) -> dict[str, str]:
    """Type something new into two fields of a live card (one, where it has no more) so that it answers; what was typed, by name."""
    entered: dict[str, str] = {}
    boxes = page.locator(
        "bench-card .field:is([data-kind='quantity'], [data-kind='count'], [data-kind='percent'])"
        " .entry > input"
    ).all()
    for box in boxes:
        if len(entered) == 2:
            break
        before = box.input_value()
        number = re.match(r"[\d.]+", before)
        if not box.is_visible() or not number:
            continue
        name, search = box.get_attribute("name"), page.evaluate("() => location.search")
        text = str(int(number[0]) + 3) if number[0].isdigit() else f"{float(number[0]) * 1.03:.4g}"
        box.fill(text)
        if until(page, TAKEN, search) == "refused":
            box.fill(before)
            expect(page.locator("bench-card .kept")).to_be_hidden()
        else:
            entered[name] = text
    assert len(entered) == 2 or (entered and len(boxes) < 2), entered
    expect(page.locator("bench-card .kept")).to_be_hidden()
    return entered
