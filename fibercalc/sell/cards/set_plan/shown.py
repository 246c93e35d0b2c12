"""The two ways side by side, the shades in their order of work, other sizes, the plan to pin up."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.units import LENGTH, MASS, PERCENT, VOLUME
from ....dye.pictures.strip import strip_picture
from ....dye.recipe import dye_mass, stock_volume
from ....yarn.putup import printed_grams, printed_yards
from ....yarn.reel import mass_of_turns
from ....yarn.split import left_over, most_turns_for_count
from ...pictures.sets import set_picture
from ...sets import skeins_cut_first, skeins_dyed_whole
from .asked import SetPlan

WEAK, EVERYDAY = 0.1, 1.0  # stocks, g in 100 mL, between which a dose is written


def side_by_side(out: Outcome[SetPlan]) -> Table:
    """The two ways, line by line."""
    case = out.case
    rows = (
        ("Full skeins to order", str(case.cut_first), str(case.dyed_whole)),
        ("Small skeins over", str(case.over_cut), str(case.over_whole)),
        (
            "Yarn of one shade",
            out.amount(case.shade_cut, MASS, "g", 3),
            out.amount(case.shade_whole, MASS, "g", 3),
        ),
        ("Dye in all", out.text(SetPlan.dye_cut, "g"), out.text(SetPlan.dye_whole, "g")),
        ("Loads", str(case.loads_cut), str(case.loads_whole)),
        ("Dye days", str(case.days_cut), str(case.days_whole)),
        ("Skeins to tie for the pot", str(case.all_small), str(case.dyed_whole)),
        (
            "More of it",
            f"tying, {out.text(SetPlan.tying, 'h')}",
            f"yarn, {out.text(SetPlan.more_yarn)}",
        ),
    )
    return Table(
        "Cut first, or dyed whole",
        ("What", "Cut first", "Dyed whole"),
        rows,
        "Cut first rounds up once. Dyed whole, each shade rounds up by itself.",
    )


def _stock(out: Outcome[SetPlan], grams: float) -> str:
    strength = WEAK if grams < 1 else EVERYDAY
    return f"{out.measured(stock_volume(grams, strength), VOLUME, 'mL', 1)} of {strength:g} %"


def _dye(out: Outcome[SetPlan], grams: float) -> str:
    return out.measured(grams, MASS, "g", 0.01)


def _depth(out: Outcome[SetPlan], percent: float) -> str:
    return out.measured(percent, PERCENT, "%", 0.001)


def shades(out: Outcome[SetPlan]) -> Table:
    """The shades in their order of work: depth, dye for each way, and its stock."""
    rows = []
    for number, recipe in enumerate(out.case.ladder.recipes, 1):
        for dye, percent in zip(out.case.dyes, recipe):
            grams = dye_mass(out.case.shade_cut, percent)
            more = dye_mass(out.case.shade_whole, percent)
            rows.append(
                (
                    str(number),
                    dye.name,
                    _depth(out, percent),
                    _dye(out, grams),
                    _stock(out, grams),
                    _dye(out, more),
                    _stock(out, more),
                )
            )
    return Table(
        "Shade by shade, in order of work",
        ("Day", "Dye", "Depth", "Cut first", "as stock", "Dyed whole", "as stock"),
        tuple(rows),
        "Palest first: what stays in the pot then hurts the next shade least (common practice)."
        " Stock strengths are grams in 100 mL.",
    )


def other_sizes(out: Outcome[SetPlan]) -> Table:
    """What fewer and more small skeins from a full one would hold, and what the set then takes."""
    case, rows = out.case, []
    for per in range(max(1, case.per - 1), case.per + 3):
        turns = most_turns_for_count(case.usable, per, case.reel)
        if turns < 1:
            break
        length = turns * case.reel
        rows.append(
            (
                str(per),
                str(turns),
                out.amount(length, LENGTH, "m", 4),
                str(printed_yards(length)),
                f"{printed_grams(mass_of_turns(turns, case.reel, case.tex))} g",
                out.amount(left_over(case.usable, per, length), LENGTH, "m", 3),
                str(skeins_cut_first(case.days, case.all_sets, per)),
                str(skeins_dyed_whole(case.days, case.all_sets, per)),
            )
        )
    return Table(
        "Other sizes of small skein",
        ("From one", "Turns", "Meters", "Yards", "Label", "Scrap", "Cut first", "Dyed whole"),
        tuple(rows),
    )


def plan_sheet(out: Outcome[SetPlan]) -> tuple[Table, ...]:
    """The plan to pin up: what to order, and each shade with boxes to tick."""
    return _plan(out), side_by_side(out), _shades_to_tick(out)


def _plan(out: Outcome[SetPlan]) -> Table:
    case = out.case
    small = f"{case.turns} turns, {out.text(SetPlan.small_length, 'm')}, {case.per} from a skein"
    return Table(
        case.name or "The set",
        ("What", "Plan"),
        (
            ("Sets", f"{case.sets} and {case.spare} spare"),
            ("Small skein", small),
            ("Dyes, in this order", ", ".join(dye.name for dye in case.dyes)),
            ("Mill lot, date, who", ""),
        ),
    )


def _shades_to_tick(out: Outcome[SetPlan]) -> Table:
    def doses(mass: float, recipe: tuple[float, ...]) -> str:
        return " ".join(_dye(out, dye_mass(mass, percent)) for percent in recipe)

    rows = tuple(
        (
            str(number),
            " ".join(_depth(out, percent) for percent in recipe),
            doses(out.case.shade_cut, recipe),
            doses(out.case.shade_whole, recipe),
            "",
            "☐",
            "☐",
            "☐",
            f"☐ {out.case.all_sets}",
        )
        for number, recipe in enumerate(out.case.ladder.recipes, 1)
    )
    columns = (
        "Day",
        "Depth",
        "Cut first",
        "Dyed whole",
        "Lot numbers",
        "Dyed",
        "Dry",
        "Wound",
        "Stickers",
    )
    return Table("Shade by shade", columns, rows)


def strip(out: Outcome[SetPlan]) -> Picture:
    return strip_picture(
        out.case.ladder.colors,
        [f"{depth:.2f}" for depth in out.case.depth.values()],
        "dye, % of dry fiber",
    )


def picture(out: Outcome[SetPlan]) -> Picture:
    case = out.case
    return set_picture(
        [color.hex for color in case.ladder.colors],
        case.cut_first,
        case.cut_first - case.all_small / case.per,
        case.each_shade,
        case.each_shade - case.all_sets / case.per,
    )
