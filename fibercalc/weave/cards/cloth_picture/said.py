"""What is said of a cloth: its size, how it is woven, its longest float, what to mind."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import LENGTH
from ...draft.sheds import lifts_of
from .asked import ClothPicture
from .worked import looked_at


def say(out: Outcome[ClothPicture]) -> str | tuple[str, ...]:
    case, way = out.case, out.case.way
    first = (
        f"{looked_at(case).name} is about {out.text(ClothPicture.width_washed)} wide and"
        f" {out.text(ClothPicture.length_washed)} long once washed; {way[0].lower()}{way[1:]}."
    )
    flag = out.amount(case.flag / 100, LENGTH, out.units(ClothPicture.float_loom)[0].sign, 3)
    return (
        first,
        f"Longest float: {case.where}, about {out.text(ClothPicture.float_loom)} on the loom,"
        f" {'longer than' if case.float_loom > case.flag else 'within'} your {flag}.",
    )


def notes(out: Outcome[ClothPicture]) -> list[str]:
    said, case, piece = [], out.case, looked_at(out.case)
    long = [
        str(number) for number, each in enumerate(case.pieces, 1) if each.longest.span > case.flag
    ]
    if len(long) > 1:
        said.append(f"Longer than your limit: pieces {', '.join(long)}.")
    if piece.floats.missed:
        said.append(
            f"{piece.name}: at {piece.floats.missed} of {piece.floats.turns} turns the weft does"
            " not catch the outermost end, first pick from the"
            f" {'left' if piece.from_left else 'right'} (the better side). Take the weft around"
            " that end by hand, or hang one more end at each edge, in no slot or hole, and go"
            " around it."
        )
    elif not piece.from_left:
        said.append(
            f"{piece.name}: throw the first pick from the right, and every turn catches the"
            " outermost end."
        )
    if lifts_of(piece.repeat).by_hand:
        said.append(
            "In a rigid heddle the ends in holes rise and fall all together. A weave that parts"
            " them asks for a second heddle, for shafts, or for picking up each such pick by hand"
            " in front of the heddle."
        )
    return said
