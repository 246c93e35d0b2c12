"""Records as HTML: the list of all of them, the form of one, and a lot traced both ways."""

from datetime import date
from typing import Any

from ..core.card import CHOICE, DATE, Option, Rows
from ..core.day import write_date
from ..core.entry import Reading
from ..core.markup import Markup, inner, tag
from ..core.number import write_plain
from ..core.outcome import with_money
from ..core.reading import Given, read_inputs
from ..core.registry import UnknownCard, find_card
from ..core.settings import Settings
from ..core.units import COUNT, MONEY
from ..version import __version__
from ..workbook.bench import written
from ..workbook.exchange import KEPT_REMOVED
from ..workbook.kind import KNOWN, KNOWN_END, Kind
from ..workbook.kinds import KINDS
from ..workbook.records import readable, reading_of, references, title_of
from ..workbook.trace import Traced
from .form import form

KNOWN_WORDS = {option.value: option.label for option in KNOWN}
LONGEST_SHOWN = 110
MOST_OPEN = 12  # with more records than this, the list begins with its kinds alone
EMPTY = "(not in this workbook)"


def listing(records: list[dict[str, Any]], unread: int, settings: Settings) -> Markup:
    """Every record by kind, each with what tells it apart; below them, a way to begin each other
    kind.
    """
    by_kind: dict[str, list[dict[str, Any]]] = {}
    for each in records:
        by_kind.setdefault(each["kind"], []).append(each)
    titles = {each["id"]: title_of(each) for each in records}
    parts = []
    for kind in KINDS.values():
        held = sorted(by_kind.get(kind.id, ()), key=lambda each: title_of(each).casefold())
        if held:
            lines = [_line(each, kind, titles, settings) for each in held]
            buttons = (
                [tag("button", f"New {kind.one}", type="button", data_new=kind.id)]
                if kind.id != "kept"
                else []
            )
            buttons.append(
                tag(
                    "button",
                    "As a table (CSV)",
                    type="button",
                    data_table=kind.id,
                    aria_label=f"{kind.many} as a table (CSV)",
                )
            )
            parts.append(
                tag(
                    "details",
                    tag("summary", f"{kind.many} ", tag("span", f"({len(held)})")),
                    tag("ul", *lines, class_="records"),
                    tag("p", *buttons, class_="do"),
                    open=len(records) <= MOST_OPEN,
                    data_kind=kind.id,
                )
            )
    missing = [kind for kind in KINDS.values() if kind.id not in by_kind and kind.id != "kept"]
    if missing:
        lines = [
            tag(
                "li",
                tag("button", f"New {kind.one}", type="button", data_new=kind.id),
                tag("span", kind.about),
            )
            for kind in missing
        ]
        parts.append(
            tag(
                "details",
                tag("summary", "Begin" if not records else "Not begun yet"),
                tag("ul", *lines, class_="records"),
                open=not records,
                data_kind="none",
            )
        )
    if unread:
        text = (
            "1 record cannot be read by this version of the book."
            if unread == 1
            else f"{unread} records cannot be read by this version of the book."
        )
        parts.insert(
            0,
            tag("p", f"{text} They are kept as they are, and travel in the file.", class_="unread"),
        )
    return inner(*parts)


def removed_listing(removed: object) -> Markup:
    """What was removed lately, a line for each press that removed something, with the way back.
    removed: [{"batch", "removed", "count", "records"}], the records being the first few.
    """
    lines, whole = [], 0
    for each in removed if isinstance(removed, list) else []:
        held = readable(each["records"])[0]
        count, rest = int(each["count"]), int(each["count"]) - len(held)
        names = [f"{KINDS[document['kind']].one} {title_of(document)}" for document in held]
        text = (
            ", ".join(names) + (f" and {rest} more" if rest else "")
            if names
            else f"{count} that cannot be read here"
        )
        lines.append(
            tag(
                "li",
                tag(
                    "button",
                    "Bring back",
                    type="button",
                    data_back=each["batch"],
                    aria_label=f"Bring back {text}",
                ),
                tag(
                    "span",
                    f"{text[:1].upper()}{text[1:]} · removed"
                    f" {write_date(date.fromisoformat(each['removed'][:10]))}",
                ),
            )
        )
        whole += count
    if not lines:
        return inner()
    about = tag("p", f"They are kept for {KEPT_REMOVED} days, in no list, trace or file.")
    gone = tag(
        "p",
        tag("button", "Remove them for good", type="button", data_do="forget-removed"),
        class_="do",
    )
    return tag(
        "details",
        tag("summary", "Removed ", tag("span", f"({whole})")),
        about,
        tag("ul", *lines, class_="records"),
        gone,
        data_kind="removed",
    )


