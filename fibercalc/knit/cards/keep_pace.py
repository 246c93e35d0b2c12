"""Keeping pace with a project that comes out in parts on dates: hours for each part, the day it is done, where it falls behind."""

from ...core.answer import Table
from ...core.card import CHOICE, DATE, MODEL, TEXT, Basis, Card, Carry, Input, Option, Result, Rows, Save
from ...core.day import write_date
from ...core.problem import Refused
from ...core.units import COUNT, NUMBER, TIME
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ..pace import calendar_days, first_behind, keep_pace, knitting_minutes, minutes_per_week_needed, part_stitches, stitches_per_minute
from ..pictures.pace import pace_timeline

BY_STITCHES, BY_ROWS = "stitches", "rows"


def answer(w, counted_by, first, grow, parts, speed_stitches, speed_minutes, week, start):
    counts = _counts(parts, counted_by, first, grow)
    if any(later.release < earlier.release for earlier, later in zip(parts, parts[1:])):
        raise Refused("Parts: they come out in order; a later part has an earlier day.", "parts.1.release")
    total = sum(counts)
    if counted_by == BY_STITCHES:
        w.step("total", "sum(parts.stitches)", total, NUMBER, label="Stitches in all")
    else:
        w.step("total", f"parts[{len(parts)}].last_row * first + grow * parts[{len(parts)}].last_row * (parts[{len(parts)}].last_row - 1) / 2", total, NUMBER, label="Stitches in all")
    speed = w.step("speed", "speed_stitches / speed_minutes", stitches_per_minute(speed_stitches, speed_minutes), NUMBER, label="Stitches in a minute")
    minutes = w.step("minutes", "total / speed", knitting_minutes(total, speed), TIME, label="Time at the needles")
    weekly = 60 * week
    days = [calendar_days(knitting_minutes(count, speed), weekly) for count in counts]
    w.step("weeks", "minutes / (60 * week)", minutes / weekly, NUMBER, label="Weeks of knitting time")
    releases = [row.release for row in parts]
    found = keep_pace(days, releases, start)
    # A part's number names one of them and is no amount: it stays fixed, and how sure it is is said by the parts at both ends of the pace.
    behind_at = w.decide("behind_at", first_behind(found))
    needed = _needed(counts, releases, start, speed)
    return {"minutes": minutes, "weeks": minutes / weekly, "speed": speed, "done": found[-1].done, "behind_at": behind_at, "needed": needed, "days": days, "found": found,
            "counts": counts}


def _needed(counts, releases, start, speed):
    """Time in a week that gets each part done by the day the next one is out; None where one can only be begun after that."""
    longest = None
    for count, here, later in zip(counts, releases, releases[1:]):
        if start > here and start >= later:
            return None
        days = max((later - max(here, start)).days, 1)
        longest = max(longest or 0.0, minutes_per_week_needed(knitting_minutes(count, speed), days))
    return longest


def _counts(parts, counted_by, first, grow):
    """Stitches of each part."""
    if counted_by == BY_STITCHES:
        return [row.stitches for row in parts]
    counts, before = [], 0
    for number, row in enumerate(parts, 1):
        if row.last_row <= before:
            raise Refused(f"Part {number}, its last row: {row.last_row} given; it must come after row {before}, the last of the part before.", f"parts.{number}.last_row")
        counts.append(part_stitches(before, row.last_row, first, grow))
        before = row.last_row
    return counts


def _at(r, share):
    """The plan at a pace, speed and hours of a week together, that is so much faster (1.1) or slower (0.9)."""
    return keep_pace([days / share for days in r.kept["days"]], [row.release for row in r.given["parts"]], r.given["start"])


def _ends(r):
    weeks = r.value("weeks")
    return _at(r, weeks / max(r.low("weeks"), 0.05 * weeks)), _at(r, weeks / r.high("weeks"))


def say(r):
    quick, slow = _ends(r)
    days = sorted({quick[-1].done, slow[-1].done})
    span = f", from {write_date(days[0])} to {write_date(days[-1])}" if len(days) > 1 else ""
    behind = r.value("behind_at")
    parts = r.given["parts"]
    first = f"You will likely fall behind in {parts[behind - 1].name}." if behind else "You will likely keep pace to the end."
    last = f"The last part is done about {write_date(r.value('done'))}{span}: {r.text('minutes', 'h')} at the needles."
    if behind and r.has("needed"):
        last += f" To keep pace in every part takes {r.text('needed', 'h')} a week."
    return first, last


