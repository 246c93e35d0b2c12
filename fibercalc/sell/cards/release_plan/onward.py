"""Where a release goes on to: the order, the pots, each recipe, its sets, kits and their cards."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from ....core.card import Carry, Constant, Input, Rows
from ....core.outcome import Outcome
from ...release import KIT, SET_CUT, SET_WHOLE
from .asked import Base, Colorway, Product, ReleasePlan
from .worked import colors_dyed, jars_by_dye

# Rows of the cards that get them, and letters of a name there.
MOST_RECIPES, MOST_LOTS, MOST_DYES, MOST_OF_SET, MOST_IN_POT, MOST_IN_KIT = 40, 24, 40, 3, 8, 8
MOST_SKEINS, MOST_OF_A_COLOR = 400, 200
NAME = 40

Out = Outcome[ReleasePlan]
Texts = list[dict[str, str]]


def _text(out: Out, rows: Rows[Any], part: Input[Any], number: int) -> str:
    """What stands in a row, counted from 1."""
    return out.readings[rows.each(part).of(number)].text


def recipes(out: Out) -> Texts:
    """To pots: a recipe for each colorway, one for each shade of a set while they fit."""
    dyed = colors_dyed(out.case)
    apart = sum(colorway.shades for colorway in dyed) <= MOST_RECIPES
    rows = []
    for colorway in dyed:
        shades = colorway.shades if apart else 1
        for shade in range(1, shades + 1):
            name = f"{colorway.name[: NAME - 4]} {shade}" if shades > 1 else colorway.name[:NAME]
            skeins = min(-(-colorway.skeins // shades), MOST_SKEINS)
            rows.append({"name": name, "skeins": str(skeins)})
    return rows


def bases(out: Out) -> Texts:
    """To base-order: what the release needs of each base."""
    rows = ReleasePlan.bases
    return [
        {
            "name": base.name[:NAME],
            "needed": str(base.needed),
            "promised": "0",
            "on_hand": _text(out, rows, Base.on_hand, number),
            "week": "0",
            "pack": _text(out, rows, Base.pack, number),
            "price": _text(out, rows, Base.price, number),
            "large": "0",
            "large_price": "0",
            "mass": _text(out, rows, Base.mass, number),
        }
        for number, base in enumerate(out.case.bases, 1)
    ]


def dyes(out: Out) -> Texts:
    """To base-order: what it needs of each dye; a jar's weight without the jar."""
    jars, rows = jars_by_dye(out.case), []
    for name, grams in list(out.case.dyes.items())[:MOST_DYES]:
        jar = jars.get(name.lower())
        rows.append(
            {
                "name": name[:NAME],
                "needed": f"{grams:.6g}g",
                "jar": f"{jar.on_hand if jar else 0.0:.6g}g",
                "empty": "0g",
                "bottle": "0mL",
                "strength": "1g/100mL",
                "age": "0",
                "pack": "100g",
                "price": f"{jar.price if jar else 0:g}",
            }
        )
    return rows


def _with_recipe(out: Out) -> list[Colorway]:
    """The colorways that have a recipe of their own (a set's shades do not)."""
    return [
        colorway
        for colorway in colors_dyed(out.case)
        if colorway.shades == 1 and 1 <= len(colorway.doses) <= MOST_IN_POT
    ]


def color_names(out: Out) -> list[str]:
    return [colorway.name for colorway in _with_recipe(out)]


def color_dyes(out: Out, number: int) -> Texts:
    return [
        {"name": name[:NAME], "depth": f"{depth:.6g}%", "strength": "1g/100mL"}
        for name, depth in _with_recipe(out)[number - 1].doses
    ]


def color_load(out: Out, number: int) -> str:
    return str(_with_recipe(out)[number - 1].largest_load)


def color_lots(out: Out, number: int) -> str:
    return str(min(_with_recipe(out)[number - 1].loads, MOST_OF_A_COLOR))


def color_mass(out: Out, number: int) -> str:
    """What a skein of its base weighs."""
    names = [base.name for base in out.case.bases]
    place = names.index(_with_recipe(out)[number - 1].base_name) + 1
    return _text(out, ReleasePlan.bases, Base.mass, place)


def _made_kits(out: Out) -> list[Product]:
    return [product for product in out.case.products if product.kind == KIT and product.made]


def _kits(out: Out) -> list[Product]:
    """Kits that can be shared out: their colors' loads are few enough to be listed one by one."""
    loads = {colorway.name: colorway.loads for colorway in out.case.colorways}
    return [
        kit
        for kit in _made_kits(out)
        if sum(loads[color] for color, _ in kit.parts) <= MOST_LOTS
        and len(kit.parts) <= MOST_IN_KIT
    ]


