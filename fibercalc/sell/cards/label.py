"""Labels, laid out to the millimeter: what they promise is rounded down, and what does not fit is said."""

from datetime import timedelta
from math import ceil

from ...core.amount import NO_BREAK
from ...core.answer import Table
from ...core.card import BENCH_RULE, CHOICE, DATE, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.day import write_date
from ...core.label import PAGES, Precut, Sheets, TooLong, fits_on, has_foot, laid_out, smallest
from ...core.label.sheet import MOST, ROUND_GAP
from ...core.number import write_number, write_plain
from ...core.outcome import with_money
from ...core.paper import Labels, Paper
from ...core.problem import OutOfRange, Refused
from ...core.settings import Settings
from ...core.table import read_table
from ...core.units import CONCENTRATION, COUNT, LENGTH, MASS, MONEY, NUMBER, PERCENT
from ...sources import (ARITHMETIC, CFR_16_303, CLP_ANNEXES, COMMON_PRACTICE, EU_1007_2011, GHS_MEMORY, NIST_HB_130, RI_6_10, WOOL_ACT)
from ...yarn.putup import printed_grams, printed_meters, printed_ounces, printed_yards
from ..label_text import ASKED, hazards, length_words, mass_words, missing, shares_of
from ..pictures.label_on_screen import label_picture
from ..pictures.labels import BAND, BOTTLE, DRAWN, KIT, PRICE, SHELF, SIZES, SMALL, STICKER, WITH_CODE, Skein, bottle_label, day_sticker, kit_card
from ..pictures.papers import lot_card

ALONE, A4, LETTER = "alone", "a4", "letter"
PLAIN, PRECUT = "plain", "precut"
WRITE = "____________"
NEAR = 0.05  # mm: what measures typed to a tenth may be off by
FARTHEST_ALONE = 0.0015  # m: what a label printed alone can be moved before its words come to its edge
SKEINS = (*WITH_CODE, SMALL, PRICE, SHELF)
LABELED = {STICKER: (("No set", "of_set"),), KIT: (("No kit", "kit"), ("No day", "start"))} | dict.fromkeys(SKEINS, (("No name of a base", "name"),))
UNNAMED = {"price": "Price: give it; a ticket says nothing else.", "stock": "Dye or other stock: give its name; a bottle that nobody can name is a danger."}
NAMES = {"Name": "name", "Color": "color", "Maker": "maker", "Fiber content": "fiber", "Care": "care_1", "Lot": "lot", "Set": "of_set", "Made in": "origin", "Price": "price", "Strength": "strength",
         "Hazard statements": "contents.1.what", "Put-up": "length", "Length": "length", "Weight": "mass", "Kit": "kit", "Dates": "parts"}


