"""The outline of what is made, labeled with its measures: flat shapes in proportion; a sweater's
sleeves only nearly, as they lie.
"""

from collections.abc import Callable
from math import cos, pi, sin
from typing import Any

from ...core.answer import Picture
from ...core.outcome import Outcome
from ...core.picture import INDIGO_WASH, INK, SOFT, Drawing
from ...core.units import LENGTH
from ..projects.flat import FlatMeasures
from ..projects.hat import HatMeasures
from ..projects.measure import Made
from ..projects.mittens import MittensMeasures
from ..projects.shawl import ShawlMeasures
from ..projects.socks import SocksMeasures
from ..projects.sweater import SweaterMeasures

LEFT, RIGHT, TOP = 70.0, 350.0, 30.0  # room for labels at the left and above
TALLEST = 230.0


class _Sheet:
    """A drawing in centimeters of cloth: keeps proportions, writes measures in the user's units."""

    def __init__(self, wide: float, high: float, out: Outcome[Any]) -> None:
        self.scale = min((RIGHT - LEFT) / max(wide, 0.1), TALLEST / max(high, 0.1))
        self.wide, self.high, self.out = wide, high, out
        self.drawing = Drawing(TOP + high * self.scale + 34)
        self.left = LEFT + ((RIGHT - LEFT) - wide * self.scale) / 2
        self.said: list[str] = []

    def at(self, x: float, y: float) -> tuple[float, float]:
        return self.left + x * self.scale, TOP + y * self.scale

    def shape(self, *points: tuple[float, float]) -> None:
        self.drawing.path(
            [self.at(*point) for point in points],
            fill=INDIGO_WASH,
            stroke=INK,
            width=1.5,
            closed=True,
        )

    def fold(self, x1: float, y1: float, x2: float, y2: float) -> None:
        self.drawing.path([self.at(x1, y1), self.at(x2, y2)], stroke=SOFT, dash="4 3")

    def length(self, cm: float) -> str:
        return self.out.amount(
            round(cm, 1) / 100, LENGTH, "in" if self.out.settings.system == "us" else "cm", 3
        )

    def across(
        self, x1: float, x2: float, y: float, name: str, cm: float, below: bool = True
    ) -> None:
        """A measure across, with its line and its words below or above."""
        (left, level), (right, _) = self.at(x1, y), self.at(x2, y)
        level += 10 if below else -8
        self._line(left, level, right, level)
        self.drawing.text(
            (left + right) / 2,
            level + (15 if below else -5),
            self._words(name, cm),
            anchor="middle",
            halo=True,
        )

    def down(self, x: float, y1: float, y2: float, name: str, cm: float) -> None:
        """A measure up and down, in words over two lines at its left."""
        (place, high), (_, low) = self.at(x, y1), self.at(x, y2)
        place -= 9
        self._line(place, high, place, low)
        middle = (high + low) / 2
        self.drawing.text(place - 6, middle - 3, name, anchor="end", halo=True)
        self.drawing.text(place - 6, middle + 13, self.length(cm), anchor="end", halo=True)
        self._words(name, cm)

    def _words(self, name: str, cm: float) -> str:
        words = f"{name} {self.length(cm)}"
        self.said.append(words)
        return words

    def _line(self, x1: float, y1: float, x2: float, y2: float) -> None:
        self.drawing.line(x1, y1, x2, y2, stroke=SOFT)
        across = x1 != x2
        for x, y in ((x1, y1), (x2, y2)):
            self.drawing.line(
                x - (0 if across else 3),
                y - (3 if across else 0),
                x + (0 if across else 3),
                y + (3 if across else 0),
                stroke=SOFT,
            )

    def picture(self, title: str) -> Picture:
        return self.drawing.picture(title, f"{title}, with its measures: {'; '.join(self.said)}.")


