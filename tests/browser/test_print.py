"""On paper, A4 and US Letter: what was entered, units, cautions, sources and page numbers; nothing to press, nothing cut off, nothing too small."""

import re

import pytest

from fibercalc.core.lent import left_open, still_lent
from fibercalc.core.link import CANONICAL, read_query
from fibercalc.core.paper import Paper
from fibercalc.core.reading import read_inputs
from fibercalc.core.registry import all_cards, find_card
from fibercalc.core.units import MONEY
from fibercalc.site.parts import cited

from .addresses import all_pages, card_pages, falls, page_id, reference_pages, some_each_day
from .looking import looked_at
from .paper import MM, PAPERS, Printed, enter_two, printed, squeezed
from .waiting import until, until_live

SMALLEST = 8.0
ONLY_ON_SCREEN = (
    "Skip to the page",
    "My bench ",
    "Find a card",
    "Copy link",
    "Print this card",
    "Print the page",
    "Back to the example",
    "Also in ",
    "Pages and wall charts",
    "Nothing you type",
    "Show the page",
    "ready for no signal",
    "Live",
    "Update now",
    "Add a ",
    "Remove ",
)
STATIC = tuple(
    address
    for address in all_pages()
    if address not in card_pages().values() and address != "bench/"
)
# Every fourth page on one paper each day, cards on A4 and reference pages on Letter; the rest in the wide run.
cards_papers = pytest.mark.parametrize(
    "paper",
    [paper if paper == "A4" else pytest.param(paper, marks=pytest.mark.sweep) for paper in PAPERS],
)
words_papers = pytest.mark.parametrize(
    "paper",
    [
        paper if paper == "Letter" else pytest.param(paper, marks=pytest.mark.sweep)
        for paper in PAPERS
    ],
)


def holds_on_every_sheet(paper_name: str, paper: Printed) -> None:
    """What no page of the book may lack on paper."""
    width, height = (side * MM for side in PAPERS[paper_name])
    for number, leaf in enumerate(paper.leaves, 1):
        assert abs(leaf.width - width) < 1 and abs(leaf.height - height) < 1
        assert squeezed(f"{number} of {len(paper.leaves)}") in leaf.flow, "page number"
        assert "BenchBook" in leaf.flow, "the book's name"
        smallest = min(leaf.chars, key=lambda char: char["size"])
        assert smallest["size"] >= SMALLEST, (
            f"{smallest['size']:.2f} pt at {words_near(leaf, smallest)}"
        )
        for char in leaf.chars:
            assert char["x0"] >= 11.5 * MM and char["x1"] <= leaf.width - 11.5 * MM, (
                f"over the edge: {words_near(leaf, char)}"
            )
            assert char["top"] >= 0 and char["bottom"] <= leaf.height
    assert paper.darkest_background() == 255, "the paper is not white"


def words_near(leaf, char) -> str:
    at = leaf.chars.index(char)
    return "".join(each["text"] for each in leaf.chars[max(0, at - 20) : at + 30])


def visible_texts(page, selector: str) -> list[str]:
    return [text for text in page.locator(selector).all_text_contents() if text.strip()]


@pytest.fixture(scope="module")
def desk(browser, server):
    """One page whose Python lives on from card to card."""
    with looked_at(browser, server, next(iter(card_pages().values())), sparing=False) as looked:
        until_live(looked.page)
        yield looked.page


@pytest.fixture(scope="module", params=some_each_day(card_pages(), of=4))
def live(request, desk, server):
    """A card with two values of one's own, answered: its page, its id, what was entered."""
    address = server.address + card_pages()[request.param]
    if desk.url != address:
        desk.evaluate(
            """(address) => document.querySelector("article").append(Object.assign(document.createElement("a"), { href: address, id: "onward", textContent: "on" }))""",
            address,
        )
        desk.locator("#onward").click()
        desk.wait_for_url(address)
        until_live(desk, card=request.param)
    yield desk, request.param, enter_two(desk)


@pytest.fixture(
    scope="module", params=some_each_day(STATIC, [page_id(address) for address in STATIC], of=4)
)
def read_only(request, browser, server):
    """A page without a card."""
    with looked_at(browser, server, request.param) as looked:
        yield looked.page


