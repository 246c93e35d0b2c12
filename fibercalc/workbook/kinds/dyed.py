"""What the kettle makes: colorways with their recipes, dye lots, and the skeins that came of them."""

from ...core.card import COLOR, DATE, Input
from ...core.units import CONCENTRATION, COUNT, LENGTH, MASS, NUMBER, PERCENT, TEMPERATURE, TIME, VOLUME
from ..kind import DECIDED, GUESSED, LONGEST_NOTE, Kind, choice, name, names, note, number, rows, words
from ..lines import recipe_line, shades_line

ACIDS = (("", "Not said"), ("citric", "Citric acid, crystals"), ("liquid", "Vinegar or acetic acid, liquid"), ("none", "None in this recipe"))

COLORWAY = Kind(
    "colorway", "colorway", "Colorways", "A color you can dye again: each dye with its depth, the acid, the hold.",
    (
        name(),
        names("base", "Base it was worked out on"),
        rows("dyes", "Recipe", "dye", words("name", "Dye"),
             *number("depth", PERCENT, "Depth, percent of dry fiber", ("0 %", "12 %"), known=DECIDED, strict=True),
             *number("strength", CONCENTRATION, "Stock strength", ("0.005 g/100 mL", "20 g/100 mL"), ("g/100 mL", "g/L"), known=DECIDED, strict=True), most=8),
        *number("skeins", COUNT, "Skeins in a lot", ("1", "1000"), known=DECIDED),
        *number("shades", COUNT, "Shades, for a numbered set", ("1", "60"), known=DECIDED, default="1", measure="Then the recipe is their mean depth."),
        *number("liquor_ratio", NUMBER, "Bath for each gram of yarn, mL", ("2", "120"), known=DECIDED),
        choice("acid", "Acid", *ACIDS),
        *number("acid_share", PERCENT, "Acid, percent of the yarn", ("0 %", "20 %"), known=DECIDED, strict=True),
        *number("salt_share", PERCENT, "Glauber’s salt, percent of the yarn", ("0 %", "50 %"), known=DECIDED, strict=True),
        *number("top", TEMPERATURE, "Heat to", ("0 °C", "105 °C"), ("°C", "°F"), known=DECIDED, strict=True),
        *number("hold", TIME, "Hold", ("0 min", "24 h"), ("min", "h"), known=DECIDED),
        Input("color", COLOR, "Color, dry in daylight", optional=True),
        note(),
    ),
    shown=("base", "dyes"), refers={"base": "base"}, derived={"recipe": recipe_line, "set_shades": shades_line})

DYE_LOT = Kind(
    "dye-lot", "dye lot", "Dye lots", "One lot out of the kettle, as its label names it: from which mill lot, with which bottles, on which day.",
    (
        name("Lot", "The number on its labels.", what="lot"),
        names("colorway", "Colorway"),
        names("base", "Base"),
        names("mill_lot", "Mill lot of the base"),
        Input("dyed", DATE, "Dyed on", optional=True),
        *number("skeins", COUNT, "Skeins dyed", ("1", "1000")),
        *number("spoilt", COUNT, "Skeins spoilt", ("0", "1000")),
        *number("good", COUNT, "Good skeins, to sell", ("0", "1000")),
        *number("mass", MASS, "Dry weight dyed", ("1 g", "100 kg"), ("g", "oz")),
        rows("doses", "What went in", "dose", names("bottle", "Stock bottle"), names("jar", "or dye jar"),
             *number("volume", VOLUME, "Stock", ("0 mL", "20 L"), ("mL",), strict=True),
             *number("powder", MASS, "or powder", ("0 g", "1 kg"), ("g",), strict=True), most=10),
        *number("hold", TIME, "Held", ("0 min", "24 h"), ("min", "h")),
        *number("ph", NUMBER, "pH of the bath", ("0", "14")),
        *number("left", PERCENT, "Dye left in the bath", ("0 %", "100 %"), known=GUESSED),
        *number("rinses", COUNT, "Rinses", ("0", "50")),
        *number("rub", NUMBER, "Rub on white cloth, grade", ("1", "5"), measure="5: no stain; 1: heavy."),
        note(),
    ),
    title="lot", shown=("colorway", "dyed", "skeins"), newest="dyed",
    refers={"colorway": "colorway", "base": "base", "mill_lot": "mill-lot", "doses.bottle": "bottle", "doses.jar": "jar"})

SKEIN = Kind(
    "skein", "skein or small skein", "Skeins", "Skeins of one kind from one dye lot, full or small: how many, what each weighs and holds, which are seconds.",
    (
        name(measure="Such as “Wet Slate, full” or “Lamp 7”."),
        names("dye_lot", "Dye lot"),
        choice("size", "Size", ("full", "Full skein"), ("small", "Small skein")),
        *number("count", COUNT, "How many", ("0", "100000")),
        *number("mass", MASS, "Each weighs", ("0.5 g", "5 kg"), ("g", "oz")),
        *number("length", LENGTH, "Each holds", ("0.5 m", "20000 m"), ("m", "yd")),
        *number("day", COUNT, "Day of its set", ("1", "366"), known=DECIDED),
        *number("seconds", COUNT, "Of these, seconds", ("0", "100000")),
        words("fault", "What is wrong with the seconds", longest=LONGEST_NOTE),
        note(),
    ),
    shown=("dye_lot", "count", "mass"), refers={"dye_lot": "dye-lot"})