def answer(w, kind, page, copies, name, color, maker, fiber, mass, length, weight_class, lot, care_1, care_2, origin, price, of_set, first, last, kit, parts, start, every, stock, strength, made, jar, contents, right, down, sheet, across, rows, left, top, step_across, step_down, used):
    given = {"kind": kind, "name": name, "color": color, "maker": maker, "fiber": fiber, "weight_class": weight_class, "lot": lot, "care_1": care_1, "care_2": care_2, "origin": origin, "price": price,
             "of_set": of_set, "first": first, "last": last, "kit": kit, "parts": parts, "start": start, "every": every, "stock": stock, "strength": strength, "made": made, "jar": jar, "contents": contents}
    _, width, height = SIZES[kind]
    if fiber:
        try:
            shares_of(fiber)
        except OutOfRange as wrong:
            raise Refused(f"Fiber content: {wrong.reason}.", "fiber") from None
    for place, named, what in ((PRICE, price, "price"), (BOTTLE, stock, "stock")):
        if kind == place and not named:
            raise Refused(UNNAMED[what], what)
    if kind == STICKER and last < first:
        raise Refused(f"Last number: {last:g} is before the first, {first:g}.", "last")
    if page == ALONE and max(abs(right), abs(down)) > FARTHEST_ALONE:
        raise Refused(f"Moved right, moved down: a label printed alone can be moved {1000 * FARTHEST_ALONE:g} mm at most; more would cut its words off.", "right")
    count, wanted = copies, "copies"
    if kind == STICKER:
        wanted, count = "count", w.step("count", "(last - first + 1) * copies", (last - first + 1) * copies, COUNT, label="Stickers to print")
    if count > MOST:
        raise Refused(f"Labels: that makes {count:g}; {MOST} at a time can be printed.", "copies")
    per, sheets = 1, count
    if page != ALONE:
        spent = 0
        if sheet == PRECUT:
            _fits(PAGES[page], width, height, across, rows, 1000 * left, 1000 * top, 1000 * step_across, 1000 * step_down, used)
            per, spent = w.step("per_sheet", "across * rows", across * rows, COUNT, label="On a sheet"), used
        else:
            across, rows = fits_on(page, width, height, ROUND_GAP if kind == STICKER else 0.0)
            per = w.step("per_sheet", f"{across} * {rows}", across * rows, COUNT, label=f"On a sheet: {across} across, {rows} down")
        more = " + used" if spent else ""
        sheets = w.searched("sheets", ceil((count + spent) / per), (f"sheets * {per:g} >= {wanted}{more}",), f"({wanted}{more}) / {per:g}", label="Sheets")
    found = {"per_sheet": per, "sheets": sheets}
    if kind in SKEINS:
        w.searched("yards", printed_yards(length), ("yards * 0.9144 <= length",), "length / 0.9144", NUMBER, label="Whole yards in it")
        w.searched("meters", printed_meters(length), ("meters <= length",), "length", NUMBER, label="Whole meters in it")
        w.searched("grams", printed_grams(mass), ("grams <= mass",), "mass", NUMBER, label="Whole grams in it")
        w.searched("ounces", printed_ounces(mass), ("ounces * 28.349523125 <= mass",), "mass / 28.349523125", NUMBER, label="Tenths of an ounce in it")
        found |= {"printed_length": length, "printed_mass": mass}
    try:
        laid = _laid(given, mass, length, Settings())
    except TooLong as wrong:
        raise Refused(f"{wrong.what}: it does not fit on {width:g} × {height:g} mm even in the smallest letters; shorten it, or choose a larger label.", "stock" if kind == BOTTLE and wrong.what == "Name" else NAMES.get(wrong.what, "kind")) from None
    return found | {"smallest": min(smallest(each) for each in laid)}


def _fits(page, width, height, across, rows, left, top, step_across, step_down, used):
    """Refuses a bought sheet whose labels overlap, or do not lie on the paper; all in mm."""
    if across > 1 and step_across < width - NEAR or rows > 1 and step_down < height - NEAR:
        name, step, side = ("step_across", step_across, width) if across > 1 and step_across < width - NEAR else ("step_down", step_down, height)
        raise Refused(f"From one label to the next, {'across' if name == 'step_across' else 'down'}: {step:g} mm, but the label is {side:g} mm; they would overlap. Measure from edge to the same edge.", name)
    for name, words, end, paper in (("left", "wide", left + (across - 1) * step_across + width, page[0]), ("top", "high", top + (rows - 1) * step_down + height, page[1])):
        if end > paper + NEAR:
            raise Refused(f"The sheet: its labels end at {end:g} mm, and the paper is {paper:g} mm {words}; check the measures.", name)
    if used >= across * rows:
        raise Refused(f"Places already used: the sheet has {across * rows:g}.", "used")


