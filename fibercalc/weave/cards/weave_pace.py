"""Hours for a run of cloth from own speeds, the sittings and weeks they fill, and where the time goes."""

from ...core.answer import Table
from ...core.card import BENCH_RULE, Basis, Card, Carry, Input, Result
from ...core.problem import Refused
from ...core.units import COUNT, LENGTH, NUMBER, PERCENT, TIME
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ..pace import minutes_at_pace, sittings, weaving_minutes, winding_minutes
from ..pictures.time import time_bars

SLOW = 0.15  # 95 %: how far a whole run strays from what a timed stretch says


def answer(
    w,
    ends,
    warp,
    wind_length,
    wind_minutes,
    thread_ends,
    thread_minutes,
    beam,
    pieces,
    piece_picks,
    weave_picks,
    weave_minutes,
    stick_share,
    stick_times,
    changes,
    change_minutes,
    hems,
    hem_minutes,
    finish,
    sitting,
    settling,
    week,
):
    if settling >= sitting:
        raise Refused(
            f"Settling down takes {settling:g} min of a sitting of {sitting:g} min, which leaves"
            " nothing; give less.",
            "settling",
        )
    winding = w.step(
        "winding",
        "ends * warp / wind_length * wind_minutes",
        winding_minutes(ends, warp, wind_length, wind_minutes),
        TIME,
        label="Winding the warp",
    )
    threading = w.step(
        "threading",
        "ends / thread_ends * thread_minutes",
        minutes_at_pace(ends, thread_ends, thread_minutes),
        TIME,
        label="Threading",
    )
    setup = w.step(
        "setup",
        "winding + threading + beam",
        winding + threading + beam,
        TIME,
        label="Before the first pick",
    )
    weaving = w.step(
        "weaving",
        "pieces * piece_picks / weave_picks * weave_minutes * (1 + stick_share / 100 * (stick_times"
        " - 1))",
        weaving_minutes(pieces * piece_picks, weave_picks, weave_minutes, stick_share, stick_times),
        TIME,
        label="Weaving",
    )
    changing = w.step(
        "changing",
        "pieces * changes * change_minutes",
        pieces * changes * change_minutes,
        TIME,
        label="Changing colors",
    )
    hemming = w.step(
        "hemming", "pieces * hems * hem_minutes", pieces * hems * hem_minutes, TIME, label="Hemming"
    )
    ending = w.step(
        "ending",
        "hemming + pieces * finish",
        hemming + pieces * finish,
        TIME,
        label="Hemming, washing and pressing",
    )
    total = w.step(
        "total",
        "setup + weaving + changing + ending",
        setup + weaving + changing + ending,
        TIME,
        label="In all",
    )
    each = w.step("each", "total / pieces", total / pieces, TIME, label="For each piece")
    one_more = w.step(
        "one_more",
        "(weaving + changing + ending) / pieces",
        (weaving + changing + ending) / pieces,
        TIME,
        label="One more piece on the same warp, without its yarn’s winding",
    )
    for name, value in (("total", total), ("each", each), ("one_more", one_more)):
        w.error(name, SLOW * value)
    return {
        "total": total,
        "each": each,
        "one_more": one_more,
        "setup": setup,
        "weaving": weaving,
        "ending": ending,
        "share": 100 * setup / total,
        "winding": winding,
        "threading": threading,
        "changing": changing,
        "hemming": hemming,
    }


def count_sittings(r):
    return sittings(r.value("total"), r.given["sitting"], r.given["settling"])


def count_weeks(r):
    return r.value("sittings") / r.given["week"]


def _at_most(r):
    return sittings(r.high("total"), r.given["sitting"], r.given["settling"])


def say(r):
    many = r.given["pieces"]
    what = "The piece takes" if many == 1 else f"The {many} pieces take"
    first = (
        f"{what} about {r.text('total', 'h')} ({r.span('total', 'h')}): {r.text('each', 'h')} each."
    )
    count, most = int(r.value("sittings")), _at_most(r)
    spoken = f"{count} {'sitting' if count == 1 else 'sittings'}" + (
        f", {most} at the slow end" if most > count else ""
    )
    return (
        first,
        (
            f"That is {spoken}, about {r.text('weeks')}"
            f" {'week' if r.text('weeks') == '1' else 'weeks'}. {r.text('setup', 'h')} of it pass"
            " before the first pick."
        ),
    )


