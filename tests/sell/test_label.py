"""Labels before they are printed: what they promise, that words stay inside, what is missing, what is refused, and how sheets are filled."""

import re
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import fibercalc
from fibercalc.core.card import CHOICE
from fibercalc.core.label import PAGES, Area, Block, TooLong, fits_on, grid, laid_out
from fibercalc.core.label.face import MM_PER_POINT, text_width
from fibercalc.core.label.label import FALL, RISE, fitted, wrapped
from fibercalc.core.label.sheet import EDGE, FOOT, Precut, Sheets, has_foot, leaves
from fibercalc.core.problem import BadInputs, OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.settings import Settings
from fibercalc.core.work import work_card
from fibercalc.sell.label_text import hazards, length_words, mass_words, missing, shares_of
from fibercalc.sell.pictures.labels import BAND, BOTTLE, CARE, KIT, PRICE, SHELF, SIZES, SMALL, STICKER, TAG, WITH_CODE, day_sticker

CARD = find_card("label")
KINDS = tuple(SIZES)
YARD, OUNCE = 0.9144, 28.349523125  # exact, typed again here


def finished(texts=None, settings_=None):
    """The sheets that would be printed."""
    worked = work_card(CARD, texts or {}, settings_, named=texts)
    return CARD.papers[0].sheets(worked.outcome)


def words(texts) -> list[str]:
    return [line.words for laid, _ in finished(texts).labels for line in laid.lines]


def refused(texts) -> str:
    with pytest.raises(BadInputs) as error:
        fibercalc.work("label", texts)
    assert len(error.value.problems) == 1 and "\n" not in error.value.problems[0].text
    return error.value.problems[0].text


def test_the_sizes_are_those_of_the_release():
    assert {kind: SIZES[kind][1:] for kind in (BAND, TAG, SMALL, STICKER, BOTTLE, SHELF, CARE, KIT)} == {
        BAND: (40, 210), TAG: (50, 90), SMALL: (25, 50), STICKER: (38, 38), BOTTLE: (50, 70), SHELF: (62, 20), CARE: (85, 55), KIT: (105, 148)}


@settings(max_examples=300, deadline=None)
@given(length=st.floats(0, 20_000), mass=st.floats(0, 20_000))
def test_no_unit_ever_promises_more_than_there_is_and_none_gives_a_whole_step_away(length, mass):
    yards, meters = (int(text.split("\u00a0")[0]) for text in length_words(length))
    grams, ounces = mass_words(mass)
    grams, ounces = int(grams.split("\u00a0")[0]), float(ounces.split("\u00a0")[0].replace(",", ""))
    for printed, step, there in ((yards * YARD, YARD, length), (meters, 1, length), (grams, 1, mass), (ounces * OUNCE, OUNCE / 10, mass)):
        assert printed <= there * (1 + 2e-9) + 1e-9
        assert printed + step > there - 1e-6


@settings(max_examples=60, deadline=None)
@given(length=st.floats(5, 5000), rough=st.floats(0, 0.2))
def test_a_rough_length_prints_its_low_end(length, rough):
    said = words({"kind": TAG, "length": f"{length:.3f} m +/- {length * rough:.3f} m"})
    yards = int(re.search(r"(\d+)\u00a0yd", " ".join(said))[1])
    # The low end of the 95 % range of one uniform input lies 0.95 of its half-width down.
    assert yards * YARD <= length - 0.95 * length * rough + 0.01


def test_band_tag_and_care_card_say_all_of_it_and_the_small_label_its_four_things():
    for kind in WITH_CODE:
        said = " ".join(words({"kind": kind}))
        for part in ("Tarrow", "Sock", "Wet Slate", "75 % superwash wool,", "25 % nylon", "459\u00a0yd · 420\u00a0m", "100\u00a0g · 3.5\u00a0oz", "Lot WS-14", "Do not bleach."):
            assert part in said, (kind, part)
        assert len(finished({"kind": kind}).labels[0][0].label.codes) == 1
    small = finished({"kind": SMALL}).labels[0][0]
    assert " ".join(line.words for line in small.lines) == "Tarrow Sock Wet Slate 100\u00a0g 459\u00a0yd Lot WS-14" and not small.label.codes


def test_a_sticker_says_its_number_and_its_set_only():
    sheets = finished({"kind": STICKER, "first": "1", "last": "12", "copies": "26", "of_set": "Twelve Lamps"})
    assert sheets.count == 312 and [copies for _, copies in sheets.labels] == [26] * 12
    assert [[line.words for line in laid.lines] for laid, _ in sheets.labels] == [[str(number), "Twelve Lamps"] for number in range(1, 13)]


