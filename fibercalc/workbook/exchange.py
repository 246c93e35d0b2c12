"""The whole workbook as one JSON file: written with sorted keys, read as hostile input, compared with what is here before anything changes.

What this version writes it reads; what it could not read itself (of a newer version, or damaged) stands in the file under `unread` as
it was found, and is taken from there unchanged.
"""

import json
from datetime import datetime
from typing import NamedTuple

from ..core.nesting import deeper_than
from . import bench
from .from_bench import bench_and_records
from .kinds import KINDS
from .records import MOST_PAST, SCHEMA, Newer, Unusable, checked, checked_once, title_of

FORMAT = "bench-book"
# Bytes of a file, which the page gets from here: 40,000 records, ten on each working day of sixteen years. Measured in Chromium on a
# busy machine of two cores, 6 MB are read in 8 s and 25 MB in 28 s.
LARGEST = 25_000_000
DEEPEST = 8
KEPT_REMOVED = 30  # days that a removed record can be brought back; it is in no file
SAVED = ("rev", "past", "changed")
LONGEST_ID = 200  # of a record that cannot be read here
MOST_SAVES, MOST_DAYS, CLOCK = 10, 14, "%Y-%m-%dT%H:%M:%SZ"
FORBIDDEN = ("__proto__", "constructor", "prototype")


class File(NamedTuple):
    """What a file holds: records as they are kept, what cannot be read here as it is, and My bench if it is there."""

    records: list[dict]
    unread: list[dict]
    bench: dict | None


def file_text(records: list[dict], unread: list, bench_record, made: str) -> str:
    """The file: every record, what could not be read as it is, and My bench. The same content always gives the same bytes.

    made  the day of the export, 2027-01-11
    """
    content = {"format": FORMAT, "schema": SCHEMA, "made": made, "records": sorted(records, key=lambda each: each["id"])}
    if isinstance(bench_record, dict):
        content["bench"] = bench_record
    if unread:
        content["unread"] = sorted(unread, key=lambda each: json.dumps(each, sort_keys=True))
    return json.dumps(content, ensure_ascii=False, indent=1, sort_keys=True) + "\n"


def not_a_copy(text: str, records: list[dict], unread: list, bench_record: dict | None) -> str:
    """Why a file's text is no copy of these, read back as any file is; "" when every one of them is in it, unchanged."""
    try:
        read = read_file(text)
    except Unusable as line:
        return str(line)
    for there, here in ((read.records, records), (read.unread, unread)):
        held = {each["id"]: each for each in there}
        lost = [each for each in here if not isinstance(each, dict) or held.get(each.get("id")) != each]
        if lost or len(there) != len(here):
            return f"{len(lost) or len(there) - len(here)} of its records read back otherwise than they are here"
    return "" if read.bench == bench_record else "My bench reads back otherwise than it is here"


def read_file(text: str) -> File:
    """What is in a file, all its records checked. Raises Unusable: then nothing of it is used."""
    content = _parsed(text)
    if not isinstance(content, dict) or content.get("format") not in (FORMAT, bench.FORMAT):
        raise Unusable("it is no workbook of the bench book")
    schema = content.get("schema")
    if not isinstance(schema, int) or isinstance(schema, bool) or schema < 1:
        raise Unusable("it says nothing of its schema")
    if content["format"] == bench.FORMAT:
        record, records, notes = bench_and_records(content)
        if notes:
            raise Unusable(notes[0])
        return File([checked(each) for each in records], [], record)
    if schema > SCHEMA:
        raise Unusable("it was made by a newer version of the book: update this one first")
    if not isinstance(content.get("records"), list) or not isinstance(content.get("unread", []), list):
        raise Unusable("it holds no records")
    records, unread = [], []
    for each in content["records"]:
        try:
            records.append(checked_once(each))
        except Newer:
            unread.append(_as_it_is(each))
    for each in content.get("unread", []):
        try:
            records.append(checked_once(each))
        except Unusable:
            unread.append(_as_it_is(each))
    if len({each["id"] for each in records + unread}) < len(records + unread):
        raise Unusable("it holds a record twice")
    return File(records, unread, None if content.get("bench") is None else _bench_of(content["bench"]))


def _as_it_is(document) -> dict:
    """A record that this version cannot read, unchanged; only that it can be kept under its id is asked. Raises Unusable."""
    record_id = document.get("id") if isinstance(document, dict) else None
    if not isinstance(record_id, str) or not 0 < len(record_id) <= LONGEST_ID:
        raise Unusable("it holds something that is no record")
    return document


def _bench_of(data) -> dict:
    record, notes = bench_as_kept(data)
    if notes:
        raise Unusable(f"My bench in it: {notes[0]}")
    return record


def bench_as_kept(data) -> tuple[dict, list[str]]:
    """My bench as a file holds it: in its newest schema, but as it is where a newer version made it; and notes on what was dropped."""
    if isinstance(data, dict) and data.get("format") == bench.FORMAT and all(isinstance(data.get(part), dict) for part in ("values", "rows")):
        schema = data.get("schema")
        if isinstance(schema, int) and not isinstance(schema, bool) and schema > bench.SCHEMA:
            return data, []
    return bench.read_record(data)


