"""A recipe at the pot: milliliters of each stock, acid, salt, and water to top up, for a pot, a lot and a run."""

from dataclasses import replace

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows, Save
from ...core.paper import Paper
from ...core.problem import OutOfRange, Refused
from ...core.table import STATUS_WORDS, read_table
from ...core.units import CONCENTRATION, COUNT, MASS, NUMBER, PERCENT, VOLUME
from ...sources import ARITHMETIC, COMMON_PRACTICE, COTTON_DEPTH_2016, DYE_LAB_MANUAL, DYEING_TERMS_SLIDES, DYEING_TEXTBOOK, MORTON_HEARLE_2008, TEXTILE_PAGES_RECIPE, TRADE_PAGE_DYES
from ...safe.liquids import QUESTIONED, liquid_name, share_of_bath
from ...yarn.fiber_density import fiber_densities, fiber_density
from .. import onward
from ..cautions import soda_in_aluminum
from ..fit import ill_fit, kind_of, told
from ..measuring import error_share, least_dose, volume_error
from ..pictures.pot import pot_picture
from ..pots import even_loads, skeins_that_fit
from ..recipe import (bath_auxiliary, bath_volume, carried_water, dye_mass, measurable_strength, over_held, pot_level, recipe_mass, shade_error, stock_volume, top_up_water, yarn_displacement)

NONE, CITRIC, LIQUID, SODA = "none", "citric", "liquid", "soda-ash"
CLASSES = {row["key"]: row for row in read_table("dye", "dye-classes").rows}
PUBLISHED = [row for row in read_table("dye", "auxiliaries").rows if row["key"].startswith("cotton-")]
HARMED = ("protein", "acetate", "polylactide", "alginate")  # by soda
BRIM = 4 / 3  # a pot holds about so many times its fill line (12 L filled to 9 L), for the picture only
POORLY = 5.0  # %: a dose measured worse than this is named (our own edge)


def answer(w, skeins, skein_mass, damp, regain_now, regain_usual, fiber, dye_class, dyes, liquor_ratio, fill, pick_up, acid, acid_share, acid_strength, salt_share, syringe, syringe_error, lots, soda, salt_liter):
    if damp == "yes":
        goods = w.step("goods", "skeins * skein_mass * (1 + regain_usual / 100) / (1 + regain_now / 100)", recipe_mass(skeins * skein_mass, regain_now, regain_usual), MASS,
                       label="Yarn in the lot, as dry as usual")
    else:
        goods = w.step("goods", "skeins * skein_mass", skeins * skein_mass, MASS, label="Yarn in the lot")
    total = w.step("total_depth", "sum(dyes.depth)", sum(row.depth for row in dyes), PERCENT, label="Depth of shade in all")
    if total == 0:
        raise Refused("Dyes: all depths are 0; give at least one.", "dyes.1.depth")
    doses, stock, dye = [], 0.0, 0.0
    for number, row in enumerate(dyes, 1):
        mass = dye_mass(goods, row.depth)
        volume = stock_volume(mass, row.strength)
        w.step(f"stock_{number}", f"goods * dyes[{number}].depth / dyes[{number}].strength", volume, VOLUME, label=f"Stock of {row.name}")
        doses.append((row, mass, volume))
        stock, dye = stock + volume, dye + mass
    w.step("stock_total", " + ".join(f"stock_{number}" for number in range(1, len(dyes) + 1)), stock, VOLUME, label="Stocks in all")
    w.step("dye_total", "goods * total_depth / 100", dye, MASS, label="Dye in all")
    bath = w.step("bath", "goods * liquor_ratio", bath_volume(goods, liquor_ratio), VOLUME, label="Bath for the lot")
    density = w.looked_up("density", "yarn", "morton-hearle-fiber-densities", "fiber", fiber, "at_65", label="Density of the fiber, g/cm³") if _at_65(fiber) else fiber_density(fiber)
    one = goods / skeins
    most = w.decide("most", skeins_that_fit(fill, one, liquor_ratio, 1 / density))
    loads = w.decide("loads", even_loads(skeins, most))
    w.searched("potfuls", len(loads), (f"potfuls * {most} >= skeins",), f"skeins / {most}", label=f"Potfuls, at most {most} skeins in each")
    acid_pure, acid_volume = 0.0, 0.0
    if acid in (CITRIC, LIQUID):
        acid_pure = w.step("acid_pure", "goods * acid_share / 100", dye_mass(goods, acid_share), MASS, label="Acid, pure")
    if acid == LIQUID:
        acid_volume = w.step("acid_volume", "100 * acid_pure / acid_strength", stock_volume(acid_pure, acid_strength), VOLUME, label=f"{liquid_name('acetic', acid_strength, f'{acid_strength:g} %')}, as poured")
    salt = w.step("salt", "goods * salt_share / 100", dye_mass(goods, salt_share), MASS, label="Salt") if salt_share else None
    soda_mass = w.step("soda_mass", "bath * soda / 1000", bath_auxiliary(bath, soda), MASS, label="Soda ash") if acid == SODA else None
    salt_bath = w.step("salt_bath", "bath * salt_liter / 1000", bath_auxiliary(bath, salt_liter), MASS, label="Salt, by the liter") if salt_liter else None
    carried = w.step("carried", "goods * pick_up / 100", carried_water(goods, pick_up), VOLUME, label="Water that the wet yarn brings")
    try:
        water = top_up_water(bath, stock + acid_volume + carried)
    except OutOfRange as over:
        raise Refused(f"Dyes: {over.reason}.", "dyes.1.strength") from None
    w.step("water", "bath - stock_total - carried" + (" - acid_volume" if acid == LIQUID else ""), water, VOLUME, label="Water to top up")
    raised = yarn_displacement(goods * loads[0] / skeins, density)
    level = pot_level(bath * loads[0] / skeins, raised, fill)
    w.step("level", f"bath * {loads[0]} / skeins + goods * {loads[0]} / skeins / {'density' if _at_65(fiber) else format(density, 'g')}", level, VOLUME, label="The fullest pot, yarn and all")
    return {"stock_total": stock, "dye_total": dye, "water": water, "bath": bath, "acid_pure": acid_pure or None, "acid_volume": acid_volume or None, "salt": salt, "soda_mass": soda_mass, "salt_bath": salt_bath, "potfuls": len(loads),
            "level": level, "total_depth": total, "goods": goods, "doses": doses, "loads": loads, "carried": carried, "raised": raised,
            "over": over_held(total, CLASSES[dye_class]["depth_mark"])}


