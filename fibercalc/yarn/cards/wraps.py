"""Wraps per inch, every weight class that matches, and the wide band of yards per pound that a wrap count allows."""

from ...core.answer import Table
from ...core.card import (
    CHOICE,
    MODEL,
    Basis,
    Card,
    Carry,
    Caution,
    Input,
    Option,
    Result,
    Rows,
    row_of,
)
from ...core.picture import INDIGO, INDIGO_WASH, SOFT, Drawing, Scale
from ...core.problem import Refused
from ...core.units import COUNT, LENGTH, LINEAR_DENSITY, METERS_PER_INCH, NUMBER, PER_LENGTH
from ...sources import (
    CRAFT_YARN_COUNCIL,
    IUPAC_CONFIDENCE_LIMITS,
    TRADE_PAGE_PLY_TERMS,
    TRADE_PAGE_SPINNERS,
    TRADE_PAGE_WEAVERS,
)
from ..count import count_from_tex, tex_from_count
from ..sample import half_width_of_mean, mean, standard_deviation
from ..weight_class import (
    COUNCIL,
    PLY_TERMS,
    agreed_classes,
    classes_by_grist,
    classes_by_wraps,
    weight_classes,
)
from ..wraps import wrap_conventions, wraps_per_inch, yards_per_pound_from_wraps

RELAXED = "relaxed"
LISTS = {COUNCIL: "Yarn council classes", PLY_TERMS: "Ply names (UK, AU, NZ)"}
PER_CM = 1 / 2.54  # the base unit of a count per length is per cm
FEWEST, MOST = 0.5, 150.0  # wraps per inch: from a rope of roving to sewing thread
CONVENTIONS = tuple(Option(row["name"], row["label"]) for row in wrap_conventions().rows)


def answer(w, convention, width, tries, grist):
    counts = [row.turns for row in tries]
    w.step("turns", "mean(tries.turns)", mean(counts), NUMBER, label="Turns, mean of the tries")
    wraps = wraps_per_inch(mean(counts), width * METERS_PER_INCH)
    w.step("wraps", "turns / width", wraps, PER_LENGTH, "per in", label="Wraps per inch")
    if not FEWEST <= wraps <= MOST:
        raise Refused(
            f"Turns counted: over that width they make {wraps:.3g} wraps per inch; yarn has"
            f" {FEWEST:g} to {MOST:g}. See that width and turns belong together.",
            "tries.1.turns",
        )
    if len(counts) > 1:
        scatter = half_width_of_mean(standard_deviation(counts), len(counts)) / width
        w.error("wraps", scatter * PER_CM)
    ratios = [
        w.looked_up(
            f"k_{end}",
            "yarn",
            "wrap-conventions",
            "name",
            convention,
            end,
            label=f"Ratio k, {words}",
        )
        for end, words in (("middle", "middle"), ("low", "low end"), ("high", "high end"))
    ]
    by_wraps, finest, coarsest = (
        yards_per_pound_from_wraps(wraps, ratio) for ratio in (ratios[0], ratios[1], ratios[2])
    )
    w.step(
        "by_wraps",
        "(wraps / k_middle) ** 2",
        by_wraps,
        LINEAR_DENSITY,
        "yd/lb",
        label="Yards per pound that go with it",
    )
    w.step("finest", "(wraps / k_low) ** 2", finest, LINEAR_DENSITY, "yd/lb", label="At most")
    w.step("coarsest", "(wraps / k_high) ** 2", coarsest, LINEAR_DENSITY, "yd/lb", label="At least")
    low, high = tex_from_count(finest, "yd/lb"), tex_from_count(coarsest, "yd/lb")
    w.band("by_wraps", low, high)
    return {
        "wraps": wraps * PER_CM,
        "by_wraps": tex_from_count(by_wraps, "yd/lb"),
        "by_label": grist,
    }


