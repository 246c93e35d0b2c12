"""What is said of the skeins that are enough."""

from __future__ import annotations

from ....core.card import Result
from ....core.outcome import Outcome
from ...projects.measure import PATTERN, YARN
from .asked import YarnNeeded, by_color


def say(out: Outcome[YarnNeeded]) -> str | tuple[str, ...]:
    need = f"About {out.said(YarnNeeded.need)} are needed, {out.span(YarnNeeded.need)}."
    count = out.value(YarnNeeded.buy)
    if out.case.many == "yes":
        colors = by_color(out)
        parts = [f"{color.count} of {color.name}" for color in colors]
        tight = min(colors, key=lambda color: color.chance)
        return (
            f"Buy {_skeins(count)}: {', '.join(parts[:-1])} and {parts[-1]}.",
            f"{need} The tightest color is {tight.name}: {_skeins(tight.count)}"
            f" {'is' if tight.count == 1 else 'are'} enough for {out.in_100(tight.chance)}"
            " knitters.",
        )
    first = f"Buy {_skeins(count)}: enough for {out.text(YarnNeeded.enough)} knitters."
    fewer = out.chance_below(YarnNeeded.skeins, count - 1) if count > 1 else 0.0
    if fewer < 0.01:
        return first, need
    return first, f"{need} {_skeins(count - 1)} would be enough for {out.in_100(fewer)}."


def _skeins(count: int) -> str:
    return f"{count:.0f} {'skein' if count == 1 else 'skeins'}"


NOTHING_BUT_THE_YARN = (
    "Nothing is known but the yarn, so the range holds loose and tight knitters alike. A"
    " gauge narrows it, a weighed washed swatch narrows it most."
)
EACH_COLOR = (
    "Each color is bought by itself, so that each alone holds the wished chance; that all"
    " of them do is a little less likely."
)
OF_THE_BUFFER = {
    "held": (
        "The pattern’s buffer was taken off again (common practice: 5 to 15 %), so that"
        " it is not added twice: the odds hold one of their own."
    ),
    "unknown": ("Nobody knows whether this figure holds a buffer, so it may hold none or a tenth."),
    "none": "The figure is taken as bare; the odds add what is needed.",
}


def notes(out: Outcome[YarnNeeded]) -> list[str]:
    case, said = out.case, []
    if out.has(YarnNeeded.by_swatch) and out.has(YarnNeeded.by_loop):
        said += _both_ways(out)
    if case.known == YARN:
        said.append(NOTHING_BUT_THE_YARN)
    if case.known == PATTERN:
        said.append(OF_THE_BUFFER[case.pattern_buffer])
    if out.has(YarnNeeded.by_area_rule):
        said.append(_rules(out))
    if case.many == "yes":
        said.append(EACH_COLOR)
    return said


def _both_ways(out: Outcome[YarnNeeded]) -> list[str]:
    swatch, loop = YarnNeeded.by_swatch, YarnNeeded.by_loop
    said = [
        f"The weighed swatch says {out.text(swatch)}, the loop model {out.text(loop)}. With the"
        f" swatch the range is ± {_half(out, swatch):.0f} %, without it ± {_half(out, loop):.0f} %."
    ]
    if out.low(swatch) > out.high(loop) or out.low(loop) > out.high(swatch):
        said.append(
            "They do not meet: see that the swatch was washed, dry and weighed alone, and that"
            " the gauge was counted on it."
        )
    return said


def _half(out: Outcome[YarnNeeded], result: Result[float]) -> float:
    half: float = 100 * (out.high(result) - out.low(result)) / 2 / out.value(result)
    return half


def _rules(out: Outcome[YarnNeeded]) -> str:
    rule = f"length × width × stitches per inch ÷ 6 gives {out.text(YarnNeeded.by_area_rule)}"
    if not out.has(YarnNeeded.by_needle_rule):
        return f"A rule of the trade, which knows nothing of this model: {rule}."
    needle = f"π × needle × stitches × 1.5 gives {out.text(YarnNeeded.by_needle_rule)}"
    return f"Two rules of the trade, which know nothing of this model: {rule}; {needle}."
