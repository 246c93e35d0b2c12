"""What is said of an order."""

from __future__ import annotations

from ....core.day import write_date
from ....core.outcome import Outcome
from .asked import Base, BaseOrder, DyeOrChemical, ordered_lines

MOST_SAID = 4  # lines of the order in the answer's sentence
MANY_OVER = 0.15  # so much more than is wanted, as a share of it, is worth a word


def packs_of(line: Base | DyeOrChemical) -> str:
    """The packs that are ordered: "3 × 50 + 3 × 10"."""
    if isinstance(line, DyeOrChemical):
        return f"{line.packs} × {line.pack:g} g" if line.packs else "none"
    parts = []
    if line.large_packs:
        parts.append(f"{line.large_packs} × {line.large:g}")
    if line.small_packs:
        parts.append(f"{line.small_packs} × {line.pack:g}")
    return " + ".join(parts) or "none"


def say(out: Outcome[BaseOrder]) -> tuple[str, ...]:
    ordered = [f"{packs_of(line)} of {line.name}" for line in ordered_lines(out.case)]
    if not ordered:
        return (
            "Nothing needs to be ordered.",
            "All that is spoken for, and what is to be kept, is on hand.",
        )
    more = f" and {len(ordered) - MOST_SAID} more" if len(ordered) > MOST_SAID else ""
    each = (
        f" A skein of {out.case.bases[0].name} comes to {out.text(BaseOrder.each)}, 100 m to"
        f" {out.text(BaseOrder.hundred)}."
        if out.has(BaseOrder.each)
        else ""
    )
    return (
        f"Order {', '.join(ordered[:MOST_SAID])}{more}.",
        f"{_when(out)}; it comes to {out.text(BaseOrder.landed)} landed.{each}",
    )


def _when(out: Outcome[BaseOrder]) -> str:
    slack, day = out.value(BaseOrder.slack), write_date(out.value(BaseOrder.order_by))
    if slack < 0:
        return f"By the slowest lead it should have been ordered on {day}"
    return f"Order by {day}, {slack} {'day' if slack == 1 else 'days'} from today"


def notes(out: Outcome[BaseOrder]) -> list[str]:
    said = [
        f"The stock of {dye.name} is older than {out.case.good_for} days, so it was not counted:"
        " test it before you pour it away."
        for dye in out.case.dyes
        if dye.too_old
    ]
    said += [
        f"{base.ordered - base.net:.0f} more of {base.name} than wanted, since packs are whole: a"
        " base bought for one job ties up money."
        for base in out.case.bases
        if base.ordered and base.ordered - base.net > MANY_OVER * base.net
    ]
    if out.value(BaseOrder.slack) < 0:
        quick = out.value(BaseOrder.order_quick)
        said.append(
            f"Ordering on {write_date(quick)} would still do if the supplier is as quick as can be."
            if quick >= out.case.today
            else "Even the quickest lead is too slow: look for another source, or move the start."
        )
    said.append(
        "What is promised to a club or dyed to order is off the shelf already. Mill lots differ:"
        " keep each lot’s skeins together and order one job’s base at once."
    )
    return said
