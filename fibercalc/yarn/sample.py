"""Several skeins measured: their mean, their spread, and the put-up that may be printed.

Which limit is for what. The published rule for packages is that the *average* must not be below
the label, so the figure to print is a lower limit of the mean: one-sided, 95 %, with Student's t
because the spread itself is known from a few skeins only. That says nothing of a single skein;
for one buyer's one skein use the lower limit of the next skein. A tolerance limit ("95 % sure
that 95 % of all skeins are above") was left out: from three to six skeins it is so low that
nobody could print it. All of them take skeins picked at random from one delivery, with lengths
scattered as a normal distribution.
"""

from collections.abc import Sequence

from ..core import arithmetic
from ..core.arithmetic import sqrt
from ..core.problem import OutOfRange, require
from . import student_t

LARGEST = 1e9  # m, g or wraps: beyond lies a slip of the pen


def mean(values: Sequence[float]) -> float:
    """Mean of several measured values, in their own unit.

    values  one or more numbers
    Raises OutOfRange when there is none.
    Source: arithmetic.
    """
    _require_count(values, 1)
    return arithmetic.mean(values)


def standard_deviation(values: Sequence[float]) -> float:
    """Standard deviation estimated from a sample (divided by one less than their number), in the
    values' own unit.

    values  two or more numbers
    Raises OutOfRange when there are fewer than two.
    Source: Directive 76/211/EEC, Annex II, 2.3.2 (directive-76-211).
    """
    _require_count(values, 2)
    return arithmetic.deviation(values)


def half_width_of_mean(deviation: float, count: int, confidence: float = 95.0) -> float:
    """How far the true mean may lie from the mean of a sample, either way.

    deviation   standard deviation of the sample, 0 or more
    count       number of values, 2 or more
    confidence  %, 50 to 99.8, two-sided
    Raises OutOfRange outside these.
    Source: IUPAC, confidence limits (iupac-confidence-limits).
    """
    require("confidence", confidence, 50.0, 99.8)
    return _t_times_error(deviation, count, 50 + confidence / 2)


def lower_limit_of_mean(
    sample_mean: float,
    deviation: float,
    count: int,
    confidence: float = 95.0,
    t: float | None = None,
) -> float:
    """The put-up to print: the average of the whole delivery is above this, with the stated
    confidence.

    sample_mean  mean of the skeins measured
    deviation    their standard deviation, 0 or more
    count        number of skeins, 2 or more
    confidence   %, 50 to 99.9, one-sided
    t            Student's t for that confidence and count, where it is known already
    Raises OutOfRange outside these.
    Source: IUPAC, confidence limits, one-sided (iupac-confidence-limits); average rule of
    Directive 76/211/EEC (directive-76-211).
    """
    require("sample_mean", sample_mean, -LARGEST, LARGEST)
    return sample_mean - _t_times_error(deviation, count, confidence, t)


def lower_limit_of_next(
    sample_mean: float,
    deviation: float,
    count: int,
    confidence: float = 95.0,
    t: float | None = None,
) -> float:
    """One more skein from the same delivery is above this, with the stated confidence.

    sample_mean  mean of the skeins measured
    deviation    their standard deviation, 0 or more
    count        number of skeins, 2 or more
    confidence   %, 50 to 99.9, one-sided
    t            Student's t for that confidence and count, where it is known already
    Raises OutOfRange outside these.
    Source: Hahn 1970, prediction limits (hahn-1970, from memory).
    """
    require("sample_mean", sample_mean, -LARGEST, LARGEST)
    return sample_mean - _t_times_error(deviation, count, confidence, t) * sqrt(count + 1)


def _t_times_error(deviation: float, count: int, share: float, t: float | None = None) -> float:
    require("deviation", deviation, 0.0)
    require("count", count, 2.0, student_t.MOST_DEGREES)
    require("confidence", share, 50.0, 99.9)
    return (student_t.quantile(share, count - 1) if t is None else t) * deviation / sqrt(count)


def _require_count(values: Sequence[float], fewest: int) -> None:
    if len(values) < fewest:
        raise OutOfRange(
            "values", len(values), fewest, None, f"{len(values)} given; give {fewest} or more"
        )
    for value in values:
        require("values", value, -LARGEST, LARGEST)
