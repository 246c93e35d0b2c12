"""The cards of the chapter yarn as functions; written from them by `make answers`.

Values, what is left out, and what comes back are told in `fibercalc.ask`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal, TypedDict

from . import EXAMPLE, Number, ask

if TYPE_CHECKING:
    from ..answered import Answer

__all__ = [
    "reel_turns",
    "skein_length",
    "skein_split",
    "true_weight",
    "wraps",
    "yarn_count",
    "yarn_diameter",
]


class SkeinLengthSkein(TypedDict, total=False):
    """Skein of `skein_length`: a row of its skeins."""

    length: Number


def skein_length(
    *,
    way: Literal["both", "turns", "sample"] = EXAMPLE,
    turns: Number = EXAMPLE,
    circumference: Number = EXAMPLE,
    stretch: Number = EXAMPLE,
    sample_length: Number = EXAMPLE,
    sample_mass: Number = EXAMPLE,
    skein_mass: Number = EXAMPLE,
    several: Literal["no", "yes"] = EXAMPLE,
    skeins: list[SkeinLengthSkein] = EXAMPLE,
) -> Answer:
    """How many yards are in this skein?

    Args:
        way: How you measured. One of both (Both ways), turns (Turns of a reel), sample (A weighed
            sample); example both.
        turns: Turns of the reel. A whole number from 1 to 20000; example 280. Asked where way is
            turns or both.
        circumference: Once around the reel. Length, m; 0.05 m to 10 m; example 1.50 m. Asked
            where way is turns or both.
        stretch: Stretch on the reel. 0 % to 20 %; example 0 %. Asked where way is turns or both.
        sample_length: Length of the sample. Length, m; 0.2 m to 2000 m; example 10 m. Asked where
            way is sample or both.
        sample_mass: Weight of the sample. Weight, g; 0.05 g to 2 kg; example 2.38 g. Asked where
            way is sample or both.
        skein_mass: Weight of the skein. Weight, g; 1 g to 5 kg; example 100 g. Asked where way is
            sample or both.
        several: Other skeins of this delivery measured too? One of no (No, this one only), yes
            (Yes, several); example no.
        skeins: Skeins of this delivery, 2 to 40 rows. Asked where several is yes.
            - length: Length. Length, m; 1 m to 20000 m; example 420 m.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - length: Length of the skein, m.
        - by_turns: By turns of the reel, m.
        - by_sample: By the weighed sample, m.
        - grist: Count of the sample, tex.
        - average: Average of the skeins, m.
        - printable: Lower limit of the average, m.
        - next_skein: Lower limit of one more skein, m.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        IUPAC, Compendium of Chemical Terminology, C01247: confidence limits (about the mean),
            1994.
        European Economic Community, Directive 76/211/EEC on prepackages by weight or volume,
            Annex I, 1 and 2.4, and Annex II, 2.3, 1976.
        Memory of the trade (no source read).
    """
    return ask("skein-length", locals())


def skein_split(
    *,
    skein_mass: Number = EXAMPLE,
    skein_length: Number = EXAMPLE,
    loss_share: Number = EXAMPLE,
    wanted_by: Literal["mass", "length", "turns", "count"] = EXAMPLE,
    wanted_mass: Number = EXAMPLE,
    wanted_length: Number = EXAMPLE,
    wanted_turns: Number = EXAMPLE,
    wanted_count: Number = EXAMPLE,
    reel: Number = EXAMPLE,
    loss_per_cut: Number = EXAMPLE,
    total: Number | None = EXAMPLE,
) -> Answer:
    """How do I split this skein into small ones?

    Args:
        skein_mass: Weight of a full skein. Weight, g; 1 g to 5 kg; example 100 g.
        skein_length: Length of a full skein. Length, m; 1 m to 20000 m; example 420 m.
        loss_share: Lost in winding. 0 % to 50 %; example 2 %.
        wanted_by: What you want of the small ones. One of mass (A weight each), length (A length
            each), turns (A number of turns each), count (A number of them from each skein);
            example mass.
        wanted_mass: Weight of a small skein. Weight, g; 0.5 g to 1 kg; example 20 g. Asked where
            wanted_by is mass.
        wanted_length: Length of a small skein. Length, m; 0.5 m to 5000 m; example 84 m. Asked
            where wanted_by is length.
        wanted_turns: Turns for a small skein. A whole number from 1 to 5000; example 54. Asked
            where wanted_by is turns.
        wanted_count: How many from one skein. A whole number from 1 to 500; example 5. Asked
            where wanted_by is count.
        reel: One turn of your reel, rested. Length, m; 0.05 m to 10 m; example 1.50 m.
        loss_per_cut: Lost with each small skein. Length, m; 0 m to 20 m; example 0 m.
        total: Small skeins wanted in all. A whole number from 1 to 100000; example 312. None
            leaves it open.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - count: Small skeins from one.
        - turns: Turns for each.
        - small_length: Length of a small skein, m.
        - small_mass: Weight of a small skein, g.
        - left: Left over of each full skein, m.
        - left_mass: Weight of what is left, g.
        - margin: To spare when the last one is wound, m.
        - last_short: Chance that the last one is short, %.
        - full_skeins: Full skeins to cut.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("skein-split", locals())


