"""The working as it is shown: each step in words, with the numbers filled in, and what it gives."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from .amount import with_sign
from .number import write_plain
from .paper_arithmetic import write
from .settings import Settings
from .steps import Look, Step
from .table import STATUS_WORDS, read_table, status_of
from .traced import Leaf
from .units import MONEY, Unit

MINUS = "−"


def written(steps: Sequence[Step], settings: Settings) -> list[dict[str, Any]]:
    """The steps as plain data: label, formula in words, formula with the numbers filled in, value
    with its unit.
    """

    def filled(leaf: Leaf) -> str:
        return _amount(leaf.value, leaf.unit, settings)

    def row(step: Step) -> dict[str, Any]:
        digits = 8 if step.part.of is MONEY else 6
        shown = {
            "kind": step.kind,
            "name": step.part.name,
            "label": step.label,
            "value": float(step.leaf.value),
            "unit": step.leaf.unit.sign,
            "text": with_sign(_number(step.leaf.value, settings, digits), step.leaf.unit),
        }
        if step.look is not None:
            return shown | _from_table(step.look)
        if step.kind == "searched":
            sides = [
                [
                    f"{write(each.left, to)} {each.sign} {write(each.right, to)}"
                    for each in step.kept
                ]
                for to in (_words, filled)
            ]
            bound = f"nothing beats {write(step.tree, _words)} = {write(step.tree, filled)}"
            return shown | {
                "formula": "; ".join(sides[0]),
                "filled": "; ".join(sides[1]),
                "bound": bound,
            }
        zero = " = 0" if step.kind == "solved" else ""
        return shown | {
            "formula": write(step.tree, _words) + zero,
            "filled": write(step.tree, filled) + zero,
        }

    return [row(step) for step in steps]


def _words(leaf: Leaf) -> str:
    return leaf.words


def _number(value: float, settings: Settings, digits: int) -> str:
    return write_plain(value, settings.style, digits).replace("-", MINUS)


def _amount(value: float, unit: Unit, settings: Settings) -> str:
    """A value inside a formula: "3 ÷ 100" reads as a worker writes it, "3 % ÷ 100" would not."""
    number = _number(value, settings, 6)
    return number if unit.sign == "%" else with_sign(number, unit)


def _from_table(look: Look) -> dict[str, str | float]:
    chapter, table, key_column, key, column = look
    found = read_table(chapter, table)
    row = found.row(key_column, key)
    status = STATUS_WORDS.get(status_of(row, column), "")
    return {
        "formula": f"from the table “{found.title}”",
        "filled": f"row {row.get('label') or key}; {status}".rstrip("; "),
        "source": row.get("source") or found.source,
        "table": table,
        "row": key,
    }
