"""How many to dye for a release: demand from past sales, some cut off by selling out; the count that pays best; seconds, spares and club places."""

from math import ceil, sqrt

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.problem import OutOfRange, Refused
from ...core.units import COUNT, MONEY, NUMBER, PERCENT
from ...sources import ABRAMOWITZ_STEGUN, ARITHMETIC, CACHON_TERWIESCH, COHEN_1991, COMMON_PRACTICE, TOBIN_1958
from ...yarn.student_t import quantile, share_below
from ..demand import (FITTED_FROM, MOST_RELEASES, critical_ratio, demand_from_sales, expected_left, expected_profit, expected_short, mean_above, normal_quantile, normal_share_below, square_above, told_by_cut)
from ..pictures.demand import demand_picture
from ..spares import chance_at_most, made_for, places_for, spares_for

NORMAL_90 = 0.95


def answer(w, releases, usual_spread, price, cost, left_value, seconds, lost, sure, club_made):
    for number, row in enumerate(releases, 1):
        if row.sold > row.offered:
            raise Refused(f"Release {number}: more were sold than offered.", f"releases.{number}.sold")
    if price <= cost:
        raise Refused("One sold must bring more than one costs, or none is worth dyeing.", "price")
    if left_value >= cost:
        raise Refused("One left must bring less than it costs: else none is too many, and no count is best.", "left_value")
    try:
        demand = demand_from_sales([row.sold for row in releases], [row.offered for row in releases], usual_spread / 100)
    except OutOfRange as error:
        raise Refused(f"Releases: {error.reason or 'these cannot be used'}.", "releases.1.sold") from None
    ratio = w.step("critical", "(price - cost) / (price - left_value)", critical_ratio(price, cost, left_value), NUMBER, label="Best chance of having enough")
    _demand_steps(w, demand, releases)
    told = "".join(f" + told_by_cut({row.sold}, typical, deviation)" for row in releases if row.sold >= row.offered)
    w.solved("mean_error", f"deviation / sqrt({demand.seen}{told}) - mean_error", demand.mean_error, NUMBER, label="Standard error of the mean; a sold-out release tells less", using=(told_by_cut,))
    whole = w.step("whole", "sqrt(deviation ** 2 + mean_error ** 2)", demand.whole, NUMBER, label="Spread of the next release about the mean")
    if demand.degrees:
        w.solved("z", f"share_below(z, {demand.degrees}) / 100 - critical", quantile(100 * ratio, demand.degrees), NUMBER, label=f"That chance’s place in Student’s t, {demand.degrees} degrees of freedom", using=(share_below,))
    else:
        w.solved("z", "normal_share_below(z) - critical", normal_quantile(ratio), NUMBER, label="That chance’s place in the normal distribution", using=(normal_share_below,))
    exact = w.step("point", "max(typical + z * whole, 0)", demand.count_for(ratio), NUMBER, label="Demand is below this with that chance")
    count = max(ceil(exact - 1e-9), 1)
    w.searched("count", count, ("count >= point",), "point", label="Good skeins to have")
    certain = float(sure) / 100
    spares = spares_for(count, lost / 100, certain)
    w.searched("spares", spares, ("spares <= count",), "0", label=f"Spares for lost parcels, the fewest that suffice in {sure} of 100 cases")
    w.solved("suffice", "chance_at_most(spares, count, lost / 100) - suffice", chance_at_most(spares, count, lost / 100), NUMBER, label="The chance that they do", using=(chance_at_most,))
    made = made_for(count + spares, seconds / 100, certain)
    w.searched("made", made, ("made >= count + spares",), "count + spares", label="To dye, seconds allowed for")
    places = None
    if club_made:
        try:
            places = places_for(club_made, seconds / 100, lost / 100, certain)
        except OutOfRange as error:
            raise Refused(f"Dyed for the club: {error.reason}.", "club_made") from None
        w.searched("places", places, ("places <= club_made",), "club_made", label="Places of the club")
    w.error("typical", 1.96 * demand.mean_error)
    return {"count": count, "made": made, "spares": spares, "typical": demand.mean, "ratio": 100 * ratio, "enough": 100 * demand.chance_enough(count), "left_over": expected_left(count, demand.mean, whole),
            "in_vain": expected_short(count, demand.mean, whole), "profit": expected_profit(count, demand.mean, whole, price, cost, left_value), "places": places, "demand": demand}


