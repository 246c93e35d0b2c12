"""What is on the shelf: bases and the mill lots they came in, dye jars and the stock bottles made
from them.
"""

from ...core.card import DATE, Input
from ...core.units import CONCENTRATION, COUNT, MASS, MONEY, NUMBER, PERCENT, TIME, VOLUME
from ...held import RECORD
from ...sell.inputs import PACK, PACK_PRICE
from ...yarn.inputs import FULL_LENGTH, SHARE, SKEIN_MASS
from ..base_link import WEIGHT_CLASS
from ..kind import (
    DECIDED,
    GUESSED,
    LABEL,
    Kind,
    as_asked,
    choice,
    name,
    names,
    note,
    number,
    rows,
    words,
)
from ..lines import fiber_line, planned_line

BASE = Kind(
    RECORD.base,
    "base",
    "Bases",
    "A yarn or fiber as you buy it: what it is made of, what a skein weighs and holds, what it"
    " costs.",
    (
        name(measure="As you call it on your labels."),
        rows(
            RECORD.base.fibers,
            "Made of",
            "fiber",
            words(
                RECORD.base.fibers.fiber,
                "Fiber",
                "As the mill says it; “unknown” is an answer too.",
            ),
            *as_asked(RECORD.base.fibers.share, SHARE, known=LABEL),
            most=8,
        ),
        *as_asked(
            RECORD.base.mass,
            SKEIN_MASS,
            "Weight of a skein",
            known=LABEL,
            measure="With its spread, if you know it: 100 g ± 2.",
        ),
        *as_asked(
            RECORD.base.length,
            FULL_LENGTH,
            "Length of a skein",
            known=LABEL,
            measure="With its spread, if you know it: 420 m ± 8.",
        ),
        WEIGHT_CLASS,
        *number(RECORD.base.stitches, NUMBER, "Stitches in 10 cm, washed", ("1", "100")),
        *as_asked(RECORD.base.pack, PACK, known=LABEL),
        *number(
            RECORD.base.cost,
            MONEY,
            "A skein costs you, landed",
            ("0", "9999"),
            known=LABEL,
            measure="With its share of carriage and duty.",
        ),
        *as_asked(
            RECORD.base.pack_price, PACK_PRICE, known=LABEL, measure="As on the supplier’s list."
        ),
        *number(RECORD.base.price, MONEY, "A skein sells at", ("0", "9999"), known=DECIDED),
        *number(
            RECORD.base.lead,
            TIME,
            "From order to door",
            ("0 day", "52 week"),
            ("week", "day"),
            known=GUESSED,
            measure="4 weeks ± 1, for 3 to 5.",
        ),
        *number(RECORD.base.on_hand, COUNT, "Skeins on the shelf", ("0", "100000")),
        words(RECORD.base.supplier, "Bought from"),
        note(),
    ),
    shows=(RECORD.base.mass, RECORD.base.length),
    derived={RECORD.base.fiber_line: fiber_line, RECORD.base.planned: planned_line},
)

MILL_LOT = Kind(
    RECORD.mill_lot,
    "mill lot",
    "Mill lots",
    "One delivery of a base: its number, and what you weighed when it came.",
    (
        name("Number on the mill’s label", what=RECORD.mill_lot.lot),
        names(RECORD.mill_lot.base, "Base"),
        Input(DATE, "Came on", optional=True, name=RECORD.mill_lot.received.name),
        *number(RECORD.mill_lot.skeins, COUNT, "Skeins", ("0", "100000")),
        *as_asked(RECORD.mill_lot.mass, SKEIN_MASS, "A skein weighs, on average"),
        *as_asked(RECORD.mill_lot.length, FULL_LENGTH, "A skein holds, on average"),
        *number(
            RECORD.mill_lot.humidity, PERCENT, "Humidity where it was weighed", ("0 %", "100 %")
        ),
        *number(RECORD.mill_lot.paid, MONEY, "Paid in all, landed", ("0", "99999"), known=LABEL),
        note(),
    ),
    titled=RECORD.mill_lot.lot,
    shows=(RECORD.mill_lot.base, RECORD.mill_lot.received, RECORD.mill_lot.skeins),
)

DYE_CLASSES = (
    ("", "Not said"),
    ("acid", "Acid"),
    ("metal-complex", "Metal-complex"),
    ("reactive", "Reactive"),
    ("direct", "Direct"),
    ("natural", "Natural"),
    ("other", "Other"),
)

JAR = Kind(
    RECORD.jar,
    "dye jar",
    "Dye jars",
    "A jar of dye powder: its lot, how strong it is, how much is left, what its safety data sheet"
    " says.",
    (
        name("Dye", "As you call it in your recipes."),
        words(RECORD.jar.lot, "Lot of the jar"),
        choice(RECORD.jar.dye_class, "Class of dye", *DYE_CLASSES),
        *number(
            RECORD.jar.strength,
            NUMBER,
            "Strength, in percent of the standard",
            ("1", "1000"),
            known=LABEL,
            measure="100 unless the jar says another.",
        ),
        *number(RECORD.jar.left, MASS, "Powder left", ("0 g", "50 kg"), ("g", "oz")),
        *number(RECORD.jar.cost, MONEY, "100 g cost", ("0", "9999"), known=LABEL),
        Input(DATE, "Opened on", optional=True, name=RECORD.jar.opened.name),
        words(RECORD.jar.hazards, "Hazard words of its safety data sheet", longest=200),
        note(),
    ),
    shows=(RECORD.jar.lot, RECORD.jar.left),
)

BOTTLE = Kind(
    RECORD.bottle,
    "stock bottle",
    "Stock bottles",
    "A stock solution: which jar it is from, how strong, when it was made.",
    (
        name("Dye", "As you call it in your recipes."),
        names(RECORD.bottle.jar, "Made from jar"),
        *number(
            RECORD.bottle.strength,
            CONCENTRATION,
            "Strength",
            ("0.001 g/100 mL", "20 g/100 mL"),
            ("g/100 mL", "g/L"),
            strict=True,
        ),
        *number(
            RECORD.bottle.left, VOLUME, "Stock left", ("0 mL", "50 L"), ("mL", "L"), strict=True
        ),
        Input(DATE, "Made on", optional=True, name=RECORD.bottle.made_on.name),
        *number(RECORD.bottle.weeks, NUMBER, "Weeks it may stand", ("0", "104"), known=GUESSED),
        note(),
    ),
    shows=(RECORD.bottle.strength, RECORD.bottle.made_on),
)
