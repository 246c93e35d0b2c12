"""How much of a yarn's weight is yarn: the water taken out, and put back as the standard atmosphere and the trade agree on it."""

from ...core.answer import Table
from ...core.card import (
    CHOICE,
    MODEL,
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
from ...core.picture import INDIGO, INDIGO_WASH, INK, MADDER, SOFT, Drawing
from ...core.problem import Refused
from ...core.units import MASS, PERCENT
from ...sources import (
    ASTM_D1909,
    ASTM_D1909_EXTRACT,
    BIORESOURCES_2020,
    EC_ALLOWANCES_1998,
    HORIKITA_1989,
    ISO_139,
    NRC_2001,
    REGAIN_CURVES,
    TRADE_MEMORY,
)
from ..blend import SHARES_OFF_BY, blend_regain, dry_share
from ..moisture import mass_at_regain, oven_dry_mass
from ..regain import (
    CURVE_ERROR,
    STANDARD_HUMIDITY,
    actual_regains,
    agreed_allowances,
    commercial_regains,
    fiber_family,
    has_curve,
    regain_at_humidity,
    regain_curves,
)

BY_HUMIDITY, BY_REGAIN, LABEL, DRY = "humidity", "regain", "label", "dry"
EU, US, FOUND, CURVES = (
    "ec-1998-agreed-allowances",
    "d1909-commercial-regains",
    "actual-regains",
    "regain-against-humidity",
)
FIBERS = tuple(
    Option(row["fiber"], row["fiber"][0].upper() + row["fiber"][1:])
    for row in agreed_allowances().rows
)
IN_US = {row["fiber"] for row in commercial_regains().rows}
FOUND_AT_STANDARD = {row["fiber"]: row for row in actual_regains().rows}


def answer(w, weighed, labelled, dampness, humidity, regain, standard_regain, shares_of, fibers):
    total = sum(row.share for row in fibers)
    if abs(total - 100) > SHARES_OFF_BY:
        raise Refused(
            f"Shares of the fibers: they add up to {total:.4g} %; make them add up to 100 %.",
            f"fibers.{len(fibers)}.share",
        )
    keys = [str(at) for at in range(1, len(fibers) + 1)]
    allowances = {
        key: w.looked_up(
            f"allowance_{key}",
            "yarn",
            EU,
            "fiber",
            row.fiber,
            "allowance",
            PERCENT,
            label=f"EU allowance, {row.fiber}",
        )
        for key, row in zip(keys, fibers)
    }
    dry_shares = _dry_shares(
        w, keys, {key: row.share for key, row in zip(keys, fibers)}, allowances, shares_of
    )

    seen: set[str] = set()
    now, now_name, off_now = regain, "regain", 0.0
    if dampness == BY_HUMIDITY:
        regains, now_name = _regains(w, fibers, humidity, "now", "humidity", seen), "regain_now"
        now, off_now = (
            _blend(w, now_name, dry_shares, regains, "Regain as weighed"),
            _off(fibers, dry_shares, regains, humidity),
        )
    dry = w.step(
        "dry",
        f"weighed / (1 + {now_name} / 100)",
        oven_dry_mass(weighed, now),
        MASS,
        label="Oven-dry",
    )
    water = w.step("water", "weighed - dry", weighed - dry, MASS, label="Water in it")

    standard, standard_name, off_standard = standard_regain, "standard_regain", 0.0
    if standard is None:
        regains, standard_name = (
            _regains(w, fibers, STANDARD_HUMIDITY, "standard", f"{STANDARD_HUMIDITY:g}", seen),
            "regain_at_standard",
        )
        standard = _blend(
            w, standard_name, dry_shares, regains, "Regain at the standard atmosphere"
        )
        off_standard = _off(fibers, dry_shares, regains, STANDARD_HUMIDITY)
    conditioned = w.step(
        "conditioned",
        f"dry * (1 + {standard_name} / 100)",
        mass_at_regain(dry, standard),
        MASS,
        label="At the standard atmosphere",
    )

    found = {
        "water": water,
        "dry": dry,
        "conditioned": conditioned,
        "over": None,
        "us_mass": None,
        "us_regain": None,
        "now": now,
        "standard": standard,
        "dry_shares": dry_shares,
    }
    if labelled is not None:
        found["over"] = w.step(
            "over", "conditioned - labelled", conditioned - labelled, MASS, label="Over the label"
        )
    found["eu_regain"] = _blend(
        w,
        "eu_regain",
        dry_shares,
        {key: (f"allowance_{key}", allowances[key]) for key in keys},
        "EU allowance of the blend",
    )
    found["eu_mass"] = w.step(
        "eu_mass",
        "dry * (1 + eu_regain / 100)",
        mass_at_regain(dry, found["eu_regain"]),
        MASS,
        label="Commercial weight, EU",
    )
    if all(row.fiber in IN_US for row in fibers):
        american = {
            key: (
                f"us_{key}",
                w.looked_up(
                    f"us_{key}",
                    "yarn",
                    US,
                    "fiber",
                    row.fiber,
                    "regain",
                    PERCENT,
                    label=f"US regain, {row.fiber}",
                ),
            )
            for key, row in zip(keys, fibers)
        }
        found["us_regain"] = _blend(w, "us_regain", dry_shares, american, "US regain of the blend")
        found["us_mass"] = w.step(
            "us_mass",
            "dry * (1 + us_regain / 100)",
            mass_at_regain(dry, found["us_regain"]),
            MASS,
            label="Commercial weight, US",
        )
    _state_error(w, found, weighed, off_now, off_standard)
    return found


def _dry_shares(w, keys, shares, allowances, shares_of):
    """Each fiber's share of the dry weight, %, by row."""
    if shares_of == DRY or len(keys) == 1:
        total = sum(shares.values())
        return {
            key: w.step(
                f"dry_{key}",
                f"100 * fibers[{key}].share / sum(fibers.share)",
                100 * shares[key] / total,
                PERCENT,
                label=f"Dry share of fiber {key}",
            )
            for key in keys
        }
    for key in keys:
        w.step(
            f"part_{key}",
            f"fibers[{key}].share / (1 + allowance_{key} / 100)",
            shares[key] / (1 + allowances[key] / 100),
            PERCENT,
            label=f"Fiber {key} without its allowance",
        )
    together = " + ".join(f"part_{key}" for key in keys)
    return {
        key: w.step(
            f"dry_{key}",
            f"100 * part_{key} / ({together})",
            dry_share(key, shares, allowances),
            PERCENT,
            label=f"Dry share of fiber {key}",
        )
        for key in keys
    }


def _regains(w, fibers, humidity, when, name, seen):
    """For each row the name and value of the step that finds its regain in air of one humidity."""
    steps, found = {}, {}
    for key, row in enumerate(fibers, 1):
        family = fiber_family(row.fiber)
        kin = family if has_curve(family) else row.fiber
        if kin not in steps:
            steps[kin] = (
                _on_curve(w, family, humidity, when, name, seen)
                if has_curve(family)
                else _at_standard(w, row.fiber, f"fiber_{key}_{when}")
            )
        found[str(key)] = steps[kin]
    return found


def _on_curve(w, family, humidity, when, name, seen):
    """Regain between two values of the curve; seen holds the values already looked up."""
    points = [row["humidity"] for row in regain_curves().rows]
    below, above = next((low, high) for low, high in zip(points, points[1:]) if humidity <= high)
    word = family.split()[0]
    for point in (below, above):
        if f"{word}_at_{point:.0f}" not in seen:
            seen.add(f"{word}_at_{point:.0f}")
            w.looked_up(
                f"{word}_at_{point:.0f}",
                "yarn",
                CURVES,
                "humidity",
                int(point),
                family,
                PERCENT,
                label=f"{family.capitalize()} at {point:.0f} % humidity",
            )
    low, high = f"{word}_at_{below:.0f}", f"{word}_at_{above:.0f}"
    step = f"{word}_{when}"
    return step, w.step(
        step,
        f"{low} + ({name} - {below:.0f}) / {above - below:.0f} * ({high} - {low})",
        regain_at_humidity(family, humidity),
        PERCENT,
        label=f"{family.capitalize()} between them",
    )


def _at_standard(w, fiber, step):
    """Regain of a fiber that has no curve: what was found at the standard atmosphere, else what is agreed for trade."""
    row = FOUND_AT_STANDARD.get(fiber)
    if row is None:
        table, column = (US, "regain") if fiber in IN_US else (EU, "allowance")
        return step, w.looked_up(
            step,
            "yarn",
            table,
            "fiber",
            fiber,
            column,
            PERCENT,
            label=f"Agreed for {fiber}; it has no curve",
        )
    if row["low"] == row["high"]:
        return step, w.looked_up(
            step,
            "yarn",
            FOUND,
            "fiber",
            fiber,
            "low",
            PERCENT,
            label=f"{fiber.capitalize()} at 65 %; it has no curve",
        )
    for column in ("low", "high"):
        w.looked_up(
            f"{step}_{column}",
            "yarn",
            FOUND,
            "fiber",
            fiber,
            column,
            PERCENT,
            label=f"{fiber.capitalize()} at 65 %, {column}; it has no curve",
        )
    return step, w.step(
        step,
        f"({step}_low + {step}_high) / 2",
        (row["low"] + row["high"]) / 2,
        PERCENT,
        label=f"{fiber.capitalize()}, the middle",
    )


def _blend(w, step, dry_shares, regains, label):
    formula = " + ".join(f"dry_{key} * {regains[key][0]}" for key in dry_shares)
    value = blend_regain(dry_shares, {key: regains[key][1] for key in dry_shares})
    return w.step(step, f"({formula}) / 100", value, PERCENT, label=label)


def _off(fibers, dry_shares, regains, humidity):
    """By how many points the yarn's regain may be off. A fiber without a curve is held at its standard value, so it may be off as far as the steepest curve has moved."""
    families = [name for name in regain_curves().columns if has_curve(name)]
    moved = max(
        abs(regain_at_humidity(name, humidity) / regain_at_humidity(name, STANDARD_HUMIDITY) - 1)
        for name in families
    )
    return sum(
        dry_shares[key]
        / 100
        * regains[key][1]
        * (CURVE_ERROR / 100 + (0 if has_curve(fiber_family(row.fiber)) else moved))
        for key, row in zip(dry_shares, fibers)
    )


def _state_error(w, found, weighed, off_now, off_standard):
    """The tables' own error, carried to every weight. One yarn has one history, so its regain is off the same way at both humidities."""
    dry_up = oven_dry_mass(weighed, found["now"] + off_now)
    dry_half = found["dry"] - dry_up
    for name in ("dry", "water"):
        w.error(name, dry_half)
    conditioned = abs(
        mass_at_regain(dry_up, found["standard"] + off_standard) - found["conditioned"]
    )
    for name in ("conditioned", "over"):
        w.error(name, conditioned)
    for name in ("eu", "us"):
        if found[f"{name}_regain"] is not None:
            w.error(f"{name}_mass", dry_half * (1 + found[f"{name}_regain"] / 100))


def without_curve(r):
    """The fibers of this yarn that have no curve of regain."""
    return [row.fiber for row in r.given["fibers"] if not has_curve(fiber_family(row.fiber))]


def as_weighed(r, name="weighed"):
    """A given weight in the unit it was given in."""
    return r.amount(r.given[name], MASS, r.readings[name].amount.unit.sign)


def say(r):
    first = f"It is about {r.text('conditioned')} of yarn at the standard atmosphere."
    opening = f"From {r.span('conditioned')}; of" if r.rough("conditioned") else "Of"
    water = f"{opening} your {as_weighed(r)}, about {r.text('water')} is water"
    agreed = f"by the agreed allowances it counts as {r.text('eu_mass')} in the EU" + (
        f" and {r.text('us_mass')} in the US."
        if r.has("us_mass")
        else "; there is no US figure for it."
    )
    if not r.has("over"):
        return first, f"{water}; {agreed}"
    full = 1 - r.chance_below("conditioned", r.given["labelled"])
    return (
        first,
        (
            f"{water}. That it is a full {as_weighed(r, 'labelled')}, as labelled, has a chance of"
            f" {r.in_100(full)}; {agreed}"
        ),
    )


def notes(r):
    said = []
    if r.has("us_mass"):
        apart = abs(r.value("eu_mass") - r.value("us_mass"))
        how_far = (
            f"lie {r.amount(apart, MASS, r.units('water')[0].sign, 2)} apart"
            if apart > 0.0005 * r.given["weighed"]
            else "agree here"
        )
        line = (
            f"The EU and the US figures {how_far}. They are agreed for invoices, not found on a"
            " scale: ask which one your seller goes by."
        )
        if (
            r.has("over")
            and (r.value("eu_mass") - r.given["labelled"])
            * (r.value("us_mass") - r.given["labelled"])
            < 0
        ):
            line += " Here one calls the label right and the other calls it short."
        said.append(line)
    if r.given["dampness"] == BY_HUMIDITY:
        said.append(
            "The curve of regain against humidity is from memory, unverified, and may be 15 % off."
            " Yarn that dried from wet holds more than yarn that was damped from dry."
        )
    if r.given["dampness"] == BY_HUMIDITY and (lacking := without_curve(r)):
        said.append(
            f"No curve is at hand for {' and '.join(dict.fromkeys(lacking))}: the value at 65 %"
            " stands for every humidity, with an error as wide as the steepest curve moves."
        )
    return said


def weights(r):
    rows = [
        ("As weighed", r.number(r.kept["now"], 1), as_weighed(r)),
        ("Oven-dry", r.number(0, 1), r.text("dry")),
        (
            "Standard atmosphere, 20 °C and 65 %",
            r.number(r.kept["standard"], 1),
            r.text("conditioned"),
        ),
        ("Commercial, EU", r.number(r.kept["eu_regain"], 2), r.text("eu_mass")),
    ]
    if r.has("us_mass"):
        rows.append(("Commercial, US", r.number(r.kept["us_regain"], 2), r.text("us_mass")))
    return Table(
        "One yarn, five weights" if r.has("us_mass") else "One yarn, four weights",
        ("At", "Water, % of dry yarn", "Weight"),
        tuple(rows),
    )


def picture(r):
    """A bar for each weight, yarn plain and water hatched, with the label's weight as a line through all of them."""
    shown = r.units("water")[0].sign
    bars = [
        ("As weighed", r.given["weighed"], r.amount(r.given["weighed"], MASS, shown)),
        ("Standard atmosphere", r.value("conditioned"), r.text("conditioned", shown)),
        ("Commercial, EU", r.value("eu_mass"), r.text("eu_mass", shown)),
    ]
    if r.has("us_mass"):
        bars.append(("Commercial, US", r.value("us_mass"), r.text("us_mass", shown)))
    labelled = r.given["labelled"]
    across = 336 / max([mass for _, mass, _ in bars] + [labelled or 0])
    drawing = Drawing(22 + 48 * len(bars) + (26 if labelled else 4))
    y, dry = 18, r.value("dry") * across
    for words, mass, written in bars:
        drawing.text(8, y, f"{words}: {written}", bold=words == "Standard atmosphere")
        drawing.rect(8, y + 7, mass * across, 18, fill=INDIGO_WASH, stroke="none")
        drawing.hatch(8 + dry, y + 7, mass * across - dry, 18, gap=5, stroke=INDIGO)
        drawing.rect(8, y + 7, mass * across, 18, stroke=INDIGO)
        drawing.line(8 + dry, y + 7, 8 + dry, y + 25, stroke=INDIGO)
        y += 48
    drawing.text(8, y - 2, "hatched: water", fill=SOFT)
    if labelled:
        drawing.line(
            8 + labelled * across,
            24,
            8 + labelled * across,
            y + 4,
            stroke=MADDER,
            width=2,
            dash="5 3",
        )
        drawing.text(
            8 + labelled * across,
            y + 20,
            f"label: {as_weighed(r, 'labelled')}",
            anchor="end",
            fill=INK,
        )
    return drawing.picture(
        "What is yarn and what is water",
        f"Bars of weight. Every bar holds {r.text('dry', shown)} of dry yarn; the rest is water. "
        + "; ".join(f"{words} {written}" for words, _, written in bars)
        + (f"; the label says {as_weighed(r, 'labelled')}." if labelled else "."),
    )


CARD = Card(
    id="true-weight",
    chapter="yarn",
    place=30,
    question="It says 100 g and my scale says 103: how much yarn is it really?",
    inputs=(
        Input(
            MASS,
            "Weight on my scale",
            record="mill-lot.mass",
            default="103 g",
            allowed=("1 g", "50 kg"),
            usual=("20 g", "2 kg"),
            rough="1 g",
            units=("g", "oz", "kg", "lb"),
            measure="Yarn only. Ten skeins at once, divided by ten, say more than one.",
            name="weighed",
        ),
        Input(
            MASS,
            "Weight on the label",
            default="100 g",
            allowed=("1 g", "50 kg"),
            usual=("20 g", "2 kg"),
            units=("g", "oz", "kg", "lb"),
            optional=True,
            bench="bases.mass",
            record="base.mass",
            measure="For the same yarn as on the scale; blank if there is none.",
            name="labelled",
        ),
        Input(
            CHOICE,
            "How damp it is",
            default=BY_HUMIDITY,
            options=(
                Option(BY_HUMIDITY, "By the humidity of the room"),
                Option(BY_REGAIN, "I know its regain"),
            ),
            name="dampness",
        ),
        Input(
            PERCENT,
            "Relative humidity where it rested",
            record="mill-lot.humidity",
            default="78 %",
            allowed=("10 %", "90 %"),
            usual=("30 %", "85 %"),
            rough="5 %",
            when={"dampness": (BY_HUMIDITY,)},
            measure=(
                "Where the yarn lay open for two days or more. A cheap meter is easily 5 % out."
            ),
            name="humidity",
        ),
        Input(
            PERCENT,
            "Regain as weighed",
            default="15.5 %",
            allowed=("0 %", "40 %"),
            usual=("0 %", "25 %"),
            rough="0.5 %",
            when={"dampness": (BY_REGAIN,)},
            measure=(
                "Water as a percentage of the dry yarn: weigh a sample, dry it fully, weigh it hot;"
                " 100 × (damp − dry) ÷ dry."
            ),
            name="regain",
        ),
        Input(
            PERCENT,
            "Regain at the standard atmosphere",
            default="",
            allowed=("0 %", "40 %"),
            usual=("0 %", "20 %"),
            rough="0.5 %",
            optional=True,
            when={"dampness": (BY_REGAIN,)},
            measure="Blank: taken from the table by fiber.",
            name="standard_regain",
        ),
        Input(
            CHOICE,
            "What the shares are shares of",
            default=LABEL,
            options=(
                Option(LABEL, "As on a label, allowances included"),
                Option(DRY, "The dry weight"),
            ),
            name="shares_of",
        ),
        Rows(
            row_of(
                (
                    Input(
                        CHOICE,
                        "Fiber",
                        default="wool, combed (worsted)",
                        options=FIBERS,
                        name="fiber",
                    ),
                    Input(PERCENT, "Share", default="25 %", allowed=("0 %", "100 %"), name="share"),
                )
            ),
            "Fibers in the yarn",
            "fiber",
            least=1,
            most=6,
            measure="Together 100 %.",
            default=(
                {"fiber": "wool, combed (worsted)", "share": "75 %"},
                {"fiber": "polyamide (nylon), staple", "share": "25 %"},
            ),
            name="fibers",
        ),
    ),
    results=(
        Result(
            MASS,
            "At the standard atmosphere",
            units=("g", "oz"),
            finest=(0.1, 0.01),
            name="conditioned",
        ),
        Result(MASS, "Water in it as weighed", units=("g", "oz"), finest=(0.1, 0.01), name="water"),
        Result(MASS, "Oven-dry", units=("g", "oz"), finest=(0.1, 0.01), name="dry"),
        Result(
            MASS,
            "Over the label, at the standard atmosphere",
            units=("g", "oz"),
            finest=(0.1, 0.01),
            name="over",
        ),
        Result(
            MASS,
            "Commercial weight, EU allowance",
            units=("g", "oz"),
            finest=(0.1, 0.01),
            name="eu_mass",
        ),
        Result(
            MASS,
            "Commercial weight, US regain",
            units=("g", "oz"),
            finest=(0.1, 0.01),
            name="us_mass",
        ),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(weights,),
    basis=Basis(
        MODEL,
        "Only the oven-dry weight is yarn. Regain is water as a percentage of it; a blend's regain"
        " is that of its fibers by their dry shares. The standard atmosphere is 20 °C and 65 %"
        " relative humidity. Regain against humidity is a curve from memory, unverified; allowances"
        " are those the EU and the US agreed on.",
    ),
    sources=(
        EC_ALLOWANCES_1998,
        ASTM_D1909,
        ASTM_D1909_EXTRACT,
        ISO_139,
        BIORESOURCES_2020,
        NRC_2001,
        HORIKITA_1989,
        REGAIN_CURVES,
        TRADE_MEMORY,
    ),
    cautions=(
        Caution(
            "No proof against a seller.",
            "The curve is unverified and room meters are rough. Before you complain, let the yarn"
            " rest open for two days at about 65 % humidity and weigh again, or have a sample dried"
            " by someone who does it for a living. Oil and spinning grease weigh as well, and wash"
            " out.",
        ),
        Caution(
            "Drying a sample.",
            "About 105 °C until it loses no more (from memory, unverified). Stay with the oven:"
            " yarn scorches and can catch fire, and plastic fibers soften. Never use a microwave"
            " oven, and use no oven or pan that food goes into if the yarn is dyed.",
            when=lambda r: r.given["dampness"] == BY_REGAIN,
        ),
    ),
    carry=(Carry("yarn-count", "What count is it at that weight?", {"mass": "conditioned"}),),
)
