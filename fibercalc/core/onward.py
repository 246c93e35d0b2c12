"""What goes on to the next card: texts for its inputs, spread and all, from this card and from
those before it on the way.

A trail is the way come: (card, link query) of each card before, oldest first. What the next card
can have from any of them it gets; of two that know the same thing the later one is believed. Once
anything on the way is hers, nothing that an example only lent goes on.
"""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING, Any

from .card import TEXT, Card, Carry, Constant, Input, RowPart, Rows
from .case import Between
from .entry import read_one
from .lent import CANONICAL, DAY, HERS, LENT, OPEN, is_lent, lends_of
from .link import read_query
from .part import HasName
from .problem import BadInputs, Problem
from .reading import read_inputs
from .registry import UnknownCard, find_card, next_card
from .units import COUNT

if TYPE_CHECKING:
    from .carry import Source
    from .work import Worked

LONGEST_TRAIL = 6
SAME_TEXTS = (
    2048  # most of what goes on is the same from key to key, and from one link of a set to the next
)
SAME_QUERIES = (
    32  # how many cards before are kept worked: a trail is asked about again at every key
)


def ways_on(
    worked: Worked, carry: Carry, trail: tuple[tuple[str, str], ...] = ()
) -> list[tuple[str, dict[str, str], dict[str, int]]]:
    """For each link of one way on: its words, the texts by full input name of the next card, and
    the rows of the lists that travel whole.
    """
    other = next_card(worked.card, carry)
    hers = is_hers(worked, trail)
    before, counts = _from_trail(trail, other, hers)
    labels = _labels(worked, carry)
    ways = []
    for number, label in enumerate(labels, 1):
        texts, rows = dict(before), dict(counts)
        _overlay(texts, rows, *_carried(worked, carry, other, number, hers))
        ways.append((carry.words.format(label), texts, rows))
    return ways


def is_hers(worked: Worked, trail: tuple[tuple[str, str], ...] = ()) -> bool:
    """Whether anything on this card, or on one before it on the way, is hers: a link holds
    nothing else.
    """
    return worked.given.hers or any(
        _from_before(card_id, query, "", False)[2] for card_id, query in trail[-LONGEST_TRAIL:]
    )


def said_in_link(other: Card, texts: dict[str, str], hers: bool) -> list[str]:
    """What a link says even where the next card's example holds the same: all that is hers, and
    always a name, or it would be the next example's.
    """
    return [name for name in texts if hers or lends(other, name)]


def lends(card: Card, name: str) -> bool:
    """Whether the example of a card only lends this value, by its full name."""
    return _input(card.item(name.split(".")[0]), name).lends


def spread_text(value: float, low: float, high: float, sign: str = "") -> str:
    """A value with its 95 % range as canonical text; the range becomes the uniform it would come
    from.
    """
    half = (
        abs(high - low) / 2 / 0.95
    )  # 95 % of a uniform distribution lies within 0.95 of its half-width
    return f"{value:.6g}{f'~{half:.3g}' if half else ''}{sign.replace(' ', '')}"


def _labels(worked: Worked, carry: Carry) -> list[str]:
    if not carry.each:
        return [""]
    if callable(carry.each):
        return carry.each(worked.outcome)
    return [
        str(getattr(row, "name", "")) or str(number)
        for number, row in enumerate(getattr(worked.outcome.case, carry.each.name), 1)
    ]


def _carried(
    worked: Worked, carry: Carry, other: Card, number: int, hers: bool
) -> tuple[dict[str, str], dict[str, int]]:
    """Texts and row counts that one link takes from this card; what the next card would not
    allow, and what was only lent, stays behind.
    """
    lent = lends_of(worked.given) if hers else []
    texts: dict[str, str] = {}
    counts: dict[str, int] = {}
    for name, source in carry.inputs.items():
        item = other.item(name.split(".")[0])
        found = _found(worked, source, bool(carry.each), number, item, name)
        if found is None or found == "":
            continue
        if isinstance(found, list):
            counts[name] = len(found)
            named = {
                f"{name}.{row}.{field}": text
                for row, texts_of in enumerate(found, 1)
                for field, text in texts_of.items()
                if text
            }
        else:
            named = {name: found}
        own = (
            not (callable(source) or isinstance(source, Constant))
            and _whose(worked, source, number) == HERS
        )
        texts |= {
            full: text
            for full, text in named.items()
            if _allowed(other.id, full, text)
            and (own or not (lent and is_lent(text, _input(item, full), lent)))
        }
    return texts, counts


