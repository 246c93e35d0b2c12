"""A new or special base against the usual one: depth factors, what wet and heat do to it, go or no-go."""

from ...core.answer import Table
from ...core.card import BENCH_RULE, TEXT, Basis, Card, Carry, Caution, Input, Result, Rows
from ...core.picture import INDIGO, INDIGO_WASH, LINE, SOFT, Drawing, Scale
from ...core.units import LENGTH, MASS, NUMBER, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ..base_factor import (AS_USUAL, CHANGED, HUE_TURNS, LITTLE_CHANGE, MUCH_CHANGE, change_percent, change_verdict, depth_factor, dye_verdict, factored_depth, factors_apart,
                           worst_verdict)

SAYS = {"go": "Go: dye it as usual.", "go with changes": "Go, with changed recipes.", "no-go": "Not yet: test again before a whole lot."}


def answer(w, dyes, length_before, length_after, mass_before, mass_after):
    factors = []
    for number, row in enumerate(dyes, 1):
        factors.append(w.step(f"factor_{number}", f"dyes[{number}].new / dyes[{number}].usual", depth_factor(row.new, row.usual), NUMBER, label=f"Depth factor of {row.name}"))
    mean = w.step("mean_factor", f"({' + '.join(f'factor_{n}' for n in range(1, len(dyes) + 1))}) / {len(dyes)}", sum(factors) / len(factors), NUMBER, label="Depth factor, mean")
    apart = w.step("apart", f"max({', '.join(f'factor_{n}' for n in range(1, len(dyes) + 1))}) / min({', '.join(f'factor_{n}' for n in range(1, len(dyes) + 1))})", factors_apart(factors), NUMBER,
                   label="Largest factor over smallest")
    longer = w.step("longer", "100 * (length_after - length_before) / length_before", change_percent(length_before, length_after), PERCENT, label="Change of length")
    heavier = w.step("heavier", "100 * (mass_after - mass_before) / mass_before", change_percent(mass_before, mass_after), PERCENT, label="Change of weight")
    verdicts = [dye_verdict(factors), change_verdict(longer), change_verdict(heavier)]
    return {"mean_factor": mean, "apart": apart, "longer": longer, "heavier": heavier, "verdict": worst_verdict(verdicts), "factors": factors, "verdicts": verdicts}


def say(r):
    more = r.value("mean_factor")
    words = "as much dye as" if abs(more - 1) < 0.02 else f"{r.text('mean_factor')} times the dye of"
    return SAYS[r.value("verdict")], f"It takes {words} the usual base for the same shade, and changes by {r.text('longer')} in length and {r.text('heavier')} in weight."


def notes(r):
    said = []
    dye, length, mass = r.kept["verdicts"]
    if r.value("apart") > HUE_TURNS:
        said.append(f"The factors lie {r.text('apart')} times apart: one factor for all would turn the hue. Change each dye by its own.")
    if dye == "no-go":
        said.append(f"A factor beyond {CHANGED:g} is another kind of fiber to the dye: test each shade, do not calculate it.")
    if "no-go" in (length, mass):
        said.append(f"A change over {MUCH_CHANGE:g} % is felting, an oil that washed out, or a reading gone wrong: find out which.")
    elif (length, mass) != ("go", "go"):
        said.append(f"Over {LITTLE_CHANGE:g} %: measure dyed, rested yarn for the label.")
    said.append(f"The edges ({AS_USUAL:g} and {CHANGED:g} for factors, {LITTLE_CHANGE:g} and {MUCH_CHANGE:g} % for changes) are our own, to be moved by what you see.")
    return said


def recipes(r):
    rows = tuple((row.name, f"{row.usual:g} %", f"{row.new:g} %", r.number(factor, 2), r.measured(factored_depth(row.usual, factor), PERCENT, "%", 0.01)) for row, factor in zip(r.given["dyes"], r.kept["factors"]))
    return Table("Dye by dye", ("Dye", "Usual base", "This base, to match", "Factor", "Depth to use"), rows)


