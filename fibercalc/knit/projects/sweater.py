"""A sweater: body, two sleeves, yoke and neckband, from its own measures or from a size table."""

from ...core.card import CHOICE, Input, Option
from ...core.problem import Refused
from ...core.table import read_table
from ...core.units import LENGTH
from ..shapes import circle_around, rectangle, tapered
from . import Cloth
from .measure import OWN, TABLE, measure, piece

RAGLAN, ROUND, DROP = "raglan", "round", "drop"
WOMEN, MEN, CHILDREN, BABIES = (
    "council-body-women",
    "council-body-men",
    "council-body-children",
    "council-body-babies",
)
WORDS = {WOMEN: "Woman", MEN: "Man", CHILDREN: "Child", BABIES: "Baby"}

HELD = 0.32  # of the chest: 8 % of it waits under each arm, once on the body and once on the sleeve, both sides (common practice)
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

MAKES = {"make": ("sweater",)}
OWN_SIZE = MAKES | {"size_by": (OWN,)}
BY_TABLE = MAKES | {"size_by": (TABLE,)}

INPUTS = (
    Input(CHOICE, "Size", default="woman-m", options=SIZE_OPTIONS, when=BY_TABLE, name="size"),
    Input(
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
        name="ease",
    ),
    Input(
        CHOICE,
        "How it is made",
        default=RAGLAN,
        when=MAKES,
        options=(
            Option(RAGLAN, "Raglan"),
            Option(ROUND, "Round yoke"),
            Option(DROP, "Drop shoulder"),
        ),
        name="construction",
    ),
    measure(
        "chest",
        "Around the chest, finished",
        "104 cm",
        "300 cm",
        ("45 cm", "170 cm"),
        OWN_SIZE,
        "The finished garment, not the body.",
    ),
    measure("body", "Body, hem to underarm", "39 cm", "150 cm", ("12 cm", "60 cm"), OWN_SIZE),
    measure("sleeve", "Sleeve, cuff to underarm", "45 cm", "100 cm", ("12 cm", "55 cm"), OWN_SIZE),
    measure("upper_arm", "Sleeve, around the top", "34 cm", "120 cm", ("15 cm", "60 cm"), OWN_SIZE),
    measure("wrist", "Around the cuff", "19 cm", "80 cm", ("10 cm", "30 cm"), OWN_SIZE),
    measure(
        "yoke",
        "Yoke or armhole, depth",
        "20 cm",
        "60 cm",
        ("8 cm", "30 cm"),
        OWN_SIZE,
        "Straight down from the neckband to the underarm.",
    ),
    measure("neck", "Around the neck opening", "44 cm", "150 cm", ("30 cm", "65 cm"), OWN_SIZE),
    measure(
        "band",
        "Neckband, depth",
        "2.5 cm",
        "60 cm",
        ("1 cm", "25 cm"),
        OWN_SIZE,
        rough="0.3 cm",
        least="0.5 cm",
    ),
)


def cloth(w, m: dict) -> Cloth:
    """The pieces of a sweater, from its measures m in cm (or a size and an ease)."""
    if m["size_by"] == TABLE:
        m = m | _from_table(w, m["size"], m["ease"])
    chest, upper_arm, yoke, neck = m["chest"], m["upper_arm"], m["yoke"], m["neck"]
    band = piece(w, "band_area", "neck * band", rectangle(neck, m["band"]), "Neckband")
    if m["construction"] == DROP:
        area = rectangle(chest, m["body"] + yoke) - circle_around(neck)
        if area <= 0:
            raise Refused(
                "Around the neck opening: it is larger than front and back together; give a smaller"
                " neck.",
                "neck",
            )
        body = piece(
            w,
            "body_area",
            "chest * (body + yoke) - neck ** 2 / (4 * pi)",
            area,
            "Front and back, less the neck opening",
        )
        sleeves = piece(
            w,
            "sleeves_area",
            "(2 * yoke + wrist) * sleeve",
            2 * tapered(2 * yoke, m["wrist"], m["sleeve"]),
            "Both sleeves, as wide as the armhole",
        )
        return Cloth((body, sleeves, band), m)
    around = w.step(
        "yoke_around",
        f"chest + 2 * upper_arm - {HELD} * chest",
        chest + 2 * upper_arm - HELD * chest,
        LENGTH,
        "cm",
        "Around the yoke where it begins",
    )
    if neck > around:
        raise Refused(
            f"Around the neck opening: it is wider than the yoke that leads to it ({around:.4g}"
            " cm); give a smaller neck or a wider chest.",
            "neck",
        )
    body = piece(w, "body_area", "chest * body", rectangle(chest, m["body"]), "Body")
    sleeves = piece(
        w,
        "sleeves_area",
        "(upper_arm + wrist) * sleeve",
        2 * tapered(upper_arm, m["wrist"], m["sleeve"]),
        "Both sleeves",
    )
    if (
        m["construction"] == ROUND
    ):  # plain for half its depth, then narrowed in rounds (common practice)
        top = piece(
            w,
            "yoke_area",
            "(3 * yoke_around + neck) / 4 * yoke",
            rectangle(around, yoke / 2) + tapered(around, neck, yoke / 2),
            "Round yoke",
        )
    else:
        top = piece(
            w,
            "yoke_area",
            "(yoke_around + neck) / 2 * yoke",
            tapered(around, neck, yoke),
            "Raglan yoke",
        )
    return Cloth((body, sleeves, top, band), m | {"yoke_around": around})


