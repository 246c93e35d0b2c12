"""What vapor or dye dust does to the air of the room: controls first, then a rough figure beside the published limits."""

from ...core.answer import Table
from ...core.card import (
    CHOICE,
    MODEL,
    TEXT,
    Basis,
    Card,
    Carry,
    Caution,
    Input,
    Option,
    Result,
    Rows,
    row_of,
)
from ...core.table import read_table
from ...core.units import CONCENTRATION, COUNT, LENGTH, NUMBER, PERCENT, TIME, VOLUME
from ...sources import (
    CAL_AC1,
    CDC_2003,
    COMMON_PRACTICE,
    HSE_DYES,
    NIOSH_LIMITS,
    OSHA_1910_1000,
    SANDER_2023,
    TRADE_MEMORY,
    UK_EH40,
)
from ..air import clearing_time, day_mean, emission, mixture_index, ppm, room_level, vapor_pressure
from ..exposure import ceiling, dangerous, limits_words, stricter, stricter_short
from ..limits import published
from ..pictures.bars import shares_of_limit

VAPOR, POWDER = "vapor", "powder"
NOBODY, PREGNANT, LUNGS, CHILDREN, FOOD = "none", "pregnant", "lungs", "children", "food"
STOPS = {
    PREGNANT: (
        "Stop: pregnant or nursing, leave this work to someone else until a doctor has seen the"
        " data sheets."
    ),
    LUNGS: "Stop: with asthma or a dye allergy, keep out of the room; ask a doctor first.",
    CHILDREN: "Stop: no powder, acid or boiling bath while children or pets are in the room.",
    FOOD: "Stop: no dyeing where food is made; no pot, spoon or sink goes back to food.",
}
KNOWN = "known"
VAPOR_FIRST = (
    "1 lid on; 2 citric acid in place of vinegar (no vapor to speak of); 3 fan blowing out of the"
    " window; 4 mask with the right cartridge, last"
)
DUST_FIRST = (
    "1 still box, lid on the jar; 2 wet paper, paste with water, liquid stocks made once; 3 no fan"
    " while powder is open; 4 fitted particle mask, last"
)
# Each share of a limit that is answered: when it is meant, of what it is a share, and where one level counts, how its limit is found.
SHARES = {
    "index": ("Over the day", "the stricter 8-hour limit", None),
    "short": ("In the worst quarter of an hour", "the stricter 15-minute limit", stricter_short),
    "ceiling": ("At its highest", "the published ceiling", ceiling),
    "idlh": ("At its highest", "the level immediately dangerous to life or health", dangerous),
}
BARS = {
    "index": "Over the day",
    "short": "Worst quarter of an hour",
    "ceiling": "Highest, of the ceiling",
    "idlh": "Highest, of IDLH",
}
VERDICTS = ("likely below", "it may lie above", "it likely lies above", "it lies above")
LEAVE = "Leave, air the room, and do not go back in without fresh air."
AIR_TABLE, POT_TABLE, LIMITS = "air-choices", "vapor-choices", "exposure-limits"


