"""The one function the browser calls: JSON text in, JSON text out. Errors are values with a kind and are always shown."""

import json

from .. import __version__
from ..core.card import Card, Input, Rows
from ..core.link import query_of, read_query
from ..core.onward import LONGEST_TRAIL
from ..core.paper import Labels
from ..core.problem import BadInputs, Problem
from ..core.entry import read_one
from ..core.reading import Given, read_inputs
from ..core.registry import find_card
from ..core.settings import Settings
from ..core.work import work_given
from . import parts
from .form import shown_text, values_of

LAZY = ("segno", "coloraide")  # packages that are fetched only when a card needs them


def handle(text: str) -> str:
    """Answer one request. Never raises: what goes wrong comes back as {"problem": {"kind", "text"}}."""
    number = None
    try:
        request = json.loads(text)
        number = request.get("id")
        reply = {"ok": ACTIONS[request["do"]](request)}
    except ModuleNotFoundError as error:
        if error.name not in LAZY:
            reply = _fault(error)
        else:
            reply = {"problem": {"kind": "needs", "packages": [error.name], "text": f"{error.name} is needed first"}}
    except Exception as error:  # the page must hear of every fault, whatever it is
        reply = _fault(error)
    return json.dumps({"id": number} | reply, ensure_ascii=False)


def _fault(error: Exception) -> dict:
    return {"problem": {"kind": "fault", "text": f"{type(error).__name__}: {error}"[:300]}}


def _card(card_id: str) -> Card:
    """A card of a chapter, or one of the two forms that are none. They are declared only when asked for: a first answer waits for neither."""
    if card_id == "my-bench":
        from ..workbook.bench import BENCH

        return BENCH
    return _link() if card_id == "helper-link" else find_card(card_id)


def _link() -> Card:
    from ..workbook.base_link import LINK

    return LINK


def _settings(request: dict) -> Settings:
    return Settings.from_texts(request.get("settings"))


def _given(request: dict, card: Card, settings: Settings) -> Given:
    """Inputs from a request's controls: units are the names that end in .unit."""
    values = {str(name): str(value) for name, value in request.get("values", {}).items()}
    units = {name.removesuffix(".unit"): value for name, value in values.items() if name.endswith(".unit")}
    texts = {name: value for name, value in values.items() if not name.endswith(".unit")}
    exact = {str(name): str(value) for name, value in request.get("exact", {}).items()}
    return read_inputs(card, texts, settings, units, exact)


def _trail(request: dict) -> tuple[tuple[str, str], ...]:
    """The cards before on the way here, oldest first; read as hostile: what is no text is no card's."""
    trail = request.get("trail")
    steps = trail[-LONGEST_TRAIL:] if isinstance(trail, list) else []
    return tuple((str(step.get("card", ""))[:40], str(step.get("query", ""))) for step in steps if isinstance(step, dict))


def _state(given: Given, settings: Settings, trail: tuple[tuple[str, str], ...] = ()) -> dict:
    """What a card shows for inputs as read: answered or not, an echo or an error line for each field."""
    problems = list(given.problems)
    made, query, say = {}, None, ""
    if not problems:
        try:
            worked = work_given(given, settings)
            made, say = parts.slots(worked, trail), " ".join(worked.sentences())
            query = query_of(given)
        except BadInputs as error:
            problems = error.problems
    fields = {name: {"read": reading.echo, "why": ""} for name, reading in given.readings.items()}
    elsewhere = []
    for problem in problems:
        if problem.input in fields:
            fields[problem.input]["why"] = problem.text
        else:
            elsewhere.append(problem.text)
    return {"answered": not problems, "fields": fields, "shown": _shown(given), "slots": made, "query": query, "say": say, "refused": " ".join(elsewhere)}


def _shown(given: Given) -> list[str]:
    """Fields to show; a list of rows is shown when any of its fields is."""
    asked = given.asked()
    return asked + [item.name for item in given.card.inputs if isinstance(item, Rows) and any(name.startswith(f"{item.name}.") for name in asked)]


def _work(request: dict) -> dict:
    settings = _settings(request)
    return _state(_given(request, _card(request["card"]), settings), settings, _trail(request))


def _open(request: dict) -> dict:
    card, settings = _card(request["card"]), _settings(request)
    texts, counts, notes = read_query(card, str(request.get("query", "")))
    given = read_inputs(card, texts, settings, exact=texts)
    exact = {name: reading.text for name, reading in given.readings.items() if name in texts and reading.amount is not None}
    return _state(given, settings, _trail(request)) | {"values": values_of(given, settings), "exact": exact, "rows": given.counts, "link_notes": notes}


