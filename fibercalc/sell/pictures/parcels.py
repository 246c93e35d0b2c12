"""Lots as bars shared out, and parcels on a scale of weight with the post's bands."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, LINE, MADDER, SHEET, SOFT, Drawing, Scale, short

LEFT, RIGHT, ROW = 8, 352, 44


def lots_picture(shares: Sequence[tuple[str, int, int, int]]) -> Picture:
    """A bar for each lot: (name, skeins in kits, for the club, for the shop).

    Raises nothing.
    """
    most = max([kits + club + shop for _, kits, club, shop in shares] + [1])
    across = Scale(0, most, LEFT, RIGHT)
    drawing = Drawing(ROW * len(shares) + 24)
    said = []
    for place, (name, kits, club, shop) in enumerate(shares):
        y, at = ROW * place, 0
        drawing.text(LEFT, y + 15, f"{short(name, 22)}: {kits} kits, {club} club, {shop} shop", size=13)
        for value, fill, hatched in ((kits, INDIGO, False), (club, INDIGO_WASH, False), (shop, SHEET, True)):
            if value:
                left, right = across(at), across(at + value)
                drawing.rect(left, y + 20, right - left, 16, fill=fill, stroke=INDIGO)
                if hatched:
                    drawing.hatch(left, y + 20, right - left, 16, gap=6, stroke=INDIGO)
                at += value
        said.append(f"{name}: {kits} skeins to kits, {club} to the club, {shop} to the shop")
    y = ROW * len(shares) + 4
    drawing.rect(LEFT, y + 2, 16, 12, fill=INDIGO, stroke=INDIGO)
    drawing.text(LEFT + 21, y + 13, "in kits", size=12)
    drawing.rect(100, y + 2, 16, 12, fill=INDIGO_WASH, stroke=INDIGO)
    drawing.text(121, y + 13, "club", size=12)
    drawing.hatch(180, y + 2, 16, 12, gap=6, stroke=INDIGO)
    drawing.rect(180, y + 2, 16, 12, stroke=INDIGO)
    drawing.text(201, y + 13, "shop", size=12)
    return drawing.picture("Each lot, shared out", "; ".join(said) + ".")


def bands_picture(parcels: Sequence[tuple[str, float, float, float]], bands: Sequence[float], write) -> Picture:
    """Parcels as bars (name, grams, low, high) under the lines of the bands; write writes a weight.

    Raises nothing.
    """
    shown = [band for band in bands]
    top = 1.05 * max([high for *_, high in parcels] + shown[:1])
    top = max(top, 1.05 * next((band for band in shown if band >= max(high for *_, high in parcels)), 0))
    across = Scale(0, top, LEFT, RIGHT)
    bottom = 24 + ROW * len(parcels)
    drawing = Drawing(bottom + 6)
    last = -100.0
    for band in shown:
        if band <= top:
            x = across(band)
            drawing.line(x, 20, x, bottom, stroke=INK, width=1.4, dash="4 3")
            if x - last > 42:
                drawing.text(x, 14, write(band), anchor="middle", size=12, fill=SOFT)
                last = x
    said = []
    for place, (name, mass, low, high) in enumerate(parcels):
        y = 24 + ROW * place
        over = any(low < band < high for band in shown)
        drawing.text(LEFT, y + 14, f"{short(name, 22)}: {write(mass)}", size=13, bold=over, halo=True)
        drawing.rect(LEFT, y + 20, across(mass) - LEFT, 13, fill=INDIGO_WASH, stroke=INDIGO)
        drawing.strokes([[(across(low), y + 26), (across(high), y + 26)], [(across(low), y + 22), (across(low), y + 31)], [(across(high), y + 22), (across(high), y + 31)]], stroke=MADDER if over else INK, width=1.6)
        said.append(f"{name} {write(mass)}, {write(low)} to {write(high)}")
    drawing.line(LEFT, bottom, RIGHT, bottom, stroke=LINE)
    return drawing.picture("Parcels and the post’s bands", "; ".join(said) + f". Bands up to {', '.join(write(band) for band in shown)}.")
