"""My bench: units, number style, instruments, water, pots and saved bases, declared with the same
inputs as a card.

A record holds canonical texts by input name, so reading one is reading inputs: what does not fit
is dropped with a note, never guessed. It starts empty: an example saved by one press would be
taken for hers. It is offered to a card ("use my reel") and never filled in silently.
"""

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from ..core.amount import TypedAmount
from ..core.card import BENCH_RULE, CHOICE, TEXT, Basis, Card, Input, Option, Rows, case_of, row_of
from ..core.entry import Reading
from ..core.lent import canonical_default
from ..core.number import write_plain
from ..core.offered import texts_for
from ..core.outcome import Outcome
from ..core.reading import Given, read_inputs
from ..core.ref import Field, list_of
from ..core.settings import Settings
from ..core.units import CONCENTRATION, MASS, TEMPERATURE
from ..dye.inputs import ALTITUDE, POT_FILL, SYRINGE_ERROR
from ..held import RECORD
from ..sell.inputs import SKEINS_IN_LOAD
from ..sources import COMMON_PRACTICE
from ..yarn.inputs import AROUND, FULL_LENGTH, SKEIN_MASS, STRETCH
from .base_link import LOT, PRICE, WEIGHT_CLASS

SCHEMA = 2
FORMAT = "bench-book-bench"
MOST_VALUES, LONGEST_VALUE = 1000, 200

MINE = RECORD.bench
# The field of a list that an offer of one of its rows shows beside its name.
SHOWN = {
    list_of(field): field.name
    for field in (MINE.reels.circumference, MINE.bases.length, MINE.pots.fill)
}


def _say(out: Outcome[Any]) -> tuple[str, str]:
    reels, bases = len(out.case.reels), len(out.case.bases)
    return (
        "Your bench is complete.",
        (
            f"{reels} reel{'s' * (reels != 1)}, {bases} base{'s' * (bases != 1)}; numbers are"
            f" written like {out.number(1234.5, 1)}."
        ),
    )


def _held(what: Field, like: Input[Any], **more: Any) -> Input[Any]:
    """What cards ask, as it is held: with no example, and offered from nowhere."""
    bare: dict[str, Any] = {"default": "", "usual": None, "rough": "", "instrument": ""}
    return replace(
        like, **(bare | {"strict": False, "bench": None, "record": None, "name": what.name} | more)
    )


def _name(what: Field, measure: str) -> Input[Any]:
    """The name of a row, by which it is offered."""
    return Input(TEXT, "Name", longest=40, measure=measure, name=what.name)


