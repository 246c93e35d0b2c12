"""The range of a sum of uniform and normal parts, against exact distributions and a seeded simulation."""

import random
from math import erf, log, sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.spread import Parts


def test_one_uniform_part_keeps_95_of_100_parts_of_its_width():
    assert Parts([2.0], [2.0]).half_width("up") == pytest.approx(1.9, abs=1e-9)


def test_two_equal_uniform_parts_are_a_triangle():
    """Their sum has the triangular distribution: the 95 % half-width is 2 (1 - sqrt(0.05))."""
    assert Parts([1.0, 1.0], [1.0, 1.0]).half_width("up") == pytest.approx(
        2 * (1 - sqrt(0.05)), rel=1e-6
    )


def test_a_normal_part_alone_is_the_normal_distribution():
    assert Parts(normal=[3.0]).half_width("up") == pytest.approx(3 * 1.959963984540054, rel=1e-9)
    assert Parts(normal=[3.0]).chance_below(3.0) == pytest.approx(
        0.5 * (1 + erf(1 / sqrt(2))), abs=1e-12
    )


def test_a_product_is_never_carried_to_zero():
    """Two factors, each known from a third to three times, are together known from a ninth to nine times at the very most: 1 - 2/3 - 2/3 would be below 0."""
    factors = Parts(down=[20.0, 20.0], up=[60.0, 60.0]).as_factors(30.0)
    assert factors.down == pytest.approx(factors.up) == [log(3), log(3)]
    assert log(3) < factors.half_width("down") < 2 * log(3) and factors.half_width(
        "up"
    ) == pytest.approx(factors.half_width("down"))


def test_sides_are_kept_apart():
    parts = Parts([1.0], [4.0])
    assert parts.half_width("down") == pytest.approx(0.95) and parts.half_width(
        "up"
    ) == pytest.approx(3.8)


@pytest.mark.parametrize(
    ("widths", "normal"),
    [
        ([3, 2, 1], []),
        ([3, 3, 3, 3], []),
        ([5, 0.5, 0.5], [1.0]),
        ([1, 0.001], [0.2]),
        ([2, 1.5, 1, 0.5], [0.8]),
    ],
)
def test_range_and_chance_agree_with_a_simulation(widths, normal):
    """100,000 seeded draws; 95 % end within 1.5 %, chances within 0.6 of 100."""
    source = random.Random(5)
    draws = sorted(
        sum(source.uniform(-w, w) for w in widths) + sum(source.gauss(0, s) for s in normal)
        for _ in range(100_000)
    )
    parts = Parts([float(w) for w in widths], [float(w) for w in widths], normal)
    reach = draws[97_500]
    assert parts.half_width("up") == pytest.approx(reach, rel=0.015)
    for edge in (-reach, -reach / 2, reach / 3, reach):
        below = sum(draw < edge for draw in draws) / len(draws)
        assert parts.chance_below(edge) == pytest.approx(below, abs=0.006)


@given(
    st.lists(st.floats(0, 100), max_size=8),
    st.lists(st.floats(0, 50), max_size=3),
    st.floats(-500, 500),
)
def test_the_range_is_never_wider_than_the_worst_case_and_chances_are_chances(widths, normal, edge):
    parts = Parts(widths, widths, normal)
    assert 0 <= parts.chance_below(edge) <= 1
    assert parts.half_width("up") >= 0
    if not any(normal) and len(widths) <= 2:
        assert parts.half_width("up") <= sum(widths) + 1e-9


@given(st.lists(st.floats(0.1, 100), min_size=1, max_size=6), st.floats(0.01, 0.98))
def test_chance_grows_with_the_edge(widths, share):
    parts = Parts(widths, widths)
    reach = sum(widths)
    assert (
        parts.chance_below(-reach * share)
        <= parts.chance_below(0) + 1e-9
        <= parts.chance_below(reach * share) + 2e-9
    )
