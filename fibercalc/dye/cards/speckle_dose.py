"""Dry dye for speckles, bulked with a carrier, and what to expect from skein to skein."""

from __future__ import annotations

from dataclasses import replace

from ...core.answer import Picture
from ...core.arithmetic import sqrt
from ...core.card import MODEL, Basis, Between, Card, Carry, Case, Caution, Constant, Input, Result
from ...core.outcome import Outcome
from ...core.picture import INDIGO, INDIGO_WASH, LINE, SOFT, Drawing, Scale
from ...core.traced import named
from ...core.units import COUNT, MASS, NUMBER, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ..inputs import DYED_SKEIN, SCALE_ERROR
from ..measuring import error_share
from ..pictures.speckle import speckle_picture
from ..recipe import dye_mass
from ..speckle import (
    carrier_mass,
    chance_busier,
    dose_error_bulked,
    mix_mass,
    run_dye,
    speckle_share,
    spots_range,
    spots_scatter,
)

BUSIER = 1.5
FEWEST = 4.0  # spots; below that the chance of two unlike skeins is not reckoned
UNLIKE = named("share of pairs so unlike", chance_busier)


class SpeckleDose(Case):
    """Speckles weighed as a mix with their carrier, and how alike chance leaves the skeins."""

    skein_mass = replace(DYED_SKEIN, allowed=("5 g", "2 kg"))
    depth = Input[float](
        PERCENT,
        "Each color, percent of the skein",
        default="0.06 %",
        allowed=("0.001 %", "2 %"),
        usual=("0.02 %", "0.2 %"),
        strict=True,
        measure="A pinch is 0.03 to 0.15 g on 100 g.",
    )
    colors = Input[int](COUNT, "Colors", default="3", allowed=("1", "12"), usual=("1", "5"))
    ground_depth = Input[float](
        PERCENT,
        "Ground under it, percent",
        default="0.9 %",
        allowed=("0 %", "12 %"),
        usual=("0 %", "2 %"),
        strict=True,
    )
    one_in = Input[float](
        NUMBER,
        "One part of dye in how many of mix",
        default="20",
        allowed=("2", "200"),
        usual=("5", "50"),
        measure="20 is 1 part of dye and 19 of salt or citric acid crystals.",
    )
    skeins = Input[int](
        COUNT, "Skeins in the run", default="4", allowed=("1", "500"), usual=("1", "80")
    )
    lost = Input[float](
        PERCENT,
        "Lost on the way",
        default="10 %",
        allowed=("0 %", "90 %"),
        usual=("5 %", "30 %"),
        measure="What stays in the shaker and beside the yarn.",
    )
    scale_error = replace(SCALE_ERROR)
    spots = Input[float](
        NUMBER,
        "Spots to be seen on a skein",
        default="120",
        allowed=("1", "5000"),
        usual=("20", "1000"),
        measure="Count a tenth of one and multiply.",
    )

    dose_scatter = Between[float](
        PERCENT, "Standard deviation of a dose of mix, even within its error"
    )

    mix = Result[float](MASS, "Mix of each color for a skein", units=("g",), finest=(0.01,))
    each = Result[float](MASS, "Dye in it", units=("g",), finest=(0.001,))
    run = Result[float](
        MASS, "Dye of each color for the run", units=("g",), finest=(0.01,), rounding="up"
    )
    carrier = Result[float](MASS, "Carrier for it", units=("g",), finest=(0.1,))
    before = Result[float](PERCENT, "Error weighed as dye, either way", finest=(1,))
    after = Result[float](PERCENT, "Error weighed as mix, either way", finest=(0.1,), at_step=True)
    share = Result[float](PERCENT, "Speckle in the whole shade", finest=(1,))
    scatter = Result[float](PERCENT, "Spots vary by (standard deviation)", finest=(1,))
    busier = Result[float](PERCENT, f"Pairs where one has {BUSIER:g} times the spots", finest=(1,))


