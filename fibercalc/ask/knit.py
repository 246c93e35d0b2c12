"""The cards of the chapter knit as functions; written from them by `make answers`.

Values, what is left out, and what comes back are told in `fibercalc.ask`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal, TypedDict

from . import EXAMPLE, Number, ask

if TYPE_CHECKING:
    from datetime import date

    from ..answered import Answer

__all__ = [
    "crank_socks",
    "enough_left",
    "even_shaping",
    "gauge_check",
    "keep_pace",
    "pool_picture",
    "yarn_instead",
    "yarn_needed",
]


class YarnNeededColor(TypedDict, total=False):
    """Color of `yarn_needed`: a row of its colors."""

    name: str
    share: Number


def yarn_needed(
    *,
    known: Literal["swatch", "gauge", "yarn", "pattern"] = EXAMPLE,
    make: Literal[
        "sweater", "hat", "mittens", "socks", "cowl", "scarf", "blanket", "shawl"
    ] = EXAMPLE,
    size_by: Literal["own", "table"] = EXAMPLE,
    size: Literal[
        "baby-3",
        "baby-6",
        "baby-12",
        "baby-18",
        "baby-24",
        "child-2",
        "child-4",
        "child-6",
        "child-8",
        "child-10",
        "child-12",
        "child-14",
        "child-16",
        "woman-xs",
        "woman-s",
        "woman-m",
        "woman-l",
        "woman-1x",
        "woman-2x",
        "woman-3x",
        "woman-4x",
        "woman-5x",
        "man-s",
        "man-m",
        "man-l",
        "man-xl",
        "man-xxl",
    ] = EXAMPLE,
    ease: Number = EXAMPLE,
    construction: Literal["raglan", "round", "drop"] = EXAMPLE,
    chest: Number = EXAMPLE,
    body: Number = EXAMPLE,
    sleeve: Number = EXAMPLE,
    upper_arm: Number = EXAMPLE,
    wrist: Number = EXAMPLE,
    yoke: Number = EXAMPLE,
    neck: Number = EXAMPLE,
    band: Number = EXAMPLE,
    head_size: Literal[
        "premature", "newborn", "baby", "toddler", "child", "woman", "man"
    ] = EXAMPLE,
    head: Number = EXAMPLE,
    hat_ease: Number = EXAMPLE,
    hat_height: Number = EXAMPLE,
    turn_up: Number = EXAMPLE,
    hand: Number = EXAMPLE,
    hand_length: Number = EXAMPLE,
    cuff: Number = EXAMPLE,
    foot_length: Number = EXAMPLE,
    foot_girth: Number = EXAMPLE,
    leg: Number = EXAMPLE,
    sock_ease: Number = EXAMPLE,
    around: Number = EXAMPLE,
    height: Number = EXAMPLE,
    width: Number = EXAMPLE,
    length: Number = EXAMPLE,
    shape: Literal["top", "corner", "wing", "crescent", "half-circle", "circle"] = EXAMPLE,
    span: Number = EXAMPLE,
    depth: Number = EXAMPLE,
    structure: Literal[
        "plain",
        "garter",
        "rib-1x1",
        "rib-2x2",
        "cables",
        "lace",
        "stranded",
        "slipped",
        "brioche",
        "single-crochet",
        "half-double-crochet",
        "double-crochet",
    ] = EXAMPLE,
    stitches: Number = EXAMPLE,
    rows: Number = EXAMPLE,
    state: Literal["dry", "wet", "full"] = EXAMPLE,
    swatch_width: Number = EXAMPLE,
    swatch_length: Number = EXAMPLE,
    swatch_mass: Number = EXAMPLE,
    pattern_length: Number = EXAMPLE,
    pattern_buffer: Literal["unknown", "held", "none"] = EXAMPLE,
    skein_mass: Number = EXAMPLE,
    skein_length: Number = EXAMPLE,
    ends: Number = EXAMPLE,
    needle: Number | None = EXAMPLE,
    many: Literal["no", "yes"] = EXAMPLE,
    colors: list[YarnNeededColor] = EXAMPLE,
    sure: Literal["80", "90", "95", "99"] = EXAMPLE,
) -> Answer:
    """How many skeins do I need?

    Args:
        known: What you go by. One of swatch (A weighed, washed swatch), gauge (A gauge), yarn
            (Only the yarn), pattern (The pattern’s own figure); example swatch.
        make: What it will be. One of sweater (A sweater), hat (A hat), mittens (A pair of
            mittens), socks (A pair of socks), cowl (A cowl or other tube), scarf (A scarf or
            wrap), blanket (A blanket), shawl (A shawl); example sweater. Asked where known is
            yarn or gauge or swatch.
        size_by: Which size. One of own (My own measures), table (A size of the table); example
            own. Asked where make is sweater or hat.
        size: Size. One of baby-3 (Baby, 3 months), baby-6 (Baby, 6 months), baby-12 (Baby, 12
            months), baby-18 (Baby, 18 months), baby-24 (Baby, 24 months), child-2 (Child, age 2),
            child-4 (Child, age 4), child-6 (Child, age 6), child-8 (Child, age 8), child-10
            (Child, age 10), child-12 (Child, age 12), child-14 (Child, age 14), child-16 (Child,
            age 16), woman-xs (Woman, XS), woman-s (Woman, S), woman-m (Woman, M), woman-l (Woman,
            L), woman-1x (Woman, 1X), woman-2x (Woman, 2X), woman-3x (Woman, 3X), woman-4x (Woman,
            4X), woman-5x (Woman, 5X), man-s (Man, S), man-m (Man, M), man-l (Man, L), man-xl
            (Man, XL), man-xxl (Man, XXL); example woman-m. Asked where make is sweater and
            size_by is table.
        ease: Ease: wider than the body by. Length, cm; -15 cm to 40 cm; example 10 cm. Asked
            where make is sweater and size_by is table.
        construction: How it is made. One of raglan, round (Round yoke), drop (Drop shoulder);
            example raglan. Asked where make is sweater.
        chest: Around the chest, finished. Length, cm; 1 cm to 300 cm; example 104 cm. Asked where
            make is sweater and size_by is own.
        body: Body, hem to underarm. Length, cm; 1 cm to 150 cm; example 39 cm. Asked where make
            is sweater and size_by is own.
        sleeve: Sleeve, cuff to underarm. Length, cm; 1 cm to 100 cm; example 45 cm. Asked where
            make is sweater and size_by is own.
        upper_arm: Sleeve, around the top. Length, cm; 1 cm to 120 cm; example 34 cm. Asked where
            make is sweater and size_by is own.
        wrist: Around the cuff. Length, cm; 1 cm to 80 cm; example 19 cm. Asked where make is
            sweater and size_by is own.
        yoke: Yoke or armhole, depth. Length, cm; 1 cm to 60 cm; example 20 cm. Asked where make
            is sweater and size_by is own.
        neck: Around the neck opening. Length, cm; 1 cm to 150 cm; example 44 cm. Asked where make
            is sweater and size_by is own.
        band: Neckband, depth. Length, cm; 0.5 cm to 60 cm; example 2.5 cm. Asked where make is
            sweater and size_by is own.
        head_size: Head. One of premature (Premature baby, about 33 weeks), newborn (Newborn
            baby), baby (Baby, 12 months), toddler (Toddler, 24 months), child (Child, 36 months),
            woman, man; example woman. Asked where make is hat and size_by is table.
        head: Around the head. Length, cm; 15 cm to 90 cm; example 56 cm. Asked where make is hat
            and size_by is own.
        hat_ease: Smaller than the head by. -30 % to 30 %; example 8 %. Asked where make is hat.
        hat_height: Height, edge to top. Length, cm; 1 cm to 60 cm; example 22 cm. Asked where
            make is hat.
        turn_up: Turned up at the edge. Length, cm; 0 cm to 30 cm; example 0 cm. Asked where make
            is hat.
        hand: Around the mitten at the hand. Length, cm; 5 cm to 60 cm; example 21 cm. Asked where
            make is mittens.
        hand_length: Hand, wrist to fingertips. Length, cm; 4 cm to 50 cm; example 19 cm. Asked
            where make is mittens.
        cuff: Cuff, length. Length, cm; 0 cm to 60 cm; example 8 cm. Asked where make is mittens.
        foot_length: Foot, heel to toe. Length, cm; 6 cm to 45 cm; example 25 cm. Asked where make
            is socks.
        foot_girth: Around the foot. Length, cm; 6 cm to 45 cm; example 23 cm. Asked where make is
            socks.
        leg: Leg, top to heel. Length, cm; 0 cm to 80 cm; example 18 cm. Asked where make is
            socks.
        sock_ease: Smaller than the foot by. -20 % to 30 %; example 10 %. Asked where make is
            socks.
        around: Around. Length, cm; 1 cm to 400 cm; example 60 cm. Asked where make is cowl.
        height: Height. Length, cm; 1 cm to 300 cm; example 25 cm. Asked where make is cowl.
        width: Width. Length, cm; 1 cm to 400 cm; example 30 cm. Asked where make is scarf or
            blanket.
        length: Length. Length, cm; 1 cm to 1000 cm; example 180 cm. Asked where make is scarf or
            blanket.
        shape: Shape. One of top (Triangle from the top center), corner (Triangle from one
            corner), wing (Wing: a long, lopsided triangle), crescent, half-circle (Half circle),
            circle; example top. Asked where make is shawl.
        span: Wingspan, or across. Length, cm; 1 cm to 400 cm; example 160 cm. Asked where make is
            shawl.
        depth: Depth. Length, cm; 1 cm to 300 cm; example 70 cm. Asked where make is shawl and
            shape is top or corner or wing or crescent.
        structure: Stitch. One of plain (Stocking stitch (plain)), garter (Garter stitch), rib-1x1
            (Rib 1x1), rib-2x2 (Rib 2x2), cables (Cables on a purl ground), lace (Lace, blocked
            open), stranded (Stranded colorwork, all colors together), slipped (Slipped stitches),
            brioche, single-crochet (Single crochet (UK: double crochet)), half-double-crochet
            (Half double crochet (UK: half treble)), double-crochet (Double crochet (UK: treble));
            example plain. Asked where known is yarn or gauge or swatch.
        stitches: Stitches. Count per length, per 10 cm; 2 per 10 cm to 200 per 10 cm; example 20
            per 10 cm. Asked where known is gauge or swatch.
        rows: Rows. Count per length, per 10 cm; 2 per 10 cm to 300 per 10 cm; example 27 per 10
            cm. Asked where known is gauge or swatch.
        state: The gauge was counted. One of dry (Dry relaxed: off the needles and rested), wet
            (Wet relaxed: soaked and dried flat), full (Fully relaxed: washed and tumbled);
            example wet. Asked where known is gauge or swatch.
        swatch_width: Swatch, width. Length, cm; 4 cm to 200 cm; example 15 cm. Asked where known
            is swatch.
        swatch_length: Swatch, length. Length, cm; 4 cm to 200 cm; example 15 cm. Asked where
            known is swatch.
        swatch_mass: Swatch, weight. Weight, g; 0.2 g to 2 kg; example 10.3 g. Asked where known
            is swatch.
        pattern_length: Yarn, as the pattern gives it. Length, m; 1 m to 20000 m; example 900 m.
            Asked where known is pattern.
        pattern_buffer: Does that figure hold a buffer already? One of unknown (It does not say),
            held (Yes, some is added), none (No, it is what was used); example unknown. Asked
            where known is pattern.
        skein_mass: A skein weighs. Weight, g; 5 g to 2 kg; example 100 g.
        skein_length: A skein holds. Length, m; 5 m to 10000 m; example 230 m.
        ends: Ends, seams, fringe. Length, m; 0 m to 2000 m; example 0 m.
        needle: Needle. Length, mm; 1 mm to 60 mm. None leaves it open. Asked where known is gauge
            or swatch.
        many: Colors. One of no (One), yes (Several); example no.
        colors: Colors, 2 to 12 rows. Asked where many is yes.
            - name: Name. Text, up to 30 characters of text; example Main.
            - share: Share. Number; 0.5 to 1000; example 50.
        sure: How sure. One of 80 (80 in 100), 90 (90 in 100), 95 (95 in 100), 99 (99 in 100
            (gauge and swatch measured)); example 95.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - buy: Skeins to buy.
        - enough: Enough for, %.
        - need: Yarn needed, m.
        - mass: Its weight, g.
        - skeins: In skeins.
        - area: Cloth, m².
        - by_swatch: By the weighed swatch, m.
        - by_loop: By the loop model, m.
        - by_area_rule: Trade rule, by stitches, m.
        - by_needle_rule: Trade rule, by needle, m.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        D. L. Munden, The geometry and dimensional properties of plain-knit fabrics, Journal of
            the Textile Institute 50, T448; with Knapton, Ahrens, Ingenthron and Fong 1968 for the
            fully relaxed state (neither read), 1959.
        Graduate Aptitude Test in Engineering, India, Textile paper TF 2015, question 54 (fully
            relaxed plain: Kc 5.5, Kw 4.2), 2015.
        Craft Yarn Council, Standards & Guidelines, Standard Yarn Weight System
            (www.YarnStandards.com); tables read in secondary copies, 2018.
        Craft Yarn Council, Standards & Guidelines, body sizes (www.YarnStandards.com); read only
            in part, in secondary copies: the rest is from memory and marked, 2018.
        Head circumference by age, medical table: girls from 0 to 36 months, median (undated).
        Heads of adults, a study in the United States: 55 cm of women, 57 cm of men, as quoted in
            a page, 2023.
        Yardage rules of trade pages, for plain knitting.
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("yarn-needed", locals())


