"""Water first, then acid."""

from __future__ import annotations

from ....core.answer import Picture
from ....core.outcome import Outcome
from ....core.units import PERCENT
from ...pictures.mixing import water_then_acid
from .asked import AcidDilution


def picture(out: Outcome[AcidDilution]) -> Picture:
    return water_then_acid(
        out.value(AcidDilution.water_mass),
        out.value(AcidDilution.acid_mass),
        out.text(AcidDilution.water_volume),
        f"{out.text(AcidDilution.acid_volume)} of {out.amount(out.case.have, PERCENT)}",
    )
