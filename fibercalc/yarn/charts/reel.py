"""Charts for the reel and the scale: lengths by turns, turns for small skeins, weight at other
dampness.
"""

from ...core.answer import Table
from ...core.number import write_number
from ..moisture import mass_at_other_regain
from ..putup import printed_grams
from ..reel import mass_of_turns, whole_turns_for_length
from ..skein import length_by_turns, relaxed_circumference

REELS = (1.2, 1.5, 1.8)
TURNS = (10, 20, 25, 50, 54, 56, 75, 100, 150, 200, 250, 280, 300)
STRETCHES = (0, 1, 2, 3)
PUT_UPS = (800, 600, 420, 400, 365, 300, 230, 200, 170, 120)  # m/100 g
REGAINS = (8, 10, 12, 13, 14, 15, 16, 17, 18, 20)


def reel_lengths() -> list[Table]:
    """Length in so many turns of three reels, and what stretch takes away.

    Source: arithmetic; usual stretch of 1 to 3 % from memory (trade-memory).
    """
    lengths = tuple(
        (f"{turns}", *(write_number(length_by_turns(turns, reel), 1) for reel in REELS))
        for turns in TURNS
    )
    stretched = tuple(
        (
            f"{reel:.2f} m",
            *(f"{relaxed_circumference(reel, stretch):.3f} m" for stretch in STRETCHES),
        )
        for reel in REELS
    )
    return [
        Table(
            "Meters by turns of the reel",
            ("Turns", *(f"{reel:.2f} m reel" for reel in REELS)),
            lengths,
            "Circumference as it lies under the yarn, nothing taken off for stretch. Computed"
            " here.",
            ("arithmetic",),
        ),
        Table(
            "One turn once it has rested",
            ("On the reel", *(f"{stretch} % stretch" for stretch in STRETCHES)),
            stretched,
            "Circumference / (1 + stretch). Usual stretch on a reel is 1 to 3 %†. † from memory,"
            " unverified.",
            ("arithmetic", "trade-memory"),
        ),
    ]


def mini_skeins() -> list[Table]:
    """Whole turns of a 1.50 m reel for small skeins of common yarns, and what one turn weighs.

    Source: arithmetic.
    """
    rows = []
    for meters in PUT_UPS:
        tex = 1e5 / meters
        cells = []
        for grams in (10, 20, 25):
            turns = whole_turns_for_length(grams * meters / 100, REELS[1])
            cells.append(f"{turns} ({printed_grams(mass_of_turns(turns, REELS[1], tex))} g)")
        rows.append((f"{meters}", *cells, f"{mass_of_turns(1, REELS[1], tex):.2f} g"))
    return [
        Table(
            "Turns of a 1.50 m reel for small skeins",
            ("m/100 g", "10 g", "20 g", "25 g", "One turn weighs"),
            tuple(rows),
            "Whole turns, rounded up, so no skein is short; behind them the grams that may be"
            " printed. Nothing is taken off for stretch. Computed here.",
            ("arithmetic",),
        )
    ]


def regain_weights() -> list[Table]:
    """What 100 g weighs at another dampness.

    Source: definition of regain (astm-d1909-extract).
    """
    wanted = (13, 16, 17, 18.25)
    rows = tuple(
        (f"{now}", *(write_number(mass_at_other_regain(100, now, other), 1) for other in wanted))
        for now in REGAINS
    )
    return [
        Table(
            "100 g as weighed, taken to another regain, g",
            ("Regain when weighed, %", *(f"to {other:g} %" for other in wanted)),
            rows,
            "Weight x (100 + wanted) / (100 + now). Computed here. 13 % is a 75/25 wool and nylon"
            " yarn in ordinary air†; 16, 17 and 18.25 % are three of the figures in print for wool."
            " † from memory, unverified.",
            ("astm-d1909-extract", "arithmetic"),
        )
    ]
