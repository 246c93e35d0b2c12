"""A bath before the drain: pH, heat and metal against published and local limits, and what brings the pH into range."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, TEXT, Basis, Card, Caution, Input, Option, Result
from ...core.problem import OutOfRange, Refused
from ...core.table import read_table
from ...core.units import CONCENTRATION, MASS, NUMBER, TEMPERATURE, VOLUME
from ...sources import (
    CFR_40_403_5,
    CORNELL_HAZARDOUS,
    GOLDBERG_2002,
    LOCAL_LIMITS_US,
    SPANA_HELP,
    UK_TRADE_EFFLUENT,
)
from ..acids import bath_ph
from ..drain import FIRST_SHARE, doses, held_acid, held_soda
from ..limits import published
from ..pictures.range import ph_on_scale

AIM_LOW, AIM_HIGH, AIM = 6.0, 9.0, 7.0  # aimed at: common practice
STRONGEST = 50.0  # g in a liter: twice what any recipe for acid or soda brings to a bath (our own edge); beyond it no dose is told
FEDERAL = read_table("safe", "drain-limits").row("key", "federal")
NO_METAL, UNKNOWN = "none", "unknown"
SODA, OTHER = "soda-ash", "unknown-acid"
METALS = {
    row["key"]: row["metal_name"] for row in read_table("safe", "mordants").rows
}  # by the mordant that brought it


def answer(
    w,
    drain,
    volume,
    ph,
    temperature,
    holds,
    alkalinity,
    metal,
    metal_amount,
    own_low,
    own_high,
    own_heat,
    own_metal,
    own_source,
):
    low, high = max(FEDERAL["ph_low"], own_low or 0.0), own_high or AIM_HIGH
    if low >= high:
        raise Refused(
            f"Local pH limits: the lower one ({low:g}) must lie below the upper one ({high:g}).",
            "own_low",
        )
    target = min(max(AIM, low + 0.3), high - 0.3) if high - low > 0.6 else (low + high) / 2
    liters, found = volume, {"dose": None, "first": None, "held": None, "with": ""}
    outside = w.step(
        "below_low", f"{low:g} - ph", low - ph, NUMBER, label="Below the lower limit by"
    )
    w.step(
        "hotter",
        f"temperature - {own_heat or FEDERAL['celsius']:g}",
        temperature - (own_heat or FEDERAL["celsius"]),
        NUMBER,
        label="Above the temperature limit by, °C",
    )
    acid = "acetic" if holds in (OTHER, SODA) else holds
    need = w.decide(
        "need", "soda-ash" if outside > 0 or ph < AIM_LOW else "citric" if ph > high else ""
    )
    try:
        if need == "soda-ash":
            found |= _neutralize(
                w,
                need,
                acid,
                held_acid(acid, ph, liters, alkalinity),
                target,
                liters,
                alkalinity,
                ph,
            )
        elif need == "citric":
            found |= _neutralize(
                w, need, SODA, held_soda(ph, liters, alkalinity), target, liters, alkalinity, ph
            )
    except OutOfRange as error:
        raise Refused(
            f"pH: {ph:g} is beyond what {_words(acid if need == 'soda-ash' else SODA).lower()} in"
            " water can give; measure again, and do not pour it out.",
            "ph",
        ) from error
    if metal not in (NO_METAL, UNKNOWN):
        found["metal_mass"] = w.step(
            "metal_mass",
            "metal_amount * volume / 1000",
            metal_amount * liters / 1000,
            MASS,
            label="Metal in the bath",
        )
    own = f"; your own: {own_source}" if own_source else ""
    return found | {
        "low": low,
        "high": high,
        "target": target,
        "limit": published("pH 5.0 and up, 40 °C at the works", "cfr-40-403-5") + own,
    }


def _neutralize(w, chemical, held, grams, target, liters, alkalinity, ph):
    """Steps and results of a dose; the reading's own content first, then the range that carbon dioxide leaves."""

    def ph_of_bath_with(held_grams):
        return bath_ph(liters, {held: held_grams}, alkalinity)

    def ph_without_gas_with(dose):
        return bath_ph(liters, {held: grams, chemical: dose}, alkalinity, True)

    def ph_of_full_bath_with(dose):
        return bath_ph(liters, {held: grams, chemical: dose}, alkalinity)

    if (
        w.decide("strength", grams / liters) > STRONGEST
    ):  # of the reading itself: what a strip leaves open belongs in the range
        raise Refused(
            f"pH: {ph:g} would mean more than {STRONGEST:g} g of"
            f" {_words(held).partition(',')[0].lower()} in a liter, so something stronger is in it;"
            " keep it, and ask the sewer authority.",
            "ph",
        )
    content = w.solved(
        "held",
        "ph_of_bath_with(held) - ph",
        grams,
        MASS,
        label=f"{_words(held)} that this pH means",
        using=(ph_of_bath_with,),
    )
    off, closed = doses(chemical, target, liters, held, grams, alkalinity)
    w.solved(
        "dose_held",
        f"ph_of_full_bath_with(dose_held) - {target:g}",
        closed,
        MASS,
        label=f"{_words(chemical)} to pH {target:g}, carbon dioxide held",
        using=(ph_of_full_bath_with,),
    )
    if off > 0:
        w.solved(
            "dose_off",
            f"ph_without_gas_with(dose_off) - {target:g}",
            off,
            MASS,
            label=f"{_words(chemical)} to pH {target:g}, carbon dioxide driven off",
            using=(ph_without_gas_with,),
        )
    else:
        w.step("dose_off", "0", 0.0, MASS, label="Needed once carbon dioxide has left")
    small, large = min(off, closed), max(off, closed)
    first = w.step(
        "first",
        f"{FIRST_SHARE:g} * min(dose_off, dose_held)",
        FIRST_SHARE * small,
        MASS,
        label="First portion",
    )
    w.band("dose", small, large)
    return {
        "dose": (small + large) / 2,
        "first": first,
        "held": content,
        "with": chemical,
        "acid": held,
    }