def _convert(request: dict) -> dict:
    """A field's number in another unit; the exact text keeps the full value, so that going back gives the same digits."""
    each, settings = _input(_card(request["card"]), request["name"]), _settings(request)
    exact = request.get("exact") or ""
    reading = read_one(each, each.name, exact or request["text"], settings, "canonical" if exact else settings.style, request["from"])
    if isinstance(reading, Problem) or reading.amount is None:
        return {"text": request["text"], "exact": ""}
    unit = each.of.unit(request["to"])
    in_unit = read_one(each, each.name, _in_unit(reading, unit), settings, "canonical", unit.sign)
    if isinstance(in_unit, Problem):
        return {"text": request["text"], "exact": ""}
    return {"text": shown_text(each, in_unit, settings)[0], "exact": exact or reading.text}


def _in_unit(reading, unit) -> str:
    from ..core.amount import Amount, width_in_unit

    amount = reading.amount
    typed = width_in_unit(unit, amount.value, amount.rough) if amount.rough else None
    return Amount(amount.value, unit, amount.rough, typed).canonical()


def _input(card: Card, name: str) -> Input:
    parts_of_name = str(name).split(".")
    item = card.item(parts_of_name[0])
    return next(each for each in item.fields if each.name == parts_of_name[2]) if isinstance(item, Rows) else item


def _sheet(request: dict) -> dict:
    from .sheet import paper, sheet  # only when something is printed

    settings = _settings(request)
    given = _given(request, _card(request["card"]), settings)
    try:
        worked, address = work_given(given, settings), str(request.get("address", ""))
        if request.get("paper") is None:
            return {"html": sheet(worked, address), "kind": "alone"}
        number = int(request["paper"])
        if isinstance(worked.card.papers[number], Labels):
            from .label_paper import labels_paper  # only a card with labels draws any

            return labels_paper(worked, number, str(request.get("here", "")))
        return {"html": paper(worked, number, address), "kind": "paper"}
    except BadInputs as error:
        return {"html": "", "refused": " ".join(problem.text for problem in error.problems)}


def _check(request: dict) -> dict:
    """Run the worked examples in these files' texts with this very copy of the program."""
    from ..core.checks import parse_checks, run_check  # only when asked: no answer needs a reader of TOML

    passed, failed = 0, []
    for text in request["files"].values():
        for check in parse_checks(text):
            outcome = run_check(check)
            if outcome.passed:
                passed += 1
            else:
                failed.append(outcome.line())
    return {"passed": passed, "failed": failed}


def _hello(request: dict) -> dict:
    import sys

    return {"version": __version__, "python": sys.version.split()[0]}


def _bench_check(request: dict) -> dict:
    from ..workbook import bench

    settings = _settings(request)
    given = _given(request, bench.BENCH, settings)
    state = _state(given, settings)
    return {"answered": state["answered"], "fields": state["fields"], "shown": state["shown"], "record": bench.record_of(given) if state["answered"] else None,
            "saved_text": state["say"]}


def _bench_read(request: dict) -> dict:
    from ..workbook import bench

    record, notes = bench.read_record(request.get("record"))
    given = bench.given_of(record)
    settings = bench.settings_of(record)
    return {"record": record, "notes": notes, "values": values_of(given, settings), "rows": given.counts,
            "exact": {name: reading.text for name, reading in given.readings.items() if reading.amount is not None},
            "settings": {"style": settings.style, "system": settings.system, "money": settings.money}}


def _bench_offers(request: dict) -> dict:
    if not isinstance(request.get("record"), dict):
        return {"offers": []}  # nothing was ever saved: the example's bench is nobody's
    from ..workbook import bench

    record, _ = bench.read_record(request["record"])
    return {"offers": bench.offers(_card(request["card"]), record)}


def _yardage(request: dict) -> dict:
    from . import helper  # only where a customer asks

    return helper.reply(request)


def _base_link(request: dict) -> dict:
    from . import link_maker

    settings = _settings(request)
    given = _given(request, _link(), settings)
    state = _state(given, settings)
    made = link_maker.made(given, str(request.get("here", "")), settings) if state["answered"] else {"refused": state["refused"]}
    return {"fields": state["fields"], "shown": state["shown"], "answered": "link" in made} | made


def _stand(request: dict) -> dict:
    from . import stand

    settings = _settings(request)
    given = _given(request, _link(), settings)
    state = _state(given, settings)
    return stand.stand(given, str(request.get("here", "")), settings) if state["answered"] else {"html": "", "refused": state["refused"] or "A field above needs another value first."}


def _counter(request: dict) -> dict:
    from . import link_maker

    return link_maker.counter_bases(request.get("record"))


def _counter_code(request: dict) -> dict:
    from . import link_maker

    return link_maker.counter_code(request.get("record"), int(request["number"]), str(request.get("here", "")))


ACTIONS = {"work": _work, "open": _open, "convert": _convert, "sheet": _sheet, "check": _check, "hello": _hello,
           "bench-check": _bench_check, "bench-read": _bench_read, "bench-offers": _bench_offers,
           "yardage": _yardage, "base-link": _base_link, "stand": _stand, "counter": _counter, "counter-code": _counter_code}
