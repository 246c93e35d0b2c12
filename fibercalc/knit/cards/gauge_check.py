"""Which size to knit at one's own gauge: swatch to stitches and rows, before and after washing, and every size as it would come out."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows, Save
from ...core.picture import INDIGO, INDIGO_WASH, LINE, SOFT, Drawing, Scale, nice_ticks
from ...core.table import read_table
from ...core.units import LENGTH, NUMBER, PER_LENGTH, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, TRADE_PAGE_NEEDLES
from ..fit import gauge_of, girth_at_gauge, growth, needle_for_gauge


def answer(w, pattern_stitches, pattern_rows, counted, across, counted_rows, tall, washed, wide_before, tall_before, needle, wanted, sizes):
    own = w.step("own_stitches", "counted / across", gauge_of(counted, across), PER_LENGTH, label="Own stitches, washed")
    own_rows = w.step("own_rows", "counted_rows / tall", gauge_of(counted_rows, tall), PER_LENGTH, label="Own rows, washed")
    places = [abs(girth_at_gauge(row.girth, pattern_stitches, own) - wanted) for row in sizes]
    best = w.decide("best", places.index(min(places)))
    girth = sizes[best].girth
    found = w.step("girth", f"sizes[{best + 1}].girth * pattern_stitches / own_stitches", girth_at_gauge(girth, pattern_stitches, own), LENGTH, "cm", "That size at your gauge")
    off = w.step("off", "girth - wanted", found - wanted, LENGTH, "cm", "Wider than wanted by")
    row_share = w.step("row_share", "own_rows / pattern_rows", own_rows / pattern_rows, NUMBER, label="Rows you need for the pattern’s lengths, times its count")
    try_needle = w.step("try_needle", "needle * 1000 * own_stitches / pattern_stitches", needle_for_gauge(1000 * needle, own, pattern_stitches), NUMBER,
                        label="Needle that would likely give the pattern’s gauge, mm")
    found_all = {"own_stitches": own, "own_rows": own_rows, "girth": 0.01 * found, "off": 0.01 * off, "row_share": row_share, "needle_to_try": 0.001 * try_needle,
                 "wider": None, "longer": None, "best": best, "best_name": sizes[best].name}
    if washed == "yes":
        found_all["wider"] = w.step("wider", "100 * (across - wide_before) / wide_before", growth(wide_before, across), PERCENT, label="Change in width")
        found_all["longer"] = w.step("longer", "100 * (tall - tall_before) / tall_before", growth(tall_before, tall), PERCENT, label="Change in length")
    return found_all


def _sizes(r):
    """Every size with its girth at the own gauge and the range that the swatch leaves, cm."""
    ratio = 100 * r.value("girth") / r.given["sizes"][r.kept["best"]].girth
    low, high = (100 * end / r.given["sizes"][r.kept["best"]].girth for end in (r.low("girth"), r.high("girth")))
    return [(row.name, row.girth, row.girth * ratio, row.girth * low, row.girth * high) for row in r.given["sizes"]]


def say(r):
    first = f"Knit size {r.kept['best_name']}: at your gauge it comes out at {r.said('girth')}."
    return first, f"From {r.span('girth')}: the swatch leaves that much open. {_needle_words(r)}"


def _needle_words(r):
    own, pattern = r.value("own_stitches"), r.given["pattern_stitches"]
    if abs(own / pattern - 1) < 0.015:
        return "Your gauge is the pattern’s, as far as a swatch can tell."
    looser = own < pattern
    return f"Your stitches are {'wider' if looser else 'narrower'} than the pattern’s by {100 * abs(pattern / own - 1):.0f} %."


def _nearest(millimeters):
    """The needle size in the table nearest to a wanted diameter."""
    rows = read_table("knit", "needle-sizes").rows
    return min(rows, key=lambda row: abs(row["mm"] - millimeters))


def notes(r):
    said = []
    asked, own = 1000 * r.given["needle"], 1000 * r.value("needle_to_try")
    nearest = _nearest(own)
    names = " or ".join(name for name in (nearest["us"], nearest["uk"]) if name)
    best = r.given["sizes"][r.kept["best"]]
    if abs(nearest["mm"] - asked) > 0.01:
        said.append(f"Needle alone: {r.number(nearest['mm'], 2).rstrip('0').rstrip('.,')} mm{f' ({names})' if names else ''} instead of {asked:g} mm would likely bring the pattern’s gauge; "
                    "then knit the size that the pattern says. Swatch again with it: this is a first try.")
        by_pattern = min(r.given["sizes"], key=lambda row: abs(row.girth - r.given["wanted"]))
        if by_pattern.name != best.name:
            said.append(f"Size alone: keep your needle and knit {best.name} instead of {by_pattern.name}. Change the needle or the size, not both: the one undoes the other.")
    if abs(r.value("row_share") - 1) > 0.02:
        said.append(f"Rows: work {r.number(r.value('row_share'), 2)} times the rows that the pattern counts, or measure lengths instead of counting.")
    if r.has("wider"):
        said.append(f"In the wash the swatch changed by {r.text('wider')} in width and {r.text('longer')} in length. Measure the piece on the needles with that in mind.")
    else:
        said.append("An unwashed swatch tells the size until the first wash. Wash it as the garment will be washed.")
    return said


def table(r):
    each = 2.54 if r.settings.system == "us" else 1.0
    rows = tuple((name, *(r.number(cm / each, 1) for cm in (printed, own)), f"{r.number(low / each, 1)} to {r.number(high / each, 1)}") for name, printed, own, low, high in _sizes(r))
    return Table(f"Each size at your gauge, {'in' if each > 1 else 'cm'}", ("Size", "In the pattern", "At your gauge", "95 % range"), rows)


def picture(r):
    """Each size's range at the own gauge on one scale, the wanted girth as a line."""
    sizes, wanted = _sizes(r), r.given["wanted"]
    sign = "in" if r.settings.system == "us" else "cm"
    unit = LENGTH.unit(sign)
    low, high = min([wanted] + [each[3] for each in sizes]), max([wanted] + [each[4] for each in sizes])
    scale = Scale(low - 0.05 * (high - low), high + 0.05 * (high - low), 84, 344)
    bottom = 26 + 30 * len(sizes)
    drawing = Drawing(bottom + 40)
    for tick in nice_ticks(unit.from_base(scale.low / 100), unit.from_base(scale.high / 100), 5):
        at = scale(100 * unit.to_base(tick))
        drawing.line(at, 22, at, bottom, stroke=LINE)
        drawing.text(at, bottom + 16, f"{r.number(tick)} {sign}", anchor="middle", fill=SOFT)
    for place, (name, _, own, at_least, at_most) in enumerate(sizes):
        y, best = 26 + 30 * place, place == r.kept["best"]
        drawing.text(76, y + 19, name[:10], anchor="end", bold=best)
        drawing.rect(scale(at_least), y + 6, max(scale(at_most) - scale(at_least), 2), 18, fill=INDIGO if best else INDIGO_WASH, stroke=INDIGO)
        drawing.line(scale(own), y + 3, scale(own), y + 27, width=2)
    drawing.line(scale(wanted), 18, scale(wanted), bottom, width=1.5, dash="4 3")
    drawing.text(scale(wanted), 13, f"wanted: {r.amount(wanted / 100, LENGTH, sign, 4)}", anchor="middle")
    drawing.text(214, bottom + 35, "around the chest, at your gauge", anchor="middle", fill=SOFT)
    return drawing.picture("Each size as it would come out", "; ".join(f"{name}: {own:.1f} cm, {at_least:.1f} to {at_most:.1f}" for name, _, own, at_least, at_most in sizes)
                           + f"; wanted {wanted:.1f} cm.")


