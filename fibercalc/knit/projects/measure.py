"""How a measure of the cloth is asked for, and how a piece of it is worked out."""

from ...core.card import CHOICE, Input, Option
from ...core.units import AREA, LENGTH
from . import Piece

TABLE, OWN = "table", "own"
SIZE_BY = Input(
    CHOICE,
    "Which size",
    default=OWN,
    when={"make": ("sweater", "hat")},
    options=(Option(OWN, "My own measures"), Option(TABLE, "A size of the table")),
    name="size_by",
)


def measure(
    name: str,
    label: str,
    default: str,
    most: str,
    usual: tuple[str, str],
    when: dict,
    said: str = "",
    least: str = "1 cm",
    rough: str = "1 cm",
) -> Input:
    """One measure of the finished cloth, read from a tape. The answer function gets centimeters."""
    return Input(
        LENGTH,
        label,
        default=default,
        allowed=(least, most),
        usual=usual,
        rough=rough,
        units=("cm", "in"),
        unit="cm",
        when=when,
        instrument="tape",
        measure=said,
        name=name,
    )


def piece(w, step: str, formula: str, area: float, label: str) -> Piece:
    """A piece of cloth, its area in cm² recorded in the working."""
    return Piece(step, label, w.step(step, formula, area, AREA, "cm²", label))
