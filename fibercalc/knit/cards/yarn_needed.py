"""How much yarn a project takes, and how many skeins to buy for a wished chance of not running out."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, TEXT, Basis, Card, Carry, Caution, Chance, Input, Option, Result, Rows
from ...core.problem import Refused
from ...core.table import read_table
from ...core.units import AREA, COUNT, LENGTH, LINEAR_DENSITY, MASS, NUMBER, PER_LENGTH, PERCENT
from ...sources import (ARITHMETIC, COMMON_PRACTICE, CRAFT_YARN_COUNCIL, CRAFT_YARN_COUNCIL_SIZES, GATE_TEXTILE_2015, HEAD_GIRTHS_ADULTS,
                        HEAD_GIRTHS_GIRLS, MUNDEN_1959, TRADE_PAGE_YARDAGE)
from ..loop import TIGHTNESS_OF, USUAL, stitch_length_from_tightness, yarn_on_area, yarn_on_area_from_stitch
from ..needs import BUFFERS, KNITTER_ERROR, LOOP_ERROR, TIGHTNESS_ERROR, combined, length_by_loop, length_by_swatch
from ..odds import each_count, share_of, smallest_enough
from ..pictures.odds import odds_picture
from ..pictures.schematic import schematic
from ..projects import flat, hat, mittens, shawl, socks, sweater
from ..projects.measure import SIZE_BY, TABLE
from ..trade_rules import length_by_area_rule, length_by_needle_rule

SQUARE_CM = 1e-4
YARN, GAUGE, SWATCH, PATTERN = "yarn", "gauge", "swatch", "pattern"
STRUCTURES = {row["key"]: row for row in read_table("knit", "structure-factors").rows}
CROCHET = tuple(key for key in STRUCTURES if key.endswith("crochet"))
STATES = tuple(Option(row["state"], row["label"]) for row in read_table("wash", "munden-constants").rows)
MAKES = (Option("sweater", "A sweater"), Option("hat", "A hat"), Option("mittens", "A pair of mittens"), Option("socks", "A pair of socks"),
         Option("cowl", "A cowl or other tube"), Option("scarf", "A scarf or wrap"), Option("blanket", "A blanket"), Option("shawl", "A shawl"))


MAKERS = {"sweater": sweater.cloth, "hat": hat.cloth, "mittens": mittens.cloth, "socks": socks.cloth, "cowl": flat.tube, "scarf": flat.flat, "blanket": flat.flat,
          "shawl": shawl.cloth}


def _renamed_head(pairs):
    """Links of version 1 knew one baby, of 14 in around: that is a newborn one, not one of 12 months."""
    return pairs | ({"o": "newborn"} if pairs.get("o") == "baby" else {})


MEASURES = {each.name for each in (SIZE_BY, *sweater.INPUTS, *hat.INPUTS, *mittens.INPUTS, *socks.INPUTS, *flat.INPUTS, *shawl.INPUTS)}


def answer(w, known, make, size_by, size, ease, construction, chest, body, sleeve, upper_arm, wrist, yoke, neck, band, head_size, head, hat_ease, hat_height, turn_up,
           hand, hand_length, cuff, foot_length, foot_girth, leg, sock_ease, around, height, width, length, shape, span, depth, structure, stitches, rows, state,
           swatch_width, swatch_length, swatch_mass, pattern_length, pattern_buffer, skein_mass, skein_length, ends, needle, many, colors, sure):
    measures = {name: value for name, value in locals().items() if name in MEASURES}
    if sure == "99" and known != SWATCH:
        raise Refused("How sure: 99 in 100 takes a measured gauge and a weighed swatch; choose 95 or less, or weigh a swatch.", "sure")
    found = dict.fromkeys(("area", "by_loop", "by_swatch", "by_area_rule", "by_needle_rule"))
    tex = w.step("tex", "1000 * skein_mass / skein_length", 1000 * skein_mass / skein_length, LINEAR_DENSITY, label="The yarn")
    cloth = None
    if known == PATTERN:
        holds, half = BUFFERS[pattern_buffer]
        name, bare = "bare", w.step("bare", f"pattern_length / {holds:g}", pattern_length / holds, LENGTH, label="The pattern’s figure without a buffer")
        error = combined((KNITTER_ERROR, 1.96 * half / 3**0.5 / holds))
    else:
        cloth = MAKERS[make](w, measures)
        area = w.step("area", cloth.sum_text, cloth.area, AREA, "cm²", "Cloth in all")
        found["area"] = area * SQUARE_CM
        size_error = sweater.SIZE_ERROR if make == "sweater" and size_by == TABLE else 0.0
        bare, name, error = _need(w, found, known, make, area, tex, structure, state, stitches, rows, (swatch_width, swatch_length, swatch_mass), size_error)
        if known != YARN and structure == "plain":
            _rules(w, found, area, stitches, rows, needle)
    need = w.step("need", f"{name} + ends", bare + ends, LENGTH, label="Yarn needed")
    mass = w.step("mass", "need * skein_mass / skein_length", need * skein_mass / skein_length, MASS, label="Its weight")
    skeins = w.step("skeins", "need / skein_length", need / skein_length, NUMBER, label="In skeins")
    for result, scale in (("need", 1.0), ("mass", tex / 1000), ("skeins", 1 / skein_length)):
        w.error(result, bare * error * scale)
    if name == "by_loop" and structure != "plain":
        row = STRUCTURES[structure]
        for result, scale, more in (("by_loop", 1.0, 0.0), ("need", 1.0, ends), ("mass", tex / 1000, ends), ("skeins", 1 / skein_length, ends)):
            w.band(result, *((bare * row[end] / row["middle"] + more) * scale for end in ("low", "high")))
    return found | {"need": need, "mass": mass, "skeins": skeins, "cloth": cloth}


def _need(w, found, known, make, area, tex, structure, state, stitches, rows, swatch, size_error):
    """The yarn in the cloth, m, the step that says it, and its error as a share. Beside a swatch the loop model gives its own answer."""
    row = STRUCTURES[structure]
    if known != SWATCH and row["middle"] == "":
        raise Refused(f"Stitch: {row['label']} has no published figure; weigh a washed swatch of it.", "structure")
    if known == GAUGE and structure in CROCHET:
        raise Refused("Stitch: the gauge speaks of knit loops, and crochet has none; weigh a washed swatch, or choose “Only the yarn”.", "structure")
    error = combined((KNITTER_ERROR, LOOP_ERROR, size_error, TIGHTNESS_ERROR if known == YARN else 0.0))
    if known != SWATCH or structure == "plain":
        found["by_loop"] = _by_loop(w, known, make, area, tex, structure, state, stitches, rows)
        w.error("by_loop", found["by_loop"] * error)
    if known != SWATCH:
        return found["by_loop"], "by_loop", error
    width, length, mass = swatch
    w.step("swatch_area", "swatch_width * swatch_length", width * length, AREA, "cm²", "Swatch")
    found["by_swatch"] = length_by_swatch(area, width * length, mass, tex)
    w.step("by_swatch", "swatch_mass / swatch_area * area / tex * 1000", found["by_swatch"], LENGTH, label="By the weighed swatch")
    error = combined((KNITTER_ERROR, size_error))
    w.error("by_swatch", found["by_swatch"] * error)
    return found["by_swatch"], "by_swatch", error


def _by_loop(w, known, make, area, tex, structure, state, stitches, rows):
    """The loop model's answer, m, from the gauge or from the yarn alone."""
    constant = w.looked_up("loop_constant", "wash", "munden-constants", "state", state or "wet", "Ks", label="Loop constant Ks")
    if known == YARN:
        tightness = TIGHTNESS_OF.get(make, USUAL)
        stitch = stitch_length_from_tightness(tex, tightness)
        w.step("stitch", f"sqrt(tex) / {tightness:g}", 1000 * stitch, LENGTH, "mm", "Yarn in one stitch, as this yarn is usually knitted")
        on_area = w.step("on_area", "10 * loop_constant / stitch", yarn_on_area_from_stitch(stitch, constant), label="Yarn in a square centimeter, cm")
    else:
        on_area = w.step("on_area", "sqrt(loop_constant * stitches * rows)", yarn_on_area(stitches, rows, constant), label="Yarn in a square centimeter, cm")
    if structure == "plain":
        return w.step("by_loop", "on_area * area / 100", length_by_loop(area, on_area, 1.0), LENGTH, label="By the loop model")
    factor = w.looked_up("factor", "knit", "structure-factors", "key", structure, "middle", label="This stitch against stocking stitch")
    return w.step("by_loop", "on_area * area * factor / 100", length_by_loop(area, on_area, factor), LENGTH, label="By the loop model")


