"""How sour a bath is, how much acid brings it to a pH, and one acid in place of another at the same pH."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, Basis, Card, Carry, Caution, Input, Option, Result
from ...core.onward import spread_text
from ...core.picture import INDIGO, INDIGO_WASH, LINE, SOFT, Drawing, Scale, nice_ticks
from ...core.problem import OutOfRange, Refused
from ...core.table import read_table
from ...core.units import MASS, NUMBER, PERCENT, VOLUME
from ...safe.acids import STRONGEST, bath_ph, charge_left, density, dose_for_ph, ionic_strength, ph_error, volume_of
from ...safe.liquids import QUESTIONED, liquid_name, share_of_bath
from ...sources import ATOMIC_WEIGHTS, COMMON_PRACTICE, GOLDBERG_2002, HANDBOOK_DENSITIES, PH_TABLE, SPANA_HELP
from ..cautions import soda_in_aluminum

AMOUNT, TARGET, SWAP = "amount", "target", "swap"
ALKALIS = ("ammonia", "soda-ash", "washing-soda", "bicarbonate")
ACIDS = ("citric", "citric-monohydrate", "acetic", "formic", "ammonia", "soda-ash", "washing-soda", "bicarbonate")
LABELS = {key: read_table("safe", "bath-chemicals").row("key", key)["label"] for key in ACIDS}
LIQUIDS = ("acetic", "formic", "ammonia")
SOUR = ("citric", "citric-monohydrate", "acetic", "formic")
WATERS = {row["water"]: row for row in read_table("dye", "tap-waters").rows}
SIDE, OTHER_SIDE = ("chemical", "strength", "grams", "volume"), ("other", "other_strength", "other_grams", "other_volume")
SOURNESS = 0.5  # pH, half a step of a paper strip either way
USUAL = {"acetic": 5.0}  # %: the strength of a liquid that the case says nothing of, for the table
WEAK, THINNED = 10.0, 5.0  # %: a bath's acid is thinned first above the one, to the other (our own edges)


def answer(w, do, liters, water, alkalinity, chemical, grams, strength, target, other, other_strength, strip):
    alkaline, ends_of = alkalinity, ()
    if water != "known":
        alkaline, ends_of = w.looked_up("alkalinity", "dye", "tap-waters", "water", water, "middle", label="Alkalinity of the water, mg/L as calcium carbonate"), (WATERS[water]["low"], WATERS[water]["high"])
    volume = liters / 1000

    def dose(key, ph, hard=alkaline):
        try:
            return dose_for_ph(key, ph, volume, alkalinity=hard)
        except OutOfRange as error:
            raise Refused(f"pH wanted: {error.reason or f'{LABELS[key].lower()} does not reach it here'}.", "target") from None

    def left(ph, grams):  # charge still to be balanced, for the working
        return charge_left(ph, volume, {chemical: grams}, alkaline)

    left.__name__ = "charge"
    if do == TARGET:
        grams = dose(chemical, target)
        w.solved("grams", "charge(target, grams)", grams, MASS, label=f"{LABELS[chemical]}, pure", using=(left,))
        ph = target
    else:
        try:
            ph = bath_ph(volume, {chemical: grams}, alkaline)
        except OutOfRange:
            raise Refused("How much, pure: that is more than so little water can hold; give less, or a larger bath.", "grams") from None
        w.solved("ph", "charge(ph, grams)", ph, NUMBER, label="pH, where all charges cancel", using=(left,))
    salts = ionic_strength(volume, {chemical: grams}, alkaline)
    found = {"ph": ph, "grams": grams, "volume": None, "other_grams": None, "other_volume": None, "salts": salts, "alkaline": alkaline}
    w.error("ph", ph_error(salts))
    if ends_of:
        ends = [bath_ph(volume, {chemical: grams}, end) for end in ends_of]
        w.band("ph", min(*ends, ph), max(*ends, ph))
    doses = []
    if do == TARGET and ends_of:
        doses = [_or_zero(chemical, target, volume, end) for end in ends_of]
        w.band("grams", min(*doses, grams), max(*doses, grams))
    if chemical not in LIQUIDS and grams > liters:
        raise Refused(f"That is more {LABELS[chemical].lower()} than water, {grams / 1000:.3g} kg in {liters / 1000:.3g} L: another pH, or a larger bath.", "target" if do == TARGET else "grams")
    if chemical in LIQUIDS:
        found["volume"] = _volume(w, "volume", "grams", chemical, grams, strength, liters, doses)
    if do == SWAP:
        if (chemical in SOUR) != (other in SOUR):
            raise Refused("Instead of it: an acid cannot stand for an alkali; choose another of the same kind.", "other")
        found["other_grams"] = dose(other, ph)

        def left_of_other(ph, other_grams):
            return charge_left(ph, volume, {other: other_grams}, alkaline)

        left_of_other.__name__ = "charge_of_other"
        w.solved("other_grams", "charge_of_other(ph, other_grams)", found["other_grams"], MASS, label=f"{LABELS[other]}, pure, for the same pH", using=(left_of_other,))
        others = [_or_zero(other, bath_ph(volume, {chemical: grams}, end), volume, end) for end in ends_of]
        if others:
            w.band("other_grams", min(*others, found["other_grams"]), max(*others, found["other_grams"]))
        if other in LIQUIDS:
            found["other_volume"] = _volume(w, "other_volume", "other_grams", other, found["other_grams"], other_strength, liters, others)
    return found


def _or_zero(chemical, target, volume, alkaline):
    try:
        return dose_for_ph(chemical, target, volume, alkalinity=alkaline)
    except OutOfRange:
        return 0.0


def _volume(w, name, grams_name, chemical, grams, strength, bath, ends):
    """mL of the liquid that hold some grams, and what they are where the water is at the ends of its range."""
    side = "other_strength" if name.startswith("other") else "strength"
    try:
        heavy = w.step(f"{name}_density", f"{density(chemical, strength):.4f}", round(density(chemical, strength), 4), NUMBER, label=f"Density at that strength, g/mL")
    except OutOfRange as error:
        raise Refused(f"Strength of the liquid: densities of {LABELS[chemical].lower()} are tabled up to {error.high:g} %; give no more.", side) from None
    liquid = liquid_name(chemical, strength, f"{strength:g} %")
    volume = w.step(name, f"{grams_name} / ({name}_density * {side} / 100)", grams / (heavy * strength / 100), VOLUME, label=f"{liquid}, as poured")
    if volume > bath:
        raise Refused(f"That would take {volume / 1000:.3g} L of {liquid}, more than the bath of {bath / 1000:.3g} L: take a stronger liquid, another acid or alkali, or another pH.", side)
    if ends:
        poured = [end / (heavy * strength / 100) for end in ends]
        w.band(name, min(*poured, volume), max(*poured, volume))
    return volume


def say(r):
    ph = r.text("ph")
    bath = r.amount(r.given["liters"], VOLUME, "L", 3)
    span = f", {r.span('ph')}" if r.span("ph") else ""
    what, alone = _amount(r), "water alone, before fiber"
    much = [f"{_amount(r, side)} is {r.number(share)} % of the bath" for side in (SIDE, OTHER_SIDE) if (share := _share(r, side)) > QUESTIONED]
    if r.given["do"] == SWAP:
        first = f"Take {_amount(r, OTHER_SIDE)} instead of {what}."
        rest = f"Both give about pH {ph}{span} in {bath} of water: {alone}. Equal weights would not."
    elif r.given["do"] == TARGET:
        first = f"{'It would take' if much else 'Put in'} {_amount(r, ranged=True)}."
        rest = f"That brings {bath} to about pH {ph}: {alone}."
    else:
        first = f"The bath is at about pH {ph}{span}."
        rest = f"That is {what} in {bath} of water: {alone}. Wool takes some of the acid up, and the pH rises."
    return (f"{' and '.join(much)}: is that meant?", f"{first} {rest}") if much else (first, rest)


def _amount(r, side=SIDE, ranged=False):
    """How much of what goes in: a liquid with its strength, and the range in the unit of the amount."""
    chemical, _, grams, volume = side
    name, unit = (volume, "mL") if r.has(volume) else (grams, "g")
    span = f" ({r.span(name, unit)})" if ranged and r.span(name, unit) else ""
    return f"{r.text(name, unit)}{span} of {_liquid(r, side) if r.has(volume) else LABELS[r.given[chemical]].split(' (')[0].lower()}"


def _liquid(r, side, kitchen=True):
    chemical, strength, _, _ = side
    return liquid_name(r.given[chemical], r.given[strength], r.amount(r.given[strength], PERCENT), kitchen)


def _share(r, side):
    """What goes in as % of the bath: of its volume, or of its weight for crystals."""
    _, _, grams, volume = side
    name = volume if r.has(volume) else grams
    return share_of_bath(r.value(name), r.given["liters"]) if r.has(name) else 0.0


def notes(r):
    said = []
    hard = r.kept["alkaline"]
    eaten = hard * r.given["liters"] / 1000 / 50_000
    said.append(f"The water itself eats acid: {r.number(1000 * eaten, 1)} milliequivalents here, {r.number(eaten * 60.052, 2)} g of pure acetic acid. Hard water matters more than the last gram.")
    if any(_share(r, side) > QUESTIONED for side in (SIDE, OTHER_SIDE)):
        said.append(f"Over {QUESTIONED:g} % of a bath is more than a recipe asks for (our own edge), and thins the bath, which the sum leaves out: look at pH and strength again, or take a stronger kind.")
    strip = r.given["strip"]
    if strip is not None:
        off = strip - r.value("ph")
        if abs(off) <= SOURNESS + (r.high("ph") - r.low("ph")) / 2:
            said.append(f"Your strip says {strip:g}: within what a strip and this water leave open.")
        else:
            said.append(f"Your strip says {strip:g}, {'less' if off > 0 else 'more'} sour than the sum: " + ("harder water, weaker acid, or fiber in the bath that took it up." if off > 0 else "softer water, or acid left from before."))
    if r.kept["salts"] > 0.1:
        said.append("So salty a bath is beyond what the model was made for; the range says by how much.")
    said.append("A reading is for a cooled sample: strips and meters are marked for 20 to 25 °C.")
    return said


def curve(r):
    """pH against the amount, up to three times what is asked."""
    chemical, volume, hard = r.given["chemical"], r.given["liters"] / 1000, r.kept["alkaline"]
    grams = r.value("grams")
    strongest = 0.9 * STRONGEST * read_table("safe", "bath-chemicals").row("key", chemical)["molar_mass"] * volume
    most = min(max(3 * grams, 0.5 * volume), max(grams, strongest))
    points = [(most * (k / 24) ** 2, bath_ph(volume, {chemical: most * (k / 24) ** 2}, hard)) for k in range(25)]
    across, up = Scale(0, most, 44, 344), Scale(min(2.0, *(ph for _, ph in points)), max(8.0, *(ph for _, ph in points)), 176, 14)
    drawing = Drawing(222)
    for ph in range(0, 15, 1):
        if up.low <= ph <= up.high:
            drawing.line(44, up(ph), 344, up(ph), stroke=LINE)
            drawing.text(38, up(ph) + 5, str(ph), anchor="end", size=13, fill=SOFT)
    drawing.rect(44, up(r.high("ph")), 300, max(up(r.low("ph")) - up(r.high("ph")), 1), fill=INDIGO_WASH, stroke=INDIGO_WASH)
    drawing.path([(across(x), up(y)) for x, y in points], stroke=INDIGO, width=2)
    drawing.line(across(grams), up(r.value("ph")), across(grams), 176, stroke=INDIGO, dash="4 3")
    drawing.circle(across(grams), up(r.value("ph")), 6, fill=INDIGO, stroke=INDIGO)
    for tick in nice_ticks(0, most, 5):
        drawing.text(across(tick), 194, f"{r.number(tick, 0 if most >= 5 else 1)}", anchor="middle", size=13, fill=SOFT)
    drawing.text(194, 214, f"grams of {LABELS[chemical].split(' (')[0].lower()}, pure", anchor="middle", size=13, fill=SOFT)
    return drawing.picture("pH by how much goes in", f"pH falls from {points[0][1]:.1f} in plain water to {points[-1][1]:.1f} at {most:.0f} g; {r.value('ph'):.1f} at {grams:.1f} g."
                           if points[-1][1] < points[0][1] else f"pH rises from {points[0][1]:.1f} in plain water to {points[-1][1]:.1f} at {most:.0f} g; {r.value('ph'):.1f} at {grams:.1f} g.")


def equal(r):
    """Every acid that gives the same pH in this water."""
    ph, liters, hard = r.value("ph"), r.given["liters"], r.kept["alkaline"]
    strengths = USUAL | {r.given[chemical]: r.given[strength] for chemical, strength, _, _ in (OTHER_SIDE, SIDE) if r.given[strength] is not None}
    rows = []
    for key in SOUR:
        try:
            grams = dose_for_ph(key, ph, liters / 1000, alkalinity=hard)
        except OutOfRange:
            continue
        liquid = "–"
        if key in strengths:
            volume = volume_of(key, grams, strengths[key])
            much = share_of_bath(volume, liters) > QUESTIONED
            poured = f"over {QUESTIONED:g} % of the bath, as" if much else f"{r.measured(volume, VOLUME, 'mL', 1)} of"
            liquid = f"{poured} {liquid_name(key, strengths[key], r.amount(strengths[key], PERCENT), False)}"
        rows.append((LABELS[key], r.measured(grams, MASS, "g", 0.1), liquid))
    return Table(f"The same pH by other acids, in this water", ("Acid", "Pure", "As a liquid"), tuple(rows)) if len(rows) > 1 else None


def _diluted_as(r):
    return {"acetic": "acetic", "formic": "formic", "citric": "citric", "citric-monohydrate": "citric"}.get(r.given["chemical"])


def _poured_acid(r):
    """The strength of a liquid acid that goes in; None where it is none."""
    return r.given["strength"] if r.has("volume") and _diluted_as(r) else None


def _strong(r):
    """The bottle in hand, where it is strong; what is weak already leaves that to the next card."""
    return f"{r.given['strength']:.4g}%" if (_poured_acid(r) or 0) > WEAK else None


def _wanted(r):
    strength = _poured_acid(r)
    return None if strength is None else f"{THINNED if strength > WEAK else strength:.4g}%"


def _thinned(r):
    """What goes in, as so much of the weak acid."""
    strength = _poured_acid(r)
    if strength is None:
        return None
    more = volume_of(r.given["chemical"], 1.0, THINNED) / volume_of(r.given["chemical"], 1.0, strength) if strength > WEAK else 1.0
    return spread_text(*(more * end for end in (r.value("volume"), r.low("volume"), r.high("volume"))), "mL")


def _holds(r):
    return _diluted_as(r) or ("soda-ash" if r.given["chemical"] in ("soda-ash", "washing-soda") else None)


def _alkalinity(r):
    return f"{r.kept['alkaline']:.4g}mg/L"


COUNTED, WISHED, OTHER = {"do": (AMOUNT, SWAP)}, {"do": (TARGET,)}, {"do": (SWAP,)}
CHEMICALS = tuple(Option(key, LABELS[key]) for key in ACIDS)

CARD = Card(
    id="bath-acid", chapter="dye", place=30, handles=("acid", "alkali"),
    question="How sour is the bath?",
    inputs=(
        Input("do", CHOICE, "What you want", default=AMOUNT, options=(Option(AMOUNT, "The pH that an amount gives"), Option(TARGET, "The amount for a pH"), Option(SWAP, "Another acid for the same pH"))),
        Input("liters", VOLUME, "Bath", default="8 L", allowed=("50 mL", "1000 L"), usual=("1 L", "40 L"), rough="3 %", units=("L", "mL", "gal"), bench="pots.fill", strict=True),
        Input("water", CHOICE, "Water", default="soft", options=(*(Option(key, row["label"]) for key, row in WATERS.items()), Option("known", "Its alkalinity is known"))),
        Input("alkalinity", NUMBER, "Alkalinity, mg/L as calcium carbonate", default="40", allowed=("0", "1000"), usual=("10", "350"), rough="10 %", when={"water": ("known",)}, strict=True,
              measure="From the supplier’s report; total hardness is not the same."),
        Input("chemical", CHOICE, "Acid or alkali", default="citric", options=CHEMICALS),
        Input("grams", MASS, "How much, pure", default="4 g", allowed=("0 g", "20 kg"), usual=("0.5 g", "100 g"), rough="0.1 g", units=("g", "oz"), when=COUNTED, strict=True,
              measure="100 mL of 5 % vinegar holds 5 g."),
        Input("strength", PERCENT, "Strength of the liquid, by weight", default="5 %", allowed=("1 %", "90 %"), usual=("4 %", "60 %"), when={"chemical": LIQUIDS}, strict=True),
        Input("target", NUMBER, "pH wanted", default="4", allowed=("1", "13"), usual=("3", "10.5"), when=WISHED, strict=True),
        Input("other", CHOICE, "Instead of it", default="acetic", options=CHEMICALS, when=OTHER),
        Input("other_strength", PERCENT, "Strength of that liquid, by weight", default="5 %", allowed=("1 %", "90 %"), usual=("4 %", "60 %"), when={"do": (SWAP,), "other": LIQUIDS}, strict=True),
        Input("strip", NUMBER, "What a pH strip says", allowed=("0", "14"), usual=("2", "11"), optional=True, strict=True, measure="In a cooled sample; a strip is good to half a step."),
    ),
    results=(
        Result("ph", NUMBER, "pH, water alone, before fiber", finest=(0.05,)),
        Result("grams", MASS, "Acid or alkali, pure", units=("g", "oz"), finest=(0.1, 0.01), floor=0.0),
        Result("volume", VOLUME, "as the liquid", units=("mL",), finest=(0.1,), floor=0.0, named=lambda r: f"as {_liquid(r, SIDE)}"),
        Result("other_grams", MASS, "The other one, pure", units=("g", "oz"), finest=(0.1, 0.01), floor=0.0),
        Result("other_volume", VOLUME, "as its liquid", units=("mL",), finest=(0.1,), floor=0.0, named=lambda r: f"as {_liquid(r, OTHER_SIDE)}"),
    ),
    answer=answer, say=say, notes=notes, pictures=(curve,), tables=(equal,),
    basis=Basis(MODEL, "All charges cancel, with activities (Davies), at 25 °C. Water alone: fiber, dye and heat shift it. A strip in the cooled bath decides."),
    sources=(GOLDBERG_2002, SPANA_HELP, ATOMIC_WEIGHTS, HANDBOOK_DENSITIES, PH_TABLE, COMMON_PRACTICE),
    cautions=(Caution("Acid into water.", "Never water into acid; goggles and gloves, stir slowly. No bleach near any acid. Soda into a sour bath foams. The maker’s safety data sheet comes first."),
              soda_in_aluminum(lambda r: r.given["chemical"] in ALKALIS or r.given["do"] == SWAP and r.given["other"] in ALKALIS)),
    carry=(Carry("bath-heat", "How long does it take to heat?", {"bath": "liters"}), Carry("acid-dilution", "Thin a strong acid first", {"acid": _diluted_as, "have": _strong, "wanted": _wanted, "volume": _thinned}),
           Carry("pots", "How long does the whole run take?", {}),
           Carry("drain-check", "May it go down the drain?", {"volume": "liters", "ph": "ph", "holds": _holds, "alkalinity": _alkalinity})),
)
