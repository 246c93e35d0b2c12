"""Charts of net contents: how short one package may be, US beside EU and UK, and the factors of a
sample's mean.
"""

from typing import Any

from ...core.answer import Table
from ...core.marks import MARKS, marked, meaning
from ...core.number import write_number, write_plain
from ...core.table import read_table
from ..tolerance import (
    allowed_short_weight,
    correction_factor,
    inspector_factor,
    tolerable_negative_error,
)

PUT_UPS = (10, 19, 20, 25, 50, 75, 100, 113, 115, 150, 200, 227, 250, 500)
COUNTS = (5, 8, 10, 20, 30, 50)


def put_ups() -> list[Table]:
    """The usual put-ups: how short one skein may be.

    Source: nist-hb-133 (from memory); directive-76-211.
    """
    rows = []
    for grams in PUT_UPS:
        us, error = allowed_short_weight(grams), tolerable_negative_error(grams)
        rows.append(
            (
                f"{grams} g",
                f"{write_plain(grams - us)} g{MARKS['memory']}",
                f"{write_plain(grams - error)} g",
                f"{write_plain(grams - 2 * error)} g",
            )
        )
    return [
        Table(
            "How light one skein may be",
            ("Label", "US, none under", "EU and UK, 1 in 40 under", "EU and UK, none under"),
            tuple(rows),
            "The mean is another rule: in the EU and the UK not under the label; in the US not"
            " under it by more than chance does. Checked on 26 November 2026. "
            + meaning("read", "memory"),
            ("nist-hb-133", "directive-76-211", "uk-packaged-goods"),
        )
    ]


def short_by_weight() -> list[Table]:
    """Both tables as printed, in bands of the labeled weight.

    Source: nist-hb-133, Table 2-5 (from memory); directive-76-211, Annex I, 2.4.
    """
    return [
        _bands("nist-hb133-mav-weight", "US: maximum allowable variation"),
        _bands("directive-76-211-tolerable-negative-error", "EU and UK: tolerable negative error"),
    ]


def short_by_length() -> list[Table]:
    """Lengths, and the thread laws of two states.

    Source: nist-hb-133-length (1 to 43 m), nist-hb-133 (from memory); ri-6-10, ma-94-285.
    """
    table, laws = read_table("sell", "nist-hb133-mav-length"), read_table("sell", "thread-laws")
    rows = tuple(
        (_band(row, "m"), marked(f"{write_plain(row['percent'])} %", row["status"]))
        for row in table.rows
    )
    return [
        Table(
            "US: maximum allowable variation by length",
            ("Labeled length", "Allowed"),
            rows,
            table.note + " " + meaning("secondary", "memory"),
            ("nist-hb-133-length", "nist-hb-133"),
        ),
        Table(
            laws.title,
            ("What", "Rule"),
            tuple((row["what"], marked(row["rule"], row["status"])) for row in laws.rows),
            laws.note + " " + meaning("read"),
            ("ri-6-10", "ma-94-285"),
        ),
    ]


def sample_factors() -> list[Table]:
    """How far a sample's mean may be short, in standard deviations of the sample.

    Source: nist-hb-133 (printed column from memory); si-2006-659; both computed as Student's t over
    the root of the number.
    """
    printed = {
        int(row["packages"]): row["factor"]
        for row in read_table("sell", "nist-hb133-correction").rows
    }
    inspect = {
        int(row["packages"]): row["factor"]
        for row in read_table("sell", "si-2006-659-mean-test").rows
    }
    rows = []
    for count in sorted({*printed, *inspect, *COUNTS}):
        rows.append(
            (
                str(count),
                f"{printed[count]:.3f}{MARKS['memory']}" if count in printed else "–",
                f"{correction_factor(count):.3f}{MARKS['computed']}",
                f"{inspect[count]:.3f}" if count in inspect else "–",
                f"{inspector_factor(count):.3f}{MARKS['computed']}",
            )
        )
    plan = read_table("sell", "nist-hb133-sampling")
    plans = tuple(
        (
            _band(row, "packages"),
            marked(str(row["sample"]).removesuffix(".0"), row["status"]),
            marked(write_plain(row["may_exceed"]), row["status"]),
        )
        for row in plan.rows
    )
    return [
        Table(
            "A sample’s mean may be short by so many standard deviations",
            (
                "Skeins",
                "US, as printed",
                "t / √n, 97.5 %",
                "EU and UK, as printed",
                "t / √n, 99.5 %",
            ),
            tuple(rows),
            "Printed and computed agree. EU and UK: 30 and 50 kept whole, 20 opened. "
            + meaning("read", "memory", "computed"),
            ("nist-hb-133", "si-2006-659", "student-table"),
        ),
        Table(
            plan.title,
            ("Lot", "Tested", "May be short beyond it"),
            plans,
            plan.note + " " + meaning("memory"),
            ("nist-hb-133",),
        ),
    ]


def _bands(name: str, title: str) -> Table:
    table = read_table("sell", name)
    rows = tuple(
        (
            _band(row, "g"),
            marked(
                (
                    f"{write_plain(row['grams'])} g"
                    if row["grams"] != ""
                    else f"{write_plain(row['percent'])} %"
                ),
                row["status"],
            ),
        )
        for row in table.rows
    )
    return Table(
        title,
        ("Labeled weight", "Allowed"),
        rows,
        table.note + " " + meaning(*{row["status"] for row in table.rows}),
        (table.source,),
    )


def _band(row: dict[str, Any], unit: str) -> str:
    """A band in words: "over 36 to 54 g"."""
    if row["up_to"] == "":
        return f"over {write_number(row['over'], 0)} {unit}"
    high = write_number(row["up_to"], 0)
    return (
        f"up to {high} {unit}"
        if not row["over"]
        else f"over {write_number(row['over'], 0)} to {high} {unit}"
    )
