"""Liquid acids and ammonia by name, never without their strength, and how much of one a bath is
given.
"""

from ..core.problem import require
from ..core.table import read_table

VINEGAR = (4.0, 8.0)  # % of acetic acid in what is sold as white vinegar (common practice)
QUESTIONED = (
    5.0  # % of the bath: more acid or soda is asked back, and thins the bath (our own edge)
)


def liquid_name(chemical: str, percent: float, written: str, kitchen: bool = True) -> str:
    """What a bottle holds, with its strength: "5 % acetic acid (white vinegar)".

    chemical  key of the table bath-chemicals
    percent   strength, above 0 to 100
    written   the strength as it is written, "5 %"
    kitchen   whether its name in the kitchen is told too
    Raises OutOfRange for another strength and KeyError for an unknown chemical.
    Source: definition; what is sold as vinegar is common practice.
    """
    require("percent", percent, 0.0, 100.0, above=0.0)
    label = read_table("safe", "bath-chemicals").row("key", chemical)["label"].partition(" (")[0]
    vinegar = kitchen and chemical == "acetic" and VINEGAR[0] <= percent <= VINEGAR[1]
    return f"{written} {label.lower()}{' (white vinegar)' if vinegar else ''}"


def share_of_bath(amount: float, bath: float) -> float:
    """An amount that goes into a bath, in % of the bath; over 5 % it is to be asked back.

    amount  mL of a liquid or g of crystals, 0 or more
    bath    mL, above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("amount", amount, 0.0)
    require("bath", bath, above=0.0)
    return 100 * amount / bath