def _laid(given, mass, length, settings):
    """The labels of a kind, laid out: one, or one for each number of a set. Raises TooLong."""
    kind = given["kind"]
    if kind == STICKER:
        return [laid_out(day_sticker(number, given["of_set"] or "")) for number in range(int(given["first"]), int(given["last"]) + 1)]
    if kind == BOTTLE:
        found = _hazards(given["contents"])
        strength = f"{write_plain(given['strength'], settings.style)} % stock: {write_plain(given['strength'], settings.style)} g in 100{NO_BREAK}mL"
        return [laid_out(bottle_label(given["stock"], strength, f"Made {write_date(given['made'])}", given["jar"] or "", found.signal, found.lines))]
    if kind == KIT:
        days = tuple(_part(given, part) for part in range(int(given["parts"])))
        return [laid_out(kit_card(given["kit"] or "", given["maker"] or "", given["color"] or "", given["lot"] or "", days))]
    return [laid_out(DRAWN[kind](_skein(given, mass, length, settings)))]


def _part(given, part):
    """One line of a kit card; with no day to write by hand where the first is not known."""
    return f"Part {part + 1:g}: " + (write_date(given["start"] + timedelta(days=part * int(given["every"]))) if given["start"] else WRITE)


def _skein(given, mass, length, settings):
    price = "" if given["price"] is None else with_money(write_number(given["price"], 0 if given["price"] == round(given["price"]) else 2, settings.style), settings.money)
    link = (("grams", round(mass, 1)), ("meters", round(length, 1)), ("weight_class", "" if given["weight_class"] in (None, "none") else given["weight_class"]), ("name", given["name"] or ""), ("lot", given["lot"] or ""))
    origin = f"Made in {given['origin']}" if given["origin"] else ""
    care = tuple(line for line in (given["care_1"], given["care_2"]) if line)
    return Skein(given["name"] or "", given["color"] or "", given["maker"] or "", given["fiber"] or "", length_words(length), mass_words(mass, settings.style), given["lot"] or "", care, origin, price, link)


def _hazards(contents):
    mixed: dict[str, float] = {}
    for row in contents:
        mixed[row.what] = mixed.get(row.what, 0.0) + row.share
    if sum(mixed.values()) > 100.0001:
        raise Refused(f"Contents: together they are {sum(mixed.values()):.4g} %; a bottle holds no more than 100 %.", "contents.1.share")
    return hazards(mixed)


def _finished(r):
    """The labels as they are printed: with the low ends of what is rough, in the user's style."""
    skein = r.has("printed_mass")
    return _laid(r.given, r.low("printed_mass") if skein else None, r.low("printed_length") if skein else None, r.settings)


def sheets(r):
    given, precut = r.given, None
    if given["sheet"] == PRECUT:
        precut = Precut(int(given["across"]), int(given["rows"]), *(1000 * given[name] for name in ("left", "top", "step_across", "step_down")), int(given["used"]))
    return Sheets(given["page"], tuple((laid, int(given["copies"])) for laid in _finished(r)), 1000 * given["right"], 1000 * given["down"], precut)


def say(r):
    kind, page = r.given["kind"], r.given["page"]
    title, width, height = SIZES[kind]
    if kind == STICKER:
        what = f"{r.given['of_set'] or 'A set'}, {r.given['first']:g} to {r.given['last']:g}"
    elif kind == KIT:
        first = f" from {write_date(r.given['start'])}" if r.given["start"] else ""
        what = f"{r.given['kit'] or 'A kit'}: {r.given['parts']:g} {'part' if r.given['parts'] == 1 else 'parts'}{first}"
    elif kind == BOTTLE:
        found = _hazards(r.given["contents"])
        what = f"{r.given['stock'].capitalize()}, {write_plain(r.given['strength'], r.settings.style)} %" + ("" if found.signal == "none" else f": {found.signal}")
    else:
        what = f"{r.given['name'] or 'A skein'}: {_promise(r)}"
    count = int(r.given["copies"] * (r.given["last"] - r.given["first"] + 1 if kind == STICKER else 1))
    number = int(r.value("sheets"))
    where = f"{count} printed alone" if page == ALONE else f"{count} on {number} {'sheet' if number == 1 else 'sheets'} of {'A4' if page == A4 else 'US Letter'}, {r.value('per_sheet'):g} to a sheet"
    return f"{what}.", f"{title}, {width:g} × {height:g} mm: {where}."