def test_a_kit_card_has_its_parts_on_their_weekdays():
    # 5 March 2027 is a Friday; the Culvert Stole's five parts come a week apart.
    said = words({"kind": KIT})
    assert said[-5:] == ["Part 1: Fri 5 Mar 2027", "Part 2: Fri 12 Mar 2027", "Part 3: Fri 19 Mar 2027", "Part 4: Fri 26 Mar 2027", "Part 5: Fri 2 Apr 2027"] and "Culvert Stole" in said
    assert words({"kind": KIT, "parts": "12", "every": "92"})[-1].startswith("Part 12: ")


def test_the_dunmel_label_keeps_its_yard():
    assert "251\u00a0yd · 230\u00a0m" in words({"kind": TAG, "name": "Dunmel DK", "length": "230 m"})


def inside(laid) -> None:
    """Every line's box lies within its label, by widths that are never too small."""
    label = laid.label
    for line in laid.lines:
        left = line.x - (line.wide / 2 if line.anchor == "middle" else 0)
        top, bottom = line.y - RISE * line.size * MM_PER_POINT, line.y + FALL * line.size * MM_PER_POINT
        if label.round:
            middle = label.width / 2
            for x in (left, left + line.wide):
                for y in (top, bottom):
                    assert (x - middle) ** 2 + (y - middle) ** 2 <= middle**2, line
        else:
            assert 1.4 <= left and left + line.wide <= label.width - 1.4 and 1 <= top and bottom <= label.height - 0.6, line
        assert line.size >= 6.0, line
    boxes = sorted(((line.y - RISE * line.size * MM_PER_POINT, line.y + FALL * line.size * MM_PER_POINT, line.x, line.anchor) for line in laid.lines if line.x < 30), key=lambda box: box[:2])
    for above, below in pairwise(box for box in boxes):
        assert above[1] <= below[0] + 0.35, (above, below)


@pytest.mark.parametrize("kind", KINDS)
def test_the_example_s_words_stay_inside(kind):
    for laid, _ in finished({"kind": kind}).labels:
        inside(laid)


@settings(max_examples=150, deadline=None)
@given(kind=st.sampled_from(KINDS), data=st.data())
def test_any_words_stay_inside_or_are_refused_in_one_line(kind, data):
    letters = st.text(st.characters(blacklist_categories=("Cc", "Cf", "Cs", "Co", "Cn")), min_size=1, max_size=64) | st.text("WM m", min_size=1, max_size=64)
    texts = {"kind": kind}
    for name in ("name", "color", "maker", "lot", "care_1", "care_2", "origin", "of_set", "stock", "jar", "kit"):
        texts[name] = data.draw(letters)[:CARD.item(name).longest]
    try:
        sheets = finished(texts)
    except BadInputs as error:
        assert all("\n" not in problem.text and problem.text.endswith(".") for problem in error.problems)
        return
    for laid, _ in sheets.labels:
        inside(laid)


def test_a_long_name_gets_smaller_letters_and_the_card_says_so():
    long = "Brackwend Upland Lambswool Worsted Sock"
    assert any("in smaller letters than usual: name" in note for note in fibercalc.work("label", {"kind": TAG, "name": long})["notes"])
    assert all("smaller" not in note for note in fibercalc.work("label", {"kind": TAG})["notes"])


def test_what_fits_in_no_size_is_refused_with_its_name_and_field():
    text = refused({"kind": SMALL, "name": "W" * 40, "color": "W" * 40, "lot": "W" * 24})
    assert text.startswith("Name: it does not fit on 25 × 50 mm")
    with pytest.raises(TooLong, match="Price"):
        laid_out(type(finished().labels[0][0].label)("x", 20, 5, (Area(0, 0, 20, 5, (Block("Price", "W" * 40, 12, lines=1),)),)))


def test_refusals_are_one_clear_line():
    assert refused({"kind": STICKER, "first": "5", "last": "4"}) == "Last number: 4 is before the first, 5."
    assert refused({"fiber": "75 % wool, 20 % nylon"}) == "Fiber content: the shares come to 95 %; on a label they must come to 100 %."
    assert "600 at a time" in refused({"kind": STICKER, "last": "100", "copies": "7"})
    assert "1.5 mm at most" in refused({"page": "alone", "right": "2 mm"})
    assert "no more than 100 %" in refused({"kind": BOTTLE, "stock": "vinegar", "contents": [{"what": "acetic", "share": "60"}, {"what": "formic", "share": "60"}]})