def _demand_steps(w, demand, releases):
    """How the mean and the spread were found: equations that they solve."""
    seen, cut = [row.sold for row in releases if row.sold < row.offered], [row.sold for row in releases if row.sold >= row.offered]
    known = " + ".join(map(str, seen)) or "0"
    many = len(releases)
    if demand.degrees:
        likely = demand.deviation * sqrt((len(seen) - 1) / len(seen))
        squares = " + ".join([f"({value} - {demand.mean!r}) ** 2" for value in seen] + [f"square_above({edge}, {demand.mean!r}, likely)" for edge in cut])
        w.solved("likely", f"{squares} - {many} * likely ** 2", likely, NUMBER, label="Likeliest spread of demand", using=(square_above,))
        filled = "".join(f" + mean_above({edge}, typical, likely)" for edge in cut)
        w.solved("typical", f"{known}{filled} - {many} * typical", demand.mean, NUMBER, label="Mean demand: a sold-out release counts as the mean of all above it", using=(mean_above,))
        w.step("deviation", f"likely * sqrt({len(seen)} / ({len(seen)} - 1))", demand.deviation, NUMBER, label="Spread of demand, for so few releases")
        return
    if seen:
        filled = "".join(f" + mean_above({edge}, typical, usual_spread / 100 * typical)" for edge in cut)
        w.solved("typical", f"{known}{filled} - {many} * typical", demand.mean, NUMBER, label="Mean demand: a sold-out release counts as the mean of all above it", using=(mean_above,))
    else:
        alike = " * ".join(f"(1 - normal_share_below(({edge} - typical) / (usual_spread / 100 * typical)))" for edge in cut)
        w.solved("typical", f"{alike} - 0.5", demand.mean, NUMBER, label="Mean demand at which selling out every time is as likely as not", using=(normal_share_below,))
    w.step("deviation", "usual_spread / 100 * typical", demand.deviation, NUMBER, label="Spread of demand, as you gave it")


def say(r):
    count, made = r.value("count"), r.value("made")
    first = f"Dye {made}: {count} to sell" + (f", {r.value('spares')} to replace lost parcels" if r.value("spares") else "") + (f", the rest for seconds." if made > count + r.value("spares") else ".")
    demand = r.kept["demand"]
    known = "All past releases sold out, so demand is only known from below" if demand.at_least else f"Demand is about {r.text('typical')} ({r.span('typical')})"
    club = f" A club can have {r.value('places')} places." if r.has("places") else ""
    return first, f"{known}; {count} are enough for {r.in_100(r.value('enough') / 100)} releases, with {r.number(r.value('left_over'))} left on average.{club}"


def notes(r):
    demand, said = r.kept["demand"], []
    total = demand.seen + demand.cut
    if demand.at_least:
        said.append(f"{'Every one' if total > 1 else 'The one'} of {total} sold out: nobody knows by how much it was too few. Go up by steps of a third or so until some are left: then this card has something to go by.")
    elif not demand.degrees:
        said.append(f"Thin data: {total} {'release' if total == 1 else 'releases'}, of which {demand.cut} sold out. With fewer than {FITTED_FROM} that did not sell out, the spread is your own guess ({r.given['usual_spread']:g} %), not the data’s.")
    else:
        said.append(f"{total} releases, {demand.cut} of them sold out: still few. The spread is the data’s own; odd releases (a holiday, a new color) do not belong in it.")
    if demand.cut and not demand.at_least:
        said.append(f"Taken at face value the sales average {r.number(sum(row.sold for row in r.given['releases']) / total, 1)}; what was turned away is not in that.")
    said.append(f"A skein too few loses {r.settings.money}{r.number(r.given['price'] - r.given['cost'], 2)}, one too many {r.settings.money}{r.number(r.given['cost'] - r.given['left_value'], 2)}. What a cross customer costs is not in it: raise “one sold brings” if you count it.")
    return said


