"""Quantities and their units: what a number can be measured in, and how to turn one unit into
another.

A Quantity is a plain object, so a chapter may declare one of its own beside its formulas. Inside
the package every value is a float in its quantity's base unit; units appear only where a person
types or reads. Conversion factors are exact by definition (international yard and pound agreement
of 1959; NIST Special Publication 811; SI Brochure, 9th ed.), unless marked.
"""

from dataclasses import dataclass
from functools import cached_property

METERS_PER_YARD = 0.9144  # exact: international yard and pound agreement, 1959
METERS_PER_INCH = 0.0254  # exact: yard / 36
GRAMS_PER_POUND = 453.59237  # exact: international yard and pound agreement, 1959
GRAMS_PER_OUNCE = GRAMS_PER_POUND / 16


@dataclass(
    frozen=True, eq=False
)  # each stands once; comparing whole lists of units would cost more than the sums
class Unit:
    """One unit of a quantity.

    sign     what is printed beside the number ("yd")
    words    what is said in a list or to a screen reader ("yards")
    factor   base units in one of this unit; for an inverse unit, base = factor / number
    offset   added after the factor (temperature only)
    inverse  the number counts length per mass where the base counts mass per length (yd/lb
             against tex)
    also     other spellings people type
    system   "metric", "us" or "" (both)
    """

    sign: str
    words: str
    factor: float = 1.0
    offset: float = 0.0
    inverse: bool = False
    also: tuple[str, ...] = ()
    system: str = ""

    def to_base(self, number: float) -> float:
        """The number in base units. An inverse unit has no zero: raises ZeroDivisionError there."""
        return self.factor / number if self.inverse else number * self.factor + self.offset

    def from_base(self, value: float) -> float:
        """The base value in this unit. An inverse unit has no zero: raises ZeroDivisionError
        there.
        """
        return self.factor / value if self.inverse else (value - self.offset) / self.factor


@dataclass(frozen=True, eq=False)
class Quantity:
    """Something that can be measured: its name, its units (the first is the base unit) and an
    example for error lines.
    """

    name: str
    units: tuple[Unit, ...]
    example: str
    article: str = "a"

    def __post_init__(self) -> None:
        KNOWN.setdefault(self.name, self)

    @property
    def base(self) -> Unit:
        return self.units[0]

    @cached_property
    def spellings(self) -> dict[str, Unit]:
        """Every accepted spelling, exact first and then without case, where that is not
        ambiguous.
        """
        exact = {text: unit for unit in self.units for text in (unit.sign, unit.words, *unit.also)}
        exact |= {
            text.replace(" ", ""): unit
            for text, unit in exact.items()
            if text.replace(" ", "") not in exact
        }
        folded: dict[str, Unit | None] = {}
        for text, unit in exact.items():
            key = text.lower()
            folded[key] = unit if folded.get(key, unit) is unit else None
        return exact | {
            key: unit for key, unit in folded.items() if unit is not None and key not in exact
        }

    def unit(self, sign: str) -> Unit:
        """The unit with this sign or spelling. Raises KeyError when there is none."""
        sign = sign.strip().rstrip(".")
        found = self.spellings.get(sign) or self.spellings.get(sign.lower())
        if found is None:
            raise KeyError(sign)
        return found

    def has(self, sign: str) -> bool:
        """Whether this spelling is a unit of the quantity."""
        try:
            self.unit(sign)
        except KeyError:
            return False
        return True


KNOWN: dict[str, Quantity] = {}


def quantity_of_unit(sign: str) -> Quantity | None:
    """The first known quantity that has this unit; helps an error line say "that is a weight"."""
    return next((quantity for quantity in KNOWN.values() if quantity.has(sign)), None)


def _grist(
    sign: str, words: str, yards_per_pound: float, also: tuple[str, ...] = (), system: str = ""
) -> Unit:
    """An indirect count: so many hanks of yards_per_pound to the pound."""
    return Unit(
        sign,
        words,
        1000 * GRAMS_PER_POUND / (yards_per_pound * METERS_PER_YARD),
        inverse=True,
        also=also,
        system=system,
    )


LENGTH = Quantity(
    "length",
    (
        Unit("m", "meters", also=("meter", "metre", "metres", "mtr")),
        Unit("yd", "yards", METERS_PER_YARD, also=("yard", "yds", "y"), system="us"),
        Unit(
            "cm",
            "centimeters",
            0.01,
            also=("centimeter", "centimetre", "centimetres"),
            system="metric",
        ),
        Unit("in", "inches", METERS_PER_INCH, also=("inch", '"', "″", "''", "ins"), system="us"),
        Unit(
            "mm",
            "millimeters",
            0.001,
            also=("millimeter", "millimetre", "millimetres"),
            system="metric",
        ),
        Unit("ft", "feet", 12 * METERS_PER_INCH, also=("foot", "'", "′"), system="us"),
        Unit(
            "km",
            "kilometers",
            1000.0,
            also=("kilometer", "kilometre", "kilometres"),
            system="metric",
        ),
    ),
    "420 m or 459 yd",
)

