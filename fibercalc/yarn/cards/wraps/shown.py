"""The classes that overlap the reading, and the same count under each convention."""

from __future__ import annotations

from collections.abc import Callable

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.picture import INDIGO, INDIGO_WASH, SOFT, Drawing, Scale
from ...count import count_from_tex, tex_from_count
from ...weight_class import COUNCIL, PLY_TERMS, WeightClass, weight_classes
from ...wrapping import wrap_conventions, yards_per_pound_from_wraps
from .asked import PER_CM, RELAXED, Wraps
from .said import listed, matches, reading

LISTS = {COUNCIL: "Yarn council classes", PLY_TERMS: "Ply names (UK, AU, NZ)"}
FEWEST_DRAWN, MOST_DRAWN = 3, 50  # wraps per inch


def overlap(published: str) -> Callable[[Outcome[Wraps]], Picture | None]:
    """A picture of one list's classes on a scale of wraps, the reading as a band across them."""
    return lambda out: _overlap(out, published) if out.case.convention == RELAXED else None


def _overlap(out: Outcome[Wraps], published: str) -> Picture:
    classes = [
        one
        for one in weight_classes(published)
        if one.wraps_low is not None or one.wraps_high is not None
    ]
    names, _ = matches(out, published)
    low, high = reading(out)
    scale = Scale(FEWEST_DRAWN, MOST_DRAWN, 12, 348, logarithmic=True)
    bottom = 40 + 40 * len(classes)
    drawing = Drawing(bottom + 24)
    left, right = scale(low), scale(high)
    drawing.rect(left, 24, max(right - left, 2), bottom - 20, fill=INDIGO_WASH, stroke=INDIGO)
    drawing.text(
        (left + right) / 2, 16, f"your reading, {out.text(Wraps.wraps)}", anchor="middle", bold=True
    )
    for at, one in enumerate(classes):
        _class(drawing, scale, 32 + 40 * at, one, one.name in names)
    for tick in (5, 10, 15, 20, 30, 40):
        drawing.line(scale(tick), bottom, scale(tick), bottom + 4, stroke=SOFT)
        drawing.text(scale(tick), bottom + 18, str(tick), anchor="middle", fill=SOFT)
    return drawing.picture(
        f"{LISTS[published]} by wraps per inch",
        f"Published ranges of wraps per inch overlap. {low:.1f} to {high:.1f} wraps fit:"
        f" {listed(names)}.",
    )


def _class(drawing: Drawing, scale: Scale, y: float, one: WeightClass, match: bool) -> None:
    """One class as a bar on the scale of wraps; filled where it fits."""
    left, right = scale(one.wraps_low or FEWEST_DRAWN), scale(one.wraps_high or MOST_DRAWN)
    drawing.text(left, y + 12, f"{one.name}{' – fits' if match else ''}", bold=match, halo=True)
    drawing.rect(
        left,
        y + 17,
        right - left,
        12,
        fill=INDIGO if match else "none",
        stroke=INDIGO if match else SOFT,
    )


def conventions_table(out: Outcome[Wraps]) -> Table | None:
    """The same count read under each convention: what a mix-up would do."""
    rows = []
    for row in wrap_conventions().rows:
        wraps = out.value(Wraps.wraps) / PER_CM
        low, high = (yards_per_pound_from_wraps(wraps, row[end]) for end in ("high", "low"))
        metric = sorted(
            count_from_tex(tex_from_count(yards, "yd/lb"), "m/100 g") for yards in (low, high)
        )
        chosen = " (yours)" if row["name"] == out.case.convention else ""
        rows.append(
            (
                row["label"] + chosen,
                f"{out.number(low, 0)} to {out.number(high, 0)}",
                f"{out.number(metric[0])} to {out.number(metric[1])}",
            )
        )
    return Table(
        "The same count under each convention",
        ("Convention", "yd/lb", "m per 100 g"),
        tuple(rows),
        "One count, three conventions, a factor of five in yards per pound: always say how it was"
        " wrapped.",
    )