def picture(r):
    factors = r.kept["factors"]
    scale = Scale(min(0.6, *factors) * 0.95, max(1.6, *factors) * 1.05, 90, 344, logarithmic=True)
    bottom = 24 + 30 * len(factors)
    drawing = Drawing(bottom + 38)
    drawing.rect(scale(1 / AS_USUAL), 16, scale(AS_USUAL) - scale(1 / AS_USUAL), bottom - 16, fill=INDIGO_WASH, stroke=INDIGO_WASH)
    for tick in (0.5, 0.75, 1, 1.5, 2, 3):
        if scale.low <= tick <= scale.high:
            drawing.line(scale(tick), 16, scale(tick), bottom, stroke=LINE)
            drawing.text(scale(tick), bottom + 16, f"{tick:g}", anchor="middle", fill=SOFT)
    for place, (row, factor) in enumerate(zip(r.given["dyes"], factors)):
        y = 34 + 30 * place
        drawing.text(84, y + 5, row.name[:11], anchor="end")
        drawing.line(scale(1), y, scale(factor), y, stroke=INDIGO, width=2)
        drawing.circle(scale(factor), y, 6, fill=INDIGO, stroke=INDIGO)
    drawing.text(217, bottom + 34, "depth factor; the band is “as usual”", anchor="middle", fill=SOFT)
    return drawing.picture("Depth factors", "; ".join(f"{row.name} {factor:.2f}" for row, factor in zip(r.given["dyes"], factors)) + ".")


CARD = Card(
    id="base-test", chapter="dye", place=60, handles=("powder", "heat"),
    question="Will my colors come out on this base?",
    inputs=(
        Rows("dyes", "Dyes tested", "dye", least=1, most=10, measure="Dye small skeins of both bases; find the depth on the new one that looks like the usual one.",
             fields=(Input("name", TEXT, "Name", default="red", longest=20), Input("usual", PERCENT, "Depth on the usual base", default="1 %", allowed=("0.01 %", "12 %"), rough="2 % of it", strict=True),
                     Input("new", PERCENT, "Depth on this base that matches it", default="1 %", allowed=("0.01 %", "12 %"), rough="5 % of it", strict=True)),
             default=({"name": "navy", "usual": "0.62 %", "new": "0.70 %"}, {"name": "black", "usual": "0.24 %", "new": "0.26 %"}, {"name": "brown", "usual": "0.04 %", "new": "0.043 %"})),
        Input("length_before", LENGTH, "Length before", default="21 m", allowed=("0.5 m", "2000 m"), usual=("5 m", "100 m"), rough="0.5 %", units=("m", "yd"), measure="Of the test skein, rested, the same way both times."),
        Input("length_after", LENGTH, "Length after dyeing", default="20.4 m", allowed=("0.1 m", "2000 m"), usual=("5 m", "100 m"), rough="0.5 %", units=("m", "yd")),
        Input("mass_before", MASS, "Weight before", default="5.00 g", allowed=("0.5 g", "1 kg"), usual=("3 g", "100 g"), rough="0.02 g", units=("g", "oz"), measure="As dry as after."),
        Input("mass_after", MASS, "Weight after", default="4.92 g", allowed=("0.1 g", "1 kg"), usual=("3 g", "100 g"), rough="0.02 g", units=("g", "oz")),
    ),
    results=(
        Result("verdict", "text", "Go or no-go"),
        Result("mean_factor", NUMBER, "Depth factor, mean", finest=(0.01,), floor=0.0),
        Result("apart", NUMBER, "Largest factor over smallest", finest=(0.01,), floor=0.0),
        Result("longer", PERCENT, "Change of length", finest=(0.1,)),
        Result("heavier", PERCENT, "Change of weight", finest=(0.1,)),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(recipes,),
    basis=Basis(BENCH_RULE, "The depth that matches by eye on the new base, over the usual depth. The edges between go and no-go are our own."),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("A test skein is dyeing too.", "The same mask, gloves and fixed lid. Superwash and nylon grab first, silk and alpaca lag; plant fiber does not take acid dye. The maker’s safety data sheet comes first."),),
    carry=(Carry("dye-recipe", "The recipe for a pot of it", {"dyes": lambda r: [{"name": row.name, "depth": f"{row.new:.4g}%"} for row in r.given["dyes"]]}),),
)
