"""What a warp plan gives to the next cards, so that nothing is typed twice. Each asks the outcome of its card.

A plan names its colors and knows no screen colors: those here are a first guess from the name.
"""

from ...wash.shrink import size_before
from ..draft.order import letter

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
ONE, OTHER = "one", "other"


def plan_colors(r) -> list[str]:
    """The colors that a plan names, warp first, each once."""
    given = r.given
    warp = (
        [given["warp_color"]]
        if given["warp_colors"] == ONE
        else [row.color for row in given["stripes"]]
    )
    return list(dict.fromkeys([*warp, *(row.color for row in given["pieces"])]))[: MOST_YARNS - 1]


def _fine_hems(r) -> bool:
    return "in_hem" in r.kept


def plan_yarns(r) -> list[dict[str, str]]:
    """The yarns of a cloth picture; a finer yarn for the hems comes last."""
    names = plan_colors(r) + [HEM_YARN] * _fine_hems(r)
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


def _letter(r, color: str) -> str:
    names = plan_colors(r)
    return letter(names.index(color)) if color in names else "A"


def plan_hem(r) -> str:
    """Picks of one hem, as the plan weaves it."""
    given = r.given
    return (
        str(r.kept["in_hem"])
        if _fine_hems(r)
        else (
            str(round(size_before(given["hem"], given["length_shrink"]) * given["picks"]))
            if given["hem"]
            else "0"
        )
    )


def plan_hem_yarn(r) -> str | None:
    return letter(len(plan_colors(r))) if _fine_hems(r) else None


def _picks(r) -> list[int]:
    """Picks of each kind of piece, hems with it."""
    return [each + 2 * r.kept.get("in_hem", 0) for each in r.kept["each_picks"]]


def plan_pieces(r) -> list[dict[str, str]]:
    """The pieces one by one, 12 at most."""
    found = []
    for row, picks in zip(r.given["pieces"], _picks(r)):
        for number in range(1, int(row.many) + 1):
            name = f"{row.name[:13]} {number}" if row.many > 1 else row.name[:16]
            found.append(
                {
                    "name": name,
                    "structure": "plain",
                    "picks": str(picks),
                    "weft": _letter(r, row.color),
                }
            )
    return found[:MOST_PIECES]


def plan_warp(r) -> str | None:
    """The order of the warp; one that is too long to be written stays behind."""
    given = r.given
    text = (
        _letter(r, given["warp_color"])
        if given["warp_colors"] == ONE
        else ", ".join(f"{row.ends} {_letter(r, row.color)}" for row in given["stripes"])
    )
    return text if len(text) <= LONGEST else None


def plan_ends(r) -> str:
    """The ends that take width: those doubled into the last holes act as one with their neighbor."""
    return str(int(r.value("ends") - r.given["edge_ends"]))


def plan_count(r) -> str:
    return str(sum(int(row.many) for row in r.given["pieces"]))


def plan_piece_picks(r) -> str:
    return str(_picks(r)[0])


def plan_yarn(r) -> str:
    """The count of the weft."""
    given = r.given
    mass, length = (
        (given["weft_mass"], given["weft_length"])
        if given["weft_from"] == OTHER
        else (given["skein_mass"], given["skein_length"])
    )
    return f"{1000 * mass / length:.6g}tex"
