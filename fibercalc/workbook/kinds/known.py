"""What she found out herself: own measurements, and answers of cards worth keeping."""

from ...core.card import DATE, Input
from ...core.link import LONGEST
from ...core.units import COUNT, LENGTH, NUMBER, PER_LENGTH, PERCENT, TIME
from ...held import RECORD
from ..kind import Kind, choice, name, names, note, number, words

WHAT = choice(
    RECORD.measurement.what,
    "It is a",
    ("gauge", "Gauge"),
    ("speed", "Knitting speed"),
    ("shrinkage", "Shrinkage"),
    ("batch", "Time for a batch"),
)
GAUGE, SPEED, SHRINK, BATCH = ({WHAT: (option.value,)} for option in WHAT.options)
PER = ("per 10 cm", "per 4 in", "per cm", "per in")

MEASUREMENT = Kind(
    RECORD.measurement,
    "own measurement",
    "Own measurements",
    "A gauge, a speed, a shrinkage, the minutes of a batch: measured once, used by every card that"
    " asks.",
    (
        name(measure="Such as “Dunmel, 4 mm, washed”."),
        WHAT,
        names(RECORD.measurement.base, "Base"),
        Input(DATE, "Measured on", optional=True, name=RECORD.measurement.day.name),
        *number(
            RECORD.measurement.stitches,
            PER_LENGTH,
            "Stitches or ends",
            ("0.5 per 10 cm", "300 per 10 cm"),
            PER,
            when=GAUGE,
        ),
        *number(
            RECORD.measurement.rows,
            PER_LENGTH,
            "Rows or picks",
            ("0.5 per 10 cm", "300 per 10 cm"),
            PER,
            when=GAUGE,
        ),
        *number(
            RECORD.measurement.needle, LENGTH, "Needle", ("0.5 mm", "40 mm"), ("mm",), when=GAUGE
        ),
        choice(
            RECORD.measurement.state,
            "Counted",
            ("", "Not said"),
            ("dry", "Dry relaxed: off the needles and rested"),
            ("wet", "Wet relaxed: soaked and dried flat"),
            ("full", "Fully relaxed: washed and tumbled"),
            when=GAUGE,
        ),
        *number(RECORD.measurement.made, NUMBER, "Stitches made", ("0", "1000000"), when=SPEED),
        *number(RECORD.measurement.in_minutes, NUMBER, "in minutes", ("0", "100000"), when=SPEED),
        *number(
            RECORD.measurement.length_change,
            PERCENT,
            "Shorter by",
            ("-100 %", "100 %"),
            measure="Less than 0 where it grew.",
            when=SHRINK,
        ),
        *number(
            RECORD.measurement.width_change,
            PERCENT,
            "Narrower by",
            ("-100 %", "100 %"),
            measure="Less than 0 where it grew.",
            when=SHRINK,
        ),
        *number(
            RECORD.measurement.minutes,
            TIME,
            "Minutes for a batch",
            ("0 min", "100 h"),
            ("min", "h"),
            when=BATCH,
        ),
        *number(RECORD.measurement.skeins, COUNT, "Skeins in a batch", ("1", "1000"), when=BATCH),
        note(),
    ),
    shows=(RECORD.measurement.what, RECORD.measurement.base, RECORD.measurement.day),
)

KEPT = Kind(
    RECORD.kept,
    "kept answer",
    "Kept answers",
    "An answer of a card as it stood that day, with the link that opens it again.",
    (
        name("What it is for"),
        words(RECORD.kept.card, "Card", longest=60),
        words(RECORD.kept.query, "Its values", longest=LONGEST),
        words(RECORD.kept.answer, "The answer", longest=1000),
        Input(DATE, "On", optional=True, name=RECORD.kept.day.name),
        note(),
    ),
    shows=(RECORD.kept.day, RECORD.kept.answer),
)