@cards_papers
def test_a_card_prints_as_it_was_filled_in(live, paper):
    page, card_id, entered = live
    sheet = printed(page, paper)
    holds_on_every_sheet(paper, sheet)
    flow = sheet.flow
    for words in ONLY_ON_SCREEN:
        assert squeezed(words) not in flow or words in page.locator(".leaf__text").text_content(), (
            words
        )
    assert squeezed(find_card(card_id).question) in flow
    for name, text in entered.items():
        label = page.locator(f".field[data-name='{name}'] label").text_content()
        unit = page.locator(
            f".field[data-name='{name}'] .entry :is(select.unit option:checked, span.unit)"
        )
        said = text + (unit.text_content() if unit.count() else "")
        assert squeezed(label) in flow and squeezed(said) in flow, f"{label}: {said}"
    for name, text in page.evaluate(
        "() => [...new FormData(document.querySelector('bench-card form'))]"
    ):
        control = page.locator(f"bench-card [name='{name}']")
        if control.is_visible() and control.evaluate("(each) => each.tagName") == "INPUT":
            assert squeezed(text) in flow, f"{name}: {text}"
    parts = (
        "output.answer",
        ".caution",
        ".basis .sources li",
        ".numbers tbody tr",
        ".working .value",
        ".notes li",
        ".checked tbody th",
    )
    for part in parts:
        for text in visible_texts(page, f".leaf {part}"):
            assert squeezed(text.replace("Caution: ", "Caution:")) in flow, f"{part}: {text}"
    assert squeezed(page.url.split("?")[0]) in flow, "its address"


def answer_on_paper(page, card_id) -> list[str]:
    """The answer on screen as paper has it: what is still the example's is a line to write on."""
    said = page.locator("output.answer")
    texts = said.evaluate(
        """(answer) => {
             const alone = answer.cloneNode(true);
             const still = alone.querySelector(".still");
             still?.remove();
             return [alone.textContent, still?.textContent ?? ""];
           }"""
    )
    values, counts, _ = read_query(find_card(card_id), page.url.partition("?")[2])
    given = read_inputs(
        find_card(card_id), values, CANONICAL, exact=values, counts=counts, named=values
    )
    lent = still_lent(given)
    sums = {
        f"€{reading.value:.{places}f}"
        for reading in lent
        if reading.input.of is MONEY
        for places in (0, 2)
    }
    assert bool(texts[1]) == bool(lent)
    return [left_open(texts[0], lent, sums), texts[1]]


@cards_papers
def test_the_half_page_fits_its_half_page(live, paper):
    """A card that stands beside the work may take the height that Letter and A4 share instead."""
    page, card_id, entered = live
    tallest = 250 if find_card(card_id).tall_sheet else 125
    page.evaluate("() => { window.asked = false; window.print = () => { window.asked = true; }; }")
    page.get_by_role("button", name="Print this card alone").click()
    until(page, "() => window.asked")
    cautions = visible_texts(page, ".sheet-alone .caution")
    assert len(cautions) == page.locator("bench-card .caution").count()
    sheet = printed(page, paper)
    page.evaluate("() => dispatchEvent(new Event('afterprint'))")
    assert len(sheet.leaves) == 1
    leaf = sheet.leaves[0]
    for each in (*leaf.chars, *leaf.drawn):
        assert each["x0"] >= 12 * MM - 1 and each["x1"] <= (12 + 186) * MM + 1, each
        middle = (
            each["top"] + each["bottom"]
        ) / 2  # a letter's box in the file is taller than its line
        assert middle >= 12 * MM and middle <= (12 + tallest) * MM, (
            f"{each['bottom'] / MM - 12:.1f} mm down: {each.get('text', 'a line')}"
        )
    assert min(char["size"] for char in leaf.chars) >= SMALLEST
    assert sheet.darkest_background() == 255
    flow = sheet.flow
    assert squeezed(find_card(card_id).question) in flow
    for text in (*answer_on_paper(page, card_id), *cautions, *entered.values(), page.url):
        assert squeezed(text) in flow, text
    for source in find_card(card_id).sources:
        assert squeezed(cited(source)) in flow
    assert squeezed("Copy link") not in flow and page.locator(".sheet-alone").count() == 0


@words_papers
def test_a_page_of_words_and_tables_prints_whole(read_only, paper):
    sheet = printed(read_only, paper)
    holds_on_every_sheet(paper, sheet)
    for words in ONLY_ON_SCREEN:
        assert (
            squeezed(words) not in sheet.flow
            or words in read_only.locator(".leaf__text").text_content()
        ), words
    for part in ("h1", "h2", "caption", "th", "td", "figcaption", ".sources li", ".table-note"):
        for text in visible_texts(read_only, f".leaf__text {part}"):
            assert squeezed(text) in sheet.flow, f"{part}: {text}"


DARK = [card_pages()["skein-length"], reference_pages()[0]]
# Print has one set of colors for all pages, and test_states looks for others on each; some are printed to see that nothing else moves.
DARK_PAGES = [
    *DARK,
    *(
        pytest.param(address, marks=pytest.mark.sweep)
        for address in all_pages()
        if address not in DARK and not falls(address, 8)
    ),
]


