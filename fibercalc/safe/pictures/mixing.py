"""Water first, then acid: the two amounts to one scale."""

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, MADDER, MADDER_WASH, Drawing


def water_then_acid(water: float, acid: float, water_words: str, acid_words: str) -> Picture:
    """A jug with the water, the acid beside it with an arrow into the jug; heights to one scale.

    water, acid              weights, g, 0 or more
    water_words, acid_words  the amounts as written
    """
    most = max(water, acid, 1e-9)
    drawing = Drawing(150)
    for x, share, fill, stroke in (
        (30, water / most, INDIGO_WASH, INDIGO),
        (230, acid / most, MADDER_WASH, MADDER),
    ):
        high = 64 * share
        drawing.rect(x, 30, 100, 72, stroke=INK, stroke_width=1.5)
        drawing.rect(x + 2, 100 - high, 96, high, fill=fill, stroke=stroke)
        if stroke is MADDER:
            drawing.hatch(x + 2, 100 - high, 96, high, stroke=MADDER)
    drawing.line(224, 66, 142, 66, width=2)
    drawing.path([(152, 59), (140, 66), (152, 73)], width=2)
    drawing.text(183, 54, "slowly", anchor="middle", size=13)
    drawing.text(80, 22, "1  water first", anchor="middle", bold=True)
    drawing.text(280, 22, "2  acid into it", anchor="middle", bold=True)
    drawing.text(80, 120, water_words, anchor="middle", size=13)
    drawing.text(280, 120, acid_words, anchor="middle", size=13)
    drawing.text(180, 144, "never water into acid", anchor="middle", size=13, fill=MADDER)
    return drawing.picture(
        "Water first, acid into it",
        f"First the water, {water_words}; then the acid, {acid_words}, slowly into it. Never water"
        " into acid.",
    )
