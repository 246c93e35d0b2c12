"""Lots and parcels as tables and pictures, and the list to pick by."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.spread import Parts
from ....core.units import MASS
from ...pictures.parcels import bands_picture, lots_picture
from .asked import Parcel, Parcels
from .said import band_of_parcel, chance_over, weighed


def lots_table(out: Outcome[Parcels]) -> Table:
    rows = tuple(
        (
            share.color,
            share.lot,
            str(share.good),
            f"{share.kits} ({share.in_kits})" if share.kits else "–",
            str(share.club) if share.club else "–",
            str(share.shop) if share.shop else "–",
        )
        for share in out.case.shares
    )
    return Table(
        "Lot by lot",
        ("Color", "Lot", "Good", "Kits (skeins)", "Club", "Shop"),
        rows,
        "All skeins of one color of one kit are from one lot. Write the lots on each kit’s card.",
    )


def parcels_table(out: Outcome[Parcels]) -> Table:
    return Table(
        "Parcel by parcel",
        ("Parcel", "Weighs", "Likely", "Band", "Postage", "To spare", "Over it"),
        tuple(_parcel_row(out, parcel, spread) for parcel, spread in weighed(out)),
        "Bands and prices are your own post’s, as you gave them.",
    )


def _parcel_row(out: Outcome[Parcels], parcel: Parcel, spread: Parts) -> tuple[str, ...]:
    low, high = _ends(parcel, spread)
    weighs = (
        parcel.name,
        out.amount(parcel.weight, MASS, "g", 4),
        f"{out.number(low)} to {out.number(high)} g",
    )
    band = band_of_parcel(out, parcel)
    if band is None:
        return (*weighs, "over all", "–", "–", "–")
    return (
        *weighs,
        f"to {out.amount(band.most, MASS, 'g', 4)}",
        out.settings.money + out.number(band.price, 2),
        out.amount(band.most - parcel.weight, MASS, "g", 3),
        out.in_100(chance_over(parcel, spread, band)),
    )


def _ends(parcel: Parcel, spread: Parts) -> tuple[float, float]:
    """What a parcel likely weighs, from and to, g."""
    return parcel.weight - spread.half_width("down"), parcel.weight + spread.half_width("up")


def picking_list(out: Outcome[Parcels]) -> tuple[Table, ...]:
    lots = lots_table(out)
    return (
        Table("Pick", (*lots.columns, "Done"), tuple((*row, "☐") for row in lots.rows)),
        parcels_table(out),
    )


def picture(out: Outcome[Parcels]) -> Picture:
    return lots_picture(
        [
            (f"{share.color}, {share.lot}", share.in_kits, share.club, share.shop)
            for share in out.case.shares
        ]
    )


def scale(out: Outcome[Parcels]) -> Picture:
    parcels = [
        (parcel.name, parcel.weight, *_ends(parcel, spread)) for parcel, spread in weighed(out)
    ]
    return bands_picture(
        parcels,
        [band.most for band in out.case.bands],
        lambda grams: out.amount(grams, MASS, "kg" if grams >= 1000 else "g", 3),
    )
