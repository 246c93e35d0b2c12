"""Skeins from light to dark, or from color to color, in steps that look even; the dye for each, as it can really be weighed."""

from ...core.answer import Table
from ...core.card import CHOICE, COLOR, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.problem import OutOfRange, Refused
from ...core.table import read_table
from ...core.units import CONCENTRATION, COUNT, MASS, NUMBER, PERCENT, VOLUME
from ...sources import ARITHMETIC, COMMON_PRACTICE, KM_APPLICATION_NOTE, SHARMA_2005
from ..color.kubelka_munk import ERROR_OF_A_MIXTURE, ERROR_OF_ONE_DYE, TRUSTED_REFLECTANCE, least_reflectance, palette
from ..color.path import Path
from ..color.seeing import corrected_by_card, half_width_of_difference, half_width
from ..color.steps import equal_percent_ladder, even_ladder, finest_by_stock, geometric_ladder, geometric_ratio, weighed_ladder
from ..pots import skeins_for
from ..pictures.strip import Strip, strip_picture, strips_compared

STRAIGHT, THROUGH = "straight", "through"
POWDER, STOCK = "powder", "stock"
SEEN = {row["how"]: row for row in read_table("dye", "color-seeing").rows}


def answer(w, undyed, dyes, way, count, fiber, dose_by, scale_step, strength, syringe_step, seen, gray):
    samples = [row.sample for row in dyes]
    if gray is not None:
        try:
            undyed, *samples = [corrected_by_card(each, gray) for each in (undyed, *samples)]
        except OutOfRange as error:
            raise Refused(f"{error.reason[0].upper()}{error.reason[1:]}.", "gray") from None
    try:
        mixer = palette(undyed, [(sample, row.percent) for sample, row in zip(samples, dyes)])
    except OutOfRange as error:
        raise Refused(f"Dyes: {error.reason or 'a sample must be darker than the undyed fiber'}.", "dyes.1.sample") from None
    firsts, lasts = tuple(row.first for row in dyes), tuple(row.last for row in dyes)
    ends = [firsts, lasts] if way == STRAIGHT or len(dyes) == 1 else [tuple(row.last if at == number else 0.0 for at, row in enumerate(dyes)) for number in range(len(dyes))]
    try:
        path = Path(mixer, ends)
        even = even_ladder(path, count)
    except OutOfRange as error:
        raise Refused(f"Steps: {error.reason or 'the two ends must differ'}.", "dyes.1.last") from None
    percent = equal_percent_ladder(path, count)
    finest = [scale_step if dose_by == POWDER else finest_by_stock(strength, syringe_step)] * len(dyes)
    real = weighed_ladder(mixer, even, fiber, finest)
    ratio = ladder = None
    if len(ends) == 2 and all((a > 0) == (b > 0) for a, b in zip(firsts, lasts)) and any(firsts):
        ladder = geometric_ladder(mixer, firsts, lasts, count)
        if len(dyes) == 1:
            ratio = w.step("ratio", "(dyes[1].last / dyes[1].first) ** (1 / (count - 1))", geometric_ratio(firsts[0], lasts[0], count), NUMBER, label="Ratio of a geometric ladder")
    w.searched("uneven", even.unevenness, ("uneven <= 3",), "0", PERCENT, label="Even steps: the step farthest from the mean, off by")

    def all_steps_added():
        return sum(even.differences)

    def all_depths_added():
        return sum(sum(recipe) for recipe in even.recipes)

    whole = w.solved("whole", "all_steps_added() - whole", all_steps_added(), NUMBER, label="All steps of the table added, CIEDE2000", using=(all_steps_added,))
    mean = w.step("mean", "whole / (count - 1)", whole / (count - 1), NUMBER, label="A step, CIEDE2000")
    total = w.solved("total", "all_depths_added() - total", all_depths_added(), PERCENT, label="All depths of the skeins added", using=(all_depths_added,))
    dye_total = w.step("dye_total", "fiber * total / 100", fiber * total / 100, MASS, label="Dye in all shades, even steps")
    w.error("mean", half_width_of_difference(even.colors[0], even.colors[-1], half_width(seen), half_width(seen)) / (count - 1))
    return {"mean": mean, "uneven": even.unevenness, "weighed": real.unevenness, "equal": percent.unevenness, "geometric": ladder.unevenness if ladder else None, "ratio": ratio, "dye_total": dye_total,
            "geometric_total": fiber * sum(sum(recipe) for recipe in ladder.recipes) / 100 if ladder else None, "even": even, "real": real, "percent": percent, "ladder": ladder}


