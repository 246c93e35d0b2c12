"""What is said of yarn that dries."""

from __future__ import annotations

from ....core.outcome import Outcome
from ...drying_pace import AT_REST
from .asked import Drying


def say(out: Outcome[Drying]) -> tuple[str, ...]:
    more = (
        f" All {out.case.skeins} take {out.text(Drying.all)} in"
        f" {out.number(out.value(Drying.rounds))} rail fillings."
        if out.value(Drying.rounds) > 1
        else ""
    )
    return (
        f"It is dry after about {out.text(Drying.time)} ({out.span(Drying.time)}).",
        (
            f"{out.text(Drying.water, 'g')} of water must go. Weigh for sale at or under"
            f" {out.text(Drying.ready_mass, 'g')}.{more}"
        ),
    )


def notes(out: Outcome[Drying]) -> list[str]:
    said = [
        (
            f"At rest when it changes by no more than {AT_REST:g} % in two hours (the trade’s rule,"
            " from memory, unverified)."
        )
    ]
    if out.case.weighed == "no":
        said.append(
            "The pace is a guess by the room, and wide. One weighing after a few hours replaces it."
        )
    if out.case.humidity >= 85:
        said.append(
            "Air this damp hardly takes water: warm the room or let drier air in, or it smells"
            " before it dries."
        )
    said.append(
        "Yarn never gets drier than the room lets it: the weight on the label is that of a rested"
        " skein, not of a damp day."
    )
    return said
