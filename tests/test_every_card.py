"""What must hold for every card, asked of each in a loop: nobody writes a card test twice."""

import inspect
import json
from html.parser import HTMLParser

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from fibercalc.core.card import CHOICE, COLOR, DATE, TEXT, Between, Input, Many, Plain, Result, Rows
from fibercalc.core.describe import declaration
from fibercalc.core.entry import Reading, read_one
from fibercalc.core.link import query_of, read_query
from fibercalc.core.markup import inner
from fibercalc.core.problem import BadInputs
from fibercalc.core.reading import read_inputs
from fibercalc.core.ref import list_of, path_of
from fibercalc.core.settings import Settings
from fibercalc.core.table import read_table
from fibercalc.core.traced import leaves_of, value_of
from fibercalc.core.work import answer_of, work_card
from fibercalc.site.fence import card as card_fence
from fibercalc.site.form import values_of
from fibercalc.site.parts import cited
from fibercalc.site.sheet import sheet
from fibercalc.workbook import bench
from tests.cards import CARDS, card_id
from tests.read_back import read_back
from tests.states import changed, fields_of, states_of

POINT = Settings()
every_card = pytest.mark.parametrize("card", CARDS, ids=card_id)


def answers(card, texts=None, **kwargs):
    return answer_of(work_card(card, texts or {}, **kwargs), "test").as_json()


@every_card
def test_the_example_is_complete_and_usual(card):
    """Every default can be read, and lies in the allowed and the usual range."""
    for name, each in fields_of(card):
        text = card.defaults()[name]
        reading = read_one(each, name, text, POINT, "canonical")
        assert isinstance(reading, Reading), reading
        if each.measured and text:
            low, high = each.edges
            assert low <= reading.amount.value <= high
        if each.usual and text:
            ends = sorted(each.base_value(end) for end in each.usual)
            assert ends[0] <= reading.amount.value <= ends[1], f"{name}: the example is not usual"
            assert each.edges[0] <= ends[0] and ends[1] <= each.edges[1], (
                f"{name}: usual is not within allowed"
            )


@every_card
def test_the_answer_function_takes_one_case(card):
    assert len(inspect.signature(card.answer).parameters) == 1


@every_card
def test_every_state_answers_with_results_in_their_ranges(card):
    """Each choice gives one or two sentences, results with low <= value <= high, pictures with words and tables with rows."""
    for state in states_of(card):
        worked = work_card(card, state)
        answer = answer_of(worked, "test").as_json()
        assert 1 <= len(worked.sentences()) <= 2 and answer["answer"].strip().endswith((".", "?"))
        assert answer["results"], state
        for name, result in answer["results"].items():
            if isinstance(result["value"], (int, float)):
                assert result["low"] <= result["value"] <= result["high"], (state, name, result)
            assert result["text"].strip()
        for picture in answer["pictures"]:
            assert len(picture["alt"]) > 15 and picture["svg"].startswith("<svg")
        for table in worked.tables():
            assert table.rows and all(len(row) == len(table.columns) for row in table.rows), (
                state,
                table.title,
            )
        json.dumps(answer)


@every_card
def test_every_working_step_evaluates_to_its_value(card):
    """What is written is read back by Python's own parser as the value; equations leave no residual, table values are read again,
    searches keep their constraints."""
    for state in states_of(card):
        _every_step_gives_its_value(work_card(card, state))


