"""The card and its pictures: what is drawn is the draw-down, thread for thread; the eight small cloths; how fast it draws."""

import re
import time

import pytest

from fibercalc.core.problem import BadInputs
from fibercalc.core.registry import find_card
from fibercalc.core.settings import Settings
from fibercalc.core.work import work_card
from fibercalc.weave.cards.cloth_picture.shown import cloths_of, yarns_of
from fibercalc.weave.cards.cloth_picture.worked import warp_runs, weft_runs
from fibercalc.weave.draft.piece import rows_of_piece
from fibercalc.weave.draft.structures import ALL
from fibercalc.weave.pictures.cloth import dashes, shaded, threads_picture

CARD = find_card("cloth-picture")
PATH = re.compile(r'<path d="([^"]*)" fill="([^"]*)"([^>]* transform="matrix[^>]*)></path>')
EIGHT = (
    "plain",
    "waffle",
    "weft-floats",
    "warp-floats",
    "lace",
    "plain",
    "offset-floats",
    "waffle",
)


def case_of(texts):
    worked = work_card(CARD, texts)
    return worked, worked.outcome.case


def eight_cloths():
    """Common practice (no source): eight cloths at once on one warp of a ten-inch rigid heddle, worsted-weight cotton, each with a weft
    of its own, each begun and ended with a hem of fine crochet cotton."""
    texts = {
        "ends": "80",
        "warp": "8 A",
        "sett": "8 per in",
        "beat": "8 per in",
        "draw_in": "10 %",
        "hem": "6",
        "hem_yarn": "J",
        "hem_beat": "16 per in",
        "look": "2",
        "shrink_width": "15 %",
        "shrink_length": "15 %",
        "textured_width": "25 %",
        "textured_length": "25 %",
        "yarns.1.name": "White",
        "yarns.1.color": "#eeeeee",
        "yarns.10.name": "Crochet",
        "yarns.10.color": "#ffffff",
    }
    for number, weave in enumerate(EIGHT, 1):
        texts |= {
            f"pieces.{number}.name": f"Cloth {number}",
            f"pieces.{number}.structure": weave,
            f"pieces.{number}.picks": "76",
            f"pieces.{number}.weft": f"{'BCDEFGHI'[number - 1]}",
            f"yarns.{number + 1}.name": f"Color {number}",
            f"yarns.{number + 1}.color": f"#{number}04080",
        }
    return texts


def drawn_cells(svg, yarns):
    """The picture read back: for each pick (from the first) and end, the color of the yarn seen (the warp's is drawn shaded)."""
    found = {}
    for data, fill, rest in PATH.findall(svg):
        if fill != "none":
            for x, y, wide, high in (
                map(int, box) for box in re.findall(r"M(\d+) (\d+)h(\d+)v(\d+)h-\d+z", data)
            ):
                found |= {
                    (pick, end): fill for pick in range(y, y + high) for end in range(x, x + wide)
                }
            continue
        color = {shaded(yarn.hex): yarn.hex for yarn in yarns}[
            re.search(r'stroke="([^"]*)"', rest)[1]
        ]
        runs = re.search(r'stroke-dasharray="([^"]*)"', rest)
        runs = [int(run) for run in runs[1].split()] if runs else [1, 0]
        shown = [place % 2 == 0 for place, run in enumerate(runs) for _ in range(run)]
        for x, first, last in (map(int, line) for line in re.findall(r"M(\d+) (\d+)V(\d+)", data)):
            found |= {
                (pick, x): color
                for pick in range(first, last)
                if shown[(pick - first) % len(shown)]
            }
    return found


@pytest.mark.parametrize("number", range(1, 9))
def test_every_thread_of_the_picture_is_a_thread_of_the_plan(number):
    """Read back from the SVG, every crossing shows the color of the thread that the draw-down has on top."""
    worked, case = case_of(eight_cloths())
    cloth, yarns = (cloths_of(case)[number - 1], yarns_of(case))
    picture = threads_picture(cloth, yarns, cloth.washed, "washed")
    cells = drawn_cells(picture.svg, yarns)
    assert (
        len(cells) == 80 * 76
        and cloth.ends == case.ends == 80
        and cloth.picks == case.pieces[number - 1].picks == 76
    )
    warp = [color for color, count in warp_runs(case) for _ in range(count)]
    weft = [
        color for color, count in weft_runs(case, case.pieces[number - 1]) for _ in range(count)
    ]
    for pick, row in enumerate(rows_of_piece(cloth.sections, 80)):
        for end, sign in enumerate(row):
            assert cells[pick, end] == yarns[warp[end] if sign == "1" else weft[pick]].hex, (
                pick,
                end,
            )


