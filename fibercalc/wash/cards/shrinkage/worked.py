"""The change of each direction and of the area; slips of the pen are refused."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from math import hypot

from ....core.problem import Refused
from ....yarn.sample import half_width_of_mean, mean, standard_deviation
from ...several import next_piece_half_width
from ...shrink import MOST_GROWTH, MOST_SHRINK, area_change, change_percent, compounded
from .asked import YES, Sample, Shrinkage, Wash


def answer(case: Shrinkage) -> None:
    _refuse_slips(case.samples, case.later if case.again == YES else [])
    for sample in case.samples:
        sample.length_change = change_percent(sample.length, sample.length_after)
        sample.width_change = change_percent(sample.width, sample.width_after)
    case.length_change = mean([sample.length_change for sample in case.samples])
    case.width_change = mean([sample.width_change for sample in case.samples])
    case.area_change = area_change(case.length_change, case.width_change)
    if case.again == YES:
        first, last = case.samples[0], case.later[-1]
        case.later_length = change_percent(first.length_after, last.length)
        case.later_width = change_percent(first.width_after, last.width)
        case.total_length = compounded([case.length_change, case.later_length])
        case.total_width = compounded([case.width_change, case.later_width])
        case.length_lost, case.width_lost = -case.total_length, -case.total_width
    else:
        case.length_lost, case.width_lost = -case.length_change, -case.width_change
    _errors(case)


def _errors(case: Shrinkage) -> None:
    """What the scatter between samples leaves open: of their mean, and of one more piece."""
    lengths = [float(sample.length_change) for sample in case.samples]
    widths = [float(sample.width_change) for sample in case.samples]
    length, width = _of_mean(lengths), _of_mean(widths)
    case.error(Shrinkage.length_change, length)
    case.error(Shrinkage.width_change, width)
    case.error(
        Shrinkage.area_change,
        hypot(length * (1 + case.width_change / 100), width * (1 + case.length_change / 100)),
    )
    if case.again == YES:
        case.error(Shrinkage.total_length, length)
        case.error(Shrinkage.total_width, width)
    next_length, next_width = next_piece_half_width(lengths), next_piece_half_width(widths)
    case.error(Shrinkage.length_lost, next_length)
    case.error(Shrinkage.width_lost, next_width)
    case.next_apart = max(next_length, next_width)


def _of_mean(changes: list[float]) -> float:
    if len(changes) == 1:
        return 0.0
    return half_width_of_mean(standard_deviation(changes), len(changes))


def _refuse_slips(samples: list[Sample], later: list[Wash]) -> None:
    """No cloth loses nine tenths of a side or doubles it: such a pair is a slip of the pen."""
    for way in ("length", "width"):
        for name, label, before, after in _pairs(samples, later, way):
            if not -MOST_SHRINK <= change_percent(before, after) <= MOST_GROWTH:
                raise Refused(
                    f"{label}: the {way} goes from {before:g} to {after:g} cm; check both, a change"
                    f" must lie between −{MOST_SHRINK:g} and +{MOST_GROWTH:g} %.",
                    name,
                )


def _pairs(
    samples: list[Sample], later: list[Wash], way: str
) -> Iterator[tuple[str, str, float, float]]:
    """The input of each later measure, what it is called, the measure before it and itself."""
    for number, sample in enumerate(samples, 1):
        after = f"{way}_after"
        yield (
            f"samples.{number}.{after}",
            f"Sample {number}",
            getattr(sample, way),
            getattr(sample, after),
        )
    sizes = [getattr(samples[0], f"{way}_after"), *(getattr(wash, way) for wash in later)]
    for number, (old, new) in enumerate(pairwise(sizes), 1):
        yield f"later.{number}.{way}", f"Wash {number + 1}", old, new
    if later:
        made = getattr(samples[0], way)
        yield f"later.{len(later)}.{way}", f"Wash {len(later) + 1}", made, sizes[-1]
