"""Color left in the bath and in the rinses: how much, how many rinses still, and the likely cause; loose fiber told apart from dye."""

from ...core.answer import Table
from ...core.card import (
    BENCH_RULE,
    CHOICE,
    Basis,
    Card,
    Carry,
    Caution,
    Input,
    Option,
    Result,
    Rows,
    row_of,
    Save,
)
from ...core.problem import OutOfRange, Refused
from ...core.units import MASS, NUMBER, PERCENT, VOLUME
from ...sources import ARITHMETIC, COMMON_PRACTICE, DYEING_TEXTBOOK
from ..bleed import (
    bleed_causes,
    bleed_symptoms,
    carry_over_of_water,
    dye_left,
    exhaustion,
    fit_carry_over,
    ladder_range,
    left_from_ladder,
    likely_causes,
    lint_or_dye,
    rinses_needed,
    whole_rinses,
    yarn_gives_off,
)
from ..pictures.rinses import rinses_picture

READING_ERROR = 40.0  # %: one match with a ladder of jars, half a jar either way
SYMPTOMS = {row["symptom"]: row["question"] for row in bleed_symptoms().rows}
CAUSES = {row["cause"]: row for row in bleed_causes().rows}
WORDS = {
    "lint": "Loose fiber, not dye.",
    "dye": "Dye comes off.",
    "both": "Dye and loose fiber both come off.",
    "neither": "Neither fiber nor dye on the cloth.",
    "not known": "",
}


def answer(
    w,
    jar,
    mass,
    depth,
    rinsed,
    rinses,
    wanted,
    held,
    rinse,
    bath_colored,
    rinses_fall,
    bleeds_again,
    cloth_stain,
    fibers_seen,
    high_ph,
    over_held,
    short_hold,
    hard_water,
    other_fiber,
):
    signs = {name: value for name, value in locals().items() if name in SYMPTOMS}
    left = w.step(
        "left", "100 / 2 ** jar", left_from_ladder(jar), PERCENT, label="Color left in the bath"
    )
    w.band("left", *ladder_range(jar))
    gone = w.step("exhausted", "100 - left", exhaustion(left), PERCENT, label="Gone onto the fiber")
    w.band("exhausted", *(100 - end for end in ladder_range(jar)))
    grams = w.step(
        "grams",
        "mass * depth / 100 * left / 100",
        dye_left(mass, depth, left),
        MASS,
        label="Dye left in it",
    )
    w.band("grams", *(dye_left(mass, depth, end) for end in ladder_range(jar)))
    water = w.step(
        "by_water",
        "100 * held / (held + rinse)",
        carry_over_of_water(held, rinse),
        PERCENT,
        label="What a rinse would leave if only the water the yarn holds were colored",
    )
    found = {
        "left": left,
        "exhausted": gone,
        "grams": grams,
        "by_water": water,
        "share": None,
        "more": None,
        "fit": None,
        "gives_off": False,
        "signs": signs,
        "readings": (),
    }
    if rinsed == "yes" and len(rinses) < 2:
        raise Refused(
            "Rinses: give the color of at least two, or say that none were compared.", "rinsed"
        )
    if rinsed == "yes":
        readings = [(number, left_from_ladder(row.jar)) for number, row in enumerate(rinses, 1)]
        fit = fit_carry_over(readings, READING_ERROR)
        found |= {"fit": fit, "readings": readings, "gives_off": yarn_gives_off(fit.low, water)}
        found["share"] = w.step(
            "share",
            _slope_text(len(rinses)),
            fit.share,
            PERCENT,
            label="What a rinse really leaves, fitted to your readings",
        )
        w.band("share", fit.low, fit.high)
        try:
            w.step(
                "last",
                f"100 / 2 ** mean(rinses.jar) * (share / 100) ** {(len(rinses) - 1) / 2:g}",
                fit.last,
                PERCENT,
                label="Color of the last rinse, on that line",
            )
            found["more"] = (
                w.step(
                    "more",
                    "ln(last / wanted) / ln(100 / share)",
                    rinses_needed(fit.last, wanted, fit.share),
                    NUMBER,
                    label="Rinses still to come",
                )
                if fit.last > wanted
                else 0.0
            )
        except OutOfRange:
            found["more"] = None
        if found["more"] is not None and fit.last > wanted:
            quick = rinses_needed(fit.last, wanted, max(min(fit.low, 99.9), 0.01))
            slow = rinses_needed(fit.last, wanted, min(fit.high, 99.0))
            w.band("more", min(quick, found["more"]), max(slow, found["more"]))
    return found


def _slope_text(count):
    """The least-squares slope of the jars over the rinses, written out: each next jar halves the color."""
    middle = (count + 1) / 2
    spread = sum((number - middle) ** 2 for number in range(1, count + 1))
    parts = [
        f"({number - middle:g}) * rinses[{number}].jar"
        for number in range(1, count + 1)
        if number != middle
    ]
    return f"100 * exp(-ln(2) * ({' + '.join(parts)}) / {spread:g})"


def say(r):
    causes = likely_causes(r.kept["signs"])
    first = (
        f"Likely: {_lower(CAUSES[causes[0][0]]['label'])}."
        if causes
        else f"About {r.text('left')} of the color is left in the bath."
    )
    parts = [f"The bath holds about {r.text('left')} of its color ({r.span('left')})."]
    if r.has("more"):
        count = whole_rinses(r.value("more"))
        parts.append(
            f"About {count} more {'rinse' if count == 1 else 'rinses'} at this pace."
            if count
            else "The last rinse is as pale as you want it."
        )
    elif r.given["rinsed"] == "yes":
        parts.append("The rinses do not get paler: rinsing alone will not end it.")
    return first, " ".join(parts)


