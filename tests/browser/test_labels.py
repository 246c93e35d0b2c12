"""Labels as the printer gets them: each size to 0.3 mm on A4, on Letter and alone, letters of 6 pt and more inside their label, the code read by another program."""

import re
import subprocess
from urllib.parse import quote

import pytest
from playwright.sync_api import expect

from fibercalc.core.label import PAGES, grid
from fibercalc.core.label.face import BOLD, REGULAR
from fibercalc.core.label.sheet import ROUND_GAP
from fibercalc.core.link import canonical_default, link_names
from fibercalc.core.paper import Labels
from fibercalc.core.registry import all_cards, find_card
from fibercalc.sell.pictures.labels import SIZES, STICKER, WITH_CODE

from .addresses import card_pages, some_each_day
from .looking import looked_at
from .paper import MM, PAPERS, printed, squeezed
from .test_card_live import asked, controls
from .waiting import until, until_live

SMALLEST, CLOSE = 6.0, 0.3  # pt; mm
ADDRESS = card_pages()["label"]
PHONE = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True}


@pytest.fixture(scope="module")
def desk(browser, server):
    with looked_at(browser, server, ADDRESS, sparing=False) as looked:
        until_live(looked.page)
        yield looked.page


LENT = {
    key: canonical_default(each, each.default)
    for key, (each, name) in link_names(find_card("label"), {}).items()
    if each.lends and each.default and not each.today
}


def print_labels(page, server, query: str = "", paper: str = "A4"):
    """The card's labels for a link, printed; and what the page said of them. A link says what the example only lends, or it would be left open."""
    if query:
        said = {part.partition("=")[0] for part in query.split("&")}
        query = "&".join(
            [query, *(f"{key}={quote(text)}" for key, text in LENT.items() if key not in said)]
        )
    # As by the way back: the page takes over the link, and Python need not start anew.
    page.evaluate(
        "(url) => { history.pushState(history.state, '', url); dispatchEvent(new"
        " PopStateEvent('popstate')); }",
        server.address + ADDRESS + (f"?v=1&{query}" if query else ""),
    )
    until(page, "() => !document.querySelector('bench-card').hasAttribute('aria-busy')")
    page.evaluate("() => { window.asked = false; window.print = () => { window.asked = true; }; }")
    page.get_by_role("button", name="Print: These labels").click()
    until(page, "() => window.asked")
    sheet = printed(page, paper)
    said = " ".join(page.locator(".do + .said").all_text_contents())
    page.evaluate("() => dispatchEvent(new Event('afterprint'))")
    assert page.locator(".sheet-labels").count() == 0
    return sheet, said


def boxes(leaf, width: float, height: float) -> list[tuple[float, float, float, float]]:
    """Drawn outlines of this size, mm from the top left, in reading order."""
    found = {
        (
            round(each["x0"] / MM, 2),
            round(each["top"] / MM, 2),
            round(each["x1"] / MM, 2),
            round(each["bottom"] / MM, 2),
        )
        for each in leaf.drawn
        if abs(each["width"] / MM - width) < CLOSE and abs(each["height"] / MM - height) < CLOSE
    }
    return sorted(found, key=lambda box: (round(box[1]), box[0]))


def within(chars, left, top, right, bottom):
    return [
        char
        for char in chars
        if left - 0.01 <= char["x0"] / MM
        and char["x1"] / MM <= right + 0.01
        and top - 0.01 <= char["top"] / MM
        and char["bottom"] / MM <= bottom + 0.01
    ]


def decoded(pdf: bytes, tmp_path, dots: int = 200) -> list[str]:
    """The codes that zbar finds on the first page."""
    (tmp_path / "sheet.pdf").write_bytes(pdf)
    subprocess.run(
        [
            "pdftoppm",
            "-r",
            str(dots),
            "-png",
            "-singlefile",
            str(tmp_path / "sheet.pdf"),
            str(tmp_path / "sheet"),
        ],
        check=True,
    )
    return subprocess.run(
        ["zbarimg", "--quiet", "--raw", str(tmp_path / "sheet.png")], capture_output=True, text=True
    ).stdout.split()


def test_only_this_card_prints_labels_yet():
    assert {
        card.id for card in all_cards() if any(isinstance(paper, Labels) for paper in card.papers)
    } == {"label"}


