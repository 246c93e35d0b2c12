"""What boundary.handle is asked, by the word in "do", beside that word.

Python reads all of it as hostile, whatever it is: these are what our own page sends.
"""

from typing import Annotated, NotRequired, TypedDict

from .data import BenchRecord, Counts, Settings, Step, Texts, WorkbookRecord


class Form(TypedDict, total=False):
    """A form as it stands: texts by name, a unit under "<name>.unit"."""

    values: Texts
    exact: Annotated[Texts, "the full value behind a number that the page wrote itself"]
    rows: Counts
    own: Annotated[list[str], "names of the values that are hers"]


class FormRead(Form):
    settings: Settings


class CardForm(FormRead):
    card: str


class ToWork(CardForm):
    trail: Annotated[list[Step], "the cards before on the way here, oldest first"]


class ToOpen(TypedDict):
    card: str
    query: Annotated[str, '"" for the example']
    settings: NotRequired[Settings]
    trail: NotRequired[list[Step]]


ToConvert = TypedDict(
    "ToConvert",
    {
        "card": str,
        "name": str,
        "text": str,
        "exact": NotRequired[str],
        "from": str,
        "to": str,
        "settings": Settings,
    },
)


class ToPrint(CardForm):
    paper: Annotated[int | None, "which of the card's own papers; null for the half-page sheet"]
    address: str
    here: Annotated[str, "where the book stands"]


class ToCheck(TypedDict):
    files: Annotated[Texts, "files of worked examples, by name"]


class Nothing(TypedDict):
    pass


class ToRead(TypedDict):
    record: Annotated[object, "from the store or from a file: it may be anything"]
    settings: Settings


class Kept(TypedDict):
    """What she has written down."""

    record: BenchRecord | None
    records: list[WorkbookRecord]
    settings: Settings


class ForCard(Kept):
    card: str


class AtCounter(Kept):
    number: NotRequired[int]
    here: Annotated[str, "where the book stands"]


class Skein(TypedDict):
    grams: float
    meters: float
    project: str
    size: str
    sure: str


class ToLink(FormRead):
    here: Annotated[str, "where the book stands"]


class Workbook(TypedDict):
    """What goes with a question about all records."""

    records: list[WorkbookRecord]
    settings: Settings
    bench: BenchRecord | None


class ToView(Workbook):
    about: Annotated[object, "how often it was written, and when a file was made last"]
    removed: Annotated[object, "what was removed lately, a batch for each press"]
    now: str


class ToFillIn(Workbook):
    record: str | None
    kind: str | None
    copy: bool


class ToCheckRecord(Form, Workbook):
    kind: str
    id: str


class FromFile(Workbook):
    text: str


class ToExport(Workbook):
    today: str


class ToTable(ToExport):
    kind: str


class ToTrace(ToExport):
    asked: str


class ToPlace(CardForm):
    records: list[WorkbookRecord]


class ToKeep(ToPlace):
    place: str
    name: str
    fresh: Annotated[str, "what a new record's id ends in"]
    today: str


Questions = TypedDict(
    "Questions",
    {
        "work": ToWork,
        "open": ToOpen,
        "convert": ToConvert,
        "sheet": ToPrint,
        "check": ToCheck,
        "hello": Nothing,
        "bench-check": FormRead,
        "bench-read": ToRead,
        "bench-offers": ForCard,
        "yardage": Skein,
        "base-link": ToLink,
        "stand": ToLink,
        "counter": Kept,
        "counter-code": AtCounter,
        "workbook-view": ToView,
        "workbook-form": ToFillIn,
        "workbook-check": ToCheckRecord,
        "workbook-file": FromFile,
        "workbook-demo": Workbook,
        "workbook-bench": Workbook,
        "workbook-export": ToExport,
        "workbook-table": ToTable,
        "workbook-trace": ToTrace,
        "workbook-places": ToPlace,
        "workbook-keep": ToKeep,
    },
)
