"""What a planned warp looks like: its pictures, the tables beside them, its notes, and the sheets that are printed for the loom.

All take the card's outcome, r. Lengths are in centimeters here, as the plan has them.
"""

from math import ceil

from ...core.answer import Table
from ...core.units import LENGTH, PER_LENGTH
from ...wash.shrink import size_after
from ..chain import warp_for_woven, width_off_loom, woven_from_warp
from ..ends import ends_by_color
from ..run import reached, whole_pieces
from .sizes import chain_of_sizes, warp_from_end_to_end

ALONE = 14  # so many pieces are listed one by one


def long(r, cm: float) -> str:
    """A length in the user's units: "76.8 cm (30.2 in)"."""
    metric, us = f"{r.number(cm, 1).removesuffix('.0')} cm", f"{r.number(cm / 2.54, 1).removesuffix('.0')} in"
    return {"metric": metric, "us": us}.get(r.settings.system, f"{metric} ({us})")


def short(r, cm: float) -> str:
    """The same in one unit: "76.8 cm"."""
    return f"{r.number(cm / 2.54, 1)} in" if r.settings.system == "us" else f"{r.number(cm, 1)} cm"


def _meters(r, m: float, decimals: int = 2) -> str:
    return f"{r.number(m / 0.9144, decimals)} yd" if r.settings.system == "us" else f"{r.number(m, decimals)} m"


def _name(row) -> str:
    return row.name or "Piece"


def pieces_in_order(r) -> list[tuple[str, int]]:
    """Each piece's name and its row, one after another as they are woven."""
    found = []
    for at, row in enumerate(r.given["pieces"]):
        found += [(_name(row) if row.many == 1 else f"{_name(row)} {number}", at) for number in range(1, row.many + 1)]
    return found


def _warp_each(r) -> list[float]:
    fringes = 2 * (r.given["fringe"] or 0.0)
    return [warp_for_woven(r.kept["woven"][at], r.given["take_up"]) + fringes for _, at in pieces_in_order(r)]


def _ends_at(r) -> list[float]:
    """Warp used when each piece is off, cm."""
    take_up = r.given["take_up"]
    return reached(_warp_each(r), warp_for_woven(r.given["divider"], take_up), warp_for_woven(r.given["sample"], take_up))


def lost(r) -> str:
    """Which pieces a warp that is too short loses, in words."""
    names = [name for name, _ in pieces_in_order(r)]
    available = 100 * r.given["limit"] - r.given["waste"]
    whole = whole_pieces(_ends_at(r), available)
    gone = names[whole:]
    if not gone:
        return "every piece comes off whole, the last divider does not"
    if whole == 0:
        return "no piece comes off whole"
    begun = _ends_at(r)[whole] - _warp_each(r)[whole]
    weaves = woven_from_warp(max(available - begun - (r.given["fringe"] or 0.0), 0.0), r.given["take_up"])
    part = f", {short(r, weaves)} of it can be woven" if weaves > 1 else ""
    return f"{gone[0]} is lost{part}" if len(gone) == 1 else f"{gone[0]} to {gone[-1]} are lost"


def changes(r):
    """What to change, and by how much, where the plan does not fit; nothing where it does."""
    fit, rows = r.kept["fit"], []
    given = r.given
    if fit["too_wide"]:
        finished, loom = 100 * r.value("finished_width"), given["loom_width"]
        asked = given["width"] if given["width"] is not None else size_after(width_off_loom(fit["needed"], given["draw_in"]), given["width_shrink"])
        rows.append(("Make each piece narrower", short(r, finished), f"{short(r, asked - finished)} less"))
        rows.append(("Weave on a wider loom", short(r, fit["wanted"] / given["sett"]), f"{short(r, fit['wanted'] / given['sett'] - loom)} more"))
        most = 100 * (1 - asked / width_off_loom(loom, given["draw_in"]))
        if most > 0:
            rows.append(("A cloth that shrinks less in width", f"at most {r.number(most, 1)} %", f"{r.number(given['width_shrink'] - most, 1)} points less"))
    if r.has("spare") and r.value("spare") < 0:
        short, count = -100 * r.value("spare"), len(pieces_in_order(r))
        each = size_after(woven_from_warp(short / count, given["take_up"]), given["length_shrink"])
        shortest = min(row.length for row in given["pieces"])
        if each < shortest:
            rows.append(("Make each piece shorter", f"by {short(r, ceil(10 * each - 1e-6) / 10)}", "finished"))
        if given["waste"] > short:
            rows.append(("Waste less warp", short(r, given["waste"] - short), f"{short(r, short)} less"))
        if given["sample"] and warp_for_woven(given["sample"], given["take_up"]) >= short:
            rows.append(("Weave no sample", "", f"{short(r, given['sample'])} less"))
        whole = whole_pieces(_ends_at(r), 100 * given["limit"] - given["waste"])
        rows.append(("Weave fewer pieces", f"{whole}", f"{count - whole} less"))
        rows.append(("Wind a longer warp", _meters(r, r.value("warp_length")), f"{short(r, short)} more"))
    return Table("What would make it fit", ("Change", "To", "By"), tuple((one, to or "–", by) for one, to, by in rows), "Any one of them alone.") if rows else None


