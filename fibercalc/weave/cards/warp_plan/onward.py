"""What a planned warp gives to the next cards, so that nothing is typed twice.

A plan names its colors and knows no screen colors: those here are a first guess from the name.
"""

from __future__ import annotations

from ....core.card import Carry
from ....core.outcome import Outcome
from ...draft.order import letter
from .asked import ONE, WarpPlan
from .worked import fine_hems

GUESSES = {
    "natural": "#e6dcc3",
    "white": "#f5f2ea",
    "cream": "#efe3c8",
    "black": "#23221f",
    "gray": "#8f9194",
    "grey": "#8f9194",
    "slate": "#3d4a5c",
    "blue": "#3f6aa6",
    "navy": "#26335c",
    "indigo": "#2f3f7d",
    "red": "#a32f2b",
    "rust": "#9c4a2b",
    "orange": "#c9712c",
    "yellow": "#d9b23c",
    "gold": "#c4952f",
    "green": "#4f7a4a",
    "moss": "#8a8f6a",
    "teal": "#2f7475",
    "brown": "#6b4a32",
    "pink": "#c98a92",
    "purple": "#6d4a7c",
    "madder": "#8c2f22",
}
OTHERS = (
    "#5b7f95",
    "#b5895a",
    "#7c8b5f",
    "#9b5d6e",
    "#4d5a52",
    "#d0bd94",
)  # for a name that says no color
MOST_PIECES, MOST_YARNS, LONGEST = 12, 14, 60  # as the cloth picture takes them
HEM_YARN = "Hem yarn"


def _colors(case: WarpPlan) -> list[str]:
    """The colors that a plan names, warp first, each once."""
    warp = (
        [case.warp_color] if case.warp_colors == ONE else [stripe.color for stripe in case.stripes]
    )
    named = dict.fromkeys([*warp, *(piece.color for piece in case.pieces)])
    return list(named)[: MOST_YARNS - 1]


def _letter(case: WarpPlan, color: str) -> str:
    names = _colors(case)
    return letter(names.index(color)) if color in names else "A"


def _yarns(out: Outcome[WarpPlan]) -> list[dict[str, str]]:
    """The yarns of a cloth picture; a finer yarn for the hems comes last."""
    names = _colors(out.case) + [HEM_YARN] * fine_hems(out.case)
    return [
        {
            "name": name[:16],
            "color": GUESSES.get(
                name.lower().split()[-1] if name else "",
                "#f5f2ea" if name == HEM_YARN else OTHERS[place % len(OTHERS)],
            ),
        }
        for place, name in enumerate(names)
    ]


def _hem_yarn(out: Outcome[WarpPlan]) -> str | None:
    return letter(len(_colors(out.case))) if fine_hems(out.case) else None


def _pieces(out: Outcome[WarpPlan]) -> list[dict[str, str]]:
    """The pieces one by one, 12 at most."""
    found = []
    for piece in out.case.pieces:
        for number in range(1, piece.many + 1):
            name = f"{piece.name[:13]} {number}" if piece.many > 1 else piece.name[:16]
            found.append(
                {
                    "name": name,
                    "structure": "plain",
                    "picks": str(piece.picks_with_hems),
                    "weft": _letter(out.case, piece.color),
                }
            )
    return found[:MOST_PIECES]


def _warp(out: Outcome[WarpPlan]) -> str | None:
    """The order of the warp; one that is too long to be written stays behind."""
    case = out.case
    text = (
        _letter(case, case.warp_color)
        if case.warp_colors == ONE
        else ", ".join(f"{stripe.ends} {_letter(case, stripe.color)}" for stripe in case.stripes)
    )
    return text if len(text) <= LONGEST else None


CARRY = (
    Carry(
        "cloth-picture",
        "See the cloth",
        {
            "yarns": _yarns,
            "pieces": _pieces,
            "ends": WarpPlan.ends_across,
            "warp": _warp,
            "sett": WarpPlan.sett,
            "beat": WarpPlan.picks,
            "draw_in": WarpPlan.draw_in,
            "shrink_width": WarpPlan.width_shrink,
            "shrink_length": WarpPlan.length_shrink,
            "hem": WarpPlan.picks_in_hem,
            "hem_yarn": _hem_yarn,
            "hem_beat": WarpPlan.hem_picks,
        },
    ),
    Carry(
        "weft-left",
        "What does a leftover ball weave?",
        {
            "yarn": WarpPlan.weft_count,
            "width": WarpPlan.heddle_width,
            "take_up": WarpPlan.weft_take_up,
            "beat": WarpPlan.picks,
            "shrink": WarpPlan.length_shrink,
            "pieces": WarpPlan.pieces_in_all,
            "piece_picks": WarpPlan.first_picks,
            "hem": WarpPlan.picks_in_hem,
        },
    ),
    Carry(
        "weave-pace",
        "How long will it take?",
        {
            "ends": WarpPlan.ends,
            "warp": WarpPlan.warp_length,
            "pieces": WarpPlan.pieces_in_all,
            "piece_picks": WarpPlan.first_picks,
        },
    ),
    Carry(
        "make-size",
        "Size before and after washing",
        {"length_percent": WarpPlan.length_shrink, "width_percent": WarpPlan.width_shrink},
    ),
)
