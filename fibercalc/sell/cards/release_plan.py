"""A release planned: from products and quantities to base, packs, dye, loads, days, labels, boxes and money; and what is short."""

from ...core.card import CHOICE, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.paper import Paper
from ...core.problem import OutOfRange, Refused
from ...core.units import COUNT, MASS, MONEY, PERCENT, TIME
from ...sources import ARITHMETIC, COMMON_PRACTICE, TEXTILE_PAGES_RECIPE
from ..pictures.flow import flow_picture
from ..release import KIT, SET_CUT, SET_WHOLE, SKEIN, Base, Colorway, Product, Room, bill_of
from ..notation import read_held, read_recipe
from ..plans import ways
from ..plans.release import colors_table, loads_table, money_table, order_table, packing_table, plan_sheet, what_if_table

MOST_SAID = 4  # shortages in the answer's sentence


def answer(w, products, colorways, bases, jars, load, a_day, rail, drying, acid_share, acid_on_hand, energy, minutes, wage, scale, days_free):
    room = Room(load, a_day, rail, drying)
    made_bases = _bases(bases)
    made_colors = _colorways(colorways, made_bases)
    made_products = _products(products, made_colors, scale)
    try:
        bill = bill_of(made_products, made_colors, made_bases, room)
    except OutOfRange:
        raise Refused("Products: this comes to more than 100 kg or 5,000 skeins of one colorway; plan it in parts.", "products.1.wanted") from None
    if not bill.skeins:
        raise Refused("Products: nothing is to be made; give at least one product a number and a colorway.", "products.1.wanted")
    shades = {color.name: color.shades for color in made_colors}
    terms = []
    for number, need in _numbered(bill, made_colors):
        terms.append(w.step(f"skeins_{number}", _skeins_formula(need, made_products, products), need.skeins, COUNT, label=f"Skeins of {need.colorway.name}") and f"skeins_{number}")
    skeins = w.step("skeins", " + ".join(terms), bill.skeins, COUNT, label="Skeins to dye")
    short_base = 0
    for number, base in enumerate(made_bases, 1):
        own = " + ".join(f"skeins_{at}" for at, need in _numbered(bill, made_colors) if need.colorway.base == base.name) or "0"
        w.step(f"need_{number}", own, bill.bases[base.name], COUNT, label=f"Skeins of {base.name}")
        w.searched(f"packs_{number}", bill.packs[base.name], (f"packs_{number} * bases[{number}].pack >= need_{number} - bases[{number}].on_hand",), f"(need_{number} - bases[{number}].on_hand) / bases[{number}].pack",
                   label=f"Packs of {base.name} to order")
        short_base += max(bill.bases[base.name] - base.on_hand, 0)
    loads = w.searched("loads", bill.loads, ("loads * load >= skeins",), "skeins / load", label="Loads: no two colors in a pot, no kit parted")
    days = w.step("dye_days", "max(ceil(loads / a_day), ceil(skeins * drying / 1440 / rail))", bill.dye_days, COUNT, label="Dye days, by pots or by the rail")
    dyed = {at: _dyed_formula(at, need, made_bases) for at, need in _numbered(bill, made_colors)}
    mass = w.step("yarn", " + ".join(dyed.values()), bill.mass, MASS, label="Yarn dyed")
    dye = sum(bill.dyes.values())
    w.step("dye", " + ".join(f"{dyed[at]} * {round(sum(depth for _, depth in need.colorway.recipe), 9)!r} / 100" for at, need in _numbered(bill, made_colors)), dye, MASS, label="Dye in all")
    acid = w.step("acid", "yarn * acid_share / 100", mass * acid_share / 100, MASS, label="Acid, pure")
    price_of = {row.dye.lower(): row.price / 100 for row in jars}
    costs = {"base": sum(need.skeins * _base(need, made_bases).pack_price / _base(need, made_bases).pack for need in bill.colors), "dye": sum(grams * price_of.get(name.lower(), 0.0) for name, grams in bill.dyes.items()),
             "energy": energy * bill.skeins, "other": bill.other}
    takings = w.step("takings", " + ".join(f"ceil(products[{number}].wanted * scale / 100) * products[{number}].price" for number in range(1, len(products) + 1)), bill.takings, MONEY, label="If all is sold, without tax")

    def dyes_at_their_prices():
        return costs["dye"]

    bases_used = " + ".join(f"skeins_{at} * bases[{made_bases.index(_base(need, made_bases)) + 1}].price / bases[{made_bases.index(_base(need, made_bases)) + 1}].pack" for at, need in _numbered(bill, made_colors))
    w.step("base_used", bases_used, costs["base"], MONEY, label="Base used")
    w.solved("dye_used", "dyes_at_their_prices() - dye_used", costs["dye"], MONEY, label="Dye used, each dye of the table at its jar’s price", using=(dyes_at_their_prices,))
    w.step("energy_used", "energy * skeins", costs["energy"], MONEY, label="Acid and energy")
    w.step("other_used", " + ".join(f"(ceil(products[{number}].wanted * scale / 100) + products[{number}].spare) * products[{number}].other" for number in range(1, len(products) + 1)), costs["other"], MONEY, label="Labels, boxes, patterns")
    cost = w.step("cost", "base_used + dye_used + energy_used + other_used", sum(costs.values()), MONEY, label="Used in all")
    left = w.step("left", "takings - cost", takings - cost, MONEY, label="Left for labor, fees and overhead")
    work = w.step("work", "skeins * minutes", skeins * minutes, TIME, label="Work")
    w.step("left_after_work", "left - work / 60 * wage", left - work / 60 * wage, MONEY, label="Left after labor")
    to_pay = sum(bill.packs[base.name] * base.pack_price for base in made_bases)
    short_days = max(bill.dye_days - days_free, 0) if days_free is not None else 0
    jar = {row.dye.lower(): row.on_hand for row in jars}
    short_dyes = {name: grams - jar.get(name.lower(), 0.0) for name, grams in bill.dyes.items() if grams > jar.get(name.lower(), 0.0)}
    return {"skeins": skeins, "packs": sum(bill.packs.values()), "short_base": short_base, "dye": dye, "acid": acid, "loads": loads, "dye_days": days, "drying_days": bill.drying_days, "bands": bill.bands,
            "small_labels": bill.small_labels(shades), "boxes": bill.boxes, "takings": takings, "cost": cost, "left": left, "work": work, "left_after_work": left - work / 60 * wage, "to_pay": to_pay,
            "bill": bill, "bases": made_bases, "colors": made_colors, "room": room, "costs": costs, "short_dyes": short_dyes, "short_days": short_days, "jar": jar,
            "short_acid": max(acid - acid_on_hand, 0.0) if acid_on_hand is not None else 0.0, "yarn": mass}