def along(r):
    """The pieces along the warp: what to weave, and how much warp is used when each is off."""
    ends_at, order = _ends_at(r), pieces_in_order(r)
    rows = []
    if r.given["sample"]:
        rows.append(("Sample", short(r, r.given["sample"]), r.number(r.kept["sample_picks"]), _weft_of(r, 0), _meters(r, warp_for_woven(r.given["sample"], r.given["take_up"]) / 100)))
    if len(order) <= ALONE:
        rows += [(name, *_to_weave(r, at), _meters(r, used / 100)) for (name, at), used in zip(order, ends_at)]
    else:
        done = 0
        for at, row in enumerate(r.given["pieces"]):
            done += row.many
            rows.append((_name(row) if row.many == 1 else f"{_name(row)}, {row.many} times", *_to_weave(r, at), _meters(r, ends_at[done - 1] / 100)))
    rows.append(("Whole warp", "–", r.number(r.value("weft_picks")), "–", _meters(r, r.value("warp_length"))))
    return Table("Along the warp", ("Piece", "Weave", "Picks", "Weft", "Warp used by its end"), tuple(rows), "If the warp turns out short, the piece whose end lies beyond it is lost first.")


def _weft_of(r, at: int) -> str:
    return r.given["pieces"][at].color or "–"


def _to_weave(r, at: int) -> tuple[str, str, str]:
    """Length on the loom, picks and color of the pieces of one row."""
    picks = r.number(r.kept["each_picks"][at])
    if "in_hem" in r.kept:
        picks = f"{r.kept['in_hem']} + {picks} + {r.kept['in_hem']}"
    return short(r, r.kept["woven"][at]), picks, _weft_of(r, at)


def _stripes(r) -> list[tuple[str, int]]:
    """The order of colors, with the extra edge ends in those of the edges."""
    ends = r.value("ends") - r.given["edge_ends"]
    if not r.given["stripes"] or r.given["warp_colors"] == "one":
        return [(r.given["warp_color"] or "one color", max(ends, 1))]
    return [(row.color or "–", row.ends) for row in r.given["stripes"]]


def _ends_of(r) -> dict[str, int]:
    """Ends of each color."""
    order, ends = _stripes(r), r.value("ends") - r.given["edge_ends"]
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
        rows.append(_row(r, color, "warp and weft" if color in warp and color in share else "warp" if color in warp else "weft", warp.get(color, 0.0), share.get(color, 0.0)))
    if not same:
        rows += [_row(r, color, "warp", part, 0.0) for color, part in warp.items()] + [_row(r, color, "weft", 0.0, part) for color, part in share.items()]
    return rows


def _row(r, color, use, warp, weft):
    return (color, use, warp * r.value("warp_yarn"), weft * r.value("weft_yarn"), warp * r.value("warp_balls") + weft * r.value("weft_balls"),
            warp * r.high("warp_balls") + weft * r.high("weft_balls"))


def balls(r) -> dict[tuple[str, str], int]:
    """Balls to buy of each color and use, enough at the far end of the range."""
    return {(color, use): max(ceil(high - 1e-9), 1 if high > 0 else 0) for color, use, _, _, _, high in _by_color(r)}


