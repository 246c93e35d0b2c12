"""What to order: base, dye and chemicals that all open plans need, less what is on hand, in the cheapest packs, landed, and by when."""

from datetime import timedelta

from ...core.answer import Table
from ...core.card import ANY, CHOICE, DATE, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.day import write_date
from ...core.paper import Paper
from ...core.problem import OutOfRange, Refused
from ...core.units import CONCENTRATION, COUNT, LENGTH, MASS, MONEY, NUMBER, PERCENT, VOLUME
from ...sources import ARITHMETIC, COMMON_PRACTICE, INVENTORY_TEXTBOOK
from ..calendar import calendar_of, days_earlier, last_working_day
from ..pictures.shelf import shelf_picture
from ..plans import ways
from ..stock import cheapest_packs, dye_on_hand, landed_costs, net_need, stock_to_keep


def answer(w, bases, dyes, spread, sure, good_for, carriage, duty, exchange, needed_by, check, lead_low, lead, lead_high, closed, today):
    if not lead_low <= lead <= lead_high:
        raise Refused("Supplier: give the quickest, the usual and the slowest in rising order.", "lead")
    lines = [_base(w, number, row, spread, sure, lead_low, lead_high) for number, row in enumerate(bases, 1)]
    lines += [_dye(w, number, row, good_for) for number, row in enumerate(dyes, 1)]
    for line in lines:
        line["goods"] = (line["small"] * line["row"].price + (line["large"] * line["row"].large_price if line["kind"] == "base" else 0.0)) * exchange
    carriage = carriage if any(line["ordered"] for line in lines) else 0.0
    for line, landed in zip(lines, landed_costs([line["goods"] for line in lines], [line["mass"] for line in lines], carriage * exchange, duty)):
        line["landed"] = landed
    goods = w.step("goods", f"({' + '.join(_price_formula(line) for line in lines) or '0'}) * exchange", sum(line["goods"] for line in lines), MONEY, label="Goods, in your own money: packs at their prices")
    freight = w.step("freight", "carriage * exchange" if carriage else "0", carriage * exchange, MONEY, label="Carriage")
    landed = w.step("landed", "(goods + freight) * (1 + duty / 100)", (goods + freight) * (1 + duty / 100), MONEY, label="Landed, all of it")
    days = [(first.first, first.last) for first in closed]
    try:
        calendar = calendar_of("mon-fri", days)
        arrive = last_working_day(needed_by - timedelta(days=1 + check), calendar)
        by = [last_working_day(days_earlier(arrive, 7 * weeks), calendar) for weeks in (lead_high, lead, lead_low)]
    except OutOfRange as error:
        raise Refused(f"Closed days: {error.reason}.", "closed.1.last") from None
    first = next((line for line in lines if line["kind"] == "base"), None)
    count = first["ordered"] if first else 0
    share = f" + freight * {first['mass']:.10g} / {sum(line['mass'] for line in lines):.10g}" if count and carriage else ""
    each = w.step("each", f"({_price_formula(first)} * exchange{share}) * (1 + duty / 100) / ordered_1", first["landed"] / count, MONEY, label=f"Landed, a skein of {first['row'].name}") if count else None
    hundred = w.step("hundred", "each / bases[1].length * 100", each / first["row"].length * 100, MONEY, label="and 100 m of it") if each is not None else None
    return {"packs": sum(line["small"] + line["large"] for line in lines), "skeins": sum(line["ordered"] for line in lines if line["kind"] == "base"), "dye_short": sum(line["net"] for line in lines if line["kind"] == "dye"),
            "goods": goods, "landed": landed, "each": each, "hundred": hundred, "order_by": by[0], "order_usual": by[1], "order_quick": by[2], "slack": (by[0] - today).days, "lines": lines, "arrive": arrive, "exchanged": exchange}


def _price_formula(line):
    """What a line's packs cost, in the names of its inputs."""
    rows, number = ("bases" if line["kind"] == "base" else "dyes"), line["number"]
    text = f"{line['small']} * {rows}[{number}].price"
    return f"({text} + {line['large']} * {rows}[{number}].large_price)" if line["large"] else text