def _lower(text):
    return text[0].lower() + text[1:]


def notes(r):
    said = []
    told = WORDS[lint_or_dye(r.kept["signs"]["fibers_seen"], r.kept["signs"]["cloth_stain"])]
    if told:
        said.append(f"By the damp white cloth: {_lower(told)}")
    if r.kept["gives_off"]:
        said.append(
            f"Each rinse leaves {r.text('share')} of the color where the water held by the yarn"
            f" explains {r.text('by_water')}: the yarn itself gives off dye."
        )
    causes = likely_causes(r.kept["signs"])
    if not causes:
        said.append(
            "Nothing you saw points at a cause yet. Answer what you can; “not known” is fine."
        )
    said.append("Never call it colorfast: say what was tested, and how.")
    return said


def causes(r):
    found = likely_causes(r.kept["signs"])
    return (
        Table(
            "Likely causes, the likeliest first",
            ("Cause", "What to try"),
            tuple((CAUSES[cause]["label"], CAUSES[cause]["try"]) for cause, _ in found),
            "Ordered by our own points for each sign; they are no odds. Change one thing at a"
            " time.",
        )
        if found
        else None
    )


def picture(r):
    return (
        rinses_picture(r.kept["readings"], r.kept["fit"], r.given["wanted"])
        if r.kept["fit"]
        else None
    )


ASKED = (Option("not known", "Not known"), Option("yes", "Yes"), Option("no", "No"))
EXAMPLE = {"bath_colored": "yes", "rinses_fall": "yes"}
RINSED = {"rinsed": ("yes",)}

CARD = Card(
    id="bleed-check",
    chapter="dye",
    place=90,
    tall_sheet=True,
    handles=("heat", "acid"),
    question="Why does color come off, and how many rinses still?",
    inputs=(
        Input(
            NUMBER,
            "The cooled bath matches jar",
            default="4",
            allowed=("0", "12"),
            usual=("1", "7"),
            measure=(
                "Jar 0 is the bath before the yarn; each next jar is half of the one before. Halves"
                " between two."
            ),
            name="jar",
        ),
        Input(
            MASS,
            "Yarn in it, dry",
            record="dye-lot.mass",
            default="400 g",
            allowed=("0.5 g", "50 kg"),
            usual=("20 g", "2 kg"),
            units=("g", "oz"),
            strict=True,
            name="mass",
        ),
        Input(
            PERCENT,
            "Depth of shade, all dyes",
            default="0.9 %",
            allowed=("0.001 %", "20 %"),
            usual=("0.1 %", "5 %"),
            strict=True,
            name="depth",
        ),
        Input(
            CHOICE,
            "Did you compare the rinses with the jars?",
            default="yes",
            options=(Option("yes", "Yes"), Option("no", "No")),
            name="rinsed",
        ),
        Rows(
            row_of((Input(NUMBER, "Jar", default="8", allowed=("0", "16"), name="jar"),)),
            "Rinses so far",
            "rinse",
            least=1,
            most=10,
            when=RINSED,
            measure="The jar that each rinse water matches.",
            default=({"jar": "5"}, {"jar": "8"}),
            name="rinses",
        ),
        Input(
            PERCENT,
            "Pale enough at, percent of the first bath",
            default="0.2 %",
            allowed=("0.005 %", "20 %"),
            usual=("0.05 %", "1 %"),
            when=RINSED,
            measure="Jar 9 is 0.2 %.",
            name="wanted",
        ),
        Input(
            VOLUME,
            "Water the squeezed yarn holds",
            default="600 mL",
            allowed=("1 mL", "100 L"),
            usual=("50 mL", "3 L"),
            units=("mL", "L"),
            name="held",
        ),
        Input(
            VOLUME,
            "Clean water of one rinse",
            default="6 L",
            allowed=("0.05 L", "500 L"),
            usual=("1 L", "20 L"),
            units=("L", "mL"),
            name="rinse",
        ),
        *(
            Input(
                CHOICE,
                question,
                default=EXAMPLE.get(symptom, "not known"),
                options=ASKED,
                name=symptom,
            )
            for symptom, question in SYMPTOMS.items()
        ),
    ),
    results=(
        Result(PERCENT, "Color left in the bath", finest=(0.1,), floor=0.0, name="left"),
        Result(PERCENT, "Gone onto the fiber", finest=(0.1,), floor=0.0, name="exhausted"),
        Result(MASS, "Dye left in it", units=("g",), finest=(0.01,), floor=0.0, name="grams"),
        Result(PERCENT, "What a rinse leaves, fitted", finest=(1,), floor=0.0, name="share"),
        Result(
            PERCENT,
            "What it would leave by its water alone",
            finest=(1,),
            floor=0.0,
            name="by_water",
        ),
        Result(
            NUMBER, "Rinses still to come", finest=(0.1,), rounding="up", floor=0.0, name="more"
        ),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(causes,),
    basis=Basis(
        BENCH_RULE,
        "A jar ladder halves the color each time; each rinse leaves the same share. Causes are"
        " ordered by our own points for what you saw.",
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE, DYEING_TEXTBOOK),
    cautions=(
        Caution(
            "Let the bath cool first.",
            "Look in a white cup, gloves on; more acid goes in with the yarn lifted out. The"
            " maker’s safety data sheet comes first.",
        ),
    ),
    carry=(
        Carry("bath-acid", "Is it sour enough?", {}),
        Carry("drain-check", "May this bath go down the drain?", {}),
    ),
    saves=(Save("dye-lot", "A dye lot: dye left in its bath", {"left": "left"}),),
)
