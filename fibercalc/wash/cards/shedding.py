"""Fluff or dye: what a white cloth shows, step by step, and what the scale says came off."""

from __future__ import annotations

from ...core.answer import Picture, Table
from ...core.arithmetic import total
from ...core.card import (
    BENCH_RULE,
    CHOICE,
    TEXT,
    Basis,
    Between,
    Card,
    Carry,
    Case,
    Caution,
    Input,
    Many,
    Option,
    Plain,
    Result,
)
from ...core.outcome import Outcome
from ...core.table import read_table
from ...core.units import MASS, NUMBER, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, REGAIN_CURVES
from ..lint import BOTH, DYE, LINT, UNKNOWN, dye_at_most, loss_percent, not_dye, what_comes_off
from ..pictures.loss import loss_bars

ANSWERS = {row["key"]: row for row in read_table("wash", "shedding-answers").rows}
# % of weight, what wool may take up or give off between a dry room and a damp one; the demo cellar
# is such a case.
MOISTURE = 2.5
STEPS = (  # what to do, and what it means when it is seen
    (
        "Press a damp white cloth on it for a minute; look for colored hairs",
        "Hairs: fiber comes off",
    ),
    ("Pick the hairs off; look at the cloth under them", "An even stain: dye comes off"),
    (
        "Soak it an hour in clear warm water, let the fluff settle, look at the water in a white"
        " cup",
        "Colored water: dye comes off",
    ),
)
SEEN = (Option("yes", "Yes"), Option("no", "No"), Option(UNKNOWN, "Not known yet"))


class Shedding(Case):
    """What a white cloth showed, and what the piece weighed before and after: what comes off."""

    fibers = Input[str](CHOICE, "Colored hairs on a damp white cloth?", default="yes", options=SEEN)
    stain = Input[str](CHOICE, "An even stain under them?", default="no", options=SEEN)
    water = Input[str](
        CHOICE,
        "Colored water after an hour’s soak?",
        default="no",
        options=SEEN,
        measure="Fluff settled, in a white cup.",
    )
    weighed = Input[str](
        CHOICE,
        "Weighed before and after a wash?",
        default="yes",
        options=(Option("yes", "Yes"), Option("no", "No")),
    )
    WEIGHED = {weighed: ("yes",)}
    before = Input[float](
        MASS,
        "Weight before",
        default="96.4 g",
        allowed=("0.5 g", "20 kg"),
        usual=("5 g", "2 kg"),
        rough="0.05 g",
        units=("g", "oz"),
        when=WEIGHED,
        measure="Dry, rested a day in the room.",
    )
    after = Input[float](
        MASS,
        "Weight after",
        default="94.8 g",
        allowed=("0.4 g", "20 kg"),
        usual=("5 g", "2 kg"),
        rough="0.05 g",
        units=("g", "oz"),
        when=WEIGHED,
    )
    depth = Input[float](
        PERCENT,
        "Depth of shade, all dyes",
        default="0.9 %",
        allowed=("0 %", "15 %"),
        usual=("0.1 %", "5 %"),
        rough="0.1 %",
        when=WEIGHED,
        strict=True,
        measure="Ask the maker; 4 % is a very deep shade.",
    )
    rested = Input[str](
        CHOICE,
        "Rested in the same room both times?",
        default="yes",
        options=(Option("yes", "Yes, a day and more"), Option("no", "No, or not known")),
        when=WEIGHED,
    )

    key = Plain[str]()
    seen = Many(NUMBER, "Seen: {}")
    signs = Between[float](NUMBER, "Signs seen")

    verdict = Result[str](TEXT, "By the white cloth")
    lost_percent = Result[float](PERCENT, "Lost, of the weight before", finest=(0.05,))
    lost = Result[float](MASS, "Lost", units=("g", "oz"), finest=(0.05, 0.002))
    dye = Result[float](MASS, "All the dye there is", units=("g",), finest=(0.01,), floor=0.0)
    not_dye = Result[float](
        MASS,
        "Of the loss, what cannot be dye",
        units=("g",),
        finest=(0.05,),
        floor=0.0,
        rounding="down",
    )


