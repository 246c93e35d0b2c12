"""Charts of what each percentage is a percentage of, with a chain worked through, and of crimp
beside take-up.
"""

from ...core.answer import Table
from ...core.marks import MARKS, meaning
from ...core.number import write_number
from ...core.table import read_table
from ...wash.shrink import size_after, size_before
from ..chain import (
    crimp_from_take_up,
    finished_width,
    take_up_from_crimp,
    warp_for_woven,
    width_in_heddle,
    width_off_loom,
)

WANTED, WIDE = 63.0, 34.0  # cm: the towel of the examples, hems with it
LOSSES = {"length": 18.0, "take-up": 10.0, "width": 14.0, "draw-in": 6.0}  # %: its losses
CRIMPS = (1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25)


def percentages() -> list[Table]:
    """Each percentage, what it is of, and a towel worked back through all of them.

    Source: trade practice (trade-pages-warp); usual figures from memory (trade-memory); crimp
    after Peirce (peirce-1937).
    """
    table = read_table("weave", "allowances")
    rows = tuple(
        (row["label"], row["of"], row["back"], row["usual"] + MARKS["memory"]) for row in table.rows
    )
    return [
        Table(
            table.title,
            ("Percentage", "Of what", "Going back", "Usual"),
            rows,
            table.note + " " + meaning("memory"),
            ("trade-pages-warp", "trade-memory", "peirce-1937"),
        ),
        _worked(),
    ]


def crimp_and_take_up() -> list[Table]:
    """Crimp, of the cloth, beside take-up, of the yarn.

    Source: definition (t = c / (1 + c)).
    """
    rows = tuple(
        (
            f"{crimp} %",
            f"{take_up_from_crimp(crimp):.2f} %",
            f"{crimp} %",
            f"{crimp_from_take_up(crimp):.2f} %",
        )
        for crimp in CRIMPS
    )
    return [
        Table(
            "Crimp and take-up",
            ("Crimp", "is take-up", "Take-up", "is crimp"),
            rows,
            "Crimp is a percent of the cloth, take-up of the yarn in it: never mix them. Computed"
            " here.",
            ("peirce-1937", "arithmetic"),
        )
    ]


def _worked() -> Table:
    woven = size_before(WANTED, LOSSES["length"])
    heddle = width_in_heddle(WIDE, LOSSES["width"], LOSSES["draw-in"])
    added_length = WANTED * (1 + (LOSSES["length"] + LOSSES["take-up"]) / 100)
    added_width = WIDE * (1 + (LOSSES["width"] + LOSSES["draw-in"]) / 100)
    rows = (
        ("Wanted, washed", _cm(WANTED), _cm(WIDE)),
        (
            "On the loom",
            f"{_cm(woven)} ({LOSSES['length']:g} %)",
            f"{_cm(width_off_loom(heddle, LOSSES['draw-in']))} ({LOSSES['width']:g} %)",
        ),
        (
            "Warp, heddle",
            f"{_cm(warp_for_woven(woven, LOSSES['take-up']))} ({LOSSES['take-up']:g} %)",
            f"{_cm(heddle)} ({LOSSES['draw-in']:g} %)",
        ),
        ("If both were added up", _cm(added_length), _cm(added_width)),
        (
            "Added up, it comes out",
            _cm(size_after(added_length * (1 - LOSSES["take-up"] / 100), LOSSES["length"])),
            _cm(finished_width(added_width, LOSSES["width"], LOSSES["draw-in"])),
        ),
    )
    return Table(
        "The towel of the examples, worked back",
        ("Size", "Length", "Width"),
        rows,
        "Each loss divided out in its own place. The last two lines are the mistake: short by"
        " centimeters each way. Computed here.",
        ("arithmetic",),
    )


def _cm(size: float) -> str:
    return f"{write_number(size, 1)} cm"
