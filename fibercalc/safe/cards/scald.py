"""How fast hot water burns."""

from ...core.card import CHOICE, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result
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
from ..limits import published
from ..pictures.burns import burn_curve
from ..scald import CHILD, HANDS, at_most, burn_time, coolest, hottest, neighbors

ADULT, YOUNG = "adult", "child"


def answer(w, temperature, who, contact):
    limit = "; ".join(
        (
            published("Deep burn of adult skin: 5 min at 49 °C, 30 s at 54 °C", "cpsc-tap-water"),
            published("10 s at 57 °C, under 3 s at 63 °C, 1.5 s at 66 °C", "childrens-alabama"),
        )
    )
    name, label = ("adult", "Deep burn, adult") if who == YOUNG else ("time", "Deep burn")
    if temperature < coolest():
        return {"time": None, "times_over": None, "limit": limit}
    rows = read_table("safe", "burn-times").rows
    if temperature >= hottest():
        w.looked_up(
            name,
            "safe",
            "burn-times",
            "key",
            rows[-1]["key"],
            "seconds",
            TIME,
            "s",
            label=f"{label}, or less",
        )
    else:
        below, above = neighbors(temperature)
        for end, place in (("cooler", below), ("hotter", above)):
            w.looked_up(
                f"{end}_at",
                "safe",
                "burn-times",
                "key",
                rows[place]["key"],
                "celsius",
                TEMPERATURE,
                label=f"Published threshold, {end}",
            )
            w.looked_up(
                end,
                "safe",
                "burn-times",
                "key",
                rows[place]["key"],
                "seconds",
                TIME,
                "s",
                label="its time",
            )
        w.step(
            name,
            "exp(ln(cooler) + (temperature - cooler_at) / (hotter_at - cooler_at) * (ln(hotter) -"
            " ln(cooler)))",
            burn_time(temperature),
            TIME,
            "s",
            label=label,
        )
    seconds = burn_time(temperature)
    if who == YOUNG:
        seconds = w.step(
            "time",
            f"{CHILD:g} * adult",
            CHILD * seconds,
            TIME,
            "s",
            label="Deep burn of a child’s skin, from an adult’s time",
        )
    time = seconds / 60
    return {
        "time": time,
        "times_over": w.step(
            "times_over",
            "contact / time",
            contact / (60 * time),
            NUMBER,
            label="Contact over that time",
        ),
        "limit": limit,
    }


def say(r):
    who, at = (
        ("the skin of a child" if r.given["who"] == YOUNG else "adult skin"),
        r.amount(r.given["temperature"], TEMPERATURE, r.readings["temperature"].amount.unit.sign),
    )
    if not r.has("time"):
        return (
            f"At {at} no published burn threshold was found: that is not permission.",
            (
                f"The lowest found is {coolest():g} °C for hours. Long contact, and skin that"
                " cannot feel, burn at less."
            ),
        )
    hot = "or less " if at_most(r.given["temperature"]) else ""
    first = f"Water at {at} burns {who} deeply in about {_time(r)} {hot}of contact."
    above = r.high("times_over") >= 1
    return (
        first,
        (
            f"Your {r.amount(r.given['contact'] / 60, TIME, 's')}"
            f" {'lie above, or too near,' if above else 'lie below'} the published threshold."
            " Seconds are never permission: pain and lighter burns come sooner."
        ),
    )


def _time(r):
    unit = "s" if r.value("time") < 2 else "min" if r.value("time") < 120 else "h"
    return r.amount(r.value("time"), TIME, unit, 2)


def notes(r):
    hands = " (".join(r.amount(HANDS, TEMPERATURE, unit, 3) for unit in ("°C", "°F"))
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


def picture(r):
    if not r.has("time"):
        return burn_curve(None, None)
    return burn_curve(min(r.given["temperature"], 72.0), 60 * r.value("time"))


CARD = Card(
    id="scald",
    chapter="safe",
    place=40,
    question="How fast does this bath burn?",
    inputs=(
        Input(
            TEMPERATURE,
            "Bath or steam on the skin",
            default="60 °C",
            allowed=("0 °C", "105 °C"),
            usual=("40 °C", "100 °C"),
            rough="1 °C",
            units=("°C", "°F"),
            strict=True,
            name="temperature",
        ),
        Input(
            CHOICE,
            "Whose skin",
            default=ADULT,
            options=(Option(ADULT, "An adult’s"), Option(YOUNG, "A child’s")),
            name="who",
        ),
        Input(
            TIME,
            "Contact you have in mind",
            default="2 s",
            allowed=("0.1 s", "10 min"),
            usual=("0.5 s", "60 s"),
            units=("s", "min"),
            unit="s",
            name="contact",
        ),
    ),
    results=(
        Result(
            TIME,
            "Deep burn after",
            units=("s",),
            finest=(0.1,),
            rounding="down",
            floor=0.0,
            name="time",
        ),
        Result(
            NUMBER,
            "Contact, times that",
            finest=(0.01,),
            rounding="up",
            floor=0.0,
            name="times_over",
        ),
        Result(TEXT, "Published limit", name="limit"),
    ),
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