def yarn_instead(
    *,
    theirs_mass: Number = EXAMPLE,
    theirs_length: Number = EXAMPLE,
    need_by: Literal["skeins", "length"] = EXAMPLE,
    theirs_skeins: Number = EXAMPLE,
    need_length: Number = EXAMPLE,
    stitches: Number | None = EXAMPLE,
    rows: Number | None = EXAMPLE,
    mine_mass: Number = EXAMPLE,
    mine_length: Number = EXAMPLE,
    sure: Literal["80", "90", "95"] = EXAMPLE,
) -> Answer:
    """Can I use this yarn instead?

    Args:
        theirs_mass: The pattern’s yarn: a skein weighs. Weight, g; 5 g to 2 kg; example 50 g.
        theirs_length: A skein of theirs holds. Length, yd; 5 m to 10000 m; example 115 yd.
        need_by: The pattern asks for. One of skeins (So many skeins), length (A length); example
            skeins.
        theirs_skeins: Skeins of theirs. A whole number from 1 to 100; example 8. Asked where
            need_by is skeins.
        need_length: Length. Length, yd; 5 m to 20000 m; example 920 yd. Asked where need_by is
            length.
        stitches: The pattern’s stitches. Count per length, per 10 cm; 2 per 10 cm to 200 per 10
            cm; example 21 per 10 cm. None leaves it open.
        rows: The pattern’s rows. Count per length, per 10 cm; 2 per 10 cm to 300 per 10 cm;
            example 28 per 10 cm. None leaves it open.
        mine_mass: My yarn: a skein weighs. Weight, g; 5 g to 2 kg; example 100 g.
        mine_length: A skein of mine holds. Length, m; 5 m to 10000 m; example 230 m.
        sure: How sure of that length. One of 80 (80 in 100), 90 (90 in 100), 95 (95 in 100);
            example 95.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - buy: Skeins of mine.
        - enough: Chance that they hold that length, %.
        - need: Length asked for, m.
        - skeins: In my skeins.
        - mass: Its weight in my yarn, g.
        - finer: More meters in a gram than theirs, by, %.
        - theirs_tex: Their yarn, tex.
        - mine_tex: My yarn, tex.
        - theirs_tight: Tightness with theirs.
        - mine_tight: Tightness with mine.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Arithmetic from the definitions (no published source needed).
        Common practice (no published source).
        D. L. Munden, The geometry and dimensional properties of plain-knit fabrics, Journal of
            the Textile Institute 50, T448; with Knapton, Ahrens, Ingenthron and Fong 1968 for the
            fully relaxed state (neither read), 1959.
        Craft Yarn Council, Standards & Guidelines, Standard Yarn Weight System
            (www.YarnStandards.com); tables read in secondary copies, 2018.
    """
    return ask("yarn-instead", locals())


