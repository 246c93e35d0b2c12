"""Price, margin and fees lead back to each other, and no cent is lost when money is split."""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from fibercalc.core.onward import known_as
from fibercalc.core.problem import BadInputs, OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.units import MONEY
from fibercalc.core.work import work_card
from fibercalc.sell.cards.price.asked import Price
from fibercalc.sell.cards.price.shown import MOVED, parts_in_cents
from fibercalc.sell.cards.price.worked import left_at
from fibercalc.sell.money import cents, cents_up, change, in_whole, split
from fibercalc.sell.pricing import (
    break_even,
    cost_with_loss,
    fee,
    margin,
    margin_from_markup,
    markup,
    net_of_tax,
    paid_with_tax,
    price_for,
    volume_after_discount,
)

money = st.floats(0.01, 1e5)


@given(money, st.floats(-90.0, 900.0))
def test_margin_and_markup_name_the_same_money(cost, on_it):
    price = cost * (1 + on_it / 100)
    assert markup(price, cost) == pytest.approx(on_it, abs=1e-9)
    assert margin_from_markup(on_it) == pytest.approx(margin(price, cost), abs=1e-8, rel=1e-8)


@given(
    money, st.floats(0.0, 35.0), st.floats(0.0, 5.0), st.floats(0.0, 100.0), st.floats(0.0, 25.0)
)
def test_a_grossed_up_price_leaves_what_was_wanted(wanted, rate, fixed, tax, kept):
    """Take the fee off the price with its tax, and the margin off the price: exactly the wanted money is left."""
    price = price_for(wanted, rate, fixed, tax, kept)
    left = price - fee(paid_with_tax(price, tax), rate, fixed) - price * kept / 100
    assert left == pytest.approx(wanted, rel=1e-9, abs=1e-9)


@given(money, st.floats(0.1, 35.0))
def test_a_fee_added_on_falls_short(wanted, rate):
    added = wanted * (1 + rate / 100)
    assert added - fee(added, rate, 0.0) < wanted


@given(money, st.floats(0.0, 100.0))
def test_tax_put_on_comes_off_again(net, tax):
    assert net_of_tax(paid_with_tax(net, tax), tax) == pytest.approx(net, rel=1e-12)


@given(money, st.floats(0.0, 90.0))
def test_good_skeins_pay_for_all_that_went_in(cost, loss):
    assert cost_with_loss(cost, loss) * (1 - loss / 100) == pytest.approx(cost, rel=1e-12)


@given(st.floats(1.0, 99.0), st.floats(0.0, 0.9))
def test_a_discount_earns_the_same_on_more(percent_margin, share):
    """Price 100: so many times as many at the lower price leave what was left before."""
    off = share * percent_margin
    assert volume_after_discount(percent_margin, off) * (percent_margin - off) == pytest.approx(
        percent_margin
    )


def test_a_discount_of_the_whole_margin_is_refused():
    with pytest.raises(OutOfRange):
        volume_after_discount(30, 30)


@given(st.integers(-(10**9), 10**9), st.lists(st.floats(0.0, 1e6), min_size=1, max_size=30))
def test_the_parts_add_up_to_the_cent(total, parts):
    """Every part is within a cent of its exact share, and together they are the total."""
    assume(sum(parts) > 1e-3)
    made = split(total, parts)
    assert sum(made) == total
    assert all(abs(each - total * part / sum(parts)) <= 1 + 1e-3 for each, part in zip(made, parts))


@given(st.lists(st.floats(-1e6, 1e6), min_size=1, max_size=20))
def test_amounts_of_both_signs_are_rounded_to_their_rounded_sum(exact):
    total = round(sum(exact))
    try:
        made = in_whole(exact, total)
    except OutOfRange:  # a single half that was rounded away from its part
        assert len(exact) == 1
        return
    assert sum(made) == total and all(abs(a - b) <= 1 for a, b in zip(made, exact))


@given(st.integers(0, 10**8))
def test_change_is_the_whole_amount_in_few_pieces(due):
    made = change(due)
    assert sum(coin * count for coin, count in made.items()) == due
    assert all(count <= 2 for coin, count in made.items() if coin < 5_000_000)


def test_half_a_cent_rounds_away_from_zero():
    assert [cents(amount) for amount in (1.005, 2.675, -1.005, 0.004, 27)] == [
        101,
        268,
        -101,
        0,
        2700,
    ]


COSTS = st.fixed_dictionaries(
    {
        name: st.floats(0.0, high).map(lambda value: f"{value:.2f}")
        for name, high in (
            ("base", 40),
            ("dye", 3),
            ("energy", 3),
            ("minutes", 90),
            ("wage", 80),
            ("loss", 60),
            ("label", 5),
            ("overhead", 15),
            ("fee_percent", 40),
            ("fee_fixed", 2),
            ("tax", 40),
        )
    }
    | {
        "asked": st.floats(0.01, 200).map(lambda value: f"{value:.2f}"),
        "tax_place": st.sampled_from(["inside", "outside", "none"]),
        "fee_on": st.sampled_from(["paid", "net"]),
    }
)


@given(COSTS)
def test_what_a_buyer_pays_is_split_to_the_cent(texts):
    """Tax, costs, fee and what is left, below zero or not, add up to what was paid; and each is within a cent."""
    try:
        outcome = work_card(find_card("price"), texts).outcome
    except BadInputs:
        assume(False)
    parts = parts_in_cents(outcome)
    assert sum(amount for _, amount in parts) == cents(outcome.value("paid"))
    assert dict(parts)["Left for you"] == cents(outcome.value("left")) and dict(parts)[
        "Tax"
    ] == cents(outcome.value("paid")) - cents(outcome.value("net"))


