"""What every kind of project is asked along with, how a measure of the cloth is asked for, and
what a piece of it is.
"""

from __future__ import annotations

from ...core.asked import When
from ...core.card import CHOICE, Between, Case, Input, Option
from ...core.units import AREA, LENGTH

YARN, GAUGE, SWATCH, PATTERN = "yarn", "gauge", "swatch", "pattern"
TABLE, OWN = "table", "own"


class Made(Case):
    """What one goes by, what it will be, and whether its size is one's own or a table's."""

    known = Input[str](
        CHOICE,
        "What you go by",
        default=SWATCH,
        options=(
            Option(SWATCH, "A weighed, washed swatch"),
            Option(GAUGE, "A gauge"),
            Option(YARN, "Only the yarn"),
            Option(PATTERN, "The pattern’s own figure"),
        ),
    )
    make = Input[str](
        CHOICE,
        "What it will be",
        default="sweater",
        when={known: (YARN, GAUGE, SWATCH)},
        options=(
            Option("sweater", "A sweater"),
            Option("hat", "A hat"),
            Option("mittens", "A pair of mittens"),
            Option("socks", "A pair of socks"),
            Option("cowl", "A cowl or other tube"),
            Option("scarf", "A scarf or wrap"),
            Option("blanket", "A blanket"),
            Option("shawl", "A shawl"),
        ),
    )
    size_by = Input[str](
        CHOICE,
        "Which size",
        default=OWN,
        when={make: ("sweater", "hat")},
        options=(Option(OWN, "My own measures"), Option(TABLE, "A size of the table")),
    )


def measure(
    label: str,
    default: str,
    most: str,
    usual: tuple[str, str],
    when: When,
    said: str = "",
    least: str = "1 cm",
    rough: str = "1 cm",
) -> Input[float]:
    """One measure of the finished cloth, read from a tape. The case holds centimeters."""
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
    )


def found(label: str) -> Between[float]:
    """A measure, cm, that follows from others."""
    return Between(LENGTH, label, unit="cm")


def piece(label: str) -> Between[float]:
    """The area of a piece of cloth in all (both sleeves, both socks), cm²."""
    return Between(AREA, label, unit="cm²")
