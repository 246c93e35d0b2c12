"""How many yards are in a skein: by turns of the reel and by a weighed sample, and what may be printed for several skeins."""

from ...core.card import CHOICE, MODEL, Basis, Card, Carry, Caution, Input, Option, Result, Rows, row_of, Save
from ...core.picture import INDIGO, INDIGO_WASH, INK, SOFT, Drawing, Scale, nice_ticks
from ...core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, NUMBER, PERCENT
from ...sources import COMMON_PRACTICE, DIRECTIVE_76_211, IUPAC_CONFIDENCE_LIMITS, TRADE_MEMORY
from ..sample import lower_limit_of_mean, lower_limit_of_next, mean, standard_deviation
from ..skein import length_by_turns, length_by_weighing, relaxed_circumference
from ..student_t import quantile, share_below

BY_TURNS, BY_SAMPLE, BOTH = "turns", "sample", "both"
WAYS = {"by_turns": "by turns of the reel", "by_sample": "by the weighed sample"}


def answer(w, way, turns, circumference, stretch, sample_length, sample_mass, skein_mass, several, skeins):
    found = dict.fromkeys(("turn", "by_turns", "by_sample", "grist", "average", "printable", "next_skein"))
    if way in (BY_TURNS, BOTH):
        turn = found["turn"] = relaxed_circumference(circumference, stretch)
        w.step("turn", "circumference / (1 + stretch / 100)", turn, LENGTH, label="One turn, rested")
        found["by_turns"] = length_by_turns(turns, turn)
        w.step("by_turns", "turns * turn", found["by_turns"], LENGTH, label="Length by turns")
    if way in (BY_SAMPLE, BOTH):
        found["by_sample"] = length_by_weighing(skein_mass, sample_length, sample_mass)
        w.step("by_sample", "skein_mass * sample_length / sample_mass", found["by_sample"], LENGTH, label="Length by the weighed sample")
        found["grist"] = w.step("grist", "1000 * sample_mass / sample_length", 1000 * sample_mass / sample_length, LINEAR_DENSITY, label="Count of the sample")
    if several == "yes":
        found |= _of_several(w, [row.length for row in skeins])
    return found


def _of_several(w, lengths):
    average, scatter, count = mean(lengths), standard_deviation(lengths), len(lengths)
    w.step("average", "mean(skeins.length)", average, LENGTH, label="Average of the skeins")
    w.step("scatter", "sd(skeins.length)", scatter, LENGTH, label="Standard deviation between skeins")
    w.step("number", "count(skeins.length)", count, COUNT, label="Skeins measured")
    w.solved("students_t", "share_below(students_t, number - 1) - 95", quantile(95.0, count - 1), NUMBER, label="Student’s t, one-sided 95 %", using=(share_below,))
    printable = lower_limit_of_mean(average, scatter, count)
    w.step("printable", "average - students_t * scatter / sqrt(number)", printable, LENGTH, label="Lower limit of the average")
    next_skein = lower_limit_of_next(average, scatter, count)
    w.step("next_skein", "average - students_t * scatter * sqrt(1 + 1 / number)", next_skein, LENGTH, label="Lower limit of the next skein")
    return {"average": average, "printable": printable, "next_skein": next_skein}


def say(r):
    first = f"This skein holds about {r.said('length')}."
    if r.has("printable"):
        if r.low("printable") <= 0:
            return first, f"{len(r.given['skeins'])} skeins that average {r.text('average')} differ too much for a length to print: measure more of them, wound alike."
        return first, f"From {len(r.given['skeins'])} skeins that average {r.text('average')}, print no more than {r.promised('printable')}."
    if not r.rough("length"):
        return first
    return first, f"From {r.span('length')}, {WAYS[r.best('length')]}. With one skein measured, print no more than {r.promised('length')}."


