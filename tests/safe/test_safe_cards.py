"""What each safe card must say: the stricter reading where something is unknown, and no way around a refusal."""

import re
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from fibercalc.core.problem import BadInputs, OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.table import read_table
from fibercalc.core.work import work_card
from fibercalc.safe.acids import bath_ph
from fibercalc.safe.air import mixture_index, room_level
from fibercalc.safe.burn_time import burn_time
from fibercalc.safe.drain import doses, held_acid
from fibercalc.safe.label import ACUTE, acute_estimate, classes, share_of_limit, signal_word, to_ask
from fibercalc.safe.lifting import frequency_row, horizontal, travel, twist, vertical, weight_limit


def work(card, **texts):
    return work_card(
        find_card(card), {name.replace("__", "."): text for name, text in texts.items()}
    )


def refusal(card, **texts) -> str:
    with pytest.raises(BadInputs) as error:
        work(card, **texts)
    (problem,) = error.value.problems
    return problem.text


@pytest.mark.parametrize("word", ["sulfuric", "Hydrochloric", "nitric", "phosphoric", "muriatic"])
def test_a_mineral_acid_is_refused_with_the_reason(word):
    assert "spit" in refusal("acid-dilution", acid=word)


@pytest.mark.parametrize("word", ["chrome", "dichromate"])
def test_chrome_is_refused_with_the_reason(word):
    assert "carcinogen" in refusal("mordant-limit", mordant=word)


@pytest.mark.parametrize(
    "card, texts, word",
    [
        ("acid-dilution", {"wanted": "50", "have": "50"}, "weaker"),
        ("acid-dilution", {"acid": "citric", "have": "80"}, "50 %"),
        ("acid-dilution", {"volume": "-1 L"}, "give"),
        ("drain-check", {"ph": "15"}, "give 0 to 14"),
        ("drain-check", {"volume": "0 L"}, "give"),
        ("drain-check", {"ph": "0.2"}, "do not pour"),
        ("drain-check", {"own_low": "9", "own_high": "8"}, "below"),
        ("mordant-limit", {"fiber": "0 g"}, "give"),
        ("mordant-limit", {"depth": "400"}, "give"),
        (
            "hazard-label",
            {
                "contents__1__strength": "60",
                "contents__2__what": "formic",
                "contents__2__strength": "60",
            },
            "100 %",
        ),
        ("drain-check", {"volume": "1,200 mL"}, "1.2 or 1200"),
        ("lift", {"often": "20"}, "give"),
        ("scald", {"temperature": "400 °C"}, "give"),
    ],
)
def test_absurd_and_contradicting_inputs_give_one_clear_line(card, texts, word):
    assert word in refusal(card, **texts)


def test_acid_goes_into_water_and_never_the_other_way_in_the_answer():
    said = " ".join(work("acid-dilution").sentences())
    assert said.index("water first") < said.index("acid")


# Labels: the reference's examples.
@pytest.mark.parametrize(
    "contents, expected",
    [
        ({"acetic": 5}, {}),
        ({"acetic": 12}, {"H315", "H319"}),
        ({"acetic": 56}, {"H314"}),
        ({"acetic": 99.8}, {"H226", "H314"}),
        ({"acetic": 6, "formic": 1.2}, {"H315", "H319"}),
        ({"acetic": 5.9, "formic": 1.2}, {"H315", "H319"}),
        ({"acetic": 5, "formic": 0.9}, set()),
        ({"citric": 10}, {"H319"}),
        ({"citric": 9}, set()),
        ({"sodium-hydroxide": 1}, {"H315", "H319"}),
        ({"sodium-hydroxide": 2}, {"H314"}),
        ({"ammonia": 4}, {"H315", "H318"}),
    ],
)
def test_statements_follow_from_the_printed_limits(contents, expected):
    assert set(classes(contents)) == set(expected)


