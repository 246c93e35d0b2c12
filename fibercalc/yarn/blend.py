"""Blends: regain, density and shares of a yarn of more than one fiber.

Shares are given by name, in percent, and must add up to 100. Agreed allowances belong to dry shares; a label usually states
shares of the conditioned weight, so the two are turned into each other here.
"""

from collections.abc import Mapping

from ..core.problem import OutOfRange, require
from .moisture import DAMPEST

SHARES_OFF_BY = 0.5  # %; labels round each share to a whole percent


def blend_regain(dry_shares: Mapping[str, float], regains: Mapping[str, float]) -> float:
    """Regain of a blend, % of dry weight: each fiber's regain by its dry share.

    dry_shares  % of the dry weight by fiber, each 0 or more, together 100 (within 0.5)
    regains     % by fiber, 0 to 60, for every fiber in dry_shares
    Raises OutOfRange for shares that do not add up or a regain out of range; KeyError for a fiber with no regain.
    Source: EU rule for agreed allowances of mixtures (ec-allowances-1998).
    """
    shares = _whole(dry_shares)
    _require_regains(shares, regains)
    return sum(share * regains[fiber] for fiber, share in shares.items()) / 100


def dry_share(
    fiber: str, conditioned_shares: Mapping[str, float], regains: Mapping[str, float]
) -> float:
    """One fiber's share of the dry weight, %, from shares of the weight with each fiber at its regain.

    fiber               the one asked for
    conditioned_shares  % by fiber, each 0 or more, together 100 (within 0.5)
    regains             % by fiber, 0 to 60, for every fiber in conditioned_shares
    Raises OutOfRange for shares that do not add up or a regain out of range; KeyError for a fiber that has none.
    Source: definition of regain (astm-d1909-extract).
    """
    shares = _whole(conditioned_shares)
    _require_regains(shares, regains)
    dry = {name: share / (1 + regains[name] / 100) for name, share in shares.items()}
    return 100 * dry[fiber] / sum(dry.values())


def blend_density(shares: Mapping[str, float], densities: Mapping[str, float]) -> float:
    """Density of a blend, g/cm3: volumes add, so each share is divided by its density.

    shares     % of the weight by fiber, each 0 or more, together 100 (within 0.5)
    densities  g/cm3 by fiber, 0.8 to 3, for every fiber in shares
    Raises OutOfRange for shares that do not add up or a density out of range; KeyError for a fiber with no density.
    Source: arithmetic (volumes add).
    """
    whole = _whole(shares)
    for fiber in whole:
        require(f"density of {fiber}", densities[fiber], 0.8, 3.0)
    return 100 / sum(share / densities[fiber] for fiber, share in whole.items())


def _whole(shares: Mapping[str, float]) -> dict[str, float]:
    """Shares scaled to exactly 100 %."""
    for fiber, share in shares.items():
        require(f"share of {fiber}", share, 0.0)
    total = sum(shares.values())
    if not abs(total - 100) <= SHARES_OFF_BY:
        raise OutOfRange(
            "shares", total, 100.0, 100.0, f"they add up to {total:g} %; they must add up to 100 %"
        )
    return {fiber: 100 * share / total for fiber, share in shares.items()}


def _require_regains(shares: Mapping[str, float], regains: Mapping[str, float]) -> None:
    for fiber in shares:
        require(f"regain of {fiber}", regains[fiber], 0.0, DAMPEST)
