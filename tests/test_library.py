"""The package as others import it: every chapter's functions, amounts at the borders, names."""

import inspect
import re
import subprocess
import sys
from datetime import date
from importlib import import_module
from pathlib import Path
from pkgutil import iter_modules

import html5lib
import pytest

import fibercalc
from fibercalc import Amount
from fibercalc.core.card import CHOICE, Rows
from fibercalc.core.registry import chapter_cards, chapters
from fibercalc.core.units import KNOWN
from fibercalc.site.fence import library
from tests.cards import BOOK, card_id
from tests.functions import function_name

# One call of each chapter: its function, an input of a length or the like, as a text, an amount in
# another unit, and the number that a docstring says it may be; worked out by hand.
CALLS = [
    ("yarn", "skein_length", "circumference", "150 cm", Amount(150, "cm"), 1.5),
    ("knit", "enough_left", "mass_now", "55 g", Amount(0.055, "kg"), 55),
    ("weave", "weft_left", "width", "25.4 cm", Amount(10, "in"), 25.4),
    ("wash", "make_size", "wanted_length", "50.8 cm", Amount(20, "in"), 50.8),
    ("dye", "stock_solution", "volume", "2 L", Amount(2, "L"), 2000),
    ("safe", "acid_dilution", "volume", "2 L", Amount(2000, "mL"), 2),
    ("sell", "net_contents", "label_mass", "101 g", Amount(0.101, "kg"), 101),
]


def test_each_chapter_with_cards_is_a_public_name():
    assert [call[0] for call in CALLS] == chapters()
    assert set(chapters()) <= set(fibercalc.__all__) and set(fibercalc.__all__) <= set(
        dir(fibercalc)
    )
    for name in fibercalc.__all__:
        assert getattr(fibercalc, name) is not None
    with pytest.raises(AttributeError, match="'fibercalc' has no attribute 'spin'"):
        fibercalc.spin  # noqa: B018


@pytest.mark.parametrize("card", BOOK, ids=card_id)
def test_each_card_is_a_function_of_its_chapter_with_each_input(card):
    function = getattr(getattr(fibercalc, card.chapter), function_name(card))
    assert function.__name__ in dir(getattr(fibercalc, card.chapter))
    parameters = inspect.signature(function).parameters
    assert list(parameters) == [item.name for item in card.inputs]
    assert {each.kind for each in parameters.values()} == {inspect.Parameter.KEYWORD_ONLY}
    told = inspect.getdoc(function)
    for name in (*parameters, *(result.name for result in card.results)):
        assert f"\n    {name}: " in told or f"\n    - {name}: " in told, name
    for item in card.inputs:
        for each in item.fields if isinstance(item, Rows) else (item,):
            for option in each.options if each.kind == CHOICE else ():
                assert option.value in " ".join(told.split())


@pytest.mark.parametrize("chapter", chapters())
def test_no_function_has_the_name_of_a_module_beside_it(chapter):
    """Importing a module sets its name in the package, and would hide the function."""
    package = import_module(f"fibercalc.{chapter}")
    names = {function_name(card) for card in chapter_cards(chapter)}
    assert not names & {file.name for file in iter_modules(package.__path__)}
    with pytest.raises(AttributeError, match="has no attribute 'no_such_card'"):
        package.no_such_card  # noqa: B018


@pytest.mark.parametrize("chapter, name, value, text, amount, number", CALLS)
def test_a_text_an_amount_and_a_number_are_the_same(chapter, name, value, text, amount, number):
    function = getattr(getattr(fibercalc, chapter), name)
    told = fibercalc.work(name.replace("_", "-"), {value: text})
    assert told != fibercalc.work(name.replace("_", "-")), "the example holds this text already"
    for each in (text, amount, number):
        assert function(**{value: each}).as_json()["results"] == told["results"]


@pytest.mark.parametrize("chapter, name, value", [call[:3] for call in CALLS])
def test_what_cannot_be_used_is_refused_with_one_line(chapter, name, value):
    function = getattr(getattr(fibercalc, chapter), name)
    with pytest.raises(fibercalc.BadInputs, match=r"given \(that is a.* temperature\); give") as it:
        function(**{value: Amount(20, "°F")})
    (problem,) = it.value.problems
    assert problem.input == value and "\n" not in problem.text
    with pytest.raises(TypeError, match="no_such_input"):
        function(no_such_input=1)


