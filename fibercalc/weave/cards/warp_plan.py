"""A whole run of pieces on one warp: ends, width, length, picks and yarn, each loss divided out, and whether it fits the loom."""

from math import ceil

from ...core.card import CHOICE, MODEL, TEXT, Basis, Card, Carry, Caution, Chance, Input, Option, Result, Rows
from ...core.paper import Paper
from ...core.problem import Refused
from ...core.units import COUNT, LENGTH, MASS, NUMBER, PER_LENGTH, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, ISO_5077, MAGAZINE_TOWELS, TRADE_MEMORY, TRADE_PAGE_SHRINKAGE, TRADE_PAGES_WARP
from ...wash.shrink import size_after, size_before
from ..chain import finished_width, pick_length, warp_for_woven, width_in_heddle
from ..ends import ends_for_width, ends_that_fit
from ..pictures.onward import plan_count, plan_ends, plan_hem, plan_hem_yarn, plan_piece_picks, plan_pieces, plan_warp, plan_yarn, plan_yarns
from ..pictures.warp_run import along, changes, lost, warp_picture
from ..pictures.warp_sheets import loom_sheet, notes, sizes_picture
from ..pictures.warp_yarn import balls, order, yarn_sheet, yarns
from ..pictures.written import bare, in_inches, long, name_of, short

WIDTH, ENDS = "width", "ends"
ONE, REPEATED, ONCE = "one", "repeated", "once"
HEM, FRINGE, NEITHER = "hem", "fringe", "neither"
SAME, OTHER = "same", "other"


def answer(w, pieces, go_by, width, ends_given, width_shrink, length_shrink, draw_in, take_up, weft_take_up, sett, picks, multiple, edge_ends, finish, hem, hem_yarn, hem_picks, hem_mass, hem_length,
           fringe, divider, sample, waste, loom_width, limit, warp_colors, warp_color, stripes, skein_mass, skein_length, weft_from, weft_mass, weft_length):
    fit = _ends(w, go_by, width, ends_given, width_shrink, draw_in, sett, multiple, edge_ends, loom_width, warp_colors, stripes)
    ends = fit["ends"]
    heddle = w.step("heddle_width", f"{'(ends - edge_ends)' if edge_ends else 'ends'} / sett", (ends - edge_ends) / sett, LENGTH, "cm", "Width in the heddle")
    finished = w.step("finished_width", "heddle_width * (1 - draw_in / 100) * (1 - width_shrink / 100)", finished_width(heddle, width_shrink, draw_in), LENGTH, "cm", "Width after washing")
    woven = _lengths(w, pieces, length_shrink, hem)
    folded = " - 2 * hem" if hem else ""
    piece = w.step("finished_length", f"woven_1 * (1 - length_shrink / 100){folded}", size_after(woven[0], length_shrink) - 2 * (hem or 0.0), LENGTH, "cm", f"{name_of(pieces[0])}, finished")
    count, numbers = sum(row.many for row in pieces), range(1, len(pieces) + 1)
    on_loom = w.step("on_loom", " + ".join(f"pieces[{at}].many * woven_{at}" for at in numbers) + f" + divider * {count + 1} + sample",
                     sum(row.many * each for row, each in zip(pieces, woven)) + divider * (count + 1) + sample, LENGTH, "cm", "Woven on the loom, with dividers and sample")
    tied = w.step("tied", f"2 * fringe * {count} + waste" if fringe else "waste", 2 * (fringe or 0.0) * count + waste, LENGTH, "cm", "Warp that is never woven")
    warp = w.step("warp_length", "(on_loom / (1 - take_up / 100) + tied) / 100", (warp_for_woven(on_loom, take_up) + tied) / 100, LENGTH, label="Warp length")
    found = {"ends": ends, "heddle_width": heddle / 100, "finished_width": finished / 100, "finished_length": piece / 100, "warp_length": warp, "woven": woven, "fit": fit}
    if limit is not None:
        found["spare"] = w.step("spare", "limit - warp_length", limit - warp, LENGTH, label="Left of the warp there is")
    warp_yarn = w.step("warp_yarn", "ends * warp_length", ends * warp, LENGTH, label="Warp yarn")
    pick = w.step("pick", "heddle_width / (1 - weft_take_up / 100) / 100", pick_length(heddle, weft_take_up) / 100, LENGTH, label="Weft yarn in one pick")
    found |= _yarn(w, "warp", "warp_yarn", warp_yarn, "skein", skein_mass, skein_length)
    return found | _weft(w, pieces, woven, length_shrink, picks, hem, hem_yarn, hem_picks, hem_mass, hem_length, sample, pick, (weft_mass, weft_length) if weft_from == OTHER else (skein_mass, skein_length), weft_from)