def _every_step_gives_its_value(worked):
    assert worked.steps, "a card shows its working"
    for step in worked.steps:
        leaf, found = step.leaf, step.leaf.value
        if step.kind == "formula":
            assert read_back(step.tree) == pytest.approx(found, rel=1e-6, abs=1e-9), step.label
        elif step.kind == "solved":
            assert leaf in leaves_of(step.tree), f"{step.label}: the equation does not speak of it"
            left = abs(value_of(step.tree))
            leaf.value = found * 1.01 + 1e-6
            scale = max(abs(value_of(step.tree)), 1e-12)
            leaf.value = found
            assert left <= 1e-3 * scale, f"{step.label}: residual"
        elif step.kind == "looked up":
            chapter, table, key_column, key, column = step.look
            assert read_table(chapter, table).row(key_column, key)[column] == found
        else:
            for kept in step.kept:
                left, right = value_of(kept.left), value_of(kept.right)
                slack = 1e-9 * max(abs(left), abs(right))
                assert left <= right + slack if kept.sign == "≤" else left >= right - slack, (
                    step.label
                )
    assert len(worked.working()) == len(worked.steps)
    shown = {step.part.name: step.leaf for step in worked.steps}
    for name, result in worked.outcome.found.items():
        if name in shown and isinstance(result.value, (int, float)):
            assert shown[name].unit.to_base(shown[name].value) == pytest.approx(
                result.value, rel=1e-9, abs=1e-9
            ), name


@every_card
def test_edges_answer_and_one_step_past_them_is_one_clear_line(card):
    """Each edge of each range can be given; just past it there is one line with the label, what was given and what is allowed."""
    for name, each in fields_of(card):
        if not each.measured:
            continue
        for end, past in zip(each.edges, (-1, 1)):
            for unit in each.choices:
                number = unit.from_base(end) if not (unit.inverse and end == 0) else None
                if number is None:
                    continue
                reading = read_one(each, name, f"{number:.12g}", POINT, "canonical", unit.sign)
                assert isinstance(reading, Reading), (name, end, unit.sign, reading)
            beyond = end + past * max(abs(end) * 0.01, 1.0 if each.kind == "count" else 1e-6)
            text = repr(int(round(beyond))) if each.kind == "count" else f"{beyond:.12f}"
            given_ = read_inputs(
                card, changed(card, name, text), POINT, {name: each.of.base.sign}, {}
            )
            lines = [problem for problem in given_.problems if problem.input == name]
            if name in given_.asked() or lines:
                assert len(lines) == 1, (name, text)
                line = lines[0].text
                assert (
                    each.label.lower()[1:] in line.lower()
                    and "given" in line
                    and "give " in line
                    and "\n" not in line
                )
                with pytest.raises(BadInputs):
                    work_card(card, changed(card, name, text), units={name: each.of.base.sign})


@every_card
def test_an_edge_given_alone_is_answered_with_its_working_or_says_why(card):
    """The least and the most of each input, all else as in the example: answer, working and numbers in bounds."""
    for name, each in fields_of(card):
        if each.measured:
            for edge in each.edges:
                unit = next(u for u in each.choices if not (u.inverse and edge == 0))
                text = f"{unit.from_base(edge):.12g} {unit.sign}"
                _answers_or_says_why(card, changed(card, name, text))


@every_card
def test_units_never_change_the_answer(card):
    """The same amount in every unit offered gives the same results."""
    for name, each in fields_of(card):
        if not each.measured or len(each.choices) < 2 or not card.defaults()[name]:
            continue
        reading = read_one(each, name, card.defaults()[name], POINT, "canonical")
        base = answers(
            card,
            changed(
                card,
                name,
                f"{reading.amount.unit.from_base(reading.amount.value):.12g}"
                f" {reading.amount.unit.sign}",
            ),
        )["results"]
        for unit in each.choices:
            number = unit.from_base(reading.amount.value)
            other = answers(card, changed(card, name, f"{number:.12g} {unit.sign}"))["results"]
            for result, found in other.items():
                if isinstance(found["value"], (int, float)):
                    assert found["value"] == pytest.approx(
                        base[result]["value"], rel=1e-6, abs=1e-6
                    ), (name, unit.sign, result)


@every_card
def test_links_come_back_the_same(card):
    """The example has a clean link; each state's link gives back the same inputs."""
    assert query_of(read_inputs(card, {}, POINT)) == ""
    for state in states_of(card)[1:]:
        before = read_inputs(card, state, POINT)
        query = query_of(before)
        texts, counts, notes = read_query(card, query)
        after = read_inputs(card, texts, POINT, exact=texts, counts=counts)
        assert not notes and {n: r.text for n, r in before.readings.items()} == {
            n: r.text for n, r in after.readings.items()
        }


