"""What is said of sharing out and packing."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.spread import Parts
from ....core.units import MASS
from .asked import Band, Parcel, Parcels

NEAR = 0.05  # chance of being over its band from which a parcel is named


def say(out: Outcome[Parcels]) -> tuple[str, ...]:
    kits, spare = out.case.packed, max(out.case.packed - out.case.kits, 0)
    packed = (
        f"Pack {kits - spare} kits{f' and {spare} spare' if spare else ''}; "
        if out.case.kit
        else ""
    )
    first = f"{packed}{out.case.to_club} skeins go to the club and {out.case.shop} to the shop."
    weighs = f"{out.case.parcels[0].name} weighs {out.said(Parcels.mass)}"
    if not out.has(Parcels.slack):
        return first, f"{weighs}: over the heaviest band."
    slack = out.amount(max(out.case.slack, 0), MASS, "g", 3)
    return (
        first,
        f"{weighs}: {slack} to spare in its band, {out.text(Parcels.postage)}; over it in"
        f" {out.text(Parcels.over)}.",
    )


def notes(out: Outcome[Parcels]) -> list[str]:
    said, case = [], out.case
    if case.kit and case.possible < case.wanted:
        missing = case.wanted - case.possible
        said.append(
            f"{missing} {'kit is' if missing == 1 else 'kits are'} short: only {case.possible} can"
            " be packed with each color from one lot. Sell fewer, or dye the color that is short"
            " again as a lot of its own for whole kits."
        )
    short = sum(row.places for row in case.club) - case.to_club
    if short:
        said.append(f"{short} club {'skein is' if short == 1 else 'skeins are'} short.")
    risky = [
        parcel.name
        for parcel, spread in weighed(out)
        if (band := band_of_parcel(out, parcel)) is not None
        and chance_over(parcel, spread, band) > NEAR
    ]
    if risky:
        said.append(
            f"Near the edge of its band: {', '.join(risky)}. Weigh one packed, dry and rested,"
            " before you set what postage costs."
        )
    said.append(
        "Keep the spare kits until no claim can come any more. Damp yarn weighs more: that is why a"
        " skein’s weight has a range here."
    )
    return said


def weighed(out: Outcome[Parcels]) -> list[tuple[Parcel, Parts]]:
    """Each kind of parcel, and the spread of its weight."""
    damp, found = out.readings[Parcels.skein_mass.name].rough, []
    for number, parcel in enumerate(out.case.parcels, 1):
        widths = [
            parcel.skeins * damp,
            out.readings[f"parcels.{number}.extras"].rough,
            out.readings[f"parcels.{number}.wrapping"].rough,
        ]
        found.append((parcel, Parts(list(widths), list(widths), [])))
    return found


def band_of_parcel(out: Outcome[Parcels], parcel: Parcel) -> Band | None:
    """The band that a parcel falls into; None where it is over the heaviest."""
    return None if parcel.band is None else out.case.bands[parcel.band]


def chance_over(parcel: Parcel, spread: Parts, band: Band) -> float:
    """The chance, 0 to 1, that a parcel is heavier than its band allows."""
    return 1 - spread.chance_below(band.most - parcel.weight)