@pytest.mark.parametrize("address", DARK_PAGES)
def test_from_the_dark_it_prints_the_same(browser, server, address):
    sheets = {}
    for scheme in ("light", "dark"):
        with looked_at(browser, server, address, color_scheme=scheme) as looked:
            shade = looked.page.evaluate("() => getComputedStyle(document.body).backgroundColor")
            sheets[scheme] = shade, printed(looked.page, "A4")
    (light_shade, light), (dark_shade, dark) = sheets["light"], sheets["dark"]
    assert light_shade != dark_shade, "the screen was not dark"
    assert [leaf.flow for leaf in light.leaves] == [leaf.flow for leaf in dark.leaves]
    assert dark.darkest_background() == 255
    assert [
        [(round(char["x0"]), round(char["top"])) for char in leaf.chars] for leaf in light.leaves
    ] == [[(round(char["x0"]), round(char["top"])) for char in leaf.chars] for leaf in dark.leaves]


MARK = """(selector) => {
  const table = document.querySelector(selector);
  const body = table.tBodies[0];
  const rows = [...body.rows];
  while (body.rows.length < 90) for (const row of rows) body.append(row.cloneNode(true));
  [...body.rows].forEach((row, at) => {
    const long = row.cells[row.cells.length - 1];
    for (let line = 0; line < 1 + at % 4; line += 1) long.append(document.createElement("br"), "more words");
    row.cells[0].prepend(`[${at}a]`);
    long.append(`[${at}z]`);
  });
  for (const head of table.tHead.rows[0].cells) head.textContent = "Head";
  return body.rows.length;
}"""
TABLES = {
    "a listing": (reference_pages()[0], ".chart table.listing"),
    "worked examples": (card_pages()["skein-length"], ".checked table.listing"),
}


@words_papers
@pytest.mark.parametrize("kind", TABLES)
def test_a_long_table_repeats_its_head_and_breaks_between_rows(browser, server, kind, paper):
    address, selector = TABLES[kind]
    with looked_at(browser, server, address) as looked:
        rows = looked.page.evaluate(MARK, selector)
        leaves = [leaf.flow for leaf in printed(looked.page, paper).leaves]
    pages_of = {}
    for mark in re.finditer(r"\[(\d+)[az]\]", "\f".join(leaves)):
        pages_of.setdefault(int(mark[1]), []).append("\f".join(leaves)[: mark.start()].count("\f"))
    assert len(pages_of) == rows
    assert not {
        row: where for row, where in pages_of.items() if len(where) != 2 or where[0] != where[1]
    }
    used = {where[0] for where in pages_of.values()}
    assert len(used) >= 3
    assert all("Head" in leaves[number] for number in used)


PAPERED = [
    (card, number)
    for card in all_cards()
    for number, paper in enumerate(card.papers)
    if isinstance(paper, Paper)
]  # labels: test_labels.py
MILLIMETERS = {"A6": (105, 148), "A5": (148, 210), "A4": (210, 297)}


@pytest.mark.parametrize(
    "card, number",
    some_each_day(PAPERED, [f"{card.id}-{card.papers[number].size}" for card, number in PAPERED]),
)
def test_a_card_s_own_paper_is_one_exact_sheet_with_its_cautions(desk, server, card, number):
    """Recipe card, batch sheet and their like: the size to a third of a millimeter, one sheet, nothing under 8 pt, nothing over the edge."""
    desk.goto(server.address + card_pages()[card.id])
    until_live(desk)
    desk.evaluate("() => { window.asked = false; window.print = () => { window.asked = true; }; }")
    desk.locator(f'[data-paper="{number}"]').click()
    until(desk, "() => window.asked")
    cautions = visible_texts(desk, ".sheet-paper .caution")
    sheet = printed(desk, "A4")
    desk.evaluate("() => dispatchEvent(new Event('afterprint'))")
    assert len(sheet.leaves) == 1
    leaf, (wide, high) = sheet.leaves[0], MILLIMETERS[card.papers[number].size]
    assert abs(leaf.width / MM - wide) < 0.3 and abs(leaf.height / MM - high) < 0.3
    assert min(char["size"] for char in leaf.chars) >= SMALLEST
    for char in leaf.chars:
        assert (
            char["x0"] >= 3 * MM
            and char["x1"] <= leaf.width - 3 * MM
            and char["bottom"] <= leaf.height - 3 * MM
        ), words_near(leaf, char)
    assert card.papers[number].title.replace(" ", "") in sheet.flow
    assert cautions and all(squeezed(text) in sheet.flow for text in cautions)
    assert desk.locator(".sheet-paper").count() == 0
