"""My bench: units, number style, instruments, water, pots and saved bases, declared with the same inputs as a card.

A record holds canonical texts by input name, so reading one is reading inputs: what does not fit is dropped with a note, never
guessed. It starts empty: an example saved by one press would be taken for hers. It is offered to a card ("use my reel") and never
filled in silently.
"""

from ..core.card import BENCH_RULE, CHOICE, TEXT, Basis, Card, Input, Option, Rows
from ..core.offered import texts_for
from ..core.link import canonical_default
from ..core.number import write_plain
from ..core.reading import Given, read_inputs
from ..core.settings import Settings
from ..core.units import CONCENTRATION, COUNT, LENGTH, MASS, PERCENT, TEMPERATURE, VOLUME
from ..sources import COMMON_PRACTICE
from .base_link import LOT, PRICE, WEIGHT_CLASS

SCHEMA = 2
FORMAT = "bench-book-bench"
MOST_VALUES, LONGEST_VALUE = 1000, 200

# Which field of a list names its row in an offer, and what the row is called.
OFFERED = {"reels": ("name", "circumference"), "bases": ("name", "length"), "pots": ("name", "fill")}


def _say(r) -> tuple[str, str]:
    reels, bases = len(r.given["reels"]), len(r.given["bases"])
    return "Your bench is complete.", f"{reels} reel{'s' * (reels != 1)}, {bases} base{'s' * (bases != 1)}; numbers are written like {r.number(1234.5, 1)}."


BENCH = Card(
    id="my-bench", chapter="yarn", place=0, question="What is on my bench?",
    inputs=(
        Input("style", CHOICE, "How you write numbers", default="point", options=(Option("point", "1,234.5"), Option("comma", "1 234,5"))),
        Input("system", CHOICE, "Units you want to see", default="both", options=(Option("both", "Both, side by side"), Option("metric", "Metric"), Option("us", "US"))),
        Input("money", TEXT, "Your money sign", default="€", longest=4, measure="A sign or three letters."),
        Input("scale_step", MASS, "Kitchen scale reads to", allowed=("0.01 g", "50 g"), units=("g", "oz"), optional=True, measure="Such as 1 g."),
        Input("fine_scale_step", MASS, "Fine scale reads to", allowed=("0.001 g", "1 g"), units=("g",), optional=True, measure="Such as 0.01 g."),
        Input("syringe", VOLUME, "Syringe or measuring cylinder reads to", allowed=("0.01 mL", "50 mL"), units=("mL",), optional=True, strict=True, measure="Such as 1 mL."),
        Rows("reels", "Reels", "reel", least=0, most=8, default=(), measure="The circumference is measured on the yarn as it lies on the reel.",
             fields=(Input("name", TEXT, "Name", longest=40, measure="Such as “Oak reel”."),
                     Input("circumference", LENGTH, "Once around", allowed=("0.05 m", "10 m"), units=("m", "cm", "in", "yd"), measure="Such as 1.50 m."),
                     Input("stretch", PERCENT, "Stretch on the reel", default="0 %", allowed=("0 %", "20 %")))),
        Input("alkalinity", CONCENTRATION, "Water alkalinity, as calcium carbonate", allowed=("0 mg/L", "1000 mg/L"), units=("mg/L",), optional=True,
              measure="From the water supplier's report; leave blank if you do not know it."),
        Input("tap", TEMPERATURE, "Tap water", allowed=("0 °C", "40 °C"), units=("°C", "°F"), optional=True, measure="Such as 9 °C in winter."),
        Input("altitude", LENGTH, "Height above the sea", allowed=("-400 m", "5000 m"), units=("m", "ft"), optional=True),
        Rows("pots", "Pots", "pot", least=0, most=12, default=(), measure="The fill line is as high as you will fill it with yarn in.",
             fields=(Input("name", TEXT, "Name", longest=40, measure="Such as “Pan”."),
                     Input("fill", VOLUME, "Filled to at most", allowed=("0.2 L", "200 L"), units=("L", "qt", "gal"), measure="Such as 9 L."),
                     Input("skeins", COUNT, "Skeins in a load", allowed=("1", "200"), optional=True))),
        Rows("bases", "Bases", "base", least=0, most=100, default=(), measure="As printed on the mill's label, or better as you measured it.",
             fields=(Input("name", TEXT, "Name", longest=40, measure="As you call it on your labels."),
                     Input("fiber", TEXT, "Fiber", longest=60, optional=True, measure="Such as “75/25 superwash wool/nylon”."),
                     Input("mass", MASS, "Weight of a skein", allowed=("1 g", "5 kg"), units=("g", "oz"), measure="Such as 100 g."),
                     Input("length", LENGTH, "Length of a skein", allowed=("1 m", "20000 m"), units=("m", "yd"), measure="Such as 420 m."),
                     WEIGHT_CLASS, LOT, PRICE)),
    ),
    results=(), answer=lambda w, **given: {}, say=_say,
    basis=Basis(BENCH_RULE, "What you measured or read yourself."), sources=(COMMON_PRACTICE,),
)


def record_of(given: Given) -> dict:
    """The record to keep, for inputs as read without a problem."""
    return {"format": FORMAT, "schema": SCHEMA, "values": {name: reading.text for name, reading in given.readings.items()}, "rows": dict(given.counts)}


