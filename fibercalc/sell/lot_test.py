"""A sample judged by each rule that reaches its label: what is asked, the limit, what was found,
and whether it is met.

Each law's test has a least sample: fewer skeins are no test, and are not judged.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from ..core.problem import OutOfRange, require
from ..core.table import read_table
from ..yarn.sample import mean, standard_deviation
from .tolerance import (
    HEAVIEST,
    LIGHTEST,
    THREAD_SHORT,
    THREAD_UNITS,
    allowed_short_length,
    allowed_short_weight,
    correction_factor,
    inspector_factor,
    lowest_mean,
    mean_short,
    sample_size,
    tolerable_negative_error,
)

US, EU, INSPECTOR, THREAD = "us", "eu", "inspector", "thread"
WEIGHT, LENGTH = "weight", "length"
# Packages: of fewer an inspector in the EU and the UK weighs all (directive-76-211, Annex II)
SMALL_BATCH = 100
# Packages of which one may be short by more than the tolerable negative error (uk-packaged-goods)
ONE_IN = 40


@dataclass(frozen=True)
class Judged:
    """One rule and what a sample makes of it.

    law    whose rule;  key  which of its rules: "mean", "each", "far"
    limit  the edge, in the label's unit;  allowed  how many may be under it; None for a rule of the
           mean
    found  the mean, or how many are under the edge;  met  whether the rule is kept; None where the
           sample is under the law's least
    """

    law: str
    key: str
    limit: float
    found: float
    met: bool | None
    allowed: float | None = None


def least_sample(law: str, lot: int) -> int:
    """Packages that a law's test takes at least.

    law  "us", "eu", "inspector" or "thread"
    lot  packages under that label, 1 or more
    Opened packages count in the EU and the UK, since a skein is weighed without its band.
    Raises OutOfRange outside these; KeyError for another law.
    Source: nist-hb-133 (from memory); directive-76-211; si-2006-659, Schedule 2, paragraph 4.6;
    ri-6-10 and ma-94-285.
    """
    require("lot", lot, 1)
    if law == US:
        return sample_size(lot)[0]
    if law == THREAD:
        return THREAD_UNITS
    if law not in (EU, INSPECTOR):
        raise KeyError(law)
    return (
        int(lot)
        if lot < SMALL_BATCH
        else int(read_table("sell", "si-2006-659-mean-test").row("test", "opened")["packages"])
    )


def judge(values: Sequence[float], label: float, by: str, lot: int) -> list[Judged]:
    """Every rule that reaches the label, with what the sample makes of it.

    values  measured, g or m, two or more
    label   of the label, same unit, above 0
    by      "weight" or "length"
    lot     packages under that label, 1 or more
    US rules reach weights to 571 g and every length; EU and UK rules weights of 5 g to 10 kg;
    thread laws all.
    Raises OutOfRange outside these; KeyError for another way.
    Source: nist-hb-133 (from memory), nist-hb-133-length, directive-76-211, si-2006-659,
    uk-packaged-goods, ri-6-10.
    """
    if by not in (WEIGHT, LENGTH):
        raise KeyError(by)
    require("label", label, above=0.0)
    middle, spread, count = mean(values), standard_deviation(values), len(values)
    low = lowest_mean(label, correction_factor(count), spread)
    made = [Judged(US, "mean", low, middle, middle >= low)]
    _, may = sample_size(lot)
    try:
        edge = label - (
            allowed_short_weight(label) if by == WEIGHT else allowed_short_length(label)
        )
        made.append(_each(US, "each", edge, values, may))
    except OutOfRange:
        pass  # a heavier label than the recalled rows: the rule is left out, and the page says so
    if by == WEIGHT and LIGHTEST <= label <= HEAVIEST:
        error = tolerable_negative_error(label)
        # Where all are weighed chance has no part.
        low = lowest_mean(label, inspector_factor(count) if lot >= SMALL_BATCH else 0.0, spread)
        made += [
            Judged(EU, "mean", label, middle, middle >= label),
            _each(EU, "each", label - error, values, count / ONE_IN),
            _each(EU, "far", label - 2 * error, values, 0),
            Judged(INSPECTOR, "mean", low, middle, middle >= low),
        ]
    low = label * (1 - THREAD_SHORT / 100)
    made.append(Judged(THREAD, "mean", low, middle, mean_short(middle, label) <= THREAD_SHORT))
    return [
        rule if count >= least_sample(rule.law, lot) else replace(rule, met=None) for rule in made
    ]


def _each(law: str, key: str, edge: float, values: Sequence[float], may: float) -> Judged:
    under = sum(value < edge - 1e-9 for value in values)
    return Judged(law, key, edge, under, under <= may, may)
