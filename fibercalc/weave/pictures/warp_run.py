"""The run of pieces along the warp: what is woven when, which piece a short warp loses, what would make it fit, and the warp as a picture.

All take the card's outcome, r. Lengths are in centimeters here, as the plan has them.
"""

from math import ceil

from ...core.answer import Table
from ...core.units import METERS_PER_YARD
from ...wash.shrink import size_after
from ..chain import warp_for_woven, width_off_loom, woven_from_warp
from ..run import reached, whole_pieces
from .sizes import warp_from_end_to_end
from .written import in_inches, meters, name_of, short

ALONE = 14  # so many pieces are listed one by one


def pieces_in_order(r) -> list[tuple[str, int]]:
    """Each piece's name and its row, one after another as they are woven."""
    found = []
    for at, row in enumerate(r.given["pieces"]):
        found += [
            (name_of(row) if row.many == 1 else f"{name_of(row)} {number}", at)
            for number in range(1, row.many + 1)
        ]
    return found


def warp_each(r) -> list[float]:
    fringes = 2 * (r.given["fringe"] or 0.0)
    return [
        warp_for_woven(r.kept["woven"][at], r.given["take_up"]) + fringes
        for _, at in pieces_in_order(r)
    ]


def ends_at(r) -> list[float]:
    """Warp used when each piece is off, cm."""
    take_up = r.given["take_up"]
    return reached(
        warp_each(r),
        warp_for_woven(r.given["divider"], take_up),
        warp_for_woven(r.given["sample"], take_up),
    )


def lost(r) -> str:
    """Which pieces a warp that is too short loses, in words."""
    names = [name for name, _ in pieces_in_order(r)]
    available = 100 * r.given["limit"] - r.given["waste"]
    whole = whole_pieces(ends_at(r), available)
    gone = names[whole:]
    if not gone:
        return "every piece comes off whole, the last divider does not"
    if whole == 0:
        return "no piece comes off whole"
    begun = ends_at(r)[whole] - warp_each(r)[whole]
    weaves = woven_from_warp(
        max(available - begun - (r.given["fringe"] or 0.0), 0.0), r.given["take_up"]
    )
    part = f", {short(r, weaves)} of it can be woven" if weaves > 1 else ""
    return f"{gone[0]} is lost{part}" if len(gone) == 1 else f"{gone[0]} to {gone[-1]} are lost"


def changes(r):
    """What to change, and by how much, where the plan does not fit; nothing where it does."""
    fit, rows = r.kept["fit"], []
    given = r.given
    if fit["too_wide"]:
        finished, loom = 100 * r.value("finished_width"), given["loom_width"]
        asked = (
            given["width"]
            if given["width"] is not None
            else size_after(width_off_loom(fit["needed"], given["draw_in"]), given["width_shrink"])
        )
        rows.append(
            ("Make each piece narrower", short(r, finished), f"{short(r, asked - finished)} less")
        )
        rows.append(
            (
                "Weave on a wider loom",
                short(r, fit["wanted"] / given["sett"]),
                f"{short(r, fit['wanted'] / given['sett'] - loom)} more",
            )
        )
        most = 100 * (1 - asked / width_off_loom(loom, given["draw_in"]))
        if most > 0:
            rows.append(
                (
                    "A cloth that shrinks less in width",
                    f"at most {r.number(most, 1)} %",
                    f"{r.number(given['width_shrink'] - most, 1)} points less",
                )
            )
    if r.has("spare") and r.value("spare") < 0:
        missing, count = -100 * r.value("spare"), len(pieces_in_order(r))
        each = size_after(
            woven_from_warp(missing / count, given["take_up"]), given["length_shrink"]
        )
        shortest = min(row.length for row in given["pieces"])
        if each < shortest:
            rows.append(
                (
                    "Make each piece shorter",
                    f"by {short(r, ceil(10 * each - 1e-6) / 10)}",
                    "finished",
                )
            )
        if given["waste"] > missing:
            rows.append(
                ("Waste less warp", short(r, given["waste"] - missing), f"{short(r, missing)} less")
            )
        if given["sample"] and warp_for_woven(given["sample"], given["take_up"]) >= missing:
            rows.append(("Weave no sample", "", f"{short(r, given['sample'])} less"))
        whole = whole_pieces(ends_at(r), 100 * given["limit"] - given["waste"])
        if whole:
            rows.append(("Weave fewer pieces", f"{whole}", f"{count - whole} less"))
        rows.append(
            ("Wind a longer warp", meters(r, r.value("warp_length")), f"{short(r, missing)} more")
        )
    return (
        Table(
            "What would make it fit",
            ("Change", "To", "By"),
            tuple((one, to or "–", by) for one, to, by in rows),
            "Any one of them alone.",
        )
        if rows
        else None
    )


