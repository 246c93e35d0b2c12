"""The names of what she keeps: the fields of her records and of My bench, for cards to refer to.

`RECORD.base.mass` is a field, `RECORD.colorway.dyes` a list in one record, `RECORD.jar` every
record of a kind, and `RECORD.plan.items.product.then(RECORD.product.name)` a field of the record
that another names. What each of them is, the workbook declares under these names.
"""

from .core.ref import Field, Held, Listed


class BaseFibers(Listed):
    fiber = Field()
    share = Field()


class Base(Held):
    name = Field()
    fibers = BaseFibers()
    mass = Field()
    length = Field()
    weight_class = Field()
    stitches = Field()
    pack = Field()
    cost = Field()
    pack_price = Field()
    price = Field()
    lead = Field()
    on_hand = Field()
    supplier = Field()
    note = Field()
    # said of several fields in one line
    fiber_line = Field()
    planned = Field()


class MillLot(Held):
    lot = Field()
    base = Field(Base)
    received = Field()
    skeins = Field()
    mass = Field()
    length = Field()
    humidity = Field()
    paid = Field()
    note = Field()


class Jar(Held):
    name = Field()
    lot = Field()
    dye_class = Field()
    strength = Field()
    left = Field()
    cost = Field()
    opened = Field()
    hazards = Field()
    note = Field()


class Bottle(Held):
    name = Field()
    jar = Field(Jar)
    strength = Field()
    left = Field()
    made_on = Field()
    weeks = Field()
    note = Field()


class ColorwayDyes(Listed):
    name = Field()
    depth = Field()
    strength = Field()


class Colorway(Held):
    name = Field()
    base = Field(Base)
    dyes = ColorwayDyes()
    skeins = Field()
    shades = Field()
    liquor_ratio = Field()
    acid = Field()
    acid_share = Field()
    salt_share = Field()
    top = Field()
    hold = Field()
    color = Field()
    note = Field()
    # said of several fields in one line
    recipe = Field()
    set_shades = Field()


class DyeLotDoses(Listed):
    bottle = Field(Bottle)
    jar = Field(Jar)
    volume = Field()
    powder = Field()


class DyeLot(Held):
    lot = Field()
    colorway = Field(Colorway)
    base = Field(Base)
    mill_lot = Field(MillLot)
    dyed = Field()
    skeins = Field()
    spoilt = Field()
    good = Field()
    mass = Field()
    doses = DyeLotDoses()
    hold = Field()
    ph = Field()
    left = Field()
    rinses = Field()
    rub = Field()
    note = Field()


class Skein(Held):
    name = Field()
    dye_lot = Field(DyeLot)
    size = Field()
    count = Field()
    mass = Field()
    length = Field()
    day = Field()
    seconds = Field()
    fault = Field()
    note = Field()


class ProductParts(Listed):
    name = Field()
    base = Field(Base)
    colorway = Field(Colorway)
    needed = Field()
    skeins = Field()
    mass = Field()


class Product(Held):
    name = Field()
    sort = Field()
    parts = ProductParts()
    price = Field()
    net = Field()
    other = Field()
    small = Field()
    cost = Field()
    parcel = Field()
    work = Field()
    note = Field()
    # said of several fields in one line
    holds = Field()
    skeins_in = Field()
    work_each = Field()


class PlanItems(Listed):
    product = Field(Product)
    count = Field()
    spare = Field()


class PlanClosed(Listed):
    first = Field()
    last = Field()


class Plan(Held):
    name = Field()
    state = Field()
    items = PlanItems()
    release = Field()
    needed = Field()
    starts = Field()
    closed = PlanClosed()
    note = Field()


class Measurement(Held):
    name = Field()
    what = Field()
    base = Field(Base)
    day = Field()
    stitches = Field()
    rows = Field()
    needle = Field()
    state = Field()
    made = Field()
    in_minutes = Field()
    length_change = Field()
    width_change = Field()
    minutes = Field()
    skeins = Field()
    note = Field()


class Sale(Held):
    event = Field()
    product = Field(Product)
    day = Field()
    offered = Field()
    sold = Field()
    sold_out = Field()
    after = Field()
    price = Field()
    note = Field()


class OrderLots(Listed):
    dye_lot = Field(DyeLot)
    product = Field(Product)
    count = Field()


class Order(Held):
    number = Field()
    sent = Field()
    lots = OrderLots()
    note = Field()


class Kept(Held):
    name = Field()
    card = Field()
    query = Field()
    answer = Field()
    day = Field()
    note = Field()


class BenchReels(Listed):
    name = Field()
    circumference = Field()
    stretch = Field()


class BenchPots(Listed):
    name = Field()
    fill = Field()
    skeins = Field()


class BenchBases(Listed):
    name = Field()
    fiber = Field()
    mass = Field()
    length = Field()
    weight_class = Field()
    lot = Field()
    price = Field()


class Bench(Held):
    style = Field()
    system = Field()
    money = Field()
    scale_step = Field()
    fine_scale_step = Field()
    syringe = Field()
    reels = BenchReels()
    alkalinity = Field()
    tap = Field()
    altitude = Field()
    pots = BenchPots()
    bases = BenchBases()


class Records:
    """Every kind of record, and My bench."""

    base = Base()
    mill_lot = MillLot()
    jar = Jar()
    bottle = Bottle()
    colorway = Colorway()
    dye_lot = DyeLot()
    skein = Skein()
    product = Product()
    plan = Plan()
    measurement = Measurement()
    sale = Sale()
    order = Order()
    kept = Kept()
    bench = Bench()


RECORD = Records()