@pytest.mark.parametrize(
    "percent, sure, asked",
    [
        (1, set(), set()),
        (2, {"H315", "H319"}, set()),
        (9.9, {"H315", "H319"}, set()),
        (10, {"H314"}, {"EUH071"}),
        (36, {"H314"}, {"EUH071"}),
        (36.5, {"H314", "H302"}, {"EUH071"}),
        (39.25, {"H314", "H302", "H332"}, {"EUH071"}),
        (78, {"H314", "H302", "H332"}, {"EUH071"}),
        (78.5, {"H314", "H302", "H331"}, {"EUH071"}),
        (85, {"H314", "H302", "H331"}, {"EUH071"}),
    ],
)
def test_formic_acid_is_toxic_only_where_its_estimate_says_so(percent, sure, asked):
    """ATE 730 mg/kg and 7.85 mg/L (European Chemicals Agency) against 2,000 mg/kg, 10 and 20 mg/L (CLP Annex I, Table 3.1.1)."""
    assert set(classes({"formic": percent})) == sure and set(to_ask({"formic": percent})) == asked


def test_one_percent_of_formic_acid_is_no_danger():
    worked = work(
        "hazard-label",
        contents__1__what="formic",
        contents__1__strength="1",
        contents__2__what="acetic",
        contents__2__strength="1",
    )
    assert worked.outcome.value("signal") == "none" and "H331" not in worked.sentences()[0]


def test_estimates_stay_above_the_classes_that_are_not_there():
    """A stronger class would need a substance with a lower estimate: 300 mg/kg swallowed, 2 mg/L inhaled; what is below 1 % does not count."""
    rows = read_table("safe", "label-limits").rows
    assert (
        min(row["oral"] for row in rows if row["oral"] != "") > 300
        and min(row["vapor"] for row in rows if row["vapor"] != "") > 2
    )
    assert (
        acute_estimate({"formic": 0.9}, "oral") is None
        and acute_estimate({"acetic": 50}, "vapor") is None
    )


@pytest.mark.parametrize("percent, h290", [(4.9, False), (5, True), (25, True)])
def test_ammonia_solution_corrodes_metal_from_5_percent(percent, h290):
    assert ("H290" in classes({"ammonia": percent})) == h290
    told = work(
        "hazard-label",
        contents__1__what="ammonia",
        contents__1__strength="10",
        contents__2__what="acetic",
        contents__2__strength="1",
    )
    assert "H290" in told.sentences()[0] and "H290 5\u00a0%: GisChem" in told.outcome.value("limit")


@pytest.mark.parametrize(
    "key, code, limit",
    [
        ("dye-skin-1a", "H317", 0.1),
        ("dye-skin", "H317", 1),
        ("dye-lung-1a", "H334", 0.1),
        ("dye-lung", "H334", 1),
    ],
)
def test_a_sensitizer_counts_from_a_tenth_of_a_percent_only_in_1a(key, code, limit):
    """CLP Annex I, Table 3.4.5; below it, from a tenth, its name goes on the label (EUH208, from memory)."""
    assert (
        set(classes({key: limit})) == {code}
        and set(classes({key: 0.99 * limit})) == {"EUH208"} == set(classes({key: 0.1 * limit}))
        and classes({key: 0.09 * limit}) == {}
    )
    assert (
        "No signal word: EUH208."
        in work(
            "hazard-label",
            contents__1__what=key,
            contents__1__strength=f"{0.5 * limit}",
            contents__2__what="acetic",
            contents__2__strength="1",
        ).sentences()[0]
    )


def test_a_dye_of_unknown_statements_counts_as_the_stricter_category_and_says_so():
    worked = work("hazard-label", contents__1__strength="0.5")
    assert {"H317", "H334"} <= set(to_ask({"dye-unknown": 0.5})) and to_ask(
        {"dye-unknown": 0.09}
    ) == ()
    assert (
        "category 1A, from 0.1 %" in worked.notes()[0]
        and "1 and 1B count from 1 %" in worked.notes()[0]
    )


def test_strong_ph_counts_as_burning_whatever_the_limits_say():
    assert (
        set(classes({"soda-ash": 2}, 11.5)) == {"H314"}
        and set(classes({"acetic": 5}, 2.0)) == {"H314"}
        and not classes({"acetic": 5}, 2.4)
    )


