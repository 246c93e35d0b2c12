"""What every card answers, as text that a dyer can read and a reviewer can compare: `shared/answers/<chapter>/<card>.md`.

Each file holds the example, then the example with each choice made otherwise, then a few states in which everything is another's own:
sentence, cautions, notes, numbers, tables, pictures, papers, labels and what goes on to other cards. A part that is the same as in the
example is not written again. A picture stands there by its words and by a mark of its drawing: where only the mark changes, look at it.

`python -m tests.answers [CARD ...]` (`make answers`) writes them anew; the change is then read like any other, word by word.
"""

import hashlib
import sys
from pathlib import Path

from fibercalc.core.card import Card, Input, Rows
from fibercalc.core.label.draw import drawn
from fibercalc.core.onward import ways_on
from fibercalc.core.paper import Labels
from fibercalc.core.problem import BadInputs
from fibercalc.core.settings import Settings
from fibercalc.core.work import Worked, work_card
from tests.cards import BOOK
from tests.states import NEAR_A_LIMIT, changed_in, own_states_of, states_of

OWN_STATE = "Another’s own,"
IN_US = (f"{OWN_STATE} 2",)  # so that every card is seen in the other units too
USUAL, US = Settings(), Settings(system="us")
FOLDER = Path(__file__).parent.parent / "shared" / "answers"


def file_of(card: Card) -> Path:
    """Where a card's answers stand."""
    return FOLDER / card.chapter / f"{card.id}.md"


def written(card: Card) -> str:
    """All answers of a card as Markdown."""
    lines = [f"# {card.question}", ""]
    example: dict[str, list[str]] = {}
    states = [(_name_of(card, state), state, False) for state in states_of(card)]
    for state in NEAR_A_LIMIT.get(card.id, ()):
        states.append(("Near a limit", state, True))
    for number, state in enumerate(own_states_of(card), 1):
        states.append((f"{OWN_STATE} {number}", state, True))
    for name, state, own in states:
        parts = _parts(card, state, US if name in IN_US else USUAL)
        if own:
            parts = {"Asked": [f"- {place} = {text}" for place, text in state.items()]} | parts
        lines += [f"## {name}", ""]
        for title, part in parts.items():
            if example.get(title) == part:
                continue
            lines += ([f"### {title}", ""] if title else []) + [*part, ""]
        gone = [title for title in example if title not in parts]
        lines += [f"Gone: {', '.join(gone)}.", ""] if gone else []
        example = example or parts
    return "\n".join(lines).rstrip() + "\n"


def _name_of(card: Card, state: dict[str, str]) -> str:
    name, text = changed_in(card, state)
    if not name:
        return "The example"
    item, *place = name.split(".")
    found = card.item(item)
    each = (
        found
        if isinstance(found, Input)
        else next(field for field in found.fields if field.name == place[1])
    )
    where = f"{found.one} {place[0]}, " if isinstance(found, Rows) else ""
    label = next(option.label for option in each.options if option.value == text)
    return f"{where}{each.label}: {label}"


def _parts(card: Card, state: dict[str, str], settings: Settings) -> dict[str, list[str]]:
    """What is shown in one state, by the heading it stands under; the sentence under none."""
    try:
        worked = work_card(card, state, settings)
    except BadInputs as error:
        return {"": [problem.text for problem in error.problems]}
    parts = {
        "": [
            f"**{sentence}**" if not number else sentence
            for number, sentence in enumerate(worked.sentences())
        ]
    }
    parts["Cautions"] = [f"- {caution.title} {caution.text}" for caution in worked.cautions()]
    parts["Notes"] = [f"- {note}" for note in worked.notes()]
    parts["Numbers"] = [
        f"- {found.result.label}: {_number(worked, name)}"
        for name, found in worked.outcome.found.items()
    ]
    for table in worked.tables():
        parts[f"Table: {table.title}"] = _table(table)
    parts["Pictures"] = [
        f"- {picture.title}: {picture.alt} ({_mark(picture.svg)})" for picture in worked.pictures()
    ]
    for paper in card.papers:
        parts[f"Paper: {paper.title}"] = (
            _labels(worked, paper) if isinstance(paper, Labels) else _paper(worked, paper)
        )
    parts["Goes on"] = _onward(worked)
    return {
        title: [line.replace("\u00a0", " ").replace("\u202f", " ") for line in part]
        for title, part in parts.items()
        if part
    }


def _mark(drawing: str) -> str:
    """A few letters that change with any line of a drawing."""
    return hashlib.sha256(drawing.encode()).hexdigest()[:6]


def _number(worked: Worked, name: str) -> str:
    span = worked.outcome.span(name)
    return worked.outcome.both(name) + (f" ({span})" if span else "")


def _table(table) -> list[str]:
    def row(cells) -> str:
        return "| " + " | ".join(str(cell).replace("|", "/") for cell in cells) + " |"

    lines = [
        row(table.columns),
        row("-" for _ in table.columns),
        *(row(cells) for cells in table.rows),
    ]
    return lines + (["", table.note] if table.note else [])


def _paper(worked: Worked, paper) -> list[str]:
    try:
        tables = paper.tables(worked.outcome)
    except BadInputs as error:
        return [problem.text for problem in error.problems]
    return [line for table in tables for line in (f"*{table.title}*", "", *_table(table), "")][:-1]


def _labels(worked: Worked, paper: Labels) -> list[str]:
    try:
        sheets = paper.sheets(worked.outcome)
    except BadInputs as error:
        return [problem.text for problem in error.problems]
    return [
        f"- {copies} × {laid.label.width:g} × {laid.label.height:g} mm: "
        + " / ".join(line.words for line in laid.lines)
        + f" ({_mark(str(drawn(laid)))})"
        for laid, copies in sheets.labels
    ]


def _onward(worked: Worked) -> list[str]:
    lines = []
    for carry in worked.card.carry:
        for words, texts, _ in ways_on(worked, carry):
            lines.append(
                f"- {words} ({carry.card}): "
                + (", ".join(f"{name} = {text}" for name, text in texts.items()) or "nothing")
            )
    return lines


def accept(ids: list[str]) -> None:
    """Write the answers of these cards anew, or of every card; what belongs to no card goes."""
    files = {file_of(card): card for card in BOOK}
    for path, card in files.items():
        if not ids or card.id in ids:
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(written(card), encoding="utf-8")
    for path in FOLDER.rglob("*.md"):
        if path not in files:
            path.unlink()


if __name__ == "__main__":
    accept(sys.argv[1:])
