"""Which hazard statements a mixture needs, by the concentration limits of the CLP Regulation, added
up over its substances."""

from collections.abc import Mapping, Sequence
from functools import cache
from typing import Any

from ..core.problem import require
from ..core.table import read_table

# What a sum of shares of limits brings, strongest first; a statement hides
# the ones after the arrow.
SUMS = {
    "corr_a": "H314",
    "corr": "H314",
    "irrit": "H315",
    "dam": "H318",
    "eye": "H319",
    "airway": "H335",
}
HIDES = {
    "H314": ("H315", "H318", "H319"),
    "H318": ("H319",),
    "H317": ("EUH208",),
    "H334": ("EUH208",),
}
CLASSES = {
    "corr_a": "Skin Corr. 1A",
    "corr": "Skin Corr. 1",
    "irrit": "Skin Irrit. 2",
    "dam": "Eye Dam. 1",
    "eye": "Eye Irrit. 2",
    "airway": "STOT SE 3",
}
# An acute toxicity estimate up to this brings this: swallowed in mg/kg, inhaled as vapor in mg/L.
# Stronger classes are out of reach of every substance of the table. Source: clp-acute, Table 3.1.1.
ACUTE = {
    "oral": ((2000.0, "H302", "Acute Tox. 4"),),
    "vapor": ((10.0, "H331", "Acute Tox. 3"), (20.0, "H332", "Acute Tox. 4")),
}
RELEVANT = 1.0  # % from which a substance counts toward it: clp-acute, 3.1.3.3
# % from which a statement without a limit is asked about: the general cut-off, and a sensitizer's
# limit if it is of category 1A
ASKED = 0.1
LOW_PH, HIGH_PH = 2.0, 11.5  # CLP Annex I 3.2.3: read (clp-3-2-3)


@cache
def _rows() -> dict[str, dict[str, Any]]:
    return {row["key"]: row for row in read_table("safe", "label-limits").rows}


def share_of_limit(contents: Mapping[str, float], kind: str) -> float:
    """Sum over a mixture of strength over limit, no unit: from 1 up the class applies.

    contents  % by weight of each substance of the table label-limits, by its key, each 0 to 100
    kind      corr_a, corr, irrit, dam, eye or airway
    Raises OutOfRange outside 0 to 100 and KeyError for an unknown substance or kind.
    Source: clp-annexes (additivity; specific limits stand in place of the general ones).
    """
    SUMS[kind]
    for key, percent in contents.items():
        require(key, percent, 0.0, 100.0)
    limits = {key: limit for key in contents if (limit := _rows()[key][kind]) != ""}
    return sum_of_shares([contents[key] for key in limits], list(limits.values()))


def sum_of_shares(strengths: Sequence[float], limits: Sequence[float]) -> float:
    """Sum of strength over limit, no unit: from 1 up the class applies.

    strengths  % by weight of the substances that have a limit, each 0 or more
    limits     of each, %, as many as strengths, above 0
    Raises OutOfRange outside these and ValueError for lists of different lengths.
    Source: clp-annexes (additivity).
    """
    for percent, limit in zip(strengths, limits, strict=True):
        require("strengths", percent, 0.0)
        require("limits", limit, above=0.0)
    return sum((percent / limit for percent, limit in zip(strengths, limits)), 0.0)


def classes(contents: Mapping[str, float], ph: float = 7.0) -> dict[str, str]:
    """Class by hazard statement that follows from limits, strongest first; what a
    stronger one covers is left out.

    contents  % by weight of each substance, by its key, each 0 to 100
    ph        of the mixture, 0 to 14: 2 and less, or 11.5 and more, counts as burning the skin
              unless data say otherwise
    Raises OutOfRange outside these and KeyError for an unknown substance.
    Source: clp-annexes; clp-3-2-3 (the pH); clp-acute (acute toxicity); clp-sensitizers.
    """
    require("ph", ph, 0.0, 14.0)
    found: dict[str, str] = {}
    for kind, code in SUMS.items():
        if share_of_limit(contents, kind) >= 1.0 - 1e-12:
            found.setdefault(code, CLASSES[kind])
    if ph <= LOW_PH or ph >= HIGH_PH:
        found = {"H314": "Skin Corr. 1 (by its pH)", **found} if "H314" not in found else found
    for route, bands in ACUTE.items():
        estimate = acute_estimate(contents, route)
        found |= next(
            (
                {code: name}
                for most, code, name in bands
                if estimate is not None and estimate <= most
            ),
            {},
        )
    for key, percent in contents.items():
        for code, limit in listed(key):
            if limit is not None and percent >= limit:
                found[code] = "by its own limit"
    hidden = {weaker for code in found for weaker in HIDES.get(code, ())}
    return {code: name for code, name in found.items() if code not in hidden}


