"""The cloth seen before it is threaded: draw-down, colors, every piece of the warp, floats, and the pick list for the loom."""

from ...core.answer import Table
from ...core.card import CHOICE, COLOR, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.paper import Paper
from ...core.problem import Refused
from ...core.units import COUNT, LENGTH, PER_LENGTH, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, ISO_5077, TRADE_MEMORY
from ..draft.loom_words import settings_words, shed_rows, way_words
from ..draft.piece import float_length, floats_of_piece, length_on_loom, washed, width_on_loom
from ..draft.repeat import LARGEST
from ..draft.sheds import DOWN, EDGE, FLAT, UP, Lift, lifts_of, repeat_of_sheds
from ..draft.structures import ALL, OWN, structure
from ..pictures.cloth import pieces_picture, threads_picture
from ..pictures.drawdown import drawdown_picture
from ..pictures.run import EVERY, MIRROR, OTHER, cloths_of, color_rows, list_rows, yarns_of

REPEAT, SAME, LOOM, WASHED = "repeat", "same", "loom", "washed"


def answer(w, pieces, ends, sett, beat, draw_in, shrink_width, shrink_length, warp, turn, weft, hem, hem_yarn, hem_color, hem_beat, flag, look, state, take, leave, lifts):
    if look > len(pieces):
        raise Refused(f"Piece to look at: {look} given, but there {'is' if len(pieces) == 1 else 'are'} {len(pieces)}.", "look")
    own = _own(take, leave, lifts) if any(piece.structure == OWN for piece in pieces) else ()
    drawn_in = sett / (1 - draw_in / 100)
    repeats, found = [], []
    for number, piece in enumerate(pieces, 1):
        if 2 * hem >= piece.picks:
            raise Refused(f"Hems of {hem} picks: two of them leave nothing of the {piece.picks} picks of piece {number}; give fewer.", "hem")
        if not any(row.piece in (number, EVERY) for row in weft):
            raise Refused(f"Weft: piece {number} has none; give it a color, or one color to every piece (piece 0).", "weft.1.piece")
        repeats.append(own if piece.structure == OWN else structure(piece.structure).repeat)
        found.append(_worst(repeats[-1], piece, ends, hem, drawn_in, beat))
    worst = w.decide("worst", max(range(len(pieces)), key=lambda place: found[place][0]))
    loom, threads, of_weft, where = found[worst]
    shrink = _shrink(pieces[worst], shrink_width if of_weft else shrink_length, of_weft)
    w.step("float_loom", f"({threads} + 1) / ({'sett / (1 - draw_in / 100)' if of_weft else 'beat'})", loom, LENGTH, "cm", f"A float over {threads} threads spans one space more")
    float_washed = w.step("float_washed", f"float_loom * (1 - {_shrink_text(worst + 1, pieces[worst], of_weft)} / 100)", washed(loom, shrink), LENGTH, "cm", "The same once washed")
    piece = pieces[look - 1]
    width = w.step("width_loom", "ends / sett * (1 - draw_in / 100)", width_on_loom(ends, sett, draw_in), LENGTH, "cm", "Width on the loom, drawn in")
    hems = f" + 2 * hem / {'hem_beat' if hem_beat else 'beat'}" if hem else ""
    length = w.step("length_loom", f"(pieces[{look}].picks - 2 * hem) / beat{hems}", length_on_loom(piece.picks, beat, hem, hem_beat or 0.0), LENGTH, "cm", f"Length of piece {look} on the loom")
    width_washed = w.step("width_washed", f"width_loom * (1 - {_shrink_text(look, piece, True)} / 100)", washed(width, _shrink(piece, shrink_width, True)), LENGTH, "cm", "Its width once washed")
    length_washed = w.step("length_washed", f"length_loom * (1 - {_shrink_text(look, piece, False)} / 100)", washed(length, _shrink(piece, shrink_length, False)), LENGTH, "cm", "Its length once washed")
    picks = w.step("picks", "sum(pieces.picks)", sum(each.picks for each in pieces), COUNT, label="Picks in all")
    return {"where": where, "longest": threads, "float_loom": loom / 100, "float_washed": float_washed / 100, "width_loom": width / 100, "length_loom": length / 100,
            "width_washed": width_washed / 100, "length_washed": length_washed / 100, "picks": picks, "way": way_words(repeats[look - 1]).capitalize(),
            "repeats": repeats, "worst": worst, "long_pieces": [number for number, each in enumerate(found, 1) if each[0] > flag]}