def kits_too_large(out: Out) -> list[str]:
    """The names of those that have no way to be shared out, so that it can be said."""
    shared = _kits(out)
    return [kit.name for kit in _made_kits(out) if kit not in shared]


def kit_names(out: Out) -> list[str]:
    return [kit.name for kit in _kits(out)]


def kit_count(out: Out, number: int) -> str:
    return str(_kits(out)[number - 1].to_sell)


def kit_spare(out: Out, number: int) -> str:
    return str(_kits(out)[number - 1].spare)


def kit_parts(out: Out, number: int) -> Texts:
    return [
        {"color": color[:NAME], "each": str(each)} for color, each in _kits(out)[number - 1].parts
    ]


def kit_lots(out: Out, number: int) -> Texts:
    """Planned loads as lots; what is really good in each is for the user to say."""
    sizes = {colorway.name: colorway.load_sizes for colorway in out.case.colorways}
    return [
        {"color": color[:NAME], "lot": f"load {place}", "good": str(count)}
        for color, _ in _kits(out)[number - 1].parts
        for place, count in enumerate(sizes[color], 1)
    ]


def kit_parcel(out: Out, number: int) -> Texts:
    """The kit as the one parcel that is known."""
    kit = _kits(out)[number - 1]
    return [{"name": kit.name, "skeins": str(sum(each for _, each in kit.parts))}]


def nobody(out: Out, number: int) -> Texts:
    """An empty list: the example's rows are not the user's."""
    return []


def card_names(out: Out) -> list[str]:
    """To label: every kit has a card, however many loads it takes."""
    return [kit.name for kit in _made_kits(out)]


def card_name(out: Out, number: int) -> str:
    return _made_kits(out)[number - 1].name


def card_copies(out: Out, number: int) -> str:
    return str(_made_kits(out)[number - 1].to_sell)


def _sets(out: Out) -> list[tuple[int, Product]]:
    return [
        (number, product)
        for number, product in enumerate(out.case.products, 1)
        if product.kind in (SET_WHOLE, SET_CUT)
    ]


def set_names(out: Out) -> list[str]:
    return [product.name for _, product in _sets(out)]


def set_field(part: Input[Any]) -> Callable[[Out, int], str]:
    """One field of a set's row."""
    return lambda out, number: _text(out, ReleasePlan.products, part, _sets(out)[number - 1][0])


def _colorway_of_set(out: Out, number: int) -> Colorway:
    name = _sets(out)[number - 1][1].parts[0][0]
    colorways: list[Colorway] = out.case.colorways
    return next(colorway for colorway in colorways if colorway.name == name)


def set_shades(out: Out, number: int) -> str | None:
    shades = _colorway_of_set(out, number).shades
    return str(shades) if shades > 1 else None


def set_dyes(out: Out, number: int) -> Texts | None:
    """Which dyes its shades are made with; how they go from first to last it does not know."""
    doses = _colorway_of_set(out, number).doses
    return [{"name": name} for name, _ in doses] if 1 <= len(doses) <= MOST_OF_SET else None


CARRY = (
    Carry("base-order", "What to order", {"bases": bases, "dyes": dyes}),
    Carry(
        "back-plan",
        "By when must I do what?",
        {"dye_days": ReleasePlan.dye_days, "drying": ReleasePlan.drying},
    ),
    Carry(
        "pots",
        "The run, hour by hour",
        {
            "recipes": recipes,
            "skein_mass": ReleasePlan.bases.each(Base.mass, row=1),
            "rail": ReleasePlan.rail,
            "drying": ReleasePlan.drying,
        },
    ),
    Carry(
        "dye-recipe",
        "Recipe for {}",
        {"skeins": color_load, "skein_mass": color_mass, "dyes": color_dyes, "lots": color_lots},
        each=color_names,
    ),
    Carry(
        "set-plan",
        "Shades of {}",
        {
            "name": set_field(Product.name),
            "dyes": set_dyes,
            "sets": set_field(Product.wanted),
            "spare": set_field(Product.spare),
            "days": set_shades,
            "wanted_by": Constant("count"),
            "wanted_count": set_field(Product.small),
            "load": ReleasePlan.load,
            "a_day": ReleasePlan.a_day,
        },
        each=set_names,
    ),
    Carry(
        "parcels",
        "Share out {} by lot",
        {
            "kits": kit_count,
            "spare": kit_spare,
            "kit": kit_parts,
            "lots": kit_lots,
            "club": nobody,
            "parcels": kit_parcel,
        },
        each=kit_names,
    ),
    Carry(
        "label",
        "Kit card for {}",
        {"kind": Constant("kit"), "kit": card_name, "copies": card_copies},
        each=card_names,
    ),
    Carry("price", "Does a skein pay?", {"minutes": ReleasePlan.minutes}),
)
