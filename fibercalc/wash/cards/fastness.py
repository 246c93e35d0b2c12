"""The grade of a color after a wash or rub test: change of the piece, or staining of the white beside it."""

from ...core.answer import Table
from ...core.card import (
    CHOICE,
    COLOR,
    STANDARD,
    Basis,
    Card,
    Carry,
    Caution,
    Input,
    Option,
    Result,
    Save,
)
from ...core.table import read_table
from ...core.units import COUNT, NUMBER
from ...sources import CIE_15, COMMON_PRACTICE, ISO_105_A02, ISO_105_A03, ISO_105_A04, ISO_105_A05
from ..gray_scale import (
    change_grade,
    color_difference,
    grade_words,
    staining_difference,
    staining_grade,
)
from ..pictures.gray_pairs import gray_pairs

CHANGE, STAINING = "change", "staining"
COLORS, EYE = "colors", "eye"
STEPS = read_table("wash", "gray-scale-steps").rows
PAIR_ERROR = 2.0  # CIELAB, in the difference of two colors in one photo beside a gray card; an instrument errs less (common practice)
EYE_ERROR = (
    1.0  # grade either way, by a described step without a gray scale in the hand (common practice)
)
TESTS = {"washing": "a wash test", "dry rubbing": "a dry rub test", "wet rubbing": "a wet rub test"}


def answer(w, test, times, judged, by, white, stained, before, after, stain_seen, change_seen):
    found = {"difference": None, "colors": None}
    if by == EYE:
        seen = stain_seen if judged == STAINING else change_seen
        grade = w.looked_up(
            "grade",
            "wash",
            "gray-scale-steps",
            "step",
            _key(seen),
            "grade",
            NUMBER,
            label="Grade of the step that looks like it",
        )
        w.band("grade", min(grade + EYE_ERROR, 5.0), max(grade - EYE_ERROR, 1.0))
        return found | {"grade": grade}
    one, other = (white, stained) if judged == STAINING else (before, after)
    difference = _read_off(
        w, "difference", "cielab_of_the_two", color_difference(one, other), "CIELAB difference"
    )
    ends = (max(difference - PAIR_ERROR, 0.0), difference + PAIR_ERROR)
    w.band("difference", *ends)
    if judged == CHANGE:
        text = "5 - difference / 1.7" if difference <= 3.4 else "5 - ln(difference / 0.85) / ln(2)"
        value = change_grade(difference)
        w.band("grade", *(change_grade(end) for end in ends))
    else:
        lightness = _read_off(
            w,
            "lightness",
            "lightness_of_the_two",
            one.lightness - other.lightness,
            "Its part in lightness",
        )
        weighted = w.step(
            "weighted",
            "difference - 0.4 * sqrt(max(difference ** 2 - lightness ** 2, 0))",
            staining_difference(difference, lightness),
            NUMBER,
            label="Weighted for staining",
        )
        value = staining_grade(weighted)
        share = weighted / difference if difference else 1.0
        w.band("grade", *(staining_grade(share * end) for end in ends))
        text = "5 - 0.23 * weighted" if value > 4 else "6.1 - 1.45 * ln(weighted)"
    grade = w.step("grade", f"max({text}, 1)", value, NUMBER, label="Grade, with decimals")
    return found | {"grade": grade, "difference": difference, "colors": (one.hex, other.hex)}


def _read_off(w, name, says, value, label):
    """What two colors give by themselves, as a step: their numbers are no inputs that a formula could name."""

    def of_the_two():
        return value

    of_the_two.__name__ = says
    return w.solved(name, f"{says}() - {name}", value, NUMBER, label=label, using=(of_the_two,))


def _key(step):
    """A row's key as the table has it: whole steps are numbers there."""
    return float(step) if "-" not in step else step


def _step(grade):
    """The row of the nearest half grade."""
    return next(row for row in STEPS if row["grade"] == _half(grade))


def _half(grade):
    words = grade_words(grade)
    return float(words) if "-" not in words else (float(words[0]) + float(words[2])) / 2


def _span(r):
    """The grades that the answer leaves open, best last: "3 to 4"."""
    low, high = (grade_words(min(max(end, 1.0), 5.0)) for end in (r.low("grade"), r.high("grade")))
    return low if low == high else f"{low} to {high}"


def say(r):
    kind = "Staining" if r.given["judged"] == STAINING else "Change of color"
    row, span = _step(r.value("grade")), _span(r)
    near = f", from {span}" if span != grade_words(r.value("grade")) else ""
    return (
        (
            f"{kind} about grade {grade_words(r.value('grade'))}{near}, in"
            f" {TESTS[r.given['test']]}{_often(r.given['times'])}."
        ),
        f"5 is best, 1 worst. For who buys it: {row['buyer'][0].lower()}{row['buyer'][1:]}.",
    )


def _often(times):
    return "" if times == 1 else f" done {times} times"


