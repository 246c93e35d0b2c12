"""Good skeins shared out to kits, club and shop, and what each parcel weighs."""

from __future__ import annotations

from ....core.arithmetic import smallest, total
from ....core.problem import Refused
from ....core.steps import at_most, searched
from ...allocate import Share, allocate, band_of, kits_from
from .asked import Band, Lot, Parcels


def answer(case: Parcels) -> None:
    colors = {_key(lot.color): lot.color for lot in case.lots}
    kit = [
        _color(row.color, colors, f"kit.{number}.color", f"Kit {number}")
        for number, row in enumerate(case.kit, 1)
    ]
    club = [
        _color(row.color, colors, f"club.{number}.color", f"Club {number}")
        for number, row in enumerate(case.club, 1)
    ]
    _refuse_twice(case)
    case.wanted = case.kits + case.spare
    _count_kits(case, kit, colors)
    case.shares = _shares(case, kit, club, colors)
    _share_out(case)
    _weigh(case)


def _key(text: str) -> str:
    return text.strip().lower()


def _color(text: str, colors: dict[str, str], where: str, words: str) -> str:
    if _key(text) not in colors:
        raise Refused(
            f"{words}: there is no lot of “{text}”; give one of: {', '.join(colors.values())}.",
            where,
        )
    return colors[_key(text)]


def _refuse_twice(case: Parcels) -> None:
    names = [(_key(lot.color), _key(lot.lot)) for lot in case.lots]
    for number, name in enumerate(names):
        if name in names[:number]:
            raise Refused(
                f"Lot {number + 1}: this lot of this color is listed twice.",
                Parcels.lots.each(Lot.lot, row=number + 1),
            )


def _count_kits(case: Parcels, kit: list[str], colors: dict[str, str]) -> None:
    """How many kits each color serves, and so how many can be packed."""
    for color in dict.fromkeys(kit):
        each = sum(row.each for name, row in zip(kit, case.kit) if name == color)
        lots = [lot for lot in case.lots if colors[_key(lot.color)] == color]
        for lot in lots:
            lot.kits = kits_from(lot.good, each)
        case.kits_served[color] = sum(lot.kits for lot in lots)
    if kit:
        case.possible = smallest(case.kits_served.values())
        case.packed = smallest(case.wanted, case.possible)
    else:
        case.packed = 0


def _shares(case: Parcels, kit: list[str], club: list[str], colors: dict[str, str]) -> list[Share]:
    return allocate(
        [(colors[_key(lot.color)], lot.lot, int(lot.good)) for lot in case.lots],
        [(color, int(row.each)) for color, row in zip(kit, case.kit)],
        int(case.packed),
        [(color, int(row.places)) for color, row in zip(club, case.club)],
    )


def _share_out(case: Parcels) -> None:
    case.good = total(lot.good for lot in case.lots)
    case.to_club = searched(
        sum(share.club for share in case.shares),
        lambda found: (at_most(found, total(row.places for row in case.club)),),
        lambda: total(row.places for row in case.club),
    )
    left: float = case.good
    if case.kit:
        case.in_kit = total(row.each for row in case.kit)
        left = case.good - case.packed * case.in_kit
    case.shop = left - case.to_club


def _weigh(case: Parcels) -> None:
    """What each parcel weighs, and the band that it falls into."""
    for number, (before, after) in enumerate(zip(case.bands, case.bands[1:]), 2):
        if after.most <= before.most:
            raise Refused(
                f"Band {number}: bands go up, each heavier than the one before.",
                Parcels.bands.each(Band.most, row=number),
            )
    for parcel in case.parcels:
        parcel.weight = parcel.skeins * case.skein_mass + parcel.extras + parcel.wrapping
        parcel.band = band_of(parcel.weight, [band.most for band in case.bands])
    first = case.parcels[0]
    case.mass, case.place = first.weight, first.band
    if case.place is not None:
        band = case.bands[case.place]
        case.slack = band.most - first.weight
        case.postage = band.price
