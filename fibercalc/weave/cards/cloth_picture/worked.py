"""How the threads, the floats and the sizes of each piece follow from what is woven."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from typing import Any

from ....core.arithmetic import total
from ....core.problem import OutOfRange, Refused
from ...draft.loom_words import way_words
from ...draft.order import merged, read_order, stripes, there_and_back
from ...draft.piece import (
    HEM,
    float_span,
    floats_of_piece,
    length_on_loom,
    pick_list,
    stick_picks,
    washed,
    weft_of,
    width_on_loom,
)
from ...draft.sheds import read_sheds, repeat_of_sheds
from ...draft.structures import OWN, structure
from .asked import MIRROR, ClothPicture, Longest, Piece


def answer(case: ClothPicture) -> None:
    _as_understood(case)
    case.ends_drawn_in = case.sett / (1 - case.draw_in / 100)
    for piece in case.pieces:
        _piece(case, piece)
    _longest_float(case)
    _piece_looked_at(case)
    case.picks = total(piece.picks for piece in case.pieces)
    _for_the_next_card(case)


def _as_understood(case: ClothPicture) -> None:
    """The weave of each piece; what its texts cannot say is refused."""
    names = names_of(case)
    _read("Warp", "warp", read_order, case.warp, names)
    if hem_yarn := case.maybe(ClothPicture.hem_yarn):
        _read("Yarn of the hems", "hem_yarn", read_order, hem_yarn, names)
    many = len(case.pieces)
    if case.look > many:
        raise Refused(
            f"Piece to look at: {case.look} given, but there {'is' if many == 1 else 'are'}"
            f" {many}.",
            ClothPicture.look,
        )
    lifts = _read("Own pick-up", "sheds", read_sheds, case.sheds)
    own = repeat_of_sheds(lifts, ("1" * int(case.take) + "0" * int(case.leave),))
    for number, piece in enumerate(case.pieces, 1):
        if 2 * case.hem >= piece.picks:
            raise Refused(
                f"Hems of {case.hem} picks: two of them leave nothing of the {piece.picks} picks of"
                f" piece {number}; give fewer.",
                ClothPicture.hem,
            )
        _read(f"Weft of piece {number}", f"pieces.{number}.weft", read_order, piece.weft, names)
        piece.repeat = own if piece.structure == OWN else structure(piece.structure).repeat


def _read(label: str, name: str, reader: Callable[..., Any], *given: Any) -> Any:
    """What a text says; what it cannot say is one line about that input."""
    try:
        return reader(*given)
    except OutOfRange as error:
        raise Refused(f"{label}: {error.reason}.", name) from None


def _piece(case: ClothPicture, piece: Piece) -> None:
    """Floats of a piece, and what the wash takes of it: more where there are any."""
    picks, hem = int(piece.picks), int(case.hem)
    piece.floats, piece.from_left = floats_of_piece(piece.repeat, picks, hem, int(case.ends))
    piece.longest = _longest(case, piece)
    textured = max(piece.floats.warp, piece.floats.weft) > 1
    across, along = (
        case.maybe(ClothPicture.textured_width),
        case.maybe(ClothPicture.textured_length),
    )
    piece.across = across if textured and across is not None else case.shrink_width
    piece.along = along if textured and along is not None else case.shrink_length
    piece.stick_picks = stick_picks(piece.repeat, picks, hem)
    piece.changes = len(weft_runs(case, piece)) - 1


def _longest(case: ClothPicture, piece: Piece) -> Longest:
    floats = piece.floats
    kinds = (
        (floats.warp_face, False, "pick", "of warp", "on the face"),
        (floats.warp_back, False, "pick", "of warp", "on the back"),
        (floats.weft_face, True, "end", "of weft", "on the face"),
        (floats.weft_back, True, "end", "of weft", "on the back"),
        (floats.edge, True, "end", "of weft", "around an edge"),
    )
    spans = [float_span(kind[0], _lying_across(case, kind[1])) for kind in kinds]
    span = max(spans)
    threads, of_weft, one, what, where = kinds[spans.index(span)]
    words = f"{threads} {one}{'s' if threads > 1 else ''} {what} in {piece.name}, {where}"
    return Longest(span, threads, of_weft, words)


def _lying_across(case: ClothPicture, of_weft: bool) -> float:
    """Threads to the centimeter that a float passes over."""
    return case.ends_drawn_in if of_weft else case.beat


def _longest_float(case: ClothPicture) -> None:
    case.worst = max(range(len(case.pieces)), key=lambda place: case.pieces[place].longest.span)
    piece = case.pieces[case.worst]
    found = piece.longest
    case.where, case.longest = found.where, found.threads
    case.float_loom = float_span(case.longest, _lying_across(case, found.of_weft))
    case.float_washed = washed(case.float_loom, piece.across if found.of_weft else piece.along)


def _piece_looked_at(case: ClothPicture) -> None:
    piece, hem_beat = looked_at(case), case.maybe(ClothPicture.hem_beat)
    case.width_loom = width_on_loom(case.ends, case.sett, case.draw_in)
    case.length_loom = length_on_loom(piece.picks, case.beat, case.hem, hem_beat or 0.0)
    case.width_washed = washed(case.width_loom, piece.across)
    case.length_washed = washed(case.length_loom, piece.along)
    case.way = way_words(piece.repeat).capitalize()


def looked_at(case: ClothPicture) -> Piece:
    """The piece looked at."""
    piece: Piece = case.pieces[int(case.look) - 1]
    return piece


def _for_the_next_card(case: ClothPicture) -> None:
    case.number_of_pieces = len(case.pieces)
    case.mean_picks = round(case.picks / case.number_of_pieces)
    case.stick_share = 100 * total(piece.stick_picks for piece in case.pieces) / case.picks
    case.mean_changes = round(total(piece.changes for piece in case.pieces) / case.number_of_pieces)


def names_of(case: ClothPicture) -> tuple[str, ...]:
    """The yarns' names, as an order may call them."""
    return tuple(row.name for row in case.yarns)


