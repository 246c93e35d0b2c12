"""Fabric from a hand-painted skein, stitch by stitch, and the skein it came from."""

from collections.abc import Iterator, Sequence

from ...core.answer import Picture
from ...core.picture import INK, SOFT, Drawing, against, dash_of

LEFT, RIGHT, MOST_HIGH = 8, 352, 420


def fabric_picture(
    rows: Sequence[Sequence[int]],
    names: Sequence[str],
    colors: Sequence[str],
    stitches_per_cm: float,
    rows_per_cm: float,
    stitches: int,
    title: str = "What the fabric will likely look like",
) -> Picture:
    """The fabric as the right side is seen, first row at the bottom, in the
    gauge's proportion, with a key.

    rows             color places (from 0), as pooling.fabric gives them; up to about 120 x 80
    names            of the colors, in order
    colors           screen colors ("#6b7f8f"), in order
    stitches_per_cm  washed gauge
    rows_per_cm      washed gauge
    stitches         in a whole round or row; more than are drawn are said
    Raises nothing.
    """
    wide = min((RIGHT - LEFT) / len(rows[0]), 14.0)
    high = wide * stitches_per_cm / rows_per_cm
    if high * len(rows) > MOST_HIGH:
        wide, high = wide * MOST_HIGH / (high * len(rows)), MOST_HIGH / len(rows)
    bottom = 8 + high * len(rows)
    key_lines = -(-len(names) // 2)
    drawing = Drawing(bottom + 30 + 24 * key_lines)
    boxes: list[list[tuple[float, float, float, float]]] = [[] for _ in names]
    threads: list[list[list[tuple[float, float]]]] = [[] for _ in names]
    for number, row in enumerate(rows):
        top = bottom - high * (number + 1)
        for begin, length, color in _runs(row):
            x, run = LEFT + wide * begin, wide * length
            boxes[color].append(
                (x, top, run, high + 0.2)
            )  # a hair over, so that no paper shows between rows
            threads[color].append([(x, top + high / 2), (x + run, top + high / 2)])
    thread_width = min(max(high * 0.28, 0.6), 2.0)
    for color, dash in _dashes(colors):
        drawing.boxes(boxes[color], colors[color])
        if dash is not None:
            drawing.strokes(
                threads[color], stroke=against(colors[color]), width=thread_width, dash=dash
            )
    drawing.rect(LEFT, 8, wide * len(rows[0]), high * len(rows), stroke=INK)
    drawn = len(rows[0])
    drawing.text(
        LEFT,
        bottom + 17,
        f"{drawn} stitches"
        + (f" of {stitches}" if drawn < stitches else "")
        + f", {len(rows)} rows, from the bottom up",
        size=13,
        fill=SOFT,
    )
    _key(drawing, bottom + 26, names, colors)
    return drawing.picture(
        title, f"{drawn} stitches by {len(rows)} rows; share of each color: {_shares(rows, names)}."
    )


def skein_bar(
    lengths: Sequence[float], names: Sequence[str], colors: Sequence[str], turn_text: str
) -> Picture:
    """One turn of the skein laid straight, its colors in order.

    lengths    m of each color
    names      of the colors
    colors     screen colors
    turn_text  length of the whole turn, as written
    Raises nothing.
    """
    drawing = Drawing(66 + 24 * -(-len(names) // 2))
    whole, at = sum(lengths), float(LEFT)
    for color, dash in _dashes(colors):
        run = (RIGHT - LEFT) * lengths[color] / whole
        drawing.rect(at, 8, run, 30, fill=colors[color])
        if dash is not None:
            drawing.strokes(
                [[(at, 23), (at + run, 23)]], stroke=against(colors[color]), width=2, dash=dash
            )
        at += run
    drawing.text(LEFT, 55, f"One turn: {turn_text}", size=13, fill=SOFT)
    _key(drawing, 62, names, colors)
    return drawing.picture(
        "One turn of the skein",
        "In order: "
        + ", ".join(f"{name} {100 * length / whole:.0f} %" for name, length in zip(names, lengths))
        + ".",
    )


def _key(drawing: Drawing, top: float, names: Sequence[str], colors: Sequence[str]) -> None:
    for color, dash in _dashes(colors):
        x, y = LEFT + color % 2 * 174, top + color // 2 * 24
        drawing.rect(x, y, 34, 16, fill=colors[color])
        if dash is not None:
            drawing.strokes(
                [[(x, y + 8), (x + 34, y + 8)]], stroke=against(colors[color]), width=2, dash=dash
            )
        name = names[color]
        drawing.text(x + 42, y + 13, name if len(name) <= 15 else name[:14] + "…", size=13)


def _dashes(colors: Sequence[str]) -> list[tuple[int, str | None]]:
    return [(color, dash_of(color)) for color in range(len(colors))]


def _runs(row: Sequence[int]) -> Iterator[tuple[int, int, int]]:
    """(first place, how many, color) of each run of one color."""
    begin = 0
    for place in range(1, len(row) + 1):
        if place == len(row) or row[place] != row[begin]:
            yield begin, place - begin, row[begin]
            begin = place


def _shares(rows: Sequence[Sequence[int]], names: Sequence[str]) -> str:
    cells = sum(len(row) for row in rows)
    return ", ".join(
        f"{name} {100 * sum(row.count(color) for row in rows) / cells:.0f} %"
        for color, name in enumerate(names)
    )
