"""How much dye a new base takes, how it changes, and what that means."""

from __future__ import annotations

from ....core.arithmetic import mean
from ...base_factor import (
    change_percent,
    change_verdict,
    depth_factor,
    dye_verdict,
    factors_apart,
    worst_verdict,
)
from .asked import BaseTest


def answer(case: BaseTest) -> None:
    for dye in case.dyes:
        dye.factor = depth_factor(dye.new, dye.usual)
    factors = [dye.factor for dye in case.dyes]
    case.mean_factor = mean(factors)
    case.apart = factors_apart(factors)
    case.longer = change_percent(case.length_before, case.length_after)
    case.heavier = change_percent(case.mass_before, case.mass_after)
    case.verdicts = (
        dye_verdict(factors),
        change_verdict(case.longer),
        change_verdict(case.heavier),
    )
    case.verdict = worst_verdict(case.verdicts)