def test_fiber_that_is_not_known_is_an_answer():
    assert shares_of("made of undetermined fiber content") == () and shares_of("33,3 % silk, 66.7 % wool") == (33.3, 66.7)
    assert "Fiber not known" in " ".join(words({"kind": TAG, "fiber": "Fiber not known"}))
    with pytest.raises(OutOfRange):
        shares_of("98 % wool")


def test_what_a_label_lacks():
    assert missing({"fiber": "wool", "maker": "x", "origin": " ", "mass": "100 g", "length": "420 m", "care": "y"}) == ("origin", "lot")
    said = {"kind": TAG, "maker": "", "origin": "Ardland", "fiber": "100 % wool", "lot": "7", "care_1": "Hand wash."}
    table = work_card(CARD, said).tables()[0]
    assert [row[:2] for row in table.rows if row[1] == "missing"] == [("Maker’s or seller’s name, or registered number", "missing")]
    assert "Made in Ardland" in " ".join(words({"kind": TAG, "origin": "Ardland"}))


def test_hazards_come_from_the_published_limits():
    # Acetic acid: 10 % and more is skin and eye irritation (CLP Annex VI, specific limits), 25 % and more burns.
    assert [line[:4] for line in hazards({"acetic": 12}).lines] == ["H315", "H319"] and hazards({"acetic": 12}).signal == "Warning"
    assert hazards({"acetic": 30}).lines[0].startswith("H314") and hazards({"acetic": 30}).signal == "Danger"
    assert hazards({"acetic": 5}).signal == "none" and hazards({"acetic": 5}).lines == ()
    unknown = hazards({"dye-unknown": 1})
    assert unknown.asks and unknown.lines[-1] == "(H317, H334: until its data sheet says otherwise.)"
    said = " ".join(words({"kind": BOTTLE}))
    for part in ("navy", "1 % stock: 1 g in 100\u00a0mL", "Made Mon 11 Jan 2027", "Danger", "H317 May cause", "safety data sheet comes first"):
        assert part in said, part


def test_the_number_style_and_the_money_are_the_user_s():
    sheets = finished({"kind": PRICE, "price": "27.5"}, Settings("comma", "both", "kr"))
    said = " ".join(line.words for line in sheets.labels[0][0].lines)
    assert "27,50\u00a0kr" in said and "3,5\u00a0oz" in said


# How sheets are filled, worked by hand: usable A4 is 194 x 267 mm, Letter 199.9 x 249.4 mm.
@pytest.mark.parametrize("page, kind, across, down", [("a4", BAND, 4, 1), ("letter", BAND, 4, 1), ("a4", TAG, 3, 2), ("letter", TAG, 3, 2), ("a4", SMALL, 7, 5), ("letter", SMALL, 7, 4), ("a4", BOTTLE, 3, 3),
                                                      ("letter", BOTTLE, 3, 3), ("a4", SHELF, 3, 13), ("letter", SHELF, 3, 12), ("a4", PRICE, 1, 3), ("letter", PRICE, 1, 3)])
def test_so_many_to_a_sheet(page, kind, across, down):
    assert fits_on(page, *SIZES[kind][1:]) == (across, down)


@pytest.mark.parametrize("page, across, down", [("a4", 4, 6), ("letter", 5, 6)])
def test_round_ones_keep_two_millimeters_apart(page, across, down):
    assert fits_on(page, 38, 38, 2) == (across, down)
    places = grid(page, 38, 38, 2)
    assert len(places) == across * down and places[1][0] - places[0][0] == pytest.approx(40)


@pytest.mark.parametrize("page", PAGES)
@pytest.mark.parametrize("kind", KINDS)
def test_every_place_lies_within_the_edges_and_over_the_foot(page, kind):
    _, width, height = SIZES[kind]
    for x, y in grid(page, width, height):
        assert EDGE - 1e-9 <= x and x + width <= PAGES[page][0] - EDGE + 1e-9 and EDGE <= y and y + height <= PAGES[page][1] - EDGE - FOOT + 1e-9


@settings(max_examples=40, deadline=None)
@given(right=st.floats(-6, 6), down=st.floats(-6, 6), copies=st.integers(1, 60), page=st.sampled_from(("a4", "letter", "alone")))
def test_an_offset_moves_everything_by_exactly_that(right, down, copies, page):
    laid = laid_out(day_sticker(3, "Twelve Lamps"))
    still, moved = (leaves(Sheets(page, ((laid, copies),), *by)) for by in ((0.0, 0.0), (right, down)))
    assert sum(map(len, still)) == copies
    for leaf, other in zip(still, moved, strict=True):
        for (_, x, y), (_, moved_x, moved_y) in zip(leaf, other, strict=True):
            assert moved_x - x == pytest.approx(right) and moved_y - y == pytest.approx(down)


