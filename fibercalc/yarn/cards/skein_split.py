"""Full skeins into small ones: how many, how many turns each, what is left, and whether the last one comes out short."""

from ...core.answer import Table
from ...core.card import (
    CHOICE,
    MODEL,
    Basis,
    Card,
    Carry,
    Caution,
    Chance,
    Input,
    Option,
    Result,
    Save,
)
from ...core.picture import INDIGO, INDIGO_WASH, INK, Drawing, Scale
from ...core.problem import Refused
from ...core.units import COUNT, LENGTH, MASS, NUMBER, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ..count import linear_density
from ..putup import printed_grams
from ..reel import mass_of_turns, whole_turns_for_length
from ..split import (
    full_skeins_for,
    left_over,
    margin_of_last,
    most_turns_for_count,
    small_skeins,
    usable_amount,
)

BY_MASS, BY_LENGTH, BY_TURNS, BY_COUNT = "mass", "length", "turns", "count"


def answer(
    w,
    skein_mass,
    skein_length,
    loss_share,
    wanted_by,
    wanted_mass,
    wanted_length,
    wanted_turns,
    wanted_count,
    reel,
    loss_per_cut,
    total,
):
    usable = usable_amount(skein_length, loss_share)
    w.step(
        "usable",
        "skein_length * (1 - loss_share / 100)",
        usable,
        LENGTH,
        label="Length that can be wound",
    )
    if wanted_by == BY_MASS:
        wanted_length = w.step(
            "length_for_weight",
            "wanted_mass * skein_length / skein_mass",
            wanted_mass * skein_length / skein_mass,
            LENGTH,
            label="Length of that weight",
        )
    turns = w.decide(
        "turns",
        _turns(w, usable, wanted_by, wanted_length, wanted_turns, wanted_count, reel, loss_per_cut),
    )
    small = w.step(
        "small_length", "turns * reel", turns * reel, LENGTH, label="Length of a small skein"
    )
    count = w.decide(
        "count",
        wanted_count if wanted_by == BY_COUNT else small_skeins(usable, small, loss_per_cut),
    )
    if count < 1:
        raise Refused(
            "One full skein is not enough for one small skein of that size; ask for a smaller one.",
            f"wanted_{wanted_by}",
        )
    if wanted_by != BY_COUNT:
        w.searched(
            "count",
            count,
            ("count * (small_length + loss_per_cut) <= usable",),
            "usable / (small_length + loss_per_cut)",
            label="Small skeins from one",
        )
    rest = left_over(usable, count, small, loss_per_cut)
    w.step(
        "left",
        f"usable - {_count_name(wanted_by)} * (small_length + loss_per_cut)",
        rest,
        LENGTH,
        label="Left of each full skein",
    )
    margin = margin_of_last(usable, count, small, loss_per_cut)
    w.step(
        "margin",
        f"usable - ({_count_name(wanted_by)} - 1) * (small_length + loss_per_cut) - small_length",
        margin,
        LENGTH,
        label="To spare when the last is wound",
    )
    tex = linear_density(skein_mass, skein_length)
    mass = mass_of_turns(turns, reel, tex)
    w.step(
        "small_mass",
        "small_length * skein_mass / skein_length",
        mass,
        MASS,
        label="Weight of a small skein",
    )
    full = w.decide("full", full_skeins_for(total, count) if total else None)
    if full:
        w.searched(
            "full_skeins",
            full,
            (f"full_skeins * {_count_name(wanted_by)} >= total",),
            f"total / {_count_name(wanted_by)}",
            label="Full skeins to cut",
        )
    return {
        "count": count,
        "turns": turns,
        "small_length": small,
        "small_mass": mass,
        "left": rest,
        "left_mass": rest * tex / 1000,
        "margin": margin,
        "full_skeins": full,
        "usable": usable,
    }


def _count_name(wanted_by):
    return "wanted_count" if wanted_by == BY_COUNT else "count"


def _turns(w, usable, wanted_by, wanted_length, wanted_turns, wanted_count, reel, loss_per_cut):
    if wanted_by == BY_TURNS:
        return w.step("turns", "wanted_turns", wanted_turns, NUMBER, label="Turns for each")
    if wanted_by == BY_COUNT:
        turns = most_turns_for_count(usable, wanted_count, reel, loss_per_cut)
        if turns < 1:
            raise Refused(
                "How many from one skein: less than one turn of the reel would be left for each;"
                " ask for fewer.",
                "wanted_count",
            )
        return w.searched(
            "turns",
            turns,
            ("wanted_count * (turns * reel + loss_per_cut) <= usable",),
            "(usable / wanted_count - loss_per_cut) / reel",
            label="Turns for each",
        )
    turns = whole_turns_for_length(wanted_length, reel)
    name = "length_for_weight" if wanted_by == BY_MASS else "wanted_length"
    return w.searched(
        "turns",
        turns,
        (f"turns * reel >= {name}",),
        f"{name} / reel",
        label="Turns for each, so that none is short",
    )


