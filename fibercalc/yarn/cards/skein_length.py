"""How many yards are in a skein: by turns of the reel and by a weighed sample, and what may be
printed for several skeins.
"""

from __future__ import annotations

from dataclasses import replace

from ...core.answer import Picture
from ...core.card import (
    CHOICE,
    MODEL,
    Basis,
    Between,
    Card,
    Carry,
    Case,
    Caution,
    Input,
    Option,
    Result,
    Row,
    Rows,
    Save,
)
from ...core.outcome import Outcome
from ...core.picture import INDIGO, INDIGO_WASH, INK, SOFT, Drawing, Scale, nice_ticks
from ...core.steps import solved
from ...core.traced import named
from ...core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, NUMBER
from ...held import RECORD
from ...sources import COMMON_PRACTICE, DIRECTIVE_76_211, IUPAC_CONFIDENCE_LIMITS, TRADE_MEMORY
from ..inputs import AROUND, SKEIN_MASS, STRETCH
from ..sample import lower_limit_of_mean, lower_limit_of_next, mean, standard_deviation
from ..skein import length_by_turns, length_by_weighing, relaxed_circumference
from ..student_t import quantile, share_below

BY_TURNS, BY_SAMPLE, BOTH = "turns", "sample", "both"
SHARE_BELOW = named("share below", share_below)
WAYS = {"by_turns": "by turns of the reel", "by_sample": "by the weighed sample"}


class Skein(Row):
    """One skein."""

    length = Input[float](
        LENGTH,
        "Length",
        default="420 m",
        allowed=("1 m", "20000 m"),
        units=("m", "yd"),
        rough="0.5 %",
        instrument="reel",
    )


TURNS_LENGTH = Result[float](
    LENGTH, "By turns of the reel", units=("yd", "m"), finest=(1, 1), rounding="down"
)
SAMPLE_LENGTH = Result[float](
    LENGTH, "By the weighed sample", units=("yd", "m"), finest=(1, 1), rounding="down"
)


class SkeinLength(Case):
    """A skein measured on the reel or by a sample, alone or among others of its delivery."""

    way = Input[str](
        CHOICE,
        "How you measured",
        default=BOTH,
        options=(
            Option(BOTH, "Both ways"),
            Option(BY_TURNS, "Turns of a reel"),
            Option(BY_SAMPLE, "A weighed sample"),
        ),
    )
    BY_SCALE = {way: (BY_SAMPLE, BOTH)}
    BY_REEL = {way: (BY_TURNS, BOTH)}
    turns = Input[int](
        COUNT,
        "Turns of the reel",
        default="280",
        allowed=("1", "20000"),
        usual=("40", "600"),
        rough="1",
        when=BY_REEL,
        measure="Count them all; the half turn at the end is worth having.",
    )
    circumference = replace(
        AROUND,
        usual=("1 m", "2 m"),
        when=BY_REEL,
        instrument="reel",
        measure="Measure on the yarn as it lies on the reel: unwind ten turns, lay them straight,"
        " divide by ten.",
    )
    stretch = replace(
        STRETCH,
        rough="1 %",
        when=BY_REEL,
        measure="How much longer the yarn is on the reel than at rest. 0 if you measured the"
        " circumference on rested yarn.",
    )
    sample_length = Input[float](
        LENGTH,
        "Length of the sample",
        default="10 m",
        allowed=("0.2 m", "2000 m"),
        usual=("5 m", "20 m"),
        rough="1 %",
        when=BY_SCALE,
        units=("m", "yd"),
        measure="Straight, not pulled. The longer the sample, the better the answer.",
    )
    sample_mass = Input[float](
        MASS,
        "Weight of the sample",
        default="2.38 g",
        allowed=("0.05 g", "2 kg"),
        usual=("1 g", "20 g"),
        rough="0.02 g",
        when=BY_SCALE,
        units=("g", "oz"),
        instrument="fine scale",
        measure="On the fine scale, as dry as the skein.",
    )
    skein_mass = replace(
        SKEIN_MASS,
        label="Weight of the skein",
        rough="1 g",
        when=BY_SCALE,
        measure="Yarn only: take off the band, allow for the ties.",
        bench=None,
    )
    several = Input[str](
        CHOICE,
        "Other skeins of this delivery measured too?",
        default="no",
        options=(Option("no", "No, this one only"), Option("yes", "Yes, several")),
    )
    skeins = Rows(
        Skein,
        "Skeins of this delivery",
        "skein",
        least=2,
        most=40,
        when={several: ("yes",)},
        measure="Each measured the same way. Five say much more than two.",
        default=(
            {"length": "420 m"},
            {"length": "423 m"},
            {"length": "417.5 m"},
            {"length": "421 m"},
            {"length": "418 m"},
        ),
    )

    turn = Between[float](LENGTH, "One turn, rested")
    scatter = Between[float](LENGTH, "Standard deviation between skeins")
    number = Between[int](COUNT, "Skeins measured")
    students_t = Between[float](NUMBER, "Student’s t, one-sided 95 %")

    length = Result[float](
        LENGTH,
        "Length of the skein",
        units=("yd", "m"),
        finest=(1, 1),
        rounding="down",
        best_of=(TURNS_LENGTH, SAMPLE_LENGTH),
    )
    by_turns = TURNS_LENGTH
    by_sample = SAMPLE_LENGTH
    grist = Result[float](
        LINEAR_DENSITY, "Count of the sample", units=("yd/lb", "m/100 g", "tex"), finest=(10, 1, 1)
    )
    average = Result[float](
        LENGTH, "Average of the skeins", units=("yd", "m"), finest=(1, 1), rounding="down"
    )
    printable = Result[float](
        LENGTH, "Lower limit of the average", units=("yd", "m"), finest=(1, 1), rounding="down"
    )
    next_skein = Result[float](
        LENGTH, "Lower limit of one more skein", units=("yd", "m"), finest=(1, 1), rounding="down"
    )


