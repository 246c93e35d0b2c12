"""Charts of what dyes what: dye classes with bath, heat and hold, and what each fiber bears."""

from typing import Any

from ...core.answer import Table
from ...core.marks import MARKS, marked, meaning
from ...core.table import read_table
from .cells import between, named_sources

FIBERS = {"protein nylon": "Wool, silk, nylon", "cellulose": "Cotton, linen"}
TAKES = {
    "protein": "Acid, premetallized; reactive from a sour bath†",
    "nylon": "Acid, premetallized",
    "cellulose": "Reactive, direct",
    "none": "None of these",
}
BOIL = 100.0


def dye_classes() -> list[Table]:
    """Dye classes with their bath, their heat and hold, what they hold and what they are like.

    Source: memory of textbooks (dyeing-textbook); deep shades from trade pages
    (trade-page-small-lots, trade-page-reactive).
    """
    table = read_table("dye", "dye-classes")
    rows = tuple(
        (
            row["label"],
            FIBERS[row["takes"]],
            between(row["ph_low"], row["ph_high"], row["ph_status"]),
            _top(row["top_c"], row["top_status"]),
            between(row["hold_low"], row["hold_high"], row["hold_status"], "min"),
            marked(row["depth_mark"], row["depth_status"]),
            between(row["exhaustion_low"], row["exhaustion_high"], row["exhaustion_status"]),
        )
        for row in table.rows
    )
    notes = tuple((row["label"], row["note"] + MARKS[row["status"]]) for row in table.rows)
    sources = named_sources(table, *(row["depth_source"] for row in table.rows))
    return [
        Table(
            "Dye classes",
            (
                "Class",
                "Fibers",
                "pH",
                "Top, °C",
                "Hold",
                "Deep is up to, %",
                "Ends in the fiber, %",
            ),
            rows,
            "Wool stands for all hair, cotton for rayon too. Depth is dye in % of dry fiber, all"
            " dyes together; more than deep is likely to stay in the bath, and black goes beyond it"
            " (4 to 8 %†). A dash: ask the maker. What ends in the fiber is % of the dye put in;"
            " for reactive dyes what is fixed. The maker's sheet comes first. "
            + meaning("secondary", "memory", "practice"),
            sources,
        ),
        Table(
            "What each class is like",
            ("Class", "What to know"),
            notes,
            meaning("memory", "practice"),
            named_sources(table),
        ),
    ]


def fibers_in_the_bath() -> list[Table]:
    """What each fiber takes and bears.

    Source: common practice; silk and nylon from memory of textbooks (dyeing-textbook).
    """
    table = read_table("dye", "fibers-in-the-bath")
    rows = tuple(
        (
            row["label"],
            TAKES[row["kind"]],
            "–" if row["kind"] == "none" else _top(row["top_c"], row["status"]),
            row["note"] + MARKS[row["status"]],
        )
        for row in table.rows
    )
    return [
        Table(
            "Fibers in the bath",
            ("Fiber", "Dyes that stay", "At most, °C", "What to know"),
            rows,
            "Dye class and fiber each have a highest temperature: the lower one counts, and in a"
            " blend the lowest of its fibers. " + meaning("memory", "practice"),
            named_sources(table),
        )
    ]


def _top(celsius: Any, status: str) -> str:
    if celsius == "":
        return "–"
    return ("boil" if celsius == BOIL else f"{celsius:.0f}") + MARKS[status]
