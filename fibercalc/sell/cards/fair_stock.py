"""A fair: how many must sell, with a wage and without; how many to bring when past fairs sold out; crates and float."""

from ...core.answer import Table
from ...core.card import MODEL, TEXT, Basis, Card, Carry, Caution, Input, Result, Rows
from ...core.outcome import with_money
from ...core.paper import Paper
from ...core.problem import OutOfRange, Refused
from ...core.units import COUNT, MASS, MONEY, NUMBER, PERCENT, TIME, VOLUME
from ...sources import ARITHMETIC, CACHON_TERWIESCH, COHEN_1991, COMMON_PRACTICE, TOBIN_1958
from ..demand import FITTED_FROM, critical_ratio, demand_from_sales
from ..fair import change_due, crates_needed, skeins_in_crate
from ..money import cents, change, split
from ..pictures.fair import fair_line
from ..price import break_even

SHARES = (0.1, 0.25, 0.5, 0.75, 0.9)
PARTS_OF_DAY = 4


def answer(w, costs, days, hours, wage, contribution, home, past, usual_spread, colors, price, skein_mass, skein_volume, crate_volume, crate_mass, cash_sales, note):
    fixed = w.step("fixed", "sum(costs.amount)", sum(row.amount for row in costs), MONEY, label="Costs of the fair")
    pay = w.step("pay", "days * hours / 60 * wage", days * hours / 60 * wage, MONEY, label="Your wage for it")
    found = {"fixed": fixed, "pay": pay}
    found["break_even"] = w.step("break_even", "ceil(fixed / contribution)", _up(break_even(fixed, contribution)), COUNT, label="Skeins that pay the costs")
    found["with_wage"] = w.step("with_wage", "ceil((fixed + pay) / contribution)", _up(break_even(fixed + pay, contribution)), COUNT, label="Skeins that pay you as well")
    for number, row in enumerate(past, 1):
        if row.sold > row.brought:
            raise Refused(f"Past fair {number}: {row.sold} sold and {row.brought} brought; no more can sell than were there.", f"past.{number}.sold")
    try:
        demand = demand_from_sales([float(row.sold) for row in past], [float(row.brought) for row in past], usual_spread / 100)
    except OutOfRange as error:
        raise Refused(f"Past fairs: {error.reason or 'they tell nothing of demand'}.", "past.1.sold") from None
    ratio = w.step("ratio", "contribution / (contribution + home)", critical_ratio(contribution + home, home, 0.0), NUMBER, label="Chance of having enough that pays best")

    def enough_for(share):
        return demand.count_for(min(max(share, 0.01), 0.99))

    wanted = w.solved("wanted", "enough_for(ratio) - wanted", w.decide("wanted", enough_for(ratio)), NUMBER, label="Demand that is not passed with that chance", using=(enough_for,))
    bring = w.step("bring", "max(floor(wanted + 0.5), 1)", max(int(wanted + 0.5), 1), COUNT, label="Bring")
    found |= {"bring": bring, "demand": demand, "ratio": ratio, "mean": demand.mean, "enough": 100 * demand.chance_enough(bring + 0.5), "pays": 100 * (1 - demand.chance_enough(found["with_wage"] - 0.5)) if found["with_wage"] <= bring else 0.0}
    holds = w.searched("holds", skeins_in_crate(skein_volume, skein_mass, crate_volume, crate_mass), ("holds * skein_volume <= crate_volume", "holds * skein_mass <= crate_mass"),
                       "min(crate_volume / skein_volume, crate_mass / skein_mass)", label="Skeins in a crate")
    found["crates"] = w.step("crates", "ceil(bring / holds)", crates_needed(bring, skein_volume, skein_mass, crate_volume, crate_mass), COUNT, label="Crates")
    found["load"] = w.step("load", "bring * skein_mass", bring * skein_mass, MASS, "kg", label="Yarn in the car") * 1000
    due = change_due(cents(price), cents(note))
    found["float"] = w.step("float", f"cash_sales * {due} / 100", cash_sales * due / 100, MONEY, label="Change to bring")
    return found | {"due": due, "holds": holds}


