"""Which size to knit at one's own gauge: from a swatch before and after washing."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from ...core.answer import Picture, Table
from ...core.card import (
    CHOICE,
    MODEL,
    TEXT,
    Basis,
    Card,
    Carry,
    Case,
    Caution,
    Input,
    Option,
    Plain,
    Result,
    Row,
    Rows,
    Save,
)
from ...core.outcome import Outcome
from ...core.picture import INDIGO, INDIGO_WASH, LINE, SOFT, Drawing, Scale, nice_ticks
from ...core.table import read_table
from ...core.units import LENGTH, NUMBER, PER_LENGTH, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, TRADE_PAGE_NEEDLES
from ..fit import gauge_of, girth_at_gauge, growth, needle_for_gauge
from ..inputs import PATTERN_ROWS, PATTERN_STITCHES

WASHED = {"washed": ("yes",)}
GIRTH = Input[float](
    LENGTH,
    "Around",
    default="125 cm",
    allowed=("20 cm", "300 cm"),
    usual=("45 cm", "170 cm"),
    units=("cm", "in"),
    unit="cm",
)
SPAN = Input[float](
    LENGTH,
    "over a width of",
    default="15 cm",
    allowed=("2 cm", "200 cm"),
    usual=("8 cm", "30 cm"),
    rough="0.15 cm",
    units=("cm", "in"),
    unit="cm",
    instrument="swatch tape",
)
BEFORE = replace(SPAN, instrument="tape before", when=WASHED)


class Size(Row):
    """One size."""

    name = Input[str](TEXT, "Name", default="Next", longest=12)
    girth = replace(GIRTH)


class GaugeCheck(Case):
    """A washed swatch and a pattern's sizes, and the one that comes out nearest to the wanted."""

    pattern_stitches = replace(PATTERN_STITCHES)
    pattern_rows = replace(PATTERN_ROWS)
    counted = Input[float](
        NUMBER,
        "Stitches you counted",
        default="30",
        allowed=("2", "1000"),
        usual=("15", "80"),
        rough="0.25",
        measure="Over as much as you have, quarters too: 10 cm is little, 20 cm is good.",
    )
    across = replace(SPAN)
    counted_rows = Input[float](
        NUMBER,
        "Rows you counted",
        default="40.5",
        allowed=("2", "1000"),
        usual=("20", "120"),
        rough="0.25",
    )
    tall = replace(SPAN, label="over a height of", measure="Washed, dry and rested, not pinned.")
    washed = Input[str](
        CHOICE,
        "Measured before the wash too?",
        default="yes",
        options=(Option("yes", "Yes"), Option("no", "No")),
    )
    wide_before = replace(
        BEFORE,
        label="Width before",
        default="14.6 cm",
        measure="The same stitches, before washing.",
    )
    tall_before = replace(BEFORE, label="Height before", default="15.3 cm")
    needle = Input[float](
        LENGTH,
        "Needle of the swatch",
        default="4 mm",
        allowed=("1 mm", "60 mm"),
        usual=("2 mm", "10 mm"),
        units=("mm",),
        unit="mm",
    )
    wanted = replace(
        GIRTH,
        label="Wanted around the chest",
        default="104 cm",
        measure="Of the garment: the body and its ease.",
    )
    sizes = Rows(
        Size,
        "Sizes of the pattern",
        "size",
        least=1,
        most=16,
        measure="Finished, around the chest, as the pattern gives them.",
        default=(
            {"name": "1", "girth": "90 cm"},
            {"name": "2", "girth": "97 cm"},
            {"name": "3", "girth": "104 cm"},
            {"name": "4", "girth": "111 cm"},
            {"name": "5", "girth": "118 cm"},
        ),
    )

    best = Plain[int](fixed=True)

    girth = Result[float](
        LENGTH,
        "That size at your gauge",
        units=("cm", "in"),
        unit="cm",
        finest=(0.5, 0.2),
        floor=0.0,
    )
    off = Result[float](
        LENGTH, "Wider than wanted by", units=("cm", "in"), unit="cm", finest=(0.5, 0.2)
    )
    own_stitches = Result[float](
        PER_LENGTH,
        "Your stitches, washed",
        units=("per 10 cm", "per 4 in"),
        finest=(0.1, 0.1),
        floor=0.0,
    )
    own_rows = Result[float](
        PER_LENGTH,
        "Your rows, washed",
        units=("per 10 cm", "per 4 in"),
        finest=(0.1, 0.1),
        floor=0.0,
    )
    row_share = Result[float](NUMBER, "Rows against the pattern’s", finest=(0.01,), floor=0.0)
    needle_to_try = Result[float](
        LENGTH,
        "Needle to try for the pattern’s gauge",
        units=("mm",),
        unit="mm",
        finest=(0.1,),
        floor=0.0,
    )
    wider = Result[float](PERCENT, "Width, in the wash", finest=(0.5,))
    longer = Result[float](PERCENT, "Length, in the wash", finest=(0.5,))