ON_SHEETS = [(kind, page_name) for kind in SIZES for page_name in PAGES]


@pytest.mark.parametrize(
    "kind, page_name",
    some_each_day(ON_SHEETS, [f"{kind}-{page_name}" for kind, page_name in ON_SHEETS], of=3),
)
def test_a_sheet_of_labels_is_true_to_a_third_of_a_millimeter(desk, server, kind, page_name):
    _, width, height = SIZES[kind]
    per_sheet = grid(page_name, width, height, ROUND_GAP if kind == STICKER else 0)
    # One of each number, and so many numbers as a sheet holds; otherwise so many copies as it holds.
    query = f"a={kind}&b={page_name}&" + (
        f"c=1&r={len(per_sheet)}" if kind == STICKER else f"c={len(per_sheet)}"
    )
    sheet, _ = print_labels(desk, server, query)
    assert len(sheet.leaves) == 1
    leaf, (wide, high) = sheet.leaves[0], PAPERS["A4" if page_name == "a4" else "Letter"]
    assert abs(leaf.width / MM - wide) < CLOSE and abs(leaf.height / MM - high) < CLOSE
    found = boxes(leaf, width, height)
    assert len(found) == len(per_sheet)
    for (x, y), (left, top, right, bottom) in zip(per_sheet, found, strict=True):
        assert (
            abs(left - x) < CLOSE
            and abs(top - y) < CLOSE
            and abs(right - x - width) < CLOSE
            and abs(bottom - y - height) < CLOSE
        )
    assert min(char["size"] for char in leaf.chars) >= SMALLEST
    foot = [char for char in leaf.chars if char["top"] / MM > high - 22]
    placed = [char for box in found for char in within(leaf.chars, *box)]
    assert len(placed) == len(leaf.chars) - len(foot), "a letter crosses the edge of its label"
    assert squeezed("Print at 100 %: this bar must measure 100 mm.") in squeezed(
        "".join(char["text"] for char in foot)
    )
    bars = [
        each
        for each in leaf.drawn
        if abs(each["width"] / MM - 100) < CLOSE and each["height"] / MM < 1
    ]
    assert len(bars) == 1 and sheet.darkest_background() == 255
    colors = {tuple(char["non_stroking_color"] or (0,)) for char in leaf.chars}
    assert all(part == 0 for color in colors for part in color), "black only"


@pytest.mark.parametrize("kind", SIZES)
def test_labels_alone_are_pages_of_their_own_size(desk, server, kind):
    _, width, height = SIZES[kind]
    sheet, _ = print_labels(
        desk, server, f"a={kind}&b=alone&c=2" + ("&r=1" if kind == STICKER else "")
    )
    assert len(sheet.leaves) == 2
    for leaf in sheet.leaves:
        assert abs(leaf.width / MM - width) < CLOSE and abs(leaf.height / MM - height) < CLOSE
        assert leaf.chars and min(char["size"] for char in leaf.chars) >= SMALLEST
        assert len(within(leaf.chars, 0, 0, width, height)) == len(leaf.chars)
    assert sheet.leaves[0].flow == sheet.leaves[1].flow


@pytest.mark.parametrize("page_name", (*PAGES, "alone"))
@pytest.mark.parametrize("kind", WITH_CODE)
def test_the_code_is_read_back_and_opens_the_helper_with_this_base(
    desk, new_page, server, tmp_path, kind, page_name
):
    sheet, said = print_labels(desk, server, f"a={kind}&b={page_name}&c=1")
    (link,) = decoded(sheet.pdf, tmp_path)
    assert link == f"{server.address}helper/?v=1&g=100&m=420&c=1#n=Tarrow+Sock&l=WS-14"
    assert link in said and "this machine only" in said
    module = float(re.search(r"squares of ([\d.]+) mm", said)[1])
    assert module >= 0.4
    assert squeezed(link.partition("#")[0].partition("://")[2]) in sheet.flow, "the address to type"
    if page_name == "a4":
        customer = new_page(**PHONE)
        customer.goto(link)
        expect(customer.locator("[data-slot='base']")).to_contain_text("Tarrow Sock · 100 g, 420 m")


