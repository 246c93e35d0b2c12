"""The link by which a customer asks for one base: what it holds, how it is written, and how it is
read as hostile input.

The query goes to a server's log, so it holds numbers only: version, grams and meters of a skein,
weight class. Name, lot and price travel in the fragment, which stays in the browser. The page
must read a link before Python runs, so RULES is also written into the page's table: both readers
follow the same data, and a test gives both the same links.
"""

import re
from dataclasses import dataclass, replace
from typing import TypedDict
from urllib.parse import parse_qsl, quote_plus

from ..core.card import BENCH_RULE, CHOICE, TEXT, Basis, Card, Input, Option, case_of
from ..core.number import write_number
from ..core.outcome import with_money
from ..core.settings import Settings
from ..core.units import MONEY
from ..held import RECORD
from ..sources import COMMON_PRACTICE
from ..yarn.inputs import SKEIN_LENGTH, SKEIN_MASS

CLASSES = tuple(
    "01234567"
)  # the council's numbers; their names are looked up only where they are shown
LONGEST_HOME = 120


class Rules(TypedDict):
    """What RULES holds; ends are the lowest and the highest."""

    version: str
    longest: int
    number: str
    grams: list[int]
    meters: list[int]
    grist: list[int]
    classes: tuple[str, ...]
    texts: dict[str, int]
    hidden: str
    space: str


# Everything that a reader of a link must know, as data. The patterns hold plain characters, so that
# both languages read them alike.
RULES: Rules = {
    "version": "1",
    "longest": 400,  # characters of the query, and of the fragment
    "number": r"[0-9]{1,5}(\.[0-9]{1,2})?",
    "grams": [5, 2000],
    "meters": [5, 10000],
    # Meters in 100 g. The loops of knitting by the council's gauges reach to about 16 (6 stitches
    # in 4 in, jumbo); under 10 yarn is worked on the arms, whose loops nobody has measured, and
    # over 1,500 it is thread.
    "grist": [10, 1500],
    "classes": CLASSES,
    "texts": {"n": 40, "l": 24, "p": 16},  # name, lot, price: characters kept
    # Controls, letters that turn a line around, marks without width, private use, tags.
    "hidden": (
        "[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\xad\u034f\u061c\u115f\u1160\u17b4\u17b5\u180b-\u180f\u200b-\u200f\u2028-\u202e\u2060-\u206f"
        "\u3164\ue000-\uf8ff\ufe00-\ufe0f\ufeff\uffa0\ufff0-\ufffd\U000e0000-\U000e0fff\U000f0000-\U0010ffff]"
    ),
    "space": "[ \t\n\r\xa0\u1680\u2000-\u200a\u202f\u205f\u3000]+",
}


@dataclass(frozen=True)
class BaseLink:
    """What a link says: kind is "none" (no base in it), "broken" or "base"; the rest is set for a
    base only.
    """

    kind: str
    grams: float = 0.0
    meters: float = 0.0
    weight_class: str = ""
    name: str = ""
    lot: str = ""
    price: str = ""


def read_link(search: str, fragment: str) -> BaseLink:
    """Read a link's query and fragment, with or without their "?" and "#". Never raises; a name
    is cleaned and cut, a bad number breaks.
    """
    query = search.removeprefix("?")
    if len(query) > RULES["longest"]:
        return BaseLink("broken")
    pairs = [
        (key, value)
        for key, value in parse_qsl(query, keep_blank_values=True)
        if key in ("v", "g", "m", "c")
    ]
    if not pairs:
        return BaseLink("none")
    given = dict(pairs)
    grams, meters = (
        _number(given.get("g"), RULES["grams"]),
        _number(given.get("m"), RULES["meters"]),
    )
    weight_class = given.get("c", "")
    if (
        len(given) < len(pairs)
        or given.get("v") != RULES["version"]
        or grams is None
        or meters is None
        or not RULES["grist"][0] <= 100 * meters / grams <= RULES["grist"][1]
        or ("c" in given and weight_class not in CLASSES)
    ):
        return BaseLink("broken")
    texts = _texts(fragment.removeprefix("#"))
    return BaseLink("base", grams, meters, weight_class, texts["n"], texts["l"], texts["p"])