def _numbered(bill, colors):
    place = {color.name: number for number, color in enumerate(colors, 1)}
    return [(place[need.colorway.name], need) for need in bill.colors]


def _base(need, bases):
    return next(base for base in bases if base.name == need.colorway.base)


def _dyed_formula(number, need, bases):
    """The yarn of one colorway as arithmetic: its skeins, or where small ones are dyed, as many as they come to."""
    base = _base(need, bases)
    skeins = f"skeins_{number}" if abs(need.mass - need.skeins * base.mass) < 1e-9 * need.mass else repr(need.mass / base.mass)
    return f"{skeins} * bases[{bases.index(base) + 1}].mass"


def _skeins_formula(need, products, rows):
    """How a colorway's skeins come from the products, as arithmetic in the inputs' names."""
    terms = []
    for number, (product, row) in enumerate(zip(products, rows), 1):
        each = sum(count for name, count in product.parts if name == need.colorway.name)
        if not each or not product.made:
            continue
        made = f"(ceil(products[{number}].wanted * scale / 100) + products[{number}].spare)"
        if product.kind == SET_WHOLE:
            terms.append(f"{need.colorway.shades} * ceil({made} * {each} / products[{number}].small)")
        elif product.kind == SET_CUT:
            terms.append(f"ceil({made} * {each * need.colorway.shades} / products[{number}].small)")
        else:
            terms.append(f"{made} * {each * need.colorway.shades}")
    return " + ".join(terms)