def answer(w, stop, what, room, air, changes, mixing, pans, across, times):
    if air == KNOWN:
        w.step("renewed", "changes", changes, NUMBER, label="Air changes in an hour")
        low_air = high_air = changes
    else:
        changes = w.looked_up(
            "renewed",
            "safe",
            AIR_TABLE,
            "key",
            air,
            "middle",
            NUMBER,
            label="Air changes in an hour",
        )
        row = read_table("safe", AIR_TABLE).row("key", air)
        low_air, high_air = row["low"], row["high"]
    fresh = w.step(
        "fresh",
        "room * renewed / mixing",
        room * changes / mixing,
        NUMBER,
        label="Fresh air that counts, m³ in an hour",
    )
    clear = w.step(
        "clear",
        "60 * ln(100) * mixing / renewed",
        clearing_time(0.01, changes, mixing),
        TIME,
        label="Until 1 % of a vapor is left, once the pot is off",
    )
    w.band("clear", clearing_time(0.01, high_air, mixing), clearing_time(0.01, low_air, mixing))
    found = {
        "controls": DUST_FIRST if what == POWDER else VAPOR_FIRST,
        "clear": clear,
        "fresh": fresh,
    }
    if what == POWDER:
        return found | {
            "limit": published(
                "no limit for dye dust is compared; the nuisance-dust limit is never used for"
                " a dye",
                "hse-dyes",
            )
        }
    area = w.step(
        "area",
        "pans * pi * (across / 200) ** 2",
        pans * 3.141592653589793 * (across / 200) ** 2,
        NUMBER,
        label="Open surface, m²",
    )
    middle = _day(w, times, area, fresh, room)
    spread = [
        _day(None, times, area, room * changed / mixing, room, column)
        for changed, column in ((high_air, "low"), (low_air, "high"))
    ]
    for name, value in middle.items():
        if value is not None:
            w.band(name, spread[0][name], spread[1][name])
    return found | middle | {"limit": limits_words([row.vapor for row in times])}


def _day(w, times, area, fresh, room, column="middle"):
    """Each share of a limit, and the highest level, from one of the three emission figures."""
    levels, hours, peak = {}, {}, 0.0
    for place, row in enumerate(times, 1):
        pot, limit = (
            read_table("safe", POT_TABLE).row("key", row.pot),
            read_table("safe", LIMITS).row("key", row.vapor),
        )
        strength = 10.0 * row.strength  # g/100 mL to g/L, which is kg/m³
        moles = 1000.0 * strength / limit["molar_mass"]
        pressure = vapor_pressure(moles, limit["henry"], limit["henry_slope"], pot["celsius"])
        emitted = emission(area, pot[column], pressure, pot["celsius"], limit["molar_mass"])
        level = ppm(room_level(emitted, fresh, room, row.time / 60), limit["molar_mass"])
        if w is not None:
            _steps(w, place, row, moles, pressure, emitted, level)
        levels.setdefault(row.vapor, []).append(level)
        hours.setdefault(row.vapor, []).append(row.time / 60)
        peak = max(peak, level)
    means = {key: day_mean(levels[key], hours[key]) for key in levels}
    index = 100.0 * mixture_index(means, {key: stricter(key) for key in means})
    if w is not None:
        for key in means:
            parts = " + ".join(
                f"level_{place} * times[{place}].time / 60"
                for place, row in enumerate(times, 1)
                if row.vapor == key
            )
            w.step(
                f"mean_{key}",
                f"({parts}) / 8",
                means[key],
                NUMBER,
                label=f"Mean over 8 hours, {key}, ppm",
            )
        w.step(
            "index",
            "100 * (" + " + ".join(f"mean_{key} / {stricter(key):g}" for key in means) + ")",
            index,
            PERCENT,
            label="Share of the stricter 8-hour limit",
        )
    return {"index": index, "peak": peak} | {
        name: _worst(w, name, times, levels, limit_of)
        for name, (_, _, limit_of) in SHARES.items()
        if limit_of
    }


def _worst(w, name, times, levels, limit_of):
    """The highest of the spells' levels as a share of a limit for one moment, %; None where no vapor has such a limit."""
    limits = {key: limit for key in levels if (limit := limit_of(key)) is not None}
    if not limits:
        return None
    worst = 100.0 * max(max(levels[key]) / limit for key, limit in limits.items())
    if w is not None:
        parts = [
            f"level_{place} / {limits[row.vapor]:g}"
            for place, row in enumerate(times, 1)
            if row.vapor in limits
        ]
        w.step(
            name,
            f"100 * max({', '.join(parts)})" if len(parts) > 1 else f"100 * {parts[0]}",
            worst,
            PERCENT,
            label=f"{SHARES[name][0]}, share of {SHARES[name][1]}",
        )
    return worst