def test_what_has_no_limit_is_asked_about_and_never_made_up():
    assert (
        to_ask({"copper": 5}) == ("H302", "H400", "H410")
        and to_ask({"copper": 0.05}) == ()
        and to_ask({"alum": 50}) == ()
    )
    assert signal_word(to_ask({"dye-unknown": 1})) == "Danger"
    assert "No entry was found for Potash alum" in " ".join(
        work("hazard-label", contents__1__what="alum", contents__1__strength="50").sentences()
    )
    known = {row["code"] for row in read_table("safe", "statements").rows}
    for row in read_table("safe", "label-limits").rows:
        assert {each.partition("@")[0] for each in row["pure"].split()} - {"none"} <= known
    assert {code for bands in ACUTE.values() for _, code, _ in bands} <= known
    for row in read_table("safe", "statements").rows:
        assert set(row["precautions"].split()) <= known


@given(st.sampled_from(["corr", "irrit", "eye"]), st.floats(0, 50), st.floats(0, 50))
def test_more_of_a_substance_never_weakens_a_label(kind, some, more):
    assert share_of_limit({"acetic": some + more}, kind) >= share_of_limit({"acetic": some}, kind)


# Air.
def test_the_stricter_limit_is_the_one_shown():
    """Ammonia: OSHA prints 50 ppm, NIOSH 25."""
    worked = work(
        "room-air",
        times__1__vapor="ammonia",
        times__1__pot="lid",
        times__1__strength="0.1 g/L",
        times__1__time="30 min",
    )
    assert "25\u00a0ppm" in worked.outcome.value("limit") and "NIOSH" in worked.outcome.value(
        "limit"
    )


def test_the_stop_list_stands_first():
    for stop in ("pregnant", "lungs", "children", "food"):
        assert work("room-air", stop=stop).sentences()[0].startswith("Stop")


def test_dust_of_a_dye_is_compared_with_no_limit():
    worked = work("room-air", what="powder")
    assert (
        not worked.outcome.has("index")
        and worked.pictures() == []
        and "never used for a dye" in worked.outcome.value("limit")
    )
    assert "sensitizer" in " ".join(worked.sentences())


def test_a_lid_and_a_fan_help_and_a_boil_harms():
    def index(**texts):
        return work(
            "room-air",
            **{
                "times__1__vapor": "acetic",
                "times__1__strength": "1 g/L",
                "times__1__time": "60 min",
                "times__1__pot": "simmer",
                **texts,
            },
        ).outcome.value("index")

    assert index(times__1__pot="lid") < index() < index(times__1__pot="boil")
    assert index(air="fan") < index() < index(air="closed")


@given(st.floats(1, 1e5), st.floats(1, 1000), st.floats(5, 500), st.floats(0, 24), st.floats(0, 24))
def test_a_room_fills_toward_its_steady_level_and_never_past_it(emitted, fresh, room, first, more):
    steady = emitted / fresh
    assert (
        room_level(emitted, fresh, room, first)
        <= room_level(emitted, fresh, room, first + more) + 1e-9 * steady
        <= steady * (1 + 1e-8)
    )
    one = room_level(emitted, fresh, room, more, room_level(emitted, fresh, room, first))
    assert one == pytest.approx(room_level(emitted, fresh, room, first + more), rel=1e-6, abs=1e-9)


def test_a_vapor_without_a_limit_cannot_be_added_up():
    with pytest.raises(KeyError):
        mixture_index({"steam": 1.0}, {})


# Scalds.
@given(st.floats(44, 105), st.floats(0, 20))
def test_hotter_never_takes_longer(celsius, more):
    assert burn_time(celsius + more) <= burn_time(celsius) * (1 + 1e-12)


def test_nothing_is_guessed_below_the_lowest_threshold():
    with pytest.raises(OutOfRange):
        burn_time(43.9)
    worked = work("scald", temperature="40 °C")
    assert not worked.outcome.has("time") and "not permission" in worked.sentences()[0]


def test_from_68_degrees_it_says_a_second_or_less():
    assert (
        "or less" in work("scald", temperature="95 °C").sentences()[0]
        and burn_time(95) == burn_time((155 - 32) / 1.8) == 1.0
    )


@pytest.mark.parametrize(
    "fahrenheit, seconds",
    [
        (120, 300),
        (125, 90),
        (130, 30),
        (133, 15),
        (135, 10),
        (140, 5),
        (145, 3),
        (150, 1.5),
        (155, 1),
        (156, 1),
    ],
)
def test_no_time_is_longer_than_a_published_one(fahrenheit, seconds):
    """Where two sources differ the shorter one; at 140 and 145 °F "less than" is printed."""
    assert burn_time((fahrenheit - 32) / 1.8) <= seconds + 1e-9 and burn_time((145 - 32) / 1.8) < 3
    worked = work("scald", temperature=f"{fahrenheit} °F")
    assert ("or less" in worked.sentences()[0]) == (fahrenheit >= 140)