def notes(r):
    said = [
        f"Before the first pick goes {r.kept['share']:.0f} % of the time, however many pieces are"
        f" on the warp; one more piece on it is about {r.text('one_more', 'h')}."
    ]
    if r.given["stick_share"] and r.given["stick_times"] > 1:
        plain = r.value("weaving") / (
            1 + r.given["stick_share"] / 100 * (r.given["stick_times"] - 1)
        )
        said.append(
            f"The stick costs {r.amount(r.value('weaving') - plain, TIME, 'h', 2)} of the weaving."
        )
    return said


def _parts(r):
    """What is done, and its minutes."""
    finish = r.value("ending") - r.kept["hemming"]
    return [
        ("Winding the warp", r.kept["winding"]),
        ("Threading", r.kept["threading"]),
        ("Beaming, tying on", r.given["beam"]),
        ("Weaving", r.value("weaving")),
        ("Changing colors", r.kept["changing"]),
        ("Hemming", r.kept["hemming"]),
        ("Washing, pressing", finish),
    ]


def picture(r):
    return time_bars([(name, minutes / 60) for name, minutes in _parts(r)], r)


def table(r):
    total = r.value("total")
    rows = tuple(
        (
            name,
            r.amount(minutes, TIME, "h", 2),
            r.amount(minutes / r.given["pieces"], TIME, "min", 2),
            f"{100 * minutes / total:.0f} %",
        )
        for name, minutes in _parts(r)
        if minutes
    )
    return Table("Where the time goes", ("Work", "In all", "For each piece", "Share"), rows)