def _rules(w, found, area, stitches, rows, needle):
    """Two rules of the trade, as a check from outside: plain cloth of a known gauge only."""
    found["by_area_rule"] = length_by_area_rule(area, stitches)
    w.step("by_area_rule", "area / 2.54 ** 2 * (stitches * 2.54) / 6 * 0.9144", found["by_area_rule"], LENGTH, label="Trade rule: length × width × stitches per inch ÷ 6")
    if needle:
        count = w.step("count", "area * stitches * rows", area * stitches * rows, NUMBER, label="Stitches in all")
        found["by_needle_rule"] = length_by_needle_rule(count, 1000 * needle)
        w.step("by_needle_rule", "pi * needle * 1000 * count * 1.5 / 1000", found["by_needle_rule"], LENGTH, label="Trade rule: π × needle × stitches × 1.5")


def _sure(r):
    return float(r.given["sure"]) / 100


def _by_color(r):
    """For each color its name, skeins needed, their spread, how many to buy."""
    rows = r.given["colors"] if r.given["many"] == "yes" else []
    whole = sum(row.share for row in rows)
    found = []
    for row, reading in zip(rows, (r.readings[f"colors.{number}.share"] for number in range(1, len(rows) + 1))):
        needed, parts = share_of(r.value("skeins"), r.found["skeins"].parts, row.share / whole, min(reading.rough / whole, 1.0))
        found.append((row.name, needed, parts, smallest_enough(needed, parts, _sure(r))))
    return found


