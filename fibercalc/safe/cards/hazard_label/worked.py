"""The shares of limits and the statements that follow from what is in a bottle."""

from __future__ import annotations

from collections.abc import Sequence

from ....core.card import Between
from ....core.problem import Refused
from ....core.steps import looked_up
from ....core.table import read_table
from ...label import (
    ASKED,
    RELEVANT,
    classes,
    estimate_of_mixture,
    listed,
    signal_word,
    sum_of_shares,
    to_ask,
)
from ...limits import published
from .asked import HazardLabel, Substance


def answer(case: HazardLabel) -> None:
    case.together = sum(row.strength for row in case.contents)
    if case.together > 100.0001:
        raise Refused(
            f"Strengths: together they are {case.together:.4g} %; a bottle holds no more than"
            " 100 %.",
            HazardLabel.contents.each(Substance.strength, row=len(case.contents)),
        )
    case.burns = _share(case.contents, "corr", Substance.burns_limit)
    case.skin = _share(case.contents, "irrit", Substance.skin_limit)
    case.damage = _share(case.contents, "dam", Substance.damage_limit)
    case.eyes = _share(case.contents, "eye", Substance.eyes_limit)
    mixed = _mixed(case)
    relevant = [row for row in case.contents if mixed[row.what] >= RELEVANT]
    if found := _looked_up(relevant, "oral", Substance.oral_estimate):
        case.oral_estimate = estimate_of_mixture(*found)
    if found := _looked_up(relevant, "vapor", Substance.vapor_estimate):
        case.vapor_estimate = estimate_of_mixture(*found)
    _name_statements(case, mixed)


def _mixed(case: HazardLabel) -> dict[str, float]:
    """Strength by substance: one that is named twice counts as both."""
    mixed: dict[str, float] = {}
    for row in case.contents:
        mixed[row.what] = mixed.get(row.what, 0.0) + row.strength
    return mixed


def _looked_up(
    rows: Sequence[Substance], column: str, part: Between[float]
) -> tuple[list[float], list[float]] | None:
    """Strengths of the substances that have a figure in the table, and the figures, if any have."""
    table = read_table("safe", "label-limits")
    known = [row for row in rows if table.row("key", row.what)[column] != ""]
    for row in known:
        setattr(row, part.name, looked_up("safe", "label-limits", "key", row.what, column))
    if not known:
        return None
    return [row.strength for row in known], [getattr(row, part.name) for row in known]


def _share(rows: Sequence[Substance], column: str, part: Between[float]) -> float:
    found = _looked_up(rows, column, part)
    return sum_of_shares(*found) if found else 0.0


def _name_statements(case: HazardLabel, mixed: dict[str, float]) -> None:
    sure = classes(mixed, 7.0 if case.ph is None else case.ph)
    asked = tuple(code for code in to_ask(mixed) if code not in sure)
    case.sure, case.asked = sure, asked
    case.missing = [
        row["label"]
        for key in mixed
        if (row := read_table("safe", "label-limits").row("key", key))["status"] == "unknown"
    ]
    case.signal = signal_word((*sure, *asked))
    case.codes = ", ".join(sure) or "none by these limits"
    case.classes = ", ".join(dict.fromkeys(sure.values())) or "none by these limits"
    case.ask = ", ".join(asked) or "nothing beyond them"
    case.precautions = ", ".join(precautions((*sure, *asked))) or "none by these limits"
    case.limit = "; ".join(_limit_words(key) for key in mixed)


def precautions(codes: Sequence[str]) -> dict[str, None]:
    """What to do, by its codes: each once, in the order of the statements that call for it."""
    table = read_table("safe", "statements")
    return dict.fromkeys(
        code for statement in codes for code in table.row("code", statement)["precautions"].split()
    )


def _limit_words(key: str) -> str:
    """One substance's limits with body and date; what has none counts from the general cut-off."""
    row = read_table("safe", "label-limits").row("key", key)
    known = [
        f"{words} {row[kind]:g} %"
        for kind, words in (("corr", "burns"), ("irrit", "skin"), ("eye", "eyes"))
        if row[kind] != ""
    ]
    others = [
        f"{code} {limit:g} %"
        for code, limit in listed(key)
        if limit is not None and code != "EUH208"
    ]  # EUH208 is from memory: see the notes
    known = known or others
    said = published(
        (
            f"{row['label']} from: {', '.join(known)}"
            if known
            else f"{row['label']}: counts from {ASKED:g} %"
        ),
        row["source"] or "clp-annexes",
    )
    if row["also_source"]:
        acute = (
            [f"acute toxicity {row['oral']:g} mg/kg swallowed, {row['vapor']:g} mg/L inhaled"]
            if row["oral"] != ""
            else []
        )
        said += "; " + published(", ".join(acute + others), row["also_source"])
    return said
