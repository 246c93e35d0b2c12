"""Charts of published limits: air, labels, burns, drains and mordants."""

from ...core.answer import Table
from ...core.marks import marked, meaning
from ...core.table import read_table, status_of
from ..label import acute_from, listed

CLASSES = ("corr_a", "corr", "irrit", "dam", "eye", "airway")


def air_limits() -> list[Table]:
    """Limits in air of three bodies, ppm.

    Source: osha-1910-1000, niosh-limits, uk-eh40 (UK from memory), cal-ac1.
    """
    table = read_table("safe", "exposure-limits")
    columns = ("osha", "niosh", "uk", "niosh_short", "uk_short", "ceiling", "idlh")
    rows = tuple(
        (row["label"], *(marked(row[name], status_of(row, name)) for name in columns))
        for row in table.rows
    )
    return [
        Table(
            f"{table.title}, ppm",
            (
                "Vapor",
                "OSHA 8 h",
                "NIOSH",
                "UK 8 h",
                "NIOSH 15 min",
                "UK 15 min",
                "Ceiling",
                "IDLH",
            ),
            rows,
            f"{table.note} IDLH: immediately dangerous to life or health. Citric and tartaric acid"
            f" give no vapor to speak of. {meaning('read', 'secondary', 'memory')}",
            ("osha-1910-1000", "niosh-limits", "uk-eh40", "cal-ac1"),
        )
    ]


def label_limits() -> list[Table]:
    """From which strength a substance counts on a label.

    Source: clp-annexes, clp-memory, clp-acute, clp-sensitizers and others named in the table.
    """
    table = read_table("safe", "label-limits")
    rows = tuple(
        (
            row["label"],
            *(marked(row[name], row["status"]) for name in CLASSES),
            _other_statements(row["key"]),
        )
        for row in table.rows
        if row["status"] not in ("practice", "unknown")
    )
    return [
        Table(
            "From which strength a label needs it, % by weight",
            (
                "Substance",
                "Burns, 1A",
                "Burns",
                "Skin",
                "Eye damage",
                "Eyes",
                "Airway",
                "Others, from",
            ),
            rows,
            "Others: with the strength from which each holds, or “ask” where the data sheet"
            f" decides. {table.note} {meaning('read', 'secondary', 'memory')}",
            (
                "clp-annexes",
                "clp-memory",
                "clp-acute",
                "clp-sensitizers",
                "euro-industry-naoh",
                "echa-notified",
                "echa-formic",
                "gischem-ammonia",
            ),
        )
    ]


def _other_statements(key: str) -> str:
    """Statements beside those of skin, eyes and airway, each with the strength it holds from, or
    "ask".
    """
    limits = acute_from(key) | dict(listed(key))
    return ", ".join(f"{code} {_from(code, limit)}" for code, limit in limits.items()) or "–"


def _from(code: str, limit: float | None) -> str:
    if limit is None:
        return "ask"
    return marked(f"{limit:.3g}", "memory" if code == "EUH208" else "read")


def burn_times() -> list[Table]:
    """Published times to a deep burn.

    Source: cpsc-tap-water, childrens-alabama, burn-foundation, moritz-henriques.
    """
    table = read_table("safe", "burn-times")
    rows = tuple(
        (
            f"{row['celsius']:.0f} °C",
            f"{row['fahrenheit']:g} °F",
            marked(f"{row['under']} {_time(row['seconds'])}".strip(), row["status"]),
        )
        for row in table.rows
    )
    return [
        Table(
            table.title,
            ("Water", "", "Contact"),
            tuple((a, b or "–", c) for a, b, c in rows),
            f"{table.note} {meaning('read', 'secondary')}",
            (
                "cpsc-tap-water",
                "childrens-alabama",
                "burn-foundation",
                "moritz-henriques",
                "scald-children",
            ),
        )
    ]


def _time(seconds: float) -> str:
    return (
        f"{seconds / 3600:g} h"
        if seconds >= 3600
        else f"{seconds / 60:g} min"
        if seconds >= 60
        else f"{seconds:g} s"
    )


def drain_limits() -> list[Table]:
    """Limits for waste water, as examples.

    Source: cfr-40-403-5, local-limits-us, uk-trade-effluent.
    """
    table = read_table("safe", "drain-limits")
    columns = ("ph_low", "ph_high", "celsius", "copper", "chromium", "iron")
    rows = tuple(
        (row["label"], *(marked(row[name], row["status"]) for name in columns))
        for row in table.rows
    )
    return [
        Table(
            "What may go down the drain: limits that were read",
            ("Where", "pH from", "to", "°C", "Copper mg/L", "Chromium mg/L", "Iron mg/L"),
            rows,
            f"{table.note} {meaning('read', 'secondary')}",
            ("cfr-40-403-5", "local-limits-us", "uk-trade-effluent"),
        )
    ]


def mordant_marks() -> list[Table]:
    """Mordants with published ranges and upper marks.

    Source: trade-page-mordants, trade-pages-iron, web-guide-mordants.
    """
    table = read_table("safe", "mordants")
    rows = tuple(
        (
            row["label"],
            f"{row['low']:g} to {row['high']:g}",
            marked(row["mark"], row["status"]),
            marked(row["metal"], row["metal_status"]),
            row["why"].partition(" (")[0].partition(";")[0],
        )
        for row in table.rows
    )
    return [
        Table(
            "Mordants, % of the dry fiber",
            ("Mordant", "Published", "Upper mark", "Metal in it, %", "Above the mark"),
            rows,
            f"{table.note} {meaning('read', 'secondary', 'computed')}",
            ("trade-page-mordants", "trade-pages-iron", "web-guide-mordants", "mairet-1916"),
        )
    ]
