"""A stock: made up to a volume, thinned, extended, or made from an odd amount of powder, with what its bottle's label says."""

from ...core.answer import Table
from ...core.card import CHOICE, DATE, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Save
from ...core.day import write_date
from ...core.paper import Paper
from ...core.problem import Refused
from ...core.units import CONCENTRATION, MASS, NUMBER, PERCENT, VOLUME
from ...sources import ARITHMETIC, COMMON_PRACTICE, TRADE_MEMORY
from ..stock import (keeping_losses, powder_for_stock, powder_of_jar, powder_to_extend, stock_error, stock_to_dilute, strength_if_added, strength_kept,
                     volume_for_powder)

MAKE, USE_UP, DILUTE, EXTEND = "make", "use-up", "dilute", "extend"
KINDS = {row["kind"]: row for row in keeping_losses().rows}


def answer(w, do, wanted, volume, powder, have, left, strength_left, jar, old_jar, new_jar, scale_error, jug_error, kind, weeks, name, lot, made, hazards):
    found = dict.fromkeys(("powder", "water", "stock", "final", "error", "wrong", "holds"))
    strength = wanted
    plain, said = ("plain_powder", "Powder, at the usual strength of the jar") if jar == "yes" else ("powder", "Powder to weigh")
    if do == MAKE:
        grams = w.step(plain, "volume * wanted / 100", powder_for_stock(volume, wanted), MASS, label=said)
        found["final"] = volume
    elif do == USE_UP:
        grams = None
        active = w.step("active", "powder * new_jar / old_jar", powder * new_jar / old_jar, MASS, label="That powder, in the usual jar’s grams") if jar == "yes" else powder
        found["final"] = w.step("final", f"100 * {'active' if jar == 'yes' else 'powder'} / wanted", volume_for_powder(active, wanted), VOLUME, label="Make it up to")
        found["powder"] = powder
    elif do == DILUTE:
        if wanted > have:
            raise Refused("Strength wanted: water cannot make a stock stronger; give less than what you have, or extend it with powder.", "wanted")
        grams = None
        found["stock"] = w.step("stock", "volume * wanted / have", stock_to_dilute(volume, wanted, have), VOLUME, label="Of the strong stock")
        found["water"] = w.step("water", "volume - stock", volume - found["stock"], VOLUME, label="Water, to the mark")
        found["final"] = volume
    else:
        if left > volume:
            raise Refused("Stock left: there is more of it than you want to have; give a larger volume.", "left")
        if left * strength_left > volume * wanted * (1 + 1e-9):
            raise Refused(f"Stock left: it already holds more dye than that; make it up to {100 * left * strength_left / 100 / wanted:.0f} mL or more.", "left")
        grams = w.step(plain, "(volume * wanted - left * strength_left) / 100", powder_to_extend(volume, wanted, left, strength_left), MASS, label=said)
        found["final"] = volume
    if grams is not None:
        found["powder"] = powder_of_jar(grams, old_jar, new_jar) if jar == "yes" and grams > 0 else grams
        if jar == "yes":
            w.step("powder", "plain_powder * old_jar / new_jar", found["powder"], MASS, label="Powder to weigh")
    if found["powder"]:
        found["error"] = w.step("error", "100 * sqrt((scale_error / powder) ** 2 + (jug_error / final) ** 2)" if do == USE_UP else "100 * sqrt((scale_error / powder) ** 2 + (jug_error / volume) ** 2)",
                                stock_error(found["powder"], found["final"], scale_error, jug_error), PERCENT, label="How far its strength may be off, by scale and jug")
    if do == MAKE and found["powder"]:
        found["wrong"] = strength_if_added(found["powder"], volume) * (new_jar / old_jar if jar == "yes" else 1.0)
    if jar == "yes" and do != DILUTE:
        old = left * strength_left if do == EXTEND else 0.0
        found["holds"] = w.step("holds", "100 * powder / final" if do == USE_UP else f"(100 * powder{' + left * strength_left' if do == EXTEND else ''}) / volume", (100 * found["powder"] + old) / found["final"],
                                CONCENTRATION, label="Powder in it, as weighed")
    row = KINDS[kind]
    found["weakest"] = w.step("weakest", f"wanted * (1 - {row['high']:g} / 100) ** weeks", strength_kept(strength, weeks, row["high"]), CONCENTRATION, label="Then, at the weakest")
    found["strongest"] = strength_kept(strength, weeks, row["low"])
    w.step("strongest", f"wanted * (1 - {row['low']:g} / 100) ** weeks", found["strongest"], CONCENTRATION, label="Then, at the strongest")
    return found


