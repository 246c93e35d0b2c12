"""What is said of a bath with acid or alkali in it."""

from __future__ import annotations

from ....core.card import Input, Result
from ....core.outcome import Outcome
from ....core.units import VOLUME
from ....safe.acids import ALKALINITY_PER_MOLE
from ....safe.liquids import QUESTIONED, share_of_bath
from .asked import LABELS, SWAP, TARGET, BathAcid, liquid

SOURNESS = 0.5  # pH, half a step of a paper strip either way
ACETIC = 60.052  # g in a mole of acetic acid
ALONE = "water alone, before fiber"


# What goes into the bath, or could in its place: chemical, strength, grams and mL.
Side = tuple[Input[str], Input[float], Result[float], Result[float]]
SIDE: Side = BathAcid.chemical, BathAcid.strength, BathAcid.pure, BathAcid.volume
OTHER_SIDE: Side = (
    BathAcid.other,
    BathAcid.other_strength,
    BathAcid.other_grams,
    BathAcid.other_volume,
)


def say(out: Outcome[BathAcid]) -> tuple[str, ...]:
    ph = out.text(BathAcid.ph)
    bath = out.amount(out.case.liters, VOLUME, "L", 3)
    span = f", {out.span(BathAcid.ph)}" if out.span(BathAcid.ph) else ""
    much = [
        f"{_amount(out, side)} is {out.number(share)} % of the bath"
        for side in (SIDE, OTHER_SIDE)
        if (share := _share(out, side)) > QUESTIONED
    ]
    if out.case.do == SWAP:
        first = f"Take {_amount(out, OTHER_SIDE)} instead of {_amount(out)}."
        rest = (
            f"Both give about pH {ph}{span} in {bath} of water: {ALONE}. Equal weights would not."
        )
    elif out.case.do == TARGET:
        first = f"{'It would take' if much else 'Put in'} {_amount(out, ranged=True)}."
        rest = f"That brings {bath} to about pH {ph}: {ALONE}."
    else:
        first = f"The bath is at about pH {ph}{span}."
        rest = (
            f"That is {_amount(out)} in {bath} of water: {ALONE}. Wool takes some of the acid up,"
            " and the pH rises."
        )
    return (f"{' and '.join(much)}: is that meant?", f"{first} {rest}") if much else (first, rest)


def _amount(out: Outcome[BathAcid], side: Side = SIDE, ranged: bool = False) -> str:
    """How much goes in: a liquid with its strength, and the range in the unit of the amount."""
    chemical, strength, pure, volume = side
    key = out.case.maybe(chemical) or ""
    if out.has(volume):
        part, unit, what = volume, "mL", liquid(out, key, out.case.maybe(strength) or 0.0)
    else:
        part, unit, what = pure, "g", LABELS[key].split(" (")[0].lower()
    span = f" ({out.span(part, unit)})" if ranged and out.span(part, unit) else ""
    return f"{out.text(part, unit)}{span} of {what}"


def _share(out: Outcome[BathAcid], side: Side) -> float:
    """What goes in as % of the bath: of its volume, or of its weight for crystals."""
    _, _, pure, volume = side
    part = volume if out.has(volume) else pure
    return share_of_bath(out.value(part), out.case.liters) if out.has(part) else 0.0


def notes(out: Outcome[BathAcid]) -> list[str]:
    eaten = out.case.alkaline * out.case.liters / 1000 / ALKALINITY_PER_MOLE
    said = [
        (
            f"The water itself eats acid: {out.number(1000 * eaten, 1)} milliequivalents here,"
            f" {out.number(eaten * ACETIC, 2)} g of pure acetic acid. Hard water matters more than"
            " the last gram."
        )
    ]
    if any(_share(out, side) > QUESTIONED for side in (SIDE, OTHER_SIDE)):
        said.append(
            f"Over {QUESTIONED:g} % of a bath is more than a recipe asks for (our own edge), and"
            " thins the bath, which the sum leaves out: look at pH and strength again, or take a"
            " stronger kind."
        )
    if out.case.strip is not None:
        said.append(_of_strip(out, out.case.strip))
    if out.case.salts > 0.1:
        said.append(
            "So salty a bath is beyond what the model was made for; the range says by how much."
        )
    said.append("A reading is for a cooled sample: strips and meters are marked for 20 to 25 °C.")
    return said


def _of_strip(out: Outcome[BathAcid], strip: float) -> str:
    off = strip - out.value(BathAcid.ph)
    if abs(off) <= SOURNESS + (out.high(BathAcid.ph) - out.low(BathAcid.ph)) / 2:
        return f"Your strip says {strip:g}: within what a strip and this water leave open."
    if off > 0:
        return (
            f"Your strip says {strip:g}, less sour than the sum: harder water, weaker acid, or"
            " fiber in the bath that took it up."
        )
    return (
        f"Your strip says {strip:g}, more sour than the sum: softer water, or acid left from"
        " before."
    )