def _parsed(text: str):
    if len(text.encode("utf-8", "surrogatepass")) > LARGEST:
        raise Unusable(f"it is larger than {LARGEST // 1_000_000} MB")
    if deeper_than(text, DEEPEST):
        raise Unusable(f"it is nested more than {DEEPEST} deep")
    try:
        return json.loads(text, object_pairs_hook=_pairs, parse_constant=_no_number)
    except Unusable:
        raise
    except ValueError:
        raise Unusable("it is damaged: it cannot be read to its end as JSON") from None


def _pairs(pairs: list) -> dict:
    found = dict(pairs)
    if len(found) < len(pairs):
        raise Unusable("it is damaged: it names something twice")
    if any(name in FORBIDDEN for name in found):
        raise Unusable("it holds a name that no record has")
    return found


def _no_number(text: str):
    raise Unusable("it is damaged: it holds a number that is none")


def compare(theirs: list[dict], own: list[dict]) -> dict[str, list[dict]]:
    """The records of a file as new, newer, clash, same or older, against what is here.

    One is newer when it came of ours: our revision is in its past. Changed on both sides since, they clash.
    """
    here = {each["id"]: each for each in own}
    found: dict[str, list[dict]] = {"new": [], "newer": [], "clash": [], "same": [], "older": []}
    for each in theirs:
        ours = here.get(each["id"])
        if ours is None:
            found["new"].append(each)
        elif same(ours, each):
            found["same"].append(each)
        elif _came_of(each, ours):
            found["newer"].append(each)
        elif _came_of(ours, each):
            found["older"].append(each)
        else:
            found["clash"].append(each)
    return found


def same(one: dict, other: dict) -> bool:
    """Whether two records say the same, however often each was saved."""
    said = [{part: held for part, held in each.items() if part not in SAVED} for each in (one, other)]
    return said[0] == said[1]


def _came_of(later: dict, earlier: dict) -> bool:
    """Whether one copy of a record was made from the other. Either may be one that cannot be read here."""
    rev = earlier.get("rev")
    return rev is not None and rev != later.get("rev") and rev in _past(later)


def _past(document: dict) -> list:
    return document["past"] if isinstance(document.get("past"), list) else []


def settled(theirs: dict, ours: dict) -> dict:
    """The file's record taken over ours: it now comes of both, so that neither copy is ever taken for news again."""
    came_of = [each for each in (ours.get("rev"), *_past(theirs), *_past(ours)) if isinstance(each, str)]
    return theirs | {"past": [each for each in dict.fromkeys(came_of) if each != theirs.get("rev")][:MOST_PAST]}


def words(found: dict[str, list[dict]], unread: int = 0) -> str:
    """"12 new, 3 newer, 2 clash; 5 are here already". unread: how many of the file's records cannot be read here."""
    parts = [f"{len(found[which])} {which}" for which in ("new", "newer", "clash")]
    known = len(found["same"]) + len(found["older"])
    kept = f"; {unread} cannot be read by this version of the book and {'is' if unread == 1 else 'are'} kept as found" if unread else ""
    return ", ".join(parts) + (f"; {known} {'is' if known == 1 else 'are'} here already" if known else "") + kept


def clash_line(theirs: dict, own: list[dict]) -> str:
    """One record that was changed on both sides, in words."""
    ours = next(each for each in own if each["id"] == theirs["id"])
    name, other = _name(ours), _name(theirs)
    kind = KINDS[ours["kind"]].one if ours.get("kind") in KINDS else "record"
    renamed = f" (called “{other}” in the file)" if other != name else ""
    return f"{kind.capitalize()} “{name}”{renamed}: changed here {str(ours.get('changed'))[:10]}, in the file {str(theirs.get('changed'))[:10]}."


def _name(document: dict) -> str:
    """What a record is called; its id, where it cannot be read here."""
    try:
        return title_of(checked_once(document))
    except Unusable:
        return document["id"][:60]


def reminder(about, now: str) -> str:
    """Why it is time for an export: after MOST_SAVES saves, or MOST_DAYS days with any; "" when it is not.

    about  {"saves": since the last export, "exported": its moment or None, "first": moment of the first of these saves};  now  a moment
    """
    saves = about.get("saves") if isinstance(about, dict) else None
    if not isinstance(saves, int) or isinstance(saves, bool) or saves < 1:
        return ""
    exported = about.get("exported")
    since = _days(exported, now)
    waited = since if since is not None else _days(about.get("first"), now) or 0
    if saves < MOST_SAVES and waited < MOST_DAYS:
        return ""
    last = "It was never exported." if since is None else f"The last export is {since} day{'s' * (since != 1)} old."
    return f"{last} {saves} change{'s' * (saves != 1)} since {'stand' if saves != 1 else 'stands'} in this browser alone: save a copy as a file."


def _days(moment, now: str) -> int | None:
    try:
        return (datetime.strptime(now, CLOCK) - datetime.strptime(moment, CLOCK)).days
    except (TypeError, ValueError):
        return None