def empty_record() -> dict:
    """The record of someone who has saved nothing: the usual settings and nothing of her own."""
    return record_of(given_of({"values": {}, "rows": {}}))


def read_record(data) -> tuple[dict, list[str]]:
    """A validated record in the newest schema from untrusted data, and notes on what was dropped. Never raises."""
    if not isinstance(data, dict) or data.get("format") != FORMAT:
        return empty_record(), ["That is not a bench record; nothing was read from it."] if data else []
    schema = data.get("schema")
    if not isinstance(schema, int) or isinstance(schema, bool) or not 1 <= schema <= SCHEMA:
        return empty_record(), ["That record was made by a newer version of the book; nothing was changed."]
    for old in range(schema, SCHEMA):
        data = MIGRATIONS[old](data)
    return _valid(data)


def _with_what_a_link_names(data: dict) -> dict:
    """1 to 2: a base may have a weight class, a lot and a price. An old record says nothing of them, and what is missing is read as not said."""
    return data | {"schema": 2}


MIGRATIONS: dict = {1: _with_what_a_link_names}  # schema n -> the function that makes n + 1 of it


def _valid(data: dict) -> tuple[dict, list[str]]:
    values, rows = data.get("values"), data.get("rows")
    values = values if isinstance(values, dict) else {}
    rows = rows if isinstance(rows, dict) else {}
    texts = {name: text for name, text in list(values.items())[:MOST_VALUES] if isinstance(name, str) and isinstance(text, str) and len(text) <= LONGEST_VALUE}
    counts = {item.name: _count(rows.get(item.name), item) for item in BENCH.inputs if isinstance(item, Rows)}
    given = given_of({"values": texts, "rows": counts})
    notes = [problem.text for problem in given.problems]
    bad = {problem.input for problem in given.problems}
    kept = {name: reading.text for name, reading in given.readings.items() if name not in bad}
    kept |= {name: canonical_default(given.readings[name].input, given.readings[name].input.default) for name in bad if name in given.readings}
    return {"format": FORMAT, "schema": SCHEMA} | _whole(kept, counts), notes


def _whole(values: dict, counts: dict) -> dict:
    """Values and rows without the rows that lack a name or an amount: nothing stands in for those."""
    found, rows = {item.name: values[item.name] for item in BENCH.inputs if isinstance(item, Input)}, {}
    for item in BENCH.inputs:
        if isinstance(item, Rows):
            full = [number for number in range(1, counts[item.name] + 1) if all(each.optional or values[f"{item.name}.{number}.{each.name}"] for each in item.fields)]
            found |= {f"{item.name}.{at}.{each.name}": values[f"{item.name}.{number}.{each.name}"] for at, number in enumerate(full, 1) for each in item.fields}
            rows[item.name] = len(full)
    return {"values": found, "rows": rows}


def _count(number, item: Rows) -> int:
    usable = isinstance(number, int) and not isinstance(number, bool) and item.least <= number <= item.most
    return number if usable else 0


def given_of(record: dict) -> Given:
    """The inputs of a record as read; rows beyond its counts are left out."""
    counts, texts = record["rows"], {}
    for item in BENCH.inputs:
        if isinstance(item, Rows):
            for number in range(1, counts.get(item.name, 0) + 1):
                texts |= {name: record["values"].get(name, each.default) for each in item.fields if (name := f"{item.name}.{number}.{each.name}")}
        else:
            texts[item.name] = record["values"].get(item.name, item.default)
    return read_inputs(BENCH, texts, Settings(), exact=texts, counts=counts)


def settings_of(record: dict) -> Settings:
    """The settings a record holds."""
    return Settings.from_texts(record["values"])


def offers(card: Card, record: dict) -> list[dict]:
    """What this bench can offer to a card: a label, and the values it would set. Rows of a card are not offered to."""
    wanted: dict[str, list[tuple[Input, str]]] = {}
    single: list[Input] = []
    for item in card.inputs:
        if isinstance(item, Input) and "." in item.bench:
            place, column = item.bench.split(".")
            wanted.setdefault(place, []).append((item, column))
        elif isinstance(item, Input) and item.bench:
            single.append(item)
    given, settings, found = given_of(record), settings_of(record), []
    for place, inputs in wanted.items():
        for number in range(1, record["rows"].get(place, 0) + 1):
            found.append(_offer(given, settings, place, number, inputs))
    known = [each for each in single if given.readings[each.bench].amount is not None]
    if known and record["values"]:
        values, words = {}, []
        for each in known:
            values |= texts_for(each, each.name, given.readings[each.bench], settings)
            words.append(written(given.readings[each.bench].amount, settings))
        found.append({"label": f"Use my bench ({', '.join(words)})", "values": values})
    return found


def _offer(given: Given, settings: Settings, place: str, number: int, inputs: list) -> dict:
    values = {}
    for each, column in inputs:
        values |= texts_for(each, each.name, given.readings[f"{place}.{number}.{column}"], settings)
    name_column, shown_column = OFFERED[place]
    name, shown = given.readings[f"{place}.{number}.{name_column}"], given.readings[f"{place}.{number}.{shown_column}"]
    return {"label": f"Use {name.text} ({written(shown.amount, settings)})", "values": values}


def written(amount, settings: Settings) -> str:
    """An amount as it was given, with its unit."""
    return f"{write_plain(amount.unit.from_base(amount.value), settings.style)} {amount.unit.sign}"