MASS = Quantity(
    "weight",
    (
        Unit("g", "grams", also=("gram", "gr", "gm", "gms", "gramme", "grammes")),
        Unit("oz", "ounces", GRAMS_PER_OUNCE, also=("ounce", "ozs"), system="us"),
        Unit("kg", "kilograms", 1000.0, also=("kilogram", "kilo", "kilos"), system="metric"),
        Unit("lb", "pounds", GRAMS_PER_POUND, also=("pound", "lbs"), system="us"),
        Unit("mg", "milligrams", 0.001, also=("milligram",), system="metric"),
    ),
    "100 g or 3.5 oz",
)

LINEAR_DENSITY = Quantity(
    "yarn count",
    (
        Unit("tex", "tex (grams per 1,000 m)"),
        Unit(
            "yd/lb",
            "yards per pound",
            1000 * GRAMS_PER_POUND / METERS_PER_YARD,
            inverse=True,
            also=("ypp", "yards/pound", "yd per lb", "yds/lb"),
            system="us",
        ),
        Unit(
            "m/100 g",
            "meters per 100 grams",
            1e5,
            inverse=True,
            also=("m/100g", "m per 100 g", "m/100 gr"),
            system="metric",
        ),
        Unit(
            "yd/100 g",
            "yards per 100 grams",
            1e5 / METERS_PER_YARD,
            inverse=True,
            also=("yd/100g", "yd per 100 g"),
        ),
        Unit(
            "yd/oz",
            "yards per ounce",
            1000 * GRAMS_PER_OUNCE / METERS_PER_YARD,
            inverse=True,
            also=("yards/ounce", "yd per oz"),
            system="us",
        ),
        Unit("m/kg", "meters per kilogram", 1e6, inverse=True, also=("m per kg",), system="metric"),
        Unit("m/g", "meters per gram", 1000.0, inverse=True, also=("m per g",), system="metric"),
        Unit("Nm", "metric count (Nm)", 1000.0, inverse=True, also=("metric",), system="metric"),
        _grist("Ne", "cotton count (Ne)", 840, also=("NeC", "cc", "cotton")),
        _grist("Nw", "worsted count (Nw)", 560, also=("worsted",)),
        _grist("run", "woolen run", 1600, also=("runs", "Nr")),
        _grist("cut", "woolen cut", 300, also=("cuts", "Nc")),
        _grist("lea", "linen lea", 300, also=("leas", "NeL")),
        Unit("dtex", "decitex", 0.1),
        Unit("den", "denier", 1 / 9, also=("denier",)),
        Unit("g/m", "grams per meter", 1000.0, also=("g per m",)),
    ),
    "238 tex, 2,084 yd/lb or 420 m/100 g",
)

AREA = Quantity(
    "area",
    (
        Unit("m²", "square meters", also=("m2", "sq m", "m^2")),
        Unit("cm²", "square centimeters", 1e-4, also=("cm2", "sq cm", "cm^2"), system="metric"),
        Unit(
            "in²", "square inches", METERS_PER_INCH**2, also=("in2", "sq in", "in^2"), system="us"
        ),
        Unit("yd²", "square yards", METERS_PER_YARD**2, also=("yd2", "sq yd", "yd^2"), system="us"),
        Unit(
            "ft²",
            "square feet",
            (12 * METERS_PER_INCH) ** 2,
            also=("ft2", "sq ft", "ft^2"),
            system="us",
        ),
    ),
    "0.8 m²",
    "an",
)

AREAL_DENSITY = Quantity(
    "weight per area",
    (
        Unit("g/m²", "grams per square meter", also=("g/m2", "gsm")),
        Unit(
            "oz/yd²",
            "ounces per square yard",
            GRAMS_PER_OUNCE / METERS_PER_YARD**2,
            also=("oz/yd2",),
            system="us",
        ),
    ),
    "458 g/m²",
)

PER_LENGTH = Quantity(
    "count per length",
    (
        Unit("per cm", "per centimeter", also=("/cm", "cm-1")),
        Unit(
            "per in",
            "per inch",
            1 / 2.54,
            also=("/in", "per inch", "wpi", "epi", "ppi", "tpi"),
            system="us",
        ),
        Unit(
            "per 10 cm",
            "per 10 centimeters",
            0.1,
            also=("/10 cm", "/10cm", "per 10cm"),
            system="metric",
        ),
        Unit(
            "per 4 in",
            "per 4 inches",
            1 / (4 * 2.54),
            also=("/4 in", "/4in", "per 4in"),
            system="us",
        ),
        Unit("per m", "per meter", 0.01, also=("/m",), system="metric"),
    ),
    "14 per in or 22 per 10 cm",
)

