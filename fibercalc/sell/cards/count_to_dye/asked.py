"""What is asked for a count to dye, and what is found."""

from __future__ import annotations

from ....core.card import CHOICE, TEXT, Between, Case, Input, Option, Plain, Result, Row, Rows
from ....core.units import COUNT, MONEY, NUMBER, PERCENT
from ....held import RECORD
from ...demand import MOST_RELEASES, Demand


class Release(Row):
    """One past release of the same sort of thing."""

    name = Input[str](
        TEXT, "When", record=RECORD.sale.event, default="another", longest=40, lent=False
    )
    offered = Input[int](COUNT, "Offered", default="48", allowed=("1", "5000"))
    sold = Input[int](COUNT, "Sold", default="44", allowed=("0", "5000"))

    wanted = Between[int](COUNT, "Wanted: some were left")
    at_least = Between[int](COUNT, "Wanted at least: it sold out")
    counts_as = Between[float](NUMBER, "Counts as the mean of all demand above it")
    tells = Between[float](NUMBER, "Tells of the mean, as a share of what a known demand tells")


class CountToDye(Case):
    """Past releases, some of them sold out, and the count to dye that pays best."""

    releases = Rows(
        Release,
        "Past releases",
        "release",
        record=RECORD.sale,
        least=1,
        most=MOST_RELEASES,
        measure="Of the same sort of thing. Where all was sold, it sold out.",
        default=(
            {"name": "June", "offered": "40", "sold": "40"},
            {"name": "August", "offered": "48", "sold": "44"},
            {"name": "October", "offered": "60", "sold": "51"},
        ),
    )
    usual_spread = Input[float](
        PERCENT,
        "Demand goes up and down by",
        default="25 %",
        allowed=("2 %", "150 %"),
        usual=("15 %", "60 %"),
        measure="From release to release; its standard deviation. Used until four releases did not"
        " sell out.",
    )
    price = Input[float](
        MONEY,
        "One sold brings",
        default="21.74",
        allowed=("0.01", "10000"),
        usual=("2", "200"),
        measure="Without tax and fees.",
    )
    cost = Input[float](
        MONEY,
        "One costs to make",
        default="13.63",
        allowed=("0", "10000"),
        usual=("1", "150"),
        measure="What you would not spend if you dyed one fewer; see “What must it sell at?”.",
    )
    left_value = Input[float](
        MONEY,
        "One left still brings",
        default="9",
        allowed=("0", "10000"),
        usual=("0", "100"),
        measure="In a mixed bargain bag, say.",
    )
    seconds = Input[float](
        PERCENT,
        "Come out as seconds",
        default="3 %",
        allowed=("0 %", "40 %"),
        usual=("0 %", "10 %"),
    )
    lost = Input[float](
        PERCENT,
        "Parcels lost or faulty",
        default="2 %",
        allowed=("0 %", "40 %"),
        usual=("0 %", "5 %"),
    )
    sure = Input[str](
        CHOICE,
        "Spares and seconds suffice in",
        default="95",
        options=tuple(Option(each, f"{each} in 100") for each in ("80", "90", "95", "99")),
    )
    club_made = Input[int | None](
        COUNT,
        "Skeins you can dye for a club",
        default="24",
        allowed=("1", "2000"),
        optional=True,
        measure="A dye day’s, say. Blank: no club.",
    )

    demand = Plain[Demand]()
    too_few = Between[float](MONEY, "A skein too few loses")
    too_many = Between[float](MONEY, "A skein too many loses")
    number = Between[int](COUNT, "Releases")
    known = Between[int](COUNT, "Releases that did not sell out")
    left_some = Between[float](COUNT, "Wanted where some were left, together")
    likely = Between[float](NUMBER, "Likeliest spread of demand")
    deviation = Between[float](NUMBER, "Spread of demand")
    mean_error = Between[float](NUMBER, "Standard error of the mean; a sold-out release tells less")
    whole = Between[float](NUMBER, "Spread of the next release about the mean")
    t = Between[float](NUMBER, "That chance’s place in Student’s t")
    z = Between[float](NUMBER, "That chance’s place in the normal distribution")
    point = Between[float](NUMBER, "Demand is below this with that chance")
    suffice = Between[float](NUMBER, "The chance that the spares suffice")
    good = Between[int](COUNT, "Good skeins needed, spares and all")

    made = Result[int](COUNT, "To dye", rounding="up")
    count = Result[int](COUNT, "Good ones to sell", rounding="up")
    spares = Result[int](COUNT, "Spares for lost parcels", rounding="up")
    typical = Result[float](NUMBER, "Mean demand", finest=(1,), floor=0.0)
    ratio = Result[float](PERCENT, "Best chance of having enough", finest=(1,))
    enough = Result[float](PERCENT, "These are enough in", finest=(1,))
    left_over = Result[float](NUMBER, "Left, on average", finest=(0.1,))
    in_vain = Result[float](NUMBER, "Asked for in vain, on average", finest=(0.1,))
    profit = Result[float](MONEY, "Brings after cost, on average", finest=(1,), rounding="down")
    places = Result[int](COUNT, "Places of a club", rounding="down")