def _words(key):
    row = next(
        (row for row in read_table("safe", "bath-chemicals").rows if row["key"] == key), None
    )
    return row["label"].partition(" (")[0] if row else "an acid that is not known"


def verdicts(r):
    """One line for each thing: what it is, what the limit is, above or below."""
    given, rows = r.given, []
    low, high = r.kept["low"], r.kept["high"]
    ph = (
        "below the lower limit"
        if given["ph"] < low
        else "above the upper limit"
        if given["ph"] > high
        else "between the limits"
    )
    if (
        ph.startswith("between")
        and min(given["ph"] - low, high - given["ph"]) < r.readings["ph"].rough
    ):
        ph = "too close for the strip: counts as above or below"
    rows.append(("pH", f"{given['ph']:g}", f"{low:g} to {high:g}", ph))
    heat = given["own_heat"] or FEDERAL["celsius"]
    rows.append(
        (
            "Temperature",
            r.amount(given["temperature"], TEMPERATURE),
            r.amount(heat, TEMPERATURE),
            "above the limit: cool it" if given["temperature"] > heat else "below the limit",
        )
    )
    if given["metal"] == NO_METAL:
        rows.append(("Metal", "none put in", "–", "nothing to compare"))
    elif given["metal"] == UNKNOWN:
        rows.append(
            (
                "Metal",
                "not known which, or how much",
                "–",
                "not known, counts as above: ask before it goes down any drain",
            )
        )
    else:
        level = given["metal_amount"]
        said = f"{level:.3g} mg/L"
        if given["own_metal"]:
            rows.append(
                (
                    METALS[given["metal"]].capitalize(),
                    said,
                    f"{given['own_metal']:g} mg/L",
                    (
                        "above the local limit, or too close"
                        if level + r.readings["metal_amount"].rough > given["own_metal"]
                        else "below the local limit"
                    ),
                )
            )
        else:
            rows.append(
                (
                    METALS[given["metal"]].capitalize(),
                    said,
                    "not given",
                    "no local limit given: counts as above",
                )
            )
    return rows


def blocked(r):
    """What stands in the way of pouring it out."""
    words = [
        f"{row[0][0].lower() + row[0][1:] if row[0] != 'pH' else 'pH'}"
        for row in verdicts(r)
        if row[3].startswith(("above", "below the lower", "too close", "not known", "no local"))
    ]
    return words + (
        ["a septic tank"] if r.given["drain"] == "septic" and r.given["metal"] != NO_METAL else []
    )


