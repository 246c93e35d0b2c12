"""What one skein must be sold at: cost with own labor, losses and fees; margin and markup; what moves it most."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, Basis, Card, Carry, Caution, Input, Option, Result, Save
from ...core.outcome import with_money
from ...core.problem import OutOfRange, Refused
from ...core.units import COUNT, MONEY, NUMBER, PERCENT, TIME
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ..money import cents, cents_up, in_whole
from ..pictures.money_bars import what_moves_it, where_it_goes
from ..price import break_even, cost_with_loss, fee, margin, markup, net_of_tax, paid_with_tax, price_for

ASKED, MARGIN = "asked", "margin"
INSIDE, OUTSIDE, NO_TAX = "inside", "outside", "none"
ON_PAID, ON_NET = "paid", "net"
DISCOUNTS = (5, 10, 15, 20, 25, 30)
MOVED = {"asked": "Price", "base": "Base yarn", "dye": "Dye", "energy": "Acid, energy", "minutes": "Minutes", "wage": "Wage", "loss": "Spoilt pots", "label": "Label",
         "overhead": "Overhead", "fee_percent": "Fee, percent", "fee_fixed": "Fee, fixed"}
SHOWN = 8  # of them in the picture
NEAREST = "floor({} * 100 + 0.5000001) / 100"  # a hair over, as in money.cents: a half that is typed is a float a little under it
CENT = 0.01  # less than a cent left pays for nothing, in any number of skeins


def answer(w, go_by, asked, wanted_margin, tax_place, tax, base, dye, energy, minutes, wage, loss, pot, label, overhead, fee_percent, fee_fixed, fee_on, order, trade, month_costs, skeins):
    labor = w.step("labor", "skeins * minutes * wage / 60", skeins * minutes * wage / 60, MONEY, label="Labor in one")
    one = w.step("one", "skeins * (base + dye + energy) + labor", skeins * (base + dye + energy) + labor, MONEY, label="Every one that goes into a pot")
    good = w.step("good", "one / (1 - loss / 100)", cost_with_loss(one, loss), MONEY, label="Every good one, which carries the spoilt ones")
    made = w.step("made", "good + skeins * (label + overhead)", good + skeins * (label + overhead), MONEY, label="Made, labeled, overhead paid")
    rate, text = (tax or 0.0), "(1 + tax / 100)"
    taxed = tax_place != NO_TAX
    on_tax = taxed and fee_on == ON_PAID
    grossed = f"1 - fee_percent / 100{' * ' + text if on_tax else ''}"
    if go_by == MARGIN:
        try:
            exact = price_for(made, fee_percent, fee_fixed / order, rate if on_tax else 0.0, wanted_margin)
        except OutOfRange:
            raise Refused(f"Margin you need: {wanted_margin:g} % and the fee together are all of the price; give less.", "wanted_margin") from None
        w.step("exact", f"(made + fee_fixed / order) / ({grossed} - wanted_margin / 100)", exact, MONEY, label="Price before tax, grossed up for fee and margin")
        # A ticket is a decision in whole cents: what follows from it is the spread of that price, not of changed prices.
        ticket = w.decide("ticket", cents_up(paid_with_tax(exact, rate) if tax_place == INSIDE else exact) / 100)
        w.step("ticket", f"ceil(exact{' * ' + text if tax_place == INSIDE else ''} * 100 - 0.0000001) / 100", ticket, MONEY, label="On the ticket, in whole cents")
    else:
        ticket = w.step("ticket", NEAREST.format("asked"), cents(asked) / 100, MONEY, label="On the ticket, in whole cents")
    net = w.step("net", f"ticket / {text}" if tax_place == INSIDE else "ticket", net_of_tax(ticket, rate) if tax_place == INSIDE else ticket, MONEY, label="Price before tax")
    paid = w.step("paid", NEAREST.format(f"net * {text}") if tax_place == OUTSIDE else "ticket", _paid(tax_place, ticket, rate), MONEY, label="The buyer pays")
    taken = w.step("taken", f"{'paid' if fee_on == ON_PAID else 'net'} * fee_percent / 100 + fee_fixed / order", fee(paid if fee_on == ON_PAID else net, fee_percent, fee_fixed / order), MONEY, label="Fee")
    brings = w.step("brings", "net - taken", net - taken, MONEY, label="A sale brings, after tax and fee")
    one_more = w.step("one_more", "good + skeins * label", good + skeins * label, MONEY, label="One more costs")
    cost = w.step("cost", "made + taken", made + taken, MONEY, label="It costs, fee and all")
    left = w.step("left", "net - cost", net - cost, MONEY, label="Left of each")
    found = {"price": ticket, "paid": paid, "net": net, "cost": cost, "left": left, "brings": brings, "one_more": one_more, "labor": labor, "taken": taken, "one": one}
    found["margin"] = w.step("margin", "100 * left / net", margin(net, cost), PERCENT, label="Margin")
    found["markup"] = w.step("markup", "100 * left / cost", markup(net, cost), PERCENT, label="Markup")
    found["contribution"] = w.step("contribution", "net - taken - skeins * (label + (base + dye + energy) / (1 - loss / 100))", net - taken - skeins * (label + cost_with_loss(base + dye + energy, loss)), MONEY, label="Contribution before labor and overhead")
    floor = price_for(made, fee_percent, fee_fixed / order, rate if on_tax else 0.0)
    floor = w.step("lowest", f"(made + fee_fixed / order) / ({grossed}){' * ' + text if tax_place == INSIDE else ''}", paid_with_tax(floor, rate if tax_place == INSIDE else 0.0), MONEY, label="Price at which nothing is left")
    found["lowest"] = floor
    if trade is not None:
        found["trade_price"] = w.step("trade_price", "net * (1 - trade / 100)", net * (1 - trade / 100), MONEY, label="A shop pays you, before tax")
        found["trade_left"] = w.step("trade_left", "trade_price - made", found["trade_price"] - made, MONEY, label="Left of each at wholesale")
    if month_costs is not None and left + skeins * overhead >= CENT:
        need = break_even(month_costs, left + skeins * overhead)
        found["break_even"] = w.step("break_even", "ceil(month_costs / (left + skeins * overhead))", _up(need), COUNT, label="So many a month pay the fixed costs")
    found["pot_loss"] = w.step("pot_loss", "pot * one / skeins", pot * one / skeins, MONEY, label="One spoilt pot costs")
    found["work"] = w.step("work", "skeins * minutes", skeins * minutes, TIME, label="Your time in one")
    if left >= CENT:
        found["make_good"] = w.step("make_good", "ceil(pot_loss / left)", _up(break_even(pot * one / skeins, left)), COUNT, label="Skeins sold whose earnings that takes")
    return found


def _up(count):
    return -int(-count // 1)


def _paid(tax_place, ticket, rate):
    """What the buyer pays for a ticket: tax that comes on top is rounded to a whole cent at the till."""
    return cents(paid_with_tax(ticket, rate)) / 100 if tax_place == OUTSIDE else ticket


def _left(given, price, **changed):
    """What is left of one skein at another ticket price, or with other costs: the same sums as the working, without it."""
    v = given | changed
    rate = v["tax"] or 0.0
    net = net_of_tax(price, rate) if v["tax_place"] == INSIDE else price
    made = v["skeins"] * (cost_with_loss(v["base"] + v["dye"] + v["energy"] + v["minutes"] * v["wage"] / 60, v["loss"]) + v["label"] + v["overhead"])
    return net - made - fee(_paid(v["tax_place"], price, rate) if v["fee_on"] == ON_PAID else net, v["fee_percent"], v["fee_fixed"] / v["order"])


def _money(r):
    return lambda amount: with_money(r.number(amount, 2), r.settings.money)


def _called(r):
    """What one that is sold is called."""
    return "skein" if r.given["skeins"] == 1 else "piece"


def say(r):
    left = r.value("left")
    each = f"{r.text('left')} of each {_called(r)} is left" if left >= 0 else f"every {_called(r)} loses {r.text('left').replace('−', '')}"
    tail = {INSIDE: "tax in it", OUTSIDE: f"tax on top, {r.text('paid')} in all", NO_TAX: "no tax"}[r.given["tax_place"]]
    first = f"Ask {r.text('price')} ({tail}): {each}, {r.text('margin')} of the price before tax." if r.given["go_by"] == MARGIN else f"At {r.text('price')} ({tail}) {each}: {r.text('margin')} of the price before tax."
    return first, f"It costs {r.text('cost')}, your own labor in it. Below {r.text('lowest')} you pay to sell it."


def notes(r):
    said = [f"Margin {r.text('margin')} and markup {r.text('markup')} are the same {r.text('left')}: one is of the price, the other of the cost."]
    if r.has("trade_left"):
        ends = "leaves " + r.text("trade_left") if r.value("trade_left") >= 0 else f"loses {r.text('trade_left').replace('−', '')}"
        said.append(f"At wholesale a {_called(r)} brings {r.text('trade_price')} and {ends}; taken as paid without a fee.")
    if r.has("break_even"):
        said.append(f"{r.text('break_even')} {_called(r)}s a month pay {_money(r)(r.given['month_costs'])} of fixed costs; your labor is paid in every one of them.")
    spoilt = f"A spoilt pot of {r.given['pot']} costs {r.text('pot_loss')}"
    said.append(f"{spoilt}: the earnings of {r.text('make_good')} {_called(r)}s." if r.has("make_good") else f"{spoilt}.")
    said.append("The ticket and what the buyer pays are whole cents, rounded once; sums behind them are kept exact, and where the price is split, whole cents add up to it. Tax authorities round by line or by invoice: use theirs.")
    return said


def _parts(r):
    """What a buyer pays, in whole cents that add up to it; tax and what is left are those that the results say."""
    v, scale = r.given, 1 / (1 - r.given["loss"] / 100)
    many = v["skeins"]
    paid, net, left = (cents(r.value(name)) for name in ("paid", "net", "left"))
    exact = [("Base yarn", many * v["base"]), ("Dye", many * v["dye"]), ("Acid, energy", many * v["energy"]), ("Labor", r.kept["labor"]), ("Spoilt pots", r.kept["one"] * (scale - 1)),
             ("Label", many * v["label"]), ("Overhead", many * v["overhead"]), ("Fee", r.kept["taken"])]
    whole = in_whole([100 * amount for _, amount in exact], net - left)
    return [("Tax", paid - net), *((name, amount) for (name, _), amount in zip(exact, whole)), ("Left for you", left)]


def bars(r):
    money = _money(r)
    return where_it_goes(_parts(r), lambda amount: money(amount / 100))


def tornado(r):
    """Each thing a tenth less and a tenth more, one at a time; the widest first."""
    price, rows = r.value("price"), []
    for name, words in MOVED.items():
        now = price if name == "asked" else r.given[name]
        less, more = (_left(r.given, price * by) if name == "asked" else _left(r.given, price, **{name: now * by}) for by in (0.9, 1.1))
        if less != more:
            rows.append((words, less, more))
    rows.sort(key=lambda row: -abs(row[2] - row[1]))
    return what_moves_it(rows[:SHOWN], r.value("left"), _money(r))


def split_table(r):
    money, parts = _money(r), _parts(r)
    total = sum(amount for _, amount in parts)
    rows = [(name, money(amount / 100), f"{r.number(100 * amount / total, 1)} %" if total else "–") for name, amount in parts if amount]
    return Table("Where it goes, to the cent", ("Part", f"Of one {_called(r)}", "Of what is paid"), (*rows, ("The buyer pays", money(total / 100), "100 %" if total else "–")))


def discounts(r):
    """What a lower price does: what is left, and how many times as many must sell to earn the same."""
    money, price, rows = _money(r), r.value("price"), []
    overhead = r.given["skeins"] * r.given["overhead"]
    now = r.value("left") + overhead
    for percent in DISCOUNTS:
        lower = cents(price * (1 - percent / 100)) / 100
        left = _left(r.given, lower)
        earns = left + overhead
        rows.append((f"{percent} %", money(lower), money(left), f"× {r.number(now / earns, 2)}" if now > 0 and earns > 0 else "never"))
    return Table("A lower price", ("Off", "Price", "Left", "Must sell"), tuple(rows), "Times as many, to earn as much. Your labor counted as a cost of each skein, overhead as coming anyway.")


PRICED, NEEDED, TAXED = {"go_by": (ASKED,)}, {"go_by": (MARGIN,)}, {"tax_place": (INSIDE, OUTSIDE)}


def _cost(name, label, default, usual, said="", record=""):
    return Input(name, MONEY, label, record=record, default=default, allowed=("0", "100000"), usual=usual, measure=said)


CARD = Card(
    id="price", chapter="sell", place=65, tall_sheet=True,
    question="What must this skein sell at so that I am paid?",
    inputs=(
        Input("go_by", CHOICE, "You start from", default=ASKED, options=(Option(ASKED, "A price you have in mind"), Option(MARGIN, "A margin you need"))),
        Input("asked", MONEY, "Price on the ticket", record="product.price", default="27", allowed=("0.01", "100000"), usual=("5", "80"), when=PRICED),
        Input("wanted_margin", PERCENT, "Margin you need", default="30 %", allowed=("0 %", "90 %"), usual=("5 %", "60 %"), when=NEEDED, measure="Of the price before tax, after your own wage."),
        Input("tax_place", CHOICE, "Sales tax", default=INSIDE, options=(Option(INSIDE, "Is in the ticket price"), Option(OUTSIDE, "Is added at the till"), Option(NO_TAX, "None is due"))),
        Input("tax", PERCENT, "Tax rate", default="20 %", allowed=("0 %", "100 %"), usual=("0 %", "30 %"), when=TAXED, lent=True, measure="Yours, for this kind of goods and place: 20 is an example, no country’s."),
        _cost("base", "Base yarn, a skein", "9.20", ("2", "40"), "Landed: with its share of carriage and duty.", "base.cost"),
        _cost("dye", "Dye, a skein", "0.45", ("0.05", "3")),
        _cost("energy", "Acid and energy, a skein", "0.60", ("0.05", "3")),
        Input("minutes", TIME, "Your time, a skein", record="product.work_each", default="9 min", allowed=("0 min", "40 h"), usual=("2 min", "90 min"), rough="1 min", units=("min", "h"),
              measure="Dyeing, rinsing, winding, labeling, listing, packing: time a whole batch once and divide."),
        _cost("wage", "Your wage, an hour", "18", ("5", "80"), "What you would pay someone who does it as well."),
        Input("loss", PERCENT, "Spoilt", default="3 %", allowed=("0 %", "60 %"), usual=("0 %", "20 %"), measure="Of all that goes into pots; seconds sold cheap count in part."),
        Input("pot", COUNT, "Skeins in a pot", default="4", allowed=("1", "200"), usual=("1", "20")),
        _cost("label", "Label and packing, a skein", "0.28", ("0", "5")),
        _cost("overhead", "Overhead, a skein’s share", "1.60", ("0", "15"), "Rent, insurance, site, software, samples: a year of it, divided by the skeins of a year."),
        Input("fee_percent", PERCENT, "Payment and shop fee", default="1.9 %", allowed=("0 %", "50 %"), usual=("0 %", "20 %"), lent=True, measure="Add up fees that are taken from the same amount."),
        Input("fee_fixed", MONEY, "and for each payment", default="0.25", allowed=("0", "100"), usual=("0", "1")),
        Input("fee_on", CHOICE, "The fee is taken from", default=ON_PAID, options=(Option(ON_PAID, "What the buyer pays, tax and all"), Option(ON_NET, "The price before tax"))),
        Input("order", NUMBER, "Sold in one payment", default="1", allowed=("1", "1000"), usual=("1", "6"), measure="On average; the fixed fee is shared by them."),
        Input("trade", PERCENT, "A shop takes off", default="50 %", allowed=("0 %", "95 %"), usual=("30 %", "55 %"), optional=True, measure="Of the price before tax. Half is a habit of the trade, not a law; blank if you sell to none."),
        Input("month_costs", MONEY, "Fixed costs of a month", default="80", allowed=("0", "1000000"), usual=("0", "3000"), optional=True, measure="What the overhead is meant to pay: here 50 skeins at 1.60."),
        Input("skeins", NUMBER, "Skeins in one that is sold", record="product.skeins_in", default="1", allowed=("0.05", "60"), usual=("1", "12"),
              measure="A kit holds several, a set a share of each: what is said of a skein counts so many times, the price once."),
    ),
    results=(
        Result("price", MONEY, "Ticket price", finest=(0.01,), rounding="up"),
        Result("paid", MONEY, "The buyer pays", finest=(0.01,)),
        Result("net", MONEY, "Before tax", finest=(0.01,)),
        Result("cost", MONEY, "It costs", finest=(0.01,)),
        Result("left", MONEY, "Left of each", finest=(0.01,)),
        Result("brings", MONEY, "A sale brings, after tax and fee", finest=(0.01,), rounding="down"),
        Result("one_more", MONEY, "One more costs, overhead apart", finest=(0.01,), rounding="up"),
        Result("margin", PERCENT, "Margin, of the price before tax", finest=(0.1,)),
        Result("markup", PERCENT, "Markup, on the cost", finest=(0.1,)),
        Result("contribution", MONEY, "Contribution before labor and overhead", finest=(0.01,)),
        Result("lowest", MONEY, "Nothing left at", finest=(0.01,), rounding="up"),
        Result("trade_price", MONEY, "A shop pays you, before tax", finest=(0.01,)),
        Result("trade_left", MONEY, "Left of each at wholesale", finest=(0.01,)),
        Result("break_even", COUNT, "So many a month pay the fixed costs", rounding="up"),
        Result("pot_loss", MONEY, "One spoilt pot costs", finest=(0.01,), rounding="up"),
        Result("make_good", COUNT, "Sold, whose earnings that takes", rounding="up"),
        Result("work", TIME, "Your time in one", units=("min", "h"), finest=(0.1, 0.01)),
    ),
    answer=answer, say=say, notes=notes, pictures=(bars, tornado), tables=(split_table, discounts),
    basis=Basis(MODEL, "Cost of goods, own labor, losses carried by the good skeins, overhead, and a fee that is grossed up rather than added on. No tax rate, fee or wage is known here: all are yours."),
    sources=(ARITHMETIC, COMMON_PRACTICE),
    cautions=(Caution("No accountant.", "Whether a tax is due, on what and how it is rounded is for your tax office. A margin is not a wage: yours is in the cost only if you put it there."),),
    carry=(Carry("fair-stock", "What must sell to pay for a fair?", {"contribution": "contribution", "price": "paid"}), Carry("count-to-dye", "How many should I dye?", {"price": "brings", "cost": "one_more"}), Carry("label", "A price card", {"price": "paid"})),
    link_version=2, upgrades={1: dict},  # skeins came last
    saves=(Save("product", "A product: its price, cost and your time", {"price": "price", "net": "net", "cost": "cost", "work": "work"}),),
)