def _unique(rows, what, place):
    names = [row.name.strip().lower() for row in rows]
    for number, name in enumerate(names):
        if not name or name in names[:number]:
            raise Refused(f"{what} {number + 1}, name: give each a name of its own.", f"{place}.{number + 1}.name")


def _bases(rows):
    _unique(rows, "Base", "bases")
    return [Base(row.name, row.mass, row.pack, row.price, row.on_hand) for row in rows]


def _found(text, choices, where, what):
    """The name among choices that a person meant, whatever its capitals."""
    for name in choices:
        if name.strip().lower() == text.strip().lower():
            return name
    raise Refused(f"{where}: no {what} is called “{text}”; give one of: {', '.join(choices)}.", "")


def _colorways(rows, bases):
    _unique(rows, "Colorway", "colorways")
    made = []
    for number, row in enumerate(rows, 1):
        try:
            base = _found(row.base, [base.name for base in bases], f"Colorway {number}, base", "base") if row.base else bases[0].name
        except Refused as error:
            raise Refused(error.text, f"colorways.{number}.base") from None
        try:
            recipe = read_recipe(row.recipe or "")
        except OutOfRange as error:
            raise Refused(f"Colorway {number}, recipe: {error.reason}.", f"colorways.{number}.recipe") from None
        made.append(Colorway(row.name, base, recipe, row.shades))
    return made


