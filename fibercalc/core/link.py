"""Values in a link: short, versioned, canonical, and read as hostile input.

Keys follow the declared order of the inputs (a, b, c ...); a row's key is its list's key, its number and its field's key (c2a). Only
values that are hers or differ from the example travel, so a changed example or order means a new link version with an upgrade of the old.
"""

from collections.abc import Collection
from functools import lru_cache

from .card import Card, Input, Rows
from .problem import Problem
from .entry import read_one
from .lent import CANONICAL, DAY, HERS, OPEN, canonical_default
from .reading import Given

LONGEST, MOST_KEYS, LONGEST_VALUE, MOST_ROWS_KEYS = 24_000, 40, 600, 1000  # a release of 40 products with all its rows changed takes about 20,000
SAME_SHAPES = 64  # a card with its numbers of rows, and the cards it leads to
TAKEN = ("q", "v")
PLAIN = frozenset(b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_.-~,()")


def short_key(number: int) -> str:
    """a, b, ... z, aa, ab, ..."""
    letters = ""
    number += 1
    while number:
        number, rest = divmod(number - 1, 26)
        letters = chr(97 + rest) + letters
    return letters


def input_key(number: int) -> str:
    """The key of an input or a list. Two letters are taken: v is the version of the link, and for q the theme opens its search over the page."""
    key = short_key(number)
    return f"{key}0" if key in TAKEN else key  # rows count from 1, so q0 is no row's


def link_names(card: Card, counts: dict[str, int]) -> dict[str, tuple[Input, str]]:
    """Short key -> (input, full name) for every value the card can have with so many rows."""
    names = {}
    for number, item in enumerate(card.inputs):
        key = input_key(number)
        if isinstance(item, Rows):
            for row in range(1, counts.get(item.name, len(item.default)) + 1):
                for at, each in enumerate(item.fields):
                    names[f"{short_key(number)}{row}{short_key(at)}"] = (each, f"{item.name}.{row}.{each.name}")
        else:
            names[key] = (item, item.name)
    return names


def query_of(given: Given) -> str:
    """The link query for inputs as read: "v=1&a=1.52m"; "" when all is as in the example. What the example took back is taken back again."""
    texts = {name: reading.text for name, reading in given.readings.items() if (reading.asked or reading.text) and reading.whose not in (OPEN, DAY)}
    hers = {name for name, reading in given.readings.items() if reading.whose == HERS}
    return query_of_texts(given.card, texts, {name: count for name, count in given.counts.items() if name not in given.emptied}, hers)


def query_of_texts(card: Card, texts: dict[str, str], counts: dict[str, int] | None = None, hers: Collection[str] = ()) -> str:
    """The link query for canonical texts by full input name; those that are hers travel even where the example holds the same."""
    counts = counts or {}
    pairs = []
    for number, item in enumerate(card.inputs):
        if isinstance(item, Rows) and counts.get(item.name, len(item.default)) != len(item.default):
            pairs.append((input_key(number), str(counts[item.name])))
    for key, name, default in _examples(card, tuple(counts.items())):
        text = texts.get(name)
        if text is not None and (text != default or name in hers):
            pairs.append((key, text))
    if not pairs:
        return ""
    # A "-" stands for a field left blank on purpose; a color travels without its #, which would start a fragment.
    body = "&".join(f"{key}={_quoted(text.removeprefix('#') or '-')}" for key, text in sorted(pairs))
    return f"v={card.link_version}&{body}"


def _quoted(text: str) -> str:
    """As urllib.parse.quote does it, which would load a library of network addresses before the first answer."""
    return "".join(chr(byte) if byte in PLAIN else f"%{byte:02X}" for byte in text.encode())


@lru_cache(SAME_SHAPES)
def _examples(card: Card, counts: tuple[tuple[str, int], ...]) -> tuple[tuple[str, str, str], ...]:
    """(short key, full name, canonical text in the example) of every value the card can have with so many rows."""
    defaults = card.defaults()
    return tuple((key, name, canonical_default(each, defaults.get(name, each.default))) for key, (each, name) in link_names(card, dict(counts)).items())


def read_query(card: Card, query: str) -> tuple[dict[str, str], dict[str, int], list[str]]:
    """Texts by full input name, row counts, and notes on what was not used. Never raises: bad parts fall back to the example.

    What a link names is hers, whatever it holds.
    """
    notes: list[str] = []
    query = query.removeprefix("?")
    if not query:
        return {}, {}, notes
    if len(query) > LONGEST:
        return {}, {}, ["This link is too long to be one of ours; the example is shown."]
    from urllib.parse import parse_qsl

    pairs: dict[str, str] = {}
    for key, value in parse_qsl(query, keep_blank_values=True, max_num_fields=None)[: MOST_ROWS_KEYS]:
        if key in pairs:
            notes.append(f"The link gives {_printable(key)} twice; the first is used.")
        elif len(pairs) >= MOST_KEYS + (MOST_ROWS_KEYS if any(isinstance(i, Rows) for i in card.inputs) else 0):
            notes.append("The link holds too many values; the rest is not used.")
            break
        else:
            pairs[key] = value
    version = pairs.pop("v", "")
    if not pairs:
        return {}, {}, notes
    if not (version.isascii() and version.isdigit() and len(version) <= 4 and 1 <= int(version) <= card.link_version):
        return {}, {}, notes + ["This link was made by another version of this card; the example is shown."]
    for old in range(int(version), card.link_version):
        pairs = card.upgrades[old](pairs)
    return _texts(card, pairs, notes)


def _texts(card: Card, pairs: dict[str, str], notes: list[str]):
    counts = {}
    if "q" in pairs:  # links made before q was left to the theme
        pairs[input_key(16)] = pairs.pop("q")
    for number, item in enumerate(card.inputs):
        if isinstance(item, Rows):
            text = pairs.pop(input_key(number), "")
            if text.isascii() and text.isdigit() and len(text) <= 3 and item.least <= int(text) <= item.most:
                counts[item.name] = int(text)
            elif text:
                notes.append(f"{item.label}: the link's number of rows could not be used; the example's stands.")
            # A link that names one row says nothing against the others of the example.
            counts.setdefault(item.name, len(item.default))
    names, texts = link_names(card, counts), {}
    for key, value in pairs.items():
        if key not in names:
            notes.append(f"The link's “{_printable(key)}” is not known here and was not used.")
            continue
        each, name = names[key]
        value = "" if value == "-" and each.optional else value
        reading = read_one(each, name, value, CANONICAL, "canonical")
        if len(value) > LONGEST_VALUE or isinstance(reading, Problem):
            notes.append(f"{each.label}: the link's value could not be used; the example's stands.")
        else:
            texts[name] = value
    return texts, counts, notes


def _printable(text: str) -> str:
    return "".join(c for c in text if c.isalnum() or c in "-_.")[:12]


