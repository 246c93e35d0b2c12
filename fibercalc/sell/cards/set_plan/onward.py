"""Where a set goes on to: its shades, its pots, a release, the calendar and the stickers."""

from __future__ import annotations

from ....core.card import Carry, Constant
from ....core.outcome import Outcome
from ...release import SET_WHOLE
from .asked import Dye, SetPlan

MOST_RECIPES, MOST_COPIES = 40, 600  # rows and labels of the cards that get them
LONGEST_NAME = 40  # letters of a name there
DYE_FIELDS = (Dye.name, Dye.sample, Dye.percent, Dye.first, Dye.last)

Texts = list[dict[str, str]]


def _name(out: Outcome[SetPlan]) -> str:
    return (out.case.name or "The set")[:LONGEST_NAME]


def recipes(out: Outcome[SetPlan]) -> Texts:
    """A recipe for each shade, dyed whole."""
    return [
        {"name": f"shade {number}", "skeins": str(out.case.each_shade)}
        for number in range(1, out.case.days + 1)
    ][:MOST_RECIPES]


def dyes(out: Outcome[SetPlan]) -> Texts:
    return [
        {field.name: out.readings[SetPlan.dyes.each(field).of(number)].text for field in DYE_FIELDS}
        for number in range(1, len(out.case.dyes) + 1)
    ]


def product(out: Outcome[SetPlan]) -> Texts:
    """The set as a product without a price yet."""
    return [
        {
            "name": _name(out),
            "kind": SET_WHOLE,
            "holds": _name(out),
            "wanted": out.readings[SetPlan.sets.name].text,
            "spare": out.readings[SetPlan.spare.name].text,
            "price": "0",
            "other": "0",
            "small": str(out.case.per),
        }
    ]


def colorway(out: Outcome[SetPlan]) -> Texts:
    """Its shades as one colorway with their mean depth."""
    doses = [f"{dye.name} {dye.mean_depth:.3f}" for dye in out.case.dyes]
    return [
        {
            "name": _name(out),
            "recipe": ", ".join(doses),
            "shades": out.readings[SetPlan.days.name].text,
        }
    ]


CARRY = (
    Carry(
        "shade-steps",
        "See the steps, even and weighed",
        {
            "undyed": SetPlan.undyed,
            "dyes": dyes,
            "count": SetPlan.days,
            "fiber": SetPlan.shade_cut,
            "scale_step": SetPlan.scale_step,
        },
    ),
    Carry(
        "skein-split",
        "Split one skein",
        {
            "skein_mass": SetPlan.skein_mass,
            "skein_length": SetPlan.skein_length,
            "loss_share": SetPlan.loss_share,
            "reel": SetPlan.reel,
            "total": SetPlan.all_small,
        },
    ),
    Carry(
        "pots",
        "How long does the whole run take?",
        {"recipes": recipes, "skein_mass": SetPlan.skein_mass},
    ),
    Carry(
        "release-plan",
        "Plan a release with it",
        {"products": product, "colorways": colorway, "load": SetPlan.load, "a_day": SetPlan.a_day},
    ),
    Carry("back-plan", "By when must I do what?", {"dye_days": SetPlan.days_whole}),
    Carry(
        "label",
        "Day stickers",
        {
            "kind": Constant("sticker"),
            "of_set": SetPlan.name,
            "last": SetPlan.days,
            "copies": lambda out: str(min(out.case.all_sets, MOST_COPIES)),
        },
    ),
)