def _line(
    document: dict[str, Any], kind: Kind, titles: dict[str, str], settings: Settings
) -> Markup:
    return tag(
        "li",
        tag("button", title_of(document), type="button", data_open=document["id"]),
        tag("span", line(document, kind, titles, settings), _again(document)),
    )


def line(document: dict[str, Any], kind: Kind, titles: dict[str, str], settings: Settings) -> str:
    """What a record's line in the list says beside its name: amounts with how they are known."""
    parts = []
    for name in kind.shown:
        item = kind.names[name]
        if isinstance(item, Rows):
            count = document["rows"].get(name, 0)
            parts += [f"{count} {item.one}{'s' * (count != 1)}"] if count else []
        elif text := shown(
            reading_of(document, name), titles if name in kind.refers else {}, settings
        ):
            known = reading_of(document, f"{name}{KNOWN_END}")
            text = f"{item.label[0].lower()}{item.label[1:]} {text}" if item.of is COUNT else text
            parts.append(
                f"{text} {KNOWN_WORDS[known.text]}"
                if known is not None and known.text in KNOWN_WORDS
                else text
            )
    text = " · ".join(parts)
    return text if len(text) <= LONGEST_SHOWN else text[: LONGEST_SHOWN - 1] + "…"


def shown(reading: Reading | None, titles: dict[str, str], settings: Settings) -> str:
    """One value of a record as people write it; "" when it is blank."""
    if reading is None or not reading.text:
        return ""
    if reading.amount is not None:
        spread = (
            f" ± {write_plain(reading.amount.typed_rough, settings.style)}"
            if reading.amount.typed_rough
            else ""
        )
        number, _, sign = written(reading.amount, settings).partition(" ")
        if reading.input.of is MONEY:
            return with_money(number + spread, settings.money)
        return f"{number}{spread} {sign}".strip()
    if reading.input.of == DATE:
        return write_date(reading.value)
    if reading.input.of == CHOICE:
        return next(
            (option.label for option in reading.input.options if option.value == reading.text),
            reading.text,
        )
    return titles.get(reading.text, EMPTY) if titles else reading.text


def _again(document: dict[str, Any]) -> Markup | None:
    """For a kept answer, the way back to its card with its values."""
    if document["kind"] != "kept":
        return None
    try:
        card = find_card(document["values"].get("card", ""))
    except UnknownCard:
        return None
    query = document["values"].get("query", "")
    return tag(
        "a",
        "Open the card with these values",
        href=f"../{card.chapter}/{card.id}/{'?' + query if query else ''}",
    )


def record_form(
    kind: Kind, contents: dict[str, Any], records: list[dict[str, Any]], settings: Settings
) -> tuple[Markup, Given]:
    """The form of one record; a field that names another offers those there are."""
    choices: dict[str, tuple[Option, ...]] = {}
    held = references({"kind": kind.id, "values": contents["values"]})
    for other in set(kind.refers.values()):
        there = sorted(
            (each for each in records if each["kind"] == other),
            key=lambda each: title_of(each).casefold(),
        )
        options = [Option(each["id"], title_of(each)) for each in there]
        known = {option.value for option in options}
        gone = {text for name, text in held if kind.refers[name] == other and text not in known}
        choices[other] = (*options, *(Option(text, EMPTY) for text in sorted(gone)))
    card = kind.card_with(choices)
    counts = {
        item.name: contents["rows"].get(item.name, 0)
        for item in kind.fields
        if isinstance(item, Rows)
    }
    given = read_inputs(
        card, contents["values"], Settings(), exact=contents["values"], counts=counts
    )
    return form(card, given, settings, kind.one.capitalize()), given


