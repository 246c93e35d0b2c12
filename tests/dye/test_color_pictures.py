"""Pictures of sets and lots: light, whole, readable without color."""

from xml.etree import ElementTree

import pytest

from fibercalc.core.color import read_color
from fibercalc.core.picture.drawing import CHARACTER
from fibercalc.dye.color import steps
from fibercalc.dye.color.kubelka_munk import palette
from fibercalc.dye.color.path import Path
from fibercalc.dye.pictures.lots import lots_picture
from fibercalc.dye.pictures.strip import Strip, strip_picture, strips_compared

PALETTE = palette(read_color("#efe6d2"), [(read_color("#27406a"), 2.0)])
PATH = Path(PALETTE, [(0.08,), (1.92,)])
LOTS = [read_color(text) for text in ("#363f55", "#3f4a60", "#374056")]


def strip(count):
    ladder = steps.even_ladder(PATH, count)
    return strip_picture(ladder.colors, [f"{recipe[0]:.3f}" for recipe in ladder.recipes])


def compared(count):
    ways = {
        "Even to the eye": steps.even_ladder(PATH, count),
        "Equal percent": steps.equal_percent_ladder(PATH, count),
        "Equal ratio": steps.geometric_ladder(PALETTE, (0.08,), (1.92,), count),
    }
    return strips_compared(
        [Strip(name, ladder.colors, ladder.differences) for name, ladder in ways.items()]
    )


PICTURES = {f"strip of {count}": lambda count=count: strip(count) for count in (2, 12, 60)}
PICTURES |= {f"compared, {count}": lambda count=count: compared(count) for count in (2, 12, 60)}
PICTURES |= {
    "two lots": lambda: lots_picture(
        ["Old lot", "New lot"], LOTS[:2], ["Old to new: 4.1, seen at a glance"]
    ),
    "three lots": lambda: lots_picture(
        ["Old lot 14 of the autumn", "New lot", "Next, predicted"],
        LOTS,
        ["Old to new: 4.1, seen at a glance", "Old to next: 0.4, not likely seen"],
    ),
}


@pytest.mark.parametrize("name", PICTURES)
def test_it_is_light_and_its_labels_are_on_the_sheet_and_apart(name):
    picture = PICTURES[name]()
    elements = list(ElementTree.fromstring(picture.svg).iter())
    assert len(elements) <= 300 and len(picture.svg) < 60_000 and len(picture.alt) > 15
    found = []
    for text in elements:
        if not text.tag.endswith("text"):
            continue
        size, words = float(text.get("font-size")), "".join(text.itertext())
        wide = len(words) * size * CHARACTER * (1.06 if text.get("font-weight") else 1.0)
        left = float(text.get("x")) - {"middle": wide / 2, "end": wide}.get(
            text.get("text-anchor"), 0.0
        )
        bottom = float(text.get("y")) + 0.2 * size
        found.append((left, left + wide, bottom - 0.95 * size, bottom, words))
        assert size >= 12 and left >= 0 and left + wide <= 360.5 and bottom <= picture.height, words
    for place, (left, right, top, bottom, words) in enumerate(found):
        for other in found[place + 1 :]:
            assert right <= other[0] or other[1] <= left or bottom <= other[2] or other[3] <= top, (
                words,
                other[4],
            )


def test_every_skein_is_numbered_and_its_lightness_is_a_bar():
    """Without color, the strip still says which is which and how dark."""
    picture = strip(12)
    texts = [
        "".join(text.itertext())
        for text in ElementTree.fromstring(picture.svg).iter()
        if text.tag.endswith("text")
    ]
    assert {str(number) for number in range(1, 13)} <= set(texts)
    bars = [
        path.get("d")
        for path in ElementTree.fromstring(picture.svg).iter()
        if path.tag.endswith("path") and path.get("fill", "none") != "none"
    ]
    widths = [float(box.split("h")[1].split("v")[0]) for box in bars[0].split("M")[1:]]
    assert len(widths) == 12 and widths == sorted(widths, reverse=True)


def test_each_way_of_stepping_says_its_differences():
    assert "Even to the eye: steps of 3.6;" in compared(12).alt
    assert "Equal percent: steps of 0.9 to 13.1" in compared(12).alt
