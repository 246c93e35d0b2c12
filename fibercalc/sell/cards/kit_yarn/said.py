"""What is said of a kit."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....knit.needs import KNITTER_ERROR
from .asked import KitYarn, packed_colors, spare_in, tightest_of
from .worked import cuts


def say(out: Outcome[KitYarn]) -> tuple[str, ...]:
    parts = [f"{color.skeins} of {color.name}" for color in packed_colors(out)]
    listed = f"{', '.join(parts[:-1])} and {parts[-1]}" if len(parts) > 1 else parts[0]
    color = tightest_of(out)
    spare = spare_in(out, color)
    left = f"{abs(spare):.0f} % {'over' if spare >= 0 else 'under'} the pattern’s figure"
    knitters = (
        "under 1 in 100 knitters runs"
        if color.short < 0.01
        else f"{out.in_100(color.short)} knitters run"
    )
    room = (
        f" They make {out.value(KitYarn.loads)} loads in {out.value(KitYarn.dye_days)} dye"
        f" {'day' if out.value(KitYarn.dye_days) == 1 else 'days'}."
        if out.has(KitYarn.loads)
        else ""
    )
    return (
        f"Pack {listed} in each kit: {out.value(KitYarn.in_all)} skeins in all.",
        f"The tightest color is {color.name}, {left}: {knitters} short.{room}",
    )


def notes(out: Outcome[KitYarn]) -> list[str]:
    said = [
        {
            "held": (
                "The pattern’s buffer was taken off again (common practice: 5 to 15 %), so that it"
                " is not added twice."
            ),
            "unknown": (
                "Nobody knows whether these figures hold a buffer, so they may hold none or a"
                " tenth. Ask the designer: it decides the tightest color."
            ),
            "none": "The figures are taken as bare; the odds add what is needed.",
        }[out.case.buffer]
    ]
    wished = 1 - float(out.case.sure) / 100
    fixed = [color.name for color in packed_colors(out) if color.short > wished]
    if fixed:
        said.append(
            f"Less sure than wished: {', '.join(fixed)}. Add a skein, or a part of one, or say on"
            " the kit how much is in it."
        )
    said.append(
        f"A knitter strays from the pattern by up to {100 * KNITTER_ERROR:.0f} % either way in 95"
        " cases of 100 (common practice), in all colors alike: who runs short in one is close in"
        " the others."
    )
    if all(cut.saved <= 0 for cut in cuts(out)):
        said.append("Cutting skeins would save none here.")
    said.append("Pack all skeins of one color of one kit from one lot.")
    return said
