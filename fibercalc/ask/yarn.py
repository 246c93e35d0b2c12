"""The cards of the chapter yarn as functions; written from them by `make answers`."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Literal

from . import EXAMPLE, Number, ask

if TYPE_CHECKING:
    from .. import Answer


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
    skeins: list[dict[str, Any]] = EXAMPLE,
) -> Answer:
    """How many yards are in this skein?

    way  How you measured (example both)
    turns  Turns of the reel (example 280)
    circumference  Once around the reel, m (example 1.50 m)
    stretch  Stretch on the reel, % (example 0 %)
    sample_length  Length of the sample, m (example 10 m)
    sample_mass  Weight of the sample, g (example 2.38 g)
    skein_mass  Weight of the skein, g (example 100 g)
    several  Other skeins of this delivery measured too (example no)
    skeins  Skeins of this delivery, 2 to 40 rows of length: Length, m (example 420 m)
    results  length (m), by_turns (m), by_sample (m), grist (tex), average (m), printable (m),
        next_skein (m)
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

    skein_mass  Weight of a full skein, g (example 100 g)
    skein_length  Length of a full skein, m (example 420 m)
    loss_share  Lost in winding, % (example 2 %)
    wanted_by  What you want of the small ones (example mass)
    wanted_mass  Weight of a small skein, g (example 20 g)
    wanted_length  Length of a small skein, m (example 84 m)
    wanted_turns  Turns for a small skein (example 54)
    wanted_count  How many from one skein (example 5)
    reel  One turn of your reel, rested, m (example 1.50 m)
    loss_per_cut  Lost with each small skein, m (example 0 m)
    total  Small skeins wanted in all (example 312)
    results  count, turns, small_length (m), small_mass (g), left (m), left_mass (g), margin
        (m), last_short (%), full_skeins
    """
    return ask("skein-split", locals())


def wraps(
    *,
    convention: Literal["relaxed", "ruler", "packed"] = EXAMPLE,
    width: Number = EXAMPLE,
    tries: list[dict[str, Any]] = EXAMPLE,
    grist: Number | None = EXAMPLE,
) -> Answer:
    """How many wraps per inch is it, and what weight do I call it?

    convention  How you wrapped (example relaxed)
    width  Width wrapped, in (example 2 in)
    tries  Turns counted, 1 to 8 rows of turns: Turns (example 35)
    grist  Its length and weight, if you know them, m/100 g (example 420 m/100 g)
    results  wraps (per cm), by_wraps (tex), by_label (tex)
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

    wanted_by  What you want (example length)
    wanted_length  Wanted length, m (example 84 m)
    wanted_mass  Wanted weight, g (example 20 g)
    wanted_turns  Turns on the reel (example 54)
    count  Count of the yarn, tex (example 238 tex)
    turn  Once around the reel, m (example 1.50 m)
    stretch  Stretch on the reel, % (example 0 %)
    results  turns, length (m), mass (g), need, margin (m), short (%), rested_turn (m),
        turn_mass (g)
    """
    return ask("reel-turns", locals())


def true_weight(
    *,
    weighed: Number = EXAMPLE,
    labelled: Number | None = EXAMPLE,
    dampness: Literal["humidity", "regain"] = EXAMPLE,
    humidity: Number = EXAMPLE,
    regain: Number = EXAMPLE,
    standard_regain: Number | None = EXAMPLE,
    shares_of: Literal["label", "dry"] = EXAMPLE,
    fibers: list[dict[str, Any]] = EXAMPLE,
) -> Answer:
    """It says 100 g and my scale says 103: how much yarn is it really?

    weighed  Weight on my scale, g (example 103 g)
    labelled  Weight on the label, g (example 100 g)
    dampness  How damp it is (example humidity)
    humidity  Relative humidity where it rested, % (example 78 %)
    regain  Regain as weighed, % (example 15.5 %)
    standard_regain  Regain at the standard atmosphere, % (may be blank)
    shares_of  What the shares are shares of (example label)
    fibers  Fibers in the yarn, 1 to 6 rows of fiber: Fiber (example wool, combed (worsted));
        share: Share, % (example 25 %)
    results  conditioned (g), water (g), dry (g), over (g), eu_mass (g), us_mass (g)
    """
    return ask("true-weight", locals())


def yarn_count(
    *,
    known: Literal["count", "put-up", "singles"] = EXAMPLE,
    count: Number = EXAMPLE,
    length: Number = EXAMPLE,
    mass: Number = EXAMPLE,
    singles: list[dict[str, Any]] = EXAMPLE,
    take_up: Number = EXAMPLE,
) -> Answer:
    """What is this yarn count in the other systems?

    known  What you know of the yarn (example count)
    count  Count, tex (example 238 tex)
    length  Length of the put-up, m (example 420 m)
    mass  Weight of the put-up, g (example 100 g)
    singles  Singles in the plied yarn, 1 to 8 rows of strands: Strands of it (example 1);
        count: Count of this single, tex (example 56.5 tex)
    take_up  Take-up in plying, % (example 5 %)
    results  linear_density (tex), putup_length (m)
    """
    return ask("yarn-count", locals())


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
    blend: list[dict[str, Any]] = EXAMPLE,
    density: Number = EXAMPLE,
    packing: Number = EXAMPLE,
    kind: Literal["cotton", "worsted", "woolen", "soft-woolen", "cotton-taylor"] = EXAMPLE,
) -> Answer:
    """How thick is this yarn, and by which model?

    count  Count, tex (example 238 tex)
    made_of  What it is made of (example blend)
    fiber  Fiber (example wool)
    blend  Fibers of the blend, 1 to 6 rows of fiber: Fiber (example wool); share: Share, %
        (example 25 %)
    density  Density of the fiber, g/cm³ (example 1.31 g/cm3)
    packing  Packing: how much of the yarn is fiber, % (example 50 %)
    kind  Kind of yarn, for Ashenhurst (example worsted)
    results  solid (m), peirce (m), ashenhurst (m), side_by_side (per cm), apart (%)
    """
    return ask("yarn-diameter", locals())
