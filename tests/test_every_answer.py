"""What cards answer is reviewed text: a change of any word or number shows in `shared/answers`, and nowhere else is it accepted."""

import pytest

from tests.answers import FOLDER, file_of, written
from tests.cards import BOOK, card_id


@pytest.mark.parametrize("card", BOOK, ids=card_id)
def test_every_answer_reads_as_it_was_accepted(card):
    """`make answers` accepts what has changed, once it has been read."""
    assert written(card) == file_of(card).read_text(encoding="utf-8")


def test_no_answers_are_kept_of_a_card_that_is_gone():
    assert {path.relative_to(FOLDER) for path in FOLDER.rglob("*.md")} == {
        file_of(card).relative_to(FOLDER) for card in BOOK
    }
