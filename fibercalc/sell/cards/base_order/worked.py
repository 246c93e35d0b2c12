"""What is missing of each base and dye, the packs that cover it, their cost landed, the days to
order.
"""

from __future__ import annotations

from datetime import date, timedelta

from ....core.arithmetic import total
from ....core.problem import OutOfRange, Refused
from ....core.steps import at_least, searched, solved
from ....core.traced import named
from ...calendar import calendar_of, days_earlier, last_working_day
from ...demand import normal_quantile, normal_share_below
from ...inputs import Stretch
from ...stock import (
    cheapest_packs,
    dye_on_hand,
    landed_costs,
    net_need,
    safety_stock,
    stock_to_keep,
    use_while_waiting,
)
from .asked import Base, BaseOrder, DyeOrChemical, ordered_lines

SHARE_BELOW = named("share of a normal distribution below", normal_share_below)
NOISE = 1e-6  # of a skein: so little over a whole one asks for no other


def answer(case: BaseOrder) -> None:
    if not case.lead_low <= case.lead <= case.lead_high:
        raise Refused(
            "Supplier: give the quickest, the usual and the slowest in rising order.",
            BaseOrder.lead,
        )
    _find_what_to_keep(case)
    for number, base in enumerate(case.bases, 1):
        base.net = net_need(base.needed, base.promised, base.keep, base.on_hand)
        _find_packs_of_base(base, number)
    for number, dye in enumerate(case.dyes, 1):
        _find_need_of_dye(case, dye, number)
    _find_packs_of_dyes(case)
    case.packs = total(
        [count for base in case.bases for count in (base.small_packs, base.large_packs) if count]
        + [dye.packs for dye in case.dyes if dye.packs]
    )
    case.skeins = total([base.ordered for base in case.bases])
    case.dye_short = total([dye.short for dye in case.dyes])
    _find_costs(case)
    _find_days(case)


def _find_what_to_keep(case: BaseOrder) -> None:
    sure = float(case.sure) / 100
    case.to_keep = [
        int(
            stock_to_keep(
                float(base.week),
                float(case.spread) / 100,
                float(case.lead_low),
                float(case.lead_high),
                sure,
            )
            + 1
            - NOISE
        )
        for base in case.bases
    ]
    if any(base.week for base in case.bases):
        case.certainty = solved(normal_quantile(sure), lambda z: SHARE_BELOW(z) - sure)
    for base, keep in zip(case.bases, case.to_keep):
        _find_kept(case, base, keep)


def _find_kept(case: BaseOrder, base: Base, keep: int) -> None:
    if not base.week:
        base.keep = keep
        return
    base.waiting = use_while_waiting(base.week, case.lead_low, case.lead_high)
    base.margin = safety_stock(
        base.week, case.spread / 100, case.lead_low, case.lead_high, case.certainty
    )
    base.keep = searched(
        keep,
        lambda count: (at_least(count, base.waiting + base.margin),),
        lambda: base.waiting + base.margin,
    )


def _find_packs_of_base(base: Base, number: int) -> None:
    if base.large and not base.large_price:
        raise Refused(
            f"Base {number}: a large pack needs its price.",
            BaseOrder.bases.each(Base.large_price, row=number),
        )
    small, large = cheapest_packs(
        float(base.net), float(base.pack), float(base.price), float(base.large), base.large_price
    )
    base.large_packs = large
    if not small and not large:
        base.small_packs = base.ordered = 0
        return
    base.small_packs = searched(
        small,
        lambda count: (at_least(count * base.pack + base.large_packs * base.large, base.net),),
        lambda: (base.net - base.large_packs * base.large) / base.pack,
    )
    base.ordered = base.small_packs * base.pack + base.large_packs * base.large


def _find_need_of_dye(case: BaseOrder, dye: DyeOrChemical, number: int) -> None:
    dye.too_old = dye.bottle > 0 and dye.age > case.good_for
    try:
        dye.held = dye_on_hand(dye.jar, dye.empty, dye.bottle, dye.strength, dye.age, case.good_for)
    except OutOfRange as error:
        raise Refused(
            f"Dye or chemical {number}: {error.reason}.",
            BaseOrder.dyes.each(DyeOrChemical.empty, row=number),
        ) from None
    dye.short = net_need(dye.needed, 0.0, 0.0, dye.held)


def _find_packs_of_dyes(case: BaseOrder) -> None:
    case.packs_of_dyes = [
        cheapest_packs(float(dye.short), float(dye.pack), float(dye.price))[0] for dye in case.dyes
    ]
    for dye, packs in zip(case.dyes, case.packs_of_dyes):
        _find_ordered(dye, packs)


def _find_ordered(dye: DyeOrChemical, packs: int) -> None:
    if not packs:
        dye.packs, dye.ordered = 0, 0.0
        return
    dye.packs = searched(
        packs, lambda count: (at_least(count * dye.pack, dye.short),), lambda: dye.short / dye.pack
    )
    dye.ordered = dye.packs * dye.pack


def _find_costs(case: BaseOrder) -> None:
    for base in case.bases:
        if base.ordered:
            cost = base.small_packs * base.price + base.large_packs * base.large_price
            base.outlay = cost * case.exchange
            base.grams = base.ordered * base.mass
    for dye in case.dyes:
        if dye.ordered:
            dye.outlay = dye.packs * dye.price * case.exchange
            dye.grams = dye.ordered
    lines = ordered_lines(case)
    case.goods = total([line.outlay for line in lines])
    case.freight = case.carriage * case.exchange if lines else 0.0
    landed = landed_costs(
        [line.outlay for line in lines], [line.grams for line in lines], case.freight, case.duty
    )
    for line, cost in zip(lines, landed):
        line.landed_cost = cost
    case.landed = (case.goods + case.freight) * (1 + case.duty / 100)
    first = case.bases[0] if case.bases else None
    if first is not None and first.ordered:
        case.each = first.landed_cost / first.ordered
        case.hundred = case.each / first.length * 100


def _find_days(case: BaseOrder) -> None:
    try:
        calendar = calendar_of("mon-fri", [(shut.first, shut.last) for shut in case.closed])
        arrive = last_working_day(case.needed_by - timedelta(days=1 + int(case.check)), calendar)

        def order_for(weeks: int) -> date:
            return last_working_day(days_earlier(arrive, 7 * int(weeks)), calendar)

        case.order_by = order_for(case.lead_high)
        case.order_usual = order_for(case.lead)
        case.order_quick = order_for(case.lead_low)
    except OutOfRange as error:
        raise Refused(
            f"Closed days: {error.reason}.", BaseOrder.closed.each(Stretch.last, row=1)
        ) from None
    case.arrive = arrive
    case.slack = (case.order_by - case.today).days
