"""Which dye holds on which fiber, where the two are not made for each other."""

from ..core.table import read_table

KNOWN_AS = {"memory": "from memory, unverified", "practice": "common practice"}


def kind_of(fiber: str) -> str:
    """What dyes a fiber: protein, nylon, cellulose, or its own kind.

    fiber  as the tables of densities and of care name it
    Raises KeyError for an unknown one.
    Source: dyeing-textbook (recalled).
    """
    return read_table("dye", "fiber-kinds").row("fiber", fiber)["kind"]


def ill_fit(dye_class: str, fiber: str) -> dict | None:
    """The row of the table dye-on-fiber for a class of dye on a fiber that it is not made for; None where there is none.

    dye_class  key of a class of dye: acid-milling, premetallized-1-2, reactive, direct
    fiber      as the tables of densities and of care name it
    Raises KeyError for an unknown fiber.
    Source: dyeing-textbook (recalled); acid dye on plant fiber is common practice.
    """
    dye = dye_class.partition("-")[0].replace("premetallized", "acid")
    kind = kind_of(fiber)
    rows = read_table("dye", "dye-on-fiber").rows
    return next((row for row in rows if row["kind"] == kind and row["dye"] in (dye, "any")), None)