def test_a_childs_skin_burns_in_half_the_time():
    """A burn center, as a newspaper quotes it: 3 s at 140 °F; half of the adult's 5 s is less."""
    for temperature in ("50 °C", "140 °F", "145 °F", "90 °C"):
        adult, child = (
            work("scald", temperature=temperature, who=who).outcome.value("time")
            for who in ("adult", "child")
        )
        assert child == pytest.approx(adult / 2)
    assert 60 * work("scald", temperature="140 °F", who="child").outcome.value("time") <= 3
    assert "in half of" in " ".join(work("scald").notes())


def test_hands_go_in_at_40_degrees_wherever_it_is_said():
    """One figure, HANDS, in the cards; the 49 °C of the tap is said to be none for hands; no page names another figure."""
    told = " ".join(work("scald").notes())
    assert "cool to 40\u00a0°C (104\u00a0°F) before hands go in" in told and "not for hands" in told
    assert "40\u00a0°C or less" in " ".join(work("lift", load="hot").notes())
    assert "hands go in at 40\u00a0°C (104\u00a0°F) or less" in " ".join(
        work("bath-heat", touch="55 °C").notes()
    )
    assert (
        next(each.default for each in find_card("bath-heat").inputs if each.name == "touch")
        == "40 °C"
    )
    root = Path(__file__).parents[2]
    for page in sorted((root / "docs" / "pages").rglob("*.md")):
        assert not re.search(r"(\d+) °C[^.]*\bhands (?:go|goes) in\b", page.read_text("utf-8")), (
            page
        )
    for path in sorted((root / "fibercalc").rglob("*.py")):
        for line in path.read_text("utf-8").splitlines():
            assert not (
                "hands go in" in line.lower() and re.search(r"\d °C[^.]*hands go in", line)
            ), (path, line)


def test_one_line_through_all_thresholds_would_be_wrong():
    """Trap: a straight line from 49 to 66 °C makes 10.7 s at 60 °C, where 5 to 6 s are printed."""
    assert burn_time(60.0) <= 6.0


# Drains.
def test_metal_not_known_counts_as_a_no():
    worked = work("drain-check", ph="7", metal="unknown")
    assert worked.sentences()[0].startswith("Not yet") and "not known" in str(
        worked.tables()[0].rows
    )


def test_metal_without_a_local_limit_counts_as_a_no():
    assert (
        work("drain-check", ph="7", metal="copper", metal_amount="0.5 mg/L")
        .sentences()[0]
        .startswith("Not yet")
    )
    assert (
        not work("drain-check", ph="7", metal="copper", metal_amount="0.1 mg/L", own_metal="1 mg/L")
        .sentences()[0]
        .startswith("Not yet")
    )


def test_a_strip_that_cannot_tell_counts_as_outside():
    assert work("drain-check", ph="5.3").sentences()[0].startswith("Not yet")
    assert not work("drain-check", ph="5.3 +/- 0.1").sentences()[0].startswith("Not yet")


def test_hot_is_a_no_and_the_stricter_of_two_limits_counts():
    assert "temperature" in work("drain-check", ph="7", temperature="60 °C").sentences()[0]
    assert work("drain-check", ph="5.6", own_low="6").outcome.case.low == 6.0
    assert work("drain-check", ph="5.6", own_low="4").outcome.case.low == 5.0


@settings(max_examples=30, deadline=None)
@given(
    kind=st.sampled_from(["acetic", "citric", "formic"]),
    ph=st.floats(2.9, 5.0),
    liters=st.floats(1, 60),
    alkalinity=st.floats(5, 300),
)
def test_the_doses_lead_to_the_target_with_and_without_carbon_dioxide(kind, ph, liters, alkalinity):
    grams = held_acid(kind, ph, liters, alkalinity)
    small, large = doses("soda-ash", 7.0, liters, kind, grams, alkalinity)
    assert 0 <= small <= large  # what leaves as a gas needs no soda
    if small > 0:
        assert bath_ph(
            liters, {kind: grams, "soda-ash": small}, alkalinity, driven_off=True
        ) == pytest.approx(7.0, abs=1e-5)
    assert bath_ph(liters, {kind: grams, "soda-ash": large}, alkalinity) == pytest.approx(
        7.0, abs=1e-5
    )
    assert (
        bath_ph(liters, {kind: grams, "soda-ash": 0.8 * small}, alkalinity, driven_off=True)
        <= 7.0 + 1e-6
    )


