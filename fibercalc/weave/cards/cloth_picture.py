"""The cloth seen before it is threaded: draw-down, colors, every piece of the warp, floats, and the pick list for the loom."""

from ...core.answer import Table
from ...core.card import CHOICE, COLOR, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.paper import Paper
from ...core.problem import OutOfRange, Refused
from ...core.units import COUNT, LENGTH, PER_LENGTH, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, ISO_5077, TRADE_MEMORY
from ..draft.loom_words import settings_words, shed_rows, way_words
from ..draft.order import read_order
from ..draft.piece import float_span, floats_of_piece, length_on_loom, washed, width_on_loom
from ..draft.sheds import lifts_of, read_sheds, repeat_of_sheds
from ..draft.structures import ALL, OWN, structure
from ..pictures.cloth import pieces_picture, threads_picture
from ..pictures.drawdown import drawdown_picture
from ..pictures.onward import cloth_changes, cloth_count, cloth_picks, cloth_stick_share
from ..pictures.run import MIRROR, cloths_of, color_rows, list_rows, run_rows, yarns_of

REPEAT, LOOM, WASHED = "repeat", "loom", "washed"
OWN_NAME = "Own weave"


def answer(w, yarns, pieces, ends, warp, turn, sett, beat, draw_in, shrink_width, shrink_length, textured_width, textured_length, hem, hem_yarn, hem_beat, flag, look, state, take, leave, sheds):
    names = tuple(row.name for row in yarns)
    _read("Warp", "warp", read_order, warp, names)
    if hem_yarn:
        _read("Yarn of the hems", "hem_yarn", read_order, hem_yarn, names)
    if look > len(pieces):
        raise Refused(f"Piece to look at: {look} given, but there {'is' if len(pieces) == 1 else 'are'} {len(pieces)}.", "look")
    own = repeat_of_sheds(_read("Own pick-up", "sheds", read_sheds, sheds), ("1" * take + "0" * leave,))
    drawn_in = sett / (1 - draw_in / 100)
    repeats, found, shrinks = [], [], []
    for number, piece in enumerate(pieces, 1):
        if 2 * hem >= piece.picks:
            raise Refused(f"Hems of {hem} picks: two of them leave nothing of the {piece.picks} picks of piece {number}; give fewer.", "hem")
        _read(f"Weft of piece {number}", f"pieces.{number}.weft", read_order, piece.weft, names)
        repeats.append(own if piece.structure == OWN else structure(piece.structure).repeat)
        floats, _ = floats_of_piece(repeats[-1], piece.picks, hem, ends)
        found.append(_worst(floats, piece.name, drawn_in, beat))
        shrinks.append(tuple("textured_" + side if max(floats.warp, floats.weft) > 1 and own_way is not None else "shrink_" + side for side, own_way in (("width", textured_width), ("length", textured_length))))
    percents = {"shrink_width": shrink_width, "shrink_length": shrink_length, "textured_width": textured_width, "textured_length": textured_length}
    worst = w.decide("worst", max(range(len(pieces)), key=lambda place: found[place][0]))
    loom, threads, of_weft, where = found[worst]
    way = shrinks[worst][0 if of_weft else 1]
    w.step("longest_float", f"({threads} + 1) / ({'sett / (1 - draw_in / 100)' if of_weft else 'beat'})", loom, LENGTH, "cm", f"A float over {threads} threads spans one space more")
    float_washed = w.step("float_washed", f"longest_float * (1 - {way} / 100)", washed(loom, percents[way]), LENGTH, "cm", "The same once washed")
    piece, (across, along) = pieces[look - 1], shrinks[look - 1]
    width = w.step("width_loom", "ends / sett * (1 - draw_in / 100)", width_on_loom(ends, sett, draw_in), LENGTH, "cm", "Width on the loom, drawn in")
    hems = f" + 2 * hem / {'hem_beat' if hem_beat else 'beat'}" if hem else ""
    length = w.step("length_loom", f"(pieces[{look}].picks - 2 * hem) / beat{hems}", length_on_loom(piece.picks, beat, hem, hem_beat or 0.0), LENGTH, "cm", f"Length of piece {look} on the loom")
    width_washed = w.step("width_washed", f"width_loom * (1 - {across} / 100)", washed(width, percents[across]), LENGTH, "cm", "Its width once washed")
    length_washed = w.step("length_washed", f"length_loom * (1 - {along} / 100)", washed(length, percents[along]), LENGTH, "cm", "Its length once washed")
    picks = w.step("picks", "sum(pieces.picks)", sum(each.picks for each in pieces), COUNT, label="Picks in all")
    return {"where": where, "longest": threads, "float_loom": loom / 100, "float_washed": float_washed / 100, "width_loom": width / 100, "length_loom": length / 100,
            "width_washed": width_washed / 100, "length_washed": length_washed / 100, "picks": picks, "way": way_words(repeats[look - 1]).capitalize(), "repeats": repeats,
            "shrinks": [tuple(percents[name] for name in pair) for pair in shrinks], "long_pieces": [number for number, each in enumerate(found, 1) if each[0] > flag]}