class GaugeCheckSize(TypedDict, total=False):
    """Size of `gauge_check`: a row of its sizes."""

    name: str
    girth: Number


def gauge_check(
    *,
    pattern_stitches: Number = EXAMPLE,
    pattern_rows: Number = EXAMPLE,
    counted: Number = EXAMPLE,
    across: Number = EXAMPLE,
    counted_rows: Number = EXAMPLE,
    tall: Number = EXAMPLE,
    washed: Literal["yes", "no"] = EXAMPLE,
    wide_before: Number = EXAMPLE,
    tall_before: Number = EXAMPLE,
    needle: Number = EXAMPLE,
    wanted: Number = EXAMPLE,
    sizes: list[GaugeCheckSize] = EXAMPLE,
) -> Answer:
    """Which size comes out right at my gauge?

    Args:
        pattern_stitches: The pattern’s stitches. Count per length, per 10 cm; 2 per 10 cm to 200
            per 10 cm; example 21 per 10 cm.
        pattern_rows: The pattern’s rows. Count per length, per 10 cm; 2 per 10 cm to 300 per 10
            cm; example 28 per 10 cm.
        counted: Stitches you counted. Number; 2 to 1000; example 30.
        across: over a width of. Length, cm; 2 cm to 200 cm; example 15 cm.
        counted_rows: Rows you counted. Number; 2 to 1000; example 40.5.
        tall: over a height of. Length, cm; 2 cm to 200 cm; example 15 cm.
        washed: Measured before the wash too? One of yes, no; example yes.
        wide_before: Width before. Length, cm; 2 cm to 200 cm; example 14.6 cm. Asked where washed
            is yes.
        tall_before: Height before. Length, cm; 2 cm to 200 cm; example 15.3 cm. Asked where
            washed is yes.
        needle: Needle of the swatch. Length, mm; 1 mm to 60 mm; example 4 mm.
        wanted: Wanted around the chest. Length, cm; 20 cm to 300 cm; example 104 cm.
        sizes: Sizes of the pattern, 1 to 16 rows.
            - name: Name. Text, up to 12 characters of text; example 1.
            - girth: Around. Length, cm; 20 cm to 300 cm; example 90 cm.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - girth: That size at your gauge, m.
        - off: Wider than wanted by, m.
        - own_stitches: Your stitches, washed, per cm.
        - own_rows: Your rows, washed, per cm.
        - row_share: Rows against the pattern’s.
        - needle_to_try: Needle to try for the pattern’s gauge, m.
        - wider: Width, in the wash, %.
        - longer: Length, in the wash, %.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Arithmetic from the definitions (no published source needed).
        Common practice (no published source).
        Five needle charts in trade pages.
    """
    return ask("gauge-check", locals())


