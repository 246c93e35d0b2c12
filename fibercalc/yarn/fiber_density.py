"""Density of each fiber, dry and rested at 65 % relative humidity."""

from ..core.table import SourcedTable, read_table


def fiber_densities() -> SourcedTable:
    """Density of each fiber, g/cm3, dry and at 65 % relative humidity.

    Source: Morton and Hearle 2008, Table 5.1 (morton-hearle-2008); other rows say their own.
    """
    return read_table("yarn", "morton-hearle-fiber-densities")


def fiber_density(fiber: str) -> float:
    """Density of a fiber at 65 % relative humidity, g/cm3; the dry density where no other is published.

    fiber  name as in fiber_densities
    Raises KeyError for a fiber that is not listed.
    Source: Morton and Hearle 2008, Table 5.1 (morton-hearle-2008); other rows say their own.
    """
    row = fiber_densities().row("fiber", fiber)
    return row["at_65"] if isinstance(row["at_65"], float) else row["dry"]
