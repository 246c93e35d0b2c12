"""What a customer may ask for with only a skein in hand: projects and their sizes, as inputs of the card yarn-needed.

Data only; whoever shows it adds the skein and how sure one wants to be. Body sizes come from the chapter's tables. Every other
measure is common practice (no source) and stands in the words that the customer reads.
"""

from dataclasses import dataclass

from ..core.amount import NO_BREAK
from ..core.table import read_table
from .projects.sweater import BABIES, CHILDREN, MEN, WOMEN

CM = 2.54
# For whoever asks how it is worked out, and beside no address: what is from memory was read at none.
BODIES_FROM = "Sizes of bodies are meant as the Craft Yarn Council’s; most of them are from memory, unverified. Where your own measures differ, go by them."


@dataclass(frozen=True)
class Size:
    """One size: its key, the word a customer picks, the measure beside it, and the card's inputs that stand for it."""

    key: str
    label: str
    measure: str
    texts: dict[str, str]


@dataclass(frozen=True)
class Project:
    """One thing to make: its key, the words a customer picks, what is taken for granted, its sizes and the key of the one shown first;
    and where the sizes are from, for whoever asks how it is worked out."""

    key: str
    label: str
    assumes: str
    sizes: tuple[Size, ...]
    first: str
    sizes_from: str = ""


def _around(name: str, low: float, high: float) -> str:
    """A girth of the body, in, as a customer knows it: "bust 91 to 97 cm, 36 to 38 in"."""
    if low == high:
        return f"{name} {low * CM:.0f}{NO_BREAK}cm, {low:g}{NO_BREAK}in"
    return f"{name} {low * CM:.0f} to {high * CM:.0f} cm, {low:g} to {high:g} in".replace(" ", NO_BREAK).replace(f",{NO_BREAK}", ", ")


def _bodies(table: str, girth: str, ease: str, structure: str) -> tuple[Size, ...]:
    sizes = []
    for row in read_table("knit", table).rows:
        low, high = row.get(f"{girth}_low", row.get(girth)), row.get(f"{girth}_high", row.get(girth))
        label = f"{row['label'][0].upper()}{row['label'][1:]}"
        sizes.append(Size(row["key"], label, _around(girth, low, high), {"make": "sweater", "size_by": "table", "size": row["key"], "ease": ease, "structure": structure}))
    return tuple(sizes)


def _sweaters(structure: str, name: str, how: str) -> list[Project]:
    made = []
    for who, table, girth, ease, first in (("woman", WOMEN, "bust", "10 cm", "woman-m"), ("man", MEN, "chest", "10 cm", "man-m"), ("child", CHILDREN, "chest", "8 cm", "child-6"),
                                           ("baby", BABIES, "chest", "5 cm", "baby-12")):
        if (structure, who) != ("cables", "baby"):
            assumes = f"{how}, long sleeves, a raglan yoke, {ease} wider around the chest than the body."
            made.append(Project(f"{structure}-{who}", f"{name}, {who}", assumes, _bodies(table, girth, ease, structure), first, BODIES_FROM))
    return made


HEADS_FROM = "Heads: medians of girls for children, of a study for adults; the youngest two from memory, unverified."
HEIGHTS = {"premature": 11, "newborn": 14, "baby": 16, "toddler": 17, "child": 19, "woman": 22, "man": 23}  # cm, edge to top


def _hats() -> Project:
    sizes = tuple(Size(row["key"], row["label"], f"head {row['girth']:g}{NO_BREAK}cm, {row['girth'] / CM:.3g}{NO_BREAK}in",
                       {"make": "hat", "size_by": "table", "head_size": row["key"], "hat_height": f"{HEIGHTS[row['key']]} cm"}) for row in read_table("knit", "head-girths").rows)
    return Project("hat", "Hat", "Stocking stitch, a single edge, 8 % smaller than the head; 22 cm high for a woman.", sizes, "woman", HEADS_FROM)


def _measured(key: str, label: str, assumes: str, first: str, make: str, names: tuple[str, ...], rows: tuple) -> Project:
    """A project by measures in cm; each row is a key, a word, the measure in words and the numbers for these names."""
    return Project(key, label, assumes, tuple(Size(*row[:3], {"make": make} | {name: f"{number} cm" for name, number in zip(names, row[3:])}) for row in rows), first)


PROJECTS = (
    *_sweaters("plain", "Sweater", "Stocking stitch"),
    _hats(),
    _measured("mittens", "Mittens", "A pair in stocking stitch, closely worked; cuffs 6 to 9 cm long.", "woman", "mittens", ("hand", "hand_length", "cuff"), (
        ("toddler", "Toddler", "hand 13 cm, 5 in around", 14, 10, 6), ("child", "Child", "hand 16 cm, 6 1/4 in around", 17, 14, 7),
        ("woman", "Woman", "hand 19 cm, 7 1/2 in around", 20, 18, 8), ("man", "Man", "hand 22 cm, 8 3/4 in around", 23, 20, 9))),
    _measured("socks", "Socks", "A pair in stocking stitch, closely worked; leg from 10 cm for the shortest foot to 20 cm for the longest.", "24", "socks", ("foot_length", "foot_girth", "leg"), (
        ("16", "Foot 16 cm", "6 1/4 in long", 16, 16, 10), ("18", "Foot 18 cm", "7 in long", 18, 17.5, 12), ("20", "Foot 20 cm", "8 in long", 20, 19, 14),
        ("22", "Foot 22 cm", "8 3/4 in long", 22, 20.5, 16), ("24", "Foot 24 cm", "9 1/2 in long", 24, 22, 18), ("26", "Foot 26 cm", "10 1/4 in long", 26, 24, 19),
        ("28", "Foot 28 cm", "11 in long", 28, 26, 20))),
    _measured("cowl", "Cowl", "A tube in stocking stitch.", "short", "cowl", ("around", "height"), (
        ("short", "Close", "60 × 25 cm, 24 × 10 in", 60, 25), ("long", "Twice around", "130 × 25 cm, 51 × 10 in", 130, 25))),
    _measured("scarf", "Scarf or wrap", "Stocking stitch.", "scarf", "scarf", ("width", "length"), (
        ("narrow", "Narrow", "18 × 150 cm, 7 × 59 in", 18, 150), ("scarf", "Usual", "25 × 180 cm, 10 × 71 in", 25, 180), ("wrap", "Wrap", "50 × 190 cm, 20 × 75 in", 50, 190))),
    _measured("shawl", "Triangle shawl", "Loosely worked stocking stitch, blocked.", "middle", "shawl", ("span", "depth"), (
        ("small", "Small", "130 × 55 cm, 51 × 22 in", 130, 55), ("middle", "Middling", "160 × 70 cm, 63 × 28 in", 160, 70), ("large", "Large", "200 × 95 cm, 79 × 37 in", 200, 95))),
    _measured("blanket", "Blanket", "Stocking stitch.", "baby", "blanket", ("width", "length"), (
        ("baby", "Baby", "75 × 90 cm, 30 × 35 in", 75, 90), ("lap", "Lap", "100 × 130 cm, 39 × 51 in", 100, 130), ("bed", "Bed", "150 × 200 cm, 59 × 79 in", 150, 200))),
    *_sweaters("cables", "Cable sweater", "Cables on a purl ground, which take more yarn and vary more"),
)
