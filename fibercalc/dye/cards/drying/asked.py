"""What is asked of yarn that dries, and what follows from it."""

from __future__ import annotations

from ....core.card import CHOICE, Between, Case, Input, Option, Plain, Result
from ....core.units import COUNT, LENGTH, MASS, NUMBER, PERCENT, TEMPERATURE, TIME
from ....held import RECORD


class Drying(Case):
    """Wet yarn on a rail in a room, and what it weighed when it was dry."""

    dry_mass = Input[float](
        MASS,
        "It weighed, dry",
        record=RECORD.dye_lot.mass,
        default="400 g",
        allowed=("1 g", "50 kg"),
        usual=("50 g", "2 kg"),
        rough="1 g",
        units=("g", "oz"),
    )
    dry_regain = Input[float](
        PERCENT,
        "Regain then",
        default="13 %",
        allowed=("0 %", "40 %"),
        usual=("5 %", "18 %"),
        rough="1 %",
        measure="Water in dry wool, of its oven-dry weight; see “It says 100 g, mine says 103”.",
    )
    wet_mass = Input[float](
        MASS,
        "It weighs, wet",
        default="760 g",
        allowed=("1 g", "100 kg"),
        usual=("80 g", "5 kg"),
        rough="2 g",
        units=("g", "oz"),
        measure="Spun about 1.6 times the dry weight, hand-squeezed 2 to 3 times.",
    )
    temperature = Input[float](
        TEMPERATURE,
        "Room",
        default="11 °C",
        allowed=("2 °C", "45 °C"),
        usual=("8 °C", "30 °C"),
        rough="1 °C",
        units=("°C", "°F"),
    )
    humidity = Input[float](
        PERCENT,
        "Humidity of the room",
        default="78 %",
        allowed=("5 %", "98 %"),
        usual=("30 %", "85 %"),
        rough="5 %",
    )
    rest = Input[float](
        PERCENT,
        "Regain at rest in that room",
        default="15.5 %",
        allowed=("0 %", "40 %"),
        usual=("5 %", "20 %"),
        rough="1 %",
        measure="Wool about 13 to 16, cotton 7 to 9; from memory, unverified.",
    )
    fan = Input[str](
        CHOICE, "A fan on it?", default="no", options=(Option("no", "No"), Option("yes", "Yes"))
    )
    weighed = Input[str](
        CHOICE,
        "Weighed again since?",
        default="no",
        options=(Option("no", "No"), Option("yes", "Yes")),
    )
    AGAIN = {weighed: ("yes",)}
    weighed_mass = Input[float](
        MASS,
        "It weighed then",
        default="620 g",
        allowed=("1 g", "100 kg"),
        usual=("60 g", "4 kg"),
        rough="2 g",
        units=("g", "oz"),
        when=AGAIN,
    )
    after = Input[float](
        TIME,
        "after",
        default="8 h",
        allowed=("10 min", "20 day"),
        usual=("1 h", "24 h"),
        units=("h", "min"),
        when=AGAIN,
    )
    skeins = Input[int](
        COUNT, "Skeins in all", default="24", allowed=("1", "2000"), usual=("1", "100")
    )
    rail = Input[float](
        LENGTH,
        "Rail",
        default="3 m",
        allowed=("0.1 m", "200 m"),
        usual=("1 m", "12 m"),
        units=("m", "ft"),
    )
    each = Input[float](
        LENGTH,
        "One skein takes",
        default="12 cm",
        allowed=("2 cm", "1 m"),
        usual=("8 cm", "25 cm"),
        units=("cm", "in"),
        measure="With air beside it.",
    )

    oven = Between[float](MASS, "Oven-dry")
    lack = Between[float](NUMBER, "Vapor that the room’s air still lacks, kPa")
    ready = Between[float](PERCENT, "Water at which it is dry enough")
    falls = Between[float](PERCENT, "Water below which the pace falls (common practice)")
    now = Between[float](PERCENT, "Water in it at the second weighing")
    pace = Between[float](NUMBER, "Pace at first, points of water an hour")
    guessed_pace = Between[float](
        NUMBER, "Pace at first, points of water an hour (common practice)"
    )
    paces = Plain[tuple[float, float, float]]()  # slow, middle, quick
    on_rail = Between[int](COUNT, "Skeins on the rail at once")

    time = Result[float](TIME, "Time to dry", units=("h",), finest=(1,), rounding="up", floor=0.0)
    water = Result[float](MASS, "Water to lose", units=("g", "oz"), finest=(1, 0.1), floor=0.0)
    ready_mass = Result[float](
        MASS, "Weigh it for sale at or under", units=("g", "oz"), finest=(1, 0.1), rounding="down"
    )
    rounds = Result[int](COUNT, "Rail fillings", rounding="up")
    all = Result[float](
        TIME, "All of them", units=("h", "day"), finest=(1, 0.1), rounding="up", floor=0.0
    )
    wet = Result[float](PERCENT, "Water in it now, of its oven-dry weight", finest=(1,), floor=0.0)
