"""A sweater: body, two sleeves, yoke and neckband, from its own measures or from a size table."""

from __future__ import annotations

from dataclasses import dataclass

from ...core.card import CHOICE, Between, Input, Option, Plain
from ...core.problem import Refused
from ...core.steps import looked_up
from ...core.table import read_table
from ...core.units import LENGTH, NUMBER
from ..shapes import circle_around, rectangle, tapered
from .measure import OWN, TABLE, Made, found, measure, piece

RAGLAN, ROUND, DROP = "raglan", "round", "drop"
WOMEN, MEN, CHILDREN, BABIES = (
    "council-body-women",
    "council-body-men",
    "council-body-children",
    "council-body-babies",
)
WORDS = {WOMEN: "Woman", MEN: "Man", CHILDREN: "Child", BABIES: "Baby"}

# of the chest: 8 % of it waits under each arm, once on the body and once on the sleeve,
# both sides (common practice)
HELD = 0.32
SIZE_ERROR = (
    0.04  # 95 %: bodies between two sizes, and the measures that no table gives (common practice)
)


def sizes() -> dict[str, str]:
    """Every size of the tables with the table it stands in, smallest people first."""
    return {
        row["key"]: table
        for table in (BABIES, CHILDREN, WOMEN, MEN)
        for row in read_table("knit", table).rows
    }


SIZES = sizes()
SIZE_OPTIONS = tuple(
    Option(key, f"{WORDS[table]}, {read_table('knit', table).row('key', key)['label']}")
    for key, table in SIZES.items()
)

MAKES = {Made.make: ("sweater",)}
OWN_SIZE = MAKES | {Made.size_by: (OWN,)}
BY_TABLE = MAKES | {Made.size_by: (TABLE,)}


@dataclass(frozen=True)
class Garment:
    """The measures of a finished garment, cm."""

    chest: float
    body: float
    sleeve: float
    upper_arm: float
    wrist: float
    yoke: float
    neck: float
    band: float


def _inches(label: str) -> Between[float]:
    """A measure of the body, as the tables give it."""
    return Between(LENGTH, label, unit="in")


class SweaterMeasures(Made):
    """A garment, cm, or a size of the tables and its ease."""

    size = Input[str](CHOICE, "Size", default="woman-m", options=SIZE_OPTIONS, when=BY_TABLE)
    ease = Input[float](
        LENGTH,
        "Ease: wider than the body by",
        default="10 cm",
        allowed=("-15 cm", "40 cm"),
        usual=("-5 cm", "15 cm"),
        rough="1 cm",
        units=("cm", "in"),
        unit="cm",
        when=BY_TABLE,
        measure="Around the chest. Negative for cloth that stretches to fit.",
    )
    construction = Input[str](
        CHOICE,
        "How it is made",
        default=RAGLAN,
        when=MAKES,
        options=(
            Option(RAGLAN, "Raglan"),
            Option(ROUND, "Round yoke"),
            Option(DROP, "Drop shoulder"),
        ),
    )
    chest = measure(
        "Around the chest, finished",
        "104 cm",
        "300 cm",
        ("45 cm", "170 cm"),
        OWN_SIZE,
        "The finished garment, not the body.",
    )
    body = measure("Body, hem to underarm", "39 cm", "150 cm", ("12 cm", "60 cm"), OWN_SIZE)
    sleeve = measure("Sleeve, cuff to underarm", "45 cm", "100 cm", ("12 cm", "55 cm"), OWN_SIZE)
    upper_arm = measure("Sleeve, around the top", "34 cm", "120 cm", ("15 cm", "60 cm"), OWN_SIZE)
    wrist = measure("Around the cuff", "19 cm", "80 cm", ("10 cm", "30 cm"), OWN_SIZE)
    yoke = measure(
        "Yoke or armhole, depth",
        "20 cm",
        "60 cm",
        ("8 cm", "30 cm"),
        OWN_SIZE,
        "Straight down from the neckband to the underarm.",
    )
    neck = measure("Around the neck opening", "44 cm", "150 cm", ("30 cm", "65 cm"), OWN_SIZE)
    # The name is in links, and hides the case's own way to say a band,
    # which is called by its class.
    band = measure(  # type: ignore[assignment]
        "Neckband, depth",
        "2.5 cm",
        "60 cm",
        ("1 cm", "25 cm"),
        OWN_SIZE,
        rough="0.3 cm",
        least="0.5 cm",
    )

    body_chest_low = _inches("Chest of the body, low")
    body_chest_high = _inches("Chest of the body, high")
    body_chest = _inches("Chest of the body")
    child_chest = _inches("Chest of a child of two")
    scale = Between[float](NUMBER, "In proportion to a child of two")
    body_armhole_low = _inches("Armhole of the body, low")
    body_armhole_high = _inches("Armhole of the body, high")
    body_armhole = _inches("Armhole of the body")
    body_arm = _inches("Arm to underarm")
    body_upper_arm = _inches("Upper arm")
    body_hip_length_low = _inches("Back to the hip, low")
    body_hip_length_high = _inches("Back to the hip, high")
    body_hip_length = _inches("Back to the hip")
    body_back_waist = _inches("Back to the waist")

    table_chest = found("Around the chest, finished")
    table_yoke = found("Yoke, 2 cm deeper than the armhole")
    table_body = found("Body, hem to underarm")
    table_sleeve = found("Sleeve")
    table_upper_arm = found("Around the sleeve at the top")
    table_wrist = found("Around the cuff")
    table_neck = found("Around the neck opening")
    table_band = found("Neckband, depth")
    garment = Plain[Garment]()

    yoke_around = found("Around the yoke where it begins")
    front_and_back_area = piece("Front and back, less the neck opening")
    body_area = piece("Body")
    sleeves_area = piece("Both sleeves")
    yoke_area = piece("Yoke")
    band_area = piece("Neckband")


