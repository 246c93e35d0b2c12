"""The fiber line: makes 100 whatever was blended, in the order of the law, and refuses what does not add up."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.onward import ways_on
from fibercalc.core.problem import BadInputs, OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.sell.fiber_label import tolerance, unnamed, whole_percents


def fibers(*rows, kept="fibers") -> dict[str, str]:
    names = ("fiber", "share" if kept == "fibers" else "mass", "function")
    return {
        f"{kept}.{number}.{name}": value
        for number, row in enumerate(rows, 1)
        for name, value in zip(names, row)
    }


def line(*rows, **more) -> str:
    return work_card(
        find_card("fiber-content"),
        fibers(*rows, kept="blend" if more.get("by") == "weight" else "fibers") | more,
    ).outcome.value("content")


@given(st.lists(st.floats(0.01, 1000.0), min_size=1, max_size=8))
def test_a_label_adds_up_to_100(amounts):
    total = sum(amounts)
    shares = {f"fiber {number}": 100 * amount / total for number, amount in enumerate(amounts)}
    whole = whole_percents(shares)
    assert sum(whole.values()) == 100
    assert list(whole.values()) == sorted(whole.values(), reverse=True)
    assert all(abs(whole[name] - share) <= 1 for name, share in shares.items())


@given(st.floats(0.0, 100.0), st.floats(0.0, 100.0))
def test_tolerance_grows_with_the_share_and_stays_within_100(one, other):
    (low, high), (low_2, high_2) = tolerance(min(one, other)), tolerance(max(one, other))
    assert low <= low_2 and high <= high_2 and 0 <= low <= high <= 100


def test_one_fiber_has_no_tolerance():
    assert tolerance(100, 1) == (100, 100)


def test_shares_that_do_not_add_up_are_refused():
    with pytest.raises(OutOfRange):
        whole_percents({"wool": 75, "nylon": 20})
    for second in ("20", "28"):
        with pytest.raises(BadInputs) as refused:
            line(("wool", "75"), ("nylon", second))
        assert "100 %" in refused.value.problems[0].text


def test_one_left_blank_is_the_rest():
    assert line(("wool", "75"), ("nylon", "")) == "75% wool, 25% nylon"


@pytest.mark.parametrize(
    "sold, said", [("us", "75% wool, 25% nylon"), ("eu", "75 % wool, 25 % polyamide")]
)
def test_names_are_those_of_the_place(sold, said):
    assert line(("nylon", "25"), ("wool", "75"), sold=sold) == said


def test_a_functional_fiber_is_named_however_little():
    """The regulation's own kind of example: 96 % acetate, 4 % spandex."""
    assert line(("acrylic", "96"), ("elastane", "4", "yes")) == "96% acrylic, 4% spandex"
    assert line(("acrylic", "96"), ("elastane", "4", "no")) == "96% acrylic, 4% other fiber"


def test_wool_is_named_under_five_percent_in_the_us():
    assert line(("cotton", "97"), ("wool", "3")) == "97% cotton, 3% wool"


def test_other_fiber_stands_last_even_when_it_is_more():
    assert (
        line(("cotton", "87"), ("silk", "4"), ("ramie", "4"), ("hemp", "3"), ("wool", "2"))
        == "87% cotton, 2% wool, 11% other fibers"
    )


def test_five_percent_is_named():
    assert line(("cotton", "95"), ("silk", "5")) == "95% cotton, 5% silk"


def test_every_fiber_is_named_in_the_eu():
    assert line(("cotton", "96"), ("silk", "4"), sold="eu") == "96 % cotton, 4 % silk"


def test_which_may_be_other_by_each_law():
    shares = {"cotton": 86.0, "silk": 5.0, "hemp": 5.0, "ramie": 4.0}
    assert unnamed(shares, "us") == {"ramie"} and unnamed(shares, "eu") == {"silk", "hemp", "ramie"}
    assert unnamed(shares, "us", frozenset({"ramie"})) == frozenset()
    assert (
        unnamed({"cotton": 80.0, "silk": 5.0, "hemp": 5.0, "ramie": 5.0, "jute": 5.0}, "eu")
        == frozenset()
    )
    with pytest.raises(KeyError):
        unnamed(shares, "elsewhere")


def test_the_same_fiber_twice_is_one_fiber():
    """50 g of 75/25 and 50 g of wool: 87.5 and 12.5, printed 88 and 12."""
    assert (
        line(("wool", "37.5 g"), ("nylon", "12.5 g"), ("wool", "50 g"), by="weight")
        == "88% wool, 12% nylon"
    )


def test_unknown_is_an_allowed_answer():
    assert line(("unknown", "100")) == "Made of undetermined fiber content"
    assert line(("wool", "60"), ("unknown", "40")) == "60% wool, 40% undetermined fiber content"
    assert line(("wool", "60"), ("unknown", "40"), sold="eu") == "Unspecified textile composition"
    assert line(("wool", "90"), ("unknown", "10"), sold="eu") == "90 % wool, 10 % other fibers"


def test_weight_that_is_no_fiber_is_said():
    assert line(("silk", "100"), loading="10 %") == "100% silk, up to 10% weight that is no fiber"


def test_three_points_are_not_promised_for_wool_in_the_us():
    wool = work_card(find_card("fiber-content"), {}).outcome
    cotton = work_card(
        find_card("fiber-content"), fibers(("cotton", "60"), ("linen", "40"))
    ).outcome
    assert not wool.has("test_low") and (cotton.value("test_low"), cotton.value("test_high")) == (
        57,
        63,
    )
    assert work_card(find_card("fiber-content"), {"sold": "eu"}).outcome.value("test_low") == 72


def to_the_label(texts) -> dict[str, str]:
    card = find_card("fiber-content")
    ((_, carried, _),) = ways_on(
        work_card(card, texts), next(carry for carry in card.carry if carry.card == "label")
    )
    return carried


def test_the_line_goes_on_to_the_label_whole_or_not_at_all():
    assert to_the_label({}) == {"fiber": "75% wool, 25% nylon", "maker": "Brackwend Dyehouse"}
    many = fibers(
        *[
            (fiber, "12.5")
            for fiber in ("wool", "nylon", "silk", "cotton", "linen", "ramie", "mohair", "alpaca")
        ]
    )
    assert "fiber" not in to_the_label(many)