def _number(text: str | None, ends: list[int]) -> float | None:
    if text is None or not re.fullmatch(RULES["number"], text):
        return None
    low, high = ends
    return float(text) if low <= float(text) <= high else None


def _texts(fragment: str) -> dict[str, str]:
    found = dict.fromkeys(RULES["texts"], "")
    if len(fragment) <= RULES["longest"]:
        for key, value in parse_qsl(fragment, keep_blank_values=True):
            if key in found and not found[key]:
                found[key] = clean(value, RULES["texts"][key])
    return found


def clean(text: str, longest: int) -> str:
    """A text without what cannot be seen, with single spaces, cut to a length."""
    seen = re.sub(RULES["space"], " ", re.sub(RULES["hidden"], "", text)).strip(" ")
    return seen[:longest].strip(" ")


def write_link(home: str, base: BaseLink) -> str:
    """The whole link: home is the address of the book, with a "/" at its end."""
    query = f"v={RULES['version']}&g={_short(base.grams)}&m={_short(base.meters)}" + (
        f"&c={base.weight_class}" if base.weight_class else ""
    )
    texts = {"n": base.name, "l": base.lot, "p": base.price}
    fragment = "&".join(
        f"{key}={quote_plus(text, safe='/:,;@!()')}" for key, text in texts.items() if text
    )
    return f"{home}helper/?{query}" + (f"#{fragment}" if fragment else "")


def _short(number: float) -> str:
    """At most one decimal: a skein's label gives no more."""
    return f"{number:.1f}".removesuffix(".0")


def price_text(value: float, settings: Settings) -> str:
    """A price as people here write it: "€24", "€24.50"."""
    return with_money(
        write_number(value, 0 if value == round(value) else 2, settings.style), settings.money
    )


def class_name(number: str) -> str:
    """A weight class as it is said: "3 Light". Raises IndexError for a number that is none of the
    council's.
    """
    from ..yarn.weight_class import (
        COUNCIL,
        weight_classes,
    )  # reads a table, and My bench opens without it

    return f"{number} {weight_classes(COUNCIL)[int(number)].name}"


WEIGHT_CLASS: Input[str] = Input(
    CHOICE,
    "Weight class",
    default="none",
    measure="The number on the label, 0 (lace) to 7 (jumbo).",
    options=(Option("none", "Not said"), *(Option(number, number) for number in CLASSES)),
    name="weight_class",
)
LOT: Input[str] = Input(TEXT, "Lot", optional=True, longest=RULES["texts"]["l"], name="lot")
PRICE: Input[float] = Input(
    MONEY, "Price of a skein", optional=True, allowed=("0.01", "9999"), name="price"
)

LINK = Card(
    id="helper-link",
    chapter="yarn",
    place=0,
    question="Which base is the link for?",
    case=case_of(
        (
            Input(
                TEXT,
                "Name of the base",
                default="Dunmel DK",
                longest=RULES["texts"]["n"],
                bench=RECORD.bench.bases.name,
                record=RECORD.base.name,
                name="name",
            ),
            replace(
                SKEIN_MASS,
                label="Weight of a skein",
                allowed=("5 g", "2000 g"),
                name="mass",
                usual=None,
            ),
            replace(
                SKEIN_LENGTH,
                label="Length of a skein",
                default="230 m",
                name="length",
                usual=None,
                rough="",
            ),
            replace(
                WEIGHT_CLASS, bench=RECORD.bench.bases.weight_class, record=RECORD.base.weight_class
            ),
            replace(
                LOT, bench=RECORD.bench.bases.lot, measure="Left blank, it is not in the link."
            ),
            replace(
                PRICE,
                bench=RECORD.bench.bases.price,
                record=RECORD.base.price,
                measure=(
                    "Left blank, it is not in the link. A printed code keeps its price when yours"
                    " changes."
                ),
            ),
            Input(
                TEXT,
                "Where your book stands on the web",
                optional=True,
                longest=LONGEST_HOME,
                measure="Left blank, the link leads to where this page is now.",
                name="home",
            ),
        )
    ),
    answer=lambda case: None,
    say=lambda r: "The link is ready.",
    basis=Basis(BENCH_RULE, "What stands on the skein’s label."),
    sources=(COMMON_PRACTICE,),
)
