"""What is asked of a bath that is heated, and what follows from it."""

from __future__ import annotations

from dataclasses import replace

from ....core.asked import When
from ....core.card import CHOICE, TEXT, Between, Case, Input, Many, Option, Plain, Result
from ....core.ref import Field
from ....core.table import read_table
from ....core.units import ENERGY, MASS, MONEY, NUMBER, PERCENT, POWER, TEMPERATURE, TIME, VOLUME
from ....held import RECORD
from ....safe.burn_time import HANDS
from ...heat import heater_efficiencies, specific_heats
from ...inputs import ALTITUDE, BATH, YARN_IN_BATH

HEATERS = {row["heater"]: row for row in heater_efficiencies().rows}
HEATS = {row["what"]: row for row in specific_heats().rows}
LOSSES = {row["lid"]: row for row in read_table("dye", "pot-losses").rows}
FIBERS = {"wool": "wool", "cotton": "cotton", "nylon": "polyamide (nylon)"}  # as densities list it
POTS = ("stainless", "aluminum", "enamel")
DEGREES = ("°C", "°F")


def _degrees(
    label: str,
    default: str,
    allowed: tuple[str, str],
    usual: tuple[str, str],
    rough: str = "2 °C",
    when: When | None = None,
    said: str = "",
    bench: Field | None = None,
) -> Input[float]:
    return Input(
        TEMPERATURE,
        label,
        default=default,
        allowed=allowed,
        usual=usual,
        rough=rough,
        units=DEGREES,
        strict=True,
        when=when or {},
        measure=said,
        bench=bench,
    )


