"""What is asked about a cloth: its yarns and its pieces, the loom, the wash."""

from __future__ import annotations

from dataclasses import dataclass, replace

from ....core.card import (
    CHOICE,
    COLOR,
    TEXT,
    Between,
    Case,
    Input,
    Option,
    Plain,
    Result,
    Row,
    Rows,
)
from ....core.color import Color
from ....core.units import COUNT, LENGTH, PER_LENGTH, PERCENT
from ....held import RECORD
from ...draft.floats import Floats
from ...draft.structures import ALL, OWN
from ...inputs import HEM_PICKS, PICKS, WARP_ENDS

REPEAT, MIRROR = "repeat", "mirror"
LOOM, WASHED = "loom", "washed"
CLOTH = tuple(Option(each.key, each.label) for each in ALL) + (
    Option(OWN, "My own pick-up, given below"),
)
PER = ("per cm", "per in", "per 10 cm")
TAKEN = Input[float](PERCENT, "The wash takes", allowed=("-20 %", "60 %"), usual=("0 %", "35 %"))


@dataclass(frozen=True)
class Longest:
    """The longest float of a piece: cm on the loom, threads, whether it is of weft, where it is."""

    span: float
    threads: int
    of_weft: bool
    where: str


class YarnRow(Row):
    """One yarn."""

    name = Input[str](TEXT, "Name", default="Another", longest=16, lent=False)
    color = Input[Color](COLOR, "Color", default="#8a8f6a")


class Piece(Row):
    """One piece."""

    name = Input[str](TEXT, "Name", default="Another", longest=16, lent=False)
    structure = Input[str](CHOICE, "Weave", default="plain", options=CLOTH)
    picks = Input[int](COUNT, "Picks, with both hems", default="384", allowed=("2", "4000"))
    weft = Input[str](
        TEXT,
        "Weft, stripe by stripe",
        default="A",
        longest=60,
        measure="Picks and yarn, over and over: 24 A, 6 C.",
        lent=False,
    )

    repeat = Plain[tuple[str, ...]]()
    floats = Plain[Floats]()
    from_left = Plain[bool]()
    longest = Plain[Longest]()
    across = Plain[float]()
    along = Plain[float]()
    stick_picks = Between[int](COUNT, "Picks with the stick, or picked up by hand")
    changes = Between[int](COUNT, "Color changes")


def _in_the_cloth(label: str) -> Result[float]:
    """A length in the cloth, shown as finely as a tape reads it."""
    return Result[float](
        LENGTH, label, unit="cm", units=("cm", "in"), finest=(0.1, 0.05), floor=0.0
    )


