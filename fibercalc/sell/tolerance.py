"""How far short a package may be of its label: the US handbook's test of a lot, and the average
rule of the EU and the UK.

Both rules hold two things apart. The *average* of a lot must not be below the label; a sample's
mean may be, by what chance does to a mean. And *one package* may be short, but not by much.
"""

from math import ceil, sqrt
from typing import Any

from ..core.problem import OutOfRange, require
from ..core.steps import looked_up
from ..core.table import read_table
from ..core.traced import named
from ..yarn import student_t

LIGHTEST, HEAVIEST = 5.0, 10_000.0  # g: the average rule's own ends
TENTHS_UP = named("rounded up to tenths", lambda grams: ceil(grams * 10 - 1e-9) / 10)
# Units tested at least, % that their mean may be short (ri-6-10, ma-94-285).
THREAD_UNITS, THREAD_SHORT = 10, 3.0
CHANCE_US, CHANCE_EU = 97.5, 99.5  # %, one-sided: what the printed factors are Student's t of


def correction_factor(packages: int) -> float:
    """Sample correction factor: how many standard deviations a sample's mean may be short, US.

    packages  in the sample, 2 to 10,000
    Raises OutOfRange outside these.
    Source: nist-hb-133 (table from memory); computed as Student's t (97.5 %) over the square root
    of the number.
    """
    return _t_over_root(CHANCE_US, packages)


def inspector_factor(packages: int) -> float:
    """How many standard deviations a sample's mean may be short in an inspector's test, EU and UK.

    packages  in the sample, 2 to 10,000
    Raises OutOfRange outside these.
    Source: si-2006-659, Schedule 2, paragraph 4: Student's t (99.5 %) over the square root of the
    number.
    """
    return _t_over_root(CHANCE_EU, packages)


def _t_over_root(share: float, packages: int) -> float:
    require("packages", packages, 2, student_t.MOST_DEGREES)
    return student_t.quantile(share, packages - 1) / sqrt(packages)


def sample_size(lot: int) -> tuple[int, int]:
    """How many packages of a lot are tested, and how many may be short beyond the allowed
    variation, US.

    lot  packages under one label, 1 or more
    Raises OutOfRange below 1.
    Source: nist-hb-133, Category A sampling plans (from memory).
    """
    row = _row_for("nist-hb133-sampling", lot)
    return (int(lot) if row["sample"] == "all" else int(row["sample"])), int(row["may_exceed"])


def allowed_short_weight(label: float) -> float:
    """Maximum allowable variation of one package by weight, g, US.

    label  labeled weight, g, above 0 to 571
    Raises OutOfRange outside these: heavier rows were not recalled.
    Source: nist-hb-133, Table 2-5 (from memory).
    """
    return _from_table("nist-hb133-mav-weight", label)


def allowed_short_length(label: float) -> float:
    """Maximum allowable variation of one package by length, m, US.

    label  labeled length, m, above 0
    Raises OutOfRange outside this.
    Source: nist-hb-133-length, Table 2-8 (1 to 43 m; the other rows nist-hb-133, from memory).
    """
    return _from_table("nist-hb133-mav-length", label)


def tolerable_negative_error(label: float) -> float:
    """Tolerable negative error of one package by weight, g, EU and UK; percents are rounded up to
    0.1 g.

    label  nominal weight, g, 5 to 10,000
    Raises OutOfRange outside these.
    Source: directive-76-211, Annex I, 2.4.
    """
    require("label", label, LIGHTEST, HEAVIEST)
    return _from_table("directive-76-211-tolerable-negative-error", label, tenths=True)


def _row_for(table: str, value: float) -> dict[str, Any]:
    """The row of a table whose band holds a value: over its lower end, up to its upper one."""
    for row in read_table("sell", table).rows:
        if row["over"] < value and (row["up_to"] == "" or value <= row["up_to"]):
            return row
    raise OutOfRange("label", value, None, None, "no row of the table reaches that far")


def _from_table(table: str, label: float, tenths: bool = False) -> float:
    """What a table of bands gives for a label: an amount, or a percentage of it, which may go up to
    tenths of a gram.
    """
    row = _row_for(table, label)
    if row.get("grams", "") != "":
        return looked_up("sell", table, "over", int(row["over"]), "grams")
    part = label * row["percent"] / 100
    return TENTHS_UP(part) if tenths else part


def lowest_mean(label: float, factor: float, spread: float) -> float:
    """What a sample's mean may be down to, in the label's unit: short by what chance does to it.

    label   above 0
    factor  of the test, for the size of the sample, 0 or more
    spread  standard deviation of the sample, 0 or more
    Raises OutOfRange outside these.
    Source: nist-hb-133 (from memory); si-2006-659, Schedule 2, paragraph 4.
    """
    require("label", label, above=0.0)
    require("factor", factor, 0.0)
    require("spread", spread, 0.0)
    return label - factor * spread


def mean_short(mean: float, label: float) -> float:
    """How far a mean is below the label, % of the label; less than 0 where it is above.

    mean   of a sample, 0 or more
    label  above 0, same unit
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("mean", mean, 0.0)
    require("label", label, above=0.0)
    return 100 * (label - mean) / label
