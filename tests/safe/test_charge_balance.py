"""The pH of tabled solutions and of the primary buffers, and what must hold of any bath."""

from math import log10

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.problem import OutOfRange
from fibercalc.core.table import read_table
from fibercalc.safe.acids import bath_ph, dose_for_ph, ionic_strength
from fibercalc.safe.charge_balance import Weak, solve

MASS = {row["key"]: row["molar_mass"] for row in read_table("safe", "bath-chemicals").rows}


def weak(key: str, total: float) -> Weak:
    row = read_table("safe", "weak-acids").row("key", key)
    return Weak(
        total,
        tuple(row[name] for name in ("pka1", "pka2", "pka3") if row[name] != ""),
        int(row["charge"]),
    )


# Potassium and sodium are the strong cations of each buffer; amounts are per kg of water, as good as per liter at these strengths.
BUFFERS = [
    ("phthalate", [("phthalic", 0.05)], 0.05, 4.005),  # read: nbs-rp1690
    ("phosphate", [("phosphoric", 0.05)], 0.075, 6.865),  # from memory: nbs-primary-buffers
    (
        "blood phosphate",
        [("phosphoric", 0.008695 + 0.03043)],
        0.008695 + 2 * 0.03043,
        7.413,
    ),  # from memory: nbs-primary-buffers
    ("borax", [("boric", 0.04)], 0.02, 9.180),  # read: nbs-buffers-1969
    ("carbonate", [("carbonic", 0.05)], 0.075, 10.012),  # read: nbs-buffers-1969
]


@pytest.mark.parametrize("name, acids, cations, printed", BUFFERS, ids=[row[0] for row in BUFFERS])
def test_primary_buffers(name, acids, cations, printed):
    assert solve([weak(*acid) for acid in acids], cations).ph == pytest.approx(printed, abs=0.015)


@pytest.mark.parametrize("name, acids, cations, printed", BUFFERS, ids=[row[0] for row in BUFFERS])
def test_without_activities_every_primary_buffer_is_missed(name, acids, cations, printed):
    """Proof that the activities are at work: left out, each is off by 0.05 to 0.4."""
    assert (
        0.05
        < abs(solve([weak(*acid) for acid in acids], cations, activities=False).ph - printed)
        < 0.4
    )


def test_the_school_sum_of_soda_is_not_what_we_give():
    """0.05 mol/L: 11.50 in school tables, 11.26 with activities."""
    soda = {"soda-ash": 0.05 * MASS["soda-ash"]}
    assert bath_ph(1, soda, activities=False) == pytest.approx(11.50, abs=0.02) and bath_ph(
        1, soda
    ) == pytest.approx(11.26, abs=0.02)


def test_constants_agree_with_the_read_table():
    """Each constant from memory rounds to the two or three digits that were read; the phosphoric row was read coarser."""
    for row in read_table("safe", "weak-acids").rows:
        if row["read_as"] == "":
            continue
        for name, printed in zip(("pka1", "pka2", "pka3"), str(row["read_as"]).split()):
            assert row[name] == pytest.approx(
                float(printed), abs=0.035 if row["key"] == "phosphoric" else 0.0051
            )


def test_ideal_acetic_acid_is_the_quadratic():
    """An independent sum: x² = Ka (c - x)."""
    ka, c = 10**-4.756, 0.01
    x = (-ka + (ka * ka + 4 * ka * c) ** 0.5) / 2
    assert bath_ph(1, {"acetic": c * MASS["acetic"]}, activities=False) == pytest.approx(
        -log10(x), abs=1e-4
    )


def test_pure_water_and_hard_water():
    assert bath_ph(1) == pytest.approx(13.995 / 2, abs=1e-6)
    assert bath_ph(1, {}, 150) == pytest.approx(8.3, abs=0.1)
    assert bath_ph(1, {}, 150, driven_off=True) > bath_ph(1, {}, 150)