def _read(label, name, reader, *given):
    """What a text says; what it cannot say is one line about that input."""
    try:
        return reader(*given)
    except OutOfRange as error:
        raise Refused(f"{label}: {error.reason}.", name) from None


def _worst(floats, name, drawn_in, beat):
    """The longest float of a piece: its length in cm on the loom, its threads, whether it is of weft, and where it is."""
    kinds = ((floats.warp_face, False, "pick", "of warp", "on the face"), (floats.warp_back, False, "pick", "of warp", "on the back"), (floats.weft_face, True, "end", "of weft", "on the face"),
             (floats.weft_back, True, "end", "of weft", "on the back"), (floats.edge, True, "end", "of weft", "around an edge"))
    threads, of_weft, one, what, where = max(kinds, key=lambda kind: float_span(kind[0], drawn_in if kind[1] else beat))
    return float_span(threads, drawn_in if of_weft else beat), threads, of_weft, f"{threads} {one}{'s' if threads > 1 else ''} {what} in {name}, {where}"


def say(r):
    piece, way = r.given["pieces"][r.given["look"] - 1], r.value("way")
    first = f"{piece.name} is about {r.text('width_washed')} wide and {r.text('length_washed')} long once washed; {way[0].lower()}{way[1:]}."
    flag = r.amount(r.given["flag"] / 100, LENGTH, _unit(r), 3)
    over = r.value("float_loom") > r.given["flag"] / 100
    return first, f"Longest float: {r.value('where')}, about {r.text('float_loom')} on the loom, {'longer than' if over else 'within'} your {flag}."


def notes(r):
    said = []
    numbers = r.kept["long_pieces"]
    if len(numbers) > 1:
        said.append(f"Longer than your limit: pieces {', '.join(map(str, numbers))}.")
    _, piece, repeat = _looked(r)
    floats, from_left = floats_of_piece(repeat, piece.picks, r.given["hem"], r.given["ends"])
    if floats.missed:
        said.append(f"{piece.name}: at {floats.missed} of {floats.turns} turns the weft does not catch the outermost end, first pick from the {'left' if from_left else 'right'} (the better side). "
                    "Take the weft around that end by hand, or hang one more end at each edge, in no slot or hole, and go around it.")
    elif not from_left:
        said.append(f"{piece.name}: throw the first pick from the right, and every turn catches the outermost end.")
    lifts = lifts_of(repeat)
    if lifts.by_hand:
        said.append("In a rigid heddle the ends in holes rise and fall all together. A weave that parts them asks for a second heddle, for shafts, or for picking up each such pick by hand in front of the heddle.")
    return said


def _unit(r):
    """Centimeters, or inches for those who work in them."""
    return r.units("float_loom")[0].sign


def whole(r):
    return pieces_picture(cloths_of(r.given, r.kept["repeats"], r.kept["shrinks"]), yarns_of(r.given), r.given["look"] - 1, _unit(r))


def thread_by_thread(r):
    cloth = cloths_of(r.given, r.kept["repeats"], r.kept["shrinks"])[r.given["look"] - 1]
    size, state = (cloth.washed, "washed") if r.given["state"] == WASHED else (cloth.loom, "on the loom")
    return threads_picture(cloth, yarns_of(r.given), size, f"{state}: {' × '.join(r.number(LENGTH.unit(_unit(r)).from_base(side / 100), 1) for side in size)} {_unit(r)}")


def _looked(r):
    """The piece looked at: its number, its row, its weave."""
    number = r.given["look"]
    return number, r.given["pieces"][number - 1], r.kept["repeats"][number - 1]


def drawdown(r):
    _, piece, repeat = _looked(r)
    return drawdown_picture(OWN_NAME if piece.structure == OWN else structure(piece.structure).label, repeat)


def sheds(r):
    _, piece, repeat = _looked(r)
    return Table(f"Sheds of {piece.name}, over and over", ("Shed", "Heddle", "Stick"), tuple(shed_rows(repeat)), settings_words(lifts_of(repeat).settings))


def picks(r):
    number, piece, repeat = _looked(r)
    return Table(f"Pick list of {piece.name}, {piece.picks} picks", ("Picks", "Weft", "Sheds"), tuple(list_rows(r.given, number, repeat)))