def yarns(r):
    """Yarn by color: length, weight, balls with their range, and what to buy."""
    buy, rows = balls(r), []
    for color, use, warp, weft, count, high in _by_color(r):
        grams = warp * r.value("warp_weight") / r.value("warp_yarn") + (weft * r.value("weft_weight") / r.value("weft_yarn") if weft else 0.0)
        rows.append((color, use, r.amount(warp + weft, LENGTH, "m", 4), r.amount(warp + weft, LENGTH, "yd", 4), f"{r.number(grams)} g", f"{r.number(count, 2)}, up to {r.number(high, 2)}", str(buy[color, use])))
    if r.has("hem_thread"):
        rows.append(("Finer yarn", "hems", r.text("hem_thread", "m"), r.text("hem_thread", "yd"), r.text("hem_weight", "g"), f"{r.number(r.value('hem_balls'), 2)}, up to {r.number(r.high('hem_balls'), 2)}",
                     str(int(r.value("hem_buy")))))
    return Table("Yarn by color", ("Color", "For", "Meters", "Yards", "Weight", "Balls", "Buy"), tuple(rows))


def order(r):
    """The order of colors across the warp; nothing for one color."""
    if r.given["warp_colors"] == "one":
        return None
    stripes, ends = _stripes(r), r.value("ends") - r.given["edge_ends"]
    whole, rest = divmod(ends, sum(count for _, count in stripes))
    at, rows = 0, []
    for color, count in stripes:
        rows.append((color, str(count), f"{at + 1} to {at + count}" if count > 1 else f"{at + 1}", str(whole * count + max(min(rest - at, count), 0))))
        at += count
    times = f"{whole} whole {'repeat' if whole == 1 else 'repeats'}" + (f", then the first {rest} ends again" if rest else "") if r.given["warp_colors"] == "repeated" else "Once across" if whole else f"Cut off after {ends} ends"
    return Table("Color order of the warp", ("Color", "Ends in the stripe", "Ends, from the first", "Ends in all"), tuple(rows), f"{times}. {ends} ends." + (f" {r.given['edge_ends']} more at the edges." if r.given["edge_ends"] else ""))


def notes(r) -> list[str]:
    """What to know beside the numbers."""
    given, said = r.given, []
    if given["width"] is not None:
        added = given["width"] * (1 + (given["width_shrink"] + given["draw_in"]) / 100)
        left = size_after(width_off_loom(added, given["draw_in"]), given["width_shrink"])
        if added < r.kept["fit"]["needed"]:
            said.append(f"Losses are divided out, never added. {long(r, given['width'])} and {r.number(given['width_shrink'] + given['draw_in'], 0)} % on top would be {long(r, added)} in the heddle, and come out {long(r, left)} wide.")
    said.append(f"As reckoned, {r.said('warp_length')} of warp is enough in half of all cases; at {r.said('warp_sure')} the last piece is whole in {r.in_100(r.chance_below('warp_length', r.value('warp_sure')))}.")
    if given["warp_colors"] == "repeated":
        ends, repeat = r.value("ends") - given["edge_ends"], sum(row.ends for row in given["stripes"])
        if ends % repeat:
            said.append(f"The stripes do not come out even: {ends} ends are {ends // repeat} repeats and {ends % repeat} ends. Ends in multiples of {repeat} would; add the first stripe at the end for edges alike.")
    if r.has("last_lost") and r.value("spare") >= 0:
        said.append(f"The last piece would be cut short in {r.text('last_lost')}.")
    if given["finish"] == "fringe":
        said.append("Fringe is unwoven warp: no take-up. It shrinks in the wash as yarn does; trim it afterward.")
    if "in_hem" in r.kept:
        said.append(f"Each hem is {r.kept['in_hem']} picks of the finer yarn, as wide in the heddle as the rest; it draws in otherwise, so try one on the sample.")
    said.append("Lengths to weave are measured on the loom; measure your sample the same way, or what the cloth gives when the warp is let go is lost from every piece.")
    return said


def sizes_picture(r):
    """One piece from the warp to the finished cloth."""
    given, row, woven = r.given, r.given["pieces"][0], r.kept["woven"][0]
    warp, washed = warp_for_woven(woven, given["take_up"]), size_after(woven, given["length_shrink"])
    length = [("warp yarn for it", warp), (f"woven, less {given['take_up']:g} % take-up", woven), (f"washed, less {given['length_shrink']:g} % shrinkage", washed)]
    if given["hem"]:
        length.append(("hemmed", washed - 2 * given["hem"]))
    heddle = 100 * r.value("heddle_width")
    width = [("in the heddle", heddle), (f"on the loom, less {given['draw_in']:g} % draw-in", width_off_loom(heddle, given["draw_in"])), (f"washed, less {given['width_shrink']:g} % shrinkage", 100 * r.value("finished_width"))]
    return chain_of_sizes(f"The chain of sizes: {_name(row)}", [(name, [(words, size, short(r, size)) for words, size in steps]) for name, steps in (("Length", length), ("Width", width))])


