"""Charts of heddles and reeds: exact numbers in inches and centimeters, denting orders, ends in a
width.
"""

from ...core.answer import Table
from ...core.marks import MARKS, meaning
from ...core.number import write_number, write_plain
from ..ends import ends_that_fit
from ..heddle import DENTING_ORDERS, dents_per_10_cm, dents_per_inch, ends_in_a_dent, heddle_list

WIDTHS = (20, 25.4, 30, 40, 50, 60, 70, 80)  # cm; 25.4 is a ten-inch loom
REEDS = (6, 8, 10, 12, 15)


def heddles() -> list[Table]:
    """Every heddle and reed by its number, exact in both systems.

    Source: definition of the inch; trade pages for the inch numbers sold (trade-pages-reeds);
    which are rigid heddles from memory (trade-memory).
    """
    table, metric, inch = heddle_list(), [], []
    for row in table.rows:
        rigid = "yes" + MARKS["memory"] if row["rigid"] == "yes" else "–"
        if row["per"] == "10 cm":
            exact = dents_per_inch(row["number"])
            metric.append(
                (
                    row["label"],
                    write_plain(row["number"] / 10),
                    f"{exact:.2f}{MARKS['computed']}",
                    (
                        f"{row['named']:g}{MARKS[row['status']]}"
                        if isinstance(row["named"], float)
                        else f"{row['named']}{MARKS[row['status']]}"
                    ),
                    rigid,
                    f"{2 * row['number'] / 10:g} · {2 * exact:.2f}{MARKS['computed']}",
                )
            )
        else:
            exact = dents_per_10_cm(row["number"])
            inch.append(
                (
                    f"{row['number']:g}{MARKS[row['status']]}",
                    f"{exact:.2f}{MARKS['computed']}",
                    f"{exact / 10:.3f}{MARKS['computed']}",
                    rigid,
                    f"{2 * row['number']:g} · {exact / 5:.2f}{MARKS['computed']}",
                )
            )
    return [
        Table(
            "Metric: dents in 10 cm",
            (
                "On it",
                "Per cm",
                "Per inch, exact",
                "Sold as",
                "Rigid heddle",
                "Two of them: per cm · per in",
            ),
            tuple(metric),
            "A metric number x 0.254 is dents in an inch. What is sold as 10 is 10.16: on 160 ends"
            " that is 40.0 cm, not 40.6. " + meaning("secondary", "memory", "computed"),
            ("trade-pages-reeds", "trade-memory", "arithmetic"),
        ),
        Table(
            "Inch: dents in an inch",
            ("On it", "In 10 cm, exact", "Per cm", "Rigid heddle", "Two of them: per in · per cm"),
            tuple(inch),
            "Which numbers are sold is from memory. " + meaning("memory", "computed"),
            ("trade-memory", "arithmetic"),
        ),
    ]


def denting() -> list[Table]:
    """Setts that denting orders give in inch reeds.

    Source: arithmetic (mean ends in a dent).
    """
    rows = tuple(
        (
            "-".join(map(str, order)),
            write_plain(ends_in_a_dent(order), digits=3),
            *(write_number(reed * ends_in_a_dent(order), 1) for reed in REEDS),
        )
        for order in DENTING_ORDERS
    )
    return [
        Table(
            "Ends in an inch by denting order",
            ("Ends in dent after dent", "Mean", *(f"{reed}-dent" for reed in REEDS)),
            rows,
            "0 leaves a dent empty. Ends in a centimeter = ends in an inch / 2.54. Computed here.",
            ("arithmetic",),
        )
    ]


def ends_in_width() -> list[Table]:
    """Ends that a width holds, one in each hole and slot.

    Source: arithmetic, rounded down.
    """
    rows = []
    for row in heddle_list().rows:
        if row["rigid"] == "yes":
            per_cm = row["number"] / 10 if row["per"] == "10 cm" else row["number"] / 2.54
            name = row["label"] if row["per"] == "10 cm" else f"{row['number']:g} per in"
            rows.append((name, *(str(ends_that_fit(width, per_cm, 1)) for width in WIDTHS)))
    return [
        Table(
            "Most ends in a width, one to a hole or slot",
            ("Heddle", *(f"{width:g} cm" for width in WIDTHS)),
            tuple(rows),
            "25.4 cm is a ten-inch loom. Computed here, rounded down.",
            ("arithmetic",),
        )
    ]