def notes(r):
    counts = r.kept["counts"]
    said = []
    if r.given["counted_by"] == BY_ROWS and len(counts) > 1 and counts[-1] > 1.2 * counts[0]:
        said.append(f"The rows grow: the last part holds {counts[-1] / counts[0]:.1f} times the stitches of the first.")
    quick, slow = (first_behind(end) for end in _ends(r))
    names = ["in none"] + [f"in {row.name}" for row in r.given["parts"]]
    if quick != slow:
        said.append(f"At the slow end of your pace you fall behind {names[slow]}, at the quick end {names[quick]}.")
    said.append("A part begins when it is out and the one before is done. It falls behind when it is done after the next one is out.")
    return said


def plan(r):
    quick, slow = _ends(r)
    rows = []
    for row, count, part, early, late in zip(r.given["parts"], r.kept["counts"], r.kept["found"], quick, slow):
        hours = r.amount(knitting_minutes(count, r.value("speed")), TIME, "h", 2)
        behind = "–" if part.behind is None else "no" if part.behind <= 0 else f"{part.behind} {'day' if part.behind == 1 else 'days'}"
        rows.append((row.name, write_date(row.release), r.number(count), hours, write_date(part.done), f"{write_date(early.done)} to {write_date(late.done)}", behind))
    return Table("Part by part", ("Part", "Out", "Stitches", "Hours", "Done about", "Likely between", "Behind"), tuple(rows))


def picture(r):
    quick, slow = _ends(r)
    return pace_timeline([row.name for row in r.given["parts"]], r.kept["found"], quick, slow)


ROWS_ONLY, STITCHES_ONLY = {"counted_by": (BY_ROWS,)}, {"counted_by": (BY_STITCHES,)}

CARD = Card(
    id="keep-pace", chapter="knit", place=70,
    question="Can I keep up with a project in parts?",
    inputs=(
        Input("counted_by", CHOICE, "The parts are given by", default=BY_ROWS, options=(Option(BY_ROWS, "The row each one ends at"), Option(BY_STITCHES, "Their stitches"))),
        Input("first", NUMBER, "Stitches in the first row", default="33", allowed=("1", "2000"), usual=("1", "300"), when=ROWS_ONLY),
        Input("grow", NUMBER, "Stitches added per row", default="1", allowed=("0", "50"), usual=("0", "6"), when=ROWS_ONLY, measure="On average; 0 for a straight piece."),
        Rows("parts", "Parts", "part", least=1, most=24, measure="In the order in which they come out.",
             fields=(Input("name", TEXT, "Name", default="Another part", longest=24, lent=False), Input("release", DATE, "Comes out on", default="2027-04-09"),
                     Input("last_row", COUNT, "Ends at row", default="480", allowed=("1", "5000"), when=ROWS_ONLY),
                     Input("stitches", NUMBER, "Stitches", default="18600", allowed=("1", "1000000"), when=STITCHES_ONLY)),
             default=tuple({"name": f"Part {number}", "release": release, "last_row": str(80 * number), "stitches": "18600"}
                           for number, release in enumerate(("2027-03-05", "2027-03-12", "2027-03-19", "2027-03-26", "2027-04-02"), 1))),
        Input("speed_stitches", NUMBER, "Stitches you made", record="measurement.made", default="500", allowed=("5", "100000"), usual=("50", "3000"), rough="15 %",
              measure="Time a stretch of this very project. Evenings differ: ± 15 % is common practice."),
        Input("speed_minutes", NUMBER, "in minutes", record="measurement.in_minutes", default="20", allowed=("0.2", "2000"), usual=("5", "120")),
        Input("week", NUMBER, "Hours for knitting in a week", default="12", allowed=("0.1", "120"), usual=("2", "25"), rough="2"),
        Input("start", DATE, "You can begin on", default="2027-03-05"),
    ),
    results=(
        Result("behind_at", COUNT, "First part that falls behind (0: none)"),
        Result("done", DATE, "The last part is done"),
        Result("minutes", TIME, "Time at the needles", units=("h",), finest=(1,), floor=0.0),
        Result("weeks", NUMBER, "Weeks of your knitting time", finest=(0.1,), floor=0.0),
        Result("speed", NUMBER, "Stitches in a minute", finest=(0.1,), floor=0.0),
        Result("needed", TIME, "Hours a week that keep pace in every part", units=("h",), finest=(0.1,), rounding="up", floor=0.0),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(plan,),
    basis=Basis(MODEL, "Stitches divided by your own speed; knitting time spread evenly over the week."),
    sources=(ARITHMETIC, COMMON_PRACTICE),
    carry=(Carry("enough-left", "Is what is left enough?", {"first": "first", "grow": "grow"}),),
    saves=(Save("measurement", "An own measurement: your speed", {"what": "'speed'", "made": "speed_stitches", "in_minutes": "speed_minutes"}),),
)
