"""Where the colors of a hand-painted skein fall in the fabric."""

from ...core.answer import Table
from ...core.card import CHOICE, COLOR, MODEL, TEXT, Basis, Card, Carry, Input, Option, Result, Rows
from ...core.problem import Refused
from ...core.table import read_table
from ...core.units import COUNT, LENGTH, MASS, NUMBER, PER_LENGTH, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, GATE_TEXTILE_2015, MUNDEN_1959
from ..loop import stitch_length
from ..pictures.pooling import fabric_picture, skein_bar
from ..pooling import BLOCKS, FLASHES, FLECKS, POOLS, SEEN, SPIRALS, STRIPES, bands_in, drift, fabric, judge, judge_near, order_in_turn, stacking_counts, stitches_of, turn_length

IN_ROUND, FLAT = "round", "flat"
TALLEST = 60  # rows drawn
STATES = tuple(Option(row["state"], row["label"]) for row in read_table("wash", "munden-constants").rows)
MEANING = {STRIPES: "a color fills a whole round", POOLS: "colors stand above themselves in broad pools", FLASHES: "colors stand above themselves in narrow columns",
           SPIRALS: "colors lean and wander", BLOCKS: "broad blocks, each row’s set off from the last", FLECKS: "short dashes lie scattered"}


def answer(w, colors, stitches, rows, state, worked, count, drawn, wobble, alternate, per_100, skein_1, skein_2, skein_3, skein_4):
    flat = worked == FLAT
    turn = w.step("turn", "sum(colors.length)", turn_length([row.length for row in colors]), LENGTH, label="One turn of the skein")
    constant = w.looked_up("loop_constant", "wash", "munden-constants", "state", state, "Ks", label="Loop constant Ks")
    loop = w.step("loop", "sqrt(loop_constant / (stitches * rows)) / 100", stitch_length(stitches, rows, constant), LENGTH, label="Yarn in a stitch")
    repeat = w.step("repeat", "turn / loop", stitches_of(turn, loop), NUMBER, label="Stitches of one turn")
    patch = w.step("patch", f"{_longest(colors)} / loop", stitches_of(max(row.length for row in colors), loop), NUMBER, label="Stitches of the longest color")
    judged = judge(count, repeat, patch, flat, wobble)
    knit = "2 * count" if flat else "count"
    w.step("shift", f"{knit} - repeat * floor({knit} / repeat + 0.5)", judged.shift, NUMBER, label="Shift when the knitting is back at the same place, in stitches")
    masses = [mass for mass in (skein_1, skein_2, skein_3, skein_4) if mass is not None]
    return {"turn": turn, "loop": loop, "repeat": repeat, "patch": patch, "shift": judged.shift, "kind": judged.kind, "stacked": judged.stacked} | (_in_turn(w, masses, count, loop, per_100) if masses else {})


def _in_turn(w, masses, count, loop, per_100):
    """In which order skeins of these weights are knitted, two rows each, and how far they go."""
    band = w.step("band", "2 * count * loop * 100 / per_100", 2 * count * loop * 100 / per_100, MASS, label="Yarn in two rows")
    bands = w.decide("bands", [bands_in(mass, band) for mass in masses])
    if min(bands) < 1:
        raise Refused("This skein is not enough for two rows; leave it out, or give its whole weight.", f"skein_{bands.index(min(bands)) + 1}")
    for number, found in enumerate(bands, 1):
        w.step(f"bands_{number}", f"floor(skein_{number} / band)", found, COUNT, label=f"Times two rows from skein {number}")
    order, times = order_in_turn(bands)
    shares = [order.count(skein) for skein in range(len(masses))]
    w.searched("times", times, tuple(f"times * {share} <= bands_{number}" for number, share in enumerate(shares, 1)),
               f"min({', '.join(f'bands_{number} / {share}' for number, share in enumerate(shares, 1))})", label="Times this order is knitted through")
    lasts = w.step("lasts", f"2 * {len(order)} * times", 2 * len(order) * times, COUNT, label="Rows that this lasts")
    return {"in_turn": ", ".join(str(skein + 1) for skein in order), "lasts": lasts, "order": order, "over": [mass - share * times * band for mass, share in zip(masses, shares)], "times": times}