class BathHeat(Case):
    """A bath with yarn in it on a heater: how hot it is to be, how fast, and for how long."""

    bath = replace(BATH)
    fiber_mass = replace(YARN_IN_BATH)
    fiber = Input[str](
        CHOICE,
        "Mostly",
        default="wool",
        options=tuple(Option(key, HEATS[key]["label"]) for key in FIBERS),
    )
    pot_mass = Input[float](
        MASS,
        "The pot weighs, empty",
        default="2 kg",
        allowed=("0 g", "60 kg"),
        usual=("0.5 kg", "10 kg"),
        units=("kg", "g", "lb"),
        strict=True,
    )
    pot = Input[str](
        CHOICE,
        "Pot",
        default="stainless",
        options=tuple(Option(key, HEATS[key]["label"]) for key in POTS),
    )
    start = _degrees(
        "Bath now",
        "9 °C",
        ("1 °C", "99 °C"),
        ("5 °C", "40 °C"),
        said="Tap water, when it starts cold.",
        bench=RECORD.bench.tap,
    )
    top = _degrees("Heat to", "92 °C", ("20 °C", "100 °C"), ("60 °C", "95 °C"), "1 °C")
    hold = Input[float](
        TIME,
        "Hold",
        default="45 min",
        allowed=("0 min", "24 h"),
        usual=("20 min", "90 min"),
        units=("min", "h"),
        strict=True,
    )
    rate = Input[float](
        NUMBER,
        "No faster than, °C a minute",
        default="2",
        allowed=("0.1", "20"),
        usual=("0.5", "2"),
        strict=True,
    )
    room = _degrees("Room", "11 °C", ("-10 °C", "50 °C"), ("5 °C", "30 °C"))
    power = Input[float](
        POWER,
        "Plate or burner",
        default="2 kW",
        allowed=("0.1 kW", "50 kW"),
        usual=("0.5 kW", "5 kW"),
        units=("kW", "W", "BTU/h"),
        strict=True,
    )
    heater = Input[str](
        CHOICE,
        "Kind of heater",
        default="ring",
        options=tuple(Option(key, row["label"]) for key, row in HEATERS.items()),
    )
    efficiency = Input[float | None](
        PERCENT,
        "Share of it that reaches the bath",
        default="60 %",
        allowed=("5 %", "100 %"),
        usual=("30 %", "95 %"),
        rough="5 %",
        optional=True,
        strict=True,
        measure="From one timed heating; blank for what is usual of that heater.",
    )
    lid = Input[str](
        CHOICE,
        "Lid",
        default="lid",
        options=tuple(Option(key, row["label"]) for key, row in LOSSES.items()),
    )
    altitude = replace(ALTITUDE)
    begin = Input[str](TEXT, "You begin at", default="9:00", longest=5, lent=False)
    price = Input[float | None](
        MONEY, "A kilowatt-hour costs", default="0.30", allowed=("0", "10"), optional=True
    )
    cooled = Input[str](
        CHOICE,
        "Two readings of it cooling?",
        default="no",
        options=(Option("no", "No"), Option("yes", "Yes")),
    )
    MEASURED = {cooled: ("yes",)}
    first = _degrees(
        "First reading", "85 °C", ("10 °C", "100 °C"), ("40 °C", "98 °C"), when=MEASURED
    )
    second = _degrees(
        "Second reading", "70 °C", ("5 °C", "100 °C"), ("30 °C", "95 °C"), when=MEASURED
    )
    between = Input[float](
        TIME,
        "Minutes between them",
        default="45 min",
        allowed=("1 min", "24 h"),
        usual=("10 min", "3 h"),
        units=("min", "h"),
        when=MEASURED,
        strict=True,
    )
    touch = _degrees("Cool enough at", f"{HANDS:g} °C", ("10 °C", "60 °C"), ("25 °C", "45 °C"), "")
    pause_at = Input[float | None](
        TEMPERATURE,
        "Wait on the way at",
        allowed=("15 °C", "99 °C"),
        usual=("40 °C", "85 °C"),
        units=DEGREES,
        strict=True,
        optional=True,
        measure="Blank for straight up; uneven dyes are held at 60 to 70 °C.",
    )
    pause = Input[float](
        TIME,
        "Wait there for",
        default="15 min",
        allowed=("0 min", "12 h"),
        usual=("5 min", "60 min"),
        units=("min", "h"),
        strict=True,
    )

    c_water = Between[float](NUMBER, "Water takes up, J/(g K)")
    c_fiber = Between[float](NUMBER, "The fiber takes up, J/(g K)")
    c_pot = Between[float](NUMBER, "The pot takes up, J/(g K)")
    capacity = Between[float](NUMBER, "All of it takes up, kJ for each degree")
    share = Between[float](PERCENT, "Share of the plate’s power that reaches it")
    net = Between[float](POWER, "Power into the bath")
    fall = Between[float](NUMBER, "It nears the room’s temperature by this share a minute")
    loss = Between[float](NUMBER, "It loses, W for each degree above the room")
    full_power = Many(TIME, "Minutes {} at full power")
    ramp = Many(TIME, "Minutes {} at the pace wanted, where the plate can keep it")
    lost = Many(ENERGY, "Lost to the room on the way {}")
    kept = Many(ENERGY, "Lost in {}, and made up for")
    until_hold = Between[float](TIME, "Until the hold begins, at the pace wanted")
    program = Plain[list[tuple[float, float]]]()  # minutes from the beginning, and °C
    began = Plain[int]()  # minutes after midnight
    density = Between[float](NUMBER, "Density of the fiber, g/cm³")

    minutes = Result[float](
        TIME,
        "Heating at full power, losses and all",
        units=("min",),
        finest=(1,),
        rounding="up",
        floor=0.0,
        timer=True,
    )
    bare = Result[float](TIME, "without losses", units=("min",), finest=(1,), floor=0.0)
    hold_time = Result[float](TIME, "Hold", units=("min",), finest=(1,), timer=True)
    whole = Result[float](
        TIME, "From start to the end of the hold", units=("min", "h"), finest=(1, 0.1), floor=0.0
    )
    cool = Result[float](
        TIME, "Cooling down, heat off", units=("min", "h"), finest=(5, 0.1), floor=0.0, timer=True
    )
    energy = Result[float](
        ENERGY, "Energy into the bath", units=("kWh", "BTU"), finest=(0.01, 50), floor=0.0
    )
    metered = Result[float](
        ENERGY,
        "by the meter, without losses",
        units=("kWh",),
        finest=(0.01,),
        rounding="up",
        floor=0.0,
    )
    used = Result[float](
        ENERGY,
        "by the meter, losses and hold",
        units=("kWh",),
        finest=(0.01,),
        rounding="up",
        floor=0.0,
    )
    cost = Result[float](MONEY, "It costs", finest=(0.01,), rounding="up", floor=0.0)
    level = Result[float](VOLUME, "Bath and yarn stand at", units=("L", "qt"), finest=(0.1, 0.1))
    boils = Result[float](TEMPERATURE, "Water boils here at", units=("°C", "°F"), finest=(0.5, 1))