def _up(count):
    return -int(-count // 1)


def _money(r, amount):
    return with_money(r.number(amount, 2), r.settings.money)


def say(r):
    first = f"Sell {r.text('with_wage')} to pay the fair and you; {r.text('break_even')} pay the fair alone. Bring {r.text('bring')}."
    return first, f"{r.text('bring')} are enough with a chance of {r.in_100(r.value('enough') / 100)}; your wage comes in with one of {r.in_100(r.value('pays') / 100)}, if demand is as it was."


def notes(r):
    demand, said = r.kept["demand"], []
    if demand.cut:
        said.append(f"{demand.cut} of {demand.cut + demand.seen} past fairs sold out: those say “at least”, so demand is put at about {r.text('mean')}, above what was sold.")
    if demand.at_least:
        said.append("Every fair sold out: nothing bounds demand from above, and the mean is only the one that makes that as likely as not.")
    if demand.degrees:
        said.append("The spread is your own fairs’.")
    else:
        said.append(f"Thin data: fewer than {FITTED_FROM} fairs that did not sell out, so the spread is the {r.given['usual_spread']:g} % you gave, not one that was seen.")
    if r.value("with_wage") > r.value("bring"):
        said.append("Fewer come along than must sell to pay you: this fair does not pay its day, unless it is for being seen.")
    said.append(f"One short costs {_money(r, r.given['contribution'])}, one carried home {_money(r, r.given['home'])}: so enough {r.in_100(r.kept['ratio'])} times pays best, which sets the number.")
    said.append("A skein carried home is not lost: it sells elsewhere. If it will not, put its whole cost there.")
    return said


def _by_color(r, total):
    shares = [row.share for row in r.given["colors"]]
    return split(int(total), shares)


def packing(r):
    """What to pack of each color, and what of it must sell."""
    bring, pays = _by_color(r, r.value("bring")), _by_color(r, r.value("with_wage"))
    rows = tuple((row.name or "–", str(count), str(must)) for row, count, must in zip(r.given["colors"], bring, pays))
    return Table("Of each color", ("Color", "Bring", "Must sell, wage and all"), (*rows, ("In all", str(sum(bring)), str(sum(pays)))), "By the shares you gave; whole skeins that add up to the total.")


def pace(r):
    """How many should be gone by then, at an even pace: under the first number the wage does not come in; over the second it will sell out."""
    parts = max(int(r.given["days"] * PARTS_OF_DAY), 1)
    rows = []
    for part in range(1, parts + 1):
        day, quarter = divmod(part - 1, PARTS_OF_DAY)
        share = part / parts
        hour = r.given["hours"] / 60 * (quarter + 1) / PARTS_OF_DAY
        rows.append((f"Day {day + 1}, {r.amount(hour, NUMBER, digits=3)} h", str(_up(r.value("with_wage") * share - 1e-9)), str(int(r.value("bring") * share + 1e-9))))
    step = max(1, -(-len(rows) // 8))
    return Table("By the hour", ("When", "Wage needs", "Even pace sells out"), tuple(rows[step - 1::step]), "Restock, or save the rest for the next day, when a color runs ahead of an even pace.")


def floats(r):
    """The change for one such sale, and for all of them."""
    made = change(r.kept["due"])
    rows = [(_money(r, coin / 100), str(count), str(int(count * r.given["cash_sales"])), _money(r, coin / 100 * count * r.given["cash_sales"])) for coin, count in made.items()]
    if not rows:
        rows = [("none needed", "–", "–", _money(r, 0))]
    return Table("Float", ("Note or coin", "For one sale", "In all", "Worth"), tuple(rows), f"Each pays {_money(r, r.given['price'])} with the largest note, {_money(r, r.given['note'])}; money in steps of 1, 2 and 5.")


def odds(r):
    """What demand may be."""
    demand = r.kept["demand"]
    return Table("How many may be wanted", ("Enough for", "Skeins"), tuple((f"{100 * share:.0f} in 100 such fairs", r.number(_up(demand.count_for(share)))) for share in SHARES), "From past fairs; sold out counts as “at least”.")


def picture(r):
    past = [(row.sold, row.sold >= row.brought) for row in r.given["past"]]
    return fair_line(r.value("fixed"), r.value("pay"), r.given["contribution"], int(r.value("bring")), past, lambda amount: with_money(r.number(amount, 0), r.settings.money))


def packing_list(r):
    """To tick off while loading, and to count by on the way home."""
    bring = _by_color(r, r.value("bring"))
    colors = Table("Yarn", ("Color", "Out", "Packed", "Home", "Sold out at"), tuple((row.name or "–", str(count), "☐", "", "") for row, count in zip(r.given["colors"], bring)))
    money = Table("Money", ("What", "How much", "Done"), (("Float", r.text("float"), "☐"), ("Must sell, wage and all", r.text("with_wage"), "☐"), ("Takings, day by day", "", "☐")))
    rest = Table("Also", ("What", "Packed"), tuple((what, "☐") for what in ("Price cards, samples, yardage chart", "Card reader, charger, receipt book", "Bags, scissors, tape, pins, labels", "Table, cloth, shelves, lamp, lead", "Lot list, stall papers", "Water, food, layers, chair")))
    return colors, money, rest


def _volume(name, label, default, allowed, usual, said=""):
    return Input(name, VOLUME, label, default=default, allowed=allowed, usual=usual, units=("L", "ft³"), unit="L", measure=said)


CARD = Card(
    id="fair-stock", chapter="sell", place=70, handles=("load",), tall_sheet=True,
    question="How many must I sell at the fair, and what do I load?",
    inputs=(
        Rows("costs", "Costs of the fair", "cost", least=1, most=10, measure="That come whether anything sells or not.",
             fields=(Input("name", TEXT, "For", default="another", longest=20, lent=False), Input("amount", MONEY, "Amount", default="20", allowed=("0", "100000"))),
             default=({"name": "stall", "amount": "180"}, {"name": "travel", "amount": "64"}, {"name": "bed", "amount": "95"})),
        Input("days", COUNT, "Days", default="2", allowed=("1", "14"), usual=("1", "4")),
        Input("hours", TIME, "Hours of work a day", default="8 h", allowed=("0 h", "24 h"), usual=("4 h", "14 h"), units=("h",), measure="Driving, setting up and packing too."),
        Input("wage", MONEY, "Your wage, an hour", default="18", allowed=("0", "1000"), usual=("5", "80")),
        Input("contribution", MONEY, "One skein leaves", default="10.89", allowed=("0.01", "10000"), usual=("2", "60"), measure="Before labor and overhead, after tax, fee and what it cost: see “What must this skein sell at”."),
        Input("home", MONEY, "One carried home costs you", default="2.50", allowed=("0.01", "10000"), usual=("0.1", "30"), measure="Money tied up, handling, a price cut later. Its whole cost if it will never sell."),
        Rows("past", "Past fairs like it", "fair", least=1, most=20, measure="Sold as many as brought means sold out: then demand was at least that.",
             fields=(Input("brought", COUNT, "Brought", default="60", allowed=("1", "100000")), Input("sold", COUNT, "Sold", default="50", allowed=("0", "100000"))),
             default=({"brought": "50", "sold": "50"}, {"brought": "80", "sold": "61"}, {"brought": "70", "sold": "70"})),
        Input("usual_spread", PERCENT, "Fairs differ by about", default="30 %", allowed=("2 %", "150 %"), usual=("10 %", "60 %"), measure="Standard deviation, of the mean: used until four fairs did not sell out."),
        Rows("colors", "Colors, by their share", "color", least=1, most=24, measure="What they add up to is the whole.",
             fields=(Input("name", TEXT, "Name", default="another", longest=22), Input("share", NUMBER, "Share", default="20", allowed=("0.1", "1000"))),
             default=({"name": "Wet Slate", "share": "45"}, {"name": "Rusted Gate", "share": "35"}, {"name": "undyed", "share": "20"})),
        Input("price", MONEY, "A buyer pays", record="product.price", default="27", allowed=("0.01", "100000"), usual=("5", "80")),
        Input("skein_mass", MASS, "A skein weighs", record="base.mass", default="100 g", allowed=("1 g", "5 kg"), usual=("10 g", "250 g"), units=("g", "oz"), unit="kg", bench="bases.mass"),
        _volume("skein_volume", "A skein takes up", "0.7 L", ("0.02 L", "50 L"), ("0.1 L", "3 L"), "Fill a crate without pressing, count, divide."),
        _volume("crate_volume", "A crate holds", "45 L", ("1 L", "1000 L"), ("20 L", "120 L")),
        Input("crate_mass", MASS, "and may weigh, filled", default="10 kg", allowed=("0.1 kg", "100 kg"), usual=("5 kg", "25 kg"), units=("kg", "lb"), unit="kg", measure="What you can lift all day."),
        Input("cash_sales", COUNT, "Cash sales before takings give change", default="6", allowed=("0", "1000"), usual=("2", "30")),
        Input("note", MONEY, "Largest note you take", default="50", allowed=("0.01", "100000"), usual=("10", "200")),
    ),
    results=(
        Result("with_wage", COUNT, "Skeins that pay the fair and you", rounding="up"),
        Result("break_even", COUNT, "Skeins that pay the fair alone", rounding="up"),
        Result("bring", COUNT, "Bring"),
        Result("enough", PERCENT, "They are enough, of 100 such fairs", finest=(1,)),
        Result("pays", PERCENT, "Your wage comes in, of 100 such fairs", finest=(1,)),
        Result("mean", NUMBER, "Demand, on average", finest=(1,)),
        Result("fixed", MONEY, "Costs of the fair", finest=(0.01,)),
        Result("pay", MONEY, "Your wage for it", finest=(0.01,)),
        Result("crates", COUNT, "Crates", rounding="up"),
        Result("load", MASS, "Yarn in the car", units=("kg", "lb"), finest=(0.1, 0.1), rounding="up"),
        Result("float", MONEY, "Change to bring", finest=(0.01,), rounding="up"),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(packing, pace, odds, floats),
    papers=(Paper("Fair packing list, A5", "A5", packing_list),),
    basis=Basis(MODEL, "Break-even is arithmetic. What to bring: the newsvendor’s number, from past sales in which a sold-out fair counts as “at least” (normal demand, censored). Few fairs say little, and it says so."),
    sources=(ARITHMETIC, CACHON_TERWIESCH, COHEN_1991, TOBIN_1958, COMMON_PRACTICE),
    cautions=(Caution("Crates are heavy by evening.", "Fill them to what you lift without strain, twist with your feet, share the load; tie down what is in the car, and fix shelves so that they cannot tip."),),
    carry=(Carry("price", "What must this skein sell at?", {}), Carry("lift", "May I lift that crate?", {"mass": "crate_mass"}), Carry("label", "Price cards for the table", {"price": "price"}), Carry("count-to-dye", "How many do I dye?", {})),
)
