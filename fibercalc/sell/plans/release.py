"""A release written out: what to dye, order, weigh, load and pack, what it brings, and what another quantity would change; and the plan on paper."""

from collections import Counter
from dataclasses import replace
from math import ceil

from ...core.answer import Table
from ...core.outcome import Outcome
from ...core.units import MASS
from ...dye.recipe import dye_mass
from ..release import KIT, SET_CUT, SET_WHOLE, SKEIN, bill_of

WORDS = {SKEIN: "skein", KIT: "kit", SET_WHOLE: "set", SET_CUT: "set"}
TRIED = (("one more", 1, 1.0), ("a quarter more", 0, 1.25), ("a quarter fewer", 0, 0.75))


def colors_table(r: Outcome) -> Table:
    """Each colorway: skeins, loads, yarn and dye."""
    rows = []
    for need in r.kept["bill"].colors:
        dyes = ", ".join(f"{name} {r.measured(dye_mass(need.mass, depth), MASS, 'g', 0.1)}" for name, depth in need.colorway.recipe)
        rows.append((need.colorway.name, need.colorway.base, str(need.skeins), str(len(need.loads)), r.amount(need.mass, MASS, "g", 5), dyes or "–"))
    return Table("What to dye", ("Colorway", "Base", "Skeins", "Loads", "Yarn", "Dye to weigh"), tuple(rows))


def order_table(r: Outcome) -> Table:
    """Base, dye and acid: needed, on hand, short, to order."""
    bill, rows = r.kept["bill"], []
    for base in r.kept["bases"]:
        need = bill.bases[base.name]
        packs = bill.packs[base.name]
        rows.append((base.name, f"{need} skeins", str(base.on_hand), str(max(need - base.on_hand, 0)), f"{packs} of {base.pack}" if packs else "none"))
    for name, grams in bill.dyes.items():
        held = r.kept["jar"].get(name.lower(), 0.0)
        short = max(grams - held, 0.0)
        rows.append((name, r.measured(grams, MASS, "g", 0.1), r.measured(held, MASS, "g", 0.1), r.measured(short, MASS, "g", 0.1, "up") if short else "0", "more" if short else "none"))
    held = r.given["acid_on_hand"]
    rows.append(("acid, pure", r.text("acid", "g"), r.measured(held, MASS, "g", 1) if held is not None else "–", r.measured(r.kept["short_acid"], MASS, "g", 1, "up") if r.kept["short_acid"] else "0", "more" if r.kept["short_acid"] else "none"))
    return Table("What is needed, on hand, short", ("What", "Needed", "On hand", "Short", "Order"), tuple(rows))


def loads_table(r: Outcome) -> Table:
    """The loads of each colorway by their size, and on which dye days they fall, in order."""
    rows, done, a_day = [], 0, r.given["a_day"]
    for need in r.kept["bill"].colors:
        first, last = done // a_day + 1, (done + len(need.loads) - 1) // a_day + 1
        done += len(need.loads)
        sizes = ", ".join(f"{many} × {size}" for size, many in sorted(Counter(need.loads).items(), reverse=True))
        rows.append((need.colorway.name, str(len(need.loads)), sizes, str(first) if first == last else f"{first} to {last}"))
    return Table("Loads, in order", ("Colorway", "Loads", "Skeins in each", "Dye day"), tuple(rows), "Each load is a lot with a number of its own. The days count pots only; the rail may ask for more.")


def packing_table(r: Outcome) -> Table:
    """What to pack: products, labels, boxes."""
    shades = {color.name: color.shades for color in r.kept["colors"]}
    rows = []
    for product in r.kept["bill"].products:
        skeins = product.made * sum(each for _, each in product.parts)
        small = product.made * sum(each * shades[name] for name, each in product.parts)
        of_set = product.kind in (SET_WHOLE, SET_CUT)
        held = ", ".join(f"{each} {name}" if not of_set else f"{each * shades[name]} of {name}" for name, each in product.parts)
        rows.append((product.name, WORDS[product.kind], str(product.wanted), str(product.spare), held, "–" if of_set else str(skeins), str(small) if of_set else "–", "–" if product.kind == SKEIN else str(product.made)))
    return Table("What to pack", ("Product", "Kind", "To sell", "Spare", "In one", "Bands", "Small labels", "Boxes"), tuple(rows))


