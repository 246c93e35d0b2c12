"""The command line: words in, text or JSON out. Exit 0 with an answer, 2 with one clear line for each bad input."""

import argparse
import json
import sys
from pathlib import Path

from . import __version__, cards, show, work
from .core.nesting import deeper_than
from .core.problem import BadInputs
from .core.registry import UnknownCard


DEEPEST = 30  # of a file with inputs; deeper is no list of rows


def main(arguments: list[str] | None = None) -> int:
    """Run one command and return its exit code."""
    options = _options(arguments)
    try:
        return options.run(options)
    except BadInputs as error:
        _complain(*(problem.text for problem in error.problems))
    except UnknownCard as error:
        _complain(f"{error.args[0]}: no card has this id; `fibercalc cards` lists them.")
    except BrokenPipeError:
        return 0
    return 2


def _options(arguments: list[str] | None) -> argparse.Namespace:
    """The parsed words. Values may stand after an option too, which argparse leaves over for a list of them."""
    parser = _parser()
    options, over = parser.parse_known_args(arguments)
    if over and (not hasattr(options, "values") or any(word.startswith("-") for word in over)):
        parser.error(f"not understood: {' '.join(over)}")
    if over:
        options.values = options.values + over
    return options


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="fibercalc", description="Calculators for a small-batch hand dyer and fiber maker.")
    parser.add_argument("--version", action="version", version=__version__)
    commands = parser.add_subparsers(required=True, metavar="COMMAND")
    listing = commands.add_parser("cards", help="every card: id, chapter, question")
    listing.set_defaults(run=_cards)
    showing = commands.add_parser("show", help="what a card asks and what follows")
    showing.add_argument("card")
    showing.set_defaults(run=_show)
    working = commands.add_parser("work", help="the answer of a card", epilog="A value may carry a unit and a spread: length='412 yd +/- 8'. Rows: dyes.1.depth=0.62")
    working.add_argument("card")
    working.add_argument("values", nargs="*", metavar="input=value")
    working.add_argument("--file", help="a JSON file with inputs by name")
    working.add_argument("--style", choices=("point", "comma"), default="point", help="1,200.5 (point) or 1.200,5 (comma)")
    working.add_argument("--system", choices=("both", "metric", "us"), default="both")
    working.add_argument("--money", default="€", help="your money sign")
    working.set_defaults(run=_work)
    for command in (listing, showing, working):
        command.add_argument("--json", action="store_true", help="the same as data")
    return parser


def _complain(*lines: str) -> None:
    for line in lines:
        sys.stderr.write(line + "\n")


def _put(text: str) -> None:
    sys.stdout.write(text + "\n")


def _json(data) -> int:
    _put(json.dumps(data, ensure_ascii=False, indent=1))
    return 0


def _cards(options) -> int:
    found = cards()
    if options.json:
        return _json(found)
    for card in found:
        _put(f"{card['id']:<16} {card['chapter']:<6} {card['question']}")
    return 0


def _show(options) -> int:
    data = show(options.card)
    if options.json:
        return _json(data)
    _put(data["question"])
    for item in data["inputs"]:
        if item["kind"] == "rows":
            _put(f"  {item['name']}.1, .2 ...  {item['label']} ({item['least']} to {item['most']} rows)")
            for each in item["fields"]:
                _put(f"    .{each['name']}{_about(each)}")
        else:
            _put(f"  {item['name']}{_about(item)}")
    _put("What follows: " + ", ".join(result["label"].lower() for result in data["results"]) + ".")
    _put(f"{data['basis']['kind']}: {data['basis']['text']}")
    for caution in data["cautions"]:
        _put(f"Caution: {caution}")
    return 0


def _about(item: dict) -> str:
    parts = [item["label"]]
    if "options" in item:
        parts.append("one of " + ", ".join(option["value"] for option in item["options"]))
    if "allowed" in item:
        parts.append(" to ".join(item["allowed"]))
    if item["default"]:
        parts.append(f"example {item['default']}")
    return "  " + "; ".join(parts)


def _inputs(options) -> dict:
    inputs = {}
    if options.file:
        try:
            text = Path(options.file).read_text("utf-8")
            inputs = None if deeper_than(text, DEEPEST) else json.loads(text)
        except (OSError, ValueError):
            inputs = None
        if not isinstance(inputs, dict):
            raise _Unusable(f"--file: {options.file} given; give a JSON file that holds inputs by name.")
    for pair in options.values:
        name, sign, value = pair.partition("=")
        if not sign:
            raise _Unusable(f"{pair}: no value given; give input=value.")
        inputs[name.strip()] = value
    return inputs


class _Unusable(ValueError):
    """The command's own words cannot be used."""


def _work(options) -> int:
    try:
        inputs = _inputs(options)
    except _Unusable as error:
        _complain(str(error))
        return 2
    answer = work(options.card, inputs, style=options.style, system=options.system, money=options.money)
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


def _table(table: dict) -> None:
    rows = [table["columns"], *table["rows"]]
    widths = [max(len(str(row[at])) for row in rows) for at in range(len(table["columns"]))]
    _put(f"\n{table['title']}")
    for row in rows:
        _put("  " + "  ".join(str(cell).ljust(width) for cell, width in zip(row, widths)).rstrip())
