"""A run of pieces on one warp: the scenario's towels, eight small cloths, and what is lost when it does not fit."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from fibercalc.core.checks import shared_folder
from fibercalc.core.problem import BadInputs
from fibercalc.core.registry import find_card
from fibercalc.core.settings import Settings
from fibercalc.core.work import work_card
from fibercalc.site.sheet import paper
from fibercalc.weave.run import reached, whole_pieces

PLAN = find_card("warp-plan")
COLORS = ("white", "indigo", "rust", "moss", "white", "plum", "straw", "slate")
LENGTHS = (8, 8, 8, 9, 9, 8, 8, 10)  # inches


def plan(**given_):
    return work_card(PLAN, given_)


def pieces(*rows):
    return {
        f"pieces.{at}.{name}": str(value)
        for at, row in enumerate(rows, 1)
        for name, value in zip(("name", "many", "length", "color"), row)
    }


def table(worked, title):
    return next(table for table in worked.tables() if title in table.title)


EIGHT = pieces(
    *(
        (f"Cloth {at}", 1, f"{length} in", color)
        for at, (length, color) in enumerate(zip(LENGTHS, COLORS), 1)
    )
) | {
    "width": "7 in",
    "width_shrink": "20 %",
    "length_shrink": "20 %",
    "sett": "8 per in",
    "picks": "8 per in",
    "hem": "0.5 in",
    "hem_yarn": "other",
    "hem_picks": "18 per in",
    "loom_width": "10 in",
    "waste": "18 in",
    "divider": "1 in",
    "skein_mass": "71 g",
    "skein_length": "110 m",
}


def test_the_example_is_the_scenario():
    """Defaults come from shared/demo, where they are written once more for the reader."""
    import tomllib

    towels = tomllib.loads((shared_folder() / "demo" / "making.toml").read_text("utf-8"))["towels"]
    case = plan().outcome.case
    row = case.pieces[0]
    assert (row.many, row.length, 2 * case.hem) == (
        towels["count"],
        towels["finished_length_cm"],
        towels["hem_cm"],
    )
    for name, key in {
        "width": "finished_width_cm",
        "loom_width": "loom_width_cm",
        "sett": "ends_per_cm",
        "picks": "picks_per_cm",
        "width_shrink": "shrink_width_percent",
        "draw_in": "draw_in_percent",
        "length_shrink": "shrink_length_percent",
        "take_up": "take_up_percent",
        "divider": "gap_cm",
        "waste": "loom_waste_cm",
    }.items():
        assert getattr(case, name) == pytest.approx(towels[key]), name
    assert plan().outcome.value("ends") == towels["ends_that_fit"]


def test_towels_too_wide_are_told_so_with_the_change_and_planned_as_they_fit():
    """34 / 0.86 / 0.94 = 42.06 cm; 160 ends come out 32.34 cm, 1.7 cm less."""
    worked = plan()
    first = worked.sentences()[0]
    assert (
        "34 cm" in first
        and "too wide" in first
        and "42.1 cm" in first
        and "40 cm" in first
        and "32.3 cm" in first
        and "1.7 cm narrower" in first
    )
    rows = {row[0]: row for row in table(worked, "make it fit").rows}
    assert rows["Make each piece narrower"][1:] == ("32.3 cm", "1.7 cm less")
    assert rows["Weave on a wider loom"][1:] == (
        "42.5 cm",
        "2.5 cm more",
    )  # 170 ends at 4 a centimeter
    assert rows["A cloth that shrinks less in width"][1] == "at most 9.6 %"  # 34 / 37.6 = 0.9043


def test_each_change_does_make_it_fit():
    for change in ({"width": "32.3 cm"}, {"loom_width": "42.5 cm"}, {"width_shrink": "9.5 %"}):
        worked = plan(**change)
        assert "too wide" not in worked.sentences()[0] and not any(
            "make it fit" in table.title for table in worked.tables()
        ), change


def test_the_towels_that_fit():
    found = plan(width="32.3 cm").outcome
    assert (found.value("ends"), found.value("buy"), found.value("weft_picks")) == (160, 10, 1920)
    assert found.value("warp_yarn") == pytest.approx(784.26, abs=0.01) and found.value(
        "weft_yarn"
    ) == pytest.approx(817.02, abs=0.01)
    assert found.value("warp_weight") == pytest.approx(461.3, abs=0.05) and found.value(
        "weft_weight"
    ) == pytest.approx(480.6, abs=0.05)


def test_the_length_to_wind_is_the_far_end_of_what_it_may_take():
    found = plan().outcome
    assert found.high("warp_length") <= found.value("warp_sure") < found.high("warp_length") + 0.01
    assert found.chance_below("warp_length", found.value("warp_sure")) > 0.97


def test_a_short_warp_names_the_piece_that_is_lost_and_the_change():
    worked = plan(limit="4.6 m", width="32 cm")
    assert (
        "too short by 30.2 cm" in worked.sentences()[0]
        and "Towel 5 is lost" in worked.sentences()[0]
    )
    rows = {row[0]: row for row in table(worked, "make it fit").rows}
    assert rows["Waste less warp"][1:] == ("19.8 cm", "30.2 cm less")  # 50 - 30.2
    # 30.16 cm of warp over 5 pieces weave 27.15 / 5 and wash to 22.26 / 5 = 4.45 cm.
    assert rows["Make each piece shorter"][1] == "by 4.5 cm"
    assert rows["Weave fewer pieces"][1:] == ("4", "1 less")


@pytest.mark.parametrize(
    "change", [{"pieces.1.length": "50.5 cm"}, {"waste": "19.8 cm"}, {"pieces.1.many": "4"}]
)
def test_each_change_of_a_short_warp_makes_it_long_enough(change):
    rows = pieces(("Towel", 5, "55 cm", "natural"))
    assert (
        work_card(PLAN, rows | {"limit": "4.6 m", "width": "32 cm"} | change).outcome.value("spare")
        > -0.001
    )


def test_a_warp_too_short_for_anything_says_so():
    assert "no piece comes off whole" in plan(limit="1 m", width="30 cm").sentences()[0]


def test_a_warp_that_is_long_enough_has_a_chance_and_no_changes():
    found = plan(limit="4.95 m", width="32 cm")
    assert 1 < found.outcome.value("last_lost") < 50 and not any(
        "make it fit" in table.title for table in found.tables()
    )


def test_eight_small_cloths_each_with_its_own_weft():
    worked = work_card(PLAN, EIGHT)
    found = worked.outcome
    # 7 / 0.8 / 0.94 = 9.308 in x 8 = 74.5, even: 76 of the 80 that ten inches hold.
    assert found.value("ends") == 76 and "too wide" not in worked.sentences()[0]
    along = table(worked, "Along the warp").rows
    assert [row[3] for row in along[:-1]] == list(COLORS) and along[0][
        2
    ] == "12 + 80 + 12"  # 8 / 0.8 x 8 = 80; 0.5 / 0.8 x 18 = 11.25, whole picks
    yarns = {(row[0], row[1]): row for row in table(worked, "Yarn by color").rows}
    assert set(yarns) == {
        ("natural", "warp"),
        ("Finer yarn", "hems"),
        *((color, "weft") for color in COLORS),
    }
    # White is two cloths, 80 + 90 picks, 76 ends at 8 are 24.13 cm.
    assert yarns["white", "weft"][4] == "44 m"  # 170 x 24.13 / 0.94 = 4364 cm
    assert (
        int(yarns["natural", "warp"][2]) == 3
        and found.value("buy") == 3 + 7
        and found.value("hem_buy") == 1
    )


def test_weft_by_color_adds_up_to_the_weft():
    worked = work_card(PLAN, EIGHT)
    lengths = [
        float(row[4].split()[0]) for row in table(worked, "Yarn by color").rows if row[1] == "weft"
    ]
    assert (
        worked.outcome.value("weft_yarn")
        <= sum(lengths)
        < worked.outcome.value("weft_yarn") + len(lengths)
    )  # each in whole meters upward


def test_a_warp_and_a_weft_of_one_color_are_bought_together_unless_they_are_two_yarns():
    assert [row[1] for row in table(plan(), "Yarn by color").rows] == ["warp and weft"]
    assert [row[1] for row in table(plan(weft_from="other"), "Yarn by color").rows] == [
        "warp",
        "weft",
    ]


def test_stripes_are_counted_across_and_said_when_they_do_not_come_out_even():
    """12 + 4 repeated over 160 ends: ten repeats; over 150: nine and six ends of the first stripe."""
    even = plan(warp_colors="repeated", width="32.3 cm")
    assert [row[3] for row in table(even, "Color order").rows] == ["120", "40"]
    odd = plan(warp_colors="repeated", go_by="ends", ends_given="150")
    assert [row[3] for row in table(odd, "Color order").rows] == ["114", "36"] and any(
        "do not come out even" in note for note in odd.notes()
    )


def test_stripes_once_across_decide_the_ends():
    found = plan(
        warp_colors="once",
        **{
            "stripes.1.color": "natural",
            "stripes.1.ends": "60",
            "stripes.2.color": "slate",
            "stripes.2.ends": "30",
        },
    ).outcome
    assert found.value("ends") == 90 and found.value("heddle_width") == pytest.approx(0.225)


def test_extra_edge_ends_take_yarn_and_no_width():
    plain, edged = plan(width="30 cm").outcome, plan(width="30 cm", edge_ends="4").outcome
    assert edged.value("ends") == plain.value("ends") + 4 and edged.value(
        "heddle_width"
    ) == plain.value("heddle_width")


def test_fringe_takes_no_take_up():
    """8 cm at both ends of five pieces are 80 cm of warp, no more."""
    without, fringed = (
        plan(finish=finish, width="30 cm").outcome.value("warp_length")
        for finish in ("neither", "fringe")
    )
    assert fringed - without == pytest.approx(0.80)


def test_a_loom_narrower_than_a_repeat_is_refused_in_one_line():
    with pytest.raises(BadInputs, match="not even 400 ends fit"):
        plan(multiple="400")


def test_the_sheets_for_the_loom_hold_every_piece():
    worked = work_card(PLAN, EIGHT)
    loom, yarn = (paper.tables(worked.outcome) for paper in PLAN.papers)
    assert [row[0] for row in loom[1].rows] == [f"Cloth {at}" for at in range(1, 9)] and all(
        row[-1] == "☐" for row in loom[1].rows
    )
    assert len(yarn[0].rows) == 9


def test_in_us_units_no_metric_length_is_left_in_tables_and_pictures():
    worked = work_card(PLAN, {"limit": "4.6 m"}, Settings(system="us"))
    words = [
        cell
        for table in worked.tables()
        if "Yarn" not in table.title
        for row in table.rows
        for cell in row
    ] + [picture.svg for picture in worked.pictures()]
    assert not any(re.search(r"\d\s?(cm|m)\b", text) for text in words)


@settings(max_examples=60, deadline=None)
@given(
    st.lists(st.floats(1.0, 300.0), min_size=1, max_size=20),
    st.floats(0.0, 10.0),
    st.floats(0.0, 50.0),
    st.floats(0.0, 4000.0),
)
def test_whole_pieces_are_those_whose_end_is_reached(warps, divider, before, available):
    ends = reached(warps, divider, before)
    assert ends[-1] == pytest.approx(before + len(warps) * divider + sum(warps))
    whole = whole_pieces(ends, available)
    assert all(end <= available * (1 + 1e-9) for end in ends[:whole]) and all(
        end > available for end in ends[whole:]
    )


@settings(max_examples=40, deadline=None)
@given(
    length=st.floats(5.0, 300.0),
    width=st.floats(5.0, 30.0),
    shrink=st.floats(0.0, 40.0),
    draw_in=st.floats(0.0, 20.0),
    take_up=st.floats(0.0, 20.0),
)
def test_the_card_s_whole_chain_inverts(length, width, shrink, draw_in, take_up):
    """Finished to loom to finished: the length comes back exactly, the width to within the ends that round it up."""
    found = work_card(
        PLAN,
        pieces(("Cloth", 1, f"{length:.6f} cm", "white"))
        | {
            "width": f"{width:.6f} cm",
            "width_shrink": f"{shrink:.6f} %",
            "length_shrink": f"{shrink:.6f} %",
            "draw_in": f"{draw_in:.6f} %",
            "take_up": f"{take_up:.6f} %",
            "loom_width": "400 cm",
        },
    ).outcome
    assert 100 * found.value("finished_length") == pytest.approx(length, rel=1e-5)
    assert (
        width - 1e-4 <= 100 * found.value("finished_width") <= width + 0.51
    )  # two ends at 4 a centimeter


def test_a_long_link_does_not_fill_the_paper():
    """Eight rows make an address that nobody types: the paper then bears the page's own."""
    page = "https://example.org/weave/warp-plan/"
    long, short = (
        str(paper(work_card(PLAN, EIGHT), 0, page + query))
        for query in ("?v=1&" + "a1a=Cloth&" * 40, "?v=1&c=7in")
    )
    assert page in long and "a1a" not in long and "c=7in" in short
