"""What is said of a dilution."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import MASS, VOLUME
from .asked import BY_MASS, MINERAL, AcidDilution, named_by_strength


def say(out: Outcome[AcidDilution]) -> tuple[str, ...]:
    water, acid = out.text(AcidDilution.water_volume), out.text(AcidDilution.acid_volume)
    have, wanted = named_by_strength(out, out.case.have), named_by_strength(out, out.case.wanted)
    return (
        (
            f"Put in {water} of cool water first, then {acid} ({out.text(AcidDilution.acid_mass)})"
            f" of {have}, slowly, stirring."
        ),
        (
            f"That makes {_made(out)} of {wanted}. The strong acid is {out.case.strong_class}; the"
            f" weak one is {out.case.weak_class}."
        ),
    )


def _made(out: Outcome[AcidDilution]) -> str:
    if out.case.by == BY_MASS:
        return out.amount(out.case.mass, MASS, "g")
    return out.amount(out.case.volume, VOLUME, "L" if out.case.volume >= 1000 else "mL")


def notes(out: Outcome[AcidDilution]) -> list[str]:
    said = [
        (
            "Volumes do not add up exactly when acid meets water; weights do. By weight is better"
            " where a scale can stand on a tray."
        ),
        f"Mineral acids (sulfuric, hydrochloric, nitric, phosphoric) are refused here: {MINERAL}.",
    ]
    if out.case.acid != "acetic":
        said.append(
            "The limits for this acid are from memory, unverified: the supplier’s data sheet"
            " decides."
        )
    return said