def _at_65(fiber):
    return isinstance(fiber_densities().row("fiber", fiber)["at_65"], float)


def say(r):
    parts = [f"{_stock(r, volume)} of {row.name}" for row, _, volume in r.kept["doses"] if volume > 0]
    listed = parts[0] if len(parts) == 1 else f"{', '.join(parts[:-1])} and {parts[-1]}"
    pots = int(r.value("potfuls"))
    in_pots = "in one pot" if pots == 1 else f"shared over {pots} pots"
    return f"Measure {listed}.", f"With {_water(r)} of water{_acid_words(r)}, that is {r.text('total_depth')} on {r.text('goods', 'g')} of yarn, {in_pots}.{_stays(r)}"


def _acid_words(r):
    if r.has("acid_volume"):
        return f" and {r.text('acid_volume', 'mL')} of {_liquid(r)}"
    if r.has("soda_mass"):
        return (f", {r.text('salt_bath', 'g')} of salt" if r.has("salt_bath") else "") + f" and {r.text('soda_mass', 'g')} of soda ash"
    return f" and {r.text('acid_pure', 'g')} of citric acid" if r.has("acid_pure") else ""


def _liquid(r, kitchen=True):
    """The liquid acid with its strength, as the label gives it: grams in 100 mL."""
    strength = r.given["acid_strength"]
    return liquid_name("acetic", strength, r.amount(strength, PERCENT), kitchen)


def _stays(r):
    """That most of the dye will not hold on this fiber, where that is so."""
    row = ill_fit(r.given["dye_class"], r.given["fiber"])
    return f" But this dye does not stay on {r.given['fiber']}: see the notes." if row and row["stays"] == "no" else ""


def _stock(r, volume):
    """A dose of a stock, in sentence and note as in the tables."""
    return r.times("stock_total", volume / r.value("stock_total"), "mL")


def _volume(r, volume):
    """Any part of the fullest pot, rough as the yarn's weight leaves all of them."""
    name, unit = ("bath", "L") if volume >= 1000 else ("stock_total", "mL")
    return r.times(name, volume / r.value(name), unit)


