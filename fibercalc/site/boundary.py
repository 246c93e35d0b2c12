"""The one function the browser calls: JSON text in, JSON text out. Errors are values with a kind
and are always shown.
"""

import json
from typing import Any

from ..core.card import Card, Input, Rows
from ..core.entry import Reading, read_one
from ..core.link import read_query
from ..core.nesting import deeper_than
from ..core.paper import Labels
from ..core.problem import BadInputs, Problem
from ..core.reading import read_inputs
from ..core.registry import UnknownCard
from ..core.units import Unit
from ..core.work import work_given
from ..version import __version__
from .asked import card_of, given_of, settings_of, state_of, trail_of
from .form import shown_text, values_of

LAZY = ("segno", "coloraide")  # packages that are fetched only when a card needs them
DEEPEST = 20  # of a request: a file's text is one of its texts


def handle(text: str) -> str:
    """Answer one request. Never raises: what goes wrong comes back as {"problem": {"kind",
    "text"}}.
    """
    number = None
    try:
        if deeper_than(text, DEEPEST):
            return _reply(
                None,
                _problem(f"What was asked is nested more than {DEEPEST} deep, and was not read."),
            )
        request = json.loads(text)
        number = request.get("id")
        reply = {"ok": ACTIONS[request["do"]](request)}
    except UnknownCard as error:
        reply = _problem(f"{str(error.args[0])[:40]}: no card has this id.")
    except ModuleNotFoundError as error:
        if error.name not in LAZY:
            reply = _fault(error)
        else:
            reply = {
                "problem": {
                    "kind": "needs",
                    "packages": [error.name],
                    "text": f"{error.name} is needed first",
                }
            }
    except Exception as error:  # the page must hear of every fault, whatever it is
        reply = _fault(error)
    return _reply(number, reply)


def _reply(number: Any, reply: dict[str, Any]) -> str:
    return json.dumps({"id": number} | reply, ensure_ascii=False)


def _fault(error: Exception) -> dict[str, Any]:
    return _problem(f"{type(error).__name__}: {error}"[:300])


def _problem(text: str) -> dict[str, Any]:
    return {"problem": {"kind": "fault", "text": text}}


def _work(request: dict[str, Any]) -> dict[str, Any]:
    settings = settings_of(request)
    return state_of(
        given_of(request, card_of(request["card"]), settings), settings, trail_of(request)
    )


def _open(request: dict[str, Any]) -> dict[str, Any]:
    card, settings = card_of(request["card"]), settings_of(request)
    texts, counts, notes = read_query(card, str(request.get("query", "")))
    given = read_inputs(card, texts, settings, exact=texts, counts=counts, named=texts)
    exact = {
        name: reading.text
        for name, reading in given.readings.items()
        if name in texts and reading.amount is not None
    }
    return state_of(given, settings, trail_of(request)) | {
        "values": values_of(given, settings),
        "exact": exact,
        "rows": given.counts,
        "link_notes": notes,
    }


def _convert(request: dict[str, Any]) -> dict[str, Any]:
    """A field's number in another unit; the exact text keeps the full value, so that going back
    gives the same digits.
    """
    each, settings = _input(card_of(request["card"]), request["name"]), settings_of(request)
    exact = request.get("exact") or ""
    reading = read_one(
        each,
        each.name,
        exact or request["text"],
        settings,
        "canonical" if exact else settings.style,
        request["from"],
    )
    if isinstance(reading, Problem) or reading.amount is None:
        return {"text": request["text"], "exact": ""}
    unit = each.quantity.unit(request["to"])
    in_unit = read_one(each, each.name, _in_unit(reading, unit), settings, "canonical", unit.sign)
    if isinstance(in_unit, Problem):
        return {"text": request["text"], "exact": ""}
    return {"text": shown_text(each, in_unit, settings)[0], "exact": exact or reading.text}


def _in_unit(reading: Reading, unit: Unit) -> str:
    from ..core.amount import TypedAmount, width_in_unit

    amount = reading.measured
    typed = width_in_unit(unit, amount.value, amount.rough) if amount.rough else None
    return TypedAmount(amount.value, unit, amount.rough, typed).canonical()


def _input(card: Card, name: str) -> Input[Any]:
    parts_of_name = str(name).split(".")
    item = card.item(parts_of_name[0])
    return (
        next(each for each in item.fields if each.name == parts_of_name[2])
        if isinstance(item, Rows)
        else item
    )


def _sheet(request: dict[str, Any]) -> dict[str, Any]:
    from .sheet import paper, sheet  # only when something is printed

    settings = settings_of(request)
    given = given_of(request, card_of(request["card"]), settings)
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


