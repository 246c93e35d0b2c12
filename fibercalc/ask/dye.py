"""The cards of the chapter dye as functions; written from them by `make answers`.

Values, what is left out, and what comes back are told in `fibercalc.ask`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal, TypedDict

from . import EXAMPLE, Number, ask

if TYPE_CHECKING:
    from datetime import date

    from ..answered import Answer

__all__ = [
    "base_test",
    "bath_acid",
    "bath_heat",
    "bleed_check",
    "drying",
    "dye_recipe",
    "lot_repeat",
    "paint_plan",
    "pots",
    "shade_steps",
    "speckle_dose",
    "stock_solution",
]


class DyeRecipeDye(TypedDict, total=False):
    """Dye of `dye_recipe`: a row of its dyes."""

    name: str
    depth: Number
    strength: Number


def dye_recipe(
    *,
    skeins: Number = EXAMPLE,
    skein_mass: Number = EXAMPLE,
    damp: Literal["no", "yes"] = EXAMPLE,
    regain_now: Number = EXAMPLE,
    regain_usual: Number = EXAMPLE,
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
    dye_class: Literal[
        "acid-unknown",
        "acid-leveling",
        "acid-half-milling",
        "acid-milling",
        "premetallized-1-2",
        "premetallized-1-1",
        "reactive-unknown",
        "reactive-triazinyl",
        "reactive-vinyl-sulfone",
        "direct",
    ] = EXAMPLE,
    dyes: list[DyeRecipeDye] = EXAMPLE,
    liquor_ratio: Number = EXAMPLE,
    fill: Number = EXAMPLE,
    pick_up: Number = EXAMPLE,
    acid: Literal["citric", "liquid", "soda-ash", "none"] = EXAMPLE,
    acid_share: Number = EXAMPLE,
    acid_strength: Number = EXAMPLE,
    salt_share: Number | None = EXAMPLE,
    syringe: Number = EXAMPLE,
    syringe_error: Number = EXAMPLE,
    lots: Number = EXAMPLE,
    soda: Number = EXAMPLE,
    salt_liter: Number | None = EXAMPLE,
) -> Answer:
    """How much of each dye for this pot?

    Args:
        skeins: Skeins in the lot. A whole number from 1 to 500; example 4.
        skein_mass: A skein weighs. Weight, g; 0.5 g to 5 kg; example 100 g.
        damp: Correct for damp? One of no (No, weighed as usual), yes (Yes, by regain); example
            no.
        regain_now: Regain when weighed. 0 % to 60 %; example 15.5 %. Asked where damp is yes.
        regain_usual: Regain the recipe was made at. 0 % to 60 %; example 13 %. Asked where damp
            is yes.
        fiber: Mostly. One of cotton; viscose; acetate; wool; silk; polyamide (nylon); polyester;
            acrylic; polypropylene; polylactide (PLA); modacrylic; alginate; flax (linen); hemp;
            lyocell; modal; mohair, alpaca, cashmere, camel; elastane; example wool.
        dye_class: Class of dye. One of acid-unknown (Acid dye, class not told), acid-leveling
            (Leveling acid), acid-half-milling (Half-milling acid), acid-milling (Milling acid),
            premetallized-1-2 (Premetallized, 1 metal to 2 dyes), premetallized-1-1
            (Premetallized, 1 metal to 1 dye), reactive-unknown (Reactive, type not told),
            reactive-triazinyl (Reactive, triazinyl), reactive-vinyl-sulfone (Reactive, vinyl
            sulfone), direct; example acid-unknown.
        dyes: Dyes, 1 to 8 rows.
            - name: Name. Text, up to 40 characters of text; example navy.
            - depth: Depth. 0 % to 12 %; example 0.62 %.
            - strength: Strength of its stock. Strength, g/100 mL; 0.005 g/100 mL to 20 g/100 mL;
              example 1 g/100 mL.
        liquor_ratio: Bath for each gram of yarn, mL. Number; 2 to 120; example 20.
        fill: Pot filled to at most. Volume, L; 0.1 L to 500 L; example 9 L.
        pick_up: Water that the soaked yarn brings. 0 % to 600 %; example 150 %.
        acid: Acid or alkali. One of citric (Citric acid, crystals), liquid (Vinegar or acetic
            acid, liquid), soda-ash (No acid: soda ash, for reactive dye), none (None in this
            recipe); example citric.
        acid_share: Acid, percent of the yarn. 0 % to 20 %; example 1 %. Asked where acid is
            citric or liquid.
        acid_strength: Strength of the liquid. Strength, g/100 mL; 1 g/100 mL to 12 g/100 mL;
            example 5 g/100 mL. Asked where acid is liquid.
        salt_share: Glauber’s salt, percent of the yarn. 0 % to 100 %. None leaves it open.
        syringe: Syringe or cylinder holds. Volume, mL; 0.5 mL to 2 L; example 60 mL.
        syringe_error: It is good to. Volume, mL; 0.01 mL to 50 mL; example 1 mL.
        lots: Lots of this in the run. A whole number from 1 to 200; example 1.
        soda: Soda ash in the bath. Strength, g/L; 0.5 g/L to 40 g/L; example 10 g/L. Asked where
            acid is soda-ash.
        salt_liter: Salt in the bath, for plant fiber. Strength, g/L; 0 g/L to 120 g/L. None
            leaves it open.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - stock_total: Stocks in all, mL.
        - dye_total: Dye in all, g.
        - water: Water to top up, mL.
        - acid_pure: Acid, pure, g.
        - acid_volume: Acid, liquid, mL.
        - salt: Glauber’s salt, g.
        - soda_mass: Soda ash, g.
        - salt_bath: Salt, g.
        - bath: Bath in all, mL.
        - potfuls: Potfuls.
        - level: The fullest pot, yarn and all, mL.
        - goods: Yarn, g.
        - total_depth: Depth of shade, %.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Two textile education pages on laboratory dips and dye recipes: volume of stock = W P / C.
        Trade pages on weighing dye by depth of shade.
        Laboratory manual page: a mixed shade from 1 % stocks, salt by the liter.
        B. Venkatesh, Basic dyeing terms, lecture slides: depth on weight of fiber, liquor ratio.
        W. E. Morton and J. W. S. Hearle, Physical Properties of Textile Fibres, 4th ed., Table
            5.1, 2008.
        Hindawi, Depth of shade on mercerized and unmercerized cotton, article 9739380, Table 2,
            2016.
        Textbooks of dyeing: baths, holds, exhaustion, fixation, rates of rise (recalled, not
            read).
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("dye-recipe", locals())


