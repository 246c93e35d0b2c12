"""What is said of a fair."""

from __future__ import annotations

from ....core.outcome import Outcome, with_money
from ...demand import FITTED_FROM
from .asked import FairStock


def say(out: Outcome[FairStock]) -> tuple[str, ...]:
    enough, pays = (
        out.in_100(out.value(chance) / 100) for chance in (FairStock.enough, FairStock.pays)
    )
    return (
        f"Sell {out.text(FairStock.with_wage)} to pay the fair and you;"
        f" {out.text(FairStock.break_even)} pay the fair alone."
        f" Bring {out.text(FairStock.bring)}.",
        f"{out.text(FairStock.bring)} are enough with a chance of {enough}; your wage comes in with"
        f" one of {pays}, if demand is as it was.",
    )


def notes(out: Outcome[FairStock]) -> list[str]:
    demand, said = out.case.demand, []
    if demand.cut:
        said.append(
            f"{demand.cut} of {demand.cut + demand.seen} past fairs sold out: those say “at least”,"
            f" so demand is put at about {out.text(FairStock.mean)}, above what was sold."
        )
    if demand.at_least:
        said.append(
            "Every fair sold out: nothing bounds demand from above, and the mean is only the one"
            " that makes that as likely as not."
        )
    if demand.degrees:
        said.append("The spread is your own fairs’.")
    else:
        said.append(
            f"Thin data: fewer than {FITTED_FROM} fairs that did not sell out, so the spread is the"
            f" {out.case.usual_spread:g} % you gave, not one that was seen."
        )
    if out.case.with_wage > out.case.bring:
        said.append(
            "Fewer come along than must sell to pay you: this fair does not pay its day, unless it"
            " is for being seen."
        )
    said.append(
        f"One short costs {money(out, out.case.contribution)}, one carried home"
        f" {money(out, out.case.home)}: so enough {out.in_100(out.case.ratio)} times pays best,"
        " which sets the number."
    )
    said.append(
        "A skein carried home is not lost: it sells elsewhere. If it will not, put its whole cost"
        " there."
    )
    return said


def money(out: Outcome[FairStock], amount: float) -> str:
    return with_money(out.number(amount, 2), out.settings.money)