@given(COSTS)
def test_the_picture_moves_the_same_sums_as_the_working(texts):
    try:
        outcome = work_card(find_card("price"), texts).outcome
    except BadInputs:
        assume(False)
    assert left_at(outcome.case, outcome.value("price")) == pytest.approx(
        outcome.value("left"), abs=1e-9
    )


def test_the_margin_asked_for_is_the_margin_found():
    for place in ("inside", "outside", "none"):
        for on in ("paid", "net"):
            outcome = work_card(
                find_card("price"),
                {"go_by": "margin", "wanted_margin": "35 %", "tax_place": place, "fee_on": on},
            ).outcome
            assert 35 - 1e-9 <= outcome.value("margin") < 35.05, (
                "a ticket is whole cents, rounded up"
            )
            again = work_card(
                find_card("price"),
                {"asked": f"{outcome.value('price'):.9f}", "tax_place": place, "fee_on": on},
            ).outcome
            assert again.value("left") == pytest.approx(outcome.value("left"), abs=1e-6)


def test_at_the_lowest_price_nothing_is_left():
    for place in ("inside", "outside", "none"):
        lowest = work_card(find_card("price"), {"tax_place": place}).outcome.value("lowest")
        assert work_card(
            find_card("price"), {"tax_place": place, "asked": f"{lowest:.9f}"}
        ).outcome.value("left") == pytest.approx(0, abs=0.01)


def test_a_loss_is_said_as_a_loss():
    worked = work_card(find_card("price"), {"asked": "15"})
    assert "loses €3.27" in worked.sentences()[0] and "−" not in worked.sentences()[0].split(":")[0]
    assert not worked.outcome.has("make_good")


def test_no_tax_rate_is_known_to_the_card():
    """Without tax the rate is not asked and not used."""
    outcome = work_card(find_card("price"), {"tax_place": "none"}).outcome
    assert not outcome.case.has(Price.tax) and outcome.value("net") == outcome.value("paid") == 27


def test_the_price_moves_most_in_the_example():
    worked = work_card(find_card("price"), {})
    alt = worked.pictures()[1].alt
    assert alt.index("Price:") < alt.index("Base yarn:") < alt.index("Minutes:")
    assert set(MOVED.values()) >= {"Price", "Wage"}


@given(money, money)
def test_break_even_sells_just_enough(fixed, each):
    assert break_even(fixed, each) * each == pytest.approx(fixed, rel=1e-12)


@pytest.mark.parametrize("place", ["inside", "outside", "none"])
@pytest.mark.parametrize(
    "texts",
    [
        {"go_by": "margin"},
        {"go_by": "margin", "wanted_margin": "33 %", "tax": "7 %"},
        {"asked": "22.49", "tax": "19 %"},
        {"asked": "27.005"},
    ],
)
def test_ticket_table_and_buyer_show_one_price(place, texts):
    """Money is rounded once: the price that is said, what the buyer pays, the table's total and what goes on a price card are one number of whole cents."""
    texts = {name: text for name, text in texts.items() if name != "tax" or place != "none"} | {
        "tax_place": place
    }
    costs = {
        each.name: f"{float(each.default) + 0.01:.2f}"
        for each in find_card("price").inputs
        if each.of is MONEY and each.default and each.name != "asked"
    }
    rates = {"fee_percent": "2 %"} | ({"tax": "21 %"} if place != "none" else {})
    worked = work_card(
        find_card("price"), costs | rates | {"asked": "27.01"} | texts
    )  # all of it hers: what rests on the example's money goes nowhere
    r = worked.outcome
    assert all(
        r.value(name) == pytest.approx(round(r.value(name), 2), abs=1e-9)
        for name in ("price", "paid")
    )
    assert worked.tables()[0].rows[-1][1] == r.text("paid") and cents(r.value("paid")) == sum(
        amount for _, amount in parts_in_cents(r)
    )
    assert r.text("price") in worked.sentences()[0] and (
        place == "outside" or r.text("price") == r.text("paid")
    )
    assert known_as(worked, "paid", find_card("label").item("price")).startswith(
        f"{r.value('paid'):.6g}"
    )


def test_the_ticket_for_a_margin_is_the_next_whole_cent():
    """By hand: 27.4315 with the tax in it is asked as 27.44, and never as 27.50, 27.40 and 27.43 in three places."""
    worked = work_card(find_card("price"), {"go_by": "margin"})
    assert [worked.outcome.text(name) for name in ("price", "paid")] == [
        "€27.44"
    ] * 2 and worked.tables()[0].rows[-1][1] == "€27.44"
    assert worked.outcome.value("margin") >= 30 and worked.outcome.rough("margin"), (
        "rough minutes now make the margin rough, not the ticket"
    )


def test_a_lower_price_is_a_ticket_too():
    """By hand: a tenth off 27.44 is 24.696, written 24.70, and what is left is that of 24.70."""
    worked = work_card(find_card("price"), {"go_by": "margin"})
    row = next(row for row in worked.tables()[1].rows if row[0] == "10 %")
    assert row[1] == "€24.70" and row[2] == f"€{left_at(worked.outcome.case, 24.70):.2f}"


def test_rounding_up_never_asks_too_little():
    assert [cents_up(amount) for amount in (27.4315, 27.44, 0.0, 0.001)] == [2744, 2744, 0, 1]
