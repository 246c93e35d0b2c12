"""How long yarn takes to dry on the rail, and when it may be weighed and labeled."""

from ...core.card import CHOICE, MODEL, Basis, Card, Carry, Caution, Input, Option, Result
from ...core.problem import OutOfRange, Refused
from ...core.units import COUNT, LENGTH, MASS, NUMBER, PERCENT, TEMPERATURE, TIME
from ...sources import ANTOINE_WATER, COMMON_PRACTICE, REGAIN_CURVES, TRADE_MEMORY
from ..drying import (
    AT_REST,
    NEAR_REST,
    PACE_FALLS,
    STILL_AIR,
    WITH_FAN,
    drying_hours,
    pace_from_weighing,
    pace_in_room,
    skeins_on_rail,
    vapor_lack,
    water_to_lose,
    weight_when_ready,
)
from ...yarn.moisture import regain_from_masses
from ..pictures.drying import drying_picture
from ..water import vapor_pressure


def answer(
    w,
    dry_mass,
    dry_regain,
    wet_mass,
    temperature,
    humidity,
    rest,
    fan,
    weighed,
    weighed_mass,
    after,
    skeins,
    rail,
    each,
):
    oven = w.step(
        "oven",
        "dry_mass / (1 + dry_regain / 100)",
        dry_mass / (1 + dry_regain / 100),
        MASS,
        label="Oven-dry",
    )
    if wet_mass <= oven * (1 + rest / 100):
        raise Refused(
            "Weight wet: that is no heavier than the yarn at rest in this room; weigh it again.",
            "wet_mass",
        )
    wet = w.step(
        "wet",
        "100 * (wet_mass - oven) / oven",
        regain_from_masses(wet_mass, oven),
        PERCENT,
        label="Water in it, of its oven-dry weight",
    )
    water = w.step(
        "water",
        "wet_mass - oven * (1 + rest / 100)",
        water_to_lose(wet_mass, oven, rest),
        MASS,
        label="Water to lose",
    )
    lack = w.solved(
        "lack",
        "vapor_pressure(temperature) * (1 - humidity / 100) - lack",
        vapor_lack(temperature, humidity),
        NUMBER,
        label="Vapor that the room’s air still lacks, kPa",
        using=(vapor_pressure,),
    )
    ready = w.step(
        "ready",
        f"rest + {NEAR_REST:g}",
        rest + NEAR_REST,
        PERCENT,
        label="Water at which it is dry enough",
    )
    falls = w.step(
        "falls",
        f"max({PACE_FALLS[1]:g}, rest + 2)",
        max(PACE_FALLS[1], rest + 2),
        PERCENT,
        label="Water below which the pace falls (common practice)",
    )
    paces = None
    if weighed == "yes":
        now = regain_from_masses(weighed_mass, oven) if weighed_mass > oven else 0.0
        if not rest < now < wet:
            raise Refused(
                "Weighed again: it must be lighter than wet and heavier than at rest in this room.",
                "weighed_mass",
            )
        w.step(
            "now",
            "100 * (weighed_mass - oven) / oven",
            now,
            PERCENT,
            label="Water in it at the second weighing",
        )
        pace = w.solved(
            "pace",
            "pace_from_weighing(wet, now, rest, after / 60, falls) - pace",
            pace_from_weighing(wet, now, rest, after / 60, falls),
            NUMBER,
            label="Pace at first, points of water an hour",
            using=(pace_from_weighing,),
        )
        edges = [
            pace_from_weighing(wet, now, rest, after / 60, max(end, rest + 2))
            for end in (PACE_FALLS[0], PACE_FALLS[2])
        ]
        paces = (min(pace, *edges), pace, max(pace, *edges))
        hours = [drying_hours(wet, ready, rest, pace, falls) if ready < wet else 0.0]
        hours += (
            [
                drying_hours(wet, ready, rest, edge, max(end, rest + 2))
                for edge, end in zip(edges, (PACE_FALLS[0], PACE_FALLS[2]))
            ]
            if ready < wet
            else []
        )
    else:
        try:
            blow = WITH_FAN if fan == "yes" else (1.0, 1.0, 1.0)
            paces = tuple(pace_in_room(lack, still, times) for still, times in zip(STILL_AIR, blow))
        except OutOfRange as error:
            raise Refused(f"Humidity of the room: {error.reason}.", "humidity") from None
        pace = w.step(
            "pace",
            f"lack * {STILL_AIR[1]:g} * {blow[1]:g}",
            paces[1],
            NUMBER,
            label="Pace at first, points of water an hour (common practice)",
        )
        hours = [
            drying_hours(wet, ready, rest, each_pace, falls) if ready < wet else 0.0
            for each_pace in (paces[1], paces[0], paces[2])
        ]
    time = (
        w.solved(
            "time",
            "60 * drying_hours(wet, ready, rest, pace, falls) - time",
            60 * hours[0],
            TIME,
            label="Time to dry, steady and then slower",
            using=(drying_hours,),
        )
        if ready < wet
        else 0.0
    )
    w.band("time", 60 * min(hours), 60 * max(hours))
    on_rail = skeins_on_rail(rail, each)
    if on_rail < 1:
        raise Refused(
            "Rail: not one skein fits on it; give a longer rail or less room for each.", "rail"
        )
    rounds = -(-skeins // on_rail)
    w.searched(
        "rounds",
        rounds,
        (f"rounds * {on_rail} >= skeins",),
        f"skeins / {on_rail}",
        label=f"Rail fillings, {on_rail} skeins at once",
    )
    all_of_it = time * rounds
    if time:
        w.step("all", "time * rounds", all_of_it, TIME, label="All of them")
    w.band("all", 60 * min(hours) * rounds, 60 * max(hours) * rounds)
    ready_mass = w.step(
        "ready_mass",
        f"oven * (1 + (rest + {NEAR_REST:g}) / 100)",
        weight_when_ready(oven, rest),
        MASS,
        label="Weigh it for sale at or under",
    )
    return {
        "time": time,
        "all": all_of_it,
        "rounds": rounds,
        "water": water,
        "wet": wet,
        "ready_mass": ready_mass,
        "lack": lack,
        "paces": paces,
        "falls": falls,
        "ready": ready,
        "weighed_at": (
            (after / 60, regain_from_masses(weighed_mass, oven)) if weighed == "yes" else None
        ),
    }


def say(r):
    more = (
        f" All {r.given['skeins']} take {r.text('all')} in {r.number(r.value('rounds'))} rail"
        " fillings."
        if r.value("rounds") > 1
        else ""
    )
    return (
        f"It is dry after about {r.text('time')} ({r.span('time')}).",
        (
            f"{r.text('water', 'g')} of water must go. Weigh for sale at or under"
            f" {r.text('ready_mass', 'g')}.{more}"
        ),
    )


def notes(r):
    said = [
        f"At rest when it changes by no more than {AT_REST:g} % in two hours (the trade’s rule,"
        " from memory, unverified)."
    ]
    if r.given["weighed"] == "no":
        said.append(
            "The pace is a guess by the room, and wide. One weighing after a few hours replaces it."
        )
    if r.given["humidity"] >= 85:
        said.append(
            "Air this damp hardly takes water: warm the room or let drier air in, or it smells"
            " before it dries."
        )
    said.append(
        "Yarn never gets drier than the room lets it: the weight on the label is that of a rested"
        " skein, not of a damp day."
    )
    return said


def picture(r):
    wet, ready = r.value("wet"), r.kept["ready"]
    return (
        drying_picture(
            wet, r.given["rest"], ready, r.kept["paces"], r.kept["falls"], r.kept["weighed_at"]
        )
        if ready < wet
        else None
    )


AGAIN = {"weighed": ("yes",)}

CARD = Card(
    id="drying",
    chapter="dye",
    place=100,
    handles=("heat",),
    question="When is it dry enough to weigh and label?",
    inputs=(
        Input(
            MASS,
            "It weighed, dry",
            record="dye-lot.mass",
            default="400 g",
            allowed=("1 g", "50 kg"),
            usual=("50 g", "2 kg"),
            rough="1 g",
            units=("g", "oz"),
            name="dry_mass",
        ),
        Input(
            PERCENT,
            "Regain then",
            default="13 %",
            allowed=("0 %", "40 %"),
            usual=("5 %", "18 %"),
            rough="1 %",
            measure=(
                "Water in dry wool, of its oven-dry weight; see “It says 100 g, mine says 103”."
            ),
            name="dry_regain",
        ),
        Input(
            MASS,
            "It weighs, wet",
            default="760 g",
            allowed=("1 g", "100 kg"),
            usual=("80 g", "5 kg"),
            rough="2 g",
            units=("g", "oz"),
            measure="Spun about 1.6 times the dry weight, hand-squeezed 2 to 3 times.",
            name="wet_mass",
        ),
        Input(
            TEMPERATURE,
            "Room",
            default="11 °C",
            allowed=("2 °C", "45 °C"),
            usual=("8 °C", "30 °C"),
            rough="1 °C",
            units=("°C", "°F"),
            name="temperature",
        ),
        Input(
            PERCENT,
            "Humidity of the room",
            default="78 %",
            allowed=("5 %", "98 %"),
            usual=("30 %", "85 %"),
            rough="5 %",
            name="humidity",
        ),
        Input(
            PERCENT,
            "Regain at rest in that room",
            default="15.5 %",
            allowed=("0 %", "40 %"),
            usual=("5 %", "20 %"),
            rough="1 %",
            measure="Wool about 13 to 16, cotton 7 to 9; from memory, unverified.",
            name="rest",
        ),
        Input(
            CHOICE,
            "A fan on it?",
            default="no",
            options=(Option("no", "No"), Option("yes", "Yes")),
            name="fan",
        ),
        Input(
            CHOICE,
            "Weighed again since?",
            default="no",
            options=(Option("no", "No"), Option("yes", "Yes")),
            name="weighed",
        ),
        Input(
            MASS,
            "It weighed then",
            default="620 g",
            allowed=("1 g", "100 kg"),
            usual=("60 g", "4 kg"),
            rough="2 g",
            units=("g", "oz"),
            when=AGAIN,
            name="weighed_mass",
        ),
        Input(
            TIME,
            "after",
            default="8 h",
            allowed=("10 min", "20 day"),
            usual=("1 h", "24 h"),
            units=("h", "min"),
            when=AGAIN,
            name="after",
        ),
        Input(
            COUNT,
            "Skeins in all",
            default="24",
            allowed=("1", "2000"),
            usual=("1", "100"),
            name="skeins",
        ),
        Input(
            LENGTH,
            "Rail",
            default="3 m",
            allowed=("0.1 m", "200 m"),
            usual=("1 m", "12 m"),
            units=("m", "ft"),
            name="rail",
        ),
        Input(
            LENGTH,
            "One skein takes",
            default="12 cm",
            allowed=("2 cm", "1 m"),
            usual=("8 cm", "25 cm"),
            units=("cm", "in"),
            measure="With air beside it.",
            name="each",
        ),
    ),
    results=(
        Result(
            TIME, "Time to dry", units=("h",), finest=(1,), rounding="up", floor=0.0, name="time"
        ),
        Result(MASS, "Water to lose", units=("g", "oz"), finest=(1, 0.1), floor=0.0, name="water"),
        Result(
            MASS,
            "Weigh it for sale at or under",
            units=("g", "oz"),
            finest=(1, 0.1),
            rounding="down",
            name="ready_mass",
        ),
        Result(COUNT, "Rail fillings", rounding="up", name="rounds"),
        Result(
            TIME,
            "All of them",
            units=("h", "day"),
            finest=(1, 0.1),
            rounding="up",
            floor=0.0,
            name="all",
        ),
        Result(
            PERCENT, "Water in it now, of its oven-dry weight", finest=(1,), floor=0.0, name="wet"
        ),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        MODEL,
        "A steady pace by what vapor the air lacks, then a falling one down to the room’s regain."
        " The pace is common practice and wide until you weigh once on the way.",
    ),
    sources=(ANTOINE_WATER, REGAIN_CURVES, TRADE_MEMORY, COMMON_PRACTICE),
    cautions=(
        Caution(
            "No rushing with a heater.",
            "Yarn on or over a heater is a fire risk, and hot damp air feeds mildew: move the air"
            " instead. Never leave a heater or a fan heater on unwatched.",
        ),
    ),
    carry=(
        Carry("pots", "How long does the whole run take, drying and all?", {"drying": "time"}),
        Carry("true-weight", "It says 100 g, mine says 103", {}),
        Carry("skein-length", "Measure it for the label", {}),
    ),
)
