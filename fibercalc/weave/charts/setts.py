"""Chart of setts by yarn and weave: what Ashenhurst's rule gives, for cotton and for worsted wool."""

from ...core.answer import Table
from ...core.marks import MARKS, meaning
from ...core.number import write_number
from ...core.table import read_table
from ...yarn.count import count_from_tex, tex_from_count
from ...yarn.diameter import ashenhurst_constants, ashenhurst_diameters_per_inch
from ..setting import interlacings, maximum_sett, working_sett

# Meters in 100 g with a name, or a cotton count: number of the single over plies, and the hanks in a pound that it is once plied.
COTTONS = (
    (130, "thick"),
    (170, "loom cotton of the examples"),
    (200, "medium"),
    ("3/2", 1.5),
    ("8/4", 2),
    ("5/2", 2.5),
    ("8/2", 4),
    ("10/2", 5),
    ("16/2", 8),
    ("20/2", 10),
    ("30/2", 15),
)
WOOLS = (
    (100, "bulky"),
    (150, "aran"),
    (200, "worsted"),
    (230, "DK of the examples"),
    (300, "sport"),
    (420, "sock yarn of the examples"),
    (600, "lace"),
    (800, "fine lace"),
)


def setts() -> list[Table]:
    """Working setts for plain weave and 2/2 twill, and the closest plain weave, by yarn.

    Source: Ashenhurst (ashenhurst, trade-pages-sett); shares for a use from memory (trade-memory).
    """
    shares = ", ".join(
        f"{row['label'].lower()} {row['low']:g} to {row['high']:g} %"
        for row in read_table("weave", "sett-uses").rows
        if row["key"] in ("scarf", "cloth")
    )
    return [
        _table(
            "Cotton and linen",
            "cotton",
            COTTONS,
            meaning("secondary", "memory"),
            ("ashenhurst", "trade-memory"),
        ),
        _table(
            "Worsted wool",
            "worsted",
            WOOLS,
            f"Middle of the shares of the closest sett: {shares}. Computed here; the same yarn both"
            " ways. " + meaning("secondary", "memory"),
            ("trade-pages-sett",),
        ),
    ]


def _table(title: str, kind: str, yarns, note: str, sources: tuple[str, ...]) -> Table:
    constant = ashenhurst_constants().row("name", kind)["constant"]
    rows = []
    for name, more in yarns:
        tex = (
            tex_from_count(more, "Ne") if isinstance(name, str) else tex_from_count(name, "m/100 g")
        )
        yards = count_from_tex(tex, "yd/lb")
        diameters = ashenhurst_diameters_per_inch(yards, constant)
        plain, twill = (
            maximum_sett(
                diameters,
                interlacings().row("key", weave)["ends"],
                interlacings().row("key", weave)["crossings"],
            )
            for weave in ("plain", "twill-2-2")
        )
        rows.append(
            (
                name if isinstance(name, str) else more,
                write_number(count_from_tex(tex, "m/100 g"), 0),
                write_number(yards, 0),
                _both(plain, "scarf"),
                _both(plain, "cloth"),
                _both(twill, "cloth"),
                f"{plain:.1f} · {plain / 2.54:.1f}",
            )
        )
    return Table(
        f"{title}: ends per in · per cm",
        (
            "Yarn",
            "m/100 g",
            "yd/lb",
            "Plain, scarf" + MARKS["memory"],
            "Plain, towel" + MARKS["memory"],
            "2/2 twill, towel" + MARKS["memory"],
            "Closest plain" + MARKS["secondary"],
        ),
        tuple(rows),
        f"K {constant:g}. {note}",
        sources,
    )


def _both(closest: float, use: str) -> str:
    row = read_table("weave", "sett-uses").row("key", use)
    sett = working_sett(closest, (row["low"] + row["high"]) / 2)
    return f"{sett:.1f} · {sett / 2.54:.1f}"
