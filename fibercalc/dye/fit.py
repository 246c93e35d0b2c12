"""Which dye holds on which fiber, where the two are not made for each other."""

from typing import Any

from ..core.table import STATUS_WORDS, read_table


def kind_of(fiber: str) -> str:
    """What dyes a fiber: protein, nylon, cellulose, or its own kind.

    fiber  as the tables of densities and of care name it
    Raises KeyError for an unknown one.
    Source: dyeing-textbook (recalled).
    """
    kind: str = read_table("dye", "fiber-kinds").row("fiber", fiber)["kind"]
    return kind


def told(row: dict[str, Any]) -> str:
    """What a row of the table dye-on-fiber says, and how that is known.

    row  of the table
    Raises KeyError for a row without words.
    Source: as the row names it.
    """
    return f"{row['words']} ({STATUS_WORDS[row['status']]})."


def ill_fit(dye_class: str, fiber: str) -> dict[str, Any] | None:
    """The row of the table dye-on-fiber for a class of dye on a fiber that it is not made for;
    None where there is none.

    dye_class  key of a class of dye: acid-milling, premetallized-1-2, reactive, direct
    fiber      as the tables of densities and of care name it
    Raises KeyError for an unknown fiber.
    Source: dyeing-textbook (recalled); acid dye on plant fiber is common practice.
    """
    dye, kind = dye_class.partition("-")[0], kind_of(fiber)
    return next(
        (
            row
            for row in read_table("dye", "dye-on-fiber").rows
            if row["kind"] == kind and dye in row["dyes"].split()
        ),
        None,
    )
