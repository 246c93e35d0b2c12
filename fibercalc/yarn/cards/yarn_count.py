"""What a yarn count is in the other systems: from one number, from the weight and length of a put-up, or from the singles of a plied yarn."""

from ...core.amount import NO_BREAK
from ...core.answer import Table
from ...core.card import CHOICE, STANDARD, Basis, Card, Carry, Input, Option, Result, Rows
from ...core.picture import INDIGO, SOFT, Drawing, Scale
from ...core.problem import Refused
from ...core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, PERCENT
from ...sources import ARITHMETIC, ASTM_D2260, BROOKS, COUNT_CONVERSION_TABLE, TRADE_MEMORY, TRADE_PAGE_COUNTS
from ..count import COARSEST_TEX, FINEST_TEX, count_from_tex, count_systems, linear_density
from ..plied import plied_count, plied_tex

BY_NUMBER, BY_PUTUP, BY_SINGLES = "count", "put-up", "singles"
UNITS = ("tex", "yd/lb", "m/100 g", "yd/100 g", "Nm", "Ne", "Nw", "run", "cut", "lea", "den", "dtex", "yd/oz", "m/g", "m/kg")
FINEST, COARSEST = "0.1 tex", "100000 tex"
LAST_GIVEN = {BY_PUTUP: "mass", BY_SINGLES: "singles.1.count"}  # where a refusal is shown
RULERS = (("tex", ""), ("m/100 g", ""), ("yd/lb", ""), ("Ne", ", cotton"), ("Nw", ", worsted"))
ROUND_NUMBERS = (1, 1.5, 2, 3, 5, 7)


def answer(w, known, count, length, mass, singles, take_up):
    tex, name = (count, "count") if known == BY_NUMBER else (None, "linear_density")
    if known == BY_PUTUP:
        tex = w.step("linear_density", "1000 * mass / length", linear_density(mass, length), LINEAR_DENSITY, label="Grams in 1,000 m")
    elif known == BY_SINGLES:
        tex = _plied(w, singles, take_up)
    if not FINEST_TEX <= tex <= COARSEST_TEX:
        raise Refused(f"These together make a yarn of {tex:.3g} tex; look at weight and length again, the units too.", LAST_GIVEN[known])
    metric = count_from_tex(tex, "Nm")
    if known != BY_SINGLES:
        w.step("metric_count", f"1000 / {name}", metric, LINEAR_DENSITY, "Nm", "Meters in a gram")
    w.step("yards_per_pound", f"1000 * 453.59237 / (0.9144 * {name})", count_from_tex(tex, "yd/lb"), LINEAR_DENSITY, "yd/lb", "Yards in a pound")
    w.step("cotton_count", "yards_per_pound / 840", count_from_tex(tex, "Ne"), LINEAR_DENSITY, "Ne", "Cotton hanks in a pound")
    w.step("worsted_count", "yards_per_pound / 560", count_from_tex(tex, "Nw"), LINEAR_DENSITY, "Nw", "Worsted hanks in a pound")
    putup_length = w.step("putup_length", "mass * metric_count", mass * metric, LENGTH, label="Length in the put-up")
    return {"linear_density": tex, "putup_length": putup_length}


def _plied(w, singles, take_up):
    """The plied yarn's tex; the indirect formula beside it, because most yarn is sold by an indirect count."""
    strands = [row.count for row in singles for _ in range(row.strands)]
    numbers = range(1, len(singles) + 1)
    w.step("together", " + ".join(f"singles[{at}].strands * singles[{at}].count" for at in numbers), sum(strands), LINEAR_DENSITY, label="All singles together, direct")
    tex = w.step("linear_density", "together / (1 - take_up / 100)", plied_tex(strands, take_up), LINEAR_DENSITY, label="Plied, and shortened by the take-up")
    shares = " + ".join(f"singles[{at}].strands / (1000 / singles[{at}].count)" for at in numbers)
    w.step("metric_count", f"(1 - take_up / 100) / ({shares})", plied_count([1000 / one for one in strands], take_up), LINEAR_DENSITY, "Nm",
           "The same by indirect (metric) counts, 1,000 ÷ tex")
    return tex


def say(r):
    first = f"This yarn is {r.said('linear_density')}."
    metric, cotton, worsted = (r.bare("linear_density", sign) for sign in ("Nm", "Ne", "Nw"))
    others = f"Metric count {metric}, cotton count {cotton}, worsted count {worsted}."
    if r.value("putup_length") < 1:
        return first, others
    mass = r.amount(r.given["mass"], MASS, r.readings["mass"].amount.unit.sign)
    return first, f"{others} A put-up of {mass} holds {r.promised('putup_length')}, rounded down as it may be printed."


def notes(r):
    said = ["A direct number (tex, denier) weighs a fixed length: bigger is thicker. All the others count length in a fixed weight: bigger is finer."]
    if r.given["known"] == BY_SINGLES:
        said.append("A name such as 2/20s is nominal: two singles of 20 make 10 with no take-up. What plying takes up makes the real yarn a little thicker.")
    if r.given["known"] == BY_PUTUP:
        said.append("A put-up is only as true as its weight and its length: a skein 3 g damp makes a count 3 % too thick.")
    return said


