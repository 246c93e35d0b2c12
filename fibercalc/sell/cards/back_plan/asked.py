"""What is asked for a release planned backward, and what is found."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from ....core.card import CHOICE, DATE, Between, Case, Input, Option, Plain, Result
from ....core.units import COUNT, TIME
from ....held import RECORD
from ...calendar import Calendar
from ...inputs import CLOSED
from ...last_days import LastDays

# Each step by its name in a plan, in order.
STEPS = {
    "order": "Order base",
    "arrive": "Base is here",
    "check": "Weigh it in",
    "dye_from": "Begin to dye",
    "dye_to": "Last load",
    "label_from": "Dry; begin to label",
    "label_to": "Labels, list done",
    "release": "Release",
    "post_abroad": "Post abroad",
    "post_home": "Post at home",
}
WEEKS = (
    Option("mon-fri", "Monday to Friday"),
    Option("mon-sat", "Monday to Saturday"),
    Option("tue-sat", "Tuesday to Saturday"),
    Option("every", "every day"),
    Option("weekend", "Saturday and Sunday"),
)


def _taken(label: str, default: str, most: str) -> Input[int]:
    """What someone else takes, at one of three paces."""
    return Input[int](COUNT, label, default=default, allowed=("0", most))


def _ahead(label: str) -> Between[float]:
    """A step of the surest plan, counted from the start."""
    return Between[float](COUNT, f"{label}, days before the start")


class BackPlan(Case):
    """A release and what each step to it takes, and the last day on which each can be done."""

    start = Input[date](
        DATE,
        "It starts on",
        record=RECORD.plan.starts,
        default="2027-03-05",
        measure="Part one, the first club parcel, the fair.",
    )
    ahead = Input[int](
        COUNT, "In hand so many days before", default="7", allowed=("0", "120"), usual=("0", "21")
    )
    home_quick = _taken("Post at home, days, at best", "2", "60")
    home = _taken("Post at home, days, usually", "4", "60")
    home_slow = _taken("Post at home, days, at worst", "7", "60")
    abroad_quick = _taken("Post abroad, days, at best", "6", "120")
    abroad = _taken("Post abroad, days, usually", "9", "120")
    abroad_slow = _taken("Post abroad, days, at worst", "14", "120")
    window = Input[int](
        COUNT,
        "From the release to the first parcel, days",
        default="14",
        allowed=("0", "365"),
        usual=("0", "60"),
        measure="To sell, to count, to pack.",
    )
    label = Input[int](
        COUNT,
        "Labels, pictures, list: working days",
        default="2",
        allowed=("0", "60"),
        usual=("1", "10"),
    )
    drying = Input[float](
        TIME,
        "The last load hangs",
        default="40 h",
        allowed=("0 h", "240 h"),
        usual=("12 h", "96 h"),
        units=("h", "day"),
    )
    dye_days = Input[int](
        COUNT,
        "Dye days",
        default="4",
        allowed=("1", "120"),
        usual=("1", "20"),
        measure="From “What does this release take?”.",
    )
    check = Input[int](
        COUNT,
        "Weighing the base in: working days",
        default="1",
        allowed=("0", "20"),
        usual=("0", "3"),
    )
    spare = Input[int](
        COUNT,
        "Kept free for what goes wrong: working days",
        default="0",
        allowed=("0", "60"),
        usual=("0", "5"),
    )
    supplier_quick = _taken("The supplier takes, weeks, at best", "3", "60")
    supplier = _taken("The supplier takes, weeks, usually", "4", "60")
    supplier_slow = _taken("The supplier takes, weeks, at worst", "5", "60")
    week = Input[str](CHOICE, "You work", default="mon-fri", options=WEEKS)
    closed = replace(CLOSED)
    supplier_closed = Input[str](
        CHOICE,
        "The supplier is closed then too",
        default="no",
        options=(Option("no", "no"), Option("yes", "yes, the same days")),
    )
    today = Input[date](
        DATE, "Today", default="2026-11-26", today=True, measure="Or the day on which you look."
    )

    hang = Between[int](COUNT, "Days on the rail")
    calendar = Plain[Calendar]()
    # At the slowest pace of the others, at their usual and at their quickest.
    plans = Plain[tuple[LastDays, LastDays, LastDays]]()
    late_steps = Plain[tuple[str, ...]]()
    in_hand_ahead = _ahead("In hand")
    post_home_ahead = _ahead("Posted at home")
    post_abroad_ahead = _ahead("Posted abroad")
    first_post_ahead = _ahead("The first parcel is posted")
    release_ahead = _ahead("Release")
    labels_ahead = _ahead("Labeling begins")
    last_load_ahead = _ahead("The last load is out")
    dyeing_ahead = _ahead("Dyeing begins")
    base_ahead = _ahead("Base is here")
    order_ahead = _ahead("Base is ordered")
    order_ahead_of_closed = _ahead("Base is ordered (the supplier’s closed days added)")

    order = Result[date](DATE, "Order base by")
    order_usual = Result[date](DATE, "if all are as quick as usual")
    order_quick = Result[date](DATE, "if all are as quick as can be")
    dye_from = Result[date](DATE, "Begin to dye by")
    dye_to = Result[date](DATE, "Last load by")
    label_from = Result[date](DATE, "Begin to label by")
    release = Result[date](DATE, "Release by")
    post_abroad = Result[date](DATE, "Post abroad by")
    post_home = Result[date](DATE, "Post at home by")
    in_hand = Result[date](DATE, "In buyers’ hands")
    slack = Result[int](COUNT, "Days until the first of these", rounding="down")
    late = Result[int](COUNT, "Steps already late")
