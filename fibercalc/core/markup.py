"""Elements of SVG and HTML as text, escaped in this one place.

Nothing else in the package writes angle brackets, so whatever a person, a link or a file brings in stays text.
"""

import re
from collections.abc import Callable
from functools import cache

# As html.escape does, without loading its table of all named entities.
ESCAPES = str.maketrans({"&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#x27;"})
TEXT_ESCAPES = {key: value for key, value in ESCAPES.items() if chr(key) not in "\"'"}
SPECIAL = re.compile("[&<>\"']").search  # most texts hold none, and to see that is faster than to translate
TEXTS = re.compile(r'(>|\baria-label=")([^<>"]+)(<|")')
PLAIN = tuple((chr(key), escape) for key, escape in reversed(ESCAPES.items()))  # the ampersand last
VOID = {"input", "br", "hr", "meta", "link", "img"}


class Markup(str):
    """Text that is already escaped."""

    __slots__ = ()


def tag(name: str, /, *children, **attributes) -> Markup:
    """An element. Children: text (escaped), Markup, lists of them, None. Attributes: class_ is class, data_x is data-x, True stands
    alone, None and False are left out."""
    head = f"<{name}"
    for key, value in attributes.items():
        if value is None or value is False:
            continue
        if value is True:
            head += f" {_attribute(key)}"
        else:
            value = str(value)
            head += f' {_attribute(key)}="{value.translate(ESCAPES) if SPECIAL(value) else value}"'
    if name in VOID:
        return Markup(head + ">")
    text = [head, ">"]
    _add(text, children)
    text.append(f"</{name}>")
    return Markup("".join(text))


def inner(*children) -> Markup:
    """Children joined, without an element around them."""
    text: list[str] = []
    _add(text, children)
    return Markup("".join(text))


def _add(text: list[str], children) -> None:
    for child in children:
        if child is None or child is False:
            continue
        if isinstance(child, Markup):
            text.append(child)
        elif isinstance(child, str):
            text.append(child.translate(TEXT_ESCAPES) if SPECIAL(child) else child)
        else:
            _add(text, child)


def document(*children) -> Markup:
    """A whole page in English: its head and its body."""
    return Markup("<!doctype html>\n" + tag("html", *children, lang="en") + "\n")


@cache
def _attribute(key: str) -> str:
    return key.rstrip("_").replace("_", "-")


def in_texts(html: Markup, change: Callable[[str], str]) -> Markup:
    """Finished HTML with each of its texts, and the words that stand for its pictures, changed."""
    return Markup(TEXTS.sub(lambda found: found[1] + change(_plain(found[2])).translate(ESCAPES) + found[3], html))


def _plain(text: str) -> str:
    for letter, escape in PLAIN:
        text = text.replace(escape, letter)
    return text