def traced(
    found: list[Traced], asked: str, records: list[dict[str, Any]], settings: Settings
) -> Markup:
    """Lots with what they came of and where they went, for the screen and for paper."""
    if not found:
        return tag(
            "p",
            f"Nothing here is called “{asked.strip()[:60]}”: give the lot on a label, an order"
            " number, a mill lot or the lot of a jar.",
        )
    titles = {each["id"]: title_of(each) for each in records}
    return inner(*(_one_traced(each, titles, settings) for each in found))


def trace_sheet(
    found: list[Traced], asked: str, records: list[dict[str, Any]], settings: Settings, today: str
) -> Markup:
    """The same alone on paper."""
    return inner(
        tag("header", tag("b", "Bench Book"), tag("span", f"Traced: {asked.strip()[:60]}")),
        traced(found, asked, records, settings),
        tag(
            "footer",
            tag("span", f"Bench Book {__version__} · from the workbook as it stood on {today}"),
        ),
    )


def _one_traced(found: Traced, titles: dict[str, str], settings: Settings) -> Markup:
    back = [
        ("Dyed on", shown(reading_of(found.lot, "dyed"), {}, settings)),
        ("Colorway", _name(found.colorway)),
        ("Base", _name(found.base)),
        ("Mill lot", _mill(found.mill_lot, titles, settings)),
    ]
    doses = [
        (
            _bottle(bottle, jar),
            next(
                (
                    text
                    for name in ("volume", "powder")
                    if (text := shown(reading_of(found.lot, f"doses.{row}.{name}"), {}, settings))
                ),
                "",
            ),
        )
        for row, (bottle, jar, _) in enumerate(found.doses, 1)
    ]
    forward = [(f"Order {title_of(order)}", _sent(order, count)) for order, count in found.orders]
    made = [(title_of(each), line(each, KINDS["skein"], titles, settings)) for each in found.skeins]
    return tag(
        "section",
        tag("h3", f"Lot {title_of(found.lot)}"),
        _table("Back: where it came from", back + doses),
        _table("Made of it", made),
        _table(
            f"Forward: {len(found.orders)} order{'s' * (len(found.orders) != 1)} took it",
            forward,
            "No order here names this lot.",
        ),
        class_="traced",
    )


def _bottle(bottle: dict[str, Any] | None, jar: dict[str, Any] | None) -> str:
    lot = (
        f"jar lot {jar['values']['lot']}"
        if jar and jar["values"].get("lot")
        else "jar lot not written down"
    )
    return f"{_name(bottle) or _name(jar) or 'A dye'} ({lot})"


def _sent(order: dict[str, Any], count: str) -> str:
    day = order["values"].get("sent")
    return ", ".join(
        part
        for part in (
            f"{count} of it" if count else "",
            f"sent {write_date(date.fromisoformat(day))}" if day else "",
        )
        if part
    )


def _mill(document: dict[str, Any] | None, titles: dict[str, str], settings: Settings) -> str:
    return (
        f"{title_of(document)} ({line(document, KINDS['mill-lot'], titles, settings)})"
        if document
        else ""
    )


def _name(document: dict[str, Any] | None) -> str:
    return title_of(document) if document else ""


def _table(caption: str, rows: list[tuple[str, str]], none: str = "") -> Markup | None:
    if not rows and not none:
        return None
    lines = [
        tag("tr", tag("th", head, scope="row"), tag("td", text or "not written down"))
        for head, text in rows
    ]
    return (
        tag("table", tag("caption", caption), tag("tbody", *lines), class_="trace")
        if rows
        else tag("p", tag("b", caption), f" {none}")
    )