def say(r):
    do, final = r.given["do"], r.text("final", "mL")
    strength = f"{r.given['wanted']:g} %"
    if do == DILUTE:
        return f"Take {r.text('stock', 'mL')} of the strong stock and fill up to {final}.", f"That is {strength}: water to the mark, about {r.text('water', 'mL')}."
    is_so = f"works as {strength} of the usual jar" if r.has("holds") else f"is {strength}"
    if do == USE_UP:
        return f"Dissolve all of it and fill up to {final}.", f"That {is_so} exactly; scale and jug leave ± {r.text('error')}."
    if do == EXTEND:
        return f"Add {r.text('powder')} of powder to what is left and fill up to {final}.", f"That {is_so} again; dissolve the powder first in a little hot water."
    return f"Weigh {r.text('powder')} of powder and fill up to {final}.", f"That {is_so}: up to the mark, not {final} added to it. Scale and jug leave ± {r.text('error')}."


def notes(r):
    said = []
    if r.kept.get("wrong") is not None and r.given["do"] == MAKE:
        said.append(f"Pouring {r.text('final', 'mL')} of water onto the powder instead would give {r.measured(r.kept['wrong'], PERCENT, '%', 0.001)}.")
    if r.has("holds"):
        said.append(f"Two numbers stand on its label: what it works as in your recipes, and the {r.text('holds')} of powder that it holds.")
    row = KINDS[r.given["kind"]]
    said.append(f"After {r.number(r.given['weeks'])} weeks closed and cool it likely {'works as' if r.has('holds') else 'holds'} {r.text('weakest')} to {r.text('strongest')} ({row['label'].lower()}; from memory, wide). A dip beside a fresh stock tells more.")
    if r.has("error") and r.value("error") > 2:
        said.append("More than 2 % off shows beside an older lot: weigh on a finer scale, or make a larger bottle.")
    said.append("Hot water, all of it dissolved, then cool before the mark: warm water stands higher.")
    return said


def label(r):
    """What the bottle's label says."""
    strength = f"{r.given['wanted']:g} g in 100 mL"
    # From a jar of another strength the bottle holds another weight than it works as: both stand on it, each with its jar.
    jars = [("Works as", f"{strength}, of a jar of strength {r.given['old_jar']:g}"), ("Holds", f"{r.text('holds')}, {'topped up from a' if r.given['do'] == EXTEND else 'of this'} jar of strength {r.given['new_jar']:g}")] if r.has("holds") else [("Strength", strength)]
    lines = [("Name", r.given["name"]), *jars, ("Made", write_date(r.given["made"])), ("Lot of the jar", r.given["lot"] or "–"),
             ("Hazards", r.given["hazards"] or "see the maker’s safety data sheet"), ("Use", "dye only; not for food or drink")]
    return Table("Bottle label", ("Line", "Text"), tuple(lines))


VOLUMES, POWDERED, JARRED = {"do": (MAKE, DILUTE, EXTEND)}, {"do": (MAKE, USE_UP, EXTEND)}, {"jar": ("yes",), "do": (MAKE, USE_UP, EXTEND)}
STRENGTHS = ("g/100 mL", "g/L")

