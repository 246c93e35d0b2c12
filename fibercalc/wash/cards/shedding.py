"""Fluff or dye: what a white cloth shows, step by step, and what the scale says came off."""

from ...core.answer import Table
from ...core.card import BENCH_RULE, CHOICE, Basis, Card, Carry, Caution, Input, Option, Result
from ...core.table import read_table
from ...core.units import MASS, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, REGAIN_CURVES
from ..lint import BOTH, DYE, LINT, UNKNOWN, dye_at_most, loss_percent, not_dye, what_comes_off
from ..pictures.loss import loss_bars

ANSWERS = {row["key"]: row for row in read_table("wash", "shedding-answers").rows}
MOISTURE = 2.5  # % of weight, what wool may take up or give off between a dry room and a damp one; the demo cellar is such a case
STEPS = (
    (
        "fibers",
        "Press a damp white cloth on it for a minute; look for colored hairs",
        "Hairs: fiber comes off",
    ),
    ("stain", "Pick the hairs off; look at the cloth under them", "An even stain: dye comes off"),
    (
        "water",
        (
            "Soak it an hour in clear warm water, let the fluff settle, look at the water in a"
            " white cup"
        ),
        "Colored water: dye comes off",
    ),
)


def answer(w, fibers, stain, water, weighed, before, after, depth, rested):
    found = {
        "verdict": ANSWERS[what_comes_off(fibers, stain, water)]["says"],
        "key": what_comes_off(fibers, stain, water),
    }
    if weighed == "no":
        w.step(
            "signs",
            _count_text(fibers, stain, water),
            float([fibers, stain, water].count("yes")),
            label="Signs seen",
        )
        return found
    lost = found["lost"] = w.step("lost", "before - after", before - after, MASS, label="Lost")
    percent = found["lost_percent"] = w.step(
        "lost_percent",
        "100 * (before - after) / before",
        loss_percent(before, after),
        PERCENT,
        label="Lost, of the weight before",
    )
    dye = found["dye"] = w.step(
        "dye",
        "before * depth / 100",
        dye_at_most(before, depth),
        MASS,
        label="All the dye there is",
    )
    found["not_dye"] = w.step(
        "not_dye",
        "max(lost - dye, 0)",
        not_dye(lost, dye),
        MASS,
        label="Of the loss, what cannot be dye",
    )
    if rested == "no":
        swing = MOISTURE / 100 * before
        w.band("lost", lost - swing, lost + swing)
        w.band("lost_percent", percent - MOISTURE, percent + MOISTURE)
        w.band("not_dye", not_dye(lost - swing, dye), not_dye(lost + swing, dye))
    return found


def _count_text(*words):
    return " + ".join("1" if word == "yes" else "0" for word in words)


def say(r):
    row = ANSWERS[r.kept["key"]]
    if not r.has("lost"):
        return f"{row['says']}.", f"{row['do']}."
    if r.low("lost") <= 0:
        scale = "The scale cannot tell: what it shows may be moisture"
    elif r.low("not_dye") > 0:
        scale = (
            f"It lost {r.text('lost_percent')}; {r.down('not_dye')} or more of that cannot be dye,"
            f" since there is no more dye than {r.text('dye')} in it"
        )
    else:
        scale = (
            f"It lost {r.text('lost_percent')}; by weight alone all of that could be dye, or fiber"
        )
    return f"{row['says']}.", f"{scale}."


def notes(r):
    row = ANSWERS[r.kept["key"]]
    said = [
        f"What to do: {row['do'][0].lower()}{row['do'][1:]}.",
        f"What to say: {row['tell'][0].lower()}{row['tell'][1:]}.",
    ]
    if r.has("lost") and r.given["rested"] == "no":
        said.append(
            f"Not rested in one room: moisture alone moves the weight by {MOISTURE:g} % either way"
            " (wool, from memory). Let it rest a day in the room both times."
        )
    if r.has("lost") and r.kept["key"] == LINT and r.low("not_dye") <= 0:
        said.append(
            "Cloth and scale do not contradict: so little dye weighs no more than a little fluff."
            " The cloth decides."
        )
    if (
        r.has("lost")
        and r.kept["key"] in (DYE, BOTH)
        and r.value("lost") > 0
        and r.low("not_dye") > 0
    ):
        said.append(
            "What is neither may be spinning oil, dressing or dust: they leave in the first wash"
            " too."
        )
    return said


def steps(r):
    rows = tuple(
        (str(n), what, r.given[name], meaning) for n, (name, what, meaning) in enumerate(STEPS, 1)
    )
    return Table(
        "The steps, in this order",
        ("Step", "Do", "You saw it", "What it means"),
        rows,
        "Open steps say not known; nothing is concluded from them.",
    )


def picture(r):
    return (
        loss_bars(r.value("lost"), r.low("lost"), r.high("lost"), r.value("dye"))
        if r.has("lost")
        else None
    )


SEEN = (Option("yes", "Yes"), Option("no", "No"), Option(UNKNOWN, "Not known yet"))
WEIGHED = {"weighed": ("yes",)}

CARD = Card(
    id="shedding",
    chapter="wash",
    place=50,
    question="Is it dye that comes off, or fluff?",
    inputs=(
        Input(
            CHOICE,
            "Colored hairs on a damp white cloth?",
            default="yes",
            options=SEEN,
            name="fibers",
        ),
        Input(CHOICE, "An even stain under them?", default="no", options=SEEN, name="stain"),
        Input(
            CHOICE,
            "Colored water after an hour’s soak?",
            default="no",
            options=SEEN,
            measure="Fluff settled, in a white cup.",
            name="water",
        ),
        Input(
            CHOICE,
            "Weighed before and after a wash?",
            default="yes",
            options=(Option("yes", "Yes"), Option("no", "No")),
            name="weighed",
        ),
        Input(
            MASS,
            "Weight before",
            default="96.4 g",
            allowed=("0.5 g", "20 kg"),
            usual=("5 g", "2 kg"),
            rough="0.05 g",
            units=("g", "oz"),
            when=WEIGHED,
            measure="Dry, rested a day in the room.",
            name="before",
        ),
        Input(
            MASS,
            "Weight after",
            default="94.8 g",
            allowed=("0.4 g", "20 kg"),
            usual=("5 g", "2 kg"),
            rough="0.05 g",
            units=("g", "oz"),
            when=WEIGHED,
            name="after",
        ),
        Input(
            PERCENT,
            "Depth of shade, all dyes",
            default="0.9 %",
            allowed=("0 %", "15 %"),
            usual=("0.1 %", "5 %"),
            rough="0.1 %",
            when=WEIGHED,
            strict=True,
            measure="Ask the maker; 4 % is a very deep shade.",
            name="depth",
        ),
        Input(
            CHOICE,
            "Rested in the same room both times?",
            default="yes",
            options=(Option("yes", "Yes, a day and more"), Option("no", "No, or not known")),
            when=WEIGHED,
            name="rested",
        ),
    ),
    results=(
        Result("text", "By the white cloth", name="verdict"),
        Result(PERCENT, "Lost, of the weight before", finest=(0.05,), name="lost_percent"),
        Result(MASS, "Lost", units=("g", "oz"), finest=(0.05, 0.002), name="lost"),
        Result(MASS, "All the dye there is", units=("g",), finest=(0.01,), floor=0.0, name="dye"),
        Result(
            MASS,
            "Of the loss, what cannot be dye",
            units=("g",),
            finest=(0.05,),
            floor=0.0,
            rounding="down",
            name="not_dye",
        ),
    ),
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