def to_buy(r):
    """How many skeins to buy, so that the wished chance holds: color by color where there are several."""
    if r.given["many"] == "yes":
        return sum(count for _, _, _, count in _by_color(r))
    return smallest_enough(r.value("skeins"), r.found["skeins"].parts, _sure(r))


def say(r):
    need = f"About {r.said('need')} are needed, {r.span('need')}."
    if r.given["many"] == "yes":
        colors = _by_color(r)
        parts = [f"{count} of {name}" for name, _, _, count in colors]
        name, needed, spread, count = min(colors, key=lambda color: color[2].chance_below(color[3] - color[1]))
        return (f"Buy {_skeins(r.value('buy'))}: {', '.join(parts[:-1])} and {parts[-1]}." if len(parts) > 1 else f"Buy {_skeins(r.value('buy'))}.",
                f"{need} The tightest color is {name}: {_skeins(count)} {_are(count)} enough for {r.in_100(spread.chance_below(count - needed))} knitters.")
    count = r.value("buy")
    first = f"Buy {_skeins(count)}: enough for {r.text('enough')} knitters."
    if count == 1:
        return first, need
    fewer = r.chance_below("skeins", count - 1)
    return first, f"{need} {_skeins(count - 1)} would be enough for {r.in_100(fewer)}." if fewer >= 0.01 else need


def _skeins(count):
    return f"{count:.0f} {'skein' if count == 1 else 'skeins'}"


def _are(count):
    return "is" if count == 1 else "are"


def notes(r):
    said = []
    if r.has("by_swatch") and r.has("by_loop"):
        swatch, loop = _half(r, "by_swatch"), _half(r, "by_loop")
        said.append(f"The weighed swatch says {r.text('by_swatch')}, the loop model {r.text('by_loop')}. With the swatch the range is ± {swatch:.0f} %, without it ± {loop:.0f} %.")
        if r.low("by_swatch") > r.high("by_loop") or r.low("by_loop") > r.high("by_swatch"):
            said.append("They do not meet: see that the swatch was washed, dry and weighed alone, and that the gauge was counted on it.")
    if r.given["known"] == YARN:
        said.append("Nothing is known but the yarn, so the range holds loose and tight knitters alike. A gauge narrows it, a weighed washed swatch narrows it most.")
    if r.given["known"] == PATTERN:
        said.append({"held": "The pattern’s buffer was taken off again (common practice: 5 to 15 %), so that it is not added twice: the odds hold one of their own.",
                     "unknown": "Nobody knows whether this figure holds a buffer, so it may hold none or a tenth.", "none": "The figure is taken as bare; the odds add what is needed."}
                    [r.given["pattern_buffer"]])
    if r.has("by_area_rule"):
        rule = f"length × width × stitches per inch ÷ 6 gives {r.text('by_area_rule')}"
        needle = f"; π × needle × stitches × 1.5 gives {r.text('by_needle_rule')}" if r.has("by_needle_rule") else ""
        said.append(f"Two rules of the trade, which know nothing of this model: {rule}{needle}." if needle else f"A rule of the trade, which knows nothing of this model: {rule}.")
    if r.given["many"] == "yes":
        said.append("Each color is bought by itself, so that each alone holds the wished chance; that all of them do is a little less likely.")
    return said


def _half(r, name):
    return 100 * (r.high(name) - r.low(name)) / 2 / r.value(name)


