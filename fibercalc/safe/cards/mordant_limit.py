"""Metal of a mordant: on the fiber, in the bath, and against the published upper marks."""

from ...core.card import CHOICE, STANDARD, TEXT, Basis, Card, Carry, Caution, Input, Option, Result
from ...core.table import read_table
from ...core.units import CONCENTRATION, MASS, NUMBER, PERCENT, VOLUME
from ...sources import ARITHMETIC, ATOMIC_WEIGHTS, LOCAL_LIMITS_US, MAIRET_1916, TRADE_PAGE_MORDANTS, TRADE_PAGES_IRON, WEB_GUIDE_MORDANTS
from ..limits import published
from ..mordant import metal_in, metal_left
from ..pictures.bars import shares_of_limit

CHROME = "chrome is not offered: hexavalent chromium is a carcinogen, and in the EU its use needs an authorization (from memory); alum, iron or another color does without"
ROWS = read_table("safe", "mordants").rows
STRICTEST = {"copper": 0.68, "iron": 32.0}  # mg/L; tests hold it to the table drain-limits


def answer(w, mordant, fiber, depth, taken_up, bath):
    mark = w.looked_up("mark", "safe", "mordants", "key", mordant, "mark", PERCENT, label="Published upper mark, of the fiber")
    share_of_metal = w.looked_up("in_salt", "safe", "mordants", "key", mordant, "metal", PERCENT, label="Metal in the crystals")
    salt = w.step("salt", "fiber * depth / 100", fiber * depth / 100, MASS, label="Mordant")
    metal = w.step("metal", "salt * in_salt / 100", metal_in(salt, share_of_metal), MASS, label="Metal put in")
    on_fiber = w.step("on_fiber", "1000 * metal * taken_up / 100 / (fiber / 1000) / 1000", metal * taken_up / 100 / (fiber / 1000), NUMBER, label="Metal on the fiber, g for a kg")
    left = w.step("left", "1000 * metal * (1 - taken_up / 100) / bath", metal_left(metal, taken_up, bath), CONCENTRATION, "mg/L", label="Metal left in the bath")
    times = w.step("times_mark", "depth / mark", depth / mark, NUMBER, label="Against the mark")
    row = read_table("safe", "mordants").row("key", mordant)
    return {"salt": salt, "metal": metal, "on_fiber": on_fiber, "left": left * 1e-4, "times_mark": times, "limit": _limit(row), "metal_name": row["metal_name"], "label": row["label"], "why": row["why"], "mark_of": mark}


def _limit(row):
    local = STRICTEST.get(row["metal_name"])
    bath = f"; example for a bath: {local:g} mg/L {row['metal_name']}, {'Lawton, Oklahoma' if local < 1 else 'St. Charles, Illinois'}, read {LOCAL_LIMITS_US.read}" if local else "; no limit for the bath was found"
    if row["key"] == "aluminum-sulfate":
        return published(f"{row['mark']:g} % of the fiber, which holds as much aluminum as alum at its mark", "trade-page-mordants") + bath
    source = {"alum": "trade-page-mordants", "ferrous": "trade-pages-iron"}.get(row["key"], "web-guide-mordants")
    return published(f"{row['mark']:g} % of the fiber", source) + bath


def _name(r):
    return r.kept["label"][0].lower() + r.kept["label"][1:].partition(" (")[0]


def say(r):
    above = r.value("times_mark") > 1 + 1e-9
    amount = f"{r.amount(r.given['depth'], PERCENT)} is {r.text('salt')} of {_name(r)}"
    first = f"{amount}, {'above' if above else 'at' if r.value('times_mark') > 0.999 else 'below'} the published upper mark of {r.kept['mark_of']:g} %."
    return first, f"It carries {r.text('metal')} of {r.kept['metal_name']}; about {r.text('left')} of it stays in the bath ({r.span('left')})." if r.rough("left") else f"It carries {r.text('metal')} of {r.kept['metal_name']}; about {r.text('left')} of it stays in the bath."


def notes(r):
    said = [f"Above the mark: {r.kept['why']}."] if r.kept["why"] else []
    local = STRICTEST.get(r.kept["metal_name"])
    if local and r.value("left") * 1e4 > local:
        said.append(f"What stays is about {r.value('left') * 1e4 / local:.0f} times the strictest local sewer limit that was read ({local:g} mg/L): use the bath again for the next fiber, or collect it; diluting to comply is no way out.")
    said.append(f"{CHROME[0].upper()}{CHROME[1:]}.")
    said.append("How much the fiber takes up is a guess unless it was measured: type yours, with its ±.")
    return said


def picture(r):
    rows = [("Mordant", r.value("times_mark"), r.low("times_mark"), r.high("times_mark"))]
    return shares_of_limit("Against the published upper mark", rows, "published upper mark")


CARD = Card(
    id="mordant-limit", chapter="safe", place=60,
    question="How much metal does this mordant leave?",
    inputs=(
        Input("mordant", CHOICE, "Mordant", default="alum", refused={word: CHROME for word in ("chrome", "chromium", "dichromate", "potassium dichromate", "sodium dichromate")},
              options=tuple(Option(row["key"], row["label"]) for row in ROWS), measure="Chrome is not offered."),
        Input("fiber", MASS, "Dry fiber", default="400 g", allowed=("1 g", "100 kg"), usual=("20 g", "5 kg"), units=("g", "kg", "oz", "lb"), strict=True, rough="1 %"),
        Input("depth", PERCENT, "Mordant, of the fiber", default="12", allowed=("0.1", "100"), usual=("1", "25"), strict=True),
        Input("taken_up", PERCENT, "Taken up by the fiber", default="60", allowed=("0", "100"), usual=("20", "95"), rough="20"),
        Input("bath", VOLUME, "Bath left", default="9 L", allowed=("0.1 L", "1000 L"), usual=("1 L", "100 L"), units=("L", "qt", "gal"), unit="L", rough="5 %", strict=True),
    ),
    results=(
        Result("salt", MASS, "Mordant", units=("g", "oz"), finest=(0.1, 0.01), floor=0.0),
        Result("metal", MASS, "Metal in it", units=("g",), finest=(0.01,), floor=0.0),
        Result("on_fiber", NUMBER, "Metal on the fiber, g for a kg", floor=0.0),
        Result("left", CONCENTRATION, "Metal left in the bath", units=("mg/L",), finest=(1,), rounding="up", floor=0.0),
        Result("times_mark", NUMBER, "Times the upper mark", finest=(0.01,), rounding="up", floor=0.0),
        Result("limit", TEXT, "Published limit"),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,),
    basis=Basis(STANDARD, "Mass balance, with the metal from the formula of the crystals. Marks are the upper ends of what dye books and guides print."),
    sources=(TRADE_PAGE_MORDANTS, TRADE_PAGES_IRON, WEB_GUIDE_MORDANTS, MAIRET_1916, LOCAL_LIMITS_US, ATOMIC_WEIGHTS, ARITHMETIC),
    cautions=(
        Caution("Metal salts: gloves, goggles, no dust.", "Copper and tin poison water life: never to a septic tank, drain or garden without the local authority’s word. Their pots never go back to food. Iron pills and salts kill children: lock them up."),
    ),
    carry=(Carry("drain-check", "May the bath go down the drain?", {"metal": "mordant", "metal_amount": "left", "volume": "bath"}),),
    handles=("powder", "metal"),
)