def _sweater(case: SweaterMeasures, out: Outcome[Any]) -> Picture:
    m = case.garment
    half, half_neck, high = m.chest / 2, m.neck / 2 * 0.8, m.body + m.yoke
    drop = case.construction == "drop"
    sleeve, top, cuff = m.sleeve, (m.yoke if drop else m.upper_arm / 2), m.wrist / 2
    # The sleeve hangs at about 60 degrees: its top edge runs on from the shoulder, so that it lies
    # beside the body and not over it.
    lean = pi / 3
    reach, fall = sleeve * cos(lean), sleeve * sin(lean)
    sheet = _Sheet(half + 2 * reach + 2 * cuff, max(high, m.yoke + fall) + 2, out)
    x0 = reach + cuff
    for side in (-1, 1):
        edge = x0 if side < 0 else x0 + half
        shoulder = 0.0 if drop else m.yoke * 0.35
        sheet.shape(
            (edge, shoulder),
            (edge, m.yoke),
            (edge + side * reach, m.yoke + fall),
            (
                edge + side * (reach + cuff * sin(lean)),
                m.yoke + fall - cuff * cos(lean) - (top - cuff) * 0.2,
            ),
        )
    neck_left, neck_right = x0 + (half - half_neck) / 2, x0 + (half + half_neck) / 2
    sheet.shape(
        (neck_left, 0),
        (x0, 0 if drop else m.yoke * 0.35),
        (x0, high),
        (x0 + half, high),
        (x0 + half, 0 if drop else m.yoke * 0.35),
        (neck_right, 0),
    )
    if not drop:
        sheet.fold(neck_left, 0, x0, m.yoke)
        sheet.fold(neck_right, 0, x0 + half, m.yoke)
    sheet.across(neck_left, neck_right, 0, "neck, around", m.neck, below=False)
    sheet.across(x0, x0 + half, high, "chest, around", m.chest)
    labels = (
        ("body", m.body, high - m.body / 2),
        ("yoke" if not drop else "armhole", m.yoke, m.yoke * 0.75),
    )
    for name, cm, y in labels:
        x, level = sheet.at(x0 + half / 2, y)
        sheet.drawing.text(x, level, sheet._words(name, cm), anchor="middle", halo=True)
    x, level = sheet.at(0, m.yoke + fall)
    sheet.drawing.text(2, TOP + 12, sheet._words("sleeve", sleeve))
    sheet.drawing.text(
        2, TOP + 30, sheet._words("top" if not drop else "top", m.yoke * 2 if drop else m.upper_arm)
    )
    sheet.drawing.text(2, TOP + 48, sheet._words("cuff", m.wrist))
    return sheet.picture(
        {
            "raglan": "Raglan sweater",
            "round": "Sweater with a round yoke",
            "drop": "Sweater with dropped shoulders",
        }[case.construction]
    )


def _hat(case: HatMeasures, out: Outcome[Any]) -> Picture:
    half, side = case.hat_around / 2, case.hat_height - case.crown
    sheet = _Sheet(half, case.hat_height, out)
    crown = [
        (half / 2 - half / 2 * cos(pi * k / 16), case.crown - case.crown * sin(pi * k / 16))
        for k in range(17)
    ]
    sheet.shape((0, case.hat_height), *crown, (half, case.hat_height))
    sheet.fold(0, case.crown, half, case.crown)
    if case.turn_up:
        sheet.fold(0, case.hat_height - case.turn_up, half, case.hat_height - case.turn_up)
        x, level = sheet.at(half / 2, case.hat_height - case.turn_up / 2)
        sheet.drawing.text(
            x, level + 5, sheet._words("turned up", case.turn_up), anchor="middle", halo=True
        )
    sheet.across(0, half, case.hat_height, "around", case.hat_around)
    sheet.down(0, 0, case.crown, "crown", case.crown)
    sheet.down(0, case.crown, case.hat_height, "side", side)
    return sheet.picture("Hat")


def _mitten(case: MittensMeasures, out: Outcome[Any]) -> Picture:
    half, hand = case.hand / 2, case.hand_length
    sheet = _Sheet(half * 1.9, case.cuff + hand, out)
    thumb, long = 0.2 * case.hand, 0.33 * hand
    low = hand * 0.72
    sheet.shape(
        (half, low),
        (half + thumb * 1.6, low - long),
        (half + thumb * 2.2, low - long + thumb),
        (half, low + thumb * 1.3),
    )
    sheet.shape(
        (0, hand + case.cuff),
        (0, case.tip),
        (half * 0.3, 0),
        (half * 0.7, 0),
        (half, case.tip),
        (half, hand + case.cuff),
    )
    sheet.fold(0, case.tip, half, case.tip)
    sheet.fold(0, hand, half, hand)
    sheet.across(0, half, hand + case.cuff, "around", case.hand)
    sheet.down(0, 0, hand, "hand", hand)
    sheet.down(0, hand, hand + case.cuff, "cuff", case.cuff)
    return sheet.picture("Mitten")