def money_table(r: Outcome) -> Table:
    """Where the money goes."""
    def money(value):
        return r.settings.money + r.number(value, 2)

    costs = r.kept["costs"]
    rows = (("If all is sold, without tax", money(r.value("takings"))), ("Base used", money(costs["base"])), ("Dye used", money(costs["dye"])), ("Acid and energy", money(costs["energy"])),
            ("Labels, boxes, patterns", money(costs["other"])), ("Left for labor, fees and overhead", money(r.value("left"))), ("Your hours", money(r.value("work") / 60 * r.given["wage"])),
            ("Left after them", money(r.value("left_after_work"))))
    return Table("Money", ("What", "Amount"), rows, "Fees and tax are not in this sum; “What must it sell at” has them.")


def what_if_table(r: Outcome) -> Table:
    """Each product one more, a quarter more, a quarter fewer: what changes."""
    bill, rows = r.kept["bill"], []

    def left(found):
        bases = {base.name: base for base in r.kept["bases"]}
        prices = {row.dye.lower(): row.price / 100 for row in r.given["jars"]}
        used = sum(need.skeins * bases[need.colorway.base].pack_price / bases[need.colorway.base].pack for need in found.colors) + sum(grams * prices.get(name.lower(), 0.0) for name, grams in found.dyes.items())
        return found.takings - used - found.other - r.given["energy"] * found.skeins

    now = left(bill)
    for place, product in enumerate(bill.products):
        for words, more, times in TRIED:
            wanted = ceil(product.wanted * times) + more if times >= 1 else int(product.wanted * times)
            if wanted == product.wanted:
                continue
            tried = bill_of([replace(each, wanted=wanted) if at == place else each for at, each in enumerate(bill.products)], r.kept["colors"], r.kept["bases"], r.kept["room"])
            rows.append((product.name, f"{words}: {wanted}", _signed(tried.skeins - bill.skeins), _signed(sum(tried.packs.values()) - sum(bill.packs.values())), _signed(tried.loads - bill.loads),
                         _signed(tried.dye_days - bill.dye_days), ("+" if left(tried) >= now else "−") + r.settings.money + r.number(abs(left(tried) - now), 2)))
    return Table("What if", ("Product", "To sell", "Skeins", "Packs", "Loads", "Days", "Left"), tuple(rows)) if rows else None


def _signed(number: int) -> str:
    return f"+{number}" if number > 0 else f"−{-number}" if number < 0 else "0"


def plan_sheet(r: Outcome) -> tuple[Table, ...]:
    """The plan to pin up: order, weigh, dye, pack, with boxes to tick."""
    order, loads, packing = order_table(r), loads_table(r), packing_table(r)
    dye = {row[0]: row[5] for row in colors_table(r).rows}
    return (replace(order, columns=(*order.columns, "Done"), rows=tuple((*row, "☐") for row in order.rows)),
            Table("Dye, load by load", ("Colorway", "Loads", "Skeins in each", "Day", "Dye in all", "Lot numbers", "Done"), tuple((*row, dye[row[0]], "", "☐") for row in loads.rows)),
            Table("Pack", ("Product", "To sell", "Spare", "In one", "Bands", "Small", "Boxes", "Done"), tuple((row[0], *row[2:], "☐") for row in packing.rows)),
            Table("By the date", ("Step", "Last day", "Done on", ""), tuple((step, "", "", "☐") for step in ("Base ordered", "Base here, weighed", "Last load", "Dry, labels on", "Pictures, list", "Release", "Posted abroad", "Posted home"))))
