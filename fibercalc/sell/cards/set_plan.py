"""A numbered set of small skeins: skeins to order, dye, loads, days and stickers, cut first beside dyed whole."""

from ...core.answer import Table
from ...core.card import CHOICE, COLOR, MODEL, TEXT, Basis, Card, Carry, Caution, Chance, Input, Option, Result, Rows
from ...core.paper import Paper
from ...core.problem import OutOfRange, Refused
from ...core.units import COUNT, LENGTH, MASS, MONEY, NUMBER, PERCENT, TIME, VOLUME
from ...dye.color.kubelka_munk import palette
from ...dye.color.path import Path
from ...dye.color.steps import equal_percent_ladder, even_ladder, geometric_ladder, geometric_ratio
from ...dye.pictures.strip import strip_picture
from ...dye.pots import days_at_rounds
from ...dye.recipe import dye_mass, stock_volume
from ...sources import ARITHMETIC, COMMON_PRACTICE, KM_APPLICATION_NOTE, SHARMA_2005, TEXTILE_PAGES_RECIPE
from ...yarn.count import linear_density
from ...yarn.putup import printed_grams, printed_yards
from ...yarn.reel import mass_of_turns, whole_turns_for_length
from ...yarn.split import left_over, margin_of_last, most_turns_for_count, small_skeins, usable_amount
from ..pictures.sets import set_picture
from ..plans import ways
from ..sets import dye_in_set, loads_of_set, skeins_cut_first, skeins_dyed_whole

BY_TURNS, BY_MASS, BY_COUNT = "turns", "mass", "count"
RATIO, EVEN, PERCENTS = "ratio", "even", "percent"
WEAK, EVERYDAY = 0.1, 1.0  # stocks, g in 100 mL, between which a dose is written


