"""The recipe in words, and what does not go together in it."""

from __future__ import annotations

from typing import Any, NamedTuple

from ....core.outcome import Outcome
from ....core.problem import OutOfRange
from ....core.table import STATUS_WORDS, read_table
from ....core.units import PERCENT, VOLUME
from ....safe.liquids import QUESTIONED, share_of_bath
from ...fit import ill_fit, kind_of, told
from ...measuring import error_share, least_dose, volume_error
from ...recipe import measurable_strength, shade_error
from .asked import CITRIC, CLASSES, LIQUID, SODA, Dye, DyeRecipe, liquid

PUBLISHED = [
    row for row in read_table("dye", "auxiliaries").rows if row["key"].startswith("cotton-")
]
HARMED = ("protein", "acetate", "polylactide", "alginate")  # by soda
POORLY = 5.0  # %: a dose measured worse than this is named (our own edge)


class Poor(NamedTuple):
    """A dose that the syringe measures worse than it should.

    off       its error as a share of it, %;  of_shade  and of the whole shade, %
    weaker    the strongest usual stock of which it would be measured well, g in 100 mL
    """

    dye: Dye
    off: float
    of_shade: float
    weaker: float | None


def say(out: Outcome[DyeRecipe]) -> tuple[str, ...]:
    parts = [f"{stock_of(out, dye)} of {dye.name}" for dye in out.case.dyes if dye.stock > 0]
    listed = parts[0] if len(parts) == 1 else f"{', '.join(parts[:-1])} and {parts[-1]}"
    pots = out.case.potfuls
    in_pots = "in one pot" if pots == 1 else f"shared over {pots} pots"
    water = out.text(DyeRecipe.water, "L" if out.value(DyeRecipe.water) >= 1000 else "mL")
    return (
        f"Measure {listed}.",
        (
            f"With {water} of water{_acid_words(out)}, that is"
            f" {out.text(DyeRecipe.total_depth)} on {out.text(DyeRecipe.goods, 'g')} of yarn,"
            f" {in_pots}.{_stays(out)}"
        ),
    )


def _acid_words(out: Outcome[DyeRecipe]) -> str:
    if out.has(DyeRecipe.acid_volume):
        return f" and {out.text(DyeRecipe.acid_volume, 'mL')} of {liquid(out)}"
    if out.has(DyeRecipe.soda_mass):
        salted = out.has(DyeRecipe.salt_bath)
        salt = f", {out.text(DyeRecipe.salt_bath, 'g')} of salt" if salted else ""
        return f"{salt} and {out.text(DyeRecipe.soda_mass, 'g')} of soda ash"
    if out.has(DyeRecipe.acid_pure):
        return f" and {out.text(DyeRecipe.acid_pure, 'g')} of citric acid"
    return ""


def _stays(out: Outcome[DyeRecipe]) -> str:
    """That most of the dye will not hold on this fiber, where that is so."""
    row = ill_fit(out.case.dye_class, out.case.fiber)
    return (
        f" But this dye does not stay on {out.case.fiber}: see the notes."
        if row and row["stays"] == "no"
        else ""
    )


def stock_of(out: Outcome[DyeRecipe], dye: Dye) -> str:
    """A dose of a stock, in sentence and note as in the tables."""
    return out.times(DyeRecipe.stock_total, dye.stock / out.value(DyeRecipe.stock_total), "mL")


def notes(out: Outcome[DyeRecipe]) -> list[str]:
    row = CLASSES[out.case.dye_class]
    said = _of_poor_doses(out)
    if out.case.over > 0:
        said.append(
            f"{out.text(DyeRecipe.total_depth)} is over the {row['depth_mark']:g} % that the table"
            f" calls deep for {row['label'].lower()}: what the fiber cannot hold stays in the bath"
            " and bleeds."
        )
    said += _of_fiber(out, row) + _of_metal(row) + _published(out, row) + _of_liquid(out)
    said.append(
        "Percent of shade is of the dry weight of the fiber; percent of a stock is grams of dye in"
        " 100 mL of it."
    )
    return said


