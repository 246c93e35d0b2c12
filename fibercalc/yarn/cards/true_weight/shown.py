"""The weights of one yarn as a table, and as bars of yarn and water."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.picture import INDIGO, INDIGO_WASH, INK, MADDER, SOFT, Drawing
from ....core.units import MASS
from .asked import TrueWeight
from .said import as_typed


def weights(out: Outcome[TrueWeight]) -> Table | None:
    rows = [
        ("As weighed", out.number(out.case.now, 1), as_typed(out, TrueWeight.weighed)),
        ("Oven-dry", out.number(0, 1), out.text(TrueWeight.dry)),
        (
            "Standard atmosphere, 20 °C and 65 %",
            out.number(out.case.standard, 1),
            out.text(TrueWeight.conditioned),
        ),
        ("Commercial, EU", out.number(out.case.eu_regain, 2), out.text(TrueWeight.eu_mass)),
    ]
    if out.has(TrueWeight.us_mass):
        rows.append(
            ("Commercial, US", out.number(out.case.us_regain, 2), out.text(TrueWeight.us_mass))
        )
    return Table(
        "One yarn, five weights" if out.has(TrueWeight.us_mass) else "One yarn, four weights",
        ("At", "Water, % of dry yarn", "Weight"),
        tuple(rows),
    )


def picture(out: Outcome[TrueWeight]) -> Picture | None:
    """A bar for each weight, water hatched; the label's weight is a line through all of them."""
    bars = _bars(out)
    labelled = out.case.labelled
    across = 336 / max([mass for _, mass, _ in bars] + [labelled or 0])
    drawing = Drawing(22 + 48 * len(bars) + (26 if labelled else 4))
    y, dry = 18, out.value(TrueWeight.dry) * across
    for words, mass, written in bars:
        drawing.text(8, y, f"{words}: {written}", bold=words == "Standard atmosphere")
        drawing.rect(8, y + 7, mass * across, 18, fill=INDIGO_WASH, stroke="none")
        drawing.hatch(8 + dry, y + 7, mass * across - dry, 18, gap=5, stroke=INDIGO)
        drawing.rect(8, y + 7, mass * across, 18, stroke=INDIGO)
        drawing.line(8 + dry, y + 7, 8 + dry, y + 25, stroke=INDIGO)
        y += 48
    drawing.text(8, y - 2, "hatched: water", fill=SOFT)
    label = as_typed(out, TrueWeight.labelled)
    if labelled:
        at = 8 + labelled * across
        drawing.line(at, 24, at, y + 4, stroke=MADDER, width=2, dash="5 3")
        drawing.text(at, y + 20, f"label: {label}", anchor="end", fill=INK)
    dry_text = out.text(TrueWeight.dry, out.units(TrueWeight.water)[0].sign)
    return drawing.picture(
        "What is yarn and what is water",
        f"Bars of weight. Every bar holds {dry_text} of dry yarn; the rest is water. "
        + "; ".join(f"{words} {written}" for words, _, written in bars)
        + (f"; the label says {label}." if labelled else "."),
    )


def _bars(out: Outcome[TrueWeight]) -> list[tuple[str, float, str]]:
    """Words, weight and weight as written of each bar."""
    shown = out.units(TrueWeight.water)[0].sign
    results = [
        ("Standard atmosphere", TrueWeight.conditioned),
        ("Commercial, EU", TrueWeight.eu_mass),
        ("Commercial, US", TrueWeight.us_mass),
    ]
    weighed = ("As weighed", out.case.weighed, out.amount(out.case.weighed, MASS, shown))
    return [weighed] + [
        (words, out.value(result), out.text(result, shown))
        for words, result in results
        if out.has(result)
    ]
