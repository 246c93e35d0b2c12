"""From a label's lot back to mill lot, jars and day, and forward to the orders that took it."""

from dataclasses import dataclass, field
from typing import Any

from .lines import rows_of
from .records import references, title_of


@dataclass
class Traced:
    """One dye lot: what it came of and where it went. Records are documents; orders are (order,
    how many: a canonical text or "").
    """

    lot: dict[str, Any]
    base: dict[str, Any] | None = None
    colorway: dict[str, Any] | None = None
    mill_lot: dict[str, Any] | None = None
    doses: list[tuple[dict[str, Any] | None, dict[str, Any] | None, str]] = field(
        default_factory=list
    )  # bottle, jar, how much
    skeins: list[dict[str, Any]] = field(default_factory=list)
    products: list[dict[str, Any]] = field(default_factory=list)
    orders: list[tuple[dict[str, Any], str]] = field(default_factory=list)


def trace(records: list[dict[str, Any]], asked: str) -> list[Traced]:
    """The dye lots that a text names: their own number, else an order, a mill lot, a jar or a
    bottle by its number or lot. Case does not matter.
    """
    wanted = asked.strip().casefold()
    by_id = {each["id"]: each for each in records}
    lots = [each for each in records if each["kind"] == "dye-lot"]
    if not wanted:
        return []
    found = [lot for lot in lots if title_of(lot).casefold() == wanted]
    if not found:
        named = {
            each["id"]
            for each in records
            if wanted in (title_of(each).casefold(), each["values"].get("lot", "").casefold())
        }
        named |= {
            each["id"]
            for each in records
            if each["kind"] == "bottle" and each["values"].get("jar") in named
        }
        of_orders = {
            text
            for each in records
            if each["id"] in named and each["kind"] in ("order", "skein")
            for where, text in references(each)
            if where.endswith("dye_lot")
        }
        found = [
            lot
            for lot in lots
            if lot["id"] in of_orders or any(text in named for _, text in references(lot))
        ]
    return [_traced(lot, records, by_id) for lot in sorted(found, key=title_of)]


def _traced(
    lot: dict[str, Any], records: list[dict[str, Any]], by_id: dict[str, dict[str, Any]]
) -> Traced:
    def named(document: dict[str, Any] | None, name: str) -> dict[str, Any] | None:
        return by_id.get(document["values"].get(name, "")) if document else None

    made = Traced(lot, colorway=named(lot, "colorway"), mill_lot=named(lot, "mill_lot"))
    made.base = named(lot, "base") or named(made.mill_lot, "base") or named(made.colorway, "base")
    for row in rows_of(lot, "doses"):
        bottle = by_id.get(row.get("bottle", ""))
        made.doses.append(
            (
                bottle,
                by_id.get(row.get("jar", "")) or named(bottle, "jar"),
                row.get("volume") or row.get("powder", ""),
            )
        )
    for each in records:
        if each["kind"] == "skein" and each["values"].get("dye_lot") == lot["id"]:
            made.skeins.append(each)
        if each["kind"] == "order":
            rows = [row for row in rows_of(each, "lots") if row.get("dye_lot") == lot["id"]]
            made.orders += [(each, row.get("count", "")) for row in rows]
            made.products += [
                by_id[row["product"]]
                for row in rows
                if row.get("product") in by_id and by_id[row["product"]] not in made.products
            ]
    made.orders.sort(key=lambda pair: title_of(pair[0]))
    return made