def stock_solution(
    *,
    do: Literal["make", "use-up", "dilute", "extend"] = EXAMPLE,
    wanted: Number = EXAMPLE,
    volume: Number = EXAMPLE,
    powder: Number = EXAMPLE,
    have: Number = EXAMPLE,
    left: Number = EXAMPLE,
    strength_left: Number = EXAMPLE,
    jar: Literal["no", "yes"] = EXAMPLE,
    old_jar: Number = EXAMPLE,
    new_jar: Number = EXAMPLE,
    scale_error: Number = EXAMPLE,
    jug_error: Number = EXAMPLE,
    kind: Literal["acid", "direct", "reactive"] = EXAMPLE,
    weeks: Number = EXAMPLE,
    name: str = EXAMPLE,
    lot: str | None = EXAMPLE,
    made: date | str = EXAMPLE,
    hazards: str | None = EXAMPLE,
) -> Answer:
    """How do I make up this stock?

    Args:
        do: What to do. One of make (Make it from powder), use-up (Use up an odd amount of
            powder), dilute (Thin a stronger stock), extend (Extend what is left); example make.
        wanted: Strength wanted. Strength, g/100 mL; 0.001 g/100 mL to 20 g/100 mL; example 1
            g/100 mL.
        volume: Final volume. Volume, mL; 5 mL to 50 L; example 500 mL. Asked where do is make or
            dilute or extend.
        powder: Powder you have. Weight, g; 0.01 g to 2 kg; example 3.7 g. Asked where do is
            use-up.
        have: Strength of the strong stock. Strength, g/100 mL; 0.001 g/100 mL to 20 g/100 mL;
            example 5 g/100 mL. Asked where do is dilute.
        left: Stock left. Volume, mL; 0 mL to 50 L; example 120 mL. Asked where do is extend.
        strength_left: Strength of what is left. Strength, g/100 mL; 0.001 g/100 mL to 20 g/100
            mL; example 1 g/100 mL. Asked where do is extend.
        jar: Does this jar differ in strength from the one your recipes are from? One of no (No,
            or not known), yes; example no. Asked where do is make or use-up or extend.
        old_jar: The old jar’s strength. Number; 10 to 400; example 100. Asked where jar is yes
            and do is make or use-up or extend.
        new_jar: This jar’s strength. Number; 10 to 400; example 125. Asked where jar is yes and
            do is make or use-up or extend.
        scale_error: The scale is good to. Weight, g; 0.0005 g to 5 g; example 0.02 g.
        jug_error: The jug or flask is good to. Volume, mL; 0.1 mL to 500 mL; example 5 mL.
        kind: Kind of dye. One of acid (Acid or metal-complex dye), direct (Direct dye), reactive
            (Reactive dye); example acid.
        weeks: Weeks it will stand. Number; 0 to 104; example 8.
        name: Name on the bottle. Text, up to 40 characters of text; example navy.
        lot: Lot of the jar. Text, up to 24 characters of text. None leaves it open.
        made: Made on. A date such as 2027-03-05 or 5 Mar 2027; example 2027-01-11.
        hazards: Hazard words of its safety data sheet. Text, up to 200 characters of text. None
            leaves it open.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - powder_to_weigh: Powder to weigh, g.
        - stock: Of the strong stock, mL.
        - water: Water, to the mark, mL.
        - final: Make it up to, mL.
        - holds: Powder in it, as weighed, g/100 mL.
        - may_be_off: Strength may be off by, either way, %.
        - weakest: After those weeks, at the weakest, g/100 mL.
        - strongest: at the strongest, g/100 mL.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Arithmetic from the definitions (no published source needed).
        Common practice (no published source).
        Memory of the trade (no source read).
    """
    return ask("stock-solution", locals())