def answer(case: SkeinLength) -> None:
    if case.way in (BY_TURNS, BOTH):
        case.turn = relaxed_circumference(case.circumference, case.stretch)
        case.by_turns = length_by_turns(case.turns, case.turn)
    if case.way in (BY_SAMPLE, BOTH):
        case.by_sample = length_by_weighing(case.skein_mass, case.sample_length, case.sample_mass)
        case.grist = 1000 * case.sample_mass / case.sample_length
    if case.several == "yes":
        _of_several(case)


def _of_several(case: SkeinLength) -> None:
    lengths = [skein.length for skein in case.skeins]
    case.average = mean(lengths)
    case.scatter = standard_deviation(lengths)
    case.number = len(lengths)
    found = quantile(95.0, len(lengths) - 1)
    case.students_t = solved(found, lambda t: SHARE_BELOW(t, case.number - 1) - 95)
    case.printable = lower_limit_of_mean(case.average, case.scatter, case.number, t=case.students_t)
    case.next_skein = lower_limit_of_next(
        case.average, case.scatter, case.number, t=case.students_t
    )


def say(out: Outcome[SkeinLength]) -> str | tuple[str, ...]:
    first = f"This skein holds about {out.said(SkeinLength.length)}."
    if out.has(SkeinLength.printable):
        if out.low(SkeinLength.printable) <= 0:
            return (
                first,
                (
                    f"{len(out.case.skeins)} skeins that average {out.text(SkeinLength.average)}"
                    " differ too much for a length to print: measure more of them, wound alike."
                ),
            )
        return (
            first,
            (
                f"From {len(out.case.skeins)} skeins that average {out.text(SkeinLength.average)},"
                f" print no more than {out.promised(SkeinLength.printable)}."
            ),
        )
    if not out.rough(SkeinLength.length):
        return first
    return (
        first,
        (
            f"From {out.span(SkeinLength.length)}, {WAYS[out.best(SkeinLength.length)]}. With one"
            f" skein measured, print no more than {out.promised(SkeinLength.length)}."
        ),
    )


def notes(out: Outcome[SkeinLength]) -> list[str]:
    said = []
    if out.has(SkeinLength.by_turns) and out.has(SkeinLength.by_sample):
        better = out.best(SkeinLength.length)
        other = "by_sample" if better == "by_turns" else "by_turns"
        said.append(
            f"The two ways give {out.text(SkeinLength.by_turns)} and"
            f" {out.text(SkeinLength.by_sample)}. The better one here is {WAYS[better]}: its range"
            " is the narrower."
        )
        if out.low(better) > out.high(other) or out.low(other) > out.high(better):
            said.append(
                "Their ranges do not meet: measure the circumference on the yarn again, and see"
                " that sample and skein are equally dry."
            )
    if out.has(SkeinLength.printable) and out.low(SkeinLength.printable) > 0:
        single = (
            f" One single skein may be as short as {out.down(SkeinLength.next_skein)}."
            if out.low(SkeinLength.next_skein) > 0
            else ""
        )
        said.append(
            "The limit to print is for the average of the whole delivery (19 in 20 sure, the"
            f" reel's own error taken off).{single}"
        )
    return said


