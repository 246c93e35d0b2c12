"""What is said of a count to dye."""

from __future__ import annotations

from ....core.outcome import Outcome
from ...demand import FITTED_FROM
from .asked import CountToDye


def say(out: Outcome[CountToDye]) -> tuple[str, ...]:
    case = out.case
    replaced = f", {case.spares} to replace lost parcels" if case.spares else ""
    rest = ", the rest for seconds." if case.made > case.good else "."
    known = (
        "All past releases sold out, so demand is only known from below"
        if case.demand.at_least
        else f"Demand is about {out.text(CountToDye.typical)} ({out.span(CountToDye.typical)})"
    )
    club = f" A club can have {case.places} places." if out.has(CountToDye.places) else ""
    return (
        f"Dye {case.made}: {case.count} to sell{replaced}{rest}",
        f"{known}; {case.count} are enough for {out.in_100(case.enough / 100)} releases, with"
        f" {out.number(case.left_over)} left on average.{club}",
    )


def notes(out: Outcome[CountToDye]) -> list[str]:
    case, demand = out.case, out.case.demand
    total, said = case.number, []
    if demand.at_least:
        said.append(
            f"{'Every one' if total > 1 else 'The one'} of {total} sold out: nobody knows by how"
            " much it was too few. Go up by steps of a third or so until some are left: then this"
            " card has something to go by."
        )
    elif not demand.degrees:
        said.append(
            f"Thin data: {total} {'release' if total == 1 else 'releases'}, of which {demand.cut}"
            f" sold out. With fewer than {FITTED_FROM} that did not sell out, the spread is your"
            f" own guess ({case.usual_spread:g} %), not the data’s."
        )
    else:
        said.append(
            f"{total} releases, {demand.cut} of them sold out: still few. The spread is the data’s"
            " own; odd releases (a holiday, a new color) do not belong in it."
        )
    if demand.cut and not demand.at_least:
        said.append(
            "Taken at face value the sales average"
            f" {out.number(sum(row.sold for row in case.releases) / total, 1)}; what was turned"
            " away is not in that."
        )
    said.append(
        f"A skein too few loses {out.settings.money}{out.number(case.too_few, 2)}, one too many"
        f" {out.settings.money}{out.number(case.too_many, 2)}. What a cross customer costs is not"
        " in it: raise “one sold brings” if you count it."
    )
    return said