def _check(request: dict[str, Any]) -> dict[str, Any]:
    """Run the worked examples in these files' texts with this very copy of the program."""
    from ..core.checks import (
        parse_checks,
        run_check,
    )  # only when asked: no answer needs a reader of TOML

    passed, failed = 0, []
    for text in request["files"].values():
        for check in parse_checks(text):
            outcome = run_check(check)
            if outcome.passed:
                passed += 1
            else:
                failed.append(outcome.line())
    return {"passed": passed, "failed": failed}


def _hello(request: dict[str, Any]) -> dict[str, Any]:
    import sys

    return {"version": __version__, "python": sys.version.split()[0]}


def _bench_check(request: dict[str, Any]) -> dict[str, Any]:
    from ..workbook import bench

    settings = settings_of(request)
    given = given_of(request, bench.BENCH, settings)
    state = state_of(given, settings)
    return {
        "answered": state["answered"],
        "fields": state["fields"],
        "shown": state["shown"],
        "record": bench.record_of(given) if state["answered"] else None,
        "saved_text": state["say"],
    }


def _bench_read(request: dict[str, Any]) -> dict[str, Any]:
    from ..workbook import bench

    record, notes = bench.read_record(request.get("record"))
    given = bench.given_of(record)
    settings = bench.settings_of(record)
    return {
        "record": record,
        "notes": notes,
        "values": values_of(given, settings),
        "rows": given.counts,
        "exact": {
            name: reading.text
            for name, reading in given.readings.items()
            if reading.amount is not None
        },
        "settings": {"style": settings.style, "system": settings.system, "money": settings.money},
    }


def _bench_offers(request: dict[str, Any]) -> dict[str, Any]:
    card, found = card_of(request["card"]), []
    if request.get("records"):
        from ..workbook import flow, records  # only where there are records

        kinds = flow.kinds_for(card)
        wanted = [
            each
            for each in request["records"]
            if isinstance(each, dict) and str(each.get("kind")) in kinds
        ]
        found = flow.offers(card, records.readable(wanted)[0], settings_of(request))
    if isinstance(
        request.get("record"), dict
    ):  # otherwise nothing was ever saved: the example's bench is nobody's
        from ..workbook import bench

        record, _ = bench.read_record(request["record"])
        taken = {offer["label"] for offer in found}
        found = [
            offer for offer in bench.offers(card, record) if offer["label"] not in taken
        ] + found
    return {"offers": found}


def _yardage(request: dict[str, Any]) -> dict[str, Any]:
    from . import helper  # only where a customer asks

    return helper.reply(request)


def _base_link(request: dict[str, Any]) -> dict[str, Any]:
    from . import link_maker

    settings = settings_of(request)
    given = given_of(request, card_of("helper-link"), settings)
    state = state_of(given, settings)
    made = (
        link_maker.made(given, str(request.get("here", "")), settings)
        if state["answered"]
        else {"refused": state["refused"]}
    )
    return {"fields": state["fields"], "shown": state["shown"], "answered": "link" in made} | made


def _stand(request: dict[str, Any]) -> dict[str, Any]:
    from . import stand

    settings = settings_of(request)
    given = given_of(request, card_of("helper-link"), settings)
    state = state_of(given, settings)
    return (
        stand.stand(given, str(request.get("here", "")), settings)
        if state["answered"]
        else {"html": "", "refused": state["refused"] or "A field above needs another value first."}
    )


def _counter(request: dict[str, Any]) -> dict[str, Any]:
    from . import link_maker

    return link_maker.counter_bases(
        request.get("record"), request.get("records") or (), settings_of(request)
    )


def _counter_code(request: dict[str, Any]) -> dict[str, Any]:
    from . import link_maker

    return link_maker.counter_code(
        request.get("record"),
        int(request["number"]),
        str(request.get("here", "")),
        request.get("records") or (),
        settings_of(request),
    )


def _workbook(request: dict[str, Any]) -> dict[str, Any]:
    from . import records  # only where records are

    return records.ACTIONS[request["do"]](request)


ACTIONS = {
    "work": _work,
    "open": _open,
    "convert": _convert,
    "sheet": _sheet,
    "check": _check,
    "hello": _hello,
    "bench-check": _bench_check,
    "bench-read": _bench_read,
    "bench-offers": _bench_offers,
    "yardage": _yardage,
    "base-link": _base_link,
    "stand": _stand,
    "counter": _counter,
    "counter-code": _counter_code,
    **dict.fromkeys(
        (
            f"workbook-{what}"
            for what in (
                "view",
                "form",
                "check",
                "file",
                "demo",
                "bench",
                "export",
                "table",
                "trace",
                "places",
                "keep",
            )
        ),
        _workbook,
    ),
}