def say(r):
    stops = blocked(r)
    first = (
        f"Not yet: {' and '.join(stops)} {'stands' if len(stops) == 1 else 'stand'} against it."
        if stops
        else "pH, heat and metal lie within the limits compared."
    )
    if r.has("dose"):
        what = _words(r.kept["with"]).lower()
        rest = (
            f"Cool it, then stir in {r.text('first')} of {what}, slowly: it foams. Wait, measure,"
            f" finish by the strip; about {r.text('dose')} in all ({r.span('dose')})."
        )
        return first, rest
    return (
        first,
        (
            "Local rules come before these: ask the sewer authority once, and write it down."
            if not stops
            else "What to do stands below."
        ),
    )


def notes(r):
    said = []
    if r.has("dose"):
        said.append(
            f"The dose is from the pH reading, for water with {_words(r.kept['acid']).lower()}"
            " alone; a bath with salts of it takes more. The first portion is 80 % of the smaller"
            " figure."
        )
        if r.given["holds"] != r.kept["acid"]:
            said.append(
                f"What is in it does not say which: reckoned as {_words(r.kept['acid']).lower()}."
                " Only the strip tells when it is enough."
            )
    if r.given["ph"] > r.kept["high"] and not r.given["own_high"]:
        said.append(
            "The federal rule prints no upper pH; 9 is the aim here (common practice), and 11.5 and"
            " up burns skin."
        )
    if r.given["metal"] not in (NO_METAL, UNKNOWN):
        said.append(
            f"There are {r.text('metal_mass')} of {METALS[r.given['metal']]} in it. Diluting with"
            " water to get below a limit is barred for many; use the bath again, or collect it."
        )
    if r.given["metal"] == UNKNOWN:
        said.append(
            "Premetallized and chrome dyes carry metal too: the data sheet says. Until then keep"
            " the bath."
        )
    if r.given["drain"] == "septic":
        said.append(
            "Septic tank: chemicals may kill its bacteria and reach ground water (Cornell). Keep"
            " metals, strong acid or alkali and bleach out; small, neutral, cooled baths only, and"
            " a business may need a permit."
        )
    else:
        said.append(
            "These are the rules for a business on a public sewer. Storm drains, ditches and"
            " gardens are no drains."
        )
    if not (r.given["own_low"] or r.given["own_high"] or r.given["own_metal"]):
        said.append(
            "No local limits given: look up your own sewer authority’s and type them with their"
            " source. Those printed with this card’s page are other towns’."
        )
    return said


def checked(r):
    return Table(
        "This bath against the limits",
        ("What", "This bath", "Limit", "So"),
        tuple(verdicts(r)),
        "Above or below a published limit, nothing more.",
    )


def picture(r):
    return ph_on_scale(
        r.given["ph"],
        r.readings["ph"].rough,
        r.kept["low"],
        r.kept["high"],
        r.kept["target"] if r.has("dose") else None,
    )


WITH_METAL = {"metal": tuple(METALS)}
PH = {"allowed": ("0", "14"), "usual": ("2", "12"), "strict": True}

