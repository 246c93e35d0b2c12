"""Skein length, reel turns, put-up and splitting: what goes in comes out, and rounding keeps its promise."""

from math import ceil, floor

import pytest
from hypothesis import assume, given
from hypothesis import strategies as some

from fibercalc.core.onward import ways_on
from fibercalc.core.problem import OutOfRange
from fibercalc.core.registry import find_card
from fibercalc.core.units import METERS_PER_YARD
from fibercalc.core.work import work_card
from fibercalc.yarn import putup, reel, skein, split

lengths = some.floats(1.0, 5000.0)
turn_lengths = some.floats(0.5, 3.0)


@given(length=lengths, turn=turn_lengths)
def test_whole_turns_are_enough_and_one_fewer_is_not(length, turn):
    """Turns round up, by less than one turn."""
    turns = reel.whole_turns_for_length(length, turn)
    assert turns * turn >= length * (1 - 1e-6)
    assert (turns - 1) * turn < length


@given(circumference=turn_lengths, stretch=some.floats(0.0, 20.0))
def test_a_stretched_turn_holds_less_yarn_than_the_reel_is_round(circumference, stretch):
    """Yarn wound under tension gets shorter when it rests."""
    rested = skein.relaxed_circumference(circumference, stretch)
    assert rested <= circumference
    assert rested * (1 + stretch / 100) == pytest.approx(circumference)


@given(mass=some.floats(1.0, 1000.0), sample=some.floats(1.0, 50.0), weight=some.floats(0.1, 50.0))
def test_length_by_weighing_is_proportional_to_weight(mass, sample, weight):
    """Twice the skein is twice the length."""
    assert skein.length_by_weighing(2 * mass, sample, weight) == pytest.approx(
        2 * skein.length_by_weighing(mass, sample, weight)
    )


@given(length=some.floats(0.0, 10000.0))
def test_printed_yards_never_promise_more_than_there_is(length):
    """Down, and by less than a yard."""
    yards = putup.printed_yards(length)
    assert yards * METERS_PER_YARD <= length * (1 + 1e-8)
    assert (yards + 1) * METERS_PER_YARD > length


@given(yards=some.integers(0, 10000))
def test_whole_yards_print_as_themselves(yards):
    """Turning yards into meters and back must not lose one."""
    assert putup.printed_yards(yards * METERS_PER_YARD) == yards


@given(amount=some.floats(0.0, 1e6))
def test_whole_numbers_round_as_floor_and_ceiling_do(amount):
    """Except within float noise of a whole number."""
    assume(abs(amount - round(amount)) > 1e-2)
    assert putup.whole_below(amount) == floor(amount)
    assert putup.whole_above(amount) == ceil(amount)


@given(
    full=some.floats(20.0, 2000.0),
    wanted=some.floats(1.0, 300.0),
    loss=some.floats(0.0, 5.0),
    share=some.floats(0.0, 20.0),
)
def test_splitting_loses_nothing_but_what_is_counted(full, wanted, loss, share):
    """Small skeins, their losses, the loss share and what is left add up to the skein; nothing that is left makes one more."""
    usable = split.usable_amount(full, share)
    count = split.small_skeins(usable, wanted, loss)
    left = split.left_over(usable, count, wanted, loss)
    assert count * (wanted + loss) + left + full * share / 100 == pytest.approx(full)
    assert -1e-5 < left < wanted + loss


@given(usable=some.floats(20.0, 2000.0), wanted=some.floats(1.0, 300.0), loss=some.floats(0.0, 5.0))
def test_the_last_skein_has_a_margin_exactly_when_it_fits(usable, wanted, loss):
    """The margin of the last that fits is not negative; that of one more is short of its loss at least."""
    count = split.small_skeins(usable, wanted, loss)
    if count:
        assert split.margin_of_last(usable, count, wanted, loss) >= loss - 1e-5
    assert split.margin_of_last(usable, count + 1, wanted, loss) < loss


@given(
    usable=some.floats(20.0, 2000.0),
    count=some.integers(1, 40),
    turn=turn_lengths,
    loss=some.floats(0.0, 2.0),
)
def test_most_turns_fit_and_one_more_does_not(usable, count, turn, loss):
    """The turns found give the count; one more turn each does not."""
    turns = split.most_turns_for_count(usable, count, turn, loss)
    assume(turns > 0)
    assert split.small_skeins(usable, turns * turn, loss) >= count
    assert count * ((turns + 1) * turn + loss) > usable * (1 - 1e-6)


def test_twelve_shades_dyed_whole_take_more_skeins_than_cut_first():
    """26 sets of 12: 78 skeins cut first but 84 dyed whole at four to a skein; 63 and 72 at five."""
    assert (split.full_skeins_for(312, 4), 12 * split.full_skeins_for(26, 4)) == (78, 84)
    assert (split.full_skeins_for(312, 5), 12 * split.full_skeins_for(26, 5)) == (63, 72)


@pytest.mark.parametrize("bad", [0.0, -3.0, float("nan")])
def test_a_small_skein_of_nothing_is_refused(bad):
    """No skein splits into endless skeins of nothing."""
    with pytest.raises(OutOfRange) as found:
        split.small_skeins(98.0, bad)
    assert found.value.name == "wanted"


def test_a_length_below_nothing_is_never_told_to_be_printed():
    """Two skeins of 1 m and 20,000 m: Student's t takes the limit far below 0, so there is none to print."""
    worked = work_card(
        find_card("skein-length"),
        {"several": "yes", "skeins.1.length": "1 m", "skeins.2.length": "20000 m"},
    )
    assert "differ too much" in worked.sentences()[1] and "−" not in " ".join(
        [*worked.sentences(), *worked.notes()]
    )


def test_one_skein_may_be_shorter_than_the_average_s_limit_not_longer():
    """Two skeins measured alike: the reel's own error lies in both limits, so the single skein's is no higher than the average's."""
    worked = work_card(
        find_card("skein-length"),
        {"several": "yes", "skeins.1.length": "420 m", "skeins.2.length": "420 m"},
    )
    assert any(
        f"as short as {worked.outcome.down('next_skein')}." in note for note in worked.notes()
    )
    assert worked.outcome.down("next_skein") == worked.outcome.down("printable")


def test_the_turn_that_goes_on_is_the_turn_of_the_working():
    """By hand: 1.50 m around at 3 % stretch is 1.50 / 1.03 = 1.45631 m at rest, not 1.50 x 0.97 = 1.455."""
    worked = work_card(find_card("skein-length"), {"stretch": "3 %"})
    ((_, texts, _),) = ways_on(
        worked, next(carry for carry in worked.card.carry if carry.card == "skein-split")
    )
    assert texts["reel"] == "1.45631m"
