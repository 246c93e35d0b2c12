"""What the care label asks: fibers, dye and finish of the piece, and what a sample went through."""

from __future__ import annotations

from ....core.card import CHOICE, TEXT, Between, Case, Input, Many, Option, Plain, Result, Row, Rows
from ....core.table import read_table
from ....core.units import COUNT, NUMBER, PERCENT
from ....held import RECORD

TABLES = {
    "fiber": "care-fibers",
    "dye": "care-dyes",
    "finish": "care-finishes",
    "proof": "care-proofs",
}
LABELS = {
    "wash": "Washing",
    "bleach": "Bleaching",
    "tumble": "Tumble drying",
    "dry": "Drying",
    "iron": "Ironing",
    "clean": "Dry cleaning",
}
ALLOWS = "{}: level that “{{}}” allows"
NO, YES = "no", "yes"


def _options(kind: str) -> tuple[Option, ...]:
    return tuple(Option(row["key"], row["label"]) for row in read_table("wash", TABLES[kind]).rows)


WASHED = tuple(
    row["key"] for row in read_table("wash", TABLES["proof"]).rows if row["key"] != "none"
)


class Fiber(Row):
    """One fiber of the piece and its share by weight."""

    fiber = Input[str](CHOICE, "Fiber", default="wool", options=_options("fiber"))
    percent = Input[float | None](
        PERCENT,
        "Share",
        record=RECORD.base.fibers.share,
        default="",
        allowed=("0.5 %", "100 %"),
        optional=True,
    )
    share = Between[float](PERCENT, "Share")


class CareLabel(Case):
    """A piece by fibers, dye, finish and what was tried: the gentlest level of each treatment."""

    fibers = Rows(
        Fiber,
        "Fibers",
        "fiber",
        record=RECORD.base.fibers,
        least=1,
        most=8,
        measure="By weight; one left blank is the rest. A fiber you are not sure of: say so.",
        default=({"fiber": "superwash", "percent": "75 %"}, {"fiber": "nylon", "percent": ""}),
    )
    dye = Input[str](CHOICE, "Dye", default="acid-milling", options=_options("dye"))
    finish = Input[str](CHOICE, "Finish or trim", default="none", options=_options("finish"))
    proof = Input[str](
        CHOICE,
        "A sample was washed, measured and held",
        default="mild30",
        options=_options("proof"),
    )
    times = Input[int](
        COUNT,
        "How many times",
        default="1",
        allowed=("1", "100"),
        usual=("1", "20"),
        when={proof: WASHED},
    )
    tumbled = Input[str](
        CHOICE,
        "A sample was tumble dried and held",
        default=NO,
        options=(Option(NO, "No"), Option(YES, "Yes")),
    )
    stains = Input[str](
        CHOICE,
        "White cloth washed with it",
        default="slight",
        options=(
            Option("unknown", "Was not tried"),
            Option("stains", "Was stained, grade 3-4 and below"),
            Option("slight", "Hardly stained, grade 4 and above"),
            Option("undyed", "It is undyed"),
        ),
    )

    whole = Between[float](PERCENT, "All fibers")
    washing_levels = Many(NUMBER, ALLOWS.format(LABELS["wash"]))
    bleaching_levels = Many(NUMBER, ALLOWS.format(LABELS["bleach"]))
    tumbling_levels = Many(NUMBER, ALLOWS.format(LABELS["tumble"]))
    drying_levels = Many(NUMBER, ALLOWS.format(LABELS["dry"]))
    ironing_levels = Many(NUMBER, ALLOWS.format(LABELS["iron"]))
    cleaning_levels = Many(NUMBER, ALLOWS.format(LABELS["clean"]))
    gentlest = Many(NUMBER, "{}: the gentlest of these")
    reasons = Plain[dict[str, str]]()
    label = Plain[str]()

    content = Result[str](TEXT, "Fiber")
    wash = Result[str](TEXT, LABELS["wash"])
    bleach = Result[str](TEXT, LABELS["bleach"])
    tumble = Result[str](TEXT, LABELS["tumble"])
    dry = Result[str](TEXT, LABELS["dry"])
    iron = Result[str](TEXT, LABELS["iron"])
    clean = Result[str](TEXT, LABELS["clean"])