def _own(take, leave, lifts):
    """The maker's own weave, from the stick and its sheds."""
    sheds = [Lift(row.shed, 1 if row.shed in (EDGE, FLAT) else 0) for row in lifts for _ in range(row.times)]
    if len(sheds) > LARGEST:
        raise Refused(f"Your own sheds: {len(sheds)} in one repeat; give up to {LARGEST}.", "lifts.1.times")
    return repeat_of_sheds(tuple(sheds), (("1" * take) + "0" * leave,))


def _worst(repeat, piece, ends, hem, drawn_in, beat):
    """The longest float of a piece: its length in cm on the loom, its threads, whether it is of weft, and where it is."""
    floats, _ = floats_of_piece(repeat, piece.picks, hem, ends)
    kinds = ((floats.warp_face, False, "picks of warp", "on the face"), (floats.warp_back, False, "picks of warp", "on the back"), (floats.weft_face, True, "ends of weft", "on the face"),
             (floats.weft_back, True, "ends of weft", "on the back"), (floats.edge, True, "ends of weft", "around an edge"))
    threads, of_weft, what, where = max(kinds, key=lambda kind: float_length(kind[0], drawn_in if kind[1] else beat))
    return float_length(threads, drawn_in if of_weft else beat), threads, of_weft, f"{threads} {what if threads > 1 else what.replace('s ', ' ', 1)} in {piece.name}, {where}"


def _shrink(piece, usual, across):
    own = piece.shrink_width if across else piece.shrink_length
    return usual if own is None else own


def _shrink_text(number, piece, across):
    name = "shrink_width" if across else "shrink_length"
    return name if getattr(piece, name) is None else f"pieces[{number}].{name}"


def say(r):
    flag = r.amount(r.given["flag"] / 100, LENGTH, "cm")
    over = r.value("float_loom") > r.given["flag"] / 100
    first = (f"Longest float: {r.value('where')}: about {r.text('float_loom')} on the loom, {r.text('float_washed')} once washed; "
             f"{'longer than' if over else 'within'} your {flag}.")
    piece = r.given["pieces"][r.given["look"] - 1]
    width, length = r.text("width_washed", "cm"), r.text("length_washed", "cm")
    return first, f"{piece.name} is about {width} wide and {length} long once washed; {r.value('way')[0].lower()}{r.value('way')[1:]}."


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


def whole(r):
    return pieces_picture(cloths_of(r.given, r.kept["repeats"]), yarns_of(r.given), r.given["look"] - 1)


def thread_by_thread(r):
    cloth = cloths_of(r.given, r.kept["repeats"])[r.given["look"] - 1]
    size, state = (cloth.washed, "washed") if r.given["state"] == WASHED else (cloth.loom, "on the loom")
    return threads_picture(cloth, yarns_of(r.given), size, f"{state}: {r.number(size[0], 1)} × {r.number(size[1], 1)} cm")


def _looked(r):
    """The piece looked at: its number, its row, its weave."""
    number = r.given["look"]
    return number, r.given["pieces"][number - 1], r.kept["repeats"][number - 1]


def drawdown(r):
    _, piece, repeat = _looked(r)
    return drawdown_picture("Your own weave" if piece.structure == OWN else structure(piece.structure).label, repeat)


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
        longest = max(float_length(floats.warp, r.given["beat"]), float_length(max(floats.weft, floats.edge), drawn_in))
        rows.append((f"{number} {piece.name}", f"{floats.warp_face}, {floats.warp_back}", f"{floats.weft_face}, {floats.weft_back}", str(floats.edge) if floats.edge else "bound",
                     r.amount(longest / 100, LENGTH, "cm", 2) + (" ▲" if longest > flag else "")))
    return Table("Longest floats, in threads", ("Piece", "Warp: face, back", "Weft: face, back", "Around an edge", "Longest, on the loom"), tuple(rows), "▲ longer than your limit.")


def colors(r):
    return Table("Threads by color", ("Yarn", "Ends", *(f"Picks, {number}" for number in range(1, len(r.given["pieces"]) + 1))), tuple(color_rows(r.given)))


def loom_list(r):
    """The pick list on paper, with a box for each time a block is woven."""
    number, piece, repeat = _looked(r)
    return [sheds(r), Table(f"{piece.name}, {piece.picks} picks", ("Picks", "Weft", "Sheds", "Done"), tuple(list_rows(r.given, number, repeat, boxes=True)))]


