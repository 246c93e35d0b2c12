"""A kit's yarn by color: what the pattern really takes, how sure so many skeins are, and whether
a cut skein would do.
"""

from ..core.problem import require
from ..core.spread import NORMAL_95, Parts

SUREST_LENGTH = 4.0  # times the need: no knitter takes more
MOST_LENGTH = 1e6


def color_in_skeins(
    length: float,
    length_rough: float,
    skein_length: float,
    skein_rough: float,
    holds: float,
    holds_rough: float,
    knitter: float,
) -> tuple[float, Parts]:
    """What one color takes, in skeins, and its spread.

    length        as the pattern gives it, m, above 0
    length_rough  half-width of its rounding, m, 0 or more
    skein_length  m, above 0
    skein_rough   half-width of the put-up, m, 0 or more
    holds         what the pattern's figure holds over the bare need, as a factor, 1 to 2
                  (knit.needs.BUFFERS)
    holds_rough   half-width of that factor, 0 to 1
    knitter       how far a knitter strays from the pattern's, as a 95 % share, 0 to 1
                  (knit.needs.KNITTER_ERROR)
    Raises OutOfRange outside these.
    Source: first-order propagation, as everywhere in the book (core.spread).
    """
    require("length", length, 0.0, MOST_LENGTH, above=0.0)
    require("skein_length", skein_length, 0.0, MOST_LENGTH, above=0.0)
    for name, value, high in (
        ("length_rough", length_rough, MOST_LENGTH),
        ("skein_rough", skein_rough, MOST_LENGTH),
        ("holds_rough", holds_rough, 1.0),
        ("knitter", knitter, 1.0),
    ):
        require(name, value, 0.0, high)
    require("holds", holds, 1.0, 2.0)
    needed = length / holds / skein_length
    uniform = [
        needed * share
        for share in (length_rough / length, skein_rough / skein_length, holds_rough / holds)
        if share > 0
    ]
    return needed, Parts(
        list(uniform), list(uniform), [needed * knitter / NORMAL_95] if knitter else []
    )


def chance_short(skeins: float, needed: float, parts: Parts) -> float:
    """The chance, 0 to 1, that so many skeins of a color are not enough.

    skeins  given, 0 or more
    needed  in skeins, 0 or more
    parts   its spread
    Raises OutOfRange outside these.
    Source: the definition of a chance, by the same distributions as every range in the book
    (core.spread).
    """
    require("skeins", skeins, 0.0)
    require("needed", needed, 0.0)
    return 1 - parts.chance_below(skeins - needed)


def spare_share(length: float, skeins: float, skein_length: float) -> float:
    """What is given over the pattern's figure, % of that figure; below 0 it is short.

    length        as the pattern gives it, m, above 0
    skeins        given, 0 or more
    skein_length  m, above 0
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("length", length, above=0.0)
    require("skeins", skeins, 0.0)
    require("skein_length", skein_length, above=0.0)
    return 100 * (skeins * skein_length / length - 1)


def skeins_for_chance(needed: float, parts: Parts, sure: float) -> float:
    """How much of a color, in skeins and parts of one, is enough with a wished chance.

    needed  in skeins, 0 or more
    parts   its spread
    sure    the wished chance, 0.01 to 0.999
    Raises OutOfRange outside these.
    Source: as chance_short.
    """
    require("needed", needed, 0.0, MOST_LENGTH)
    require("sure", sure, 0.01, 0.999)
    return min(max(needed + parts.offset_below(sure), 0.0), SUREST_LENGTH * needed)
