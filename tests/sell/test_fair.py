"""A fair: break-even, the number to bring from sales that were cut off, packing and change."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.problem import BadInputs
from fibercalc.core.registry import find_card
from fibercalc.core.work import work_card
from fibercalc.sell.fair import crates_needed, skeins_in_crate


def fair(**texts):
    return work_card(
        find_card("fair-stock"), {name.replace("__", "."): text for name, text in texts.items()}
    )


def past(*pairs):
    return {
        f"past.{number}.{name}": str(value)
        for number, pair in enumerate(pairs, 1)
        for name, value in zip(("brought", "sold"), pair)
    }


@given(st.integers(1, 2000), st.floats(0.05, 5.0), st.floats(0.02, 2.0))
def test_crates_hold_every_skein_and_no_crate_is_too_full(skeins, volume, mass):
    each = skeins_in_crate(volume, mass, 45.0, 12.0)
    crates = crates_needed(skeins, each)
    assert (crates - 1) * each < skeins <= crates * each
    assert each * volume <= 45.0 + 1e-6 and each * mass <= 12.0 + 1e-6


def test_selling_out_makes_demand_more_than_was_sold():
    """The same sales, once cut off and once not."""
    cut = work_card(find_card("fair-stock"), past((50, 50), (80, 61), (70, 70))).outcome
    free = work_card(find_card("fair-stock"), past((90, 50), (90, 61), (90, 70))).outcome
    assert free.value("mean") == pytest.approx((50 + 61 + 70) / 3, abs=0.5)
    assert cut.value("mean") > free.value("mean") + 5 and cut.value("bring") > free.value("bring")


def test_thin_data_is_said_so_and_enough_data_is_not():
    assert any("Thin data" in note for note in fair().notes())
    many = work_card(
        find_card("fair-stock"), past((90, 50), (90, 61), (90, 70), (90, 55), (90, 66))
    )
    assert not any("Thin data" in note for note in many.notes())


def test_only_sold_out_fairs_bound_nothing():
    assert any(
        "nothing bounds" in note
        for note in work_card(find_card("fair-stock"), past((50, 50), (60, 60), (70, 70))).notes()
    )


def test_dearer_leftovers_mean_fewer_to_bring():
    assert (
        fair(home="10").outcome.value("bring")
        < fair(home="2.50").outcome.value("bring")
        < fair(home="0.5").outcome.value("bring")
    )


def test_at_even_odds_the_middle_of_demand_is_brought():
    """One short costs what one carried home costs: bring the mean of a normal demand."""
    outcome = fair(contribution="5", home="5").outcome
    assert outcome.value("bring") == pytest.approx(outcome.value("mean"), abs=0.51)


def test_a_fair_cannot_sell_more_than_was_there():
    with pytest.raises(BadInputs) as refused:
        fair(
            past__1__brought="40",
            past__1__sold="41",
            past__2__brought="50",
            past__2__sold="40",
            past__3__brought="50",
            past__3__sold="40",
        )
    assert refused.value.problems[0].input == "past.1.sold"


def test_a_wage_that_needs_more_than_is_brought_has_no_chance():
    worked = fair(wage="100")
    assert worked.outcome.value("pays") == 0 and any(
        "does not pay its day" in note for note in worked.notes()
    )


def test_colors_add_up_to_what_is_brought():
    worked = fair()
    rows = {row[0]: row for row in worked.tables()[0].rows}
    assert (
        sum(int(row[1]) for name, row in rows.items() if name != "In all")
        == int(rows["In all"][1])
        == worked.outcome.value("bring")
    )


def test_the_float_is_the_change_of_each_sale():
    """27 paid with a 50: 20 + 2 + 1, six times over."""
    table = fair().tables()[3]
    assert [row[1:3] for row in table.rows] == [
        ("1", "6"),
        ("1", "6"),
        ("1", "6"),
    ] and "20" in table.rows[0][0]


def test_the_packing_list_holds_every_color_and_the_float():
    worked = fair()
    yarn, money, _ = find_card("fair-stock").papers[0].tables(worked.outcome)
    assert [row[0] for row in yarn.rows] == ["Wet Slate", "Rusted Gate", "undyed"] and sum(
        int(row[1]) for row in yarn.rows
    ) == worked.outcome.value("bring")
    assert money.rows[0][1] == "€138.00"