def _products(rows, colors, scale):
    made, names = [], [color.name for color in colors]
    _unique(rows, "Product", "products")
    for number, row in enumerate(rows, 1):
        try:
            parts = tuple((_found(color, names, f"Product {number}, what one holds", "colorway"), each) for color, each in read_held(row.holds))
        except OutOfRange as error:
            raise Refused(f"Product {number}, what one holds: {error.reason}.", f"products.{number}.holds") from None
        except Refused as error:
            raise Refused(error.text, f"products.{number}.holds") from None
        wanted = -int(-(row.wanted * scale / 100 - 1e-9) // 1)
        made.append(Product(row.name, row.kind, wanted, row.spare, parts, row.small or 1, row.price, row.other))
    return made


def _many(count, what):
    return f"{count} {what}{'' if count == 1 else 's'}"


def shortages(r):
    """What is short, in words."""
    said = [f"{max(r.kept['bill'].bases[base.name] - base.on_hand, 0)} skeins of {base.name}" for base in r.kept["bases"] if r.kept["bill"].bases[base.name] > base.on_hand]
    said += [f"{r.measured(grams, MASS, 'g', 0.1, 'up')} of {name}" for name, grams in r.kept["short_dyes"].items()]
    if r.kept["short_acid"] > 0:
        said.append(f"{r.amount(r.kept['short_acid'], MASS, 'g', 3)} of acid")
    if r.kept["short_days"]:
        said.append(_many(r.kept["short_days"], "dye day"))
    return said


def say(r):
    first = f"Dye {_many(r.value('skeins'), 'skein')} in {_many(r.value('loads'), 'load')}, {_many(r.value('dye_days'), 'dye day')} and {r.value('drying_days')} to dry; order {_many(r.value('packs'), 'pack')} of base."
    short = shortages(r)
    more = f" and {len(short) - MOST_SAID} more" if len(short) > MOST_SAID else ""
    return first, f"Short: {', '.join(short[:MOST_SAID]) + more if short else 'nothing'}; if all is sold it brings {r.text('takings')}, and {r.text('left')} is left for labor, fees and overhead."


def notes(r):
    bill, said = r.kept["bill"], []
    parted = [need for need in bill.colors if need.parted]
    if parted:
        said.append(f"Larger than a load, so it must cross two pots: {', '.join(need.colorway.name for need in parted)}. Share one stock over both pots, dye them in one round, and take skeins from both alike; or take a larger pot.")
    else:
        said.append("No kit crosses two lots: skeins of one color that go into one kit are dyed in one pot.")
    missing = [name for name in bill.dyes if name.lower() not in r.kept["jar"]]
    if missing:
        said.append(f"Not in the list of jars, so counted as none and free: {', '.join(missing)}.")
    if any(product.kind in (SET_WHOLE, SET_CUT) for product in bill.products):
        said.append("A set’s depth here is the mean of its shades, and a small skein is taken as its share of a full one; “How do I plan a numbered set?” has each shade.")
    by_rail = bill.skeins * r.given["drying"] / 1440 / r.given["rail"]
    if by_rail > bill.loads / r.given["a_day"]:
        said.append("The rail sets the pace, not the pots: hang more, or dry faster.")
    if r.given["scale"] != 100:
        said.append(f"What if: all numbers to sell at {r.given['scale']:g} %, rounded up; spares as they are.")
    said.append("Spares bring nothing in this sum until they are sold. Labor is counted by the skein dyed; sets take more of it.")
    return said


def picture(r):
    bill = r.kept["bill"]
    flows = [(need.colorway.base, need.colorway.name, product, count) for need in bill.colors for product, count in need.by_product.items()]
    return flow_picture([base.name for base in r.kept["bases"] if bill.bases[base.name]], [need.colorway.name for need in bill.colors], [product.name for product in bill.products if any(product.name == flow[2] for flow in flows)], flows)


SETS = {"kind": (SET_WHOLE, SET_CUT)}


CARD = Card(
    id="release-plan", chapter="sell", place=10, tall_sheet=True, handles=("powder",),
    question="What does this release take?",
    inputs=(
        Rows("products", "Products", "product", record="plan.items", least=1, most=40, measure="What one holds, in one line: 2 Wet Slate, Peat Gold. For a set, its colorway. Prices without tax; other cost is labels, box, pattern.",
             fields=(Input("name", TEXT, "Name", record="product>name", default="another", longest=40),
                     Input("kind", CHOICE, "It is", record="product>sort", default=SKEIN, options=(Option(SKEIN, "a skein"), Option(KIT, "a kit"), Option(SET_WHOLE, "a set, dyed whole and cut"), Option(SET_CUT, "a set, cut first"))),
                     Input("holds", TEXT, "What one holds", record="product>holds", default="Wet Slate", longest=600),
                     Input("wanted", COUNT, "To sell", record="count", default="12", allowed=("0", "1000")), Input("spare", COUNT, "and spare", default="0", allowed=("0", "200")),
                     Input("price", MONEY, "Price", record="product>net", default="22.50", allowed=("0", "10000")), Input("other", MONEY, "Other cost of one", record="product>other", default="0.28", allowed=("0", "5000")),
                     Input("small", COUNT, "Small skeins from a full one", record="product>small", default="5", allowed=("1", "200"), when=SETS)),
             default=({"name": "Culvert Stole", "kind": KIT, "holds": "2 Wet Slate, Peat Gold, Sheepfold", "wanted": "16", "spare": "2", "price": "96", "other": "3.10"},
                      {"name": "Twelve Lamps", "kind": SET_WHOLE, "holds": "Lamps", "wanted": "24", "spare": "2", "price": "64", "other": "4.40"},
                      {"name": "Rusted Gate", "holds": "Rusted Gate", "wanted": "24"})),
        Rows("colorways", "Colorways", "colorway", record="colorway", least=1, most=40, measure="Depths in percent of the dry yarn, dye by dye: navy 0.62, black 0.24. A numbered set is one colorway with its number of shades and their mean depth.",
             fields=(Input("name", TEXT, "Name", default="another", longest=40), Input("recipe", TEXT, "Recipe", default="navy 0.5", longest=400, optional=True), Input("shades", COUNT, "Shades", default="1", allowed=("1", "60")),
                     Input("base", TEXT, "Base, if not the first", record="base>name", longest=40, optional=True)),
             default=({"name": "Wet Slate", "recipe": "navy 0.62, black 0.24, brown 0.04"}, {"name": "Peat Gold", "recipe": "yellow 0.55, brown 0.15"}, {"name": "Sheepfold", "recipe": "brown 0.10, black 0.02"},
                      {"name": "Lamps", "recipe": "navy 0.618", "shades": "12"}, {"name": "Rusted Gate", "recipe": "navy 0.62, black 0.24, brown 0.04, speckle 0.18"})),
        Rows("bases", "Bases", "base", record="base", least=1, most=40,
             fields=(Input("name", TEXT, "Name", default="another base", longest=40), Input("mass", MASS, "A skein weighs", default="100 g", allowed=("5 g", "2 kg"), rough="1 g", units=("g", "oz"), strict=True),
                     Input("on_hand", COUNT, "Skeins on hand", default="0", allowed=("0", "5000")), Input("pack", COUNT, "Skeins in a pack", default="10", allowed=("1", "500")),
                     Input("price", MONEY, "A pack costs", record="pack_price", default="92", allowed=("0", "20000"))),
             default=({"name": "Tarrow Sock", "on_hand": "12"},)),
        Rows("jars", "Dye on hand", "jar", record="jar", lent="colorways", least=0, most=40, measure="Weigh the jar and take off the empty jar.",
             fields=(Input("dye", TEXT, "Dye", record="name", default="red", longest=40), Input("on_hand", MASS, "On hand", record="left", default="20 g", allowed=("0 g", "20 kg"), units=("g", "oz"), strict=True),
                     Input("price", MONEY, "Costs for 100 g", record="cost", default="48", allowed=("0", "5000"))),
             default=({"dye": "navy", "on_hand": "140 g"}, {"dye": "black", "on_hand": "60 g"}, {"dye": "brown", "on_hand": "35 g"}, {"dye": "yellow", "on_hand": "8 g"}, {"dye": "speckle", "on_hand": "20 g"})),
        Input("load", COUNT, "Skeins in a load", default="4", allowed=("1", "200"), usual=("1", "20")),
        Input("a_day", COUNT, "Loads in a day", default="6", allowed=("1", "100"), usual=("1", "12"), measure="Pots times rounds; see “How long does the whole run take?”."),
        Input("rail", COUNT, "Skeins that hang on the rail", default="48", allowed=("1", "2000"), usual=("10", "200")),
        Input("drying", TIME, "They dry in", default="40 h", allowed=("0 h", "160 h"), usual=("12 h", "72 h"), units=("h", "day")),
        Input("acid_share", PERCENT, "Acid, percent of the yarn", default="1 %", allowed=("0 %", "20 %"), usual=("1 %", "4 %"), strict=True, measure="As pure acid."),
        Input("acid_on_hand", MASS, "Acid on hand", default="500 g", allowed=("0 g", "50 kg"), units=("g", "oz"), optional=True, strict=True, measure="Blank: not asked."),
        Input("energy", MONEY, "Acid and energy for a skein", default="0.60", allowed=("0", "50")),
        Input("minutes", TIME, "Work for a skein", default="9 min", allowed=("0 min", "10 h"), usual=("3 min", "40 min"), rough="30 %", units=("min",)),
        Input("wage", MONEY, "Your hour", default="18", allowed=("0", "500")),
        Input("scale", PERCENT, "What if: all numbers to sell at", default="100 %", allowed=("10 %", "400 %"), usual=("50 %", "200 %")),
        Input("days_free", COUNT, "Dye days that you have", default="10", allowed=("0", "400"), optional=True, measure="From “By when must I do what?”; blank: not asked."),
    ),
    results=(
        Result("skeins", COUNT, "Skeins to dye", rounding="up"),
        Result("packs", COUNT, "Packs of base to order", rounding="up"),
        Result("short_base", COUNT, "Skeins of base short", rounding="up"),
        Result("to_pay", MONEY, "To pay for them", finest=(0.01,)),
        Result("loads", COUNT, "Loads", rounding="up"),
        Result("dye_days", COUNT, "Dye days", rounding="up"),
        Result("drying_days", COUNT, "Drying days after that", rounding="up"),
        Result("yarn", MASS, "Yarn dyed", units=("kg", "lb"), finest=(0.01, 0.01)),
        Result("dye", MASS, "Dye in all", units=("g", "oz"), finest=(0.1, 0.01), rounding="up"),
        Result("acid", MASS, "Acid in all, pure", units=("g", "oz"), finest=(1, 0.1), rounding="up"),
        Result("bands", COUNT, "Bands for full skeins", rounding="up"),
        Result("small_labels", COUNT, "Small labels, and day stickers", rounding="up"),
        Result("boxes", COUNT, "Boxes, with a kit card each", rounding="up"),
        Result("takings", MONEY, "If all is sold, without tax", finest=(0.01,)),
        Result("cost", MONEY, "Yarn, dye, energy and the rest, used", finest=(1,), rounding="up"),
        Result("left", MONEY, "Left for labor, fees and overhead", finest=(1,), rounding="down"),
        Result("work", TIME, "Work", units=("h",), finest=(0.1,), rounding="up"),
        Result("left_after_work", MONEY, "Left after your hours", finest=(1,), rounding="down"),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(colors_table, order_table, loads_table, packing_table, money_table, what_if_table), papers=(Paper("Release plan, A4", "A4", plan_sheet),),
    basis=Basis(MODEL, "A bill of materials: products to skeins, skeins to base, packs and dye. Whole packs, whole loads, no two colors in a pot, and what goes into one kit in one color from one pot."),
    sources=(TEXTILE_PAGES_RECIPE, COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("Powder, acid and heat.", "Weigh powder still, mask and gloves on; acid into water. A plan this long tires: stop a round early. The maker’s safety data sheet comes first."),),
    carry=(Carry("base-order", "What to order", {"bases": ways.release_bases, "dyes": ways.release_dyes}), Carry("back-plan", "By when must I do what?", {"dye_days": "dye_days", "drying": "drying"}),
           Carry("pots", "The run, hour by hour", {"recipes": ways.release_recipes, "skein_mass": "bases.1.mass", "rail": "rail", "drying": "drying"}),
           Carry("dye-recipe", "Recipe for {}", {"skeins": ways.color_load, "skein_mass": ways.color_mass, "dyes": ways.color_dyes, "lots": ways.color_lots}, each=ways.dyed_colors),
           Carry("set-plan", "Shades of {}", {"name": ways.set_field("name"), "dyes": ways.set_dye_names, "sets": ways.set_field("wanted"), "spare": ways.set_field("spare"), "days": ways.set_shades, "wanted_by": lambda r, number: "count",
                                              "wanted_count": ways.set_field("small"), "load": "load", "a_day": "a_day"}, each=ways.set_names),
           Carry("parcels", "Share out {} by lot", {"kits": ways.kit_count, "spare": ways.kit_spare, "kit": ways.kit_parts, "lots": ways.kit_lots, "club": ways.nobody, "parcels": ways.kit_parcel}, each=ways.kit_names),
           Carry("label", "Kit card for {}", {"kind": lambda r, number: "kit", "kit": ways.card_kit, "copies": ways.card_copies}, each=ways.card_kits), Carry("price", "Does a skein pay?", {"minutes": "minutes"})),
)
