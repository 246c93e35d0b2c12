"""Several samples of one cloth: what a next piece of it may do, which scatters more than their
mean is uncertain.
"""

from collections.abc import Sequence
from math import sqrt

from ..core.problem import require
from ..yarn.sample import standard_deviation
from ..yarn.student_t import quantile


def next_piece_half_width(changes: Sequence[float], confidence: float = 95.0) -> float:
    """How far one more piece may lie from the mean of the samples, either way, in their unit; 0
    for a single sample, which tells nothing of it.

    changes     measured changes, %, one or more, each -100 to 200
    confidence  %, 50 to 99.8, two-sided
    Raises OutOfRange outside these.
    Source: Hahn 1970, prediction limits (hahn-1970, from memory): t x s x sqrt(1 + 1/n).
    """
    require("changes", len(changes), 1)
    for change in changes:
        require("changes", change, -100.0, 200.0)
    require("confidence", confidence, 50.0, 99.8)
    if len(changes) == 1:
        return 0.0
    count = len(changes)
    return (
        quantile(50 + confidence / 2, count - 1) * standard_deviation(changes) * sqrt(1 + 1 / count)
    )