class WrapsTry(TypedDict, total=False):
    """Try of `wraps`: a row of its tries."""

    turns: Number


def wraps(
    *,
    convention: Literal["relaxed", "ruler", "packed"] = EXAMPLE,
    width: Number = EXAMPLE,
    tries: list[WrapsTry] = EXAMPLE,
    grist: Number | None = EXAMPLE,
) -> Answer:
    """How many wraps per inch is it, and what weight do I call it?

    Args:
        convention: How you wrapped. One of relaxed (Relaxed hand wrap, turns just touching),
            ruler (Weavers' ruler wrap, drawn straight), packed (Close-packed wrap, turns pushed
            together); example relaxed.
        width: Width wrapped. Length, in; 0.2 in to 39 in; example 2 in.
        tries: Turns counted, 1 to 8 rows.
            - turns: Turns. A whole number from 1 to 400; example 34.
        grist: Its length and weight, if you know them. Yarn count, m/100 g; 5 tex to 20000 tex;
            example 420 m/100 g. None leaves it open.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - wraps: Wraps, per cm.
        - by_wraps: Goes with, by wraps alone, tex.
        - by_label: By its length and weight, tex.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Craft Yarn Council, Standards & Guidelines, Standard Yarn Weight System
            (www.YarnStandards.com); tables read in secondary copies, 2018.
        Trade page on ply names and typical put-ups.
        Trade pages and hand-outs for spinners (wraps per inch beside yards per pound).
        Trade page for weavers (ruler wraps and sett).
        IUPAC, Compendium of Chemical Terminology, C01247: confidence limits (about the mean),
            1994.
    """
    return ask("wraps", locals())


def reel_turns(
    *,
    wanted_by: Literal["length", "mass", "turns"] = EXAMPLE,
    wanted_length: Number = EXAMPLE,
    wanted_mass: Number = EXAMPLE,
    wanted_turns: Number = EXAMPLE,
    count: Number | None = EXAMPLE,
    turn: Number = EXAMPLE,
    stretch: Number = EXAMPLE,
) -> Answer:
    """How many turns of my reel for this length?

    Args:
        wanted_by: What you want. One of length (A length), mass (A weight), turns (I have the
            turns: what do they hold?); example length.
        wanted_length: Wanted length. Length, m; 0.1 m to 5000 m; example 84 m. Asked where
            wanted_by is length.
        wanted_mass: Wanted weight. Weight, g; 0.1 g to 5 kg; example 20 g. Asked where wanted_by
            is mass.
        wanted_turns: Turns on the reel. A whole number from 1 to 20000; example 54. Asked where
            wanted_by is turns.
        count: Count of the yarn. Yarn count, tex; 0.5 tex to 100000 tex; example 238 tex. None
            leaves it open.
        turn: Once around the reel. Length, m; 0.1 m to 10 m; example 1.50 m.
        stretch: Stretch on the reel. 0 % to 20 %; example 0 %.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - turns: Whole turns.
        - length: Length of those turns, m.
        - mass: Weight of those turns, g.
        - need: Turns needed, with the part turn.
        - margin: Over the wanted length, m.
        - short: Chance that it is short, %.
        - rested_turn: One turn, rested, m.
        - turn_mass: Weight of one turn, g.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
        Memory of the trade (no source read).
    """
    return ask("reel-turns", locals())


class TrueWeightFiber(TypedDict, total=False):
    """Fiber of `true_weight`: a row of its fibers."""

    fiber: Literal[
        "wool, combed (worsted)",
        "wool, carded (woolen) or not known",
        "alpaca, mohair, cashmere, angora, camel, combed",
        "alpaca, mohair, cashmere, angora, camel, carded",
        "silk",
        "cotton",
        "cotton, mercerized",
        "flax (linen)",
        "hemp",
        "ramie, bleached",
        "jute",
        "viscose, modal, cupro",
        "lyocell",
        "acetate",
        "triacetate",
        "polyamide (nylon), staple",
        "polyamide (nylon), filament",
        "polyester",
        "acrylic, modacrylic",
        "elastane",
        "polylactide (PLA)",
    ]
    share: Number


