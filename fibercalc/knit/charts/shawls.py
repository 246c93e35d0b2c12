"""Charts of shawl shapes: outline, way of the rows, how the stitches grow, and the row at which
half the yarn is used."""

from collections.abc import Callable
from dataclasses import dataclass
from math import cos, dist, pi, sin

from ...core.answer import Picture, Table
from ...core.marks import MARKS, meaning
from ...core.number import write_number
from ...core.picture import INDIGO_WASH, INK, SOFT, Drawing
from ...core.table import read_table
from ..left import row_at_share, share_used

ROWS = 100
SHARES = (0.25, 0.5, 0.75)
TALL, ACROSS = 168, 76  # one panel, and half the width of the shape in it
LAST_ROWS = 10
DOUBLED_AT = (3, 6, 12, 24, 48)  # rounds; the next doubling would be at 96


@dataclass(frozen=True)
class Shape:
    """One shape: its names, its first row and growth, and the place of its rows in the picture.

    row gives the points of the row at a share of all rows (0 to 1), within 76 either side
    of the middle and below 0.
    """

    name: str
    worked: str
    first: float
    grow: float
    said: str
    status: str
    row: Callable[[float], list[tuple[float, float]]]


def shapes() -> tuple[Shape, ...]:
    """The six shapes. A flat circle grows by 2 pi rows' height in stitches' width, which
    the loop constants give."""
    constants = read_table("wash", "munden-constants").row("state", "wet")
    around = 2 * pi * constants["Kw"] / constants["Kc"]
    return (
        Shape(
            "Triangle, top center",
            "from the middle of the long edge, increasing at both ends and beside the spine",
            7,
            2.0,
            "4 in 2 rows",
            "practice",
            lambda f: [(-ACROSS * f, 0), (0, ACROSS * f), (ACROSS * f, 0)],
        ),
        Shape(
            "Triangle, one corner",
            "from the lower tip, increasing at both ends, bound off along the long edge",
            3,
            1.0,
            "2 in 2 rows",
            "practice",
            lambda f: [(-ACROSS * f, ACROSS * (1 - f)), (ACROSS * f, ACROSS * (1 - f))],
        ),
        Shape(
            "Wing",
            "from one tip, increasing at one end only",
            3,
            0.5,
            "1 in 2 rows",
            "practice",
            lambda f: [(ACROSS * (2 * f - 1), 0), (ACROSS * (2 * f - 1), 64 * f)],
        ),
        Shape(
            "Crescent",
            "from the neck, increasing much at both ends so that they run out into points",
            9,
            3.0,
            "6 in 2 rows",
            "practice",
            _crescent_row,
        ),
        Shape(
            "Half circle",
            "from the middle of the straight edge, increasing evenly",
            5,
            around / 2,
            f"{around / 2:.1f} a row",
            "memory",
            lambda f: [
                (-ACROSS * f * cos(pi * at / 24), ACROSS * f * sin(pi * at / 24))
                for at in range(25)
            ],
        ),
        Shape(
            "Circle",
            "from the center in rounds, increasing evenly",
            8,
            around,
            f"{around:.1f} a round",
            "memory",
            lambda f: [
                (-42 * f * cos(2 * pi * at / 36), 42 + 42 * f * sin(2 * pi * at / 36))
                for at in range(37)
            ],
        ),
    )


def shawl_shapes() -> list[Picture | Table]:
    """Six shapes with the row at which half the yarn is used, and how the
    yarn goes as a shawl grows.

    Source: arithmetic; increases are common practice; a flat circle's from the loop constants
    (munden-1959, from memory).
    """
    works = [(one.name, one.worked, one.said + MARKS[one.status]) for one in shapes()]
    works += [(name, worked, said) for name, worked, said, _ in OTHERS]
    uses = [(one.name, *(f"{_row(one, share):.0f}" for share in SHARES)) for one in shapes()]
    uses += [(name, *(f"{row_at(share):.0f}" for share in SHARES)) for name, *_, row_at in OTHERS]
    return [
        _panels(),
        Table(
            "How each shawl grows",
            ("Shape", "How it is worked", "Stitches gained"),
            tuple(works),
            "A flat circle gains 2π x Kw / Kc stitches a round, half a circle half of that. "
            + meaning("memory", "practice"),
            ("common-practice", "munden-1959"),
        ),
        Table(
            "How it uses its yarn: of 100 rows, the row at which",
            ("Shape", "a quarter is used", "half is used", "three quarters are used"),
            tuple(uses),
            "For plain rows of one structure, with no edging. From a point, half the yarn is used"
            " at rows / √2: 71 of 100, a little sooner when the first row is wide. Computed here.",
            ("arithmetic",),
        ),
    ]


