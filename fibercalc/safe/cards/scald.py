"""How fast hot water burns."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from ...core.answer import Picture
from ...core.card import (
    CHOICE,
    MODEL,
    Basis,
    Between,
    Card,
    Carry,
    Case,
    Caution,
    Input,
    Option,
    Result,
)
from ...core.outcome import Outcome
from ...core.steps import looked_up
from ...core.table import read_table
from ...core.units import NUMBER, TEMPERATURE, TIME
from ...sources import (
    BURN_FOUNDATION,
    CHILDRENS_ALABAMA,
    COMMON_PRACTICE,
    CPSC_TAP_WATER,
    MORITZ_HENRIQUES,
    SCALD_CHILDREN,
)
from ..burn_time import CHILD, HANDS, at_most, coolest, hottest, neighbors, time_between
from ..inputs import LIMIT
from ..limits import published
from ..pictures.burns import burn_curve

ADULT, YOUNG = "adult", "child"


class Scald(Case):
    """Hot water on skin, and the contact in mind beside the published time to a deep burn."""

    temperature = Input[float](
        TEMPERATURE,
        "Bath or steam on the skin",
        default="60 °C",
        allowed=("0 °C", "105 °C"),
        usual=("40 °C", "100 °C"),
        rough="1 °C",
        units=("°C", "°F"),
        strict=True,
    )
    who = Input[str](
        CHOICE,
        "Whose skin",
        default=ADULT,
        options=(Option(ADULT, "An adult’s"), Option(YOUNG, "A child’s")),
    )
    contact = Input[float](
        TIME,
        "Contact you have in mind",
        default="2 s",
        allowed=("0.1 s", "10 min"),
        usual=("0.5 s", "60 s"),
        units=("s", "min"),
        unit="s",
    )

    cooler = Between[float](TEMPERATURE, "Published threshold, cooler")
    time_at_cooler = Between[float](TIME, "its time", unit="s")
    hotter = Between[float](TEMPERATURE, "Published threshold, hotter")
    time_at_hotter = Between[float](TIME, "its time", unit="s")
    adults_time = Between[float](TIME, "Deep burn, adult", unit="s")

    time = Result[float](
        TIME, "Deep burn after", units=("s",), finest=(0.1,), rounding="down", floor=0.0, unit="s"
    )
    times_over = Result[float](
        NUMBER, "Contact, times that", finest=(0.01,), rounding="up", floor=0.0
    )
    limit = replace(LIMIT)


def answer(case: Scald) -> None:
    case.limit = "; ".join(
        (
            published("Deep burn of adult skin: 5 min at 49 °C, 30 s at 54 °C", "cpsc-tap-water"),
            published("10 s at 57 °C, under 3 s at 63 °C, 1.5 s at 66 °C", "childrens-alabama"),
        )
    )
    if case.temperature < coolest():
        return
    if case.who == YOUNG:
        case.adults_time = _adults_time(case)
        case.time = CHILD * case.adults_time
    else:
        case.time = _adults_time(case)
    case.times_over = case.contact / case.time


def _adults_time(case: Scald) -> float:
    """Time to a deep burn of an adult's skin, s."""
    rows = read_table("safe", "burn-times").rows
    if case.temperature >= hottest():
        return _of_row(rows[-1], "seconds")
    cooler, hotter = (rows[place] for place in neighbors(case.temperature))
    case.cooler, case.time_at_cooler = _of_row(cooler, "celsius"), _of_row(cooler, "seconds")
    case.hotter, case.time_at_hotter = _of_row(hotter, "celsius"), _of_row(hotter, "seconds")
    return time_between(
        case.temperature, case.cooler, case.time_at_cooler, case.hotter, case.time_at_hotter
    )


def _of_row(row: dict[str, Any], column: str) -> float:
    return looked_up("safe", "burn-times", "key", row["key"], column)


def say(out: Outcome[Scald]) -> tuple[str, ...]:
    case = out.case
    who = "the skin of a child" if case.who == YOUNG else "adult skin"
    given = out.readings["temperature"].amount
    at = out.amount(case.temperature, TEMPERATURE, given.unit.sign if given else "")
    if not out.has(Scald.time):
        return (
            f"At {at} no published burn threshold was found: that is not permission.",
            (
                f"The lowest found is {coolest():g} °C for hours. Long contact, and skin that"
                " cannot feel, burn at less."
            ),
        )
    hot = "or less " if at_most(case.temperature) else ""
    lie = "lie above, or too near," if out.high(Scald.times_over) >= 1 else "lie below"
    return (
        f"Water at {at} burns {who} deeply in about {_time(out)} {hot}of contact.",
        (
            f"Your {out.amount(case.contact / 60, TIME, 's')} {lie} the published threshold."
            " Seconds are never permission: pain and lighter burns come sooner."
        ),
    )


def _time(out: Outcome[Scald]) -> str:
    minutes = out.value(Scald.time)
    return out.amount(minutes, TIME, "s" if minutes < 2 else "min" if minutes < 120 else "h", 2)


def notes(out: Outcome[Scald]) -> list[str]:
    hands = " (".join(out.amount(HANDS, TEMPERATURE, unit, 3) for unit in ("°C", "°F"))
    return [
        (
            "Between two published thresholds the logarithm of the time runs straight; nothing is"
            f" guessed below {coolest():.0f} °C or beyond {hottest():.0f} °C."
        ),
        (
            "Where two published times differ the shorter one counts. Children burn in half of an"
            " adult’s time (a burn center, as a newspaper quotes it). Old, thin or numb skin is no"
            " slower."
        ),
        (
            f"Let a bath cool to {hands}) before hands go in, gloved or not (common practice). The"
            " 49 °C (120 °F) of published advice is a setting for taps, not for hands."
        ),
    ]


def picture(out: Outcome[Scald]) -> Picture:
    if not out.has(Scald.time):
        return burn_curve(None, None)
    return burn_curve(min(out.case.temperature, 72.0), out.case.time)


CARD = Card(
    id="scald",
    chapter="safe",
    place=40,
    question="How fast does this bath burn?",
    case=Scald,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        MODEL,
        "Published times to a third-degree burn, straight lines in the logarithm between neighbors."
        " Where two sources differ, the shorter time.",
    ),
    sources=(
        CPSC_TAP_WATER,
        CHILDRENS_ALABAMA,
        BURN_FOUNDATION,
        MORITZ_HENRIQUES,
        SCALD_CHILDREN,
        COMMON_PRACTICE,
    ),
    cautions=(
        Caution(
            "Seconds are never permission.",
            "Use tongs, lift lids away from the face, turn handles in. Steam burns worse than water"
            " of its temperature.",
        ),
        Caution(
            "Wet gloves hold heat.",
            "Hot water inside a glove goes on burning: shake it off at once. A burn: cool running"
            " water for 20 minutes, then get help; large, deep, face or child: emergency services.",
        ),
    ),
    carry=(Carry("lift", "May I carry it?", {}),),
    handles=("heat",),
)