def along(r):
    """The pieces along the warp: what to weave, and how much warp is used when each is off."""
    used_at, order = ends_at(r), pieces_in_order(r)
    rows = []
    if r.given["sample"]:
        rows.append(
            (
                "Sample",
                short(r, r.given["sample"]),
                r.number(r.kept["sample_picks"]),
                weft_of(r, 0),
                meters(r, warp_for_woven(r.given["sample"], r.given["take_up"]) / 100),
            )
        )
    if len(order) <= ALONE:
        rows += [
            (name, *to_weave(r, at), meters(r, used / 100))
            for (name, at), used in zip(order, used_at)
        ]
    else:
        done = 0
        for at, row in enumerate(r.given["pieces"]):
            done += row.many
            rows.append(
                (
                    name_of(row) if row.many == 1 else f"{name_of(row)}, {row.many} times",
                    *to_weave(r, at),
                    meters(r, used_at[done - 1] / 100),
                )
            )
    rows.append(
        ("Whole warp", "–", r.number(r.value("weft_picks")), "–", meters(r, r.value("warp_length")))
    )
    return Table(
        "Along the warp",
        ("Piece", "Weave", "Picks", "Weft", "Warp used"),
        tuple(rows),
        "Warp used is up to the end of that piece: if the warp turns out short, the first piece"
        " whose end lies beyond it is lost.",
    )


def weft_of(r, at: int) -> str:
    return r.given["pieces"][at].color or "–"


def to_weave(r, at: int) -> tuple[str, str, str]:
    """Length on the loom, picks and color of the pieces of one row."""
    picks = r.number(r.kept["each_picks"][at])
    if "in_hem" in r.kept:
        picks = f"{r.kept['in_hem']} + {picks} + {r.kept['in_hem']}"
    return short(r, r.kept["woven"][at]), picks, weft_of(r, at)


def warp_picture(r):
    """The whole warp, from the first pick to the knots."""
    given, take_up = r.given, r.given["take_up"]
    gap = ("divider", warp_for_woven(given["divider"], take_up) / 100, "")
    parts = (
        [("sample", warp_for_woven(given["sample"], take_up) / 100, "")] if given["sample"] else []
    )
    order = pieces_in_order(r)
    for number, each in enumerate(warp_each(r), 1):
        parts += [gap, ("piece", each / 100, str(number))]
    parts += [gap, ("waste", given["waste"] / 100, "")]
    said = (
        f"{len(order)} {'piece' if len(order) == 1 else 'pieces'} along a warp of"
        f" {meters(r, r.value('warp_length'))}, then {short(r, given['waste'])} of loom waste"
        + (f"; there are {meters(r, given['limit'])}" if given["limit"] is not None else "")
        + "."
    )
    return warp_from_end_to_end(
        "The warp, end to end",
        parts,
        given["limit"],
        ("yd", METERS_PER_YARD) if in_inches(r) else ("m", 1.0),
        lambda m: meters(r, m),
        said,
    )
