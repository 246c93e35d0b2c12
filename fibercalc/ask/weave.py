"""The cards of the chapter weave as functions; written from them by `make answers`.

Values, what is left out, and what comes back are told in `fibercalc.ask`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal, TypedDict

from . import EXAMPLE, Number, ask

if TYPE_CHECKING:
    from ..answered import Answer

__all__ = ["cloth_picture", "sett", "warp_plan", "weave_pace", "weft_left"]


class SettHeddle(TypedDict, total=False):
    """Heddle of `sett`: a row of its own."""

    dents: Number


def sett(
    *,
    by: Literal["ashenhurst", "peirce", "packed"] = EXAMPLE,
    count: Number = EXAMPLE,
    kind: Literal["cotton", "worsted", "woolen", "soft-woolen", "cotton-taylor"] = EXAMPLE,
    wraps: Number = EXAMPLE,
    known_count: Number | None = EXAMPLE,
    weave: Literal[
        "plain",
        "twill-2-1",
        "twill-2-2",
        "twill-3-1",
        "basket-2-2",
        "satin-5",
        "satin-8",
        "waffle",
        "floats",
        "lace",
    ] = EXAMPLE,
    use: Literal["lace", "scarf", "cloth", "firm", "weft-faced"] = EXAMPLE,
    picks: Number | None = EXAMPLE,
    on: Literal["rigid", "reed"] = EXAMPLE,
    made: Literal["metric", "inch", "own"] = EXAMPLE,
    own: list[SettHeddle] = EXAMPLE,
) -> Answer:
    """How closely do I set this yarn, and on which heddle?

    Args:
        by: Thickness from. One of ashenhurst (Length and weight, by the kind of yarn
            (Ashenhurst)), peirce (Length and weight, cotton (Peirce)), packed (A close-packed
            wrap); example ashenhurst.
        count: Count of the yarn. Yarn count, m/100 g; 0.5 tex to 50000 tex; example 170 m/100 g.
            Asked where by is ashenhurst or peirce.
        kind: Kind of yarn. One of cotton (Cotton, linen, silk), worsted, woolen, soft-woolen
            (Woolen, soft and lofty), cotton-taylor (Cotton, as Taylor prints it (less 5
            percent)); example cotton. Asked where by is ashenhurst.
        wraps: Turns pushed together. Count per length, per in; 1 per in to 300 per in; example 25
            per in. Asked where by is packed.
        known_count: Its count, to test the wraps. Yarn count, m/100 g; 0.5 tex to 50000 tex;
            example 170 m/100 g. None leaves it open. Asked where by is packed.
        weave: Weave. One of plain (Plain weave), twill-2-1 (2/1 twill), twill-2-2 (2/2 twill),
            twill-3-1 (3/1 twill), basket-2-2 (2/2 basket (hopsack)), satin-5 (5-end satin),
            satin-8 (8-end satin), waffle, floats (Floats by a pick-up stick), lace (Lace-like
            skips); example plain.
        use: For. One of lace (Lace or gauze), scarf (Scarf or shawl), cloth (Towels, general
            cloth), firm (Bags, upholstery), weft-faced (Weft-faced, a rug or band); example
            cloth.
        picks: Picks, as you beat. Count per length, per cm; 0.2 per cm to 60 per cm; example 5
            per cm. None leaves it open.
        on: Set in. One of rigid (A rigid heddle), reed (A reed); example rigid.
        made: At hand. One of metric (The usual metric ones), inch (The usual inch ones), own (My
            own); example metric.
        own: My own, 1 to 10 rows. Asked where made is own.
            - dents: Dents. Count per length, per 10 cm; 1 per in to 60 per in; example 30 per 10
              cm.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - working: Working sett, per cm.
        - threading: Nearest at hand, in words.
        - sett: Ends that it gives, per cm.
        - closest: Closest sett, per cm.
        - closeness: Of the closest, %.
        - diameters: Diameters side by side, per cm.
        - balance: Picks for each end.
        - cover: Covered by thread, %.
        - most_picks: Picks when it jams, per cm.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        T. R. Ashenhurst, Diameters per inch from yards per pound, as quoted by trade pages.
        Two trade pages quoting Ashenhurst: closest sett D R / (R + I), an 8/2 cotton worked,
            about three quarters of it to work with.
        F. T. Peirce, Journal of the Textile Institute 28, T45 (yarn diameter), as quoted by N.
            Balasubramanian, Yarn and Cloth, 1937.
        Woven fabric calculation, lecture notes: cover factors, and how close a plain weave can be
            woven.
        Graduate Aptitude Test in Engineering, India, Textile paper TF 2006, question 66
            (Brierley: cotton, K 200, m 0.39), with a worked answer, 2006.
        J. T. Taylor, Cotton Weaving and Designing, 6th ed., table of diameters per inch, 1909.
        Trade pages and hand-outs for spinners (wraps per inch beside yards per pound).
        Trade pages on metric reeds and the inch numbers they are sold under.
        Memory of the trade (no source read).
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("sett", locals())


