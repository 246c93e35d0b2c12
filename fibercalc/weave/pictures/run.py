"""A whole run of pieces made ready for pictures and lists: which yarn each end and pick is, and what stands on the pick list.

given is what the card was given, by input name; repeats holds the weave of each piece.
"""

from collections.abc import Sequence

from ..draft.loom_words import begins_with, block_words, sheds_in_turn
from ..draft.order import merged, stripes, there_and_back, threads_by_stripe
from ..draft.piece import HEM, length_on_loom, pick_list, sections_of, washed, weft_of, width_on_loom
from .cloth import Cloth
from .key import Yarn

MIRROR, OTHER = "mirror", "other"
EVERY = 0  # the piece number that stands for every piece without weft of its own
HEM_YARN = "Hem yarn"
MOST_BOXES = 24


def yarns_of(given: dict) -> list[Yarn]:
    """Every yarn of the run once, in the order in which it is first named."""
    rows = [*given["warp"], *given["weft"]]
    found = list(dict.fromkeys(Yarn(row.name, row.color.hex) for row in rows))
    return found + ([Yarn(HEM_YARN, given["hem_color"].hex)] if given["hem"] and given["hem_yarn"] == OTHER else [])


def warp_runs(given: dict) -> list[tuple[int, int]]:
    """The warp as runs (yarn, ends) from the left."""
    rows, yarns = given["warp"], yarns_of(given)
    places = there_and_back([row.ends for row in rows]) if given["turn"] == MIRROR else list(range(len(rows)))
    runs = stripes([rows[place].ends for place in places], given["ends"])
    return merged(runs, [yarns.index(Yarn(rows[place].name, rows[place].color.hex)) for place in places])


def weft_rows(given: dict, number: int) -> list:
    """The weft order of a piece (from 1): its own, else that of every piece."""
    own = [row for row in given["weft"] if row.piece == number]
    return own or [row for row in given["weft"] if row.piece == EVERY]


def weft_runs(given: dict, number: int) -> list[tuple[int, int]]:
    """The weft of a piece (from 1) as runs (yarn, picks), the first pick first."""
    rows, yarns = weft_rows(given, number), yarns_of(given)
    names = [yarns.index(Yarn(row.name, row.color.hex)) for row in rows]
    hem = len(yarns) - 1 if given["hem_yarn"] == OTHER else names[0]
    blocks = pick_list([row.picks for row in rows], given["pieces"][number - 1].picks, given["hem"])
    return merged([(len(rows) if place == HEM else place, count) for place, count in weft_of(blocks)], [*names, hem])


def cloths_of(given: dict, repeats: Sequence[tuple[str, ...]]) -> list[Cloth]:
    """Each piece, ready to be drawn."""
    warp = tuple(warp_runs(given))
    width = width_on_loom(given["ends"], given["sett"], given["draw_in"])
    found = []
    for number, (piece, repeat) in enumerate(zip(given["pieces"], repeats), 1):
        length = length_on_loom(piece.picks, given["beat"], given["hem"], given["hem_beat"] or 0.0)
        after = (washed(width, _own(piece.shrink_width, given["shrink_width"])), washed(length, _own(piece.shrink_length, given["shrink_length"])))
        found.append(Cloth(piece.name, sections_of(repeat, piece.picks, given["hem"]), warp, tuple(weft_runs(given, number)), (width, length), after))
    return found


def _own(own: float | None, usual: float) -> float:
    return usual if own is None else own


def list_rows(given: dict, number: int, repeat: tuple[str, ...], boxes: bool = False) -> list[tuple[str, ...]]:
    """The pick list of a piece (from 1) in a weave: picks, weft, sheds; with boxes to tick, one for each time over."""
    rows, picks, size = weft_rows(given, number), given["pieces"][number - 1].picks, len(repeat)
    names = {place: row.name for place, row in enumerate(rows)}
    names[HEM] = f"{HEM_YARN if given['hem_yarn'] == OTHER else rows[0].name} (hem)"
    sections = sections_of(repeat, picks, given["hem"])
    written, done, woven = [], 0, 0
    for block in pick_list([row.picks for row in rows], picks, given["hem"]):
        if block.runs[0][0] == HEM:
            sheds = f"plain weave, heddle {begins_with(sections[-1 if done else 0].repeat)} first"
        else:
            sheds = f"goes on with {woven % size + 1}" if woven else sheds_in_turn(block.picks, size)
            woven += block.picks
        line = (f"{done + 1} to {done + block.picks}", block_words(block.times, block.runs, names), sheds)
        written.append((*line, "☐" * min(block.times, MOST_BOXES)) if boxes else line)
        done += block.picks
    return written


def color_rows(given: dict) -> list[tuple[str, ...]]:
    """Each yarn with its ends and its picks in each piece; the last row is their sum."""
    yarns = yarns_of(given)
    counts = [threads_by_stripe(warp_runs(given), len(yarns))]
    counts += [threads_by_stripe(weft_runs(given, number), len(yarns)) for number in range(1, len(given["pieces"]) + 1)]
    rows = [(yarn.name, *(str(column[place]) if column[place] else "–" for column in counts)) for place, yarn in enumerate(yarns)]
    return [*rows, ("In all", *(str(sum(column)) for column in counts))]