def answer(w, name, days, sets, spare, skein_mass, skein_length, loss_share, wanted_by, wanted_turns, wanted_mass, wanted_count, reel, steps, undyed, dyes, load, a_day, scale_step, skein_cost, tie):
    usable = w.step("usable", "skein_length * (1 - loss_share / 100)", usable_amount(skein_length, loss_share), LENGTH, label="Length that can be wound")
    turns = w.decide("turns", _turns(w, usable, wanted_by, wanted_turns, wanted_mass, wanted_count, reel, skein_mass, skein_length))
    small = w.step("small_length", "turns * reel", turns * reel, LENGTH, label="Length of a small skein")
    per = w.decide("per", wanted_count if wanted_by == BY_COUNT else small_skeins(usable, small))
    if per < 1:
        raise Refused("One full skein is not enough for one small skein of that size; ask for a smaller one.", f"wanted_{wanted_by}")
    if wanted_by == BY_COUNT:
        w.step("per", "wanted_count", per, COUNT, label="Small skeins from one")
    else:
        w.searched("per", per, ("per * small_length <= usable",), "usable / small_length", label="Small skeins from one")
    margin = w.step("margin", "usable - per * small_length", margin_of_last(usable, per, small), LENGTH, label="Left of each full skein")
    mass = w.step("small_mass", "small_length * skein_mass / skein_length", mass_of_turns(turns, reel, linear_density(skein_mass, skein_length)), MASS, label="Weight of a small skein")
    many = w.step("all_small", "days * (sets + spare)", days * (sets + spare), COUNT, label="Small skeins in all")
    cut = skeins_cut_first(days, sets + spare, per)
    w.searched("cut_first", cut, ("cut_first * per >= all_small",), "all_small / per", label="Full skeins, cut first")
    whole = skeins_dyed_whole(days, sets + spare, per)
    each = whole // days
    w.searched("each_shade", each, ("each_shade * per >= sets + spare",), "(sets + spare) / per", label="Full skeins of one shade, dyed whole")
    w.step("dyed_whole", "days * each_shade", whole, COUNT, label="Full skeins, dyed whole")
    ladder, ratio = w.decisions.get("ladder") or w.decide("ladder", _ladder(undyed, dyes, days, steps))
    if ratio:
        w.step("ratio", "(dyes[1].last / dyes[1].first) ** (1 / (days - 1))", ratio, NUMBER, label="Each shade against the one before")
    depths = [sum(recipe) for recipe in ladder.recipes]

    def all_depths_added():
        return sum(depths)

    if ratio and ratio != 1:
        w.step("depths", "dyes[1].first * (ratio ** days - 1) / (ratio - 1)", sum(depths), PERCENT, label="Depths of all shades added")
    else:
        w.solved("depths", "all_depths_added() - depths", sum(depths), PERCENT, label="Depths of all shades of the table added", using=(all_depths_added,))
    shade_cut = w.step("shade_cut", "(sets + spare) * small_mass", (sets + spare) * mass, MASS, label="Yarn of one shade, cut first")
    shade_whole = w.step("shade_whole", "each_shade * skein_mass", each * skein_mass, MASS, label="Yarn of one shade, dyed whole")
    dye_cut = w.step("dye_cut", "shade_cut * depths / 100", dye_in_set(shade_cut, depths), MASS, label="Dye, cut first")
    dye_whole = w.step("dye_whole", "shade_whole * depths / 100", dye_in_set(shade_whole, depths), MASS, label="Dye, dyed whole")
    # A load takes as much yarn cut small as whole.
    small_load = w.decide("small_load", max(int(load * skein_mass / mass + 1e-9), 1))
    loads_cut = w.step("loads_cut", f"days * ceil((sets + spare) / {small_load})", loads_of_set(days, sets + spare, small_load), COUNT, label=f"Loads, cut first, at {small_load} small skeins a load")
    loads_whole = w.step("loads_whole", "days * ceil(each_shade / load)", loads_of_set(days, each, load), COUNT, label="Loads, dyed whole")
    days_cut = w.step("days_cut", "ceil(loads_cut / a_day)", days_at_rounds(loads_cut, 1, a_day), COUNT, label="Dye days, cut first")
    days_whole = w.step("days_whole", "ceil(loads_whole / a_day)", days_at_rounds(loads_whole, 1, a_day), COUNT, label="Dye days, dyed whole")
    more = w.step("more_yarn", "(dyed_whole - cut_first) * skein_cost", (whole - cut) * skein_cost, MONEY, label="More yarn, dyed whole")
    tying = w.step("tying", "(all_small - dyed_whole) * tie", (many - whole) * tie, TIME, label="More tying, cut first")
    return {"cut_first": cut, "dyed_whole": whole, "per": per, "turns": turns, "small_length": small, "small_mass": mass, "all_small": many, "margin": margin, "dye_cut": dye_cut, "dye_whole": dye_whole,
            "loads_cut": loads_cut, "loads_whole": loads_whole, "days_cut": days_cut, "days_whole": days_whole, "more_yarn": more, "tying": tying, "ratio": ratio, "shade_cut": shade_cut,
            "ladder": ladder, "each": each, "usable": usable, "shade_whole": shade_whole, "tex": linear_density(skein_mass, skein_length)}


def _turns(w, usable, wanted_by, wanted_turns, wanted_mass, wanted_count, reel, skein_mass, skein_length):
    if wanted_by == BY_TURNS:
        return w.step("turns", "wanted_turns", wanted_turns, NUMBER, label="Turns for each")
    if wanted_by == BY_COUNT:
        turns = most_turns_for_count(usable, wanted_count, reel)
        if turns < 1:
            raise Refused("How many from one skein: less than one turn of the reel would be left for each; ask for fewer.", "wanted_count")
        return w.searched("turns", turns, ("wanted_count * turns * reel <= usable",), "usable / wanted_count / reel", label="Turns for each")
    length = w.step("length_for_weight", "wanted_mass * skein_length / skein_mass", wanted_mass * skein_length / skein_mass, LENGTH, label="Length of that weight")
    return w.searched("turns", whole_turns_for_length(length, reel), ("turns * reel >= length_for_weight",), "length_for_weight / reel", label="Turns for each, so that none is short")


