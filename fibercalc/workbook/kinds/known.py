"""What she found out herself: own measurements, and answers of cards worth keeping."""

from ...core.card import DATE, Input
from ...core.link import LONGEST
from ...core.units import COUNT, LENGTH, NUMBER, PER_LENGTH, PERCENT, TIME
from ..kind import Kind, choice, name, names, note, number, words

GAUGE, SPEED, SHRINK, BATCH = ({"what": (what,)} for what in ("gauge", "speed", "shrinkage", "batch"))
PER = ("per 10 cm", "per 4 in", "per cm", "per in")

MEASUREMENT = Kind(
    "measurement", "own measurement", "Own measurements", "A gauge, a speed, a shrinkage, the minutes of a batch: measured once, used by every card that asks.",
    (
        name(measure="Such as “Dunmel, 4 mm, washed”."),
        choice("what", "It is a", ("gauge", "Gauge"), ("speed", "Knitting speed"), ("shrinkage", "Shrinkage"), ("batch", "Time for a batch")),
        names("base", "Base"),
        Input("day", DATE, "Measured on", optional=True),
        *number("stitches", PER_LENGTH, "Stitches or ends", ("0.5 per 10 cm", "300 per 10 cm"), PER, when=GAUGE),
        *number("rows", PER_LENGTH, "Rows or picks", ("0.5 per 10 cm", "300 per 10 cm"), PER, when=GAUGE),
        *number("needle", LENGTH, "Needle", ("0.5 mm", "40 mm"), ("mm",), when=GAUGE),
        choice("state", "Counted", ("", "Not said"), ("dry", "Dry relaxed: off the needles and rested"), ("wet", "Wet relaxed: soaked and dried flat"),
               ("full", "Fully relaxed: washed and tumbled"), when=GAUGE),
        *number("made", NUMBER, "Stitches made", ("0", "1000000"), when=SPEED),
        *number("in_minutes", NUMBER, "in minutes", ("0", "100000"), when=SPEED),
        *number("length_change", PERCENT, "Shorter by", ("-100 %", "100 %"), measure="Less than 0 where it grew.", when=SHRINK),
        *number("width_change", PERCENT, "Narrower by", ("-100 %", "100 %"), measure="Less than 0 where it grew.", when=SHRINK),
        *number("minutes", TIME, "Minutes for a batch", ("0 min", "100 h"), ("min", "h"), when=BATCH),
        *number("skeins", COUNT, "Skeins in a batch", ("1", "1000"), when=BATCH),
        note(),
    ),
    shown=("what", "base", "day"), refers={"base": "base"})

KEPT = Kind(
    "kept", "kept answer", "Kept answers", "An answer of a card as it stood that day, with the link that opens it again.",
    (
        name("What it is for"),
        words("card", "Card", longest=60),
        words("query", "Its values", longest=LONGEST),
        words("answer", "The answer", longest=1000),
        Input("day", DATE, "On", optional=True),
        note(),
    ),
    shown=("day", "answer"))
