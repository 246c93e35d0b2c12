"""A weighed or measured sample beside its label: the US lot test, the average rule of the EU and the UK, and a state thread rule."""

from math import sqrt

from ...core.answer import Table
from ...core.card import CHOICE, STANDARD, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.problem import OutOfRange, Refused
from ...core.units import COUNT, LENGTH, MASS, NUMBER, PERCENT
from ...sources import (ARITHMETIC, DIRECTIVE_76_211, ISO_139, MA_94_285, NIST_HB_133, NIST_HB_133_LENGTH, REGAIN_CURVES, RI_6_10, SI_2006_659, STUDENT_TABLE, UK_PACKAGED_GOODS)
from ...yarn.blend import blend_regain
from ...yarn.moisture import mass_at_other_regain
from ...yarn.regain import CURVE_ERROR, regain_at_humidity, regain_curves
from ...yarn.sample import mean as mean_of, standard_deviation
from ...yarn.student_t import quantile, share_below
from ..pictures.lot import sample_dots
from ..tolerance import (CHANCE_EU, CHANCE_US, HEAVIEST, LIGHTEST, THREAD_SHORT, THREAD_UNITS, allowed_short_length, allowed_short_weight, correction_factor, inspector_factor,
                         mean_short, sample_size, tolerable_negative_error)

WEIGHT, LENGTH_BY = "weight", "length"
US, EU, THREAD = "us", "eu", "thread"
SURE, ONE_IN_40, NORMAL_40 = 95.0, 0.025, 1.96
MET, NOT_MET, NO_RULE = "met", "not met", "does not apply"
FAMILIES = regain_curves().columns[1:-1]


def answer(w, by, label_mass, label_length, skeins, lengths, lot, sold, air, humidity, driest, fibers):
    name, rows, label, of = ("label_mass", skeins, label_mass, MASS) if by == WEIGHT else ("label_length", lengths, label_length, LENGTH)
    column = "skeins.mass" if by == WEIGHT else "lengths.length"
    values = [row.mass if by == WEIGHT else row.length for row in rows]
    count = w.step("count", f"count({column})", len(values), COUNT, label="Skeins in the sample")
    mean = w.step("mean", f"mean({column})", mean_of(values), of, label="Their mean")
    spread = w.step("spread", f"sd({column})", standard_deviation(values), of, label="Their standard deviation")
    lightest = w.step("least", f"min({column})", min(values), of, label="The least of them")
    over = w.step("over", f"mean - {name}", mean - label, of, label="Mean, over the label")
    factor_us = w.solved("factor_us", f"share_below(factor_us * sqrt(count), count - 1) - {CHANCE_US:g}", correction_factor(count), NUMBER, label="Sample correction factor, US", using=(share_below,))
    low_us = w.step("low_us", f"{name} - factor_us * spread", label - factor_us * spread, of, label="The mean may be down to, US")
    found = {"mean": mean, "spread": spread, "over": over, "least": lightest, "low_us": low_us, "values": values, "label": label}
    found["short"] = w.step("short", f"100 * ({name} - mean) / {name}", mean_short(mean, label), PERCENT, label="Mean short of the label, by")
    try:
        each = allowed_short_weight(label) if by == WEIGHT else allowed_short_length(label)
    except OutOfRange:
        each = None
    found["each_us"] = None if each is None else w.step("each_us", f"{name} - {each:.10g}", label - each, of, label="No skein under, US")
    if by == WEIGHT and LIGHTEST <= label <= HEAVIEST:
        allowed = tolerable_negative_error(label)
        found["first"] = w.step("first", f"label_mass - {allowed:g}", label - allowed, MASS, label="At most 1 in 40 under, EU and UK")
        found["second"] = w.step("second", f"label_mass - 2 * {allowed:g}", label - 2 * allowed, MASS, label="None under, EU and UK")
        factor_eu = w.solved("factor_eu", f"share_below(factor_eu * sqrt(count), count - 1) - {CHANCE_EU:g}", inspector_factor(count), NUMBER, label="Inspector’s factor, EU and UK", using=(share_below,))
        found["low_eu"] = w.step("low_eu", "label_mass - factor_eu * spread", label - factor_eu * spread, MASS, label="An inspector’s sample may be down to")
        _aim(w, found, count, spread, label, allowed)
    if by == WEIGHT and air == "yes":
        _drier(w, found, mean, humidity, driest, fibers)
    return found


