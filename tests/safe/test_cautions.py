"""What can hurt someone is cautioned wherever the card is shown, and a safe answer shows whose limit it is set beside."""

import re

import pytest

from fibercalc.cli import main
from fibercalc.core.card import HANDLED, Caution, Rows
from fibercalc.core.registry import find_card
from fibercalc.core.work import answer_of, work_card
from fibercalc.site.fence import card as card_fence
from fibercalc.site.sheet import sheet
from tests.cards import BOOK, card_id
from tests.test_every_card import states_of

SAFE = [card for card in BOOK if card.chapter == "safe"]
HANDLING = [card for card in BOOK if card.chapter == "safe" or card.handles]
# Words that give away work with powder, acid, alkali, heat, metal salts or heavy loads, whatever the card declares.
TELLING = re.compile(
    r"\b(powder|acid|vinegar|citric|soda|ammonia|mordant|boil\w*|simmer\w*|burner|kettle|steam\w*|hot|scald\w*|lift|dye"
    r" stock|grams of dye)\b",
    re.IGNORECASE,
)

every_safe_card = pytest.mark.parametrize("card", SAFE, ids=card_id)
every_handling_card = pytest.mark.parametrize("card", HANDLING, ids=card_id)


def words_of(card) -> str:
    """What a card asks and answers, without its cautions."""
    said = [card.question]
    for item in card.inputs:
        said += [item.label, item.measure] + (
            [part for each in item.fields for part in (each.label, each.measure)]
            if isinstance(item, Rows)
            else []
        )
    return " ".join(said + [result.label for result in card.results])


def plain(text) -> str:
    return (
        re.sub(r"\s+", " ", re.sub(r"<[^>]+>", "", str(text)))
        .replace("&#x27;", "'")
        .replace("&amp;", "&")
    )


def test_there_are_seven_safe_cards():
    assert {card.id for card in SAFE} >= {
        "acid-dilution",
        "room-air",
        "hazard-label",
        "scald",
        "drain-check",
        "mordant-limit",
        "lift",
    }


@pytest.mark.parametrize("card", BOOK, ids=card_id)
def test_a_card_that_speaks_of_such_work_declares_it(card):
    """A card of any chapter; knitting's steam blocking and the like are told apart by hand in the words above."""
    if card.chapter in ("dye", "safe") and TELLING.search(words_of(card)):
        assert card.handles, (
            f"{card.id} speaks of {TELLING.search(words_of(card))[0]}: say in `handles` what its"
            " work can hurt someone with"
        )


@every_handling_card
def test_its_caution_is_always_in_page_sheet_and_command(card, capsys):
    """In every state: at least one, and each one wherever the answer is."""
    assert card.handles and set(card.handles) <= set(HANDLED)
    always = [caution for caution in card.cautions if caution.when is None]
    assert always
    page = plain(card_fence(card.id))
    for state in states_of(card):
        worked = work_card(card, state)
        printed, told = (
            plain(sheet(worked, "https://example.org/x")),
            answer_of(worked, "test").cautions,
        )
        for caution in always:
            assert caution.title in page and caution.text in page
            assert caution.title in printed and caution.text in printed
            assert any(caution.title in line and caution.text in line for line in told)
    assert main(["work", card.id]) == 0
    spoken = re.sub(r"\s+", " ", capsys.readouterr().out)
    assert all(caution.title in spoken and caution.text in spoken for caution in always)


def test_a_card_that_handles_something_and_has_no_standing_caution_cannot_be_declared():
    """One that is shown only sometimes is not enough; an unknown kind is refused."""
    from dataclasses import replace

    card = SAFE[0]
    for cautions in ((), (Caution("Now and then.", "Only sometimes.", lambda r: True),)):
        with pytest.raises(ValueError, match="no caution that is always shown"):
            replace(card, cautions=cautions)
    with pytest.raises(ValueError, match="handles is of"):
        replace(card, handles=("magic",))


def cautioned(card, **texts) -> str:
    return " ".join(answer_of(work_card(find_card(card), texts), "test").cautions)


def test_a_flame_in_a_room_is_cautioned():
    """Gas heat indoors: carbon monoxide, in the cards that plan heat."""
    assert "carbon monoxide" in cautioned(
        "bath-heat", heater="gas"
    ) and "carbon monoxide" not in cautioned("bath-heat", heater="ring")
    assert "carbon monoxide" in cautioned("pots")


def test_two_plates_on_one_circuit_are_cautioned():
    """16 A at 230 V are 3.7 kW, 15 A at 120 V are 1.8 kW."""
    assert "3.7 kW at 230 V and 16 A, 1.8 kW at 120 V and 15 A" in cautioned(
        "bath-heat"
    ) and "one circuit" in cautioned("pots", burners="2")
    assert round(230 * 16 / 1000, 1) == 3.7 and 120 * 15 / 1000 == 1.8
    assert "one circuit" not in cautioned("pots", burners="1") and "one circuit" not in cautioned(
        "bath-heat", heater="gas"
    )


@pytest.mark.parametrize(
    "card, alkali, none",
    [
        ("dye-recipe", {"acid": "soda-ash", "fiber": "cotton"}, {}),
        ("bath-acid", {"chemical": "soda-ash"}, {}),
        ("bath-acid", {"do": "swap", "other": "soda-ash", "chemical": "ammonia"}, {"do": "target"}),
        ("bath-heat", {"pot": "aluminum"}, {}),
    ],
)
def test_soda_in_aluminum_is_cautioned(card, alkali, none):
    assert "No soda in aluminum." in cautioned(card, **alkali) and "aluminum" not in cautioned(
        card, **none
    )


@every_safe_card
def test_every_answer_shows_a_limit_with_its_body_and_date_and_a_source(card):
    bodies = {
        source.body or source.title.partition(",")[0].partition(" (")[0] for source in card.sources
    }
    assert any(source.how != "practice" for source in card.sources)
    for state in states_of(card):
        worked = work_card(card, state)
        limit = worked.outcome.value("limit")
        assert any(body in limit for body in bodies), (state, limit)
        assert re.search(r"read \d{4}-\d\d|from memory, unverified", limit), (state, limit)
        assert plain(limit) in plain(sheet(worked, "https://example.org/x"))


@every_safe_card
def test_no_outcome_is_called_safe_or_promised(card):
    for state in states_of(card):
        answer = answer_of(work_card(card, state), "test")
        said = " ".join(
            [
                answer.answer,
                *answer.notes,
                *answer.cautions,
                *(result["text"] for result in answer.results.values()),
            ]
        )
        for source in card.sources:  # a body's name is no promise
            said = said.replace(source.body, "") if source.body else said
        assert not re.search(
            r"\b(safe|safely|safety|harmless|guarantee\w*|no danger|no risk)\b", said, re.IGNORECASE
        ), said


@every_safe_card
@pytest.mark.parametrize("word", ["0", "-5", "1e9", "nonsense", "15.0001", "400 %"])
def test_absurd_texts_give_one_clear_line_or_an_answer(card, word):
    """Each field on its own: never a crash, and one line where it cannot be used."""
    from fibercalc.core.problem import BadInputs
    from tests.test_every_card import changed, fields_of

    for name, _ in fields_of(card):
        try:
            work_card(card, changed(card, name, word))
        except BadInputs as error:
            assert all(
                "\n" not in problem.text and problem.text[-1] in ".?" for problem in error.problems
            )
            assert len(error.problems) <= 2
