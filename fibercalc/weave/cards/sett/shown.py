"""A sett shown: what is at hand, the closest sett in other weaves, ends cut across."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ....core.units import PER_LENGTH
from ...pictures.spacing import ends_across
from ...setting import average_float, brierley_maximum, maximum_sett, sett_in_another_weave
from .asked import PEIRCE, USES, WEAVES, Sett

COMPARED = ("plain", "twill-2-1", "twill-2-2", "twill-3-1", "basket-2-2", "satin-5")


def ways_table(out: Outcome[Sett]) -> Table | None:
    """What is at hand and how near it comes."""
    rows = []
    for way in out.case.ways[:6]:
        share = 100 * way.sett / out.value(Sett.closest)
        rows.append(
            (
                way.label(),
                out.amount(way.sett, PER_LENGTH, "per cm", 3).partition("\u00a0")[0],
                out.amount(way.sett, PER_LENGTH, "per in", 3).partition("\u00a0")[0],
                f"{out.number(share)} %",
                _use_of(share),
            )
        )
    return Table(
        "At hand, nearest first",
        ("Threading", "Ends per cm", "Per in", "Of the closest", "Which is usual for"),
        tuple(rows),
        "Shares for a use: from memory, unverified.",
    )


def _use_of(share: float) -> str:
    """The use that a share is usual for, or between which two it lies."""
    if share > 100:
        return "closer than a square cloth can be"
    ordered = sorted(
        (use for use in USES.values() if use["key"] != "weft-faced"), key=lambda use: use["low"]
    )
    label: dict[str, str] = {use["key"]: use["label"].lower() for use in USES.values()}
    for use in ordered:
        if use["low"] <= share <= use["high"]:
            return label[use["key"]]
    below = [label[use["key"]] for use in ordered if use["high"] < share]
    above = [label[use["key"]] for use in ordered if use["low"] > share]
    if not below:
        faced = share <= USES["weft-faced"]["high"]
        return label["weft-faced"] if faced else f"more open than {above[0]}"
    return f"between {below[-1]} and {above[0]}" if above else below[-1]


def closest_table(out: Outcome[Sett]) -> Table | None:
    """The closest sett in other weaves, and by Brierley for cotton."""
    return Table(
        "The closest sett in other weaves",
        ("Weave", "Per in", "Per cm", "Brierley, per in", "Times plain weave"),
        tuple(_weave_row(out, key) for key in COMPARED),
        "Brierley’s constant here is that of cotton; his power of the float is from memory for"
        " basket and satin.",
    )


def _weave_row(out: Outcome[Sett], key: str) -> tuple[str, ...]:
    case, row = out.case, WEAVES[key]
    ends, crossings = row["ends"], row["crossings"]
    closest = maximum_sett(case.diameters, ends, crossings)
    by_power = "–"
    if case.by == PEIRCE or (case.maybe(Sett.kind) or "").startswith("cotton"):
        found = brierley_maximum(case.cotton_count, average_float(ends, crossings), row["exponent"])
        by_power = out.number(found, 1)
    return (
        row["label"],
        out.number(closest, 1),
        out.number(closest / 2.54, 1),
        by_power,
        out.number(sett_in_another_weave(1.0, 2, 2, ends, crossings), 2),
    )


def picture(out: Outcome[Sett]) -> Picture | None:
    sign = out.units(Sett.sett)[0].sign
    diameter = 1 / out.value(Sett.diameters)
    rows = [
        ("touching: " + out.text(Sett.diameters, sign), diameter, 0),
        (f"closest in this weave: {out.text(Sett.closest, sign)}", 1 / out.value(Sett.closest), 0),
        (
            f"as set: {out.text(Sett.sett, sign)}",
            1 / out.value(Sett.sett),
            1 if out.case.weave == "plain" else 0,
        ),
    ]
    return ends_across(
        "Ends cut across, to one scale",
        diameter,
        rows,
        "Rows of ends cut across: " + "; ".join(words for words, _, _ in rows) + ".",
    )
