"""Chart of the weaves: each draw-down with its longest floats framed, how it is woven, and how far
its threads float.
"""

from ...core.answer import Picture, Table
from ...core.marks import MARKS, meaning
from ...core.picture import Drawing
from ..draft.floats import floats_of
from ..draft.loom_words import stick_words
from ..draft.repeat import rows_of
from ..draft.sheds import lifts_of
from ..draft.structures import ALL, Structure
from ..pictures.drawdown import said, weave

CELLS, CELL = 12, 8.0
ACROSS, TALL, IN_A_ROW = 118, 134, 3
MANY = 10  # repeats each way: enough that a float over the edge of a repeat is counted whole


def draw_downs() -> list[Picture | Table]:
    """Every weave of the book as a picture, then its sheds and floats.

    Source: definition of each weave and common practice; the waffle on four shafts is from memory.
    """
    one = [each for each in ALL if not lifts_of(each.repeat).by_hand]
    more = [each for each in ALL if lifts_of(each.repeat).by_hand]
    return [
        _panels("What one rigid heddle and its stick weave", one),
        _panels("What asks for more heddles, for shafts, or for picking up by hand", more),
        Table(
            "Sheds of the weaves of one heddle, pick by pick",
            ("Weave", "Ends × picks", "Sheds, over and over", "The stick, slots from the left"),
            tuple(
                (
                    each.label + MARKS[each.status],
                    _size(each),
                    ", ".join(said(each.repeat)),
                    _stick(each),
                )
                for each in one
            ),
            "“On edge”: heddle at rest, the stick turned on edge behind it. “Up + stick flat”:"
            " heddle up, the stick flat behind it. Else the stick lies back. End 1, at the left,"
            " stands in a slot. " + meaning("practice"),
            ("common-practice",),
        ),
        Table(
            "Longest floats, in threads passed over",
            ("Weave", "Warp: face, back", "Weft: face, back", "Warp on the face", "What is seen"),
            tuple(
                (
                    each.label + MARKS[each.status],
                    *_floats(each),
                    f"{100 * _face(each):.0f} %",
                    each.said,
                )
                for each in ALL
            ),
            "Counted here in the draw-down, inside the cloth. " + meaning("memory", "practice"),
            ("common-practice", "trade-memory", "arithmetic"),
        ),
    ]


def _size(each: Structure) -> str:
    return f"{len(each.repeat[0])} × {len(each.repeat)}"


def _stick(each: Structure) -> str:
    settings = lifts_of(each.repeat).settings
    return (
        "; ".join(
            (f"{number}: " if len(settings) > 1 else "") + stick_words(setting)
            for number, setting in enumerate(settings, 1)
        )
        or "–"
    )


def _floats(each: Structure) -> tuple[str, str]:
    floats = floats_of(rows_of(each.repeat, MANY * len(each.repeat[0]), MANY * len(each.repeat)))
    return f"{floats.warp_face}, {floats.warp_back}", f"{floats.weft_face}, {floats.weft_back}"


def _face(each: Structure) -> float:
    face = "".join(each.repeat)
    return face.count("1") / len(face)


def _panels(title: str, shown: list[Structure]) -> Picture:
    drawing = Drawing(TALL * -(-len(shown) // IN_A_ROW))
    words = []
    for place, each in enumerate(shown):
        left, top = 6 + ACROSS * (place % IN_A_ROW), TALL * (place // IN_A_ROW)
        drawing.text(left, top + 16, each.label, size=13)
        weave(drawing, each.repeat, left, top + 24 + CELLS * CELL, CELLS, CELLS, CELL, CELL)
        warp, weft = _floats(each)
        words.append(
            f"{each.label}, {len(each.repeat[0])} ends by {len(each.repeat)} picks, longest floats"
            f" face and back: warp {warp}, weft {weft}"
        )
    return drawing.picture(
        title, "Black is warp on top, first pick at the bottom. " + "; ".join(words) + "."
    )
