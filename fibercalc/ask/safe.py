"""The cards of the chapter safe as functions; written from them by `make answers`.

Values, what is left out, and what comes back are told in `fibercalc.ask`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal, TypedDict

from . import EXAMPLE, Number, ask

if TYPE_CHECKING:
    from ..answered import Answer

__all__ = [
    "acid_dilution",
    "drain_check",
    "hazard_label",
    "lift",
    "mordant_limit",
    "room_air",
    "scald",
]


def acid_dilution(
    *,
    acid: Literal["acetic", "citric", "formic"] = EXAMPLE,
    have: Number = EXAMPLE,
    wanted: Number = EXAMPLE,
    by: Literal["volume", "mass"] = EXAMPLE,
    mass: Number = EXAMPLE,
    volume: Number = EXAMPLE,
) -> Answer:
    """How do I make weaker acid from stronger?

    Args:
        acid: Acid. One of acetic (Acetic (vinegar)), citric (Citric, in solution), formic;
            example acetic.
        have: Strength you have. 1 % to 100 %; example 50.
        wanted: Strength wanted. 0.1 % to 99 %; example 5.
        by: You measure the weak acid. One of volume (by volume), mass (by weight); example
            volume.
        mass: Weak acid wanted. Weight, g; 10 g to 50 kg; example 1000 g. Asked where by is mass.
        volume: Weak acid wanted. Volume, L; 10 mL to 50 L; example 1 L. Asked where by is volume.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - water_volume: 1. Water first, mL.
        - acid_volume: 2. Strong acid into it, mL.
        - acid_mass: or by weight: acid, g.
        - water_mass: and water, g.
        - strong_class: The strong acid is, in words.
        - weak_class: The weak acid is, in words.
        - limit: Published limit, in words.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        European Union, Regulation (EC) No 1272/2008 (CLP), Annexes I and VI: limits as quoted by
            others, 2008.
        European Union, Regulation (EC) No 1272/2008 (CLP), Annexes I and VI: entries recalled,
            not read, 2008.
        Densities of aqueous solutions of organic acids at 20 °C, a table on an engineering page.
        Densities of aqueous solutions at 20 °C, handbook tables recalled, not read.
        Arithmetic from the definitions (no published source needed).
    """
    return ask("acid-dilution", locals())


class RoomAirSpell(TypedDict, total=False):
    """Time of `room_air`: a row of its times."""

    vapor: Literal["acetic", "formic", "ammonia"]
    pot: Literal["lid", "simmer", "boil"]
    strength: Number
    time: Number


def room_air(
    *,
    stop: Literal["none", "pregnant", "lungs", "children", "food"] = EXAMPLE,
    what: Literal["vapor", "powder"] = EXAMPLE,
    room: Number = EXAMPLE,
    air: Literal["closed", "window", "fan", "known"] = EXAMPLE,
    changes: Number = EXAMPLE,
    mixing: Number = EXAMPLE,
    pans: Number = EXAMPLE,
    across: Number = EXAMPLE,
    times: list[RoomAirSpell] = EXAMPLE,
) -> Answer:
    """What does the pot do to the air?

    Args:
        stop: Does one of these hold? One of none (None of them), pregnant (Pregnant or nursing),
            lungs (Asthma, or a dye allergy), children (Children or pets in the room), food (A
            kitchen for food); example none.
        what: In the air. One of vapor (Vapor of a bath), powder (Dust of a dye); example vapor.
        room: Room. Volume, m³; 3 m³ to 2000 m³; example 30 m³.
        air: Airing. One of closed (Window and door closed), window (Window open), fan (Fan
            blowing out of the window, door ajar), known (I know the air changes); example window.
        changes: Air changes in an hour. Number; 0.1 to 60; example 2. Asked where air is known.
        mixing: Mixing factor. Number; 1 to 10; example 5.
        pans: Pots at once. A whole number from 1 to 20; example 2. Asked where what is vapor.
        across: Width of a pot. Length, cm; 5 cm to 200 cm; example 28 cm. Asked where what is
            vapor.
        times: Times of the day, 1 to 6 rows. Asked where what is vapor.
            - vapor: Vapor. One of acetic (Acetic acid), formic (Formic acid), ammonia; example
              acetic.
            - pot: The pot. One of lid (Lid on, below the boil), simmer (Open, simmering), boil
              (Open, rolling boil); example simmer.
            - strength: Pure acid in the bath. Strength, g/L; 0.001 g/L to 100 g/L; example 0.56
              g/L.
            - time: For. Time, min; 1 min to 8 h; example 60 min.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - controls: Do first, in words.
        - index: Share of the 8-hour limit, %.
        - short: Share of the 15-minute limit, %.
        - peak: Highest level in the room, ppm.
        - ceiling: Share of the ceiling, %.
        - idlh: Share of what is immediately dangerous (IDLH), %.
        - clear: Until 1 % is left, min.
        - limit: Published limit, in words.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        OSHA, 29 CFR 1910.1000 Air contaminants, Table Z-1 and paragraph (d).
        NIOSH, Recommended exposure limits and IDLH documentation: acetic and formic acid read,
            ammonia in pages that quote it.
        UK Health and Safety Executive, EH40/2005 Workplace exposure limits, 4th ed.; values
            recalled, ammonia in an extract, 2020.
        California Department of Industrial Relations, Title 8, section 5155, Table AC-1: acetic
            acid, ceiling 40 ppm.
        CDC, Guidelines for Environmental Infection Control, Appendix B: air changes and time to
            purge, 2003.
        R. Sander, Compilation of Henry's law constants, version 5, Atmospheric Chemistry and
            Physics 23: formic acid and ammonia, 2023.
        UK Health and Safety Executive, Dyes and dyeing; Reactive dyes: handling in textile
            finishing (TIS5).
        Memory of the trade (no source read).
        Common practice (no published source).
    """
    return ask("room-air", locals())


class HazardLabelSubstance(TypedDict, total=False):
    """Substance of `hazard_label`: a row of its contents."""

    what: Literal[
        "acetic",
        "formic",
        "citric",
        "ammonia",
        "sodium-hydroxide",
        "soda-ash",
        "aluminum-sulfate",
        "ferrous",
        "copper",
        "hydros",
        "dye-unknown",
        "alum",
        "dye-skin-1a",
        "dye-skin",
        "dye-lung-1a",
        "dye-lung",
    ]
    strength: Number


def hazard_label(
    *, contents: list[HazardLabelSubstance] = EXAMPLE, ph: Number | None = EXAMPLE
) -> Answer:
    """What hazards go on the bottle?

    Args:
        contents: In the bottle, 1 to 6 rows.
            - what: Substance. One of acetic (Acetic acid), formic (Formic acid), citric (Citric
              acid), ammonia, sodium-hydroxide (Sodium hydroxide), soda-ash (Soda ash (sodium
              carbonate)), aluminum-sulfate (Aluminum sulfate), ferrous (Ferrous sulfate), copper
              (Copper sulfate), hydros (Sodium hydrosulfite (dithionite)), dye-unknown (Dye,
              statements not known), alum (Potash alum), dye-skin-1a (Dye, skin sensitizer 1A),
              dye-skin (Dye, skin sensitizer 1 or 1B), dye-lung-1a (Dye, airway sensitizer 1A),
              dye-lung (Dye, airway sensitizer 1 or 1B); example dye-unknown.
            - strength: Strength. 0.01 % to 100 %; example 1.
        ph: pH, if measured. Number; 0 to 14. None leaves it open.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - signal: Signal word, in words.
        - codes: Hazard statements, in words.
        - ask: The data sheet decides on, in words.
        - classes: Class, in words.
        - precautions: Precautionary statements, in words.
        - burns: Severe burns, share of the limit.
        - skin: Skin irritation, share of the limit.
        - damage: Eye damage, share of the limit.
        - eyes: Eye irritation, share of the limit.
        - limit: Published limit, in words.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        European Union, Regulation (EC) No 1272/2008 (CLP), Annexes I and VI: limits as quoted by
            others, 2008.
        European Union, Regulation (EC) No 1272/2008 (CLP), Annexes I and VI: entries recalled,
            not read, 2008.
        European Union, Regulation (EC) No 1272/2008 (CLP), Annex I, 3.2.3: pH of 2 and less, 11.5
            and more, 2008.
        European Union, Regulation (EC) No 1272/2008 (CLP), Annex I, Table 3.1.1 and 3.1.3 (acute
            toxicity of mixtures), 2008.
        European Union, Regulation (EC) No 1272/2008 (CLP), Annex I, Table 3.4.5 (sensitizers: 1A
            from 0.1 %, 1 and 1B from 1 %), 2008.
        Industry note on the labeling of sodium hydroxide solutions.
        European Chemicals Agency, Classification and labeling inventory, 233-135-0 (notified).
        European Chemicals Agency, Registration dossier 15127, formic acid: oral LD50 730 mg/kg,
            LC50 7,850 mg/m³ (4 h, vapor).
        GisChem, Ammonia solution, from 5 % to under 10 %: H290, H314, H335.
        United Nations, Globally Harmonized System (GHS), wording of the statements recalled.
    """
    return ask("hazard-label", locals())


def scald(
    *,
    temperature: Number = EXAMPLE,
    who: Literal["adult", "child"] = EXAMPLE,
    contact: Number = EXAMPLE,
) -> Answer:
    """How fast does this bath burn?

    Args:
        temperature: Bath or steam on the skin. Temperature, °C; 0 °C to 105 °C; example 60 °C.
        who: Whose skin. One of adult (An adult’s), child (A child’s); example adult.
        contact: Contact you have in mind. Time, s; 0.1 s to 10 min; example 2 s.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - time: Deep burn after, min.
        - times_over: Contact, times that.
        - limit: Published limit, in words.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        US Consumer Product Safety Commission, Hot tap water scalds, as quoted by two pages.
        Children's of Alabama, Prevent scald burn injuries: how fast hot water burns.
        Burn Foundation, Time to a third-degree burn (15 s at 133 °F, 5 s at 140 °F, 1 s at 156
            °F), as quoted by pages.
        A. R. Moritz and F. C. Henriques, Studies of thermal injury II, American Journal of
            Pathology 23, as quoted by others, 1947.
        Children burn in half of an adult's time (3 s at 140 °F): a newspaper quoting a burn
            center, 1997.
        Common practice (no published source).
    """
    return ask("scald", locals())


def drain_check(
    *,
    drain: Literal["sewer", "septic"] = EXAMPLE,
    volume: Number = EXAMPLE,
    ph: Number = EXAMPLE,
    temperature: Number = EXAMPLE,
    holds: Literal["acetic", "citric", "formic", "unknown-acid", "soda-ash"] = EXAMPLE,
    alkalinity: Number = EXAMPLE,
    metal: Literal[
        "none", "unknown", "alum", "aluminum-sulfate", "ferrous", "copper", "tin"
    ] = EXAMPLE,
    metal_amount: Number = EXAMPLE,
    own_low: Number | None = EXAMPLE,
    own_high: Number | None = EXAMPLE,
    own_heat: Number | None = EXAMPLE,
    own_metal: Number | None = EXAMPLE,
    own_source: str | None = EXAMPLE,
) -> Answer:
    """May this bath go down the drain?

    Args:
        drain: The drain leads to. One of sewer (A public sewer), septic (A septic tank); example
            sewer.
        volume: Bath. Volume, L; 0.1 L to 1000 L; example 9 L.
        ph: pH. Number; 0 to 14; example 4.
        temperature: Temperature. Temperature, °C; 0 °C to 105 °C; example 35 °C.
        holds: The bath holds. One of acetic (Vinegar or acetic acid), citric (Citric acid),
            formic (Formic acid), unknown-acid (An acid, not known which), soda-ash (Soda ash);
            example acetic.
        alkalinity: Alkalinity of the water. Strength, mg/L; 0 mg/L to 1000 mg/L; example 40 mg/L.
        metal: Metal in it. One of none (None was put in), unknown (Not known, or in the dye
            (premetallized)), alum (Aluminum, from potash alum), aluminum-sulfate (Aluminum, from
            aluminum sulfate), ferrous (Iron, from ferrous sulfate), copper (Copper, from copper
            sulfate), tin (Tin, from tin(ii) chloride); example none.
        metal_amount: How much metal. Strength, mg/L; 0 mg/L to 100000 mg/L; example 34 mg/L.
            Asked where metal is alum or aluminum-sulfate or ferrous or copper or tin.
        own_low: Local lower pH. Number; 0 to 14. None leaves it open.
        own_high: Local upper pH. Number; 0 to 14. None leaves it open.
        own_heat: Local limit of temperature. Temperature, °C; 10 °C to 100 °C. None leaves it
            open.
        own_metal: Local limit of the metal. Strength, mg/L; 0.001 mg/L to 1000 mg/L. None leaves
            it open. Asked where metal is alum or aluminum-sulfate or ferrous or copper or tin.
        own_source: Where the local limits stand. Text, up to 60 characters of text. None leaves
            it open.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - first: Stir in first, g.
        - dose: In all about, g.
        - held: Acid or soda that this pH means, g.
        - metal_mass: Metal in the bath, g.
        - limit: Published limit, in words.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        US EPA, 40 CFR 403.5(b) prohibited discharges, as quoted by a city and a handbook.
        Sewer limits of four US places, in their own texts.
        Guide to trade effluent (an example consent), 2023.
        Cornell University, Household hazardous products: septic tanks.
        R. N. Goldberg, N. Kishore, R. M. Lennen, Thermodynamic quantities for the ionization
            reactions of buffers, Journal of Physical and Chemical Reference Data 31 (phthalic and
            boric: Robinson and Stokes), 2002.
        KTH Royal Institute of Technology, Help of an equilibrium program: activity coefficients,
            the Davies equation.
    """
    return ask("drain-check", locals())


def mordant_limit(
    *,
    mordant: Literal["alum", "aluminum-sulfate", "ferrous", "copper", "tin"] = EXAMPLE,
    fiber: Number = EXAMPLE,
    depth: Number = EXAMPLE,
    taken_up: Number = EXAMPLE,
    bath: Number = EXAMPLE,
) -> Answer:
    """How much metal does this mordant leave?

    Args:
        mordant: Mordant. One of alum (Potash alum (12 H₂O)), aluminum-sulfate (Aluminum sulfate
            (14 H₂O)), ferrous (Ferrous sulfate (7 H₂O)), copper (Copper sulfate (5 H₂O)), tin
            (Tin(II) chloride (2 H₂O)); example alum.
        fiber: Dry fiber. Weight, g; 1 g to 100 kg; example 400 g.
        depth: Mordant, of the fiber. 0.1 % to 100 %; example 12.
        taken_up: Taken up by the fiber. 0 % to 100 %; example 60.
        bath: Bath left. Volume, L; 0.1 L to 1000 L; example 9 L.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - salt: Mordant, g.
        - metal: Metal in it, g.
        - on_fiber: Metal on the fiber, g for a kg.
        - left: Metal left in the bath, g/100 mL.
        - times_mark: Times the upper mark.
        - limit: Published limit, in words.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Web page quoting two dye books and a third recipe.
        Two trade pages on iron as a mordant.
        Web guide to mordants.
        E. Mairet, Vegetable Dyes (excess alum makes wool sticky; historic chrome at 3 %), 1916.
        Sewer limits of four US places, in their own texts.
        IUPAC, Standard atomic weights, added up by formula.
        Arithmetic from the definitions (no published source needed).
    """
    return ask("mordant-limit", locals())


def lift(
    *,
    load: Literal["bucket", "box", "hot"] = EXAMPLE,
    volume: Number = EXAMPLE,
    jug: Number = EXAMPLE,
    mass: Number = EXAMPLE,
    reach: Number = EXAMPLE,
    start: Number = EXAMPLE,
    end: Number = EXAMPLE,
    angle: Number = EXAMPLE,
    often: Number = EXAMPLE,
    lasting: Literal["hour", "two", "eight"] = EXAMPLE,
    grip: Literal["good", "fair", "poor"] = EXAMPLE,
) -> Answer:
    """May I lift this?

    Args:
        load: The load. One of bucket (Wet skeins in a lidded bucket, cold), box (A box, cold and
            stable), hot (A hot or open pot); example bucket.
        volume: Bath in the pot. Volume, L; 0.1 L to 500 L; example 9 L. Asked where load is hot.
        jug: Jug to bail with. Volume, L; 0.1 L to 10 L; example 1 L. Asked where load is hot.
        mass: Weight. Weight, kg; 0.1 kg to 100 kg; example 8 kg. Asked where load is box or
            bucket.
        reach: Hands in front of the ankles. Length, cm; 0 cm to 120 cm; example 35 cm. Asked
            where load is box or bucket.
        start: Hands at the start, from the floor. Length, cm; 0 cm to 220 cm; example 40 cm.
            Asked where load is box or bucket.
        end: Hands at the end, from the floor. Length, cm; 0 cm to 220 cm; example 90 cm. Asked
            where load is box or bucket.
        angle: Turn of the trunk. Angle, °; 0° to 180°; example 30°. Asked where load is box or
            bucket.
        often: Lifts in a minute. Number; 0.01 to 15; example 0.2. Asked where load is box or
            bucket.
        lasting: For. One of hour (Up to 1 hour), two (1 to 2 hours), eight (2 to 8 hours);
            example hour. Asked where load is box or bucket.
        grip: Grip. One of good (Good: handles that fit the hand), fair (Fair: fingers under a
            box, thin handle), poor (Poor: wet, sagging or slippery); example fair. Asked where
            load is box or bucket.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - rwl: Recommended weight limit, g.
        - index: Load over the limit.
        - jugs: Jugs to bail.
        - limit: Published limit, in words.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        NIOSH, Applications Manual for the Revised NIOSH Lifting Equation, Publication 94-110;
            tables as quoted in public texts, 1994, revised 2021.
        NIOSH, The revised lifting equation of 1991 as printed by a government fact sheet and an
            ergonomics handbook, 1991.
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("lift", locals())
