"""The command line: words in, text or JSON out. Exit 0 with an answer, 2 with one clear line for
each bad input.
"""

import argparse
import json
import sys
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from typing import Any, NoReturn

from . import cards, show, work
from .completion import COMMANDS, SETTINGS, SHELLS, STYLES, SYSTEMS, script
from .core.nesting import deeper_than
from .core.problem import BadInputs
from .core.registry import UnknownCard, UnknownChapter, chapters
from .meant import card_ids, line_of, with_guess
from .version import __version__

DEEPEST = 30  # of a file with inputs; deeper is no list of rows


def main(arguments: list[str] | None = None) -> int:
    """Run one command and return its exit code."""
    options = _options(arguments)
    try:
        code: int = options.run(options)
        return code
    except BadInputs as error:
        _complain(*(line_of(problem, options.card) for problem in error.problems))
    except UnknownCard as error:
        line = f"{error.args[0]}: no card has this id; `fibercalc cards` lists them."
        _complain(with_guess(line, error.args[0], card_ids()))
    except UnknownChapter as error:
        line = f"{error.args[0]}: no chapter has this name; there are {', '.join(chapters())}."
        _complain(with_guess(line, error.args[0], chapters()))
    except BrokenPipeError:
        return 0
    return 2


def _options(arguments: list[str] | None) -> argparse.Namespace:
    """The parsed words. Values may stand after an option too, which argparse leaves over for a
    list of them.
    """
    parser = _parser()
    words = sys.argv[1:] if arguments is None else arguments
    if words and not words[0].startswith("-") and words[0] not in COMMANDS:
        line = f"{words[0]}: no such command; there are {', '.join(COMMANDS)}."
        parser.error(with_guess(line, words[0], list(COMMANDS)))
    options, over = parser.parse_known_args(words)
    if over and (not hasattr(options, "values") or any(word.startswith("-") for word in over)):
        parser.error(f"not understood: {' '.join(over)}")
    if over:
        options.values = options.values + over
    return options


class _Parser(argparse.ArgumentParser):
    """One line for what is not understood, as for a bad input."""

    def error(self, message: str) -> NoReturn:
        self.exit(2, f"{self.prog}: {message}\n")


def _one_of(*words: str) -> Callable[[str], str]:
    """A reader of one of these words, whose line says what may be meant."""

    def read(given: str) -> str:
        if given not in words:
            line = f"{given} given; give one of: {', '.join(words)}."
            raise argparse.ArgumentTypeError(with_guess(line, given, list(words)))
        return given

    return read


def _parser() -> argparse.ArgumentParser:
    parser = _Parser(
        prog="fibercalc", description="Calculators for a small-batch hand dyer and fiber maker."
    )
    parser.add_argument("--version", action="version", version=__version__)
    commands = parser.add_subparsers(required=True, metavar="COMMAND")
    listing = commands.add_parser("cards", help=COMMANDS["cards"])
    listing.add_argument("chapter", nargs="?", help="one chapter: " + ", ".join(chapters()))
    listing.set_defaults(run=_cards)
    showing = commands.add_parser("show", help=COMMANDS["show"])
    showing.add_argument("card")
    showing.set_defaults(run=_show)
    working = commands.add_parser(
        "work",
        help=COMMANDS["work"],
        epilog=(
            "A value may carry a unit and a spread: length='412 yd +/- 8'. Rows: dyes.1.depth=0.62"
        ),
    )
    working.add_argument("card")
    working.add_argument("values", nargs="*", default=[], metavar="input=value")
    _add_settings(working)
    working.set_defaults(run=_work)
    for command in (listing, showing, working):
        command.add_argument("--json", action="store_true", help="the same as data")
    completing = commands.add_parser("completion", help=COMMANDS["completion"])
    completing.add_argument("shell", type=_one_of(*SHELLS), help="one of " + ", ".join(SHELLS))
    completing.set_defaults(run=_completion)
    return parser


def _add_settings(working: argparse.ArgumentParser) -> None:
    styles, systems = "{" + ",".join(STYLES) + "}", "{" + ",".join(SYSTEMS) + "}"
    settings: dict[str, dict[str, Any]] = {
        "file": {},
        "style": {"type": _one_of(*STYLES), "default": STYLES[0], "metavar": styles},
        "system": {"type": _one_of(*SYSTEMS), "default": SYSTEMS[0], "metavar": systems},
        "money": {"default": "€"},
    }
    for name, more in settings.items():
        working.add_argument(f"--{name}", help=SETTINGS[name], **more)