def _base(w, number, row, spread, sure, lead_low, lead_high):
    keep = w.decide(f"keep {number}", int(stock_to_keep(row.week, spread / 100, lead_low, lead_high, float(sure) / 100) + 0.999999))
    net = w.step(f"net_{number}", f"max(bases[{number}].needed + bases[{number}].promised + {keep} - bases[{number}].on_hand, 0)", net_need(row.needed, row.promised, keep, row.on_hand), COUNT, label=f"Skeins of {row.name} to get, {keep} of them to keep")
    if row.large and not row.large_price:
        raise Refused(f"Base {number}: a large pack needs its price.", f"bases.{number}.large_price")
    small, large = cheapest_packs(net, row.pack, row.price, row.large, row.large_price)
    ordered = small * row.pack + large * row.large
    w.searched(f"ordered_{number}", ordered, (f"ordered_{number} >= net_{number}",), f"net_{number}", label=f"Skeins of {row.name} ordered, in the cheapest packs")
    return {"kind": "base", "number": number, "row": row, "net": net, "keep": keep, "small": small, "large": large, "ordered": ordered, "mass": ordered * row.mass, "held": row.on_hand, "unit": "skeins"}


def _dye(w, number, row, good_for):
    try:
        held = dye_on_hand(row.jar, row.empty, row.bottle, row.strength, row.age, good_for)
    except OutOfRange as error:
        raise Refused(f"Dye or chemical {number}: {error.reason}.", f"dyes.{number}.empty") from None
    old = row.bottle > 0 and row.age > good_for
    fresh = row.bottle > 0 and not old
    text = f"dyes[{number}].jar - dyes[{number}].empty" + (f" + dyes[{number}].bottle * {row.strength!r} / 100" if fresh else "")
    w.step(f"held_{number}", text, held, MASS, label=f"{row.name} that can be counted on" + (" (the stock is too old)" if old else ""))
    net = w.step(f"short_{number}", f"max(dyes[{number}].needed - held_{number}, 0)", net_need(row.needed, 0.0, 0.0, held), MASS, label=f"{row.name} to get")
    small = w.decide(f"packs {number}", cheapest_packs(net, row.pack, row.price)[0])
    return {"kind": "dye", "number": number, "row": row, "net": net, "keep": 0, "small": small, "large": 0, "ordered": small * row.pack, "mass": small * row.pack, "held": held, "old": old, "unit": "g"}


def _packs(line):
    row, parts = line["row"], []
    unit = "" if line["kind"] == "base" else " g"
    if line["large"]:
        parts.append(f"{line['large']} × {row.large:g}{unit}")
    if line["small"]:
        parts.append(f"{line['small']} × {row.pack:g}{unit}")
    return " + ".join(parts) or "none"


def say(r):
    ordered = [f"{_packs(line)} of {line['row'].name}" for line in r.kept["lines"] if line["ordered"]]
    slack = r.value("slack")
    if not ordered:
        return "Nothing needs to be ordered.", "All that is spoken for, and what is to be kept, is on hand."
    listed = ", ".join(ordered[:4]) + (f" and {len(ordered) - 4} more" if len(ordered) > 4 else "")
    when = f"Order by {write_date(r.value('order_by'))}, {slack} {'day' if slack == 1 else 'days'} from today" if slack >= 0 else f"By the slowest lead it should have been ordered on {write_date(r.value('order_by'))}"
    each = f" A skein of {r.kept['lines'][0]['row'].name} comes to {r.text('each')}, 100 m to {r.text('hundred')}." if r.has("each") else ""
    return f"Order {listed}.", f"{when}; it comes to {r.text('landed')} landed.{each}"


def notes(r):
    said = [f"The stock of {line['row'].name} is older than {r.given['good_for']} days, so it was not counted: test it before you pour it away." for line in r.kept["lines"] if line.get("old")]
    over = [(line["row"].name, line["ordered"] - line["net"]) for line in r.kept["lines"] if line["kind"] == "base" and line["ordered"] - line["net"] > 0.15 * line["net"] and line["ordered"]]
    said += [f"{count:.0f} more of {name} than wanted, since packs are whole: a base bought for one job ties up money." for name, count in over]
    if r.value("slack") < 0:
        said.append(f"Ordering on {write_date(r.value('order_quick'))} would still do if the supplier is as quick as can be." if (r.value("order_quick") - r.given["today"]).days >= 0 else "Even the quickest lead is too slow: look for another source, or move the start.")
    said.append("What is promised to a club or dyed to order is off the shelf already. Mill lots differ: keep each lot’s skeins together and order one job’s base at once.")
    return said