STICKERS = {"kind": STICKER, "sheet": "precut", "across": "4", "rows": "6", "left": "14 mm", "top": "16.5 mm", "step_across": "48 mm", "step_down": "45 mm"}


def test_a_bought_sheet_is_filled_by_its_measures_and_used_places_are_left_out():
    sheets = finished(STICKERS | {"copies": "2", "used": "5"})  # 24 stickers, 19 places left: two sheets
    first, second = leaves(sheets)
    assert len(first) == 19 and len(second) == 5 and not has_foot(sheets)
    # The sixth place of four to a row: second row, second column.
    assert first[0][1:] == pytest.approx((14 + 48, 16.5 + 45)) and second[0][1:] == pytest.approx((14, 16.5))
    assert fibercalc.work("label", STICKERS | {"copies": "2", "used": "5"})["results"]["sheets"]["value"] == 2


def test_the_bar_stays_where_a_bought_sheet_leaves_it_room():
    laid = laid_out(day_sticker(1, "x"))
    # A4 less edge and foot is 275 mm: the last row of 38 mm may begin at 237 mm.
    assert has_foot(Sheets("a4", ((laid, 1),), precut=Precut(1, 1, 10, 237, 0, 0))) and not has_foot(Sheets("a4", ((laid, 1),), precut=Precut(1, 1, 10, 237.5, 0, 0)))


def test_a_bought_sheet_that_cannot_be_is_refused():
    assert refused(STICKERS | {"step_across": "37 mm"}) == "From one label to the next, across: 37 mm, but the label is 38 mm; they would overlap. Measure from edge to the same edge."
    assert refused(STICKERS | {"page": "letter"}) == "The sheet: its labels end at 279.5 mm, and the paper is 279.4 mm high; check the measures."
    assert refused(STICKERS | {"used": "24"}) == "Places already used: the sheet has 24."


@given(text=st.text(max_size=80), width=st.floats(5, 60), size=st.floats(6, 40), bold=st.booleans())
def test_wrapping_loses_no_letter_and_keeps_to_the_width(text, width, size, bold):
    lines = wrapped(text, width, size, bold)
    assert "".join(lines).replace(" ", "") == text.replace(" ", "")
    assert all(text_width(line, size, bold) <= width or len(line) == 1 for line in lines)


def test_a_long_lot_breaks_after_its_hyphens():
    assert wrapped("Lot BRACKWEND-2027-LOT-00114", 21, 8) == ["Lot", "BRACKWEND-", "2027-LOT-", "00114"]


def test_letters_shrink_no_further_than_they_must():
    lines, shrunk = fitted(Area(0, 0, 40, 20, (Block("Name", "Tarrow Sock", 12, lines=1),)))
    assert lines[0].size == 12 and shrunk == []
    lines, shrunk = fitted(Area(0, 0, 20, 20, (Block("Name", "Tarrow Sock", 12, lines=1),)))
    assert shrunk == ["Name"] and lines[0].wide <= 20 < text_width("Tarrow Sock", lines[0].size + 0.26)


def test_nothing_is_set_under_six_points():
    words_ = "Tarrow Sock"
    with pytest.raises(TooLong):
        fitted(Area(0, 0, text_width(words_, 6.0), 20, (Block("Name", words_, 12, lines=1),)))
    lines, _ = fitted(Area(0, 0, text_width(words_, 6.2), 20, (Block("Name", words_, 12, lines=1),)))
    assert 6.0 <= lines[0].size <= 6.2


def test_the_picture_is_the_label():
    for kind in KINDS:
        picture = work_card(CARD, {"kind": kind}).pictures()[0]
        assert picture.svg.count("<svg") >= 2 and "at its true proportions" in picture.alt
        views = re.findall(r'<svg x="[\d.]+" y="[\d.]+" width="([\d.]+)" height="([\d.]+)" viewBox="0 [\d.]+ ([\d.]+) ([\d.]+)"', picture.svg)
        assert views
        for wide, high, mm_wide, mm_high in (map(float, view) for view in views):
            assert wide / mm_wide == pytest.approx(high / mm_high, rel=0.002), "not true proportions"


def test_hostile_words_stay_text():
    hostile = '<img src=x onerror=alert(1)>"&'
    picture = work_card(CARD, {"kind": TAG, "name": hostile[:40]}).pictures()[0]
    assert "<img" not in picture.svg and "&lt;img" in picture.svg
    assert CARD.item("kind").kind == CHOICE