def say(r):
    count, turns = r.value("count"), r.value("turns")
    first = (
        f"Each skein gives {count} small {'skein' if count == 1 else 'skeins'} of {turns}"
        f" {'turn' if turns == 1 else 'turns'}."
    )
    each = (
        f"Each holds {r.said('small_length')} and may be labeled"
        f" {r.number(printed_grams(r.value('small_mass')))} g"
    )
    left = f"{r.text('left', 'm')} ({r.text('left_mass', 'g')}) is left over"
    short = f"chance that the last one is short: {r.text('last_short')}"
    total = (
        f" For {r.number(r.given['total'])} small skeins, cut {r.number(r.value('full_skeins'))}"
        " full ones."
        if r.has("full_skeins")
        else ""
    )
    return first, f"{each}; {left}; {short}.{total}"


def notes(r):
    said = []
    more = r.value("count") + 1
    turns = most_turns_for_count(r.kept["usable"], more, r.given["reel"], r.given["loss_per_cut"])
    if turns >= 1 and turns >= 0.75 * r.value("turns"):
        said.append(
            f"At {turns} turns each, {r.amount(turns * r.given['reel'], LENGTH, 'm')}, it would"
            f" give {more}."
        )
    if 100 > r.value("last_short") > 5:
        said.append(
            "To be surer of the last one, take a turn off each, or measure the full skein better."
        )
    if r.has("full_skeins"):
        said.append(
            "That is for small skeins cut first or all of one color. Dyed whole and cut afterward,"
            " each shade rounds up by itself: ask once for each shade and add."
        )
    return said


def other_ways(r):
    """The same skein cut into fewer and more: turns, length, weight, what is left."""
    reel, loss, usable = r.given["reel"], r.given["loss_per_cut"], r.kept["usable"]
    tex = linear_density(r.given["skein_mass"], r.given["skein_length"])
    rows = []
    for count in range(max(1, r.value("count") - 1), r.value("count") + 4):
        turns = most_turns_for_count(usable, count, reel, loss)
        if turns < 1:
            break
        rest = left_over(usable, count, turns * reel, loss)
        rows.append(
            (
                str(count),
                str(turns),
                r.amount(turns * reel, LENGTH, "m", 4),
                r.amount(turns * reel, LENGTH, "yd", 4),
                f"{r.number(printed_grams(mass_of_turns(turns, reel, tex)))} g",
                r.amount(rest, LENGTH, "m", 3),
            )
        )
    return Table(
        "As many turns as go",
        ("Small skeins", "Turns each", "Meters", "Yards", "Label at most", "Left over"),
        tuple(rows),
    )


def picture(r):
    """The full skein as a bar, cut into its small ones; what is left is hatched, what is lost is blank."""
    whole = r.given["skein_length"]
    scale = Scale(0, whole, 8, 352)
    drawing = Drawing(118)
    count, small, loss = r.value("count"), r.value("small_length"), r.given["loss_per_cut"]
    drawing.text(8, 16, f"One full skein: {r.amount(whole, LENGTH, 'm')}", bold=True)
    at = 0.0
    shown = min(count, 60)
    for number in range(1, shown + 1):
        left, right = scale(at), scale(min(at + small, whole))
        drawing.rect(left, 26, right - left, 40, fill=INDIGO_WASH, stroke=INDIGO, stroke_width=1.5)
        if right - left > 24:
            drawing.text((left + right) / 2, 51, str(number), anchor="middle", bold=True)
        at += small + loss
    usable = r.kept["usable"]
    end = min(count * (small + loss), usable)
    if usable > end:
        drawing.hatch(scale(end), 26, scale(usable) - scale(end), 40, stroke=INK)
        drawing.rect(scale(end), 26, scale(usable) - scale(end), 40)
    drawing.rect(scale(usable), 26, scale(whole) - scale(usable), 40, stroke=INK)
    drawing.text(8, 86, f"{count} × {r.amount(small, LENGTH, 'm')}")
    drawing.text(352, 86, f"left {r.text('left', 'm')} (hatched)", anchor="end")
    drawing.text(
        352, 106, f"lost in winding {r.amount(whole - usable, LENGTH, 'm', 3)}", anchor="end"
    )
    return drawing.picture(
        "The skein, cut",
        f"A full skein of {r.amount(whole, LENGTH, 'm')} cut into {count} small skeins of"
        f" {r.amount(small, LENGTH, 'm')}; {r.text('left', 'm')} left over.",
    )


def _count(r):
    """The yarn's count from the full skein, g in 1,000 m."""
    return f"{1000 * r.given['skein_mass'] / r.given['skein_length']:.6g}tex"