def _promise(r):
    yards, meters = length_words(r.low("printed_length"))
    grams, ounces = mass_words(r.low("printed_mass"), r.settings.style)
    return f"{grams}, {yards}" if r.given["kind"] == SMALL else f"{yards} ({meters}), {grams} ({ounces})"


def notes(r):
    kind, laid = r.given["kind"], _finished(r)
    said = [f"{words} stands on it: the example’s is not yours." for words, name in LABELED.get(kind, ()) if not r.given[name]]
    shrunk = list(dict.fromkeys(each for one in laid for each in one.shrunk))
    if shrunk:
        said.append(f"To fit, these are in smaller letters than usual: {', '.join(shrunk).lower()}. The smallest are {min(smallest(each) for each in laid):.1f} pt.")
    if kind in WITH_CODE:
        if lacks := missing(_said(r)):
            said.append(f"The label lacks: {', '.join(item[0].lower() + item[1:] for key, item, _ in ASKED if key in lacks)}.")
        said.append("The code is drawn when you print: it leads to the yardage helper of the book you print from, with this base filled in.")
    if kind == BOTTLE and _hazards(r.given["contents"]).asks:
        said.append("Statements marked “until its data sheet says otherwise” are those of the pure substance, or of a dye whose data sheet was not asked.")
    if kind == BOTTLE and not _hazards(r.given["contents"]).lines:
        said.append("By the limits looked up no statement is called for. What is not classified can still harm.")
    how = "Give the label printer this very paper size." if r.given["page"] == ALONE else "The bar at the foot of the sheet must measure 100 mm."
    if r.given["sheet"] == PRECUT and not has_foot(sheets(r)):
        how = "Print one on plain paper first and hold it against the sheet: there is no room for the bar of 100 mm."
    said.append(f"Print at 100 %, without “fit to page”. {how}")
    return said


def _said(r):
    return {"fiber": r.given["fiber"] or "", "maker": r.given["maker"] or "", "origin": r.given["origin"] or "", "mass": "yes", "length": "yes", "lot": r.given["lot"] or "",
            "care": (r.given["care_1"] or "") + (r.given["care_2"] or "")}


def asked_for(r):
    """What laws and buyers ask of a yarn's label, and whether this one says it."""
    if r.given["kind"] not in WITH_CODE:
        return None
    lacks = missing(_said(r))
    return Table("What the label says", ("Item", "Here", "Asked for by"), tuple((item, "missing" if key in lacks else "yes", by) for key, item, by in ASKED),
                 "Not legal advice: the law of the place of sale decides.", ("cfr-16-303", "wool-act", "eu-1007-2011", "nist-hb-130", "ri-6-10"))


def picture(r):
    laid = _finished(r)
    words = ". ".join(dict.fromkeys(line.words for line in laid[0].lines))
    code = ", with the place of its code" if laid[0].label.codes else ""
    return label_picture(r.given["kind"], laid, f"{SIZES[r.given['kind']][0]} at its true proportions{code}. It reads: {words}.")


def lot_paper(r):
    skein = r.has("printed_mass")
    put_up = ", ".join((*length_words(r.low("printed_length")), *mass_words(r.low("printed_mass"), r.settings.style))) if skein else ""
    return lot_card(r.given["lot"] or "", r.given["name"] or "", r.given["color"] or "", put_up)


def _for(*kinds):
    return {"kind": kinds}


def _measure(name, label, default):
    return Input(name, LENGTH, label, default=default, allowed=("0 mm", "297 mm"), units=("mm", "in"), when=BOUGHT, measure="Edge to the same edge." if name.startswith("step") else "")


