"""What is asked about a yarn's fibers, and what its label says of them."""

from __future__ import annotations

from ....core.card import CHOICE, TEXT, Between, Case, Input, Many, Option, Plain, Result, Row, Rows
from ....core.table import read_table
from ....core.units import COUNT, MASS, PERCENT
from ....held import RECORD
from ...fiber_label import EU, US

PERCENTS, GRAMS = "percent", "weight"
UNKNOWN, OTHER, NO, YES = "unknown", "other", "no", "yes"
NAMES = {row["key"]: row for row in read_table("sell", "fiber-names").rows}
WOOLS = frozenset(key for key, row in NAMES.items() if row["wool"])


FIBER = Input[str](
    CHOICE,
    "Fiber",
    default="silk",
    options=tuple(Option(key, row["label"]) for key, row in NAMES.items()),
)


FUNCTION = Input[str](
    CHOICE,
    "Under 5 %, but it does something",
    default=NO,
    options=(Option(NO, "No"), Option(YES, "Yes: strength, stretch")),
)


class Share(Row):
    """One fiber of which the percent is known."""

    fiber = FIBER
    share = Input[float | None](
        PERCENT, "Share", default="", allowed=("0.1 %", "100 %"), optional=True
    )
    function = FUNCTION

    share_left = Between[float](PERCENT, "Share left for it")


class Weighed(Row):
    """One fiber that was weighed."""

    fiber = FIBER
    mass = Input[float](
        MASS, "Weight", default="20 g", allowed=("0.01 g", "100 kg"), units=("g", "oz", "kg")
    )
    function = FUNCTION


class FiberContent(Case):
    """A yarn by its fibers, sold in one place: what stands on its label."""

    sold = Input[str](
        CHOICE,
        "It is sold in",
        default=US,
        options=(Option(US, "The US"), Option(EU, "The EU or the UK")),
    )
    by = Input[str](
        CHOICE,
        "You know",
        default=PERCENTS,
        options=(
            Option(PERCENTS, "Percent, from the mill"),
            Option(GRAMS, "Grams of each, blended by you"),
        ),
    )
    fibers = Rows(
        Share,
        "Fibers",
        "fiber",
        record=RECORD.base.fibers,
        least=1,
        most=8,
        when={by: (PERCENTS,)},
        measure=(
            "Together 100 %; one left blank is the rest. The same fiber may stand twice: it is"
            " added up."
        ),
        default=({"fiber": "wool", "share": "75 %"}, {"fiber": "nylon", "share": ""}),
    )
    blend = Rows(
        Weighed,
        "Fibers, weighed",
        "fiber",
        least=1,
        most=8,
        when={by: (GRAMS,)},
        measure=(
            "Of a yarn that is a blend itself, give each of its fibers: 50 g of 75/25 are 37.5"
            " and 12.5 g."
        ),
        default=(
            {"fiber": "wool", "mass": "37.5 g"},
            {"fiber": "nylon", "mass": "12.5 g"},
            {"fiber": "wool", "mass": "50 g"},
        ),
    )
    loading = Input[float](
        PERCENT,
        "Weight that is no fiber",
        default="0 %",
        allowed=("0 %", "50 %"),
        usual=("0 %", "20 %"),
        when={sold: (US,)},
        measure=(
            "Weighting or filling, at most; 0 for nearly all yarn. The Wool Act wants it on the"
            " label."
        ),
    )
    maker = Input[str | None](
        TEXT, "Who answers for it", default="Brackwend Dyehouse", longest=50, optional=True
    )
    spun = Input[str | None](
        TEXT,
        "Spun in (country)",
        default="",
        longest=30,
        optional=True,
        measure="From the mill’s papers. Blank leaves a place to write it.",
    )

    weight = Between[float](MASS, "All fibers")
    whole = Between[float](PERCENT, "All fibers")
    share = Many(PERCENT, "{}, exactly")
    stated = Between[float](PERCENT, "Largest, on the label")
    shares = Plain[dict[str, float]]()  # % by fiber
    most = Plain[str]()
    small = Plain[frozenset[str]]()  # fibers that may be “other”
    lines = Plain[list[tuple[str, int]]]()  # whole percents in the order of the label
    allowed = Plain[bool]()  # whether the law gives points either way

    content = Result[str](TEXT, "Fiber line")
    maker_line = Result[str](TEXT, "Maker")
    origin = Result[str](TEXT, "Origin line")
    largest = Result[float](PERCENT, "Largest share, exactly", finest=(0.01,))
    named = Result[int](COUNT, "Fibers named")
    other = Result[float](PERCENT, "Other fiber, exactly", finest=(0.01,))
    test_low = Result[float](PERCENT, "A test may find, of the largest", finest=(0.1,))
    test_high = Result[float](PERCENT, "and up to", finest=(0.1,))
