"""Regain of each fiber: what is agreed for trade, EU and US, and what the fiber really holds in the
air of the room.

An agreed allowance is a convention for invoices, not a property that a scale would find. The curve
against humidity is recalled and unverified; a fiber coming from wet holds more than one coming from
dry, and the curve runs between the two.
"""

from ..core.problem import require
from ..core.table import SourcedTable, read_table

DRIEST_AIR, DAMPEST_AIR = 10.0, 90.0  # % relative humidity; ends of the recalled curve
STANDARD_HUMIDITY = 65.0  # % relative humidity at 20 C; ISO 139
# % of the regain, either way; covers the 14 to 18 % read for wool at standard humidity around the
# curve's 16.
CURVE_ERROR = 15.0


def agreed_allowances() -> SourcedTable:
    """EU agreed allowance of each fiber, % of dry weight.

    Source: Order of 24 June 1998, Annex II (ec-allowances-1998).
    """
    return read_table("yarn", "ec-1998-agreed-allowances")


def commercial_regains() -> SourcedTable:
    """US commercial moisture regain of each fiber, % of dry weight.

    Source: ASTM D1909 (astm-d1909); several rows from memory, each says so.
    """
    return read_table("yarn", "d1909-commercial-regains")


def actual_regains() -> SourcedTable:
    """Regain of each fiber rested at 20 C and 65 % relative humidity, low and high of what was
    found, % of dry weight.

    Source: Bioresources and Bioprocessing 2020 (bioresources-2020) and NRC 2001 (nrc-2001); several
    rows from memory, each says so.
    """
    return read_table("yarn", "actual-regains")


def regain_curves() -> SourcedTable:
    """Regain of six fibers at 10 to 90 % relative humidity, % of dry weight.

    Source: memory, unverified (regain-curves).
    """
    return read_table("yarn", "regain-against-humidity")


def agreed_allowance(fiber: str) -> float:
    """EU agreed allowance, % of dry weight.

    fiber  name as in agreed_allowances
    Raises KeyError for a fiber that is not listed.
    Source: Order of 24 June 1998, Annex II (ec-allowances-1998).
    """
    allowance: float = agreed_allowances().row("fiber", fiber)["allowance"]
    return allowance


def commercial_regain(fiber: str) -> float:
    """US commercial moisture regain, % of dry weight.

    fiber  name as in commercial_regains
    Raises KeyError for a fiber that is not listed.
    Source: ASTM D1909 (astm-d1909); several rows from memory.
    """
    regain: float = commercial_regains().row("fiber", fiber)["regain"]
    return regain


def fiber_family(fiber: str) -> str:
    """Name that stands for a fiber of the allowance list in the tables of density and of regain
    against humidity; "" when none does.

    fiber  name as in agreed_allowances
    Raises KeyError for a fiber that is not listed.
    Source: common practice; hair behaves as wool (horikita-1989).
    """
    family: str = agreed_allowances().row("fiber", fiber)["family"]
    return family


def has_curve(family: str) -> bool:
    """Whether a family has a curve of regain against humidity.

    family  name as fiber_family gives it
    Source: memory, unverified (regain-curves).
    """
    return family in regain_curves().columns[1:-1]


def regain_at_humidity(family: str, humidity: float) -> float:
    """Regain, % of dry weight, of a fiber long rested in air of one humidity. Unverified; within
    about 15 % of itself.

    family    name as fiber_family gives it, one that has_curve
    humidity  % relative humidity at room temperature, 10 to 90
    Raises OutOfRange outside 10 to 90 %; KeyError for a family with no curve.
    Source: memory, unverified (regain-curves); hair behaves as wool (horikita-1989).
    """
    ends = humidities_around(humidity)
    if not has_curve(family):
        raise KeyError(f"no curve of regain against humidity for {family}")
    read = {row["humidity"]: row[family] for row in regain_curves().rows}
    return regain_between(humidity, *ends, *(read[end] for end in ends))


def humidities_around(humidity: float) -> tuple[float, float]:
    """The two humidities next to one for which the curves have values, % relative humidity.

    humidity  % relative humidity, 10 to 90
    Raises OutOfRange outside this.
    Source: memory, unverified (regain-curves).
    """
    require("humidity", humidity, DRIEST_AIR, DAMPEST_AIR)
    points = [row["humidity"] for row in regain_curves().rows]
    return next((below, above) for below, above in zip(points, points[1:]) if humidity <= above)


def regain_between(
    humidity: float, below: float, above: float, regain_below: float, regain_above: float
) -> float:
    """Regain, % of dry weight, on the straight line between two points of a curve.

    humidity      % relative humidity, from below to above
    below         % relative humidity of the one point
    above         % relative humidity of the other, above that
    regain_below  % of dry weight at the one
    regain_above  % of dry weight at the other
    Raises OutOfRange outside these.
    Source: arithmetic (a straight line).
    """
    require("above", above, above=below)
    require("humidity", humidity, below, above)
    return regain_below + (humidity - below) / (above - below) * (regain_above - regain_below)