def true_weight(
    *,
    weighed: Number = EXAMPLE,
    labelled: Number | None = EXAMPLE,
    dampness: Literal["humidity", "regain"] = EXAMPLE,
    humidity: Number = EXAMPLE,
    regain: Number = EXAMPLE,
    standard_regain: Number | None = EXAMPLE,
    shares_of: Literal["label", "dry"] = EXAMPLE,
    fibers: list[TrueWeightFiber] = EXAMPLE,
) -> Answer:
    """It says 100 g and my scale says 103: how much yarn is it really?

    Args:
        weighed: Weight on my scale. Weight, g; 1 g to 50 kg; example 103 g.
        labelled: Weight on the label. Weight, g; 1 g to 50 kg; example 100 g. None leaves it
            open.
        dampness: How damp it is. One of humidity (By the humidity of the room), regain (I know
            its regain); example humidity.
        humidity: Relative humidity where it rested. 10 % to 90 %; example 78 %. Asked where
            dampness is humidity.
        regain: Regain as weighed. 0 % to 40 %; example 15.5 %. Asked where dampness is regain.
        standard_regain: Regain at the standard atmosphere. 0 % to 40 %. None leaves it open.
            Asked where dampness is regain.
        shares_of: What the shares are shares of. One of label (As on a label, allowances
            included), dry (The dry weight); example label.
        fibers: Fibers in the yarn, 1 to 6 rows.
            - fiber: Fiber. One of wool, combed (worsted); wool, carded (woolen) or not known;
              alpaca, mohair, cashmere, angora, camel, combed; alpaca, mohair, cashmere, angora,
              camel, carded; silk; cotton; cotton, mercerized; flax (linen); hemp; ramie,
              bleached; jute; viscose, modal, cupro; lyocell; acetate; triacetate; polyamide
              (nylon), staple; polyamide (nylon), filament; polyester; acrylic, modacrylic;
              elastane; polylactide (PLA); example wool, combed (worsted).
            - share: Share. 0 % to 100 %; example 75 %.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - conditioned: At the standard atmosphere, g.
        - water: Water in it as weighed, g.
        - dry: Oven-dry, g.
        - over: Over the label, at the standard atmosphere, g.
        - eu_mass: Commercial weight, EU allowance, g.
        - us_mass: Commercial weight, US regain, g.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        French Republic, Order of 24 June 1998 (ECOC9800073A), Annex II: the EU agreed allowances,
            1998.
        ASTM International, D1909 Standard Tables of Commercial Moisture Regains; values quoted in
            Bioresources and Bioprocessing 2020, Table 10, 2013.
        ASTM International, D1909 Standard Table of Commercial Moisture Regains, extract with
            clause 4.1, 2004.
        ISO, ISO 139 Textiles: standard atmospheres for conditioning and testing (summary), 2005.
        Bioresources and Bioprocessing, Fibre attributes of industrial cellulosic crops, Table 10
            (quotes Morton and Hearle 2008), 2020.
        US National Research Council, Carbon Management, Table 11.1, 2001.
        M. Horikita and others, Moisture sorption properties of wool and hair fibers, Sen'i
            Gakkaishi (abstract), 1989.
        Regain of textile fibers against relative humidity, handbook table of the 1920s recalled,
            not read.
        Memory of the trade (no source read).
    """
    return ask("true-weight", locals())


class YarnCountSingle(TypedDict, total=False):
    """Single of `yarn_count`: a row of its singles."""

    strands: Number
    count: Number


def yarn_count(
    *,
    known: Literal["count", "put-up", "singles"] = EXAMPLE,
    count: Number = EXAMPLE,
    length: Number = EXAMPLE,
    mass: Number = EXAMPLE,
    singles: list[YarnCountSingle] = EXAMPLE,
    take_up: Number = EXAMPLE,
) -> Answer:
    """What is this yarn count in the other systems?

    Args:
        known: What you know of the yarn. One of count (Its count in one system), put-up (Weight
            and length of a put-up), singles (The singles it is plied from); example count.
        count: Count. Yarn count, tex; 0.1 tex to 100000 tex; example 238 tex. Asked where known
            is count.
        length: Length of the put-up. Length, m; 0.1 m to 200 km; example 420 m. Asked where known
            is put-up.
        mass: Weight of the put-up. Weight, g; 0.1 g to 10 kg; example 100 g.
        singles: Singles in the plied yarn, 1 to 8 rows. Asked where known is singles.
            - strands: Strands of it. A whole number from 1 to 50; example 4.
            - count: Count of this single. Yarn count, tex; 0.1 tex to 100000 tex; example 56.5
              tex.
        take_up: Take-up in plying. 0 % to 50 %; example 5 %. Asked where known is singles.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - linear_density: Count of the yarn, tex.
        - putup_length: Length in the put-up, to print, m.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        ASTM International, D2260 Standard Tables of Conversion Factors and Equivalent Yarn
            Numbers, scope and Table 1 (extract), 2003, reapproved 2013.
        Yarn count conversion table on a textile education page.
        Trade pages on yarn counts.
        C. P. Brooks, Cotton Manufacturing, page 91 of the stored text.
        Arithmetic from the definitions (no published source needed).
        Memory of the trade (no source read).
    """
    return ask("yarn-count", locals())