def _aim(w, found, count, spread, label, allowed):
    """The mean to fill to, so that a sample's mean and all but 1 in 40 skeins keep the rule."""
    def t_95(degrees):
        return quantile(SURE, degrees)

    w.step("aim_mean", "label_mass + t_95(count - 1) * spread / sqrt(count)", label + t_95(count - 1) * spread / sqrt(count), MASS, label="To keep the mean, 95 in 100") if False else None
    factor = w.solved("t", f"share_below(t, count - 1) - {SURE:g}", t_95(count - 1), NUMBER, label="Student’s t, 95 %", using=(share_below,))
    found["aim"] = w.step("aim", f"max(label_mass + t * spread / sqrt(count), label_mass - {allowed:g} + {NORMAL_40} * spread)",
                          max(label + factor * spread / sqrt(count), label - allowed + NORMAL_40 * spread), MASS, label="Aim at a mean of")


def _drier(w, found, mean, humidity, driest, fibers):
    """What the same skeins weigh in the driest air they may be weighed in."""
    shares = {}
    for row in fibers:
        shares[row.fiber] = shares.get(row.fiber, 0.0) + row.share

    def regain_of_blend(at):
        return blend_regain(shares, {family: regain_at_humidity(family, at) for family in shares})

    try:
        here, there = regain_of_blend(humidity), regain_of_blend(driest)
    except OutOfRange as error:
        raise Refused(f"Fibers: {error.reason or 'their shares must add up to 100 %'}.", "fibers.1.share") from None
    w.solved("here", "regain_of_blend(humidity) - here", here, PERCENT, label="Regain in the air here", using=(regain_of_blend,))
    w.solved("there", "regain_of_blend(driest) - there", there, PERCENT, label="Regain in the driest air", using=(regain_of_blend,))
    found["dry_mean"] = w.step("dry_mean", "mean * (100 + there) / (100 + here)", mean_at(mean, here, there), MASS, label="They would weigh there, on average")
    w.error("dry_mean", mean * abs(there - here) / (100 + here) * CURVE_ERROR / 100)


def mean_at(mean, here, there):
    """The mean at another regain."""
    return mass_at_other_regain(mean, here, there)


def _rules(r):
    """Each rule: law, what is asked, the limit, what was found, and whether it is met."""
    values, label, weight = r.kept["values"], r.kept["label"], r.given["by"] == WEIGHT
    unit = MASS if weight else LENGTH
    write = lambda value: r.amount(value, unit, _sign(r), 4)
    needed, may = sample_size(max(int(r.given["lot"]), 1))
    rows = [(US, "US, average: mean at least", write(r.value("low_us")), write(r.value("mean")), r.value("mean") >= r.value("low_us"))]
    if r.has("each_us"):
        under = sum(value < r.value("each_us") for value in values)
        rows.append((US, f"US, each: {'none' if not may else may} under", write(r.value("each_us")), f"{under} of {len(values)}", under <= may))
    if r.has("first"):
        below, far = sum(value < r.value("first") for value in values), sum(value < r.value("second") for value in values)
        rows += [(EU, "EU and UK, average: mean at least", write(label), write(r.value("mean")), r.value("mean") >= label),
                 (EU, "EU and UK, each: at most 1 in 40 under", write(r.value("first")), f"{below} of {len(values)}", below <= ONE_IN_40 * len(values)),
                 (EU, "EU and UK, each: none under", write(r.value("second")), f"{far} of {len(values)}", not far),
                 ("inspector", "An inspector’s mean, of such a sample", write(r.value("low_eu")), write(r.value("mean")), r.value("mean") >= r.value("low_eu"))]
    rows.append((THREAD, f"State thread law: mean of {THREAD_UNITS}, at most {THREAD_SHORT:g} % short", write(label * (1 - THREAD_SHORT / 100)), write(r.value("mean")), r.value("short") <= THREAD_SHORT))
    return rows, needed