def _complain(*lines: str) -> None:
    for line in lines:
        sys.stderr.write(line + "\n")


def _put(text: str) -> None:
    sys.stdout.write(text + "\n")


def _json(data: Any) -> int:
    _put(json.dumps(data, ensure_ascii=False, indent=1))
    return 0


def _cards(options: argparse.Namespace) -> int:
    found = cards(options.chapter)
    if options.json:
        return _json(found)
    for card in found:
        _put(f"{card['id']:<16} {card['chapter']:<6} {card['question']}")
    return 0


def _completion(options: argparse.Namespace) -> int:
    _put(script(options.shell).rstrip())
    return 0


def _show(options: argparse.Namespace) -> int:
    data = show(options.card)
    if options.json:
        return _json(data)
    _put(data["question"])
    for item in data["inputs"]:
        if item["kind"] == "rows":
            _put(
                f"  {item['name']}.1, .2 ...  {item['label']} ({item['least']} to {item['most']}"
                " rows)"
            )
            for each in item["fields"]:
                _put(f"    .{each['name']}{_about(each)}")
        else:
            _put(f"  {item['name']}{_about(item)}")
    _put("What follows: " + ", ".join(result["label"].lower() for result in data["results"]) + ".")
    _put(f"{data['basis']['kind']}: {data['basis']['text']}")
    for caution in data["cautions"]:
        _put(f"Caution: {caution}")
    return 0


def _about(item: dict[str, Any]) -> str:
    parts = [item["label"]]
    if "options" in item:
        parts.append("one of " + ", ".join(option["value"] for option in item["options"]))
    if "allowed" in item:
        parts.append(" to ".join(item["allowed"]))
    if item["default"]:
        parts.append(f"example {item['default']}")
    return "  " + "; ".join(parts)


def _inputs(options: argparse.Namespace) -> dict[str, Any]:
    inputs: dict[str, Any] = {}
    if options.file:
        held: Any = None
        with suppress(OSError, ValueError):
            data = (
                sys.stdin.buffer.read() if options.file == "-" else Path(options.file).read_bytes()
            )
            text = data.decode("utf-8")
            held = None if deeper_than(text, DEEPEST) else json.loads(text)
        if not isinstance(held, dict):
            raise _Unusable(
                f"--file: {options.file} given; give a JSON file that holds inputs by name."
            )
        inputs = held
    for pair in options.values:
        name, sign, value = pair.partition("=")
        if not sign:
            raise _Unusable(f"{pair}: no value given; give input=value.")
        inputs[name.strip()] = value
    return inputs


class _Unusable(ValueError):
    """The command's own words cannot be used."""


def _work(options: argparse.Namespace) -> int:
    try:
        inputs = _inputs(options)
    except _Unusable as error:
        _complain(str(error))
        return 2
    answer = work(
        options.card, inputs, style=options.style, system=options.system, money=options.money
    )
    if options.json:
        return _json(answer)
    _put(answer["answer"])
    _put("")
    for name, item in answer["inputs"].items():
        _put(f"  {name} = {item['understood']}")
    _put("")
    for result in answer["results"].values():
        _put(f"  {result['label']}: {result['text']}")
    for table in answer["tables"]:
        _table(table)
    _put("\nWorking")
    for step in answer["working"]:
        _put(f"  {step['label']}: {step['formula']} = {step['filled']} = {step['text']}")
    _put(f"\n{answer['basis']['kind']}: {answer['basis']['text']}")
    _put("Sources: " + ", ".join(answer["sources"]))
    for note in answer["notes"]:
        _put(f"Note: {note}")
    for caution in answer["cautions"]:
        _put(f"Caution: {caution}")
    return 0


def _table(table: dict[str, Any]) -> None:
    rows = [table["columns"], *table["rows"]]
    widths = [max(len(str(row[at])) for row in rows) for at in range(len(table["columns"]))]
    _put(f"\n{table['title']}")
    for row in rows:
        _put("  " + "  ".join(str(cell).ljust(width) for cell, width in zip(row, widths)).rstrip())
