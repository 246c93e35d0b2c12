"""What a card hands on by a function of its own is a number that the card has: an input, a result, a step, or what it keeps.

A formula written a second time drifts. Where the next card asks for what this one has no number for, the number is worked out
again here from inputs and results, or is an own number so many times.
"""

from collections import defaultdict
from dataclasses import fields, is_dataclass

import pytest

from fibercalc.core.entry import read_one
from fibercalc.core.formula import evaluate
from fibercalc.core.link import CANONICAL
from fibercalc.core.onward import ways_on
from fibercalc.core.problem import BadInputs
from fibercalc.core.registry import find_card
from fibercalc.core.units import COUNT, NUMBER, PERCENT
from fibercalc.core.work import work_card
from tests.cards import BOOK, card_id
from tests.test_every_card import changed, fields_of, states_of

PLAIN = (COUNT, NUMBER, PERCENT)  # numbers without a unit of their own pass from one to another
CLOSE = 6e-4  # texts that go on have four digits or more
CALCULATED = [card for card in BOOK if any(callable(source) for carry in card.carry for source in carry.inputs.values())]

# (card, next card, input): the same number in the base units of its inputs and results.
WORKED_OUT = {
    ("skein-split", "reel-turns", "count"): "1000 * skein_mass / skein_length",
    ("warp-plan", "weft-left", "yarn"): "1000 * skein_mass / skein_length",
    ("wet-finish", "make-size", "length_percent"): "0 - height",
    ("wet-finish", "make-size", "width_percent"): "0 - width",
    ("stock-solution", "hazard-label", "strength"): "holds",
    ("pots", "bath-heat", "fiber_mass"): "fullest * skein_mass",
    ("pots", "bath-heat", "bath"): "fullest * skein_mass * liquor_ratio",
    ("pots", "drain-check", "volume"): "fullest * skein_mass * liquor_ratio",
    ("dye-recipe", "bath-heat", "fiber_mass"): "goods * load / skeins",
    ("dye-recipe", "bath-heat", "bath"): "bath * load / skeins",
    ("dye-recipe", "bath-acid", "liters"): "bath * load / skeins",
    ("dye-recipe", "drain-check", "volume"): "bath * load / skeins",
    ("dye-recipe", "bath-acid", "grams"): "grams * load / skeins",
    ("dye-recipe", "bath-acid", "strength"): "acid_strength / 1.01",
    ("shade-steps", "dye-recipe", "skeins"): "pieces",
    ("shade-steps", "pots", "skeins"): "pieces",
    ("shade-steps", "dye-recipe", "skein_mass"): "fiber / pieces",
    ("shade-steps", "pots", "skein_mass"): "fiber / pieces",
    ("lot-repeat", "dye-recipe", "skeins"): "pieces",
    ("lot-repeat", "dye-recipe", "skein_mass"): "fiber / pieces",
    ("set-plan", "label", "copies"): "sets + spare",
    ("set-plan", "release-plan", "price"): "0",
    ("set-plan", "release-plan", "other"): "0",
}
# An own number times an own count: of one lot for the whole run, of one skein for all of them.
TIMES = {
    ("dye-recipe", "stock-solution", "volume"), ("dye-recipe", "pots", "skeins"),
    ("paint-plan", "stock-solution", "volume"), ("kit-yarn", "pots", "skeins"), ("kit-yarn", "parcels", "good"),
}
# Counted out for the next card from lists and pictures: the tests of those chapters hold it.
COUNTED = {
    ("warp-plan", "cloth-picture", "hem"), ("warp-plan", "cloth-picture", "picks"), ("warp-plan", "weft-left", "hem"),
    ("warp-plan", "weft-left", "piece_picks"), ("warp-plan", "weave-pace", "piece_picks"), ("cloth-picture", "weave-pace", "stick_share"),
    ("cloth-picture", "weave-pace", "changes"), ("shade-steps", "stock-solution", "volume"), ("release-plan", "pots", "skeins"), ("release-plan", "dye-recipe", "lots"), ("release-plan", "parcels", "skeins"),
}


