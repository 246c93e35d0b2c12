"""What the grade of a color asks: the test, what is looked at, and two colors or the eye."""

from __future__ import annotations

from ....core.asked import When
from ....core.card import CHOICE, COLOR, Between, Case, Input, Many, Option, Plain, Result
from ....core.color import Color
from ....core.table import read_table
from ....core.units import COUNT, NUMBER
from ...gray_scale import grade_words

CHANGE, STAINING = "change", "staining"
COLORS, EYE = "colors", "eye"
WASHING = "washing"
STEPS = read_table("wash", "gray-scale-steps").rows
TESTS = {WASHING: "a wash test", "dry rubbing": "a dry rub test", "wet rubbing": "a wet rub test"}


def _color(label: str, default: str, when: When, said: str = "") -> Input[Color]:
    return Input(COLOR, label, default=default, when=when, measure=said)


def _seen(column: str, when: When) -> Input[str]:
    return Input(
        CHOICE,
        "It looks like this",
        default="4",
        options=tuple(Option(grade_words(row["grade"]), row[column]) for row in STEPS),
        when=when,
    )


class Fastness(Case):
    """What a wash or rub test did to the piece, or to the white beside it: a grade."""

    test = Input[str](
        CHOICE,
        "After",
        default=WASHING,
        options=tuple(Option(test, words[0].upper() + words[1:]) for test, words in TESTS.items()),
    )
    times = Input[int](
        COUNT,
        "Done how many times",
        default="1",
        allowed=("1", "100"),
        usual=("1", "20"),
        measure="Washes, or rounds of ten rubs, before you looked.",
    )
    judged = Input[str](
        CHOICE,
        "You look at",
        default=STAINING,
        options=(
            Option(STAINING, "White cloth that was beside it"),
            Option(CHANGE, "The piece itself"),
        ),
    )
    by = Input[str](
        CHOICE,
        "You have",
        default=COLORS,
        options=(Option(COLORS, "Two colors, read the same way"), Option(EYE, "Your eyes")),
    )
    MEASURED, SEEN = {by: (COLORS,)}, {by: (EYE,)}
    OF_WHITE, OF_PIECE = {judged: (STAINING,)}, {judged: (CHANGE,)}
    white = _color(
        "White, unwashed", "lab(93 -1 2)", MEASURED | OF_WHITE, "Dry, in daylight, both at once."
    )
    stained = _color("White, after the test", "lab(87 -2 -2)", MEASURED | OF_WHITE)
    before = _color(
        "The piece, before",
        "lab(29.2 -0.8 -12.4)",
        MEASURED | OF_PIECE,
        "Dry, in daylight, both at once.",
    )
    after = _color("The piece, after", "lab(31 -0.8 -12)", MEASURED | OF_PIECE)
    stain_seen = _seen("see_staining", SEEN | OF_WHITE)
    change_seen = _seen("see_change", SEEN | OF_PIECE)

    color_before = Many(NUMBER, "{} before")
    color_after = Many(NUMBER, "{} after")
    lightness = Between[float](NUMBER, "Its part in lightness")
    redness = Between[float](NUMBER, "Its part from green to red")
    yellowness = Between[float](NUMBER, "Its part from blue to yellow")
    weighted = Between[float](NUMBER, "Weighted for staining")
    on_screen = Plain[tuple[str, str]]()

    grade = Result[float](NUMBER, "Grade, 5 is best", finest=(0.1,), floor=1.0)
    difference = Result[float](NUMBER, "CIELAB difference", finest=(0.1,), floor=0.0)