class WarpPlanPiece(TypedDict, total=False):
    """Piece of `warp_plan`: a row of its pieces."""

    name: str
    many: Number
    length: Number
    color: str


class WarpPlanStripe(TypedDict, total=False):
    """Stripe of `warp_plan`: a row of its stripes."""

    color: str
    ends: Number


def warp_plan(
    *,
    pieces: list[WarpPlanPiece] = EXAMPLE,
    go_by: Literal["width", "ends"] = EXAMPLE,
    width: Number = EXAMPLE,
    ends_given: Number = EXAMPLE,
    width_shrink: Number = EXAMPLE,
    length_shrink: Number = EXAMPLE,
    draw_in: Number = EXAMPLE,
    take_up: Number = EXAMPLE,
    weft_take_up: Number = EXAMPLE,
    sett: Number = EXAMPLE,
    picks: Number = EXAMPLE,
    multiple: Number = EXAMPLE,
    edge_ends: Number = EXAMPLE,
    finish: Literal["hem", "fringe", "neither"] = EXAMPLE,
    hem: Number = EXAMPLE,
    hem_yarn: Literal["same", "other"] = EXAMPLE,
    hem_picks: Number = EXAMPLE,
    hem_mass: Number = EXAMPLE,
    hem_length: Number = EXAMPLE,
    fringe: Number = EXAMPLE,
    divider: Number = EXAMPLE,
    sample: Number = EXAMPLE,
    waste: Number = EXAMPLE,
    loom_width: Number = EXAMPLE,
    limit: Number | None = EXAMPLE,
    warp_colors: Literal["one", "repeated", "once"] = EXAMPLE,
    warp_color: str = EXAMPLE,
    stripes: list[WarpPlanStripe] = EXAMPLE,
    skein_mass: Number = EXAMPLE,
    skein_length: Number = EXAMPLE,
    weft_from: Literal["same", "other"] = EXAMPLE,
    weft_mass: Number = EXAMPLE,
    weft_length: Number = EXAMPLE,
) -> Answer:
    """How do I plan a whole run of pieces on one warp?

    Args:
        pieces: Pieces, in the order of weaving, 1 to 12 rows.
            - name: Name. Text, up to 18 characters of text; example Towel.
            - many: How many alike. A whole number from 1 to 200; example 5.
            - length: Finished length. Length, cm; 2 cm to 2000 cm; example 55 cm.
            - color: Weft color. Text, up to 18 characters of text; example natural.
        go_by: Go by. One of width (A finished width), ends (A number of ends); example width.
            Asked where warp_colors is one or repeated.
        width: Finished width wanted. Length, cm; 1 cm to 400 cm; example 34 cm. Asked where go_by
            is width.
        ends_given: Ends. A whole number from 2 to 20000; example 160. Asked where go_by is ends.
        width_shrink: Shrinkage in width. -20 % to 50 %; example 14 %.
        length_shrink: Shrinkage in length. -20 % to 50 %; example 18 %.
        draw_in: Draw-in. 0 % to 50 %; example 6 %.
        take_up: Take-up of the warp. 0 % to 50 %; example 10 %.
        weft_take_up: Take-up of the weft. 0 % to 50 %; example 6 %.
        sett: Ends. Count per length, per cm; 0.5 per cm to 60 per cm; example 4 per cm.
        picks: Picks, on the loom. Count per length, per cm; 0.2 per cm to 60 per cm; example 5
            per cm.
        multiple: Ends in multiples of. A whole number from 1 to 400; example 2. Asked where go_by
            is width.
        edge_ends: Extra ends at the edges. A whole number from 0 to 40; example 0.
        finish: Each end of a piece. One of hem (A hem), fringe (A fringe), neither; example hem.
        hem: Cloth in one hem. Length, cm; 0.2 cm to 60 cm; example 4 cm. Asked where finish is
            hem.
        hem_yarn: Hems woven in. One of same (The piece’s own weft), other (A finer yarn); example
            same. Asked where finish is hem.
        hem_picks: Picks in the hems. Count per length, per cm; 0.5 per cm to 100 per cm; example
            9 per cm. Asked where hem_yarn is other.
        hem_mass: A ball of the finer yarn weighs. Weight, g; 1 g to 2 kg; example 50 g. Asked
            where hem_yarn is other.
        hem_length: and holds. Length, m; 5 m to 20000 m; example 280 m. Asked where hem_yarn is
            other.
        fringe: Fringe at one end. Length, cm; 0.5 cm to 100 cm; example 8 cm. Asked where finish
            is fringe.
        divider: Divider before, between and after. Length, cm; 0 cm to 60 cm; example 2 cm.
        sample: Sample woven first. Length, cm; 0 cm to 300 cm; example 0 cm.
        waste: Loom waste. Length, cm; 0 cm to 400 cm; example 50 cm.
        loom_width: Width of the heddle or reed. Length, cm; 2 cm to 400 cm; example 40 cm.
        limit: Warp there is, or the loom takes. Length, m; 0.2 m to 500 m. None leaves it open.
        warp_colors: Colors of the warp. One of one, repeated (Stripes, again and again), once
            (Stripes, once across); example one.
        warp_color: Warp color. Text, up to 18 characters of text; example natural. Asked where
            warp_colors is one.
        stripes: Stripes, from the first end, 1 to 24 rows. Asked where warp_colors is repeated or
            once.
            - color: Color. Text, up to 18 characters of text; example natural.
            - ends: Ends. A whole number from 1 to 2000; example 12.
        skein_mass: A ball weighs. Weight, g; 1 g to 2 kg; example 100 g.
        skein_length: A ball holds. Length, m; 5 m to 20000 m; example 170 m.
        weft_from: Weft. One of same (The same yarn), other (Another yarn); example same.
        weft_mass: A ball of the weft weighs. Weight, g; 1 g to 2 kg; example 100 g. Asked where
            weft_from is other.
        weft_length: and holds. Length, m; 5 m to 20000 m; example 170 m. Asked where weft_from is
            other.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - buy: Balls to buy.
        - ends: Ends.
        - heddle_width: Width in the heddle, m.
        - warp_sure: Warp to wind, so that the last piece is whole, m.
        - warp_length: Warp length, as reckoned, m.
        - finished_width: Width, washed, m.
        - finished_length: Length of the first piece, finished, m.
        - weft_picks: Picks in all.
        - warp_yarn: Warp yarn, m.
        - weft_yarn: Weft yarn, m.
        - warp_weight: Warp yarn, weight, g.
        - weft_weight: Weft yarn, weight, g.
        - warp_balls: Warp yarn, in balls.
        - weft_balls: Weft yarn, in balls.
        - hem_thread: Finer yarn for the hems, m.
        - hem_weight: Its weight, g.
        - hem_balls: In balls.
        - hem_buy: Balls of it to buy.
        - spare: Left of the warp there is, m.
        - last_lost: Chance that the last piece is cut short, %.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Trade pages on planning a warp: shrinkage divided out, draw-in, take-up, loom waste.
        Trade pages for weavers and felters on what washing and fulling take.
        A weaving magazine's answer: 5 yd of warp for four towels of 34 in.
        ISO, ISO 5077 Textiles: determination of dimensional change in washing and drying (summary
            and extract; marks by ISO 3759), 2007.
        Memory of the trade (no source read).
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("warp-plan", locals())


class ClothPictureYarnRow(TypedDict, total=False):
    """Yarn of `cloth_picture`: a row of its yarns."""

    name: str
    color: str


class ClothPicturePiece(TypedDict, total=False):
    """Piece of `cloth_picture`: a row of its pieces."""

    name: str
    structure: Literal[
        "plain",
        "weft-floats",
        "warp-floats",
        "offset-floats",
        "waffle",
        "lace",
        "hopsack",
        "twill-2-1",
        "twill-2-2",
        "twill-3-1",
        "herringbone",
        "waffle-point",
        "own",
    ]
    picks: Number
    weft: str


def cloth_picture(
    *,
    yarns: list[ClothPictureYarnRow] = EXAMPLE,
    pieces: list[ClothPicturePiece] = EXAMPLE,
    ends: Number = EXAMPLE,
    warp: str = EXAMPLE,
    turn: Literal["repeat", "mirror"] = EXAMPLE,
    sett: Number = EXAMPLE,
    beat: Number = EXAMPLE,
    draw_in: Number = EXAMPLE,
    shrink_width: Number = EXAMPLE,
    shrink_length: Number = EXAMPLE,
    textured_width: Number | None = EXAMPLE,
    textured_length: Number | None = EXAMPLE,
    hem: Number = EXAMPLE,
    hem_yarn: str | None = EXAMPLE,
    hem_beat: Number | None = EXAMPLE,
    flag: Number = EXAMPLE,
    look: Number = EXAMPLE,
    state: Literal["washed", "loom"] = EXAMPLE,
    take: Number = EXAMPLE,
    leave: Number = EXAMPLE,
    sheds: str = EXAMPLE,
) -> Answer:
    """What will the cloth look like, and how do I weave it?

    Args:
        yarns: Yarns of warp and weft, 1 to 14 rows.
            - name: Name. Text, up to 16 characters of text; example Natural.
            - color: Color. A color such as #6b7f8f or lab(52 -3 -9); example #e6dcc3.
        pieces: Pieces, in the order they are woven, 1 to 12 rows.
            - name: Name. Text, up to 16 characters of text; example Towel 1.
            - structure: Weave. One of plain (Plain weave), weft-floats (Weft floats), warp-floats
              (Warp floats), offset-floats (Offset floats), waffle (Waffle, 1 stick), lace
              (Lace-like skips), hopsack (Hopsack 2/2), twill-2-1 (Twill 2/1), twill-2-2 (Twill
              2/2), twill-3-1 (Twill 3/1), herringbone (Herringbone 2/2), waffle-point (Waffle, 4
              shafts), own (My own pick-up, given below); example waffle.
            - picks: Picks, with both hems. A whole number from 2 to 4000; example 384.
            - weft: Weft, stripe by stripe. Text, up to 60 characters of text; example 24 A, 6 C.
        ends: Ends in the warp. A whole number from 4 to 2000; example 160.
        warp: Warp, stripe by stripe from the left. Text, up to 60 characters of text; example 10
            A, 4 B, 4 A, 4 B, 10 A.
        turn: At the end of the stripes. One of repeat (begin again from the first), mirror (go
            back in mirror order); example repeat.
        sett: Ends in the heddle. Count per length, per cm; 0.5 per cm to 40 per cm; example 4 per
            cm.
        beat: Picks on the loom. Count per length, per cm; 0.5 per cm to 60 per cm; example 5 per
            cm.
        draw_in: The cloth draws in by. 0 % to 60 %; example 6 %.
        shrink_width: The wash takes, of the width. -20 % to 60 %; example 14 %.
        shrink_length: The wash takes, of the length. -20 % to 60 %; example 18 %.
        textured_width: Pieces with floats: of the width. -20 % to 60 %. None leaves it open.
        textured_length: and of the length. -20 % to 60 %. None leaves it open.
        hem: Picks of each hem. A whole number from 0 to 400; example 24.
        hem_yarn: Yarn of the hems. Text, up to 16 characters of text. None leaves it open.
        hem_beat: Picks in the hems. Count per length, per cm; 0.5 per cm to 80 per cm. None
            leaves it open.
        flag: Say so when a float is longer than. Length, cm; 0.1 cm to 30 cm; example 1 cm.
        look: Piece to look at. A whole number from 1 to 12; example 1.
        state: Show it. One of washed, loom (on the loom); example washed.
        take: Own pick-up: the stick takes up. A whole number from 1 to 16; example 1.
        leave: and leaves. A whole number from 1 to 16; example 1.
        sheds: Own pick-up: sheds of one repeat. Text, up to 60 characters of text; example e u e
            u e d.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - where: Longest float, in words.
        - longest: Threads under it.
        - float_loom: Its length on the loom, m.
        - float_washed: Its length once washed, m.
        - width_loom: Width on the loom, drawn in, m.
        - length_loom: Length of this piece on the loom, m.
        - width_washed: Its width once washed, m.
        - length_washed: Its length once washed, m.
        - picks: Picks in all pieces.
        - way: On a rigid heddle, in words.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
        ISO, ISO 5077 Textiles: determination of dimensional change in washing and drying (summary
            and extract; marks by ISO 3759), 2007.
        Memory of the trade (no source read).
    """
    return ask("cloth-picture", locals())


class WeftLeftBall(TypedDict, total=False):
    """Ball of `weft_left`: a row of its balls."""

    name: str
    color: str
    mass: Number


def weft_left(
    *,
    balls: list[WeftLeftBall] = EXAMPLE,
    tare: Number = EXAMPLE,
    yarn: Number = EXAMPLE,
    width: Number = EXAMPLE,
    take_up: Number = EXAMPLE,
    beat: Number = EXAMPLE,
    shrink: Number = EXAMPLE,
    pieces: Number = EXAMPLE,
    piece_picks: Number = EXAMPLE,
    hem: Number = EXAMPLE,
    stripes: Number = EXAMPLE,
    tail: Number = EXAMPLE,
) -> Answer:
    """What does the rest of a shuttle or ball still weave?

    Args:
        balls: Shuttles or leftover balls, one for each color, 1 to 12 rows.
            - name: Yarn. Text, up to 16 characters of text; example Rust.
            - color: Color. A color such as #6b7f8f or lab(52 -3 -9); example #9c4a2b.
            - mass: Weighs. Weight, g; 0.5 g to 5 kg; example 38 g.
        tare: of that, the empty shuttle or core. Weight, g; 0 g to 500 g; example 0 g.
        yarn: Yarn. Yarn count, m/100 g; 5 tex to 20000 tex; example 170 m/100 g.
        width: Width in the heddle. Length, cm; 1 cm to 300 cm; example 40 cm.
        take_up: The weft takes up. 0 % to 60 %; example 6 %.
        beat: Picks on the loom. Count per length, per cm; 0.5 per cm to 60 per cm; example 5 per
            cm.
        shrink: The wash takes, of the length. -20 % to 60 %; example 18 %.
        pieces: Pieces still to weave. A whole number from 1 to 100; example 3.
        piece_picks: Picks of a piece, with both hems. A whole number from 4 to 4000; example 384.
        hem: Picks of each hem. A whole number from 0 to 400; example 24.
        stripes: Stripes of each color in a piece. A whole number from 1 to 40; example 2.
        tail: Each stripe loses. Length, cm; 0 cm to 200 cm; example 10 cm.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - picks: Picks they weave in all.
        - on_loom: Cloth on the loom, m.
        - after: Cloth once washed, m.
        - pick: Weft in a pick, m.
        - striped: Picks of stripes in each piece.
        - main: Picks of the main yarn in each piece.
        - main_yarn: Main yarn for all of them, m.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Arithmetic from the definitions (no published source needed).
        Common practice (no published source).
        ISO, ISO 5077 Textiles: determination of dimensional change in washing and drying (summary
            and extract; marks by ISO 3759), 2007.
    """
    return ask("weft-left", locals())


def weave_pace(
    *,
    ends: Number = EXAMPLE,
    warp: Number = EXAMPLE,
    wind_length: Number = EXAMPLE,
    wind_minutes: Number = EXAMPLE,
    thread_ends: Number = EXAMPLE,
    thread_minutes: Number = EXAMPLE,
    beam: Number = EXAMPLE,
    pieces: Number = EXAMPLE,
    piece_picks: Number = EXAMPLE,
    weave_picks: Number = EXAMPLE,
    weave_minutes: Number = EXAMPLE,
    stick_share: Number = EXAMPLE,
    stick_times: Number = EXAMPLE,
    changes: Number = EXAMPLE,
    change_minutes: Number = EXAMPLE,
    hems: Number = EXAMPLE,
    hem_minutes: Number = EXAMPLE,
    finish: Number = EXAMPLE,
    sitting: Number = EXAMPLE,
    settling: Number = EXAMPLE,
    week: Number = EXAMPLE,
) -> Answer:
    """How long will the weaving take?

    Args:
        ends: Ends in the warp. A whole number from 1 to 5000; example 160.
        warp: Length of the warp. Length, m; 0.2 m to 200 m; example 4.9 m.
        wind_length: Yarn you wound. Length, m; 1 m to 10000 m; example 98 m.
        wind_minutes: Winding it took. Time, min; 0.5 min to 600 min; example 15 min.
        thread_ends: Ends you threaded. A whole number from 1 to 2000; example 20.
        thread_minutes: Threading them took. Time, min; 0.2 min to 600 min; example 10 min.
        beam: Beaming and tying on. Time, min; 0 min to 1200 min; example 60 min.
        pieces: Pieces. A whole number from 1 to 100; example 5.
        piece_picks: Picks of a piece. A whole number from 1 to 20000; example 384.
        weave_picks: Plain picks you wove. A whole number from 1 to 5000; example 50.
        weave_minutes: Weaving them took. Time, min; 0.2 min to 600 min; example 12 min.
        stick_share: Picks with the stick. 0 % to 100 %; example 30 %.
        stick_times: Such a pick takes, plain ones. Number; 1 to 20; example 1.5.
        changes: Color changes in a piece. A whole number from 0 to 2000; example 22.
        change_minutes: A change takes. Time, min; 0 min to 60 min; example 0.5 min.
        hems: Hems or fringes of a piece. A whole number from 0 to 8; example 2.
        hem_minutes: One takes. Time, min; 0 min to 600 min; example 25 min.
        finish: Washing and pressing a piece. Time, min; 0 min to 600 min; example 10 min.
        sitting: You sit at the loom for. Time, min; 5 min to 1000 min; example 120 min.
        settling: of which to settle and clear away. Time, min; 0 min to 240 min; example 10 min.
        week: Times a week. Number; 0.1 to 40; example 4.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - total: In all, min.
        - each: For each piece, min.
        - setup: Before the first pick, min.
        - weaving: Weaving, min.
        - ending: Hemming, washing, pressing, min.
        - one_more: One more piece on the same warp, min.
        - sittings: Sittings.
        - weeks: Weeks.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Arithmetic from the definitions (no published source needed).
        Common practice (no published source).
    """
    return ask("weave-pace", locals())