class ShadeStepsDye(TypedDict, total=False):
    """Dye of `shade_steps`: a row of its dyes."""

    name: str
    sample: str
    percent: Number
    first: Number
    last: Number


def shade_steps(
    *,
    undyed: str = EXAMPLE,
    dyes: list[ShadeStepsDye] = EXAMPLE,
    way: Literal["straight", "through"] = EXAMPLE,
    count: Number = EXAMPLE,
    fiber: Number = EXAMPLE,
    dose_by: Literal["powder", "stock"] = EXAMPLE,
    scale_step: Number = EXAMPLE,
    strength: Number = EXAMPLE,
    syringe_step: Number = EXAMPLE,
    seen: Literal["instrument", "together", "photo", "swatch", "plain", "screen"] = EXAMPLE,
    gray: str | None = EXAMPLE,
) -> Answer:
    """How do I step from light to dark evenly?

    Args:
        undyed: Undyed fiber. A color such as #6b7f8f or lab(52 -3 -9); example #efe6d2.
        dyes: Dyes, 1 to 3 rows.
            - name: Name. Text, up to 14 characters of text; example navy.
            - sample: Color of its sample. A color such as #6b7f8f or lab(52 -3 -9); example
              #27406a.
            - percent: Depth of that sample. 0.05 % to 12 %; example 2 %.
            - first: Depth on the first skein. 0 % to 12 %; example 0.08 %.
            - last: Depth on the last skein. 0 % to 12 %; example 1.92 %.
        way: With several dyes. One of straight (All of them from first to last), through (From
            one dye to the next, each at its last depth); example straight.
        count: Skeins. A whole number from 2 to 60; example 12.
        fiber: Yarn of each shade. Weight, g; 1 g to 50 kg; example 501 g.
        dose_by: Dosed as. One of powder (Powder, on the scale), stock (Stock, by syringe);
            example powder.
        scale_step: The scale shows steps of. Weight, g; 0.0001 g to 1 g; example 0.01 g. Asked
            where dose_by is powder.
        strength: Strength of the stock. Strength, g/100 mL; 0.005 g/100 mL to 20 g/100 mL;
            example 1 g/100 mL. Asked where dose_by is stock.
        syringe_step: The syringe is read to. Volume, mL; 0.01 mL to 50 mL; example 1 mL. Asked
            where dose_by is stock.
        seen: How the colors were seen. One of instrument (Read by a color instrument, mean of
            three places on wound yarn), together (Both skeins in one photo beside a gray card),
            photo (A photo beside a gray card), swatch (By eye against numbered swatches of your
            own, in daylight), plain (A photo without a gray card), screen (Picked on a screen to
            look like it); example photo.
        gray: The gray card in that photo. A color such as #6b7f8f or lab(52 -3 -9). None leaves
            it open. Asked where seen is together or photo.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - mean: A step, CIEDE2000.
        - uneven: Even steps, off by, %.
        - weighed: as weighed, off by, %.
        - geometric: Geometric ladder, off by, %.
        - equal: Equal percents, off by, %.
        - ratio: Ratio of a geometric ladder.
        - dye_total: Dye in all shades, even steps, g.
        - geometric_total: Dye in all shades, geometric, g.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        An instrument maker's application note on Kubelka-Munk theory (K/S, its additivity, where
            it is weak), 2008.
        G. Sharma, W. Wu, E. N. Dalal, The CIEDE2000 color-difference formula, Color Research and
            Application 30, 21: abstract read, the rows of Table 1 in several public test suites,
            2005.
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("shade-steps", locals())


def bath_acid(
    *,
    do: Literal["amount", "target", "swap"] = EXAMPLE,
    liters: Number = EXAMPLE,
    water: Literal["soft", "middling", "hard", "pure", "known"] = EXAMPLE,
    alkalinity: Number = EXAMPLE,
    chemical: Literal[
        "citric",
        "citric-monohydrate",
        "acetic",
        "formic",
        "ammonia",
        "soda-ash",
        "washing-soda",
        "bicarbonate",
    ] = EXAMPLE,
    grams: Number = EXAMPLE,
    strength: Number = EXAMPLE,
    target: Number = EXAMPLE,
    other: Literal[
        "citric",
        "citric-monohydrate",
        "acetic",
        "formic",
        "ammonia",
        "soda-ash",
        "washing-soda",
        "bicarbonate",
    ] = EXAMPLE,
    other_strength: Number = EXAMPLE,
    strip: Number | None = EXAMPLE,
) -> Answer:
    """How sour is the bath?

    Args:
        do: What you want. One of amount (The pH that an amount gives), target (The amount for a
            pH), swap (Another acid for the same pH); example amount.
        liters: Bath. Volume, L; 50 mL to 1000 L; example 8 L.
        water: Water. One of soft, middling (In between), hard (Hard: kettles fur up), pure (Rain
            or distilled), known (Its alkalinity is known); example soft.
        alkalinity: Alkalinity, mg/L as calcium carbonate. Number; 0 to 1000; example 40. Asked
            where water is known.
        chemical: Acid or alkali. One of citric (Citric acid, anhydrous), citric-monohydrate
            (Citric acid, monohydrate), acetic (Acetic acid), formic (Formic acid), ammonia,
            soda-ash (Soda ash (sodium carbonate, anhydrous)), washing-soda (Washing soda crystals
            (sodium carbonate, decahydrate)), bicarbonate (Baking soda (sodium bicarbonate));
            example citric.
        grams: How much, pure. Weight, g; 0 g to 20 kg; example 4 g. Asked where do is amount or
            swap.
        strength: Strength of the liquid, by weight. 1 % to 90 %; example 5 %. Asked where
            chemical is acetic or formic or ammonia.
        target: pH wanted. Number; 1 to 13; example 4. Asked where do is target.
        other: Instead of it. One of citric (Citric acid, anhydrous), citric-monohydrate (Citric
            acid, monohydrate), acetic (Acetic acid), formic (Formic acid), ammonia, soda-ash
            (Soda ash (sodium carbonate, anhydrous)), washing-soda (Washing soda crystals (sodium
            carbonate, decahydrate)), bicarbonate (Baking soda (sodium bicarbonate)); example
            acetic. Asked where do is swap.
        other_strength: Strength of that liquid, by weight. 1 % to 90 %; example 5 %. Asked where
            do is swap and other is acetic or formic or ammonia.
        strip: What a pH strip says. Number; 0 to 14. None leaves it open.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - ph: pH, water alone, before fiber.
        - pure: Acid or alkali, pure, g.
        - volume: as the liquid, mL.
        - other_grams: The other one, pure, g.
        - other_volume: as its liquid, mL.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        R. N. Goldberg, N. Kishore, R. M. Lennen, Thermodynamic quantities for the ionization
            reactions of buffers, Journal of Physical and Chemical Reference Data 31 (phthalic and
            boric: Robinson and Stokes), 2002.
        KTH Royal Institute of Technology, Help of an equilibrium program: activity coefficients,
            the Davies equation.
        IUPAC, Standard atomic weights, added up by formula.
        Densities of aqueous solutions at 20 °C, handbook tables recalled, not read.
        pH of common acids and bases, a calculated table for 25 °C.
        Common practice (no published source).
    """
    return ask("bath-acid", locals())


def bath_heat(
    *,
    bath: Number = EXAMPLE,
    fiber_mass: Number = EXAMPLE,
    fiber: Literal["wool", "cotton", "nylon"] = EXAMPLE,
    pot_mass: Number = EXAMPLE,
    pot: Literal["stainless", "aluminum", "enamel"] = EXAMPLE,
    start: Number = EXAMPLE,
    top: Number = EXAMPLE,
    hold: Number = EXAMPLE,
    rate: Number = EXAMPLE,
    room: Number = EXAMPLE,
    power: Number = EXAMPLE,
    heater: Literal["immersed", "induction", "ring", "gas"] = EXAMPLE,
    efficiency: Number | None = EXAMPLE,
    lid: Literal["lid", "open"] = EXAMPLE,
    altitude: Number = EXAMPLE,
    begin: str = EXAMPLE,
    price: Number | None = EXAMPLE,
    cooled: Literal["no", "yes"] = EXAMPLE,
    first: Number = EXAMPLE,
    second: Number = EXAMPLE,
    between: Number = EXAMPLE,
    touch: Number = EXAMPLE,
    pause_at: Number | None = EXAMPLE,
    pause: Number = EXAMPLE,
) -> Answer:
    """When will it be hot, and when can I lift it out?

    Args:
        bath: Bath. Volume, L; 0.1 L to 500 L; example 9 L.
        fiber_mass: Yarn in it, dry. Weight, g; 0 g to 50 kg; example 400 g.
        fiber: Mostly. One of wool (Wool, hair or silk (as wool)), cotton (Cotton or flax (as
            cotton)), nylon; example wool.
        pot_mass: The pot weighs, empty. Weight, kg; 0 g to 60 kg; example 2 kg.
        pot: Pot. One of stainless (Stainless steel pot), aluminum (Aluminum pot), enamel
            (Enameled steel pot); example stainless.
        start: Bath now. Temperature, °C; 1 °C to 99 °C; example 9 °C.
        top: Heat to. Temperature, °C; 20 °C to 100 °C; example 92 °C.
        hold: Hold. Time, min; 0 min to 24 h; example 45 min.
        rate: No faster than, °C a minute. Number; 0.1 to 20; example 2.
        room: Room. Temperature, °C; -10 °C to 50 °C; example 11 °C.
        power: Plate or burner. Power, kW; 0.1 kW to 50 kW; example 2 kW.
        heater: Kind of heater. One of immersed (Immersed element (urn, kettle)), induction
            (Induction plate), ring (Electric ring or plate), gas (Gas burner); example ring.
        efficiency: Share of it that reaches the bath. 5 % to 100 %; example 60 %. None leaves it
            open.
        lid: Lid. One of lid (Lid on), open (Lid off); example lid.
        altitude: Height above the sea. Length, m; -400 m to 5000 m; example 900 m.
        begin: You begin at. Text, up to 5 characters of text; example 9:00.
        price: A kilowatt-hour costs. Money, 0 to 10; example 0.30. None leaves it open.
        cooled: Two readings of it cooling? One of no, yes; example no.
        first: First reading. Temperature, °C; 10 °C to 100 °C; example 85 °C. Asked where cooled
            is yes.
        second: Second reading. Temperature, °C; 5 °C to 100 °C; example 70 °C. Asked where cooled
            is yes.
        between: Minutes between them. Time, min; 1 min to 24 h; example 45 min. Asked where
            cooled is yes.
        touch: Cool enough at. Temperature, °C; 10 °C to 60 °C; example 40 °C.
        pause_at: Wait on the way at. Temperature, °C; 15 °C to 99 °C. None leaves it open.
        pause: Wait there for. Time, min; 0 min to 12 h; example 15 min.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - minutes: Heating at full power, losses and all, min.
        - bare: without losses, min.
        - hold_time: Hold, min.
        - whole: From start to the end of the hold, min.
        - cool: Cooling down, heat off, min.
        - energy: Energy into the bath, kWh.
        - metered: by the meter, without losses, kWh.
        - used: by the meter, losses and hold, kWh.
        - cost: It costs.
        - level: Bath and yarn stand at, mL.
        - boils: Water boils here at, °C.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Handbook values of specific heat and of heater efficiency (recalled, not read).
        Antoine equation of water, 1 to 100 °C, constants recalled, not read; boiling points
            checked against pocket-ref-boiling.
        Pressure of the standard atmosphere by altitude, constants recalled, not read.
        Boiling points by altitude from a pocket handbook, 4th ed., as quoted and fitted by a web
            page, 2018.
        W. E. Morton and J. W. S. Hearle, Physical Properties of Textile Fibres, 4th ed., Table
            5.1, 2008.
        W. E. Morton and J. W. S. Hearle, Physical Properties of Textile Fibres, Table 6.1
            (edition not noted).
        US Consumer Product Safety Commission, Document 5012: carbon monoxide has no odor; an open
            window or a fan does not assure that it stays low.
        Common practice (no published source).
    """
    return ask("bath-heat", locals())


class PaintPlanSection(TypedDict, total=False):
    """Section of `paint_plan`: a row of its sections."""

    name: str
    share: Number
    depth: Number


def paint_plan(
    *,
    skein_mass: Number = EXAMPLE,
    full: Number = EXAMPLE,
    damp: Number = EXAMPLE,
    sections: list[PaintPlanSection] = EXAMPLE,
    stock: Number = EXAMPLE,
    skeins: Number = EXAMPLE,
    at_once: Number = EXAMPLE,
    fiber: Literal["wool", "superwash-wool", "nylon", "silk", "cotton"] = EXAMPLE,
) -> Answer:
    """How much liquor for each painted section?

    Args:
        skein_mass: A skein weighs, dry. Weight, g; 1 g to 2 kg; example 100 g.
        full: Wet through it holds, percent of dry. 10 % to 1000 %; example 250 %.
        damp: Before painting it holds. 0 % to 900 %; example 80 %.
        sections: Sections, 1 to 12 rows.
            - name: Name. Text, up to 20 characters of text; example slate.
            - share: Share. Number; 0.5 to 1000; example 50.
            - depth: Depth. 0 % to 8 %; example 0.9 %.
        stock: Strength of the stocks. Strength, g/100 mL; 0.005 g/100 mL to 20 g/100 mL; example
            2 g/100 mL.
        skeins: Skeins. A whole number from 1 to 200; example 4.
        at_once: Skeins in the steamer at once. A whole number from 1 to 100; example 4.
        fiber: Fiber and dye. One of wool (Acid dye on wool and other hair), superwash-wool (Acid
            dye on superwash wool and its nylon blends), nylon (Acid dye on nylon), silk (Acid dye
            on silk), cotton (Reactive dye on cotton with soda on it); example superwash-wool.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - liquor: Liquor that one skein takes up, mL.
        - run_liquor: Liquor for all skeins, mL.
        - stock_all: Stocks in it, mL.
        - rounds: Rounds in the steamer.
        - steaming: Steaming in all, once hot, min.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("paint-plan", locals())