def notes(r):
    said = []
    if r.has("by_turns") and r.has("by_sample"):
        better = r.best("length")
        other = "by_sample" if better == "by_turns" else "by_turns"
        said.append(f"The two ways give {r.text('by_turns')} and {r.text('by_sample')}. The better one here is {WAYS[better]}: its range is the narrower.")
        if r.low(better) > r.high(other) or r.low(other) > r.high(better):
            said.append("Their ranges do not meet: measure the circumference on the yarn again, and see that sample and skein are equally dry.")
    if r.has("printable") and r.low("printable") > 0:
        single = f" One single skein may be as short as {r.down('next_skein')}." if r.low("next_skein") > 0 else ""
        said.append(f"The limit to print is for the average of the whole delivery (19 in 20 sure, the reel's own error taken off).{single}")
    return said


def picture(r):
    """Each way's range on one scale, the better one filled; the skeins measured as dots."""
    rows = [(name, WAYS[name].capitalize()) for name in ("by_turns", "by_sample") if r.has(name)]
    unit = r.units("length")[0]
    lengths = [row.length for row in r.given["skeins"]] if r.has("printable") else []
    ends = [r.low(name) for name, _ in rows] + [r.high(name) for name, _ in rows] + lengths + ([r.low("printable")] if lengths else [])
    low, high = min(ends), max(ends)
    margin = max(high - low, 0.01 * high) * 0.15
    scale = Scale(low - margin, high + margin, 16, 344)
    drawing = Drawing(54 + 52 * len(rows) + (56 if lengths else 0))
    y = 18
    for name, words in rows:
        best = name == r.best("length")
        drawing.text(8, y, f"{words}: {r.text(name)}", bold=best)
        left, right = scale(r.low(name)), scale(r.high(name))
        drawing.rect(left, y + 8, max(right - left, 1.5), 16, fill=INDIGO_WASH if best else "none", stroke=INDIGO)
        drawing.line(scale(r.value(name)), y + 4, scale(r.value(name)), y + 28, stroke=INDIGO, width=3 if best else 1.5)
        y += 52
    if lengths:
        drawing.text(8, y, "Skeins measured; thick mark: print at most")
        for length in lengths:
            drawing.circle(scale(length), y + 16, 5, stroke=INK, width=1.5)
        drawing.line(scale(r.low("printable")), y + 4, scale(r.low("printable")), y + 28, width=4)
        y += 56
    drawing.line(16, y, 344, y, stroke=SOFT)
    for tick in nice_ticks(unit.from_base(scale.low), unit.from_base(scale.high), 5):
        at = scale(unit.to_base(tick))
        drawing.line(at, y, at, y + 5, stroke=SOFT)
        drawing.text(at, y + 22, f"{r.number(tick)} {unit.sign}", anchor="middle", fill=SOFT)
    return drawing.picture("How sure each way is", "Length of the skein on a scale. " + "; ".join(f"{words}: {r.text(n)}, range {r.span(n)}" for n, words in rows) + ".")


BY_REEL, BY_SCALE = {"way": (BY_TURNS, BOTH)}, {"way": (BY_SAMPLE, BOTH)}

def _rested_turn(r):
    """A turn of the reel as it measures at rest, where the reel was asked for."""
    return f"{r.kept['turn']:.6g}m" if r.kept["turn"] is not None else None