def cloth(case: SweaterMeasures) -> tuple[float, ...]:
    """The pieces of a sweater, cm²."""
    case.garment = made = _by_size(case) if case.size_by == TABLE else _own(case)
    case.band_area = rectangle(made.neck, made.band)
    if case.construction == DROP:
        return _dropped(case, made)
    case.yoke_around = made.chest + 2 * made.upper_arm - HELD * made.chest
    if made.neck > case.yoke_around:
        raise Refused(
            "Around the neck opening: it is wider than the yoke that leads to it"
            f" ({case.yoke_around:.4g} cm); give a smaller neck or a wider chest.",
            SweaterMeasures.neck,
        )
    case.body_area = rectangle(made.chest, made.body)
    case.sleeves_area = 2 * tapered(made.upper_arm, made.wrist, made.sleeve)
    if case.construction == ROUND:
        # Plain for half its depth, then narrowed in rounds (common practice).
        plain = rectangle(case.yoke_around, made.yoke / 2)
        case.yoke_area = plain + tapered(case.yoke_around, made.neck, made.yoke / 2)
    else:
        case.yoke_area = tapered(case.yoke_around, made.neck, made.yoke)
    return case.body_area, case.sleeves_area, case.yoke_area, case.band_area


def _dropped(case: SweaterMeasures, made: Garment) -> tuple[float, ...]:
    """The pieces of a sweater whose sleeves, as wide as the armhole, are set to a straight edge."""
    area = rectangle(made.chest, made.body + made.yoke) - circle_around(made.neck)
    if area <= 0:
        raise Refused(
            "Around the neck opening: it is larger than front and back together; give a smaller"
            " neck.",
            SweaterMeasures.neck,
        )
    case.front_and_back_area = area
    case.sleeves_area = 2 * tapered(2 * made.yoke, made.wrist, made.sleeve)
    return case.front_and_back_area, case.sleeves_area, case.band_area


def _own(case: SweaterMeasures) -> Garment:
    return Garment(
        case.chest,
        case.body,
        case.sleeve,
        case.upper_arm,
        case.wrist,
        case.yoke,
        case.neck,
        case.band,
    )


def _by_size(case: SweaterMeasures) -> Garment:
    """The garment of a size and an ease; what no table gives follows rules of common practice."""
    back = _look_up_body(case)
    baby = SIZES[case.size] == BABIES

    def sized(inches: float) -> float:
        return (inches * case.scale if baby else inches) * 2.54

    case.table_chest = case.body_chest * 2.54 + case.ease
    case.table_yoke = sized(case.body_armhole) + 2
    case.table_body = sized(back) - case.table_yoke
    case.table_sleeve = sized(case.body_arm)
    case.table_upper_arm = sized(case.body_upper_arm) + case.ease / 2
    if case.table_upper_arm <= 0 or case.table_chest <= 0:
        raise Refused(
            "Ease: it leaves nothing to wear at that size; give a larger one.", SweaterMeasures.ease
        )
    case.table_wrist = 0.6 * case.table_upper_arm
    case.table_neck = 30 + 0.13 * case.table_chest
    case.table_band = 2.5
    return Garment(
        case.table_chest,
        case.table_body,
        case.table_sleeve,
        case.table_upper_arm,
        case.table_wrist,
        case.table_yoke,
        case.table_neck,
        case.table_band,
    )


def _look_up_body(case: SweaterMeasures) -> float:
    """Look the body up, inches; gives its back, as far down as a sweater reaches."""
    size, table = case.size, SIZES[case.size]
    if table == BABIES:
        # Only the chest is known: the rest is that of a child of two, in proportion.
        case.body_chest = looked_up("knit", table, "key", size, "chest")
        size, table = "child-2", CHILDREN
        case.child_chest = looked_up("knit", table, "key", size, "chest")
        case.scale = case.body_chest / case.child_chest
    elif table == CHILDREN:
        case.body_chest = looked_up("knit", table, "key", size, "chest")
    else:
        girth = "bust" if table == WOMEN else "chest"
        case.body_chest_low = looked_up("knit", table, "key", size, f"{girth}_low")
        case.body_chest_high = looked_up("knit", table, "key", size, f"{girth}_high")
        case.body_chest = (case.body_chest_low + case.body_chest_high) / 2
    if table == CHILDREN:
        case.body_armhole = looked_up("knit", table, "key", size, "armhole")
    else:
        case.body_armhole_low = looked_up("knit", table, "key", size, "armhole_low")
        case.body_armhole_high = looked_up("knit", table, "key", size, "armhole_high")
        case.body_armhole = (case.body_armhole_low + case.body_armhole_high) / 2
    case.body_arm = looked_up("knit", table, "key", size, "arm")
    case.body_upper_arm = looked_up("knit", table, "key", size, "upper_arm")
    if table != MEN:
        case.body_back_waist = looked_up("knit", table, "key", size, "back_waist")
        return case.body_back_waist * 1.34
    case.body_hip_length_low = looked_up("knit", table, "key", size, "hip_length_low")
    case.body_hip_length_high = looked_up("knit", table, "key", size, "hip_length_high")
    case.body_hip_length = (case.body_hip_length_low + case.body_hip_length_high) / 2
    return case.body_hip_length
