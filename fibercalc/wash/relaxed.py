"""What relaxation does to plain knitting by its constants: strain goes out of the loop, and the
cloth takes the proportions of a new state of rest.

Stitches in a width are Kw / loop length, so with the same yarn in the loop a width goes as 1 / Kw
and a height as 1 / Kc (tables/munden-constants.csv).
"""

from ..core.problem import require

HALF_DIGIT = 0.05  # the constants are printed to one decimal


def relaxed_change(constant_before: float, constant_after: float) -> float:
    """Change, %, of a width (with Kw) or a height (with Kc) from one state of rest to another:
    100 (K before / K after - 1).

    constant_before  Kw or Kc of the state in which it was measured, 1 to 10
    constant_after   the same of the state it will come to, 1 to 10
    Raises OutOfRange outside these.
    Source: Munden 1959 (munden-1959, from memory): counts are K / l, and l stays.
    """
    require("constant_before", constant_before, 1.0, 10.0)
    require("constant_after", constant_after, 1.0, 10.0)
    return 100 * (constant_before / constant_after - 1)


def relaxed_range(
    constant_before: float, constant_after: float, half_digit: float = HALF_DIGIT
) -> tuple[float, float]:
    """Least and most change, %, that the printed digits of both constants leave open.

    constant_before  Kw or Kc before, 1 to 10
    constant_after   the same after, 1 to 10
    half_digit       half a unit of their last printed digit, 0 to 0.5
    Raises OutOfRange outside these.
    Source: arithmetic (each constant moved by half of its last digit).
    """
    require("half_digit", half_digit, 0.0, 0.5)
    relaxed_change(constant_before, constant_after)
    return (
        100 * ((constant_before - half_digit) / (constant_after + half_digit) - 1),
        100 * ((constant_before + half_digit) / (constant_after - half_digit) - 1),
    )


def gauge_after(gauge: float, change: float) -> float:
    """Stitches (or rows) per length once the cloth has changed by a percentage in that direction.

    gauge   count per any length, above 0
    change  %, minus is shrinkage, above -100 to 200
    Raises OutOfRange outside these.
    Source: arithmetic (the stitches stay, their width changes).
    """
    require("gauge", gauge, above=0.0)
    require("change", change, -100.0, 200.0, above=-100.0)
    return gauge / (1 + change / 100)
