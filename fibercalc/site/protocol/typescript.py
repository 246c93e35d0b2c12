"""Writes the protocol as TypeScript declarations: `python -m fibercalc.site.protocol.typescript`.
The build does so too.
"""

import sys
import textwrap
from collections.abc import Iterator
from pathlib import Path
from types import NoneType, UnionType
from typing import (
    Annotated,
    Any,
    Literal,
    NotRequired,
    Union,
    get_args,
    get_origin,
    get_type_hints,
    is_typeddict,
)

from . import answers, data, questions

WIDTH = 100
PLAIN: dict[object, str] = {
    str: "string",
    int: "number",
    float: "number",
    bool: "boolean",
    NoneType: "null",
    object: "unknown",
    data.Texts: "Texts",
}
HEAD = """\
// What crosses between the page and Python, as types only: JSON text in, JSON text out.
// Written from fibercalc/site/protocol/ by the build; what is changed here is lost.

export type Texts = Record<string, string>;
"""


def written() -> str:
    """The whole file. The tables of questions and of answers come last."""
    shapes = [
        shape
        for module in (data, answers, questions)
        for shape in vars(module).values()
        if is_typeddict(shape) and shape.__module__ == module.__name__
    ]
    return HEAD + "".join(f"\n{_interface(shape)}" for shape in shapes)


def _interface(shape: Any) -> str:
    lines = list(_comment(shape.__doc__, ""))
    lines.append(f"export interface {shape.__name__} {{")
    for name, hint in get_type_hints(shape, include_extras=True).items():
        about, inner = _unwrapped(hint)
        lines += _comment(about, "  ")
        key = name if name.isidentifier() else f'"{name}"'
        lines.append(f"  {key}{'?' * (name in shape.__optional_keys__)}: {_type(inner)};")
    return "\n".join([*lines, "}", ""])


def _unwrapped(hint: Any) -> tuple[str, Any]:
    """What is said about a part, and its type."""
    about = ""
    while get_origin(hint) in (Annotated, NotRequired):
        if get_origin(hint) is Annotated:
            about = hint.__metadata__[0]
        hint = get_args(hint)[0]
    return about, hint


def _type(hint: Any) -> str:
    if hint in PLAIN:
        return PLAIN[hint]
    if is_typeddict(hint):
        return str(hint.__name__)
    parts = get_args(hint)
    match get_origin(hint):
        case origin if origin is list:
            inner = _type(parts[0])
            return f"({inner})[]" if " | " in inner else f"{inner}[]"
        case origin if origin is tuple:
            return f"[{', '.join(map(_type, parts))}]"
        case origin if origin is dict:
            return f"Record<{_type(parts[0])}, {_type(parts[1])}>"
        case origin if origin is Literal:
            return " | ".join(_word(each) for each in parts)
        case origin if origin in (Union, UnionType):
            return " | ".join(map(_type, parts))
    raise TypeError(f"{hint} has no word in TypeScript yet")


def _word(value: object) -> str:
    if isinstance(value, bool):
        return str(value).lower()
    return f'"{value}"'


def _comment(text: str | None, indent: str) -> Iterator[str]:
    words = " ".join((text or "").split())
    if not words:
        return
    if len(indent) + len(words) + 7 <= WIDTH:
        yield f"{indent}/** {words} */"
    else:
        yield f"{indent}/**"
        yield from textwrap.wrap(
            words, WIDTH, initial_indent=f"{indent} * ", subsequent_indent=f"{indent} * "
        )
        yield f"{indent} */"


def write(path: Path) -> None:
    """Write the file where it differs: one that is touched would make a build begin anew."""
    text = written()
    if not path.exists() or path.read_text("utf-8") != text:
        path.write_text(text, "utf-8")


if __name__ == "__main__":
    write(Path(__file__).resolve().parents[3] / "site_js" / "python" / "protocol.d.ts")
    sys.exit()
