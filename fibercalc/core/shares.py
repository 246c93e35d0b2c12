"""Shares that must make 100 %, of which one may be left blank: it is the rest."""

from collections.abc import Sequence
from typing import Any

from .asked import Input, Rows
from .case import Case
from .problem import Refused
from .units import PERCENT
from .working import Working


def whole_shares(
    w: Working, rows: Sequence[Any], name: str, field: str, one: str, off_by: float
) -> list[float]:
    """The share of each row, %, as steps of the working; the one that was left blank is named "rest" there.

    rows    of a card's list;  name  the list's name;  field  the name of the share in a row, None where it was left blank
    one     what a row is called ("fiber");  off_by  how far from 100 shares without a blank may be, %
    Raises Refused for two blanks, for nothing left over, and for shares that do not make 100.
    """
    label = f"{one.capitalize()}s"
    amounts = [getattr(row, field) for row in rows]
    blank = [number for number, amount in enumerate(amounts, 1) if amount is None]
    given = [
        f"{name}[{number}].{field}"
        for number, amount in enumerate(amounts, 1)
        if amount is not None
    ]
    total = sum(amount for amount in amounts if amount is not None)
    if len(blank) > 1:
        raise Refused(
            f"{label}: leave the share of one of them blank at most; it is the rest.",
            f"{name}.{blank[1]}.{field}",
        )
    if blank and total >= 100:
        raise Refused(
            f"{label}: the shares given come to {total:g} %; nothing is left for {one} {blank[0]}.",
            f"{name}.{blank[0]}.{field}",
        )
    if not blank and abs(total - 100) > off_by:
        raise Refused(
            f"{label}: they come to {total:g} %; they must come to 100 %, or leave one blank.",
            f"{name}.1.{field}",
        )
    if blank:
        rest = w.step(
            "rest",
            " - ".join(["100", *given]),
            100 - total,
            PERCENT,
            label=f"Share of {one} {blank[0]}",
        )
        return [rest if amount is None else amount for amount in amounts]
    w.step("total", " + ".join(given), total, PERCENT, label=f"All {one}s")
    return amounts


def shares_of(
    case: Case, rows: Rows[Any], given: Input[float | None], off_by: float
) -> list[float]:
    """The share of each row of a list, %; one that was left blank is what the others leave of 100.

    given  the share in a row, which may be left blank;  off_by  how far from 100 shares without a
           blank may be, %
    Raises Refused for two blanks, for nothing left over, and for shares that do not make 100.
    """
    amounts = [row.maybe(given) for row in getattr(case, rows.name)]
    blank = [number for number, amount in enumerate(amounts, 1) if amount is None]
    together = sum(amount for amount in amounts if amount is not None)
    refusal, number = "", blank[-1] if blank else 1
    if len(blank) > 1:
        refusal, number = "leave the share of one of them blank at most; it is the rest", blank[1]
    elif blank and together >= 100:
        refusal = (
            f"the shares given come to {together:g} %; nothing is left for {rows.one} {blank[0]}"
        )
    elif not blank and abs(together - 100) > off_by:
        refusal = f"they come to {together:g} %; they must come to 100 %, or leave one blank"
    if refusal:
        raise Refused(f"{rows.one.capitalize()}s: {refusal}.", f"{rows.name}.{number}.{given.name}")
    return [100 - together if amount is None else amount for amount in amounts]
