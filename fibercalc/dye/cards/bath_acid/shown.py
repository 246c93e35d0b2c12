"""pH by how much goes in, and the acids that give the same pH."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.picture import INDIGO, INDIGO_WASH, LINE, SOFT, Drawing, Scale, nice_ticks
from ....core.problem import OutOfRange
from ....core.table import read_table
from ....core.units import MASS, VOLUME
from ....safe.acids import STRONGEST, bath_ph, dose_for_ph, volume_of
from ....safe.liquids import QUESTIONED, share_of_bath
from .asked import LABELS, SOUR, BathAcid, liquid

USUAL = {"acetic": 5.0}  # %: the strength of a liquid that the case says nothing of, for the table
LEFT, RIGHT, TOP, BOTTOM = 44, 344, 14, 176
POINTS = 24


def curve(out: Outcome[BathAcid]) -> Picture:
    """pH against the amount, up to three times what is asked."""
    grams, ph = out.value(BathAcid.pure), out.value(BathAcid.ph)
    points = _points(out, grams)
    most = points[-1][0]
    across = Scale(0, most, LEFT, RIGHT)
    up = Scale(
        min(2.0, *(ph for _, ph in points)), max(8.0, *(ph for _, ph in points)), BOTTOM, TOP
    )
    drawing = Drawing(222)
    _axes(drawing, out, across, up)
    high, low = up(out.high(BathAcid.ph)), up(out.low(BathAcid.ph))
    drawing.rect(LEFT, high, RIGHT - LEFT, max(low - high, 1), fill=INDIGO_WASH, stroke=INDIGO_WASH)
    drawing.path([(across(x), up(y)) for x, y in points], stroke=INDIGO, width=2)
    drawing.line(across(grams), up(ph), across(grams), BOTTOM, stroke=INDIGO, dash="4 3")
    drawing.circle(across(grams), up(ph), 6, fill=INDIGO, stroke=INDIGO)
    first, last = points[0][1], points[-1][1]
    return drawing.picture(
        "pH by how much goes in",
        (
            f"pH {'falls' if last < first else 'rises'} from {first:.1f} in plain water to"
            f" {last:.1f} at {most:.0f} g; {ph:.1f} at {grams:.1f} g."
        ),
    )


def _points(out: Outcome[BathAcid], grams: float) -> list[tuple[float, float]]:
    """Grams and the pH that they give, from none to the most that is drawn."""
    chemical, liters = out.case.chemical, out.case.liters / 1000
    molar_mass = read_table("safe", "bath-chemicals").row("key", chemical)["molar_mass"]
    strongest = 0.9 * STRONGEST * molar_mass * liters
    most = min(max(3 * grams, 0.5 * liters), max(grams, strongest))
    amounts = [most * (k / POINTS) ** 2 for k in range(POINTS + 1)]
    return [(each, bath_ph(liters, {chemical: each}, out.case.alkaline)) for each in amounts]


def _axes(drawing: Drawing, out: Outcome[BathAcid], across: Scale, up: Scale) -> None:
    for ph in range(15):
        if up.low <= ph <= up.high:
            drawing.line(LEFT, up(ph), RIGHT, up(ph), stroke=LINE)
            drawing.text(LEFT - 6, up(ph) + 5, str(ph), anchor="end", size=13, fill=SOFT)
    for tick in nice_ticks(0, across.high, 5):
        words = out.number(tick, 0 if across.high >= 5 else 1)
        drawing.text(across(tick), BOTTOM + 18, words, anchor="middle", size=13, fill=SOFT)
    what = LABELS[out.case.chemical].split(" (")[0].lower()
    drawing.text(
        (LEFT + RIGHT) // 2, 214, f"grams of {what}, pure", anchor="middle", size=13, fill=SOFT
    )


def equal(out: Outcome[BathAcid]) -> Table | None:
    """Every acid that gives the same pH in this water."""
    case = out.case
    strengths = USUAL | {
        chemical: strength
        for chemical, strength in (
            (case.maybe(BathAcid.other), case.maybe(BathAcid.other_strength)),
            (case.chemical, case.maybe(BathAcid.strength)),
        )
        if chemical is not None and strength is not None
    }
    rows = []
    for key in SOUR:
        try:
            grams = dose_for_ph(
                key, out.value(BathAcid.ph), case.liters / 1000, alkalinity=case.alkaline
            )
        except OutOfRange:
            continue
        poured = _poured(out, key, grams, strengths[key]) if key in strengths else "–"
        rows.append((LABELS[key], out.measured(grams, MASS, "g", 0.1), poured))
    if len(rows) < 2:
        return None
    columns = ("Acid", "Pure", "As a liquid")
    return Table("The same pH by other acids, in this water", columns, tuple(rows))


def _poured(out: Outcome[BathAcid], chemical: str, grams: float, strength: float) -> str:
    """Some grams of an acid as a liquid of that strength."""
    volume = volume_of(chemical, grams, strength)
    much = share_of_bath(volume, out.case.liters) > QUESTIONED
    return (
        f"over {QUESTIONED:g} % of the bath, as"
        if much
        else f"{out.measured(volume, VOLUME, 'mL', 1)} of"
    ) + f" {liquid(out, chemical, strength, kitchen=False)}"
