"""What planning cards hand on: a release's colorways to the dye room, its needs to the order, a kit's loads to the packing table.

Each function takes the outcome of the card named in it and gives canonical texts, one dict for each row.
"""

from ..release import KIT, SET_CUT, SET_WHOLE

MOST_RECIPES, MOST_LOTS, MOST_DYES, MOST_SET_DYES, NAME = 40, 24, 40, 3, 40  # rows of the cards that get them, and letters of a name there


def _text(r, name: str) -> str:
    return r.readings[name].text


def release_recipes(r) -> list[dict]:
    """release-plan to pots: a recipe for each colorway, one for each shade of a set while they fit."""
    needs = r.kept["bill"].colors
    apart = sum(need.colorway.shades for need in needs) <= MOST_RECIPES
    rows = []
    for need in needs:
        shades = need.colorway.shades if apart else 1
        for shade in range(1, shades + 1):
            rows.append({"name": f"{need.colorway.name[:NAME - 4]} {shade}" if shades > 1 else need.colorway.name[:NAME], "skeins": str(min(-(-need.skeins // shades), 400))})
    return rows


def release_bases(r) -> list[dict]:
    """release-plan to base-order: what the release needs of each base."""
    return [{"name": base.name[:NAME], "needed": str(r.kept["bill"].bases[base.name]), "promised": "0", "on_hand": _text(r, f"bases.{number}.on_hand"), "week": "0", "pack": _text(r, f"bases.{number}.pack"),
             "price": _text(r, f"bases.{number}.price"), "large": "0", "large_price": "0", "mass": _text(r, f"bases.{number}.mass")} for number, base in enumerate(r.kept["bases"], 1)]


def release_dyes(r) -> list[dict]:
    """release-plan to base-order: what it needs of each dye; a jar's weight without the jar."""
    prices = {row.dye.lower(): row.price for row in r.given["jars"]}
    return [{"name": name[:NAME], "needed": f"{grams:.6g}g", "jar": f"{r.kept['jar'].get(name.lower(), 0.0):.6g}g", "empty": "0g", "bottle": "0mL", "strength": "1g/100mL", "age": "0", "pack": "100g", "price": f"{prices.get(name.lower(), 0):g}"}
            for name, grams in list(r.kept["bill"].dyes.items())[:MOST_DYES]]


def dyed_colors(r) -> list[str]:
    """release-plan to dye-recipe: the colorways that have a recipe of their own (a set's shades do not)."""
    return [need.colorway.name for need in _with_recipe(r)]


def _with_recipe(r):
    return [need for need in r.kept["bill"].colors if need.colorway.shades == 1 and 1 <= len(need.colorway.recipe) <= 8]


def color_dyes(r, number: int) -> list[dict]:
    """release-plan to dye-recipe: the dyes of one colorway."""
    return [{"name": name[:NAME], "depth": f"{depth:.6g}%", "strength": "1g/100mL"} for name, depth in _with_recipe(r)[number - 1].colorway.recipe]


def color_load(r, number: int) -> str:
    """release-plan to dye-recipe: skeins in the largest load of one colorway."""
    return str(max(_with_recipe(r)[number - 1].loads))


def color_lots(r, number: int) -> str:
    """release-plan to dye-recipe: how many loads of one colorway."""
    return str(min(len(_with_recipe(r)[number - 1].loads), 200))


def color_mass(r, number: int) -> str:
    """release-plan to dye-recipe: what a skein of its base weighs."""
    base = _with_recipe(r)[number - 1].colorway.base
    return _text(r, f"bases.{[each.name for each in r.kept['bases']].index(base) + 1}.mass")


def _kits(r):
    """Kits whose colors' loads are few enough to be listed one by one, and not shared with anything but this kit and single skeins."""
    loads = {need.colorway.name: need for need in r.kept["bill"].colors}
    return [product for product in _made_kits(r) if sum(len(loads[color].loads) for color, _ in product.parts) <= MOST_LOTS and len(product.parts) <= 8]


def kit_names(r) -> list[str]:
    """release-plan to parcels: kits that can be shared out."""
    return [kit.name for kit in _kits(r)]


def kit_count(r, number: int) -> str:
    return str(_kits(r)[number - 1].wanted)


def kit_spare(r, number: int) -> str:
    return str(_kits(r)[number - 1].spare)


def kit_parts(r, number: int) -> list[dict]:
    return [{"color": color[:NAME], "each": str(each)} for color, each in _kits(r)[number - 1].parts]


def kit_lots(r, number: int) -> list[dict]:
    """Planned loads as lots; what is really good in each is for the user to say."""
    loads = {need.colorway.name: need.loads for need in r.kept["bill"].colors}
    return [{"color": color[:NAME], "lot": f"load {place}", "good": str(count)} for color, _ in _kits(r)[number - 1].parts for place, count in enumerate(loads[color], 1)]


def _made_kits(r):
    return [product for product in r.kept["bill"].products if product.kind == KIT and product.made]


def card_kits(r) -> list[str]:
    """release-plan to label: every kit has a card, however many loads it takes."""
    return [kit.name for kit in _made_kits(r)]


def card_kit(r, number: int) -> str:
    return _made_kits(r)[number - 1].name


def card_copies(r, number: int) -> str:
    return str(_made_kits(r)[number - 1].wanted)


def kit_parcel(r, number: int) -> list[dict]:
    """release-plan to parcels: the kit as the one parcel that is known."""
    kit = _kits(r)[number - 1]
    return [{"name": kit.name, "skeins": str(sum(each for _, each in kit.parts))}]


def nobody(r, number: int = 0) -> list[dict]:
    """An empty list: the example's rows are not the user's."""
    return []


def _sets(r):
    return [(number, row) for number, row in enumerate(r.given["products"], 1) if row.kind in (SET_WHOLE, SET_CUT)]


def set_names(r) -> list[str]:
    """release-plan to set-plan: its sets."""
    return [row.name for _, row in _sets(r)]


def set_field(field: str):
    """release-plan to set-plan: one field of a set's row."""
    return lambda r, number: _text(r, f"products.{_sets(r)[number - 1][0]}.{field}")


def set_shades(r, number: int) -> str | None:
    shades = {color.name: color.shades for color in r.kept["colors"]}
    parts = r.kept["bill"].products[_sets(r)[number - 1][0] - 1].parts
    return str(shades[parts[0][0]]) if shades[parts[0][0]] > 1 else None


def set_dye_names(r, number: int) -> list[dict] | None:
    """release-plan to set-plan: which dyes its shades are made with; how they go from the first to the last it does not know."""
    colorway = r.kept["bill"].products[_sets(r)[number - 1][0] - 1].parts[0][0]
    recipe = next(color.recipe for color in r.kept["colors"] if color.name == colorway)
    return [{"name": name} for name, _ in recipe] if 1 <= len(recipe) <= MOST_SET_DYES else None


def set_recipes(r) -> list[dict]:
    """set-plan to pots: a recipe for each shade, dyed whole."""
    return [{"name": f"shade {number}", "skeins": str(r.kept["each"])} for number in range(1, r.given["days"] + 1)][:MOST_RECIPES]


def set_dyes(r) -> list[dict]:
    """set-plan to shade-steps: the same dyes."""
    return [{field: _text(r, f"dyes.{number}.{field}") for field in ("name", "sample", "percent", "first", "last")} for number in range(1, len(r.given["dyes"]) + 1)]


def set_product(r) -> list[dict]:
    """set-plan to release-plan: the set as a product without a price yet."""
    name = (r.given["name"] or "The set")[:NAME]
    return [{"name": name, "kind": SET_WHOLE, "holds": name, "wanted": _text(r, "sets"), "spare": _text(r, "spare"), "price": "0", "other": "0", "small": str(r.value("per"))}]


def set_colorway(r) -> list[dict]:
    """set-plan to release-plan: its shades as one colorway with their mean depth."""
    recipes = r.kept["ladder"].recipes
    doses = [f"{row.name} {sum(recipe[at] for recipe in recipes) / len(recipes):.3f}" for at, row in enumerate(r.given["dyes"])]
    return [{"name": (r.given["name"] or "The set")[:NAME], "recipe": ", ".join(doses), "shades": _text(r, "days")}]


def kit_recipes(r) -> list[dict]:
    """kit-yarn to pots: each color's skeins in all kits."""
    return [{"name": row.name[:NAME], "skeins": str(min(r.value("packed") * given, 400))} for row, _, _, given, _ in r.kept["colors"]]


def kit_colors(r) -> list[dict] | None:
    """kit-yarn to parcels: what one kit holds."""
    return [{"color": row.name[:NAME], "each": str(given)} for row, _, _, given, _ in r.kept["colors"]][:8]


def kit_color_lots(r) -> list[dict]:
    """kit-yarn to parcels: one lot a color, until the user lists the real ones."""
    return [{"color": row.name[:NAME], "lot": "all", "good": str(min(r.value("packed") * given, 2000))} for row, _, _, given, _ in r.kept["colors"]][:8]


def closed_days(r) -> list[dict]:
    """back-plan and base-order to one another: the closed days."""
    return [{"first": _text(r, f"closed.{number}.first"), "last": _text(r, f"closed.{number}.last")} for number in range(1, len(r.given["closed"]) + 1)]


def first_dye_day(r) -> str:
    """back-plan to base-order: the day on which base is wanted."""
    return r.value("dye_from").isoformat()
