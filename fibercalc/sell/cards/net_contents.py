"""A weighed or measured sample beside its label: the US lot test, the average rule of the EU and the UK, and a state thread rule."""

from math import sqrt

from ...core.answer import Table
from ...core.card import CHOICE, STANDARD, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.problem import OutOfRange, Refused
from ...core.units import COUNT, LENGTH, MASS, NUMBER, PERCENT
from ...sources import (DIRECTIVE_76_211, MA_94_285, NIST_HB_130, NIST_HB_133, NIST_HB_133_LENGTH, REGAIN_CURVES, RI_6_10, SI_2006_659, STUDENT_TABLE, UK_PACKAGED_GOODS)
from ...yarn.blend import blend_regain
from ...yarn.moisture import mass_at_other_regain
from ...yarn.regain import CURVE_ERROR, regain_at_humidity, regain_curves
from ...yarn.sample import mean as mean_of, standard_deviation
from ...yarn.student_t import quantile, share_below
from ..lot_test import EU, INSPECTOR, LENGTH as BY_LENGTH, SMALL_BATCH, THREAD, US, WEIGHT, judge, least_sample
from ..pictures.lot import sample_dots
from ..tolerance import (CHANCE_EU, CHANCE_US, HEAVIEST, LIGHTEST, allowed_short_length, allowed_short_weight, correction_factor, inspector_factor,
                         mean_short, tolerable_negative_error)

SURE = 95.0  # %: how often a sample's mean keeps the rule when the packer aims as told
NORMAL_40 = 1.96  # standard deviations that 1 in 40 lie under
LAWS = {US: "the US handbook’s test", EU: "the average rule of the EU and the UK", THREAD: "a state thread law"}
RULES = {(US, "mean"): "US, mean", (US, "each"): "US, each", (EU, "mean"): "EU and UK, mean", (EU, "each"): "EU and UK, each", (EU, "far"): "EU and UK, every one",
         (INSPECTOR, "mean"): "Inspector, EU and UK", (THREAD, "mean"): "Thread law, mean"}


def answer(w, by, label_mass, label_length, skeins, lengths, lot, sold, air, humidity, driest, fibers):
    weighed = by == WEIGHT
    of, end = (MASS, "") if weighed else (LENGTH, "_length")
    name, column, label = ("label_mass", "skeins.mass", label_mass) if weighed else ("label_length", "lengths.length", label_length)
    values = [row.mass for row in skeins] if weighed else [row.length for row in lengths]
    found = {"values": values, "label": label, "judged": judge(values, label, by, lot)}
    count = w.step("count", f"count({column})", len(values), COUNT, label="Skeins in the sample")
    mean = found["mean" + end] = w.step("mean" + end, f"mean({column})", mean_of(values), of, label="Their mean")
    spread = found["spread" + end] = w.step("spread" + end, f"sd({column})", standard_deviation(values), of, label="Their standard deviation")
    found["over" + end] = w.step("over" + end, f"mean{end} - {name}", mean - label, of, label="Mean, over the label")
    found["short"] = w.step("short", f"100 * ({name} - mean{end}) / {name}", mean_short(mean, label), PERCENT, label="The mean is short by")
    factor = w.solved("factor_us", f"share_below(factor_us * sqrt(count), count - 1) - {CHANCE_US:g}", correction_factor(count), NUMBER, label="Sample correction factor, US", using=(share_below,))
    found["low_us" + end] = w.step("low_us" + end, f"{name} - factor_us * spread{end}", label - factor * spread, of, label="US: the mean may be down to")
    try:
        each = allowed_short_weight(label) if weighed else allowed_short_length(label)
        found["each_us" + end] = w.step("each_us" + end, f"{name} - {each:.12g}", label - each, of, label="US: no skein under")
    except OutOfRange:
        pass
    if weighed and LIGHTEST <= label <= HEAVIEST:
        _average_rule(w, found, count, spread, label, lot)
    if weighed and air == "yes":
        _drier(w, found, mean, humidity, driest, fibers)
    return found