CARD = Card(
    id="drain-check",
    chapter="safe",
    place=50,
    question="May this bath go down the drain?",
    inputs=(
        Input(
            CHOICE,
            "The drain leads to",
            default="sewer",
            options=(Option("sewer", "A public sewer"), Option("septic", "A septic tank")),
            name="drain",
        ),
        Input(
            VOLUME,
            "Bath",
            default="9 L",
            allowed=("0.1 L", "1000 L"),
            usual=("1 L", "100 L"),
            units=("L", "qt", "gal"),
            unit="L",
            rough="5 %",
            strict=True,
            name="volume",
        ),
        Input(
            NUMBER,
            "pH",
            default="4",
            rough="0.5",
            measure="A strip is good to half a unit. Cool the sample first.",
            **PH,
            name="ph",
        ),
        Input(
            TEMPERATURE,
            "Temperature",
            default="35 °C",
            allowed=("0 °C", "105 °C"),
            usual=("5 °C", "100 °C"),
            units=("°C", "°F"),
            strict=True,
            name="temperature",
        ),
        Input(
            CHOICE,
            "The bath holds",
            default="acetic",
            options=(
                Option("acetic", "Vinegar or acetic acid"),
                Option("citric", "Citric acid"),
                Option("formic", "Formic acid"),
                Option(OTHER, "An acid, not known which"),
                Option(SODA, "Soda ash"),
            ),
            name="holds",
        ),
        Input(
            CONCENTRATION,
            "Alkalinity of the water",
            default="40 mg/L",
            allowed=("0 mg/L", "1000 mg/L"),
            usual=("10 mg/L", "400 mg/L"),
            units=("mg/L",),
            unit="mg/L",
            bench="alkalinity",
            rough="20 %",
            measure="As calcium carbonate: soft 20 to 60, hard 150 to 350.",
            name="alkalinity",
        ),
        Input(
            CHOICE,
            "Metal in it",
            default=NO_METAL,
            options=(
                Option(NO_METAL, "None was put in"),
                Option(UNKNOWN, "Not known, or in the dye (premetallized)"),
                *(
                    Option(
                        key,
                        f"{words.capitalize()}, from"
                        f" {next(row['label'] for row in read_table('safe', 'mordants').rows if row['key'] == key).partition(' (')[0].lower()}",
                    )
                    for key, words in METALS.items()
                ),
            ),
            name="metal",
        ),
        Input(
            CONCENTRATION,
            "How much metal",
            default="34 mg/L",
            allowed=("0 mg/L", "100000 mg/L"),
            usual=("0.1 mg/L", "2000 mg/L"),
            units=("mg/L",),
            unit="mg/L",
            when=WITH_METAL,
            rough="30 %",
            name="metal_amount",
        ),
        Input(NUMBER, "Local lower pH", optional=True, **PH, name="own_low"),
        Input(NUMBER, "Local upper pH", optional=True, **PH, name="own_high"),
        Input(
            TEMPERATURE,
            "Local limit of temperature",
            optional=True,
            allowed=("10 °C", "100 °C"),
            usual=("30 °C", "66 °C"),
            units=("°C", "°F"),
            strict=True,
            name="own_heat",
        ),
        Input(
            CONCENTRATION,
            "Local limit of the metal",
            optional=True,
            allowed=("0.001 mg/L", "1000 mg/L"),
            usual=("0.1 mg/L", "50 mg/L"),
            units=("mg/L",),
            unit="mg/L",
            when=WITH_METAL,
            strict=True,
            name="own_metal",
        ),
        Input(
            TEXT,
            "Where the local limits stand",
            optional=True,
            longest=60,
            measure="Name of the rule and the day you read it.",
            name="own_source",
        ),
    ),
    results=(
        Result(
            MASS, "Stir in first", units=("g", "oz"), finest=(0.1, 0.01), floor=0.0, name="first"
        ),
        Result(MASS, "In all about", units=("g", "oz"), finest=(0.1, 0.01), floor=0.0, name="dose"),
        Result(
            MASS,
            "Acid or soda that this pH means",
            units=("g",),
            finest=(0.1,),
            floor=0.0,
            name="held",
        ),
        Result(
            MASS,
            "Metal in the bath",
            units=("g",),
            finest=(0.01,),
            rounding="up",
            floor=0.0,
            name="metal_mass",
        ),
        Result(TEXT, "Published limit", name="limit"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(checked,),
    basis=Basis(
        MODEL,
        "Exact charge balance with activities, from the pH as measured; carbon dioxide driven off"
        " or held gives the range. 6 to 9 is the aim (common practice).",
    ),
    sources=(
        CFR_40_403_5,
        LOCAL_LIMITS_US,
        UK_TRADE_EFFLUENT,
        CORNELL_HAZARDOUS,
        GOLDBERG_2002,
        SPANA_HELP,
    ),
    cautions=(
        Caution(
            "Soda into acid foams.",
            "Cool the bath first, small portions into a half-filled pot, goggles and gloves on."
            " Never mix in bleach or hydrosulfite.",
        ),
        Caution(
            "Metal, unknown dye, septic tank: ask first.",
            "The local authority and the data sheet come before this card.",
        ),
    ),
    handles=("acid", "alkali", "metal"),
)