def test_eight_cloths_each_have_their_own_weft():
    worked, case = case_of(eight_cloths())
    yarns = yarns_of(case)
    for number in range(1, 9):
        names = {yarns[color].name for color, _ in weft_runs(case, case.pieces[number - 1])}
        assert names == {f"{'BCDEFGHI'[number - 1]} Color {number}", "J Crochet"}
    table = next(each for each in worked.tables() if each.title == "Threads by color")
    assert table.rows[0] == ("Warp, ends", "80 A", "80") and table.rows[3] == (
        "3 Cloth 3, picks",
        "64 D, 12 J",
        "76",
    )
    assert (
        table.rows[-1]
        == ("All picks", "64 B, 64 C, 64 D, 64 E, 64 F, 64 G, 64 H, 64 I, 96 J", "608")
        and "J Crochet" in table.note
    )


def test_the_whole_run_stands_on_one_paper():
    worked, _ = case_of(eight_cloths())
    table = CARD.papers[1].tables(worked.outcome)[0]
    assert (
        len(table.rows) == 8
        and table.rows[1] == ("2 Cloth 2", "Waffle, 1 stick", "6 J hem; 64 C; 6 J hem", "☐")
        and "J Crochet" in table.note
    )


def test_waffle_of_the_eight_comes_out_smaller():
    """By hand: 80 / 8 x 0.9 = 9 in; 25 % washed out leaves 6.75 in. Length 64 / 8 + 12 / 16 = 8.75 in, then 6.5625."""
    worked, case = case_of(eight_cloths())
    waffle, plain = (cloths_of(case)[1], cloths_of(case)[0])
    assert waffle.loom == pytest.approx((22.86, 22.225)) == plain.loom
    assert (
        waffle.washed == pytest.approx((6.75 * 2.54, 6.5625 * 2.54))
        and plain.washed[0] > waffle.washed[0]
    )


def test_the_pick_list_of_the_waffle_fits_the_loom():
    """The hem ends in the shed that the weave does not begin with, and the list is four lines at most."""
    worked, _ = case_of(eight_cloths())
    sheds, picks = worked.tables()[:2]
    assert [row[0] for row in sheds.rows] == list("123456") and "take up 1, leave 1" in sheds.note
    assert [row[:2] for row in picks.rows] == [
        ("1 to 6", "6 J Crochet, hem"),
        ("7 to 70", "64 C Color 2"),
        ("71 to 76", "6 J Crochet, hem"),
    ]
    striped, _ = case_of(eight_cloths() | {"pieces.2.weft": "8 C, 4 D"})
    paper = CARD.papers[0].tables(striped.outcome)
    assert paper[1].rows[1][1:] == (
        "5 × (8 C Color 2, 4 D Color 3)",
        "1 to 6, 10 times",
        "☐" * 5,
    ) and paper[1].rows[2][:3] == ("67 to 70", "4 C Color 2", "goes on with 1")


def test_counts_in_the_picture_are_those_of_the_scenario():
    """The towels: 160 ends, 384 picks, every color counted, and the picture says so."""
    worked, case = case_of({})
    alt = worked.pictures()[1].alt
    assert (
        "160 ends by 384 picks" in alt
        and "A Natural 120 ends and 318 picks" in alt
        and "B Slate 40 ends and 0 picks" in alt
        and "C Rust 0 ends and 66 picks" in alt
    )
    assert all(cloth.ends == 160 and cloth.picks == 384 for cloth in cloths_of(case))


def matrices(svg):
    """Across and up of each grid of a picture, each once."""
    return list(
        dict.fromkeys(
            (float(across), float(up))
            for across, up in re.findall(r"matrix\(([\d.]+) 0 0 -([\d.]+) ", svg)
        )
    )


@pytest.mark.parametrize("state", ["washed", "loom"])
def test_the_cloth_has_the_proportions_of_its_size(state):
    worked, case = case_of(eight_cloths() | {"state": state, "pieces.2.picks": "150"})
    cloth = cloths_of(case)[1]
    ((across, up),) = matrices(worked.pictures()[1].svg)
    wide, high = getattr(cloth, state)
    assert across * cloth.ends / (up * cloth.picks) == pytest.approx(wide / high, rel=1e-3)


def test_all_pieces_are_drawn_at_one_scale():
    """Waffle shrinks more, so its threads stand closer; every cell over its own size is the same scale."""
    worked, case = case_of(eight_cloths())
    cloths = cloths_of(case)
    expected = {
        (size[0] / cloth.ends, size[1] / cloth.picks)
        for cloth in cloths
        for size in (cloth.loom, cloth.washed)
    }
    found = matrices(worked.pictures()[0].svg)
    scale = max(across for across, _ in found) / max(across for across, _ in expected)
    assert len(found) == len(expected) == 3
    for (across, up), (wide, high) in zip(sorted(found), sorted(expected)):
        assert (across / scale, up / scale) == pytest.approx((wide, high), rel=1e-3)


def test_inches_are_spoken_to_those_who_work_in_them():
    worked = work_card(CARD, {}, Settings("point", "us"))
    said = " ".join(worked.sentences()).replace("\u00a0", " ")
    assert "12.7 in wide" in said and "0.394 in" in said and " cm" not in said
    assert (
        "washed: 12.7 × 24.8 in" in worked.pictures()[1].alt and "20 in" in worked.pictures()[0].svg
    )


