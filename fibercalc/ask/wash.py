"""The cards of the chapter wash as functions; written from them by `make answers`.

Values, what is left out, and what comes back are told in `fibercalc.ask`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal, TypedDict

from . import EXAMPLE, Number, ask

if TYPE_CHECKING:
    from ..answered import Answer

__all__ = ["care_label", "fastness", "make_size", "shedding", "shrinkage", "wet_finish"]


class ShrinkageSample(TypedDict, total=False):
    """Sample of `shrinkage`: a row of its samples."""

    length: Number
    length_after: Number
    width: Number
    width_after: Number


class ShrinkageWash(TypedDict, total=False):
    """Wash of `shrinkage`: a row of its later."""

    length: Number
    width: Number


def shrinkage(
    *,
    samples: list[ShrinkageSample] = EXAMPLE,
    fiber: Literal["other", "felts", "treated"] = EXAMPLE,
    first: Literal["worked", "gentle"] = EXAMPLE,
    again: Literal["yes", "no"] = EXAMPLE,
    later: list[ShrinkageWash] = EXAMPLE,
) -> Answer:
    """How much does it shrink in the wash?

    Args:
        samples: Samples, between marks, 1 to 6 rows.
            - length: Length before. Length, cm; 2 cm to 1000 cm; example 35 cm.
            - length_after: Length after one wash. Length, cm; 2 cm to 1000 cm; example 28.7 cm.
            - width: Width before. Length, cm; 2 cm to 1000 cm; example 35 cm.
            - width_after: Width after one wash. Length, cm; 2 cm to 1000 cm; example 30.1 cm.
        fiber: Fiber. One of other (Plant fiber, silk or man-made), felts (Wool or hair, not
            superwash), treated (Superwash wool); example other.
        first: The first wash. One of worked (In a machine, or rubbed), gentle (Soaked, not
            worked); example worked.
        again: Washed again? One of yes, no; example yes.
        later: Sample 1 after each later wash, 1 to 8 rows. Asked where again is yes.
            - length: Length. Length, cm; 2 cm to 1000 cm; example 28.5 cm.
            - width: Width. Length, cm; 2 cm to 1000 cm; example 29.9 cm.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - length_change: Length, first wash, %.
        - width_change: Width, first wash, %.
        - area_change: Area, first wash, %.
        - later_length: Length, later washes, %.
        - later_width: Width, later washes, %.
        - total_length: Length, all washes, %.
        - total_width: Width, all washes, %.
        - length_lost: Next piece loses, length, %.
        - width_lost: Next piece loses, width, %.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        ISO, ISO 5077 Textiles: determination of dimensional change in washing and drying (summary
            and extract; marks by ISO 3759), 2007.
        Lecture notes on the shrinkage of wool: relaxation in any fiber, felting in wool and hair
            alone.
        The Woolmark Company, TWC-TM31 Washing of wool textile products: relaxation after one 7A
            cycle, felting after five 5A cycles more, 2009.
        G. J. Hahn, Prediction intervals for samples from a normal distribution, Journal of the
            American Statistical Association 65, 1970.
        Arithmetic from the definitions (no published source needed).
    """
    return ask("shrinkage", locals())


def make_size(
    *,
    wanted_length: Number = EXAMPLE,
    wanted_width: Number = EXAMPLE,
    how: Literal["percent", "swatch", "published"] = EXAMPLE,
    length_percent: Number = EXAMPLE,
    width_percent: Number = EXAMPLE,
    swatch_length: Number = EXAMPLE,
    swatch_length_after: Number = EXAMPLE,
    swatch_width: Number = EXAMPLE,
    swatch_width_after: Number = EXAMPLE,
    cloth: Literal[
        "woven-plain",
        "woven-waffle",
        "cotton-jersey",
        "wool-plain",
        "felt-coarse",
        "felt-fine",
        "felt-full",
    ] = EXAMPLE,
    stitches: Number | None = EXAMPLE,
    rows: Number | None = EXAMPLE,
) -> Answer:
    """What size do I make it, so that it comes out right?

    Args:
        wanted_length: Wanted length, washed. Length, cm; 2 cm to 2000 cm; example 63 cm.
        wanted_width: Wanted width, washed. Length, cm; 2 cm to 2000 cm; example 34 cm.
        how: Shrinkage from. One of percent (A percentage that I know), swatch (A swatch, measured
            twice), published (A published range); example percent.
        length_percent: It shrinks in length by. -50 % to 80 %; example 18 %. Asked where how is
            percent.
        width_percent: and in width by. -50 % to 80 %; example 14 %. Asked where how is percent.
        swatch_length: Swatch length before. Length, cm; 2 cm to 1000 cm; example 35 cm. Asked
            where how is swatch.
        swatch_length_after: Swatch length after. Length, cm; 2 cm to 1000 cm; example 28.7 cm.
            Asked where how is swatch.
        swatch_width: Swatch width before. Length, cm; 2 cm to 1000 cm; example 35 cm. Asked where
            how is swatch.
        swatch_width_after: Swatch width after. Length, cm; 2 cm to 1000 cm; example 30.1 cm.
            Asked where how is swatch.
        cloth: Cloth. One of woven-plain (Woven plain, cotton or wool), woven-waffle (Woven
            waffle, half of it to all over), cotton-jersey (Cotton, plain knit by machine),
            wool-plain (Wool, plain knit: relaxing only), felt-coarse (Wet felting, coarse wool or
            a blend), felt-fine (Wet felting, fine wool), felt-full (Full felt); example
            woven-plain. Asked where how is published.
        stitches: Stitches or ends, unwashed. Count per length, per cm; 0.2 per cm to 60 per cm;
            example 4.26 per cm. None leaves it open.
        rows: Rows or picks, unwashed. Count per length, per cm; 0.2 per cm to 80 per cm; example
            5 per cm. None leaves it open.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - make_length: Length to make, m.
        - make_width: Width to make, m.
        - across: Stitches or ends for it.
        - along: Rows or picks for it.
        - finished_length: Length after washing, m.
        - finished_width: Width after washing, m.
        - length_shrink: Shrinkage in length, %.
        - width_shrink: Shrinkage in width, %.
        - more: More cloth to make, %.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        ISO, ISO 5077 Textiles: determination of dimensional change in washing and drying (summary
            and extract; marks by ISO 3759), 2007.
        Arithmetic from the definitions (no published source needed).
        Trade pages for weavers and felters on what washing and fulling take.
        Cotton Technology International, Shrinkage of cotton jersey finished to constant weight
            and to constant courses.
        D. L. Munden, The geometry and dimensional properties of plain-knit fabrics, Journal of
            the Textile Institute 50, T448; with Knapton, Ahrens, Ingenthron and Fong 1968 for the
            fully relaxed state (neither read), 1959.
        Memory of the trade (no source read).
    """
    return ask("make-size", locals())


def wet_finish(
    *,
    wide: Number = EXAMPLE,
    tall: Number = EXAMPLE,
    stitches: Number | None = EXAMPLE,
    rows: Number | None = EXAMPLE,
    after: Literal["wet", "full"] = EXAMPLE,
    measured: Literal["yes", "no"] = EXAMPLE,
    wide_after: Number = EXAMPLE,
    tall_after: Number = EXAMPLE,
) -> Answer:
    """What does the first wash do to my knitted swatch?

    Args:
        wide: Width before. Length, cm; 2 cm to 200 cm; example 14.6 cm.
        tall: Height before. Length, cm; 2 cm to 200 cm; example 15.3 cm.
        stitches: Stitches in that width. Number; 2 to 1000; example 30. None leaves it open.
        rows: Rows in that height. Number; 2 to 1000; example 40.5. None leaves it open.
        after: Then it is. One of wet (Soaked and dried flat), full (Washed and tumbled); example
            wet.
        measured: Measured afterward? One of yes, no (Not yet); example yes.
        wide_after: Width after. Length, cm; 2 cm to 200 cm; example 15 cm. Asked where measured
            is yes.
        tall_after: Height after. Length, cm; 2 cm to 200 cm; example 15 cm. Asked where measured
            is yes.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - width_likely: Width, expected, %.
        - height_likely: Height, expected, %.
        - width_own: Width, yours, %.
        - height_own: Height, yours, %.
        - width_off: Width, apart, %.
        - height_off: Height, apart, %.
        - width_after: Expected width, m.
        - height_after: Expected height, m.
        - stitches_after: Expected stitches, per cm.
        - rows_after: Expected rows, per cm.
        - proportion: Rows over stitches.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        D. L. Munden, The geometry and dimensional properties of plain-knit fabrics, Journal of
            the Textile Institute 50, T448; with Knapton, Ahrens, Ingenthron and Fong 1968 for the
            fully relaxed state (neither read), 1959.
        Graduate Aptitude Test in Engineering, India, Textile paper TF 2015, question 54 (fully
            relaxed plain: Kc 5.5, Kw 4.2), 2015.
        J. Lam (after K. F. Au), Knitting Science 1, lecture notes: the three states of rest.
        Arithmetic from the definitions (no published source needed).
    """
    return ask("wet-finish", locals())


def fastness(
    *,
    test: Literal["washing", "dry rubbing", "wet rubbing"] = EXAMPLE,
    times: Number = EXAMPLE,
    judged: Literal["staining", "change"] = EXAMPLE,
    by: Literal["colors", "eye"] = EXAMPLE,
    white: str = EXAMPLE,
    stained: str = EXAMPLE,
    before: str = EXAMPLE,
    after: str = EXAMPLE,
    stain_seen: Literal["5", "4-5", "4", "3-4", "3", "2-3", "2", "1-2", "1"] = EXAMPLE,
    change_seen: Literal["5", "4-5", "4", "3-4", "3", "2-3", "2", "1-2", "1"] = EXAMPLE,
) -> Answer:
    """How well does the color hold?

    Args:
        test: After. One of washing (A wash test), dry rubbing (A dry rub test), wet rubbing (A
            wet rub test); example washing.
        times: Done how many times. A whole number from 1 to 100; example 1.
        judged: You look at. One of staining (White cloth that was beside it), change (The piece
            itself); example staining.
        by: You have. One of colors (Two colors, read the same way), eye (Your eyes); example
            colors.
        white: White, unwashed. A color such as #6b7f8f or lab(52 -3 -9); example lab(93 -1 2).
            Asked where by is colors and judged is staining.
        stained: White, after the test. A color such as #6b7f8f or lab(52 -3 -9); example lab(87
            -2 -2). Asked where by is colors and judged is staining.
        before: The piece, before. A color such as #6b7f8f or lab(52 -3 -9); example lab(29.2 -0.8
            -12.4). Asked where by is colors and judged is change.
        after: The piece, after. A color such as #6b7f8f or lab(52 -3 -9); example lab(31 -0.8
            -12). Asked where by is colors and judged is change.
        stain_seen: It looks like this. One of 5 (The white is as white as before), 4-5 (A breath
            of color against the unwashed white), 4 (A tint seen at once against the unwashed
            white), 3-4 (A tint seen without the unwashed white), 3 (Clearly tinted, light), 2-3
            (Colored, light), 2 (Colored), 1-2 (Strongly colored), 1 (Dyed); example 4. Asked
            where by is eye and judged is staining.
        change_seen: It looks like this. One of 5 (No difference to be found), 4-5 (Only side by
            side, in good light, by one who looks for it), 4 (Seen side by side, not from memory),
            3-4 (Seen side by side at a glance), 3 (Seen where old and new meet across a room),
            2-3 (Seen without the old beside it), 2 (Plainly another shade), 1-2 (Another color of
            the same name), 1 (Another color); example 4. Asked where by is eye and judged is
            change.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - grade: Grade, 5 is best.
        - difference: CIELAB difference.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        ISO, EN 20105-A02 (ISO 105-A02) Gray scale for assessing change in color (sample pages),
            with GOST R ISO 105-A02-99, 1994.
        ISO, ISO 105-A03 Gray scale for assessing staining, its steps recalled, not read, 1993.
        ISO, ISO 105-A04 Instrumental assessment of staining, formula recalled, not read; it
            agrees with the recalled steps of A03.
        ISO, ISO 105-A05 Instrumental assessment of change in color, formula recalled, not read;
            it agrees with the steps of A02, which were.
        CIE, CIE 15 Colorimetry: CIELAB and the D65 white, recalled and checked against two
            libraries, 2004.
        Common practice (no published source).
    """
    return ask("fastness", locals())


def shedding(
    *,
    fibers: Literal["yes", "no", "not known"] = EXAMPLE,
    stain: Literal["yes", "no", "not known"] = EXAMPLE,
    water: Literal["yes", "no", "not known"] = EXAMPLE,
    weighed: Literal["yes", "no"] = EXAMPLE,
    before: Number = EXAMPLE,
    after: Number = EXAMPLE,
    depth: Number = EXAMPLE,
    rested: Literal["yes", "no"] = EXAMPLE,
) -> Answer:
    """Is it dye that comes off, or fluff?

    Args:
        fibers: Colored hairs on a damp white cloth? One of yes, no, not known (Not known yet);
            example yes.
        stain: An even stain under them? One of yes, no, not known (Not known yet); example no.
        water: Colored water after an hour’s soak? One of yes, no, not known (Not known yet);
            example no.
        weighed: Weighed before and after a wash? One of yes, no; example yes.
        before: Weight before. Weight, g; 0.5 g to 20 kg; example 96.4 g. Asked where weighed is
            yes.
        after: Weight after. Weight, g; 0.4 g to 20 kg; example 94.8 g. Asked where weighed is
            yes.
        depth: Depth of shade, all dyes. 0 % to 15 %; example 0.9 %. Asked where weighed is yes.
        rested: Rested in the same room both times? One of yes (Yes, a day and more), no (No, or
            not known); example yes. Asked where weighed is yes.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - verdict: By the white cloth, in words.
        - lost_percent: Lost, of the weight before, %.
        - lost: Lost, g.
        - dye: All the dye there is, g.
        - not_dye: Of the loss, what cannot be dye, g.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
        Regain of textile fibers against relative humidity, handbook table of the 1920s recalled,
            not read.
    """
    return ask("shedding", locals())


class CareLabelFiber(TypedDict, total=False):
    """Fiber of `care_label`: a row of its fibers."""

    fiber: Literal[
        "wool",
        "superwash",
        "hair",
        "silk",
        "cotton",
        "linen",
        "viscose",
        "nylon",
        "polyester",
        "acrylic",
        "unknown",
    ]
    percent: Number | None


def care_label(
    *,
    fibers: list[CareLabelFiber] = EXAMPLE,
    dye: Literal[
        "undyed",
        "acid-unknown",
        "acid-leveling",
        "acid-milling",
        "premetallized",
        "reactive",
        "direct",
        "indigo",
        "natural",
        "unknown",
    ] = EXAMPLE,
    finish: Literal["none", "lace", "fulled", "brushed", "trim"] = EXAMPLE,
    proof: Literal["none", "hand", "mild30", "mild40", "normal40", "normal60"] = EXAMPLE,
    times: Number = EXAMPLE,
    tumbled: Literal["no", "yes"] = EXAMPLE,
    stains: Literal["unknown", "stains", "slight", "undyed"] = EXAMPLE,
) -> Answer:
    """What goes on the care label?

    Args:
        fibers: Fibers, 1 to 8 rows.
            - fiber: Fiber. One of wool, superwash (Superwash wool), hair (Mohair, alpaca,
              cashmere), silk, cotton, linen (Linen or hemp), viscose (Viscose, modal, bamboo),
              nylon, polyester, acrylic, unknown (Fiber not known); example superwash.
            - percent: Share. 0.5 % to 100 %; example 75 %. None leaves it open.
        dye: Dye. One of undyed, acid-unknown (Acid dye, class not told), acid-leveling (Acid,
            leveling), acid-milling (Acid, milling or half-milling), premetallized (Premetallized,
            1 to 2), reactive (Reactive, on cotton or linen), direct, indigo, natural (Plant or
            insect dye on a mordant), unknown (Dye not known); example acid-milling.
        finish: Finish or trim. One of none (None of these), lace (Blocked lace), fulled (Fulled
            or felted on purpose), brushed (Brushed or very loosely spun), trim (Beads, buttons,
            leather or other trim); example none.
        proof: A sample was washed, measured and held. One of none (No sample was washed), hand
            (By hand, at 30 °C), mild30 (In a machine, 30 °C, mild), mild40 (In a machine, 40 °C,
            mild), normal40 (In a machine, 40 °C), normal60 (In a machine, 60 °C); example mild30.
        times: How many times. A whole number from 1 to 100; example 1. Asked where proof is hand
            or mild30 or mild40 or normal40 or normal60.
        tumbled: A sample was tumble dried and held. One of no, yes; example no.
        stains: White cloth washed with it. One of unknown (Was not tried), stains (Was stained,
            grade 3-4 and below), slight (Hardly stained, grade 4 and above), undyed (It is
            undyed); example slight.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - content: Fiber, in words.
        - wash: Washing, in words.
        - bleach: Bleaching, in words.
        - tumble: Tumble drying, in words.
        - dry: Drying, in words.
        - iron: Ironing, in words.
        - clean: Dry cleaning, in words.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Textbooks of dyeing: baths, holds, exhaustion, fixation, rates of rise (recalled, not
            read).
        ISO, ISO 3758 Care labeling code using symbols: its tables and temperatures as printed on
            four makers' pages (the standard itself not read).
    """
    return ask("care-label", locals())