def shawl_yarn() -> list[Table]:
    """Yarn used by each tenth of the rows, for anything that grows evenly from a point.

    Source: arithmetic (the sum of an even growth goes with the square).
    """
    rows = tuple(
        (
            f"{done} %",
            f"{100 * used:.0f} %",
            f"{100 * (used - share_used(done - LAST_ROWS, ROWS, 1, 2)):.0f} %",
            f"{100 - 100 * used:.0f} %",
        )
        for done in range(LAST_ROWS, ROWS + 1, LAST_ROWS)
        for used in (share_used(done, ROWS, 1, 2),)
    )
    return [
        Table(
            "Yarn used as a shawl grows from a point",
            ("Rows done", "Yarn used", "Of it in the last tenth of the rows", "Yarn still to come"),
            rows,
            "Share used = (rows done / all rows)². Half the rows are a quarter of the yarn. Without"
            " edging and bind-off. Computed here.",
            ("arithmetic",),
        )
    ]


def _row(one: Shape, share: float) -> float:
    return row_at_share(share, ROWS, one.first, one.grow)


def _doubled_row(share: float) -> float:
    """The round, in 100, at which a share is used when the stitches double at 3, 6, 12 ... and the
    piece ends before the next doubling."""
    rounds = 2 * DOUBLED_AT[-1] - 1
    stitches: list[int] = [
        2 ** sum(number >= at for at in DOUBLED_AT) for number in range(1, rounds + 1)
    ]
    used, wanted = 0.0, share * sum(stitches)
    for number, each in enumerate(stitches):
        if used + each >= wanted:
            return ROWS * (number + (wanted - used) / each) / rounds
        used += each
    return ROWS


def _side_to_side_row(share: float) -> float:
    half = row_at_share(min(2 * share, 2 - 2 * share), ROWS / 2, 3, 0.5)
    return half if share <= 0.5 else ROWS - half


# Two more ways to grow, which have no picture: name, how it is worked, stitches gained, the row
# at which a share is used.
OTHERS = (
    (
        "Circle, doubled",
        "from the center, stitches doubled each time the rounds have doubled",
        "twice as many at 3, 6, 12, 24, 48§",
        _doubled_row,
    ),
    (
        "Triangle, side to side",
        "from one tip, wider to the middle, then narrower",
        "1 in 2 rows, then lost again§",
        _side_to_side_row,
    ),
)


def _crescent_row(f: float) -> list[tuple[float, float]]:
    places = [at / 12 - 1 for at in range(25)]
    return [(ACROSS * f * t, 14 * (f * t) ** 2 + 62 * f * (1 - t * t)) for t in places]


def _part(one: Shape, f: float) -> list[tuple[float, float]]:
    """The outline of what is knit when a share f of the rows is done: its last row, and the two
    edges that run there; a round is its own edge."""
    if dist(one.row(f)[0], one.row(f)[-1]) < 1e-6:
        return one.row(f)
    steps = [f * at / 12 for at in range(13)]
    return (
        [one.row(step)[0] for step in steps]
        + one.row(f)
        + [one.row(step)[-1] for step in reversed(steps)]
    )


def _panels() -> Picture:
    drawing = Drawing(3 * TALL)
    said = []
    for place, one in enumerate(shapes()):
        left, top = 90 + 180 * (place % 2), TALL * (place // 2)
        half = _row(one, 0.5)

        def on_sheet(
            points: list[tuple[float, float]], left: float = left, top: float = top
        ) -> list[tuple[float, float]]:
            return [(left + x, top + 30 + y) for x, y in points]

        drawing.text(left, top + 18, one.name, anchor="middle", bold=True)
        drawing.path(on_sheet(_part(one, half / ROWS)), fill=INDIGO_WASH, stroke="none")
        for share in (0.25, 0.5, 0.75):
            drawing.path(on_sheet(one.row(share)), stroke=SOFT, width=0.8, dash="2 3")
        drawing.path(on_sheet(_part(one, 1.0)), width=1.4)
        drawing.path(on_sheet(one.row(half / ROWS)), stroke=INK, width=3)
        drawing.circle(*on_sheet([one.row(0)[0]])[0], 4, fill=INK)
        drawing.text(left, top + 134, f"+ {one.said}", anchor="middle")
        drawing.text(
            left, top + 152, f"half at row {write_number(half, 0)} of {ROWS}", anchor="middle"
        )
        said.append(
            f"{one.name}, {one.worked}, gains {one.said}, half the yarn used at row {half:.0f} of"
            f" {ROWS}"
        )
    return drawing.picture(
        "Shawl shapes: dot, the start; dashed, a quarter, half and three quarters of the rows;"
        " thick, half the yarn is used",
        "; ".join(said) + ".",
    )