def _water(r):
    return r.text("water", "L" if r.value("water") >= 1000 else "mL")


def _poorly(r):
    """Doses that the syringe measures worse than it should: the dose, its error as a share of it and of the shade, and the stock to use."""
    found = []
    capacity, error = r.given["syringe"], r.given["syringe_error"]
    least = least_dose(error, POORLY)
    for row, mass, volume in r.kept["doses"]:
        if volume <= 0:
            continue
        off = volume_error(volume, capacity, error)
        if error_share(off, volume) > POORLY:
            try:
                weaker = measurable_strength(mass, least)
            except OutOfRange:
                weaker = None
            found.append((row, volume, error_share(off, volume), shade_error(off, row.strength, r.value("goods"), r.value("total_depth")), weaker))
    return found


def notes(r):
    said = []
    for row, volume, share, of_shade, weaker in _poorly(r):
        fix = f" From a {r.amount(weaker, PERCENT)} stock it would be {r.measured(volume * row.strength / weaker, VOLUME, 'mL', 1)}, measured well." if weaker and weaker < row.strength else ""
        said.append(f"{_stock(r, volume)} of {row.name} is good to ± {share:.0f} % only, which is {of_shade:.1f} % of the whole shade.{fix}")
    row = CLASSES[r.given["dye_class"]]
    if r.kept["over"] > 0:
        said.append(f"{r.text('total_depth')} is over the {row['depth_mark']:g} % that the table calls deep for {row['label'].lower()}: what the fiber cannot hold stays in the bath and bleeds.")
    said += _of_the_class(r, row)
    if r.given["acid"] == LIQUID:
        said.append("The acid's strength is taken as grams in 100 mL, as a vinegar's label gives it.")
        share = share_of_bath(r.value("acid_volume"), r.value("bath")) if r.has("acid_volume") else 0.0
        if share > QUESTIONED:
            said.append(f"{r.text('acid_volume', 'mL')} of {_liquid(r)} is {r.number(share)} % of the bath: is that meant?")
    said.append("Percent of shade is of the dry weight of the fiber; percent of a stock is grams of dye in 100 mL of it.")
    return said


def _of_the_class(r, row):
    """What does not go with this class of dye, and what was published for it."""
    said = []
    plant, kind, unfit = row["takes"] == "cellulose", kind_of(r.given["fiber"]), ill_fit(row["key"], r.given["fiber"])
    if unfit:
        said.append(told(unfit))
    if plant and kind == "cellulose" and r.given["acid"] in (CITRIC, LIQUID):
        said.append("On plant fiber a reactive dye is fixed by alkali, not by acid; a direct dye takes neither.")
    if not plant and r.given["acid"] == SODA:
        said.append("An acid dye does not go on in soda.")
    if kind in HARMED and r.given["acid"] == SODA:
        said.append(f"Soda harms {r.given['fiber']}.")
    if "metal" in row["handles"]:
        said.append("The class is not told: until the maker says, its bath counts as one that may hold a metal." if row["key"] == "acid-unknown" else
                    f"{row['label']}: the dye holds a metal, often chromium or cobalt ({STATUS_WORDS[row['status']]}); its bath goes down no drain before the data sheet and the sewer authority have been asked.")
    if row["key"].startswith("reactive") and kind == "cellulose":
        pairs = [(shade, [each["low"] for each in PUBLISHED if each["shade"] == shade]) for shade in dict.fromkeys(each["shade"] for each in PUBLISHED)]
        said.append("Published for reactive dye on cotton at 10 to 1 and 70 °C, grams in a liter: " + "; ".join(f"at {shade} {salt:g} of salt and {soda:g} of soda ash" for shade, (salt, soda) in pairs)
                    + ". Salt first, soda last, when the dye is on the fiber; the maker’s sheet comes first.")
    return said