def _average_rule(w, found, count, spread, label, lot):
    error = tolerable_negative_error(label)
    found["first"] = w.step("first", f"label_mass - {error:g}", label - error, MASS, label="EU and UK: 1 in 40 under at most")
    found["second"] = w.step("second", f"label_mass - 2 * {error:g}", label - 2 * error, MASS, label="EU and UK: none under")
    if lot >= SMALL_BATCH:
        factor = w.solved("factor_eu", f"share_below(factor_eu * sqrt(count), count - 1) - {CHANCE_EU:g}", inspector_factor(count), NUMBER, label="Inspector’s factor, EU and UK", using=(share_below,))
        w.step("low_eu", "label_mass - factor_eu * spread", label - factor * spread, MASS, label="EU and UK: an inspector’s mean may be down to")
    t = w.solved("t", f"share_below(t, count - 1) - {SURE:g}", quantile(SURE, count - 1), NUMBER, label="Student’s t, 95 %", using=(share_below,))
    found["aim"] = w.step("aim", f"max(label_mass + t * spread / sqrt(count), label_mass - {error:g} + {NORMAL_40} * spread)",
                          max(label + t * spread / sqrt(count), label - error + NORMAL_40 * spread), MASS, label="Aim at a mean of")


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
        raise Refused(f"Fibers: {error.reason}.", "fibers.1.share") from None
    w.solved("here", "regain_of_blend(humidity) - here", here, PERCENT, label="Regain in the air here", using=(regain_of_blend,))
    w.solved("there", "regain_of_blend(driest) - there", there, PERCENT, label="Regain in the driest air", using=(regain_of_blend,))
    found["dry_mean"] = w.step("dry_mean", "mean * (100 + there) / (100 + here)", mass_at_other_regain(mean, here, there), MASS, label="They would weigh there")
    w.error("dry_mean", mean * abs(there - here) / (100 + here) * CURVE_ERROR / 100)


def _key(r, name):
    """A result's name: lengths have their own."""
    return name if r.given["by"] == WEIGHT else name + "_length"


def _unit(r):
    return r.units(_key(r, "mean"))[0]


def _amount(r, value, digits=5):
    unit = _unit(r)
    return r.amount(value, MASS if r.given["by"] == WEIGHT else LENGTH, unit.sign, digits)


def _asked(r, rule):
    """A rule's limit in words."""
    if rule.allowed is None:
        return f"at least {_amount(r, rule.limit)}"
    few = "none" if rule.allowed == 0 else "at most 1 in 40" if rule.law == EU else f"at most {rule.allowed:.0f}"
    return f"{few} under {_amount(r, rule.limit)}"


def _seen(r, rule):
    return _amount(r, rule.found) if rule.allowed is None else f"{rule.found} of {len(r.kept['values'])}"


def say(r):
    mine = [rule for rule in r.kept["judged"] if rule.law == r.given["sold"]]
    over = r.value(_key(r, "over"))
    mean = f"The mean is {r.text(_key(r, 'over')).replace('−', '')} {'over' if over >= 0 else 'under'} the label" if abs(over) > 1e-9 else "The mean is what the label says"
    if not mine:
        return f"{mean}; the average rule of the EU and the UK does not reach it.", "It is for weights from 5 g to 10 kg."
    if mine[0].met is None:
        count, lot, least = len(r.kept["values"]), r.given["lot"], least_sample(r.given["sold"], r.given["lot"])
        taken = f"{least} skeins or more" if r.given["sold"] == THREAD else f"all {lot} skeins of the lot" if least == lot else f"{least} skeins from a lot of {lot}"
        return f"{count} skeins are too few for a verdict: {LAWS[r.given['sold']]} takes {taken}.", f"{mean}; that is a look and no test. Take {least - count} more at random."
    failed = [rule for rule in mine if not rule.met]
    first = f"{mean}: the sample {'does not keep' if failed else 'keeps'} {LAWS[r.given['sold']]}."
    told = failed or mine
    asked = "; ".join(f"{'the mean ' if rule.allowed is None else ''}{_asked(r, rule)} (found {_seen(r, rule)})" for rule in told)
    return first, f"{'Not met' if failed else 'Met'}: {asked}."


