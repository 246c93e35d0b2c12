"""What flows where in a release: from base to colorway to product, each band as thick as its skeins."""

from collections.abc import Sequence

from ...core.answer import Picture
from ...core.picture import INDIGO, INDIGO_WASH, INK, SHEET, SOFT, Drawing, short

COLUMNS, WIDE, TOP, GAP, LEAST = (4, 132, 256), 100, 24, 8, 34
MOST = 10  # boxes in a column; the rest are not drawn, and said so


def flow_picture(bases: Sequence[str], colors: Sequence[str], products: Sequence[str], flows: Sequence[tuple[str, str, str, int]]) -> Picture:
    """Three columns of boxes joined by bands.

    bases, colors, products  names, in order
    flows                    (base, color, product, skeins) each
    Raises nothing.
    """
    names = [list(column)[:MOST] for column in (bases, colors, products)]
    whole = [{name: sum(flow[3] for flow in flows if flow[at] == name) for name in names[at]} for at in range(3)]
    flows = [flow for flow in flows if all(flow[at] in names[at] for at in range(3))]
    total = sum(flow[3] for flow in flows) or 1
    sums = [{name: sum(flow[3] for flow in flows if flow[at] == name) for name in names[at]} for at in range(3)]
    unit = 150 / total
    highs = [[max(LEAST, unit * sums[at][name]) for name in names[at]] for at in range(3)]
    tall = max(sum(high) + GAP * (len(high) - 1) for high in highs)
    left_out = len(bases) + len(colors) + len(products) - sum(len(column) for column in names)
    drawing = Drawing(TOP + tall + (28 if left_out else 8))
    boxes = []
    for at, column in enumerate(names):
        y = TOP + (tall - sum(highs[at]) - GAP * (len(column) - 1)) / 2
        places = {}
        for name, high in zip(column, highs[at]):
            places[name] = (y, high)
            y += high + GAP
        boxes.append(places)
    for left, right in ((0, 1), (1, 2)):
        _bands(drawing, flows, boxes, sums, left, right)
    for at, title in enumerate(("Base", "Colorway", "Product")):
        drawing.text(COLUMNS[at], 15, title, size=13, fill=SOFT)
        for name, (y, high) in boxes[at].items():
            drawing.rect(COLUMNS[at], y, WIDE, high, fill=SHEET, stroke=INDIGO, stroke_width=1.2)
            drawing.text(COLUMNS[at] + 4, y + high / 2 - 2, short(name, 13), size=12, bold=True)
            drawing.text(COLUMNS[at] + 4, y + high / 2 + 12, f"{whole[at][name]} skeins" if whole[at][name] != 1 else "1 skein", size=12, fill=INK)
    said = "; ".join(f"{count} skeins of {base} become {color} for {product}" for base, color, product, count in flows)
    if left_out:
        drawing.text(4, TOP + tall + 20, f"{left_out} more {'is' if left_out == 1 else 'are'} not drawn: see the tables.", size=13, fill=SOFT)
    return drawing.picture("From base to product", said + (f"; {left_out} more are not drawn." if left_out else "."))


def _bands(drawing: Drawing, flows: Sequence, boxes: list, sums: list, left: int, right: int) -> None:
    """Bands from one column to the next; each takes its share of both boxes' edges."""
    joined: dict[tuple[str, str], int] = {}
    for flow in flows:
        joined[flow[left], flow[right]] = joined.get((flow[left], flow[right]), 0) + flow[3]
    used_left, used_right = dict.fromkeys(boxes[left], 0.0), dict.fromkeys(boxes[right], 0.0)
    for (a, b), count in sorted(joined.items(), key=lambda pair: (boxes[left][pair[0][0]][0], boxes[right][pair[0][1]][0])):
        (y1, high1), (y2, high2) = boxes[left][a], boxes[right][b]
        thick1, thick2 = high1 * count / sums[left][a], high2 * count / sums[right][b]
        top1, top2 = y1 + used_left[a], y2 + used_right[b]
        used_left[a] += thick1
        used_right[b] += thick2
        x1, x2 = COLUMNS[left] + WIDE, COLUMNS[right]
        drawing.path([(x1, top1), (x2, top2), (x2, top2 + thick2), (x1, top1 + thick1)], fill=INDIGO_WASH, stroke=INDIGO, width=0.7, closed=True)
