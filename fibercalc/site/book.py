"""The book's order: which pages stand in the navigation, by chapter, cards first."""

import re
from pathlib import Path
from typing import TypeAlias

from ..core.card import CHAPTERS, Card
from ..core.registry import chapter_cards

# A page, or a title with its page or with the entries below it.
Entry: TypeAlias = "str | dict[str, str] | dict[str, list[Entry]]"

FRONT_MATTER = re.compile(r"\A---\n(.*?)\n---\n", re.DOTALL)


class Unplaced(ValueError):
    """A page or a card has no place in the book; the build stops."""


def front_matter(path: Path) -> dict[str, str]:
    """The `key: value` lines at the head of a page."""
    match = FRONT_MATTER.match(path.read_text("utf-8"))
    lines = match[1].splitlines() if match else []
    return {
        key.strip(): value.strip().strip('"')
        for key, _, value in (line.partition(":") for line in lines)
    }


def navigation(pages: Path) -> list[Entry]:
    """MkDocs' nav: the front page, each chapter that has cards (overview, cards, reference
    pages), then the general pages and the folders of such.

    Raises Unplaced when a card has no page or a page in a chapter's folder is neither a card's
    nor a reference page.
    """
    nav: list[Entry] = [{"Contents": "index.md"}]
    for chapter in CHAPTERS:
        cards = chapter_cards(chapter)
        if cards:
            nav.append({chapter.capitalize(): _chapter(pages, chapter, cards)})
    general = [path for path in pages.glob("*.md") if path.name != "index.md"]
    folders = [path for path in pages.glob("*/index.md") if path.parent.name not in CHAPTERS]
    nav += [_general(pages, path) for path in sorted([*general, *folders], key=_place)]
    return nav


def _general(pages: Path, path: Path) -> Entry:
    """A page that is of no chapter, or a folder of such, by its opening page."""
    title, place = front_matter(path)["title"], path.relative_to(pages).as_posix()
    if path.name != "index.md":
        return {title: place}
    rest = sorted((each for each in path.parent.glob("*.md") if each != path), key=_place)
    return {title: [place, *(_general(pages, each) for each in rest)]}


def _chapter(pages: Path, chapter: str, cards: list[Card]) -> list[Entry]:
    folder = pages / chapter
    entries: list[Entry] = [f"{chapter}/index.md"]
    for card in cards:
        if not (folder / f"{card.id}.md").is_file():
            raise Unplaced(f"card {card.id} has no page; write docs/pages/{chapter}/{card.id}.md")
        entries.append(
            {
                front_matter(folder / f"{card.id}.md").get(
                    "title", card.question
                ): f"{chapter}/{card.id}.md"
            }
        )
    used = {f"{card.id}.md" for card in cards} | {"index.md"}
    rest = [path for path in folder.glob("*.md") if path.name not in used]
    for path in sorted(rest, key=_place):
        if front_matter(path).get("kind") != "reference":
            raise Unplaced(
                f"{chapter}/{path.name} belongs to no card; give it `kind: reference`, or its card"
            )
        entries.append({front_matter(path)["title"]: f"{chapter}/{path.name}"})
    return entries


def _place(path: Path) -> tuple[int, str]:
    return int(front_matter(path).get("place", 999)), path.name
