"""The published JSON Schema of the workbook's file, made from the kinds' declarations."""

from typing import Any

from ..core.card import CHOICE, DATE, Input, Rows
from .exchange import FORMAT
from .kind import Kind
from .kinds import KINDS
from .records import ID, LONGEST_TEXT, MOMENT, MOST_PAST, REV, SCHEMA

NUMBER = r"-?[0-9]+(\.[0-9]+)?(e[+-]?[0-9]+)?"
ANY_TEXT = {"type": "string", "maxLength": LONGEST_TEXT}


def file_schema(address: str = "") -> dict[str, Any]:
    """The schema of a whole file. address: where it is published."""
    return ({"$id": address} if address else {}) | {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "Workbook of the bench book",
        "description": (
            "Values are texts: a number with its unit and, after ~, half the width of its spread"
            " (100~2g); a record is named by its id."
        ),
        "type": "object",
        "required": ["format", "schema", "made", "records"],
        "additionalProperties": False,
        "properties": {
            "format": {"const": FORMAT},
            "schema": {"const": SCHEMA},
            "made": {
                "type": "string",
                "pattern": r"^[0-9]{4}-[0-9]{2}-[0-9]{2}$",
                "description": "Day of the export",
            },
            "records": {
                "type": "array",
                "items": {"oneOf": [{"$ref": f"#/$defs/{kind}"} for kind in KINDS]},
            },
            "bench": {"type": "object", "description": "My bench: units, instruments, water, pots"},
            "unread": {
                "type": "array",
                "description": (
                    "Records that were not read when the file was written (of a newer version, or"
                    " saved without the calculator), as they were found"
                ),
            },
        },
        "$defs": {kind.id: _record(kind) for kind in KINDS.values()},
    }


def _record(kind: Kind) -> dict[str, Any]:
    parts = {
        "id": {"type": "string", "pattern": f"^{ID.pattern}$"},
        "kind": {"const": kind.id},
        "schema": {"const": SCHEMA},
        "rev": {
            "type": "string",
            "pattern": f"^{REV.pattern}$",
            "description": "Changes with every save",
        },
        "past": {
            "type": "array",
            "maxItems": MOST_PAST,
            "items": {"type": "string", "pattern": f"^{REV.pattern}$"},
            "description": "The revisions before, newest first",
        },
        "changed": {"type": "string", "pattern": f"^{MOMENT.pattern}$"},
        "values": _values(kind),
        "rows": _counts(kind),
    }
    return {
        "type": "object",
        "title": kind.one,
        "description": kind.about,
        "required": list(parts),
        "properties": parts,
        "additionalProperties": False,
    }


def _values(kind: Kind) -> dict[str, Any]:
    values: dict[str, Any] = {}
    patterns: dict[str, Any] = {}
    for item in kind.fields:
        if isinstance(item, Rows):
            patterns |= {
                f"^{item.name}\\.[1-9][0-9]*\\.{each.name}$": _value(
                    each, f"{item.name}.{each.name}" in kind.refers
                )
                for each in item.fields
            }
        else:
            values[item.name] = _value(item, item.name in kind.refers)
    return {
        "type": "object",
        "required": [kind.title],
        "properties": values,
        "patternProperties": patterns,
        "additionalProperties": False,
    }


def _counts(kind: Kind) -> dict[str, Any]:
    return {
        "type": "object",
        "properties": {
            item.name: {
                "type": "integer",
                "minimum": 1,
                "maximum": item.most,
                "description": item.label,
            }
            for item in kind.fields
            if isinstance(item, Rows)
        },
        "additionalProperties": False,
        "description": "How many rows each list has",
    }


def _value(each: Input[Any], refers: bool) -> dict[str, Any]:
    about = {"type": "string", "description": each.label}
    if refers:
        return about | {"pattern": f"^{ID.pattern}$"}
    if each.kind == CHOICE:
        return about | {"enum": [option.value for option in each.options if option.value]}
    if each.kind == DATE:
        return about | {"pattern": r"^[0-9]{4}-[0-9]{2}-[0-9]{2}$"}
    if each.measured:
        signs = "|".join(_escaped(unit.sign.replace(" ", "")) for unit in each.quantity.units)
        return about | {"pattern": f"^{NUMBER}(~{NUMBER})?({signs})$"}
    return about | ({"maxLength": each.longest} if each.kind == "text" else ANY_TEXT)


def _escaped(text: str) -> str:
    return "".join(f"\\{c}" if c in ".^$*+?()[]{}|\\/" else c for c in text)
