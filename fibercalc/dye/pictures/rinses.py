"""Color of each rinse on a logarithmic scale, where equal rinses make a straight line, drawn on
to where it is good enough.
"""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, MADDER, SOFT, Drawing, Scale, nice_ticks
from ..bleed import CarryOver

TOP, BOTTOM, LEFT, RIGHT = 16, 190, 56, 346
FURTHEST = 40.0  # rinses drawn; more than that nobody does


def rinses_picture(
    readings: Sequence[tuple[float, float]], fit: CarryOver, wanted: float
) -> Picture:
    """Readings as dots, the fitted fall as a line with its range, and the color that is good
    enough.

    readings  (number of the rinse, color as % of the first bath) each, as for bleed.fit_carry_over
    fit       what it gave
    wanted    color that is good enough, %, above 0
    Raises nothing.
    """
    last, strongest = max(rinse for rinse, _ in readings), max(color for _, color in readings)
    end = last + 3.0
    while end < FURTHEST and fit.last * (fit.share / 100) ** (end - last) > wanted:
        end += 1
    lowest = max(min(wanted, fit.last * (fit.low / 100) ** (end - last)) / 2, wanted / 100)
    high = max(strongest, wanted, fit.last) * 1.3
    across, up = (
        Scale(min(rinse for rinse, _ in readings), end, LEFT + 8, RIGHT),
        Scale(min(lowest, *(color for _, color in readings)), high, BOTTOM, TOP, logarithmic=True),
    )
    drawing = Drawing(BOTTOM + 44)
    tick = 10.0**-6
    while tick <= high:
        if tick >= up.low:
            drawing.line(LEFT, up(tick), RIGHT, up(tick), stroke=LINE)
            drawing.text(LEFT - 4, up(tick) + 5, f"{tick:g} %", anchor="end", size=13, fill=SOFT)
        tick *= 10
    for number in nice_ticks(across.low, end, 8):
        if number == int(number):
            drawing.text(
                across(number), BOTTOM + 17, f"{number:.0f}", anchor="middle", size=13, fill=SOFT
            )
    drawing.text((LEFT + RIGHT) / 2, BOTTOM + 35, "rinse", anchor="middle", size=13, fill=SOFT)

    def fall(share: float) -> list[tuple[float, float]]:
        places = [last + (end - last) * k / 20 for k in range(21)]
        return [(across(place), up(fit.last * (share / 100) ** (place - last))) for place in places]

    drawing.path(
        [*fall(min(fit.high, 100.0)), *reversed(fall(fit.low))],
        fill=INDIGO_WASH,
        stroke="none",
        closed=True,
    )
    drawing.path(fall(fit.share), stroke=INDIGO, width=2, dash="5 4")
    for rinse, color in readings:
        drawing.circle(across(rinse), up(color), 5, fill=INK)
    drawing.line(LEFT, up(wanted), RIGHT, up(wanted), stroke=MADDER, width=1.5, dash="6 4")
    drawing.text(LEFT + 6, up(wanted) + 16, "good enough", size=13, fill=MADDER, halo=True)
    return drawing.picture(
        "The rinses, and those to come",
        f"Each rinse leaves {fit.share:.0f} % of the color, {fit.low:.0f} to"
        f" {min(fit.high, 100):.0f} %; "
        + ", ".join(f"rinse {rinse:g}: {color:.2g} %" for rinse, color in readings)
        + ".",
    )
