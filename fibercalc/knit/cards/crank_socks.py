"""Counts for a pair of socks on a sock machine, its yarn, and whether it goes over the heel."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, Basis, Card, Carry, Caution, Chance, Input, Option, Result
from ...core.problem import Refused
from ...core.table import read_table
from ...core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, NUMBER, PER_LENGTH, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, GATE_TEXTILE_2015, MUNDEN_1959, TRADE_MEMORY
from ..loop import stitch_length
from ..pictures.sock import sock_schematic
from ..sock import (
    PLAIN_STRETCH,
    foot_rounds,
    foot_rounds_by_length,
    hem_rounds,
    mock_rib_share,
    needles_left,
    pair_length,
    rounds_for_length,
    short_row_depth,
    short_row_stitches,
    short_rows,
    sock_foot_length,
    sock_stitches,
    stretch_needed,
    stretch_word,
    tube_girth,
    waste_rounds_of_pair,
    whole_rounds,
    worked_needles,
)

PLAIN, MOCK = "plain", "mock"
LOOP_ERROR = 0.05  # 95 %: machine loops keep the constants' proportions better than hand loops (common practice)
STATES = tuple(
    Option(row["state"], row["label"]) for row in read_table("wash", "munden-constants").rows
)
FEET = tuple(centimeters / 100 for centimeters in range(20, 31))


def answer(
    w,
    needles,
    stitches,
    rows,
    state,
    foot_length,
    shorter,
    foot_girth,
    heel_girth,
    hem,
    leg,
    left,
    rib,
    rib_in,
    rib_out,
    between,
    at_ends,
    skein_mass,
    skein_length,
):
    if needles % 2:
        raise Refused(
            f"Needles of the cylinder: heel and toe take half of them, and {needles} is odd; give"
            " an even number.",
            "needles",
        )
    half = needles // 2
    left = w.decide("left", left if left is not None else needles_left(half))
    if left >= half:
        raise Refused(
            f"Needles left at the narrowest: heel and toe are worked on {half}; give fewer than"
            " that.",
            "left",
        )
    hem_count = w.decide("hem", hem_rounds(hem, rows))
    w.searched(
        "hem_rounds",
        hem_count,
        (
            f"hem_rounds <= 2 * (hem * 100 * rows + 0.5)",
            "hem_rounds >= 2 * (hem * 100 * rows - 0.5)",
        ),
        "2 * hem * 100 * rows",
        label="Hem, rounds before folding",
    )
    leg_count = w.decide("leg", whole_rounds(rounds_for_length(leg, rows)))
    w.searched(
        "leg_rounds",
        leg_count,
        ("leg_rounds <= leg * 100 * rows + 0.5", "leg_rounds >= leg * 100 * rows - 0.5"),
        "leg * 100 * rows",
        label="Leg, rounds",
    )
    pocket_rows = short_rows(half, left)
    w.step(
        "pocket_rows",
        f"2 * (needles / 2 - {left})",
        pocket_rows,
        COUNT,
        label="Heel, and toe, rows",
    )
    pocket = short_row_stitches(half, left)
    w.step(
        "pocket_stitches",
        f"(needles / 2) ** 2 - {left} ** 2",
        pocket,
        COUNT,
        label="Heel, and toe, stitches",
    )
    depth = w.step(
        "pocket_depth",
        "pocket_rows / 2 / rows / 100",
        short_row_depth(half, left, rows),
        LENGTH,
        label="Heel, and toe, how deep",
    )
    knitted = w.step(
        "knitted",
        "foot_length * (1 - shorter / 100)",
        sock_foot_length(foot_length, shorter),
        LENGTH,
        label="Foot as knitted",
    )
    foot_count = w.decide("foot", whole_rounds(foot_rounds(knitted, depth, depth, rows)))
    w.searched(
        "foot_rounds",
        foot_count,
        (
            "foot_rounds <= (knitted - 2 * pocket_depth) * 100 * rows + 0.5",
            "foot_rounds >= (knitted - 2 * pocket_depth) * 100 * rows - 0.5",
        ),
        "(knitted - 2 * pocket_depth) * 100 * rows",
        label="Foot, rounds between heel and toe",
    )
    count = sock_stitches(needles, hem_count + leg_count + foot_count, 2 * pocket)
    w.step(
        "sock",
        "needles * (hem_rounds + leg_rounds + foot_rounds) + 2 * pocket_stitches",
        count,
        COUNT,
        label="Stitches of one sock",
    )
    constant = w.looked_up(
        "loop_constant", "wash", "munden-constants", "state", state, "Ks", label="Loop constant Ks"
    )
    loop = w.step(
        "loop",
        "sqrt(loop_constant / (stitches * rows)) / 100",
        stitch_length(stitches, rows, constant),
        LENGTH,
        label="Yarn in a stitch",
    )
    worked, text, saved = count, "sock", 0.0
    if rib == MOCK:
        knitting = worked_needles(needles, rib_in, rib_out)
        least = mock_rib_share(rib_in, rib_out, 100 * loop * stitches)
        saved = (
            needles * leg_count * (1 - least)
        )  # stitches that the floats save at the most; half of it is taken off
        w.step(
            "saved",
            "needles * leg_rounds * (1 - (rib_in + rib_out / (100 * loop * stitches)) / (rib_in +"
            " rib_out))",
            saved,
            NUMBER,
            label="Stitches that floats save, at the most",
        )
        worked, text = count - saved / 2, "(sock - saved / 2)"
        w.step(
            "knitting",
            "needles * rib_in / (rib_in + rib_out)",
            knitting,
            COUNT,
            label="Needles in work in the rib",
        )
    length = w.step(
        "pair", f"2 * {text} * loop", pair_length(worked, loop), LENGTH, label="Yarn for the pair"
    )
    tex = w.step(
        "tex",
        "1000 * skein_mass / skein_length",
        1000 * skein_mass / skein_length,
        LINEAR_DENSITY,
        label="The yarn",
    )
    mass = w.step("pair_mass", "pair * tex / 1000", length * tex / 1000, MASS, label="Its weight")
    over = w.step(
        "over", "skein_length - pair", skein_length - length, LENGTH, label="Over from one skein"
    )
    for result, scale in (("pair", 1.0), ("pair_mass", tex / 1000), ("over", 1.0)):
        w.error(result, LOOP_ERROR * length * scale)
        if saved:
            middle = {"pair": length, "pair_mass": mass, "over": over}[result]
            w.band(result, middle - saved * loop * scale, middle + saved * loop * scale)
    girth = w.step(
        "girth",
        "needles / stitches / 100",
        tube_girth(needles, stitches),
        LENGTH,
        label="Around the tube at rest",
    )
    stretch = w.step(
        "stretch",
        "100 * (heel_girth / girth - 1)",
        stretch_needed(heel_girth, girth),
        PERCENT,
        label="Stretch over the heel",
    )
    snug = w.step(
        "snug",
        "100 * (foot_girth / girth - 1)",
        stretch_needed(foot_girth, girth),
        PERCENT,
        label="Stretch around the foot",
    )
    return {
        "hem_rounds": hem_count,
        "leg_rounds": leg_count,
        "pocket_rows": pocket_rows,
        "foot_rounds": foot_count,
        "sock": count,
        "pair": length,
        "pair_mass": mass,
        "over": over,
        "girth": girth,
        "stretch": stretch,
        "snug": snug,
        "left": left,
        "half": half,
        "knitted": knitted,
        "loop": loop,
    }


def say(r):
    counts = (
        f"Crank {r.number(r.value('hem_rounds'))} rounds for the hem,"
        f" {r.number(r.value('leg_rounds'))} for the leg, the heel,"
        f" {r.number(r.value('foot_rounds'))} for the foot, the toe."
    )
    skein = f"one skein is enough for {r.text('one_skein')}"
    return counts, f"A pair takes about {r.said('pair')}, {r.text('pair_mass', 'g')}: {skein}."


OVER_HEEL = {
    "loose": "it is no smaller than the heel",
    "easy": "plain knitting does that with ease",
    "tight": "between easy and too tight: work a sample before the pair",
    "too tight": "plain knitting will likely not do that: more needles, or a looser stitch",
}


def notes(r):
    stretch = r.value("stretch")
    low, high = PLAIN_STRETCH
    said = [
        f"Over the heel the tube must stretch {max(stretch, 0):.0f} %:"
        f" {OVER_HEEL[stretch_word(min(stretch, 1000.0))]} (up to {low:.0f} %, beyond {high:.0f} %"
        " not; from memory, unverified)."
    ]
    if r.value("snug") < 0:
        said.append(
            "Around the foot the tube is loose: it will bag. Fewer needles, or a tighter stitch."
        )
    half, left = r.kept["half"], r.kept["left"]
    said.append(
        f"Heel and toe: on {half} needles, one out of work before each row until {left} knit, then"
        f" one back after each row: {r.number(r.value('pocket_rows'))} rows, folded in the middle."
    )
    waste = waste_rounds_of_pair(r.given["between"], r.given["at_ends"])
    said.append(
        f"As one tube the pair takes {waste} rounds of waste yarn: {r.given['at_ends']} before,"
        f" {r.given['between']} between, {r.given['at_ends']} after."
    )
    said.append(
        "Count for the sock at rest and washed: fresh off the machine it is stretched lengthwise"
        " and measures too long."
    )
    return said


def picture(r):
    half, left = r.kept["half"], r.kept["left"]
    pocket = (half, left, int(r.value("pocket_rows")))
    unit = r.units("girth")[0].sign
    rib = (
        f"mock rib: {r.given['rib_in']} in, {r.given['rib_out']} out"
        if r.given["rib"] == MOCK
        else ""
    )
    extra = [f"A pair: {r.both('pair')}, {r.text('pair_mass', 'g')}"]
    return sock_schematic(
        int(r.value("hem_rounds")),
        int(r.value("leg_rounds")),
        pocket,
        int(r.value("foot_rounds")),
        pocket,
        r.given["between"],
        r.text("girth", unit),
        r.given["needles"],
        r.amount(r.kept["knitted"], LENGTH, unit, 3),
        rib,
        extra,
    )


def feet(r):
    """Foot rounds for other feet on the same cylinder at the same gauge."""
    found = foot_rounds_by_length(
        FEET, r.kept["half"], r.kept["left"], r.given["rows"], r.given["shorter"]
    )
    return (
        Table(
            "Foot rounds for other feet, same gauge",
            ("Foot", "Inches", "Rounds"),
            tuple(
                (r.amount(length, LENGTH, "cm", 3), r.amount(length, LENGTH, "in", 3), str(count))
                for length, count in found
            ),
        )
        if found
        else None
    )


RIBBED = {"rib": (MOCK,)}

CARD = Card(
    id="crank-socks",
    chapter="knit",
    place=60,
    tall_sheet=True,
    question="How many rounds for socks on the machine?",
    inputs=(
        Input(
            COUNT,
            "Needles of the cylinder",
            default="60",
            allowed=("16", "400"),
            usual=("48", "100"),
            name="needles",
        ),
        Input(
            PER_LENGTH,
            "Stitches",
            record="measurement.stitches",
            default="2.8 per cm",
            allowed=("0.5 per cm", "20 per cm"),
            usual=("2 per cm", "5 per cm"),
            rough="0.05 per cm",
            units=("per cm", "per in", "per 10 cm"),
            measure="Of a tube washed and rested a day, counted around.",
            name="stitches",
        ),
        Input(
            PER_LENGTH,
            "Rows",
            record="measurement.rows",
            default="4 per cm",
            allowed=("0.5 per cm", "30 per cm"),
            usual=("3 per cm", "7 per cm"),
            rough="0.05 per cm",
            units=("per cm", "per in", "per 10 cm"),
            measure="Over at least 40 rounds.",
            name="rows",
        ),
        Input(
            CHOICE,
            "The gauge was counted",
            record="measurement.state",
            default="wet",
            options=STATES,
            name="state",
        ),
        Input(
            LENGTH,
            "Foot, heel to toe",
            default="27.5 cm",
            allowed=("8 cm", "40 cm"),
            usual=("20 cm", "30 cm"),
            rough="0.3 cm",
            units=("cm", "in"),
            name="foot_length",
        ),
        Input(
            PERCENT,
            "Knitted shorter than the foot by",
            default="0 %",
            allowed=("0 %", "25 %"),
            usual=("0 %", "10 %"),
            measure="A sock stretches; up to a tenth is usual.",
            name="shorter",
        ),
        Input(
            LENGTH,
            "Around the foot",
            default="24 cm",
            allowed=("6 cm", "60 cm"),
            usual=("18 cm", "28 cm"),
            rough="0.5 cm",
            units=("cm", "in"),
            measure="Around the ball.",
            name="foot_girth",
        ),
        Input(
            LENGTH,
            "Around heel and instep, slanting",
            default="32 cm",
            allowed=("8 cm", "80 cm"),
            usual=("26 cm", "38 cm"),
            rough="0.5 cm",
            units=("cm", "in"),
            measure=(
                "Over the point of the heel and the front of the ankle: the tube must pass there."
            ),
            name="heel_girth",
        ),
        Input(
            LENGTH,
            "Hem, folded",
            default="3 cm",
            allowed=("0 cm", "20 cm"),
            usual=("2 cm", "5 cm"),
            units=("cm", "in"),
            measure="As deep as it is when folded; 0 for none.",
            name="hem",
        ),
        Input(
            LENGTH,
            "Leg below the hem",
            default="18 cm",
            allowed=("0 cm", "80 cm"),
            usual=("8 cm", "40 cm"),
            units=("cm", "in"),
            name="leg",
        ),
        Input(
            COUNT,
            "Needles left at the narrowest of heel and toe",
            default="10",
            allowed=("2", "190"),
            usual=("6", "20"),
            optional=True,
            measure="Blank for a third of the half.",
            name="left",
        ),
        Input(
            CHOICE,
            "Leg",
            default=PLAIN,
            options=(Option(PLAIN, "Plain"), Option(MOCK, "Mock rib: some needles out of work")),
            name="rib",
        ),
        Input(
            COUNT,
            "Needles in work",
            default="3",
            allowed=("1", "50"),
            usual=("1", "5"),
            when=RIBBED,
            name="rib_in",
        ),
        Input(
            COUNT,
            "then out of work",
            default="1",
            allowed=("1", "10"),
            usual=("1", "2"),
            when=RIBBED,
            name="rib_out",
        ),
        Input(
            COUNT,
            "Waste rounds between the two socks",
            default="15",
            allowed=("0", "200"),
            usual=("10", "20"),
            name="between",
        ),
        Input(
            COUNT,
            "Waste rounds before and after",
            default="15",
            allowed=("0", "200"),
            usual=("10", "30"),
            name="at_ends",
        ),
        Input(
            MASS,
            "A skein weighs",
            default="100 g",
            allowed=("5 g", "2 kg"),
            usual=("20 g", "250 g"),
            rough="1.5 %",
            units=("g", "oz"),
            bench="bases.mass",
            record="base.mass",
            name="skein_mass",
        ),
        Input(
            LENGTH,
            "A skein holds",
            default="420 m",
            allowed=("5 m", "10000 m"),
            usual=("100 m", "900 m"),
            rough="1.5 %",
            units=("m", "yd"),
            bench="bases.length",
            record="base.length",
            name="skein_length",
        ),
    ),
    results=(
        Result(COUNT, "Hem, rounds before folding", name="hem_rounds"),
        Result(COUNT, "Leg, rounds", name="leg_rounds"),
        Result(COUNT, "Heel, rows, and the same for the toe", name="pocket_rows"),
        Result(COUNT, "Foot, rounds", name="foot_rounds"),
        Result(COUNT, "Stitches of one sock", name="sock"),
        Result(
            LENGTH,
            "Yarn for the pair",
            units=("yd", "m"),
            finest=(1, 1),
            rounding="up",
            floor=0.0,
            name="pair",
        ),
        Result(
            MASS,
            "Its weight",
            units=("g", "oz"),
            finest=(1, 0.1),
            rounding="up",
            floor=0.0,
            name="pair_mass",
        ),
        Result(
            LENGTH,
            "Over from one skein",
            units=("yd", "m"),
            finest=(1, 1),
            rounding="down",
            name="over",
        ),
        Result(
            PERCENT,
            "Pairs for which one skein is enough",
            chance=Chance("over", above=0.0),
            name="one_skein",
        ),
        Result(
            LENGTH,
            "Around the tube at rest",
            units=("cm", "in"),
            finest=(0.1, 0.1),
            floor=0.0,
            name="girth",
        ),
        Result(PERCENT, "Stretch over the heel", finest=(1,), name="stretch"),
        Result(PERCENT, "Stretch around the foot", finest=(1,), name="snug"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(feet,),
    basis=Basis(
        MODEL,
        "Counts are lengths times the washed gauge. Yarn is stitches times the loop length of plain"
        " knitting (Munden), good to 5 % on a machine (common practice).",
    ),
    sources=(COMMON_PRACTICE, MUNDEN_1959, GATE_TEXTILE_2015, TRADE_MEMORY, ARITHMETIC),
    cautions=(
        Caution(
            "Work a sample tube first.",
            "Forty rounds, washed and rested, tell the gauge; a tube measured on the machine or"
            " fresh off it makes every sock too short.",
        ),
    ),
    carry=(
        Carry(
            "yarn-needed",
            "Yarn for something else from this base",
            {"skein_mass": "skein_mass", "skein_length": "skein_length"},
        ),
    ),
)