def _ladder(undyed, dyes, days, steps):
    """The set's shades by the wished kind of step, and the ratio where one dye steps by equal ratios."""
    try:
        mixer = palette(undyed, [(row.sample, row.percent) for row in dyes])
    except OutOfRange as error:
        raise Refused(f"Dyes: {error.reason or 'a sample must be darker than the undyed yarn'}.", "dyes.1.sample") from None
    firsts, lasts = tuple(row.first for row in dyes), tuple(row.last for row in dyes)
    try:
        if steps == RATIO:
            return geometric_ladder(mixer, firsts, lasts, days), geometric_ratio(firsts[0], lasts[0], days) if len(dyes) == 1 else None
        path = Path(mixer, [firsts, lasts])
        return (even_ladder if steps == EVEN else equal_percent_ladder)(path, days), None
    except OutOfRange as error:
        raise Refused(f"Shades: {error.reason or 'the first and the last must differ, and equal ratios need a depth above 0 at both ends'}.", "dyes.1.first") from None


def say(r):
    first = f"Cut first: order {r.value('cut_first')} skeins. Dyed whole and then cut: order {r.value('dyed_whole')}."
    same = r.value("days_cut") == r.value("days_whole")
    when = f"{_days(r.value('days_cut'))} of dyeing either way" if same else f"{_days(r.value('days_cut'))} of dyeing or {r.value('days_whole')}"
    return first, (f"A skein gives {r.value('per')} of {r.value('turns')} turns, {r.text('small_length', 'm')} ({r.text('small_length', 'yd')}), label {r.number(printed_grams(r.value('small_mass')))} g; "
                   f"{r.text('dye_cut', 'g')} of dye or {r.text('dye_whole', 'g')}; {when}.")


def _days(count):
    return f"{count} {'day' if count == 1 else 'days'}"


def notes(r):
    ladder, said = r.kept["ladder"], []
    over = r.value("dyed_whole") * r.value("per") - r.value("all_small")
    said.append(f"Dyed whole, {over} small skeins are over, {r.kept['each'] * r.value('per') - r.given['sets'] - r.given['spare']} of each shade: sell them by the piece, or make so many more sets.")
    if r.value("last_short") > 5:
        said.append(f"The last small skein of a full one is short in {r.text('last_short')}: take a turn off each, or measure the full skeins better.")
    low, high = min(ladder.differences), max(ladder.differences)
    if r.given["steps"] != EVEN and high > 1.3 * low:
        said.append(f"These steps do not look even: neighbors differ by {low:.1f} to {high:.1f} (CIEDE2000). Choose “even to the eye” to see what that takes.")
    palest = dye_mass(r.value("shade_cut"), min(sum(recipe) for recipe in ladder.recipes))
    if palest and r.given["scale_step"] / 2 / palest > 0.05:
        said.append(f"The palest shade takes {r.measured(palest, MASS, 'g', 0.001)} of dye in all, too little for this scale: dose it from a stock.")
    said.append("A shade that takes two loads is two lots that must look like one: share each dye bath's stock over both pots, and dye them in one round. Every set takes one small skein of each shade.")
    return said


def side_by_side(r):
    """The two ways, line by line."""
    value = r.value
    per, many = value("per"), value("all_small")
    rows = (("Full skeins to order", str(value("cut_first")), str(value("dyed_whole"))), ("Small skeins over", str(value("cut_first") * per - many), str(value("dyed_whole") * per - many)),
            ("Yarn of one shade", r.amount(value("shade_cut"), MASS, "g", 3), r.amount(r.kept["shade_whole"], MASS, "g", 3)), ("Dye in all", r.text("dye_cut", "g"), r.text("dye_whole", "g")),
            ("Loads", str(value("loads_cut")), str(value("loads_whole"))), ("Dye days", str(value("days_cut")), str(value("days_whole"))),
            ("Skeins to tie for the pot", str(many), str(value("dyed_whole"))), ("More of it", f"tying, {r.text('tying', 'h')}", f"yarn, {r.text('more_yarn')}"))
    return Table("Cut first, or dyed whole", ("What", "Cut first", "Dyed whole"), rows, "Cut first rounds up once. Dyed whole, each shade rounds up by itself.")