def _steps(w, place, row, moles, pressure, emitted, level):
    w.looked_up(
        f"mass_{place}",
        "safe",
        LIMITS,
        "key",
        row.vapor,
        "molar_mass",
        NUMBER,
        label=f"{place}: g in a mole",
    )
    w.looked_up(
        f"henry_{place}",
        "safe",
        LIMITS,
        "key",
        row.vapor,
        "henry",
        NUMBER,
        label=f"{place}: solubility at 25 °C, mol/(m³ Pa)",
    )
    w.looked_up(
        f"slope_{place}",
        "safe",
        LIMITS,
        "key",
        row.vapor,
        "henry_slope",
        NUMBER,
        label=f"{place}: its fall with heat, K",
    )
    w.looked_up(
        f"hot_{place}",
        "safe",
        POT_TABLE,
        "key",
        row.pot,
        "celsius",
        NUMBER,
        label=f"{place}: bath, °C",
    )
    w.looked_up(
        f"speed_{place}",
        "safe",
        POT_TABLE,
        "key",
        row.pot,
        "middle",
        NUMBER,
        label=f"{place}: transfer, mm/s",
    )
    w.step(
        f"moles_{place}",
        f"1000 * 10 * times[{place}].strength / mass_{place}",
        moles,
        NUMBER,
        label=f"{place}: mol in a m³ of bath",
    )
    w.step(
        f"pressure_{place}",
        f"moles_{place} / (henry_{place} * exp(slope_{place} * (1 / (hot_{place} + 273.15) - 1 /"
        " 298.15)))",
        pressure,
        NUMBER,
        label=f"{place}: pressure over the bath, Pa",
    )
    w.step(
        f"emitted_{place}",
        f"area * speed_{place} / 1000 * pressure_{place} / (8.314462618 * (hot_{place} + 273.15)) *"
        f" 3600 * mass_{place} * 1000",
        emitted,
        NUMBER,
        label=f"{place}: vapor let off, mg in an hour",
    )
    w.step(
        f"level_{place}",
        f"emitted_{place} / fresh * (1 - exp(-fresh * times[{place}].time / 60 / room)) * 24.45 /"
        f" mass_{place}",
        level,
        NUMBER,
        label=f"{place}: level at the end, ppm",
    )


def say(r):
    if r.given["what"] == POWDER:
        first, rest = (
            "Keep the dust down: no limit stands for dye dust.",
            (
                "A dye whose hazard statements you do not know counts as a sensitizer: once"
                " sensitized, very little sets it off again, for life."
            ),
        )
    else:
        worst, *others = sorted(
            (name for name in SHARES if r.has(name)),
            key=lambda name: (
                name == "idlh" and _verdict(r, name) > 0,
                _verdict(r, name),
                r.high(name),
            ),
            reverse=True,
        )
        leave = f"{LEAVE} " if worst == "idlh" and _verdict(r, worst) else ""
        first = f"{leave}{SHARES[worst][0]} {_share(r, worst)}."
        also = "".join(f"; also {_share(r, name)}" for name in others if _verdict(r, name))
        rest = (
            f"From {r.span(worst)}{also}. Nobody knows a pot’s emission without measuring it. Right"
            " over the pot it is far worse."
        )
    return (
        (STOPS[r.given["stop"]], f"{first} {rest}") if r.given["stop"] != NOBODY else (first, rest)
    )


def _verdict(r, name):
    """How surely a share lies above its limit: 0 when even its high end does not, 3 when even its low end does."""
    return sum(end > 100 for end in (r.high(name), r.value(name), r.low(name)))


def _share(r, name):
    return f"about {r.text(name)} of {SHARES[name][1]}: {VERDICTS[_verdict(r, name)]}"


def notes(r):
    if r.given["what"] == POWDER:
        return [
            "After a spill or cloud leave the room, air it, then wipe wet; never sweep.",
            f"At this airing the air is down to 1 % after {r.span('clear') or r.text('clear')}.",
        ]
    said = [
        "Left out: the plume over the pot, drafts, steam that condenses and drips, other sources,"
        " and that part of the acid is held by fiber and salts (counted as free here, the careful"
        " side). Each spell starts in clean air and counts at the level of its end; spells that"
        " follow at once are one longer spell."
    ]
    none = [
        read_table("safe", LIMITS).row("key", key)["label"]
        for key in dict.fromkeys(row.vapor for row in r.given["times"])
        if stricter_short(key) is None
    ]
    if none:
        said.append(f"No short-term limit was found for {', '.join(none)}.")
    return said


