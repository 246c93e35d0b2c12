"""What is said of a bath that is heated."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import TEMPERATURE
from ....safe.burn_time import HANDS
from ...ramp import clock_time
from .asked import BathHeat


def say(out: Outcome[BathHeat]) -> tuple[str, ...]:
    case = out.case
    top = out.amount(case.top, TEMPERATURE, "°C", 3)
    hot, over = (clock_time(case.began, minutes) for minutes in (case.until_hold, case.whole))
    waited = case.pause if case.pause_at is not None else 0.0
    slow = (
        ""
        if case.until_hold - waited <= case.minutes * 1.02
        else f" At {case.rate:g} °C a minute the plate is turned down."
    )
    return (
        f"It is at {top} about {hot}, and the hold ends at {over}.",
        (
            f"Heating takes {out.text(BathHeat.minutes)} at full power"
            f" ({out.span(BathHeat.minutes)}); heating and hold take {out.text(BathHeat.used)} by"
            f" the meter.{slow}"
        ),
    )


def notes(out: Outcome[BathHeat]) -> list[str]:
    said = [
        f"Water boils at {out.text(BathHeat.boils)} at that height: set points must stay below it."
    ]
    if out.has(BathHeat.cool):
        said.append(_of_cooling(out))
    if out.case.cooled == "no":
        said.append(
            "What the pot loses is a guess by its lid. Two readings while it cools replace the"
            " guess."
        )
    said.append(
        f"Bath and yarn stand at {out.text(BathHeat.level, 'L')}: that must lie under the pot’s"
        " fill line."
    )
    if out.case.rate > 1.5:
        said.append(
            "Wool dyes evenest at about 1 °C a minute, slower from 60 to 85 °C (textbook, from"
            " memory)."
        )
    return said


def _of_cooling(out: Outcome[BathHeat]) -> str:
    touch = out.amount(out.case.touch, TEMPERATURE, "°C", 3)
    celsius, fahrenheit = (out.amount(HANDS, TEMPERATURE, unit, 3) for unit in ("°C", "°F"))
    return (
        f"With the heat off and the lid as it is, it is down to {touch} after about"
        f" {out.text(BathHeat.cool, 'h')} ({out.span(BathHeat.cool, 'h')}); hands go in at"
        f" {celsius} ({fahrenheit}) or less."
    )
