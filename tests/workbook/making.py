"""Random records of every kind, valid as a person could have typed them; and a whole workbook of them."""

import unicodedata

from hypothesis import strategies as st

from fibercalc.core.card import CHOICE, COLOR, DATE, Rows
from fibercalc.core.number import canonical
from fibercalc.core.units import COUNT
from fibercalc.workbook.kinds import KINDS
from fibercalc.workbook.records import SCHEMA, checked, looks_like_a_customer

REV_LETTERS = "abcdefghijklmnopqrstuvwxyz0123456789"


def texts(longest: int):
    """Printable text that reading leaves as it is, hostile or not."""

    def fit(text: str) -> str:
        kept = "".join(
            c for c in unicodedata.normalize("NFC", text) if unicodedata.category(c)[0] != "C"
        )
        return " ".join(kept.split())[:longest].strip() or "x"

    hostile = st.sampled_from(
        ["<img src=x onerror=alert(1)>", "=1+1", "</script>", "’ “quoted” ½", "naïve Ærø", "\"'&<>"]
    )
    return (st.text(max_size=min(longest, 30)).map(fit) | hostile.map(fit)).filter(
        lambda text: not looks_like_a_customer(text)
    )


@st.composite
def field_text(draw, each, refers: bool):
    """A canonical text for one field."""
    if refers:
        return f"{draw(st.sampled_from(list(KINDS)))}-{draw(st.text(REV_LETTERS, min_size=4, max_size=12))}"
    if each.kind == CHOICE:
        return draw(st.sampled_from([option.value for option in each.options if option.value]))
    if each.kind == DATE:
        return draw(st.dates()).isoformat()
    if each.kind == COLOR:
        return f"#{draw(st.integers(0, 0xFFFFFF)):06x}"
    if not each.measured:
        return draw(texts(each.longest))
    low, high = each.edges
    if each.of is COUNT:
        return str(draw(st.integers(int(low), int(high))))
    unit = draw(st.sampled_from(each.choices))
    edges = sorted(unit.from_base(edge) for edge in (low, high))
    spread = draw(st.sampled_from(["", "~1", "~0.25"]))
    # as people type: a few decimals, no exponents
    value = draw(
        st.floats(edges[0], edges[1]).map(
            lambda number: min(max(round(number, 3), edges[0]), edges[1])
        )
    )
    return f"{canonical(value)}{spread}{unit.sign.replace(' ', '')}"


@st.composite
def records(draw, kind_id: str | None = None):
    """One record as it is kept."""
    kind = KINDS[kind_id or draw(st.sampled_from(list(KINDS)))]
    values, rows = {}, {}
    for item in kind.fields:
        if isinstance(item, Rows):
            rows[item.name] = count = draw(st.integers(0, min(3, item.most)))
            for row in range(1, count + 1):
                for each in item.fields:
                    if draw(st.booleans()):
                        values[f"{item.name}.{row}.{each.name}"] = draw(
                            field_text(each, f"{item.name}.{each.name}" in kind.refers)
                        )
        elif item.name == kind.title or draw(st.booleans()):
            values[item.name] = draw(field_text(item, item.name in kind.refers))
    ends = draw(st.lists(st.text(REV_LETTERS, min_size=4, max_size=8), min_size=1, max_size=4))
    revs = [f"{number}-{end}" for number, end in enumerate(ends, 1)]
    return checked(
        {
            "id": f"{kind.id}-{draw(st.text(REV_LETTERS, min_size=10, max_size=10))}",
            "kind": kind.id,
            "schema": SCHEMA,
            "rev": revs[-1],
            "past": revs[-2::-1] if len(revs) > 1 else [],
            "changed": draw(st.datetimes()).strftime("%Y-%m-%dT%H:%M:%SZ").rjust(20, "0"),
            "values": values,
            "rows": rows,
        }
    )


def workbooks(most: int = 6):
    """Several records, each with an id of its own."""
    return st.lists(records(), max_size=most, unique_by=lambda each: each["id"])


def record(kind: str = "base", rev: str = "1-aaaa", past=(), slug: str = "test", **values) -> dict:
    """A record for a test: lists are given as lists of dicts."""
    texts_, rows = {}, {}
    for name, value in values.items():
        if isinstance(value, list):
            rows[name] = len(value)
            texts_ |= {
                f"{name}.{row}.{field}": text
                for row, held in enumerate(value, 1)
                for field, text in held.items()
            }
        else:
            texts_[name] = value
    texts_ = {KINDS[kind].title: "Test"} | texts_
    return checked(
        {
            "id": f"{kind}-{slug}",
            "kind": kind,
            "schema": SCHEMA,
            "rev": rev,
            "past": list(past),
            "changed": "2027-01-13T18:00:00Z",
            "values": texts_,
            "rows": rows,
        }
    )
