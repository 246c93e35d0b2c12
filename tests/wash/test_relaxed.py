"""What relaxation does, held against the knit chapter's own use of the same constants."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.registry import find_card
from fibercalc.core.table import read_table
from fibercalc.core.work import work_card
from fibercalc.wash.relaxed import gauge_after, relaxed_change, relaxed_range
from fibercalc.wash.shrink import area_change

STATES = {row["state"]: row for row in read_table("wash", "munden-constants").rows}


@pytest.mark.parametrize("before, after", [("dry", "wet"), ("wet", "full"), ("dry", "full")])
def test_width_times_height_is_what_the_third_constant_says(before, after):
    """Area goes as 1 / Ks. Ks of the wet state is recalled as 21.6, its pair multiplies to 21.73: half a percent apart."""
    one, other = STATES[before], STATES[after]
    area = area_change(
        relaxed_change(one["Kc"], other["Kc"]), relaxed_change(one["Kw"], other["Kw"])
    )
    assert area == pytest.approx(100 * (one["Ks"] / other["Ks"] - 1), abs=0.6)


@given(st.floats(2.0, 9.0), st.floats(2.0, 9.0))
def test_the_range_holds_the_change_and_going_back_undoes_it(one, other):
    low, high = relaxed_range(one, other)
    assert low < relaxed_change(one, other) < high
    assert (1 + relaxed_change(one, other) / 100) * (
        1 + relaxed_change(other, one) / 100
    ) == pytest.approx(1)


@given(st.floats(0.5, 20.0), st.floats(-60.0, 60.0))
def test_the_stitches_stay(gauge, change):
    """Gauge times width is the same number of stitches before and after."""
    assert gauge_after(gauge, change) * (1 + change / 100) == pytest.approx(gauge)


def test_a_swatch_that_does_as_the_constants_say_is_told_so():
    """15 cm x 4.1 / 3.8 before the soak: 16.18; 15 x 5.3 / 5.0 = 15.9."""
    worked = work_card(
        find_card("wet-finish"),
        {"wide": "16.2 cm", "tall": "15.9 cm", "wide_after": "15 cm", "tall_after": "15 cm"},
    )
    assert "as they say" in " ".join(worked.sentences())
    assert "another cloth" in " ".join(work_card(find_card("wet-finish"), {}).sentences())