WASHED = {"washed": ("yes",)}
GAUGE_UNITS = ("per 10 cm", "per 4 in", "per in", "per cm")


def _cm(name, label, default, allowed, usual, rough, instrument, when=None, said=""):
    return Input(name, LENGTH, label, default=default, allowed=allowed, usual=usual, rough=rough, units=("cm", "in"), unit="cm", instrument=instrument, when=when or {}, measure=said)


CARD = Card(
    id="gauge-check", chapter="knit", place=30,
    question="Which size comes out right at my gauge?",
    inputs=(
        Input("pattern_stitches", PER_LENGTH, "The pattern’s stitches", default="21 per 10 cm", allowed=("2 per 10 cm", "200 per 10 cm"), usual=("10 per 10 cm", "40 per 10 cm"), units=GAUGE_UNITS),
        Input("pattern_rows", PER_LENGTH, "The pattern’s rows", default="28 per 10 cm", allowed=("2 per 10 cm", "300 per 10 cm"), usual=("12 per 10 cm", "60 per 10 cm"), units=GAUGE_UNITS),
        Input("counted", NUMBER, "Stitches you counted", default="30", allowed=("2", "1000"), usual=("15", "80"), rough="0.25", measure="Over as much as you have, quarters too: 10 cm is little, 20 cm is good."),
        _cm("across", "over a width of", "15 cm", ("2 cm", "200 cm"), ("8 cm", "30 cm"), "0.15 cm", "swatch tape"),
        Input("counted_rows", NUMBER, "Rows you counted", default="40.5", allowed=("2", "1000"), usual=("20", "120"), rough="0.25"),
        _cm("tall", "over a height of", "15 cm", ("2 cm", "200 cm"), ("8 cm", "30 cm"), "0.15 cm", "swatch tape", said="Washed, dry and rested, not pinned."),
        Input("washed", CHOICE, "Measured before the wash too?", default="yes", options=(Option("yes", "Yes"), Option("no", "No"))),
        _cm("wide_before", "Width before", "14.6 cm", ("2 cm", "200 cm"), ("8 cm", "30 cm"), "0.15 cm", "tape before", WASHED, "The same stitches, before washing."),
        _cm("tall_before", "Height before", "15.3 cm", ("2 cm", "200 cm"), ("8 cm", "30 cm"), "0.15 cm", "tape before", WASHED),
        Input("needle", LENGTH, "Needle of the swatch", default="4 mm", allowed=("1 mm", "60 mm"), usual=("2 mm", "10 mm"), units=("mm",)),
        _cm("wanted", "Wanted around the chest", "104 cm", ("20 cm", "300 cm"), ("45 cm", "170 cm"), "", "", said="Of the garment: the body and its ease."),
        Rows("sizes", "Sizes of the pattern", "size", least=1, most=16, measure="Finished, around the chest, as the pattern gives them.",
             fields=(Input("name", TEXT, "Name", default="Next", longest=12, lent=False), _cm("girth", "Around", "125 cm", ("20 cm", "300 cm"), ("45 cm", "170 cm"), "", "")),
             default=({"name": "1", "girth": "90 cm"}, {"name": "2", "girth": "97 cm"}, {"name": "3", "girth": "104 cm"}, {"name": "4", "girth": "111 cm"}, {"name": "5", "girth": "118 cm"})),
    ),
    results=(
        Result("girth", LENGTH, "That size at your gauge", units=("cm", "in"), finest=(0.5, 0.2), floor=0.0),
        Result("off", LENGTH, "Wider than wanted by", units=("cm", "in"), finest=(0.5, 0.2)),
        Result("own_stitches", PER_LENGTH, "Your stitches, washed", units=("per 10 cm", "per 4 in"), finest=(0.1, 0.1), floor=0.0),
        Result("own_rows", PER_LENGTH, "Your rows, washed", units=("per 10 cm", "per 4 in"), finest=(0.1, 0.1), floor=0.0),
        Result("row_share", NUMBER, "Rows against the pattern’s", finest=(0.01,), floor=0.0),
        Result("needle_to_try", LENGTH, "Needle to try for the pattern’s gauge", units=("mm",), finest=(0.1,), floor=0.0),
        Result("wider", PERCENT, "Width, in the wash", finest=(0.5,)),
        Result("longer", PERCENT, "Length, in the wash", finest=(0.5,)),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(table,),
    basis=Basis(MODEL, "The stitches of a size stay, their width changes. What the swatch leaves open (a quarter of a stitch, a millimeter and a half of tape) is carried to the chest. "
                       "Needle and stitch width in proportion is common practice, for a first try."),
    sources=(ARITHMETIC, COMMON_PRACTICE, TRADE_PAGE_NEEDLES),
    cautions=(Caution("Measure a washed swatch.", "Superwash yarn grows, felting yarn shrinks; what hangs from your shoulders grows in length besides."),),
    carry=(Carry("yarn-needed", "How many skeins at this gauge?", {"stitches": "own_stitches", "rows": "own_rows"}),),
    saves=(Save("measurement", "An own measurement: this gauge", {"what": "'gauge'", "stitches": "own_stitches", "rows": "own_rows", "needle": "needle", "state": "'wet'"}),),
)
