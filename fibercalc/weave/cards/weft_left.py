"""What a shuttle or a leftover ball still weaves, and leftovers dealt into stripes that come out even across the pieces."""

from ...core.answer import Table
from ...core.card import COLOR, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Result, Rows
from ...core.problem import Refused
from ...core.spread import Parts
from ...core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, NUMBER, PERCENT, PER_LENGTH
from ...sources import ARITHMETIC, COMMON_PRACTICE, ISO_5077
from ...wash.shrink import size_after
from ..pictures.key import Yarn
from ..pictures.stripes import piece_of_stripes
from ..weft_left import laid_out, pick_length, picks_from, stripe_picks, stripes_that_fit, yarn_length

MOST_NAMED = 4


def answer(w, balls, tare, yarn, width, take_up, beat, shrink, pieces, piece_picks, hem, stripes, tail):
    if 2 * hem >= piece_picks:
        raise Refused(f"Hems of {hem} picks: two of them leave nothing of the {piece_picks} picks of a piece; give fewer.", "hem")
    each = w.step("pick", "width / (1 - take_up / 100)", pick_length(width, take_up), LENGTH, label="Weft in a pick")
    cut = pieces * stripes
    found = []
    for number, ball in enumerate(balls, 1):
        if ball.mass <= tare:
            raise Refused(f"Ball {number} weighs {ball.mass:g} g, no more than its shuttle or core of {tare:g} g.", f"balls.{number}.mass")
        length = yarn_length(ball.mass, tare, yarn)
        found.append(picks_from(length, each, cut, tail))
    if len(balls) == 1:
        w.step("length", "1000 * (balls[1].mass - tare) / yarn", yarn_length(balls[0].mass, tare, yarn), LENGTH, label="Yarn on it")
    else:
        w.step("length", f"1000 * (sum(balls.mass) - {len(balls)} * tare) / yarn", sum(yarn_length(ball.mass, tare, yarn) for ball in balls), LENGTH, label="Yarn on all of them")
    picks = sum(found)
    if all(found):
        w.step("picks", f"(length - {len(balls)} * pieces * stripes * tail) / pick", picks, NUMBER, label="Picks, once the ends of every stripe are taken off")
    on_loom = w.step("on_loom", "picks / beat" if all(found) else f"{picks!r} / beat", picks / beat, LENGTH, "cm", "Cloth on the loom")
    after = w.step("after", "on_loom * (1 - shrink / 100)", size_after(on_loom, shrink) if on_loom else 0.0, LENGTH, "cm", "Cloth once washed")
    return {"picks": picks, "on_loom": on_loom / 100, "after": after / 100, "pick": each, "found": found}


def _with(r, number, name, by):
    """A ball's picks with one thing it rests on moved."""
    given = r.given
    mass, tare, tex, width, take = given["balls"][number].mass, given["tare"], given["yarn"], given["width"], given["take_up"]
    moved = {"mass": mass, "tare": tare, "yarn": tex, "width": width, "take_up": take}
    moved[name] += by
    moved["yarn"], moved["tare"] = max(moved["yarn"], 0.1), max(moved["tare"], 0.0)
    each = pick_length(max(moved["width"], 0.005), min(max(moved["take_up"], 0.0), 60.0))
    return picks_from(yarn_length(max(moved["mass"], 0.0), moved["tare"], moved["yarn"]), each, given["pieces"] * given["stripes"], given["tail"])


def ranges(r):
    """For each ball the low and the high end of its picks, 95 %."""
    if "ranges" in r.kept:
        return r.kept["ranges"]
    ends = r.kept["ranges"] = []
    for number, value in enumerate(r.kept["found"]):
        parts = Parts()
        for name, reading in (("mass", r.readings[f"balls.{number + 1}.mass"]), *((name, r.readings[name]) for name in ("tare", "yarn", "width", "take_up"))):
            if reading.rough:
                rough = reading.rough
                shifts = [_with(r, number, name, sign * rough) - value for sign in (-1, 1)]
                parts.down.append(max(0.0, -min(shifts)))
                parts.up.append(max(0.0, max(shifts)))
        ends.append((max(value - parts.half_width("down"), 0.0), value + parts.half_width("up")))
    return ends


def even(r):
    """Picks of one stripe of each color, from the low end of what it weaves, so that the last piece is not short."""
    return [stripe_picks(low, r.given["pieces"], r.given["stripes"]) for low, _ in ranges(r)]


