"""The whole workbook as one JSON file: written with sorted keys, read as hostile input, compared with what is here before anything changes."""

import json
from datetime import datetime

from . import bench
from .from_bench import bench_and_records
from .kinds import KINDS
from .records import LONGEST_TEXT, MOST_PAST, SCHEMA, Unusable, checked, title_of

FORMAT = "bench-book"
LARGEST = 5_000_000  # bytes
DEEPEST = 8
MOST_SAVES, MOST_DAYS, CLOCK = 10, 14, "%Y-%m-%dT%H:%M:%SZ"
FORBIDDEN = ("__proto__", "constructor", "prototype")


def file_text(records: list[dict], unread: list, bench_record, made: str) -> str:
    """The file: every record, what could not be read as it is, and My bench. The same content always gives the same bytes.

    made  the day of the export, 2027-01-11
    """
    content = {
        "format": FORMAT,
        "schema": SCHEMA,
        "made": made,
        "records": sorted(records, key=lambda each: each["id"]),
    }
    if isinstance(bench_record, dict):
        content["bench"] = bench_record
    if unread:
        content["unread"] = unread
    return json.dumps(content, ensure_ascii=False, indent=1, sort_keys=True) + "\n"


def read_file(text: str) -> tuple[list[dict], dict | None]:
    """The records of a file, all of them checked, and its bench record if it holds one. Raises Unusable: then nothing of it is used."""
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
        return [checked(each) for each in records], record
    if schema > SCHEMA:
        raise Unusable("it was made by a newer version of the book: update this one first")
    if not isinstance(content.get("records"), list):
        raise Unusable("it holds no records")
    records = [checked(each) for each in content["records"]]
    if len({each["id"] for each in records}) < len(records):
        raise Unusable("it holds a record twice")
    if content.get("bench") is None:
        return records, None
    record, notes = bench.read_record(content["bench"])
    if notes:
        raise Unusable(f"My bench in it: {notes[0]}")
    return records, record


def _parsed(text: str):
    if len(text.encode("utf-8", "surrogatepass")) > LARGEST:
        raise Unusable(f"it is larger than {LARGEST // 1_000_000} MB")
    try:
        content = json.loads(text, object_pairs_hook=_pairs, parse_constant=_no_number)
    except RecursionError:
        raise Unusable(f"it is nested more than {DEEPEST} deep") from None
    except Unusable:
        raise
    except ValueError:
        raise Unusable("it is damaged: it cannot be read to its end as JSON") from None
    _check_depth(content, DEEPEST)
    return content


def _pairs(pairs: list) -> dict:
    found = dict(pairs)
    if len(found) < len(pairs):
        raise Unusable("it is damaged: it names something twice")
    if any(name in FORBIDDEN for name in found):
        raise Unusable("it holds a name that no record has")
    return found


def _no_number(text: str):
    raise Unusable("it is damaged: it holds a number that is none")


def _check_depth(content, left: int) -> None:
    if isinstance(content, str) and len(content) > LONGEST_TEXT:
        raise Unusable(f"it holds a text of more than {LONGEST_TEXT} characters")
    if isinstance(content, (dict, list)):
        if left == 0:
            raise Unusable(f"it is nested more than {DEEPEST} deep")
        for each in content.values() if isinstance(content, dict) else content:
            _check_depth(each, left - 1)


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
        elif ours["rev"] != each["rev"] and ours["rev"] in each["past"]:
            found["newer"].append(each)
        elif ours["rev"] != each["rev"] and each["rev"] in ours["past"]:
            found["older"].append(each)
        else:
            found["clash"].append(each)
    return found


def same(one: dict, other: dict) -> bool:
    """Whether two records say the same."""
    return all(one[part] == other[part] for part in ("kind", "values", "rows"))


def settled(theirs: dict, ours: dict) -> dict:
    """The file's record taken over ours: it now comes of both, so that neither copy is ever taken for news again."""
    past = [
        each
        for each in dict.fromkeys([ours["rev"], *theirs["past"], *ours["past"]])
        if each != theirs["rev"]
    ]
    return theirs | {"past": past[:MOST_PAST]}


def words(found: dict[str, list[dict]]) -> str:
    """ "12 new, 3 newer, 2 clash; 5 are here already"."""
    parts = [f"{len(found[which])} {which}" for which in ("new", "newer", "clash")]
    known = len(found["same"]) + len(found["older"])
    return ", ".join(parts) + (
        f"; {known} {'is' if known == 1 else 'are'} here already" if known else ""
    )


def clash_line(theirs: dict, own: list[dict]) -> str:
    """One record that was changed on both sides, in words."""
    ours = next(each for each in own if each["id"] == theirs["id"])
    name, other = title_of(ours), title_of(theirs)
    kind = KINDS[ours["kind"]].one
    renamed = f" (called “{other}” in the file)" if other != name else ""
    return (
        f"{kind.capitalize()} “{name}”{renamed}: changed here {ours['changed'][:10]}, in the file"
        f" {theirs['changed'][:10]}."
    )


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
    last = (
        "It was never exported."
        if since is None
        else f"The last export is {since} day{'s' * (since != 1)} old."
    )
    return (
        f"{last} {saves} change{'s' * (saves != 1)} since {'stand' if saves != 1 else 'stands'} in"
        " this browser alone: save a copy as a file."
    )


def _days(moment, now: str) -> int | None:
    try:
        return (datetime.strptime(now, CLOCK) - datetime.strptime(moment, CLOCK)).days
    except (TypeError, ValueError):
        return None
