"""What is said of a lift."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import MASS, TEMPERATURE, VOLUME
from ...burn_time import HANDS
from .asked import BUCKET, HOT, Lift


def say(out: Outcome[Lift]) -> tuple[str, ...]:
    if out.case.load == HOT:
        jug = out.amount(out.case.jug, VOLUME, "L")
        return (
            "Do not carry it.",
            (
                f"Let it cool where it stands, then bail it out in {out.text(Lift.jugs)} jugs of"
                f" {jug}, or drain it. A hot or open pot is outside the lifting equation."
            ),
        )
    if not out.has(Lift.index):
        return (
            "Do not lift it this way.",
            (
                "Too far, too high, too long or too often: the published limit here is 0 kg. Bring"
                " the load closer and higher, use a cart, or share it out."
            ),
        )
    return _beside_the_limit(out)


def _beside_the_limit(out: Outcome[Lift]) -> tuple[str, ...]:
    given = out.readings["mass"].amount
    mass = out.amount(1000 * out.case.mass, MASS, given.unit.sign if given else "")
    close = out.high(Lift.index) > 1
    near = "so close that it counts as above" if close else "below"
    lies = "above" if out.value(Lift.index) > 1 else near
    first = (
        f"{mass} lies {lies} the recommended weight limit of {out.said(Lift.rwl)} for this lift."
    )
    if close:
        return (
            first,
            (
                f"It is {out.text(Lift.index)} times the limit: take less at a time, bring it"
                " closer, or use a cart."
            ),
        )
    return (
        first,
        (
            "Likely bearable for nearly all healthy workers, as NIOSH words it; not a promise for"
            " your back."
        ),
    )


def notes(out: Outcome[Lift]) -> list[str]:
    case = out.case
    if case.load == HOT:
        return [
            "Cool: with a lid on a full pan takes hours; stand it in cold water only if it stands"
            " firm. Hands go in, and it goes down the drain, at "
            + out.amount(HANDS, TEMPERATURE, "°C", 3)
            + " or less."
        ]
    said = [
        "The equation is for two hands, standing, a load that does not shift, a dry floor and a"
        " room neither hot nor cold. It is not for carrying, pushing, one hand, sitting, or a wet"
        " floor."
    ]
    if case.load == BUCKET:
        said.append(
            "Wet skeins count only in a lidded bucket, without loose water: what slops shifts the"
            " load."
        )
    weakest, what = min(
        (case.horizontal, "bring it closer to the body"),
        (case.vertical, "lift it between hip and chest"),
        (case.twist, "turn with the feet"),
        key=lambda each: each[0],
    )
    if weakest < 0.95:
        said.append(f"What would help most here: {what}.")
    return said