def _reading(r):
    """The low and high of the reading in wraps per inch."""
    return r.low("wraps") / PER_CM, r.high("wraps") / PER_CM


def _matches(r, published):
    """Names that match by wraps (relaxed only: the published ranges are relaxed wraps), and by length and weight where known."""
    by_wraps = (
        classes_by_wraps(published, *_reading(r))
        if r.given["convention"] == RELAXED
        else classes_by_grist(published, r.low("by_wraps"), r.high("by_wraps"))
    )
    by_grist = (
        classes_by_grist(published, r.low("by_label"), r.high("by_label"))
        if r.has("by_label")
        else None
    )
    return by_wraps, by_grist


def say(r):
    names, by_grist = _matches(r, COUNCIL)
    first = f"{r.bare('wraps', 'per in')} wraps per inch: {_listed(names)}."
    band = f"By wraps alone it has {r.span('by_wraps')}"
    if by_grist is None:
        return first, band + "; a weighed length says it far better."
    both = agreed_classes(names, by_grist)
    if both:
        return (
            first,
            (
                f"{band}. Its length and weight say {r.text('by_label')}, and both agree on"
                f" {_listed(both)}."
            ),
        )
    return (
        first,
        (
            f"{band}. Its length and weight say {r.text('by_label')}, which is {_listed(by_grist)}:"
            " the two do not agree."
        ),
    )


def _listed(names):
    if not names:
        return "no class of the list"
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} or {names[-1]}"


def notes(r):
    said = [
        "The published ranges overlap and follow no single rule, so every class that the reading"
        " touches is named."
    ]
    if r.given["convention"] != RELAXED:
        said.append(
            "The published classes go by relaxed wraps. Here they were found from the band of yards"
            " per pound instead, so more of them match."
        )
    if len(r.given["tries"]) == 1:
        said.append("One try says nothing of its own spread: unwind and wrap twice more.")
    return said


def overlap(published):
    """A picture of one list's classes on a scale of wraps, with the reading as a band across them."""

    def picture(r):
        if r.given["convention"] != RELAXED:
            return None
        classes = [
            one
            for one in weight_classes(published)
            if one.wraps_low is not None or one.wraps_high is not None
        ]
        names, _ = _matches(r, published)
        low, high = _reading(r)
        scale = Scale(3, 50, 12, 348, logarithmic=True)
        drawing = Drawing(46 + 40 * len(classes) + 8)
        bottom = 40 + 40 * len(classes)
        left, right = scale(low), scale(high)
        drawing.rect(left, 24, max(right - left, 2), bottom - 20, fill=INDIGO_WASH, stroke=INDIGO)
        drawing.text(
            (left + right) / 2, 16, f"your reading, {r.text('wraps')}", anchor="middle", bold=True
        )
        for at, one in enumerate(classes):
            y = 32 + 40 * at
            match = one.name in names
            x1, x2 = scale(one.wraps_low or 3), scale(one.wraps_high or 50)
            drawing.text(
                x1, y + 12, f"{one.name}{' – fits' if match else ''}", bold=match, halo=True
            )
            drawing.rect(
                x1,
                y + 17,
                x2 - x1,
                12,
                fill=INDIGO if match else "none",
                stroke=INDIGO if match else SOFT,
            )
        for tick in (5, 10, 15, 20, 30, 40):
            drawing.line(scale(tick), bottom, scale(tick), bottom + 4, stroke=SOFT)
            drawing.text(scale(tick), bottom + 18, str(tick), anchor="middle", fill=SOFT)
        drawing.height = bottom + 24
        return drawing.picture(
            f"{LISTS[published]} by wraps per inch",
            f"Published ranges of wraps per inch overlap. {low:.1f} to {high:.1f} wraps fit:"
            f" {_listed(names)}.",
        )

    return picture