def test_a_number_has_no_number_style():
    """1.234 m was 1,234 m where 1.234 is written for twelve hundred; and 0.1 + 0.2 has 17 digits."""
    for given in (1.234, Amount(1.234, "m"), "1,234 m"):
        told = fibercalc.work("skein-length", {"circumference": given}, style="comma")
        assert told["inputs"]["circumference"]["value"] == pytest.approx(1.234)
    told = fibercalc.work("skein-length", {"circumference": 0.1 + 0.2})
    assert told["inputs"]["circumference"]["value"] == pytest.approx(0.3)
    with pytest.raises(fibercalc.BadInputs, match="nan given"):
        fibercalc.yarn.skein_length(circumference=float("nan"))


def test_a_result_given_to_another_card_brings_its_range():
    """Its half-width is half of the range, over the 0.95 that a uniform one has within it."""
    length = fibercalc.yarn.skein_length(
        way="turns", turns=280, circumference="1.50 m +/- 1 mm", stretch="0 % +/- 0"
    ).results["length"]
    half = (length.high.number - length.low.number) / 2 / 0.95
    told = fibercalc.work("skein-split", {"skein_length": f"420 m ± {half:.3g}"})
    split = fibercalc.yarn.skein_split(skein_length=length)
    assert split.as_json()["results"] == told["results"]
    typed = fibercalc.yarn.skein_split(skein_length=420)
    assert split.results["left"].low > typed.results["left"].low
    turns = fibercalc.yarn.reel_turns().results["turns"]
    assert turns.canonical() == f"{turns.number:.0f}"  # a whole number settled on


def test_an_amount_is_a_number_with_its_unit():
    yard = Amount(1, "yards")
    assert (yard.number, yard.unit, float(yard)) == (1.0, "yd", 1.0)
    assert yard.to("m").number == pytest.approx(0.9144) and yard.to("in").number == pytest.approx(
        36
    )
    assert str(Amount(1.50, "m")) == "1.5\u00a0m" and repr(yard) == "Amount(1, 'yd')"
    assert str(Amount(20, "°")) == "20°" and str(Amount(3)) == "3"
    assert Amount(180, "°F").to("°C").number == pytest.approx(82.2222, abs=5e-5)
    assert Amount(2084, "yd/lb").to("tex").number == pytest.approx(238.03, abs=0.005)


def test_amounts_compare_across_units():
    assert Amount(36, "in") == Amount(1, "yd") and Amount(1, "yd") != Amount(1, "m")
    assert Amount(1, "yd") < Amount(1, "m") <= Amount(100, "cm") < Amount(1, "km")
    # More yards to the pound are a finer yarn: fewer grams to the kilometer.
    assert Amount(2000, "yd/lb") > Amount(2500, "yd/lb")
    assert Amount(3) == 3 and Amount(3) < 4 and Amount(1, "m") != 1
    assert Amount(1, "m") != Amount(1, "g")
    for other in (1, Amount(1, "g"), "1 m"):
        with pytest.raises(TypeError, match="compares with an Amount of length, not with"):
            Amount(1, "m") < other  # noqa: B015
    with pytest.raises(TypeError, match="unhashable"):
        hash(Amount(1, "m"))


def test_a_unit_of_something_else_or_of_nothing_is_refused():
    with pytest.raises(ValueError, match="kg: not a unit of length; give m, yd, cm, in"):
        Amount(1, "m").to("kg")
    with pytest.raises(ValueError, match="furlong: not a unit that any card knows"):
        Amount(1, "furlong")


@pytest.mark.parametrize("quantity", KNOWN.values(), ids=lambda each: each.name)
def test_an_amount_takes_every_unit_there_and_back(quantity):
    for unit in quantity.units:
        for other in quantity.units:
            there = Amount(12.5, unit.sign).to(other.sign)
            assert there.unit == other.sign and there.to(unit.sign).number == pytest.approx(12.5)


