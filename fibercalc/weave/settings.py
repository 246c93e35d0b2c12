"""Ways to thread a sett: each heddle or reed with one end to a dent, a denting order, or two
heddles, and how near each comes.
"""

from dataclasses import dataclass
from math import log

from ..core.number import write_plain
from ..core.problem import require
from ..core.units import PER_LENGTH, Unit
from .heddle import DENTING_ORDERS, ends_in_a_dent, heddle_list

RIGID, REED = "rigid", "reed"
METRIC, INCH, OWN = "metric", "inch", "own"
# Settings within about 5 % of the wanted one weave alike: the plainer threading is offered first.
NEAR = 0.05
PER_10_CM, PER_INCH = PER_LENGTH.unit("per 10 cm"), PER_LENGTH.unit("per in")


@dataclass(frozen=True)
class Threading:
    """One way to thread.

    name   the heddle or reed, as on it;  number  dents in one unit of per;  per  "per 10 cm" or
           "per in"
    order  ends to a dent, dent after dent;  heddles  1, or 2 used together
    """

    name: str
    number: float
    per: Unit
    order: tuple[int, ...] = (1,)
    heddles: int = 1

    @property
    def each(self) -> float:
        """Ends for each dent of one heddle."""
        return ends_in_a_dent(self.order) * self.heddles

    @property
    def sett(self) -> float:
        """Ends in a centimeter."""
        return self.per.to_base(self.number) * self.each

    def label(self) -> str:
        """As short as a table needs it: "two 40/10", "12-dent, 1-2"."""
        order = f", {'-'.join(str(ends) for ends in self.order)}" if self.order != (1,) else ""
        return f"{'two ' if self.heddles == 2 else ''}{self.name}{order}"

    def words(self, kind: str) -> str:
        """How it is threaded, in words."""
        if kind == RIGID:
            return (
                "two heddles, one end in each hole and slot"
                if self.heddles == 2
                else "one end in each hole and slot"
            )
        return (
            f"{'-'.join(str(ends) for ends in self.order)} in the dents"
            if len(self.order) > 1
            else f"{self.order[0]} to a dent"
        )


def threadings(kind: str, made: str, own: tuple[float, ...] = ()) -> list[Threading]:
    """Every way to thread the heddles or reeds at hand.

    kind  RIGID or REED
    made  METRIC, INCH or OWN
    own   dents in an inch of one's own, each above 0
    Raises OutOfRange for a heddle of one's own without dents; an unknown kind or make gives no way.
    Source: common practice (one end to a dent or a denting order; two rigid heddles double the
    sett); trade-pages-reeds for the numbers.
    """
    for number in own:
        require("own", number, above=0.0)
    if made == OWN:
        bars = [(f"{write_plain(number, digits=3)} per in", number, PER_INCH) for number in own]
    else:
        wanted = {METRIC: "10 cm", INCH: "in"}.get(made)
        bars = [
            (
                row["label"] if isinstance(row["label"], str) else f"{row['label']:g}-dent",
                row["number"],
                PER_10_CM if made == METRIC else PER_INCH,
            )
            for row in heddle_list().rows
            if row["per"] == wanted and row[kind] == "yes"
        ]
    if kind == RIGID:
        return [Threading(*bar, heddles=heddles) for bar in bars for heddles in (1, 2)]
    return (
        [Threading(*bar, order=order) for bar in bars for order in DENTING_ORDERS]
        if kind == REED
        else []
    )


def nearest(ways: list[Threading], sett: float) -> list[Threading]:
    """The ways in order of how near they come to a sett, as a ratio; of those within 5 % the
    plainer threading first.

    ways  from threadings, at least one
    sett  ends in a centimeter wanted, above 0
    Raises OutOfRange outside these.
    Source: arithmetic (ratio of setts).
    """
    require("ways", len(ways), 1)
    require("sett", sett, above=0.0)

    def rank(way: Threading) -> tuple[float, int, int, int, float]:
        off = round(abs(log(way.sett / sett)), 6)
        return max(off, NEAR), way.heddles, len(way.order), sum(way.order), off

    return sorted(ways, key=rank)
