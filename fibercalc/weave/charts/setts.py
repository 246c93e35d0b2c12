"""Chart of setts by yarn and weave: what Ashenhurst's rule gives, for cotton and for worsted
wool.
"""

from collections.abc import Sequence

from ...core.answer import Table
from ...core.marks import MARKS, meaning
from ...core.number import write_number
from ...core.table import read_table
from ...yarn.count import count_from_tex, tex_from_count
from ...yarn.diameter import ashenhurst_constants, ashenhurst_diameters_per_inch
from ..setting import interlacings, maximum_sett, working_sett

# A yarn's name, its number and in what system. A cotton count is called by the number of the single
# over the plies, and counts the hanks in a pound that it is once plied.
COTTONS = (
    ("thick", 130, "m/100 g"),
    ("loom cotton of the examples", 170, "m/100 g"),
    ("medium", 200, "m/100 g"),
    ("3/2", 1.5, "Ne"),
    ("8/4", 2, "Ne"),
    ("5/2", 2.5, "Ne"),
    ("8/2", 4, "Ne"),
    ("10/2", 5, "Ne"),
    ("16/2", 8, "Ne"),
    ("20/2", 10, "Ne"),
    ("30/2", 15, "Ne"),
)
WOOLS = (
    ("bulky", 100, "m/100 g"),
    ("aran", 150, "m/100 g"),
    ("worsted", 200, "m/100 g"),
    ("DK of the examples", 230, "m/100 g"),
    ("sport", 300, "m/100 g"),
    ("sock yarn of the examples", 420, "m/100 g"),
    ("lace", 600, "m/100 g"),
    ("fine lace", 800, "m/100 g"),
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


def _table(
    title: str,
    kind: str,
    yarns: Sequence[tuple[str, float, str]],
    note: str,
    sources: tuple[str, ...],
) -> Table:
    constant = ashenhurst_constants().row("name", kind)["constant"]
    rows = []
    for name, count, system in yarns:
        tex = tex_from_count(count, system)
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
                name,
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