def turned(card):
    """The example, each choice made otherwise, and each number at the ends of what is usual."""
    yield from states_of(card)
    for name, each in fields_of(card):
        for end in each.usual if each.measured and each.usual else ():
            yield changed(card, name, end)


def numbers_in(value):
    """Every number in what a card keeps."""
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        yield float(value)
    elif isinstance(value, dict):
        for each in value.values():
            yield from numbers_in(each)
    elif isinstance(value, (list, tuple)):
        for each in value:
            yield from numbers_in(each)
    elif is_dataclass(value):
        for each in fields(value):
            yield from numbers_in(getattr(value, each.name))


def own_numbers(worked):
    """The numbers a card has, by what they measure, and those it keeps for its words and pictures."""
    typed = defaultdict(list)
    for found in worked.outcome.found.values():
        if isinstance(found.value, (int, float)):
            typed[found.result.of].append(found.value)
    for reading in worked.outcome.readings.values():
        if reading.asked and reading.amount is not None:
            typed[reading.input.of].append(reading.amount.value)
    for step in worked.steps:
        typed[step.of].append(step.unit.to_base(step.value))
    return typed, list(numbers_in(worked.outcome.kept))


def close(one, other):
    return abs(one - other) <= CLOSE * max(abs(one), abs(other))


def handed_on(worked):
    """(next card, input, reading) of every number that a function of the card hands on."""
    for carry in worked.card.carry:
        other = find_card(carry.card)
        computed = {name.split(".")[0] for name, source in carry.inputs.items() if callable(source)}
        for _, texts, _ in ways_on(worked, carry):
            for name, text in texts.items():
                first, *rest = name.split(".")
                item = other.item(first)
                each = next(field for field in item.fields if field.name == rest[1]) if rest and item.kind == "rows" else item
                if first in computed and each.measured:
                    yield other.id, each.name, read_one(each, name, text, CANONICAL, "canonical")


def known(worked):
    """What WORKED_OUT speaks of: inputs and results, and a few words for what a card keeps."""
    outcome = worked.outcome
    names = dict(outcome.given) | {name: found.value for name, found in outcome.found.items()}
    for way in ("height", "width") if worked.card.id == "wet-finish" else ():
        names[way] = outcome.value(f"{way}_own" if outcome.has(f"{way}_own") else f"{way}_likely")
    if worked.card.id == "pots":
        names["fullest"] = max(load.skeins for load in outcome.kept["plan"].placing.loads)
    if worked.card.id == "dye-recipe":
        names["load"] = max(outcome.kept["loads"])
        names["grams"] = next((outcome.value(name) for name in ("soda_mass", "acid_pure") if outcome.has(name)), None)
    if worked.card.id == "stock-solution":
        names.setdefault("holds", names["wanted"])  # but for a jar of another strength a bottle holds what it works as
    if "fiber" in outcome.given and isinstance(outcome.given["fiber"], float):
        names["pieces"] = -int(-outcome.given["fiber"] // 100)
    return names


@pytest.mark.parametrize("card", CALCULATED, ids=card_id)
def test_a_number_handed_on_is_the_card_s_own(card):
    for texts in turned(card):
        try:
            worked = work_card(card, texts)
        except BadInputs:
            continue
        typed, kept = own_numbers(worked)
        for other, name, reading in handed_on(worked):
            value, where = reading.amount.value, (card.id, other, name)
            if where in WORKED_OUT:
                wanted = [evaluate(WORKED_OUT[where], known(worked))]
            elif where in COUNTED:
                continue
            else:
                of = reading.input.of
                wanted = [number for each in (PLAIN if of in PLAIN else (of,)) for number in typed[each]] + kept
                if where in TIMES:
                    wanted = [number * many for number in wanted for many in {1, *typed[COUNT], *kept} if many == int(many)]
            shown = reading.amount.unit.from_base(value)
            assert any(close(value, number) or where not in WORKED_OUT and close(shown, number) for number in wanted), (where, texts, reading.text)
