"""Density of each fiber, dry and rested at 65 % relative humidity."""

from ..core.table import SourcedTable, read_table

DENSITIES = "morton-hearle-fiber-densities"


def fiber_densities() -> SourcedTable:
    """Density of each fiber, g/cm3, dry and at 65 % relative humidity.

    Source: Morton and Hearle 2008, Table 5.1 (morton-hearle-2008); other rows say their own.
    """
    return read_table("yarn", DENSITIES)


def density_column(fiber: str) -> str:
    """The column that a fiber's density is read from: the dry one where no other is published.

    fiber  name as in fiber_densities
    Raises KeyError for a fiber that is not listed.
    Source: as for fiber_densities.
    """
    return "at_65" if isinstance(fiber_densities().row("fiber", fiber)["at_65"], float) else "dry"


def fiber_density(fiber: str) -> float:
    """Density of a fiber at 65 % relative humidity, g/cm3; the dry density where no other is
    published.

    fiber  name as in fiber_densities
    Raises KeyError for a fiber that is not listed.
    Source: Morton and Hearle 2008, Table 5.1 (morton-hearle-2008); other rows say their own.
    """
    density: float = fiber_densities().row("fiber", fiber)[density_column(fiber)]
    return density