def test_a_float_as_long_as_the_limit_is_within_it():
    """By hand: warp floats over 3 picks at 4 per cm span exactly 1 cm."""
    texts = {
        f"pieces.{number}.{name}": text
        for number in (1,)
        for name, text in (
            ("name", "One"),
            ("structure", "weft-floats"),
            ("picks", "100"),
            ("weft", "A"),
        )
    }
    say = (
        work_card(CARD, texts | {"beat": "4 per cm", "sett": "6 per cm"})
        .sentences()[1]
        .replace("\u00a0", " ")
    )
    assert "within your 1 cm" in say and "3 picks of warp in One, on the back" in say
    assert (
        "longer than"
        in work_card(CARD, texts | {"beat": "3.9 per cm", "sett": "6 per cm"}).sentences()[1]
    )


def test_a_weave_of_ones_own_is_woven_and_counted():
    """The stick takes up one slot and leaves three. By hand: on edge the weft lies over 7 ends; where it comes from pick 5 to the right edge, it lies over 1 more there: 8."""
    texts = {
        "pieces.1.structure": "own",
        "pieces.1.name": "One",
        "pieces.1.picks": "90",
        "take": "1",
        "leave": "3",
        "hem": "0",
    }
    texts |= {"pieces.1.weft": "A", "sheds": "edge, u e UP down"}
    worked, case = case_of(texts)
    assert case.pieces[0].repeat == ("10000000", "01010101", "10000000", "01010101", "10101010")
    assert (
        worked.outcome.value("longest") == 8
        and worked.outcome.value("where") == "8 ends of weft in One, around an edge"
    )
    assert worked.tables()[2].rows[0][2:4] == ("7, 1", "8")


@pytest.mark.parametrize(
    "texts, line",
    [
        ({"look": "6"}, "Piece to look at: 6 given, but there are 5."),
        (
            {"hem": "192"},
            "Hems of 192 picks: two of them leave nothing of the 384 picks of piece 1; give fewer.",
        ),
        (
            {"warp": "10 A, 4 Q"},
            "Warp: “4 Q” is not understood; write threads and yarn, such as 10 A, 4 B.",
        ),
        (
            {"warp": ""},
            (
                "Warp, stripe by stripe from the left: nothing given; give up to 60 characters of"
                " text."
            ),
        ),
        (
            {"hem_yarn": "Z"},
            "Yarn of the hems: “Z” is not understood; write threads and yarn, such as 10 A, 4 B.",
        ),
        (
            {"sheds": "up, sideways"},
            (
                "Own pick-up: “sideways” is no shed; write up, down, edge, flat, or their first"
                " letters."
            ),
        ),
    ],
)
def test_what_cannot_be_is_said_in_one_line(texts, line):
    with pytest.raises(BadInputs) as caught:
        work_card(CARD, texts)
    assert [problem.text for problem in caught.value.problems] == [line]


@pytest.mark.parametrize("weave", [each.key for each in ALL])
def test_400_by_400_threads_draw_fast(weave):
    """All pictures within 30 ms of the processor here, a thread of each color in turn, so that WebAssembly has its 150 ms. Page weight stays small."""
    texts = {
        "ends": "400",
        "pieces.1.structure": weave,
        "pieces.1.picks": "400",
        "warp": "A B",
        "pieces.1.weft": "C A",
    }
    worked, case = case_of(texts)
    took = []
    for _ in range(5):
        began = time.process_time()
        pictures = worked.pictures()
        took.append(time.process_time() - began)
    assert min(took) < 0.030, f"{1000 * min(took):.1f} ms"
    assert (
        "400 ends by 400 picks" in pictures[1].alt
        and sum(len(picture.svg) for picture in pictures) < 400_000
    )


def test_more_threads_than_a_screen_shows_are_cut_and_said():
    worked, _ = case_of({"ends": "1200", "pieces.1.picks": "3000"})
    picture = worked.pictures()[1]
    assert (
        "400 ends by 400 picks" in picture.alt
        and "400 ends × 400 picks of 1200 × 3000" in picture.svg
    )


def test_warp_on_top_is_a_shade_darker():
    """By hand: 0.84 of 255, 128 and 0, rounded."""
    assert shaded("#ff8000") == "#d66c00"


def test_dashes_have_an_even_count_or_they_would_change_about():
    """SVG reads an odd list twice over, shown and hidden changed about."""
    assert (
        dashes("1") == []
        and dashes("10") == [1, 1]
        and dashes("01") == [0, 1, 1, 0]
        and dashes("1101") == [2, 1, 1, 0]
    )
    assert all(
        len(dashes(f"{number:06b}")) % 2 == 0 and sum(dashes(f"{number:06b}")) in (0, 6)
        for number in range(64)
    )
