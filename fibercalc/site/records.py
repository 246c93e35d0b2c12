"""What the workbook's page and the cards' save buttons ask: records in, records and finished HTML out. The browser only keeps them."""

from ..core.problem import BadInputs
from ..core.work import work_given
from ..workbook import exchange, flow
from ..workbook.demo import demo_text
from ..workbook.from_bench import bench_and_records
from ..workbook.kinds import KINDS
from ..workbook.records import Unusable, checked, contents_of, new_record, readable, references, title_of, with_own_rules
from ..workbook.tables import csv_text
from ..workbook.trace import trace
from .asked import card_of, given_of, settings_of
from .form import values_of
from .record_parts import listing, record_form, removed_listing, trace_sheet, traced

DEMO = "-demo-"


def _records(request: dict) -> tuple[list[dict], list]:
    return readable(request.get("records"))


def _view(request: dict) -> dict:
    """The list, and what the page says around it."""
    records, unread = _records(request)
    missing = [each for each in _of_bench(request) if each["id"] not in {one["id"] for one in records}]
    return {"html": listing(records, len(unread), settings_of(request)), "removed": removed_listing(request.get("removed")), "count": len(records), "unread": len(unread),
            "reminder": exchange.reminder(request.get("about"), str(request.get("now", ""))),
            "demo": sorted(each["id"] for each in records if DEMO in each["id"]), "bench": len([each for each in missing if each["kind"] == "base"])}


def _of_bench(request: dict) -> list[dict]:
    return bench_and_records(request["bench"])[1] if isinstance(request.get("bench"), dict) else []


def _form(request: dict) -> dict:
    """The form of a record, new, or as it stands."""
    records, _ = _records(request)
    settings = settings_of(request)
    document = next((each for each in records if each["id"] == request.get("record")), None)
    kind = KINDS[document["kind"] if document else request["kind"]]
    contents = {"values": {}, "rows": {}} if document is None else {"values": document["values"], "rows": document["rows"]}
    if document is not None and request.get("copy"):
        contents = contents | {"values": contents["values"] | {kind.title: f"{title_of(document)} (copy)"[:kind.names[kind.title].longest]}}
    html, given = record_form(kind, contents, records, settings)
    named_by = [] if document is None else [title_of(each) for each in records if any(text == document["id"] for _, text in references(each))]
    return {"html": html, "kind": kind.id, "title": title_of(document) if document else f"New {kind.one}", "named_by": len(named_by), "name": kind.title,
            "values": values_of(given, settings), "rows": given.counts, "exact": {name: reading.text for name, reading in given.readings.items() if reading.amount is not None},
            "changed": document["changed"] if document else ""}


def _check(request: dict) -> dict:
    """A form as typed: each field's echo or error line, and the record to keep when all is well."""
    kind, settings = KINDS[request["kind"]], settings_of(request)
    given = with_own_rules(kind, given_of(request, kind.card, settings))
    fields = {name: {"read": reading.echo, "why": ""} for name, reading in given.readings.items()}
    elsewhere = []
    for problem in given.problems:
        if problem.input in fields:
            fields[problem.input]["why"] = problem.text
        else:
            elsewhere.append(problem.text)
    return {"fields": fields, "shown": given.asked() + list(given.counts), "refused": " ".join(elsewhere),
            "record": None if given.problems else new_record(kind, str(request["id"]), contents_of(given))}


def _compared(file: exchange.File, request: dict) -> dict:
    """What a file would change, told before anything does."""
    records, unread = _records(request)
    own = records + [each for each in unread if isinstance(each, dict) and isinstance(each.get("id"), str)]
    found = exchange.compare(file.records + file.unread, own)
    ours = {each["id"]: each for each in own}
    bench_record, own_bench = file.bench, _own_bench(request)
    differs = bench_record is not None and own_bench is not None and own_bench != bench_record
    lines = [exchange.clash_line(each, own) for each in found["clash"]]
    if differs:
        lines.append("My bench: it differs here and in the file.")
    return {"words": exchange.words(found, len(file.unread)), "clashes": lines, "new": found["new"], "newer": found["newer"],
            "settled": [exchange.settled(each, ours[each["id"]]) for each in found["clash"]],
            "bench": bench_record if bench_record is not None and (own_bench is None or differs) else None, "bench_clash": differs}


def _file(request: dict) -> dict:
    try:
        return _compared(exchange.read_file(str(request.get("text", ""))), request)
    except Unusable as line:
        return {"refused": f"This file was not read: {line}. Nothing was changed."}


def _demo(request: dict) -> dict:
    return _file(request | {"text": demo_text()})


def _bench(request: dict) -> dict:
    """My bench's bases as records."""
    return _compared(exchange.File([checked(each) for each in _of_bench(request)], [], None), request)


def _own_bench(request: dict) -> dict | None:
    return exchange.bench_as_kept(request["bench"])[0] if isinstance(request.get("bench"), dict) else None


def _export(request: dict) -> dict:
    """The file, and why it is no whole copy, if reading it back says so."""
    records, unread = _records(request)
    today, bench_record = str(request["today"]), _own_bench(request)
    text = exchange.file_text(records, unread, bench_record, today)
    return {"text": text, "name": f"workbook-{today}.json", "unproven": exchange.not_a_copy(text, records, unread, bench_record)}


def _table(request: dict) -> dict:
    records, _ = _records(request)
    kind = KINDS[request["kind"]]
    titles = {each["id"]: title_of(each) for each in records}
    return {"text": csv_text(kind, [each for each in records if each["kind"] == kind.id], titles), "name": f"workbook-{kind.id}-{request['today']}.csv"}


def _trace(request: dict) -> dict:
    records, _ = _records(request)
    asked, settings = str(request.get("asked", "")), settings_of(request)
    found = trace(records, asked)
    return {"html": traced(found, asked, records, settings), "sheet": trace_sheet(found, asked, records, settings, str(request.get("today", ""))), "found": len(found)}


def _places(request: dict) -> dict:
    records, _ = _records(request)
    card = card_of(request["card"])
    return {"places": flow.places(card, given_of(request, card, settings_of(request)), records)}


def _keep(request: dict) -> dict:
    """A card's values, or its answer, as a record."""
    records, _ = _records(request)
    settings = settings_of(request)
    card = card_of(request["card"])
    try:
        worked = work_given(given_of(request, card, settings), settings)
        return {"record": flow.saved(worked, str(request.get("place", "")), str(request.get("name", "")), str(request["fresh"]), str(request["today"]), records)}
    except (Unusable, BadInputs) as line:
        return {"refused": str(line)}


ACTIONS = {"workbook-view": _view, "workbook-form": _form, "workbook-check": _check, "workbook-file": _file, "workbook-demo": _demo, "workbook-bench": _bench,
           "workbook-export": _export, "workbook-table": _table, "workbook-trace": _trace, "workbook-places": _places, "workbook-keep": _keep}
