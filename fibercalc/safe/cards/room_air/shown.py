"""The limits of the vapors in a room, and its air beside them."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.table import read_table
from ...exposure import stricter
from ...pictures.bars import shares_of_limit
from .asked import LIMITS, POWDER, RoomAir

BARS = (
    (RoomAir.index, "Over the day"),
    (RoomAir.short, "Worst quarter of an hour"),
    (RoomAir.ceiling, "Highest, of the ceiling"),
    (RoomAir.idlh, "Highest, of IDLH"),
)
COLUMNS = ("osha", "niosh", "uk", "niosh_short", "uk_short", "ceiling", "idlh")


def table(out: Outcome[RoomAir]) -> Table | None:
    if out.case.what == POWDER:
        return None
    rows = []
    for vapor in dict.fromkeys(spell.vapor for spell in out.case.times):
        row = read_table("safe", LIMITS).row("key", vapor)
        cells = [f"{row[name]:g}" if row[name] != "" else "–" for name in COLUMNS]
        rows.append((row["label"], *cells, f"{stricter(vapor):g}"))
    return Table(
        "Published limits, ppm",
        (
            "Vapor",
            "OSHA 8 h",
            "NIOSH",
            "UK 8 h",
            "NIOSH 15 min",
            "UK 15 min",
            "Ceiling",
            "IDLH",
            "Stricter, 8 h",
        ),
        tuple(rows),
        "OSHA: 29 CFR 1910.1000, read 2026-11. NIOSH: acetic and formic acid read, ammonia in a"
        " page that quotes it. UK: from memory, unverified. Ceiling: California. IDLH: immediately"
        " dangerous to life or health.",
        ("osha-1910-1000", "niosh-limits", "uk-eh40", "cal-ac1"),
    )


def picture(out: Outcome[RoomAir]) -> Picture | None:
    if out.case.what == POWDER:
        return None
    rows = [
        (words, out.value(share) / 100, out.low(share) / 100, out.high(share) / 100)
        for share, words in BARS
        if out.has(share)
    ]
    return shares_of_limit("Against the published limits", rows, "the limit")