def conventions_table(r):
    """The same count read under each convention: what a mix-up would do."""
    rows = []
    for row in wrap_conventions().rows:
        wraps = r.value("wraps") / PER_CM
        low, high = (yards_per_pound_from_wraps(wraps, row[end]) for end in ("high", "low"))
        metric = sorted(
            count_from_tex(tex_from_count(yards, "yd/lb"), "m/100 g") for yards in (low, high)
        )
        chosen = " (yours)" if row["name"] == r.given["convention"] else ""
        rows.append(
            (
                row["label"] + chosen,
                f"{r.number(low, 0)} to {r.number(high, 0)}",
                f"{r.number(metric[0])} to {r.number(metric[1])}",
            )
        )
    return Table(
        "The same count under each convention",
        ("Convention", "yd/lb", "m per 100 g"),
        tuple(rows),
        "One count, three conventions, a factor of five in yards per pound: always say how it was"
        " wrapped.",
    )


CARD = Card(
    id="wraps",
    chapter="yarn",
    place=20,
    question="How many wraps per inch is it, and what weight do I call it?",
    inputs=(
        Input(CHOICE, "How you wrapped", default=RELAXED, options=CONVENTIONS, name="convention"),
        Input(
            LENGTH,
            "Width wrapped",
            default="2 in",
            allowed=("0.2 in", "39 in"),
            usual=("1 in", "4 in"),
            rough="0.02 in",
            units=("in", "cm", "mm"),
            unit="in",
            instrument="ruler",
            measure="Two inches (5 cm) or more, in the middle of the wrapping: the ends spread.",
            name="width",
        ),
        Rows(
            row_of(
                (
                    Input(
                        COUNT,
                        "Turns",
                        default="35",
                        allowed=("1", "400"),
                        usual=("8", "80"),
                        rough="0.5",
                        name="turns",
                    ),
                )
            ),
            "Turns counted",
            "try",
            least=1,
            most=8,
            measure="Unwind and wrap afresh each time. Three tries.",
            default=({"turns": "34"}, {"turns": "36"}, {"turns": "35"}),
            name="tries",
        ),
        Input(
            LINEAR_DENSITY,
            "Its length and weight, if you know them",
            default="420 m/100 g",
            allowed=("5 tex", "20000 tex"),
            rough="2 %",
            optional=True,
            units=("m/100 g", "yd/100 g", "yd/lb", "tex", "yd/oz"),
            measure="From the label, or from a weighed length.",
            name="grist",
        ),
    ),
    results=(
        Result(
            PER_LENGTH,
            "Wraps",
            units=("per in", "per cm"),
            finest=(0.5, 0.1),
            floor=0.1 * PER_CM,
            name="wraps",
        ),
        Result(
            LINEAR_DENSITY,
            "Goes with, by wraps alone",
            units=("yd/lb", "m/100 g"),
            finest=(10, 1),
            name="by_wraps",
        ),
        Result(
            LINEAR_DENSITY,
            "By its length and weight",
            units=("yd/lb", "m/100 g"),
            finest=(1, 1),
            name="by_label",
        ),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(overlap(COUNCIL), overlap(PLY_TERMS)),
    tables=(conventions_table,),
    basis=Basis(
        MODEL,
        "Wraps go with the square root of yards per pound. The ratio depends on how tightly the"
        " wraps lie, and its published values leave a wide band.",
    ),
    sources=(
        CRAFT_YARN_COUNCIL,
        TRADE_PAGE_PLY_TERMS,
        TRADE_PAGE_SPINNERS,
        TRADE_PAGE_WEAVERS,
        IUPAC_CONFIDENCE_LIMITS,
    ),
    cautions=(
        Caution(
            "Never a sett.",
            "A hand-wrap count is about half the diameters per inch that a sett is reckoned from,"
            " and no two people wrap alike. Reckon a sett from yards per pound, or from a"
            " close-packed wrap that says it is one.",
        ),
    ),
    carry=(Carry("yarn-count", "This yarn in other count systems", {"count": "by_label"}),),
)
