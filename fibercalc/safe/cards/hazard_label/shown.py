"""The table of statements for a label, and how near each limit is."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.table import read_table
from ...pictures.bars import shares_of_limit
from .asked import HazardLabel
from .worked import precautions

SHARES = (
    (HazardLabel.burns, "Severe burns"),
    (HazardLabel.skin, "Skin irritation"),
    (HazardLabel.damage, "Eye damage"),
    (HazardLabel.eyes, "Eye irritation"),
)


def statements(out: Outcome[HazardLabel]) -> Table | None:
    sure, asked = out.case.sure, out.case.asked
    table = read_table("safe", "statements")
    rows = [
        (code, table.row("code", code)["text"], sure.get(code, "ask the data sheet"))
        for code in (*sure, *asked)
    ]
    rows += [
        (code, table.row("code", code)["text"], "what to do")
        for code in precautions((*sure, *asked))
    ]
    if not rows:
        return None
    return Table(
        "For the label",
        ("Code", "In words", "Why"),
        tuple(rows),
        "Wording from memory, shortened: the law’s own stands in the data sheet. Code and text"
        " only; no pictograms.",
        ("ghs-memory",),
    )


def picture(out: Outcome[HazardLabel]) -> Picture:
    return shares_of_limit(
        "How near each limit",
        [(label, out.value(share), out.low(share), out.high(share)) for share, label in SHARES],
        "the class applies from here",
    )
