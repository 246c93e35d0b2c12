"""A release written out: what to dye, order, load and pack, its money, what if, and the plan."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace
from math import ceil

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.problem import Refused
from ....core.units import MASS
from ....dye.recipe import dye_mass
from ...pictures.flow import flow_picture
from ...release import KIT, SET_CUT, SET_WHOLE, SKEIN
from .asked import Product, ReleasePlan
from .worked import AS_TYPED, colors_dyed, jars_by_dye, work_out

WORDS = {SKEIN: "skein", KIT: "kit", SET_WHOLE: "set", SET_CUT: "set"}
TRIED = (("one more", 1, 1.0), ("a quarter more", 0, 1.25), ("a quarter fewer", 0, 0.75))
BY_THE_DATE = (
    "Base ordered",
    "Base here, weighed",
    "Last load",
    "Dry, labels on",
    "Pictures, list",
    "Release",
    "Posted abroad",
    "Posted home",
)


def colors_table(out: Outcome[ReleasePlan]) -> Table:
    """Each colorway: skeins, loads, yarn and dye."""
    rows = []
    for colorway in colors_dyed(out.case):
        dyes = ", ".join(
            f"{name} {_grams(out, dye_mass(colorway.yarn, depth))}"
            for name, depth in colorway.doses
        )
        rows.append(
            (
                colorway.name,
                colorway.base_name,
                str(colorway.skeins),
                str(colorway.loads),
                out.amount(colorway.yarn, MASS, "g", 5),
                dyes or "–",
            )
        )
    return Table(
        "What to dye", ("Colorway", "Base", "Skeins", "Loads", "Yarn", "Dye to weigh"), tuple(rows)
    )


def _grams(out: Outcome[ReleasePlan], grams: float, rounding: str = "nearest") -> str:
    return out.measured(grams, MASS, "g", 0.1, rounding)


def order_table(out: Outcome[ReleasePlan]) -> Table:
    """Base, dye and acid: needed, on hand, short, to order."""
    case, jars = out.case, jars_by_dye(out.case)
    rows = [
        (
            base.name,
            f"{base.needed} skeins",
            str(base.on_hand),
            str(base.short),
            f"{base.packs} of {base.pack}" if base.packs else "none",
        )
        for base in case.bases
    ]
    for name, grams in case.dyes.items():
        jar, short = jars.get(name.lower()), case.short_dyes.get(name)
        rows.append(
            (
                name,
                _grams(out, grams),
                _grams(out, jar.on_hand if jar else 0.0),
                _grams(out, short, "up") if short else "0",
                "more" if short else "none",
            )
        )
    held, short = case.acid_on_hand, case.maybe(ReleasePlan.short_acid)
    rows.append(
        (
            "acid, pure",
            out.text(ReleasePlan.acid, "g"),
            out.measured(held, MASS, "g", 1) if held is not None else "–",
            out.measured(short, MASS, "g", 1, "up") if short else "0",
            "more" if short else "none",
        )
    )
    return Table(
        "What is needed, on hand, short",
        ("What", "Needed", "On hand", "Short", "Order"),
        tuple(rows),
    )


def loads_table(out: Outcome[ReleasePlan]) -> Table:
    """The loads of each colorway by their size, and on which dye days they fall, in order."""
    rows, done, a_day = [], 0, out.case.a_day
    for colorway in colors_dyed(out.case):
        first, last = done // a_day + 1, (done + colorway.loads - 1) // a_day + 1
        done += colorway.loads
        counts = sorted(Counter(colorway.load_sizes).items(), reverse=True)
        rows.append(
            (
                colorway.name,
                str(colorway.loads),
                ", ".join(f"{many} × {size}" for size, many in counts),
                str(first) if first == last else f"{first} to {last}",
            )
        )
    return Table(
        "Loads, in order",
        ("Colorway", "Loads", "Skeins in each", "Dye day"),
        tuple(rows),
        "Each load is a lot with a number of its own. The days count pots only; the rail may ask"
        " for more.",
    )


def packing_table(out: Outcome[ReleasePlan]) -> Table:
    """What to pack: products, labels, boxes."""
    shades = {colorway.name: colorway.shades for colorway in out.case.colorways}
    return Table(
        "What to pack",
        ("Product", "Kind", "To sell", "Spare", "In one", "Bands", "Small labels", "Boxes"),
        tuple(_packed(product, shades) for product in out.case.products),
    )


def _packed(product: Product, shades: dict[str, int]) -> tuple[str, ...]:
    of_set = product.kind in (SET_WHOLE, SET_CUT)
    held = ", ".join(
        f"{each * shades[name]}{' of' if of_set else ''} {name}" for name, each in product.parts
    )
    return (
        product.name,
        WORDS[product.kind],
        str(product.to_sell),
        str(product.spare),
        held,
        "–" if of_set else str(product.labels),
        str(product.labels) if of_set else "–",
        "–" if product.kind == SKEIN else str(product.made),
    )


def money_table(out: Outcome[ReleasePlan]) -> Table:
    """Where the money goes."""
    case = out.case
    rows = (
        ("If all is sold, without tax", case.takings),
        ("Base used", case.base_used),
        ("Dye used", case.dye_used),
        ("Acid and energy", case.energy_used),
        ("Labels, boxes, patterns", case.other_used),
        ("Left for labor, fees and overhead", case.left),
        ("Your hours", case.labor),
        ("Left after them", case.left_after_work),
    )
    return Table(
        "Money",
        ("What", "Amount"),
        tuple((words, out.settings.money + out.number(amount, 2)) for words, amount in rows),
        "Fees and tax are not in this sum; “What must it sell at” has them.",
    )


def what_if_table(out: Outcome[ReleasePlan]) -> Table | None:
    """Each product one more, a quarter more, a quarter fewer: what changes."""
    numbers, rows = [product.to_sell for product in out.case.products], []
    for place, product in enumerate(out.case.products):
        for words, more, times in TRIED:
            scaled = product.to_sell * times
            wanted = ceil(scaled) + more if times >= 1 else int(scaled)
            if wanted == product.to_sell:
                continue
            try:
                tried = _with_numbers(out.case, [*numbers[:place], wanted, *numbers[place + 1 :]])
            except Refused:  # so many more are beyond what a plan holds: they are no row
                continue
            rows.append((product.name, f"{words}: {wanted}", *_changes(out, tried)))
    if not rows:
        return None
    return Table(
        "What if", ("Product", "To sell", "Skeins", "Packs", "Loads", "Days", "Left"), tuple(rows)
    )


def _with_numbers(case: ReleasePlan, wanted: Sequence[int]) -> ReleasePlan:
    """The same release with other numbers to sell."""
    asked = {part.name: vars(case)[part.name] for part in case.inputs if part.name in vars(case)}
    asked["products"] = [
        Product(vars(product) | {"wanted": number})
        for product, number in zip(case.products, wanted)
    ]
    tried = ReleasePlan(asked | {"scale": AS_TYPED})
    work_out(tried)
    return tried


def _changes(out: Outcome[ReleasePlan], tried: ReleasePlan) -> tuple[str, ...]:
    now = out.case
    more = tried.left - now.left
    money = out.settings.money + out.number(abs(more), 2)
    return (
        _signed(tried.skeins - now.skeins),
        _signed(tried.packs - now.packs),
        _signed(tried.loads - now.loads),
        _signed(tried.dye_days - now.dye_days),
        ("+" if more >= 0 else "−") + money,
    )


def _signed(number: int) -> str:
    return f"+{number}" if number > 0 else f"−{-number}" if number < 0 else "0"


def plan_sheet(out: Outcome[ReleasePlan]) -> tuple[Table, ...]:
    """The plan to pin up: order, weigh, dye, pack, with boxes to tick."""
    order, loads, packing = order_table(out), loads_table(out), packing_table(out)
    dye = {row[0]: row[5] for row in colors_table(out).rows}
    return (
        replace(
            order, columns=(*order.columns, "Done"), rows=tuple((*row, "☐") for row in order.rows)
        ),
        Table(
            "Dye, load by load",
            ("Colorway", "Loads", "Skeins in each", "Day", "Dye in all", "Lot numbers", "Done"),
            tuple((*row, dye[row[0]], "", "☐") for row in loads.rows),
        ),
        Table(
            "Pack",
            ("Product", "To sell", "Spare", "In one", "Bands", "Small", "Boxes", "Done"),
            tuple((row[0], *row[2:], "☐") for row in packing.rows),
        ),
        Table(
            "By the date",
            ("Step", "Last day", "Done on", ""),
            tuple((step, "", "", "☐") for step in BY_THE_DATE),
        ),
    )


def picture(out: Outcome[ReleasePlan]) -> Picture:
    case, dyed = out.case, colors_dyed(out.case)
    flows = [
        (colorway.base_name, colorway.name, product, count)
        for colorway in dyed
        for product, count in colorway.by_product.items()
    ]
    flowing = {flow[2] for flow in flows}
    return flow_picture(
        [base.name for base in case.bases if base.needed],
        [colorway.name for colorway in dyed],
        [product.name for product in case.products if product.name in flowing],
        flows,
    )