def _sock(case: SocksMeasures, out: Outcome[Any]) -> Picture:
    half, pocket, foot, leg = case.sock_around / 2, case.pocket, case.foot, case.leg
    sheet = _Sheet(half + foot + pocket, leg + half, out)
    toe = [
        (half + foot + pocket * sin(pi * k / 12), leg + half / 2 - half / 2 * cos(pi * k / 12))
        for k in range(13)
    ]
    sheet.shape(
        (0, 0),
        (half, 0),
        (half, leg),
        *toe,
        (half, leg + half),
        (pocket * 0.5, leg + half),
        (0, leg + half - pocket * 0.5),
    )
    sheet.fold(0, leg, half, leg + half)
    sheet.fold(half + foot, leg, half + foot, leg + half)
    sheet.across(0, half, 0, "around", case.sock_around, below=False)
    sheet.across(half, half + foot, leg + half, "foot", foot)
    sheet.down(0, 0, leg, "leg", leg)
    x, level = sheet.at(half + foot / 2, leg + half / 2)
    sheet.drawing.text(x, level, sheet._words("heel and toe", pocket), anchor="middle", halo=True)
    return sheet.picture("Sock")


def _box(
    out: Outcome[Any], title: str, across: tuple[str, float, float], down: tuple[str, float]
) -> Picture:
    """A rectangle, turned so that its longer side lies across."""
    name, cm, shown = across
    sheet = _Sheet(shown, down[1], out)
    sheet.shape((0, 0), (shown, 0), (shown, down[1]), (0, down[1]))
    sheet.across(0, shown, down[1], name, cm)
    sheet.down(0, 0, down[1], *down)
    return sheet.picture(title)


def _tube(case: FlatMeasures, out: Outcome[Any]) -> Picture:
    return _box(
        out, "Tube, laid flat", ("around", case.around, case.around / 2), ("height", case.height)
    )


def _rectangle(case: FlatMeasures, out: Outcome[Any]) -> Picture:
    longer, other = (
        (("length", case.length), ("width", case.width))
        if case.length >= case.width
        else (("width", case.width), ("length", case.length))
    )
    return _box(out, "Rectangle", (*longer, longer[1]), other)


def _shawl(case: ShawlMeasures, out: Outcome[Any]) -> Picture:
    span, shape = case.span, case.shape
    if shape in ("circle", "half-circle"):
        turn = 2 if shape == "circle" else 1
        sheet = _Sheet(span, span / 2 * turn, out)
        middle = span / 2 if turn == 2 else 0.0
        sheet.shape(
            *(
                (span / 2 + span / 2 * cos(pi * k / 24), middle + span / 2 * sin(pi * k / 24))
                for k in range(24 * turn + 1)
            )
        )
        sheet.across(0, span, middle, "across", span, below=turn == 2)
        return sheet.picture("Circle" if turn == 2 else "Half circle")
    depth = case.depth
    sheet = _Sheet(span, depth, out)
    tip = {"top": span / 2, "corner": span / 2, "wing": span * 0.2}.get(shape)
    if tip is None:
        sheet.shape(
            (0, 0),
            (span, 0),
            *((span - span * k / 24, depth * (1 - (2 * k / 24 - 1) ** 2)) for k in range(1, 24)),
        )
        tip = span / 2
    else:
        sheet.shape((0, 0), (span, 0), (tip, depth))
    if shape == "top":
        sheet.fold(tip, 0, tip, depth)
    sheet.across(0, span, 0, "wingspan", span, below=False)
    x, level = sheet.at(tip, depth)
    sheet.drawing.text(x, level + 17, sheet._words("depth", depth), anchor="middle", halo=True)
    return sheet.picture(
        {
            "top": "Triangle from the top center",
            "corner": "Triangle from one corner",
            "wing": "Wing",
            "crescent": "Crescent",
        }[shape]
    )


DRAWN: dict[str, Callable[[Any, Outcome[Any]], Picture]] = {
    "sweater": _sweater,
    "hat": _hat,
    "mittens": _mitten,
    "socks": _sock,
    "cowl": _tube,
    "scarf": _rectangle,
    "blanket": _rectangle,
    "shawl": _shawl,
}


def schematic(make: str, case: Made, out: Outcome[Any]) -> Picture:
    """The outline of what is made, labeled. make is a key of DRAWN; out writes amounts in the
    user's units.
    """
    return DRAWN[make](case, out)
