"""The gentlest level of each treatment that fibers, dye, finish and what was tried allow."""

from __future__ import annotations

from collections.abc import Mapping

from ....core.shares import shares_of
from ....core.steps import looked_up
from ....core.table import read_table
from ...care import TREATMENTS, care_words, strictest
from .asked import LABELS, NO, TABLES, CareLabel, Fiber

LABEL_OFF_BY = 0.5  # %: mills round each share to a whole percent
TRIED_DRYER = "tumble"
APART = {
    "unknown": "Wash separately.",
    "stains": "Wash separately.",
    "slight": "Wash with like colors.",
    "undyed": "",
}
LEVELS = {
    "wash": CareLabel.washing_levels,
    "bleach": CareLabel.bleaching_levels,
    "tumble": CareLabel.tumbling_levels,
    "dry": CareLabel.drying_levels,
    "iron": CareLabel.ironing_levels,
    "clean": CareLabel.cleaning_levels,
}


def answer(case: CareLabel) -> None:
    shares = shares_of(case, CareLabel.fibers, Fiber.percent, LABEL_OFF_BY)
    if all(row.percent is not None for row in case.fibers):
        case.whole = sum(shares)
    for row, share in zip(case.fibers, shares):
        row.share = share
    case.content = _content(case.fibers)
    case.reasons = {treatment: _held_by(case, treatment) for treatment in TREATMENTS}
    levels = {treatment: case.gentlest[LABELS[treatment]] for treatment in TREATMENTS}
    case.wash = _word("wash", levels)
    case.bleach = _word("bleach", levels)
    case.tumble = _word("tumble", levels)
    case.dry = _word("dry", levels)
    case.iron = _word("iron", levels)
    case.clean = _word("clean", levels)
    spoken = (*care_words(_shown(levels)), APART[case.stains])
    case.label = " ".join(words for words in spoken if words)


def _held_by(case: CareLabel, treatment: str) -> str:
    """Find the gentlest level of a treatment; which parts of the piece hold it there."""
    levels: dict[str, float] = getattr(case, LEVELS[treatment].name)
    for table, key in _parts(case):
        row = read_table("wash", table).row("key", key)
        if isinstance(row.get(treatment), float):
            levels[row["label"]] = looked_up("wash", table, "key", key, treatment)
    if treatment == TRIED_DRYER and case.tumbled == NO:
        levels["no sample was tumbled"] = 0.0
    gentlest = case.gentlest[LABELS[treatment]] = strictest(list(levels.values()))
    return "; ".join(label for label, level in levels.items() if level == gentlest)


def _parts(case: CareLabel) -> list[tuple[str, str]]:
    """Table and row of all that has a say, each once."""
    parts = [(TABLES["fiber"], row.fiber) for row in case.fibers]
    parts += [(TABLES[kind], getattr(case, kind)) for kind in ("dye", "finish", "proof")]
    return list(dict.fromkeys(parts))


def _shown(levels: Mapping[str, float]) -> dict[str, float]:
    """A dryer that is allowed leaves the way of drying to the owner; else both are told."""
    return {
        name: level
        for name, level in levels.items()
        if not (name == "dry" and levels["tumble"] > 0)
    }


def _word(treatment: str, levels: Mapping[str, float]) -> str:
    key = f"{treatment} {levels[treatment]:g}"
    words: str = read_table("wash", "care-words").row("key", key)["words"]
    return words.rstrip(".")


def _content(fibers: list[Fiber]) -> str:
    ordered = sorted(fibers, key=lambda row: -row.share)
    return ", ".join(f"{row.share:g} % {_fiber(row.fiber)}" for row in ordered)


def _fiber(key: str) -> str:
    label: str = read_table("wash", TABLES["fiber"]).row("key", key)["label"]
    return label.lower()