class BaseTestDye(TypedDict, total=False):
    """Dye of `base_test`: a row of its dyes."""

    name: str
    usual: Number
    new: Number


def base_test(
    *,
    dyes: list[BaseTestDye] = EXAMPLE,
    length_before: Number = EXAMPLE,
    length_after: Number = EXAMPLE,
    mass_before: Number = EXAMPLE,
    mass_after: Number = EXAMPLE,
) -> Answer:
    """Will my colors come out on this base?

    Args:
        dyes: Dyes tested, 1 to 10 rows.
            - name: Name. Text, up to 20 characters of text; example navy.
            - usual: Depth on the usual base. 0.01 % to 12 %; example 0.62 %.
            - new: Depth on this base that matches it. 0.01 % to 12 %; example 0.70 %.
        length_before: Length before. Length, m; 0.5 m to 2000 m; example 21 m.
        length_after: Length after dyeing. Length, m; 0.1 m to 2000 m; example 20.4 m.
        mass_before: Weight before. Weight, g; 0.5 g to 1 kg; example 5.00 g.
        mass_after: Weight after. Weight, g; 0.1 g to 1 kg; example 4.92 g.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - verdict: Go or no-go, in words.
        - mean_factor: Depth factor, mean.
        - apart: Largest factor over smallest.
        - longer: Change of length, %.
        - heavier: Change of weight, %.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("base-test", locals())


def speckle_dose(
    *,
    skein_mass: Number = EXAMPLE,
    depth: Number = EXAMPLE,
    colors: Number = EXAMPLE,
    ground_depth: Number = EXAMPLE,
    one_in: Number = EXAMPLE,
    skeins: Number = EXAMPLE,
    lost: Number = EXAMPLE,
    scale_error: Number = EXAMPLE,
    spots: Number = EXAMPLE,
) -> Answer:
    """How do I dose dry speckles evenly?

    Args:
        skein_mass: A skein weighs. Weight, g; 5 g to 2 kg; example 100 g.
        depth: Each color, percent of the skein. 0.001 % to 2 %; example 0.06 %.
        colors: Colors. A whole number from 1 to 12; example 3.
        ground_depth: Ground under it, percent. 0 % to 12 %; example 0.9 %.
        one_in: One part of dye in how many of mix. Number; 2 to 200; example 20.
        skeins: Skeins in the run. A whole number from 1 to 500; example 4.
        lost: Lost on the way. 0 % to 90 %; example 10 %.
        scale_error: The scale is good to. Weight, g; 0.0005 g to 2 g; example 0.02 g.
        spots: Spots to be seen on a skein. Number; 1 to 5000; example 120.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - mix: Mix of each color for a skein, g.
        - each: Dye in it, g.
        - run: Dye of each color for the run, g.
        - carrier: Carrier for it, g.
        - before: Error weighed as dye, either way, %.
        - after: Error weighed as mix, either way, %.
        - share: Speckle in the whole shade, %.
        - scatter: Spots vary by (standard deviation), %.
        - busier: Pairs where one has 1.5 times the spots, %.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("speckle-dose", locals())


