"""What is said of a planned warp: what to wind and buy, what does not fit, and what to know."""

from __future__ import annotations

from ....core.outcome import Outcome
from ....core.units import LENGTH
from ....wash.shrink import size_after
from ...chain import width_off_loom, woven_from_warp
from ...pictures.written import bare, in_inches, long, name_of, short
from ...run import whole_pieces
from .asked import FRINGE, HEM, REPEATED, WarpPlan, balls
from .worked import ends_at, fine_hems, pieces_in_order, warp_each


def say(out: Outcome[WarpPlan]) -> str | tuple[str, ...]:
    too_wide, limit = out.case.too_wide, out.case.maybe(WarpPlan.limit)
    if too_wide:
        first, plan = _too_wide(out), f"So planned, wind them {out.said(WarpPlan.warp_sure)} long;"
    else:
        first, plan = _fitting(out), ""
    if limit is not None and too_short(out.case):
        first = f"{_too_short(out, limit)} " + (
            first if too_wide else f"It takes {out.said(WarpPlan.warp_length)}."
        )
        plan = "So planned," if too_wide else ""
    second = _to_weave(out)
    return first, f"{plan} buy {_to_buy(out)}. {second}" if plan else second


def too_short(case: WarpPlan) -> bool:
    """Whether the warp that there is does not hold the plan."""
    return case.has(WarpPlan.spare) and case.spare < 0


def _to_buy(out: Outcome[WarpPlan]) -> str:
    many, colors = out.value(WarpPlan.buy), len({color for color, _ in balls(out)})
    words = f"{out.number(many)} {'ball' if many == 1 else 'balls'}"
    return f"{words} in {colors} colors" if colors > 1 else words


def _fitting(out: Outcome[WarpPlan]) -> str:
    return (
        f"Wind {out.number(out.case.ends)} ends {out.said(WarpPlan.warp_sure)} long,"
        f" {out.said(WarpPlan.heddle_width)} wide in the heddle; buy {_to_buy(out)}."
    )


def _too_wide(out: Outcome[WarpPlan]) -> str:
    case = out.case
    return (
        f"{bare(out, case.width_asked)} is too wide: it needs {bare(out, case.width_needed)} in the"
        f" heddle, and the loom has {bare(out, case.loom_width)}. Make it"
        f" {short(out, case.width_asked - case.finished_width)} narrower,"
        f" {long(out, case.finished_width)}, with {out.number(case.ends)} ends."
    )


def _too_short(out: Outcome[WarpPlan], limit: float) -> str:
    there_is = out.amount(limit, LENGTH, "yd" if in_inches(out) else "m", 3)
    missing = bare(out, -100 * out.case.spare)
    return f"The warp of {there_is} is too short by {missing}: {_lost(out)}."


def _lost(out: Outcome[WarpPlan]) -> str:
    """Which pieces a warp that is too short loses."""
    case, ends = out.case, ends_at(out.case)
    names = [name for name, _ in pieces_in_order(case)]
    whole = whole_pieces(ends, case.available)
    gone = names[whole:]
    if not gone:
        return "every piece comes off whole, the last divider does not"
    if whole == 0:
        return "no piece comes off whole"
    if len(gone) > 1:
        return f"{gone[0]} to {gone[-1]} are lost"
    begun = ends[whole] - warp_each(case)[whole]
    fringe = case.fringe if case.finish == FRINGE else 0.0
    weaves = woven_from_warp(max(case.available - begun - fringe, 0.0), case.take_up)
    part = f", {short(out, weaves)} of it can be woven" if weaves > 1 else ""
    return f"{gone[0]} is lost{part}"


def _to_weave(out: Outcome[WarpPlan]) -> str:
    case, first = out.case, out.case.pieces[0]
    many = first.many > 1
    each = "it is" if len(case.pieces) == 1 else "those are" if many else "that one is"
    return (
        f"Weave {'each ' if many else ''}{name_of(first)} {long(out, first.woven)} on the loom"
        f" ({out.number(first.picks)} picks); washed{' and hemmed' if case.finish == HEM else ''}"
        f" {each} about {out.said(WarpPlan.finished_length)} by"
        f" {out.said(WarpPlan.finished_width)}."
    )


def notes(out: Outcome[WarpPlan]) -> list[str]:
    """What to know beside the numbers."""
    case = out.case
    said = [
        *_of_losses(out),
        f"As reckoned, {out.said(WarpPlan.warp_length)} of warp is enough in half of all cases; at"
        f" {out.said(WarpPlan.warp_sure)} the last piece is whole in"
        f" {out.in_100(out.chance_below(WarpPlan.warp_length, out.value(WarpPlan.warp_sure)))}.",
        *_of_stripes(case),
    ]
    if out.has(WarpPlan.last_lost) and not too_short(case):
        said.append(f"The last piece would be cut short in {out.text(WarpPlan.last_lost)}.")
    if case.finish == FRINGE:
        said.append(
            "Fringe is unwoven warp: no take-up. It shrinks in the wash as yarn does; trim it"
            " afterward."
        )
    if fine_hems(case):
        said.append(
            f"Each hem is {case.picks_in_hem} picks of the finer yarn, as wide in the heddle as the"
            " rest; it draws in otherwise, so try one on the sample."
        )
    said.append(
        "Lengths to weave are measured on the loom; measure your sample the same way, or what the"
        " cloth gives when the warp is let go is lost from every piece."
    )
    return said


def _of_losses(out: Outcome[WarpPlan]) -> list[str]:
    """What would come of adding the losses, where a width is wanted."""
    case, width = out.case, out.case.maybe(WarpPlan.width)
    if width is None:
        return []
    losses = case.width_shrink + case.draw_in
    added = width * (1 + losses / 100)
    if added >= case.width_needed:
        return []
    left = size_after(width_off_loom(added, case.draw_in), case.width_shrink)
    return [
        f"Losses are divided out, never added. {long(out, width)} and"
        f" {out.number(losses, 0)} % on top would be"
        f" {long(out, added)} in the heddle, and come out {long(out, left)} wide."
    ]


def _of_stripes(case: WarpPlan) -> list[str]:
    """Stripes that are cut off in the middle of their order."""
    if case.warp_colors != REPEATED:
        return []
    ends, repeat = case.ends_across, sum(stripe.ends for stripe in case.stripes)
    if ends % repeat == 0:
        return []
    return [
        f"The stripes do not come out even: {ends} ends are {ends // repeat} repeats and"
        f" {ends % repeat} ends. Ends in multiples of {repeat} would; add the first stripe at the"
        " end for edges alike."
    ]