def picture(out: Outcome[SkeinLength]) -> Picture | None:
    """Each way's range on one scale, the better one filled; the skeins measured as dots."""
    rows = [(name, WAYS[name].capitalize()) for name in ("by_turns", "by_sample") if out.has(name)]
    lengths = [row.length for row in out.case.skeins] if out.has(SkeinLength.printable) else []
    scale = _scale_of(out, [name for name, _ in rows], lengths)
    drawing = Drawing(54 + 52 * len(rows) + (56 if lengths else 0))
    y = 18
    for name, words in rows:
        _draw_way(drawing, scale, y, out, name, words)
        y += 52
    if lengths:
        _draw_skeins(drawing, scale, y, out, lengths)
        y += 56
    _draw_ticks(drawing, scale, y, out)
    return drawing.picture(
        "How sure each way is",
        "Length of the skein on a scale. "
        + "; ".join(f"{words}: {out.text(n)}, range {out.span(n)}" for n, words in rows)
        + ".",
    )


def _scale_of(out: Outcome[SkeinLength], ways: list[str], lengths: list[float]) -> Scale:
    """The scale on which every range, and every skein, has its place."""
    ends = [*map(out.low, ways), *map(out.high, ways), *lengths]
    if lengths:
        ends.append(out.low(SkeinLength.printable))
    low, high = min(ends), max(ends)
    margin = max(high - low, 0.01 * high) * 0.15
    return Scale(low - margin, high + margin, 16, 344)


def _draw_way(
    drawing: Drawing, scale: Scale, y: float, out: Outcome[SkeinLength], name: str, words: str
) -> None:
    best = name == out.best(SkeinLength.length)
    drawing.text(8, y, f"{words}: {out.text(name)}", bold=best)
    left, right, at = scale(out.low(name)), scale(out.high(name)), scale(out.value(name))
    fill = INDIGO_WASH if best else "none"
    drawing.rect(left, y + 8, max(right - left, 1.5), 16, fill=fill, stroke=INDIGO)
    drawing.line(at, y + 4, at, y + 28, stroke=INDIGO, width=3 if best else 1.5)


def _draw_skeins(
    drawing: Drawing, scale: Scale, y: float, out: Outcome[SkeinLength], lengths: list[float]
) -> None:
    drawing.text(8, y, "Skeins measured; thick mark: print at most")
    for length in lengths:
        drawing.circle(scale(length), y + 16, 5, stroke=INK, width=1.5)
    at = scale(out.low(SkeinLength.printable))
    drawing.line(at, y + 4, at, y + 28, width=4)


def _draw_ticks(drawing: Drawing, scale: Scale, y: float, out: Outcome[SkeinLength]) -> None:
    unit = out.units(SkeinLength.length)[0]
    drawing.line(16, y, 344, y, stroke=SOFT)
    for tick in nice_ticks(unit.from_base(scale.low), unit.from_base(scale.high), 5):
        at = scale(unit.to_base(tick))
        drawing.line(at, y, at, y + 5, stroke=SOFT)
        drawing.text(at, y + 22, f"{out.number(tick)} {unit.sign}", anchor="middle", fill=SOFT)


CARD = Card(
    id="skein-length",
    chapter="yarn",
    place=10,
    question="How many yards are in this skein?",
    case=SkeinLength,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        MODEL,
        "Length is turns times the length of one turn; or weight is proportional to length. The"
        " limit to print is a one-sided 95 % confidence limit of the average, since packages are"
        " judged by their average.",
    ),
    sources=(COMMON_PRACTICE, IUPAC_CONFIDENCE_LIMITS, DIRECTIVE_76_211, TRADE_MEMORY),
    cautions=(
        Caution(
            "Weigh it rested and dry.",
            "Yarn straight from the dye pot or a damp room is heavy, and yarn under tension is"
            " long: both print too many yards.",
        ),
    ),
    carry=(
        Carry(
            "skein-split",
            "Split this skein into small ones",
            {
                "skein_length": SkeinLength.length,
                "skein_mass": SkeinLength.skein_mass,
                "reel": SkeinLength.turn,
            },
        ),
    ),
    saves=(
        Save(
            RECORD.base,
            "A base: weight and length of a skein",
            {RECORD.base.mass: SkeinLength.skein_mass, RECORD.base.length: SkeinLength.length},
        ),
        Save(
            RECORD.mill_lot,
            "A mill lot: what a skein of it weighs and holds",
            {
                RECORD.mill_lot.mass: SkeinLength.skein_mass,
                RECORD.mill_lot.length: SkeinLength.length,
            },
        ),
    ),
)
