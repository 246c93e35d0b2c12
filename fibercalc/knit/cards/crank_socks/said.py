"""What is said of a pair of socks."""

from __future__ import annotations

from ....core.outcome import Outcome
from ...sock import PLAIN_STRETCH, stretch_word, waste_rounds_of_pair
from .asked import CrankSocks

OVER_HEEL = {
    "loose": "it is no smaller than the heel",
    "easy": "plain knitting does that with ease",
    "tight": "between easy and too tight: work a sample before the pair",
    "too tight": "plain knitting will likely not do that: more needles, or a looser stitch",
}


def say(out: Outcome[CrankSocks]) -> str | tuple[str, ...]:
    counts = (
        f"Crank {out.number(out.case.hem_rounds)} rounds for the hem,"
        f" {out.number(out.case.leg_rounds)} for the leg, the heel,"
        f" {out.number(out.case.foot_rounds)} for the foot, the toe."
    )
    skein = f"one skein is enough for {out.text(CrankSocks.one_skein)}"
    return (
        counts,
        f"A pair takes about {out.said(CrankSocks.pair)}, {out.text(CrankSocks.pair_mass, 'g')}:"
        f" {skein}.",
    )


def notes(out: Outcome[CrankSocks]) -> list[str]:
    stretch = out.case.stretch
    low, high = PLAIN_STRETCH
    said = [
        f"Over the heel the tube must stretch {max(stretch, 0):.0f} %:"
        f" {OVER_HEEL[stretch_word(min(stretch, 1000.0))]} (up to {low:.0f} %, beyond {high:.0f} %"
        " not; from memory, unverified)."
    ]
    if out.case.snug < 0:
        said.append(
            "Around the foot the tube is loose: it will bag. Fewer needles, or a tighter stitch."
        )
    half, left = out.case.half, out.case.narrowest
    said.append(
        f"Heel and toe: on {half} needles, one out of work before each row until {left} knit, then"
        f" one back after each row: {out.number(out.case.pocket_rows)} rows, folded in the middle."
    )
    waste = waste_rounds_of_pair(out.case.between, out.case.at_ends)
    said.append(
        f"As one tube the pair takes {waste} rounds of waste yarn: {out.case.at_ends} before,"
        f" {out.case.between} between, {out.case.at_ends} after."
    )
    said.append(
        "Count for the sock at rest and washed: fresh off the machine it is stretched lengthwise"
        " and measures too long."
    )
    return said
