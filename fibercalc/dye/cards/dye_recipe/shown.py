"""What to measure, for a pot, the lot and the run; the pot to scale; and the papers beside it."""

from __future__ import annotations

from dataclasses import replace

from ....core.answer import Picture, Table
from ....core.card import Result
from ....core.outcome import Outcome
from ....core.paper import Paper
from ....core.units import VOLUME
from ...pictures.pot import pot_picture
from .asked import DyeRecipe, liquid

# A pot holds about so many times its fill line (12 L filled to 9 L), for the picture only.
BRIM = 4 / 3
SALTS = {
    DyeRecipe.salt: "Glauber’s salt",
    DyeRecipe.salt_bath: "Salt",
    DyeRecipe.soda_mass: "Soda ash",
}
HEAD = (
    "Lot number, date, who",
    "Base and its mill lot",
    "Weighed dry, room",
    "Jars and stocks: lots, dates",
)
CLOCK = ("In the bath", "60 °C", "Top", "Acid", "Hold ends", "Out", "Rinses", "Dry, weighed")
END = (
    "Left in the bath: jar of the ladder",
    "Rub with a damp white cloth",
    "Seconds; anything odd",
)


def doses(out: Outcome[DyeRecipe]) -> Table:
    """Each dose for a pot, the lot and the run."""
    fullest, skeins, lots = out.case.fullest, out.case.skeins, out.case.lots
    rows = tuple(
        (words, *(out.times(result, part * times, unit) for times in (out.case.share, 1.0, lots)))
        for words, result, part, unit in _lines(out)
    )
    pot = f"Fullest pot ({fullest} {'skein' if fullest == 1 else 'skeins'})"
    return Table(
        "What to measure",
        ("What", pot, f"Lot ({skeins})", f"Run ({lots} {'lot' if lots == 1 else 'lots'})"),
        rows,
    )


def _lines(out: Outcome[DyeRecipe]) -> list[tuple[str, Result[float], float, str]]:
    """What is measured, the result that it is a part of, how large a part, and its unit."""
    stocks = out.value(DyeRecipe.stock_total)
    lines = [(dye.name, DyeRecipe.stock_total, dye.stock / stocks, "mL") for dye in out.case.dyes]
    if out.has(DyeRecipe.acid_volume):
        lines.append((liquid(out), DyeRecipe.acid_volume, 1.0, "mL"))
    elif out.has(DyeRecipe.acid_pure):
        lines.append(("Citric acid", DyeRecipe.acid_pure, 1.0, "g"))
    lines += [(words, salt, 1.0, "g") for salt, words in SALTS.items() if out.has(salt)]
    return [
        *lines,
        ("Water", DyeRecipe.water, 1.0, "mL"),
        ("Bath in all", DyeRecipe.bath, 1.0, "mL"),
    ]


def powder(out: Outcome[DyeRecipe]) -> Table:
    """The same dye weighed as powder, for those who make no stock."""
    whole = out.value(DyeRecipe.dye_total)
    rows = tuple(
        (
            dye.name,
            f"{dye.depth:g} %",
            *(
                out.times(DyeRecipe.dye_total, dye.powder / whole * lots, "g")
                for lots in (1, out.case.lots)
            ),
        )
        for dye in out.case.dyes
    )
    return Table("Dye in it, as powder", ("Dye", "Depth", "Lot", "Run"), rows)


def picture(out: Outcome[DyeRecipe]) -> Picture:
    share, fill = out.case.share, out.case.fill
    parts = [(dye.name, dye.stock * share) for dye in out.case.dyes if dye.stock > 0]
    if out.has(DyeRecipe.acid_volume):
        parts.append((liquid(out, kitchen=False), out.case.acid_volume * share))

    def written(volume: float) -> str:
        if volume == fill:
            return out.amount(fill, VOLUME, "L" if fill >= 1000 else "mL")
        return _volume(out, volume)

    return pot_picture(
        BRIM * fill,
        fill,
        out.case.raised,
        out.case.carried * share,
        parts,
        out.case.water * share,
        written,
    )


def _volume(out: Outcome[DyeRecipe], volume: float) -> str:
    """Any part of the fullest pot, rough as the yarn's weight leaves all of them."""
    result, unit = (DyeRecipe.bath, "L") if volume >= 1000 else (DyeRecipe.stock_total, "mL")
    return out.times(result, volume / out.value(result), unit)


def recipe_card(out: Outcome[DyeRecipe]) -> tuple[Table, ...]:
    """What is measured for the fullest pot and the lot: to pin up beside the kettle."""
    table = doses(out)
    depths = {dye.name: f"{dye.name}, {dye.depth:g} %" for dye in out.case.dyes}
    return (
        replace(
            table,
            columns=(*table.columns[:3], "Done"),
            rows=tuple((depths.get(row[0], row[0]), *row[1:3], "☐") for row in table.rows),
        ),
    )


def batch_sheet(out: Outcome[DyeRecipe]) -> tuple[Table, ...]:
    """A sheet for one lot, filled in at the pot with a pencil."""
    return (
        _to_fill("This lot", ("What", "Written at the pot"), HEAD),
        Table(
            "Measured",
            ("What", "For the lot", "Poured", "Done"),
            tuple((row[0], row[2], "", "☐") for row in doses(out).rows),
        ),
        _to_fill("By the clock", ("Step", "Time", "°C", "pH", "Note"), CLOCK),
        _to_fill("At the end", ("What", "Written at the pot"), END),
    )


def _to_fill(title: str, columns: tuple[str, ...], lines: tuple[str, ...]) -> Table:
    """A table of which only the first column is printed."""
    blank = ("",) * (len(columns) - 1)
    return Table(title, columns, tuple((line, *blank) for line in lines))


PAPERS = (Paper("Recipe card, A6", "A6", recipe_card), Paper("Batch sheet, A5", "A5", batch_sheet))
