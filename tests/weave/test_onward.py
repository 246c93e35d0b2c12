"""From the warp plan to the picture, the leftovers and the hours: the same threads, and nothing typed twice."""

import pytest

from fibercalc.core.link import query_of_texts, read_query
from fibercalc.core.onward import ways_on
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.weave.cards.cloth_picture.shown import cloths_of
from fibercalc.weave.cards.warp_plan.worked import fine_hems

PLAN = find_card("warp-plan")
EIGHT = {
    "go_by": "ends",
    "ends_given": "80",
    "sett": "8 per in",
    "picks": "8 per in",
    "hem_yarn": "other",
    "hem_picks": "16 per in",
    "hem": "0.5 in",
    "loom_width": "10 in",
    "warp_colors": "repeated",
    "stripes.1.color": "white",
    "stripes.1.ends": "6",
    "stripes.2.color": "blue",
    "stripes.2.ends": "2",
} | {
    f"pieces.{number}.{name}": text
    for number in range(1, 9)
    for name, text in (
        ("name", f"Cloth {number}"),
        ("many", "1"),
        ("length", "8 in"),
        ("color", f"color {number}"),
    )
}


def carried(card, texts, to):
    """The next card worked from what the link carries, the way a browser goes: by its query."""
    worked = work_card(card, texts)
    ((_, found, counts),) = [
        way for carry in card.carry if carry.card == to for way in ways_on(worked, carry)
    ]
    other = find_card(to)
    texts, counts, notes = read_query(other, query_of_texts(other, found, counts))
    assert not notes
    return worked.outcome, work_card(other, texts).outcome


@pytest.mark.parametrize("texts", [{}, EIGHT], ids=["towels", "eight cloths"])
def test_the_picture_has_the_threads_of_the_plan(texts):
    """Ends and picks in the picture are those the plan counts, hems with them; so are the sizes."""
    plan, cloth = carried(PLAN, texts, "cloth-picture")
    pieces = cloths_of(cloth.case)
    hems = 2 * plan.case.picks_in_hem * len(pieces) if fine_hems(plan.case) else 0
    assert {piece.ends for piece in pieces} == {plan.value("ends")}
    assert (
        sum(piece.picks for piece in pieces)
        == plan.value("weft_picks") + hems
        == cloth.value("picks")
    )
    assert pieces[0].washed[0] == pytest.approx(100 * plan.value("finished_width"))
    assert pieces[0].loom[1] == pytest.approx(plan.case.pieces[0].woven, abs=0.5), (
        "whole picks: half a centimeter at most"
    )


def test_the_scenarios_towels_are_seen_as_planned():
    """By hand: five of 384 picks, hems of 24 (4 cm / 0.82 x 5 = 24.4), 160 ends."""
    plan, cloth = carried(PLAN, {}, "cloth-picture")
    assert (
        [row.picks for row in cloth.case.pieces] == [384] * 5
        and cloth.case.hem == 24
        and cloth.case.ends == 160
    )
    assert [row.name for row in cloth.case.pieces][:2] == [
        "Towel 1",
        "Towel 2",
    ] and cloth.case.warp == "A"


def test_the_eight_cloths_keep_their_own_weft_and_their_crochet_hems():
    plan, cloth = carried(PLAN, EIGHT, "cloth-picture")
    assert [row.weft for row in cloth.case.pieces] == list(
        "CDEFGHIJ"
    ) and cloth.case.warp == "6 A, 2 B"
    assert (
        cloth.case.hem_yarn == "K"
        and cloth.case.yarns[10].name == "Hem yarn"
        and cloth.case.hem == plan.case.picks_in_hem
    )


def test_leftovers_and_hours_take_over_the_plan():
    plan, left = carried(PLAN, {}, "weft-left")
    assert (
        left.value("pick") == pytest.approx(plan.case.pick, rel=1e-4)
        and left.case.pieces == 5
        and left.case.piece_picks == 384
    )
    assert left.case.yarn == pytest.approx(100 / 170 * 1000, rel=1e-5)
    plan, pace = carried(PLAN, {}, "weave-pace")
    assert pace.case.ends == 160 and pace.case.warp == pytest.approx(
        plan.value("warp_length"), rel=1e-4
    )


def test_the_hours_know_the_stick_and_the_changes():
    """By hand: one waffle of 84 picks without hems has the stick in 3 of 6, and 84 picks (24 + 6 + 24 + 6 + 24) change color 4 times."""
    texts = {
        "pieces.1.structure": "waffle",
        "pieces.1.picks": "84",
        "pieces.1.weft": "24 A, 6 C",
        "hem": "0",
    }
    _, pace = carried(find_card("cloth-picture"), texts, "weave-pace")
    assert (
        pace.case.stick_share == pytest.approx(50)
        and pace.case.changes == 4
        and pace.case.pieces == 1
        and pace.case.piece_picks == 84
    )
