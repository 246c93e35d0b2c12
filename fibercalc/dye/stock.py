"""Stock solutions: making one up, thinning it, making more of it, a jar of another
strength, and how it weakens.

A stock is made up TO a volume: the powder goes into part of the water, and water is added until the
vessel's mark is reached. Powder takes room of its own, so adding the whole volume of water to it
makes a weaker stock. Strengths are grams in 100 mL.
"""

from ..core.problem import OutOfRange, require
from ..core.table import SourcedTable, read_table
from .measuring import combined_error, error_share
from .recipe import STRONGEST, dye_in_stock, stock_volume

# mL that a gram of dissolved dye powder takes up, low and high (from memory, unverified).
POWDER_ROOM = (0.5, 0.8)


def powder_for_stock(volume: float, strength: float) -> float:
    """Powder, g, for a final volume of stock: V S / 100.

    volume    mL, final, above 0
    strength  g in 100 mL, above 0 to 40
    Raises OutOfRange outside these.
    Source: definition of strength.
    """
    require("volume", volume, above=0.0)
    return dye_in_stock(volume, strength)


def volume_for_powder(powder: float, strength: float) -> float:
    """Final volume, mL, that uses up an odd amount of powder at a strength: 100 m / S.

    powder    g, above 0
    strength  g in 100 mL, above 0 to 40
    Raises OutOfRange outside these.
    Source: definition of strength.
    """
    require("powder", powder, above=0.0)
    return stock_volume(powder, strength)


def stock_strength(powder: float, volume: float) -> float:
    """Strength, g in 100 mL, of powder made up to a final volume.

    powder  g, 0 or more
    volume  mL, final, above 0
    Raises OutOfRange outside these, and above 40 g in 100 mL.
    Source: definition of strength.
    """
    require("powder", powder, 0.0)
    require("volume", volume, above=0.0)
    strength = 100 * powder / volume
    if strength > STRONGEST:
        raise OutOfRange(
            "powder",
            powder,
            0.0,
            STRONGEST * volume / 100,
            "no dye dissolves as strongly as that: make it up to more",
        )
    return strength


def strength_if_added(powder: float, water: float, room: float = sum(POWDER_ROOM) / 2) -> float:
    """Strength, g in 100 mL, when powder is added to the water instead of made up to it.

    powder  g, above 0
    water   mL, above 0
    room    mL that a gram takes up, 0 to 2
    Raises OutOfRange outside these, and above 40 g in 100 mL.
    Source: definition of strength; the room that powder takes is from memory (trade-memory).
    """
    require("powder", powder, above=0.0)
    require("water", water, above=0.0)
    require("room", room, 0.0, 2.0)
    return stock_strength(powder, water + powder * room)


def powder_of_jar(powder: float, old_jar: float, new_jar: float) -> float:
    """Powder, g, from a new jar that does what the old jar's weight did: m x old / new.

    powder   g of the old jar's dye, above 0
    old_jar  strength marked on the old jar, %, 5 to 1,000 (100 is the maker's standard)
    new_jar  strength marked on the new jar, %, 5 to 1,000
    Raises OutOfRange outside these.
    Source: common practice (strength is marked against the maker's standard of 100).
    """
    require("powder", powder, above=0.0)
    require("old_jar", old_jar, 5.0, 1000.0)
    require("new_jar", new_jar, 5.0, 1000.0)
    return powder * old_jar / new_jar


def stock_to_dilute(volume: float, wanted: float, have: float) -> float:
    """Strong stock, mL, to make up to a volume of weaker: V2 = C1 V1 / C2.

    volume  mL of the weaker, above 0
    wanted  g in 100 mL, above 0 to have
    have    g in 100 mL of the strong one, to 40
    Raises OutOfRange outside these.
    Source: definition of strength (the dye stays the same).
    """
    require("volume", volume, above=0.0)
    require("have", have, 0.0, STRONGEST, above=0.0)
    if wanted > have:
        raise OutOfRange(
            "wanted", wanted, 0.0, have, "water cannot make a stock stronger: add powder instead"
        )
    require("wanted", wanted, 0.0, have, above=0.0)
    return volume * wanted / have


def diluted_volume(volume: float, have: float, wanted: float) -> float:
    """Volume, mL, that a rest of strong stock makes at a weaker strength.

    volume  mL left, above 0
    have    g in 100 mL, to 40
    wanted  g in 100 mL, above 0 to have
    Raises OutOfRange outside these.
    Source: definition of strength (the dye stays the same).
    """
    require("volume", volume, above=0.0)
    require("have", have, 0.0, STRONGEST, above=0.0)
    require("wanted", wanted, 0.0, have, above=0.0)
    return volume * have / wanted


def powder_to_extend(volume: float, strength: float, left: float, strength_left: float) -> float:
    """Powder, g, to add to what is left so that, made up to a larger volume,
    it has the strength wanted.

    volume         mL wanted, left and more
    strength       g in 100 mL wanted, above 0 to 40
    left           mL of old stock, 0 or more
    strength_left  g in 100 mL it has now, 0 to 40
    Raises OutOfRange outside these; old stock that already holds more dye is
    refused with what to change.
    Source: definition of strength (the dye adds up).
    """
    require("left", left, 0.0)
    require("volume", volume, left, above=0.0)
    require("strength_left", strength_left, 0.0, STRONGEST)
    more = dye_in_stock(volume, strength) - left * strength_left / 100
    if more < -1e-9:
        raise OutOfRange(
            "left",
            left,
            0.0,
            None,
            "what is left already holds more dye than that: make it up to a larger volume",
        )
    return max(more, 0.0)


def stock_error(powder: float, volume: float, scale_error: float, jug_error: float) -> float:
    """Error of a stock's strength, %, from the scale and the jug.

    powder       g of dye in it, weighed now or before, above 0
    volume       mL made up to, above 0
    scale_error  g either way, 0 or more
    jug_error    mL either way, 0 or more
    Raises OutOfRange outside these.
    Source: first-order propagation of independent errors.
    """
    return combined_error(error_share(scale_error, powder), error_share(jug_error, volume))


def keeping_losses() -> SourcedTable:
    """How much of its strength each kind of stock loses in a week, %, low and high.

    Source: memory, unverified (trade-memory).
    """
    return read_table("dye", "stock-keeping")


def strength_kept(strength: float, weeks: float, weekly_loss: float) -> float:
    """Strength, g in 100 mL, of a stock that loses the same share each week.

    strength     g in 100 mL when made, above 0 to 40
    weeks        since then, 0 to 520
    weekly_loss  % a week, 0 to 90 (see keeping_losses)
    Raises OutOfRange outside these.
    Source: arithmetic; the losses are from memory (trade-memory).
    """
    require("strength", strength, 0.0, STRONGEST, above=0.0)
    require("weeks", weeks, 0.0, 520.0)
    require("weekly_loss", weekly_loss, 0.0, 90.0)
    left: float = strength * (1 - weekly_loss / 100) ** weeks
    return left
