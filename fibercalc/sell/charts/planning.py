"""Charts of planning: a release's steps, a date wheel to cut out, full skeins for a numbered set,
spares to make and to keep.
"""

from datetime import date
from math import cos, pi, sin

from ...core.answer import Picture, Table
from ...core.picture import INDIGO, INK, SOFT, Drawing
from ..calendar import WEEKS, Calendar
from ..last_days import Pace, Times, back_plan
from ..sets import skeins_cut_first, skeins_dyed_whole
from ..spares import made_for, spares_for

MONTHS = (
    ("Jan", 31),
    ("Feb", 28),
    ("Mar", 31),
    ("Apr", 30),
    ("May", 31),
    ("Jun", 30),
    ("Jul", 31),
    ("Aug", 31),
    ("Sep", 30),
    ("Oct", 31),
    ("Nov", 30),
    ("Dec", 31),
)
YEAR = 365
PER_SKEIN = 5
SURE = 0.95
START = date(2027, 3, 5)  # the demo kit's, a Friday; no closed days
PLAN = back_plan(START, Times(7, 14, 2, 2, 4, 1), Pace(7, 14, 35), Calendar(WEEKS["mon-fri"]))
WHEEL = (
    ("in buyers’ hands", PLAN.in_hand),
    ("post at home", PLAN.post_home),
    ("post abroad", PLAN.post_abroad),
    ("release", PLAN.release),
    ("begin to label", PLAN.label_from),
    ("begin to dye", PLAN.dye_from),
    ("base is here", PLAN.arrive),
    ("order base", PLAN.order),
)
SHORT = ("in hand", "post home", "post abroad", "release", "label", "dye", "base here", "order")
STEPS = (
    (
        "Plan",
        "What to sell, how many; the price of each; what is short",
        "release plan, count to dye",
    ),
    ("Order", "Base, dye, boxes, labels; mill lots asked for", "what to order"),
    ("Weigh in", "Each lot of base weighed and reeled once; damp or dry", "true weight"),
    ("Dye", "One lot number a pot; recipe, date, jars written down", "batch sheet"),
    ("Rinse, dry", "Bath and rub tested; weighed when rested", "bleed check, drying"),
    ("Wind, label", "First of each weighed; label from what was weighed", "label"),
    ("Count by lot", "Seconds out; kits first, each color of one lot", "parcels"),
    ("Pictures, list", "Daylight; lot, put-up, care, price, post", "–"),
    ("Release", "What was offered, what sold, when it sold out", "count to dye"),
    ("Pack", "Lots on each kit’s card; first parcel weighed", "parcels"),
    ("Post", "Abroad first; spares kept back", "back-plan"),
    ("After", "Claims, spares sold, leftovers to bargain bags, notes", "–"),
)


def release_steps() -> list[Table]:
    """A release from plan to parcel, with boxes to tick. Source: common practice."""
    return [
        Table(
            "A release, step by step",
            ("Step", "What", "Card", "Done"),
            tuple((*row, "☐") for row in STEPS),
            "Common practice.",
            ("common-practice",),
        )
    ]


def date_wheel() -> list[Picture | Table]:
    """Two discs that turn on each other: the year outside, the steps before a start inside; and
    the same as a table. Source: arithmetic.
    """
    days = [(name, (START - day).days) for name, day in WHEEL]
    rows = tuple(
        (name[0].upper() + name[1:], str(count), f"{count / 7:.1f}".removesuffix(".0"))
        for name, count in days
    )
    note = (
        "Counted from a Friday, five days worked, none closed; post at its slowest, 7 days at home"
        " and 14 abroad; supplier 5 weeks; 4 dye days. Computed by the chapter’s own plan."
    )
    return [
        _year(),
        _steps(days),
        Table(
            "Days before the start",
            ("Step", "Days", "Weeks"),
            rows,
            note,
            ("arithmetic", "common-practice"),
        ),
    ]


def _place(day: float, radius: float, middle: tuple[float, float]) -> tuple[float, float]:
    """Where a day of the year stands on a circle; the first day at the top, the year clockwise."""
    angle = 2 * pi * day / YEAR - pi / 2
    return middle[0] + radius * cos(angle), middle[1] + radius * sin(angle)