def answer(case: GaugeCheck) -> None:
    case.own_stitches = gauge_of(case.counted, case.across)
    case.own_rows = gauge_of(case.counted_rows, case.tall)
    places = [abs(_at_gauge(case, size) - case.wanted) for size in case.sizes]
    case.best = places.index(min(places))
    case.girth = _at_gauge(case, case.sizes[case.best])
    case.off = case.girth - case.wanted
    case.row_share = case.own_rows / case.pattern_rows
    case.needle_to_try = needle_for_gauge(case.needle, case.own_stitches, case.pattern_stitches)
    if case.washed == "yes":
        case.wider = growth(case.wide_before, case.across)
        case.longer = growth(case.tall_before, case.tall)


def _at_gauge(case: GaugeCheck, size: Size) -> float:
    """A size's girth at the own gauge, cm."""
    return girth_at_gauge(size.girth, case.pattern_stitches, case.own_stitches)


def _sizes(out: Outcome[GaugeCheck]) -> list[tuple[str, float, float, float, float]]:
    """Every size with its girth at the own gauge and the range that the swatch leaves, cm."""
    best = out.case.sizes[out.case.best].girth
    ratio = 100 * out.value(GaugeCheck.girth) / best
    low, high = (
        100 * end / best for end in (out.low(GaugeCheck.girth), out.high(GaugeCheck.girth))
    )
    return [
        (row.name, row.girth, row.girth * ratio, row.girth * low, row.girth * high)
        for row in out.case.sizes
    ]


def say(out: Outcome[GaugeCheck]) -> str | tuple[str, ...]:
    first = (
        f"Knit size {out.case.sizes[out.case.best].name}: at your gauge it comes out at"
        f" {out.said(GaugeCheck.girth)}."
    )
    return (
        first,
        f"From {out.span(GaugeCheck.girth)}: the swatch leaves that much open."
        f" {_needle_words(out)}",
    )


def _needle_words(out: Outcome[GaugeCheck]) -> str:
    own, pattern = out.value(GaugeCheck.own_stitches), out.case.pattern_stitches
    if abs(own / pattern - 1) < 0.015:
        return "Your gauge is the pattern’s, as far as a swatch can tell."
    looser = own < pattern
    return (
        f"Your stitches are {'wider' if looser else 'narrower'} than the pattern’s by"
        f" {100 * abs(pattern / own - 1):.0f} %."
    )


def _nearest(millimeters: float) -> dict[str, Any]:
    """The needle size in the table nearest to a wanted diameter."""
    rows = read_table("knit", "needle-sizes").rows
    return min(rows, key=lambda row: abs(row["mm"] - millimeters))


def notes(out: Outcome[GaugeCheck]) -> list[str]:
    said = []
    case, asked = out.case, out.case.needle
    nearest = _nearest(case.needle_to_try)
    names = " or ".join(name for name in (nearest["us"], nearest["uk"]) if name)
    best = case.sizes[case.best]
    if abs(nearest["mm"] - asked) > 0.01:
        said.append(
            f"Needle alone: {out.number(nearest['mm'], 2).rstrip('0').rstrip('.,')}"
            f" mm{f' ({names})' if names else ''} instead of {asked:g} mm would likely bring the"
            " pattern’s gauge; then knit the size that the pattern says. Swatch again with it:"
            " this is a first try."
        )
        by_pattern = min(case.sizes, key=lambda row: abs(row.girth - case.wanted))
        if by_pattern.name != best.name:
            said.append(
                f"Size alone: keep your needle and knit {best.name} instead of {by_pattern.name}."
                " Change the needle or the size, not both: the one undoes the other."
            )
    if abs(case.row_share - 1) > 0.02:
        said.append(
            f"Rows: work {out.number(case.row_share, 2)} times the rows that the pattern counts,"
            " or measure lengths instead of counting."
        )
    if out.has(GaugeCheck.wider):
        said.append(
            f"In the wash the swatch changed by {out.text(GaugeCheck.wider)} in width and"
            f" {out.text(GaugeCheck.longer)} in length. Measure the piece on the needles with that"
            " in mind."
        )
    else:
        said.append(
            "An unwashed swatch tells the size until the first wash. Wash it as the garment will be"
            " washed."
        )
    return said


