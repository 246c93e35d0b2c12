"""How thick a yarn is, calculated from its count by three models that answer three different questions."""

from math import cos, pi, sin, sqrt

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
from ...core.picture import INDIGO, INDIGO_WASH, SOFT, Drawing
from ...core.problem import Refused
from ...core.units import DENSITY, LENGTH, LINEAR_DENSITY, NUMBER, PER_LENGTH, PERCENT
from ...sources import (
    ARITHMETIC,
    ASHENHURST,
    MORTON_HEARLE_2008,
    PEIRCE_1937,
    TAYLOR_1909,
    TECHNICAL_FIBRES_HANDBOOK,
    TRADE_MEMORY,
    TRADE_PAGE_SPINNERS,
)
from ..blend import SHARES_OFF_BY, blend_density
from ..count import count_from_tex
from ..diameter import (
    ashenhurst_constants,
    ashenhurst_diameters_per_inch,
    diameter_from_diameters_per_inch,
    peirce_diameter,
    solid_diameter,
)
from ..fiber_density import fiber_densities
from ..wraps import wrap_conventions, wraps_from_yards_per_pound

ONE, BLEND, OWN = "fiber", "blend", "own"
DENSITIES = "morton-hearle-fiber-densities"
FIBERS = tuple(
    Option(row["fiber"], row["fiber"][0].upper() + row["fiber"][1:])
    for row in fiber_densities().rows
)
KINDS = tuple(Option(row["name"], row["label"]) for row in ashenhurst_constants().rows)
MODELS = (("solid", "Solid model"), ("peirce", "Peirce"), ("ashenhurst", "Ashenhurst"))
USES = {
    "solid": "a picture, a loop, a yarn that lies free",
    "peirce": "cover of woven cloth; cotton, pressed a little",
    "ashenhurst": "a sett, by the kind of yarn",
}
MILLIMETERS = 1000.0  # in a meter


def answer(w, count, made_of, fiber, blend, density, packing, kind):
    if made_of == ONE:
        density = _looked_up(w, "density", fiber)
    elif made_of == BLEND:
        density = _of_blend(w, blend)
    solid = solid_diameter(count, density, packing / 100)
    w.step(
        "solid",
        "sqrt(4 * count / (1000 * pi * density * packing / 100))",
        solid,
        LENGTH,
        "mm",
        "Solid model: a round yarn, part fiber, part air",
    )
    yards = w.step(
        "yards_per_pound",
        "1000 * 453.59237 / (0.9144 * count)",
        count_from_tex(count, "yd/lb"),
        LINEAR_DENSITY,
        "yd/lb",
        "Yards in a pound",
    )
    w.step(
        "cotton_count",
        "yards_per_pound / 840",
        count_from_tex(count, "Ne"),
        LINEAR_DENSITY,
        "Ne",
        "Cotton hanks in a pound",
    )
    peirce = w.step(
        "peirce",
        "25.4 / (28 * sqrt(cotton_count))",
        peirce_diameter(count),
        LENGTH,
        "mm",
        "Peirce: 1 ÷ (28 √cotton count) inches",
    )
    constant = w.looked_up(
        "constant",
        "yarn",
        "ashenhurst-constants",
        "name",
        kind,
        "constant",
        NUMBER,
        label="Ashenhurst’s constant for this kind of yarn",
    )
    side_by_side = ashenhurst_diameters_per_inch(yards, constant)
    w.step(
        "side_by_side",
        "constant * sqrt(yards_per_pound)",
        side_by_side,
        PER_LENGTH,
        "per in",
        "Ashenhurst: diameters side by side in an inch",
    )
    ashenhurst = w.step(
        "ashenhurst",
        "25.4 / side_by_side",
        diameter_from_diameters_per_inch(side_by_side),
        LENGTH,
        "mm",
        "Ashenhurst: one diameter",
    )
    thickest, thinnest = max(solid, peirce, ashenhurst), min(solid, peirce, ashenhurst)
    apart = w.step(
        "apart",
        "100 * (max(solid, peirce, ashenhurst) / min(solid, peirce, ashenhurst) - 1)",
        100 * (thickest / thinnest - 1),
        PERCENT,
        label="Thickest over thinnest",
    )
    return {
        "solid": solid / MILLIMETERS,
        "peirce": peirce / MILLIMETERS,
        "ashenhurst": ashenhurst / MILLIMETERS,
        "side_by_side": PER_LENGTH.unit("per in").to_base(side_by_side),
        "apart": apart,
        "used_density": density,
    }


def _looked_up(w, name, fiber):
    """The density of a fiber at 65 % humidity, or dry where only that is published."""
    row = fiber_densities().row("fiber", fiber)
    column = "at_65" if isinstance(row["at_65"], float) else "dry"
    return w.looked_up(
        name, "yarn", DENSITIES, "fiber", fiber, column, DENSITY, label=f"Density of {fiber}"
    )