def warp_runs(case: ClothPicture) -> list[tuple[int, int]]:
    """The warp as runs (yarn, ends) from the left."""
    order = read_order(case.warp, names_of(case))
    if case.turn == MIRROR:
        order = tuple(order[place] for place in there_and_back([count for _, count in order]))
    return merged(
        stripes([count for _, count in order], int(case.ends)), [yarn for yarn, _ in order]
    )


def weft_order(case: ClothPicture, piece: Piece) -> tuple[list[int], list[int]]:
    """The weft order of a piece: the yarn of each stripe, and its picks. One yarn alone is one
    stripe for the whole piece."""
    return _order(piece.weft, names_of(case), int(piece.picks))


def _order(weft: str, names: tuple[str, ...], picks: int) -> tuple[list[int], list[int]]:
    order = read_order(weft, names)
    yarns = [yarn for yarn, _ in order]
    if len(set(yarns)) == 1:
        return yarns[:1], [picks]
    return yarns, [count for _, count in order]


def hem_yarn_of(case: ClothPicture, piece: Piece) -> int:
    """The yarn of a piece's hems: the one given for hems, else its first weft."""
    return _first(_hems(case, piece), names_of(case))


def _hems(case: ClothPicture, piece: Piece) -> str:
    given = case.maybe(ClothPicture.hem_yarn)
    return given or piece.weft


def _first(order: str, names: tuple[str, ...]) -> int:
    return read_order(order, names)[0][0]


def weft_runs(case: ClothPicture, piece: Piece) -> tuple[tuple[int, int], ...]:
    """The weft of a piece as runs (yarn, picks), the first pick first."""
    hems = _hems(case, piece)
    return _weft_runs(piece.weft, hems, names_of(case), int(piece.picks), int(case.hem))


@lru_cache(256)
def _weft_runs(
    weft: str, hems: str, names: tuple[str, ...], picks: int, hem: int
) -> tuple[tuple[int, int], ...]:
    yarns, counts = _order(weft, names, picks)
    woven = [
        (len(yarns) if place == HEM else place, count)
        for place, count in weft_of(pick_list(counts, picks, hem))
    ]
    return tuple(merged(woven, [*yarns, _first(hems, names)]))