@lru_cache(SAME_TEXTS)
def _allowed(card_id: str, name: str, text: str) -> bool:
    """Whether a card takes this text for that input."""
    item = find_card(card_id).item(name.split(".")[0])
    return not isinstance(read_one(_input(item, name), name, text, CANONICAL, "canonical"), Problem)


def _named(source: HasName | RowPart, number: int) -> str:
    """The full name of what goes on; of a row's value, in the row that the link is for."""
    return source.of(number) if isinstance(source, RowPart) else source.name


def _whose(worked: Worked, source: HasName | RowPart, number: int) -> str:
    reading = worked.given.readings.get(_named(source, number))
    return reading.whose if reading is not None else ""


def _found(
    worked: Worked, source: Source, each: bool, number: int, item: Input[Any] | Rows[Any], name: str
) -> str | list[dict[str, str]] | None:
    if isinstance(source, Constant):
        return source.value
    if callable(source):
        given: str | list[dict[str, str]] | None = (
            source(worked.outcome, number) if each else source(worked.outcome)
        )
        return given
    if _whose(worked, source, number) == DAY:
        return None  # the next card knows what day it is
    return known_as(
        worked,
        _named(source, number),
        None if isinstance(item, Rows) and "." not in name else _input(item, name),
    )


def known_as(worked: Worked, name: str, into: Input[Any] | None) -> str | None:
    """A result or input of a worked card as canonical text for another input; None where there is
    none, or it does not fit.
    """
    outcome = worked.outcome
    if name in outcome.found and name in worked.borrowed:
        return None
    if (
        into is not None
        and name not in outcome.found
        and isinstance(part := worked.card.case.parts_by_name.get(name), Between)
    ):
        # a number on the way is carried as it was worked; only an answer has a spread of its own
        value = vars(outcome.case).get(name)
        return None if value is None else spread_text(value, value, value, part.work_unit.sign)
    if into is not None and name in outcome.found and isinstance(outcome.value(name), (int, float)):
        if into.of is COUNT:
            return f"{round(outcome.value(name))}"
        unit = into.choices[0]
        ends = (outcome.value(name), outcome.low(name), outcome.high(name))
        value, low, high = (unit.from_base(end) for end in ends)
        return spread_text(value, low, high, unit.sign)
    if into is not None and name in outcome.found and into.kind == TEXT:
        words = outcome.text(name)
        return (
            words if len(words) <= into.longest else None
        )  # words that do not fit are not cut: they stay behind
    reading = worked.given.readings.get(name)
    return (
        reading.text
        if reading is not None and reading.asked and reading.whose not in (LENT, OPEN)
        else None
    )


def _input(item: Input[Any] | Rows[Any], name: str) -> Input[Any]:
    return (
        next(each for each in item.fields if each.name == name.split(".")[2])
        if isinstance(item, Rows)
        else item
    )


def _overlay(
    texts: dict[str, str], counts: dict[str, int], more: dict[str, str], more_counts: dict[str, int]
) -> None:
    for name in more_counts:
        for old in [old for old in texts if old.startswith(f"{name}.")]:
            del texts[old]
    texts |= more
    counts |= more_counts


def _from_trail(
    trail: tuple[tuple[str, str], ...], other: Card, hers: bool
) -> tuple[dict[str, str], dict[str, int]]:
    texts: dict[str, str] = {}
    counts: dict[str, int] = {}
    for card_id, query in trail[-LONGEST_TRAIL:]:
        _overlay(texts, counts, *_from_before(card_id, query, other.id, hers)[:2])
    return texts, counts


@lru_cache(SAME_QUERIES)
def _from_before(
    card_id: str, query: str, other_id: str, hers: bool
) -> tuple[dict[str, str], dict[str, int], bool]:
    """What one card before can give the next: its own values where it is that card, else what its
    way on to it carries; and whether any of it is hers.
    """
    from .work import work_given  # work needs no way on

    try:
        card = find_card(card_id)
        texts, counts, _ = read_query(card, query)
        given = read_inputs(card, texts, CANONICAL, exact=texts, counts=counts, named=texts)
        if not other_id:
            return {}, {}, given.hers
        other = find_card(other_id)
        if card is other:
            lent = {reading.name for reading in lends_of(given)} if hers else ()
            return (
                {
                    name: reading.text
                    for name, reading in given.readings.items()
                    if reading.asked and name not in lent and reading.whose not in (OPEN, DAY)
                },
                {name: count for name, count in given.counts.items() if name not in given.emptied},
                given.hers,
            )
        carry = next((each for each in card.carry if each.card == other_id and not each.each), None)
        return (
            *(_carried(work_given(given, CANONICAL), carry, other, 1, hers) if carry else ({}, {})),
            given.hers,
        )
    except (UnknownCard, BadInputs):
        return {}, {}, False
