"""Published limits for vapors in air: the stricter one counts, and it is named
with its body and date."""

from collections.abc import Sequence

from ..core.table import read_table, status_of
from .limits import published

BODIES = {"osha": "osha-1910-1000", "niosh": "niosh-limits", "uk": "uk-eh40"}
SHORT = {"niosh_short": "niosh-limits", "uk_short": "uk-eh40"}
MOMENT = {"ceiling": "cal-ac1"}
DANGER = {"idlh": "niosh-limits"}


def stricter(vapor: str) -> float:
    """The lowest of the published limits over a work day, ppm.

    vapor  acetic, formic or ammonia
    Raises KeyError for another vapor.
    Source: osha-1910-1000, niosh-limits, uk-eh40 (UK from memory, unverified).
    """
    limit = _lowest(vapor, BODIES)
    if limit is None:
        raise KeyError(f"no limit over a work day for {vapor}")
    return limit


def stricter_short(vapor: str) -> float | None:
    """The lowest of the published limits over 15 minutes, ppm; None where no body gives one.

    vapor  acetic, formic or ammonia
    Raises KeyError for another vapor.
    Source: niosh-limits, uk-eh40 (UK from memory, unverified).
    """
    return _lowest(vapor, SHORT)


def ceiling(vapor: str) -> float | None:
    """The published level that is passed at no moment, ppm; None where no body gives one.

    vapor  acetic, formic or ammonia
    Raises KeyError for another vapor.
    Source: cal-ac1.
    """
    return _lowest(vapor, MOMENT)


def dangerous(vapor: str) -> float | None:
    """The level immediately dangerous to life or health (IDLH), ppm.

    vapor  acetic, formic or ammonia
    Raises KeyError for another vapor.
    Source: niosh-limits (acetic acid from memory, unverified).
    """
    return _lowest(vapor, DANGER)


def _lowest(vapor: str, columns: dict[str, str]) -> float | None:
    row = read_table("safe", "exposure-limits").row("key", vapor)
    return min((row[name] for name in columns if row[name] != ""), default=None)


def limits_words(vapors: Sequence[str]) -> str:
    """The limits of each vapor in words, the stricter where several bodies
    give one, with body and date.

    vapors  acetic, formic or ammonia, each named once or more often
    Raises KeyError for another vapor.
    Source: osha-1910-1000, niosh-limits, uk-eh40, cal-ac1.
    """
    said = []
    for vapor in dict.fromkeys(vapors):
        row = read_table("safe", "exposure-limits").row("key", vapor)
        for columns, words in (
            (BODIES, "over 8 h"),
            (SHORT, "over 15 min"),
            (MOMENT, "at any moment"),
            (DANGER, "IDLH"),
        ):
            limit = _lowest(vapor, columns)
            name = next(
                (name for name in columns if limit is not None and row[name] == limit), None
            )
            if name:
                said.append(
                    published(
                        f"{row['label']} {limit:g} ppm {words}", columns[name], status_of(row, name)
                    )
                )
    return "; ".join(said)
