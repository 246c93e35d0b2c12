"""Heating a bath: energy, time, cost, a program of ramps and holds with clock times, and when it has cooled."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result
from ...core.problem import OutOfRange, Refused
from ...core.table import read_table
from ...core.units import ENERGY, LENGTH, MASS, MONEY, NUMBER, PERCENT, POWER, TEMPERATURE, TIME, VOLUME
from ...safe.scald import HANDS
from ...sources import ANTOINE_WATER, COMMON_PRACTICE, CPSC_CARBON_MONOXIDE, HEAT_HANDBOOK, MORTON_HEARLE_2008, MORTON_HEARLE_HEAT, POCKET_REF_BOILING, STANDARD_ATMOSPHERE
from ..cautions import gas_indoors, one_circuit, soda_in_aluminum
from ..heat import (cooled_to, cooling_rate, cooling_time, energy_cost, energy_to_heat, heat_capacity, heater_efficiencies, heating_time, holding_energy, loss_from_cooling, plate_energy,
                    power_into_bath, specific_heats)
from ..pictures.heat import heat_picture
from ..ramp import bath_program, clock_time, lost_on_the_way, minutes_of_clock, ramp_time
from ..recipe import yarn_displacement
from ..water import air_pressure, boiling_point, highest_setting, vapor_pressure

HEATERS = {row["heater"]: row for row in heater_efficiencies().rows}
HEATS = {row["what"]: row for row in specific_heats().rows}
FIBERS, POTS = {"wool": "wool", "cotton": "cotton", "nylon": "polyamide (nylon)"}, ("stainless", "aluminum", "enamel")
LOSSES = {row["lid"]: row for row in read_table("dye", "pot-losses").rows}


def answer(w, bath, fiber_mass, fiber, pot_mass, pot, start, top, hold, rate, room, power, heater, efficiency, lid, altitude, begin, price, cooled, first, second, between, touch, pause_at, pause):
    boils = w.solved("boils", "vapor_pressure(boils) - air_pressure(altitude)", boiling_point(altitude), TEMPERATURE, label="Water boils here at", using=(vapor_pressure, air_pressure))
    ceiling = highest_setting(altitude)
    if top > boils:
        raise Refused(f"Heat to: water boils at {boils:.0f} °C at that height; give {ceiling:.0f} °C or less.", "top")
    if top < start:
        raise Refused("Heat to: that is colder than the bath already is; give a higher temperature.", "top")
    c_water = w.looked_up("c_water", "dye", "specific-heats", "what", "water", "heat", label="Water takes up, J/(g K)")
    c_fiber = w.looked_up("c_fiber", "dye", "specific-heats", "what", fiber, "heat", label="The fiber takes up, J/(g K)")
    c_pot = w.looked_up("c_pot", "dye", "specific-heats", "what", pot, "heat", label="The pot takes up, J/(g K)")
    capacity = w.step("capacity", "(bath * c_water + fiber_mass * c_fiber + pot_mass * c_pot) / 1000", heat_capacity(bath, fiber_mass, pot_mass, c_fiber, c_pot), NUMBER, label="All of it takes up, kJ for each degree")
    energy = w.step("energy", "capacity * (top - start) / 3600", energy_to_heat(capacity, start, top), ENERGY, label="Energy into the bath")
    share = efficiency
    if efficiency is None:
        row = HEATERS[heater]
        share = w.looked_up("efficiency", "dye", "heater-efficiencies", "heater", heater, "middle", PERCENT, label="Share of the plate’s power that reaches it")
    metered = w.step("metered", "100 * energy / efficiency", plate_energy(energy, share), ENERGY, label="Energy by the meter, without losses")
    net = power_into_bath(power, share)
    w.step("net", "power * efficiency / 100", net, POWER, label="Power into the bath")
    if cooled == "yes":
        if not first > second > room:
            raise Refused("Cooling: the second reading must be cooler than the first and warmer than the room.", "second")
        fall = w.step("fall", "ln((first - room) / (second - room)) / between", cooling_rate(first, second, room, between), NUMBER, label="It nears the room’s temperature by this share a minute")
        loss = w.step("loss", "fall * capacity * 1000 / 60", loss_from_cooling(fall, capacity), NUMBER, label="It loses, W for each degree above the room")
    else:
        loss = w.looked_up("loss", "dye", "pot-losses", "lid", lid, "middle", label="It loses, W for each degree above the room")
        fall = w.step("fall", "60 * loss / (capacity * 1000)", 60 * loss / (capacity * 1000), NUMBER, label="It nears the room’s temperature by this share a minute")
    try:
        minutes = heating_time(capacity, net, start, top, loss, room)
    except OutOfRange as error:
        raise Refused(f"Plate: {error.reason}.", "power") from None
    w.step("minutes", "1000 * capacity / loss * ln((room + 1000 * net / loss - start) / (room + 1000 * net / loss - top)) / 60", minutes, TIME, label="Time to heat at full power, losses and all")
    bare = w.step("bare", "capacity * (top - start) / (60 * net)", heating_time(capacity, net, start, top), TIME, label="without losses")
    legs = _legs(start, top, hold, pause_at, pause)
    program = bath_program(start, [(hot, rate, wait) for _, hot, wait in legs], capacity, net, loss, room)
    lost = _leg_steps(w, legs, rate, capacity, net, loss, room)
    used = w.step("used", f"100 * (energy + {' + '.join(f'lost_{number} + kept_{number}' for number in range(1, len(legs) + 1))}) / efficiency", plate_energy(max(energy + lost, 0.0), share), ENERGY, label="Energy by the meter, losses and hold")
    cool = cooling_time(fall, top, touch, room) if touch > room + 0.5 and touch < top else None
    density = w.looked_up("density", "yarn", "morton-hearle-fiber-densities", "fiber", FIBERS[fiber], "at_65", label="Density of the fiber, g/cm³")
    level = w.step("level", "bath + fiber_mass / density", bath + (yarn_displacement(fiber_mass, density) if fiber_mass else 0.0), VOLUME, label="Bath and yarn stand at")
    _bands(w, (capacity, net, start, top, rate, legs, room, touch, share, energy), loss, HEATERS[heater] if efficiency is None else None, LOSSES[lid] if cooled == "no" else None, price)
    return {"energy": energy, "metered": metered, "used": used, "minutes": minutes, "bare": bare, "cost": energy_cost(used, price) if price is not None else None, "boils": boils, "whole": program[-1][0],
            "hold_time": hold or None, "cool": cool, "level": level, "program": program, "fall": fall, "begin": _clock(begin)}


def _legs(start, top, hold, pause_at, pause):
    """The way up in straight pieces: °C from, °C to, and minutes of waiting there."""
    if pause_at is None:
        return [(start, top, hold)]
    if not start < pause_at < top:
        raise Refused(f"Wait on the way at: give more than the {start:.3g} °C of the bath and less than the {top:.3g} °C it is heated to.", "pause_at")
    return [(start, pause_at, pause), (pause_at, top, hold)]


def _leg_steps(w, legs, rate, capacity, net, loss, room):
    """Each piece of the way up in the working; what they lose in all, kWh."""
    names = (("start", "top", "hold"),) if len(legs) == 1 else (("start", "pause_at", "pause"), ("pause_at", "top", "hold"))
    total = 0.0
    for number, ((cold, hot, wait), (from_name, to_name, wait_name)) in enumerate(zip(legs, names), 1):
        of = "" if len(legs) == 1 else f", part {number}"
        power = "minutes" if not of else f"1000 * capacity / loss * ln((room + 1000 * net / loss - {from_name}) / (room + 1000 * net / loss - {to_name})) / 60"
        ramp = w.step(f"ramp_{number}", f"max(({to_name} - {from_name}) / rate, {power})", ramp_time(cold, hot, rate, capacity, net, loss, room), TIME, label=f"Heating at the pace wanted, where the plate can keep it{of}")
        full = ramp > (hot - cold) / rate
        text = f"net * ramp_{number} / 60 - capacity * ({to_name} - {from_name}) / 3600" if full else f"loss / 1000 * (({from_name} + {to_name}) / 2 - room) * ramp_{number} / 60"
        total += w.step(f"lost_{number}", text, lost_on_the_way(cold, hot, rate, capacity, net, loss, room), ENERGY, label=f"Lost to the room on the way up{of}")
        total += w.step(f"kept_{number}", f"loss / 1000 * max({to_name} - room, 0) * {wait_name} / 60", holding_energy(loss, max(hot, room), room, wait), ENERGY,
                        label="Lost in the hold, and made up for" if number == len(legs) else "Lost while it waits, and made up for")
    return total


def _clock(text):
    try:
        return minutes_of_clock(text)
    except OutOfRange:
        raise Refused("You begin at: give a time of day such as 9:30.", "begin") from None


def _bands(w, known, loss, heater, losses, price):
    """What a guessed efficiency and a guessed loss leave open: the plate at its worst in a pot that loses most, and the other way."""
    capacity, net, start, top, rate, legs, room, touch, share, energy = known
    found = {"minutes": [], "whole": [], "used": [], "metered": [], "cool": []}
    for end, other in (("low", "high"), ("high", "low")):
        scale, lost = heater[end] / share if heater else 1.0, losses[other] if losses else loss
        plate = net * scale
        try:
            minutes = heating_time(capacity, plate, start, top, lost, room)
            whole = sum(ramp_time(cold, hot, rate, capacity, plate, lost, room) + wait for cold, hot, wait in legs)
            into = energy + sum(lost_on_the_way(cold, hot, rate, capacity, plate, lost, room) + holding_energy(lost, max(hot, room), room, wait) for cold, hot, wait in legs)
        except OutOfRange:  # so weak a plate never gets there: three times its time without losses stands for that
            minutes = 3 * heating_time(capacity, plate, start, top)
            whole = minutes + sum(wait for _, _, wait in legs)
            into = plate * minutes / 60 + holding_energy(lost, max(top, room), room, legs[-1][2])
        found["minutes"].append(minutes)
        found["whole"].append(whole)
        found["used"].append(100 * max(into, 0.0) / (share * scale))
        if heater:
            found["metered"].append(100 * energy / (share * scale))
        if room + 0.5 < touch < top:
            found["cool"].append(cooling_time(60 * lost / (1000 * capacity), top, touch, room))
    found["cost"] = [energy_cost(each, price) for each in found["used"]] if price is not None else []
    for name, ends in found.items():
        if ends:
            w.band(name, min(ends), max(ends))


def say(r):
    begin = r.kept["begin"]
    program = r.kept["program"]
    heat = next((minutes for minutes, temperature in program if abs(temperature - r.given["top"]) < 1e-6), program[-1][0])
    first = f"It is at {r.amount(r.given['top'], TEMPERATURE, '°C', 3)} about {clock_time(begin, heat)}, and the hold ends at {clock_time(begin, r.value('whole'))}."
    waited = r.given["pause"] if r.given["pause_at"] is not None else 0.0
    slow = "" if heat - waited <= r.value("minutes") * 1.02 else f" At {r.given['rate']:g} °C a minute the plate is turned down."
    return first, f"Heating takes {r.text('minutes')} at full power ({r.span('minutes')}); heating and hold take {r.text('used')} by the meter.{slow}"


def notes(r):
    said = [f"Water boils at {r.text('boils')} at that height: set points must stay below it."]
    if r.has("cool"):
        said.append(f"With the heat off and the lid as it is, it is down to {r.amount(r.given['touch'], TEMPERATURE, '°C', 3)} after about {r.text('cool', 'h')} ({r.span('cool', 'h')}); hands go in at {r.amount(HANDS, TEMPERATURE, '°C', 3)} ({r.amount(HANDS, TEMPERATURE, '°F', 3)}) or less.")
    if r.given["cooled"] == "no":
        said.append("What the pot loses is a guess by its lid. Two readings while it cools replace the guess.")
    said.append(f"Bath and yarn stand at {r.text('level', 'L')}: that must lie under the pot’s fill line.")
    if r.given["rate"] > 1.5:
        said.append("Wool dyes evenest at about 1 °C a minute, slower from 60 to 85 °C (textbook, from memory).")
    return said


def _points(r):
    """What each point of the program is."""
    waits = [] if r.given["pause_at"] is None else ["Wait begins", "Wait ends"] if r.given["pause"] else ["On the way"]
    return ["Into the bath", *waits, "At temperature", *(["Hold ends"] if r.given["hold"] else [])]


def clock(r):
    begin, program = r.kept["begin"], r.kept["program"]
    words = _points(r)
    rows = [(clock_time(begin, minutes), word, r.amount(temperature, TEMPERATURE, "°C", 3), r.amount(temperature, TEMPERATURE, "°F", 3)) for (minutes, temperature), word in zip(program, words)]
    if r.has("cool"):
        rows.append((clock_time(begin, r.value("whole") + r.value("cool")), "Cooled down", r.amount(r.given["touch"], TEMPERATURE, "°C", 3), r.amount(r.given["touch"], TEMPERATURE, "°F", 3)))
    return Table("By the clock", ("Time", "What", "°C", "°F"), tuple(rows))


def picture(r):
    us = r.settings.system == "us"
    sign = "°F" if us else "°C"
    shown = (lambda celsius: celsius * 9 / 5 + 32) if us else (lambda celsius: celsius)
    program = r.kept["program"]
    cooling = []
    if r.has("cool"):
        whole, room = r.value("whole"), r.given["room"]
        cooling = [(whole + r.value("cool") * k / 8, shown(cooled_to(r.kept["fall"], r.given["top"], room, r.value("cool") * k / 8))) for k in range(1, 9)]
    return heat_picture([(minutes, shown(temperature)) for minutes, temperature in program], [words[0].lower() + words[1:] for words in _points(r)], r.kept["begin"],
                        shown(r.value("boils")), sign, cooling)


def _ramp(r):
    """Until the hold begins, at the pace wanted."""
    return f"{r.value('whole') - (r.value('hold_time') if r.has('hold_time') else 0):.4g}min"


DEGREES = ("°C", "°F")


def _degrees(name, label, default, allowed, usual, rough="2 °C", when=None, said="", bench=""):
    return Input(name, TEMPERATURE, label, default=default, allowed=allowed, usual=usual, rough=rough, units=DEGREES, strict=True, when=when or {}, measure=said, bench=bench)


MEASURED = {"cooled": ("yes",)}

CARD = Card(
    id="bath-heat", chapter="dye", place=40, handles=("heat",),
    question="When will it be hot, and when can I lift it out?",
    inputs=(
        Input("bath", VOLUME, "Bath", default="9 L", allowed=("0.1 L", "500 L"), usual=("1 L", "40 L"), rough="3 %", units=("L", "mL", "gal"), bench="pots.fill", strict=True),
        Input("fiber_mass", MASS, "Yarn in it, dry", default="400 g", allowed=("0 g", "50 kg"), usual=("50 g", "2 kg"), units=("g", "oz"), strict=True),
        Input("fiber", CHOICE, "Mostly", default="wool", options=tuple(Option(key, HEATS[key]["label"]) for key in FIBERS)),
        Input("pot_mass", MASS, "The pot weighs, empty", default="2 kg", allowed=("0 g", "60 kg"), usual=("0.5 kg", "10 kg"), units=("kg", "g", "lb"), strict=True),
        Input("pot", CHOICE, "Pot", default="stainless", options=tuple(Option(key, HEATS[key]["label"]) for key in POTS)),
        _degrees("start", "Bath now", "9 °C", ("1 °C", "99 °C"), ("5 °C", "40 °C"), said="Tap water, when it starts cold.", bench="tap"),
        _degrees("top", "Heat to", "92 °C", ("20 °C", "100 °C"), ("60 °C", "95 °C"), "1 °C"),
        Input("hold", TIME, "Hold", default="45 min", allowed=("0 min", "24 h"), usual=("20 min", "90 min"), units=("min", "h"), strict=True),
        Input("rate", NUMBER, "No faster than, °C a minute", default="2", allowed=("0.1", "20"), usual=("0.5", "2"), strict=True),
        _degrees("room", "Room", "11 °C", ("-10 °C", "50 °C"), ("5 °C", "30 °C")),
        Input("power", POWER, "Plate or burner", default="2 kW", allowed=("0.1 kW", "50 kW"), usual=("0.5 kW", "5 kW"), units=("kW", "W", "BTU/h"), strict=True),
        Input("heater", CHOICE, "Kind of heater", default="ring", options=tuple(Option(key, row["label"]) for key, row in HEATERS.items())),
        Input("efficiency", PERCENT, "Share of it that reaches the bath", default="60 %", allowed=("5 %", "100 %"), usual=("30 %", "95 %"), rough="5 %", optional=True, strict=True,
              measure="From one timed heating; blank for what is usual of that heater."),
        Input("lid", CHOICE, "Lid", default="lid", options=tuple(Option(key, row["label"]) for key, row in LOSSES.items())),
        Input("altitude", LENGTH, "Height above the sea", default="900 m", allowed=("-400 m", "5000 m"), usual=("0 m", "2500 m"), units=("m", "ft"), bench="altitude", strict=True),
        Input("begin", TEXT, "You begin at", default="9:00", longest=5, lent=False),
        Input("price", MONEY, "A kilowatt-hour costs", default="0.30", allowed=("0", "10"), optional=True),
        Input("cooled", CHOICE, "Two readings of it cooling?", default="no", options=(Option("no", "No"), Option("yes", "Yes"))),
        _degrees("first", "First reading", "85 °C", ("10 °C", "100 °C"), ("40 °C", "98 °C"), when=MEASURED),
        _degrees("second", "Second reading", "70 °C", ("5 °C", "100 °C"), ("30 °C", "95 °C"), when=MEASURED),
        Input("between", TIME, "Minutes between them", default="45 min", allowed=("1 min", "24 h"), usual=("10 min", "3 h"), units=("min", "h"), when=MEASURED, strict=True),
        _degrees("touch", "Cool enough at", f"{HANDS:g} °C", ("10 °C", "60 °C"), ("25 °C", "45 °C"), ""),
        Input("pause_at", TEMPERATURE, "Wait on the way at", allowed=("15 °C", "99 °C"), usual=("40 °C", "85 °C"), units=DEGREES, strict=True, optional=True, measure="Blank for straight up; uneven dyes are held at 60 to 70 °C."),
        Input("pause", TIME, "Wait there for", default="15 min", allowed=("0 min", "12 h"), usual=("5 min", "60 min"), units=("min", "h"), strict=True),
    ),
    results=(
        Result("minutes", TIME, "Heating at full power, losses and all", units=("min",), finest=(1,), rounding="up", floor=0.0, timer=True),
        Result("bare", TIME, "without losses", units=("min",), finest=(1,), floor=0.0),
        Result("hold_time", TIME, "Hold", units=("min",), finest=(1,), timer=True),
        Result("whole", TIME, "From start to the end of the hold", units=("min", "h"), finest=(1, 0.1), floor=0.0),
        Result("cool", TIME, "Cooling down, heat off", units=("min", "h"), finest=(5, 0.1), floor=0.0, timer=True),
        Result("energy", ENERGY, "Energy into the bath", units=("kWh", "BTU"), finest=(0.01, 50), floor=0.0),
        Result("metered", ENERGY, "by the meter, without losses", units=("kWh",), finest=(0.01,), rounding="up", floor=0.0),
        Result("used", ENERGY, "by the meter, losses and hold", units=("kWh",), finest=(0.01,), rounding="up", floor=0.0),
        Result("cost", MONEY, "It costs", finest=(0.01,), rounding="up", floor=0.0),
        Result("level", VOLUME, "Bath and yarn stand at", units=("L", "qt"), finest=(0.1, 0.1)),
        Result("boils", TEMPERATURE, "Water boils here at", units=("°C", "°F"), finest=(0.5, 1)),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(clock,), link_version=2, upgrades={1: lambda pairs: pairs},  # the wait on the way came after all that was asked before
    basis=Basis(MODEL, "Heat capacity times rise; losses in proportion to how much hotter than the room it is (Newton). Efficiencies and losses are from memory or common practice, and wide."),
    sources=(HEAT_HANDBOOK, ANTOINE_WATER, STANDARD_ATMOSPHERE, POCKET_REF_BOILING, MORTON_HEARLE_2008, MORTON_HEARLE_HEAT, CPSC_CARBON_MONOXIDE, COMMON_PRACTICE),
    cautions=(Caution("Hot bath, steam, heater.", "Stay with it. Open the lid away from you; do not carry a hot pot: let it cool, bail or drain it. Handles turned in, cables dry, no heater left on unwatched."),
              gas_indoors(lambda r: r.given["heater"] == "gas"), one_circuit(lambda r: r.given["heater"] != "gas"), soda_in_aluminum(lambda r: r.given["pot"] == "aluminum")),
    carry=(Carry("scald", "How hot is too hot to touch?", {"temperature": "top"}), Carry("pots", "How long does the whole run take?", {"steps.3.minutes": _ramp, "steps.4.minutes": "hold"}),
           Carry("drain-check", "May it go down the drain, cooled?", {"volume": "bath", "temperature": "touch"}), Carry("lift", "May I lift it?", {})),
)