def doses(r):
    """Each dose for a pot, the lot and the run."""
    loads, skeins, lots = r.kept["loads"], r.given["skeins"], r.given["lots"]
    share = loads[0] / skeins
    lines = [(row.name, "stock_total", volume / r.value("stock_total"), "mL") for row, _, volume in r.kept["doses"]]
    if r.has("acid_volume"):
        lines.append((_liquid(r), "acid_volume", 1.0, "mL"))
    elif r.has("acid_pure"):
        lines.append(("Citric acid", "acid_pure", 1.0, "g"))
    lines += [(words, name, 1.0, "g") for name, words in (("salt", "Glauber’s salt"), ("salt_bath", "Salt"), ("soda_mass", "Soda ash")) if r.has(name)]
    lines += [("Water", "water", 1.0, "mL"), ("Bath in all", "bath", 1.0, "mL")]
    rows = tuple((words, *(r.times(name, part * times, unit) for times in (share, 1.0, lots))) for words, name, part, unit in lines)
    fullest = f"Fullest pot ({loads[0]} {'skein' if loads[0] == 1 else 'skeins'})"
    return Table("What to measure", ("What", fullest, f"Lot ({skeins})", f"Run ({lots} {'lot' if lots == 1 else 'lots'})"), rows)


def powder(r):
    """The same dye weighed as powder, for those who make no stock."""
    total = r.value("dye_total")
    rows = tuple((row.name, f"{row.depth:g} %", *(r.times("dye_total", mass / total * lots, "g") for lots in (1, r.given["lots"]))) for row, mass, _ in r.kept["doses"])
    return Table("Dye in it, as powder", ("Dye", "Depth", "Lot", "Run"), rows)


def picture(r):
    share = r.kept["loads"][0] / r.given["skeins"]
    parts = [(row.name, volume * share) for row, _, volume in r.kept["doses"] if volume > 0]
    if r.has("acid_volume"):
        parts.append((_liquid(r, kitchen=False), r.value("acid_volume") * share))
    fill = r.given["fill"]
    return pot_picture(BRIM * fill, fill, r.kept["raised"], r.kept["carried"] * share, parts, r.value("water") * share, lambda volume: r.amount(fill, VOLUME, "L" if fill >= 1000 else "mL") if volume == fill else _volume(r, volume))


def recipe_card(r):
    """What is measured for the fullest pot and the lot: to pin up beside the kettle."""
    table, depths = doses(r), {row.name: f"{row.name}, {row.depth:g} %" for row in r.given["dyes"]}
    return (replace(table, columns=(*table.columns[:3], "Done"), rows=tuple((depths.get(row[0], row[0]), *row[1:3], "☐") for row in table.rows)),)


def batch_sheet(r):
    """A sheet for one lot, filled in at the pot with a pencil."""
    head = Table("This lot", ("What", "Written at the pot"), tuple((line, "") for line in ("Lot number, date, who", "Base and its mill lot", "Weighed dry, room", "Jars and stocks: lots, dates")))
    measured = Table("Measured", ("What", "For the lot", "Poured", "Done"), tuple((row[0], row[2], "", "☐") for row in doses(r).rows))
    grid = Table("By the clock", ("Step", "Time", "°C", "pH", "Note"),
                 tuple((step, "", "", "", "") for step in ("In the bath", "60 °C", "Top", "Acid", "Hold ends", "Out", "Rinses", "Dry, weighed")))
    end = Table("At the end", ("What", "Written at the pot"), tuple((line, "") for line in ("Left in the bath: jar of the ladder", "Rub with a damp white cloth", "Seconds; anything odd")))
    return head, measured, grid, end


DAMP, SOUR, WET = {"damp": ("yes",)}, {"acid": (CITRIC, LIQUID)}, {"acid": (LIQUID,)}

