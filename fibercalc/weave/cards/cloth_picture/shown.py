"""A cloth shown: its pieces, its threads, its draw-down; and the lists to weave it from."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.paper import Paper
from ....core.units import LENGTH
from ...draft.loom_words import begins_with, block_words, settings_words, shed_rows, sheds_in_turn
from ...draft.order import letter, threads_by_stripe
from ...draft.piece import HEM, length_on_loom, pick_list, sections_of, washed
from ...draft.sheds import lifts_of
from ...draft.structures import OWN, structure
from ...pictures.cloth import Cloth, pieces_picture, threads_picture
from ...pictures.drawdown import drawdown_picture
from ...pictures.key import Yarn
from .asked import WASHED, ClothPicture, Piece
from .worked import hem_yarn_of, looked_at, warp_runs, weft_order, weft_runs

OWN_NAME = "Own weave"
MOST_BOXES = 24


def yarns_of(case: ClothPicture) -> list[Yarn]:
    """The yarns of the run, with their letters."""
    return [
        Yarn(f"{letter(place)} {row.name}", row.color.hex) for place, row in enumerate(case.yarns)
    ]


def cloths_of(case: ClothPicture) -> list[Cloth]:
    """Each piece, ready to be drawn."""
    return [_cloth(case, piece) for piece in case.pieces]


def _cloth(case: ClothPicture, piece: Piece) -> Cloth:
    hem_beat = case.maybe(ClothPicture.hem_beat) or 0.0
    length = length_on_loom(piece.picks, case.beat, case.hem, hem_beat)
    return Cloth(
        piece.name,
        sections_of(piece.repeat, piece.picks, case.hem),
        tuple(warp_runs(case)),
        weft_runs(case, piece),
        (case.width_loom, length),
        (washed(case.width_loom, piece.across), washed(length, piece.along)),
    )


def _unit(out: Outcome[ClothPicture]) -> str:
    """Centimeters, or inches for those who work in them."""
    return out.units(ClothPicture.float_loom)[0].sign


def whole(out: Outcome[ClothPicture]) -> Picture | None:
    case = out.case
    return pieces_picture(cloths_of(case), yarns_of(case), case.look - 1, _unit(out))


def thread_by_thread(out: Outcome[ClothPicture]) -> Picture | None:
    cloth, unit = _cloth(out.case, looked_at(out.case)), LENGTH.unit(_unit(out))
    size, state = (
        (cloth.washed, "washed") if out.case.state == WASHED else (cloth.loom, "on the loom")
    )
    sides = " × ".join(out.number(unit.from_base(side / 100), 1) for side in size)
    return threads_picture(cloth, yarns_of(out.case), size, f"{state}: {sides} {unit.sign}")


def drawdown(out: Outcome[ClothPicture]) -> Picture | None:
    piece = looked_at(out.case)
    return drawdown_picture(_weave(piece), piece.repeat)


def _weave(piece: Piece) -> str:
    return OWN_NAME if piece.structure == OWN else structure(piece.structure).label


def sheds(out: Outcome[ClothPicture]) -> Table:
    piece = looked_at(out.case)
    return Table(
        f"Sheds of {piece.name}, over and over",
        ("Shed", "Heddle", "Stick"),
        tuple(shed_rows(piece.repeat)),
        settings_words(lifts_of(piece.repeat).settings),
    )


def picks(out: Outcome[ClothPicture]) -> Table | None:
    piece = looked_at(out.case)
    return Table(
        f"Pick list of {piece.name}, {piece.picks} picks",
        ("Picks", "Weft", "Sheds"),
        tuple(_list_rows(out.case, piece)),
    )


def _list_rows(case: ClothPicture, piece: Piece, boxes: bool = False) -> list[tuple[str, ...]]:
    """The pick list of a piece: picks, weft, sheds; with boxes to tick, one for each time over."""
    yarns, counts = weft_order(case, piece)
    size, called = len(piece.repeat), [yarn.name for yarn in yarns_of(case)]
    names = {place: called[yarn] for place, yarn in enumerate(yarns)} | {
        HEM: f"{called[hem_yarn_of(case, piece)]}, hem"
    }
    sections = sections_of(piece.repeat, piece.picks, case.hem)
    written: list[tuple[str, ...]] = []
    done, woven = 0, 0
    for block in pick_list(counts, piece.picks, case.hem):
        if block.runs[0][0] == HEM:
            words = f"plain weave, heddle {begins_with(sections[-1 if done else 0].repeat)} first"
        else:
            words = (
                f"goes on with {woven % size + 1}" if woven else sheds_in_turn(block.picks, size)
            )
            woven += block.picks
        line = (
            f"{done + 1} to {done + block.picks}",
            block_words(block.times, block.runs, names),
            words,
        )
        written.append((*line, _boxes(min(block.times, MOST_BOXES))) if boxes else line)
        done += block.picks
    return written


def _boxes(count: int) -> str:
    """Boxes to tick, in fives: easy to count, and the line can break between them."""
    return " ".join("☐" * min(5, count - first) for first in range(0, count, 5))


def every_piece(out: Outcome[ClothPicture]) -> Table | None:
    rows = []
    for number, piece in enumerate(out.case.pieces, 1):
        floats, longest = piece.floats, piece.longest.span
        rows.append(
            (
                f"{number} {piece.name}",
                f"{floats.warp_face}, {floats.warp_back}",
                f"{floats.weft_face}, {floats.weft_back}",
                str(floats.edge) if floats.edge else "–",
                out.amount(longest / 100, LENGTH, _unit(out), 2)
                + (" ▲" if longest > out.case.flag else ""),
            )
        )
    return Table(
        "Longest floats, threads on face and back",
        ("Piece", "Warp", "Weft", "Edge", "Longest"),
        tuple(rows),
        "Edge: where the weft turns without catching the outermost end. Longest: on the loom; ▲"
        " longer than your limit.",
    )


def colors(out: Outcome[ClothPicture]) -> Table | None:
    return Table(
        "Threads by color",
        ("Threads", "By color", "In all"),
        tuple(_color_rows(out.case)),
        _yarn_names(out.case),
    )


def _yarn_names(case: ClothPicture) -> str:
    return f"{', '.join(yarn.name for yarn in yarns_of(case))}."


def _color_rows(case: ClothPicture) -> list[tuple[str, ...]]:
    """Threads of each yarn by its letter and in all: of the warp, of each piece, of all pieces."""
    size = len(case.yarns)
    pieces = [threads_by_stripe(weft_runs(case, piece), size) for piece in case.pieces]
    counts = [("Warp, ends", threads_by_stripe(warp_runs(case), size))]
    counts += [
        (f"{number} {piece.name}, picks", each)
        for number, (piece, each) in enumerate(zip(case.pieces, pieces), 1)
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


def _loom_list(out: Outcome[ClothPicture]) -> list[Table]:
    """The pick list on paper, with a box for each time a block is woven."""
    piece = looked_at(out.case)
    return [
        sheds(out),
        Table(
            f"{piece.name}, {piece.picks} picks",
            ("Picks", "Weft", "Sheds", "Done"),
            tuple(_list_rows(out.case, piece, boxes=True)),
        ),
    ]


def _run_list(out: Outcome[ClothPicture]) -> list[Table]:
    """Every piece of the run on one paper, each with its own weft; the yarns stand below."""
    return [
        Table(
            f"All pieces, {out.number(out.case.picks)} picks",
            ("Piece", "Weave", "Picks, hem to hem", "Done"),
            tuple(_run_row(out.case, number) for number in range(1, len(out.case.pieces) + 1)),
            _yarn_names(out.case),
        )
    ]


def _run_row(case: ClothPicture, number: int) -> tuple[str, ...]:
    """A piece in a line, its yarns by letter: weave, weft from hem to hem, a box to tick."""
    piece = case.pieces[number - 1]
    yarns, counts = weft_order(case, piece)
    names = {place: letter(yarn) for place, yarn in enumerate(yarns)} | {
        HEM: f"{letter(hem_yarn_of(case, piece))} hem"
    }
    weft = "; ".join(
        block_words(block.times, block.runs, names)
        for block in pick_list(counts, piece.picks, case.hem)
    )
    return f"{number} {piece.name}", _weave(piece), weft, "☐"


PAPERS = (Paper("Pick list, A5", "A5", _loom_list), Paper("All pieces, A5", "A5", _run_list))