ON_SKEIN, ON_SHEETS = _for(*SKEINS), {"page": (A4, LETTER)}
BOUGHT = ON_SHEETS | {"sheet": (PRECUT,)}
CARD = Card(
    id="label", chapter="sell", place=100, handles=("powder", "acid", "alkali"),
    question="What goes on the label, and does it fit?",
    inputs=(
        Input("kind", CHOICE, "Label", default=BAND, options=tuple(Option(kind, f"{name}, {width:g} × {height:g} mm") for kind, (name, width, height) in SIZES.items())),
        Input("page", CHOICE, "Paper", default=A4, options=(Option(A4, "Sheets of A4"), Option(LETTER, "Sheets of US Letter"), Option(ALONE, "One to a page, for a label printer"))),
        Input("copies", COUNT, "Copies", default="4", allowed=("1", "600"), usual=("1", "100"), measure="Of each number, for stickers."),
        Input("name", TEXT, "Name", record="base.name", default="Tarrow Sock", longest=40, optional=True, when=ON_SKEIN, bench="bases.name", measure="Of the base."),
        Input("color", TEXT, "Color", record="colorway.name", default="Wet Slate", longest=40, optional=True, when=_for(*SKEINS, KIT)),
        Input("maker", TEXT, "Maker", default="Brackwend Dyehouse", longest=40, optional=True, when=_for(*WITH_CODE, KIT), measure="Name, or registered number."),
        Input("fiber", TEXT, "Fiber content", record="base.fiber_line", default="75 % superwash wool, 25 % nylon", longest=64, optional=True, when=_for(*WITH_CODE, PRICE), measure="In the legal order: see “What do I write for its fiber content?”. Not known is an answer: say so."),
        Input("mass", MASS, "Weight of a skein", record="base.mass", default="100 g", allowed=("1 g", "2000 g"), usual=("5 g", "250 g"), units=("g", "oz"), bench="bases.mass", when=ON_SKEIN, measure="Conditioned. With ± its low end is printed."),
        Input("length", LENGTH, "Length of a skein", record="base.length", default="420 m", allowed=("1 m", "10000 m"), usual=("10 m", "1000 m"), units=("m", "yd"), bench="bases.length", when=ON_SKEIN, measure="With ± its low end is printed."),
        Input("weight_class", CHOICE, "Weight class for the code", record="base.weight_class", default="1", options=(Option("none", "Not said"), *(Option(number, number) for number in "01234567")), when=_for(*WITH_CODE), bench="bases.weight_class"),
        Input("lot", TEXT, "Lot", record="dye-lot.lot", default="WS-14", longest=24, optional=True, when=_for(*WITH_CODE, SMALL, SHELF, KIT), bench="bases.lot"),
        Input("care_1", TEXT, "Care", default="Machine wash at 30 °C, mild cycle. Do not bleach.", longest=64, optional=True, when=_for(*WITH_CODE), measure="From “What goes on the care label?”."),
        Input("care_2", TEXT, "Care, going on", default="Do not tumble dry. Dry flat. Wash with like colors.", longest=64, optional=True, when=_for(*WITH_CODE)),
        Input("origin", TEXT, "Made in", longest=40, optional=True, when=_for(*WITH_CODE), measure="Country. Blank leaves it off; some laws ask for it."),
        Input("price", MONEY, "Price", record="product.price", default="27", allowed=("0.01", "99999"), usual=("1", "200"), optional=True, when=_for(PRICE)),
        Input("of_set", TEXT, "Set", record="product.name", default="Twelve Lamps", longest=40, optional=True, when=_for(STICKER)),
        Input("first", COUNT, "First number", default="1", allowed=("0", "999"), usual=("1", "100"), when=_for(STICKER)),
        Input("last", COUNT, "Last number", default="12", allowed=("0", "999"), usual=("1", "100"), when=_for(STICKER)),
        Input("kit", TEXT, "Kit", default="Culvert Stole", longest=40, optional=True, when=_for(KIT)),
        Input("parts", COUNT, "Parts", default="5", allowed=("1", "12"), usual=("1", "8"), when=_for(KIT)),
        Input("start", DATE, "Part one comes on", default="2027-03-05", allowed=("2000-01-01", "2199-12-31"), optional=True, when=_for(KIT)),
        Input("every", COUNT, "Days from part to part", default="7", allowed=("1", "92"), usual=("7", "31"), when=_for(KIT)),
        Input("stock", TEXT, "Dye or other stock", record="bottle.name", default="navy", longest=40, optional=True, when=_for(BOTTLE)),
        Input("strength", CONCENTRATION, "Strength of the stock", record="bottle.strength", default="1 g/100 mL", allowed=("0.005 g/100 mL", "40 g/100 mL"), usual=("0.1 g/100 mL", "5 g/100 mL"), units=("g/100 mL", "g/L"), when=_for(BOTTLE), strict=True),
        Input("made", DATE, "Made on", record="bottle.made_on", default="2027-01-11", today=True, when=_for(BOTTLE)),
        Input("jar", TEXT, "Lot of the jar", record="jar.lot", longest=24, optional=True, when=_for(BOTTLE)),
        Rows("contents", "In the bottle", "substance", least=1, most=6, when=_for(BOTTLE), measure="What is not listed is water, or not classified by its own data sheet.",
             fields=(Input("what", CHOICE, "Substance", default="acetic", options=tuple(Option(row["key"], row["label"]) for row in read_table("safe", "label-limits").rows)),
                     Input("share", PERCENT, "Strength", default="1", allowed=("0.01", "100"), usual=("0.5", "100"), strict=True, measure="% by weight.")),
             default=({"what": "dye-unknown", "share": "1"},)),
        Input("right", LENGTH, "Move right", default="0 mm", allowed=("-6 mm", "6 mm"), usual=("-3 mm", "3 mm"), units=("mm", "in"), measure="Where your printer starts too far left. Negative moves left."),
        Input("down", LENGTH, "Move down", default="0 mm", allowed=("-6 mm", "6 mm"), usual=("-3 mm", "3 mm"), units=("mm", "in"), measure="Negative moves up."),
        Input("sheet", CHOICE, "The sheet is", default=PLAIN, options=(Option(PLAIN, "Plain, I cut it"), Option(PRECUT, "Bought with cut labels")), when=ON_SHEETS),
        Input("across", COUNT, "Labels across", default="4", allowed=("1", "20"), when=BOUGHT), Input("rows", COUNT, "Labels down", default="1", allowed=("1", "40"), when=BOUGHT),
        _measure("left", "Paper’s left edge to the first label", "13 mm"), _measure("top", "Paper’s top edge to the first label", "20 mm"),
        _measure("step_across", "From one label to the next, across", "48 mm"), _measure("step_down", "From one label to the next, down", "48 mm"),
        Input("used", COUNT, "Places already used", default="0", allowed=("0", "799"), when=BOUGHT),
    ),
    results=(
        Result("printed_length", LENGTH, "Length promised", units=("yd", "m"), finest=(1, 1), at_step=True, rounding="down"),
        Result("printed_mass", MASS, "Weight promised", units=("g", "oz"), finest=(1, 0.1), at_step=True, rounding="down"),
        Result("per_sheet", COUNT, "To a sheet"),
        Result("sheets", COUNT, "Sheets", rounding="up"),
        Result("smallest", NUMBER, "Smallest letters, pt", finest=(0.1,), rounding="down"),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(asked_for,),
    papers=(Labels("These labels", sheets), Paper("Lot card, A6", "A6", lot_paper)),
    basis=Basis(BENCH_RULE, "Each unit is rounded down by itself, so that none promises more than there is. Letters are laid out by the widths of the book’s own face; nothing is under 6 pt."),
    sources=(COMMON_PRACTICE, ARITHMETIC, CFR_16_303, WOOL_ACT, EU_1007_2011, NIST_HB_130, RI_6_10, CLP_ANNEXES, GHS_MEMORY),
    cautions=(Caution("A label is a promise, and on a bottle a warning.", "The law of the place of sale decides what it must say; the maker’s safety data sheet decides a bottle’s hazards."),),
    carry=(Carry("fiber-content", "What do I write for its fiber content?", {"maker": "maker"}), Carry("care-label", "What goes on the care label?", {}), Carry("hazard-label", "What hazards go on the bottle?", {}), Carry("skein-length", "How much is in this skein?", {})),
)
