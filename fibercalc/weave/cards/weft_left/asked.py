"""What is asked about leftover weft; and its stripes, dealt last, from the low ends."""

from __future__ import annotations

from dataclasses import replace

from ....core.card import COLOR, TEXT, Between, Case, Input, Plain, Result, Row, Rows
from ....core.color import Color
from ....core.outcome import Outcome
from ....core.spread import Parts
from ....core.units import COUNT, LENGTH, LINEAR_DENSITY, MASS, NUMBER, PERCENT
from ....held import RECORD
from ...inputs import HEM_PICKS, PICKS
from ...leftovers import pick_length, picks_from, stripe_picks, stripes_that_fit, yarn_length

ALIKE = ("tare", "yarn", "width", "take_up")  # what every ball's picks rest on, beside its weight
LEAST = {"mass": 0.0, "tare": 0.0, "yarn": 0.1, "width": 0.005, "take_up": 0.0}
MOST = {"take_up": 60.0}


def ranges(out: Outcome[WeftLeft]) -> list[tuple[float, float]]:
    """For each ball the low and the high end of its picks, 95 %."""
    if not out.case.has(WeftLeft.ranges):
        out.case.ranges = [_range_of(out, number) for number in range(len(out.case.balls))]
    return out.case.ranges


def _range_of(out: Outcome[WeftLeft], number: int) -> tuple[float, float]:
    picks, parts = out.case.balls[number].picks, Parts()
    rough = {name: out.readings[name].rough for name in ALIKE}
    rough["mass"] = out.readings[f"balls.{number + 1}.mass"].rough
    for name, half_width in rough.items():
        if half_width:
            shifts = [_moved(out.case, number, name, sign * half_width) - picks for sign in (-1, 1)]
            parts.down.append(max(0.0, *(-shift for shift in shifts)))
            parts.up.append(max(0.0, *shifts))
    return max(picks - parts.half_width("down"), 0.0), picks + parts.half_width("up")


def _moved(case: WeftLeft, number: int, name: str, by: float) -> float:
    """A ball's picks with one thing that they rest on moved."""
    rests_on = {each: getattr(case, each) for each in ALIKE} | {"mass": case.balls[number].mass}
    rests_on[name] = min(max(rests_on[name] + by, LEAST[name]), MOST.get(name, float("inf")))
    return picks_from(
        yarn_length(rests_on["mass"], rests_on["tare"], rests_on["yarn"]),
        pick_length(rests_on["width"], rests_on["take_up"]),
        case.pieces * case.stripes,
        case.tail,
    )


def even(out: Outcome[WeftLeft]) -> list[int]:
    """Picks of one stripe of each color, from the low end, so that the last piece is not short."""
    return [stripe_picks(low, out.case.pieces, out.case.stripes) for low, _ in ranges(out)]


def room(out: Outcome[WeftLeft]) -> int:
    """Picks of a piece between its hems."""
    return out.case.piece_picks - 2 * out.case.hem


def dealt(out: Outcome[WeftLeft]) -> list[int]:
    """The same as `even`, as far as a piece has room for it."""
    if not out.case.has(WeftLeft.dealt):
        out.case.dealt = stripes_that_fit(even(out), out.case.stripes, room(out))
    return out.case.dealt


def in_a_piece(out: Outcome[WeftLeft]) -> int:
    return out.case.stripes * sum(dealt(out))


def main_picks(out: Outcome[WeftLeft]) -> int:
    """What the main yarn has to weave in each piece, hems too."""
    return out.case.piece_picks - in_a_piece(out)


def main_length(out: Outcome[WeftLeft]) -> float:
    return out.case.pieces * main_picks(out) * out.case.pick


class Ball(Row):
    """One ball."""

    name = Input[str](TEXT, "Yarn", default="Another", longest=16, lent=False)
    color = Input[Color](COLOR, "Color", default="#8a8f6a")
    mass = Input[float](
        MASS, "Weighs", default="30 g", allowed=("0.5 g", "5 kg"), rough="0.5 g", units=("g", "oz")
    )

    length = Between[float](LENGTH, "Yarn on it")
    picks = Between[float](NUMBER, "Picks, once the ends of its stripes are taken off")