def _of_poor_doses(out: Outcome[DyeRecipe]) -> list[str]:
    said = []
    for dye, off, of_shade, weaker in _poorly(out):
        fix = ""
        if weaker and weaker < dye.strength:
            volume = out.measured(dye.stock * dye.strength / weaker, VOLUME, "mL", 1)
            fix = (
                f" From a {out.amount(weaker, PERCENT)} stock it would be {volume}, measured well."
            )
        said.append(
            f"{stock_of(out, dye)} of {dye.name} is good to ± {off:.0f} % only, which is"
            f" {of_shade:.1f} % of the whole shade.{fix}"
        )
    return said


def _poorly(out: Outcome[DyeRecipe]) -> list[Poor]:
    """Doses that the syringe measures worse than it should."""
    case, found = out.case, []
    least = least_dose(case.syringe_error, POORLY)
    for dye in case.dyes:
        if dye.stock <= 0:
            continue
        error = volume_error(dye.stock, case.syringe, case.syringe_error)
        off = error_share(error, dye.stock)
        if off > POORLY:
            of_shade = shade_error(error, dye.strength, case.goods, case.total_depth)
            found.append(Poor(dye, off, of_shade, _weaker(dye, least)))
    return found


def _weaker(dye: Dye, least: float) -> float | None:
    try:
        return measurable_strength(dye.powder, least)
    except OutOfRange:
        return None


def _of_fiber(out: Outcome[DyeRecipe], row: dict[str, Any]) -> list[str]:
    """What of the recipe does not go with its fiber."""
    acid, fiber = out.case.acid, out.case.fiber
    plant, kind, unfit = row["takes"] == "cellulose", kind_of(fiber), ill_fit(row["key"], fiber)
    said = [told(unfit)] if unfit else []
    if plant and kind == "cellulose" and acid in (CITRIC, LIQUID):
        said.append(
            "On plant fiber a reactive dye is fixed by alkali, not by acid; a direct dye takes"
            " neither."
        )
    if not plant and acid == SODA:
        said.append("An acid dye does not go on in soda.")
    if kind in HARMED and acid == SODA:
        said.append(f"Soda harms {fiber}.")
    return said


def _of_metal(row: dict[str, Any]) -> list[str]:
    if "metal" not in row["handles"]:
        return []
    if row["key"] == "acid-unknown":
        return [
            (
                "The class is not told: until the maker says, its bath counts as one that may hold"
                " a metal."
            )
        ]
    return [
        (
            f"{row['label']}: the dye holds a metal, often chromium or cobalt"
            f" ({STATUS_WORDS[row['status']]}); its bath goes down no drain before the data"
            " sheet and the sewer authority have been asked."
        )
    ]


def _published(out: Outcome[DyeRecipe], row: dict[str, Any]) -> list[str]:
    """Salt and soda that were published for reactive dye on cotton."""
    if not row["key"].startswith("reactive") or kind_of(out.case.fiber) != "cellulose":
        return []
    pairs = [
        (shade, [each["low"] for each in PUBLISHED if each["shade"] == shade])
        for shade in dict.fromkeys(each["shade"] for each in PUBLISHED)
    ]
    listed = "; ".join(
        f"at {shade} {salt:g} of salt and {soda:g} of soda ash" for shade, (salt, soda) in pairs
    )
    return [
        (
            "Published for reactive dye on cotton at 10 to 1 and 70 °C, grams in a liter:"
            f" {listed}. Salt first, soda last, when the dye is on the fiber; the maker’s sheet"
            " comes first."
        )
    ]


def _of_liquid(out: Outcome[DyeRecipe]) -> list[str]:
    if out.case.acid != LIQUID:
        return []
    said = ["The acid's strength is taken as grams in 100 mL, as a vinegar's label gives it."]
    if out.has(DyeRecipe.acid_volume):
        share = share_of_bath(out.case.acid_volume, out.case.bath)
        if share > QUESTIONED:
            said.append(
                f"{out.text(DyeRecipe.acid_volume, 'mL')} of {liquid(out)} is"
                f" {out.number(share)} % of the bath: is that meant?"
            )
    return said
