"""What is said and printed of a planned warp: its notes, the chain of sizes, the sheet for the loom. All take the card's outcome, r."""

from ...core.answer import Table
from ...core.units import PER_LENGTH
from ...wash.shrink import size_after, size_before
from ..chain import warp_for_woven, width_off_loom
from .sizes import chain_of_sizes
from .warp_run import ALONE, pieces_in_order, to_weave, weft_of
from .warp_yarn import stripes_of
from .written import long, name_of, short

ROOM = 8  # so many pieces leave room on the sheet for what is written down


def notes(r) -> list[str]:
    """What to know beside the numbers."""
    given, said = r.given, []
    if given["width"] is not None:
        added = given["width"] * (1 + (given["width_shrink"] + given["draw_in"]) / 100)
        left = size_after(width_off_loom(added, given["draw_in"]), given["width_shrink"])
        if added < r.kept["fit"]["needed"]:
            said.append(
                f"Losses are divided out, never added. {long(r, given['width'])} and"
                f" {r.number(given['width_shrink'] + given['draw_in'], 0)} % on top would be"
                f" {long(r, added)} in the heddle, and come out {long(r, left)} wide."
            )
    said.append(
        f"As reckoned, {r.said('warp_length')} of warp is enough in half of all cases; at"
        f" {r.said('warp_sure')} the last piece is whole in"
        f" {r.in_100(r.chance_below('warp_length', r.value('warp_sure')))}."
    )
    if given["warp_colors"] == "repeated":
        ends, repeat = (
            r.value("ends") - given["edge_ends"],
            sum(row.ends for row in given["stripes"]),
        )
        if ends % repeat:
            said.append(
                f"The stripes do not come out even: {ends} ends are {ends // repeat} repeats and"
                f" {ends % repeat} ends. Ends in multiples of {repeat} would; add the first stripe"
                " at the end for edges alike."
            )
    if r.has("last_lost") and r.value("spare") >= 0:
        said.append(f"The last piece would be cut short in {r.text('last_lost')}.")
    if given["finish"] == "fringe":
        said.append(
            "Fringe is unwoven warp: no take-up. It shrinks in the wash as yarn does; trim it"
            " afterward."
        )
    if "in_hem" in r.kept:
        said.append(
            f"Each hem is {r.kept['in_hem']} picks of the finer yarn, as wide in the heddle as the"
            " rest; it draws in otherwise, so try one on the sample."
        )
    said.append(
        "Lengths to weave are measured on the loom; measure your sample the same way, or what the"
        " cloth gives when the warp is let go is lost from every piece."
    )
    return said


def sizes_picture(r):
    """One piece from the warp to the finished cloth."""
    given, row, woven = r.given, r.given["pieces"][0], r.kept["woven"][0]
    warp, washed = (
        warp_for_woven(woven, given["take_up"]),
        size_after(woven, given["length_shrink"]),
    )
    length = [
        ("warp yarn for it", warp),
        (f"woven, less {given['take_up']:g} % take-up", woven),
        (f"washed, less {given['length_shrink']:g} % shrinkage", washed),
    ]
    if given["hem"]:
        length.append(("hemmed", washed - 2 * given["hem"]))
    heddle = 100 * r.value("heddle_width")
    width = [
        ("in the heddle", heddle),
        (
            f"on the loom, less {given['draw_in']:g} % draw-in",
            width_off_loom(heddle, given["draw_in"]),
        ),
        (f"washed, less {given['width_shrink']:g} % shrinkage", 100 * r.value("finished_width")),
    ]
    return chain_of_sizes(
        f"The chain of sizes: {name_of(row)}",
        [
            (name, [(words, size, short(r, size)) for words, size in steps])
            for name, steps in (("Length", length), ("Width", width))
        ],
    )


def loom_sheet(r):
    """What is needed at the loom, to pin up beside it and tick off."""
    given = r.given
    head = [
        (
            "Ends",
            r.number(r.value("ends"))
            + (
                f", {given['edge_ends']} of them doubled at the edges" if given["edge_ends"] else ""
            ),
        ),
        (
            "Heddle",
            (
                f"{r.amount(given['sett'], PER_LENGTH, 'per cm', 4)}"
                f" ({r.amount(given['sett'], PER_LENGTH, 'per in', 4)})"
            ),
        ),
        ("Width in the heddle", r.both("heddle_width")),
        ("Warp to wind", r.both("warp_sure")),
        (
            "Picks",
            (
                f"{r.amount(given['picks'], PER_LENGTH, 'per cm', 4)}"
                f" ({r.amount(given['picks'], PER_LENGTH, 'per in', 4)})"
            ),
        ),
        ("Divider", long(r, given["divider"])),
        *_hem_line(r),
        ("Colors of the warp", _order_words(r)),
    ]
    rows = (
        [
            (
                "Sample",
                short(r, given["sample"]),
                r.number(r.kept["sample_picks"]),
                weft_of(r, 0),
                "☐",
            )
        ]
        if given["sample"]
        else []
    )
    listed = pieces_in_order(r)
    if len(listed) <= ALONE:
        rows += [(name, *to_weave(r, at), "☐") for name, at in listed]
    else:
        rows += [
            (f"{name_of(row)}, {row.many} times", *to_weave(r, at), "☐")
            for at, row in enumerate(given["pieces"])
        ]
    made = (
        Table("On the loom", ("What", "How much"), tuple(head)),
        Table(
            "To weave",
            (
                "Piece",
                "Length on the loom",
                "Picks: hem, cloth, hem" if "in_hem" in r.kept else "Picks",
                "Weft",
                "Done",
            ),
            tuple(rows),
        ),
        Table(
            f"The chain of sizes: {name_of(given['pieces'][0])}",
            ("Size", "Length", "Width"),
            tuple(_chain_rows(r)),
        ),
    )
    if len(rows) > ROOM:
        return made
    return *made, Table(
        "As it came out",
        ("What", "Written down"),
        tuple(
            (words, "")
            for words in ("Width on the loom", "Picks counted in 5 cm", "Washed: length, width")
        ),
    )


def _hem_line(r) -> list[tuple[str, str]]:
    """How deep a hem is on the loom, where there is one: the mark to fold by."""
    if not r.given["hem"]:
        return []
    finer = f", {r.kept['in_hem']} picks of the finer yarn" if "in_hem" in r.kept else ""
    return [
        ("Hem, at each end", long(r, size_before(r.given["hem"], r.given["length_shrink"])) + finer)
    ]


def _chain_rows(r):
    """Warp, loom, washed, finished: length and width side by side."""
    given, woven = r.given, r.kept["woven"][0]
    washed, heddle = size_after(woven, given["length_shrink"]), 100 * r.value("heddle_width")
    finished = washed - 2 * (given["hem"] or 0.0)
    return [
        ("Warp, heddle", short(r, warp_for_woven(woven, given["take_up"])), short(r, heddle)),
        ("On the loom", short(r, woven), short(r, width_off_loom(heddle, given["draw_in"]))),
        ("Washed", short(r, washed), short(r, 100 * r.value("finished_width"))),
    ] + (
        [("Hemmed", short(r, finished), short(r, 100 * r.value("finished_width")))]
        if given["hem"]
        else []
    )


def _order_words(r) -> str:
    if r.given["warp_colors"] == "one":
        return r.given["warp_color"] or "one"
    listed = ", ".join(f"{count} {color}" for color, count in stripes_of(r)[:6])
    return (
        listed
        + (" …" if len(stripes_of(r)) > 6 else "")
        + (", again and again" if r.given["warp_colors"] == "repeated" else "")
    )