def _ends(w, go_by, width, ends_given, width_shrink, draw_in, sett, multiple, edge_ends, loom_width, warp_colors, stripes):
    """The ends to thread: those wanted, or as many as the loom holds."""
    needed = None
    if warp_colors == ONCE:
        wanted = w.step("ends_wanted", "sum(stripes.ends)", sum(row.ends for row in stripes), COUNT, label="Ends of all stripes")
        multiple, unit = 1, "1"
    elif go_by == ENDS:
        wanted, unit = w.step("ends_wanted", "ends_given", ends_given, COUNT, label="Ends wanted"), "1"
        multiple = 1
    else:
        needed = w.step("width_needed", "width / (1 - width_shrink / 100) / (1 - draw_in / 100)", width_in_heddle(width, width_shrink, draw_in), LENGTH, "cm", "Width in the heddle for the width wanted")
        wanted, unit = w.decide("wanted", ends_for_width(needed, sett, multiple)), "multiple"
        w.searched("ends_wanted", wanted, ("ends_wanted >= width_needed * sett",), "width_needed * sett", label="Ends wanted")
    most = w.decide("most", ends_that_fit(loom_width, sett, multiple))
    if most < 1:
        raise Refused(f"Width of the loom: not even {multiple} {'end fits' if multiple == 1 else 'ends fit'} in it at this sett.", "loom_width")
    w.searched("ends_that_fit", most, ("ends_that_fit <= loom_width * sett",), "loom_width * sett", label="Ends that the loom holds")
    ends = w.step("ends", "min(ends_wanted, ends_that_fit)" + (" + edge_ends" if edge_ends else ""), min(wanted, most) + edge_ends, COUNT, label="Ends to thread")
    return {"ends": ends, "wanted": wanted, "most": most, "needed": needed if needed is not None else wanted / sett, "too_wide": wanted > most}


def _lengths(w, pieces, length_shrink, hem):
    """How long each piece is woven: settled once, or the plan itself would change with the roughness of the shrinkage."""
    hems = f"pieces[%d].length{' + 2 * hem' if hem else ''}"
    woven = []
    for at, row in enumerate(pieces, 1):
        washed = hems % at
        length = size_before(row.length + 2 * (hem or 0.0), length_shrink)
        w.step(f"woven_{at}", f"({washed}) / (1 - length_shrink / 100)" if hem else f"{washed} / (1 - length_shrink / 100)", length, LENGTH, "cm", f"{name_of(row)}, woven on the loom")
        woven.append(w.decide(f"woven_{at}", length))
    return woven


