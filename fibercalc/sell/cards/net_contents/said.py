"""What is said of a sample beside its label."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import LENGTH, MASS
from ...lot_test import EU, SMALL_BATCH, THREAD, US, WEIGHT, Judged, least_sample
from .asked import NetContents, as_labeled

LAWS = {
    US: "the US handbook’s test",
    EU: "the average rule of the EU and the UK",
    THREAD: "a state thread law",
}


def amount(out: Outcome[NetContents], value: float) -> str:
    of = MASS if out.case.by == WEIGHT else LENGTH
    written: str = out.amount(
        value, of, out.units(as_labeled(out.case, NetContents.mean))[0].sign, 5
    )
    return written


def asked(out: Outcome[NetContents], rule: Judged) -> str:
    """A rule's limit in words."""
    if rule.allowed is None:
        return f"at least {amount(out, rule.limit)}"
    if rule.allowed == 0:
        few = "none"
    else:
        few = "at most 1 in 40" if rule.law == EU else f"at most {rule.allowed:.0f}"
    return f"{few} under {amount(out, rule.limit)}"


def seen(out: Outcome[NetContents], rule: Judged) -> str:
    """What a rule found."""
    if rule.allowed is None:
        return amount(out, rule.found)
    return f"{rule.found} of {out.case.count}"


def say(out: Outcome[NetContents]) -> tuple[str, ...]:
    mine = [rule for rule in out.case.judged if rule.law == out.case.sold]
    mean = _mean_words(out)
    if not mine:
        return (
            f"{mean}; the average rule of the EU and the UK does not reach it.",
            "It is for weights from 5 g to 10 kg.",
        )
    if mine[0].met is None:
        return _too_few(out, mean)
    failed = [rule for rule in mine if not rule.met]
    limits = "; ".join(
        f"{'the mean ' if rule.allowed is None else ''}{asked(out, rule)} (found {seen(out, rule)})"
        for rule in failed or mine
    )
    return (
        f"{mean}: the sample {'does not keep' if failed else 'keeps'} {LAWS[out.case.sold]}.",
        f"{'Not met' if failed else 'Met'}: {limits}.",
    )


def _mean_words(out: Outcome[NetContents]) -> str:
    over = as_labeled(out.case, NetContents.over)
    if abs(out.value(over)) <= 1e-9:
        return "The mean is what the label says"
    off = out.text(over).replace("−", "")
    return f"The mean is {off} {'over' if out.value(over) >= 0 else 'under'} the label"


def _too_few(out: Outcome[NetContents], mean: str) -> tuple[str, ...]:
    count, lot, sold = out.case.count, out.case.lot, out.case.sold
    least = least_sample(sold, lot)
    if sold == THREAD:
        taken = f"{least} skeins or more"
    elif least == lot:
        taken = f"all {lot} skeins of the lot"
    else:
        taken = f"{least} skeins from a lot of {lot}"
    return (
        f"{count} skeins are too few for a verdict: {LAWS[sold]} takes {taken}.",
        f"{mean}; that is a look and no test. Take {least - count} more at random.",
    )


def notes(out: Outcome[NetContents]) -> list[str]:
    said, case = [], out.case
    if case.sold == US and len([rule for rule in case.judged if rule.law == US]) == 1:
        said.append(
            "What one skein under so heavy a label may be short was not recalled: only the mean is"
            " judged, which is half of that test."
        )
    if case.sold == EU and case.lot < SMALL_BATCH and case.by == WEIGHT:
        said.append(
            "Under 100 packages an inspector weighs all of them, and their mean may not be under"
            " the label at all."
        )
    limit = next(
        (rule.limit for rule in case.judged if rule.law == case.sold and rule.key == "mean"), None
    )
    mean = as_labeled(out.case, NetContents.mean)
    if limit is not None and out.low(mean) < limit < out.high(mean):
        said.append(
            f"The mean lies within what the {'scale' if case.by == WEIGHT else 'reel'} leaves"
            " open around its limit: measure finer before you rely on it."
        )
    if out.has(NetContents.aim):
        said.append(
            f"Aim at {out.text(NetContents.aim)} a skein: then such a sample keeps the EU and UK"
            " mean 95 times in 100, and 1 in 40 or fewer are short by more than the tolerance."
        )
    if out.has(NetContents.dry_mean):
        said.append(_drier_words(out))
    said.append(
        "A package is judged as it is found. No moisture allowance for yarn was read: dryness is"
        " the packer’s risk."
    )
    return said


def _drier_words(out: Outcome[NetContents]) -> str:
    dry = NetContents.dry_mean
    short = out.low(dry) < out.case.label
    return (
        f"In air of {out.case.driest:.0f} % humidity the same skeins weigh {out.text(dry)}"
        f" ({out.span(dry)})"
        + (": a dry room alone can take the mean under the label." if short else ".")
    )
