"""What is said of what is left."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import MASS
from .asked import FINE_ENOUGH, EnoughLeft, scale_error, shape_of


def say(out: Outcome[EnoughLeft]) -> str | tuple[str, ...]:
    chance, words = out.value(EnoughLeft.lasts), f"chance {out.text(EnoughLeft.lasts)}"
    first = (
        f"It will likely be enough: {words}."
        if chance >= 80
        else f"It will likely not be enough: {words}."
        if chance <= 20
        else f"It is too close to say: {words} that it is enough."
    )
    need = (
        f"About {out.text(EnoughLeft.rest, 'g')} are needed ({out.span(EnoughLeft.rest, 'g')}),"
        f" {out.amount(out.case.mass_now, MASS, 'g')} are left."
    )
    return first, f"{need} {_when_to_end(out, likely=chance >= 80)}"


def _when_to_end(out: Outcome[EnoughLeft], likely: bool) -> str:
    case = out.case
    if case.edge_at < case.row:
        return "There is not enough even to end now."
    sure, (the_end, end_it) = _nearly_sure(out), end_words(case)
    row = out.text(EnoughLeft.edge_at)
    if likely:
        until = f"; until row {sure} to be nearly sure" if sure else ""
        return f"{the_end} could wait until row {row}{until}."
    if not sure:
        return (
            f"{end_it.capitalize()} after row {row} at the latest; nearly sure of an end you are"
            " not even now."
        )
    if case.edge_at >= case.rows:
        return f"To be nearly sure of an end, {end_it} after row {sure}."
    return (
        f"{end_it.capitalize()} after row {row} at the latest; after row {sure} to be nearly sure."
    )


def end_words(case: EnoughLeft) -> tuple[str, str]:
    """What the end begins with, and to begin it: a piece without an edging is only bound off."""
    return ("The edging", "start the edging") if case.edging else ("Binding off", "bind off")


def _nearly_sure(out: Outcome[EnoughLeft]) -> int | None:
    """The row after which the end still works out 39 times in 40; None where that row is past."""
    sure = int(out.low(EnoughLeft.edge_at))
    return sure if sure >= out.case.row else None


def notes(out: Outcome[EnoughLeft]) -> list[str]:
    said, error = [], scale_error(out)
    if out.has(EnoughLeft.weigh_again):
        said.append(
            "The scale is too coarse for so little knitting: yarn in a row is known to ±"
            f" {error:.0f} % only. Knit about {out.text(EnoughLeft.weigh_again)} rows more and"
            f" weigh again, then it is known to ± {FINE_ENOUGH:.0f} %."
        )
    else:
        said.append(
            f"By the scale, yarn in a row is known to ± {max(error, 1):.0f} %; rows that differ"
            " come on top."
        )
    if shape_of(out.case)[1]:
        said.append(
            f"Half of the yarn is used at about row {out.case.half:.0f} of {out.case.rows}, not"
            " halfway: later rows are longer."
        )
    if _nearly_sure(out):
        said.append("Nearly sure: 39 times in 40.")
    return said
