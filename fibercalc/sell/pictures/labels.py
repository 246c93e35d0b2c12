"""The studio's labels, each in exact millimeters: what stands where. Sizes are those of the papers
they are cut from.
"""

from dataclasses import dataclass

from ...core.label import Area, Block, Code, Label

BAND, TAG, SMALL, STICKER, BOTTLE, PRICE, SHELF, CARE, KIT = (
    "band",
    "tag",
    "small",
    "sticker",
    "bottle",
    "price",
    "shelf",
    "care",
    "kit",
)
# Kind: what it is called, width and height in mm.
SIZES = {
    BAND: ("Skein band", 40.0, 210.0),
    TAG: ("Swing tag", 50.0, 90.0),
    SMALL: ("Small label", 25.0, 50.0),
    STICKER: ("Day sticker", 38.0, 38.0),
    BOTTLE: ("Bottle label", 50.0, 70.0),
    PRICE: ("Price card", 105.0, 74.0),
    SHELF: ("Shelf edge", 62.0, 20.0),
    CARE: ("Care card", 85.0, 55.0),
    KIT: ("Kit card", 105.0, 148.0),
}
WITH_CODE = (BAND, TAG, CARE)  # these say all that is asked of a yarn's label
BAND_LEAST = 7.0  # pt: a band has room; from there on its picture on a phone can be read too
GLUE = 18.0  # mm of a band that lie under its other end
FOLD = 114.0  # mm down a band, where its back begins


@dataclass(frozen=True)
class Skein:
    """What a skein's label says, in finished words; what is empty is left off. length and mass are
    said in two units, the first of which a small label keeps. link is what its code leads to: pairs
    of a base link.
    """

    name: str
    color: str = ""
    maker: str = ""
    fiber: str = ""
    length: tuple[str, ...] = ()
    mass: tuple[str, ...] = ()
    lot: str = ""
    care: tuple[str, ...] = ()
    origin: str = ""
    price: str = ""
    link: tuple[tuple[str, object], ...] = ()


def band(skein: Skein) -> Label:
    """A band around a skein: front, back with the code, and the end that is glued under the
    other.
    """
    front = (
        Block("Maker", skein.maker, 9, lines=2, least=BAND_LEAST),
        Block("Name", skein.name, 20, True, 5, 3, least=BAND_LEAST),
        Block("Color", skein.color, 13, gap=2, lines=3, least=BAND_LEAST),
        Block("Length", _both(skein.length), 12, True, 7, 2, least=BAND_LEAST),
        Block("Weight", _both(skein.mass), 12, True, 1.5, 2, least=BAND_LEAST),
    )
    back = (
        Block("Fiber content", skein.fiber, 9, gap=0, least=BAND_LEAST),
        Block("Care", " ".join(skein.care), 8, gap=2, lines=9, least=BAND_LEAST),
        Block("Lot", _lot(skein), 10, True, 2, 2, least=BAND_LEAST),
        Block("Made in", skein.origin, 8, gap=1.5, lines=2, least=BAND_LEAST),
    )
    return Label(
        SIZES[BAND][0],
        40.0,
        210.0,
        (
            Area(
                3,
                5,
                34,
                GLUE - 8,
                (Block("Glue", "glue under the other end", 7, least=BAND_LEAST),),
                "middle",
                True,
            ),
            Area(3, GLUE + 4, 34, FOLD - GLUE - 8, front, "middle", True),
            Area(3, FOLD + 4, 34, 48, back),
            Area(
                3,
                167,
                34,
                4,
                (Block("Ask", "How many do I need? Scan.", 7.5, lines=1, least=BAND_LEAST),),
                "middle",
            ),
        ),
        (Code(4, 170.5, 32, skein.link, (3, 202, 34, 6.5)),),
        folds=((0, GLUE, 40, GLUE),),
    )


def swing_tag(skein: Skein) -> Label:
    """A tag on a thread: all that a band says, on one side."""
    words = (
        Block("Maker", skein.maker, 7, lines=2),
        Block("Name", skein.name, 14, True, 0.6, 2),
        Block("Color", skein.color, 9.5, gap=0.4, lines=2),
        Block("Fiber content", skein.fiber, 7.5, gap=1, lines=3),
        Block("Length", _both(skein.length), 9.5, True, 1, 1),
        Block("Weight", _both(skein.mass), 9.5, True, 0.3, 1),
        Block("Care", " ".join(skein.care), 6.75, gap=1, lines=5),
    )
    side = (
        Block("Lot", _lot(skein), 7.5, True, 0, 3),
        Block("Made in", skein.origin, 6.5, gap=1, lines=3),
        Block("Ask", "How many do I need? Scan.", 6.5, gap=1, lines=4),
    )
    return Label(
        SIZES[TAG][0],
        50.0,
        90.0,
        (Area(4, 9.5, 42, 46, words), Area(31.5, 58, 15.5, 24, side)),
        (Code(3, 56, 28, skein.link, (4, 83.4, 42, 5.2)),),
        hole=(25, 5.5, 2),
    )


def small_label(skein: Skein) -> Label:
    """A label for a small skein: name, color, grams, yards, lot; no code."""
    words = (
        Block("Name", skein.name, 12, True, lines=3),
        Block("Color", skein.color, 8.5, gap=1, lines=3),
        Block("Weight", _both(skein.mass[:1]), 11, True, 2.5, 1),
        Block("Length", _both(skein.length[:1]), 11, True, 0.6, 1),
        Block("Lot", _lot(skein), 8, gap=2, lines=3),
    )
    return Label(SIZES[SMALL][0], 25.0, 50.0, (Area(2, 2.5, 21, 45, words, "middle", True),))