DENSITY = Quantity(
    "density",
    (
        Unit("g/cm³", "grams per cubic centimeter", also=("g/cm3", "g/mL", "g/cc")),
        Unit("kg/m³", "kilograms per cubic meter", 0.001, also=("kg/m3",)),
    ),
    "1.31 g/cm³",
)

VOLUME = Quantity(
    "volume",
    (
        Unit("mL", "milliliters", also=("milliliter", "ml", "millilitre", "millilitres", "cc")),
        Unit("L", "liters", 1000.0, also=("l", "liter", "litre", "litres"), system="metric"),
        Unit(
            "fl oz",
            "US fluid ounces",
            29.5735295625,
            also=("floz", "fl. oz", "fluid ounces"),
            system="us",
        ),  # exact: 231 in³ / 128
        Unit("cup", "US cups", 236.5882365, also=("cups",), system="us"),
        Unit("qt", "US quarts", 946.352946, also=("quart", "quarts"), system="us"),
        Unit(
            "gal", "US gallons", 3785.411784, also=("gallon", "gallons"), system="us"
        ),  # exact: 231 in³
        Unit("tsp", "US teaspoons", 4.92892159375, also=("teaspoon", "teaspoons"), system="us"),
        Unit(
            "tbsp",
            "US tablespoons",
            14.78676478125,
            also=("tablespoon", "tablespoons"),
            system="us",
        ),
        Unit("m³", "cubic meters", 1e6, also=("m3",), system="metric"),
        Unit(
            "ft³", "cubic feet", 28316.846592, also=("ft3", "cu ft", "cubic foot"), system="us"
        ),  # exact: (0.3048 m)³
    ),
    "9 L or 248 mL",
)

CONCENTRATION = Quantity(
    "strength",
    (
        Unit(
            "g/100 mL",
            "grams in 100 milliliters (% stock)",
            also=("%", "% w/v", "g/100mL", "percent"),
        ),
        Unit("g/L", "grams per liter", 0.1, also=("g/l", "g per L")),
        Unit("mg/L", "milligrams per liter", 1e-4, also=("mg/l", "ppm")),
    ),
    "1 g/100 mL",
)

TEMPERATURE = Quantity(
    "temperature",
    (
        Unit("°C", "degrees Celsius", also=("C", "degC", "deg C", "celsius")),
        Unit(
            "°F",
            "degrees Fahrenheit",
            5 / 9,
            -160 / 9,
            also=("F", "degF", "deg F", "fahrenheit"),
            system="us",
        ),
        Unit("K", "kelvin", 1.0, -273.15, also=("kelvin",)),
    ),
    "82 °C or 180 °F",
)

TEMPERATURE_STEP = Quantity(
    "temperature difference",
    (
        Unit("°C", "Celsius degrees", also=("C", "K")),
        Unit("°F", "Fahrenheit degrees", 5 / 9, also=("F",), system="us"),
    ),
    "2 °C",
)

ENERGY = Quantity(
    "energy",
    (
        Unit("kWh", "kilowatt-hours", also=("kwh",)),
        Unit("MJ", "megajoules", 1 / 3.6),
        Unit("kJ", "kilojoules", 1 / 3600),
        Unit("Wh", "watt-hours", 0.001),
        Unit(
            "BTU", "British thermal units", 1055.05585262 / 3.6e6, also=("Btu", "btu"), system="us"
        ),  # international table BTU
    ),
    "1.45 kWh",
    "an",
)

POWER = Quantity(
    "power",
    (
        Unit("kW", "kilowatts"),
        Unit("W", "watts", 0.001),
        Unit(
            "BTU/h",
            "British thermal units per hour",
            1055.05585262 / 3.6e6,
            also=("Btu/h",),
            system="us",
        ),
    ),
    "2 kW",
)

TIME = Quantity(
    "time",
    (
        Unit("min", "minutes", also=("minute", "mins")),
        Unit("h", "hours", 60.0, also=("hour", "hr", "hrs")),
        Unit("s", "seconds", 1 / 60, also=("second", "sec", "secs")),
        Unit("day", "days", 1440.0, also=("d",)),
        Unit("week", "weeks", 10080.0, also=("wk",)),
    ),
    "45 min or 1.5 h",
)

MONEY = Quantity("amount of money", (Unit("", "money"),), "27.50", "an")
PERCENT = Quantity("percentage", (Unit("%", "percent", also=("percent", "pct")),), "12 %")
NUMBER = Quantity("number", (Unit("", "number"),), "12.5")
COUNT = Quantity("whole number", (Unit("", "count"),), "12")
ANGLE = Quantity("angle", (Unit("°", "degrees", also=("deg", "degree")),), "20°", "an")