def _weft(w, pieces, woven, length_shrink, picks, hem, hem_yarn, hem_picks, hem_mass, hem_length, sample, pick, ball, weft_from):
    """Picks and weft yarn, by piece and in all; a hem in a finer yarn apart."""
    fine = hem if hem_yarn == OTHER else None
    decided = w.decide("hem_woven", size_before(2 * fine, length_shrink) if fine else 0.0)
    if fine:
        w.step("hem_woven", "2 * hem / (1 - length_shrink / 100)", decided, LENGTH, "cm", "Both hems of a piece, woven on the loom")
    each = []
    for at, (row, length) in enumerate(zip(pieces, woven), 1):
        each.append(w.step(f"picks_{at}", f"floor({f'(woven_{at} - hem_woven)' if fine else f'woven_{at}'} * picks + 0.5)", int((length - decided) * picks + 0.5), COUNT, label=f"{name_of(row)}, picks"))
    in_sample = w.step("sample_picks", "floor(sample * picks + 0.5)", int(sample * picks + 0.5), COUNT, label="Picks in the sample") if sample else 0
    count = sum(row.many for row in pieces)
    total = w.step("weft_picks", " + ".join(f"pieces[{at}].many * picks_{at}" for at in range(1, len(pieces) + 1)) + (" + sample_picks" if sample else ""),
                   sum(row.many * number for row, number in zip(pieces, each)) + in_sample, COUNT, label="Picks in all, hems apart" if fine else "Picks in all")
    yarn = w.step("weft_yarn", "weft_picks * pick", total * pick, LENGTH, label="Weft yarn")
    found = {"weft_picks": total, "each_picks": each, "sample_picks": in_sample, "pick": pick} | _yarn(w, "weft", "weft_yarn", yarn, "weft" if weft_from == OTHER else "skein", *ball)
    if fine:
        in_hem = w.step("hem_picks_each", "ceil(hem_woven / 2 * hem_picks - 0.001)", ceil(decided / 2 * hem_picks - 0.001), COUNT, label="Picks in one hem")
        thread = w.step("hem_thread", f"2 * {count} * hem_picks_each * pick", 2 * count * in_hem * pick, LENGTH, label="Finer yarn for all hems")
        found |= {"in_hem": in_hem} | _yarn(w, "hem", "hem_thread", thread, "hem", hem_mass, hem_length)
    return found


def _yarn(w, part, name, length, ball, ball_mass, ball_length):
    """A yarn's length, weight and balls as results."""
    words = part.capitalize()
    return {name: length, f"{part}_weight": w.step(f"{part}_weight", f"{name} * {ball}_mass / {ball}_length", length * ball_mass / ball_length, MASS, label=f"{words} yarn, weight"),
            f"{part}_balls": w.step(f"{part}_balls", f"{name} / {ball}_length", length / ball_length, NUMBER, label=f"{words} yarn, in balls")}


def say(r):
    fit, ends = r.kept["fit"], r.number(r.value("ends"))
    buy = f"{r.number(r.value('buy'))} {'ball' if r.value('buy') == 1 else 'balls'}"
    colors = len({color for color, _ in balls(r)})
    buy += f" in {colors} colors" if colors > 1 else ""
    wide = f"{r.said('heddle_width')} wide in the heddle"
    if fit["too_wide"]:
        asked = r.given["width"] if r.given["width"] is not None else size_after(fit["needed"] * (1 - r.given["draw_in"] / 100), r.given["width_shrink"])
        less = asked - 100 * r.value("finished_width")
        first = (f"{bare(r, asked)} is too wide: it needs {bare(r, fit['needed'])} in the heddle, and the loom has {bare(r, r.given['loom_width'])}. "
                 f"Make it {short(r, less)} narrower, {long(r, 100 * r.value('finished_width'))}, with {ends} ends.")
        plan = f"So planned, wind them {r.said('warp_sure')} long; buy {buy}."
    else:
        first, plan = f"Wind {ends} ends {r.said('warp_sure')} long, {wide}; buy {buy}.", ""
    if r.has("spare") and r.value("spare") < 0:
        gone = lost(r)
        first = f"The warp of {r.amount(r.given['limit'], LENGTH, 'yd' if in_inches(r) else 'm', 3)} is too short by {bare(r, -100 * r.value('spare'))}: {gone}. " + (first if fit["too_wide"] else f"It takes {r.said('warp_length')}.")
        plan = "" if not fit["too_wide"] else f"So planned, buy {buy}."
    name = name_of(r.given["pieces"][0])
    many = r.given["pieces"][0].many > 1
    each = "it is" if len(r.given["pieces"]) == 1 else "that one is" if not many else "those are"
    hems = {HEM: "washed and hemmed", FRINGE: "washed", NEITHER: "washed"}[r.given["finish"]]
    second = (f"Weave {'each ' if many else ''}{name} {long(r, r.kept['woven'][0])} on the loom ({r.number(r.kept['each_picks'][0])} picks); {hems} {each} about {r.said('finished_length')} by {r.said('finished_width')}.")
    return first, f"{plan} {second}".strip()


def warp_to_wind(r):
    """Warp that leaves the last piece whole at the far end of its range."""
    return ceil(100 * r.high("warp_length") - 1e-6) / 100