CARD = Card(
    id="dye-recipe", chapter="dye", place=10, tall_sheet=True, handles=("powder", "acid", "alkali", "heat"),
    question="How much of each dye for this pot?",
    inputs=(
        Input("skeins", COUNT, "Skeins in the lot", record="colorway.skeins", default="4", allowed=("1", "500"), usual=("1", "40")),
        Input("skein_mass", MASS, "A skein weighs", default="100 g", allowed=("0.5 g", "5 kg"), usual=("5 g", "250 g"), rough="1 g", units=("g", "oz"), bench="bases.mass", record="base.mass", strict=True,
              measure="Dry, before it is soaked."),
        Input("damp", CHOICE, "Correct for damp?", default="no", options=(Option("no", "No, weighed as usual"), Option("yes", "Yes, by regain"))),
        Input("regain_now", PERCENT, "Regain when weighed", default="15.5 %", allowed=("0 %", "60 %"), usual=("8 %", "20 %"), when=DAMP, measure="From “It says 100 g, mine says 103”."),
        Input("regain_usual", PERCENT, "Regain the recipe was made at", default="13 %", allowed=("0 %", "60 %"), usual=("8 %", "20 %"), when=DAMP),
        Input("fiber", CHOICE, "Mostly", default="wool", options=tuple(Option(row["fiber"], row["fiber"][0].upper() + row["fiber"][1:]) for row in fiber_densities().rows)),
        Input("dye_class", CHOICE, "Class of dye", default="acid-unknown", options=tuple(Option(key, row["label"]) for key, row in CLASSES.items())),
        Rows("dyes", "Dyes", "dye", record="colorway.dyes", least=1, most=8, measure="Depth in percent of the dry fiber; strength of the stock in grams in 100 mL.",
             fields=(Input("name", TEXT, "Name", default="yellow", longest=40), Input("depth", PERCENT, "Depth", default="0.1 %", allowed=("0 %", "12 %"), usual=("0.01 %", "4 %"), strict=True),
                     Input("strength", CONCENTRATION, "Strength of its stock", default="1 g/100 mL", allowed=("0.005 g/100 mL", "20 g/100 mL"), usual=("0.1 g/100 mL", "5 g/100 mL"),
                           units=("g/100 mL", "g/L"), strict=True)),
             default=({"name": "navy", "depth": "0.62 %"}, {"name": "black", "depth": "0.24 %"}, {"name": "brown", "depth": "0.04 %"})),
        Input("liquor_ratio", NUMBER, "Bath for each gram of yarn, mL", record="colorway.liquor_ratio", default="20", allowed=("2", "120"), usual=("15", "40"), measure="20 is a liquor ratio of 20 to 1."),
        Input("fill", VOLUME, "Pot filled to at most", default="9 L", allowed=("0.1 L", "500 L"), usual=("2 L", "40 L"), units=("L", "mL", "qt", "gal"), bench="pots.fill", strict=True,
              measure="With the yarn in it; leave room to boil and to stir."),
        Input("pick_up", PERCENT, "Water that the soaked yarn brings", default="150 %", allowed=("0 %", "600 %"), usual=("50 %", "300 %"), measure="Of its dry weight; 0 for dry yarn, about 150 when squeezed."),
        Input("acid", CHOICE, "Acid or alkali", record="colorway.acid", default=CITRIC, options=(Option(CITRIC, "Citric acid, crystals"), Option(LIQUID, "Vinegar or acetic acid, liquid"), Option(SODA, "No acid: soda ash, for reactive dye"), Option(NONE, "None in this recipe"))),
        Input("acid_share", PERCENT, "Acid, percent of the yarn", record="colorway.acid_share", default="1 %", allowed=("0 %", "20 %"), usual=("1 %", "4 %"), when=SOUR, strict=True, measure="As pure acid. The pH decides: see “How sour is the bath?”."),
        Input("acid_strength", CONCENTRATION, "Strength of the liquid", default="5 g/100 mL", allowed=("1 g/100 mL", "12 g/100 mL"), usual=("4 g/100 mL", "10 g/100 mL"), units=("g/100 mL", "g/L"), when=WET,
              strict=True, measure="As on the bottle. Dilute a stronger acid first."),
        Input("salt_share", PERCENT, "Glauber’s salt, percent of the yarn", record="colorway.salt_share", allowed=("0 %", "100 %"), usual=("0 %", "20 %"), optional=True, measure="Without its water. Blank for none."),
        Input("syringe", VOLUME, "Syringe or cylinder holds", default="60 mL", allowed=("0.5 mL", "2 L"), usual=("5 mL", "250 mL"), units=("mL",), strict=True),
        Input("syringe_error", VOLUME, "It is good to", default="1 mL", allowed=("0.01 mL", "50 mL"), usual=("0.1 mL", "2 mL"), units=("mL",), strict=True, measure="Either way, for one filling."),
        Input("lots", COUNT, "Lots of this in the run", default="1", allowed=("1", "200"), usual=("1", "20")),
        Input("soda", CONCENTRATION, "Soda ash in the bath", default="10 g/L", allowed=("0.5 g/L", "40 g/L"), usual=("5 g/L", "20 g/L"), units=("g/L",), unit="g/L", when={"acid": (SODA,)}, strict=True,
              measure="Without water; washing soda is 2.7 times as much."),
        Input("salt_liter", CONCENTRATION, "Salt in the bath, for plant fiber", allowed=("0 g/L", "120 g/L"), usual=("20 g/L", "100 g/L"), units=("g/L",), unit="g/L", optional=True, strict=True,
              measure="By the liter of bath. Blank for none."),
    ),
    results=(
        Result("stock_total", VOLUME, "Stocks in all", units=("mL",), finest=(1,)),
        Result("dye_total", MASS, "Dye in all", units=("g",), finest=(0.01,)),
        Result("water", VOLUME, "Water to top up", units=("L", "mL"), finest=(0.01, 10), floor=0.0),
        Result("acid_pure", MASS, "Acid, pure", units=("g",), finest=(0.1,)),
        Result("acid_volume", VOLUME, "Acid, liquid", units=("mL",), finest=(1,), named=_liquid),
        Result("salt", MASS, "Glauber’s salt", units=("g",), finest=(0.1,)),
        Result("soda_mass", MASS, "Soda ash", units=("g",), finest=(1,)),
        Result("salt_bath", MASS, "Salt", units=("g",), finest=(1,)),
        Result("bath", VOLUME, "Bath in all", units=("L", "mL"), finest=(0.01, 10)),
        Result("potfuls", COUNT, "Potfuls", rounding="up"),
        Result("level", VOLUME, "The fullest pot, yarn and all", units=("L",), finest=(0.01,)),
        Result("goods", MASS, "Yarn", units=("g", "oz"), finest=(1, 0.1)),
        Result("total_depth", PERCENT, "Depth of shade", finest=(0.01,)),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(doses, powder),
    papers=(Paper("Recipe card, A6", "A6", recipe_card), Paper("Batch sheet, A5", "A5", batch_sheet)),
    basis=Basis(MODEL, "Dye is depth times dry weight; stock is dye over strength; water fills the bath up. Yarn raises the level by the volume of its fiber."),
    sources=(TEXTILE_PAGES_RECIPE, TRADE_PAGE_DYES, DYE_LAB_MANUAL, DYEING_TERMS_SLIDES, MORTON_HEARLE_2008, COTTON_DEPTH_2016, DYEING_TEXTBOOK, COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("Powder, acid, alkali and heat.", "Weigh powder still, damp paper under it, mask and gloves on; acid or soda into water, never water onto it, goggles on; lid away from you. "
                      "The maker’s safety data sheet comes first."), soda_in_aluminum(lambda r: r.given["acid"] == SODA)),
    carry=(Carry("stock-solution", "Make up the stock of {}", {"name": "dyes.#.name", "wanted": "dyes.#.strength", "volume": onward.stock_of_run, "kind": onward.keeps_as}, each="dyes"),
           Carry("bath-acid", "How sour will that bath be?", {"liters": onward.of_pot("bath", "L"), "grams": onward.grams_in_pot, "chemical": onward.acid_in_it, "strength": onward.acid_by_weight}),
           Carry("bath-heat", "How long does it take to heat?", {"bath": onward.of_pot("bath", "L"), "fiber_mass": onward.of_pot("goods", "g"), "fiber": onward.heats_as}),
           Carry("pots", "How long does the whole run take?", {"recipes": onward.recipe_of_run, "skein_mass": "skein_mass", "liquor_ratio": "liquor_ratio", "pots.1.fill": "fill", "pots.2.fill": "fill"}),
           Carry("drain-check", "May it go down the drain?", {"volume": onward.of_pot("bath", "L"), "holds": onward.acid_in_it, "metal": onward.metal_in_it})),
    link_version=2, upgrades={1: lambda pairs: pairs},  # alkali and salt for plant fiber came after all that was asked before
    saves=(Save("colorway", "A colorway: this recipe", {"skeins": "skeins", "dyes": "dyes", "liquor_ratio": "liquor_ratio", "acid": "acid", "acid_share": "acid_share", "salt_share": "salt_share"}),
           Save("dye-lot", "A dye lot: skeins and dry weight", {"skeins": "skeins", "mass": "goods"})),
)
