"""What is said of a sett: how closely, on which heddle, and how the cloth will be."""

from __future__ import annotations

from ....core.amount import NO_BREAK
from ....core.outcome import Outcome
from ...settings import RIGID
from .asked import USES, WEAVES, Sett

FAR = 1.15  # a setting farther than this from the wanted one is said to be


def say(out: Outcome[Sett]) -> str | tuple[str, ...]:
    use, closeness = USES[out.case.use], out.case.closeness
    inside = (
        "as is usual for"
        if use["low"] <= round(closeness) <= use["high"]
        else "closer than is usual for"
        if closeness > use["high"]
        else "more open than is usual for"
    )
    second = (
        f"That is {out.number(closeness)} % of the closest that this weave allows,"
        f" {out.said(Sett.closest)}, {inside} {use['label'][0].lower()}{use['label'][1:]}."
    )
    return _how_set(out), f"{second} {_balance(out)}"


def _how_set(out: Outcome[Sett]) -> str:
    way = out.case.ways[0]
    what = (
        f"{_a(way.name)} {'heddle' if out.case.on == RIGID else 'reed'}, {way.words(out.case.on)},"
    )
    units = out.units(Sett.sett)
    found = " (".join(out.bare(Sett.sett, unit.sign) for unit in units)
    gives = f"gives {found}{')' if len(units) > 1 else ''}"
    if way.heddles == 2:
        what = f"Two {way.name} heddles, one end in each hole and slot,"
        gives = gives.replace("gives", "give")
    if not 1 / FAR <= way.sett / out.value(Sett.working) <= FAR:
        what = f"Nothing at hand comes near: {what[0].lower()}{what[1:]}"
    unit = out.said(Sett.working).partition(NO_BREAK)[2]
    return f"Set it at about {out.bare(Sett.working)} ends {unit}. {what} {gives}."


def _a(name: str) -> str:
    return f"{'An' if name.startswith('8') else 'A'} {name}"


def _balance(out: Outcome[Sett]) -> str:
    ratio = out.case.balance
    if not out.case.has(Sett.picks):
        return "With as many picks as ends the cloth is balanced."
    if 0.95 <= ratio <= 1.05:
        return "With your picks the cloth is balanced."
    more = 100 * (max(ratio, 1 / ratio) - 1)
    return (
        f"With your picks the {'weft' if ratio > 1 else 'warp'} is {out.number(more)} % closer and"
        " shows more."
    )


def notes(out: Outcome[Sett]) -> list[str]:
    return [
        *_of_jamming(out),
        *_of_floats(out),
        *_of_threading(out),
        "The shares for a use are from memory and differ from hand to hand. Weave a sample at this"
        " sett and wash it before a whole warp.",
    ]


def _of_jamming(out: Outcome[Sett]) -> list[str]:
    case = out.case
    if not case.has(Sett.most_picks):
        return (
            []
            if case.weave == "plain"
            else [
                "When a cloth jams is known here for plain weave alone; for this weave the closest"
                " sett is the guide."
            ]
        )
    picks = case.maybe(Sett.picks)
    share = 100 * picks / case.most_picks if picks else None
    beat = f" Your picks are {out.number(share)} % of that." if share else ""
    if case.most_picks * case.diameter >= 0.999:
        return [
            "The ends stand so far apart that picks can be packed until they touch, at about"
            f" {out.said(Sett.most_picks)}.{beat}"
        ]
    hard = " More than nine tenths is hard to beat on a small loom."
    return [
        f"At this sett a plain weave jams at about {out.said(Sett.most_picks)}, by Peirce’s"
        f" geometry.{beat}{hard if share and share > 90 else ''}"
    ]


def _of_floats(out: Outcome[Sett]) -> list[str]:
    row = WEAVES[out.case.weave]
    floats = row["longest_float"]
    if isinstance(floats, float) and floats > 1:
        return [
            f"Its longest float is {floats:.0f} threads, {_float(out, floats)} on the cloth at this"
            " sett."
        ]
    if floats == "":
        return [
            f"{row['label']}: {row['note'][0].lower()}{row['note'][1:]}. Count its floats in the"
            " draw-down."
        ]
    return []


def _float(out: Outcome[Sett], floats: float) -> str:
    space = floats / out.value(Sett.sett)
    if out.settings.system != "us":
        return f"{out.number(10 * space, 0)} mm"
    return f"{out.number(space / 2.54, 2)} in"


def _of_threading(out: Outcome[Sett]) -> list[str]:
    said, way = [], out.case.ways[0]
    if way.heddles == 2:
        said.append(
            "Two heddles stand one behind the other and double the sett: each slot of one carries"
            " ends that the other’s holes lift."
        )
    if len(way.order) > 1:
        said.append(
            "A denting order that is not even leaves fine lines along the cloth; most close in the"
            " wash."
        )
    return said
