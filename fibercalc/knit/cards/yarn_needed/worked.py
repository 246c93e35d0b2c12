"""The yarn that a project takes, by four ways of knowing, and how far it may be off."""

from __future__ import annotations

from collections.abc import Callable

from ....core.card import Case
from ....core.problem import Refused
from ....core.steps import looked_up
from ...loop import (
    TIGHTNESS_OF,
    USUAL,
    stitch_length_from_tightness,
    yarn_on_area,
    yarn_on_area_from_stitch,
)
from ...needs import (
    BUFFERS,
    KNITTER_ERROR,
    LOOP_ERROR,
    TIGHTNESS_ERROR,
    combined,
    length_by_loop,
    length_by_swatch,
)
from ...projects import flat, hat, mittens, shawl, socks, sweater
from ...projects.measure import GAUGE, PATTERN, SWATCH, TABLE, YARN
from ...projects.sweater import SIZE_ERROR
from ...trade_rules import length_by_area_rule, length_by_needle_rule
from .asked import STRUCTURES, YarnNeeded

CROCHET = tuple(key for key in STRUCTURES if key.endswith("crochet"))
MAKERS: dict[str, Callable[[YarnNeeded], tuple[float, ...]]] = {
    "sweater": sweater.cloth,
    "hat": hat.cloth,
    "mittens": mittens.cloth,
    "socks": socks.cloth,
    "cowl": flat.tube,
    "scarf": flat.flat,
    "blanket": flat.flat,
    "shawl": shawl.cloth,
}


def answer(case: YarnNeeded) -> None:
    if case.sure == "99" and case.known != SWATCH:
        raise Refused(
            "How sure: 99 in 100 takes a measured gauge and a weighed swatch; choose 95 or less, or"
            " weigh a swatch.",
            YarnNeeded.sure,
        )
    case.tex = 1000 * case.skein_mass / case.skein_length
    if case.known == PATTERN:
        bare, error = _by_pattern(case)
    else:
        case.area = sum(MAKERS[case.make](case))
        bare, error = _by_cloth(case)
        if case.known != YARN and case.structure == "plain":
            _by_rules(case)
    case.need = case.ends + bare
    case.mass = case.need * case.skein_mass / case.skein_length
    case.skeins = case.need / case.skein_length
    _say_how_good(case, bare, error)


def _say_how_good(case: YarnNeeded, bare: float, error: float) -> None:
    """The error of what is needed: a share of the yarn without ends, and a stitch's own range."""
    scales = (
        (YarnNeeded.need, 1.0),
        (YarnNeeded.mass, case.tex / 1000),
        (YarnNeeded.skeins, 1 / case.skein_length),
    )
    for result, scale in scales:
        case.error(result, bare * error * scale)
    if case.known not in (YARN, GAUGE) or case.structure == "plain":
        return
    row = STRUCTURES[case.structure]
    ends = [bare * row[end] / row["middle"] for end in ("low", "high")]
    # A case's own way to say a band is hidden here: a sweater's neckband has its name.
    Case.band(case, YarnNeeded.by_loop, *ends)
    for result, scale in scales:
        Case.band(case, result, *((end + case.ends) * scale for end in ends))


def _by_pattern(case: YarnNeeded) -> tuple[float, float]:
    """The yarn that the pattern says, m, and its error as a share."""
    holds, half = BUFFERS[case.pattern_buffer]
    case.bare = case.pattern_length / holds
    return case.bare, combined((KNITTER_ERROR, 1.96 * half / 3**0.5 / holds))


def _by_cloth(case: YarnNeeded) -> tuple[float, float]:
    """The yarn in the cloth, m, and its error as a share; the loop model speaks beside a swatch."""
    known, structure = case.known, case.structure
    row = STRUCTURES[structure]
    if known != SWATCH and row["middle"] == "":
        raise Refused(
            f"Stitch: {row['label']} has no published figure; weigh a washed swatch of it.",
            YarnNeeded.structure,
        )
    if known == GAUGE and structure in CROCHET:
        raise Refused(
            "Stitch: the gauge speaks of knit loops, and crochet has none; weigh a washed swatch,"
            " or choose “Only the yarn”.",
            YarnNeeded.structure,
        )
    by_table = case.make == "sweater" and case.size_by == TABLE
    size_error = SIZE_ERROR if by_table else 0.0
    if known != SWATCH or structure == "plain":
        hand = TIGHTNESS_ERROR if known == YARN else 0.0
        error = combined((KNITTER_ERROR, LOOP_ERROR, size_error, hand))
        _by_loop(case)
        case.error(YarnNeeded.by_loop, case.by_loop * error)
    if known != SWATCH:
        return case.by_loop, error
    error = combined((KNITTER_ERROR, size_error))
    case.swatch_area = case.swatch_width * case.swatch_length
    case.by_swatch = length_by_swatch(case.area, case.swatch_area, case.swatch_mass, case.tex)
    case.error(YarnNeeded.by_swatch, case.by_swatch * error)
    return case.by_swatch, error


def _by_loop(case: YarnNeeded) -> None:
    """The loop model's answer, from the gauge or from the yarn alone."""
    state = case.maybe(YarnNeeded.state) or "wet"
    case.loop_constant = looked_up("wash", "munden-constants", "state", state, "Ks")
    if case.known == YARN:
        tightness = TIGHTNESS_OF.get(case.make, USUAL)
        case.stitch = stitch_length_from_tightness(case.tex, tightness)
        case.on_area = yarn_on_area_from_stitch(case.stitch, case.loop_constant)
    else:
        case.on_area = yarn_on_area(case.stitches, case.rows, case.loop_constant)
    case.factor = looked_up("knit", "structure-factors", "key", case.structure, "middle")
    case.by_loop = length_by_loop(case.area, case.on_area, case.factor)


def _by_rules(case: YarnNeeded) -> None:
    """Two rules of the trade, as a check from outside: plain cloth of a known gauge only."""
    case.by_area_rule = length_by_area_rule(case.area, case.stitches)
    if case.has(YarnNeeded.needle):
        case.count = case.area * case.stitches * case.rows
        case.by_needle_rule = length_by_needle_rule(case.count, case.needle)
