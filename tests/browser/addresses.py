"""The book's pages by kind, from the same navigation that the build makes; test_pages holds that the sitemap has the same."""

from functools import cache
from pathlib import Path
from zlib import crc32

import pytest

from fibercalc.core.registry import all_cards
from fibercalc.site.book import front_matter, navigation

PAGES_FOLDER = Path(__file__).resolve().parents[2] / "docs" / "pages"


def _leaves(entry) -> list[str]:
    if isinstance(entry, str):
        return [entry]
    return [
        leaf
        for each in (entry.values() if isinstance(entry, dict) else entry)
        for leaf in _leaves(each)
    ]


def address_of(file: str) -> str:
    """Where a page of docs/pages stands, from the site's root: yarn/wraps.md is at yarn/wraps/."""
    path = file.removesuffix(".md").removesuffix("index")
    return path if not path or path.endswith("/") else path + "/"


@cache
def all_pages() -> tuple[str, ...]:
    """Every page."""
    return tuple(address_of(leaf) for leaf in _leaves(navigation(PAGES_FOLDER)))


@cache
def card_pages() -> dict[str, str]:
    """Card id -> its page."""
    return {card.id: f"{card.chapter}/{card.id}/" for card in all_cards()}


@cache
def reference_pages() -> tuple[str, ...]:
    """Pages of tables and wall charts."""
    return tuple(
        address_of(leaf)
        for leaf in _leaves(navigation(PAGES_FOLDER))
        if front_matter(PAGES_FOLDER / leaf).get("kind") == "reference"
    )


def kinds_of_pages() -> tuple[str, ...]:
    """One page of each kind: front, chapter, card, reference, My bench."""
    card = card_pages()["skein-length"]
    return "", card.split("/")[0] + "/", card, reference_pages()[0], "bench/"


def page_id(address: str) -> str:
    """The name of a page in a test's id."""
    return address.strip("/") or "front"


def falls(name: str, among: int) -> int:
    """Which of so many lots a case falls into: by its name, so that a new one moves no other."""
    return crc32(name.encode()) % among


def some_each_day(cases, ids=None, of: int = 2) -> list:
    """One of so many cases for each day, all others for the wide run: between them all of them, in the time there is."""
    names = ids or [case if isinstance(case, str) else str(case) for case in cases]
    return [
        pytest.param(
            *(case if isinstance(case, tuple) else (case,)),
            id=name if ids else None,
            marks=pytest.mark.sweep if falls(name, of) else (),
        )
        for case, name in zip(cases, names)
    ]