@every_card
def test_every_source_is_named_in_full(card):
    assert card.sources
    for source in card.sources:
        assert source.title and source.how in ("read", "secondary", "memory", "practice")
        assert bool(source.read) == (source.how in ("read", "secondary")), (
            f"{source.id}: when was it read?"
        )


@every_card
def test_pictures_keep_their_labels_inside(card):
    """No label of a picture crosses its edge, by the drawing board's own wide measure of a character."""
    from fibercalc.core.picture import Drawing

    made = []
    original = Drawing.picture

    def remember(self, title, alt):
        made.append(self)
        return original(self, title, alt)

    Drawing.picture = remember
    try:
        for state in states_of(card):
            for settings_ in (POINT, Settings("comma", "us")):
                work_card(card, state, settings_).pictures()
    finally:
        Drawing.picture = original
    for drawing in made:
        for left, right, baseline, words in drawing.labels:
            assert left >= 0 and right <= drawing.width + 0.5 and 8 <= baseline <= drawing.height, (
                f"“{words}” leaves the sheet"
            )


class _Labels(HTMLParser):
    """Collects control ids, label targets and nesting."""

    VOID = {"input", "br", "hr", "meta", "link", "img"}

    def __init__(self):
        super().__init__()
        self.ids, self.labels, self.controls, self.open = [], set(), [], []

    def handle_starttag(self, tag, attrs):
        attrs = dict(attrs)
        if "id" in attrs:
            self.ids.append(attrs["id"])
        if tag == "label":
            self.labels.add(attrs["for"])
        if tag in ("input", "select", "textarea"):
            self.controls.append(attrs)
        if tag not in self.VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag


@every_card
def test_the_page_is_well_formed_and_every_control_has_a_name(card):
    page = _Labels()
    page.feed(card_fence(card.id))
    assert page.open == []
    without_template = [each for each in page.ids if "{n}" not in each]
    assert len(set(without_template)) == len(without_template)
    for control in page.controls:
        assert control.get("id") in page.labels or control.get("aria-label"), control


@every_card
def test_the_sheet_holds_answer_values_cautions_and_sources(card):
    worked = work_card(card, {})
    html = sheet(worked, "https://example.org/x")
    assert card.question in html and "example.org" in html
    for caution in worked.cautions():
        assert caution.title in html
    for source in card.sources:
        assert inner(cited(source)) in html, source.id


@every_card
def test_the_declaration_is_plain_data(card):
    data = json.loads(json.dumps(declaration(card)))
    assert data["question"].endswith("?") and len(data["inputs"]) == len(card.inputs)


@every_card
def test_my_bench_has_what_the_card_asks_it_for(card):
    """Every place in My bench that an input names is there, can be offered, and measures the same quantity."""
    mine = {
        "alkalinity": "40 mg/L",
        "tap": "9 °C",
        "altitude": "900 m",
        "reels.1.name": "Oak reel",
        "reels.1.circumference": "1.5 m",
        "pots.1.name": "Pan",
        "pots.1.fill": "9 L",
        "bases.1.name": "Cobb",
        "bases.1.mass": "100 g",
        "bases.1.length": "170 m",
    }
    given = read_inputs(bench.BENCH, mine, POINT)
    assert not given.problems
    record = bench.record_of(given)
    offered = {name for offer in bench.offers(card, record) for name in offer["values"]}
    for item in card.inputs:
        if isinstance(item, Input) and item.bench:
            listed = list_of(item.bench)
            own = bench.BENCH.item(listed).fields if listed else bench.BENCH.inputs
            found = next(each for each in own if each.name == item.bench.name)
            assert found.of is item.of, path_of(item.bench)
            assert item.name in offered


