"""Blends: regain, density and shares of a yarn of more than one fiber.

Shares are given by name, in percent, and must add up to 100. Agreed allowances belong to dry
shares; a label usually states shares of the conditioned weight, so the two are turned into each
other here.
"""

from collections.abc import Mapping, Sequence

from ..core.arithmetic import total
from ..core.problem import OutOfRange, require
from .moisture import DAMPEST

SHARES_OFF_BY = 0.5  # %; labels round each share to a whole percent
FLOAT_NOISE = 1e-9


def blend_regain(dry_shares: Mapping[str, float], regains: Mapping[str, float]) -> float:
    """Regain of a blend, % of dry weight: each fiber's regain by its dry share.

    dry_shares  % of the dry weight by fiber, each 0 or more, together 100 (within 0.5)
    regains     % by fiber, 0 to 60, for every fiber in dry_shares
    Raises OutOfRange for shares that do not add up or a regain out of range; KeyError for a fiber
    with no regain.
    Source: EU rule for agreed allowances of mixtures (ec-allowances-1998).
    """
    together = _together(dry_shares)
    _require_regains(dry_shares, regains)
    return sum(share * regains[fiber] for fiber, share in dry_shares.items()) / together


def dry_parts(share: float, regain: float) -> float:
    """What is left of a fiber's share when its water is taken out, in parts that together are
    less than 100.

    share   % of the weight with the fiber at its regain, 0 or more
    regain  % of the fiber's dry weight, 0 to 60
    Raises OutOfRange outside these.
    Source: definition of regain (astm-d1909-extract).
    """
    require("share", share, 0.0)
    require("regain", regain, 0.0, DAMPEST)
    return share / (1 + regain / 100)


def share_of(parts: float, all_parts: Sequence[float]) -> float:
    """Some parts' share of all, %.

    parts      one of all_parts
    all_parts  each 0 or more, together above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    for each in all_parts:
        require("all_parts", each, 0.0)
    require("all_parts", sum(all_parts), above=0.0)
    return 100 * parts / total(all_parts)


def dry_share(
    fiber: str, conditioned_shares: Mapping[str, float], regains: Mapping[str, float]
) -> float:
    """One fiber's share of the dry weight, %, from shares of the weight with each fiber at its
    regain.

    fiber               the one asked for
    conditioned_shares  % by fiber, each 0 or more, together 100 (within 0.5)
    regains             % by fiber, 0 to 60, for every fiber in conditioned_shares
    Raises OutOfRange for shares that do not add up or a regain out of range; KeyError for a fiber
    that has none.
    Source: definition of regain (astm-d1909-extract).
    """
    _together(conditioned_shares)
    _require_regains(conditioned_shares, regains)
    dry = {name: dry_parts(share, regains[name]) for name, share in conditioned_shares.items()}
    return share_of(dry[fiber], list(dry.values()))


def blend_density(shares: Mapping[str, float], densities: Mapping[str, float]) -> float:
    """Density of a blend, g/cm3: volumes add, so each share is divided by its density.

    shares     % of the weight by fiber, each 0 or more, together 100 (within 0.5)
    densities  g/cm3 by fiber, 0.8 to 3, for every fiber in shares
    Raises OutOfRange for shares that do not add up or a density out of range; KeyError for a
    fiber with no density.
    Source: arithmetic (volumes add).
    """
    together = _together(shares)
    for fiber in shares:
        require(f"density of {fiber}", densities[fiber], 0.8, 3.0)
    volume = sum(share / densities[fiber] for fiber, share in shares.items())
    return together / volume


def _together(shares: Mapping[str, float]) -> float:
    """What shares add up to: 100 %, or a little off by the rounding of each."""
    for fiber, share in shares.items():
        require(f"share of {fiber}", share, 0.0)
    together = total(shares.values())
    if not abs(together - 100) <= SHARES_OFF_BY:
        raise OutOfRange(
            "shares",
            together,
            100.0,
            100.0,
            f"they add up to {together:g} %; they must add up to 100 %",
        )
    return 100.0 if abs(together - 100) < FLOAT_NOISE else together


def _require_regains(shares: Mapping[str, float], regains: Mapping[str, float]) -> None:
    for fiber in shares:
        require(f"regain of {fiber}", regains[fiber], 0.0, DAMPEST)