def lines_table(r):
    rows = []
    for line in r.kept["lines"]:
        row, base = line["row"], line["kind"] == "base"
        wanted = row.needed + (row.promised if base else 0)
        write = (lambda value: str(round(value))) if base else (lambda value: r.measured(value, MASS, "g", 0.1))
        one = line["landed"] / line["ordered"] * (1 if base else 100) if line["ordered"] else None
        rows.append((row.name, write(wanted), write(line["keep"]) if base else "–", write(line["held"]), write(line["net"]), _packs(line), (r.settings.money + r.number(line["landed"], 2)) if line["ordered"] else "–",
                     (r.settings.money + r.number(one, 2) + (" a skein" if base else " / 100 g")) if one is not None else "–"))
    return Table("Line by line", ("What", "Wanted", "To keep", "There", "To get", "Packs", "Landed", "Landed, each"), tuple(rows), "Carriage is shared by weight; duty is on price and carriage.")


def order_sheet(r):
    rows = tuple((line["row"].name, _packs(line), r.settings.money + r.number(line["goods"], 2), "", "☐") for line in r.kept["lines"] if line["ordered"])
    return (Table("Order", ("What", "Packs", "Price", "Mill lot, date", "Here"), rows or (("Nothing", "–", "–", "", "☐"),)),
            Table("When", ("Step", "Day", ""), (("Order by, at the slowest lead", write_date(r.value("order_by")), "☐"), ("To be here by", write_date(r.kept["arrive"]), "☐"), ("Wanted on", write_date(r.given["needed_by"]), "☐"))))


def picture(r):
    lines = [line for line in r.kept["lines"] if line["kind"] == "base"]
    return shelf_picture([(line["row"].name, line["row"].needed, line["row"].promised, line["keep"], line["held"], line["ordered"]) for line in lines]) if lines else None


