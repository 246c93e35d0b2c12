"""A workbook of another invented studio than the example's: two kits of a five-part shawl and a set of 24 days, 180 skeins in all."""

from fibercalc.workbook.records import checked

BASE, DAY = "base-own-alder", "2028-01-10"
MAKER = "Thistlebeck Yarns"


def _record(kind: str, name: str, values: dict, **lists: list[dict]) -> dict:
    """One record as it is kept."""
    texts = values | {f"{rows}.{number}.{field}": text for rows, found in lists.items() for number, row in enumerate(found, 1) for field, text in row.items()}
    return checked({"id": f"{kind}-own-{name}", "kind": kind, "schema": 1, "rev": "1-mine", "past": [], "changed": "2028-01-10T09:00:00Z", "values": texts,
                    "rows": {rows: len(found) for rows, found in lists.items()}})


def _part(letter: str, colorway: str, skeins: str, needed: str) -> dict:
    return {"name": letter, "base": BASE, "colorway": f"colorway-own-{colorway}", "skeins": skeins, "needed": needed}


SHAWL = [_part("A", "foxglove", "2", "460m"), _part("B", "foxglove", "1", "220m"), _part("C", "lichen", "1", "210m"), _part("D", "lichen", "1", "180m"), _part("E", "ember", "1", "150m")]
SMALL = [_part("A", "foxglove", "1", "230m"), _part("B", "lichen", "1", "200m"), _part("C", "lichen", "1", "190m"), _part("D", "ember", "1", "140m")]

RECORDS = [
    _record("base", "alder", {"name": "Alder DK", "mass": "115g", "length": "262m", "pack": "6", "pack_price": "70.5", "cost": "11.75", "on_hand": "24", "weight_class": "3"},
            fibers=[{"fiber": "wool", "share": "100%"}]),
    _record("colorway", "foxglove", {"name": "Foxglove", "base": BASE}, dyes=[{"name": "magenta", "depth": "1.1%"}]),
    _record("colorway", "lichen", {"name": "Lichen", "base": BASE}, dyes=[{"name": "moss", "depth": "0.4%"}, {"name": "ochre", "depth": "0.3%"}]),
    _record("colorway", "ember", {"name": "Ember", "base": BASE}, dyes=[{"name": "ochre", "depth": "0.9%"}, {"name": "magenta", "depth": "0.2%"}]),
    _record("colorway", "advent", {"name": "Lanterns", "base": BASE, "shades": "24"}, dyes=[{"name": "magenta", "depth": "0.52%"}]),
    _record("jar", "magenta", {"name": "magenta", "left": "90g", "cost": "39", "lot": "M-55"}),
    _record("jar", "ochre", {"name": "ochre", "left": "45g", "cost": "31"}),
    _record("jar", "moss", {"name": "moss", "left": "35g", "cost": "33"}),
    _record("dye-lot", "fx", {"lot": "FX-3", "colorway": "colorway-own-foxglove", "base": BASE, "good": "6"}),
    _record("product", "thicket", {"name": "Thicket Shawl", "sort": "kit", "price": "148", "net": "124.37", "other": "5.2", "work": "90min"}, parts=SHAWL),
    _record("product", "small", {"name": "Thicket Small", "sort": "kit", "price": "102", "net": "85.71", "other": "4.9"}, parts=SMALL),
    _record("product", "set", {"name": "Lanterns", "sort": "set-whole", "price": "79", "net": "66.39", "other": "6.1", "small": "5"},
            parts=[{"name": "each day", "base": BASE, "colorway": "colorway-own-advent", "skeins": "1"}]),
    _record("plan", "thaw", {"name": "Thaw release", "starts": "2028-06-16"}, closed=[{"first": "2028-04-14", "last": "2028-04-17"}],
            items=[{"product": "product-own-thicket", "count": "11", "spare": "1"}, {"product": "product-own-small", "count": "8", "spare": "1"},
                   {"product": "product-own-set", "count": "14", "spare": "1"}]),
    _record("plan", "past", {"name": "Last year", "state": "done"}, items=[{"product": "product-own-thicket", "count": "40"}]),
]
