"""What a record holds, said in one line as cards ask for it: a fiber content, a recipe, what a product holds."""


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
    return ", ".join(
        f"{row['share'].split('~')[0].replace('%', '').strip()} % {row['fiber']}" for row in rows
    )


def recipe_line(document: dict, by_id: dict[str, dict]) -> str:
    """navy 0.62, black 0.24, brown 0.04."""
    return ", ".join(
        f"{row['name']} {row['depth'].split('~')[0].replace('%', '').strip()}"
        for row in rows_of(document, "dyes")
        if "name" in row and "depth" in row
    )


def holds_line(document: dict, by_id: dict[str, dict]) -> str:
    """2 Wet Slate, Peat Gold, Sheepfold: what one of a product holds, by colorway."""
    parts = []
    for row in rows_of(document, "parts"):
        colorway = by_id.get(row.get("colorway", ""))
        if colorway is not None:
            count = row.get("skeins", "1")
            parts.append(
                f"{count} {colorway['values'].get('name', '')}"
                if count != "1"
                else colorway["values"].get("name", "")
            )
    return ", ".join(parts)