CARD = Card(
    id="base-order", chapter="sell", place=50, tall_sheet=True,
    question="What must I order, and by when?",
    inputs=(
        Rows("bases", "Bases", "base", record="base", least=0, most=40, measure="Count the shelf without what is promised. Prices as on the supplier’s list.",
             fields=(Input("name", TEXT, "Name", default="another base", longest=40), Input("needed", COUNT, "Skeins that open plans need", record="planned", default="0", allowed=("0", "20000")),
                     Input("promised", COUNT, "promised: club, dyed to order", default="0", allowed=("0", "20000")), Input("on_hand", COUNT, "on hand", default="0", allowed=("0", "20000")),
                     Input("week", NUMBER, "used in a week besides", default="0", allowed=("0", "2000")), Input("pack", COUNT, "Skeins in a pack", default="10", allowed=("1", "1000")),
                     Input("price", MONEY, "A pack costs", record="pack_price", default="92", allowed=("0", "20000")), Input("large", COUNT, "Skeins in a large pack (0: none)", default="0", allowed=("0", "5000")),
                     Input("large_price", MONEY, "It costs", default="0", allowed=("0", "100000")), Input("mass", MASS, "A skein weighs", default="100 g", allowed=("5 g", "2 kg"), units=("g", "oz")),
                     Input("length", LENGTH, "and holds", default="420 m", allowed=("5 m", "10000 m"), units=("m", "yd"))),
             default=({"name": "Tarrow Sock", "needed": "168", "promised": "12", "on_hand": "24", "week": "3", "large": "50", "large_price": "430"},
                      {"name": "Dunmel DK", "needed": "24", "on_hand": "38", "week": "2", "price": "78", "length": "230 m"})),
        Rows("dyes", "Dyes and chemicals", "dye or chemical", lent="bases", least=0, most=40, measure="Weigh the jar as it stands, and know what the empty jar weighs.",
             fields=(Input("name", TEXT, "Name", default="red", longest=40), Input("needed", MASS, "Open plans need", default="10 g", allowed=("0 g", "50 kg"), units=("g", "oz"), strict=True),
                     Input("jar", MASS, "Jar weighs now", default="120 g", allowed=("0 g", "50 kg"), rough="1 g", units=("g", "oz"), strict=True, instrument="kitchen scale"),
                     Input("empty", MASS, "Empty jar", default="100 g", allowed=("0 g", "5 kg"), units=("g", "oz"), strict=True),
                     Input("bottle", VOLUME, "Stock in its bottle", default="0 mL", allowed=("0 mL", "50 L"), units=("mL", "L"), strict=True),
                     Input("strength", CONCENTRATION, "its strength", default="1 g/100 mL", allowed=("0.005 g/100 mL", "20 g/100 mL"), units=("g/100 mL", "g/L"), strict=True),
                     Input("age", COUNT, "made so many days ago", default="0", allowed=("0", "3650")), Input("pack", MASS, "Sold by", default="100 g", allowed=("1 g", "25 kg"), units=("g", "oz"), strict=True),
                     Input("price", MONEY, "That costs", default="48", allowed=("0", "5000"))),
             default=({"name": "navy", "needed": "81.7 g", "jar": "242 g", "empty": "102 g", "bottle": "400 mL", "age": "20"}, {"name": "black", "needed": "14.8 g", "jar": "162 g", "empty": "102 g", "bottle": "300 mL", "age": "140"},
                      {"name": "yellow", "needed": "9.9 g", "jar": "110 g", "empty": "102 g"}, {"name": "citric acid", "needed": "168 g", "jar": "560 g", "empty": "60 g", "pack": "1000 g", "price": "6.50"})),
        Input("spread", PERCENT, "A week’s use goes up and down by", default="50 %", allowed=("0 %", "300 %"), usual=("20 %", "100 %"), measure="Its standard deviation."),
        Input("sure", CHOICE, "Stock to keep is enough while waiting, in", default="90", options=tuple(Option(each, f"{each} in 100 waits") for each in ("80", "90", "95", "99"))),
        Input("good_for", COUNT, "A dye stock is counted on for days", default="90", allowed=("0", "3650"), usual=("14", "365"), measure="Your own rule for your dyes; it differs by class."),
        Input("carriage", MONEY, "Carriage for all", default="24", allowed=("0", "20000"), usual=("0", "500"), measure="In the supplier’s money."),
        Input("duty", PERCENT, "Duty on arrival", default="0 %", allowed=("0 %", "200 %"), usual=("0 %", "20 %"), measure="Your own; tax that you get back is no cost."),
        Input("exchange", NUMBER, "Your money for one of the supplier’s", default="1", allowed=("0.0001", "10000"), measure="1 where it is the same."),
        Input("needed_by", DATE, "Wanted on", default="2027-01-19", measure="The first dye day; see “By when must I do what?”."),
        Input("check", COUNT, "Days to weigh it in", default="1", allowed=("0", "60"), usual=("0", "7")),
        Input("lead_low", COUNT, "Supplier, weeks, at best", default="3", allowed=("0", "60")), Input("lead", COUNT, "Supplier, weeks, usually", default="4", allowed=("0", "60")), Input("lead_high", COUNT, "Supplier, weeks, at worst", default="5", allowed=("0", "60")),
        Rows("closed", "Closed days", "stretch", record="plan.closed", lent=ANY, least=0, most=12, fields=(Input("first", DATE, "From", default="2027-02-01"), Input("last", DATE, "to", default="2027-02-01")), default=({"first": "2026-12-24", "last": "2027-01-02"},)),
        Input("today", DATE, "Today", default="2026-11-26", today=True, measure="Or the day on which you look."),
    ),
    results=(
        Result("packs", COUNT, "Packs to order", rounding="up"), Result("skeins", COUNT, "Skeins of base ordered", rounding="up"), Result("dye_short", MASS, "Dye and chemicals to get", units=("g", "oz"), finest=(0.1, 0.01), rounding="up", floor=0.0),
        Result("goods", MONEY, "Goods", finest=(0.01,)), Result("landed", MONEY, "Landed, all of it", finest=(0.01,), rounding="up"), Result("each", MONEY, "A skein of the first base, landed", finest=(0.01,)),
        Result("hundred", MONEY, "100 m of it", finest=(0.01,)), Result("order_by", DATE, "Order by"), Result("order_usual", DATE, "if the lead is as usual"), Result("order_quick", DATE, "if it is as quick as can be"),
        Result("slack", COUNT, "Days from today", rounding="down"),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(lines_table,), papers=(Paper("Order, A5", "A5", order_sheet),),
    basis=Basis(MODEL, "Spoken for, and to be kept, less what is on hand; the cheapest whole packs. Stock to keep: use over the lead time, and a margin for both (textbook formula, from memory)."),
    sources=(INVENTORY_TEXTBOOK, COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("Jar and bottle both carry name, strength, date and lot.", "Never a drinks bottle. What nobody can name is not stock: ask the maker’s safety data sheet how to be rid of it."),),
    carry=(Carry("back-plan", "By when must I do what?", {"check": "check", "supplier_quick": "lead_low", "supplier": "lead", "supplier_slow": "lead_high", "closed": ways.closed_days, "today": "today"}), Carry("stock-solution", "Make up a stock", {}), Carry("true-weight", "It says 100 g, mine says 103", {})),
)