def test_small_labels_stickers_and_bottles_carry_no_code(desk, server, tmp_path):
    for kind in set(SIZES) - set(WITH_CODE):
        sheet, said = print_labels(desk, server, f"a={kind}")
        assert decoded(sheet.pdf, tmp_path, 100) == [] and said == ""


def test_a_long_code_leaves_out_the_lot_and_then_the_name_and_says_so(desk, server, tmp_path):
    umlauts = "%C3%BC" * 40  # each is six characters of a link
    sheet, said = print_labels(desk, server, f"a=tag&c=1&d={umlauts}&k=" + "%C3%BC" * 20)
    (link,) = decoded(sheet.pdf, tmp_path, 300)
    assert ("left out of it" in said) == ("l=" not in link) and float(
        re.search(r"squares of ([\d.]+) mm", said)[1]
    ) >= 0.4


def test_an_offset_moves_everything_by_exactly_that(desk, server):
    still, _ = print_labels(desk, server, "a=bottle&c=9")
    moved, _ = print_labels(desk, server, "a=bottle&c=9&ab=2.5mm&ac=-1.5mm")
    before, after = still.leaves[0], moved.leaves[0]
    assert before.flow == after.flow and len(before.drawn) == len(after.drawn)
    for one, other in (
        *zip(before.chars, after.chars, strict=True),
        *zip(before.drawn, after.drawn, strict=True),
    ):
        assert (
            abs((other["x0"] - one["x0"]) / MM - 2.5) < 0.05
            and abs((other["top"] - one["top"]) / MM + 1.5) < 0.05
        )


def test_a_bought_sheet_gets_its_labels_where_it_has_them_and_no_lines(desk, server):
    keys = {name: key for key, (_, name) in link_names(find_card("label"), {}).items()}
    given = {
        "kind": "sticker",
        "copies": "1",
        "sheet": "precut",
        "across": "4",
        "rows": "6",
        "left": "14mm",
        "top": "16.5mm",
        "step_across": "48mm",
        "step_down": "45mm",
        "used": "5",
    }
    sheet, _ = print_labels(
        desk, server, "&".join(f"{keys[name]}={text}" for name, text in given.items())
    )
    (leaf,) = sheet.leaves
    numbers = [char for char in leaf.chars if char["size"] > 30]
    assert leaf.drawn == [] and len(numbers) == 9 + 2 * 3
    # The number 1 stands in the middle of the sixth place: second row, second column.
    assert (
        abs((numbers[0]["x0"] + numbers[0]["x1"]) / 2 / MM - (14 + 48 + 19)) < 0.6
        and 16.5 + 45 < numbers[0]["top"] / MM < 16.5 + 45 + 38
    )


def test_from_the_dark_the_labels_are_the_same(browser, server):
    made = {}
    for scheme in ("light", "dark"):
        with looked_at(browser, server, ADDRESS, sparing=False, color_scheme=scheme) as looked:
            until_live(looked.page)
            made[scheme] = (
                looked.page.evaluate("() => getComputedStyle(document.body).backgroundColor"),
                print_labels(looked.page, server, "a=tag")[0],
            )
    (light_shade, light), (dark_shade, dark) = made["light"], made["dark"]
    assert light_shade != dark_shade and dark.darkest_background() == 255
    for key in ("chars", "drawn"):
        assert [
            (round(each["x0"], 1), round(each["top"], 1), each["non_stroking_color"])
            for each in getattr(light.leaves[0], key)
        ] == [
            (round(each["x0"], 1), round(each["top"], 1), each["non_stroking_color"])
            for each in getattr(dark.leaves[0], key)
        ]


def test_hostile_names_are_text_on_paper_and_stay_inside(desk, server):
    desk.on("dialog", lambda dialog: pytest.fail(f"a dialog: {dialog.message}"))
    name = '<img src=x onerror=alert(1)>"><script>'
    sheet, _ = print_labels(
        desk, server, "a=tag&c=1&d=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E%22%3E%3Cscript%3E"
    )
    assert squeezed(name) in sheet.flow
    assert (
        desk.evaluate(
            "() => document.querySelectorAll('bench-card img, bench-card script, .sheet-labels"
            " img').length"
        )
        == 0
    )