GRAMS = st.floats(0.0, 300.0)
ACID, BASE = (
    st.sampled_from(["acetic", "citric", "citric-monohydrate", "formic"]),
    st.sampled_from(["soda-ash", "bicarbonate", "ammonia", "washing-soda"]),
)


@given(
    acid=ACID,
    base=BASE,
    first=GRAMS,
    more=GRAMS,
    grams=GRAMS,
    alkalinity=st.floats(0.0, 500.0),
    off=st.booleans(),
)
def test_adding_acid_never_raises_ph_and_adding_alkali_never_lowers_it(
    acid, base, first, more, grams, alkalinity, off
):
    """Exactly so without activities; with them more salt shifts the scale itself, by far less than a strip shows."""
    for activities, slack in ((False, 1e-7), (True, 0.05)):

        def ph(acid_grams, base_grams, activities=activities):
            return bath_ph(
                10, {acid: acid_grams, base: base_grams}, alkalinity, off, activities=activities
            )

        if base == "bicarbonate":  # its own pH is near 8.3, toward which it draws stronger alkali
            grams = 0.0
        assert ph(first + more, grams) <= ph(first, grams) + slack
        if base != "bicarbonate":
            assert ph(first, grams + more) >= ph(first, grams) - slack


@given(
    chemical=ACID,
    target=st.floats(2.8, 6.5),
    alkalinity=st.floats(20.0, 400.0),
    off=st.booleans(),
    soda=st.floats(0.0, 50.0),
)
def test_the_dose_for_a_ph_gives_that_ph(chemical, target, alkalinity, off, soda):
    contents = {"soda-ash": soda}
    try:
        grams = dose_for_ph(chemical, target, 9, contents, alkalinity, off)
    except OutOfRange as error:
        assert "not reached" in error.reason
        return
    assert bath_ph(9, {**contents, chemical: grams}, alkalinity, off) == pytest.approx(
        target, abs=1e-6
    )


@given(target=st.floats(4.5, 9.0), citric=st.floats(10.0, 200.0), off=st.booleans())
def test_soda_for_a_ph_gives_that_ph_and_less_is_needed_once_carbon_dioxide_has_left(
    target, citric, off
):
    contents = {"citric": citric}
    grams = dose_for_ph("soda-ash", target, 10, contents, 40, off)
    assert bath_ph(10, {**contents, "soda-ash": grams}, 40, off) == pytest.approx(target, abs=1e-6)
    assert (
        dose_for_ph("soda-ash", target, 10, contents, 40, True)
        <= dose_for_ph("soda-ash", target, 10, contents, 40, False) + 1e-9
    )


@pytest.mark.parametrize(
    "chemical, target",
    [("acetic", 9), ("citric", 12), ("soda-ash", 13), ("soda-ash", 1), ("ammonia", 13)],
)
def test_a_ph_out_of_reach_is_refused_in_words(chemical, target):
    with pytest.raises(OutOfRange, match="not reached"):
        dose_for_ph(chemical, target, 10, {"citric": 20})


@pytest.mark.parametrize(
    "call",
    [
        lambda: bath_ph(0),
        lambda: bath_ph(-1),
        lambda: bath_ph(1, {"citric": -1}),
        lambda: bath_ph(1, {"citric": 5000}),
        lambda: bath_ph(1, {}, -5),
        lambda: dose_for_ph("citric", 15, 1),
        lambda: bath_ph(float("nan")),
    ],
)
def test_absurd_baths_are_refused(call):
    with pytest.raises(OutOfRange):
        call()


def test_ionic_strength_of_soda_is_half_the_sum_of_concentration_times_charge_squared():
    """0.01 mol/L of soda: mostly 0.02 sodium and 0.01 carbonate, (0.02 + 0.04) / 2, a little less for the bicarbonate formed."""
    assert ionic_strength(1, {"soda-ash": 0.01 * MASS["soda-ash"]}) == pytest.approx(
        0.029, abs=0.0015
    )
