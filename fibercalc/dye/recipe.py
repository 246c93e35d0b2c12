"""A recipe at the pot: grams and milliliters of dye, what else goes in, and the water that tops
it up.

Depth of shade is dye as % of the dry weight of the fiber, where "dry" means the weight as rested
in the room the recipe was made in. Strength of a stock is grams of dye in 100 mL of it. A liquor
ratio of 20 means 20 mL of bath for each gram of fiber.
"""

from collections.abc import Sequence

from ..core.problem import OutOfRange, require
from ..yarn.moisture import mass_at_other_regain

# Strengths that stocks are usually made at, g in 100 mL (common practice).
USUAL_STRENGTHS = (5.0, 2.0, 1.0, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01)
DEEPEST, STRONGEST = (
    20.0,
    40.0,
)  # % of the fiber; g in 100 mL: more than any dye bath or stock holds
HEAVIEST, WETTEST = 100_000.0, 200.0  # g of fiber; mL of bath for each gram


def recipe_mass(mass: float, regain_now: float, regain_usual: float) -> float:
    """Weight, g, to reckon the recipe on: what damp fiber will weigh at the regain the recipe was
    made for.

    mass          g as weighed, above 0
    regain_now    % of dry weight held as water when weighed, 0 to 60
    regain_usual  % when the recipe's fiber was weighed, 0 to 60
    Raises OutOfRange outside these.
    Source: definition of regain (astm-d1909-extract).
    """
    return mass_at_other_regain(mass, regain_now, regain_usual)


def dye_mass(mass: float, depth: float) -> float:
    """Dye, g, for a depth of shade: W P / 100. The same for any auxiliary given as % of the fiber.

    mass   g of fiber, above 0 to 100,000
    depth  % of the fiber's weight, 0 to 20
    Raises OutOfRange outside these.
    Source: textile-pages-recipe, trade-page-dyes.
    """
    _require_mass(mass)
    require("depth", depth, 0.0, DEEPEST)
    return mass * depth / 100


def depth_of_dye(dye: float, mass: float) -> float:
    """Depth of shade, % of the fiber's weight, that a weight of dye gives.

    dye   g, 0 or more
    mass  g of fiber, above 0 to 100,000
    Raises OutOfRange outside these.
    Source: definition of depth of shade (dyeing-terms-slides).
    """
    require("dye", dye, 0.0)
    _require_mass(mass)
    return 100 * dye / mass


def stock_volume(dye: float, strength: float) -> float:
    """Stock, mL, that holds a weight of dye: with dye = W P / 100 it is W P / S.

    dye       g, 0 or more
    strength  g in 100 mL, above 0 to 40
    Raises OutOfRange outside these.
    Source: textile-pages-recipe.
    """
    require("dye", dye, 0.0)
    _require_strength(strength)
    return 100 * dye / strength


def dye_in_stock(volume: float, strength: float) -> float:
    """Dye, g, in a volume of stock.

    volume    mL, 0 or more
    strength  g in 100 mL, above 0 to 40
    Raises OutOfRange outside these.
    Source: definition of strength.
    """
    require("volume", volume, 0.0)
    _require_strength(strength)
    return volume * strength / 100


def bath_volume(mass: float, liquor_ratio: float) -> float:
    """Bath, mL, for a liquor ratio: L W.

    mass          g of fiber, above 0 to 100,000
    liquor_ratio  mL for each gram, 1 to 200
    Raises OutOfRange outside these.
    Source: dyeing-terms-slides.
    """
    _require_mass(mass)
    require("liquor_ratio", liquor_ratio, 1.0, WETTEST)
    return mass * liquor_ratio


def bath_auxiliary(volume: float, grams_per_liter: float) -> float:
    """Salt or other auxiliary, g, for a bath by its volume.

    volume           mL of bath, 0 or more
    grams_per_liter  0 to 1,000
    Raises OutOfRange outside these.
    Source: dye-lab-manual.
    """
    require("volume", volume, 0.0)
    require("grams_per_liter", grams_per_liter, 0.0, 1000.0)
    return volume * grams_per_liter / 1000


def carried_water(mass: float, pick_up: float) -> float:
    """Water, mL, that soaked and drained yarn brings into the pot.

    mass     g of dry fiber, above 0 to 100,000
    pick_up  water as % of the dry fiber, 0 to 1,000
    Raises OutOfRange outside these.
    Source: definition of pick-up.
    """
    _require_mass(mass)
    require("pick_up", pick_up, 0.0, 1000.0)
    return mass * pick_up / 100