def notes(r):
    said, lot, sold = [], r.given["lot"], r.given["sold"]
    if sold == US and len([rule for rule in r.kept["judged"] if rule.law == US]) == 1:
        said.append("What one skein under so heavy a label may be short was not recalled: only the mean is judged, which is half of that test.")
    if sold == EU and lot < SMALL_BATCH and r.given["by"] == WEIGHT:
        said.append("Under 100 packages an inspector weighs all of them, and their mean may not be under the label at all.")
    limit = next((rule.limit for rule in r.kept["judged"] if rule.law == sold and rule.key == "mean"), None)
    mean = _key(r, "mean")
    if limit is not None and r.low(mean) < limit < r.high(mean):
        said.append(f"The mean lies within what the {'scale' if r.given['by'] == WEIGHT else 'reel'} leaves open around its limit: measure finer before you rely on it.")
    if r.has("aim"):
        said.append(f"Aim at {r.text('aim')} a skein: then such a sample keeps the EU and UK mean 95 times in 100, and 1 in 40 or fewer are short by more than the tolerance.")
    if r.has("dry_mean"):
        short = r.low("dry_mean") < r.kept["label"]
        said.append(f"In air of {r.given['driest']:.0f} % humidity the same skeins weigh {r.text('dry_mean')} ({r.span('dry_mean')})" + (": a dry room alone can take the mean under the label." if short else "."))
    said.append("A package is judged as it is found. No moisture allowance for yarn was read: dryness is the packer’s risk.")
    return said


def table(r):
    return Table("Each rule, side by side", ("Rule", "Limit", "Found", "It is"), tuple((RULES[rule.law, rule.key], _asked(r, rule), _seen(r, rule), {None: "too few to say", True: "met", False: "not met"}[rule.met]) for rule in r.kept["judged"]),
                 "The US table of weights, its sampling plan and some lengths are from memory; EU and UK figures and the thread laws were read. Checked on 26 November 2026; local law decides.")


def picture(r):
    unit = _unit(r)
    names = {(US, "each"): "US, no skein under", (EU, "each"): "1 in 40 under at most", (EU, "far"): "none under", (THREAD, "mean"): "the mean at least"}
    limits = [(names[rule.law, rule.key], unit.from_base(rule.limit)) for rule in r.kept["judged"] if rule.law == r.given["sold"] and (rule.law, rule.key) in names]
    return sample_dots([unit.from_base(value) for value in r.kept["values"]], unit.from_base(r.kept["label"]), unit.from_base(r.value(_key(r, "mean"))), limits, lambda value: _amount(r, unit.to_base(value)))


WEIGHED, REELED, AIRED = {"by": (WEIGHT,)}, {"by": (BY_LENGTH,)}, {"by": (WEIGHT,), "air": ("yes",)}
MASSES = ("100.4", "99.1", "101.2", "98.8", "100.9", "99.7", "100.2", "98.6", "100.6", "101.0", "99.4", "100.5")
METERS = ("421", "418", "424", "419.5", "423", "420.5", "417", "422", "421.5", "425", "419", "422.5")