def test_letters_that_the_face_lacks_stay_inside(desk, server):
    sheet, _ = print_labels(
        desk,
        server,
        "a=tag&c=1&d=%E6%9F%93%E3%82%81%E7%B3%B8%20%D0%9F%D1%80%D1%8F%D0%B6%D0%B0%20%F0%9F%A7%B6%F0%9F%A7%B6%F0%9F%A7%B6%F0%9F%A7%B6%F0%9F%A7%B6",
    )
    (box,) = boxes(sheet.leaves[0], 50, 90)
    placed = [char for char in sheet.leaves[0].chars if char["top"] / MM < 275]
    assert len(placed) > 200 and len(within(placed, box[0], 0, box[2], 297)) == len(placed)


def test_letters_at_their_smallest_are_still_six_points(desk, server):
    sheet, _ = print_labels(
        desk,
        server,
        "a=small&c=1&d="
        + "Upland%20Lambswool%20Worsted%20Sock%20Heavy"
        + "&e="
        + "Rusted%20Gate%20on%20Wet%20Slate%20by%20Lamp"
        + "&k=BRACKWEND-2027-LOT-00114",
    )
    (box,) = boxes(sheet.leaves[0], 25, 50)
    placed = within(sheet.leaves[0].chars, *box)
    assert len(placed) > 90 and SMALLEST <= min(char["size"] for char in placed) < 9


def test_no_letter_is_wider_than_its_measure(desk):
    """The table of widths against the face itself, letter by letter, at both weights."""
    for weight, table in ((400, REGULAR), (600, BOLD)):
        over = desk.evaluate(
            """([weight, table]) => {
          const pen = document.createElement("canvas").getContext("2d");
          pen.font = `${weight} 1000px "Atkinson Hyperlegible Next"`;
          const over = [];
          for (const [width, letters] of Object.entries(table)) for (const letter of letters) {
            const is = pen.measureText(letter).width;
            if (is > Number(width) + 0.5 || is < Number(width) - 21) over.push([letter, width, is]);
          }
          return over;
        }""",
            [weight, {str(width): letters for width, letters in table.items()}],
        )
        assert over == [], weight


BASES = {
    "as in the example": {},
    "with most to say": {
        "name": "Brackwend Upland Lambswool Worsted Bulky",
        "length": "41",
        "lot": "BRACKWEND-2027-LOT-00114",
        "price": "1234.5",
    },
}


@pytest.mark.parametrize("typed", BASES.values(), ids=BASES)
def test_the_stand_is_one_sheet_with_its_code_and_every_project(browser, server, tmp_path, typed):
    with looked_at(browser, server, "helper-link/", sparing=False) as looked:
        page = looked.page
        expect(page.locator("[data-slot='code'] svg")).to_be_visible(timeout=40_000)
        for name, text in typed.items():
            page.locator(f"bench-link [name='{name}']").fill(text)
        link = asked("base-link", values=controls(page, "bench-link"), here=server.address)["link"]
        expect(page.locator("bench-link [data-slot='link']")).to_have_text(link)
        page.evaluate(
            "() => { window.asked = false; window.print = () => { window.asked = true; }; }"
        )
        page.get_by_role("button", name="Print the stand, A4").click()
        until(page, "() => window.asked")
        sheet = printed(page, "Letter")
        page.evaluate("() => dispatchEvent(new Event('afterprint'))")
    assert len(sheet.leaves) == 1 and sheet.darkest_background() == 255
    leaf = sheet.leaves[0]
    assert abs(leaf.width / MM - 210) < CLOSE and abs(leaf.height / MM - 297) < CLOSE
    assert min(char["size"] for char in leaf.chars) >= 8
    assert all(
        char["x0"] >= 11 * MM
        and char["x1"] <= leaf.width - 11 * MM
        and char["bottom"] <= leaf.height - 11 * MM
        for char in leaf.chars
    )
    assert decoded(sheet.pdf, tmp_path, 100) == [link]
    for words in (
        typed.get("name", "Dunmel DK"),
        "Sweater, woman",
        "Cable sweater, child",
        "Socks",
        "Triangle shawl",
        "90 in 100 knitters",
    ):
        assert squeezed(words) in sheet.flow, words