def _of_blend(w, blend):
    total = sum(row.share for row in blend)
    if abs(total - 100) > SHARES_OFF_BY:
        raise Refused(
            f"Shares of the blend: they add up to {total:.4g} %; make them add up to 100 %.",
            f"blend.{len(blend)}.share",
        )
    numbers = range(1, len(blend) + 1)
    densities = {
        str(at): _looked_up(w, f"density_{at}", row.fiber) for at, row in zip(numbers, blend)
    }
    found = blend_density({str(at): row.share for at, row in zip(numbers, blend)}, densities)
    parts = " + ".join(f"blend[{at}].share / density_{at}" for at in numbers)
    return w.step(
        "density",
        f"sum(blend.share) / ({parts})",
        found,
        DENSITY,
        label="Density of the blend: volumes add",
    )


def say(r):
    span = r.span("solid")
    first = f"This yarn is about {r.said('solid')} thick" + (f" (from {span})." if span else ".")
    return (
        first,
        (
            f"Peirce makes it {r.text('peirce')}, Ashenhurst {r.text('ashenhurst')}"
            f" ({r.text('side_by_side')}, side by side). Use Ashenhurst for a sett, Peirce for"
            " cover of cloth, the solid model for a picture or a loop."
        ),
    )


def notes(r):
    ratio = wrap_conventions().row("name", "relaxed")
    yards = count_from_tex(r.given["count"], "yd/lb")
    low, high = (
        wraps_from_yards_per_pound(yards, ratio[end]) if yards <= 100_000 else None
        for end in ("low", "high")
    )
    said = [
        (
            f"The models lie {r.number(r.value('apart'))} % apart here, because they mean different"
            " things: yarn at rest, yarn pressed in cloth, and yarn set side by side."
        ),
        (
            "The ranges carry how well count and packing are known, not whether a model fits your"
            " yarn. Packing decides most: 60 % is close-spun, 30 to 45 % soft or woolen (from"
            " memory, unverified)."
        ),
    ]
    if low:
        said.append(
            f"A relaxed hand wrap of this yarn would give about {r.number(low)} to {r.number(high)}"
            " turns in an inch. That is not a diameter and does not belong in any of these."
        )
    return said


def by_model(r):
    rows = tuple(
        (
            words,
            r.both(name),
            _in_width(r, name, "per in"),
            _in_width(r, name, "per cm"),
            USES[name],
        )
        for name, words in MODELS
    )
    return Table(
        "Which model is for what",
        ("Model", "Diameter", "Side by side in an inch", "In a centimeter", "Use it for"),
        rows,
    )


def _in_width(r, name, sign):
    """How many of these diameters lie side by side in an inch or a centimeter."""
    return r.amount(1 / (100 * r.value(name)), PER_LENGTH, sign, 3)


def picture(r):
    """The three cross-sections to one scale, with the fiber alone as a dashed circle inside the solid model, and a measure below."""
    widest = max(r.value(name) for name, _ in MODELS)
    across = 104 / widest  # sheet units for a meter of yarn width
    bottom = 10 + 104
    drawing = Drawing(bottom + 86)
    for (name, words), x in zip(MODELS, (62, 180, 298)):
        radius = r.value(name) * across / 2
        drawing.circle(x, bottom - radius, radius, fill=INDIGO_WASH, stroke=INDIGO, width=2)
        drawing.text(x, bottom + 22, words, anchor="middle", bold=True)
        drawing.text(x, bottom + 40, r.text(name), anchor="middle")
    alone = r.value("solid") * across / 2 * sqrt(r.given["packing"] / 100)
    middle = bottom - r.value("solid") * across / 2
    drawing.path(
        [
            (62 + alone * cos(turn * pi / 30), middle + alone * sin(turn * pi / 30))
            for turn in range(60)
        ],
        stroke=INDIGO,
        width=1.5,
        closed=True,
        dash="4 3",
    )
    drawing.line(8, bottom, 352, bottom, stroke=SOFT)
    unit = r.units("solid")[0]
    size = _round_below(unit.from_base(110 / across))
    length = unit.to_base(size) * across
    drawing.line(8, bottom + 58, 8 + length, bottom + 58, width=3)
    drawing.text(8, bottom + 78, r.amount(unit.to_base(size), LENGTH, unit.sign))
    drawing.text(352, bottom + 78, "dashed: the fiber without air", anchor="end", fill=SOFT)
    return drawing.picture(
        "The yarn cut across, all to one scale",
        "Three circles to one scale: "
        + ", ".join(f"{words} {r.text(name)}" for name, words in MODELS)
        + ". A dashed circle inside the first shows the fiber without air,"
        f" {r.number(r.given['packing'])} % of the area.",
    )


