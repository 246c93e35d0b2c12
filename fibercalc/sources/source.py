"""What a source is, and what stands in place of one."""

from dataclasses import dataclass


@dataclass(frozen=True, eq=False)
class Source:
    """A published source, or a stated lack of one.

    id       short name used in tables and JSON
    body     who publishes it
    title    what it is called
    year     of the edition meant; "" where undated
    how      "read", "secondary" (read in a page that quotes it), "memory" (unverified) or
             "practice" (common practice, no source)
    read     year-month when it was read; "" for memory and common practice
    address  where it was read; "" where there is none
    """

    id: str
    body: str
    title: str
    year: str = ""
    how: str = "read"
    read: str = ""
    address: str = ""


# Not publications: what stands in place of one.
COMMON_PRACTICE = Source(
    "common-practice", "", "Common practice (no published source)", how="practice"
)
ARITHMETIC = Source(
    "arithmetic", "", "Arithmetic from the definitions (no published source needed)", how="practice"
)
TRADE_MEMORY = Source("trade-memory", "", "Memory of the trade (no source read)", how="memory")