class YarnDiameterFiber(TypedDict, total=False):
    """Fiber of `yarn_diameter`: a row of its blend."""

    fiber: Literal[
        "cotton",
        "viscose",
        "acetate",
        "wool",
        "silk",
        "polyamide (nylon)",
        "polyester",
        "acrylic",
        "polypropylene",
        "polylactide (PLA)",
        "modacrylic",
        "alginate",
        "flax (linen)",
        "hemp",
        "lyocell",
        "modal",
        "mohair, alpaca, cashmere, camel",
        "elastane",
    ]
    share: Number


def yarn_diameter(
    *,
    count: Number = EXAMPLE,
    made_of: Literal["fiber", "blend", "own"] = EXAMPLE,
    fiber: Literal[
        "cotton",
        "viscose",
        "acetate",
        "wool",
        "silk",
        "polyamide (nylon)",
        "polyester",
        "acrylic",
        "polypropylene",
        "polylactide (PLA)",
        "modacrylic",
        "alginate",
        "flax (linen)",
        "hemp",
        "lyocell",
        "modal",
        "mohair, alpaca, cashmere, camel",
        "elastane",
    ] = EXAMPLE,
    blend: list[YarnDiameterFiber] = EXAMPLE,
    density: Number = EXAMPLE,
    packing: Number = EXAMPLE,
    kind: Literal["cotton", "worsted", "woolen", "soft-woolen", "cotton-taylor"] = EXAMPLE,
) -> Answer:
    """How thick is this yarn, and by which model?

    Args:
        count: Count. Yarn count, tex; 0.5 tex to 100000 tex; example 238 tex.
        made_of: What it is made of. One of fiber (One fiber), blend (A blend), own (I know the
            density); example blend.
        fiber: Fiber. One of cotton; viscose; acetate; wool; silk; polyamide (nylon); polyester;
            acrylic; polypropylene; polylactide (PLA); modacrylic; alginate; flax (linen); hemp;
            lyocell; modal; mohair, alpaca, cashmere, camel; elastane; example wool. Asked where
            made_of is fiber.
        blend: Fibers of the blend, 1 to 6 rows. Asked where made_of is blend.
            - fiber: Fiber. One of cotton; viscose; acetate; wool; silk; polyamide (nylon);
              polyester; acrylic; polypropylene; polylactide (PLA); modacrylic; alginate; flax
              (linen); hemp; lyocell; modal; mohair, alpaca, cashmere, camel; elastane; example
              wool.
            - share: Share. 0 % to 100 %; example 75 %.
        density: Density of the fiber. Density, g/cm³; 0.8 g/cm³ to 3 g/cm³; example 1.31 g/cm3.
            Asked where made_of is own.
        packing: Packing: how much of the yarn is fiber. 5 % to 90 %; example 50 %.
        kind: Kind of yarn, for Ashenhurst. One of cotton (Cotton, linen, silk), worsted, woolen,
            soft-woolen (Woolen, soft and lofty), cotton-taylor (Cotton, as Taylor prints it (less
            5 percent)); example worsted.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - solid: Solid model, m.
        - peirce: Peirce, m.
        - ashenhurst: Ashenhurst, m.
        - side_by_side: Diameters side by side, Ashenhurst, per cm.
        - apart: Thickest over thinnest, %.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        F. T. Peirce, Journal of the Textile Institute 28, T45 (yarn diameter), as quoted by N.
            Balasubramanian, Yarn and Cloth, 1937.
        T. R. Ashenhurst, Diameters per inch from yards per pound, as quoted by trade pages.
        J. T. Taylor, Cotton Weaving and Designing, 6th ed., table of diameters per inch, 1909.
        W. E. Morton and J. W. S. Hearle, Physical Properties of Textile Fibres, 4th ed., Table
            5.1, 2008.
        Handbook of Properties of Textile and Technical Fibres, Table 1.1, page 9.
        Trade pages and hand-outs for spinners (wraps per inch beside yards per pound).
        Arithmetic from the definitions (no published source needed).
        Memory of the trade (no source read).
    """
    return ask("yarn-diameter", locals())
