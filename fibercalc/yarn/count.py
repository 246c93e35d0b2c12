"""Yarn count: the same yarn in every system, any to all.

A direct system (tex, denier) weighs a fixed length: bigger is thicker. An indirect system (metric,
cotton, worsted, yards per pound) counts length in a fixed weight: bigger is finer. What each system
counts is declared once, with the units in core.units; the factors that standards print are in
tables/d2260-count-systems.csv and are compared with ours in the checks.
"""

from ..core.problem import require
from ..core.table import SourcedTable, read_table
from ..core.units import GRAMS_PER_POUND, LINEAR_DENSITY, METERS_PER_YARD, Unit

# One filament of 0.01 dtex to a rope of 10 kg a meter: beyond lies a slip of the pen.
FINEST_TEX, COARSEST_TEX = 0.001, 1e7

COTTON_HANK, WORSTED_HANK = 840, 560  # yd; ASTM D2260


def count_systems() -> SourcedTable:
    """The count systems shown to people, with what each counts and the factor its standard prints.

    Source: ASTM D2260 (astm-d2260); each row says more.
    """
    return read_table("yarn", "d2260-count-systems")


def tex_from_count(count: float, system: str) -> float:
    """Linear density, tex, of a yarn whose number is known in any system.

    count   number in that system, above 0
    system  unit sign as core.units writes it: "Ne", "Nm", "den", "yd/lb", "m/100 g" ...
    Raises OutOfRange when count is not above 0 or the yarn is not within 0.001 to 10,000,000 tex;
    KeyError for an unknown system.
    Source: ASTM D2260 (astm-d2260) and the exact yard and pound.
    """
    unit = LINEAR_DENSITY.unit(system)
    require("count", count, above=0.0)
    _require_within_edges("count", count, unit)
    return unit.to_base(count)


def count_from_tex(tex: float, system: str) -> float:
    """Number of a yarn in any system, from its linear density.

    tex     g per 1,000 m, 0.001 to 10,000,000
    system  unit sign as core.units writes it
    Raises OutOfRange when tex is outside its range; KeyError for an unknown system.
    Source: ASTM D2260 (astm-d2260) and the exact yard and pound.
    """
    require("tex", tex, FINEST_TEX, COARSEST_TEX)
    return LINEAR_DENSITY.unit(system).from_base(tex)


def count_from_count(count: float, from_system: str, to_system: str) -> float:
    """Number of a yarn in one system, from its number in another.

    count        number in from_system, above 0
    from_system  unit sign of the known number
    to_system    unit sign of the wanted number
    Raises OutOfRange when count is not above 0 or the yarn is not within 0.001 to 10,000,000 tex;
    KeyError for an unknown system.
    Source: ASTM D2260 (astm-d2260) and the exact yard and pound.
    """
    return LINEAR_DENSITY.unit(to_system).from_base(tex_from_count(count, from_system))


def count_constant(system: str) -> float:
    """The one number of a system: tex x count for an indirect system, tex / count for a direct one.

    system  unit sign as core.units writes it
    Raises KeyError for an unknown system.
    Source: ASTM D2260 (astm-d2260) prints it for most systems.
    """
    return LINEAR_DENSITY.unit(system).factor


def yards_per_pound_from_metric(metric_count: float) -> float:
    """Yards in a pound, from meters in a gram.

    metric_count  m/g, above 0
    Raises OutOfRange when it is not above 0.
    Source: definition (exact yard and pound).
    """
    require("metric_count", metric_count, above=0.0)
    return metric_count * GRAMS_PER_POUND / METERS_PER_YARD


def hanks_per_pound(yards_per_pound: float, hank: float) -> float:
    """Number of a yarn in a system that counts hanks in a pound.

    yards_per_pound  yd/lb, above 0
    hank             yd in one, above 0: COTTON_HANK or WORSTED_HANK
    Raises OutOfRange when either is not above 0.
    Source: ASTM D2260 (astm-d2260).
    """
    require("yards_per_pound", yards_per_pound, above=0.0)
    require("hank", hank, above=0.0)
    return yards_per_pound / hank


def linear_density(mass: float, length: float) -> float:
    """Linear density, tex, of a yarn from a weighed length of it.

    mass    g, above 0
    length  m, above 0; measured relaxed
    Raises OutOfRange when either is not above 0.
    Source: definition of tex (count-conversion-table).
    """
    require("mass", mass, above=0.0)
    require("length", length, above=0.0)
    return 1000 * mass / length


def _require_within_edges(name: str, count: float, unit: Unit) -> None:
    ends = sorted((unit.from_base(FINEST_TEX), unit.from_base(COARSEST_TEX)))
    require(name, count, ends[0] * (1 - 1e-12), ends[1] * (1 + 1e-12))
