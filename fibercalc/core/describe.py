"""A card's declaration as plain data, for `fibercalc show` and whoever builds on it."""

from typing import Any

from .card import Card, Input, Result, RowPart, Rows
from .carry import Constant, Source


def declaration(card: Card) -> dict[str, Any]:
    """Everything declared about a card, without its functions."""
    return {
        "id": card.id,
        "chapter": card.chapter,
        "question": card.question,
        "inputs": [_rows(item) if isinstance(item, Rows) else _input(item) for item in card.inputs],
        "results": [_result(result) for result in card.results],
        "basis": {"kind": card.basis.kind, "text": card.basis.text},
        "sources": [
            {
                "id": s.id,
                "body": s.body,
                "title": s.title,
                "year": s.year,
                "how": s.how,
                "read": s.read,
                "address": s.address,
            }
            for s in card.sources
        ],
        "cautions": [f"{caution.title} {caution.text}" for caution in card.cautions],
        "carry": [
            {
                "card": carry.card,
                "words": carry.words,
                "inputs": {name: _referred(found) for name, found in carry.inputs.items()},
            }
            for carry in card.carry
        ],
        "link_version": card.link_version,
        "handles": list(card.handles),
    }


def _referred(found: Source) -> str:
    """What goes on, by its name; a row's as "dyes.#.name"."""
    if callable(found) or isinstance(found, Constant):
        return "worked out"
    if isinstance(found, RowPart):
        return f"{found.rows.name}.{found.row or '#'}.{found.part.name}"
    return found.name


def _input(each: Input[Any]) -> dict[str, Any]:
    data: dict[str, Any] = {
        "name": each.name,
        "kind": each.kind,
        "label": each.label,
        "default": each.default,
        "measure": each.measure,
        "optional": each.optional,
    }
    if each.measured:
        data |= {
            "quantity": each.quantity.name,
            "units": [unit.sign for unit in each.choices],
            "strict": each.strict,
        }
    if each.allowed:
        data["allowed"] = list(each.allowed)
    if each.usual:
        data["usual"] = list(each.usual)
    if each.rough:
        data |= {"rough": each.rough, "instrument": each.instrument}
    if each.options:
        data["options"] = [
            {"value": option.value, "label": option.label} for option in each.options
        ]
    if each.lends and each.default:
        data["lent"] = True
    if each.today:
        data["today"] = True
    if each.when:
        data["when"] = _when(each)
    return data


def _rows(item: Rows[Any]) -> dict[str, Any]:
    return {
        "name": item.name,
        "kind": "rows",
        "label": item.label,
        "one": item.one,
        "least": item.least,
        "most": item.most,
        "fields": [_input(each) for each in item.fields],
        "default": [dict(row) for row in item.default],
        "when": _when(item),
    }


def _when(item: Input[Any] | Rows[Any]) -> dict[str, list[Any]]:
    return {other.name: list(values) for other, values in item.when.items()}


def _result(result: Result[Any]) -> dict[str, Any]:
    data: dict[str, Any] = {
        "name": result.name,
        "label": result.label,
        "rounding": result.rounding,
        "error": result.error,
    }
    if not isinstance(result.of, str):
        data |= {
            "quantity": result.of.name,
            "units": [unit.sign for unit in result.shown],
            "finest": list(result.finest),
        }
    return data
