"""What is asked about a run of pieces on one warp; and what to wind and buy, settled last."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from ....core.asked import When
from ....core.card import (
    CHOICE,
    TEXT,
    Between,
    Case,
    Chance,
    Input,
    Option,
    Plain,
    Result,
    Row,
    Rows,
)
from ....core.outcome import Outcome
from ....core.ref import FieldRef
from ....core.units import (
    COUNT,
    LENGTH,
    LINEAR_DENSITY,
    MASS,
    NUMBER,
    PER_LENGTH,
    PERCENT,
    Quantity,
)
from ....held import RECORD

WIDTH, ENDS = "width", "ends"
ONE, REPEATED, ONCE = "one", "repeated", "once"
HEM, FRINGE, NEITHER = "hem", "fringe", "neither"
SAME, OTHER = "same", "other"
PER = ("per cm", "per in", "per 10 cm")


@dataclass(frozen=True)
class Share:
    """A color of yarn, what it is for, and its parts of all warp and of all weft."""

    color: str
    use: str
    warp: float
    weft: float


def far_end(out: Outcome[WarpPlan], share: Share) -> float:
    """Balls of a color at the far end of the range. Those of warp and weft are added, since what
    makes one longer mostly makes the other so."""
    warp, weft = out.high(WarpPlan.warp_balls), out.high(WarpPlan.weft_balls)
    return share.warp * warp + share.weft * weft


def balls(out: Outcome[WarpPlan]) -> dict[tuple[str, str], int]:
    """Balls to buy of each color and use, enough at the far end of the range."""
    high = {(share.color, share.use): far_end(out, share) for share in out.case.shares}
    return {key: max(ceil(most - 1e-9), 1 if most > 0 else 0) for key, most in high.items()}


def warp_to_wind(out: Outcome[WarpPlan]) -> float:
    """Warp that leaves the last piece whole at the far end of its range."""
    return ceil(100 * out.high(WarpPlan.warp_length) - 1e-6) / 100


def to_buy(out: Outcome[WarpPlan]) -> int:
    """Balls of warp and weft yarn, color by color."""
    return sum(balls(out).values())


def hems_to_buy(out: Outcome[WarpPlan]) -> int | None:
    return ceil(out.high(WarpPlan.hem_balls) - 1e-9) if out.has(WarpPlan.hem_balls) else None


def _cm(
    label: str,
    default: str,
    allowed: tuple[str, str],
    usual: tuple[str, str],
    rough: str = "",
    said: str = "",
    when: When | None = None,
) -> Input[float]:
    return Input[float](
        LENGTH,
        label,
        default=default,
        allowed=allowed,
        usual=usual,
        rough=rough,
        units=("cm", "in"),
        unit="cm",
        measure=said,
        when=when or {},
    )


def _lost(
    label: str,
    default: str,
    said: str,
    usual: tuple[str, str] = ("2 %", "20 %"),
    least: str = "0 %",
    record: FieldRef | None = None,
) -> Input[float]:
    return Input[float](
        PERCENT,
        label,
        record=record,
        default=default,
        allowed=(least, "50 %"),
        usual=usual,
        rough="2 %",
        measure=said,
    )


def _ball(
    of: Quantity, label: str, default: str, when: When | None = None, said: str = ""
) -> Input[float]:
    if of is MASS:
        return Input[float](
            MASS,
            label,
            default=default,
            allowed=("1 g", "2 kg"),
            usual=("10 g", "500 g"),
            units=("g", "oz"),
            when=when or {},
            bench=None if when else RECORD.bench.bases.mass,
            record=None if when else RECORD.base.mass,
            measure=said,
        )
    return Input[float](
        LENGTH,
        label,
        default=default,
        allowed=("5 m", "20000 m"),
        usual=("50 m", "3000 m"),
        rough="1.5 %",
        units=("m", "yd"),
        when=when or {},
        bench=None if when else RECORD.bench.bases.length,
        record=None if when else RECORD.base.length,
        measure=said,
    )


class Piece(Row):
    """One piece."""

    name = Input[str](TEXT, "Name", default="Cloth", longest=18, lent=False)
    many = Input[int](COUNT, "How many alike", default="1", allowed=("1", "200"), usual=("1", "20"))
    length = _cm("Finished length", "20 cm", ("2 cm", "2000 cm"), ("10 cm", "300 cm"))
    color = Input[str](TEXT, "Weft color", default="natural", longest=18, lent=False)

    woven = Between[float](LENGTH, "Woven on the loom", unit="cm")
    woven_alike = Between[float](LENGTH, "Woven for all alike", unit="cm")
    picks = Between[int](COUNT, "Picks")
    picks_alike = Between[int](COUNT, "Picks of all alike")
    picks_with_hems = Between[int](COUNT, "Picks with both hems")


class Stripe(Row):
    """One stripe."""

    color = Input[str](TEXT, "Color", default="natural", longest=18, lent=False)
    ends = Input[int](COUNT, "Ends", default="4", allowed=("1", "2000"), usual=("1", "200"))


WARP_COLORS = Input[str](
    CHOICE,
    "Colors of the warp",
    default=ONE,
    options=(
        Option(ONE, "One"),
        Option(REPEATED, "Stripes, again and again"),
        Option(ONCE, "Stripes, once across"),
    ),
)


class WarpPlan(Case):
    """A run of pieces on one warp: the cloth wanted, the loom, and the yarn it takes."""

    pieces = Rows(
        Piece,
        "Pieces, in the order of weaving",
        "piece",
        least=1,
        most=12,
        measure="Finished length, without hems or fringe. Alike pieces stand in one row.",
        default=({"name": "Towel", "many": "5", "length": "55 cm", "color": "natural"},),
    )
    go_by = Input[str](
        CHOICE,
        "Go by",
        default=WIDTH,
        options=(Option(WIDTH, "A finished width"), Option(ENDS, "A number of ends")),
        when={WARP_COLORS: (ONE, REPEATED)},
    )
    BY_WIDTH = {go_by: (WIDTH,)}
    width = _cm(
        "Finished width wanted", "34 cm", ("1 cm", "400 cm"), ("5 cm", "150 cm"), when=BY_WIDTH
    )
    ends_given = Input[int](
        COUNT,
        "Ends",
        default="160",
        allowed=("2", "20000"),
        usual=("20", "800"),
        when={go_by: (ENDS,)},
        measure="Without the extra ends at the edges.",
    )
    width_shrink = _lost(
        "Shrinkage in width",
        "14 %",
        "Percent of the width before washing.",
        ("0 %", "35 %"),
        "-20 %",
        RECORD.measurement.width_change,
    )
    length_shrink = _lost(
        "Shrinkage in length",
        "18 %",
        "Percent of the length as measured on the loom, from a washed sample.",
        ("0 %", "35 %"),
        "-20 %",
        RECORD.measurement.length_change,
    )
    draw_in = _lost("Draw-in", "6 %", "Percent of the width in the heddle.")
    take_up = _lost("Take-up of the warp", "10 %", "Percent of the warp yarn.")
    weft_take_up = _lost(
        "Take-up of the weft", "6 %", "Percent of the weft yarn; its turns and joins with it."
    )
    sett = Input[float](
        PER_LENGTH,
        "Ends",
        default="4 per cm",
        allowed=("0.5 per cm", "60 per cm"),
        usual=("1 per cm", "30 per cm"),
        units=PER,
        measure="As the heddle gives them.",
    )
    picks = Input[float](
        PER_LENGTH,
        "Picks, on the loom",
        default="5 per cm",
        allowed=("0.2 per cm", "60 per cm"),
        usual=("1 per cm", "30 per cm"),
        rough="0.2 per cm",
        units=PER,
    )
    multiple = Input[int](
        COUNT,
        "Ends in multiples of",
        default="2",
        allowed=("1", "400"),
        usual=("1", "60"),
        when=BY_WIDTH,
        measure="A pattern’s repeat; 2 for a warp wound in loops.",
    )
    edge_ends = Input[int](
        COUNT,
        "Extra ends at the edges",
        default="0",
        allowed=("0", "40"),
        usual=("0", "8"),
        measure="Doubled into the last holes: they take no width.",
    )
    finish = Input[str](
        CHOICE,
        "Each end of a piece",
        default=HEM,
        options=(Option(HEM, "A hem"), Option(FRINGE, "A fringe"), Option(NEITHER, "Neither")),
    )
    FRINGED = {finish: (FRINGE,)}
    HEMMED = {finish: (HEM,)}
    hem = _cm(
        "Cloth in one hem",
        "4 cm",
        ("0.2 cm", "60 cm"),
        ("1 cm", "10 cm"),
        said="Washed; all that is folded in.",
        when=HEMMED,
    )
    hem_yarn = Input[str](
        CHOICE,
        "Hems woven in",
        default=SAME,
        options=(Option(SAME, "The piece’s own weft"), Option(OTHER, "A finer yarn")),
        when=HEMMED,
    )
    FINE = {hem_yarn: (OTHER,)}
    hem_picks = Input[float](
        PER_LENGTH,
        "Picks in the hems",
        default="9 per cm",
        allowed=("0.5 per cm", "100 per cm"),
        usual=("2 per cm", "40 per cm"),
        rough="0.5 per cm",
        units=PER,
        when=FINE,
    )
    hem_mass = _ball(MASS, "A ball of the finer yarn weighs", "50 g", FINE)
    hem_length = _ball(LENGTH, "and holds", "280 m", FINE)
    fringe = _cm(
        "Fringe at one end",
        "8 cm",
        ("0.5 cm", "100 cm"),
        ("4 cm", "25 cm"),
        said="As cut on the loom; with what knots or twisting take.",
        when=FRINGED,
    )
    divider = _cm(
        "Divider before, between and after",
        "2 cm",
        ("0 cm", "60 cm"),
        ("0.5 cm", "10 cm"),
        said="A few picks of scrap yarn, to cut through.",
    )
    sample = _cm(
        "Sample woven first",
        "0 cm",
        ("0 cm", "300 cm"),
        ("0 cm", "40 cm"),
        said="As woven; to be washed before the rest is cut to its marks.",
    )
    waste = _cm(
        "Loom waste",
        "50 cm",
        ("0 cm", "400 cm"),
        ("20 cm", "120 cm"),
        "5 cm",
        "Both ends: tied on, and what cannot be reached.",
    )
    loom_width = _cm(
        "Width of the heddle or reed", "40 cm", ("2 cm", "400 cm"), ("15 cm", "200 cm")
    )
    limit = Input[float | None](
        LENGTH,
        "Warp there is, or the loom takes",
        allowed=("0.2 m", "500 m"),
        usual=("1 m", "30 m"),
        units=("m", "yd", "cm", "in"),
        optional=True,
        measure="Blank if it is still to be wound.",
    )
    warp_colors = WARP_COLORS
    STRIPED = {WARP_COLORS: (REPEATED, ONCE)}
    warp_color = Input[str](
        TEXT, "Warp color", default="natural", longest=18, when={WARP_COLORS: (ONE,)}, lent=False
    )
    stripes = Rows(
        Stripe,
        "Stripes, from the first end",
        "stripe",
        least=1,
        most=24,
        when=STRIPED,
        default=({"color": "natural", "ends": "12"}, {"color": "slate", "ends": "4"}),
    )
    skein_mass = _ball(MASS, "A ball weighs", "100 g")
    skein_length = _ball(
        LENGTH, "A ball holds", "170 m", said="Take off what knots and joins lost in balls like it."
    )
    weft_from = Input[str](
        CHOICE,
        "Weft",
        default=SAME,
        options=(Option(SAME, "The same yarn"), Option(OTHER, "Another yarn")),
    )
    SEPARATE = {weft_from: (OTHER,)}
    weft_mass = _ball(MASS, "A ball of the weft weighs", "100 g", SEPARATE)
    weft_length = _ball(LENGTH, "and holds", "170 m", SEPARATE)

    width_needed = Between[float](LENGTH, "Width in the heddle that is needed", unit="cm")
    ends_by_width = Plain[int](fixed=True)
    ends_wanted = Between[float](COUNT, "Ends wanted")
    ends_that_fit = Between[int](COUNT, "Ends that the loom holds", fixed=True)
    ends_across = Between[float](COUNT, "Ends side by side")
    too_wide = Plain[bool]()
    width_asked = Between[float](LENGTH, "Width that is too wide, washed", unit="cm")
    hem_woven = Between[float](LENGTH, "One hem, woven on the loom", unit="cm", fixed=True)
    lengths_woven = Plain[list[float]](fixed=True)
    pieces_in_all = Between[float](COUNT, "Pieces in all")
    on_loom = Between[float](LENGTH, "Woven on the loom, with dividers and sample", unit="cm")
    available = Between[float](LENGTH, "Of the warp there is, without loom waste", unit="cm")
    never_woven = Between[float](LENGTH, "Warp that is never woven", unit="cm")
    pick = Between[float](LENGTH, "Weft yarn in one pick")
    sample_picks = Between[int](COUNT, "Picks in the sample")
    picks_in_hem = Between[int](COUNT, "Picks in one hem")
    first_picks = Between[int](COUNT, "Picks of the first piece, with both hems")
    weft_count = Between[float](LINEAR_DENSITY, "Count of the weft")
    shares = Plain[list[Share]]()

    buy = Result[int](COUNT, "Balls to buy", rounding="up", decided=to_buy)
    ends = Result[float](COUNT, "Ends")
    heddle_width = Result[float](
        LENGTH, "Width in the heddle", unit="cm", units=("cm", "in"), finest=(0.1, 0.1)
    )
    warp_sure = Result[float](
        LENGTH,
        "Warp to wind, so that the last piece is whole",
        units=("m", "yd"),
        finest=(0.01, 0.01),
        rounding="up",
        decided=warp_to_wind,
    )
    warp_length = Result[float](
        LENGTH, "Warp length, as reckoned", units=("m", "yd"), finest=(0.01, 0.01)
    )
    finished_width = Result[float](
        LENGTH, "Width, washed", unit="cm", units=("cm", "in"), finest=(0.1, 0.1), floor=0.0
    )
    finished_length = Result[float](
        LENGTH,
        "Length of the first piece, finished",
        unit="cm",
        units=("cm", "in"),
        finest=(0.1, 0.1),
    )
    weft_picks = Result[float](COUNT, "Picks in all")
    warp_yarn = Result[float](
        LENGTH, "Warp yarn", units=("m", "yd"), finest=(1, 1), rounding="up", floor=0.0
    )
    weft_yarn = Result[float](
        LENGTH, "Weft yarn", units=("m", "yd"), finest=(1, 1), rounding="up", floor=0.0
    )
    warp_weight = Result[float](
        MASS, "Warp yarn, weight", units=("g", "oz"), finest=(1, 0.1), rounding="up", floor=0.0
    )
    weft_weight = Result[float](
        MASS, "Weft yarn, weight", units=("g", "oz"), finest=(1, 0.1), rounding="up", floor=0.0
    )
    warp_balls = Result[float](
        NUMBER, "Warp yarn, in balls", finest=(0.01,), rounding="up", floor=0.0
    )
    weft_balls = Result[float](
        NUMBER, "Weft yarn, in balls", finest=(0.01,), rounding="up", floor=0.0
    )
    hem_thread = Result[float](
        LENGTH,
        "Finer yarn for the hems",
        units=("m", "yd"),
        finest=(1, 1),
        rounding="up",
        floor=0.0,
    )
    hem_weight = Result[float](
        MASS, "Its weight", units=("g", "oz"), finest=(1, 0.1), rounding="up", floor=0.0
    )
    hem_balls = Result[float](NUMBER, "In balls", finest=(0.01,), rounding="up", floor=0.0)
    hem_buy = Result[int](COUNT, "Balls of it to buy", rounding="up", decided=hems_to_buy)
    spare = Result[float](
        LENGTH, "Left of the warp there is", units=("cm", "in"), finest=(1, 0.5), rounding="down"
    )
    last_lost = Result[float](
        PERCENT, "Chance that the last piece is cut short", chance=Chance(spare, below=0.0)
    )
