"""Chart of setts by yarn and weave: what Ashenhurst's rule gives, for cotton and for worsted wool."""

from ...core.answer import Table
from ...core.marks import MARKS, meaning
from ...core.number import write_number
from ...core.table import read_table
from ...core.units import METERS_PER_YARD
from ...yarn.count import count_from_tex, tex_from_count
from ...yarn.diameter import ashenhurst_constants, ashenhurst_diameters_per_inch
from ..setting import interlacings, maximum_sett, working_sett

COTTONS = ((100, ""), (130, ""), (170, "loom cotton of the examples"), (200, ""), ("3/2", 1.5), ("8/4", 2), ("5/2", 2.5), ("8/2", 4), ("10/2", 5), ("16/2", 8), ("20/2", 10), ("30/2", 15))
WOOLS = ((100, "bulky"), (150, "aran"), (200, "worsted"), (230, "DK of the examples"), (300, "sport"), (420, "sock yarn of the examples"), (600, "lace"), (800, "lace, fine"))


def setts() -> list[Table]:
    """Working setts for plain weave and 2/2 twill, and the closest plain weave, by yarn.

    Source: Ashenhurst (ashenhurst, trade-pages-sett); shares for a use from memory (trade-memory).
    """
    return [_table("Cotton and linen", "cotton", COTTONS), _table("Worsted wool", "worsted", WOOLS)]


def _table(title: str, kind: str, yarns) -> Table:
    constant = ashenhurst_constants().row("name", kind)["constant"]
    rows = []
    for name, more in yarns:
        if isinstance(name, str):  # a cotton count: number of the single over plies, so many hanks in a pound once plied
            tex = tex_from_count(more, "Ne")
            name, words = f"{name} cotton", ""
        else:
            tex, words = 1e5 / name, more
            name = f"{name} m/100 g"
        yards = count_from_tex(tex, "yd/lb")
        diameters = ashenhurst_diameters_per_inch(yards, constant)
        plain, twill = (maximum_sett(diameters, interlacings().row("key", weave)["ends"], interlacings().row("key", weave)["crossings"]) for weave in ("plain", "twill-2-2"))
        rows.append((f"{name}{', ' if words else ''}{words}", write_number(yards, 0), write_number(count_from_tex(tex, "m/100 g") / METERS_PER_YARD, 0), _both(plain, "scarf"), _both(plain, "cloth"), _both(twill, "cloth"),
                     f"{plain:.1f} · {plain / 2.54:.1f}"))
    shares = ", ".join(f"{row['label'].lower()} {row['low']:g} to {row['high']:g} %" for row in read_table("weave", "sett-uses").rows if row["key"] in ("scarf", "cloth"))
    return Table(f"{title}: ends per in · per cm", ("Yarn", "yd/lb", "yd/100 g", "Plain, scarf" + MARKS["memory"], "Plain, towel" + MARKS["memory"], "2/2 twill, towel" + MARKS["memory"], "Closest plain" + MARKS["secondary"]), tuple(rows),
                 f"K {constant:g}. Middle of the shares of the closest sett: {shares}. Computed here from both; the same yarn both ways. " + meaning("secondary", "memory"), ("ashenhurst", "trade-pages-sett", "trade-memory"))


def _both(closest: float, use: str) -> str:
    row = read_table("weave", "sett-uses").row("key", use)
    sett = working_sett(closest, (row["low"] + row["high"]) / 2)
    return f"{sett:.1f} · {sett / 2.54:.1f}"