def _round_below(value):
    """The largest of 1, 2, 5, 10 ... that is not above a value."""
    step = 1e-6
    while step * 10 <= value:
        step *= 10
    return max(step * number for number in (1, 2, 5) if step * number <= value)


CARD = Card(
    id="yarn-diameter",
    chapter="yarn",
    place=50,
    question="How thick is this yarn, and by which model?",
    inputs=(
        Input(
            LINEAR_DENSITY,
            "Count",
            default="238 tex",
            allowed=("0.5 tex", "100000 tex"),
            usual=("15 tex", "2000 tex"),
            rough="3 %",
            units=(
                "tex",
                "yd/lb",
                "m/100 g",
                "yd/100 g",
                "Nm",
                "Ne",
                "Nw",
                "run",
                "cut",
                "lea",
                "den",
                "dtex",
            ),
            measure="From a label, or from a weighed length. Never from a hand wrap.",
            name="count",
        ),
        Input(
            CHOICE,
            "What it is made of",
            default=BLEND,
            options=(
                Option(ONE, "One fiber"),
                Option(BLEND, "A blend"),
                Option(OWN, "I know the density"),
            ),
            name="made_of",
        ),
        Input(
            CHOICE, "Fiber", default="wool", options=FIBERS, when={"made_of": (ONE,)}, name="fiber"
        ),
        Rows(
            row_of(
                (
                    Input(CHOICE, "Fiber", default="wool", options=FIBERS, name="fiber"),
                    Input(PERCENT, "Share", default="25 %", allowed=("0 %", "100 %"), name="share"),
                )
            ),
            "Fibers of the blend",
            "fiber",
            least=1,
            most=6,
            when={"made_of": (BLEND,)},
            measure="Shares by weight; together 100 %.",
            default=(
                {"fiber": "wool", "share": "75 %"},
                {"fiber": "polyamide (nylon)", "share": "25 %"},
            ),
            name="blend",
        ),
        Input(
            DENSITY,
            "Density of the fiber",
            default="1.31 g/cm3",
            allowed=("0.8 g/cm3", "3 g/cm3"),
            usual=("0.9 g/cm3", "1.6 g/cm3"),
            rough="1 %",
            when={"made_of": (OWN,)},
            measure="The fiber itself, without the air between.",
            name="density",
        ),
        Input(
            PERCENT,
            "Packing: how much of the yarn is fiber",
            default="50 %",
            allowed=("5 %", "90 %"),
            usual=("25 %", "70 %"),
            rough="10 %",
            measure=(
                "About 60 % for close-spun yarn, 30 to 45 % for soft or woolen yarn; a plied sock"
                " yarn lies between (from memory, unverified)."
            ),
            name="packing",
        ),
        Input(
            CHOICE, "Kind of yarn, for Ashenhurst", default="worsted", options=KINDS, name="kind"
        ),
    ),
    results=(
        Result(LENGTH, "Solid model", units=("mm", "in"), finest=(0.01, 0.001), name="solid"),
        Result(LENGTH, "Peirce", units=("mm", "in"), finest=(0.01, 0.001), name="peirce"),
        Result(LENGTH, "Ashenhurst", units=("mm", "in"), finest=(0.01, 0.001), name="ashenhurst"),
        Result(
            PER_LENGTH,
            "Diameters side by side, Ashenhurst",
            units=("per in", "per cm"),
            finest=(0.1, 0.1),
            name="side_by_side",
        ),
        Result(PERCENT, "Thickest over thinnest", finest=(1,), name="apart"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(by_model,),
    basis=Basis(
        MODEL,
        "The solid model is the area of a circle with a known share of fiber in it. Peirce took"
        " cotton yarn of 1.1 cm³ a gram. Ashenhurst is a rule for setting cloth, one constant for"
        " each kind of yarn; the constants are printed a little differently in different books.",
    ),
    sources=(
        PEIRCE_1937,
        ASHENHURST,
        TAYLOR_1909,
        MORTON_HEARLE_2008,
        TECHNICAL_FIBRES_HANDBOOK,
        TRADE_PAGE_SPINNERS,
        ARITHMETIC,
        TRADE_MEMORY,
    ),
    cautions=(
        Caution(
            "Never use a hand wrap here.",
            "A relaxed hand wrap counts about half the diameters of these models. A sett taken from"
            " it makes cloth half as close as it should be, and a hand-wrap width put into a loop"
            " model asks for far too much yarn.",
        ),
    ),
    carry=(Carry("yarn-count", "This yarn in every count", {"count": "count"}),),
)