def other_counts(r):
    demand, count = r.kept["demand"], r.value("count")
    whole, step = demand.whole, max(round(r.value("count") / 8), 1)
    rows = []
    for other in range(max(count - 3 * step, 1), count + 3 * step + 1, step):
        money = expected_profit(other, demand.mean, whole, r.given["price"], r.given["cost"], r.given["left_value"])
        short = expected_short(other, demand.mean, whole)
        rows.append((str(other), r.in_100(demand.chance_enough(other)), r.number(demand.mean - short), r.number(other - demand.mean + short), r.number(short), ("−" if money < 0 else "") + r.settings.money + r.number(abs(money))))
    return Table("Other counts", ("To sell", "Enough in", "Sold", "Left", "In vain", "Brings"), tuple(rows), "On average, over many releases like these; “brings” is after cost.")


def picture(r):
    demand = r.kept["demand"]
    return demand_picture([(row.name, row.offered, row.sold) for row in r.given["releases"]], demand.mean, demand.count_for(1 - NORMAL_90), demand.count_for(NORMAL_90), r.value("count"))


CARD = Card(
    id="count-to-dye", chapter="sell", place=15,
    question="How many should I dye?",
    inputs=(
        Rows("releases", "Past releases", "release", record="sale", least=1, most=MOST_RELEASES, measure="Of the same sort of thing. Where all was sold, it sold out.",
             fields=(Input("name", TEXT, "When", record="event", default="another", longest=40, lent=False), Input("offered", COUNT, "Offered", default="48", allowed=("1", "5000")), Input("sold", COUNT, "Sold", default="44", allowed=("0", "5000"))),
             default=({"name": "June", "offered": "40", "sold": "40"}, {"name": "August", "offered": "48", "sold": "44"}, {"name": "October", "offered": "60", "sold": "51"})),
        Input("usual_spread", PERCENT, "Demand goes up and down by", default="25 %", allowed=("2 %", "150 %"), usual=("15 %", "60 %"), measure="From release to release; its standard deviation. Used until four releases did not sell out."),
        Input("price", MONEY, "One sold brings", default="21.74", allowed=("0.01", "10000"), usual=("2", "200"), measure="Without tax and fees."),
        Input("cost", MONEY, "One costs to make", default="13.63", allowed=("0", "10000"), usual=("1", "150"), measure="What you would not spend if you dyed one fewer; see “What must it sell at?”."),
        Input("left_value", MONEY, "One left still brings", default="9", allowed=("0", "10000"), usual=("0", "100"), measure="In a mixed bargain bag, say."),
        Input("seconds", PERCENT, "Come out as seconds", default="3 %", allowed=("0 %", "40 %"), usual=("0 %", "10 %")),
        Input("lost", PERCENT, "Parcels lost or faulty", default="2 %", allowed=("0 %", "40 %"), usual=("0 %", "5 %")),
        Input("sure", CHOICE, "Spares and seconds suffice in", default="95", options=tuple(Option(each, f"{each} in 100") for each in ("80", "90", "95", "99"))),
        Input("club_made", COUNT, "Skeins you can dye for a club", default="24", allowed=("1", "2000"), optional=True, measure="A dye day’s, say. Blank: no club."),
    ),
    results=(
        Result("made", COUNT, "To dye", rounding="up"),
        Result("count", COUNT, "Good ones to sell", rounding="up"),
        Result("spares", COUNT, "Spares for lost parcels", rounding="up"),
        Result("typical", NUMBER, "Mean demand", finest=(1,), floor=0.0),
        Result("ratio", PERCENT, "Best chance of having enough", finest=(1,)),
        Result("enough", PERCENT, "These are enough in", finest=(1,)),
        Result("left_over", NUMBER, "Left, on average", finest=(0.1,)),
        Result("in_vain", NUMBER, "Asked for in vain, on average", finest=(0.1,)),
        Result("profit", MONEY, "Brings after cost, on average", finest=(1,), rounding="down"),
        Result("places", COUNT, "Places of a club", rounding="down"),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(other_counts,),
    basis=Basis(MODEL, "Demand is taken as normal; a sold-out release is a censored value. The count is the point of demand at which one more no longer pays (newsvendor). Seconds and losses are binomial."),
    sources=(CACHON_TERWIESCH, COHEN_1991, TOBIN_1958, ABRAMOWITZ_STEGUN, COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("Three releases are thin data.", "The range says so: half of what decides the count is a guess. Write down every release, what was left, and when it sold out."),),
    carry=(Carry("release-plan", "What does this release take?", {}), Carry("price", "What must it sell at?", {}), Carry("fair-stock", "What to bring to a fair", {})),
)