def answer(case: Shedding) -> None:
    case.key = what_comes_off(case.fibers, case.stain, case.water)
    case.verdict = ANSWERS[case.key]["says"]
    if case.weighed == "no":
        for sign, seen in (("hairs", case.fibers), ("stain", case.stain), ("water", case.water)):
            case.seen[sign] = 1.0 if seen == "yes" else 0.0
        case.signs = total(case.seen.values())
        return
    case.lost = case.before - case.after
    case.lost_percent = loss_percent(case.before, case.after)
    case.dye = dye_at_most(case.before, case.depth)
    case.not_dye = not_dye(case.lost, case.dye)
    if case.rested == "no":
        swing = MOISTURE / 100 * case.before
        case.band(Shedding.lost, case.lost - swing, case.lost + swing)
        case.band(Shedding.lost_percent, case.lost_percent - MOISTURE, case.lost_percent + MOISTURE)
        case.band(
            Shedding.not_dye,
            not_dye(case.lost - swing, case.dye),
            not_dye(case.lost + swing, case.dye),
        )


def say(out: Outcome[Shedding]) -> str | tuple[str, ...]:
    row = ANSWERS[out.case.key]
    if not out.has(Shedding.lost):
        return f"{row['says']}.", f"{row['do']}."
    if out.low(Shedding.lost) <= 0:
        scale = "The scale cannot tell: what it shows may be moisture"
    elif out.low(Shedding.not_dye) > 0:
        scale = (
            f"It lost {out.text(Shedding.lost_percent)}; {out.down(Shedding.not_dye)} or more of"
            f" that cannot be dye, since there is no more dye than {out.text(Shedding.dye)} in it"
        )
    else:
        scale = (
            f"It lost {out.text(Shedding.lost_percent)}; by weight alone all of that could be dye,"
            " or fiber"
        )
    return f"{row['says']}.", f"{scale}."


def notes(out: Outcome[Shedding]) -> list[str]:
    row = ANSWERS[out.case.key]
    said = [
        f"What to do: {row['do'][0].lower()}{row['do'][1:]}.",
        f"What to say: {row['tell'][0].lower()}{row['tell'][1:]}.",
    ]
    if out.has(Shedding.lost) and out.case.rested == "no":
        said.append(
            f"Not rested in one room: moisture alone moves the weight by {MOISTURE:g} % either way"
            " (wool, from memory). Let it rest a day in the room both times."
        )
    if out.has(Shedding.lost) and out.case.key == LINT and out.low(Shedding.not_dye) <= 0:
        said.append(
            "Cloth and scale do not contradict: so little dye weighs no more than a little fluff."
            " The cloth decides."
        )
    if (
        out.has(Shedding.lost)
        and out.case.key in (DYE, BOTH)
        and out.value(Shedding.lost) > 0
        and out.low(Shedding.not_dye) > 0
    ):
        said.append(
            "What is neither may be spinning oil, dressing or dust: they leave in the first wash"
            " too."
        )
    return said


def steps(out: Outcome[Shedding]) -> Table:
    seen = (out.case.fibers, out.case.stain, out.case.water)
    rows = tuple(
        (str(number), what, saw, meaning)
        for number, ((what, meaning), saw) in enumerate(zip(STEPS, seen), 1)
    )
    return Table(
        "The steps, in this order",
        ("Step", "Do", "You saw it", "What it means"),
        rows,
        "Open steps say not known; nothing is concluded from them.",
    )


def picture(out: Outcome[Shedding]) -> Picture | None:
    return (
        loss_bars(
            out.value(Shedding.lost),
            out.low(Shedding.lost),
            out.high(Shedding.lost),
            out.value(Shedding.dye),
        )
        if out.has(Shedding.lost)
        else None
    )


CARD = Card(
    id="shedding",
    chapter="wash",
    place=50,
    question="Is it dye that comes off, or fluff?",
    case=Shedding,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(steps,),
    basis=Basis(
        BENCH_RULE,
        "Hairs are fiber, an even stain is dye. No more dye can come off than there is in it: its"
        " depth times its weight.",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC, REGAIN_CURVES),
    cautions=(
        Caution(
            "Never call it colorfast.", "Say what was tested: this water, this soap, this cloth."
        ),
    ),
    carry=(
        Carry("fastness", "How bad is the stain?", {}),
        Carry("care-label", "What goes on the label?", {}),
    ),
)
