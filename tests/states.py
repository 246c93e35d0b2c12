"""The states that tests look at a card in: its example, the example with each choice made otherwise, and a few in which everything is
another's own: every number, every choice, lists of another length."""

import random

from fibercalc.core.card import CHOICE, COLOR, Card, Input, Rows
from fibercalc.core.problem import BadInputs
from fibercalc.core.work import work_card

# States in which a limit lies between the ends of a range: there the worse end decides.
NEAR_A_LIMIT = {"lift": [{"mass": "10 kg ± 1.5"}]}

OWN = 3  # states of another's own, for each card
TRIES = 200  # draws until so many are found that can be answered


def fields_of(card: Card) -> list[tuple[str, Input]]:
    """Every input of the example by its full name."""
    found = []
    for item in card.inputs:
        if isinstance(item, Rows):
            found += [
                (f"{item.name}.{number}.{each.name}", each)
                for number in range(1, len(item.default) + 1)
                for each in item.fields
            ]
        else:
            found.append((item.name, item))
    return found


def changed(card: Card, name: str, text: str) -> dict[str, str]:
    """The example with one input changed. Whoever names one row gives the whole list, so the rest of the list comes along."""
    rows = {
        other: kept
        for other, kept in card.defaults().items()
        if "." in name and other.startswith(name.split(".")[0] + ".")
    }
    return rows | {name: text}


def states_of(card: Card) -> list[dict[str, str]]:
    """The example, and the example with each choice made otherwise."""
    states: list[dict[str, str]] = [{}]
    for name, each in fields_of(card):
        if each.kind == CHOICE:
            states += [
                changed(card, name, option.value)
                for option in each.options
                if option.value != card.defaults()[name]
            ]
    return states


def changed_in(card: Card, state: dict[str, str]) -> tuple[str, str]:
    """The one input that a state of states_of changes, and its text; two blanks for the example."""
    defaults = card.defaults()
    return next(
        ((name, text) for name, text in state.items() if text != defaults.get(name)), ("", "")
    )


def own_states_of(card: Card) -> list[dict[str, str]]:
    """States that have nothing of the example, drawn by the card's name, the same in every run: usual values in any unit offered, now and
    then rough, any choice, lists a row longer or shorter. Only those that can be answered."""
    draw, found = random.Random(card.id), []
    for _ in range(TRIES):
        state = _drawn(card, draw)
        try:
            work_card(card, state)
        except BadInputs:
            continue
        found.append(state)
        if len(found) == OWN:
            break
    return found


def _drawn(card: Card, draw: random.Random) -> dict[str, str]:
    texts: dict[str, str] = {}
    for item in card.inputs:
        if isinstance(item, Rows):
            texts |= _rows(item, draw)
        else:
            texts[item.name] = _one(item, item.default, draw)
    return texts


def _rows(item: Rows, draw: random.Random) -> dict[str, str]:
    """A list a row longer or shorter than the example's. Its words are the example's, since others may refer to them; its shares make
    a whole."""
    length = len(item.default) + draw.choice((-1, 0, 0, 1))
    length, texts = min(max(length, item.least, 1), item.most), {}
    for number in range(1, length + 1):
        old = item.default[(number - 1) % len(item.default)] if item.default else {}
        for each in item.fields:
            text = _one(each, old.get(each.name, each.default), draw)
            if item.name in ("fibers", "blend") and each.kind == "percent":
                text = str(100 // length + (100 % length if number == 1 else 0))
            texts[f"{item.name}.{number}.{each.name}"] = text
    return texts


def _one(each: Input, old: str, draw: random.Random) -> str:
    if each.kind == CHOICE:
        return draw.choice(each.options).value
    if each.kind == COLOR:
        return draw.choice(("#7a3b2e", "#2f5d7c", "#c9a227", "#4b6b45", "#8d5a97"))
    if not each.measured:
        return old
    low, high = _usual(each)
    unit = draw.choice([unit for unit in each.choices if not (unit.inverse and low <= 0)])
    value = low + (high - low) * draw.uniform(0.1, 0.7)
    if each.kind == "count":
        return str(round(value))
    typed = unit.from_base(value)
    rough = f" ± {abs(typed) * 0.03:.2g}" if draw.random() < 0.3 else ""
    return f"{typed:.3g}{rough} {unit.sign}"


def _usual(each: Input) -> tuple[float, float]:
    """Its usual range; where none is declared, half to twice its example, or the low end of what is allowed."""
    low, high = each.edges
    if each.usual:
        ends = sorted(each.base_value(text) for text in each.usual)
        return ends[0], ends[1]
    if each.default:
        example = each.base_value(each.default)
        return max(low, min(example / 2, example * 2)), min(high, max(example / 2, example * 2, 1))
    return low, low + (high - low) / 20
