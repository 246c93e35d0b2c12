"""Charts of labels: what the law of each place asks for, and what a fiber is called there."""

from ...core.answer import Table
from ...core.marks import MARKS, meaning
from ...core.table import read_table

PLACES = ("us", "eu_uk")
SOURCES = (
    "cfr-16-303",
    "cfr-16-303-3",
    "wool-act",
    "us-label-memory",
    "eu-1007-2011",
    "eu-1007-memory",
    "textile-law-older",
    "directive-76-211",
    "uk-packaged-goods",
    "nist-hb-130",
)


def label_rules() -> list[Table]:
    """What has to be on a yarn label, by country.

    Source: cfr-16-303, wool-act, eu-1007-2011 and others, each cell marked for how it is known.
    """
    table = read_table("sell", "label-rules")
    rows = tuple(
        (row["what"], *(row[place] + MARKS[row[f"{place}_status"]] for place in PLACES))
        for row in table.rows
    )
    return [
        Table(
            table.title,
            ("What", "US", "EU and UK"),
            rows,
            table.note + " " + meaning("read", "secondary", "memory"),
            SOURCES,
        )
    ]


def fiber_names() -> list[Table]:
    """What a fiber is called on a label.

    Source: us-label-memory, eu-1007-memory: from memory.
    """
    table = read_table("sell", "fiber-names")
    rows = tuple(
        (row["label"], row["us"] + MARKS[row["status"]], row["eu"] + MARKS[row["status"]])
        for row in table.rows
    )
    return [
        Table(
            table.title,
            ("Fiber", "US", "EU and UK"),
            rows,
            table.note + " " + meaning("memory"),
            ("us-label-memory", "eu-1007-memory"),
        )
    ]