def to_buy(r):
    """Balls of warp and weft yarn, color by color, each enough at the far end of its range."""
    return sum(balls(r).values())


def hems_to_buy(r):
    return ceil(r.high("hem_balls") - 1e-9) if r.has("hem_balls") else None


HEMMED, FINE, STRIPED = {"finish": (HEM,)}, {"hem_yarn": (OTHER,)}, {"warp_colors": (REPEATED, ONCE)}
SEPARATE = {"weft_from": (OTHER,)}
PER = ("per cm", "per in", "per 10 cm")


def _cm(name, label, default, allowed, usual, rough="", said="", when=None, optional=False):
    return Input(name, LENGTH, label, default=default, allowed=allowed, usual=usual, rough=rough, units=("cm", "in"), unit="cm", measure=said, when=when or {}, optional=optional)


def _lost(name, label, default, said, usual=("2 %", "20 %"), least="0 %", record=""):
    return Input(name, PERCENT, label, record=record, default=default, allowed=(least, "50 %"), usual=usual, rough="2 %", measure=said)


def _ball(name, of, label, default, when=None, said=""):
    if of is MASS:
        return Input(name, MASS, label, default=default, allowed=("1 g", "2 kg"), usual=("10 g", "500 g"), units=("g", "oz"), when=when or {}, bench="" if when else "bases.mass", record="" if when else "base.mass", measure=said)
    return Input(name, LENGTH, label, default=default, allowed=("5 m", "20000 m"), usual=("50 m", "3000 m"), rough="1.5 %", units=("m", "yd"), when=when or {}, bench="" if when else "bases.length", record="" if when else "base.length", measure=said)