def notes(r):
    said = []
    if r.given["by"] == EYE:
        said.append(
            "By a described step, without a gray scale in the hand, the eye is taken to be a whole"
            " grade either way."
        )
    else:
        said.append(
            f"The difference is taken as right to ± {PAIR_ERROR:g}: both colors in one photo beside"
            " a gray card. An instrument errs less, colors picked on a screen far more."
        )
        if r.given["judged"] == CHANGE:
            said.append(
                "Approximate where the hue or its strength changed: the standard weighs those less,"
                " and its weights were not trusted to memory."
            )
    if r.given["test"] == "washing" and r.given["times"] == 1:
        said.append(
            "One wash shows the loose dye of the first one; the standard’s longer test stands for"
            " five."
        )
    said.append(
        "Say what was tested, how and how often; another fiber beside it, hotter water or more"
        " rubbing is another test. No grade covers all of them."
    )
    return said


def steps(r):
    staining = r.given["judged"] == STAINING
    shown = [row for row in STEPS if row["grade"] == int(row["grade"])]
    return Table(
        "What the grades look like",
        ("Grade", "Seen", "For who buys it"),
        tuple(
            (
                grade_words(row["grade"]),
                row["see_staining" if staining else "see_change"],
                row["buyer"],
            )
            for row in shown
        ),
        "Our own words; half grades lie between.",
    )


def picture(r):
    staining = r.given["judged"] == STAINING
    pairs = [
        (grade_words(row["grade"]), row["staining" if staining else "change"]) for row in STEPS
    ]
    low, high = (min(max(end, 1.0), 5.0) for end in (r.low("grade"), r.high("grade")))
    return gray_pairs(pairs, low, high, staining, r.kept["colors"])


def _on_the_label(r):
    """A wash test's staining, as the label asks for it; the side of the range that promises less."""
    if r.given["test"] != "washing" or r.given["judged"] != STAINING:
        return None
    return "slight" if r.low("grade") >= 3.75 else "stains"


def _seen(name, column, judged, default):
    return Input(
        CHOICE,
        "It looks like this",
        default=default,
        options=tuple(Option(grade_words(row["grade"]), row[column]) for row in STEPS),
        when={"by": (EYE,), "judged": (judged,)},
        name=name,
    )


def _color(name, label, default, judged, said=""):
    return Input(
        COLOR,
        label,
        default=default,
        when={"by": (COLORS,), "judged": (judged,)},
        measure=said,
        name=name,
    )


CARD = Card(
    id="fastness",
    chapter="wash",
    place=40,
    question="How well does the color hold?",
    inputs=(
        Input(
            CHOICE,
            "After",
            default="washing",
            options=tuple(
                Option(test, words[0].upper() + words[1:]) for test, words in TESTS.items()
            ),
            name="test",
        ),
        Input(
            COUNT,
            "Done how many times",
            default="1",
            allowed=("1", "100"),
            usual=("1", "20"),
            measure="Washes, or rounds of ten rubs, before you looked.",
            name="times",
        ),
        Input(
            CHOICE,
            "You look at",
            default=STAINING,
            options=(
                Option(STAINING, "White cloth that was beside it"),
                Option(CHANGE, "The piece itself"),
            ),
            name="judged",
        ),
        Input(
            CHOICE,
            "You have",
            default=COLORS,
            options=(Option(COLORS, "Two colors, read the same way"), Option(EYE, "Your eyes")),
            name="by",
        ),
        _color(
            "white", "White, unwashed", "lab(93 -1 2)", STAINING, "Dry, in daylight, both at once."
        ),
        _color("stained", "White, after the test", "lab(87 -2 -2)", STAINING),
        _color(
            "before",
            "The piece, before",
            "lab(29.2 -0.8 -12.4)",
            CHANGE,
            "Dry, in daylight, both at once.",
        ),
        _color("after", "The piece, after", "lab(31 -0.8 -12)", CHANGE),
        _seen("stain_seen", "see_staining", STAINING, "4"),
        _seen("change_seen", "see_change", CHANGE, "4"),
    ),
    results=(
        Result(NUMBER, "Grade, 5 is best", finest=(0.1,), floor=1.0, name="grade"),
        Result(NUMBER, "CIELAB difference", finest=(0.1,), floor=0.0, name="difference"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(steps,),
    basis=Basis(
        STANDARD,
        "Gray scales of ISO 105: steps for change were read (A02); those for staining (A03) and the"
        " formulas (A04, A05) are from memory and agree with one another. A grade at home is not a"
        " laboratory’s.",
    ),
    sources=(ISO_105_A02, ISO_105_A03, ISO_105_A04, ISO_105_A05, CIE_15, COMMON_PRACTICE),
    cautions=(
        Caution(
            "No color is fast to everything.",
            "Say what was tested and what was seen; wash new pieces apart.",
        ),
    ),
    carry=(
        Carry("shedding", "Is it dye, or loose fiber?", {}),
        Carry("care-label", "What goes on the label?", {"stains": _on_the_label}),
    ),
    saves=(
        Save(
            "dye-lot",
            "A dye lot: its rub test",
            {"rub": "grade"},
            when={"test": ("dry rubbing", "wet rubbing")},
        ),
    ),
)