def table(r):
    if r.given["what"] == POWDER:
        return None
    rows = []
    for key in dict.fromkeys(row.vapor for row in r.given["times"]):
        row = read_table("safe", LIMITS).row("key", key)
        cells = [
            f"{row[name]:g}" if row[name] != "" else "–"
            for name in ("osha", "niosh", "uk", "niosh_short", "uk_short", "ceiling", "idlh")
        ]
        rows.append((row["label"], *cells, f"{stricter(key):g}"))
    return Table(
        "Published limits, ppm",
        (
            "Vapor",
            "OSHA 8 h",
            "NIOSH",
            "UK 8 h",
            "NIOSH 15 min",
            "UK 15 min",
            "Ceiling",
            "IDLH",
            "Stricter, 8 h",
        ),
        tuple(rows),
        "OSHA: 29 CFR 1910.1000, read 2026-11. NIOSH: acetic and formic acid read, ammonia in a"
        " page that quotes it. UK: from memory, unverified. Ceiling: California. IDLH: immediately"
        " dangerous to life or health.",
        ("osha-1910-1000", "niosh-limits", "uk-eh40", "cal-ac1"),
    )


def picture(r):
    if r.given["what"] == POWDER:
        return None
    rows = [
        (BARS[name], r.value(name) / 100, r.low(name) / 100, r.high(name) / 100)
        for name in SHARES
        if r.has(name)
    ]
    return shares_of_limit("Against the published limits", rows, "the limit")


WITH_VAPOR = {"what": (VAPOR,)}
LABELS = {
    table_: tuple(Option(row["key"], row["label"]) for row in read_table("safe", table_).rows)
    for table_ in (AIR_TABLE, POT_TABLE, LIMITS)
}

