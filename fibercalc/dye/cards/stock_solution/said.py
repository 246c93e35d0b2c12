"""The answer about a stock in words."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import PERCENT
from .asked import DILUTE, EXTEND, KINDS, MAKE, USE_UP, StockSolution


def say(out: Outcome[StockSolution]) -> tuple[str, ...]:
    do, final = out.case.do, out.text(StockSolution.final, "mL")
    strength = f"{out.case.wanted:g} %"
    if do == DILUTE:
        water = out.text(StockSolution.water, "mL")
        return (
            (
                f"Take {out.text(StockSolution.stock, 'mL')} of the strong stock and fill up to"
                f" {final}."
            ),
            f"That is {strength}: water to the mark, about {water}.",
        )
    works = out.has(StockSolution.holds)
    is_so = f"works as {strength} of the usual jar" if works else f"is {strength}"
    if do == USE_UP:
        return (
            f"Dissolve all of it and fill up to {final}.",
            f"That {is_so} exactly; scale and jug leave ± {out.text(StockSolution.may_be_off)}.",
        )
    powder = out.text(StockSolution.powder_to_weigh)
    if do == EXTEND:
        return (
            f"Add {powder} of powder to what is left and fill up to {final}.",
            f"That {is_so} again; dissolve the powder first in a little hot water.",
        )
    return (
        f"Weigh {powder} of powder and fill up to {final}.",
        (
            f"That {is_so}: up to the mark, not {final} added to it. Scale and jug leave ±"
            f" {out.text(StockSolution.may_be_off)}."
        ),
    )


def notes(out: Outcome[StockSolution]) -> list[str]:
    said = []
    if out.case.do == MAKE:
        said.append(
            f"Pouring {out.text(StockSolution.final, 'mL')} of water onto the powder instead"
            f" would give {out.measured(out.case.if_added, PERCENT, '%', 0.001)}."
        )
    if out.has(StockSolution.holds):
        said.append(
            "Two numbers stand on its label: what it works as in your recipes, and the"
            f" {out.text(StockSolution.holds)} of powder that it holds."
        )
    row = KINDS[out.case.kind]
    said.append(
        f"After {out.number(out.case.weeks)} weeks closed and cool it likely"
        f" {'works as' if out.has(StockSolution.holds) else 'holds'}"
        f" {out.text(StockSolution.weakest)} to {out.text(StockSolution.strongest)}"
        f" ({row['label'].lower()}; from memory, wide). A dip beside a fresh stock tells more."
    )
    if out.has(StockSolution.may_be_off) and out.value(StockSolution.may_be_off) > 2:
        said.append(
            "More than 2 % off shows beside an older lot: weigh on a finer scale, or make a larger"
            " bottle."
        )
    said.append(
        "Hot water, all of it dissolved, then cool before the mark: warm water stands higher."
    )
    return said
