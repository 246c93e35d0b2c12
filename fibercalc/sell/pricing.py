"""What a skein costs, what it must be sold at, and what is left: margin and markup, tax, fees,
losses, break-even.

Percent arguments are percents, not shares. Tax rates and fees are always the user's own: none is
known here.
"""

from ..core.problem import OutOfRange, require

MOST_TAX = 100.0  # %; no sales tax comes near
CLOSE = 1e-9  # a whole number of skeins must not become one more by a float's last bit


def markup(price: float, cost: float) -> float:
    """What is added to the cost, % of the cost.

    price  0 or more
    cost   above 0, same money
    Raises OutOfRange outside these.
    Source: definition of markup.
    """
    require("price", price, 0.0)
    require("cost", cost, above=0.0)
    return 100 * (price - cost) / cost


def margin(price: float, cost: float) -> float:
    """What is left over the cost, % of the price.

    price  above 0
    cost   0 or more, same money
    Raises OutOfRange outside these.
    Source: definition of margin.
    """
    require("price", price, above=0.0)
    require("cost", cost, 0.0)
    return 100 * (price - cost) / price


def margin_from_markup(percent: float) -> float:
    """Margin, % of the price, from markup, % of the cost.

    percent  markup, above -100 (there the price is nothing)
    Raises OutOfRange outside this.
    Source: arithmetic from the definitions.
    """
    require("percent", percent, above=-100.0)
    return 100 * percent / (100 + percent)


def net_of_tax(paid: float, tax: float) -> float:
    """What is left of a price that has tax in it.

    paid  what the buyer pays, 0 or more
    tax   % of the price before tax, 0 to 100
    Raises OutOfRange outside these.
    Source: arithmetic (a tax is a percent of the price before it).
    """
    require("paid", paid, 0.0)
    require("tax", tax, 0.0, MOST_TAX)
    return paid / (1 + tax / 100)


def paid_with_tax(net: float, tax: float) -> float:
    """What the buyer pays when tax is added to a price.

    net  price before tax, 0 or more
    tax  % of it, 0 to 100
    Raises OutOfRange outside these.
    Source: arithmetic (a tax is a percent of the price before it).
    """
    require("net", net, 0.0)
    require("tax", tax, 0.0, MOST_TAX)
    return net * (1 + tax / 100)


def cost_with_loss(cost: float, loss: float) -> float:
    """Cost of one good skein when some are spoilt: the good ones carry the others.

    cost  of one that goes in, 0 or more
    loss  % of those that go in, 0 to 90
    Raises OutOfRange outside these.
    Source: arithmetic (a loss is a percent of what goes in).
    """
    require("cost", cost, 0.0)
    require("loss", loss, 0.0, 90.0)
    return cost / (1 - loss / 100)


def fee(paid: float, percent: float, fixed: float) -> float:
    """What taking a payment costs.

    paid     the amount that the fee is taken from, 0 or more
    percent  % of it, 0 to 60
    fixed    for each payment, 0 or more
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("paid", paid, 0.0)
    require("percent", percent, 0.0, 60.0)
    require("fixed", fixed, 0.0)
    return paid * percent / 100 + fixed


def price_for(
    wanted: float, percent: float, fixed: float, tax_in_fee: float = 0.0, kept: float = 0.0
) -> float:
    """Price before tax that leaves a wanted amount when the fee, and a margin of the price, have
    been taken: grossed up, not added on.

    wanted      to be left, 0 or more
    percent     fee, % of what the buyer pays, 0 to 60
    fixed       fee for each payment, 0 or more
    tax_in_fee  tax, %, that the fee is taken from as well, 0 to 100; 0 when it is not
    kept        margin, % of the price before tax, that must be left over besides, 0 to 95
    Raises OutOfRange outside these, and where fee and margin together leave nothing of the price.
    Source: arithmetic (price = (wanted + fixed) / (1 - percent (1 + tax) - margin)).
    """
    require("wanted", wanted, 0.0)
    require("percent", percent, 0.0, 60.0)
    require("fixed", fixed, 0.0)
    require("tax_in_fee", tax_in_fee, 0.0, MOST_TAX)
    require("kept", kept, 0.0, 95.0)
    of_paid = percent / 100
    share = 1 - (of_paid * (1 + tax_in_fee / 100) if tax_in_fee else of_paid)
    if kept:
        share -= kept / 100
    if share <= 0.001:
        raise OutOfRange("kept", kept, None, None, "fee and margin together are all of the price")
    return (wanted + fixed) / share


def break_even(fixed: float, contribution: float) -> float:
    """How many must sell until costs that come anyway are paid, not yet rounded up.

    fixed         costs that do not depend on how many sell, 0 or more
    contribution  what one sale leaves towards them, above 0
    Raises OutOfRange outside these.
    Source: arithmetic (fixed costs over contribution).
    """
    require("fixed", fixed, 0.0)
    require("contribution", contribution, above=0.0)
    return fixed / contribution


def volume_after_discount(percent_margin: float, discount: float) -> float:
    """How many times as many must sell to earn the same when the price falls.

    percent_margin  contribution before, % of the price, above 0 to 100
    discount        % off the price, 0 or more and under the margin
    Raises OutOfRange outside these: a discount as large as the margin earns nothing on any number.
    Source: arithmetic (margin over margin less discount).
    """
    require("percent_margin", percent_margin, high=100.0, above=0.0)
    require("discount", discount, 0.0)
    if discount >= percent_margin:
        raise OutOfRange(
            "discount",
            discount,
            0.0,
            percent_margin,
            "the discount is the whole margin: no number of sales makes up for it",
        )
    return percent_margin / (percent_margin - discount)
