"""Chart of rounds for a sock machine: the foot by its length, heel and toe by the cylinder."""

from ...core.answer import Table
from ...core.number import write_number
from ...core.units import METERS_PER_INCH
from ..sock import (
    foot_rounds_by_length,
    needles_left,
    short_row_depth,
    short_row_stitches,
    short_rows,
)

NEEDLES = 60
ROWS_PER_CM = (3.2, 3.6, 4.0, 4.4, 4.8, 5.2)
FEET = tuple(range(15, 33))  # cm
CYLINDERS = (48, 54, 56, 60, 64, 66, 72, 80, 84, 100)
MIDDLE_ROWS = 4.0


def sock_rounds() -> list[Table]:
    """Foot rounds between heel and toe by foot length and rows, and the short-row heel of each
    cylinder.

    Source: arithmetic; heel and toe narrowed to a third of half the needles is common practice.
    """
    counts = {
        rows: dict(
            foot_rounds_by_length(
                [foot / 100 for foot in FEET], NEEDLES // 2, needles_left(NEEDLES // 2), rows
            )
        )
        for rows in ROWS_PER_CM
    }
    feet = tuple(
        (
            f"{foot} cm ({foot / 100 / METERS_PER_INCH:.1f} in)",
            *(str(counts[rows][foot / 100]) for rows in ROWS_PER_CM),
        )
        for foot in FEET
    )
    return [
        Table(
            f"Foot rounds between heel and toe, {NEEDLES} needles",
            ("Foot", *(f"{rows * 10:.0f} rows" for rows in ROWS_PER_CM)),
            feet,
            "Columns are rows in 10 cm of a sock washed and rested. Rounds = rows x foot, less half"
            " the rows of heel and of toe. The sock is as long as the foot: for one a tenth shorter"
            " read the line of a foot a tenth shorter. Another cylinder: add or take off what the"
            " next table says. Computed here.",
            ("arithmetic", "common-practice"),
        ),
        Table(
            "Short-row heel, or toe, by cylinder",
            (
                "Needles",
                "Worked on",
                "Down to",
                "Rows",
                "Stitches",
                f"Depth at {MIDDLE_ROWS * 10:.0f} rows",
                "Foot rounds against 60 needles",
            ),
            tuple(_pocket(needles) for needles in CYLINDERS),
            "Half the needles, down to a third of them (common practice), then up again. Depth is"
            " half the rows, in cm of a gauge of 40 rows in 10 cm. Computed here.",
            ("arithmetic", "common-practice"),
        ),
    ]


def _pocket(needles: int) -> tuple[str, ...]:
    half = needles // 2
    left = needles_left(half)
    more = short_rows(NEEDLES // 2, needles_left(NEEDLES // 2)) - short_rows(half, left)
    return (
        str(needles),
        str(half),
        str(left),
        str(short_rows(half, left)),
        write_number(short_row_stitches(half, left), 0),
        f"{100 * short_row_depth(half, left, MIDDLE_ROWS):.1f} cm",
        f"{more} more" if more > 0 else f"{-more} fewer" if more < 0 else "the same",
    )