def odds_table(r):
    """The chance for each whole number of skeins, or for each color what to buy."""
    if r.given["many"] == "yes":
        rows = tuple((name, r.amount(needed * r.given["skein_length"], LENGTH, "yd"), r.amount(needed * r.given["skein_length"], LENGTH, "m"), str(count),
                      r.in_100(parts.chance_below(count - needed)), f"{100 * (count / needed - 1):.0f} %") for name, needed, parts, count in _by_color(r))
        return Table("Color by color", ("Color", "Yards", "Meters", "Buy", "Enough for", "Spare, usually"), rows)
    counts = each_count(r.value("skeins"), r.found["skeins"].parts)
    length, mass = r.given["skein_length"], r.given["skein_mass"]
    rows = tuple((str(count), r.amount(count * length, LENGTH, "yd"), r.amount(count * length, LENGTH, "m"), r.amount(count * mass, MASS, "g"), r.in_100(chance))
                 for count, chance in counts)
    return Table("How many skeins, and for how many knitters they are enough", ("Skeins", "Yards", "Meters", "Grams", "Enough for"), rows)


def odds(r):
    if r.given["many"] == "yes":
        return None
    return odds_picture(each_count(r.value("skeins"), r.found["skeins"].parts), _sure(r), r)


def outline(r):
    return schematic(r.given["make"], r.kept["cloth"].measures, r) if r.kept["cloth"] else None


MADE = {"known": (YARN, GAUGE, SWATCH)}
COUNTED, WEIGHED, PRINTED = {"known": (GAUGE, SWATCH)}, {"known": (SWATCH,)}, {"known": (PATTERN,)}