class LotRepeatDye(TypedDict, total=False):
    """Dye of `lot_repeat`: a row of its dyes."""

    name: str
    sample: str
    percent: Number
    depth: Number


def lot_repeat(
    *,
    old: str = EXAMPLE,
    new: str = EXAMPLE,
    seen: Literal["instrument", "together", "photo", "swatch", "plain", "screen"] = EXAMPLE,
    undyed: str = EXAMPLE,
    dyes: list[LotRepeatDye] = EXAMPLE,
    fiber: Number = EXAMPLE,
    only_add: Literal["no", "yes"] = EXAMPLE,
    gray: str | None = EXAMPLE,
) -> Answer:
    """Does this lot match the old one?

    Args:
        old: The old lot. A color such as #6b7f8f or lab(52 -3 -9); example lab(29.2 -0.8 -12.4).
        new: The new lot. A color such as #6b7f8f or lab(52 -3 -9); example lab(31.8 -1 -11.4).
        seen: How they were seen. One of instrument (Read by a color instrument, mean of three
            places on wound yarn), together (Both skeins in one photo beside a gray card), photo
            (A photo beside a gray card), swatch (By eye against numbered swatches of your own, in
            daylight), plain (A photo without a gray card), screen (Picked on a screen to look
            like it); example together.
        undyed: Undyed fiber. A color such as #6b7f8f or lab(52 -3 -9); example #efe6d2.
        dyes: Dyes of the recipe, 1 to 3 rows.
            - name: Name. Text, up to 14 characters of text; example navy.
            - sample: Color of its sample. A color such as #6b7f8f or lab(52 -3 -9); example
              #27406a.
            - percent: Depth of that sample. 0.05 % to 12 %; example 2 %.
            - depth: Depth used. 0 % to 12 %; example 0.62 %.
        fiber: Yarn of the next lot. Weight, g; 1 g to 50 kg; example 400 g.
        only_add: Does the new lot itself go back into the pot? One of no (No, the next lot is
            changed), yes (Yes, dye can only be added); example no.
        gray: The gray card in that photo. A color such as #6b7f8f or lab(52 -3 -9). None leaves
            it open. Asked where seen is together or photo.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - seen_as: Side by side, in words.
        - before: Difference, CIEDE2000.
        - after: Left of it after the nudge.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        G. Sharma, W. Wu, E. N. Dalal, The CIEDE2000 color-difference formula, Color Research and
            Application 30, 21: abstract read, the rows of Table 1 in several public test suites,
            2005.
        An instrument maker's application note on Kubelka-Munk theory (K/S, its additivity, where
            it is weak), 2008.
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("lot-repeat", locals())


class BleedCheckRinse(TypedDict, total=False):
    """Rinse of `bleed_check`: a row of its rinses."""

    jar: Number


def bleed_check(
    *,
    jar: Number = EXAMPLE,
    mass: Number = EXAMPLE,
    depth: Number = EXAMPLE,
    rinsed: Literal["yes", "no"] = EXAMPLE,
    rinses: list[BleedCheckRinse] = EXAMPLE,
    wanted: Number = EXAMPLE,
    held: Number = EXAMPLE,
    rinse: Number = EXAMPLE,
    bath_colored: Literal["not known", "yes", "no"] = EXAMPLE,
    rinses_fall: Literal["not known", "yes", "no"] = EXAMPLE,
    bleeds_again: Literal["not known", "yes", "no"] = EXAMPLE,
    cloth_stain: Literal["not known", "yes", "no"] = EXAMPLE,
    fibers_seen: Literal["not known", "yes", "no"] = EXAMPLE,
    high_ph: Literal["not known", "yes", "no"] = EXAMPLE,
    over_held: Literal["not known", "yes", "no"] = EXAMPLE,
    short_hold: Literal["not known", "yes", "no"] = EXAMPLE,
    hard_water: Literal["not known", "yes", "no"] = EXAMPLE,
    other_fiber: Literal["not known", "yes", "no"] = EXAMPLE,
) -> Answer:
    """Why does color come off, and how many rinses still?

    Args:
        jar: The cooled bath matches jar. Number; 0 to 12; example 4.
        mass: Yarn in it, dry. Weight, g; 0.5 g to 50 kg; example 400 g.
        depth: Depth of shade, all dyes. 0.001 % to 20 %; example 0.9 %.
        rinsed: Did you compare the rinses with the jars? One of yes, no; example yes.
        rinses: Rinses so far, 1 to 10 rows. Asked where rinsed is yes.
            - jar: Jar. Number; 0 to 16; example 5.
        wanted: Pale enough at, percent of the first bath. 0.005 % to 20 %; example 0.2 %. Asked
            where rinsed is yes.
        held: Water the squeezed yarn holds. Volume, mL; 1 mL to 100 L; example 600 mL.
        rinse: Clean water of one rinse. Volume, L; 0.05 L to 500 L; example 6 L.
        bath_colored: Is the cooled bath still clearly colored? One of not known, yes, no; example
            yes.
        rinses_fall: Is each rinse clearly paler than the one before? One of not known, yes, no;
            example yes.
        bleeds_again: Does clear warm water color again after an hour's soak? One of not known,
            yes, no; example not known.
        cloth_stain: Does a damp white cloth take an even stain? One of not known, yes, no;
            example not known.
        fibers_seen: Are colored hairs to be seen on that cloth? One of not known, yes, no;
            example not known.
        high_ph: Does a strip read above the dye's window? One of not known, yes, no; example not
            known.
        over_held: Is the total depth above what the dye class holds? One of not known, yes, no;
            example not known.
        short_hold: Was the hold cut short, or the bath cooler than planned? One of not known,
            yes, no; example not known.
        hard_water: Is the water hard? One of not known, yes, no; example not known.
        other_fiber: Is there fiber in the yarn that this dye does not suit? One of not known,
            yes, no; example not known.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - left: Color left in the bath, %.
        - exhausted: Gone onto the fiber, %.
        - grams: Dye left in it, g.
        - share: What a rinse leaves, fitted, %.
        - by_water: What it would leave by its water alone, %.
        - more: Rinses still to come.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Arithmetic from the definitions (no published source needed).
        Common practice (no published source).
        Textbooks of dyeing: baths, holds, exhaustion, fixation, rates of rise (recalled, not
            read).
    """
    return ask("bleed-check", locals())


def drying(
    *,
    dry_mass: Number = EXAMPLE,
    dry_regain: Number = EXAMPLE,
    wet_mass: Number = EXAMPLE,
    temperature: Number = EXAMPLE,
    humidity: Number = EXAMPLE,
    rest: Number = EXAMPLE,
    fan: Literal["no", "yes"] = EXAMPLE,
    weighed: Literal["no", "yes"] = EXAMPLE,
    weighed_mass: Number = EXAMPLE,
    after: Number = EXAMPLE,
    skeins: Number = EXAMPLE,
    rail: Number = EXAMPLE,
    each: Number = EXAMPLE,
) -> Answer:
    """When is it dry enough to weigh and label?

    Args:
        dry_mass: It weighed, dry. Weight, g; 1 g to 50 kg; example 400 g.
        dry_regain: Regain then. 0 % to 40 %; example 13 %.
        wet_mass: It weighs, wet. Weight, g; 1 g to 100 kg; example 760 g.
        temperature: Room. Temperature, °C; 2 °C to 45 °C; example 11 °C.
        humidity: Humidity of the room. 5 % to 98 %; example 78 %.
        rest: Regain at rest in that room. 0 % to 40 %; example 15.5 %.
        fan: A fan on it? One of no, yes; example no.
        weighed: Weighed again since? One of no, yes; example no.
        weighed_mass: It weighed then. Weight, g; 1 g to 100 kg; example 620 g. Asked where
            weighed is yes.
        after: after. Time, h; 10 min to 20 day; example 8 h. Asked where weighed is yes.
        skeins: Skeins in all. A whole number from 1 to 2000; example 24.
        rail: Rail. Length, m; 0.1 m to 200 m; example 3 m.
        each: One skein takes. Length, cm; 2 cm to 1 m; example 12 cm.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - time: Time to dry, min.
        - water: Water to lose, g.
        - ready_mass: Weigh it for sale at or under, g.
        - rounds: Rail fillings.
        - all: All of them, min.
        - wet: Water in it now, of its oven-dry weight, %.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Antoine equation of water, 1 to 100 °C, constants recalled, not read; boiling points
            checked against pocket-ref-boiling.
        Regain of textile fibers against relative humidity, handbook table of the 1920s recalled,
            not read.
        Memory of the trade (no source read).
        Common practice (no published source).
    """
    return ask("drying", locals())


class PotsRecipe(TypedDict, total=False):
    """Recipe of `pots`: a row of its recipes."""

    name: str
    skeins: Number


class PotsPot(TypedDict, total=False):
    """Pot of `pots`: a row of its pots."""

    fill: Number


class PotsStep(TypedDict, total=False):
    """Step of `pots`: a row of its steps."""

    name: str
    minutes: Number
    needs: Literal["nothing", "pot", "pot-hands", "burner", "burner-hands", "hands"]


def pots(
    *,
    recipes: list[PotsRecipe] = EXAMPLE,
    skein_mass: Number = EXAMPLE,
    liquor_ratio: Number = EXAMPLE,
    pots: list[PotsPot] = EXAMPLE,
    burners: Number = EXAMPLE,
    hands: Number = EXAMPLE,
    steps: list[PotsStep] = EXAMPLE,
    day: Number = EXAMPLE,
    opens: str = EXAMPLE,
    rail: Number = EXAMPLE,
    drying: Number = EXAMPLE,
) -> Answer:
    """How long does the whole run take?

    Args:
        recipes: Recipes, 1 to 40 rows.
            - name: Name. Text, up to 40 characters of text; example A.
            - skeins: Skeins. A whole number from 1 to 400; example 36.
        skein_mass: A skein weighs. Weight, g; 1 g to 5 kg; example 100 g.
        liquor_ratio: Bath for each gram of yarn, mL. Number; 2 to 120; example 20.
        pots: Pots, 1 to 8 rows.
            - fill: Filled to at most. Volume, L; 0.1 L to 500 L; example 9 L.
        burners: Plates or burners. A whole number from 1 to 8; example 2.
        hands: People. A whole number from 1 to 6; example 1.
        steps: Steps of a load, in order, 1 to 12 rows.
            - name: Name. Text, up to 14 characters of text; example wet out.
            - minutes: Takes. Time, min; 0 min to 48 h; example 30 min.
            - needs: and needs. One of nothing, pot (the pot), pot-hands (the pot and hands),
              burner (the pot on a burner), burner-hands (the pot on a burner, and hands), hands;
              example nothing.
        day: Working hours of a day. Time, h; 1 h to 24 h; example 8 h.
        opens: The day begins at. Text, up to 5 characters of text; example 8:00.
        rail: Skeins that hang on the rail. A whole number from 1 to 2000; example 48.
        drying: They dry in. Time, h; 0 h to 160 h; example 40 h.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - loads: Loads.
        - dye_days: Dye days.
        - drying_days: Drying days after that.
        - work: Until the last load is rinsed, nights and all, min.
        - bound: No plan is faster than, min.
        - over: Over that, percent.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Arithmetic from the definitions (no published source needed).
        US Consumer Product Safety Commission, Document 5012: carbon monoxide has no odor; an open
            window or a fan does not assure that it stays low.
        Common practice (no published source).
    """
    return ask("pots", locals())
