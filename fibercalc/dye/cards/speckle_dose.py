"""Dry dye for speckles, bulked with a carrier so that a dose weighs grams; what to expect from skein to skein."""

from ...core.card import MODEL, Basis, Card, Carry, Caution, Input, Result
from ...core.picture import INDIGO, INDIGO_WASH, LINE, SOFT, Drawing, Scale
from ...core.units import COUNT, MASS, NUMBER, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ..measuring import error_share
from ..pictures.speckle import speckle_picture
from ..recipe import dye_mass
from ..speckle import carrier_mass, chance_busier, dose_error_bulked, mix_mass, run_dye, speckle_share, spots_range, spots_scatter

BUSIER = 1.5


def answer(w, skein_mass, depth, colors, ground_depth, one_in, skeins, lost, scale_error, spots):
    each = w.step("each", "skein_mass * depth / 100", dye_mass(skein_mass, depth), MASS, label="Dye of each color on a skein")
    mix = w.step("mix", "each * one_in", mix_mass(each, one_in), MASS, label="Mix of each color for a skein")
    run = w.step("run", "each * skeins / (1 - lost / 100)", run_dye(each, skeins, lost), MASS, label="Dye of each color for the run")
    carrier = w.step("carrier", "run * (one_in - 1)", carrier_mass(run, one_in), MASS, label="Carrier for the run")
    before = w.step("before", "100 * scale_error / each", error_share(scale_error, each), PERCENT, label="Error of the dose weighed as dye")
    after = w.step("after", "100 * sqrt((scale_error / run) ** 2 + (scale_error / mix) ** 2)", dose_error_bulked(run, mix, scale_error), PERCENT, label="Error of the dose weighed as mix")
    share = w.step("share", "100 * colors * depth / (colors * depth + ground_depth)", speckle_share(colors * depth, ground_depth), PERCENT, label="Speckle in the whole shade")
    scatter = w.step("scatter", "100 / sqrt(spots)", spots_scatter(spots), PERCENT, label="Spots vary from skein to skein by, one standard deviation")
    busier = chance_busier(spots, BUSIER, after / 3**0.5) if spots >= 4 else None
    return {"each": each, "mix": mix, "run": run, "carrier": carrier, "before": before, "after": after, "share": share, "scatter": scatter, "busier": busier}


def say(r):
    one = r.given["one_in"]
    return (f"Weigh {r.text('mix')} of mix for each color and skein.",
            f"It holds {r.text('each')} of dye, 1 part in {one:g}. For {r.given['skeins']} skeins mix {r.text('run')} of dye with {r.text('carrier')} of carrier, for each color.")


def notes(r):
    low, high = spots_range(r.given["spots"])
    said = [f"Weighed as dye the dose would be good to ± {r.text('before')}; as mix to ± {r.text('after')}.",
            f"Where {r.number(r.given['spots'])} spots are usual, most skeins show {low} to {high}: chance alone, the same hand and the same dose."]
    if r.has("busier"):
        said.append(f"Of two skeins, one shows half as many again as the other in about {r.number(r.value('busier'))} of 100 pairs.")
    said.append("Sieve dye and carrier together until no streak is left; an uneven mix undoes the weighing.")
    return said


def picture(r):
    """The error of a dose before and after bulking, on one scale."""
    before, after = r.value("before"), r.value("after")
    scale = Scale(0, max(before, after, 1.0) * 1.05, 16, 330)
    drawing = Drawing(118)
    for y, words, value, fill in ((20, f"Weighed as dye: ± {r.text('before')}", before, INDIGO_WASH), (66, f"Weighed as mix: ± {r.text('after')}", after, INDIGO)):
        drawing.text(16, y, words, bold=fill == INDIGO)
        drawing.rect(16, y + 7, max(scale(value) - 16, 1.5), 16, fill=fill, stroke=INDIGO)
    drawing.line(16, 10, 16, 96, stroke=LINE)
    drawing.text(16, 112, "error of one dose, as a share of it", fill=SOFT)
    return drawing.picture("What bulking does to the dose", f"Error of a dose: {before:.0f} % weighed as dye, {after:.1f} % weighed as mix.")


def scatter(r):
    """What chance alone does to the spots."""
    low, high = spots_range(r.given["spots"])
    return speckle_picture(low, r.given["spots"], high)


CARD = Card(
    id="speckle-dose", chapter="dye", place=70, handles=("powder",),
    question="How do I dose dry speckles evenly?",
    inputs=(
        Input("skein_mass", MASS, "A skein weighs", default="100 g", allowed=("5 g", "2 kg"), usual=("20 g", "250 g"), rough="1 g", units=("g", "oz"), bench="bases.mass", record="base.mass", strict=True),
        Input("depth", PERCENT, "Each color, percent of the skein", default="0.06 %", allowed=("0.001 %", "2 %"), usual=("0.02 %", "0.2 %"), strict=True, measure="A pinch is 0.03 to 0.15 g on 100 g."),
        Input("colors", COUNT, "Colors", default="3", allowed=("1", "12"), usual=("1", "5")),
        Input("ground_depth", PERCENT, "Ground under it, percent", default="0.9 %", allowed=("0 %", "12 %"), usual=("0 %", "2 %"), strict=True),
        Input("one_in", NUMBER, "One part of dye in how many of mix", default="20", allowed=("2", "200"), usual=("5", "50"), measure="20 is 1 part of dye and 19 of salt or citric acid crystals."),
        Input("skeins", COUNT, "Skeins in the run", default="4", allowed=("1", "500"), usual=("1", "80")),
        Input("lost", PERCENT, "Lost on the way", default="10 %", allowed=("0 %", "90 %"), usual=("5 %", "30 %"), measure="What stays in the shaker and beside the yarn."),
        Input("scale_error", MASS, "The scale is good to", default="0.02 g", allowed=("0.0005 g", "2 g"), usual=("0.005 g", "0.1 g"), units=("g",), strict=True),
        Input("spots", NUMBER, "Spots to be seen on a skein", default="120", allowed=("1", "5000"), usual=("20", "1000"), measure="Count a tenth of one and multiply."),
    ),
    results=(
        Result("mix", MASS, "Mix of each color for a skein", units=("g",), finest=(0.01,)),
        Result("each", MASS, "Dye in it", units=("g",), finest=(0.001,)),
        Result("run", MASS, "Dye of each color for the run", units=("g",), finest=(0.01,), rounding="up"),
        Result("carrier", MASS, "Carrier for it", units=("g",), finest=(0.1,)),
        Result("before", PERCENT, "Error weighed as dye, either way", finest=(1,)),
        Result("after", PERCENT, "Error weighed as mix, either way", finest=(0.1,), at_step=True),
        Result("share", PERCENT, "Speckle in the whole shade", finest=(1,)),
        Result("scatter", PERCENT, "Spots vary by (standard deviation)", finest=(1,)),
        Result("busier", PERCENT, f"Pairs where one has {BUSIER:g} times the spots", finest=(1,)),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture, scatter),
    basis=Basis(MODEL, "A dose of mix is weighed in grams, its dye once for the whole run. Spots fall by chance (Poisson): no hand makes two skeins alike."),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("The dustiest work there is.", "Mask and gloves, no fan, no draft, wet paper on the bench, nobody else in the room. Some dyes sensitize the lungs for good. The maker’s safety data sheet comes first."),),
    carry=(Carry("room-air", "What about the dust in this room?", {"what": lambda r: "powder"}), Carry("dye-recipe", "The ground under it", {"skeins": "skeins", "skein_mass": "skein_mass"})),
)
