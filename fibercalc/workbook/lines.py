"""What can be said of a record as cards ask for it: a fiber content, a recipe, what a product holds, how many skeins open plans need."""

from ..core.amount import read_amount
from ..core.units import TIME
from ..yarn.split import full_skeins_for

SETS = ("set-whole", "set-cut")


def rows_of(document: dict, rows: str) -> list[dict[str, str]]:
    """A record's list, each row as field -> canonical text."""
    found: list[dict[str, str]] = [{} for _ in range(document["rows"].get(rows, 0))]
    for name, text in document["values"].items():
        if name.startswith(f"{rows}."):
            _, row, field = name.split(".")
            if int(row) <= len(found):
                found[int(row) - 1][field] = text
    return found


def fiber_line(document: dict, by_id: dict[str, dict]) -> str:
    """75 % superwash wool, 25 % nylon; "" while a share is not known."""
    rows = rows_of(document, "fibers")
    if not rows or any("share" not in row or "fiber" not in row for row in rows):
        return ""
    return ", ".join(f"{row['share'].split('~')[0].replace('%', '').strip()} % {row['fiber']}" for row in rows)


def recipe_line(document: dict, by_id: dict[str, dict]) -> str:
    """navy 0.62, black 0.24, brown 0.04."""
    return ", ".join(f"{row['name']} {row['depth'].split('~')[0].replace('%', '').strip()}" for row in rows_of(document, "dyes") if "name" in row and "depth" in row)


def holds_line(document: dict, by_id: dict[str, dict]) -> str:
    """2 Wet Slate, Peat Gold, Sheepfold: what one of a product holds, by colorway."""
    parts = []
    for row in rows_of(document, "parts"):
        colorway = by_id.get(row.get("colorway", ""))
        if colorway is not None:
            count = row.get("skeins", "1")
            parts.append(f"{count} {colorway['values'].get('name', '')}" if count != "1" else colorway["values"].get("name", ""))
    return ", ".join(parts)


def shades_line(document: dict, by_id: dict[str, dict]) -> str:
    """How many shades a numbered set has; "" for a colorway of one."""
    shades = _count(document["values"], "shades", 1)
    return str(shades) if shades > 1 else ""


def skeins_line(document: dict, by_id: dict[str, dict]) -> str:
    """How many full skeins go into one of a product, of a set the share of them that its small ones are; "" where no part is written down."""
    parts = _parts(document, by_id)
    per = _count(document["values"], "small", 1) if document["values"].get("sort") in SETS else 1
    return f"{sum(each * shades for _, each, shades in parts) / per:g}" if parts else ""


def work_line(document: dict, by_id: dict[str, dict]) -> str:
    """The work in one product, for each skein in it."""
    text = document["values"].get("work", "")
    if not text:
        return ""
    return f"{read_amount(text, TIME, TIME.base, 'canonical').value / float(skeins_line(document, by_id) or 1):.6g}min"


def planned_line(document: dict, by_id: dict[str, dict]) -> str:
    """How many skeins of a base all open plans need, spares and all, counted as a release counts them."""
    needed = 0
    for plan in by_id.values():
        if plan["kind"] == "plan" and plan["values"].get("state", "open") == "open":
            needed += sum(_needed(document["id"], row, by_id) for row in rows_of(plan, "items"))
    return str(needed)


def _needed(base: str, row: dict[str, str], by_id: dict[str, dict]) -> int:
    """Skeins of one base for one line of a plan."""
    product = by_id.get(row.get("product", ""))
    if product is None:
        return 0
    made, sort, per = _count(row, "count", 0) + _count(row, "spare", 0), product["values"].get("sort"), _count(product["values"], "small", 1)
    skeins = 0
    for other, each, shades in _parts(product, by_id):
        if other != base:
            continue
        if sort == "set-whole":
            skeins += shades * full_skeins_for(made * each, per)
        elif sort == "set-cut":
            skeins += full_skeins_for(made * each * shades, per)
        else:
            skeins += made * each * shades
    return skeins


def _parts(product: dict, by_id: dict[str, dict]) -> list[tuple[str, int, int]]:
    """For each part of a product: its base, its own or its colorway's; how many of it; how many shades that colorway has."""
    found = []
    for row in rows_of(product, "parts"):
        colorway = by_id.get(row.get("colorway", ""), {"values": {}})["values"]
        found.append((row.get("base") or colorway.get("base", ""), _count(row, "skeins", 1), _count(colorway, "shades", 1)))
    return found


def _count(texts: dict[str, str], field: str, otherwise: int) -> int:
    text = texts.get(field, "").partition("~")[0]
    return round(float(text)) if text else otherwise
