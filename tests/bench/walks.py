"""Which edits a card gets: planned natively with the same code that the page runs, so that each one is known to change the answer."""

import json
from dataclasses import dataclass, field
from random import Random

from fibercalc.core.card import CHOICE, Card, Rows
from fibercalc.core.link import query_of_texts
from fibercalc.core.number import write_plain
from fibercalc.core.units import COUNT, PERCENT
from fibercalc.site.boundary import handle

from .report import NotMeasured

TRIES = 30  # edits tried natively for each that is wanted


@dataclass
class Walk:
    """One state of a card, by its link, and edits from there: (field, text). requests are what the page will ask of Python."""

    words: str
    query: str
    values: dict[str, str]
    exact: dict[str, str]
    asked: list[str]
    edits: list[tuple[str, str]] = field(default_factory=list)
    requests: list[str] = field(default_factory=list)


def walks(card: Card, edits: int) -> list[Walk]:
    """The example, every other choice, and every list of rows as long as it may be, with the edits shared out among them. Where there
    are more states than pairs of edits, a fixed sample of them."""
    chance = Random(card.id)
    states = [
        walk
        for words, texts, counts in _states(card)
        if (walk := _open(card, words, query_of_texts(card, texts, counts)))
    ]
    if len(states) > edits // 2:
        states = states[:1] + chance.sample(states[1:], max(edits // 2 - 1, 0))
    for at, walk in enumerate(states):
        _plan(card, walk, edits // len(states) + (at < edits % len(states)), chance)
    found = sum(len(walk.edits) for walk in states)
    if found < edits // 2:
        raise NotMeasured(f"only {found} of {edits} edits change the answer")
    return [walk for walk in states if walk.edits]


def _states(card: Card):
    yield "example", {}, {}
    for item in card.inputs:
        if isinstance(item, Rows):
            yield f"{item.most} rows of {item.name}", _full(item), {item.name: item.most}
        elif item.kind == CHOICE:
            asked = {
                other.name: values[0]
                for other, values in item.when.items()
                if other.default not in values
            }
            yield from (
                (f"{item.name} {option.value}", asked | {item.name: option.value}, {})
                for option in item.options
                if option.value != item.default
            )


def _full(item: Rows) -> dict[str, str]:
    """As many rows as there may be, like the example's in turn; shares in percent are made to add up to the whole."""
    texts = {}
    for number in range(1, item.most + 1):
        row = item.default[(number - 1) % len(item.default)] if item.default else {}
        for each in item.fields:
            share = 100 // item.most + (100 % item.most if number == 1 else 0)
            texts[f"{item.name}.{number}.{each.name}"] = (
                str(share) if each.of is PERCENT else row.get(each.name, each.default)
            )
    return texts


def _ask(request: dict) -> dict:
    reply = json.loads(handle(json.dumps(request)))
    if "problem" in reply:
        raise NotMeasured(reply["problem"]["text"])
    return reply["ok"]


def _open(card: Card, words: str, query: str) -> Walk | None:
    """The state behind a link; None where it has no answer, as a choice with a blank field."""
    opened = _ask({"id": 1, "do": "open", "card": card.id, "query": query, "settings": {}})
    if not opened["answered"] or opened["link_notes"]:
        return None
    return Walk(words, query, opened["values"], opened["exact"], opened["shown"])


def _plan(card: Card, walk: Walk, wanted: int, chance: Random) -> None:
    """Numbers within a fifth of the ones that stand there, one field at a time, until enough of them change the sentence; as many as do.
    Where no number ever does, choices."""
    fields = [name for name in walk.asked if name in walk.values]
    numbers = [name for name in fields if _measured(card, name) and _number(walk.values[name])]
    names = numbers
    standing = dict(walk.values)
    before = _work(card, standing, walk.exact)[1]
    for at in range(TRIES * wanted):
        if len(walk.edits) == wanted:
            return
        if not names or (at == TRIES * wanted // 2 and not walk.edits):
            numbers, names = [], [name for name in fields if _input(card, name).kind == CHOICE]
        if not names:
            return
        name = names[at % len(names)]
        text = (
            _near(card, name, walk.values[name], chance)
            if name in numbers
            else chance.choice(_input(card, name).options).value
        )
        if text == standing[name]:
            continue
        edited = standing | {name: text}
        exact = {
            key: value
            for key, value in walk.exact.items()
            if key not in {name, *(done for done, _ in walk.edits)}
        }
        request, reply = _work(card, edited, exact)
        if (
            reply["answered"]
            and before["answered"]
            and reply["slots"]["answer"] != before["slots"]["answer"]
        ):
            walk.edits.append((name, text))
            walk.requests.append(request)
            standing, before = edited, reply


def _work(card: Card, values: dict, exact: dict) -> tuple[str, dict]:
    request = {
        "id": 1,
        "do": "work",
        "card": card.id,
        "values": values,
        "exact": exact,
        "settings": {},
    }
    return json.dumps(request), _ask(request)


def _input(card: Card, name: str):
    head, *rest = name.split(".")
    item = card.item(head)
    return next(each for each in item.fields if each.name == rest[1]) if rest else item


def _measured(card: Card, name: str) -> bool:
    item = next((item for item in card.inputs if item.name == name.split(".")[0]), None)
    return (
        item is not None
        and (not isinstance(item, Rows) or "." in name)
        and _input(card, name).measured
    )


def _number(text: str) -> float:
    """The number that stands in a field; 0 where there is none, or more than one."""
    try:
        return float(text.partition("±")[0])
    except ValueError:
        return 0.0


def _near(card: Card, name: str, text: str, chance: Random) -> str:
    number = _number(text) * chance.uniform(0.8, 1.2)
    return (
        str(max(round(number), 0))
        if _input(card, name).of is COUNT
        else write_plain(number, digits=4)
    )