def every_piece(r):
    drawn_in, flag = r.given["sett"] / (1 - r.given["draw_in"] / 100), r.given["flag"]
    rows = []
    for number, (piece, repeat) in enumerate(zip(r.given["pieces"], r.kept["repeats"]), 1):
        floats, _ = floats_of_piece(repeat, piece.picks, r.given["hem"], r.given["ends"])
        longest = max(float_span(floats.warp, r.given["beat"]), float_span(max(floats.weft, floats.edge), drawn_in))
        rows.append((f"{number} {piece.name}", f"{floats.warp_face}, {floats.warp_back}", f"{floats.weft_face}, {floats.weft_back}", str(floats.edge) if floats.edge else "–",
                     r.amount(longest / 100, LENGTH, _unit(r), 2) + (" ▲" if longest > flag else "")))
    return Table("Longest floats, threads on face and back", ("Piece", "Warp", "Weft", "Edge", "Longest"), tuple(rows),
                 "Edge: where the weft turns without catching the outermost end. Longest: on the loom; ▲ longer than your limit.")


def colors(r):
    names = ", ".join(yarn.name for yarn in yarns_of(r.given))
    return Table("Threads by color", ("Threads", "By color", "In all"), tuple(color_rows(r.given)), f"{names}.")


def loom_list(r):
    """The pick list on paper, with a box for each time a block is woven."""
    number, piece, repeat = _looked(r)
    return [sheds(r), Table(f"{piece.name}, {piece.picks} picks", ("Picks", "Weft", "Sheds", "Done"), tuple(list_rows(r.given, number, repeat, boxes=True)))]


def run_list(r):
    """Every piece of the run on one paper, each with its own weft; the yarns stand below."""
    weaves = [OWN_NAME if piece.structure == OWN else structure(piece.structure).label for piece in r.given["pieces"]]
    yarns = ", ".join(yarn.name for yarn in yarns_of(r.given))
    return [Table(f"All pieces, {r.number(r.value('picks'))} picks", ("Piece", "Weave", "Picks, hem to hem", "Done"), tuple(run_rows(r.given, weaves)), f"{yarns}.")]


CLOTH = tuple(Option(each.key, each.label) for each in ALL) + (Option(OWN, "My own pick-up, given below"),)
SHRINK = {"allowed": ("-20 %", "60 %"), "usual": ("0 %", "35 %")}

