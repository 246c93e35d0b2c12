"""What boundary.handle answers, by the word in "do"."""

from typing import Annotated, Literal, NotRequired, TypedDict

from .data import BenchRecord, Counts, Settings, Texts, WorkbookRecord


class FieldSaid(TypedDict):
    """About one field: how it was read, or what is wrong."""

    read: str
    why: str


class TakenBack(TypedDict):
    """What the form shows in place of what the example had only lent."""

    values: Texts
    rows: Counts


class Answer(TypedDict):
    """The answer to "work" and, with the parts that may be missing, to "open"."""

    answered: bool
    fields: dict[str, FieldSaid]
    shown: list[str]
    slots: Texts
    query: str | None
    own: Annotated[list[str], "names of the values that are hers"]
    taken_back: TakenBack
    say: str
    refused: Annotated[str, "what is wrong with no single field"]
    values: NotRequired[Texts]
    exact: NotRequired[Texts]
    rows: NotRequired[Counts]
    link_notes: NotRequired[list[str]]


class Converted(TypedDict):
    """A number in another unit."""

    text: str
    exact: str


class NoSheet(TypedDict):
    html: Literal[""]
    refused: str


class Sheet(TypedDict):
    """A sheet to be printed alone."""

    html: str
    kind: Annotated[Literal["alone", "paper", "labels"], "how it is printed"]
    said: NotRequired[Annotated[str, "for the page, not for the paper"]]


class Offer(TypedDict):
    """Values that a card can take."""

    label: str
    values: Texts
    kind: NotRequired[Annotated[str, "what kind of record it is from; My bench's have none"]]
    rows: NotRequired[Counts]
    why: NotRequired[
        Annotated[
            str,
            "what of it this card cannot take, in a line; values are empty where that is all of it",
        ]
    ]
    own: NotRequired[
        Annotated[list[str], "the names of what it says itself; all of it where none are named"]
    ]


class Offers(TypedDict):
    offers: list[Offer]


class BenchChecked(TypedDict):
    answered: bool
    record: BenchRecord | None
    fields: dict[str, FieldSaid]
    shown: list[str]
    saved_text: str


class BenchRead(TypedDict):
    record: BenchRecord
    notes: list[str]
    values: Texts
    exact: Texts
    rows: Counts
    settings: Settings


class WorkbookView(TypedDict):
    html: str
    count: int
    unread: int
    removed: Annotated[str, "what was removed lately and can be brought back"]
    reminder: str
    demo: Annotated[list[str], "ids of the demo's records"]
    bench: Annotated[int, "how many bases of My bench are not here yet"]


class WorkbookForm(TypedDict):
    html: str
    kind: str
    title: str
    named_by: int
    name: Annotated[str, "the field that names the record"]
    values: Texts
    exact: Texts
    rows: Counts
    changed: str


class WorkbookChecked(TypedDict):
    fields: dict[str, FieldSaid]
    shown: list[str]
    refused: str
    record: WorkbookRecord | None


class NotRead(TypedDict):
    refused: str


class WorkbookFile(TypedDict):
    """What a file would change, told before anything does."""

    words: str
    clashes: list[str]
    new: list[WorkbookRecord]
    newer: list[WorkbookRecord]
    settled: list[WorkbookRecord]
    bench: BenchRecord | None
    bench_clash: bool


class MadeFile(TypedDict):
    text: str
    name: str
    unproven: NotRequired[Annotated[str, "why an export, read back, is no whole copy"]]


class Traced(TypedDict):
    html: str
    sheet: str
    found: int


class KeepPlace(TypedDict):
    place: str
    words: str
    name: str


class KeepPlaces(TypedDict):
    places: list[KeepPlace]


class NotSaved(TypedDict):
    refused: str


class Saved(TypedDict):
    record: WorkbookRecord


class Checks(TypedDict):
    passed: int
    failed: list[str]


class Hello(TypedDict):
    version: str
    python: str


class LinkNotMade(TypedDict):
    """A field is bad, or no link can be made of what they say."""

    answered: Literal[False]
    fields: dict[str, FieldSaid]
    shown: list[str]
    refused: str


class LinkMade(TypedDict):
    """A base's link, and all that carries it."""

    answered: Literal[True]
    fields: dict[str, FieldSaid]
    shown: list[str]
    refused: str
    link: str
    short: Annotated[str, "without what travels in its fragment"]
    about: str
    svg: str
    png: str
    snippet: str
    listener: str
    booth: str


class Stand(TypedDict):
    html: str
    refused: str


class LinkRules(TypedDict):
    """How a link is read; RULES of fibercalc/workbook/base_link.py."""

    version: str
    longest: int
    number: str
    hidden: str
    space: str
    classes: list[str]
    texts: Counts
    grams: tuple[int, int]
    meters: tuple[int, int]
    grist: tuple[int, int]


class Sure(TypedDict):
    key: str
    label: str


class YardageSize(TypedDict):
    key: str
    label: str
    measure: str
    need: list[float]
    curve: int


class YardageProject(TypedDict):
    key: str
    label: str
    assumes: str
    sizes_from: str
    first: str
    sizes: list[YardageSize]


class YardageTable(TypedDict):
    """helper.json beside the scripts: everything that the yardage helper says without Python;
    made by fibercalc/site/helper.py.
    """

    rules: LinkRules
    words: Texts
    odds: Annotated[list[tuple[float, str]], "floor, words"]
    most: int
    counts: list[str]
    nexts: list[str]
    lengths: Annotated[list[tuple[float, str, str]], "upper edge, meters, yards"]
    classes: Texts
    sure: list[Sure]
    first_sure: str
    units: dict[Literal["grams", "meters"], dict[str, float]]
    grists: list[float]
    ratios: list[float]
    curves: list[list[int]]
    projects: list[YardageProject]


class YardageSaid(TypedDict):
    say: str
    fewer: str
    need: str
    count: Annotated[int, "skeins; 0 when there are too many"]


class CounterBase(TypedDict):
    """One base of My bench or the workbook at the counter; costs[n] is the price of n skeins as
    written, all "" where there is none.
    """

    number: int
    label: str
    put_up: str
    lot: str
    grams: float
    meters: float
    costs: list[str]


class Counter(TypedDict):
    bases: list[CounterBase]
    notes: list[str]


class CounterCode(TypedDict):
    svg: str
    link: str


Replies = TypedDict(
    "Replies",
    {
        "work": Answer,
        "open": Answer,
        "convert": Converted,
        "sheet": Sheet | NoSheet,
        "check": Checks,
        "hello": Hello,
        "bench-check": BenchChecked,
        "bench-read": BenchRead,
        "bench-offers": Offers,
        "yardage": YardageSaid,
        "base-link": LinkMade | LinkNotMade,
        "stand": Stand,
        "counter": Counter,
        "counter-code": CounterCode,
        "workbook-view": WorkbookView,
        "workbook-form": WorkbookForm,
        "workbook-check": WorkbookChecked,
        "workbook-file": WorkbookFile | NotRead,
        "workbook-demo": WorkbookFile | NotRead,
        "workbook-bench": WorkbookFile,
        "workbook-export": MadeFile,
        "workbook-table": MadeFile,
        "workbook-trace": Traced,
        "workbook-places": KeepPlaces,
        "workbook-keep": Saved | NotSaved,
    },
)