def every_system(r):
    rows = tuple((row["name"].capitalize(), r.text("linear_density", row["unit"]), row["counts"], "thicker" if row["kind"] == "direct" else "finer") for row in count_systems().rows)
    return Table("This yarn in every system", ("System", "This yarn", "It counts", "Bigger is"), rows)


def picture(r):
    """The systems as rulers side by side, this yarn under one line through all of them: thicker to the right."""
    tex, reach = r.value("linear_density"), 2.6
    scale = Scale(tex / reach, tex * reach, 16, 344, logarithmic=True)
    drawing = Drawing(30 + 54 * len(RULERS))
    drawing.text(16, 16, "← finer", fill=SOFT)
    drawing.text(344, 16, "thicker →", anchor="end", fill=SOFT)
    drawing.line(180, 22, 180, 20 + 54 * len(RULERS), stroke=INDIGO, width=2.5)
    y = 44
    for sign, kind in RULERS:
        unit = LINEAR_DENSITY.unit(sign)
        drawing.text(188, y - 4, r.text("linear_density", sign) + kind, bold=True)
        drawing.line(16, y + 4, 344, y + 4)
        for number in _ticks(*sorted((unit.from_base(tex / reach), unit.from_base(tex * reach)))):
            at = scale(unit.to_base(number))
            drawing.line(at, y + 4, at, y + 10)
            if abs(at - 180) > 24:
                written = r.number(number) if number >= 1000 else r.amount(unit.to_base(number), LINEAR_DENSITY, sign).partition(NO_BREAK)[0]
                drawing.text(at, y + 23, written, anchor="middle", size=12, fill=SOFT)
        y += 54
    return drawing.picture("The same yarn on five rulers", "Rulers of count systems with one line through them at this yarn: "
                           + ", ".join(r.text("linear_density", sign) + kind for sign, kind in RULERS) + ". Thicker yarn lies to the right.")


def _ticks(low, high):
    """Round numbers between two ends, for a logarithmic ruler."""
    found, decade = [], 1e-6
    while decade <= high:
        found += [decade * number for number in ROUND_NUMBERS if low <= decade * number <= high]
        decade *= 10
    return found


CARD = Card(
    id="yarn-count", chapter="yarn", place=40,
    question="What is this yarn count in the other systems?",
    inputs=(
        Input("known", CHOICE, "What you know of the yarn", default=BY_NUMBER,
              options=(Option(BY_NUMBER, "Its count in one system"), Option(BY_PUTUP, "Weight and length of a put-up"), Option(BY_SINGLES, "The singles it is plied from"))),
        Input("count", LINEAR_DENSITY, "Count", default="238 tex", allowed=(FINEST, COARSEST), usual=("15 tex", "2000 tex"), units=UNITS, when={"known": (BY_NUMBER,)},
              measure="Choose the system first: 20 in cotton count is not 20 in worsted count."),
        Input("length", LENGTH, "Length of the put-up", default="420 m", allowed=("0.1 m", "200 km"), usual=("50 m", "2000 m"), units=("m", "yd"), when={"known": (BY_PUTUP,)},
              measure="From the label, or better as you measured it."),
        Input("mass", MASS, "Weight of the put-up", default="100 g", allowed=("0.1 g", "10 kg"), usual=("20 g", "1 kg"), units=("g", "oz", "kg", "lb"),
              measure="Yarn only, rested and dry."),
        Rows("singles", "Singles in the plied yarn", "single", least=1, most=8, when={"known": (BY_SINGLES,)},
             measure="One row for each kind of single.",
             fields=(Input("strands", COUNT, "Strands of it", default="1", allowed=("1", "50"), usual=("1", "8")),
                     Input("count", LINEAR_DENSITY, "Count of this single", default="56.5 tex", allowed=(FINEST, COARSEST), units=UNITS)),
             default=({"strands": "4", "count": "56.5 tex"},)),
        Input("take_up", PERCENT, "Take-up in plying", default="5 %", allowed=("0 %", "50 %"), usual=("0 %", "10 %"), when={"known": (BY_SINGLES,)},
              measure="How much shorter the plied yarn is than its singles. 0 for a nominal count; handspun yarn mostly 5 to 10 % (from memory, unverified)."),
    ),
    results=(
        Result("linear_density", LINEAR_DENSITY, "Count of the yarn", units=("yd/lb", "m/100 g", "tex")),
        Result("putup_length", LENGTH, "Length in the put-up, to print", units=("yd", "m"), finest=(1, 1), at_step=True, rounding="down"),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(every_system,),
    basis=Basis(STANDARD, "Counts are defined by hanks of exact yards to the exact pound, or by grams to exact meters; each is turned into tex and from there into the others. "
                          "In a plied yarn weights add up, and the length is shortened by the take-up."),
    sources=(ASTM_D2260, COUNT_CONVERSION_TABLE, TRADE_PAGE_COUNTS, BROOKS, ARITHMETIC, TRADE_MEMORY),
    carry=(Carry("yarn-diameter", "How thick is it?", {"count": "linear_density"}), Carry("reel-turns", "How many turns of the reel?", {"count": "linear_density"})),
)