def _year() -> Picture:
    middle, outer, inner = (180.0, 180.0), 174.0, 128.0
    drawing = Drawing(362)
    drawing.circle(*middle, outer, stroke=INDIGO, width=1.4)
    drawing.circle(*middle, inner, stroke=SOFT, width=0.8)
    drawing.circle(*middle, 2, fill=INK)
    weeks = [
        [_place(day, inner, middle), _place(day, inner + 7, middle)] for day in range(0, YEAR, 7)
    ]
    drawing.strokes(weeks, stroke=SOFT, width=0.7)
    drawing.strokes(
        [[_place(day, inner, middle), _place(day, inner + 3.5, middle)] for day in range(YEAR)],
        stroke=SOFT,
        width=0.4,
    )
    first = 0
    for name, length in MONTHS:
        drawing.strokes(
            [[_place(first, inner, middle), _place(first, outer, middle)]], stroke=INDIGO, width=1.2
        )
        x, y = _place(first + length / 2, (outer + inner) / 2 + 4, middle)
        drawing.text(x, y + 5, name, anchor="middle", bold=True)
        first += length
    drawing.text(180, 150, "the year", anchor="middle", fill=SOFT, size=13)
    drawing.text(180, 205, "long ticks: weeks; short: days", anchor="middle", fill=SOFT, size=12)
    return drawing.picture(
        "Date wheel, outer disc",
        "A disc of the year, clockwise from January at the top: 12 months, a long tick every 7 days"
        " and a short one for each of 365 days.",
    )


def _steps(days: list[tuple[str, int]]) -> Picture:
    middle, radius = (180.0, 136.0), 128.0
    drawing = Drawing(272)
    drawing.circle(*middle, radius, stroke=INDIGO, width=1.4)
    drawing.circle(*middle, 2, fill=INK)
    drawing.path(
        [
            _place(-3, radius - 14, middle),
            _place(3, radius - 14, middle),
            _place(0, radius, middle),
        ],
        fill=INK,
        closed=True,
    )
    drawing.text(184, 40, "start", bold=True, size=13)
    drawing.strokes(
        [
            [_place(-day, radius, middle), _place(-day, radius - (10 if day % 7 else 16), middle)]
            for _, day in days
        ],
        stroke=INDIGO,
        width=1.6,
    )
    for number, (_, day) in enumerate(days, 1):
        x, y = _place(-day, radius - (26 if number % 2 else 40), middle)
        drawing.text(x, y + 4, str(number), anchor="middle", size=12, bold=True)
    for number, ((_, day), words) in enumerate(zip(days, SHORT), 1):
        drawing.text(194, 68 + 16 * number, f"{number} {words} {day}", size=12)
    return drawing.picture(
        "Date wheel, inner disc",
        "A smaller disc to pin on the first. Turn its arrow to the day of the start; its marks then"
        " stand at the last days, so many days before: "
        + "; ".join(f"{name} {day}" for name, day in days)
        + ".",
    )


def set_skeins() -> list[Table]:
    """Full skeins for a numbered set at five small ones from a skein: cut first, and dyed whole.
    Source: arithmetic.
    """
    days = (6, 7, 10, 12, 24, 31)
    rows = tuple(
        (
            str(sets),
            *(
                f"{skeins_cut_first(count, sets, PER_SKEIN)} /"
                f" {skeins_dyed_whole(count, sets, PER_SKEIN)}"
                for count in days
            ),
        )
        for sets in (5, 10, 12, 15, 20, 22, 25, 26, 30, 40, 50)
    )
    return [
        Table(
            "Full skeins for a set: cut first / dyed whole",
            ("Sets, with spares", *(f"{count} days" for count in days)),
            rows,
            f"At {PER_SKEIN} small skeins from a full one. Dyed whole is the same where the sets"
            f" divide by {PER_SKEIN}. Computed here.",
            ("arithmetic",),
        )
    ]


def spares_chart() -> list[Table]:
    """Skeins to dye for so many good ones, and spares to keep for lost parcels. Source:
    definition of the binomial distribution.
    """
    shares, counts = (1, 2, 3, 5, 8, 10), (4, 8, 12, 16, 20, 24, 30, 40, 60, 80, 100)
    note = (
        "Enough in 95 of 100 cases, each going wrong by itself. A whole pot that goes wrong is not"
        " in this. Computed here."
    )
    return [
        Table(
            "To dye, for so many good ones",
            ("Good ones", *(f"{share} % seconds" for share in shares)),
            tuple(
                (str(count), *(str(made_for(count, share / 100, SURE)) for share in shares))
                for count in counts
            ),
            note,
            ("arithmetic",),
        ),
        Table(
            "Spares to keep, for so many parcels",
            ("Parcels", *(f"{share} % lost" for share in shares)),
            tuple(
                (str(count), *(str(spares_for(count, share / 100, SURE)) for share in shares))
                for count in counts
            ),
            note,
            ("arithmetic",),
        ),
    ]