CARD = Card(
    id="warp-plan", chapter="weave", place=20, tall_sheet=True,
    question="How do I plan a whole run of pieces on one warp?",
    inputs=(
        Rows("pieces", "Pieces, in the order of weaving", "piece", least=1, most=12, measure="Finished length, without hems or fringe. Alike pieces stand in one row.",
             fields=(Input("name", TEXT, "Name", default="Cloth", longest=18, lent=False), Input("many", COUNT, "How many alike", default="1", allowed=("1", "200"), usual=("1", "20")),
                     _cm("length", "Finished length", "20 cm", ("2 cm", "2000 cm"), ("10 cm", "300 cm")), Input("color", TEXT, "Weft color", default="natural", longest=18, lent=False)),
             default=({"name": "Towel", "many": "5", "length": "55 cm", "color": "natural"},)),
        Input("go_by", CHOICE, "Go by", default=WIDTH, options=(Option(WIDTH, "A finished width"), Option(ENDS, "A number of ends")), when={"warp_colors": (ONE, REPEATED)}),
        _cm("width", "Finished width wanted", "34 cm", ("1 cm", "400 cm"), ("5 cm", "150 cm"), when={"go_by": (WIDTH,)}),
        Input("ends_given", COUNT, "Ends", default="160", allowed=("2", "20000"), usual=("20", "800"), when={"go_by": (ENDS,)}, measure="Without the extra ends at the edges."),
        _lost("width_shrink", "Shrinkage in width", "14 %", "Percent of the width before washing.", ("0 %", "35 %"), "-20 %", "measurement.width_change"),
        _lost("length_shrink", "Shrinkage in length", "18 %", "Percent of the length as measured on the loom, from a washed sample.", ("0 %", "35 %"), "-20 %", "measurement.length_change"),
        _lost("draw_in", "Draw-in", "6 %", "Percent of the width in the heddle."),
        _lost("take_up", "Take-up of the warp", "10 %", "Percent of the warp yarn."),
        _lost("weft_take_up", "Take-up of the weft", "6 %", "Percent of the weft yarn; its turns and joins with it."),
        Input("sett", PER_LENGTH, "Ends", default="4 per cm", allowed=("0.5 per cm", "60 per cm"), usual=("1 per cm", "30 per cm"), units=PER, measure="As the heddle gives them."),
        Input("picks", PER_LENGTH, "Picks, on the loom", default="5 per cm", allowed=("0.2 per cm", "60 per cm"), usual=("1 per cm", "30 per cm"), rough="0.2 per cm", units=PER),
        Input("multiple", COUNT, "Ends in multiples of", default="2", allowed=("1", "400"), usual=("1", "60"), when={"go_by": (WIDTH,)}, measure="A pattern’s repeat; 2 for a warp wound in loops."),
        Input("edge_ends", COUNT, "Extra ends at the edges", default="0", allowed=("0", "40"), usual=("0", "8"), measure="Doubled into the last holes: they take no width."),
        Input("finish", CHOICE, "Each end of a piece", default=HEM, options=(Option(HEM, "A hem"), Option(FRINGE, "A fringe"), Option(NEITHER, "Neither"))),
        _cm("hem", "Cloth in one hem", "4 cm", ("0.2 cm", "60 cm"), ("1 cm", "10 cm"), said="Washed; all that is folded in.", when=HEMMED),
        Input("hem_yarn", CHOICE, "Hems woven in", default=SAME, options=(Option(SAME, "The piece’s own weft"), Option(OTHER, "A finer yarn")), when=HEMMED),
        Input("hem_picks", PER_LENGTH, "Picks in the hems", default="9 per cm", allowed=("0.5 per cm", "100 per cm"), usual=("2 per cm", "40 per cm"), rough="0.5 per cm", units=PER, when=FINE),
        _ball("hem_mass", MASS, "A ball of the finer yarn weighs", "50 g", FINE),
        _ball("hem_length", LENGTH, "and holds", "280 m", FINE),
        _cm("fringe", "Fringe at one end", "8 cm", ("0.5 cm", "100 cm"), ("4 cm", "25 cm"), said="As cut on the loom; with what knots or twisting take.", when={"finish": (FRINGE,)}),
        _cm("divider", "Divider before, between and after", "2 cm", ("0 cm", "60 cm"), ("0.5 cm", "10 cm"), said="A few picks of scrap yarn, to cut through."),
        _cm("sample", "Sample woven first", "0 cm", ("0 cm", "300 cm"), ("0 cm", "40 cm"), said="As woven; to be washed before the rest is cut to its marks."),
        _cm("waste", "Loom waste", "50 cm", ("0 cm", "400 cm"), ("20 cm", "120 cm"), "5 cm", "Both ends: tied on, and what cannot be reached."),
        _cm("loom_width", "Width of the heddle or reed", "40 cm", ("2 cm", "400 cm"), ("15 cm", "200 cm")),
        Input("limit", LENGTH, "Warp there is, or the loom takes", allowed=("0.2 m", "500 m"), usual=("1 m", "30 m"), units=("m", "yd", "cm", "in"), optional=True, measure="Blank if it is still to be wound."),
        Input("warp_colors", CHOICE, "Colors of the warp", default=ONE, options=(Option(ONE, "One"), Option(REPEATED, "Stripes, again and again"), Option(ONCE, "Stripes, once across"))),
        Input("warp_color", TEXT, "Warp color", default="natural", longest=18, when={"warp_colors": (ONE,)}, lent=False),
        Rows("stripes", "Stripes, from the first end", "stripe", least=1, most=24, when=STRIPED,
             fields=(Input("color", TEXT, "Color", default="natural", longest=18, lent=False), Input("ends", COUNT, "Ends", default="4", allowed=("1", "2000"), usual=("1", "200"))),
             default=({"color": "natural", "ends": "12"}, {"color": "slate", "ends": "4"})),
        _ball("skein_mass", MASS, "A ball weighs", "100 g"), _ball("skein_length", LENGTH, "A ball holds", "170 m", said="Take off what knots and joins lost in balls like it."),
        Input("weft_from", CHOICE, "Weft", default=SAME, options=(Option(SAME, "The same yarn"), Option(OTHER, "Another yarn"))),
        _ball("weft_mass", MASS, "A ball of the weft weighs", "100 g", SEPARATE), _ball("weft_length", LENGTH, "and holds", "170 m", SEPARATE),
    ),
    results=(
        Result("buy", COUNT, "Balls to buy", rounding="up", decided=to_buy),
        Result("ends", COUNT, "Ends"),
        Result("heddle_width", LENGTH, "Width in the heddle", units=("cm", "in"), finest=(0.1, 0.1)),
        Result("warp_sure", LENGTH, "Warp to wind, so that the last piece is whole", units=("m", "yd"), finest=(0.01, 0.01), rounding="up", decided=warp_to_wind),
        Result("warp_length", LENGTH, "Warp length, as reckoned", units=("m", "yd"), finest=(0.01, 0.01)),
        Result("finished_width", LENGTH, "Width, washed", units=("cm", "in"), finest=(0.1, 0.1), floor=0.0),
        Result("finished_length", LENGTH, "Length of the first piece, finished", units=("cm", "in"), finest=(0.1, 0.1)),
        Result("weft_picks", COUNT, "Picks in all"),
        Result("warp_yarn", LENGTH, "Warp yarn", units=("m", "yd"), finest=(1, 1), rounding="up", floor=0.0),
        Result("weft_yarn", LENGTH, "Weft yarn", units=("m", "yd"), finest=(1, 1), rounding="up", floor=0.0),
        Result("warp_weight", MASS, "Warp yarn, weight", units=("g", "oz"), finest=(1, 0.1), rounding="up", floor=0.0),
        Result("weft_weight", MASS, "Weft yarn, weight", units=("g", "oz"), finest=(1, 0.1), rounding="up", floor=0.0),
        Result("warp_balls", NUMBER, "Warp yarn, in balls", finest=(0.01,), rounding="up", floor=0.0),
        Result("weft_balls", NUMBER, "Weft yarn, in balls", finest=(0.01,), rounding="up", floor=0.0),
        Result("hem_thread", LENGTH, "Finer yarn for the hems", units=("m", "yd"), finest=(1, 1), rounding="up", floor=0.0),
        Result("hem_weight", MASS, "Its weight", units=("g", "oz"), finest=(1, 0.1), rounding="up", floor=0.0),
        Result("hem_balls", NUMBER, "In balls", finest=(0.01,), rounding="up", floor=0.0),
        Result("hem_buy", COUNT, "Balls of it to buy", rounding="up", decided=hems_to_buy),
        Result("spare", LENGTH, "Left of the warp there is", units=("cm", "in"), finest=(1, 0.5), rounding="down"),
        Result("last_lost", PERCENT, "Chance that the last piece is cut short", chance=Chance("spare", below=0.0)),
    ),
    answer=answer, say=say, notes=notes, pictures=(sizes_picture, warp_picture), tables=(changes, along, yarns, order),
    basis=Basis(MODEL, "Each loss is divided out in its own place: shrinkage of the cloth, draw-in of the width in the heddle, take-up of the yarn. Ranges are those of one plan: lengths to weave and ends are settled first."),
    sources=(TRADE_PAGES_WARP, TRADE_PAGE_SHRINKAGE, MAGAZINE_TOWELS, ISO_5077, TRADE_MEMORY, COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("A warp is cut once.", "Weave and wash a sample first; its shrinkage decides every length here. Buy all of a color from one lot."),),
    carry=(Carry("cloth-picture", "See the cloth", {"yarns": plan_yarns, "pieces": plan_pieces, "ends": plan_ends, "warp": plan_warp, "sett": "sett", "beat": "picks", "draw_in": "draw_in", "shrink_width": "width_shrink",
                                                    "shrink_length": "length_shrink", "hem": plan_hem, "hem_yarn": plan_hem_yarn, "hem_beat": "hem_picks"}),
           Carry("weft-left", "What does a leftover ball weave?", {"yarn": plan_yarn, "width": "heddle_width", "take_up": "weft_take_up", "beat": "picks", "shrink": "length_shrink", "pieces": plan_count,
                                                                   "piece_picks": plan_piece_picks, "hem": plan_hem}),
           Carry("weave-pace", "How long will it take?", {"ends": "ends", "warp": "warp_length", "pieces": plan_count, "piece_picks": plan_piece_picks}),
           Carry("make-size", "Size before and after washing", {"length_percent": "length_shrink", "width_percent": "width_shrink"})),
    papers=(Paper("Loom sheet", "A5", loom_sheet), Paper("Yarn list and color order", "A5", yarn_sheet)),
)
