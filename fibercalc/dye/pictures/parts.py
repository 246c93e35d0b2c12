"""What several pictures share: a bar of numbered parts, and labels moved apart."""

from collections.abc import Sequence

from ...core.picture import INDIGO, INDIGO_WASH, INK, SHEET, Drawing

ROOM_FOR_NUMBER = 16


def numbered_bar(
    drawing: Drawing,
    x: float,
    y: float,
    width: float,
    height: float,
    amounts: Sequence[float],
    fills: Sequence[str] = (),
) -> None:
    """A bar of parts in proportion, each with its number where there is room; every second one
    hatched, so that color is not needed.

    drawing              to draw on
    x, y, width, height  of the whole bar
    amounts              of each part, 0 or more, not all 0
    fills                a color for each part; without them washes and hatching alternate
    """
    whole, left = sum(amounts), x
    for number, amount in enumerate(amounts, 1):
        wide = width * amount / whole
        fill = fills[number - 1] if fills else (INDIGO_WASH, SHEET)[number % 2]
        drawing.rect(left, y, wide, height, fill=fill)
        if not fills and number % 2:
            drawing.hatch(left, y, wide, height, stroke=INDIGO)
        if wide >= ROOM_FOR_NUMBER:
            if fills:
                drawing.circle(left + wide / 2, y + height / 2, 9, fill=SHEET, stroke=INK)
            drawing.text(
                left + wide / 2,
                y + height / 2 + 5,
                str(number),
                anchor="middle",
                bold=True,
                halo=True,
            )
        left += wide


def moved_apart(wanted: Sequence[float], gap: float, low: float, high: float) -> list[float]:
    """Places for labels near where they are wanted, in the same order, at least gap apart
    and between low and high.

    wanted     places in rising order
    gap        least distance
    low, high  ends
    """
    places: list[float] = []
    for place in wanted:
        places.append(max(place, places[-1] + gap if places else low))
    ceiling = high
    for at in range(len(places) - 1, -1, -1):
        places[at] = min(places[at], ceiling)
        ceiling = places[at] - gap
    return places