def enough_left(
    *,
    shape: Literal["grows", "straight"] = EXAMPLE,
    first: Number = EXAMPLE,
    grow: Number = EXAMPLE,
    rows: Number = EXAMPLE,
    row: Number = EXAMPLE,
    weighed: Literal["start", "two"] = EXAMPLE,
    row_before: Number = EXAMPLE,
    mass_before: Number = EXAMPLE,
    mass_now: Number = EXAMPLE,
    edging: Number = EXAMPLE,
    bind_off: Number = EXAMPLE,
) -> Answer:
    """Is what is left enough to finish?

    Args:
        shape: The piece. One of grows (Grows: each row longer than the last), straight (Straight:
            every row the same); example grows.
        first: Stitches in the first row. Number; 1 to 2000; example 7. Asked where shape is
            grows.
        grow: Stitches added per row. Number; 0 to 50; example 2. Asked where shape is grows.
        rows: Rows in all, before edging and binding off. A whole number from 2 to 5000; example
            120.
        row: Rows done. A whole number from 1 to 5000; example 100.
        weighed: You weighed. One of start (The whole ball before starting, and what is left), two
            (What was left, at two rows); example start.
        row_before: Rows done at the first weighing. A whole number from 1 to 5000; example 60.
            Asked where weighed is two.
        mass_before: Weight then. Weight, g; 1 g to 10 kg; example 100 g.
        mass_now: Left now. Weight, g; 0.1 g to 10 kg; example 30.5 g.
        edging: Edging, rows. Number; 0 to 300; example 0.
        bind_off: Binding off takes, in widths of the edge. Number; 1 to 12; example 3.5.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - lasts: Chance that it is enough, %.
        - rest: Needed for the rest, g.
        - spare: To spare at the end, g.
        - edge_at: Last row before edging and binding off.
        - more: Rows that could still be knitted.
        - half: Row at which half of the yarn is used.
        - weigh_again: Rows to knit before weighing again.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
        D. L. Munden, The geometry and dimensional properties of plain-knit fabrics, Journal of
            the Textile Institute 50, T448; with Knapton, Ahrens, Ingenthron and Fong 1968 for the
            fully relaxed state (neither read), 1959.
    """
    return ask("enough-left", locals())


