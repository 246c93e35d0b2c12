"""The rules side by side, and the sample as dots."""

from __future__ import annotations

from ....core.answer import Picture, Table
from ....core.outcome import Outcome
from ...lot_test import EU, INSPECTOR, THREAD, US
from ...pictures.lot import sample_dots
from .asked import NetContents, as_labeled
from .said import amount, asked, seen

RULES = {
    (US, "mean"): "US, mean",
    (US, "each"): "US, each",
    (EU, "mean"): "EU and UK, mean",
    (EU, "each"): "EU and UK, each",
    (EU, "far"): "EU and UK, every one",
    (INSPECTOR, "mean"): "Inspector, EU and UK",
    (THREAD, "mean"): "Thread law, mean",
}


def table(out: Outcome[NetContents]) -> Table:
    return Table(
        "Each rule, side by side",
        ("Rule", "Limit", "Found", "It is"),
        tuple(
            (
                RULES[rule.law, rule.key],
                asked(out, rule),
                seen(out, rule),
                {None: "too few to say", True: "met", False: "not met"}[rule.met],
            )
            for rule in out.case.judged
        ),
        "The US table of weights, its sampling plan and some lengths are from memory; EU and UK"
        " figures and the thread laws were read. Checked on 26 November 2026; local law decides.",
    )


def picture(out: Outcome[NetContents]) -> Picture:
    mean = as_labeled(out.case, NetContents.mean)
    unit = out.units(mean)[0]
    names = {
        (US, "each"): "US, no skein under",
        (EU, "each"): "1 in 40 under at most",
        (EU, "far"): "none under",
        (THREAD, "mean"): "the mean at least",
    }
    limits = [
        (names[rule.law, rule.key], unit.from_base(rule.limit))
        for rule in out.case.judged
        if rule.law == out.case.sold and (rule.law, rule.key) in names
    ]
    return sample_dots(
        [unit.from_base(value) for value in out.case.values],
        unit.from_base(out.case.label),
        unit.from_base(out.value(mean)),
        limits,
        lambda value: amount(out, unit.to_base(value)),
    )
