"""How the fiber line follows: shares of the whole, in the order and words of the law."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from ....core.problem import Refused
from ....core.shares import shares_of
from ...fiber_label import EU, OFF_BY, OTHERS_TOGETHER, US, tolerance, unnamed, whole_percents
from .asked import GRAMS, NAMES, OTHER, UNKNOWN, WOOLS, YES, FiberContent, Share, Weighed


def answer(case: FiberContent) -> None:
    rows: Sequence[Share | Weighed] = case.blend if case.by == GRAMS else case.fibers
    shares = _shares(case, rows)
    case.shares = {fiber: float(share) for fiber, share in shares.items()}
    case.most = max(case.shares, key=lambda fiber: case.shares[fiber])
    case.largest = shares[case.most]
    functional = frozenset(row.fiber for row in rows if row.function == YES)
    named = functional | {UNKNOWN} | (WOOLS if case.sold == US else frozenset())
    case.small = unnamed(case.shares, case.sold, named)
    joined = case.small if case.sold == US else frozenset()
    case.lines = _lines(case.shares, joined)
    _tolerance(case)
    case.named = len([key for key, _ in case.lines if key not in (OTHER, UNKNOWN)])
    loading = case.maybe(FiberContent.loading)
    case.content = _written(case.sold, case.lines, len(joined)) + (
        f", up to {loading:g}% weight that is no fiber" if loading else ""
    )
    case.maker_line = _maker(case.sold, case.maker)
    case.origin = _origin(case.sold, case.spun)
    if joined:
        case.other = sum(share for fiber, share in shares.items() if fiber in joined)


def _shares(case: FiberContent, rows: Sequence[Share | Weighed]) -> dict[str, float]:
    """The share of each fiber, %; one that stands twice is added up."""
    amounts, whole = _weighed(case) if case.by == GRAMS else _in_percent(case)
    by_fiber: dict[str, float] = {}
    for row, amount in zip(rows, amounts):
        by_fiber[row.fiber] = by_fiber.get(row.fiber, 0.0) + amount
    if len(by_fiber) > 1 and min(by_fiber.values()) / whole < 1e-4:
        column = "blend" if case.by == GRAMS else "fibers"
        raise Refused(
            "Fibers: one of them is less than 1 in 10,000; leave it out.", f"{column}.1.fiber"
        )
    for fiber, amount in by_fiber.items():
        case.share[_label(fiber)] = 100 * amount / whole
    return {fiber: case.share[_label(fiber)] for fiber in by_fiber}


def _weighed(case: FiberContent) -> tuple[list[float], float]:
    """The weight of each row, and of all of them."""
    case.weight = sum(row.mass for row in case.blend)
    return [row.mass for row in case.blend], case.weight


def _in_percent(case: FiberContent) -> tuple[list[float], float]:
    """The share of each row, and of all of them; with one left blank they make 100."""
    amounts = shares_of(case, FiberContent.fibers, Share.share, OFF_BY)
    for number, row in enumerate(case.fibers):
        if row.share is None:
            row.share_left = amounts[number]
            amounts[number] = row.share_left
    if any(row.share is None for row in case.fibers):
        return amounts, 100.0
    case.whole = sum(amounts)
    return amounts, case.whole


def _label(fiber: str) -> str:
    label: str = NAMES[fiber]["label"]
    return label


def _tolerance(case: FiberContent) -> None:
    """What a test may find of the largest fiber: the Wool Act has no three points."""
    case.allowed = len(case.shares) > 1 and not (case.sold == US and set(case.shares) & WOOLS)
    if case.allowed:
        case.stated = dict(case.lines)[case.most]
        case.test_low, case.test_high = tolerance(case.stated, len(case.shares))


def _lines(shares: Mapping[str, float], small: frozenset[str]) -> list[tuple[str, int]]:
    """(fiber, whole percent) in the order of a label; "other" and the unknown stand last."""
    joined = {fiber: share for fiber, share in shares.items() if fiber not in small}
    if small:
        joined[OTHER] = sum(shares[fiber] for fiber in small)
    whole = whole_percents(joined)
    last = [key for key in (UNKNOWN, OTHER) if key in whole]
    return [(key, percent) for key, percent in whole.items() if key not in last] + [
        (key, whole[key]) for key in last
    ]


def _written(sold: str, lines: Sequence[tuple[str, int]], others: int) -> str:
    """The line in the words of the place; others is how many fibers are joined as "other"."""
    unknown = dict(lines).get(UNKNOWN, 0)
    if unknown == 100 or sold == EU and unknown > OTHERS_TOGETHER:
        return (
            "Made of undetermined fiber content"
            if sold == US
            else "Unspecified textile composition"
        )
    sign = "%" if sold == US else " %"
    return ", ".join(
        f"{percent or 'under 1'}{sign} {_words(sold, key, others)}" for key, percent in lines
    )


def _words(sold: str, key: str, others: int) -> str:
    """What a fiber is called in the place where it is sold."""
    if key == OTHER:
        return "other fiber" if others == 1 else "other fibers"
    if key == UNKNOWN and sold == EU:
        return "other fibers"
    words: str = NAMES[key][sold]
    return words


def _maker(sold: str, maker: str | None) -> str:
    return (maker or "").strip() or (
        "(name of maker or dealer, or RN)"
        if sold == US
        else "(name and address of the maker or importer)"
    )


def _origin(sold: str, spun: str | None) -> str:
    country = (spun or "").strip() or "(country)"
    return f"Made in {country}" if sold == US else "Not asked by the textile rule"