def day_sticker(number: int, of_set: str) -> Label:
    """A round sticker: the day's number and the set's name only."""
    return Label(
        SIZES[STICKER][0],
        38.0,
        38.0,
        (
            Area(
                6, 7, 26, 17.5, (Block("Number", str(number), 40, True, lines=1),), "middle", True
            ),
            Area(7, 24.5, 24, 7.5, (Block("Set", of_set, 9, lines=2),), "middle", True),
        ),
        round=True,
    )


def bottle_label(
    what: str, strength: str, made: str, lot: str, signal: str, statements: tuple[str, ...]
) -> Label:
    """A stock bottle's label: name, strength, date, lot, and what its contents can do."""
    head = (
        Block("Name", what, 15, True, lines=2),
        Block("Strength", strength, 10, True, 0.8, 2),
        Block("Date", made, 8.5, gap=0.8, lines=1),
        Block("Lot", lot and f"Jar lot {lot}", 8.5, gap=0.3, lines=2),
    )
    below = (
        Block("Signal word", "" if signal == "none" else signal, 13, True, lines=1),
        *(Block("Hazard statements", line, 7.5, gap=0.7, lines=4) for line in statements),
        Block(
            "Data sheet",
            "The maker’s safety data sheet comes first. Never in a drinks bottle.",
            7,
            gap=1.2,
            lines=3,
        ),
    )
    return Label(
        SIZES[BOTTLE][0],
        50.0,
        70.0,
        (Area(3, 3, 44, 24.5, head), Area(3, 30.5, 44, 37, below)),
        rules=((3, 29, 47, 29),),
    )


def kit_card(name: str, maker: str, color: str, lot: str, parts: tuple[str, ...]) -> Label:
    """A card that lies in a kit: what it is, and on which day each part comes, one line for
    each.
    """
    head = (
        Block("Maker", maker, 10, lines=2),
        Block("Kit", name, 26, True, 2, 3),
        Block("Color", color, 15, gap=1, lines=2),
        Block("Lot", lot and f"Lot {lot}", 11, gap=2, lines=2),
    )
    below = (
        Block("Dates", "The parts come on", 12, True, lines=1),
        *(Block("Dates", part, 13, gap=1.6, lines=1) for part in parts),
    )
    return Label(
        SIZES[KIT][0],
        105.0,
        148.0,
        (Area(8, 8, 89, 50, head), Area(8, 64, 89, 76, below)),
        rules=((8, 61, 97, 61),),
    )


def price_card(skein: Skein) -> Label:
    """A card to stand beside what is sold: name, color, price, what is in a skein."""
    words = (
        Block("Name", skein.name, 26, True, lines=2),
        Block("Color", skein.color, 16, gap=1, lines=2),
        Block("Price", skein.price, 46, True, 3, 1),
        Block("Put-up", _both((*skein.length, *skein.mass)), 12, gap=2, lines=2),
        Block("Fiber content", skein.fiber, 11, gap=1, lines=2),
    )
    return Label(SIZES[PRICE][0], 105.0, 74.0, (Area(6, 5, 93, 64, words, "middle", True),))


def shelf_edge(skein: Skein) -> Label:
    """A strip for the edge of a shelf or a bin: name and color, put-up, lot."""
    words = (
        Block("Name", skein.name, 13, True, lines=1),
        Block("Color", skein.color, 10, gap=0.4, lines=1),
        Block("Put-up", _both((*skein.length, *skein.mass, _lot(skein))), 7.5, gap=0.8, lines=2),
    )
    return Label(SIZES[SHELF][0], 62.0, 20.0, (Area(2.5, 1.5, 57, 17, words, "start", True),))


def care_card(skein: Skein) -> Label:
    """A card that goes into the parcel: what was bought, its care, and the code that says how far
    it goes.
    """
    words = (
        Block("Maker", skein.maker, 7.5, lines=2),
        Block("Name", skein.name, 14, True, 0.6, 2),
        Block("Color", skein.color, 10, gap=0.4, lines=2),
        Block("Fiber content", skein.fiber, 8, gap=1, lines=2),
        Block("Length", _both(skein.length), 8.5, True, 1, 1),
        Block("Weight", _both(skein.mass), 8.5, True, 0.3, 1),
    )
    below = (
        Block("Care", " ".join(skein.care), 8, gap=0, lines=3),
        Block(
            "Lot", " · ".join(part for part in (_lot(skein), skein.origin) if part), 8, True, 0.8, 2
        ),
    )
    return Label(
        SIZES[CARE][0],
        85.0,
        55.0,
        (
            Area(4, 3.5, 45, 34, words),
            Area(4, 39.5, 77, 12.5, below),
            Area(
                51, 2.5, 32, 3.6, (Block("Ask", "How many do I need? Scan.", 7, lines=1),), "middle"
            ),
        ),
        (Code(53, 5.4, 28, skein.link, (51, 32.8, 32, 5.4)),),
    )


DRAWN = {
    BAND: band,
    TAG: swing_tag,
    SMALL: small_label,
    PRICE: price_card,
    SHELF: shelf_edge,
    CARE: care_card,
}


def _both(words: tuple[str, ...]) -> str:
    return " · ".join(each for each in words if each)


def _lot(skein: Skein) -> str:
    return f"Lot {skein.lot}" if skein.lot else ""
