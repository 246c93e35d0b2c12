"""What the kettle makes: colorways with their recipes, dye lots, and the skeins that came of
them.
"""

from ...core.card import COLOR, DATE, Input
from ...core.units import COUNT, LENGTH, MASS, NUMBER, PERCENT, TEMPERATURE, TIME, VOLUME
from ...dye.inputs import ACID_SHARE, LIQUOR_RATIO, STRENGTH
from ...held import RECORD
from ..kind import (
    DECIDED,
    GUESSED,
    LONGEST_NOTE,
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
from ..lines import recipe_line, shades_line

ACIDS = (
    ("", "Not said"),
    ("citric", "Citric acid, crystals"),
    ("liquid", "Vinegar or acetic acid, liquid"),
    ("none", "None in this recipe"),
)

COLORWAY = Kind(
    RECORD.colorway,
    "colorway",
    "Colorways",
    "A color you can dye again: each dye with its depth, the acid, the hold.",
    (
        name(),
        names(RECORD.colorway.base, "Base it was worked out on"),
        rows(
            RECORD.colorway.dyes,
            "Recipe",
            "dye",
            words(RECORD.colorway.dyes.name, "Dye"),
            *number(
                RECORD.colorway.dyes.depth,
                PERCENT,
                "Depth, percent of dry fiber",
                ("0 %", "12 %"),
                known=DECIDED,
                strict=True,
            ),
            *as_asked(RECORD.colorway.dyes.strength, STRENGTH, "Stock strength", known=DECIDED),
            most=8,
        ),
        *number(RECORD.colorway.skeins, COUNT, "Skeins in a lot", ("1", "1000"), known=DECIDED),
        *number(
            RECORD.colorway.shades,
            COUNT,
            "Shades, for a numbered set",
            ("1", "60"),
            known=DECIDED,
            default="1",
            measure="Then the recipe is their mean depth.",
        ),
        *as_asked(RECORD.colorway.liquor_ratio, LIQUOR_RATIO, known=DECIDED),
        choice(RECORD.colorway.acid, "Acid", *ACIDS),
        *as_asked(RECORD.colorway.acid_share, ACID_SHARE, known=DECIDED),
        *number(
            RECORD.colorway.salt_share,
            PERCENT,
            "Glauber’s salt, percent of the yarn",
            ("0 %", "50 %"),
            known=DECIDED,
            strict=True,
        ),
        *number(
            RECORD.colorway.top,
            TEMPERATURE,
            "Heat to",
            ("0 °C", "105 °C"),
            ("°C", "°F"),
            known=DECIDED,
            strict=True,
        ),
        *number(RECORD.colorway.hold, TIME, "Hold", ("0 min", "24 h"), ("min", "h"), known=DECIDED),
        Input(COLOR, "Color, dry in daylight", optional=True, name=RECORD.colorway.color.name),
        note(),
    ),
    shows=(RECORD.colorway.base, RECORD.colorway.dyes),
    derived={RECORD.colorway.recipe: recipe_line, RECORD.colorway.set_shades: shades_line},
)

DYE_LOT = Kind(
    RECORD.dye_lot,
    "dye lot",
    "Dye lots",
    "One lot out of the kettle, as its label names it: from which mill lot, with which bottles, on"
    " which day.",
    (
        name("Lot", "The number on its labels.", what=RECORD.dye_lot.lot),
        names(RECORD.dye_lot.colorway, "Colorway"),
        names(RECORD.dye_lot.base, "Base"),
        names(RECORD.dye_lot.mill_lot, "Mill lot of the base"),
        Input(DATE, "Dyed on", optional=True, name=RECORD.dye_lot.dyed.name),
        *number(RECORD.dye_lot.skeins, COUNT, "Skeins dyed", ("1", "1000")),
        *number(RECORD.dye_lot.spoilt, COUNT, "Skeins spoilt", ("0", "1000")),
        *number(RECORD.dye_lot.good, COUNT, "Good skeins, to sell", ("0", "1000")),
        *number(RECORD.dye_lot.mass, MASS, "Dry weight dyed", ("1 g", "100 kg"), ("g", "oz")),
        rows(
            RECORD.dye_lot.doses,
            "What went in",
            "dose",
            names(RECORD.dye_lot.doses.bottle, "Stock bottle"),
            names(RECORD.dye_lot.doses.jar, "or dye jar"),
            *number(
                RECORD.dye_lot.doses.volume, VOLUME, "Stock", ("0 mL", "20 L"), ("mL",), strict=True
            ),
            *number(
                RECORD.dye_lot.doses.powder, MASS, "or powder", ("0 g", "1 kg"), ("g",), strict=True
            ),
            most=10,
        ),
        *number(RECORD.dye_lot.hold, TIME, "Held", ("0 min", "24 h"), ("min", "h")),
        *number(RECORD.dye_lot.ph, NUMBER, "pH of the bath", ("0", "14")),
        *number(
            RECORD.dye_lot.left, PERCENT, "Dye left in the bath", ("0 %", "100 %"), known=GUESSED
        ),
        *number(RECORD.dye_lot.rinses, COUNT, "Rinses", ("0", "50")),
        *number(
            RECORD.dye_lot.rub,
            NUMBER,
            "Rub on white cloth, grade",
            ("1", "5"),
            measure="5: no stain; 1: heavy.",
        ),
        note(),
    ),
    titled=RECORD.dye_lot.lot,
    shows=(RECORD.dye_lot.colorway, RECORD.dye_lot.dyed, RECORD.dye_lot.skeins),
    newest=RECORD.dye_lot.dyed,
)

SKEIN = Kind(
    RECORD.skein,
    "skein or small skein",
    "Skeins",
    "Skeins of one kind from one dye lot, full or small: how many, what each weighs and holds,"
    " which are seconds.",
    (
        name(measure="Such as “Wet Slate, full” or “Lamp 7”."),
        names(RECORD.skein.dye_lot, "Dye lot"),
        choice(RECORD.skein.size, "Size", ("full", "Full skein"), ("small", "Small skein")),
        *number(RECORD.skein.count, COUNT, "How many", ("0", "100000")),
        *number(RECORD.skein.mass, MASS, "Each weighs", ("0.5 g", "5 kg"), ("g", "oz")),
        *number(RECORD.skein.length, LENGTH, "Each holds", ("0.5 m", "20000 m"), ("m", "yd")),
        *number(RECORD.skein.day, COUNT, "Day of its set", ("1", "366"), known=DECIDED),
        *number(RECORD.skein.seconds, COUNT, "Of these, seconds", ("0", "100000")),
        words(RECORD.skein.fault, "What is wrong with the seconds", longest=LONGEST_NOTE),
        note(),
    ),
    shows=(RECORD.skein.dye_lot, RECORD.skein.count, RECORD.skein.mass),
)