def table(out: Outcome[GaugeCheck]) -> Table | None:
    each = 2.54 if out.settings.system == "us" else 1.0
    rows = tuple(
        (
            name,
            *(out.number(cm / each, 1) for cm in (printed, own)),
            f"{out.number(low / each, 1)} to {out.number(high / each, 1)}",
        )
        for name, printed, own, low, high in _sizes(out)
    )
    return Table(
        f"Each size at your gauge, {'in' if each > 1 else 'cm'}",
        ("Size", "In the pattern", "At your gauge", "95 % range"),
        rows,
    )


def picture(out: Outcome[GaugeCheck]) -> Picture | None:
    """Each size's range at the own gauge on one scale, the wanted girth as a line."""
    sizes, wanted = _sizes(out), out.case.wanted
    sign = "in" if out.settings.system == "us" else "cm"
    unit = LENGTH.unit(sign)
    low, high = (
        min([wanted] + [each[3] for each in sizes]),
        max([wanted] + [each[4] for each in sizes]),
    )
    scale = Scale(low - 0.05 * (high - low), high + 0.05 * (high - low), 84, 344)
    bottom = 26 + 30 * len(sizes)
    drawing = Drawing(bottom + 40)
    for tick in nice_ticks(unit.from_base(scale.low / 100), unit.from_base(scale.high / 100), 5):
        at = scale(100 * unit.to_base(tick))
        drawing.line(at, 22, at, bottom, stroke=LINE)
        drawing.text(at, bottom + 16, f"{out.number(tick)} {sign}", anchor="middle", fill=SOFT)
    for place, (name, _, own, at_least, at_most) in enumerate(sizes):
        y, best = 26 + 30 * place, place == out.case.best
        drawing.text(76, y + 19, name[:10], anchor="end", bold=best)
        drawing.rect(
            scale(at_least),
            y + 6,
            max(scale(at_most) - scale(at_least), 2),
            18,
            fill=INDIGO if best else INDIGO_WASH,
            stroke=INDIGO,
        )
        drawing.line(scale(own), y + 3, scale(own), y + 27, width=2)
    drawing.line(scale(wanted), 18, scale(wanted), bottom, width=1.5, dash="4 3")
    drawing.text(
        scale(wanted), 13, f"wanted: {out.amount(wanted / 100, LENGTH, sign, 4)}", anchor="middle"
    )
    drawing.text(214, bottom + 35, "around the chest, at your gauge", anchor="middle", fill=SOFT)
    return drawing.picture(
        "Each size as it would come out",
        "; ".join(
            f"{name}: {own:.1f} cm, {at_least:.1f} to {at_most:.1f}"
            for name, _, own, at_least, at_most in sizes
        )
        + f"; wanted {wanted:.1f} cm.",
    )


CARD = Card(
    id="gauge-check",
    chapter="knit",
    place=30,
    question="Which size comes out right at my gauge?",
    case=GaugeCheck,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(table,),
    basis=Basis(
        MODEL,
        "The stitches of a size stay, their width changes. What the swatch leaves open (a quarter"
        " of a stitch, a millimeter and a half of tape) is carried to the chest. Needle and stitch"
        " width in proportion is common practice, for a first try.",
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE, TRADE_PAGE_NEEDLES),
    cautions=(
        Caution(
            "Measure a washed swatch.",
            "Superwash yarn grows, felting yarn shrinks; what hangs from your shoulders grows in"
            " length besides.",
        ),
    ),
    carry=(
        Carry(
            "yarn-needed",
            "How many skeins at this gauge?",
            {"stitches": GaugeCheck.own_stitches, "rows": GaugeCheck.own_rows},
        ),
    ),
    saves=(
        Save(
            "measurement",
            "An own measurement: this gauge",
            {
                "what": "'gauge'",
                "stitches": GaugeCheck.own_stitches,
                "rows": GaugeCheck.own_rows,
                "needle": GaugeCheck.needle,
                "state": "'wet'",
            },
        ),
    ),
)
