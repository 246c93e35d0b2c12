"""What people type is read as they meant it, and what can be read two ways is never silently guessed."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.amount import Ambiguous, Unreadable, read_amount
from fibercalc.core.units import (
    COUNT,
    ENERGY,
    KNOWN,
    LENGTH,
    LINEAR_DENSITY,
    MASS,
    PER_LENGTH,
    PERCENT,
    TEMPERATURE,
    TIME,
    VOLUME,
)

# Expected values by hand from the exact yard, inch, ounce and pound of 1959.
READ = [
    ("412 yd +/- 8", LENGTH, "m", 376.7328, 7.3152),
    ("412 ± 8 yd", LENGTH, "m", 376.7328, 7.3152),
    ("412 yd ± 2 %", LENGTH, "m", 376.7328, 7.534656),
    ("412 ± 2 % yd", LENGTH, "m", 376.7328, 7.534656),
    ("10 to 12 in", LENGTH, "m", 0.2794, 0.0254),
    ("10-12 in", LENGTH, "m", 0.2794, 0.0254),
    ("3,5 oz", MASS, "g", 99.2233309, None),
    ("3.5 oz", MASS, "g", 99.2233309, None),
    ("4 1/2 in", LENGTH, "m", 0.1143, None),
    ("4½ in", LENGTH, "m", 0.1143, None),
    ("1/4 in", LENGTH, "m", 0.00635, None),
    ("1,200 m", LENGTH, "m", 1200, None),
    ("1.2e3 m", LENGTH, "m", 1200, None),
    ("1 lb 4 oz", MASS, "g", 566.9904625, None),
    ("5' 3\"", LENGTH, "m", 1.6002, None),
    ("5 ft 3 in", LENGTH, "m", 1.6002, None),
    ("420", LENGTH, "m", 420, None),
    ("420 m/100 g", LINEAR_DENSITY, "tex", 238.0952381, None),
    ("420m/100g", LINEAR_DENSITY, "tex", 238.0952381, None),
    ("100 yd/lb", LINEAR_DENSITY, "tex", 4960.54649, None),
    ("-5 °C", TEMPERATURE, "°C", -5, None),
    ("−5 C", TEMPERATURE, "°C", -5, None),
    ("180 F", TEMPERATURE, "°C", 82.2222222, None),
    ("1 200,5 m", LENGTH, "m", 1200.5, None),
    ("1\u202f200,5 m", LENGTH, "m", 1200.5, None),
    ("1.200,5 m", LENGTH, "m", 1200.5, None),
    ("1,200.5 m", LENGTH, "m", 1200.5, None),
    ("0,125 m", LENGTH, "m", 0.125, None),
    (".5 L", VOLUME, "mL", 500, None),
    ("12 ± 2 %", PERCENT, "%", 12, 2),
    ("14 per in", PER_LENGTH, "per cm", 5.5118110, None),
    ("1 h 30 min", TIME, "min", 90, None),
    ("1 kWh", ENERGY, "kWh", 1, None),
    ("56", COUNT, "", 56, None),
]


@pytest.mark.parametrize(
    ("text", "quantity", "unit", "value", "rough"), READ, ids=[row[0] for row in READ]
)
def test_an_amount_is_read_as_meant(text, quantity, unit, value, rough):
    amount = read_amount(text, quantity, quantity.unit(unit))
    assert amount.value == pytest.approx(value, rel=1e-7)
    assert amount.rough == (None if rough is None else pytest.approx(rough, rel=1e-7))


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("100 g", "that is a weight"),
        ("82 °C", "that is a temperature"),
        ("", "nothing was given"),
        ("abc", "no number"),
        ("1e9 m", "exponents"),
        ("1/0 m", "below the line"),
        ("10 20 m", "several numbers"),
        ("1,2,3 m", "do not fit"),
        ("5 blue", "not a unit"),
        ("5 ± 1 ± 1 m", "more than one"),
        ("inf m", "no number"),
        ("nan", "no number"),
        ("1234567890123456789 m", "digits"),
        ("5 m -+/- 2", "not a unit"),
        ("3 oz 2 lb", "that is a weight"),
        ("x" * 200, "longer"),
    ],
)
def test_what_cannot_be_read_says_why(text, why):
    with pytest.raises(Unreadable, match=why):
        read_amount(text, LENGTH, LENGTH.base)


@pytest.mark.parametrize(
    ("text", "style", "value", "other"),
    [
        ("1,200", "point", 1200, 1.2),
        ("1,200", "comma", 1.2, 1200),
        ("1.200", "point", 1.2, 1200),
        ("1.200", "comma", 1200, 1.2),
    ],
)
def test_an_ambiguous_number_follows_the_style_and_says_so(text, style, value, other):
    amount = read_amount(text, LENGTH, LENGTH.base, style)
    assert (amount.value, amount.other) == (value, other)


@pytest.mark.parametrize("text", ["1,200", "1.200", "12,345", "1,200 ± 3"])
def test_an_ambiguous_dose_is_refused_with_a_question(text):
    with pytest.raises(Ambiguous, match=r"is that .* or .*\?"):
        read_amount(text, MASS, MASS.base, strict=True)


@pytest.mark.parametrize("text", ["1,5", "0,125", "1234,567", "1.234,5", "0.125"])
def test_an_unambiguous_dose_is_taken(text):
    assert read_amount(text, MASS, MASS.base, strict=True).other is None


@given(st.sampled_from(sorted(KNOWN)), st.data())
def test_every_unit_comes_back_the_same(name, data):
    quantity = KNOWN[name]
    unit = data.draw(st.sampled_from(quantity.units))
    number = data.draw(st.floats(0.01, 1e5))
    value = unit.to_base(number)
    assert unit.from_base(value) == pytest.approx(number, rel=1e-9)
    text = f"{number:.12g} {unit.sign}"
    assert read_amount(text, quantity, quantity.base, "canonical").value == pytest.approx(
        value, rel=1e-9, abs=1e-9
    )


@given(st.text(max_size=100), st.sampled_from(["point", "comma", "canonical"]), st.booleans())
def test_random_text_is_read_or_refused_and_never_raises_otherwise(text, style, strict):
    try:
        amount = read_amount(text, LENGTH, LENGTH.base, style, strict)
    except Unreadable as error:
        assert str(error)
    else:
        assert abs(amount.value) < 1e25


@given(st.floats(0.01, 1e5), st.floats(0.001, 0.2), st.sampled_from(LINEAR_DENSITY.units))
def test_canonical_text_keeps_value_and_spread(number, share, unit):
    first = read_amount(
        f"{number:.9g} {unit.sign} ± {number * share:.9g}", LINEAR_DENSITY, unit, "canonical"
    )
    second = read_amount(first.canonical(), LINEAR_DENSITY, LINEAR_DENSITY.base, "canonical")
    assert second.value == pytest.approx(first.value, rel=1e-8) and second.rough == pytest.approx(
        first.rough, rel=1e-6
    )


def test_no_spelling_belongs_to_two_units_of_one_quantity():
    for quantity in KNOWN.values():
        signs = [unit.sign for unit in quantity.units]
        assert len(set(signs)) == len(signs)
        for unit in quantity.units:
            for text in (unit.sign, *unit.also):
                assert quantity.unit(text) is unit or text == "", f"{quantity.name}: {text}"
