"""Pictures of left, sock, shaping, pace and pooling: light, whole, and no label off the sheet or upon another."""

from datetime import date, timedelta
from xml.etree import ElementTree

import pytest

from fibercalc.core.picture.drawing import CHARACTER
from fibercalc.knit import pace, pooling, shaping
from fibercalc.knit.pictures.left import yarn_used_by_row
from fibercalc.knit.pictures.pace import pace_timeline
from fibercalc.knit.pictures.pooling import fabric_picture, skein_bar
from fibercalc.knit.pictures.shaping import shaped_row
from fibercalc.knit.pictures.sock import sock_schematic

SKEIN, NAMES, COLORS = (
    [0.4, 0.3, 0.5, 0.3],
    ["navy", "slate", "rust", "undyed, natural cream"],
    ["#27406a", "#7c8a99", "#a8553a", "#efe6d2"],
)
POCKET = (30, 10, 40)


def timeline(count, days, apart):
    out = [date(2027, 3, 5) + timedelta(days=apart * part) for part in range(count)]
    ways = [pace.keep_pace([days * factor] * count, out, out[0]) for factor in (1.0, 0.8, 1.3)]
    return pace_timeline([f"Part {part + 1}" for part in range(count)], *ways)


PICTURES = {
    "shawl": lambda: yarn_used_by_row(
        160,
        5,
        2,
        3.9,
        [("weighed", 120), ("half the yarn used", 113), ("start the edging", 140)],
        stop=150,
    ),
    "scarf": lambda: yarn_used_by_row(1, 80, 0, 0, [("weighed", 1)]),
    "sock": lambda: sock_schematic(
        24,
        72,
        POCKET,
        70,
        POCKET,
        15,
        "21.4 cm",
        60,
        "27.5 cm",
        "mock rib 3 in, 1 out",
        ("Yarn for the pair: 301 to 321 m",),
    ),
    "large sock": lambda: sock_schematic(
        120, 200, (100, 33, 134), 300, (100, 33, 134), 100, "100.0 cm (39.4 in)", 200
    ),
    "row": lambda: shaped_row(shaping.even_gaps(54, 6, False), False, 1, 0),
    "round": lambda: shaped_row(shaping.even_gaps(192, 24, True), True, -1, 2),
    "long round": lambda: shaped_row(shaping.even_gaps(2000, 90, True), True, 1, 0),
    "one stitch": lambda: shaped_row([0, 1], False, 1, 1),
    "pace": lambda: timeline(5, 9.0, 7),
    "pace, one part": lambda: timeline(1, 1.0, 7),
    "pace, daily": lambda: timeline(24, 0.7, 1),
    "pace, years": lambda: timeline(12, 200.0, 30),
    "fabric": lambda: fabric_picture(
        pooling.fabric(SKEIN, 0.0135, 60, 60, wobble=2.0), NAMES, COLORS, 2.8, 4.0, 60
    ),
    "wide fabric": lambda: fabric_picture(
        pooling.fabric(SKEIN, 0.0135, 240, 80, columns=120), NAMES, COLORS, 2.2, 3.0, 240
    ),
    "tall fabric": lambda: fabric_picture(
        pooling.fabric(SKEIN, 0.0135, 10, 80, flat=True), NAMES, COLORS, 2.2, 3.0, 10
    ),
    "skein": lambda: skein_bar(SKEIN, NAMES, COLORS, "1.50 m (59.1 in)"),
}
every_picture = pytest.mark.parametrize("name", PICTURES)


def parts(name, tag=""):
    picture = PICTURES[name]()
    return picture, [
        part for part in ElementTree.fromstring(picture.svg).iter() if part.tag.endswith(tag)
    ]


@every_picture
def test_it_is_light_and_has_words(name):
    picture, elements = parts(name)
    assert len(elements) <= 300 and len(picture.svg) < 60_000
    assert len(picture.title) > 5 and len(picture.alt) > 15


def boxes(texts):
    """Left, right, top, bottom of each label."""
    for text in texts:
        size, words = float(text.get("font-size")), "".join(text.itertext())
        wide = len(words) * size * CHARACTER * (1.06 if text.get("font-weight") else 1.0)
        left = float(text.get("x")) - {"middle": wide / 2, "end": wide}.get(
            text.get("text-anchor"), 0.0
        )
        yield (
            left,
            left + wide,
            float(text.get("y")) - 0.75 * size,
            float(text.get("y")) + 0.2 * size,
            words,
        )


@every_picture
def test_labels_are_on_the_sheet_large_enough_and_apart(name):
    picture, texts = parts(name, "text")
    found = list(boxes(texts))
    assert all(float(text.get("font-size")) >= 12 for text in texts)
    for left, right, top, bottom, words in found:
        assert left >= 0 and right <= 360.5 and top >= -1 and bottom <= picture.height, words
    for place, (left, right, top, bottom, words) in enumerate(found):
        for other in found[place + 1 :]:
            assert right <= other[0] or other[1] <= left or bottom <= other[2] or other[3] <= top, (
                words,
                other[4],
            )


def test_the_sock_says_every_count():
    """What is counted at the machine stands in words and in the picture's text for those who cannot see it."""
    picture, texts = parts("sock", "text")
    shown = " ".join("".join(text.itertext()) for text in texts)
    for count in (
        "24 rounds, folded to 12",
        "72 rounds",
        "70 rounds",
        "40 rows on 30 needles",
        "down to 10",
        "15 rounds",
        "60 needles",
    ):
        assert count in shown and (count in picture.alt), count


def test_a_part_that_falls_behind_is_hatched_and_said():
    """Not by color alone: ten days for parts a week apart."""
    late, easy = timeline(3, 10.0, 7), timeline(3, 5.0, 7)
    assert late.alt.count("behind") == 2 and "behind" not in easy.alt
    assert late.svg.count("<path") > easy.svg.count("<path")


def test_every_color_of_the_skein_has_its_own_line():
    """One filled path for each color; all but the first carry a line of their own dash."""
    _, paths = parts("fabric", "path")
    assert [path.get("fill") for path in paths if path.get("fill") != "none"] == COLORS
    dashes = [path.get("stroke-dasharray") for path in paths if path.get("fill") == "none"]
    in_fabric, in_key = dashes[: len(COLORS) - 1], dashes[len(COLORS) - 1 :]
    assert in_fabric == in_key and len(set(in_fabric)) == len(COLORS) - 1


def test_marks_in_a_row_stand_where_the_gaps_say():
    """54 stitches and 6 increases: the marks are the 5th, 15th, ... of 60 places, twenty to a line."""
    _, paths = parts("row", "path")
    marks = [path.get("d") for path in paths if path.get("fill") != "none"][:6]
    places = [round((float(mark[1:].split()[0]) - 46) / 15.3) for mark in marks]
    assert places == [4, 14, 4, 14, 4, 14]