def warp_picture(r):
    """The whole warp, from the first pick to the knots."""
    given, take_up = r.given, r.given["take_up"]
    gap = ("divider", warp_for_woven(given["divider"], take_up) / 100, "")
    parts = [("sample", warp_for_woven(given["sample"], take_up) / 100, "")] if given["sample"] else []
    order = pieces_in_order(r)
    for number, each in enumerate(_warp_each(r), 1):
        parts += [gap, ("piece", each / 100, str(number))]
    parts += [gap, ("waste", given["waste"] / 100, "")]
    unit = "yd" if r.settings.system == "us" else "m"
    said = f"{len(order)} {'piece' if len(order) == 1 else 'pieces'} along a warp of {r.text('warp_length', unit)}, then {short(r, given['waste'])} of loom waste" + (f"; there are {_meters(r, given['limit'])}" if given["limit"] is not None else "") + "."
    return warp_from_end_to_end("The warp, end to end", parts, given["limit"], lambda m: _meters(r, m), said)


def loom_sheet(r):
    """What is needed at the loom, to pin up beside it and tick off."""
    given = r.given
    head = [("Ends", r.number(r.value("ends")) + (f", {given['edge_ends']} of them doubled at the edges" if given["edge_ends"] else "")), ("Heddle", f"{r.amount(given['sett'], PER_LENGTH, 'per cm', 4)} ({r.amount(given['sett'], PER_LENGTH, 'per in', 4)})"),
            ("Width in the heddle", r.both("heddle_width")), ("Warp to wind", r.both("warp_sure")), ("Picks", f"{r.amount(given['picks'], PER_LENGTH, 'per cm', 4)} ({r.amount(given['picks'], PER_LENGTH, 'per in', 4)})"),
            ("Divider", long(r, given["divider"])), ("Colors of the warp", _order_words(r))]
    rows = [("Sample", short(r, given["sample"]), r.number(r.kept["sample_picks"]), _weft_of(r, 0), "☐")] if given["sample"] else []
    listed = pieces_in_order(r)
    if len(listed) <= ALONE:
        rows += [(name, *_to_weave(r, at), "☐") for name, at in listed]
    else:
        rows += [(f"{_name(row)}, {row.many} times", *_to_weave(r, at), "☐") for at, row in enumerate(given["pieces"])]
    return (Table("On the loom", ("What", "How much"), tuple(head)), Table("To weave", ("Piece", "Length on the loom", "Picks", "Weft", "Done"), tuple(rows)),
            Table(f"The chain of sizes: {_name(given['pieces'][0])}", ("Size", "Length", "Width"), tuple(_chain_rows(r))),
            Table("As it came out", ("What", "Written down"), tuple((words, "") for words in ("Width on the loom", "Picks counted in 5 cm", "Washed: length, width"))))


def _chain_rows(r):
    """Warp, loom, washed, finished: length and width side by side."""
    given, woven = r.given, r.kept["woven"][0]
    washed, heddle = size_after(woven, given["length_shrink"]), 100 * r.value("heddle_width")
    finished = washed - 2 * (given["hem"] or 0.0)
    return [("Warp, heddle", short(r, warp_for_woven(woven, given["take_up"])), short(r, heddle)), ("On the loom", short(r, woven), short(r, width_off_loom(heddle, given["draw_in"]))),
            ("Washed", short(r, washed), short(r, 100 * r.value("finished_width")))] + ([("Hemmed", short(r, finished), short(r, 100 * r.value("finished_width")))] if given["hem"] else [])


def _order_words(r) -> str:
    if r.given["warp_colors"] == "one":
        return r.given["warp_color"] or "one"
    listed = ", ".join(f"{count} {color}" for color, count in _stripes(r)[:6])
    return listed + (" …" if len(_stripes(r)) > 6 else "") + (", again and again" if r.given["warp_colors"] == "repeated" else "")


def yarn_sheet(r):
    """What to lay out before the warp is wound."""
    table = yarns(r)
    short = Table("Yarn by color", ("Color", "For", "Meters", "Weight", "Balls", "Here"), tuple((row[0], row[1], row[2], row[4], row[6], "☐") for row in table.rows))
    return (short, order(r)) if order(r) else (short,)
