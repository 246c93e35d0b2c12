"""Charts of the bath: acids, alkalis and salts with their published ranges, liquor ratios, steam
setting.
"""

from ...core.answer import Table
from ...core.marks import meaning
from ...core.table import read_table
from .cells import between, named_sources


def auxiliaries() -> list[Table]:
    """What goes into the bath beside the dye: on the fiber's weight for acid dyes, by the liter
    for reactive ones.

    Source: trade pages (trade-page-small-lots), one paper (cotton-depth-2016), memory of
    textbooks (dyeing-textbook).
    """
    table = read_table("dye", "auxiliaries")
    classes = {row["key"]: row["label"] for row in read_table("dye", "dye-classes").rows}
    made = []
    for unit, title in (
        ("%", "Acids and salts for acid dyes, % of dry fiber"),
        ("g/L", "Salt and soda for reactive dyes on cotton, g in each liter of bath"),
    ):
        found = [row for row in table.rows if row["unit"] == unit]
        rows = tuple(
            (
                classes[row["dye_class"]],
                row["label"],
                row["shade"],
                between(row["low"], row["high"], row["status"]),
                row["note"] or "–",
            )
            for row in found
        )
        made.append(
            Table(
                title,
                ("Class", "What", "Shade", "How much", "Note"),
                rows,
                (table.note + " " if unit == "%" else "")
                + meaning(*(row["status"] for row in found)),
                tuple(dict.fromkeys(row["source"] or table.source for row in found)),
            )
        )
    return made


def liquor_ratios() -> list[Table]:
    """How much bath for a gram of dry fiber.

    Source: memory of textbooks (dyeing-textbook); craft-page-dyeing; cotton-depth-2016.
    """
    table = read_table("dye", "liquor-ratios")
    rows = tuple(
        (
            row["label"],
            between(row["low"], row["high"], row["status"]),
            _liters(row["low"], row["high"]),
        )
        for row in table.rows
    )
    return [
        Table(
            "Liquor ratio",
            ("Where", "mL for each gram", "Bath for 400 g, L"),
            rows,
            f"30 mL for each gram is written 30:1. {table.note} The last column is computed. "
            + meaning(*(row["status"] for row in table.rows)),
            named_sources(table),
        )
    ]


def steam_times() -> list[Table]:
    """How long a painted and wrapped skein is steamed.

    Source: common practice.
    """
    table = read_table("dye", "steam-times")
    rows = tuple(
        (row["label"], between(row["low"], row["high"], row["status"], "min"), row["note"] or "–")
        for row in table.rows
    )
    return [
        Table(
            "Steam setting",
            ("What", "In strong steam", "Note"),
            rows,
            f"Counted from when steam comes strongly and the parcel is hot through. {table.note}"
            f" {meaning('practice')}",
            named_sources(table),
        )
    ]


def _liters(low: float, high: float) -> str:
    ends = [f"{0.4 * ratio:g}" for ratio in (low, high)]
    return ends[0] if ends[0] == ends[1] else "-".join(ends)