def _longest(colors):
    lengths = [row.length for row in colors]
    return f"colors[{lengths.index(max(lengths)) + 1}].length"


def _near(r):
    return judge_near(r.given["count"], 8, r.value("repeat"), r.value("patch"), r.given["worked"] == FLAT, wobble=r.given["wobble"])


def say(r):
    kind = r.value("kind")
    where = "in the round" if r.given["worked"] == IN_ROUND else "back and forth"
    first = f"On {r.given['count']} stitches {where} it will likely make {kind}: {MEANING[kind]}."
    if r.given["alternate"] > 1:
        first = f"One skein alone on {r.given['count']} stitches {where} would likely make {kind}; {r.given['alternate']} in turn, two rows each, break that up."
    moved = abs(r.value("shift"))
    side = "earlier" if r.value("shift") > 0 else "later"
    return first, f"One turn of the skein is about {r.text('repeat')} stitches; each time around, the colors come {moved:.1f} stitches {side}."


def notes(r):
    flat = r.given["worked"] == FLAT
    count = r.given["count"]
    stacks = [each for each in stacking_counts(max(r.value("repeat"), 1.0), max(1, count // 2), min(2000, 2 * count), flat)]
    stacks = sorted(sorted(stacks, key=lambda each: abs(each - count))[:6])
    said = []
    if stacks:
        said.append("Colors stack where " + ("twice the stitches are" if flat else "the stitches are") + " a whole number of repeats: near " + ", ".join(f"{each:.0f}" for each in stacks)
                    + " stitches. Go there for columns, keep away from there for a mixed cloth.")
    wander = drift(count, r.given["wobble"], 20)
    if wander >= 0.5:
        said.append(f"Your tension moves the colors too: after 20 rows likely by about {wander:.0f} {'stitch' if wander < 1.5 else 'stitches'} either way, so the picture is one likely outcome.")
    if r.given["alternate"] > 1:
        over = ", ".join(f"{r.amount(left, MASS, 'g', 2)} of skein {number}" for number, left in enumerate(r.kept["over"], 1))
        said.append(f"Two rows each from skein {r.value('in_turn')}, and so over again, {r.kept['times']} times through: {r.value('lasts')} rows. Over is then {over}.")
        said.append("Begin each skein at another place of its turn. Carry the resting yarn up the edge, not tight.")
    else:
        said.append("To break pools up, knit from two skeins in turn, two rows each: set the number of skeins to 2 and look.")
    return said


def _colors(r):
    rows = r.given["colors"]
    return [row.length for row in rows], [row.name for row in rows], [row.color.hex for row in rows]


def cloth(r):
    lengths, names, colors = _colors(r)
    skeins = r.given["alternate"]
    starts = [r.value("turn") * number / skeins for number in range(skeins)]
    columns = min(r.given["count"], SEEN)
    walk = fabric(lengths, r.value("loop"), r.given["count"], r.given["drawn"], r.given["worked"] == FLAT, r.given["wobble"], columns, starts, order=r.kept.get("order", ()))
    return fabric_picture(walk, names, colors, r.given["stitches"], r.given["rows"], r.given["count"])


def turn(r):
    return skein_bar(*_colors(r), r.both("turn"))


def counts(r):
    rows = tuple((str(each.stitches), f"{round(each.shift, 1) + 0:+.1f}".replace("-", "−"), each.kind, "over 99" if each.stacked > 99 else f"{each.stacked:.0f}") for each in _near(r))
    return Table("Stitch counts near it", ("Stitches", "Shift", "Likely", "Rows a color stays above itself"), rows)


CARD = Card(
    id="pool-picture", chapter="knit", place=80,
    question="Will this hand-painted skein pool?",
    inputs=(
        Rows("colors", "Colors around one turn of the skein", "color", least=1, most=12, measure="Lay the skein open and measure each color along it, all the way around.",
             fields=(Input("name", TEXT, "Name", default="Another color", longest=20, lent=False), Input("color", COLOR, "Color", default="#8c2f22"),
                     Input("length", LENGTH, "Length", default="20 cm", allowed=("1 cm", "20 m"), usual=("5 cm", "1 m"), rough="2 %", units=("cm", "in", "m"), instrument="tape")),
             default=({"name": "Slate", "color": "#3d4a5c", "length": "60 cm"}, {"name": "Rust", "color": "#9c4a2b", "length": "30 cm"}, {"name": "Cream", "color": "#e6d9bd", "length": "60 cm"})),
        Input("stitches", PER_LENGTH, "Stitches", record="measurement.stitches", default="28 per 10 cm", allowed=("2 per 10 cm", "200 per 10 cm"), usual=("10 per 10 cm", "40 per 10 cm"), rough="0.5 per 10 cm",
              units=("per 10 cm", "per 4 in", "per in", "per cm"), measure="In stocking stitch, washed."),
        Input("rows", PER_LENGTH, "Rows", record="measurement.rows", default="40 per 10 cm", allowed=("2 per 10 cm", "300 per 10 cm"), usual=("12 per 10 cm", "60 per 10 cm"), rough="0.5 per 10 cm",
              units=("per 10 cm", "per 4 in", "per in", "per cm")),
        Input("state", CHOICE, "The gauge was counted", record="measurement.state", default="wet", options=STATES),
        Input("worked", CHOICE, "Knitted", default=IN_ROUND, options=(Option(IN_ROUND, "In the round"), Option(FLAT, "Flat, back and forth"))),
        Input("count", COUNT, "Stitches in a round or row", default="107", allowed=("4", "2000"), usual=("40", "300")),
        Input("drawn", COUNT, "Rows to draw", default="48", allowed=("4", str(TALLEST)), usual=("20", "60")),
        Input("wobble", PERCENT, "How much your tension varies from row to row", default="2 %", allowed=("0 %", "30 %"), usual=("1 %", "5 %")),
        Input("alternate", COUNT, "Skeins knitted in turn", default="1", allowed=("1", "4"), usual=("1", "3")),
        Input("per_100", LENGTH, "Yarn in 100 g", default="420 m", allowed=("20 m", "3000 m"), usual=("100 m", "800 m"), units=("m", "yd"), when={"alternate": (2, 3, 4)}),
        *(Input(f"skein_{number}", MASS, f"Skein {number} weighs", default="100 g", allowed=("1 g", "5 kg"), usual=("20 g", "150 g"), units=("g", "oz"), when={"alternate": tuple(range(max(number, 2), 5))})
          for number in (1, 2, 3, 4)),
    ),
    results=(
        Result("kind", "text", "Likely, from one skein"),
        Result("repeat", NUMBER, "Stitches of one turn", finest=(0.1,), floor=0.0),
        Result("shift", NUMBER, "Shift, stitches", finest=(0.1,)),
        Result("patch", NUMBER, "Stitches of the longest color", finest=(0.1,), floor=0.0),
        Result("turn", LENGTH, "One turn of the skein", units=("cm", "in"), finest=(1, 0.1), floor=0.0),
        Result("loop", LENGTH, "Yarn in a stitch", units=("mm",), finest=(0.1,), floor=0.0),
        Result("in_turn", "text", "Skeins in turn, two rows each"),
        Result("lasts", COUNT, "Rows that this lasts", rounding="down"),
    ),
    answer=answer, say=say, notes=notes, pictures=(cloth, turn), tables=(counts,),
    link_version=2, upgrades={1: lambda pairs: pairs},  # what skeins in turn weigh came after all that was asked before
    basis=Basis(MODEL, "The yarn is walked stitch by stitch, with the loop length of plain knitting (Munden), modulo one turn of the skein. The words and their edges are our own; "
                       "the picture is one likely outcome."),
    sources=(MUNDEN_1959, GATE_TEXTILE_2015, COMMON_PRACTICE, ARITHMETIC),
    carry=(Carry("yarn-needed", "How many skeins do I need?", {"stitches": "stitches", "rows": "rows", "state": "state"}),),
)