def say(r):
    count = r.given["count"]
    first = f"{count} skeins in even steps of about {r.text('mean')} (CIEDE2000)."
    others = f"geometric steps would be {r.text('geometric')} off, " if r.has("geometric") else ""
    return first, f"As weighed the steps are within {r.text('weighed')} of even; {others}equal percents {r.text('equal')}. It takes {r.text('dye_total')} of dye."


def notes(r):
    said = []
    row = SEEN[r.given["seen"]]
    said.append(f"The colors were seen so: {row['words']}. That is good to ± {row['half_width']:g} units, so the whole strip may be lighter or darker than drawn; its evenness suffers less.")
    if r.given["gray"] is not None:
        said.append("Undyed fiber and samples were corrected by the gray card in their photo.")
    mixed = len(r.given["dyes"]) > 1
    said.append(f"The model itself is off by up to about {ERROR_OF_A_MIXTURE if mixed else ERROR_OF_ONE_DYE:g} in nine cases of ten ({'mixtures' if mixed else 'one dye'}; tried on paint charts, never on yarn).")
    if least_reflectance(r.kept["even"].colors[-1]) < TRUSTED_REFLECTANCE or least_reflectance(r.kept["even"].colors[0]) < TRUSTED_REFLECTANCE:
        said.append("The darkest skein is darker than the model can be trusted with: dip that one.")
    if r.value("weighed") > 15:
        said.append("Weighing makes the steps uneven at the pale end: dose from a stock, or a weaker one.")
    said.append("A screen color is an estimate: a sample dip decides.")
    return said


def skeins(r):
    """Each skein: percent of each dye, grams, and milliliters where a stock is used; and how far to the next."""
    real, fiber, dyes = r.kept["real"], r.given["fiber"], r.given["dyes"]
    stock = r.given["dose_by"] == STOCK
    rows = []
    for number, recipe in enumerate(real.recipes, 1):
        grams = [fiber * percent / 100 for percent in recipe]
        doses = [r.measured(100 * mass / r.given["strength"], VOLUME, "mL", r.given["syringe_step"]) if stock else r.measured(mass, MASS, "g", r.given["scale_step"]) for mass in grams]
        gap = f"{real.differences[number - 1]:.1f}" if number <= len(real.differences) else "–"
        rows.append((str(number), *(r.measured(percent, PERCENT, "%", 0.001) for percent in recipe), *doses, gap))
    heads = [f"{row.name}" for row in dyes]
    return Table("Skein by skein, as it can be weighed", ("Skein", *(f"{head}, depth" for head in heads), *(f"{head}, dose" for head in heads), "To the next"), tuple(rows))


def _dyes_of_shade(r, number):
    """The recipe of one shade, as it can be weighed."""
    recipe = r.kept["real"].recipes[number - 1]
    strength = f"{r.given['strength']:.6g}g/100mL" if r.given["dose_by"] == STOCK else ""
    return [{"name": row.name, "depth": f"{percent:.5g}%", "strength": strength} for row, percent in zip(r.given["dyes"], recipe)]


def _stock_of_set(r, number):
    """All that the set takes of one stock; None where it is weighed as powder."""
    if r.given["dose_by"] != STOCK:
        return None
    return f"{r.given['fiber'] * sum(recipe[number - 1] for recipe in r.kept['real'].recipes) / r.given['strength']:.6g}mL"


def _shades(r):
    return [{"name": f"shade {number}", "skeins": f"{skeins_for(r.given['fiber'])}"} for number in range(1, r.given["count"] + 1)]


def _a_skein(r):
    """The yarn in equal skeins of about 100 g, as the recipe asks for it."""
    return f"{r.given['fiber'] / skeins_for(r.given['fiber']):.6g}g"


def strip(r):
    real = r.kept["real"]
    doses = [f"{sum(recipe):.2f}" for recipe in real.recipes]
    return strip_picture(real.colors, doses, "dye, % of dry fiber")


def compared(r):
    strips = [Strip("Even to the eye", r.kept["even"].colors, r.kept["even"].differences)]
    if r.kept["ladder"]:
        strips.append(Strip("Geometric ladder", r.kept["ladder"].colors, r.kept["ladder"].differences))
    strips.append(Strip("Equal percents", r.kept["percent"].colors, r.kept["percent"].differences))
    return strips_compared(strips)