def acute_estimate(contents: Mapping[str, float], route: str) -> float | None:
    """Acute toxicity estimate of a mixture, mg/kg (oral) or mg/L (vapor): 100 over the sum of
    strength over estimate; None where nothing in it has one.

    contents  % by weight of each substance, by its key, each 0 to 100; below 1 % it does not count,
              and what has no estimate counts as none
    route     oral or vapor
    Raises OutOfRange outside 0 to 100 and KeyError for an unknown substance or route.
    Source: clp-acute (3.1.3.6.1).
    """
    ACUTE[route]
    for key, percent in contents.items():
        require(key, percent, 0.0, 100.0)
    known = {
        key: _rows()[key][route]
        for key, percent in contents.items()
        if percent >= RELEVANT and _rows()[key][route] != ""
    }
    if not known:
        return None
    return estimate_of_mixture([contents[key] for key in known], list(known.values()))


def estimate_of_mixture(strengths: Sequence[float], estimates: Sequence[float]) -> float:
    """Acute toxicity estimate of a mixture, in the unit of its substances' estimates.

    strengths  % by weight of the substances that have an estimate, above 0, at least one
    estimates  of each, as many as strengths, above 0
    Raises OutOfRange outside these and ValueError for lists of different lengths.
    Source: clp-acute (3.1.3.6.1: 100 over the sum of strength over estimate).
    """
    require("strengths", len(strengths), 1.0)
    for percent, estimate in zip(strengths, estimates, strict=True):
        require("strengths", percent, above=0.0)
        require("estimates", estimate, above=0.0)
    return 100.0 / sum(percent / estimate for percent, estimate in zip(strengths, estimates))


def acute_from(key: str) -> dict[str, float]:
    """From which strength of one substance alone each statement of acute
    toxicity holds, % by weight.

    key  a substance of the table label-limits; {} where it has no estimate
    Raises KeyError for an unknown substance.
    Source: clp-acute (3.1.3.6.1, solved for the strength).
    """
    row = _rows()[key]
    return {
        code: 100.0 * row[route] / most
        for route, bands in ACUTE.items()
        if row[route] != ""
        for most, code, _ in bands
    }


def to_ask(contents: Mapping[str, float]) -> tuple[str, ...]:
    """Statements of the pure substances for which no limit in a mixture is at hand: the data sheet
    decides whether they apply.

    contents  % by weight of each substance, by its key, each 0 to 100; below
              ASKED none is asked about
    Raises OutOfRange outside 0 to 100 and KeyError for an unknown substance.
    Source: clp-memory (the statements, and that EUH071 begins where skin is burned, from memory);
    clp-annexes (the general cut-off of 0.1 %).
    """
    codes = []
    for key, percent in contents.items():
        require(key, percent, 0.0, 100.0)
        least = {"EUH071": _rows()[key]["corr"]}  # what burns no skin burns no airway
        codes += [
            code
            for code, limit in listed(key)
            if limit is None and percent >= least.get(code, ASKED)
        ]
    return tuple(dict.fromkeys(codes))


def listed(key: str) -> list[tuple[str, float | None]]:
    """Statements of a pure substance beside those that sums and estimates bring, each with its
    limit in a mixture, % (None where none was found).

    key  a substance of the table label-limits
    Raises KeyError for an unknown substance.
    Source: clp-annexes, clp-memory and others named in the table.
    """
    pairs = [each.partition("@") for each in _rows()[key]["pure"].split() if each != "none"]
    return [(code, float(limit) if limit else None) for code, _, limit in pairs]


def signal_word(codes: Sequence[str]) -> str:
    """The one signal word for some statements: Danger before Warning; "none"
    where none calls for one.

    codes  hazard statements such as H314
    Raises KeyError for a statement that is not in the table.
    Source: ghs-memory (one word only, the stronger; from memory).
    """
    words = {read_table("safe", "statements").row("code", code)["signal"] for code in codes}
    return "Danger" if "Danger" in words else "Warning" if "Warning" in words else "none"
