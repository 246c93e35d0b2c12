"""A release planned backward from its start: the last day for each step, with weekday and slack, late ones first."""

from ...core.answer import Table
from ...core.card import ANY, CHOICE, DATE, MODEL, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.day import write_date
from ...core.paper import Paper
from ...core.problem import OutOfRange, Refused
from ...core.units import COUNT, TIME
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ..back_plan import Pace, Times, back_plan, late_steps
from ..calendar import Calendar, calendar_of
from ..pictures.dates import dates_picture
from ..plans import ways

DAY = 1440
FAR = 550  # days: a start farther off is in the wrong year more often than not (our own edge)
NAMES = {"order": "Order base", "arrive": "Base is here", "check": "Weigh it in", "dye_from": "Begin to dye", "dye_to": "Last load", "label_from": "Dry; begin to label", "label_to": "Labels, list done", "release": "Release",
         "post_abroad": "Post abroad", "post_home": "Post at home"}
WEEKS = (Option("mon-fri", "Monday to Friday"), Option("mon-sat", "Monday to Saturday"), Option("tue-sat", "Tuesday to Saturday"), Option("every", "every day"), Option("weekend", "Saturday and Sunday"))


def answer(w, start, ahead, home_quick, home, home_slow, abroad_quick, abroad, abroad_slow, window, label, drying, dye_days, check, spare, supplier_quick, supplier, supplier_slow, week, closed, supplier_closed, today):
    for low, middle, high, name, words in ((home_quick, home, home_slow, "home", "Post at home"), (abroad_quick, abroad, abroad_slow, "abroad", "Post abroad"), (supplier_quick, supplier, supplier_slow, "supplier", "Supplier")):
        if not low <= middle <= high:
            raise Refused(f"{words}: give the quickest, the usual and the slowest in rising order.", name)
    for number, row in enumerate(closed, 1):
        if row.last < row.first:
            raise Refused(f"Closed days {number}: the last day lies before the first.", f"closed.{number}.last")
    calendar = calendar_of(week, [(row.first, row.last) for row in closed])
    theirs = Calendar(tuple(range(7)), calendar.closed) if supplier_closed == "yes" else None
    hang = w.step("hang", "ceil(drying / 1440)", -int(-drying // DAY), COUNT, label="Days on the rail")
    times = Times(ahead, window, label, hang, dye_days, check, spare)
    paces = (Pace(home_slow, abroad_slow, 7 * supplier_slow), Pace(home, abroad, 7 * supplier), Pace(home_quick, abroad_quick, 7 * supplier_quick))
    try:
        plans = [back_plan(start, times, pace, calendar, theirs) for pace in paces]
    except OutOfRange as error:
        raise Refused(f"Closed days: {error.reason or 'they leave no room'}.", "closed.1.last") from None
    sure = plans[0]
    _steps(w, sure, start, bool(label), bool(check), spare, theirs is not None)
    late = late_steps(sure, today, tuple(NAMES))
    first = min((getattr(sure, name), name) for name in NAMES)
    return {"order": sure.order, "dye_from": sure.dye_from, "dye_to": sure.dye_to, "label_from": sure.label_from, "release": sure.release, "post_abroad": sure.post_abroad, "post_home": sure.post_home, "in_hand": sure.in_hand,
            "slack": (first[0] - today).days, "late": len(late), "order_usual": plans[1].order, "order_quick": plans[2].order, "plans": plans, "late_names": late, "calendar": calendar}


def _steps(w, plan, start, labels, checks, spare, supplier_closed):
    """The chain in days before the start: each step as late as the next allows; closed days push it back."""
    def before(name):
        return (start - getattr(plan, name)).days

    def push(name, need, words):
        w.searched(name, before(name), (f"{name} >= {need}",), need, label=f"{words}, days before the start")

    push("in_hand", "ahead", "In hand")
    push("post_home", "in_hand + home_slow", "Posted at home")
    push("post_abroad", "in_hand + abroad_slow", "Posted abroad")
    push("release", "max(post_home, post_abroad) + window", "Release")
    push("label_from", "release + label" if labels else "release", "Labeling begins")
    push("dye_to", f"label_from + {'spare + ' if spare else ''}hang + 1", "The last load is out")
    push("dye_from", "dye_to + dye_days - 1", "Dyeing begins")
    push("arrive", "dye_from + check + 1" if checks else "dye_from + 1", "Base is here")
    push("order", "arrive + 7 * supplier_slow", "Base is ordered" + (" (the supplier’s closed days added)" if supplier_closed else ""))


def say(r):
    late, slack = r.kept["late_names"], r.value("slack")
    if late:
        listed = ", ".join(f"{NAMES[name][0].lower()}{NAMES[name][1:]} ({write_date(getattr(r.kept['plans'][0], name))})" for name in late[:2])
        more = f" and {len(late) - 2} more" if len(late) > 2 else ""
        first = f"Already late, by the slow reckoning: {listed}{more}."
    else:
        first = f"Order base by {write_date(r.value('order'))}, {_days(slack)} from today."
    usual = r.kept["plans"][1]
    return first, f"Dye from {write_date(r.value('dye_from'))}, release by {write_date(r.value('release'))}, post abroad by {write_date(r.value('post_abroad'))}. If post and supplier are as quick as usual, ordering on {write_date(usual.order)} is enough."


def _days(count):
    return f"{count} {'day' if abs(count) == 1 else 'days'}"


def notes(r):
    said, start, today = [], r.given["start"], r.given["today"]
    if start <= today:
        said.append("The start is not after today: look at the month and the year.")
    elif (start - today).days > FAR:
        said.append(f"The start is {_days((start - today).days)} off: is the year right?")
    quick = late_steps(r.kept["plans"][2], today, tuple(NAMES))
    if quick:
        said.append(f"Too late even if all others are quick: {', '.join(NAMES[name].lower() for name in quick)}. Move the start, make fewer, or sell at home only.")
    elif r.kept["late_names"]:
        said.append("It can still be done if post or supplier are quicker than their slowest: see the last column, and tell buyers what may happen.")
    if r.kept["plans"][0].post_abroad < r.kept["plans"][0].post_home:
        apart = (r.kept["plans"][0].post_home - r.kept["plans"][0].post_abroad).days
        said.append(f"Selling at home only would give {_days(apart)} more.")
    if r.given["supplier_closed"] == "no" and r.given["closed"]:
        said.append("The supplier is taken as open on your closed days. Ask: a mill that shuts as well adds as many days.")
    if not r.given["spare"]:
        said.append("No day is kept free for a pot that goes wrong.")
    return said


def last_days(r):
    """Every step with its last day at three paces, late ones first."""
    sure, usual, quick = r.kept["plans"]
    today, rows = r.given["today"], []
    for name, words in NAMES.items():
        days = [getattr(plan, name) for plan in (sure, usual, quick)]
        slack = (days[0] - today).days
        state = "too late" if days[2] < today else "late" if slack < 0 else "today" if slack == 0 else "in time"
        rows.append((days[0], (words, write_date(days[0]), _days(slack), state, write_date(days[1]), write_date(days[2]))))
    rows.sort(key=lambda row: (row[0] >= today, row[0]))
    return Table("Last days, late ones first", ("Step", "Sure", "From today", "State", "Usual", "Quickest"), tuple(row for _, row in rows),
                 "Sure: post and supplier at their slowest. Quickest: the day after which it cannot be done at all. Each day is one on which you work.")


def date_sheet(r):
    sure = r.kept["plans"][0]
    rows = tuple((words, write_date(getattr(sure, name)), "", "☐") for name, words in NAMES.items())
    ends = (("In buyers’ hands", write_date(sure.in_hand), "", "☐"), ("Start", write_date(sure.start), "", "☐"))
    return (Table("By the date", ("Step", "Last day", "Done on", ""), rows + ends),)


def picture(r):
    sure, _, quick = r.kept["plans"]
    single = [(NAMES[name], getattr(sure, name), getattr(quick, name)) for name in ("order", "arrive", "release", "post_abroad", "post_home")]
    spans = [("Dye", sure.dye_from, sure.dye_to), ("Label, list", sure.label_from, sure.label_to)] if r.given["label"] else [("Dye", sure.dye_from, sure.dye_to)]
    return dates_picture([*single, ("In hand", sure.in_hand, sure.in_hand), ("Start", sure.start, sure.start)], spans, r.kept["calendar"].closed, r.given["today"], r.given["start"])


def _range(name, words, quick, usual, slow, most, unit):
    label = f"{words}, {unit}"
    return (Input(f"{name}_quick", COUNT, f"{label}, at best", default=quick, allowed=("0", most)), Input(name, COUNT, f"{label}, usually", default=usual, allowed=("0", most)),
            Input(f"{name}_slow", COUNT, f"{label}, at worst", default=slow, allowed=("0", most)))


CARD = Card(
    id="back-plan", chapter="sell", place=30, tall_sheet=True,
    question="By when must I do what?",
    inputs=(
        Input("start", DATE, "It starts on", record="plan.starts", default="2027-03-05", measure="Part one, the first club parcel, the fair."),
        Input("ahead", COUNT, "In hand so many days before", default="7", allowed=("0", "120"), usual=("0", "21")),
        *_range("home", "Post at home", "2", "4", "7", "60", "days"), *_range("abroad", "Post abroad", "6", "9", "14", "120", "days"),
        Input("window", COUNT, "From the release to the first parcel, days", default="14", allowed=("0", "365"), usual=("0", "60"), measure="To sell, to count, to pack."),
        Input("label", COUNT, "Labels, pictures, list: working days", default="2", allowed=("0", "60"), usual=("1", "10")),
        Input("drying", TIME, "The last load hangs", default="40 h", allowed=("0 h", "240 h"), usual=("12 h", "96 h"), units=("h", "day")),
        Input("dye_days", COUNT, "Dye days", default="4", allowed=("1", "120"), usual=("1", "20"), measure="From “What does this release take?”."),
        Input("check", COUNT, "Weighing the base in: working days", default="1", allowed=("0", "20"), usual=("0", "3")),
        Input("spare", COUNT, "Kept free for what goes wrong: working days", default="0", allowed=("0", "60"), usual=("0", "5")),
        *_range("supplier", "The supplier takes", "3", "4", "5", "60", "weeks"),
        Input("week", CHOICE, "You work", default="mon-fri", options=WEEKS),
        Rows("closed", "Closed days", "stretch", record="plan.closed", lent=ANY, least=0, most=12, fields=(Input("first", DATE, "From", default="2027-02-01"), Input("last", DATE, "to", default="2027-02-01")), default=({"first": "2026-12-24", "last": "2027-01-02"},)),
        Input("supplier_closed", CHOICE, "The supplier is closed then too", default="no", options=(Option("no", "no"), Option("yes", "yes, the same days"))),
        Input("today", DATE, "Today", default="2026-11-26", today=True, measure="Or the day on which you look."),
    ),
    results=(
        Result("order", DATE, "Order base by"), Result("order_usual", DATE, "if all are as quick as usual"), Result("order_quick", DATE, "if all are as quick as can be"),
        Result("dye_from", DATE, "Begin to dye by"), Result("dye_to", DATE, "Last load by"), Result("label_from", DATE, "Begin to label by"), Result("release", DATE, "Release by"),
        Result("post_abroad", DATE, "Post abroad by"), Result("post_home", DATE, "Post at home by"), Result("in_hand", DATE, "In buyers’ hands"),
        Result("slack", COUNT, "Days until the first of these", rounding="down"), Result("late", COUNT, "Steps already late"),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(last_days,), papers=(Paper("Dates, A5", "A5", date_sheet),),
    basis=Basis(MODEL, "Each step begins as late as the next one allows, on a day on which you work. Post and supplier at their slowest, their usual and their quickest."),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("See that the weekday is the one you mean.", "A date in the wrong month looks like any other. Post slows before holidays, and a border adds days that no table knows."),),
    carry=(Carry("base-order", "What to order", {"needed_by": ways.first_dye_day, "check": "check", "lead_low": "supplier_quick", "lead": "supplier", "lead_high": "supplier_slow", "closed": ways.closed_days, "today": "today"}), Carry("keep-pace", "Can knitters keep pace with the parts?", {"start": "start"}), Carry("release-plan", "What does the release take?", {})),
)