CARD = Card(
    id="weave-pace",
    chapter="weave",
    place=50,
    question="How long will the weaving take?",
    inputs=(
        Input(
            COUNT,
            "Ends in the warp",
            default="160",
            allowed=("1", "5000"),
            usual=("30", "800"),
            name="ends",
        ),
        Input(
            LENGTH,
            "Length of the warp",
            default="4.9 m",
            allowed=("0.2 m", "200 m"),
            usual=("1 m", "15 m"),
            units=("m", "yd"),
            name="warp",
        ),
        Input(
            LENGTH,
            "Yarn you wound",
            default="98 m",
            allowed=("1 m", "10000 m"),
            usual=("10 m", "500 m"),
            units=("m", "yd"),
            measure="Time twenty ends: 20 × the length of the warp.",
            name="wind_length",
        ),
        Input(
            TIME,
            "Winding it took",
            default="15 min",
            allowed=("0.5 min", "600 min"),
            usual=("2 min", "60 min"),
            rough="15 %",
            units=("min", "h"),
            name="wind_minutes",
        ),
        Input(
            COUNT,
            "Ends you threaded",
            default="20",
            allowed=("1", "2000"),
            usual=("5", "100"),
            name="thread_ends",
        ),
        Input(
            TIME,
            "Threading them took",
            default="10 min",
            allowed=("0.2 min", "600 min"),
            usual=("2 min", "60 min"),
            rough="15 %",
            units=("min", "h"),
            measure="Slots and holes; with two heddles or shafts all of it.",
            name="thread_minutes",
        ),
        Input(
            TIME,
            "Beaming and tying on",
            default="60 min",
            allowed=("0 min", "1200 min"),
            usual=("10 min", "240 min"),
            rough="20 %",
            units=("min", "h"),
            name="beam",
        ),
        Input(COUNT, "Pieces", default="5", allowed=("1", "100"), usual=("1", "12"), name="pieces"),
        Input(
            COUNT,
            "Picks of a piece",
            default="384",
            allowed=("1", "20000"),
            usual=("20", "2000"),
            name="piece_picks",
        ),
        Input(
            COUNT,
            "Plain picks you wove",
            default="50",
            allowed=("1", "5000"),
            usual=("10", "500"),
            name="weave_picks",
        ),
        Input(
            TIME,
            "Weaving them took",
            default="12 min",
            allowed=("0.2 min", "600 min"),
            usual=("2 min", "60 min"),
            rough="15 %",
            units=("min", "h"),
            measure="With advancing the warp and winding the shuttle.",
            name="weave_minutes",
        ),
        Input(
            PERCENT,
            "Picks with the stick",
            default="30 %",
            allowed=("0 %", "100 %"),
            usual=("0 %", "70 %"),
            rough="5 %",
            name="stick_share",
        ),
        Input(
            NUMBER,
            "Such a pick takes, plain ones",
            default="1.5",
            allowed=("1", "20"),
            usual=("1", "6"),
            rough="0.2",
            measure="1 is as long as a plain one; picking every pick by hand is 5 and more.",
            name="stick_times",
        ),
        Input(
            COUNT,
            "Color changes in a piece",
            default="22",
            allowed=("0", "2000"),
            usual=("0", "100"),
            name="changes",
        ),
        Input(
            TIME,
            "A change takes",
            default="0.5 min",
            allowed=("0 min", "60 min"),
            usual=("0 min", "5 min"),
            rough="0.2 min",
            units=("min", "s"),
            name="change_minutes",
        ),
        Input(
            COUNT,
            "Hems or fringes of a piece",
            default="2",
            allowed=("0", "8"),
            usual=("0", "2"),
            name="hems",
        ),
        Input(
            TIME,
            "One takes",
            default="25 min",
            allowed=("0 min", "600 min"),
            usual=("5 min", "120 min"),
            rough="20 %",
            units=("min", "h"),
            name="hem_minutes",
        ),
        Input(
            TIME,
            "Washing and pressing a piece",
            default="10 min",
            allowed=("0 min", "600 min"),
            usual=("0 min", "60 min"),
            rough="20 %",
            units=("min", "h"),
            name="finish",
        ),
        Input(
            TIME,
            "You sit at the loom for",
            default="120 min",
            allowed=("5 min", "1000 min"),
            usual=("20 min", "480 min"),
            units=("min", "h"),
            name="sitting",
        ),
        Input(
            TIME,
            "of which to settle and clear away",
            default="10 min",
            allowed=("0 min", "240 min"),
            usual=("0 min", "40 min"),
            units=("min", "h"),
            name="settling",
        ),
        Input(
            NUMBER,
            "Times a week",
            default="4",
            allowed=("0.1", "40"),
            usual=("0.5", "10"),
            name="week",
        ),
    ),
    results=(
        Result(TIME, "In all", units=("h",), finest=(0.5,), floor=0.0, name="total"),
        Result(TIME, "For each piece", units=("h",), finest=(0.1,), floor=0.0, name="each"),
        Result(TIME, "Before the first pick", units=("h",), finest=(0.1,), floor=0.0, name="setup"),
        Result(TIME, "Weaving", units=("h",), finest=(0.1,), floor=0.0, name="weaving"),
        Result(
            TIME,
            "Hemming, washing, pressing",
            units=("h",),
            finest=(0.1,),
            floor=0.0,
            name="ending",
        ),
        Result(
            TIME,
            "One more piece on the same warp",
            units=("h",),
            finest=(0.1,),
            floor=0.0,
            name="one_more",
        ),
        Result(COUNT, "Sittings", rounding="up", decided=count_sittings, name="sittings"),
        Result(NUMBER, "Weeks", finest=(1,), rounding="up", decided=count_weeks, name="weeks"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(table,),
    basis=Basis(
        BENCH_RULE,
        "Your own timed stretches, carried on to the whole run. A run strays 15 % from what a short"
        " stretch says (common practice, 95 %): knots, mistakes and tired hands are in no timed"
        " stretch.",
    ),
    sources=(ARITHMETIC, COMMON_PRACTICE),
    carry=(
        Carry("cloth-picture", "What will it look like?", {"ends": "ends"}),
        Carry(
            "weft-left",
            "What does the rest of a ball weave?",
            {"pieces": "pieces", "piece_picks": "piece_picks"},
        ),
    ),
)
