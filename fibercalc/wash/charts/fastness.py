"""Charts of fastness: the gray scales in numbers and words, tests side by side, fluff told from
dye.
"""

from ...core.answer import Table
from ...core.marks import MARKS, marked, meaning
from ...core.table import read_table
from ..gray_scale import change_grade, grade_words, staining_grade


def gray_scales() -> list[Table]:
    """Steps of both gray scales, what the formulas make of them, and what they look like.

    Source: ISO 105-A02 (iso-105-a02, read), ISO 105-A03, A04 and A05 (from memory).
    """
    table = read_table("wash", "gray-scale-steps")
    numbers = tuple(
        (
            grade_words(row["grade"]),
            f"{marked(row['change'], row['status'])} ± {row['change_tolerance']:g}",
            f"{change_grade(row['change']):.2f}{MARKS['memory']}",
            f"{row['staining']:g} ± {row['staining_tolerance']:g}{MARKS[row['staining_status']]}",
            f"{staining_grade(row['staining']):.2f}{MARKS['memory']}",
        )
        for row in table.rows
    )
    words = tuple(
        (
            grade_words(row["grade"]),
            row["see_change"],
            row["see_staining"],
            row["buyer"] + MARKS[row["words_status"]],
        )
        for row in table.rows
    )
    return [
        Table(
            "Steps of the gray scales, CIELAB difference",
            ("Grade", "Change", "By the formula", "Staining", "By the formula"),
            numbers,
            table.note + " " + meaning("read", "memory"),
            ("iso-105-a02", "iso-105-a03", "iso-105-a04", "iso-105-a05"),
        ),
        Table(
            "What a grade looks like, and what to say",
            ("Grade", "Change of the piece", "Staining of white", "For who buys it"),
            words,
            "Our own words. " + meaning("practice"),
            ("common-practice",),
        ),
    ]


def tests_at_home() -> list[Table]:
    """Wash and rub tests: the standard's way and the way at home.

    Source: ISO 105-C06 (iso-105-c06, secondary), ISO 105-X12 (iso-105-x12); common practice at
    home.
    """
    table, made = read_table("wash", "fastness-tests"), []
    for test in dict.fromkeys(row["test"] for row in table.rows):
        rows = tuple(
            (
                row["what"],
                row["standard"] + MARKS[row["standard_status"]],
                row["home"] + MARKS[row["status"]],
            )
            for row in table.rows
            if row["test"] == test
        )
        made.append(
            Table(
                f"{test}: the standard, and at home",
                ("What", "The standard", "At home"),
                rows,
                table.note + " " + meaning("read", "secondary", "memory", "practice"),
                ("iso-105-c06" if test == "Washing" else "iso-105-x12", "common-practice"),
            )
        )
    return made


def fluff_or_dye() -> list[Table]:
    """What came off, what to do and what to say.

    Source: common practice.
    """
    table = read_table("wash", "shedding-answers")
    return [
        Table(
            title,
            ("It is", title),
            tuple((row["says"] + MARKS[row["status"]], row[column]) for row in table.rows),
            table.note + " " + meaning("practice"),
            (table.source,),
        )
        for column, title in (("do", "What to do"), ("tell", "What to say"))
    ]