CARD = Card(
    id="net-contents", chapter="sell", place=80, tall_sheet=True,
    question="Is there as much in it as the label says?",
    inputs=(
        Input("by", CHOICE, "The label says", default=WEIGHT, options=(Option(WEIGHT, "A weight"), Option(BY_LENGTH, "A length"))),
        Input("label_mass", MASS, "Weight on the label", record="base.mass", default="100 g", allowed=("1 g", "10 kg"), usual=("10 g", "500 g"), units=("g", "oz"), when=WEIGHED, bench="bases.mass"),
        Input("label_length", LENGTH, "Length on the label", record="base.length", default="420 m", allowed=("1 m", "20000 m"), usual=("20 m", "2000 m"), units=("m", "yd"), when=REELED, bench="bases.length"),
        Rows("skeins", "Skeins, weighed", "skein", least=2, most=100, when=WEIGHED, measure="Taken at random, yarn alone, without band and ties; 12 from a lot of up to 250.",
             fields=(Input("mass", MASS, "Weight", default="100 g", allowed=("0.5 g", "11 kg"), rough="0.1 g", units=("g", "oz"), instrument="scale"),), default=tuple({"mass": f"{mass} g"} for mass in MASSES)),
        Rows("lengths", "Skeins, measured", "skein", least=2, most=100, when=REELED, measure="Taken at random, unwound on one reel or meter, lightly tensioned.",
             fields=(Input("length", LENGTH, "Length", default="420 m", allowed=("0.5 m", "25000 m"), rough="1 %", units=("m", "yd"), instrument="reel"),), default=tuple({"length": f"{length} m"} for length in METERS)),
        Input("lot", COUNT, "Skeins under that label", default="40", allowed=("1", "100000"), usual=("4", "3000"), measure="One base, one put-up, wound alike."),
        Input("sold", CHOICE, "Judge it by", default=US, options=(Option(US, "US: NIST Handbook 133"), Option(EU, "EU or UK: average rule"), Option(THREAD, "US: a state thread law"))),
        Input("air", CHOICE, "Look at drier air too", default="yes", options=(Option("yes", "Yes"), Option("no", "No")), when=WEIGHED),
        Input("humidity", PERCENT, "Humidity where they were weighed", default="55 %", allowed=("10 %", "90 %"), usual=("30 %", "80 %"), rough="5 %", when=AIRED, measure="Where they lay open for two days."),
        Input("driest", PERCENT, "Driest air they may be weighed in", default="40 %", allowed=("10 %", "90 %"), usual=("20 %", "65 %"), when=AIRED, measure="A heated shop in winter: 30 to 40."),
        Rows("fibers", "Fibers", "fiber", record="base.fibers", least=1, most=8, when=AIRED, measure="Shares together 100 %.",
             fields=(Input("fiber", CHOICE, "Fiber", default="wool", options=tuple(Option(family, family[0].upper() + family[1:]) for family in regain_curves().columns[1:-1])),
                     Input("share", PERCENT, "Share", default="25 %", allowed=("0 %", "100 %"))),
             default=({"fiber": "wool", "share": "75 %"}, {"fiber": "polyamide (nylon)", "share": "25 %"})),
    ),
    results=(
        Result("mean", MASS, "Mean of the sample", units=("g", "oz"), finest=(0.01, 0.001)),
        Result("mean_length", LENGTH, "Mean of the sample", units=("m", "yd"), finest=(0.1, 0.1)),
        Result("over", MASS, "Mean, over the label", units=("g", "oz"), finest=(0.01, 0.001)),
        Result("over_length", LENGTH, "Mean, over the label", units=("m", "yd"), finest=(0.1, 0.1)),
        Result("short", PERCENT, "The mean is short by", finest=(0.01,)),
        Result("spread", MASS, "Standard deviation", units=("g", "oz"), finest=(0.01, 0.001), floor=0.0),
        Result("spread_length", LENGTH, "Standard deviation", units=("m", "yd"), finest=(0.1, 0.1), floor=0.0),
        Result("low_us", MASS, "US: the mean may be down to", units=("g", "oz"), finest=(0.01, 0.001), rounding="up"),
        Result("low_us_length", LENGTH, "US: the mean may be down to", units=("m", "yd"), finest=(0.1, 0.1), rounding="up"),
        Result("each_us", MASS, "US: no skein under", units=("g", "oz"), finest=(0.1, 0.01), rounding="up"),
        Result("each_us_length", LENGTH, "US: no skein under", units=("m", "yd"), finest=(0.1, 0.1), rounding="up"),
        Result("first", MASS, "EU and UK: 1 in 40 under at most", units=("g", "oz"), finest=(0.1, 0.01), rounding="up"),
        Result("second", MASS, "EU and UK: none under", units=("g", "oz"), finest=(0.1, 0.01), rounding="up"),
        Result("aim", MASS, "Aim at a mean of", units=("g", "oz"), finest=(0.1, 0.01), rounding="up"),
        Result("dry_mean", MASS, "They would weigh in the driest air", units=("g", "oz"), finest=(0.1, 0.01)),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(table,),
    basis=Basis(STANDARD, "NIST Handbook 133: a mean may be short by what chance does to it, one skein by an allowed variation (tables from memory; their factors agree with Student’s t). "
                          "EU and UK average rule: Directive 76/211 and SI 2006/659, read. Two state thread laws, read."),
    sources=(NIST_HB_133, NIST_HB_133_LENGTH, NIST_HB_130, DIRECTIVE_76_211, SI_2006_659, UK_PACKAGED_GOODS, RI_6_10, MA_94_285, STUDENT_TABLE, REGAIN_CURVES),
    cautions=(Caution("Not legal advice.", "Where it is sold decides. Tables were checked on 26 November 2026, some only from memory; ask your weights and measures office."),),
    carry=(Carry("true-weight", "It says 100 g and my scale says 103", {"weighed": "mean", "labelled": "label_mass"}), Carry("fiber-content", "What is in it, for the label", {})),
)