class WeftLeft(Case):
    """Leftover balls, the cloth on the loom, and the pieces among which they are dealt."""

    balls = Rows(
        Ball,
        "Shuttles or leftover balls, one for each color",
        "ball",
        least=1,
        most=12,
        default=(
            {"name": "Rust", "color": "#9c4a2b", "mass": "38 g"},
            {"name": "Slate", "color": "#3d4a5c", "mass": "52 g"},
            {"name": "Moss", "color": "#8a8f6a", "mass": "21 g"},
        ),
    )
    tare = Input[float](
        MASS,
        "of that, the empty shuttle or core",
        default="0 g",
        allowed=("0 g", "500 g"),
        usual=("0 g", "150 g"),
        units=("g", "oz"),
        measure="The same for each; weigh it before it is wound.",
    )
    yarn = Input[float](
        LINEAR_DENSITY,
        "Yarn",
        default="170 m/100 g",
        allowed=("5 tex", "20000 tex"),
        usual=("30 tex", "2000 tex"),
        rough="2 %",
        units=("m/100 g", "yd/100 g", "yd/lb", "yd/oz", "tex", "Ne", "Nm"),
    )
    width = Input[float](
        LENGTH,
        "Width in the heddle",
        default="40 cm",
        allowed=("1 cm", "300 cm"),
        usual=("10 cm", "120 cm"),
        rough="0.3 cm",
        units=("cm", "in"),
    )
    take_up = Input[float](
        PERCENT,
        "The weft takes up",
        default="6 %",
        allowed=("0 %", "60 %"),
        usual=("2 %", "15 %"),
        rough="2 %",
        measure="Percent of the weft that goes into its bends and its arc.",
    )
    beat = replace(PICKS)
    shrink = Input[float](
        PERCENT,
        "The wash takes, of the length",
        record=RECORD.measurement.length_change,
        default="18 %",
        allowed=("-20 %", "60 %"),
        usual=("0 %", "35 %"),
        rough="2 %",
    )
    pieces = Input[int](
        COUNT, "Pieces still to weave", default="3", allowed=("1", "100"), usual=("1", "12")
    )
    piece_picks = Input[int](
        COUNT,
        "Picks of a piece, with both hems",
        default="384",
        allowed=("4", "4000"),
        usual=("20", "1500"),
    )
    hem = replace(HEM_PICKS, measure="In the main yarn; no stripe falls there.")
    stripes = Input[int](
        COUNT,
        "Stripes of each color in a piece",
        default="2",
        allowed=("1", "40"),
        usual=("1", "12"),
    )
    tail = Input[float](
        LENGTH,
        "Each stripe loses",
        default="10 cm",
        allowed=("0 cm", "200 cm"),
        usual=("0 cm", "40 cm"),
        units=("cm", "in"),
        measure="Both its ends, woven in and trimmed.",
    )

    ranges = Plain[list[tuple[float, float]]]()
    dealt = Plain[list[int]]()

    picks = Result[float](
        NUMBER, "Picks they weave in all", finest=(1,), rounding="down", floor=0.0
    )
    on_loom = Result[float](
        LENGTH,
        "Cloth on the loom",
        unit="cm",
        units=("cm", "in"),
        finest=(0.5, 0.2),
        rounding="down",
        floor=0.0,
    )
    after = Result[float](
        LENGTH,
        "Cloth once washed",
        unit="cm",
        units=("cm", "in"),
        finest=(0.5, 0.2),
        rounding="down",
        floor=0.0,
    )
    pick = Result[float](
        LENGTH, "Weft in a pick", units=("cm", "in"), finest=(0.1, 0.05), rounding="up", floor=0.0
    )
    striped = Result[int](COUNT, "Picks of stripes in each piece", decided=in_a_piece)
    main = Result[int](COUNT, "Picks of the main yarn in each piece", decided=main_picks)
    main_yarn = Result[float](
        LENGTH,
        "Main yarn for all of them",
        units=("m", "yd"),
        finest=(1, 1),
        rounding="up",
        decided=main_length,
    )