CARD = Card(
    id="room-air",
    chapter="safe",
    place=20,
    question="What does the pot do to the air?",
    inputs=(
        Input(
            CHOICE,
            "Does one of these hold?",
            default=NOBODY,
            options=(
                Option(NOBODY, "None of them"),
                Option(PREGNANT, "Pregnant or nursing"),
                Option(LUNGS, "Asthma, or a dye allergy"),
                Option(CHILDREN, "Children or pets in the room"),
                Option(FOOD, "A kitchen for food"),
            ),
            name="stop",
        ),
        Input(
            CHOICE,
            "In the air",
            default=VAPOR,
            options=(Option(VAPOR, "Vapor of a bath"), Option(POWDER, "Dust of a dye")),
            name="what",
        ),
        Input(
            VOLUME,
            "Room",
            default="30 m³",
            allowed=("3 m³", "2000 m³"),
            usual=("8 m³", "200 m³"),
            rough="10 %",
            units=("m³", "ft³"),
            unit="m³",
            measure="Length times width times height.",
            name="room",
        ),
        Input(
            CHOICE,
            "Airing",
            default="window",
            options=(*LABELS[AIR_TABLE], Option(KNOWN, "I know the air changes")),
            measure="A fan moving 240 m³ in an hour gives a room of 30 m³ eight changes.",
            name="air",
        ),
        Input(
            NUMBER,
            "Air changes in an hour",
            default="2",
            allowed=("0.1", "60"),
            usual=("0.5", "20"),
            when={"air": (KNOWN,)},
            name="changes",
        ),
        Input(
            NUMBER,
            "Mixing factor",
            default="5",
            allowed=("1", "10"),
            usual=("3", "10"),
            rough="2",
            measure="1 is perfect mixing; rooms with dead corners 3 to 10.",
            name="mixing",
        ),
        Input(
            COUNT,
            "Pots at once",
            default="2",
            allowed=("1", "20"),
            usual=("1", "6"),
            when=WITH_VAPOR,
            name="pans",
        ),
        Input(
            LENGTH,
            "Width of a pot",
            default="28 cm",
            allowed=("5 cm", "200 cm"),
            usual=("15 cm", "60 cm"),
            units=("cm", "in"),
            unit="cm",
            when=WITH_VAPOR,
            name="across",
        ),
        Rows(
            row_of(
                (
                    Input(CHOICE, "Vapor", default="acetic", options=LABELS[LIMITS], name="vapor"),
                    Input(
                        CHOICE, "The pot", default="simmer", options=LABELS[POT_TABLE], name="pot"
                    ),
                    Input(
                        CONCENTRATION,
                        "Pure acid in the bath",
                        default="0.56 g/L",
                        allowed=("0.001 g/L", "100 g/L"),
                        usual=("0.05 g/L", "10 g/L"),
                        units=("g/L", "g/100 mL"),
                        strict=True,
                        rough="20 %",
                        name="strength",
                    ),
                    Input(
                        TIME,
                        "For",
                        default="60 min",
                        allowed=("1 min", "8 h"),
                        usual=("5 min", "4 h"),
                        units=("min", "h"),
                        name="time",
                    ),
                )
            ),
            "Times of the day",
            "time",
            least=1,
            most=6,
            when=WITH_VAPOR,
            measure=(
                "Each spell with a pot going. Acid in the bath: 100 mL of 5 % vinegar in 9 L is"
                " 0.56 g/L."
            ),
            default=(
                {"vapor": "acetic", "pot": "simmer", "strength": "0.56 g/L", "time": "60 min"},
                {"vapor": "acetic", "pot": "simmer", "strength": "0.56 g/L", "time": "60 min"},
                {"vapor": "acetic", "pot": "simmer", "strength": "0.56 g/L", "time": "60 min"},
            ),
            name="times",
        ),
    ),
    results=(
        Result(TEXT, "Do first", name="controls"),
        Result(
            PERCENT,
            "Share of the 8-hour limit",
            finest=(1,),
            rounding="up",
            floor=0.0,
            product=True,
            name="index",
        ),
        Result(
            PERCENT,
            "Share of the 15-minute limit",
            finest=(1,),
            rounding="up",
            floor=0.0,
            product=True,
            name="short",
        ),
        Result(
            NUMBER,
            "Highest level in the room, ppm",
            finest=(0.1,),
            rounding="up",
            floor=0.0,
            product=True,
            name="peak",
        ),
        Result(
            PERCENT,
            "Share of the ceiling",
            finest=(1,),
            rounding="up",
            floor=0.0,
            product=True,
            name="ceiling",
        ),
        Result(
            PERCENT,
            "Share of what is immediately dangerous (IDLH)",
            finest=(1,),
            rounding="up",
            floor=0.0,
            product=True,
            name="idlh",
        ),
        Result(
            TIME,
            "Until 1 % is left",
            units=("min", "h"),
            finest=(1, 0.1),
            rounding="up",
            floor=0.0,
            name="clear",
        ),
        Result(TEXT, "Published limit", name="limit"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(table,),
    basis=Basis(
        MODEL,
        "Vapor by Henry’s law over a bath with all acid free, let off at a guessed speed into a"
        " well-mixed room; exposures added up as 29 CFR 1910.1000(d) has it. An order of"
        " magnitude.",
    ),
    sources=(
        OSHA_1910_1000,
        NIOSH_LIMITS,
        UK_EH40,
        CAL_AC1,
        CDC_2003,
        SANDER_2023,
        HSE_DYES,
        TRADE_MEMORY,
        COMMON_PRACTICE,
    ),
    cautions=(
        Caution(
            "Not for: pregnancy, asthma, dye allergy, children, pets, food kitchens.",
            "Burning eyes, a cough or a tight chest: out, into fresh air, and get help. Odor is no"
            " gauge. A dust mask stops no vapor.",
        ),
    ),
    carry=(Carry("scald", "How fast does the bath burn?", {}),),
    handles=("acid", "powder", "heat"),
)
