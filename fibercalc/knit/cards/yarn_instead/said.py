"""What is said of one yarn in place of another."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import MASS, METERS_PER_YARD
from ...loop import LOOSEST, TIGHTEST
from ...swap import APART, CLOSE
from .asked import SKEINS, YarnInstead


def say(out: Outcome[YarnInstead]) -> str | tuple[str, ...]:
    count = out.value(YarnInstead.buy)
    words = f"{count:.0f} {'skein' if count == 1 else 'skeins'}"
    return (
        f"Take {words} of mine: {_match(out.case)}.",
        (
            f"The pattern asks for {out.said(YarnInstead.need)}; that is"
            f" {out.text(YarnInstead.mass, 'g')} of my yarn. {_feel(out.case)}"
        ),
    )


def _match(case: YarnInstead) -> str:
    apart = case.finer / 100
    if abs(apart) < CLOSE:
        return "much the same thickness"
    how = "a little" if abs(apart) < APART else "much"
    return f"{how} {'finer' if apart > 0 else 'thicker'} than theirs"


def _feel(case: YarnInstead) -> str:
    apart = case.finer / 100
    if abs(apart) < CLOSE:
        return "The cloth will likely feel much the same, as far as thickness goes."
    if apart > 0:
        return "At the same gauge the cloth will likely be thinner and drape more" + (
            ", perhaps too open." if apart > APART else "."
        )
    return "At the same gauge the cloth will likely be thicker and firmer" + (
        ", perhaps stiff." if apart < -APART else "."
    )


def _read_otherwise(case: YarnInstead) -> tuple[float, float]:
    """Yards in 50 g and meters in 100 g: put-ups that are mistaken for each other, being close."""
    theirs = case.theirs_length / case.theirs_mass
    yards_50, meters_100 = theirs * 50 / METERS_PER_YARD, theirs * 100
    return yards_50, meters_100


def notes(out: Outcome[YarnInstead]) -> list[str]:
    case = out.case
    yards_50, meters_100 = _read_otherwise(case)
    said = [
        f"Mind the put-up: theirs is {out.number(yards_50)} yd in 50 g, which is"
        f" {out.number(meters_100)} m in 100 g. One read as the other is off by"
        f" {100 * (meters_100 / yards_50 - 1):.0f} %."
    ]
    by_mass = case.need * case.theirs_tex / 1000
    if abs(case.finer) >= 100 * CLOSE:
        wrong = by_mass / case.mine_mass
        said.append(
            f"By weight it would have been {out.amount(by_mass, MASS, 'g', 3)},"
            f" {out.number(wrong, 1)} of my skeins:"
            f" {'too much' if case.finer > 0 else 'too little'} by"
            f" {100 * abs(by_mass / case.mass - 1):.0f} %. Never by weight alone."
        )
    if out.has(YarnInstead.mine_tight):
        said.append(_tightness(out))
    said.append(
        "Fiber decides the rest: superwash wool grows in the wash, alpaca and silk hang longer,"
        " cotton does not spring back. Swatch and wash before you cast on."
    )
    if case.need_by == SKEINS:
        said.append(
            "A pattern that counts skeins has rounded up already: up to one skein of theirs may be"
            " spare. If the pattern gives a length, use that."
        )
    return said


def _tightness(out: Outcome[YarnInstead]) -> str:
    tight = out.case.mine_tight
    words = "within what hand knitting usually is"
    if tight < LOOSEST:
        words = "looser than hand knitting usually is: try a smaller needle"
    elif tight > TIGHTEST:
        words = "firmer than hand knitting usually is: try a larger needle"
    return (
        f"At the pattern’s gauge my yarn has a tightness of {out.text(YarnInstead.mine_tight)},"
        f" theirs {out.text(YarnInstead.theirs_tight)}; mine is {words} ({LOOSEST:g} to"
        f" {TIGHTEST:g})."
    )