def room(r):
    return r.given["piece_picks"] - 2 * r.given["hem"]


def dealt(r):
    """The same, as far as a piece has room for it."""
    if "dealt" not in r.kept:
        r.kept["dealt"] = stripes_that_fit(even(r), r.given["stripes"], room(r))
    return r.kept["dealt"]


def in_a_piece(r):
    return r.given["stripes"] * sum(dealt(r))


def main_picks(r):
    """What the main yarn has to weave in each piece, hems too."""
    return r.given["piece_picks"] - in_a_piece(r)


def main_length(r):
    return r.given["pieces"] * main_picks(r) * r.value("pick")


def say(r):
    what = "This" if len(r.given["balls"]) == 1 else "Together they"
    verb = " weaves" if len(r.given["balls"]) == 1 else " weave"
    first = f"{what}{verb} about {r.text('picks')} picks: {r.said('on_loom')} of cloth on the loom, {r.said('after')} once washed."
    pieces, stripes = r.given["pieces"], r.given["stripes"]
    named = [(ball.name, count) for ball, count in zip(r.given["balls"], dealt(r)) if count]
    if not named:
        return first, "That is too little for a pair of picks in every stripe: ask for fewer stripes."
    listed = ", ".join(f"{count}{' picks' if at == 0 else ''} of {name}" for at, (name, count) in enumerate(named[:MOST_NAMED])) + (", …" if len(named) > MOST_NAMED else "")
    each = "the piece" if pieces == 1 else f"each of {pieces} pieces"
    return first, f"Even across {each}: {stripes} {'stripe' if stripes == 1 else 'stripes'} a color: {listed}."


def notes(r):
    said = ["Stripes are whole pairs of picks, so that each ends at the edge where it began, and are dealt from the low end of what a ball weaves: the last piece is not short."]
    if r.given["stripes"] * sum(even(r)) > room(r):
        said.append(f"There is more than the pieces hold: every stripe was made smaller in proportion, to {room(r)} picks a piece at most.")
    short = [ball.name for ball, count in zip(r.given["balls"], dealt(r)) if not count]
    if short:
        said.append(f"Too little for a pair of picks in every stripe: {', '.join(short)}.")
    return said


def balls_table(r):
    rows = []
    for number, (ball, (low, high), stripe) in enumerate(zip(r.given["balls"], ranges(r), dealt(r)), 1):
        length = yarn_length(ball.mass, r.given["tare"], r.given["yarn"])
        used = r.given["pieces"] * r.given["stripes"] * (stripe * r.value("pick") + r.given["tail"]) if stripe else 0.0
        spare = max(length - used, 0.0) * r.given["yarn"] / 1000
        rows.append((f"{number} {ball.name}", r.amount(length, LENGTH, "m", 3), r.amount(length, LENGTH, "yd", 3), f"{low:.0f} to {high:.0f}",
                     str(stripe) if stripe else "–", r.amount(spare, MASS, "g", 2)))
    return Table("Ball by ball", ("Ball", "Meters", "Yards", "Picks", "Stripe", "Over"), tuple(rows), "Stripe: picks of one. Over: what is likely left of the ball.")


def _layout(r):
    return laid_out(dealt(r), r.given["stripes"], room(r))


def order(r):
    """The weft of each piece, from its first pick."""
    names = {number: ball.name for number, ball in enumerate(r.given["balls"])} | {-1: "Main yarn"}
    runs = [("Hem", r.given["hem"])] * (r.given["hem"] > 0)
    runs = runs + [(names[color], count) for color, count in _layout(r)] + runs
    rows, done = [], 0
    for name, count in runs:
        rows.append((f"{done + 1} to {done + count}" if count > 1 else str(done + 1), name, str(count)))
        done += count
    return Table("Every piece, from its first pick", ("Picks", "Weft", "How many"), tuple(rows))


def picture(r):
    yarns = [Yarn(ball.name, ball.color.hex) for ball in r.given["balls"]]
    along = size_after(r.given["piece_picks"] / r.given["beat"], r.given["shrink"])
    return piece_of_stripes(_layout(r), yarns, r.given["hem"], r.given["pieces"], 100 * r.given["width"], along)


