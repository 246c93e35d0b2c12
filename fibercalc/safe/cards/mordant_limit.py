"""Metal of a mordant: on the fiber, in the bath, and against the published upper marks."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from ...core.answer import Picture
from ...core.card import (
    CHOICE,
    STANDARD,
    Basis,
    Between,
    Card,
    Carry,
    Case,
    Caution,
    Input,
    Option,
    Result,
)
from ...core.outcome import Outcome
from ...core.steps import looked_up
from ...core.table import read_table
from ...core.units import CONCENTRATION, MASS, NUMBER, PERCENT, VOLUME
from ...sources import (
    ARITHMETIC,
    ATOMIC_WEIGHTS,
    LOCAL_LIMITS_US,
    MAIRET_1916,
    TRADE_PAGE_MORDANTS,
    TRADE_PAGES_IRON,
    WEB_GUIDE_MORDANTS,
)
from ..inputs import LIMIT
from ..limits import published
from ..mordant import metal_in, metal_left, metal_on
from ..pictures.bars import shares_of_limit

CHROME = (
    "chrome is not offered: hexavalent chromium is a carcinogen, and in the EU its use needs an"
    " authorization (from memory); alum, iron or another color does without"
)
ROWS = read_table("safe", "mordants").rows
STRICTEST = {"copper": 0.68, "iron": 32.0}  # mg/L; tests hold it to the table drain-limits


class MordantLimit(Case):
    """Fiber mordanted with so much of a salt, and the bath that is left."""

    mordant = Input[str](
        CHOICE,
        "Mordant",
        default="alum",
        refused=dict.fromkeys(
            ("chrome", "chromium", "dichromate", "potassium dichromate", "sodium dichromate"),
            CHROME,
        ),
        options=tuple(Option(row["key"], row["label"]) for row in ROWS),
        measure="Chrome is not offered.",
    )
    fiber = Input[float](
        MASS,
        "Dry fiber",
        default="400 g",
        allowed=("1 g", "100 kg"),
        usual=("20 g", "5 kg"),
        units=("g", "kg", "oz", "lb"),
        strict=True,
        rough="1 %",
    )
    depth = Input[float](
        PERCENT,
        "Mordant, of the fiber",
        default="12",
        allowed=("0.1", "100"),
        usual=("1", "25"),
        strict=True,
    )
    taken_up = Input[float](
        PERCENT,
        "Taken up by the fiber",
        default="60",
        allowed=("0", "100"),
        usual=("20", "95"),
        rough="20",
    )
    bath = Input[float](
        VOLUME,
        "Bath left",
        default="9 L",
        allowed=("0.1 L", "1000 L"),
        usual=("1 L", "100 L"),
        units=("L", "qt", "gal"),
        unit="L",
        rough="5 %",
        strict=True,
    )

    mark = Between[float](PERCENT, "Published upper mark, of the fiber")
    in_salt = Between[float](PERCENT, "Metal in the crystals")

    salt = Result[float](MASS, "Mordant", units=("g", "oz"), finest=(0.1, 0.01), floor=0.0)
    metal = Result[float](MASS, "Metal in it", units=("g",), finest=(0.01,), floor=0.0)
    on_fiber = Result[float](NUMBER, "Metal on the fiber, g for a kg", floor=0.0)
    left = Result[float](
        CONCENTRATION,
        "Metal left in the bath",
        units=("mg/L",),
        finest=(1,),
        rounding="up",
        floor=0.0,
        unit="mg/L",
    )
    times_mark = Result[float](
        NUMBER, "Times the upper mark", finest=(0.01,), rounding="up", floor=0.0
    )
    limit = replace(LIMIT)


def answer(case: MordantLimit) -> None:
    case.mark = looked_up("safe", "mordants", "key", case.mordant, "mark")
    case.in_salt = looked_up("safe", "mordants", "key", case.mordant, "metal")
    case.salt = case.fiber * case.depth / 100
    case.metal = metal_in(case.salt, case.in_salt)
    case.on_fiber = metal_on(case.metal, case.taken_up, case.fiber)
    case.left = metal_left(case.metal, case.taken_up, case.bath)
    case.times_mark = case.depth / case.mark
    case.limit = _limit(_row(case))


def _row(case: MordantLimit) -> dict[str, Any]:
    """What the table says of the mordant."""
    return read_table("safe", "mordants").row("key", case.mordant)


def _limit(row: dict[str, Any]) -> str:
    local = STRICTEST.get(row["metal_name"])
    bath = (
        f"; example for a bath: {local:g} mg/L {row['metal_name']},"
        f" {'Lawton, Oklahoma' if local < 1 else 'St. Charles, Illinois'}, read"
        f" {LOCAL_LIMITS_US.read}"
        if local
        else "; no limit for the bath was found"
    )
    if row["key"] == "aluminum-sulfate":
        return (
            published(
                f"{row['mark']:g} % of the fiber, which holds as much aluminum as alum at its mark",
                "trade-page-mordants",
            )
            + bath
        )
    source = {"alum": "trade-page-mordants", "ferrous": "trade-pages-iron"}.get(
        row["key"], "web-guide-mordants"
    )
    return published(f"{row['mark']:g} % of the fiber", source) + bath


def _name(case: MordantLimit) -> str:
    label: str = _row(case)["label"]
    return label[0].lower() + label[1:].partition(" (")[0]


def say(out: Outcome[MordantLimit]) -> tuple[str, ...]:
    times = out.value(MordantLimit.times_mark)
    lies = "above" if times > 1 + 1e-9 else "at" if times > 0.999 else "below"
    amount = out.amount(out.case.depth, PERCENT)
    left, metal_name = out.text(MordantLimit.left), _row(out.case)["metal_name"]
    span = f" ({out.span(MordantLimit.left)})" if out.rough(MordantLimit.left) else ""
    return (
        (
            f"{amount} is {out.text(MordantLimit.salt)} of {_name(out.case)}, {lies} the published"
            f" upper mark of {out.case.mark:g} %."
        ),
        (
            f"It carries {out.text(MordantLimit.metal)} of {metal_name}; about {left} of it stays"
            f" in the bath{span}."
        ),
    )


def notes(out: Outcome[MordantLimit]) -> list[str]:
    row, left = _row(out.case), out.case.left
    said = [f"Above the mark: {row['why']}."] if row["why"] else []
    local = STRICTEST.get(row["metal_name"])
    if local and left > local:
        said.append(
            f"What stays is about {left / local:.0f} times the strictest local sewer limit that"
            f" was read ({local:g} mg/L): use the bath again for the next fiber, or collect it;"
            " diluting to comply is no way out."
        )
    said.append(f"{CHROME[0].upper()}{CHROME[1:]}.")
    said.append(
        "How much the fiber takes up is a guess unless it was measured: type yours, with its ±."
    )
    return said


def picture(out: Outcome[MordantLimit]) -> Picture:
    times = MordantLimit.times_mark
    rows = [("Mordant", out.value(times), out.low(times), out.high(times))]
    return shares_of_limit("Against the published upper mark", rows, "published upper mark")


CARD = Card(
    id="mordant-limit",
    chapter="safe",
    place=60,
    question="How much metal does this mordant leave?",
    case=MordantLimit,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        STANDARD,
        "Mass balance, with the metal from the formula of the crystals. Marks are the upper ends of"
        " what dye books and guides print.",
    ),
    sources=(
        TRADE_PAGE_MORDANTS,
        TRADE_PAGES_IRON,
        WEB_GUIDE_MORDANTS,
        MAIRET_1916,
        LOCAL_LIMITS_US,
        ATOMIC_WEIGHTS,
        ARITHMETIC,
    ),
    cautions=(
        Caution(
            "Metal salts: gloves, goggles, no dust.",
            "Copper and tin poison water life: never to a septic tank, drain or garden without the"
            " local authority’s word. Their pots never go back to food. Iron pills and salts kill"
            " children: lock them up.",
        ),
    ),
    carry=(
        Carry(
            "drain-check",
            "May the bath go down the drain?",
            {
                "metal": MordantLimit.mordant,
                "metal_amount": MordantLimit.left,
                "volume": MordantLimit.bath,
            },
        ),
    ),
    handles=("powder", "metal"),
)
