"""What is said of a bath: each thing beside its limit, what stands in the way, what to do."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import TEMPERATURE
from .asked import METALS, NO_METAL, UNKNOWN, DrainCheck
from .worked import called

Verdict = tuple[str, str, str, str]  # what it is, this bath, the limit, above or below


def verdicts(out: Outcome[DrainCheck]) -> list[Verdict]:
    """One line for each thing."""
    return [_of_ph(out), _of_heat(out), _of_metal(out)]


def _of_ph(out: Outcome[DrainCheck]) -> Verdict:
    ph, low, high = out.case.ph, out.case.low, out.case.high
    if ph < low:
        so = "below the lower limit"
    elif ph > high:
        so = "above the upper limit"
    elif min(ph - low, high - ph) < out.readings["ph"].rough:
        so = "too close for the strip: counts as above or below"
    else:
        so = "between the limits"
    return "pH", f"{ph:g}", f"{low:g} to {high:g}", so


def _of_heat(out: Outcome[DrainCheck]) -> Verdict:
    here, most = out.case.temperature, out.case.heat_limit
    return (
        "Temperature",
        out.amount(here, TEMPERATURE),
        out.amount(most, TEMPERATURE),
        "above the limit: cool it" if here > most else "below the limit",
    )


def _of_metal(out: Outcome[DrainCheck]) -> Verdict:
    case = out.case
    if case.metal == NO_METAL:
        return "Metal", "none put in", "–", "nothing to compare"
    if case.metal == UNKNOWN:
        return (
            "Metal",
            "not known which, or how much",
            "–",
            "not known, counts as above: ask before it goes down any drain",
        )
    name, level = METALS[case.metal].capitalize(), f"{case.metal_amount:.3g} mg/L"
    if not case.own_metal:
        return name, level, "not given", "no local limit given: counts as above"
    above = case.metal_amount + out.readings["metal_amount"].rough > case.own_metal
    return (
        name,
        level,
        f"{case.own_metal:g} mg/L",
        "above the local limit, or too close" if above else "below the local limit",
    )


def blocked(out: Outcome[DrainCheck]) -> list[str]:
    """What stands in the way of pouring it out."""
    against = ("above", "below the lower", "too close", "not known", "no local")
    words = [
        what if what == "pH" else what[0].lower() + what[1:]
        for what, _, _, so in verdicts(out)
        if so.startswith(against)
    ]
    septic = out.case.drain == "septic" and out.case.metal != NO_METAL
    return words + (["a septic tank"] if septic else [])


def say(out: Outcome[DrainCheck]) -> tuple[str, ...]:
    stops = blocked(out)
    first = (
        f"Not yet: {' and '.join(stops)} {'stands' if len(stops) == 1 else 'stand'} against it."
        if stops
        else "pH, heat and metal lie within the limits compared."
    )
    if out.has(DrainCheck.dose):
        return (
            first,
            (
                f"Cool it, then stir in {out.text(DrainCheck.first)} of"
                f" {called(out.case.chemical).lower()}, slowly: it foams. Wait, measure, finish by"
                f" the strip; about {out.text(DrainCheck.dose)} in all"
                f" ({out.span(DrainCheck.dose)})."
            ),
        )
    return (
        first,
        (
            "Local rules come before these: ask the sewer authority once, and write it down."
            if not stops
            else "What to do stands below."
        ),
    )


def notes(out: Outcome[DrainCheck]) -> list[str]:
    case = out.case
    said = _of_the_dose(out) if out.has(DrainCheck.dose) else []
    if case.ph > case.high and not case.own_high:
        said.append(
            "The federal rule prints no upper pH; 9 is the aim here (common practice), and 11.5 and"
            " up burns skin."
        )
    if case.metal not in (NO_METAL, UNKNOWN):
        said.append(
            f"There are {out.text(DrainCheck.metal_mass)} of {METALS[case.metal]} in it. Diluting"
            " with water to get below a limit is barred for many; use the bath again, or collect"
            " it."
        )
    if case.metal == UNKNOWN:
        said.append(
            "Premetallized and chrome dyes carry metal too: the data sheet says. Until then keep"
            " the bath."
        )
    said.append(SEPTIC if case.drain == "septic" else SEWER)
    if not (case.own_low or case.own_high or case.maybe(DrainCheck.own_metal)):
        said.append(
            "No local limits given: look up your own sewer authority’s and type them with their"
            " source. Those printed with this card’s page are other towns’."
        )
    return said


SEPTIC = (
    "Septic tank: chemicals may kill its bacteria and reach ground water (Cornell). Keep metals,"
    " strong acid or alkali and bleach out; small, neutral, cooled baths only, and a business may"
    " need a permit."
)
SEWER = (
    "These are the rules for a business on a public sewer. Storm drains, ditches and gardens are"
    " no drains."
)


def _of_the_dose(out: Outcome[DrainCheck]) -> list[str]:
    content = called(out.case.content).lower()
    said = [
        f"The dose is from the pH reading, for water with {content} alone; a bath with salts of it"
        " takes more. The first portion is 80 % of the smaller figure."
    ]
    if out.case.holds != out.case.content:
        said.append(
            f"What is in it does not say which: reckoned as {content}. Only the strip tells when"
            " it is enough."
        )
    return said