@every_card
def test_form_values_read_back_the_same(card):
    """What the form shows after opening a state is read as that state again, in both number styles."""
    for style in ("point", "comma"):
        styled = Settings(style)
        for state in states_of(card):
            before = read_inputs(card, state, POINT)
            shown = values_of(before, styled)
            units = {
                name.removesuffix(".unit"): value
                for name, value in shown.items()
                if name.endswith(".unit")
            }
            texts = {name: value for name, value in shown.items() if not name.endswith(".unit")}
            after = read_inputs(card, texts, styled, units)
            strict = {n for n, r in before.readings.items() if r.input.strict}
            assert [p for p in after.problems if p.input not in strict] == []
            for name, reading in after.readings.items():
                if reading.amount is not None:
                    assert reading.amount.value == pytest.approx(
                        before.readings[name].amount.value, rel=1e-5
                    )


def typed_text(each: Input):
    """A strategy for what people type into one field: amounts in range, in any unit; and otherwise what the kind takes."""
    if each.measured:
        low, high = each.edges
        if each.kind == "count":
            return st.integers(int(low), int(high)).map(str)
        units = st.sampled_from(
            [unit for unit in each.choices if not (unit.inverse and low == 0)] or [each.of.base]
        )
        return st.tuples(st.floats(low, high, allow_nan=False), units).map(
            lambda pair: f"{pair[1].from_base(pair[0]):.9f} {pair[1].sign}"
        )
    if each.kind == CHOICE:
        return st.sampled_from([option.value for option in each.options])
    return st.just(each.default)


@every_card
@settings(max_examples=25, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck))
@given(data=st.data())
def test_any_inputs_in_range_give_a_finite_answer_or_one_clear_line(card, data):
    texts = {name: data.draw(typed_text(each), label=name) for name, each in fields_of(card)}
    _answers_or_says_why(card, texts)


@pytest.mark.sweep
@every_card
@settings(
    max_examples=400, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck)
)
@given(data=st.data())
def test_any_inputs_in_range_give_a_finite_answer_widely(card, data):
    texts = {name: data.draw(typed_text(each), label=name) for name, each in fields_of(card)}
    _answers_or_says_why(card, texts)


@every_card
@settings(max_examples=25, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck))
@given(data=st.data(), text=st.text(max_size=80))
def test_random_text_in_any_field_never_raises(card, data, text):
    name, each = data.draw(st.sampled_from(fields_of(card)))
    _answers_or_says_why(card, changed(card, name, text))


def _answers_or_says_why(card, texts):
    try:
        worked = work_card(card, texts)
    except BadInputs as error:
        assert error.problems and all(
            problem.text.endswith((".", "?")) and "\n" not in problem.text
            for problem in error.problems
        ), error.problems
        return
    answer = answer_of(worked, "test").as_json()
    for result in answer["results"].values():
        if isinstance(result["value"], (int, float)):
            assert result["low"] <= result["value"] <= result["high"]
            assert abs(result["value"]) < 1e15
    json.dumps(answer, allow_nan=False)


KINDS = {DATE, TEXT, COLOR, CHOICE}


def test_the_fixture_card_has_every_kind_of_input():
    kinds = {each.kind for _, each in fields_of(CARDS[-1])} | {
        type(item).__name__.lower() for item in CARDS[-1].inputs
    }
    assert kinds >= KINDS | {"quantity", "count", "percent", "money", "rows"}
    assert any(each.optional for _, each in fields_of(CARDS[-1])) and any(
        each.when for _, each in fields_of(CARDS[-1])
    )


def test_the_fixture_card_has_every_part_of_a_case():
    case = CARDS[-1].case
    assert {type(part) for part in case.parts_by_name.values()} == {
        Input,
        Rows,
        Between,
        Plain,
        Many,
        Result,
    }
    assert any(rows.row.found for rows in case.inputs if isinstance(rows, Rows))
    assert any(part.fixed for part in case.results) and any(part.unit for part in case.results)
    worked = work_card(CARDS[-1], {})
    assert {step.kind for step in worked.steps} == {"formula", "looked up", "solved", "searched"}