BENCH = Card(
    id="my-bench",
    chapter="yarn",
    place=0,
    question="What is on my bench?",
    case=case_of(
        (
            Input(
                CHOICE,
                "How you write numbers",
                default="point",
                options=(Option("point", "1,234.5"), Option("comma", "1 234,5")),
                name=MINE.style.name,
            ),
            Input(
                CHOICE,
                "Units you want to see",
                default="both",
                options=(
                    Option("both", "Both, side by side"),
                    Option("metric", "Metric"),
                    Option("us", "US"),
                ),
                name=MINE.system.name,
            ),
            Input(
                TEXT,
                "Your money sign",
                default="€",
                longest=4,
                measure="A sign or three letters.",
                name=MINE.money.name,
            ),
            Input(
                MASS,
                "Kitchen scale reads to",
                allowed=("0.01 g", "50 g"),
                units=("g", "oz"),
                optional=True,
                measure="Such as 1 g.",
                name=MINE.scale_step.name,
            ),
            Input(
                MASS,
                "Fine scale reads to",
                allowed=("0.001 g", "1 g"),
                units=("g",),
                optional=True,
                measure="Such as 0.01 g.",
                name=MINE.fine_scale_step.name,
            ),
            _held(
                MINE.syringe,
                SYRINGE_ERROR,
                label="Syringe or measuring cylinder reads to",
                optional=True,
                strict=True,
                measure="Such as 1 mL.",
            ),
            Rows(
                row_of(
                    (
                        _name(MINE.reels.name, "Such as “Oak reel”."),
                        _held(
                            MINE.reels.circumference,
                            AROUND,
                            label="Once around",
                            measure="Such as 1.50 m.",
                        ),
                        _held(MINE.reels.stretch, STRETCH, default="0 %"),
                    )
                ),
                "Reels",
                "reel",
                least=0,
                most=8,
                default=(),
                measure="The circumference is measured on the yarn as it lies on the reel.",
                name=list_of(MINE.reels),
            ),
            Input(
                CONCENTRATION,
                "Water alkalinity, as calcium carbonate",
                allowed=("0 mg/L", "1000 mg/L"),
                units=("mg/L",),
                optional=True,
                measure="From the water supplier's report; leave blank if you do not know it.",
                name=MINE.alkalinity.name,
            ),
            Input(
                TEMPERATURE,
                "Tap water",
                allowed=("0 °C", "40 °C"),
                units=("°C", "°F"),
                optional=True,
                measure="Such as 9 °C in winter.",
                name=MINE.tap.name,
            ),
            _held(MINE.altitude, ALTITUDE, optional=True),
            Rows(
                row_of(
                    (
                        _name(MINE.pots.name, "Such as “Pan”."),
                        _held(
                            MINE.pots.fill,
                            POT_FILL,
                            allowed=("0.2 L", "200 L"),
                            measure="Such as 9 L.",
                        ),
                        _held(MINE.pots.skeins, SKEINS_IN_LOAD, optional=True),
                    )
                ),
                "Pots",
                "pot",
                least=0,
                most=12,
                default=(),
                measure="The fill line is as high as you will fill it with yarn in.",
                name=list_of(MINE.pots),
            ),
            Rows(
                row_of(
                    (
                        _name(MINE.bases.name, "As you call it on your labels."),
                        Input(
                            TEXT,
                            "Fiber",
                            longest=60,
                            optional=True,
                            measure="Such as “75/25 superwash wool/nylon”.",
                            name=MINE.bases.fiber.name,
                        ),
                        _held(
                            MINE.bases.mass,
                            SKEIN_MASS,
                            label="Weight of a skein",
                            measure="Such as 100 g.",
                        ),
                        _held(
                            MINE.bases.length,
                            FULL_LENGTH,
                            label="Length of a skein",
                            measure="Such as 420 m.",
                        ),
                        WEIGHT_CLASS,
                        LOT,
                        PRICE,
                    )
                ),
                "Bases",
                "base",
                least=0,
                most=100,
                default=(),
                measure="As printed on the mill's label, or better as you measured it.",
                name=list_of(MINE.bases),
            ),
        )
    ),
    answer=lambda case: None,
    say=_say,
    basis=Basis(BENCH_RULE, "What you measured or read yourself."),
    sources=(COMMON_PRACTICE,),
)


def record_of(given: Given) -> dict[str, Any]:
    """The record to keep, for inputs as read without a problem."""
    return {
        "format": FORMAT,
        "schema": SCHEMA,
        "values": {name: reading.text for name, reading in given.readings.items()},
        "rows": dict(given.counts),
    }


def empty_record() -> dict[str, Any]:
    """The record of someone who has saved nothing: the usual settings and nothing of her own."""
    return record_of(given_of({"values": {}, "rows": {}}))


def read_record(data: Any) -> tuple[dict[str, Any], list[str]]:
    """A validated record in the newest schema from untrusted data, and notes on what was dropped.
    Never raises.
    """
    if not isinstance(data, dict) or data.get("format") != FORMAT:
        return empty_record(), (
            ["That is not a bench record; nothing was read from it."] if data else []
        )
    schema = data.get("schema")
    if not isinstance(schema, int) or isinstance(schema, bool) or not 1 <= schema <= SCHEMA:
        return empty_record(), [
            "That record was made by a newer version of the book; nothing was changed."
        ]
    for old in range(schema, SCHEMA):
        data = MIGRATIONS[old](data)
    return _valid(data)


def _with_what_a_link_names(data: dict[str, Any]) -> dict[str, Any]:
    """1 to 2: a base may have a weight class, a lot and a price. An old record says nothing of
    them, and what is missing is read as not said.
    """
    return data | {"schema": 2}


# Schema n -> the function that makes n + 1 of it.
MIGRATIONS: dict[int, Callable[[dict[str, Any]], dict[str, Any]]] = {1: _with_what_a_link_names}