def _sign(r):
    return r.units("mean" if r.given["by"] == WEIGHT else "mean")[0].sign


def say(r):
    rows, _ = _rules(r)
    mine = [row for row in rows if row[0] == r.given["sold"]]
    where = {US: "the US handbook’s test", EU: "the average rule of the EU and the UK", THREAD: "a state thread law"}[r.given["sold"]]
    over = r.value("over")
    mean = f"The mean is {r.text('over').replace('−', '')} {'over' if over >= 0 else 'under'} the label" if abs(over) > 1e-9 else "The mean is the label"
    if not mine:
        return f"{mean}. {where[0].upper()}{where[1:]} does not reach this label.", "It is for weights of 5 g to 10 kg."
    failed = [row for row in mine if not row[4]]
    first = f"{mean}: the sample keeps {where}." if not failed else f"{mean}: the sample does not keep {where}."
    second = f"Not met: {failed[0][1]} {failed[0][2]}; found {failed[0][3]}." if failed else f"Met: {mine[0][1]} {mine[0][2]}" + (f"; {mine[1][1]} {mine[1][2]}." if len(mine) > 1 else ".")
    return first, second


def notes(r):
    rows, needed = _rules(r)
    said, count = [], len(r.kept["values"])
    if count < needed:
        said.append(f"The US test takes {needed} skeins from a lot of {r.given['lot']:.0f}; these are {count}.")
    if count < THREAD_UNITS:
        said.append(f"A thread law’s mean is of {THREAD_UNITS} units or more, taken at random.")
    if r.given["sold"] == EU and r.given["lot"] < 100:
        said.append("Under 100 packages an inspector takes the mean of all of them, and it may not be under the label at all.")
    edge = {US: r.value("low_us"), EU: r.kept["label"], THREAD: r.kept["label"] * (1 - THREAD_SHORT / 100)}[r.given["sold"]]
    if r.low("mean") < edge <= r.high("mean"):
        said.append("The mean is so near its limit that this scale or reel cannot tell: check it, or weigh in a finer one.")
    if r.has("aim"):
        said.append(f"Aim at {r.text('aim')} a skein to keep the EU and UK rule 95 times in 100 with skeins that vary like these.")
    if r.has("dry_mean"):
        said.append(f"In air of {r.given['driest']:.0f} % the same skeins would weigh {r.text('dry_mean')} on average ({r.span('dry_mean')}): wool dries, the label does not.")
    said.append("A package is tested as it is found; no moisture allowance for yarn was read, so a dry room is the packer’s risk. Wind heavy enough for it.")
    return said


def table(r):
    rows, _ = _rules(r)
    return Table("Each rule, side by side", ("Rule", "Limit", "Found", "It is"), tuple((words, limit, found, MET if met else NOT_MET) for _, words, limit, found, met in rows),
                 "US weights, sampling plan and lengths to 1 m or over 43 m are from memory; EU and UK figures and the thread laws were read on 26 November 2026. Local law decides.")


def picture(r):
    unit = r.units("mean")[0]
    names = (("each_us", "US, none under"),) if r.given["sold"] == US else (("first", "1 in 40 under at most"), ("second", "none under")) if r.given["sold"] == EU else ()
    limits = [(words, unit.from_base(r.value(name))) for name, words in names if r.has(name)]
    if r.given["sold"] == THREAD:
        limits = [("mean at least", unit.from_base(r.kept["label"] * (1 - THREAD_SHORT / 100)))]
    return sample_dots([unit.from_base(value) for value in r.kept["values"]], unit.from_base(r.kept["label"]), unit.from_base(r.value("mean")), limits, unit.sign,
                       lambda value: r.amount(unit.to_base(value), MASS if r.given["by"] == WEIGHT else LENGTH, unit.sign, 4))


WEIGHED, REELED, AIRED = {"by": (WEIGHT,)}, {"by": (LENGTH_BY,)}, {"by": (WEIGHT,), "air": ("yes",)}
EOF_PLACEHOLDER = None
