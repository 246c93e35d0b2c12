"""What a release takes: products to skeins, skeins to base, loads, dye and days, and the money."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import ceil
from typing import TypeVar

from ....core.arithmetic import largest, total
from ....core.problem import OutOfRange, Refused
from ....core.steps import at_least, searched
from ....dye.pot_loads import days_at_rounds
from ....dye.recipe import dye_mass
from ...notation import read_held, read_recipe
from ...release import KIT, SET_CUT, SKEIN, loads_of_color, packs_for, skeins_dyed, skeins_taken
from .asked import Base, Colorway, Jar, Product, ReleasePlan

N = TypeVar("N", int, float)

DAY = 1440  # min
NOISE = 1e-9  # so little over a whole one asks for no other
AS_TYPED = 100.0  # % of the numbers to sell


def answer(case: ReleasePlan) -> None:
    work_out(case)
    if not case.skeins:
        raise Refused(
            "Products: nothing is to be made; give at least one product a number and a colorway.",
            ReleasePlan.products.each(Product.wanted, row=1),
        )


def work_out(case: ReleasePlan) -> None:
    _read_names(case)
    for product in case.products:
        _find_numbers(case, product)
    try:
        _find_colors(case)
        _find_dyes(case)
        _find_days(case)
    except OutOfRange:
        raise Refused(
            "Products: this comes to more than 100 kg or 5,000 skeins of one colorway; plan it in"
            " parts.",
            ReleasePlan.products.each(Product.wanted, row=1),
        ) from None
    for base in case.bases:
        _find_order(case, base)
    case.packs = _all([base.packs for base in case.bases])
    case.short_base = _all([base.short for base in case.bases])
    case.to_pay = _all([base.pays for base in case.bases])
    _find_labels(case)
    _find_costs(case)
    _find_what_is_left(case)


def colors_dyed(case: ReleasePlan) -> list[Colorway]:
    """The colorways that a product takes, in their order."""
    return [colorway for colorway in case.colorways if colorway.skeins]


def jars_by_dye(case: ReleasePlan) -> dict[str, Jar]:
    """The jar of each dye, by its name in lower case."""
    return {jar.dye.lower(): jar for jar in case.jars}


def _read_names(case: ReleasePlan) -> None:
    """Each line's names as the other lines have them. Raises Refused for a name that is not
    there.
    """
    _require_own_names(case.bases, "Base", "bases")
    _require_own_names(case.colorways, "Colorway", "colorways")
    for number, colorway in enumerate(case.colorways, 1):
        _read_colorway(case, colorway, number)
    _require_own_names(case.products, "Product", "products")
    for number, product in enumerate(case.products, 1):
        _read_product(case, product, number)


def _require_own_names(
    rows: Sequence[Base] | Sequence[Colorway] | Sequence[Product], what: str, place: str
) -> None:
    names = [row.name.strip().lower() for row in rows]
    for number, name in enumerate(names):
        if not name or name in names[:number]:
            raise Refused(
                f"{what} {number + 1}, name: give each a name of its own.",
                f"{place}.{number + 1}.name",
            )


def _read_colorway(case: ReleasePlan, colorway: Colorway, number: int) -> None:
    names = [base.name for base in case.bases]
    where = f"colorways.{number}.base"
    colorway.base_name = (
        _found(colorway.base, names, (f"Colorway {number}, base", "base", where))
        if colorway.base
        else names[0]
    )
    try:
        colorway.doses = read_recipe(colorway.recipe or "")
    except OutOfRange as error:
        raise Refused(
            f"Colorway {number}, recipe: {error.reason}.",
            ReleasePlan.colorways.each(Colorway.recipe, row=number),
        ) from None


def _read_product(case: ReleasePlan, product: Product, number: int) -> None:
    names = [colorway.name for colorway in case.colorways]
    label, where = f"Product {number}, what one holds", f"products.{number}.holds"
    try:
        held = read_held(product.holds)
    except OutOfRange as error:
        raise Refused(f"{label}: {error.reason}.", where) from None
    product.parts = tuple(
        (_found(color, names, (label, "colorway", where)), each) for color, each in held
    )


def _found(text: str, choices: Sequence[str], said: tuple[str, str, str]) -> str:
    """The name among choices that a person meant, whatever its capitals.

    said  whose name it is, what it names, and the input
    """
    for name in choices:
        if name.strip().lower() == text.strip().lower():
            return name
    whose, what, where = said
    raise Refused(
        f"{whose}: no {what} is called “{text}”; give one of: {', '.join(choices)}.", where
    )


def _find_numbers(case: ReleasePlan, product: Product) -> None:
    if case.scale == AS_TYPED:
        product.to_sell = product.wanted
    else:
        product.to_sell = searched(
            ceil(float(product.wanted) * float(case.scale) / 100 - NOISE),
            lambda count: (at_least(count, product.wanted * case.scale / 100),),
            lambda: product.wanted * case.scale / 100,
        )
    product.made = product.to_sell + product.spare


def _find_colors(case: ReleasePlan) -> None:
    bases = {base.name: base for base in case.bases}
    for colorway in case.colorways:
        held = [
            (product, each)
            for product in case.products
            if product.made and (each := _in_one(product, colorway))
        ]
        _find_skeins(colorway, held, bases[colorway.base_name])
        _find_loads(case, colorway, held)
    case.skeins = _all([colorway.skeins for colorway in colors_dyed(case)])
    case.yarn = _all([colorway.yarn for colorway in colors_dyed(case)])
    case.loads = _all([colorway.loads for colorway in colors_dyed(case)])


def _in_one(product: Product, colorway: Colorway) -> int:
    """Skeins of a colorway in one product; for a set, small ones of each shade."""
    return sum(each for name, each in product.parts if name == colorway.name)


def _find_skeins(colorway: Colorway, held: list[tuple[Product, int]], base: Base) -> None:
    colorway.by_product = {}
    if not held:
        colorway.skeins, colorway.yarn = 0, 0.0
        return
    shades = max(1, colorway.shades)  # of two alike the plain one: nobody writes × 1 shade
    taken, dyed = [], []
    for product, each in held:
        small = product.maybe(Product.small) or 1
        counts = (product.kind, product.made, each, shades, small)
        taken.append(skeins_taken(*counts))
        dyed.append(skeins_dyed(*counts))
        colorway.by_product[product.name] = int(taken[-1])
    colorway.skeins = sum(taken)
    if any(product.kind == SET_CUT for product, _ in held):
        colorway.worth = sum(dyed)
        colorway.yarn = colorway.worth * base.mass
    else:
        colorway.yarn = colorway.skeins * base.mass
    colorway.base_cost = colorway.skeins * base.price / base.pack


def _small_of(product: Product) -> int:
    """Small skeins in a full one; one where none are made."""
    small = product.maybe(Product.small)
    return 1 if small is None else int(small)


def _find_loads(case: ReleasePlan, colorway: Colorway, held: list[tuple[Product, int]]) -> None:
    colorway.load_sizes, colorway.parted = loads_of_color(
        [(product.kind, int(product.made), each, _small_of(product)) for product, each in held],
        int(colorway.shades),
        int(case.load),
    )
    if not held:
        colorway.loads = 0
        return
    colorway.loads = searched(
        len(colorway.load_sizes),
        lambda count: (at_least(count * case.load, colorway.skeins),),
        lambda: colorway.skeins / case.load,
    )
    colorway.largest_load = max(colorway.load_sizes)


def _find_dyes(case: ReleasePlan) -> None:
    doses: dict[str, list[float]] = {}
    for colorway in colors_dyed(case):
        for dye, depth in colorway.doses:
            doses.setdefault(dye, []).append(dye_mass(colorway.yarn, depth))
    jars = jars_by_dye(case)
    for dye, grams in doses.items():
        case.dyes[dye] = sum(grams)
        jar = jars.get(dye.lower())
        if jar is None:
            case.short_dyes[dye] = case.dyes[dye]
            continue
        case.dye_costs[dye] = case.dyes[dye] * jar.price / 100
        if case.dyes[dye] > jar.on_hand:
            case.short_dyes[dye] = case.dyes[dye] - jar.on_hand
    case.dye = _all(case.dyes.values())
    case.acid = case.yarn * case.acid_share / 100
    if case.acid_on_hand is not None:
        case.short_acid = largest(case.acid - case.acid_on_hand, 0.0)


def _find_order(case: ReleasePlan, base: Base) -> None:
    base.needed = _all(
        [colorway.skeins for colorway in colors_dyed(case) if colorway.base_name == base.name]
    )
    base.short = largest(base.needed - base.on_hand, 0)
    base.packs = searched(
        packs_for(float(base.needed), float(base.on_hand), float(base.pack)),
        lambda count: (at_least(count * base.pack, base.needed - base.on_hand),),
        lambda: (base.needed - base.on_hand) / base.pack,
    )
    base.pays = base.packs * base.price


def _find_days(case: ReleasePlan) -> None:
    case.by_pots = case.loads / case.a_day
    case.by_rail = case.skeins * case.drying / DAY / case.rail
    case.dye_days = searched(
        max(days_at_rounds(int(case.loads), 1, int(case.a_day)), _whole(case.by_rail)),
        lambda count: (at_least(count, case.by_pots), at_least(count, case.by_rail)),
        lambda: largest(case.by_pots, case.by_rail),
    )
    case.drying_days = searched(
        _whole(case.drying / DAY),
        lambda count: (at_least(count, case.drying / DAY),),
        lambda: case.drying / DAY,
    )
    if case.days_free is not None:
        case.short_days = largest(case.dye_days - case.days_free, 0)


def _whole(days: float) -> int:
    return ceil(float(days) - NOISE)


def _find_labels(case: ReleasePlan) -> None:
    shades = {colorway.name: int(colorway.shades) for colorway in case.colorways}
    for product in case.products:
        many = sum(each * shades[name] for name, each in product.parts)
        product.labels = product.made * many
    full = [product for product in case.products if product.kind in (SKEIN, KIT)]
    sets = [product for product in case.products if product not in full]
    case.bands = _all([product.labels for product in full])
    case.small_labels = _all([product.labels for product in sets])
    case.boxes = _all([product.made for product in case.products if product.kind != SKEIN])


def _find_costs(case: ReleasePlan) -> None:
    for product in case.products:
        product.brings = product.to_sell * product.price
        product.extras = product.made * product.other
    case.takings = _all([product.brings for product in case.products])
    case.base_used = _all([colorway.base_cost for colorway in colors_dyed(case)])
    case.dye_used = _all(case.dye_costs.values())
    case.energy_used = case.energy * case.skeins
    case.other_used = _all([product.extras for product in case.products])
    case.cost = case.base_used + case.dye_used + case.energy_used + case.other_used


def _find_what_is_left(case: ReleasePlan) -> None:
    case.left = case.takings - case.cost
    case.work = case.skeins * case.minutes
    case.labor = case.work / 60 * case.wage
    case.left_after_work = case.left - case.labor


def _all(values: Iterable[N]) -> N:
    """Their sum; one alone is itself."""
    several = list(values)
    return several[0] if len(several) == 1 else total(several)
