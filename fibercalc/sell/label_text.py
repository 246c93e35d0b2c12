"""The words of a label from what is known: what it promises rounded down, fiber shares that add
up, hazards of a bottle, and what is missing.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass

from ..core.amount import NO_BREAK
from ..core.number import write_number
from ..core.problem import OutOfRange, require
from ..core.table import read_table
from ..safe.label import classes, signal_word, to_ask
from ..yarn.putup import printed_grams, printed_meters, printed_ounces, printed_yards

SHARE = re.compile(r"(\d+(?:[.,]\d+)?)\s*%")
OFF_BY = 0.05  # %: what a sum of shares typed to a tenth may be off by
DATA_SHEET = "until its data sheet says otherwise"


def length_words(length: float) -> tuple[str, str]:
    """A length as a label promises it, in yards and meters: each a whole number, rounded down by
    itself.

    length  m, 0 or more
    Raises OutOfRange below 0.
    Source: common practice (rounds down); exact yard.
    """
    return f"{printed_yards(length)}{NO_BREAK}yd", f"{printed_meters(length)}{NO_BREAK}m"


def mass_words(mass: float, style: str = "point") -> tuple[str, str]:
    """A weight as a label promises it: whole grams, and ounces to a tenth, each rounded down by
    itself.

    mass   g, 0 or more
    style  number style, "point" or "comma"
    Raises OutOfRange below 0.
    Source: common practice (rounds down); exact ounce.
    """
    return (
        f"{printed_grams(mass)}{NO_BREAK}g",
        f"{write_number(printed_ounces(mass), 1, style)}{NO_BREAK}oz",
    )


def shares_of(fiber: str) -> tuple[float, ...]:
    """The shares that a line of fiber content names, %: "75 % wool, 25 % nylon" gives 75 and 25;
    words alone give none.

    fiber  any text
    Raises OutOfRange for shares that do not add up to 100.
    Source: cfr-16-303 (percentages by weight of the whole); arithmetic.
    """
    shares = tuple(float(found.replace(",", ".")) for found in SHARE.findall(fiber))
    if shares and not abs(sum(shares) - 100) <= OFF_BY:
        raise OutOfRange(
            "fiber",
            sum(shares),
            100.0,
            100.0,
            f"the shares come to {sum(shares):g} %; on a label they must come to 100 %",
        )
    return shares


@dataclass(frozen=True)
class Hazards:
    """What a bottle's label says of its contents: one signal word or "none", statements as lines,
    whether a data sheet has still to decide.
    """

    signal: str
    lines: tuple[str, ...]
    asks: bool


def hazards(contents: Mapping[str, float]) -> Hazards:
    """Signal word and statements for a bottle, from the limits of the safe chapter; none is made
    up for what has no entry there.

    contents  % by weight of each substance of the table label-limits, by its key, each 0 to 100
    Raises OutOfRange outside 0 to 100 and for contents of more than 100 % together; KeyError for
    an unknown substance.
    Source: clp-annexes; ghs-memory (wording from memory).
    """
    require("contents", sum(contents.values()), 0.0, 100.0001)
    sure = tuple(classes(contents))
    asked = tuple(code for code in to_ask(contents) if code not in sure)
    table = read_table("safe", "statements")
    lines = [f"{code} {table.row('code', code)['text']}" for code in sure]
    if asked:
        lines += [f"{code} {table.row('code', code)['text']}" for code in asked] + [
            f"({', '.join(asked)}: {DATA_SHEET}.)"
        ]
    return Hazards(signal_word((*sure, *asked)), tuple(lines), bool(asked))


# What laws ask of a yarn's label: the item, where it is asked for, and by which rule as read.
ASKED = (
    (
        "fiber",
        "Fiber content with percents",
        "US: 16 CFR 303.16, Wool Act. EU: Regulation 1007/2011",
    ),
    ("maker", "Maker’s or seller’s name, or registered number", "US: 16 CFR 303.16, Wool Act"),
    ("origin", "Country of origin", "US: 16 CFR 303.16, Wool Act"),
    ("mass", "Net weight, g and oz", "US: model rule of NIST Handbook 130, yarn by weight"),
    (
        "length",
        "Length, yd and m",
        "Some US states: yards on a unit under 2 oz (Rhode Island 6-10)",
    ),
    ("lot", "Lot", "Common practice: two lots of a color seldom match"),
    (
        "care",
        "Care",
        "Common practice for yarn: the US care rule names clothes and cloth off the bolt",
    ),
)


def missing(said: Mapping[str, str]) -> tuple[str, ...]:
    """The items of ASKED that a label does not say, by name.

    said  what it says, by item: "" where it says nothing
    Source: cfr-16-303, wool-act, eu-1007-2011, nist-hb-130, ri-6-10; common practice where no
    rule asks.
    """
    return tuple(item for item, _, _ in ASKED if not said.get(item, "").strip())