CARD = Card(
    id="skein-length", chapter="yarn", place=10,
    question="How many yards are in this skein?",
    inputs=(
        Input(CHOICE, "How you measured", default=BOTH,
              options=(Option(BOTH, "Both ways"), Option(BY_TURNS, "Turns of a reel"), Option(BY_SAMPLE, "A weighed sample")), name="way"),
        Input(COUNT, "Turns of the reel", default="280", allowed=("1", "20000"), usual=("40", "600"), rough="1", when=BY_REEL,
              measure="Count them all; the half turn at the end is worth having.", name="turns"),
        Input(LENGTH, "Once around the reel", default="1.50 m", allowed=("0.05 m", "10 m"), usual=("1 m", "2 m"), rough="0.5 %", when=BY_REEL,
              units=("m", "cm", "in", "yd"), instrument="reel", bench="reels.circumference",
              measure="Measure on the yarn as it lies on the reel: unwind ten turns, lay them straight, divide by ten.", name="circumference"),
        Input(PERCENT, "Stretch on the reel", default="0 %", allowed=("0 %", "20 %"), usual=("0 %", "3 %"), rough="1 %", when=BY_REEL,
              bench="reels.stretch", measure="How much longer the yarn is on the reel than at rest. 0 if you measured the circumference on rested yarn.", name="stretch"),
        Input(LENGTH, "Length of the sample", default="10 m", allowed=("0.2 m", "2000 m"), usual=("5 m", "20 m"), rough="1 %", when=BY_SCALE,
              units=("m", "yd"), measure="Straight, not pulled. The longer the sample, the better the answer.", name="sample_length"),
        Input(MASS, "Weight of the sample", default="2.38 g", allowed=("0.05 g", "2 kg"), usual=("1 g", "20 g"), rough="0.02 g", when=BY_SCALE,
              units=("g", "oz"), instrument="fine scale", measure="On the fine scale, as dry as the skein.", name="sample_mass"),
        Input(MASS, "Weight of the skein", record="base.mass", default="100 g", allowed=("1 g", "5 kg"), usual=("20 g", "250 g"), rough="1 g", when=BY_SCALE,
              units=("g", "oz"), measure="Yarn only: take off the band, allow for the ties.", name="skein_mass"),
        Input(CHOICE, "Other skeins of this delivery measured too?", default="no", options=(Option("no", "No, this one only"), Option("yes", "Yes, several")), name="several"),
        Rows(row_of((Input(LENGTH, "Length", default="420 m", allowed=("1 m", "20000 m"), units=("m", "yd"), rough="0.5 %", instrument="reel", name="length"),)), "Skeins of this delivery", "skein", least=2, most=40, when={"several": ("yes",)},
             measure="Each measured the same way. Five say much more than two.",
             default=({"length": "420 m"}, {"length": "423 m"}, {"length": "417.5 m"}, {"length": "421 m"}, {"length": "418 m"}), name="skeins"),
    ),
    results=(
        Result(LENGTH, "Length of the skein", units=("yd", "m"), finest=(1, 1), rounding="down", best_of=("by_turns", "by_sample"), name="length"),
        Result(LENGTH, "By turns of the reel", units=("yd", "m"), finest=(1, 1), rounding="down", name="by_turns"),
        Result(LENGTH, "By the weighed sample", units=("yd", "m"), finest=(1, 1), rounding="down", name="by_sample"),
        Result(LINEAR_DENSITY, "Count of the sample", units=("yd/lb", "m/100 g", "tex"), finest=(10, 1, 1), name="grist"),
        Result(LENGTH, "Average of the skeins", units=("yd", "m"), finest=(1, 1), rounding="down", name="average"),
        Result(LENGTH, "Lower limit of the average", units=("yd", "m"), finest=(1, 1), rounding="down", name="printable"),
        Result(LENGTH, "Lower limit of one more skein", units=("yd", "m"), finest=(1, 1), rounding="down", name="next_skein"),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,),
    basis=Basis(MODEL, "Length is turns times the length of one turn; or weight is proportional to length. The limit to print is a one-sided 95 % confidence limit of the average, "
                       "since packages are judged by their average."),
    sources=(COMMON_PRACTICE, IUPAC_CONFIDENCE_LIMITS, DIRECTIVE_76_211, TRADE_MEMORY),
    cautions=(Caution("Weigh it rested and dry.", "Yarn straight from the dye pot or a damp room is heavy, and yarn under tension is long: both print too many yards."),),
    carry=(Carry("skein-split", "Split this skein into small ones", {"skein_length": "length", "skein_mass": "skein_mass", "reel": _rested_turn}),),
    saves=(Save("base", "A base: weight and length of a skein", {"mass": "skein_mass", "length": "length"}),
           Save("mill-lot", "A mill lot: what a skein of it weighs and holds", {"mass": "skein_mass", "length": "length"})),
)
