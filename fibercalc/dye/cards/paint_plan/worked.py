"""How much liquor each section takes up, what is in it, and how long all of it steams."""

from __future__ import annotations

from ....core.arithmetic import total
from ....core.problem import OutOfRange, Refused
from ....core.steps import looked_up
from ...paint import (
    paint_strength,
    paint_volume,
    section_masses,
    steaming_rounds,
    steaming_time,
    stock_in_paint,
)
from .asked import STEAM_TIMES, PaintPlan, Section


def answer(case: PaintPlan) -> None:
    if case.full <= case.damp:
        raise Refused(
            "Wet through: it must hold more than the damp yarn brings along; squeeze or spin the"
            " yarn drier.",
            PaintPlan.full,
        )
    case.liquor = paint_volume(case.skein_mass, case.full, case.damp)
    masses = section_masses(case.skein_mass, [section.share for section in case.sections])
    for number, (section, mass) in enumerate(zip(case.sections, masses), 1):
        section.mass = mass
        try:
            _find_liquor(case, section)
        except OutOfRange as error:
            raise Refused(
                f"Section {number}, depth: {error.reason}.",
                PaintPlan.sections.each(Section.depth, row=number),
            ) from None
    case.run_liquor = case.liquor * case.skeins
    case.stock_all = total([section.run_stock for section in case.sections])
    _steam(case)


def _find_liquor(case: PaintPlan, section: Section) -> None:
    """What goes on one section, and what it is mixed of."""
    section.volume = paint_volume(section.mass, case.full, case.damp)
    section.strength = paint_strength(section.depth, case.full, case.damp)
    section.stock = stock_in_paint(section.volume, section.strength, case.stock)
    section.run_stock = section.stock * case.skeins
    section.run_water = section.volume * case.skeins - section.run_stock


def _steam(case: PaintPlan) -> None:
    case.rounds = steaming_rounds(case.skeins, case.at_once)
    case.least_steam = looked_up("dye", STEAM_TIMES, "key", case.fiber, "low")
    case.most_steam = looked_up("dye", STEAM_TIMES, "key", case.fiber, "high")
    case.steaming = steaming_time(case.rounds, (case.least_steam + case.most_steam) / 2)
    case.band(
        PaintPlan.steaming,
        steaming_time(case.rounds, case.least_steam),
        steaming_time(case.rounds, case.most_steam),
    )
