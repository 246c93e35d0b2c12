"""A whole run of pieces made ready for pictures and lists: which yarn each end and pick is, and what stands on the pick list.

given is what the card was given, by input name; repeats holds the weave of each piece.
"""

from collections.abc import Sequence

from ..draft.loom_words import begins_with, block_words, sheds_in_turn
from ..draft.order import letter, merged, read_order, stripes, there_and_back, threads_by_stripe
from ..draft.piece import (
    HEM,
    length_on_loom,
    pick_list,
    sections_of,
    washed,
    weft_of,
    width_on_loom,
)
from .cloth import Cloth
from .key import Yarn

MIRROR = "mirror"
MOST_BOXES = 24


def yarns_of(given: dict) -> list[Yarn]:
    """The yarns of the run, with their letters."""
    return [
        Yarn(f"{letter(place)} {row.name}", row.color.hex)
        for place, row in enumerate(given["yarns"])
    ]


def names_of(given: dict) -> tuple[str, ...]:
    """The yarns' names, as an order may call them."""
    return tuple(row.name for row in given["yarns"])


def warp_runs(given: dict) -> list[tuple[int, int]]:
    """The warp as runs (yarn, ends) from the left."""
    order = read_order(given["warp"], names_of(given))
    if given["turn"] == MIRROR:
        order = tuple(order[place] for place in there_and_back([count for _, count in order]))
    return merged(
        stripes([count for _, count in order], given["ends"]), [yarn for yarn, _ in order]
    )


def weft_order(given: dict, number: int) -> tuple[list[int], list[int]]:
    """The weft order of a piece (from 1): the yarn of each stripe, and its picks. One yarn alone is one stripe for the whole piece."""
    piece = given["pieces"][number - 1]
    order = read_order(piece.weft, names_of(given))
    yarns = [yarn for yarn, _ in order]
    return (
        (yarns[:1], [piece.picks])
        if len(set(yarns)) == 1
        else (yarns, [count for _, count in order])
    )


def hem_yarn(given: dict, number: int) -> int:
    """The yarn of a piece's hems: the one given for hems, else its first weft."""
    return (
        read_order(given["hem_yarn"], names_of(given))[0][0]
        if given["hem_yarn"]
        else weft_order(given, number)[0][0]
    )


def weft_runs(given: dict, number: int) -> list[tuple[int, int]]:
    """The weft of a piece (from 1) as runs (yarn, picks), the first pick first."""
    yarns, counts = weft_order(given, number)
    blocks = pick_list(counts, given["pieces"][number - 1].picks, given["hem"])
    return merged(
        [(len(yarns) if place == HEM else place, count) for place, count in weft_of(blocks)],
        [*yarns, hem_yarn(given, number)],
    )


def cloths_of(
    given: dict, repeats: Sequence[tuple[str, ...]], shrinks: Sequence[tuple[float, float]]
) -> list[Cloth]:
    """Each piece, ready to be drawn; shrinks holds what the wash takes of its width and its length, %."""
    warp = tuple(warp_runs(given))
    width = width_on_loom(given["ends"], given["sett"], given["draw_in"])
    found = []
    for number, (piece, repeat, (across, along)) in enumerate(
        zip(given["pieces"], repeats, shrinks), 1
    ):
        length = length_on_loom(piece.picks, given["beat"], given["hem"], given["hem_beat"] or 0.0)
        found.append(
            Cloth(
                piece.name,
                sections_of(repeat, piece.picks, given["hem"]),
                warp,
                tuple(weft_runs(given, number)),
                (width, length),
                (washed(width, across), washed(length, along)),
            )
        )
    return found


def list_rows(
    given: dict, number: int, repeat: tuple[str, ...], boxes: bool = False
) -> list[tuple[str, ...]]:
    """The pick list of a piece (from 1) in a weave: picks, weft, sheds; with boxes to tick, one for each time over."""
    yarns, counts = weft_order(given, number)
    picks, size, called = (
        given["pieces"][number - 1].picks,
        len(repeat),
        [yarn.name for yarn in yarns_of(given)],
    )
    names = {place: called[yarn] for place, yarn in enumerate(yarns)} | {
        HEM: f"{called[hem_yarn(given, number)]}, hem"
    }
    sections = sections_of(repeat, picks, given["hem"])
    written, done, woven = [], 0, 0
    for block in pick_list(counts, picks, given["hem"]):
        if block.runs[0][0] == HEM:
            sheds = f"plain weave, heddle {begins_with(sections[-1 if done else 0].repeat)} first"
        else:
            sheds = (
                f"goes on with {woven % size + 1}" if woven else sheds_in_turn(block.picks, size)
            )
            woven += block.picks
        line = (
            f"{done + 1} to {done + block.picks}",
            block_words(block.times, block.runs, names),
            sheds,
        )
        written.append((*line, _boxes(min(block.times, MOST_BOXES))) if boxes else line)
        done += block.picks
    return written


def run_rows(given: dict, weaves: Sequence[str]) -> list[tuple[str, ...]]:
    """Every piece in a line, its yarns by letter: the piece, its weave, its weft from hem to hem, a box to tick."""
    rows = []
    for number, (piece, weave) in enumerate(zip(given["pieces"], weaves), 1):
        yarns, counts = weft_order(given, number)
        names = {place: letter(yarn) for place, yarn in enumerate(yarns)} | {
            HEM: f"{letter(hem_yarn(given, number))} hem"
        }
        weft = "; ".join(
            block_words(block.times, block.runs, names)
            for block in pick_list(counts, piece.picks, given["hem"])
        )
        rows.append((f"{number} {piece.name}", weave, weft, "☐"))
    return rows


def _boxes(count: int) -> str:
    """Boxes to tick, in fives: easy to count, and the line can break between them."""
    return " ".join("☐" * min(5, count - first) for first in range(0, count, 5))


def color_rows(given: dict) -> list[tuple[str, ...]]:
    """Threads of each yarn by its letter and in all: of the warp, of each piece, of all pieces together."""
    size = len(given["yarns"])
    pieces = [
        threads_by_stripe(weft_runs(given, number), size)
        for number in range(1, len(given["pieces"]) + 1)
    ]
    counts = [("Warp, ends", threads_by_stripe(warp_runs(given), size))]
    counts += [
        (f"{number} {piece.name}, picks", each)
        for number, (piece, each) in enumerate(zip(given["pieces"], pieces), 1)
    ]
    if len(pieces) > 1:
        counts.append(("All picks", [sum(column) for column in zip(*pieces)]))
    return [
        (
            name,
            ", ".join(f"{count} {letter(place)}" for place, count in enumerate(each) if count),
            str(sum(each)),
        )
        for name, each in counts
    ]