def even_shaping(
    *,
    over: Literal["round", "flat", "rows"] = EXAMPLE,
    stitches: Number = EXAMPLE,
    changes: Number = EXAMPLE,
    change: Literal["make-1", "front-and-back", "together", "double"] = EXAMPLE,
    edge: Number = EXAMPLE,
    rows: Number = EXAMPLE,
    shaping_rows_wanted: Number = EXAMPLE,
    every: Literal["2", "1"] = EXAMPLE,
) -> Answer:
    """How do I spread increases or decreases evenly?

    Args:
        over: Spread over. One of round (A round), flat (A flat row), rows; example round.
        stitches: Stitches now. A whole number from 2 to 5000; example 64. Asked where over is
            round or flat.
        changes: How many increases or decreases. A whole number from 1 to 2000; example 7. Asked
            where over is round or flat.
        change: Each one. One of make-1 (Make 1, between two stitches), front-and-back (Knit front
            and back of one stitch), together (Knit 2 together), double (Double decrease: 3 become
            1); example make-1. Asked where over is round or flat.
        edge: Plain stitches kept at both edges. A whole number from 0 to 20; example 0. Asked
            where over is flat.
        rows: Rows to shape in. A whole number from 1 to 5000; example 84. Asked where over is
            rows.
        shaping_rows_wanted: Shaping rows. A whole number from 1 to 2000; example 12. Asked where
            over is rows.
        every: Shape on. One of 2 (Right-side rows only), 1 (Any row); example 2. Asked where over
            is rows.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - after: Stitches afterward.
        - least: The shorter gaps.
        - most: The longer gaps.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Arithmetic from the definitions (no published source needed).
        Common practice (no published source).
    """
    return ask("even-shaping", locals())


