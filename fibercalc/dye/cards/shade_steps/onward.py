"""Where the shades go on to: each to its recipe, its dyes to their stocks, all to the pots."""

from __future__ import annotations

from ....core.card import Carry
from ....core.outcome import Outcome
from .asked import STOCK, Dye, ShadeSteps


def _dyes_of_shade(out: Outcome[ShadeSteps], number: int) -> list[dict[str, str]]:
    """The recipe of one shade, as it can be weighed."""
    strength = f"{out.case.strength:.6g}g/100mL" if out.case.dose_by == STOCK else ""
    return [
        {"name": dye.name, "depth": f"{depth:.5g}%", "strength": strength}
        for dye, depth in zip(out.case.dyes, out.case.real.recipes[number - 1])
    ]


def _stock_of_set(out: Outcome[ShadeSteps], number: int) -> str | None:
    """All that the set takes of one stock; None where it is weighed as powder."""
    stock = out.case.dyes[number - 1].maybe(Dye.stock)
    return None if stock is None else f"{stock:.6g}mL"


def _numbers(out: Outcome[ShadeSteps]) -> list[str]:
    return [str(number) for number in range(1, out.case.count + 1)]


def _shades(out: Outcome[ShadeSteps]) -> list[dict[str, str]]:
    return [{"name": f"shade {number}", "skeins": f"{out.case.pieces}"} for number in _numbers(out)]


CARRY = (
    Carry(
        "dye-recipe",
        "The recipe for shade {}",
        {"dyes": _dyes_of_shade, "skeins": ShadeSteps.pieces, "skein_mass": ShadeSteps.skein_mass},
        each=_numbers,
    ),
    Carry(
        "stock-solution",
        "Make up the stock of {}",
        {
            "name": ShadeSteps.dyes.each(Dye.name),
            "wanted": ShadeSteps.strength,
            "volume": _stock_of_set,
        },
        each=ShadeSteps.dyes,
    ),
    Carry(
        "pots",
        "How long does the whole run take, in skeins of about 100 g?",
        {"recipes": _shades, "skein_mass": ShadeSteps.skein_mass},
    ),
)
