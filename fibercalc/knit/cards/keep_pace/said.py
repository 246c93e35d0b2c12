"""What is said of keeping pace."""

from __future__ import annotations

from ....core.day import write_date
from ....core.outcome import Outcome
from ...pace import first_behind
from .asked import BY_ROWS, KeepPace
from .worked import ends


def say(out: Outcome[KeepPace]) -> str | tuple[str, ...]:
    quick, slow = ends(out)
    days = sorted({quick[-1].done, slow[-1].done})
    span = f", from {write_date(days[0])} to {write_date(days[-1])}" if len(days) > 1 else ""
    behind = out.case.behind_at
    first = (
        f"You will likely fall behind in {out.case.parts[behind - 1].name}."
        if behind
        else "You will likely keep pace to the end."
    )
    last = (
        f"The last part is done about {write_date(out.case.done)}{span}:"
        f" {out.text(KeepPace.minutes, 'h')} at the needles."
    )
    if behind and out.has(KeepPace.needed):
        last += f" To keep pace in every part takes {out.text(KeepPace.needed, 'h')} a week."
    return first, last


def notes(out: Outcome[KeepPace]) -> list[str]:
    counts = [part.stitches_held for part in out.case.parts]
    said = []
    if out.case.counted_by == BY_ROWS and len(counts) > 1 and counts[-1] > 1.2 * counts[0]:
        said.append(
            f"The rows grow: the last part holds {counts[-1] / counts[0]:.1f} times the stitches of"
            " the first."
        )
    quick, slow = (first_behind(end) for end in ends(out))
    names = ["in none"] + [f"in {row.name}" for row in out.case.parts]
    if quick != slow:
        said.append(
            f"At the slow end of your pace you fall behind {names[slow]}, at the quick end"
            f" {names[quick]}."
        )
    said.append(
        "A part begins when it is out and the one before is done. It falls behind when it is done"
        " after the next one is out."
    )
    return said
