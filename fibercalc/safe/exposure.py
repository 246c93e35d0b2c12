"""Published limits for vapors in air: the stricter one counts, and it is named with its body and date."""

from collections.abc import Sequence

from ..core.table import read_table
from .limits import published

BODIES = {"osha": "osha-1910-1000", "niosh": "niosh-limits", "uk": "uk-eh40"}


def stricter(vapor: str) -> float:
    """The lowest of the published limits over a work day, ppm.

    vapor  acetic, formic or ammonia
    Raises KeyError for another vapor.
    Source: osha-1910-1000, niosh-limits, uk-eh40 (UK from memory, unverified).
    """
    row = read_table("safe", "exposure-limits").row("key", vapor)
    return min(row[body] for body in BODIES if row[body] != "")


def stricter_short(vapor: str) -> float | None:
    """The lowest of the published limits over 15 minutes, ppm; None where no body gives one.

    vapor  acetic, formic or ammonia
    Raises KeyError for another vapor.
    Source: niosh-limits, uk-eh40 (UK from memory, unverified).
    """
    row = read_table("safe", "exposure-limits").row("key", vapor)
    return min((row[name] for name in ("niosh_short", "uk_short") if row[name] != ""), default=None)


def limits_words(vapors: Sequence[str]) -> str:
    """The stricter limit of each vapor in words, with its body and date.

    vapors  acetic, formic or ammonia, each named once or more often
    Raises KeyError for another vapor.
    Source: osha-1910-1000, niosh-limits, uk-eh40.
    """
    said = []
    for vapor in dict.fromkeys(vapors):
        row = read_table("safe", "exposure-limits").row("key", vapor)
        body = next(body for body in BODIES if row[body] == stricter(vapor))
        said.append(published(f"{row['label']} {stricter(vapor):g} ppm over 8 h", BODIES[body]))
    return "; ".join(said)
