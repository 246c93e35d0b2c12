"""What must be ordered: needs less what is on hand, in the cheapest whole packs, what they cost
landed, and what to keep on the shelf.
"""

from collections.abc import Sequence
from math import ceil

from ..core.arithmetic import largest, sqrt, total
from ..core.problem import OutOfRange, require
from ..dye.recipe import dye_in_stock
from .demand import normal_quantile
from .release import packs_for

MOST = 1e6


def dye_on_hand(
    jar: float, empty: float, bottle: float, strength: float, age: float, good_for: float
) -> float:
    """Dye that can be counted on, g: what is in the jar, and in the stock bottle unless that is
    too old.

    jar       g, weighed with what is in it, 0 or more
    empty     g, the jar alone, 0 to jar
    bottle    mL of stock, 0 or more
    strength  g in 100 mL, above 0 to 40
    age       days since the stock was made, 0 or more
    good_for  days that a stock is counted on, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic; how long a stock keeps is the caller's.
    """
    require("jar", jar, 0.0)
    require("empty", empty, 0.0)
    if empty > jar:
        raise OutOfRange(
            "empty", empty, 0.0, jar, "the empty jar weighs more than the jar with its dye"
        )
    require("age", age, 0.0)
    require("good_for", good_for, 0.0)
    return jar - empty + (dye_in_stock(bottle, strength) if bottle and age <= good_for else 0.0)


def net_need(needed: float, promised: float, keep: float, on_hand: float) -> float:
    """What is missing: all that is spoken for or to be kept, less what is on hand; never below 0.

    needed    by open plans, 0 or more, in one unit as all of these
    promised  to others: club, dyed to order; 0 or more
    keep      to be left on the shelf, 0 or more
    on_hand   counted, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    for name, value in (
        ("needed", needed),
        ("promised", promised),
        ("keep", keep),
        ("on_hand", on_hand),
    ):
        require(name, value, 0.0)
    return largest(needed + promised + keep - on_hand, 0.0)


def stock_to_keep(
    use: float, spread: float, lead_low: float, lead_high: float, sure: float
) -> float:
    """The count on the shelf at which to order again: use over the lead time, and safety for
    both: d L + z sqrt(L s² + d² t²).

    use       in a usual week, d, 0 or more
    spread    standard deviation of a week's use as a share of it, 0 to 3 (s = spread x d)
    lead_low  quickest lead, weeks, 0 or more
    lead_high  slowest lead, weeks, lead_low or more; L is their middle, t that of a uniform
               distribution between them
    sure      the chance of not running out while waiting, 0.5 to 0.999
    Raises OutOfRange outside these.
    Source: inventory-textbook (from memory).
    """
    require("sure", sure, 0.5, 0.999)
    return use_while_waiting(use, lead_low, lead_high) + safety_stock(
        use, spread, lead_low, lead_high, normal_quantile(sure)
    )


def use_while_waiting(use: float, lead_low: float, lead_high: float) -> float:
    """What is used over the lead time: d L, in the same as use.

    use       in a usual week, 0 or more
    lead_low  quickest lead, weeks, 0 or more
    lead_high  slowest lead, weeks, lead_low or more; L is their middle
    Raises OutOfRange outside these.
    Source: inventory-textbook (from memory).
    """
    require("use", use, 0.0)
    require("lead_low", lead_low, 0.0)
    require("lead_high", lead_high, lead_low)
    return use * (lead_low + lead_high) / 2


def safety_stock(use: float, spread: float, lead_low: float, lead_high: float, z: float) -> float:
    """What is kept over that, as use and lead vary: z sqrt(L s² + d² t²), with t² the variance of
    a uniform lead.

    use       in a usual week, d, 0 or more
    spread    standard deviation of a week's use as a share of it, 0 to 3 (s = spread x d)
    lead_low  quickest lead, weeks, 0 or more
    lead_high  slowest lead, weeks, lead_low or more
    z         standard deviations, for how sure one wants to be
    Raises OutOfRange outside these.
    Source: inventory-textbook (from memory).
    """
    require("use", use, 0.0)
    require("spread", spread, 0.0, 3.0)
    require("lead_low", lead_low, 0.0)
    require("lead_high", lead_high, lead_low)
    lead = (lead_low + lead_high) / 2
    return z * sqrt(lead * (spread * use) ** 2 + (use * (lead_high - lead_low)) ** 2 / 12)


def cheapest_packs(
    needed: float, pack: float, price: float, large: float = 0.0, large_price: float = 0.0
) -> tuple[int, int]:
    """Small and large packs that cover a need for the least money; of equal ones, the one with
    less left over.

    needed       0 or more
    pack         what a small pack holds, above 0
    price        of it, 0 or more
    large        what a large pack holds; 0 where there is none
    large_price  of it, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic (every number of large packs is tried).
    """
    require("needed", needed, 0.0, MOST)
    require("pack", pack, above=0.0)
    require("price", price, 0.0)
    require("large", large, 0.0)
    require("large_price", large_price, 0.0)
    tried = range(min(ceil(needed / large), 2000) + 1) if large else range(1)
    ways = [(packs_for(needed, many * large, pack), many) for many in tried]
    return min(
        ways,
        key=lambda way: (
            way[0] * price + way[1] * large_price,
            way[0] * pack + way[1] * large,
            way[0] + way[1],
        ),
    )


def landed_costs(
    goods: Sequence[float], masses: Sequence[float], carriage: float, duty: float
) -> list[float]:
    """What each line of an order costs when it is here: its price, its share of carriage by
    weight, and duty on both.

    goods     price of each line, 0 or more
    masses    g of each, 0 or more, not all 0 where there is carriage
    carriage  for the whole order, 0 or more
    duty      %, 0 to 200
    Raises OutOfRange outside these.
    Source: common practice (carriage by weight; duty on price and carriage together, as where it
    is taken on arrival).
    """
    require("carriage", carriage, 0.0)
    require("duty", duty, 0.0, 200.0)
    for price, mass in zip(goods, masses):
        require("goods", price, 0.0)
        require("masses", mass, 0.0)
    whole = total(masses)
    if whole <= 0:
        return [price * (1 + duty / 100) for price in goods]
    return [
        (price + carriage * mass / whole) * (1 + duty / 100) for price, mass in zip(goods, masses)
    ]
