"""Pictures of pot, heat, rinses, rail, sections and speckles: light, whole, and no label off the sheet or upon another."""

from xml.etree import ElementTree

import pytest

from fibercalc.core.picture.drawing import CHARACTER
from fibercalc.dye import bleed, heat, ramp, speckle, water
from fibercalc.dye.pictures.drying import drying_picture
from fibercalc.dye.pictures.heat import heat_picture
from fibercalc.dye.pictures.parts import moved_apart
from fibercalc.dye.pictures.pot import pot_picture
from fibercalc.dye.pictures.rinses import rinses_picture
from fibercalc.dye.pictures.sections import sections_picture
from fibercalc.dye.pictures.speckle import speckle_picture
from tests.dye.programs import program as bath_program

WET_SLATE = [("navy, 1 %", 248.0), ("black, 1 %", 96.0), ("brown, 1 %", 16.0)]
LADDER = [(0, 10.0), (1, 3.6), (2, 1.3), (3, 0.45)]


def liters(volume):
    return f"{volume / 1000:.2f} L" if volume >= 1000 else f"{volume:.0f} mL"


def program(stages, cool=False):
    points = bath_program(9, stages, 40, 1.2, 4, 16)
    after = (
        [
            (points[-1][0] + minutes, heat.cooled_to(0.006, points[-1][1], 16, minutes))
            for minutes in range(0, 121, 10)
        ]
        if cool
        else []
    )
    return heat_picture(
        points,
        [f"point {at}" for at in range(len(points))],
        570,
        water.boiling_point(900),
        cooling=after,
    )


def spots(expected):
    low, high = speckle.spots_range(expected)
    return speckle_picture(low, expected, high)


PICTURES = {
    "pot": lambda: pot_picture(12_000, 9000, 307, 440, WET_SLATE, 7200, liters),
    "tiny pot": lambda: pot_picture(1500, 900, 40, 0, [("navy", 0.2)], 50, liters),
    "overfull pot": lambda: pot_picture(
        12_000,
        9000,
        1500,
        1500,
        [(f"a dye with a long name, number {at}", 200.0) for at in range(24)],
        4000,
        liters,
    ),
    "pot without doses": lambda: pot_picture(12_000, 9000, 307, 440, [], 7200, liters),
    "heat": lambda: program([(60, 1, 10), (92, 0.7, 45)], cool=True),
    "crowded heat": lambda: program([(10 + at, 5, 1) for at in range(8)]),
    "most crowded heat": lambda: program([(10 + at, 5, 1) for at in range(12)]),
    "heat, Fahrenheit": lambda: heat_picture(
        [(0, 48.0), (60, 198.0), (105, 198.0)],
        ["yarn in", "hold begins", "heat off"],
        1400,
        206.0,
        "°F",
    ),
    "drying": lambda: drying_picture(80, 15.5, 16.5, (1.5, 3.0, 6.0), 50, (10.0, 52.0)),
    "drying, not weighed": lambda: drying_picture(40, 4.0, 5.0, (0.5, 1.0, 2.0), 50),
    "rinses": lambda: rinses_picture(LADDER, bleed.fit_carry_over(LADDER, 30), 0.1),
    "rinses that hardly fall": lambda: rinses_picture(
        [(1, 5.0), (4, 4.8)], bleed.fit_carry_over([(1, 5.0), (4, 4.8)], 50), 0.1
    ),
    "sections": lambda: sections_picture(
        ["navy", "rust", "undyed, natural cream of the sheep"],
        [50, 30, 20],
        ["50 mL", "30 mL", "20 mL"],
    ),
    "colored sections": lambda: sections_picture(
        ["navy"] * 24, [1] * 24, ["5 mL"] * 24, ["#27406a"] * 24
    ),
    "speckles": lambda: spots(120),
    "many speckles": lambda: spots(4000),
    "hardly a speckle": lambda: spots(1),
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


def test_the_pot_is_to_scale():
    """Its first four boxes, from the bottom up, are as high as their volumes are large."""
    _, rects = parts("pot", "rect")
    heights = [float(rect.get("height")) for rect in rects[:4]]
    for height, volume in zip(heights, (307, 440, 360, 7200)):
        assert height / sum(heights) == pytest.approx(volume / (307 + 440 + 360 + 7200), abs=0.002)


def test_the_enlarged_bar_is_in_proportion():
    """248, 96 and 16 mL."""
    _, rects = parts("pot", "rect")
    widths = [float(rect.get("width")) for rect in rects[4:7]]
    assert [width / sum(widths) for width in widths] == pytest.approx(
        [248 / 360, 96 / 360, 16 / 360], abs=0.002
    )


def test_the_heat_picture_says_every_clock_time():
    """In the list below it and in the words for those who do not see it."""
    picture, texts = parts("heat", "text")
    said = " ".join("".join(text.itertext()) for text in texts)
    for minutes, _ in bath_program(9, [(60, 1, 10), (92, 0.7, 45)], 40, 1.2, 4, 16):
        assert (
            ramp.clock_time(570, minutes) in said and ramp.clock_time(570, minutes) in picture.alt
        )


def test_speckles_show_as_many_spots_as_they_say():
    """One box for each, in three bands."""
    low, high = speckle.spots_range(120)
    _, paths = parts("speckles", "path")
    assert [path.get("d").count("M") for path in paths] == [low, 120, high]


def test_labels_are_moved_apart_and_kept_inside():
    """In order, a gap between, none beyond the ends."""
    assert moved_apart([5, 6, 7], 10, 0, 100) == [5, 15, 25]
    assert moved_apart([97, 98, 99], 10, 0, 100) == [80, 90, 100]