def _stock(r, grams):
    strength = WEAK if grams < 1 else EVERYDAY
    return f"{r.measured(stock_volume(grams, strength), VOLUME, 'mL', 1)} of {strength:g} %"


def _dye(r, grams):
    return r.measured(grams, MASS, "g", 0.01)


def _depth(r, percent):
    return r.measured(percent, PERCENT, "%", 0.001)


def shades(r):
    """The shades in their order of work: depth, dye for each way, and its stock."""
    dyes, rows = r.given["dyes"], []
    for number, recipe in enumerate(r.kept["ladder"].recipes, 1):
        for row, percent in zip(dyes, recipe):
            grams, more = dye_mass(r.value("shade_cut"), percent), dye_mass(r.kept["shade_whole"], percent)
            rows.append((str(number), row.name, _depth(r, percent), _dye(r, grams), _stock(r, grams), _dye(r, more), _stock(r, more)))
    return Table("Shade by shade, in order of work", ("Day", "Dye", "Depth", "Cut first", "as stock", "Dyed whole", "as stock"), tuple(rows),
                 "Palest first: what stays in the pot then hurts the next shade least (common practice). Stock strengths are grams in 100 mL.")


def other_sizes(r):
    """What fewer and more small skeins from a full one would hold, and what the set then takes."""
    rows, reel, usable = [], r.given["reel"], r.kept["usable"]
    sets = r.given["sets"] + r.given["spare"]
    for per in range(max(1, r.value("per") - 1), r.value("per") + 3):
        turns = most_turns_for_count(usable, per, reel)
        if turns < 1:
            break
        length = turns * reel
        rows.append((str(per), str(turns), r.amount(length, LENGTH, "m", 4), str(printed_yards(length)), f"{printed_grams(mass_of_turns(turns, reel, r.kept['tex']))} g", r.amount(left_over(usable, per, length), LENGTH, "m", 3),
                     str(skeins_cut_first(r.given["days"], sets, per)), str(skeins_dyed_whole(r.given["days"], sets, per))))
    return Table("Other sizes of small skein", ("From one", "Turns", "Meters", "Yards", "Label", "Scrap", "Cut first", "Dyed whole"), tuple(rows))


def plan_sheet(r):
    """The plan to pin up: what to order, and each shade with boxes to tick."""
    sets = r.given["sets"] + r.given["spare"]
    done = tuple((str(number), " ".join(_depth(r, percent) for percent in recipe), " ".join(_dye(r, dye_mass(r.value("shade_cut"), percent)) for percent in recipe),
                  " ".join(_dye(r, dye_mass(r.kept["shade_whole"], percent)) for percent in recipe), "", "☐", "☐", "☐", f"☐ {sets}") for number, recipe in enumerate(r.kept["ladder"].recipes, 1))
    names = ", ".join(row.name for row in r.given["dyes"])
    head = Table(r.given["name"] or "The set", ("What", "Plan"), (("Sets", f"{r.given['sets']} and {r.given['spare']} spare"), ("Small skein", f"{r.value('turns')} turns, {r.text('small_length', 'm')}, {r.value('per')} from a skein"), ("Dyes, in this order", names),
                                                               ("Mill lot, date, who", "")))
    return head, side_by_side(r), Table("Shade by shade", ("Day", "Depth", "Cut first", "Dyed whole", "Lot numbers", "Dyed", "Dry", "Wound", "Stickers"), done)


def strip(r):
    ladder = r.kept["ladder"]
    return strip_picture(ladder.colors, [f"{sum(recipe):.2f}" for recipe in ladder.recipes], "dye, % of dry fiber")


def picture(r):
    per, sets = r.value("per"), r.given["sets"] + r.given["spare"]
    over = r.value("cut_first") - r.value("all_small") / per
    return set_picture([color.hex for color in r.kept["ladder"].colors], r.value("cut_first"), over, r.kept["each"], r.kept["each"] - sets / per)