def _from_table(w, size: str, ease: float) -> dict[str, float]:
    """The garment's measures, cm, from a row of a size table; what no table gives follows rules of common practice."""
    table = SIZES[size]
    row_size, ratio = (size, "1") if table != BABIES else ("child-2", "scale")

    def look(name, column, label, table=table, key=row_size):
        return w.looked_up(name, "knit", table, "key", key, column, LENGTH, "in", label)

    def middle(name, column, label):
        return (
            f"({name}_low + {name}_high) / 2",
            (
                look(f"{name}_low", f"{column}_low", f"{label}, low")
                + look(f"{name}_high", f"{column}_high", f"{label}, high")
            )
            / 2,
        )

    if (
        table == BABIES
    ):  # only the chest is known: the rest is that of a child of two, in proportion
        body_chest = look("body_chest", "chest", "Chest of the body", key=size)
        child = look("child_chest", "chest", "Chest of a child of two", CHILDREN)
        scale = w.step(
            "scale",
            "body_chest / child_chest",
            body_chest / child,
            label="In proportion to a child of two",
        )
        table, chest_text = CHILDREN, "body_chest"
    else:
        scale = 1.0
        if table == CHILDREN:
            chest_text, body_chest = "body_chest", look("body_chest", "chest", "Chest of the body")
        else:
            chest_text, body_chest = middle(
                "body_chest", "bust" if table == WOMEN else "chest", "Chest of the body"
            )
    if table == CHILDREN:
        depth_text, depth = (
            "body_armhole",
            look("body_armhole", "armhole", "Armhole of the body", table),
        )
    else:
        depth_text, depth = middle("body_armhole", "armhole", "Armhole of the body")
    arm, upper = (
        look("body_arm", "arm", "Arm to underarm", table),
        look("body_upper_arm", "upper_arm", "Upper arm", table),
    )

    def cm(name, text, inches, more="", added=0.0, label=""):
        by_ratio = "" if ratio == "1" else f" * {ratio}"
        return w.step(
            name,
            f"{text}{by_ratio} * 2.54{more}",
            inches * scale * 2.54 + added,
            LENGTH,
            "cm",
            label,
        )

    chest = w.step(
        "chest",
        f"{chest_text} * 2.54 + ease",
        body_chest * 2.54 + ease,
        LENGTH,
        "cm",
        "Around the chest, finished",
    )
    yoke = cm("yoke", depth_text, depth, " + 2", 2.0, "Yoke, 2 cm deeper than the armhole")
    if table == MEN:
        back_text, back = middle("body_hip_length", "hip_length", "Back to the hip")
    else:
        back = look("body_back_waist", "back_waist", "Back to the waist", table) * 1.34
        back_text = "body_back_waist * 1.34"
    body = cm("body", back_text, back, " - yoke", -yoke, "Body, hem to underarm")
    sleeve = cm("sleeve", "body_arm", arm, label="Sleeve")
    upper_arm = cm(
        "upper_arm",
        "body_upper_arm",
        upper,
        " + ease / 2",
        ease / 2,
        "Around the sleeve at the top",
    )
    if upper_arm <= 0 or chest <= 0:
        raise Refused("Ease: it leaves nothing to wear at that size; give a larger one.", "ease")
    wrist = w.step("wrist", "0.6 * upper_arm", 0.6 * upper_arm, LENGTH, "cm", "Around the cuff")
    neck = w.step(
        "neck", "30 + 0.13 * chest", 30 + 0.13 * chest, LENGTH, "cm", "Around the neck opening"
    )
    band = w.step("band", "2.5", 2.5, LENGTH, "cm", "Neckband, depth")
    return {
        "chest": chest,
        "body": body,
        "sleeve": sleeve,
        "upper_arm": upper_arm,
        "wrist": wrist,
        "yoke": yoke,
        "neck": neck,
        "band": band,
    }