CARD = Card(
    id="shade-steps", chapter="dye", place=25, handles=("powder",),
    question="How do I step from light to dark evenly?",
    inputs=(
        Input("undyed", COLOR, "Undyed fiber", default="#efe6d2", measure="Wound close, in daylight."),
        Rows("dyes", "Dyes", "dye", least=1, most=3, measure="A full-strength sample of each, and how much of it the first and the last skein get.",
             fields=(Input("name", TEXT, "Name", default="brown", longest=14), Input("sample", COLOR, "Color of its sample", default="#7a4a2b"),
                     Input("percent", PERCENT, "Depth of that sample", default="1.5 %", allowed=("0.05 %", "12 %"), usual=("0.5 %", "4 %"), strict=True),
                     Input("first", PERCENT, "Depth on the first skein", default="0.05 %", allowed=("0 %", "12 %"), usual=("0 %", "4 %"), strict=True),
                     Input("last", PERCENT, "Depth on the last skein", default="1 %", allowed=("0 %", "12 %"), usual=("0 %", "4 %"), strict=True)),
             default=({"name": "navy", "sample": "#27406a", "percent": "2 %", "first": "0.08 %", "last": "1.92 %"},)),
        Input("way", CHOICE, "With several dyes", default=STRAIGHT, options=(Option(STRAIGHT, "All of them from first to last"), Option(THROUGH, "From one dye to the next, each at its last depth"))),
        Input("count", COUNT, "Skeins", default="12", allowed=("2", "60"), usual=("3", "30")),
        Input("fiber", MASS, "Yarn of each shade", default="501 g", allowed=("1 g", "50 kg"), usual=("20 g", "2 kg"), units=("g", "oz"), strict=True, measure="What is really dyed, spares and all."),
        Input("dose_by", CHOICE, "Dosed as", default=POWDER, options=(Option(POWDER, "Powder, on the scale"), Option(STOCK, "Stock, by syringe"))),
        Input("scale_step", MASS, "The scale shows steps of", default="0.01 g", allowed=("0.0001 g", "1 g"), usual=("0.001 g", "0.1 g"), units=("g",), when={"dose_by": (POWDER,)}, strict=True),
        Input("strength", CONCENTRATION, "Strength of the stock", default="1 g/100 mL", allowed=("0.005 g/100 mL", "20 g/100 mL"), usual=("0.1 g/100 mL", "5 g/100 mL"), units=("g/100 mL", "g/L"), when={"dose_by": (STOCK,)}, strict=True),
        Input("syringe_step", VOLUME, "The syringe is read to", default="1 mL", allowed=("0.01 mL", "50 mL"), usual=("0.1 mL", "2 mL"), units=("mL",), when={"dose_by": (STOCK,)}, strict=True),
        Input("seen", CHOICE, "How the colors were seen", default="photo", options=tuple(Option(how, row["words"][0].upper() + row["words"][1:]) for how, row in SEEN.items())),
        Input("gray", COLOR, "The gray card in that photo", optional=True, when={"seen": ("together", "photo")}, measure="Undyed fiber and samples in one photo with it: an 18 % card in the same light; blank where the photo was balanced on it already."),
    ),
    results=(
        Result("mean", NUMBER, "A step, CIEDE2000", finest=(0.1,), floor=0.0),
        Result("uneven", PERCENT, "Even steps, off by", finest=(1,), floor=0.0),
        Result("weighed", PERCENT, "as weighed, off by", finest=(1,), floor=0.0),
        Result("geometric", PERCENT, "Geometric ladder, off by", finest=(1,), floor=0.0),
        Result("equal", PERCENT, "Equal percents, off by", finest=(1,), floor=0.0),
        Result("ratio", NUMBER, "Ratio of a geometric ladder", finest=(0.001,)),
        Result("dye_total", MASS, "Dye in all shades, even steps", units=("g",), finest=(0.1,), rounding="up"),
        Result("geometric_total", MASS, "Dye in all shades, geometric", units=("g",), finest=(0.1,), rounding="up"),
    ),
    answer=answer, say=say, notes=notes, pictures=(strip, compared), tables=(skeins,), link_version=2, upgrades={1: lambda pairs: pairs},  # the gray card came after all that was asked before
    basis=Basis(MODEL, "Dye absorbs in proportion to its amount (Kubelka-Munk, in three channels); steps are even by CIEDE2000. “Off by” is the step farthest from the mean."),
    sources=(KM_APPLICATION_NOTE, SHARMA_2005, COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("Many small doses of powder.", "Weigh them in one go, still air, mask and gloves on, or dose from stock and weigh once. The maker’s safety data sheet comes first."),),
    carry=(Carry("dye-recipe", "The recipe for shade {}", {"dyes": _dyes_of_shade, "skeins": lambda r, _: f"{skeins_for(r.given['fiber'])}", "skein_mass": lambda r, _: _a_skein(r)},
                 each=lambda r: [str(number) for number in range(1, r.given["count"] + 1)]),
           Carry("stock-solution", "Make up the stock of {}", {"name": "dyes.#.name", "wanted": "strength", "volume": _stock_of_set}, each="dyes"),
           Carry("pots", "How long does the whole run take, in skeins of about 100 g?", {"recipes": _shades, "skein_mass": lambda r: _a_skein(r)})),
)