CARD = Card(
    id="yarn-needed", chapter="knit", place=10,
    question="How many skeins do I need?",
    inputs=(
        Input("known", CHOICE, "What you go by", default=SWATCH,
              options=(Option(SWATCH, "A weighed, washed swatch"), Option(GAUGE, "A gauge"), Option(YARN, "Only the yarn"), Option(PATTERN, "The pattern’s own figure"))),
        Input("make", CHOICE, "What it will be", default="sweater", options=MAKES, when=MADE),
        SIZE_BY, *sweater.INPUTS, *hat.INPUTS, *mittens.INPUTS, *socks.INPUTS, *flat.INPUTS, *shawl.INPUTS,
        Input("structure", CHOICE, "Stitch", default="plain", when=MADE, options=tuple(Option(key, row["label"]) for key, row in STRUCTURES.items())),
        Input("stitches", PER_LENGTH, "Stitches", record="measurement.stitches", default="20 per 10 cm", allowed=("2 per 10 cm", "200 per 10 cm"), usual=("10 per 10 cm", "40 per 10 cm"), rough="0.5 per 10 cm",
              units=("per 10 cm", "per 4 in", "per in", "per cm"), when=COUNTED, measure="In stocking stitch, washed and dry, counted over as much as you have."),
        Input("rows", PER_LENGTH, "Rows", record="measurement.rows", default="27 per 10 cm", allowed=("2 per 10 cm", "300 per 10 cm"), usual=("12 per 10 cm", "60 per 10 cm"), rough="0.5 per 10 cm",
              units=("per 10 cm", "per 4 in", "per in", "per cm"), when=COUNTED),
        Input("state", CHOICE, "The gauge was counted", record="measurement.state", default="wet", options=STATES, when=COUNTED),
        Input("swatch_width", LENGTH, "Swatch, width", default="15 cm", allowed=("4 cm", "200 cm"), usual=("10 cm", "30 cm"), rough="0.2 cm", units=("cm", "in"), unit="cm", when=WEIGHED,
              instrument="swatch tape", measure="The whole piece that you weigh, edge to edge."),
        Input("swatch_length", LENGTH, "Swatch, length", default="15 cm", allowed=("4 cm", "200 cm"), usual=("10 cm", "30 cm"), rough="0.2 cm", units=("cm", "in"), unit="cm", when=WEIGHED,
              instrument="swatch tape"),
        Input("swatch_mass", MASS, "Swatch, weight", default="10.3 g", allowed=("0.2 g", "2 kg"), usual=("3 g", "60 g"), rough="0.1 g", units=("g", "oz"), when=WEIGHED,
              measure="Washed, dry and rested, with its ends: a swatch carries its share of casting on and weaving in."),
        Input("pattern_length", LENGTH, "Yarn, as the pattern gives it", default="900 m", allowed=("1 m", "20000 m"), usual=("100 m", "2000 m"), units=("m", "yd"), when=PRINTED,
              measure="For your size, as length; a weight says nothing without its yarn."),
        Input("pattern_buffer", CHOICE, "Does that figure hold a buffer already?", default="unknown", when=PRINTED,
              options=(Option("unknown", "It does not say"), Option("held", "Yes, some is added"), Option("none", "No, it is what was used"))),
        Input("skein_mass", MASS, "A skein weighs", default="100 g", allowed=("5 g", "2 kg"), usual=("20 g", "250 g"), rough="1.5 %", units=("g", "oz"), bench="bases.mass", record="base.mass"),
        Input("skein_length", LENGTH, "A skein holds", default="230 m", allowed=("5 m", "10000 m"), usual=("50 m", "900 m"), rough="1.5 %", units=("m", "yd"), bench="bases.length", record="base.length",
              measure="As on its band, in meters or yards; grams are not asked here."),
        Input("ends", LENGTH, "Ends, seams, fringe", default="0 m", allowed=("0 m", "2000 m"), usual=("0 m", "40 m"), units=("m", "yd"),
              measure="Casting on and weaving in are in the swatch or the spread already; give pompons, seams and fringe."),
        Input("needle", LENGTH, "Needle", record="measurement.needle", allowed=("1 mm", "60 mm"), usual=("2 mm", "10 mm"), units=("mm",), optional=True, when=COUNTED, measure="Only for a rule of the trade that goes by it."),
        Input("many", CHOICE, "Colors", default="no", options=(Option("no", "One"), Option("yes", "Several"))),
        Rows("colors", "Colors", "color", least=2, most=12, when={"many": ("yes",)}, measure="By share of the yarn: what they add up to is taken as the whole.",
             fields=(Input("name", TEXT, "Name", default="Another color", longest=30, lent=False),
                     Input("share", NUMBER, "Share", default="20", allowed=("0.5", "1000"), rough="2")),
             default=({"name": "Main", "share": "50"}, {"name": "Second", "share": "27"}, {"name": "Third", "share": "23"})),
        Input("sure", CHOICE, "How sure", default="95",
              options=tuple(Option(each, f"{each} in 100{' (gauge and swatch measured)' if each == '99' else ''}") for each in ("80", "90", "95", "99"))),
    ),
    results=(
        Result("buy", COUNT, "Skeins to buy", rounding="up", decided=to_buy),
        Result("enough", PERCENT, "Enough for", chance=Chance("skeins", below=lambda r: r.value("buy"))),
        Result("need", LENGTH, "Yarn needed", units=("yd", "m"), finest=(1, 1), rounding="up", floor=0.0),
        Result("mass", MASS, "Its weight", units=("g", "oz"), finest=(1, 0.1), rounding="up", floor=0.0),
        Result("skeins", NUMBER, "In skeins", finest=(0.01,), rounding="up", floor=0.0),
        Result("area", AREA, "Cloth", units=("cm²", "in²"), finest=(1, 1), floor=0.0),
        Result("by_swatch", LENGTH, "By the weighed swatch", units=("yd", "m"), finest=(1, 1), rounding="up", floor=0.0),
        Result("by_loop", LENGTH, "By the loop model", units=("yd", "m"), finest=(1, 1), rounding="up", floor=0.0),
        Result("by_area_rule", LENGTH, "Trade rule, by stitches", units=("yd", "m"), finest=(1, 1), rounding="up"),
        Result("by_needle_rule", LENGTH, "Trade rule, by needle", units=("yd", "m"), finest=(1, 1), rounding="up"),
    ),
    answer=answer, say=say, notes=notes, pictures=(odds, outline), tables=(odds_table,),
    link_version=2, upgrades={1: _renamed_head},
    basis=Basis(MODEL, "Cloth from its outline; yarn from a weighed swatch, or the loops of plain knitting (Munden). Odds from the ranges of all measures and of the model: "
                       "a garment strays 9 % from its swatch, hand gauges 10 % from the model (common practice, 95 %)."),
    sources=(MUNDEN_1959, GATE_TEXTILE_2015, CRAFT_YARN_COUNCIL, CRAFT_YARN_COUNCIL_SIZES, HEAD_GIRTHS_GIRLS, HEAD_GIRTHS_ADULTS, TRADE_PAGE_YARDAGE, COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("Buy all of it from one lot.", "A second dye lot seldom matches. Wash the swatch before it is weighed: superwash yarn changes most."),),
    carry=(Carry("enough-left", "Will what is left be enough?", {}), Carry("yarn-instead", "Use another yarn for it", {"theirs_mass": "skein_mass", "theirs_length": "skein_length", "need_by": lambda r: "length", "need_length": "need",
                                                                     "stitches": "stitches", "rows": "rows"}),),
)
