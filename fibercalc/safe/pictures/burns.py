"""Time to a deep burn against temperature, on a logarithmic scale."""

from ...core.answer import Picture
from ...core.picture import INDIGO, INK, LINE, MADDER, SOFT, Drawing, Scale
from ...core.table import read_table

TICKS = ((1, "1 s"), (10, "10 s"), (60, "1 min"), (600, "10 min"), (3600, "1 h"))


def burn_curve(celsius: float | None, seconds: float | None) -> Picture:
    """The published thresholds as dots joined by lines, and the bath in hand as a cross.

    celsius, seconds  the bath and its time; None leaves the cross out
    """
    drawing = Drawing(196)
    across, up = Scale(42, 72, 60, 346), Scale(0.2, 30000, 150, 10, logarithmic=True)
    for tick, words in TICKS:
        drawing.line(60, up(tick), 346, up(tick), stroke=LINE)
        drawing.text(54, up(tick) + 5, words, anchor="end", size=13, fill=SOFT)
    for tick in (45, 50, 55, 60, 65, 70):
        drawing.text(across(tick), 168, f"{tick}", anchor="middle", size=13, fill=SOFT)
    drawing.text(203, 188, "°C", anchor="middle", size=13, fill=SOFT)
    points = [(row["celsius"], row["seconds"]) for row in read_table("safe", "burn-times").rows]
    drawing.path([(across(at), up(time)) for at, time in points], stroke=INDIGO, width=2)
    for at, time in points:
        drawing.circle(across(at), up(time), 4, fill=INDIGO, stroke=INDIGO)
    drawing.text(346, 24, "deep burn, adult", anchor="end", size=13, fill=INDIGO)
    said = "Time to a deep burn of adult skin: " + ", ".join(
        f"{at:.0f} °C {time:g} s" for at, time in points
    )
    if celsius is not None and seconds is not None:
        x, y = across(celsius), up(seconds)
        drawing.line(x - 7, y - 7, x + 7, y + 7, stroke=MADDER, width=3)
        drawing.line(x - 7, y + 7, x + 7, y - 7, stroke=MADDER, width=3)
        drawing.text(x + 11, y - 6, "this bath", size=13, fill=INK, halo=True)
        said += f"; this bath, {celsius:.0f} °C, {seconds:.2g} s"
    return drawing.picture("Time to a deep burn", said + ".")
