"""Yarn of a planned warp, color by color, the order of its colors, and the list of both that is printed. All take the card's outcome, r."""

from math import ceil

from ...core.answer import Table
from ...core.units import METERS_PER_YARD
from ..ends import ends_by_color


def stripes_of(r) -> list[tuple[str, int]]:
    """The order of colors, with the extra edge ends in those of the edges."""
    ends = r.value("ends") - r.given["edge_ends"]
    if not r.given["stripes"] or r.given["warp_colors"] == "one":
        return [(r.given["warp_color"] or "one color", max(ends, 1))]
    return [(row.color or "–", row.ends) for row in r.given["stripes"]]


def _ends_of(r) -> dict[str, int]:
    """Ends of each color."""
    order, ends = stripes_of(r), r.value("ends") - r.given["edge_ends"]
    found = ends_by_color(order, ends)
    extra = r.given["edge_ends"]
    if extra:  # at the first and the last end, in their colors
        last = _color_at(order, ends - 1)
        found[order[0][0]] = found.get(order[0][0], 0) + (extra + 1) // 2
        found[last] = found.get(last, 0) + extra // 2
    return found


def _color_at(order: list[tuple[str, int]], place: int) -> str:
    place %= sum(ends for _, ends in order)
    for color, ends in order:
        if place < ends:
            return color
        place -= ends
    raise IndexError(place)


def _weft_by_color(r) -> dict[str, float]:
    """Weft of each color, m; a sample is woven in the first piece's."""
    found: dict[str, float] = {}
    for at, row in enumerate(r.given["pieces"]):
        picks = row.many * r.kept["each_picks"][at] + (r.kept["sample_picks"] if at == 0 else 0)
        found[row.color or "–"] = found.get(row.color or "–", 0.0) + picks * r.kept["pick"]
    return found


def _by_color(r) -> list[tuple[str, str, float, float, float, float]]:
    """(color, yarn it is, warp m, weft m, balls, balls at the far end of the range). Warp and weft of one yarn are bought together; their ranges are added, since what makes one longer mostly makes the other so."""
    ends, weft = _ends_of(r), _weft_by_color(r)
    all_ends, all_weft = sum(ends.values()), sum(weft.values())
    warp = {color: count / all_ends for color, count in ends.items()}
    share = {color: length / all_weft if all_weft else 0.0 for color, length in weft.items()}
    same = r.given["weft_from"] == "same"
    rows = []
    for color in dict.fromkeys([*warp, *share]) if same else []:
        rows.append(
            _row(
                r,
                color,
                (
                    "warp and weft"
                    if color in warp and color in share
                    else "warp"
                    if color in warp
                    else "weft"
                ),
                warp.get(color, 0.0),
                share.get(color, 0.0),
            )
        )
    if not same:
        rows += [_row(r, color, "warp", part, 0.0) for color, part in warp.items()] + [
            _row(r, color, "weft", 0.0, part) for color, part in share.items()
        ]
    return rows


def _row(r, color, use, warp, weft):
    return (
        color,
        use,
        warp * r.value("warp_yarn"),
        weft * r.value("weft_yarn"),
        warp * r.value("warp_balls") + weft * r.value("weft_balls"),
        warp * r.high("warp_balls") + weft * r.high("weft_balls"),
    )


def balls(r) -> dict[tuple[str, str], int]:
    """Balls to buy of each color and use, enough at the far end of the range."""
    return {
        (color, use): max(ceil(high - 1e-9), 1 if high > 0 else 0)
        for color, use, _, _, _, high in _by_color(r)
    }


def yarns(r):
    """Yarn by color: length, weight, balls with their range, and what to buy."""
    buy, rows = balls(r), []
    for color, use, warp, weft, count, high in _by_color(r):
        grams = warp * r.value("warp_weight") / r.value("warp_yarn") + (
            weft * r.value("weft_weight") / r.value("weft_yarn") if weft else 0.0
        )
        rows.append(
            (
                color,
                use,
                str(buy[color, use]),
                _balls_words(r, count, high),
                _up(r, warp + weft, "m"),
                _up(r, (warp + weft) / METERS_PER_YARD, "yd"),
                _up(r, grams, "g"),
            )
        )
    if r.has("hem_thread"):
        rows.append(
            (
                "Finer yarn",
                "hems",
                str(int(r.value("hem_buy"))),
                _balls_words(r, r.value("hem_balls"), r.high("hem_balls")),
                r.text("hem_thread", "m"),
                r.text("hem_thread", "yd"),
                r.text("hem_weight", "g"),
            )
        )
    return Table(
        "Yarn by color",
        ("Color", "For", "Buy", "In balls", "Meters", "Yards", "Weight"),
        tuple(rows),
    )


def _up(r, amount: float, sign: str) -> str:
    """What must be bought, in whole units upward."""
    return f"{r.number(ceil(amount - 1e-9))} {sign}"


def _balls_words(r, count: float, high: float) -> str:
    return f"{r.number(count, 2)}, up to {r.number(ceil(100 * high - 1e-6) / 100, 2)}"


def order(r):
    """The order of colors across the warp; nothing for one color."""
    if r.given["warp_colors"] == "one":
        return None
    stripes, ends = stripes_of(r), r.value("ends") - r.given["edge_ends"]
    whole, rest = divmod(ends, sum(count for _, count in stripes))
    at, rows = 0, []
    for color, count in stripes:
        rows.append(
            (
                color,
                str(count),
                f"{at + 1} to {at + count}" if count > 1 else f"{at + 1}",
                str(whole * count + max(min(rest - at, count), 0)),
            )
        )
        at += count
    times = (
        f"{whole} whole {'repeat' if whole == 1 else 'repeats'}"
        + (f", then the first {rest} ends again" if rest else "")
        if r.given["warp_colors"] == "repeated"
        else "Once across"
        if whole
        else f"Cut off after {ends} ends"
    )
    return Table(
        "Color order of the warp",
        ("Color", "Ends in the stripe", "Ends, from the first", "Ends in all"),
        tuple(rows),
        f"{times}. {ends} ends."
        + (f" {r.given['edge_ends']} more at the edges." if r.given["edge_ends"] else ""),
    )


def yarn_sheet(r):
    """What to lay out before the warp is wound."""
    table = yarns(r)
    short = Table(
        "Yarn by color",
        ("Color", "For", "Meters", "Weight", "Balls", "Here"),
        tuple((row[0], row[1], row[4], row[6], row[2], "☐") for row in table.rows),
    )
    return (short, order(r)) if order(r) else (short,)
