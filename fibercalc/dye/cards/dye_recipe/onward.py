"""What a recipe gives the next card: stocks for the run, what is in one pot, the run's skeins."""

from __future__ import annotations

from collections.abc import Callable

from ....core.card import Carry, Result, Save
from ....core.onward import spread_text
from ....core.outcome import Outcome
from ....core.units import MASS, VOLUME, Unit
from ....held import RECORD
from .asked import CITRIC, CLASSES, LIQUID, SODA, Dye, DyeRecipe

GRAM, LITER = MASS.unit("g"), VOLUME.unit("L")
# What the choices of the recipe are called where the bath's chemistry is asked.
IN_BATH = {CITRIC: "citric", LIQUID: "acetic", SODA: "soda-ash"}


def _of_pot(result: Result[float], unit: Unit) -> Callable[[Outcome[DyeRecipe]], str | None]:
    """What of a result of the lot is in the fullest pot: no pot holds a lot of several."""

    def of_pot(out: Outcome[DyeRecipe]) -> str | None:
        if not out.has(result):
            return None
        value, low, high = (
            unit.from_base(end * out.case.share)
            for end in (out.value(result), out.low(result), out.high(result))
        )
        return spread_text(value, low, high, unit.sign)

    return of_pot


def _grams_in_pot(out: Outcome[DyeRecipe]) -> str | None:
    """Grams of acid or soda in the fullest pot."""
    soda = out.has(DyeRecipe.soda_mass)
    return _of_pot(DyeRecipe.soda_mass if soda else DyeRecipe.acid_pure, GRAM)(out)


def _stock_of_run(out: Outcome[DyeRecipe], number: int) -> str | None:
    """All that the run takes of one stock: what has to be made up."""
    volume = out.case.dyes[number - 1].run_stock
    return f"{volume:.6g}mL" if volume else None


def _keeps_as(out: Outcome[DyeRecipe], number: int) -> str:
    """The kind of dye, as stocks keep."""
    kind = out.case.dye_class.partition("-")[0]
    return kind if kind in ("reactive", "direct") else "acid"


def _acid_in_it(out: Outcome[DyeRecipe]) -> str | None:
    """The acid or alkali of the recipe, as the bath's chemistry knows it; None without any."""
    return IN_BATH.get(out.case.acid)


def _metal_in_it(out: Outcome[DyeRecipe]) -> str | None:
    """That a metal comes with the dye, or may: how much of which one no class of dye tells."""
    return "unknown" if "metal" in CLASSES[out.case.dye_class]["handles"] else None


def _acid_by_weight(out: Outcome[DyeRecipe]) -> str | None:
    if out.case.acid != LIQUID:
        return None
    return f"{out.case.acid_by_weight:.3g}~{out.case.acid_by_weight_off:.2g}%"


def _heats_as(out: Outcome[DyeRecipe]) -> str | None:
    """The fiber, as far as its heat is told apart."""
    fiber = out.case.fiber
    if fiber.startswith("polyamide"):
        return "nylon"
    return fiber if fiber in ("wool", "cotton") else None


def _recipe_of_run(out: Outcome[DyeRecipe]) -> list[dict[str, str]]:
    """The skeins of all lots, as one recipe of a run."""
    name = "the lot" if out.case.lots == 1 else "the run"
    return [{"name": name, "skeins": f"{out.case.run_skeins}"}]


CARRY = (
    Carry(
        "stock-solution",
        "Make up the stock of {}",
        {
            "name": DyeRecipe.dyes.each(Dye.name),
            "wanted": DyeRecipe.dyes.each(Dye.strength),
            "volume": _stock_of_run,
            "kind": _keeps_as,
        },
        each=DyeRecipe.dyes,
    ),
    Carry(
        "bath-acid",
        "How sour will that bath be?",
        {
            "liters": _of_pot(DyeRecipe.bath, LITER),
            "grams": _grams_in_pot,
            "chemical": _acid_in_it,
            "strength": _acid_by_weight,
        },
    ),
    Carry(
        "bath-heat",
        "How long does it take to heat?",
        {
            "bath": _of_pot(DyeRecipe.bath, LITER),
            "fiber_mass": _of_pot(DyeRecipe.goods, GRAM),
            "fiber": _heats_as,
        },
    ),
    Carry(
        "pots",
        "How long does the whole run take?",
        {
            "recipes": _recipe_of_run,
            "skein_mass": DyeRecipe.skein_mass,
            "liquor_ratio": DyeRecipe.liquor_ratio,
            "pots.1.fill": DyeRecipe.fill,
            "pots.2.fill": DyeRecipe.fill,
        },
    ),
    Carry(
        "drain-check",
        "May it go down the drain?",
        {"volume": _of_pot(DyeRecipe.bath, LITER), "holds": _acid_in_it, "metal": _metal_in_it},
    ),
)
SAVES = (
    Save(
        RECORD.colorway,
        "A colorway: this recipe",
        {
            RECORD.colorway.skeins: DyeRecipe.skeins,
            RECORD.colorway.dyes: DyeRecipe.dyes,
            RECORD.colorway.liquor_ratio: DyeRecipe.liquor_ratio,
            RECORD.colorway.acid: DyeRecipe.acid,
            RECORD.colorway.acid_share: DyeRecipe.acid_share,
            RECORD.colorway.salt_share: DyeRecipe.salt_share,
        },
    ),
    Save(
        RECORD.dye_lot,
        "A dye lot: skeins and dry weight",
        {RECORD.dye_lot.skeins: DyeRecipe.skeins, RECORD.dye_lot.mass: DyeRecipe.goods},
    ),
)