class ClothPicture(Case):
    """Pieces of cloth on one warp, of which one is looked at thread by thread."""

    yarns = Rows(
        YarnRow,
        "Yarns of warp and weft",
        "yarn",
        least=1,
        most=14,
        measure="The first is A, the next B, and so on.",
        default=(
            {"name": "Natural", "color": "#e6dcc3"},
            {"name": "Slate", "color": "#3d4a5c"},
            {"name": "Rust", "color": "#9c4a2b"},
        ),
    )
    pieces = Rows(
        Piece,
        "Pieces, in the order they are woven",
        "piece",
        least=1,
        most=12,
        default=(
            {"name": "Towel 1", "structure": "waffle", "weft": "24 A, 6 C"},
            {"name": "Towel 2", "structure": "plain", "weft": "20 A, 4 B, 4 A, 4 B"},
            {"name": "Towel 3", "structure": "weft-floats", "weft": "C"},
            {"name": "Towel 4", "structure": "lace", "weft": "A"},
            {"name": "Towel 5", "structure": "warp-floats", "weft": "40 A, 8 B"},
        ),
    )
    ends = replace(WARP_ENDS)
    warp = Input[str](
        TEXT,
        "Warp, stripe by stripe from the left",
        default="10 A, 4 B, 4 A, 4 B, 10 A",
        longest=60,
        measure="Ends and yarn, over and over until the ends are used up.",
        lent=False,
    )
    turn = Input[str](
        CHOICE,
        "At the end of the stripes",
        default=REPEAT,
        options=(
            Option(REPEAT, "begin again from the first"),
            Option(MIRROR, "go back in mirror order"),
        ),
    )
    sett = Input[float](
        PER_LENGTH,
        "Ends in the heddle",
        default="4 per cm",
        allowed=("0.5 per cm", "40 per cm"),
        usual=("2 per cm", "12 per cm"),
        units=PER,
    )
    beat = replace(PICKS, measure="Counted under tension.")
    draw_in = Input[float](
        PERCENT,
        "The cloth draws in by",
        default="6 %",
        allowed=("0 %", "60 %"),
        usual=("2 %", "15 %"),
        rough="2 %",
        measure="Of the width in the heddle.",
    )
    shrink_width = replace(
        TAKEN,
        label="The wash takes, of the width",
        record=RECORD.measurement.width_change,
        default="14 %",
        rough="2 %",
        measure="Of the width off the loom.",
    )
    shrink_length = replace(
        TAKEN,
        label="The wash takes, of the length",
        record=RECORD.measurement.length_change,
        default="18 %",
        rough="2 %",
        measure="Of the length on the loom.",
    )
    textured_width = replace(
        TAKEN,
        label="Pieces with floats: of the width",
        rough="3 %",
        optional=True,
        measure="Waffle and lace shrink more than plain weave: wash a sample. Blank as above.",
    )
    textured_length = replace(TAKEN, label="and of the length", rough="3 %", optional=True)
    hem = replace(HEM_PICKS, measure="Plain weave at both ends of each piece; 0 for none.")
    hem_yarn = Input[str | None](
        TEXT,
        "Yarn of the hems",
        optional=True,
        longest=16,
        measure="Its letter; blank for the piece’s first weft.",
    )
    hem_beat = Input[float | None](
        PER_LENGTH,
        "Picks in the hems",
        allowed=("0.5 per cm", "80 per cm"),
        usual=("2 per cm", "25 per cm"),
        units=PER,
        optional=True,
        measure="A finer yarn packs closer; blank as the cloth.",
    )
    flag = Input[float](
        LENGTH,
        "Say so when a float is longer than",
        default="1 cm",
        allowed=("0.1 cm", "30 cm"),
        usual=("0.4 cm", "3 cm"),
        units=("cm", "in"),
        unit="cm",
        measure="Common practice: about 1 cm where rings and buttons catch.",
    )
    look = Input[int](COUNT, "Piece to look at", default="1", allowed=("1", "12"))
    state = Input[str](
        CHOICE,
        "Show it",
        default=WASHED,
        options=(Option(WASHED, "washed"), Option(LOOM, "on the loom")),
    )
    take = Input[int](
        COUNT,
        "Own pick-up: the stick takes up",
        default="1",
        allowed=("1", "16"),
        measure="Ends in slots, heddle down, from the left.",
    )
    leave = Input[int](COUNT, "and leaves", default="1", allowed=("1", "16"))
    sheds = Input[str](
        TEXT,
        "Own pick-up: sheds of one repeat",
        default="e u e u e d",
        longest=60,
        measure="Up, down, edge (stick on edge), flat (up, stick flat), or their first letters.",
        lent=False,
    )

    ends_drawn_in = Between[float](PER_LENGTH, "Ends to the centimeter, drawn in")
    worst = Plain[int](fixed=True)
    number_of_pieces = Between[int](COUNT, "Pieces")
    mean_picks = Between[int](COUNT, "Picks of a piece, in the mean")
    stick_share = Between[float](PERCENT, "Picks with the stick, or picked up by hand")
    mean_changes = Between[int](COUNT, "Color changes in a piece, in the mean")

    where = Result[str](TEXT, "Longest float")
    longest = Result[int](COUNT, "Threads under it")
    float_loom = _in_the_cloth("Its length on the loom")
    float_washed = _in_the_cloth("Its length once washed")
    width_loom = _in_the_cloth("Width on the loom, drawn in")
    length_loom = _in_the_cloth("Length of this piece on the loom")
    width_washed = _in_the_cloth("Its width once washed")
    length_washed = _in_the_cloth("Its length once washed")
    picks = Result[float](COUNT, "Picks in all pieces")
    way = Result[str](TEXT, "On a rigid heddle")