CLOTH = tuple(Option(each.key, each.label) for each in ALL) + (Option(OWN, "My own pick-up, given below"),)
SHED_OPTIONS = (Option(UP, "Heddle up"), Option(DOWN, "Heddle down"), Option(EDGE, "Heddle at rest, stick forward on edge"), Option(FLAT, "Heddle up, stick forward and flat"))
SHRINK = {"allowed": ("-20 %", "60 %"), "usual": ("0 %", "35 %")}

CARD = Card(
    id="cloth-picture", chapter="weave", place=30, tall_sheet=True,
    question="What will the cloth look like, and how do I weave it?",
    inputs=(
        Rows("pieces", "Pieces, in the order they are woven", "piece", least=1, most=12, measure="Leave shrinking blank where it is as below.",
             fields=(Input("name", TEXT, "Name", default="Another", longest=16), Input("structure", CHOICE, "Weave", default="plain", options=CLOTH),
                     Input("picks", COUNT, "Picks, with both hems", default="384", allowed=("2", "4000")),
                     Input("shrink_width", PERCENT, "It shrinks in width", rough="2 %", optional=True, **SHRINK), Input("shrink_length", PERCENT, "and in length", rough="2 %", optional=True, **SHRINK)),
             default=({"name": "Towel 1", "structure": "waffle"}, {"name": "Towel 2", "structure": "plain"}, {"name": "Towel 3", "structure": "weft-floats"},
                      {"name": "Towel 4", "structure": "lace"}, {"name": "Towel 5", "structure": "warp-floats"})),
        Input("ends", COUNT, "Ends in the warp", default="160", allowed=("4", "2000"), usual=("30", "800")),
        Input("sett", PER_LENGTH, "Ends in the heddle", default="4 per cm", allowed=("0.5 per cm", "40 per cm"), usual=("2 per cm", "12 per cm"), units=("per cm", "per in", "per 10 cm")),
        Input("beat", PER_LENGTH, "Picks on the loom", default="5 per cm", allowed=("0.5 per cm", "60 per cm"), usual=("2 per cm", "14 per cm"), rough="0.2 per cm", units=("per cm", "per in", "per 10 cm"),
              measure="Counted under tension."),
        Input("draw_in", PERCENT, "The cloth draws in by", default="6 %", allowed=("0 %", "60 %"), usual=("2 %", "15 %"), rough="2 %", measure="Of the width in the heddle."),
        Input("shrink_width", PERCENT, "The wash takes, of the width", default="14 %", rough="2 %", measure="Of the width off the loom.", **SHRINK),
        Input("shrink_length", PERCENT, "The wash takes, of the length", default="18 %", rough="2 %", measure="Of the length on the loom. Textured weaves take most: wash a sample.", **SHRINK),
        Rows("warp", "Warp, stripe by stripe from the left", "stripe", least=1, most=24, measure="Over and over until the ends are used up.",
             fields=(Input("name", TEXT, "Yarn", default="Natural", longest=16), Input("color", COLOR, "Color", default="#e6dcc3"), Input("ends", COUNT, "Ends", default="8", allowed=("1", "2000"))),
             default=({"name": "Natural", "color": "#e6dcc3", "ends": "10"}, {"name": "Slate", "color": "#3d4a5c", "ends": "4"}, {"name": "Natural", "color": "#e6dcc3", "ends": "4"},
                      {"name": "Slate", "color": "#3d4a5c", "ends": "4"}, {"name": "Natural", "color": "#e6dcc3", "ends": "10"})),
        Input("turn", CHOICE, "At the end of the stripes", default=REPEAT, options=(Option(REPEAT, "begin again from the first"), Option(MIRROR, "go back in mirror order"))),
        Rows("weft", "Weft, stripe by stripe", "stripe", least=1, most=40, measure="Piece 0 stands for every piece that has none of its own. Over and over until the piece is full.",
             fields=(Input("piece", COUNT, "Piece", default="0", allowed=("0", "12")), Input("name", TEXT, "Yarn", default="Natural", longest=16), Input("color", COLOR, "Color", default="#e6dcc3"),
                     Input("picks", COUNT, "Picks", default="8", allowed=("1", "4000"))),
             default=({"piece": "0", "name": "Natural", "color": "#e6dcc3", "picks": "24"}, {"piece": "0", "name": "Rust", "color": "#9c4a2b", "picks": "6"},
                      {"piece": "2", "name": "Natural", "color": "#e6dcc3", "picks": "20"}, {"piece": "2", "name": "Slate", "color": "#3d4a5c", "picks": "4"},
                      {"piece": "2", "name": "Natural", "color": "#e6dcc3", "picks": "4"}, {"piece": "2", "name": "Slate", "color": "#3d4a5c", "picks": "4"})),
        Input("hem", COUNT, "Picks of each hem", default="24", allowed=("0", "400"), usual=("0", "80"), measure="Plain weave at both ends of each piece; 0 for none."),
        Input("hem_yarn", CHOICE, "The hems are woven in", default=SAME, options=(Option(SAME, "the first weft of the piece"), Option(OTHER, "a yarn of their own"))),
        Input("hem_color", COLOR, "Color of the hems", default="#f2ede0", when={"hem_yarn": (OTHER,)}),
        Input("hem_beat", PER_LENGTH, "Picks in the hems", default="7 per cm", allowed=("0.5 per cm", "80 per cm"), usual=("2 per cm", "25 per cm"), units=("per cm", "per in", "per 10 cm"), optional=True,
              when={"hem_yarn": (OTHER,)}, measure="A finer yarn packs closer; blank as the cloth."),
        Input("flag", LENGTH, "Say so when a float is longer than", default="1 cm", allowed=("0.1 cm", "30 cm"), usual=("0.4 cm", "3 cm"), units=("cm", "in"), unit="cm",
              measure="Common practice: about 1 cm where rings and buttons catch."),
        Input("look", COUNT, "Piece to look at", default="1", allowed=("1", "12")),
        Input("state", CHOICE, "Show it", default=WASHED, options=(Option(WASHED, "washed"), Option(LOOM, "on the loom"))),
        Input("take", COUNT, "Own pick-up: the stick takes up", default="1", allowed=("1", "16"), measure="Ends in slots, heddle down, from the left."),
        Input("leave", COUNT, "and leaves", default="1", allowed=("1", "16")),
        Rows("lifts", "Own pick-up: sheds of one repeat", "shed", least=1, most=24, measure="Only for a piece with a weave of your own.",
             fields=(Input("shed", CHOICE, "Shed", default=UP, options=SHED_OPTIONS), Input("times", COUNT, "Times", default="1", allowed=("1", "12"))),
             default=({"shed": EDGE}, {"shed": UP}, {"shed": EDGE}, {"shed": DOWN})),
    ),
    results=(
        Result("where", TEXT, "Longest float"),
        Result("longest", COUNT, "Threads under it"),
        Result("float_loom", LENGTH, "Its length on the loom", units=("cm", "in"), finest=(0.1, 0.05), floor=0.0),
        Result("float_washed", LENGTH, "Its length once washed", units=("cm", "in"), finest=(0.1, 0.05), floor=0.0),
        Result("width_loom", LENGTH, "Width on the loom, drawn in", units=("cm", "in"), finest=(0.1, 0.05), floor=0.0),
        Result("length_loom", LENGTH, "Length of this piece on the loom", units=("cm", "in"), finest=(0.1, 0.05), floor=0.0),
        Result("width_washed", LENGTH, "Its width once washed", units=("cm", "in"), finest=(0.1, 0.05), rounding="down", floor=0.0),
        Result("length_washed", LENGTH, "Its length once washed", units=("cm", "in"), finest=(0.1, 0.05), rounding="down", floor=0.0),
        Result("picks", COUNT, "Picks in all pieces"),
        Result("way", TEXT, "On a rigid heddle"),
    ),
    answer=answer, say=say, notes=notes, pictures=(whole, thread_by_thread, drawdown), tables=(sheds, picks, every_piece, colors), papers=(Paper("Pick list, A5", "A5", loom_list),),
    basis=Basis(MODEL, "The draw-down is the weave’s definition, and every float in it is counted, the weft as one thread that goes to and fro. Sizes are threads over threads per cm, less draw-in, less shrinkage, each divided out "
                       "in its own place. Colors on a screen are an estimate."),
    sources=(COMMON_PRACTICE, ARITHMETIC, ISO_5077, TRADE_MEMORY),
    cautions=(Caution("A picture is no sample.", "Floats gather the cloth as it is washed: waffle takes far more than plain weave. Weave, wash and measure a hand’s width before the run."),),
    carry=(Carry("weft-left", "What does the rest of a ball weave?", {"beat": "beat", "hem": "hem"}), Carry("weave-pace", "How long will it take?", {"ends": "ends"})),
)