# Mordants.
def test_the_examples_of_local_limits_are_the_strictest_in_the_table():
    from fibercalc.safe.cards.mordant_limit import STRICTEST

    for metal, limit in STRICTEST.items():
        assert limit == min(
            row[metal] for row in read_table("safe", "drain-limits").rows if row[metal] != ""
        )


@given(st.floats(0.1, 100), st.floats(0, 100))
def test_metal_is_neither_made_nor_lost(depth, taken):
    worked = work(
        "mordant-limit",
        mordant="copper",
        depth=f"{depth:.4f}",
        taken_up=f"{taken:.4f}",
        fiber="1 kg",
        bath="30 L",
    )
    on_fiber, left = (
        worked.outcome.value("on_fiber"),
        worked.outcome.value("left") * 1e4 * 30 / 1000,
    )
    assert on_fiber * 1.0 + left == pytest.approx(worked.outcome.value("metal"), rel=1e-9)


# Lifting.
def test_a_hot_or_open_pot_is_never_lifted():
    worked = work("lift", load="hot")
    assert worked.sentences()[0] == "Do not carry it." and not worked.outcome.has("rwl")


def test_outside_the_equation_the_limit_is_nothing():
    assert horizontal(64) == 0 and vertical(176) == 0 and travel(176) == 0 and twist(136) == 0
    assert work("lift", reach="70 cm").sentences()[0] == "Do not lift it this way."
    assert (
        work("lift", often="9", lasting="eight", start="40 cm").sentences()[0]
        == "Do not lift it this way."
    )


def test_between_rows_of_the_frequency_table_the_stricter_one_counts():
    assert (
        frequency_row(0.3) == "f0.5" and frequency_row(0.5) == "f0.5" and frequency_row(0) == "f0.2"
    )
    rows = read_table("safe", "lift-frequency").rows
    for column in ("hour_low", "hour_high", "two_low", "two_high", "eight_low", "eight_high"):
        values = [row[column] for row in rows]
        assert values == sorted(values, reverse=True)


def test_the_ideal_lift_is_the_load_constant():
    assert weight_limit(horizontal(25), vertical(75), travel(25), twist(0), 1.0, 1.0) == 23.0


def test_a_load_close_to_the_limit_counts_as_above():
    worked = work("lift", mass="11.3 kg")
    assert (
        worked.outcome.value("index") < 1 < worked.outcome.high("index")
        and "counts as above" in worked.sentences()[0]
    )


@pytest.mark.parametrize(
    ("ph", "holds", "words"),
    [
        ("12", "soda-ash", "more than 50 g of soda ash in a liter"),
        ("13.9", "soda-ash", "beyond what soda ash"),
        ("1.2", "citric", "more than 50 g of citric acid in a liter|beyond what citric acid"),
    ],
)
def test_no_dose_is_told_for_a_bath_stronger_than_any_recipe(ph, holds, words):
    """A kilogram of citric acid poured into lye is no advice: the substance is named rightly, and the bath is kept."""
    with pytest.raises(BadInputs, match=words):
        work_card(find_card("drain-check"), {"ph": ph, "holds": holds})


def test_the_tin_mordant_is_the_dihydrate():
    """Crystals of SnCl2 with 2 H2O: 118.71 of 225.63 is tin, 52.6 % (IUPAC weights); 62.6 % would be the salt without its water."""
    dihydrate = 118.71 + 2 * 35.45 + 2 * (2 * 1.008 + 15.999)
    row = read_table("safe", "mordants").row("key", "tin")
    assert (
        row["metal"] == pytest.approx(100 * 118.71 / dihydrate, abs=0.005)
        and "2 H₂O" in row["label"]
    )
    assert work("mordant-limit", mordant="tin", fiber="400 g", depth="3").outcome.value(
        "metal"
    ) == pytest.approx(12 * 0.526, abs=0.01)
