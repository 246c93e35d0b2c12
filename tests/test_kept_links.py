"""Links that are out in the world keep their meaning: for every card, what its link version stands for is frozen here.

shared/links.toml holds for each card and version a fingerprint of what a link leaves out (order, kinds and examples of the
inputs) and one link with what it must open as. When a card's inputs or examples change, raise its `link_version`, write the upgrade,
and add a block; never edit an old one.
"""

import hashlib
import tomllib

import pytest

from fibercalc.core.card import Rows
from fibercalc.core.checks import shared_folder
from fibercalc.core.link import read_query
from fibercalc.core.reading import read_inputs
from fibercalc.core.settings import Settings
from tests.cards import BOOK, card_id

KEPT = tomllib.loads((shared_folder() / "links.toml").read_text("utf-8"))["link"]


def fingerprint(card) -> str:
    """What a link of this version leaves unsaid."""
    said = []
    for item in card.inputs:
        if isinstance(item, Rows):
            said.append(
                (
                    item.name,
                    [(each.name, each.kind, each.default) for each in item.fields],
                    [sorted(row.items()) for row in item.default],
                )
            )
        else:
            said.append(
                (item.name, item.kind, item.default, [option.value for option in item.options])
            )
    return hashlib.sha256(repr(said).encode()).hexdigest()[:12]


@pytest.mark.parametrize("card", BOOK, ids=card_id)
def test_the_newest_link_version_stands_for_these_inputs_and_examples(card):
    block = next(
        (row for row in KEPT if row["card"] == card.id and row["version"] == card.link_version),
        None,
    )
    assert block, (
        f'add to links.toml: card = "{card.id}", version = {card.link_version}, fingerprint ='
        f' "{fingerprint(card)}"'
    )
    assert block["fingerprint"] == fingerprint(card), (
        f"{card.id}: an input or example changed; raise link_version and write the upgrade (now"
        f" {fingerprint(card)})"
    )


@pytest.mark.parametrize("row", KEPT, ids=[f"{row['card']}-{row['version']}" for row in KEPT])
def test_a_kept_link_still_opens_as_it_did(row):
    card = next(card for card in BOOK if card.id == row["card"])
    assert f"v={row['version']}&" in row["query"]
    texts, counts, notes = read_query(card, row["query"])
    given = read_inputs(card, texts, Settings(), exact=texts, counts=counts)
    assert not notes and not given.problems
    assert {name: given.readings[name].text for name in row["opens"]} == row["opens"]
