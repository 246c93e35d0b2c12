"""Charts for the label: figures that do not overstate, and how far below an average to print."""

from ...core.answer import Table
from ...core.number import write_number
from ..count import linear_density
from ..putup import printed_meters, printed_ounces, printed_yards
from ..sample import lower_limit_of_mean, lower_limit_of_next
from ..student_t import quantile

PUT_UPS = (
    (100, 800),
    (100, 600),
    (100, 500),
    (100, 420),
    (100, 400),
    (100, 365),
    (100, 300),
    (100, 230),
    (100, 200),
    (100, 170),
    (100, 120),
    (50, 210),
    (50, 200),
    (50, 115),
    (20, 84),
)
SKEINS = (2, 3, 4, 5, 6, 8, 10, 12, 15, 20)


def label_figures() -> list[Table]:
    """Common put-ups in both systems, each figure rounded down.

    Source: exact yard and ounce (arithmetic); rounding down is common practice.
    """
    rows = tuple(
        (
            f"{grams} g / {meters} m",
            f"{printed_ounces(grams):.1f} oz / {printed_yards(meters)} yd",
            write_number(meters / grams, 2),
            write_number(linear_density(grams, meters), 0),
        )
        for grams, meters in PUT_UPS
    )
    return [
        Table(
            "The same put-up in ounces and yards",
            ("Grams and meters", "Ounces and yards to print", "m/g", "tex"),
            rows,
            "Yards and ounces are rounded down from the exact value, so the label never promises"
            " more than the skein holds. Computed here.",
            ("arithmetic", "common-practice"),
        )
    ]


def put_up_limits() -> list[Table]:
    """How many standard deviations below the average to print, by the number of skeins measured.

    Source: IUPAC, confidence limits (iupac-confidence-limits); Hahn 1970 (hahn-1970, from memory).
    """
    rows = tuple(
        (
            f"{count}",
            write_number(quantile(95.0, count - 1), 2),
            write_number(-lower_limit_of_mean(0, 1, count), 2),
            write_number(-lower_limit_of_next(0, 1, count), 2),
            f"{printed_meters(lower_limit_of_mean(420, 5, count))}",
        )
        for count in SKEINS
    )
    return [
        Table(
            "How far below the average to print",
            (
                "Skeins measured",
                "Student's t",
                "For the average: times the standard deviation",
                "For one more skein: times the standard deviation",
                "Average 420 m, deviation 5 m: print",
            ),
            rows,
            "One-sided, 95 % sure: t / √n for the average of the delivery, t x √(1 + 1/n) for one"
            " more skein†. † from memory, unverified. The last column is rounded down, as a"
            " label is.",
            ("iupac-confidence-limits", "directive-76-211", "hahn-1970"),
        )
    ]