def answer(case: SpeckleDose) -> None:
    case.each = dye_mass(case.skein_mass, case.depth)
    case.mix = mix_mass(case.each, case.one_in)
    case.run = run_dye(case.each, case.skeins, case.lost)
    case.carrier = carrier_mass(case.run, case.one_in)
    case.before = error_share(case.scale_error, case.each)
    case.after = dose_error_bulked(case.run, case.mix, case.scale_error)
    case.share = speckle_share(case.colors * case.depth, case.ground_depth)
    case.scatter = spots_scatter(case.spots)
    if case.spots >= FEWEST:
        # What the batch's weighing is off, all of its skeins share.
        case.dose_scatter = error_share(case.scale_error, case.mix) / sqrt(3)
        case.busier = UNLIKE(case.spots, BUSIER, case.dose_scatter)


def say(out: Outcome[SpeckleDose]) -> tuple[str, ...]:
    one = out.case.one_in
    return (
        f"Weigh {out.text(SpeckleDose.mix)} of mix for each color and skein.",
        (
            f"It holds {out.text(SpeckleDose.each)} of dye, 1 part in {one:g}. For"
            f" {out.case.skeins} skeins mix {out.text(SpeckleDose.run)} of dye with"
            f" {out.text(SpeckleDose.carrier)} of carrier, for each color."
        ),
    )


def notes(out: Outcome[SpeckleDose]) -> list[str]:
    low, high = spots_range(out.case.spots)
    said = [
        (
            f"Weighed as dye the dose would be good to ± {out.text(SpeckleDose.before)};"
            f" as mix to ± {out.text(SpeckleDose.after)}."
        ),
        (
            f"Where {out.number(out.case.spots)} spots are usual, most skeins show {low} to {high}:"
            " chance alone, the same hand and the same dose."
        ),
    ]
    if out.has(SpeckleDose.busier):
        said.append(
            "Of two skeins, one shows half as many again as the other in about"
            f" {out.number(out.value(SpeckleDose.busier))} of 100 pairs."
        )
    said.append(
        "Sieve dye and carrier together until no streak is left; an uneven mix undoes the weighing."
    )
    return said


def picture(out: Outcome[SpeckleDose]) -> Picture:
    """The error of a dose before and after bulking, on one scale."""
    before, after = out.value(SpeckleDose.before), out.value(SpeckleDose.after)
    scale = Scale(0, max(before, after, 1.0) * 1.05, 16, 330)
    drawing = Drawing(118)
    for y, words, value, fill in (
        (20, f"Weighed as dye: ± {out.text(SpeckleDose.before)}", before, INDIGO_WASH),
        (66, f"Weighed as mix: ± {out.text(SpeckleDose.after)}", after, INDIGO),
    ):
        drawing.text(16, y, words, bold=fill == INDIGO)
        drawing.rect(16, y + 7, max(scale(value) - 16, 1.5), 16, fill=fill, stroke=INDIGO)
    drawing.line(16, 10, 16, 96, stroke=LINE)
    drawing.text(16, 112, "error of one dose, as a share of it", fill=SOFT)
    return drawing.picture(
        "What bulking does to the dose",
        f"Error of a dose: {before:.0f} % weighed as dye, {after:.1f} % weighed as mix.",
    )


def scatter(out: Outcome[SpeckleDose]) -> Picture:
    """What chance alone does to the spots."""
    low, high = spots_range(out.case.spots)
    return speckle_picture(low, out.case.spots, high)


CARD = Card(
    id="speckle-dose",
    chapter="dye",
    place=70,
    handles=("powder",),
    question="How do I dose dry speckles evenly?",
    case=SpeckleDose,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture, scatter),
    basis=Basis(
        MODEL,
        "A dose of mix is weighed in grams, its dye once for the whole run. Spots fall by chance"
        " (Poisson): no hand makes two skeins alike.",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "The dustiest work there is.",
            "Mask and gloves, no fan, no draft, wet paper on the bench, nobody else in the room."
            " Some dyes sensitize the lungs for good. The maker’s safety data sheet comes first.",
        ),
    ),
    carry=(
        Carry("room-air", "What about the dust in this room?", {"what": Constant("powder")}),
        Carry(
            "dye-recipe",
            "The ground under it",
            {"skeins": SpeckleDose.skeins, "skein_mass": SpeckleDose.skein_mass},
        ),
    ),
)
