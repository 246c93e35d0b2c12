"""What is asked of a release, and what it takes."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import CHOICE, TEXT, Between, Case, Input, Many, Option, Plain, Result, Row, Rows
from ....core.units import COUNT, MASS, MONEY, NUMBER, PERCENT, TIME
from ....dye.inputs import ACID_SHARE, DRIES_IN, DRYING_DAYS, DYE_DAYS, LOADS, RAIL
from ....held import RECORD
from ...inputs import LOADS_IN_DAY, PACK, PACK_PRICE, SKEINS_IN_LOAD
from ...release import KIT, SET_CUT, SET_WHOLE, SKEIN


class Product(Row):
    """One product: what one holds, how many, and what it brings and costs besides yarn and dye."""

    name = Input[str](
        TEXT,
        "Name",
        record=RECORD.plan.items.product.then(RECORD.product.name),
        default="another",
        longest=40,
    )
    kind = Input[str](
        CHOICE,
        "It is",
        record=RECORD.plan.items.product.then(RECORD.product.sort),
        default=SKEIN,
        options=(
            Option(SKEIN, "a skein"),
            Option(KIT, "a kit"),
            Option(SET_WHOLE, "a set, dyed whole and cut"),
            Option(SET_CUT, "a set, cut first"),
        ),
    )
    SETS = {kind: (SET_WHOLE, SET_CUT)}
    holds = Input[str](
        TEXT,
        "What one holds",
        record=RECORD.plan.items.product.then(RECORD.product.holds),
        default="Wet Slate",
        longest=600,
    )
    wanted = Input[int](
        COUNT, "To sell", record=RECORD.plan.items.count, default="12", allowed=("0", "1000")
    )
    spare = Input[int](COUNT, "and spare", default="0", allowed=("0", "200"))
    price = Input[float](
        MONEY,
        "Price",
        record=RECORD.plan.items.product.then(RECORD.product.net),
        default="22.50",
        allowed=("0", "10000"),
    )
    other = Input[float](
        MONEY,
        "Other cost of one",
        record=RECORD.plan.items.product.then(RECORD.product.other),
        default="0.28",
        allowed=("0", "5000"),
    )
    small = Input[int](
        COUNT,
        "Small skeins from a full one",
        record=RECORD.plan.items.product.then(RECORD.product.small),
        default="5",
        allowed=("1", "200"),
        when=SETS,
    )

    parts = Plain[tuple[tuple[str, int], ...]]()
    to_sell = Between[int](COUNT, "To sell, at the share tried")
    made = Between[int](COUNT, "To make, with spares")
    labels = Between[int](COUNT, "Labels")
    brings = Between[float](MONEY, "Brings, if all are sold")
    extras = Between[float](MONEY, "Labels, box, pattern")


class Colorway(Row):
    """One colorway: its recipe and base; for a numbered set, its shades and their mean depth."""

    name = Input[str](TEXT, "Name", default="another", longest=40)
    recipe = Input[str | None](TEXT, "Recipe", default="navy 0.5", longest=400, optional=True)
    shades = Input[int](COUNT, "Shades", default="1", allowed=("1", "60"))
    base = Input[str | None](
        TEXT,
        "Base, if not the first",
        record=RECORD.colorway.base.then(RECORD.base.name),
        longest=40,
        optional=True,
    )

    base_name = Plain[str]()
    doses = Plain[tuple[tuple[str, float], ...]]()
    by_product = Plain[dict[str, int]]()
    load_sizes = Plain[tuple[int, ...]]()
    parted = Plain[int]()
    skeins = Between[int](COUNT, "Skeins")
    worth = Between[float](NUMBER, "Yarn dyed, in full skeins")
    yarn = Between[float](MASS, "Yarn dyed")
    loads = Between[int](COUNT, "Loads, no kit parted")
    largest_load = Between[int](COUNT, "Skeins in its largest load")
    base_cost = Between[float](MONEY, "Base used")


class Base(Row):
    """One base: what a skein weighs, what is on hand, and what a pack holds and costs."""

    name = Input[str](TEXT, "Name", default="another base", longest=40)
    mass = Input[float](
        MASS,
        "A skein weighs",
        default="100 g",
        allowed=("5 g", "2 kg"),
        rough="1 g",
        units=("g", "oz"),
        strict=True,
    )
    on_hand = Input[int](COUNT, "Skeins on hand", default="0", allowed=("0", "5000"))
    pack = replace(PACK, allowed=("1", "500"))
    price = replace(PACK_PRICE)

    needed = Between[int](COUNT, "Skeins needed")
    short = Between[int](COUNT, "Skeins short")
    packs = Between[int](COUNT, "Packs to order")
    pays = Between[float](MONEY, "To pay for them")


class Jar(Row):
    """One dye on hand, and what it costs."""

    dye = Input[str](TEXT, "Dye", record=RECORD.jar.name, default="red", longest=40)
    on_hand = Input[float](
        MASS,
        "On hand",
        record=RECORD.jar.left,
        default="20 g",
        allowed=("0 g", "20 kg"),
        units=("g", "oz"),
        strict=True,
    )
    price = Input[float](
        MONEY, "Costs for 100 g", record=RECORD.jar.cost, default="48", allowed=("0", "5000")
    )


class ReleasePlan(Case):
    """Products and quantities, recipes, bases and jars, pots and rail; and all that it takes."""

    products = Rows(
        Product,
        "Products",
        "product",
        record=RECORD.plan.items,
        least=1,
        most=40,
        measure="What one holds, in one line: 2 Wet Slate, Peat Gold. For a set, its colorway."
        " Prices without tax; other cost is labels, box, pattern.",
        default=(
            {
                "name": "Culvert Stole",
                "kind": KIT,
                "holds": "2 Wet Slate, Peat Gold, Sheepfold",
                "wanted": "16",
                "spare": "2",
                "price": "96",
                "other": "3.10",
            },
            {
                "name": "Twelve Lamps",
                "kind": SET_WHOLE,
                "holds": "Lamps",
                "wanted": "24",
                "spare": "2",
                "price": "64",
                "other": "4.40",
            },
            {"name": "Rusted Gate", "holds": "Rusted Gate", "wanted": "24"},
        ),
    )
    colorways = Rows(
        Colorway,
        "Colorways",
        "colorway",
        record=RECORD.colorway,
        least=1,
        most=40,
        measure="Depths in percent of the dry yarn, dye by dye: navy 0.62, black 0.24. A numbered"
        " set is one colorway with its number of shades and their mean depth.",
        default=(
            {"name": "Wet Slate", "recipe": "navy 0.62, black 0.24, brown 0.04"},
            {"name": "Peat Gold", "recipe": "yellow 0.55, brown 0.15"},
            {"name": "Sheepfold", "recipe": "brown 0.10, black 0.02"},
            {"name": "Lamps", "recipe": "navy 0.618", "shades": "12"},
            {"name": "Rusted Gate", "recipe": "navy 0.62, black 0.24, brown 0.04, speckle 0.18"},
        ),
    )
    bases = Rows(
        Base,
        "Bases",
        "base",
        record=RECORD.base,
        least=1,
        most=40,
        default=({"name": "Tarrow Sock", "on_hand": "12"},),
    )
    jars = Rows(
        Jar,
        "Dye on hand",
        "jar",
        record=RECORD.jar,
        lent=colorways,
        least=0,
        most=40,
        measure="Weigh the jar and take off the empty jar.",
        default=(
            {"dye": "navy", "on_hand": "140 g"},
            {"dye": "black", "on_hand": "60 g"},
            {"dye": "brown", "on_hand": "35 g"},
            {"dye": "yellow", "on_hand": "8 g"},
            {"dye": "speckle", "on_hand": "20 g"},
        ),
    )
    load = replace(SKEINS_IN_LOAD)
    a_day = replace(
        LOADS_IN_DAY, measure="Pots times rounds; see “How long does the whole run take?”."
    )
    rail = replace(RAIL)
    drying = replace(DRIES_IN)
    acid_share = replace(ACID_SHARE, measure="As pure acid.")
    acid_on_hand = Input[float | None](
        MASS,
        "Acid on hand",
        default="500 g",
        allowed=("0 g", "50 kg"),
        units=("g", "oz"),
        optional=True,
        strict=True,
        measure="Blank: not asked.",
    )
    energy = Input[float](MONEY, "Acid and energy for a skein", default="0.60", allowed=("0", "50"))
    minutes = Input[float](
        TIME,
        "Work for a skein",
        default="9 min",
        allowed=("0 min", "10 h"),
        usual=("3 min", "40 min"),
        rough="30 %",
        units=("min",),
    )
    wage = Input[float](MONEY, "Your hour", default="18", allowed=("0", "500"))
    scale = Input[float](
        PERCENT,
        "What if: all numbers to sell at",
        default="100 %",
        allowed=("10 %", "400 %"),
        usual=("50 %", "200 %"),
    )
    days_free = Input[int | None](
        COUNT,
        "Dye days that you have",
        default="10",
        allowed=("0", "400"),
        optional=True,
        measure="From “By when must I do what?”; blank: not asked.",
    )

    dyes = Many(MASS, "{} in all")
    short_dyes = Many(MASS, "{} short")
    dye_costs = Many(MONEY, "{}, at its jar’s price")
    by_pots = Between[float](NUMBER, "Dye days by the pots")
    by_rail = Between[float](NUMBER, "Dye days by the rail")
    base_used = Between[float](MONEY, "Base used")
    dye_used = Between[float](MONEY, "Dye used")
    energy_used = Between[float](MONEY, "Acid and energy")
    other_used = Between[float](MONEY, "Labels, boxes, patterns")
    labor = Between[float](MONEY, "Your hours")
    short_acid = Between[float](MASS, "Acid short")
    short_days = Between[int](COUNT, "Dye days short")

    skeins = Result[int](COUNT, "Skeins to dye", rounding="up")
    packs = Result[int](COUNT, "Packs of base to order", rounding="up")
    short_base = Result[int](COUNT, "Skeins of base short", rounding="up")
    to_pay = Result[float](MONEY, "To pay for them", finest=(0.01,))
    loads = replace(LOADS)
    dye_days = replace(DYE_DAYS)
    drying_days = replace(DRYING_DAYS)
    yarn = Result[float](MASS, "Yarn dyed", units=("kg", "lb"), finest=(0.01, 0.01))
    dye = Result[float](MASS, "Dye in all", units=("g", "oz"), finest=(0.1, 0.01), rounding="up")
    acid = Result[float](
        MASS, "Acid in all, pure", units=("g", "oz"), finest=(1, 0.1), rounding="up"
    )
    bands = Result[int](COUNT, "Bands for full skeins", rounding="up")
    small_labels = Result[int](COUNT, "Small labels, and day stickers", rounding="up")
    boxes = Result[int](COUNT, "Boxes, with a kit card each", rounding="up")
    takings = Result[float](MONEY, "If all is sold, without tax", finest=(0.01,))
    cost = Result[float](MONEY, "Yarn, dye, energy and the rest, used", finest=(1,), rounding="up")
    left = Result[float](MONEY, "Left for labor, fees and overhead", finest=(1,), rounding="down")
    work = Result[float](TIME, "Work", units=("h",), finest=(0.1,), rounding="up")
    left_after_work = Result[float](MONEY, "Left after your hours", finest=(1,), rounding="down")