CARD = Card(
    id="set-plan", chapter="sell", place=20, tall_sheet=True, handles=("powder",),
    question="How do I plan a numbered set?",
    inputs=(
        Input("name", TEXT, "Name of the set", record="product.name", default="Twelve Lamps", longest=40, optional=True),
        Input("days", COUNT, "Days, or shades", record="colorway.set_shades", default="12", allowed=("2", "60"), usual=("5", "31")),
        Input("sets", COUNT, "Sets to sell", default="24", allowed=("1", "1000"), usual=("5", "100")),
        Input("spare", COUNT, "Spare sets", default="2", allowed=("0", "200"), usual=("1", "10"), measure="For lost parcels and a bad knot."),
        Input("skein_mass", MASS, "A full skein weighs", record="base.mass", default="100 g", allowed=("1 g", "5 kg"), usual=("50 g", "250 g"), rough="1 %", units=("g", "oz"), bench="bases.mass"),
        Input("skein_length", LENGTH, "A full skein holds", record="base.length", default="420 m", allowed=("1 m", "20000 m"), usual=("100 m", "800 m"), rough="1.5 %", units=("m", "yd"), bench="bases.length"),
        Input("loss_share", PERCENT, "Lost in winding", default="2 %", allowed=("0 %", "50 %"), usual=("1 %", "3 %"), rough="0.5 %"),
        Input("wanted_by", CHOICE, "A small skein is given by", default=BY_TURNS, options=(Option(BY_TURNS, "Turns of the reel"), Option(BY_MASS, "Weight"), Option(BY_COUNT, "How many from one skein"))),
        Input("wanted_turns", COUNT, "Turns for each", default="54", allowed=("1", "5000"), usual=("10", "150"), when={"wanted_by": (BY_TURNS,)}),
        Input("wanted_mass", MASS, "Weight of each", default="20 g", allowed=("0.5 g", "1 kg"), usual=("5 g", "50 g"), units=("g", "oz"), when={"wanted_by": (BY_MASS,)}),
        Input("wanted_count", COUNT, "How many from one skein", default="5", allowed=("1", "200"), usual=("2", "20"), when={"wanted_by": (BY_COUNT,)}),
        Input("reel", LENGTH, "One turn of your reel, rested", default="1.50 m", allowed=("0.05 m", "10 m"), usual=("0.5 m", "2 m"), rough="0.5 %", units=("m", "cm", "in", "yd"), bench="reels.circumference"),
        Input("steps", CHOICE, "Steps between shades", default=RATIO, options=(Option(RATIO, "Equal ratios of dye"), Option(EVEN, "Even to the eye"), Option(PERCENTS, "Equal percents"))),
        Input("undyed", COLOR, "Undyed yarn", default="#efe6d2"),
        Rows("dyes", "Dyes", "dye", record="colorway.dyes", least=1, most=3, measure="A full-strength sample of each, and how much of it the first and the last shade get.",
             fields=(Input("name", TEXT, "Name", default="brown", longest=40), Input("sample", COLOR, "Color of its sample", default="#7a4a2b", lent=True),
                     Input("percent", PERCENT, "Depth of that sample", default="1.5 %", allowed=("0.05 %", "12 %"), usual=("0.5 %", "4 %"), strict=True, lent=True),
                     Input("first", PERCENT, "Depth on the first shade", default="0.05 %", allowed=("0 %", "12 %"), usual=("0 %", "4 %"), strict=True, lent=True),
                     Input("last", PERCENT, "Depth on the last shade", default="1 %", allowed=("0 %", "12 %"), usual=("0 %", "4 %"), strict=True, lent=True)),
             default=({"name": "navy", "sample": "#27406a", "percent": "2 %", "first": "0.08 %", "last": "1.92 %"},)),
        Input("load", COUNT, "Full skeins in a load", default="4", allowed=("1", "200"), usual=("1", "20"), measure="See “How long does the whole run take?”."),
        Input("a_day", COUNT, "Loads in a day", default="6", allowed=("1", "100"), usual=("1", "12"), measure="Pots times rounds."),
        Input("scale_step", MASS, "The dye scale shows steps of", default="0.01 g", allowed=("0.0001 g", "1 g"), usual=("0.001 g", "0.1 g"), units=("g",), strict=True),
        Input("skein_cost", MONEY, "A full skein of base costs", record="base.cost", default="9.20", allowed=("0", "1000"), usual=("2", "60")),
        Input("tie", TIME, "Winding and tying one more for the pot takes", default="1.5 min", allowed=("0 min", "60 min"), usual=("0.5 min", "5 min"), rough="30 %", units=("min",), measure="Before dyeing; small skeins tangle."),
    ),
    results=(
        Result("cut_first", COUNT, "Full skeins, cut first", rounding="up"),
        Result("dyed_whole", COUNT, "Full skeins, dyed whole", rounding="up"),
        Result("per", COUNT, "Small skeins from one", rounding="down"),
        Result("turns", COUNT, "Turns for each"),
        Result("small_length", LENGTH, "Length of a small skein", units=("m", "yd"), finest=(0.1, 1), rounding="down"),
        Result("small_mass", MASS, "Weight of a small skein", units=("g", "oz"), finest=(0.1, 0.01), rounding="down"),
        Result("all_small", COUNT, "Small skeins, and day stickers, in all"),
        Result("margin", LENGTH, "Left of each full skein", units=("m", "yd"), finest=(0.1, 0.1)),
        Result("last_short", PERCENT, "Chance that a skein's last one is short", chance=Chance("margin", below=0.0)),
        Result("shade_cut", MASS, "Yarn of one shade, cut first", units=("g", "oz"), finest=(1, 0.1)),
        Result("dye_cut", MASS, "Dye, cut first", units=("g",), finest=(0.1,), rounding="up"),
        Result("dye_whole", MASS, "Dye, dyed whole", units=("g",), finest=(0.1,), rounding="up"),
        Result("ratio", NUMBER, "Each shade against the one before", finest=(0.001,)),
        Result("loads_cut", COUNT, "Loads, cut first", rounding="up"),
        Result("loads_whole", COUNT, "Loads, dyed whole", rounding="up"),
        Result("days_cut", COUNT, "Dye days, cut first", rounding="up"),
        Result("days_whole", COUNT, "Dye days, dyed whole", rounding="up"),
        Result("more_yarn", MONEY, "Dyed whole costs more yarn", finest=(0.01,)),
        Result("tying", TIME, "Cut first takes more tying", units=("h",), finest=(0.1,)),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture, strip), tables=(side_by_side, shades, other_sizes), papers=(Paper("Set plan, A4", "A4", plan_sheet),),
    basis=Basis(MODEL, "Whole turns and whole skeins only. Depths by the chosen kind of step; dye is depth times the yarn really dyed, spares and all."),
    sources=(TEXTILE_PAGES_RECIPE, KM_APPLICATION_NOTE, SHARMA_2005, COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("Many small doses of powder.", "Weigh them in one go, still air, mask and gloves on, or dose from stock. One short shade kills every set: wind and weigh the first of each before the rest. "
                      "The maker’s safety data sheet comes first."),),
    carry=(Carry("shade-steps", "See the steps, even and weighed", {"undyed": "undyed", "dyes": ways.set_dyes, "count": "days", "fiber": "shade_cut", "scale_step": "scale_step"}), Carry("skein-split", "Split one skein", {"skein_mass": "skein_mass", "skein_length": "skein_length", "loss_share": "loss_share", "reel": "reel", "total": "all_small"}),
           Carry("pots", "How long does the whole run take?", {"recipes": ways.set_recipes, "skein_mass": "skein_mass"}), Carry("release-plan", "Plan a release with it", {"products": ways.set_product, "colorways": ways.set_colorway, "load": "load", "a_day": "a_day"}),
           Carry("back-plan", "By when must I do what?", {"dye_days": "days_whole"}), Carry("label", "Day stickers", {"kind": lambda r: "sticker", "of_set": "name", "last": "days", "copies": lambda r: str(min(r.given["sets"] + r.given["spare"], 600))})),
)
