"""The first sentence of the room's air is never milder than any number under it."""

import itertools
import re

import pytest

from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.safe.cards.room_air.asked import RoomAir
from fibercalc.safe.cards.room_air.said import SHARES
from fibercalc.safe.exposure import ceiling, dangerous, stricter_short

SMALL_ROOM = {"room": "12 m³", "air": "closed", "mixing": "3", "pans": "1", "across": "20 cm"}
NUMBER = re.compile(r"[\d,]+(?:\.\d+)?")


def work(**texts):
    return work_card(
        find_card("room-air"), {name.replace("__", "."): text for name, text in texts.items()}
    )


def boiling(strength, minutes="30 min", **more):
    """One spell that counts, the other two as short as they come."""
    return work(
        **SMALL_ROOM,
        times__1__pot="boil",
        times__1__strength=strength,
        times__1__time=minutes,
        times__2__time="1 min",
        times__2__pot="lid",
        times__3__time="1 min",
        times__3__pot="lid",
        **more,
    )


def printed(outcome, name):
    """Low end, value and high end of a share as they stand on the page, %."""
    value, span = outcome.text(name), outcome.span(name)
    numbers = [float(word.replace(",", "")) for word in NUMBER.findall(f"{span or value} {value}")]
    return min(numbers), numbers[-1], max(numbers)


def said_of(sentence, name):
    """What the sentence says about one share, "" where it does not speak of it."""
    found = re.search(rf"about [^:;]*? of {SHARES[name][1]}: ([a-z ]+)", sentence)
    return found[1] if found else ""


def hold(worked):
    """Each printed number against the words: over with its high end, with its value, with its low end."""
    outcome, sentence = worked.outcome, " ".join(worked.sentences())
    over = False
    for name in SHARES:
        if not outcome.has(name):
            continue
        low, value, high = printed(outcome, name)
        words = said_of(sentence, name)
        if low > 100:
            assert words == "it lies above", (name, low, sentence)
        elif value > 100:
            assert words in ("it likely lies above", "it lies above"), (name, value, sentence)
        elif high > 100:
            assert words in ("it may lie above", "it likely lies above", "it lies above"), (
                name,
                high,
                sentence,
            )
        over = over or high > 100
        if name is RoomAir.idlh and high > 100:
            assert worked.sentences()[0].startswith(
                "Leave, air the room, and do not go back in without fresh air. At its highest"
            )
    assert ("likely below" in sentence) != over, sentence
    return over


def test_a_quarter_of_an_hour_above_its_limit_is_the_headline():
    """8 hours 14 to 20 %, but 170 % (50 to 420 %) of the 15-minute limit: that decides, and so may IDLH, 50 ppm."""
    worked = boiling("2 g/L")
    assert 10 < worked.outcome.value("index") < 25 and worked.outcome.high("index") < 100
    assert 150 < worked.outcome.value("short") < 190 and worked.outcome.high("short") > 400
    assert "likely below" not in " ".join(
        worked.sentences()
    ) and "15-minute limit: it likely lies above" in " ".join(worked.sentences())
    weaker = boiling("0.9 g/L")
    assert weaker.outcome.high("idlh") < 100 < weaker.outcome.high("short")
    assert (
        weaker.sentences()[0].startswith("In the worst quarter of an hour about")
        and "it may lie above" in weaker.sentences()[0]
    )


def test_far_above_what_is_dangerous_it_says_to_leave():
    """Thousands of percent over, with even the low end over."""
    worked = boiling("100 g/L", "8 h")
    assert worked.outcome.low("idlh") > 100 and worked.outcome.value("index") > 20000
    said = " ".join(worked.sentences())
    assert (
        said.startswith(
            "Leave, air the room, and do not go back in without fresh air. At its highest"
        )
        and "life or health: it lies above" in said
    )
    assert "8-hour limit: it lies above" in said and "may lie above" not in said


def test_the_words_to_leave_stand_also_behind_a_stop():
    worked = boiling("100 g/L", stop="lungs")
    assert worked.sentences()[0].startswith("Stop") and worked.sentences()[1].startswith(
        "Leave, air the room"
    )


def test_formic_acid_and_ammonia_have_their_own_limits():
    """Formic acid: IDLH 30 ppm, no short-term limit; ammonia 35 ppm over 15 minutes; acetic acid: ceiling 40 ppm, IDLH 50."""
    assert (
        dangerous("formic") == 30 and stricter_short("formic") is None and ceiling("formic") is None
    )
    assert stricter_short("ammonia") == 35 and dangerous("ammonia") == 300
    assert ceiling("acetic") == 40 and dangerous("acetic") == 50
    worked = boiling("20 g/L", times__1__vapor="formic")
    assert "No short-term limit was found for Formic acid." in worked.notes()
    assert "Leave, air the room" in " ".join(worked.sentences())


@pytest.mark.parametrize("vapor", ["acetic", "formic", "ammonia"])
def test_the_sentence_is_never_milder_than_a_number_under_it(vapor):
    seen = set()
    for room, air, pot, strength, time, pans in itertools.product(
        ("3 m³", "30 m³", "2000 m³"),
        ("closed", "fan"),
        ("lid", "boil"),
        ("0.001 g/L", "0.1 g/L", "1 g/L", "10 g/L", "100 g/L"),
        ("1 min", "20 min", "8 h"),
        ("1", "20"),
    ):
        seen.add(
            hold(
                work(
                    room=room,
                    air=air,
                    pans=pans,
                    times__1__vapor=vapor,
                    times__1__pot=pot,
                    times__1__strength=strength,
                    times__1__time=time,
                    times__2__time="1 min",
                    times__3__time="1 min",
                )
            )
        )
    assert seen == {True, False}


def test_near_each_limit_the_words_change_where_the_numbers_do():
    """Fine steps, so that every edge is crossed: strength in steps of 4 %."""
    seen = {hold(boiling(f"{0.05 * 1.04**step:.4f} g/L")) for step in range(160)}
    assert seen == {True, False}
