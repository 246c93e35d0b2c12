"""The states that tests look at a card in: its example, and the example with each choice made otherwise."""

from fibercalc.core.card import CHOICE, Card, Input, Rows


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
