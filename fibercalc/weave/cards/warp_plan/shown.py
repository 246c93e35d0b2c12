"""A planned warp shown: the chain of sizes, the run along the warp, its yarn, and what goes to
the loom on paper."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.paper import Paper
from ....core.units import METERS_PER_YARD, PER_LENGTH
from ....wash.shrink import size_after
from ...chain import warp_for_woven, width_off_loom, woven_from_warp
from ...pictures.sizes import chain_of_sizes, warp_from_end_to_end
from ...pictures.written import in_inches, long, meters, name_of, short
from ...run import whole_pieces
from .asked import HEM, ONE, REPEATED, Share, WarpPlan, balls, far_end
from .said import too_short
from .worked import ends_at, fine_hems, pieces_in_order, stripes_of, warp_each

ALONE = 14  # so many pieces are listed one by one
ROOM = 8  # so many pieces leave room on the sheet for what is written down
NAMED = 6  # so many stripes of the warp are named on one line


@dataclass(frozen=True)
class Chain:
    """One piece from the warp to the finished cloth, cm."""

    warp: float
    woven: float
    washed: float
    finished: float
    heddle: float
    drawn_in: float
    wide: float


def _chain(case: WarpPlan) -> Chain:
    woven = case.pieces[0].woven
    return Chain(
        warp_for_woven(woven, case.take_up),
        woven,
        size_after(woven, case.length_shrink),
        case.finished_length,
        case.heddle_width,
        width_off_loom(case.heddle_width, case.draw_in),
        case.finished_width,
    )


def sizes_picture(out: Outcome[WarpPlan]) -> Picture | None:
    """One piece from the warp to the finished cloth."""
    case, chain = out.case, _chain(out.case)
    length = [
        ("warp yarn for it", chain.warp),
        (f"woven, less {case.take_up:g} % take-up", chain.woven),
        (f"washed, less {case.length_shrink:g} % shrinkage", chain.washed),
    ]
    if case.finish == HEM:
        length.append(("hemmed", chain.finished))
    width = [
        ("in the heddle", chain.heddle),
        (f"on the loom, less {case.draw_in:g} % draw-in", chain.drawn_in),
        (f"washed, less {case.width_shrink:g} % shrinkage", chain.wide),
    ]
    return chain_of_sizes(
        f"The chain of sizes: {name_of(case.pieces[0])}",
        [
            (name, [(words, size, short(out, size)) for words, size in steps])
            for name, steps in (("Length", length), ("Width", width))
        ],
    )


def warp_picture(out: Outcome[WarpPlan]) -> Picture | None:
    """The whole warp, from the first pick to the knots."""
    case = out.case
    limit, each = case.maybe(WarpPlan.limit), warp_each(case)
    gap = ("divider", warp_for_woven(case.divider, case.take_up) / 100, "")
    parts = [("sample", warp_for_woven(case.sample, case.take_up) / 100, "")] if case.sample else []
    for number, warp in enumerate(each, 1):
        parts += [gap, ("piece", warp / 100, str(number))]
    parts += [gap, ("waste", case.waste / 100, "")]
    said = (
        f"{len(each)} {'piece' if len(each) == 1 else 'pieces'} along a warp of"
        f" {meters(out, case.warp_length)}, then {short(out, case.waste)} of loom waste"
        + (f"; there are {meters(out, limit)}" if limit is not None else "")
        + "."
    )
    return warp_from_end_to_end(
        "The warp, end to end",
        parts,
        limit,
        ("yd", METERS_PER_YARD) if in_inches(out) else ("m", 1.0),
        lambda m: meters(out, m),
        said,
    )


def changes(out: Outcome[WarpPlan]) -> Table | None:
    """What to change, and by how much, where the plan does not fit; nothing where it does."""
    rows = [*_too_wide_rows(out), *_too_short_rows(out)]
    if not rows:
        return None
    return Table(
        "What would make it fit", ("Change", "To", "By"), tuple(rows), "Any one of them alone."
    )


def _too_wide_rows(out: Outcome[WarpPlan]) -> list[tuple[str, str, str]]:
    case = out.case
    if not case.too_wide:
        return []
    less, wider = case.width_asked - case.finished_width, case.ends_wanted / case.sett
    rows = [
        ("Make each piece narrower", short(out, case.finished_width), f"{short(out, less)} less"),
        ("Weave on a wider loom", short(out, wider), f"{short(out, wider - case.loom_width)} more"),
    ]
    most = 100 * (1 - case.width_asked / width_off_loom(case.loom_width, case.draw_in))
    if most > 0:
        points = out.number(case.width_shrink - most, 1)
        rows.append(
            (
                "A cloth that shrinks less in width",
                f"at most {out.number(most, 1)} %",
                f"{points} points less",
            )
        )
    return rows


def _too_short_rows(out: Outcome[WarpPlan]) -> list[tuple[str, str, str]]:
    case = out.case
    if not too_short(case):
        return []
    missing, ends = -100 * case.spare, ends_at(case)
    rows = []
    each = size_after(woven_from_warp(missing / len(ends), case.take_up), case.length_shrink)
    if each < min(piece.length for piece in case.pieces):
        by = f"by {short(out, ceil(10 * each - 1e-6) / 10)}"
        rows.append(("Make each piece shorter", by, "finished"))
    if case.waste > missing:
        left, less = short(out, case.waste - missing), short(out, missing)
        rows.append(("Waste less warp", left, f"{less} less"))
    if case.sample and warp_for_woven(case.sample, case.take_up) >= missing:
        rows.append(("Weave no sample", "–", f"{short(out, case.sample)} less"))
    whole = whole_pieces(ends, case.available)
    if whole:
        rows.append(("Weave fewer pieces", f"{whole}", f"{len(ends) - whole} less"))
    longer = meters(out, case.warp_length)
    return [*rows, ("Wind a longer warp", longer, f"{short(out, missing)} more")]


def along(out: Outcome[WarpPlan]) -> Table | None:
    """The pieces along the warp: what to weave, and how much is used when each is off."""
    case, used, listed = out.case, ends_at(out.case), pieces_in_order(out.case)
    rows: list[tuple[str, ...]] = []
    if case.sample:
        sample = meters(out, warp_for_woven(case.sample, case.take_up) / 100)
        rows.append((*_sample(out), sample))
    if len(listed) <= ALONE:
        rows += [
            (name, *_to_weave(out, at), meters(out, warp / 100))
            for (name, at), warp in zip(listed, used)
        ]
    else:
        done = 0
        for at, piece in enumerate(case.pieces):
            done += piece.many
            times = "" if piece.many == 1 else f", {piece.many} times"
            last = meters(out, used[done - 1] / 100)
            rows.append((f"{name_of(piece)}{times}", *_to_weave(out, at), last))
    whole = meters(out, case.warp_length)
    rows.append(("Whole warp", "–", out.number(case.weft_picks), "–", whole))
    return Table(
        "Along the warp",
        ("Piece", "Weave", "Picks", "Weft", "Warp used"),
        tuple(rows),
        "Warp used is up to the end of that piece: if the warp turns out short, the first piece"
        " whose end lies beyond it is lost.",
    )


def _sample(out: Outcome[WarpPlan]) -> tuple[str, str, str, str]:
    """The sample, its length, picks and color: that of the first piece."""
    case = out.case
    picks, color = out.number(case.sample_picks), case.pieces[0].color or "–"
    return "Sample", short(out, case.sample), picks, color


def _to_weave(out: Outcome[WarpPlan], at: int) -> tuple[str, str, str]:
    """Length on the loom, picks and color of the pieces of one row."""
    case, piece = out.case, out.case.pieces[at]
    picks = out.number(piece.picks)
    if fine_hems(case):
        picks = f"{case.picks_in_hem} + {picks} + {case.picks_in_hem}"
    return short(out, piece.woven), picks, piece.color or "–"


def yarns(out: Outcome[WarpPlan]) -> Table | None:
    """Yarn by color: length, weight, balls with their range, and what to buy."""
    buy = balls(out)
    rows = [_yarn_row(out, share, buy[share.color, share.use]) for share in out.case.shares]
    if out.has(WarpPlan.hem_thread):
        rows.append(
            (
                "Finer yarn",
                "hems",
                str(int(out.value(WarpPlan.hem_buy))),
                _balls_words(out, out.case.hem_balls, out.high(WarpPlan.hem_balls)),
                out.text(WarpPlan.hem_thread, "m"),
                out.text(WarpPlan.hem_thread, "yd"),
                out.text(WarpPlan.hem_weight, "g"),
            )
        )
    return Table(
        "Yarn by color",
        ("Color", "For", "Buy", "In balls", "Meters", "Yards", "Weight"),
        tuple(rows),
    )


def _yarn_row(out: Outcome[WarpPlan], share: Share, buy: int) -> tuple[str, ...]:
    case = out.case
    length = share.warp * case.warp_yarn + share.weft * case.weft_yarn
    return (
        share.color,
        share.use,
        str(buy),
        _balls_words(
            out, share.warp * case.warp_balls + share.weft * case.weft_balls, far_end(out, share)
        ),
        _up(out, length, "m"),
        _up(out, length / METERS_PER_YARD, "yd"),
        _up(out, share.warp * case.warp_weight + share.weft * case.weft_weight, "g"),
    )


def _up(out: Outcome[WarpPlan], amount: float, sign: str) -> str:
    """What must be bought, in whole units upward."""
    return f"{out.number(ceil(amount - 1e-9))} {sign}"


def _balls_words(out: Outcome[WarpPlan], count: float, high: float) -> str:
    return f"{out.number(count, 2)}, up to {out.number(ceil(100 * high - 1e-6) / 100, 2)}"


def order(out: Outcome[WarpPlan]) -> Table | None:
    """The order of colors across the warp; nothing for one color."""
    case = out.case
    if case.warp_colors == ONE:
        return None
    stripes, ends = stripes_of(case), int(case.ends_across)
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
    return Table(
        "Color order of the warp",
        ("Color", "Ends in the stripe", "Ends, from the first", "Ends in all"),
        tuple(rows),
        f"{_times(case, whole, rest)}. {ends} ends."
        + (f" {case.edge_ends} more at the edges." if case.edge_ends else ""),
    )


def _times(case: WarpPlan, whole: int, rest: int) -> str:
    """How often the stripes are laid."""
    if case.warp_colors == REPEATED:
        again = f", then the first {rest} ends again" if rest else ""
        return f"{whole} whole {'repeat' if whole == 1 else 'repeats'}{again}"
    return "Once across" if whole else f"Cut off after {int(case.ends_across)} ends"


def _yarn_sheet(out: Outcome[WarpPlan]) -> list[Table]:
    """What to lay out before the warp is wound."""
    table, colors = yarns(out), order(out)
    rows = table.rows if table else ()
    brief = Table(
        "Yarn by color",
        ("Color", "For", "Meters", "Weight", "Balls", "Here"),
        tuple((row[0], row[1], row[4], row[6], row[2], "☐") for row in rows),
    )
    return [brief, colors] if colors else [brief]


def _loom_sheet(out: Outcome[WarpPlan]) -> list[Table]:
    """What is needed at the loom, to pin up beside it and tick off."""
    case, listed = out.case, pieces_in_order(out.case)
    rows = [(*_sample(out), "☐")] if case.sample else []
    if len(listed) <= ALONE:
        rows += [(name, *_to_weave(out, at), "☐") for name, at in listed]
    else:
        rows += [
            (f"{name_of(piece)}, {piece.many} times", *_to_weave(out, at), "☐")
            for at, piece in enumerate(case.pieces)
        ]
    picks = "Picks: hem, cloth, hem" if fine_hems(case) else "Picks"
    made = [
        Table("On the loom", ("What", "How much"), tuple(_on_the_loom(out))),
        Table("To weave", ("Piece", "Length on the loom", picks, "Weft", "Done"), tuple(rows)),
        Table(
            f"The chain of sizes: {name_of(case.pieces[0])}",
            ("Size", "Length", "Width"),
            tuple(_chain_rows(out)),
        ),
    ]
    blank = ("Width on the loom", "Picks counted in 5 cm", "Washed: length, width")
    if len(rows) <= ROOM:
        made.append(
            Table("As it came out", ("What", "Written down"), tuple((words, "") for words in blank))
        )
    return made


def _on_the_loom(out: Outcome[WarpPlan]) -> list[tuple[str, str]]:
    case = out.case
    edges = f", {case.edge_ends} of them doubled at the edges" if case.edge_ends else ""
    rows = [
        ("Ends", f"{out.number(case.ends)}{edges}"),
        ("Heddle", _per_cm_and_inch(out, case.sett)),
        ("Width in the heddle", out.both(WarpPlan.heddle_width)),
        ("Warp to wind", out.both(WarpPlan.warp_sure)),
        ("Picks", _per_cm_and_inch(out, case.picks)),
        ("Divider", long(out, case.divider)),
    ]
    if case.finish == HEM:  # the mark to fold by
        finer = f", {case.picks_in_hem} picks of the finer yarn" if fine_hems(case) else ""
        rows.append(("Hem, at each end", f"{long(out, case.hem_woven)}{finer}"))
    return [*rows, ("Colors of the warp", _order_words(case))]


def _per_cm_and_inch(out: Outcome[WarpPlan], per_cm: float) -> str:
    per_inch = out.amount(per_cm, PER_LENGTH, "per in", 4)
    return f"{out.amount(per_cm, PER_LENGTH, 'per cm', 4)} ({per_inch})"


def _chain_rows(out: Outcome[WarpPlan]) -> list[tuple[str, str, str]]:
    """Warp, loom, washed, finished: length and width side by side."""
    chain = _chain(out.case)
    rows = [
        ("Warp, heddle", chain.warp, chain.heddle),
        ("On the loom", chain.woven, chain.drawn_in),
        ("Washed", chain.washed, chain.wide),
    ]
    if out.case.finish == HEM:
        rows.append(("Hemmed", chain.finished, chain.wide))
    return [(name, short(out, length), short(out, width)) for name, length, width in rows]


def _order_words(case: WarpPlan) -> str:
    if case.warp_colors == ONE:
        return case.warp_color or "one"
    stripes = stripes_of(case)
    listed = ", ".join(f"{count} {color}" for color, count in stripes[:NAMED])
    more = " …" if len(stripes) > NAMED else ""
    return f"{listed}{more}{', again and again' if case.warp_colors == REPEATED else ''}"


PAPERS = (
    Paper("Loom sheet", "A5", _loom_sheet),
    Paper("Yarn list and color order", "A5", _yarn_sheet),
)