def crank_socks(
    *,
    needles: Number = EXAMPLE,
    stitches: Number = EXAMPLE,
    rows: Number = EXAMPLE,
    state: Literal["dry", "wet", "full"] = EXAMPLE,
    foot_length: Number = EXAMPLE,
    shorter: Number = EXAMPLE,
    foot_girth: Number = EXAMPLE,
    heel_girth: Number = EXAMPLE,
    hem: Number = EXAMPLE,
    leg: Number = EXAMPLE,
    left: Number | None = EXAMPLE,
    rib: Literal["plain", "mock"] = EXAMPLE,
    rib_in: Number = EXAMPLE,
    rib_out: Number = EXAMPLE,
    between: Number = EXAMPLE,
    at_ends: Number = EXAMPLE,
    skein_mass: Number = EXAMPLE,
    skein_length: Number = EXAMPLE,
) -> Answer:
    """How many rounds for socks on the machine?

    Args:
        needles: Needles of the cylinder. A whole number from 16 to 400; example 60.
        stitches: Stitches. Count per length, per cm; 0.5 per cm to 20 per cm; example 2.8 per cm.
        rows: Rows. Count per length, per cm; 0.5 per cm to 30 per cm; example 4 per cm.
        state: The gauge was counted. One of dry (Dry relaxed: off the needles and rested), wet
            (Wet relaxed: soaked and dried flat), full (Fully relaxed: washed and tumbled);
            example wet.
        foot_length: Foot, heel to toe. Length, cm; 8 cm to 40 cm; example 27.5 cm.
        shorter: Knitted shorter than the foot by. 0 % to 25 %; example 0 %.
        foot_girth: Around the foot. Length, cm; 6 cm to 60 cm; example 24 cm.
        heel_girth: Around heel and instep, slanting. Length, cm; 8 cm to 80 cm; example 32 cm.
        hem: Hem, folded. Length, cm; 0 cm to 20 cm; example 3 cm.
        leg: Leg below the hem. Length, cm; 0 cm to 80 cm; example 18 cm.
        left: Needles left at the narrowest of heel and toe. A whole number from 2 to 190; example
            10. None leaves it open.
        rib: Leg. One of plain, mock (Mock rib: some needles out of work); example plain.
        rib_in: Needles in work. A whole number from 1 to 50; example 3. Asked where rib is mock.
        rib_out: then out of work. A whole number from 1 to 10; example 1. Asked where rib is
            mock.
        between: Waste rounds between the two socks. A whole number from 0 to 200; example 15.
        at_ends: Waste rounds before and after. A whole number from 0 to 200; example 15.
        skein_mass: A skein weighs. Weight, g; 5 g to 2 kg; example 100 g.
        skein_length: A skein holds. Length, m; 5 m to 10000 m; example 420 m.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - hem_rounds: Hem, rounds before folding.
        - leg_rounds: Leg, rounds.
        - pocket_rows: Heel, rows, and the same for the toe.
        - foot_rounds: Foot, rounds.
        - sock: Stitches of one sock.
        - pair: Yarn for the pair, m.
        - pair_mass: Its weight, g.
        - over: Over from one skein, m.
        - one_skein: Pairs for which one skein is enough, %.
        - girth: Around the tube at rest, m.
        - stretch: Stretch over the heel, %.
        - snug: Stretch around the foot, %.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        D. L. Munden, The geometry and dimensional properties of plain-knit fabrics, Journal of
            the Textile Institute 50, T448; with Knapton, Ahrens, Ingenthron and Fong 1968 for the
            fully relaxed state (neither read), 1959.
        Graduate Aptitude Test in Engineering, India, Textile paper TF 2015, question 54 (fully
            relaxed plain: Kc 5.5, Kw 4.2), 2015.
        Memory of the trade (no source read).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("crank-socks", locals())


class KeepPacePart(TypedDict, total=False):
    """Part of `keep_pace`: a row of its parts."""

    name: str
    release: date | str
    last_row: Number
    stitches: Number


def keep_pace(
    *,
    counted_by: Literal["rows", "stitches"] = EXAMPLE,
    first: Number = EXAMPLE,
    grow: Number = EXAMPLE,
    parts: list[KeepPacePart] = EXAMPLE,
    speed_stitches: Number = EXAMPLE,
    speed_minutes: Number = EXAMPLE,
    week: Number = EXAMPLE,
    start: date | str = EXAMPLE,
) -> Answer:
    """Can I keep up with a project in parts?

    Args:
        counted_by: The parts are given by. One of rows (The row each one ends at), stitches
            (Their stitches); example rows.
        first: Stitches in the first row. Number; 1 to 2000; example 33. Asked where counted_by is
            rows.
        grow: Stitches added per row. Number; 0 to 50; example 1. Asked where counted_by is rows.
        parts: Parts, 1 to 24 rows.
            - name: Name. Text, up to 24 characters of text; example Part 1.
            - release: Comes out on. A date such as 2027-03-05 or 5 Mar 2027; example 2027-03-05.
            - last_row: Ends at row. A whole number from 1 to 5000; example 80. Asked where
              counted_by is rows.
            - stitches: Stitches. Number; 1 to 1000000; example 18600. Asked where counted_by is
              stitches.
        speed_stitches: Stitches you made. Number; 5 to 100000; example 500.
        speed_minutes: in minutes. Number; 0.2 to 2000; example 20.
        week: Hours for knitting in a week. Number; 0.1 to 120; example 12.
        start: You can begin on. A date such as 2027-03-05 or 5 Mar 2027; example 2027-03-05.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - behind_at: First part that falls behind (0: none).
        - done: The last part is done, a day.
        - minutes: Time at the needles, min.
        - weeks: Weeks of your knitting time.
        - speed: Stitches in a minute.
        - needed: Hours a week that keep pace in every part, min.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Arithmetic from the definitions (no published source needed).
        Common practice (no published source).
    """
    return ask("keep-pace", locals())


class PoolPicturePatch(TypedDict, total=False):
    """Color of `pool_picture`: a row of its colors."""

    name: str
    color: str
    length: Number


def pool_picture(
    *,
    colors: list[PoolPicturePatch] = EXAMPLE,
    stitches: Number = EXAMPLE,
    rows: Number = EXAMPLE,
    state: Literal["dry", "wet", "full"] = EXAMPLE,
    worked: Literal["round", "flat"] = EXAMPLE,
    count: Number = EXAMPLE,
    drawn: Number = EXAMPLE,
    wobble: Number = EXAMPLE,
    alternate: Number = EXAMPLE,
    per_100: Number = EXAMPLE,
    skein_1: Number = EXAMPLE,
    skein_2: Number = EXAMPLE,
    skein_3: Number = EXAMPLE,
    skein_4: Number = EXAMPLE,
) -> Answer:
    """Will this hand-painted skein pool?

    Args:
        colors: Colors around one turn of the skein, 1 to 12 rows.
            - name: Name. Text, up to 20 characters of text; example Slate.
            - color: Color. A color such as #6b7f8f or lab(52 -3 -9); example #3d4a5c.
            - length: Length. Length, cm; 1 cm to 20 m; example 60 cm.
        stitches: Stitches. Count per length, per 10 cm; 2 per 10 cm to 200 per 10 cm; example 28
            per 10 cm.
        rows: Rows. Count per length, per 10 cm; 2 per 10 cm to 300 per 10 cm; example 40 per 10
            cm.
        state: The gauge was counted. One of dry (Dry relaxed: off the needles and rested), wet
            (Wet relaxed: soaked and dried flat), full (Fully relaxed: washed and tumbled);
            example wet.
        worked: Knitted. One of round (In the round), flat (Flat, back and forth); example round.
        count: Stitches in a round or row. A whole number from 4 to 2000; example 107.
        drawn: Rows to draw. A whole number from 4 to 60; example 48.
        wobble: How much your tension varies from row to row. 0 % to 30 %; example 2 %.
        alternate: Skeins knitted in turn. A whole number from 1 to 4; example 1.
        per_100: Yarn in 100 g. Length, m; 20 m to 3000 m; example 420 m. Asked where alternate is
            2 or 3 or 4.
        skein_1: Skein 1 weighs. Weight, g; 1 g to 5 kg; example 100 g. Asked where alternate is 2
            or 3 or 4.
        skein_2: Skein 2 weighs. Weight, g; 1 g to 5 kg; example 100 g. Asked where alternate is 2
            or 3 or 4.
        skein_3: Skein 3 weighs. Weight, g; 1 g to 5 kg; example 100 g. Asked where alternate is 3
            or 4.
        skein_4: Skein 4 weighs. Weight, g; 1 g to 5 kg; example 100 g. Asked where alternate is
            4.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - kind: Likely, from one skein, in words.
        - repeat: Stitches of one turn.
        - shift: Shift, stitches.
        - patch: Stitches of the longest color.
        - turn: One turn of the skein, m.
        - loop: Yarn in a stitch, m.
        - in_turn: Skeins in turn, two rows each, in words.
        - lasts: Rows that this lasts.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        D. L. Munden, The geometry and dimensional properties of plain-knit fabrics, Journal of
            the Textile Institute 50, T448; with Knapton, Ahrens, Ingenthron and Fong 1968 for the
            fully relaxed state (neither read), 1959.
        Graduate Aptitude Test in Engineering, India, Textile paper TF 2015, question 54 (fully
            relaxed plain: Kc 5.5, Kw 4.2), 2015.
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("pool-picture", locals())