def top_up_water(bath: float, additions: float) -> float:
    """Water, mL, to add so that bath and additions together make the bath's volume.

    bath       mL wanted, above 0
    additions  mL of stocks, acid and water that the yarn carries in, 0 to bath
    Raises OutOfRange outside these; additions over the bath are refused with what to change.
    Source: arithmetic.
    """
    require("bath", bath, above=0.0)
    require("additions", additions, 0.0)
    if additions > bath:
        raise OutOfRange(
            "additions",
            additions,
            0.0,
            bath,
            f"the additions come to {additions:.0f} mL and the bath is to be {bath:.0f} mL: use"
            " stronger stocks or a higher liquor ratio",
        )
    return bath - additions


def yarn_displacement(mass: float, density: float) -> float:
    """How much, mL, the yarn raises the water: the volume of the fiber; the water inside and
    between is the bath's own.

    mass     g of dry fiber, above 0 to 100,000
    density  g/cm3, 0.5 to 3
    Raises OutOfRange outside these.
    Source: definition of density; yarn that still holds air stands higher (common practice).
    """
    _require_mass(mass)
    require("density", density, 0.5, 3.0)
    return mass / density


def pot_level(bath: float, displacement: float, fill_line: float) -> float:
    """How full the pot is, mL, with bath and yarn.

    bath          mL, above 0
    displacement  mL of yarn, 0 or more (see yarn_displacement)
    fill_line     mL that the pot may be filled to, above 0
    Raises OutOfRange outside these; over the fill line is refused with what to change.
    Source: arithmetic.
    """
    require("bath", bath, above=0.0)
    require("displacement", displacement, 0.0)
    require("fill_line", fill_line, above=0.0)
    level = bath + displacement
    if level > fill_line * (1 + 1e-9):
        raise OutOfRange(
            "bath",
            bath,
            0.0,
            fill_line - displacement,
            f"bath and yarn come to {level / 1000:.1f} L and the pot may be filled to"
            f" {fill_line / 1000:.1f} L: use less yarn in a pot, a lower liquor ratio or a"
            " larger pot",
        )
    return level


def over_held(total_depth: float, held: float) -> float:
    """Depth, % of the fiber, above what a class of dye holds; 0 where it is not above. That dye
    stays in the bath.

    total_depth  % of all dyes together, 0 to 100
    held         % that the class usually holds at the most, above 0 to 100
    Raises OutOfRange outside these.
    Source: arithmetic; what a class holds is the caller's.
    """
    require("total_depth", total_depth, 0.0, 100.0)
    require("held", held, 0.0, 100.0, above=0.0)
    return max(total_depth - held, 0.0)


def by_weight(strength: float) -> float:
    """Strength by weight, %, of a thin acid that a label gives in grams in 100 mL.

    strength  g in 100 mL, above 0 to 40
    Raises OutOfRange outside these.
    Source: definition of strength; that so thin an acid is at most 2 % heavier than water, for
    which 1 % stands here, is from memory, unverified.
    """
    _require_strength(strength)
    return strength / 1.01


def by_weight_error(strength: float) -> float:
    """How far off that may be, % by weight either way: a hundredth of it.

    strength  g in 100 mL, above 0 to 40
    Raises OutOfRange outside these.
    Source: as for by_weight.
    """
    _require_strength(strength)
    return strength * 0.01


def shade_error(error: float, strength: float, mass: float, total_depth: float) -> float:
    """Error of one stock's dose as a share of the whole shade, %.

    error        mL either way (see measuring.volume_error), 0 or more
    strength     g in 100 mL of that stock, above 0 to 40
    mass         g of fiber, above 0 to 100,000
    total_depth  % of all dyes together, above 0 to 100
    Raises OutOfRange outside these.
    Source: first-order propagation of the dose's error.
    """
    require("total_depth", total_depth, 0.0, 100.0, above=0.0)
    return 100 * depth_of_dye(dye_in_stock(error, strength), mass) / total_depth


def measurable_strength(
    dye: float, least: float, strengths: Sequence[float] = USUAL_STRENGTHS
) -> float:
    """The strongest usual stock, g in 100 mL, of which a dose is at least a given volume.

    dye        g in the dose, above 0
    least      mL, the smallest dose that the syringe measures well enough, above 0 (see
               measuring.least_dose)
    strengths  g in 100 mL to choose from, each above 0 to 40
    Raises OutOfRange outside these, and where even the weakest gives less.
    Source: arithmetic; strengths are common practice.
    """
    require("dye", dye, above=0.0)
    require("least", least, above=0.0)
    for strength in sorted(strengths, reverse=True):
        if stock_volume(dye, strength) >= least * (1 - 1e-9):
            return strength
    raise OutOfRange(
        "dye",
        dye,
        least * min(strengths, default=0.0) / 100,
        None,
        "no usual stock is weak enough to measure this dose: dye more at once, or leave this"
        " dye out",
    )


def _require_mass(mass: float) -> None:
    require("mass", mass, 0.0, HEAVIEST, above=0.0)


def _require_strength(strength: float) -> None:
    require("strength", strength, 0.0, STRONGEST, above=0.0)
