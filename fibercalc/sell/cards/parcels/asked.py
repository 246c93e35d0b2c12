"""What is asked for sharing out and packing, and what is found."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import TEXT, Between, Case, Chance, Input, Many, Plain, Result, Row, Rows
from ....core.units import COUNT, MASS, MONEY, PERCENT
from ....held import RECORD
from ....yarn.inputs import SKEIN_MASS
from ...allocate import Share


class KitColor(Row):
    """One color of a kit."""

    color = Input[str](TEXT, "Color", default="Wet Slate", longest=40)
    each = Input[int](COUNT, "Skeins", default="1", allowed=("1", "60"))


class Lot(Row):
    """One lot of one color."""

    color = Input[str](
        TEXT,
        "Color",
        record=RECORD.dye_lot.colorway.then(RECORD.colorway.name),
        default="Wet Slate",
        longest=40,
    )
    lot = Input[str](TEXT, "Lot", default="new", longest=24)
    good = Input[int](COUNT, "Good skeins", default="4", allowed=("0", "2000"))

    kits = Between[float](COUNT, "Kits that it serves")


class ClubColor(Row):
    """One color promised to the club."""

    color = Input[str](TEXT, "Color", default="Wet Slate", longest=40)
    places = Input[int](COUNT, "Skeins", default="1", allowed=("0", "2000"))


class Parcel(Row):
    """One kind of parcel."""

    name = Input[str](TEXT, "Name", default="another parcel", longest=40)
    skeins = Input[int](COUNT, "Skeins", default="1", allowed=("0", "400"))
    extras = Input[float](
        MASS,
        "Pattern, card, notions",
        default="10 g",
        allowed=("0 g", "20 kg"),
        rough="2 g",
        units=("g", "oz"),
    )
    wrapping = Input[float](
        MASS,
        "Box and wrapping",
        default="40 g",
        allowed=("0 g", "20 kg"),
        rough="5 g",
        units=("g", "oz"),
    )

    weight = Between[float](MASS, "Packed")
    band = Plain[int | None]()  # its place from 0; None where it is over the heaviest


class Band(Row):
    """One band of the post's weights."""

    most = Input[float](
        MASS, "Up to", default="5 kg", allowed=("1 g", "100 kg"), units=("g", "kg", "oz", "lb")
    )
    price = Input[float](MONEY, "Postage", default="9.90", allowed=("0", "2000"))


class Parcels(Case):
    """Good skeins lot by lot and what is promised of them, and parcels beside the post's bands."""

    kits = Input[int](COUNT, "Kits sold", default="16", allowed=("0", "2000"), usual=("0", "200"))
    spare = Input[int](
        COUNT, "Spare kits to keep", default="2", allowed=("0", "200"), usual=("0", "20")
    )
    kit = Rows(
        KitColor,
        "In one kit",
        "color",
        least=0,
        most=8,
        default=(
            {"color": "Wet Slate", "each": "2"},
            {"color": "Peat Gold"},
            {"color": "Sheepfold"},
        ),
    )
    lots = Rows(
        Lot,
        "Good skeins, lot by lot",
        "lot",
        record=RECORD.dye_lot,
        least=1,
        most=24,
        measure="A pot is a lot, unless its skeins were mixed with another’s and looked at side by"
        " side. Leave out seconds.",
        default=(
            {"color": "Wet Slate", "lot": "L41", "good": "24"},
            {"color": "Wet Slate", "lot": "L42", "good": "23"},
            {"color": "Peat Gold", "lot": "L43", "good": "12"},
            {"color": "Peat Gold", "lot": "L44", "good": "11"},
            {"color": "Sheepfold", "lot": "L45", "good": "20"},
        ),
    )
    club = Rows(
        ClubColor,
        "Promised to the club",
        "color",
        lent=lots,
        least=0,
        most=8,
        default=({"color": "Wet Slate", "places": "8"},),
    )
    skein_mass = replace(
        SKEIN_MASS,
        rough="3 %",
        measure="With its band, as it lies in your room: ± 3 % for damp (common practice).",
    )
    parcels = Rows(
        Parcel,
        "Parcels",
        "parcel",
        least=1,
        most=10,
        default=(
            {"name": "Culvert Stole", "skeins": "4", "extras": "35 g", "wrapping": "55 g"},
            {"name": "Club", "skeins": "1", "wrapping": "22 g"},
            {"name": "Two skeins", "skeins": "2", "wrapping": "30 g"},
        ),
    )
    bands = Rows(
        Band,
        "Your post’s bands",
        "band",
        least=1,
        most=10,
        measure="From your own post’s price list, lightest first.",
        default=(
            {"most": "100 g", "price": "2.40"},
            {"most": "250 g", "price": "3.60"},
            {"most": "500 g", "price": "5.20"},
            {"most": "1 kg", "price": "6.80"},
            {"most": "2 kg", "price": "8.40"},
        ),
    )

    wanted = Between[int](COUNT, "Kits wanted, spares and all")
    kits_served = Many(COUNT, "Kits that {} serves")
    possible = Between[float](COUNT, "Kits that all colors serve")
    in_kit = Between[float](COUNT, "Skeins in one kit")
    shares = Plain[list[Share]](fixed=True)
    place = Plain[int | None](fixed=True)  # the first parcel's band, by its weight as given

    packed = Result[float](COUNT, "Kits to pack", rounding="down")
    to_club = Result[int](COUNT, "Skeins for the club", rounding="down")
    shop = Result[float](COUNT, "Skeins for the shop", rounding="down")
    good = Result[float](COUNT, "Good skeins in all")
    mass = Result[float](
        MASS, "The first parcel weighs", units=("g", "oz"), finest=(1, 0.1), rounding="up"
    )
    slack = Result[float](
        MASS, "To spare in its band", units=("g", "oz"), finest=(1, 0.1), rounding="down"
    )
    over = Result[float](
        PERCENT, "Chance that it is over its band", chance=Chance(slack, below=0.0)
    )
    postage = Result[float](MONEY, "Its postage", finest=(0.01,))
