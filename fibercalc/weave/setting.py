"""How closely a yarn can be set, by its diameter and its weave, and how closely it is set for a
purpose.

A weft that crosses between two ends needs room for its own thickness there. So the fewer crossings
in a repeat, the more ends lie in an inch: Ashenhurst counts them, Brierley puts a power of the mean
float in their place.
"""

from ..core.problem import require
from ..core.table import SourcedTable, read_table
from ..core.units import GRAMS_PER_POUND, METERS_PER_YARD

HANK = 840.0  # yards, of which the cotton count tells how many weigh a pound
COTTON_K = 200.0  # Brierley's constant for the cotton count, threads per inch; gate-textile-2006


def interlacings() -> SourcedTable:
    """Weaves with their ends and crossings per repeat, longest float, and where they stand on a
    rigid heddle.

    Source: arithmetic for regular weaves (counted in their repeats); each other row says more
    (trade-pages-sett, trade-memory).
    """
    return read_table("weave", "interlacings")


def yards_in_a_pound(tex: float) -> float:
    """Yards in a pound of yarn: meters in a gram, grams in a pound, and yards for meters.

    tex  g in 1,000 m, above 0
    Raises OutOfRange outside this.
    Source: definition (exact pound and yard).
    """
    require("tex", tex, above=0.0)
    return 1000 / tex * GRAMS_PER_POUND / METERS_PER_YARD


def cotton_hanks(yards_per_pound: float) -> float:
    """Cotton count: hanks of 840 yards in a pound.

    yards_per_pound  above 0
    Raises OutOfRange outside this.
    Source: ASTM D2260 (astm-d2260).
    """
    require("yards_per_pound", yards_per_pound, above=0.0)
    return yards_per_pound / HANK


def average_float(ends: float, crossings: float) -> float:
    """Mean float of a weave: ends that a pick passes between two crossings.

    ends       ends in one repeat, 2 or more
    crossings  times that one pick changes between face and back in a repeat, 2 to ends
    Raises OutOfRange outside these.
    Source: definition (F = R / I of Ashenhurst and Brierley).
    """
    require("ends", ends, 2.0)
    require("crossings", crossings, 2.0, ends)
    return ends / crossings


def maximum_sett(diameters: float, ends: float, crossings: float) -> float:
    """Closest sett of a square cloth after Ashenhurst: diameters x ends / (ends + crossings), in
    the unit of diameters.

    diameters  yarn diameters side by side in an inch or a centimeter, above 0; the same yarn
               both ways
    ends       ends in one repeat, 2 or more
    crossings  crossings of one pick in a repeat, 2 to ends
    Raises OutOfRange outside these.
    Source: Ashenhurst as quoted by two trade pages (trade-pages-sett).
    """
    require("diameters", diameters, above=0.0)
    average_float(ends, crossings)  # its ranges are ours
    return diameters * ends / (ends + crossings)


def brierley_maximum(cotton_count: float, average_float: float, exponent: float) -> float:
    """Closest sett of a square cotton cloth after Brierley, threads per inch: square root of
    (200 x count) x float ^ exponent.

    cotton_count   Ne, above 0
    average_float  ends over crossings, 1 to 8
    exponent       0.39 for plain and twill; 0.42 for satin and 0.45 for basket are from memory;
                   0 to 1
    Raises OutOfRange outside these.
    Source: Brierley 1931, constant and exponent as an examination uses them (gate-textile-2006).
    """
    require("cotton_count", cotton_count, above=0.0)
    require("average_float", average_float, 1.0, 8.0)
    require("exponent", exponent, 0.0, 1.0)
    closest: float = (COTTON_K * cotton_count) ** 0.5 * average_float**exponent
    return closest


def sett_in_another_weave(
    sett: float, ends: float, crossings: float, other_ends: float, other_crossings: float
) -> float:
    """Sett that gives another weave in the same yarn the same firmness, in the unit of sett.

    sett             ends per inch or per centimeter in the first weave, above 0
    ends             ends in a repeat of the first weave, 2 or more
    crossings        crossings in a repeat of the first weave, 2 to ends
    other_ends       ends in a repeat of the other weave, 2 or more
    other_crossings  crossings in a repeat of the other weave, 2 to other_ends
    Raises OutOfRange outside these.
    Source: Taylor 1909 (taylor-1909-firmness): ends and crossings of equal numbers of ends, in
    proportion.
    """
    require("sett", sett, above=0.0)
    return (
        sett * maximum_sett(1.0, other_ends, other_crossings) / maximum_sett(1.0, ends, crossings)
    )


def working_sett(maximum: float, percent: float) -> float:
    """The sett for a purpose, as a share of the closest one, in the unit of maximum.

    maximum  closest sett, above 0
    percent  share for the purpose, 20 to 220 (a warp-faced cloth is set closer than the closest
             square one)
    Raises OutOfRange outside these.
    Source: common practice, the shares mostly from memory (trade-memory); about three quarters by a
    trade page (trade-pages-sett).
    """
    require("maximum", maximum, above=0.0)
    require("percent", percent, 20.0, 220.0)
    return maximum * percent / 100
