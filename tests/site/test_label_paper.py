"""Labels and the stand across the boundary: where a code leads, what is said of it, what is refused, and what waits for the library of codes."""

import json
import re
import sys
from datetime import date

import pytest

from fibercalc.core.label import PAGES
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.site import helper
from fibercalc.site.boundary import handle
from fibercalc.site.label_paper import labels_paper
from fibercalc.site.qr import code_of, code_shapes, module_in
from fibercalc.workbook.base_link import BaseLink, read_link

HERE = "https://brackwend.example/book/"
CARD = find_card("label")


def asked(do: str, **request) -> dict:
    return json.loads(handle(json.dumps({"id": 1, "do": do} | request)))


def labels(here: str = HERE, **values) -> dict:
    reply = asked("sheet", card="label", paper=0, values=values, here=here)
    assert "ok" in reply, reply
    return reply["ok"]


def test_a_code_leads_to_the_helper_with_this_base():
    made = labels(kind="tag", weight_class="1", lot="WS-14")
    link = re.search(r"leads to (\S+) and", made["said"])[1]
    query, _, fragment = link.partition("?")[2].partition("#")
    assert made["kind"] == "labels" and link.startswith(f"{HERE}helper/?")
    assert read_link(query, fragment) == BaseLink("base", 100.0, 420.0, "1", "Tarrow Sock", "WS-14")
    assert "this machine" not in made["said"] and "brackwend.example/book/helper/" in made["html"]


def test_the_code_carries_what_the_label_promises():
    """420 m +/- 6 m has its low end at 420 - 0.95 x 6 = 414.3 m, which is 453.1 yd: label and helper both start from there."""
    made = labels(kind="tag", length="420 +/- 6")
    assert "m=414.3" in made["said"] and "453\u00a0yd" in made["html"] and "459" not in made["html"]


def test_a_book_on_this_machine_is_said():
    assert "this machine only" in labels(here="http://127.0.0.1:8000/", kind="band")["said"]


@pytest.mark.parametrize("here", ["", "file:///home/x/index.html", "javascript:alert(1)"])
def test_without_an_address_there_is_one_clear_line(here):
    made = labels(here=here, kind="band")
    assert (
        made["html"] == ""
        and made["refused"]
        == "The code cannot be made: where the book stands is not known. Open it at its address on"
        " the web."
    )
    assert labels(here=here, kind="small")["html"], "a label without a code needs none"


def test_a_base_that_the_helper_cannot_answer_for_is_said():
    assert (
        labels(kind="tag", mass="1", length="1")["refused"]
        == "The code cannot be made. The helper answers for 5 to 2000 g in a skein."
    )
    assert labels(kind="small", mass="1", length="1")["html"]


def test_a_long_link_loses_its_lot_then_its_name_before_its_squares():
    far = "https://a-very-long-host-name-of-a-studio.example/" + "x" * 60 + "/"
    made = labels(here=far, kind="tag", name="ü" * 40, lot="ü" * 24)
    assert (
        "Name and lot are left out" in made["said"]
        and "#" not in re.search(r"leads to (\S+) and", made["said"])[1]
    )
    assert float(re.search(r"squares of ([\d.]+) mm", made["said"])[1]) >= 0.4
    assert "The lot is left out" in labels(kind="tag", name="ü" * 20, lot="ü" * 20)["said"]


def test_without_the_library_of_codes_the_reply_says_what_is_needed(monkeypatch):
    monkeypatch.setitem(sys.modules, "segno", None)
    reply = asked("sheet", card="label", paper=0, values={"kind": "band"}, here=HERE)
    assert reply["problem"] == {
        "kind": "needs",
        "packages": ["segno"],
        "text": "segno is needed first",
    }
    assert asked("sheet", card="label", paper=0, values={"kind": "bottle"}, here=HERE)["ok"]["html"]


def test_the_shapes_are_the_code_s_own_squares():
    code = code_of("https://brackwend.example/helper/?v=1&g=100&m=420")
    drawn = re.search(r' d="([^"]+)"', code_shapes(code, 3, 5, 28))[1]
    dark = {
        (int(x) + step, int(y))
        for x, y, wide in re.findall(r"M(\d+) (\d+)h(\d+)v1", drawn)
        for step in range(int(wide))
    }
    assert dark == {
        (x + 4, y + 4)
        for y, row in enumerate(code.matrix)
        for x, module in enumerate(row)
        if module
    }
    assert module_in(code, 28) == pytest.approx(28 / (len(code.matrix) + 8))


@pytest.mark.parametrize("page", (*PAGES, "alone"))
def test_hostile_words_stay_text(page):
    hostile = '<img src=x onerror=1>"&'
    made = labels(kind="tag", page=page, name=hostile, maker=hostile, care_1=hostile, lot=hostile)
    assert (
        "<img" not in made["html"]
        and "&lt;img" in made["html"]
        and set(re.findall(r"<(\w+)", made["html"]))
        <= {"div", "svg", "g", "rect", "circle", "line", "path", "text"}
    )


def test_a_card_that_does_not_answer_prints_none():
    made = labels(kind="sticker", first="5", last="4")
    assert made["html"] == "" and "Last number" in made["refused"]


def test_the_day_and_the_bar_stand_on_the_sheet():
    html = labels_paper(work_card(CARD, {"kind": "small"}), 0, HERE, date(2027, 1, 11))["html"]
    assert (
        "this bar must measure 100 mm." in html
        and "Mon 11 Jan 2027" in html
        and 'class="bar"' in html
    )
    assert (
        "bar"
        not in labels_paper(work_card(CARD, {"kind": "small", "page": "alone"}), 0, HERE)["html"]
    )


BASE = {
    "name": "Dunmel DK",
    "mass": "100",
    "length": "230",
    "weight_class": "3",
    "lot": "14",
    "price": "24.5",
}


def test_the_stand_has_the_helper_s_own_counts():
    made = asked("stand", values=BASE, here=HERE)["ok"]
    assert (
        made["refused"] == ""
        and "€24.50 a skein" in made["html"]
        and "Lot 14" in made["html"]
        and "brackwend.example/book/helper/" in made["html"]
    )
    phrases = helper.phrases()
    for project in helper.projects():
        row = re.search(rf">{re.escape(project.label)}</th><td>(.*?)</td>", made["html"])[1]
        counts = [int(each) for each in re.findall(r"<b>(\d+)</b>", row)]
        assert counts == [
            helper.say(helper.work(100, 230, project.key, size.key), "90", phrases)["count"]
            for size in project.sizes
        ]
        assert counts == sorted(counts) or project.key == "cowl"


def test_the_stand_says_what_is_wrong():
    assert (
        "answers for"
        in asked("stand", values=BASE | {"mass": "2000", "length": "5"}, here=HERE)["ok"]["refused"]
    )
    assert asked("stand", values=BASE | {"mass": "x"}, here=HERE)["ok"]["html"] == ""