CARD = Card(
    id="skein-split",
    chapter="yarn",
    place=15,
    question="How do I split this skein into small ones?",
    inputs=(
        Input(
            MASS,
            "Weight of a full skein",
            default="100 g",
            allowed=("1 g", "5 kg"),
            usual=("50 g", "250 g"),
            rough="1 %",
            units=("g", "oz"),
            bench="bases.mass",
            record="base.mass",
            measure="Yarn only, dry and rested.",
            name="skein_mass",
        ),
        Input(
            LENGTH,
            "Length of a full skein",
            default="420 m",
            allowed=("1 m", "20000 m"),
            usual=("100 m", "800 m"),
            rough="1.5 %",
            units=("m", "yd"),
            bench="bases.length",
            record="base.length",
            measure="As measured, or carried here from “How many yards are in this skein?”",
            name="skein_length",
        ),
        Input(
            PERCENT,
            "Lost in winding",
            default="2 %",
            allowed=("0 %", "50 %"),
            usual=("1 %", "3 %"),
            rough="0.5 %",
            measure="Knots, a weak place, ties of the full skein.",
            name="loss_share",
        ),
        Input(
            CHOICE,
            "What you want of the small ones",
            default=BY_MASS,
            options=(
                Option(BY_MASS, "A weight each"),
                Option(BY_LENGTH, "A length each"),
                Option(BY_TURNS, "A number of turns each"),
                Option(BY_COUNT, "A number of them from each skein"),
            ),
            name="wanted_by",
        ),
        Input(
            MASS,
            "Weight of a small skein",
            default="20 g",
            allowed=("0.5 g", "1 kg"),
            usual=("5 g", "50 g"),
            units=("g", "oz"),
            when={"wanted_by": (BY_MASS,)},
            name="wanted_mass",
        ),
        Input(
            LENGTH,
            "Length of a small skein",
            default="84 m",
            allowed=("0.5 m", "5000 m"),
            usual=("10 m", "200 m"),
            units=("m", "yd"),
            when={"wanted_by": (BY_LENGTH,)},
            name="wanted_length",
        ),
        Input(
            COUNT,
            "Turns for a small skein",
            default="54",
            allowed=("1", "5000"),
            usual=("10", "150"),
            when={"wanted_by": (BY_TURNS,)},
            name="wanted_turns",
        ),
        Input(
            COUNT,
            "How many from one skein",
            default="5",
            allowed=("1", "500"),
            usual=("2", "20"),
            when={"wanted_by": (BY_COUNT,)},
            name="wanted_count",
        ),
        Input(
            LENGTH,
            "One turn of your reel, rested",
            default="1.50 m",
            allowed=("0.05 m", "10 m"),
            usual=("0.5 m", "2 m"),
            rough="0.5 %",
            units=("m", "cm", "in", "yd"),
            bench="reels.circumference",
            measure="Measured on the yarn; off the reel it is a little shorter.",
            name="reel",
        ),
        Input(
            LENGTH,
            "Lost with each small skein",
            default="0 m",
            allowed=("0 m", "20 m"),
            usual=("0 m", "0.5 m"),
            units=("m", "cm", "in", "yd"),
            measure="Ends and ties.",
            name="loss_per_cut",
        ),
        Input(
            COUNT,
            "Small skeins wanted in all",
            default="312",
            allowed=("1", "100000"),
            optional=True,
            measure="For a whole set or release.",
            name="total",
        ),
    ),
    results=(
        Result(COUNT, "Small skeins from one", rounding="down", name="count"),
        Result(COUNT, "Turns for each", rounding="up", name="turns"),
        Result(
            LENGTH,
            "Length of a small skein",
            units=("m", "yd"),
            finest=(0.1, 1),
            rounding="down",
            name="small_length",
        ),
        Result(
            MASS,
            "Weight of a small skein",
            units=("g", "oz"),
            finest=(0.1, 0.01),
            rounding="down",
            name="small_mass",
        ),
        Result(
            LENGTH,
            "Left over of each full skein",
            units=("m", "yd"),
            finest=(0.1, 0.1),
            name="left",
        ),
        Result(
            MASS, "Weight of what is left", units=("g", "oz"), finest=(0.1, 0.01), name="left_mass"
        ),
        Result(
            LENGTH,
            "To spare when the last one is wound",
            units=("m", "yd"),
            finest=(0.1, 0.1),
            name="margin",
        ),
        Result(
            PERCENT,
            "Chance that the last one is short",
            chance=Chance("margin", below=0.0),
            name="last_short",
        ),
        Result(COUNT, "Full skeins to cut", rounding="up", name="full_skeins"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(other_ways,),
    basis=Basis(
        MODEL,
        "Whole turns only. The chance that the last one is short comes from the roughness of the"
        " full skein’s length, the loss and the reel.",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "Count the turns, weigh the first.",
            "A reel that has been mended, or yarn wound tighter than it was measured, makes every"
            " small skein short by the same share.",
        ),
    ),
    carry=(
        Carry(
            "reel-turns", "Turns of my reel for another length", {"turn": "reel", "count": _count}
        ),
    ),
    saves=(
        Save(
            "skein",
            "Small skeins: weight and length of each",
            {"size": "'small'", "mass": "small_mass", "length": "small_length"},
        ),
    ),
)
