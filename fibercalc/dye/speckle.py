"""Speckling: powder bulked with a carrier so that a dose weighs grams, and how alike the skeins
of a lot can be.

Grains fall where they fall: the number of spots on a skein scatters as Poisson's distribution has
it, even with equal doses. A clumping powder or an uneven hand scatters more, never less.
"""

from math import erfc, exp, lgamma, log

from ..core.arithmetic import sqrt
from ..core.problem import require
from .measuring import combined_error, error_share

MOST_SPOTS = 5000.0


def mix_mass(dye: float, one_in: float) -> float:
    """Mix, g, that holds a weight of dye when dye is one part in so many: m n.

    dye     g, above 0
    one_in  parts of mix to one part of dye, 1 to 1,000
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("dye", dye, above=0.0)
    require("one_in", one_in, 1.0, 1000.0)
    return dye * one_in


def carrier_mass(dye: float, one_in: float) -> float:
    """Carrier, g, to mix with a weight of dye: m (n - 1).

    dye     g, above 0
    one_in  parts of mix to one part of dye, 1 to 1,000
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    return mix_mass(dye, one_in) - dye


def run_dye(dye: float, skeins: int, lost: float = 0.0) -> float:
    """Dye of one color, g, for a run, with what stays in the shaker.

    dye     g for a skein, above 0
    skeins  1 or more
    lost    % of what is mixed that never reaches the yarn, 0 to 90
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("dye", dye, above=0.0)
    require("skeins", skeins, 1)
    require("lost", lost, 0.0, 90.0)
    return dye * skeins / (1 - lost / 100)


def dose_error_bulked(dye_in_batch: float, dose: float, scale_error: float) -> float:
    """Error, %, of the dye in a dose of mix: the dye is weighed once for the batch, the mix once
    for the skein.

    dye_in_batch  g of dye in the whole batch, above 0
    dose          g of mix for a skein, above 0
    scale_error   g either way, 0 or more
    Raises OutOfRange outside these.
    Source: first-order propagation of independent errors; an even mix is taken for granted.
    """
    return combined_error(error_share(scale_error, dye_in_batch), error_share(scale_error, dose))


def speckle_share(speckle_depth: float, ground_depth: float) -> float:
    """Share of the whole shade, %, that is speckle.

    speckle_depth  % of the fiber, all speckle colors, 0 to 20
    ground_depth   % of the fiber, all dyes of the ground, 0 to 20; not both 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("speckle_depth", speckle_depth, 0.0, 20.0)
    require("ground_depth", ground_depth, 0.0, 20.0)
    require("speckle_depth", speckle_depth + ground_depth, above=0.0)
    return 100 * speckle_depth / (speckle_depth + ground_depth)


def spots_scatter(spots: float, dose_error: float = 0.0) -> float:
    """Standard deviation of the number of spots from skein to skein, % of it: 100 / sqrt(n), with
    the dose's own error.

    spots       expected on a skein, above 0
    dose_error  standard deviation of the dose, %, 0 or more
    Raises OutOfRange outside these.
    Source: definition (Poisson distribution).
    """
    require("spots", spots, above=0.0)
    by_chance = 100 / sqrt(spots)
    return combined_error(by_chance, dose_error) if dose_error else by_chance


def spots_range(spots: float) -> tuple[int, int]:
    """Fewest and most spots on all but about 1 in 20 skeins: the 2.5 and 97.5 % points of
    Poisson's distribution.

    spots  expected, above 0 to 5,000
    Raises OutOfRange outside these.
    Source: definition (Poisson distribution).
    """
    require("spots", spots, 0.0, MOST_SPOTS, above=0.0)
    return _quantile(spots, 0.025), _quantile(spots, 0.975)


def chance_busier(spots: float, times: float = 1.5, dose_scatter: float = 0.0) -> float:
    """Chance, %, that of two skeins one shows at least so many times the other's spots.

    spots         expected on each, 4 and more (below that the sum of normal parts does not hold)
    times         how many times, above 1 to 100
    dose_scatter  standard deviation of each skein's dose, %, 0 or more
    Raises OutOfRange outside these.
    Source: definition (Poisson distribution; the logarithm of a count taken as normal).
    """
    require("spots", spots, 4.0)
    require("times", times, 1.0, 100.0, above=1.0)
    scatter = sqrt(2) * spots_scatter(spots, dose_scatter) / 100
    return 100 * erfc(log(times) / scatter / sqrt(2))  # both tails of a normal


def _quantile(mean: float, share: float) -> int:
    """The smallest count at which Poisson's distribution function reaches share."""
    # Far below the mean nothing adds up; begin ten standard deviations down.
    count = max(int(mean - 10 * sqrt(mean)), 0)
    reached = 0.0
    while True:
        reached += exp(count * log(mean) - mean - lgamma(count + 1))
        if reached >= share:
            return count
        count += 1