def test_days_and_words_go_on_as_they_are():
    days = [
        value
        for card in fibercalc.cards("sell")
        for value in fibercalc.answer(card["id"]).results.values()
        if not value.is_number
    ]
    assert {isinstance(each._found.value, date) for each in days} == {True, False}
    for each in days:
        day = isinstance(each._found.value, date)
        assert each.canonical() == (each.day.isoformat() if day else each.text)
        with pytest.raises(TypeError, match="is no number"):
            each < each  # noqa: B015, PLR0124


def test_nothing_is_loaded_before_it_is_asked_for():
    code = (
        "import sys; import fibercalc; dir(fibercalc); first = set(sys.modules); fibercalc.yarn;"
        " from fibercalc import yarn; from fibercalc.yarn import student_t; second = set(sys.modules);"
        " fibercalc.yarn.wraps; third = set(sys.modules);"
        " print(*sorted(n for n in first if n.startswith('fibercalc')), '|',"
        " *sorted(n for n in second if '.ask' in n or '.core.card' in n), '|',"
        " *sorted(n for n in third if '.ask' in n or n.endswith('.cards.wraps')))"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "fibercalc fibercalc.version | | fibercalc.ask fibercalc.ask.yarn"


def test_a_copy_without_the_functions_has_the_formulas(monkeypatch):
    """As in the browser."""
    monkeypatch.setattr("importlib.util.find_spec", lambda name: name != "fibercalc.ask")
    with pytest.raises(AttributeError, match="no attribute 'skein_length'"):
        fibercalc.yarn.skein_length  # noqa: B018


PAGES = Path(fibercalc.__file__).parents[1] / "docs" / "pages" / "library"
PAGE = (PAGES / "index.md").read_text("utf-8")


def test_the_library_has_a_page_for_each_chapter():
    assert {path.stem for path in PAGES.glob("*.md")} == {"index", *chapters()}
    for chapter in chapters():
        text = (PAGES / f"{chapter}.md").read_text("utf-8")
        assert f"\n```library\n{chapter}\n```\n" in text


@pytest.mark.parametrize("chapter", chapters())
def test_the_page_tells_each_function_whole(chapter):
    """Each input, field and result by its name, as often as the docstring has it, and the question as the way to the card."""
    parser = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False)
    page = parser.parseFragment(library(chapter))
    sections = page.findall(".//section")
    cards = chapter_cards(chapter)
    assert [each.find("h2/code").text for each in sections] == [
        f"{chapter}.{function_name(card)}" for card in cards
    ]
    for section, card in zip(sections, cards, strict=True):
        link = section.find("p/a")
        assert (link.text, link.get("href")) == (card.question, f"../../{chapter}/{card.id}/")
        lists = [item for item in card.inputs if isinstance(item, Rows)]
        told = [code.text for code in section.findall(".//dt/code")]
        assert sorted(told) == sorted(
            [
                *(item.name for item in card.inputs),
                *(each.name for item in lists for each in item.fields),
                *(result.name for result in card.results),
            ]
        )
        assert len(section.findall(".//li")) == len(card.sources)
        signature = "".join(section.find(".//pre").itertext())
        assert signature.count("class ") == len(lists) and signature.endswith(") -> Answer:")


def test_what_the_page_shows_of_python_is_so():
    """Each line with a comment gives, or prints, what the comment says."""
    (code,) = re.findall(r"^```python\n(.*?)^```", PAGE, re.DOTALL | re.MULTILINE)
    names: dict = {}
    exec(code, names)
    said = re.findall(r"^(.+?)  # (.+)$", code, re.MULTILINE)
    assert len(said) == 3
    for line, told in said:
        value = eval(line.removeprefix("print"), names)
        assert str(value).replace("\u00a0", " ") == told


def test_the_page_names_formulas_that_are_there():
    for name in re.findall(r"`(fibercalc\.\w+\.\w+\.\w+)`", PAGE):
        module, _, function = name.rpartition(".")
        assert callable(getattr(import_module(module), function))