CARD = Card(
    id="stock-solution", chapter="dye", place=20, handles=("powder", "heat"),
    question="How do I make up this stock?",
    inputs=(
        Input("do", CHOICE, "What to do", default=MAKE, options=(Option(MAKE, "Make it from powder"), Option(USE_UP, "Use up an odd amount of powder"), Option(DILUTE, "Thin a stronger stock"),
                                                                Option(EXTEND, "Extend what is left"))),
        Input("wanted", CONCENTRATION, "Strength wanted", default="1 g/100 mL", allowed=("0.001 g/100 mL", "20 g/100 mL"), usual=("0.1 g/100 mL", "5 g/100 mL"), units=STRENGTHS, strict=True,
              measure="1 g in 100 mL is a 1 % stock."),
        Input("volume", VOLUME, "Final volume", default="500 mL", allowed=("5 mL", "50 L"), usual=("100 mL", "2 L"), units=("mL", "L"), when=VOLUMES, strict=True, measure="What the bottle will hold, dye and all."),
        Input("powder", MASS, "Powder you have", default="3.7 g", allowed=("0.01 g", "2 kg"), usual=("0.5 g", "50 g"), units=("g", "oz"), when={"do": (USE_UP,)}, strict=True),
        Input("have", CONCENTRATION, "Strength of the strong stock", default="5 g/100 mL", allowed=("0.001 g/100 mL", "20 g/100 mL"), usual=("0.5 g/100 mL", "10 g/100 mL"), units=STRENGTHS, when={"do": (DILUTE,)}, strict=True),
        Input("left", VOLUME, "Stock left", record="bottle.left", default="120 mL", allowed=("0 mL", "50 L"), usual=("10 mL", "1 L"), units=("mL", "L"), when={"do": (EXTEND,)}, strict=True),
        Input("strength_left", CONCENTRATION, "Strength of what is left", record="bottle.strength", default="1 g/100 mL", allowed=("0.001 g/100 mL", "20 g/100 mL"), usual=("0.1 g/100 mL", "5 g/100 mL"), units=STRENGTHS, when={"do": (EXTEND,)}, strict=True),
        Input("jar", CHOICE, "Does this jar differ in strength from the one your recipes are from?", default="no", options=(Option("no", "No, or not known"), Option("yes", "Yes")), when=POWDERED),
        Input("old_jar", NUMBER, "The old jar’s strength", default="100", allowed=("10", "400"), usual=("100", "200"), when=JARRED, strict=True, measure="As the maker marks it, 100 for usual."),
        Input("new_jar", NUMBER, "This jar’s strength", record="jar.strength", default="125", allowed=("10", "400"), usual=("100", "200"), when=JARRED, strict=True),
        Input("scale_error", MASS, "The scale is good to", default="0.02 g", allowed=("0.0005 g", "5 g"), usual=("0.005 g", "0.1 g"), units=("g",), strict=True, measure="Either way; a pocket scale that shows 0.01 g is good to about 0.02 g."),
        Input("jug_error", VOLUME, "The jug or flask is good to", default="5 mL", allowed=("0.1 mL", "500 mL"), usual=("0.5 mL", "25 mL"), units=("mL",), strict=True),
        Input("kind", CHOICE, "Kind of dye", default="acid", options=tuple(Option(key, row["label"]) for key, row in KINDS.items())),
        Input("weeks", NUMBER, "Weeks it will stand", default="8", allowed=("0", "104"), usual=("1", "26")),
        Input("name", TEXT, "Name on the bottle", record="jar.name", default="navy", longest=40),
        Input("lot", TEXT, "Lot of the jar", record="jar.lot", default="", longest=24, optional=True),
        Input("made", DATE, "Made on", default="2027-01-11", today=True),
        Input("hazards", TEXT, "Hazard words of its safety data sheet", record="jar.hazards", default="", longest=200, optional=True, measure="As the sheet has them; never guessed."),
    ),
    results=(
        Result("powder", MASS, "Powder to weigh", units=("g",), finest=(0.01,)),
        Result("stock", VOLUME, "Of the strong stock", units=("mL",), finest=(0.5,)),
        Result("water", VOLUME, "Water, to the mark", units=("mL",), finest=(1,)),
        Result("final", VOLUME, "Make it up to", units=("mL", "L"), finest=(1, 0.01)),
        Result("holds", CONCENTRATION, "Powder in it, as weighed", units=("g/100 mL",), finest=(0.01,)),
        Result("error", PERCENT, "Strength may be off by, either way", finest=(0.1,), at_step=True),
        Result("weakest", CONCENTRATION, "After those weeks, at the weakest", units=("g/100 mL",), finest=(0.001,)),
        Result("strongest", CONCENTRATION, "at the strongest", units=("g/100 mL",), finest=(0.001,)),
    ),
    answer=answer, say=say, notes=notes, tables=(label,), papers=(Paper("Bottle label, A6", "A6", lambda r: (label(r),)),),
    basis=Basis(MODEL, "Strength is grams of dye in 100 mL of finished stock. How stocks weaken is from memory and wide."),
    sources=(ARITHMETIC, COMMON_PRACTICE, TRADE_MEMORY),
    cautions=(Caution("Powder and hot water.", "Weigh it still, over damp paper, no fan, mask and gloves on; wet the powder to a paste before hot water. A stock bottle is never a drinks bottle, "
                      "and is labeled before it is filled. The maker’s safety data sheet comes first."),),
    carry=(Carry("dye-recipe", "How much of it for this pot?", {"dyes.1.name": "name", "dyes.1.strength": "wanted"}),
           Carry("hazard-label", "What hazards go on the bottle?", {"contents": lambda r: [{"what": "dye-unknown", "strength": f"{r.value('holds') if r.has('holds') else r.given['wanted']:.4g}%"}]})),
    saves=(Save("bottle", "A stock bottle", {"name": "name", "strength": "wanted", "left": "final", "made_on": "made", "weeks": "weeks"}, when={"do": ("make",)}),),
)
