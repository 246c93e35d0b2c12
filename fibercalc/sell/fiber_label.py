"""Fiber content of a label in the legal order: who is named, who is "other", and whole percents
that make 100.

US: 16 CFR 303 and the Wool Act. EU and UK: Regulation 1007/2011. Both put the largest share first.
"""

from collections.abc import Mapping

from ..core.arithmetic import largest, smallest
from ..core.problem import OutOfRange, require
from .money import in_whole

US, EU = "us", "eu"
# %: US, from here on by name (cfr-16-303); EU, up to here one fiber may be "other" (eu-1007-memory)
NAMED_FROM = 5.0
OTHERS_TOGETHER = 15.0  # %: EU, several small ones together (eu-1007-memory)
# Percentage points of the fiber weight between label and test: US (cfr-16-303), EU (eu-1007-2011)
POINTS = 3.0
OFF_BY = 0.05  # %: what a sum of shares typed to a tenth may be off by


def tolerance(percent: float, fibers: int = 2) -> tuple[float, float]:
    """Lowest and highest share that a test may find for a stated share, %.

    percent  stated, 0 to 100
    fibers   how many are stated, 1 or more; one alone has no tolerance in the US
    Raises OutOfRange outside these.
    Source: cfr-16-303, 303.43; eu-1007-2011, Article 20.
    """
    require("percent", percent, 0.0, 100.0)
    require("fibers", fibers, 1)
    if fibers == 1:
        return percent, percent
    return largest(percent - POINTS, 0.0), smallest(percent + POINTS, 100.0)


def tolerance_low(percent: float) -> float:
    """Lowest share that a test may find for a stated share of a blend, %.

    percent  stated, 0 to 100
    Raises OutOfRange outside these.
    Source: cfr-16-303, 303.43.
    """
    return tolerance(percent)[0]


def tolerance_high(percent: float) -> float:
    """Highest share that a test may find for a stated share of a blend, %.

    percent  stated, 0 to 100
    Raises OutOfRange outside these.
    Source: cfr-16-303, 303.43.
    """
    return tolerance(percent)[1]


def whole_percents(shares: Mapping[str, float]) -> dict[str, int]:
    """Shares as whole percents that add up to 100, largest first.

    shares  % by fiber, each above 0, together 100 (within 0.05)
    Raises OutOfRange for shares that do not add up.
    Source: common practice (largest remainder).
    """
    for share in shares.values():
        require("share", share, above=0.0)
    total = sum(shares.values())
    if not abs(total - 100) <= OFF_BY:
        raise OutOfRange(
            "shares",
            total,
            100.0,
            100.0,
            f"they add up to {total:g} %; a label must add up to 100 %",
        )
    ordered = sorted(shares.items(), key=lambda pair: -pair[1])
    whole = in_whole([100 * share / total for _, share in ordered], 100)
    return dict(sorted(zip((name for name, _ in ordered), whole), key=lambda pair: -pair[1]))


def unnamed(
    shares: Mapping[str, float], law: str, kept: frozenset[str] = frozenset()
) -> frozenset[str]:
    """Fibers that go together as "other", by the law of one place.

    shares  % by fiber, each above 0
    law     "us" or "eu"
    kept    fibers that are named however little there is: wool in the US, and those with a
            function that is stated
    US: every one under 5 %. EU: one alone of 5 % or less; or several of 5 % or less that make 15
    % or less together.
    Raises OutOfRange for a share of 0 or less; KeyError for another law.
    Source: cfr-16-303 (303.16) and wool-act; eu-1007-memory, Article 9 (from memory).
    """
    for share in shares.values():
        require("share", share, above=0.0)
    if law == US:
        return frozenset(
            name for name, share in shares.items() if share < NAMED_FROM and name not in kept
        )
    if law != EU:
        raise KeyError(law)
    small = [
        name
        for name, share in sorted(shares.items(), key=lambda pair: pair[1])
        if share <= NAMED_FROM and name not in kept
    ]
    if sum(shares[name] for name in small) > OTHERS_TOGETHER or len(small) == len(shares):
        return frozenset()
    return frozenset(small)