CARD = Card(
    id="weft-left", chapter="weave", place=40,
    question="What does the rest of a shuttle or ball still weave?",
    inputs=(
        Rows("balls", "Shuttles or leftover balls, one for each color", "ball", least=1, most=12,
             fields=(Input("name", TEXT, "Yarn", default="Another", longest=16, lent=False), Input("color", COLOR, "Color", default="#8a8f6a"),
                     Input("mass", MASS, "Weighs", default="30 g", allowed=("0.5 g", "5 kg"), rough="0.5 g", units=("g", "oz"))),
             default=({"name": "Rust", "color": "#9c4a2b", "mass": "38 g"}, {"name": "Slate", "color": "#3d4a5c", "mass": "52 g"}, {"name": "Moss", "color": "#8a8f6a", "mass": "21 g"})),
        Input("tare", MASS, "of that, the empty shuttle or core", default="0 g", allowed=("0 g", "500 g"), usual=("0 g", "150 g"), units=("g", "oz"), measure="The same for each; weigh it before it is wound."),
        Input("yarn", LINEAR_DENSITY, "Yarn", default="170 m/100 g", allowed=("5 tex", "20000 tex"), usual=("30 tex", "2000 tex"), rough="2 %",
              units=("m/100 g", "yd/100 g", "yd/lb", "yd/oz", "tex", "Ne", "Nm")),
        Input("width", LENGTH, "Width in the heddle", default="40 cm", allowed=("1 cm", "300 cm"), usual=("10 cm", "120 cm"), rough="0.3 cm", units=("cm", "in")),
        Input("take_up", PERCENT, "The weft takes up", default="6 %", allowed=("0 %", "60 %"), usual=("2 %", "15 %"), rough="2 %", measure="Percent of the weft that goes into its bends and its arc."),
        Input("beat", PER_LENGTH, "Picks on the loom", default="5 per cm", allowed=("0.5 per cm", "60 per cm"), usual=("2 per cm", "14 per cm"), rough="0.2 per cm", units=("per cm", "per in", "per 10 cm")),
        Input("shrink", PERCENT, "The wash takes, of the length", record="measurement.length_change", default="18 %", allowed=("-20 %", "60 %"), usual=("0 %", "35 %"), rough="2 %"),
        Input("pieces", COUNT, "Pieces still to weave", default="3", allowed=("1", "100"), usual=("1", "12")),
        Input("piece_picks", COUNT, "Picks of a piece, with both hems", default="384", allowed=("4", "4000"), usual=("20", "1500")),
        Input("hem", COUNT, "Picks of each hem", default="24", allowed=("0", "400"), usual=("0", "80"), measure="In the main yarn; no stripe falls there."),
        Input("stripes", COUNT, "Stripes of each color in a piece", default="2", allowed=("1", "40"), usual=("1", "12")),
        Input("tail", LENGTH, "Each stripe loses", default="10 cm", allowed=("0 cm", "200 cm"), usual=("0 cm", "40 cm"), units=("cm", "in"), measure="Both its ends, woven in and trimmed."),
    ),
    results=(
        Result("picks", NUMBER, "Picks they weave in all", finest=(1,), rounding="down", floor=0.0),
        Result("on_loom", LENGTH, "Cloth on the loom", units=("cm", "in"), finest=(0.5, 0.2), rounding="down", floor=0.0),
        Result("after", LENGTH, "Cloth once washed", units=("cm", "in"), finest=(0.5, 0.2), rounding="down", floor=0.0),
        Result("pick", LENGTH, "Weft in a pick", units=("cm", "in"), finest=(0.1, 0.05), rounding="up", floor=0.0),
        Result("striped", COUNT, "Picks of stripes in each piece", decided=in_a_piece),
        Result("main", COUNT, "Picks of the main yarn in each piece", decided=main_picks),
        Result("main_yarn", LENGTH, "Main yarn for all of them", units=("m", "yd"), finest=(1, 1), rounding="up", decided=main_length),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(balls_table, order),
    basis=Basis(MODEL, "Length by weight and count; a pick takes the width in the heddle over (1 − take-up). Dealing is our own: pairs of picks, every stripe of a color alike, from the low end of what its ball weaves."),
    sources=(ARITHMETIC, COMMON_PRACTICE, ISO_5077),
    cautions=(Caution("Weigh before the last piece, too.", "A ball’s count may differ from its band’s. What the first half used tells your own weft in a pick."),),
    carry=(Carry("cloth-picture", "See it as cloth", {"beat": "beat", "hem": "hem"}), Carry("weave-pace", "How long will it take?", {"pieces": "pieces", "piece_picks": "piece_picks"})),
)