CARD = Card(
    id="cloth-picture", chapter="weave", place=30, tall_sheet=True,
    question="What will the cloth look like, and how do I weave it?",
    inputs=(
        Rows("yarns", "Yarns of warp and weft", "yarn", least=1, most=14, measure="The first is A, the next B, and so on.",
             fields=(Input("name", TEXT, "Name", default="Another", longest=16, lent=False), Input("color", COLOR, "Color", default="#8a8f6a")),
             default=({"name": "Natural", "color": "#e6dcc3"}, {"name": "Slate", "color": "#3d4a5c"}, {"name": "Rust", "color": "#9c4a2b"})),
        Rows("pieces", "Pieces, in the order they are woven", "piece", least=1, most=12,
             fields=(Input("name", TEXT, "Name", default="Another", longest=16, lent=False), Input("structure", CHOICE, "Weave", default="plain", options=CLOTH),
                     Input("picks", COUNT, "Picks, with both hems", default="384", allowed=("2", "4000")),
                     Input("weft", TEXT, "Weft, stripe by stripe", default="A", longest=60, measure="Picks and yarn, over and over: 24 A, 6 C.", lent=False)),
             default=({"name": "Towel 1", "structure": "waffle", "weft": "24 A, 6 C"}, {"name": "Towel 2", "structure": "plain", "weft": "20 A, 4 B, 4 A, 4 B"}, {"name": "Towel 3", "structure": "weft-floats", "weft": "C"},
                      {"name": "Towel 4", "structure": "lace", "weft": "A"}, {"name": "Towel 5", "structure": "warp-floats", "weft": "40 A, 8 B"})),
        Input("ends", COUNT, "Ends in the warp", default="160", allowed=("4", "2000"), usual=("30", "800")),
        Input("warp", TEXT, "Warp, stripe by stripe from the left", default="10 A, 4 B, 4 A, 4 B, 10 A", longest=60, measure="Ends and yarn, over and over until the ends are used up.", lent=False),
        Input("turn", CHOICE, "At the end of the stripes", default=REPEAT, options=(Option(REPEAT, "begin again from the first"), Option(MIRROR, "go back in mirror order"))),
        Input("sett", PER_LENGTH, "Ends in the heddle", default="4 per cm", allowed=("0.5 per cm", "40 per cm"), usual=("2 per cm", "12 per cm"), units=("per cm", "per in", "per 10 cm")),
        Input("beat", PER_LENGTH, "Picks on the loom", default="5 per cm", allowed=("0.5 per cm", "60 per cm"), usual=("2 per cm", "14 per cm"), rough="0.2 per cm", units=("per cm", "per in", "per 10 cm"),
              measure="Counted under tension."),
        Input("draw_in", PERCENT, "The cloth draws in by", default="6 %", allowed=("0 %", "60 %"), usual=("2 %", "15 %"), rough="2 %", measure="Of the width in the heddle."),
        Input("shrink_width", PERCENT, "The wash takes, of the width", record="measurement.width_change", default="14 %", rough="2 %", measure="Of the width off the loom.", **SHRINK),
        Input("shrink_length", PERCENT, "The wash takes, of the length", record="measurement.length_change", default="18 %", rough="2 %", measure="Of the length on the loom.", **SHRINK),
        Input("textured_width", PERCENT, "Pieces with floats: of the width", rough="3 %", optional=True, measure="Waffle and lace shrink more than plain weave: wash a sample. Blank as above.", **SHRINK),
        Input("textured_length", PERCENT, "and of the length", rough="3 %", optional=True, **SHRINK),
        Input("hem", COUNT, "Picks of each hem", default="24", allowed=("0", "400"), usual=("0", "80"), measure="Plain weave at both ends of each piece; 0 for none."),
        Input("hem_yarn", TEXT, "Yarn of the hems", optional=True, longest=16, measure="Its letter; blank for the piece’s first weft."),
        Input("hem_beat", PER_LENGTH, "Picks in the hems", allowed=("0.5 per cm", "80 per cm"), usual=("2 per cm", "25 per cm"), units=("per cm", "per in", "per 10 cm"), optional=True,
              measure="A finer yarn packs closer; blank as the cloth."),
        Input("flag", LENGTH, "Say so when a float is longer than", default="1 cm", allowed=("0.1 cm", "30 cm"), usual=("0.4 cm", "3 cm"), units=("cm", "in"), unit="cm",
              measure="Common practice: about 1 cm where rings and buttons catch."),
        Input("look", COUNT, "Piece to look at", default="1", allowed=("1", "12")),
        Input("state", CHOICE, "Show it", default=WASHED, options=(Option(WASHED, "washed"), Option(LOOM, "on the loom"))),
        Input("take", COUNT, "Own pick-up: the stick takes up", default="1", allowed=("1", "16"), measure="Ends in slots, heddle down, from the left."),
        Input("leave", COUNT, "and leaves", default="1", allowed=("1", "16")),
        Input("sheds", TEXT, "Own pick-up: sheds of one repeat", default="e u e u e d", longest=60, measure="Up, down, edge (stick on edge), flat (up, stick flat), or their first letters.", lent=False),
    ),
    results=(
        Result("where", TEXT, "Longest float"),
        Result("longest", COUNT, "Threads under it"),
        Result("float_loom", LENGTH, "Its length on the loom", units=("cm", "in"), finest=(0.1, 0.05), floor=0.0),
        Result("float_washed", LENGTH, "Its length once washed", units=("cm", "in"), finest=(0.1, 0.05), floor=0.0),
        Result("width_loom", LENGTH, "Width on the loom, drawn in", units=("cm", "in"), finest=(0.1, 0.05), floor=0.0),
        Result("length_loom", LENGTH, "Length of this piece on the loom", units=("cm", "in"), finest=(0.1, 0.05), floor=0.0),
        Result("width_washed", LENGTH, "Its width once washed", units=("cm", "in"), finest=(0.1, 0.05), floor=0.0),
        Result("length_washed", LENGTH, "Its length once washed", units=("cm", "in"), finest=(0.1, 0.05), floor=0.0),
        Result("picks", COUNT, "Picks in all pieces"),
        Result("way", TEXT, "On a rigid heddle"),
    ),
    answer=answer, say=say, notes=notes, pictures=(whole, thread_by_thread, drawdown), tables=(sheds, picks, every_piece, colors), papers=(Paper("Pick list, A5", "A5", loom_list), Paper("All pieces, A5", "A5", run_list)),
    basis=Basis(MODEL, "The draw-down is the weave’s definition, and every float in it is counted, the weft as one thread that goes to and fro. Sizes are threads over threads per cm, less draw-in, less shrinkage, each divided out "
                       "in its own place. Colors on a screen are an estimate."),
    sources=(COMMON_PRACTICE, ARITHMETIC, ISO_5077, TRADE_MEMORY),
    cautions=(Caution("A picture is no sample.", "Floats gather the cloth as it is washed: waffle takes far more than plain weave. Weave, wash and measure a hand’s width before the run."),),
    carry=(Carry("weft-left", "What does the rest of a ball weave?", {"beat": "beat", "hem": "hem", "shrink": "shrink_length", "pieces": cloth_count, "piece_picks": cloth_picks}),
           Carry("weave-pace", "How long will it take?", {"ends": "ends", "pieces": cloth_count, "piece_picks": cloth_picks, "stick_share": cloth_stick_share, "changes": cloth_changes})),
)