def _valid(data: dict[str, Any]) -> tuple[dict[str, Any], list[str]]:
    values, rows = data.get("values"), data.get("rows")
    values = values if isinstance(values, dict) else {}
    rows = rows if isinstance(rows, dict) else {}
    texts = {
        name: text
        for name, text in list(values.items())[:MOST_VALUES]
        if isinstance(name, str) and isinstance(text, str) and len(text) <= LONGEST_VALUE
    }
    counts = {
        item.name: _count(rows.get(item.name), item)
        for item in BENCH.inputs
        if isinstance(item, Rows)
    }
    given = given_of({"values": texts, "rows": counts})
    notes = [problem.text for problem in given.problems]
    bad = {problem.input for problem in given.problems}
    kept = {name: reading.text for name, reading in given.readings.items() if name not in bad}
    kept |= {
        name: canonical_default(given.readings[name].input, given.readings[name].input.default)
        for name in bad
        if name in given.readings
    }
    return {"format": FORMAT, "schema": SCHEMA} | _whole(kept, counts), notes


def _whole(values: dict[str, Any], counts: dict[str, Any]) -> dict[str, Any]:
    """Values and rows without the rows that lack a name or an amount: nothing stands in for
    those.
    """
    found, rows = (
        {item.name: values[item.name] for item in BENCH.inputs if isinstance(item, Input)},
        {},
    )
    for item in BENCH.inputs:
        if isinstance(item, Rows):
            full = [
                number
                for number in range(1, counts[item.name] + 1)
                if all(
                    each.optional or values[f"{item.name}.{number}.{each.name}"]
                    for each in item.fields
                )
            ]
            found |= {
                f"{item.name}.{at}.{each.name}": values[f"{item.name}.{number}.{each.name}"]
                for at, number in enumerate(full, 1)
                for each in item.fields
            }
            rows[item.name] = len(full)
    return {"values": found, "rows": rows}


def _count(number: Any, item: Rows[Any]) -> int:
    usable = (
        isinstance(number, int)
        and not isinstance(number, bool)
        and item.least <= number <= item.most
    )
    return number if usable else 0


def given_of(record: dict[str, Any]) -> Given:
    """The inputs of a record as read; rows beyond its counts are left out."""
    counts = record["rows"]
    texts: dict[str, str] = {}
    for item in BENCH.inputs:
        if isinstance(item, Rows):
            for number in range(1, counts.get(item.name, 0) + 1):
                texts |= {
                    name: record["values"].get(name, each.default)
                    for each in item.fields
                    if (name := f"{item.name}.{number}.{each.name}")
                }
        else:
            texts[item.name] = record["values"].get(item.name, item.default)
    return read_inputs(BENCH, texts, Settings(), exact=texts, counts=counts)


def settings_of(record: dict[str, Any]) -> Settings:
    """The settings a record holds."""
    return Settings.from_texts(record["values"])


def offers(card: Card, record: dict[str, Any]) -> list[dict[str, Any]]:
    """What this bench can offer to a card: a label, and the values it would set. Rows of a card
    are not offered to.
    """
    wanted: dict[str, list[tuple[Input[Any], str]]] = {}
    single: list[tuple[Input[Any], Reading]] = []
    given, settings, found = given_of(record), settings_of(record), []
    for item in card.inputs:
        if not isinstance(item, Input) or item.bench is None:
            continue
        if place := list_of(item.bench):
            wanted.setdefault(place, []).append((item, item.bench.name))
        else:
            single.append((item, given.readings[item.bench.name]))
    for place, inputs in wanted.items():
        for number in range(1, record["rows"].get(place, 0) + 1):
            found.append(_offer(given, settings, place, number, inputs))
    known = [(each, reading) for each, reading in single if reading.amount is not None]
    if known and record["values"]:
        values: dict[str, str] = {}
        words = []
        for each, reading in known:
            values |= texts_for(each, each.name, reading, settings)
            words.append(written(reading.measured, settings))
        found.append({"label": f"Use my bench ({', '.join(words)})", "values": values})
    return found


def _offer(
    given: Given, settings: Settings, place: str, number: int, inputs: list[tuple[Input[Any], str]]
) -> dict[str, Any]:
    values: dict[str, str] = {}
    for each, column in inputs:
        values |= texts_for(each, each.name, given.readings[f"{place}.{number}.{column}"], settings)
    name, shown = (
        given.readings[f"{place}.{number}.name"],
        given.readings[f"{place}.{number}.{SHOWN[place]}"],
    )
    return {"label": f"Use {name.text} ({written(shown.measured, settings)})", "values": values}


def written(amount: TypedAmount, settings: Settings) -> str:
    """An amount as it was given, with its unit."""
    return f"{write_plain(amount.unit.from_base(amount.value), settings.style)} {amount.unit.sign}"
