"""What is said of the fiber line."""

from __future__ import annotations

from ....core.outcome import Outcome
from ...fiber_label import US
from .asked import NAMES, UNKNOWN, WOOLS, FiberContent


def say(out: Outcome[FiberContent]) -> tuple[str, ...]:
    case = out.case
    origin = f" {case.origin}." if case.sold == US else ""
    first = f"{case.content}. {case.maker_line}.{origin}"
    if case.allowed:
        return (
            first,
            (
                f"A test may find {case.test_low:g} to {case.test_high:g} %"
                f" {NAMES[case.most][case.sold]}: three points of the fiber weight either way."
            ),
        )
    if UNKNOWN in case.shares:
        return first, "What is not known is said, not guessed."
    if len(case.shares) > 1:
        return (
            first,
            (
                "The Wool Act gives no points either way: a test must find it so, save what due"
                " care cannot help."
            ),
        )
    return first, "One fiber alone: nothing else may be in it but strays that cannot be helped."


def notes(out: Outcome[FiberContent]) -> list[str]:
    said, shares = [], out.case.shares
    moved = [
        f"{NAMES[key]['label'].lower()} {out.number(shares[key], 1)} to {percent}"
        for key, percent in out.case.lines
        if key in shares and abs(shares[key] - percent) > 0.05
    ]
    if moved:
        said.append(
            "Rounded so that the label makes 100: "
            + "; ".join(moved)
            + ". Tenths may be printed as well."
        )
    said += _in_the_us(out) if out.case.sold == US else _in_the_eu(out)
    if UNKNOWN in shares:
        said.append(
            "An unknown fiber is an allowed answer: US rules have it for scraps, remnants and the"
            " like, EU rules for what is hard to state. A guess is not. A laboratory can name it."
        )
    if "bamboo" in shares:
        said.append(
            "“Bamboo” alone is no fiber name for it: it is viscose, or rayon made from bamboo."
        )
    return said


def _in_the_us(out: Outcome[FiberContent]) -> list[str]:
    said = []
    if out.has(FiberContent.other):
        small = ", ".join(NAMES[key]["label"].lower() for key in sorted(out.case.small))
        said.append(
            f"Under 5 % and without a function: {small}"
            " become “other fiber”. Wool is named however little there is."
        )
    if set(out.case.shares) & WOOLS:
        said.append(
            "The Wool Act holds for it: wool and recycled wool are always named. Other fiber"
            " blends have three points of the fiber weight either way; wool has not."
        )
    said.append(
        "Yarn is taken to come from where it was spun; dyeing does not change that (from"
        " memory, unverified). A registered number (RN) may stand for the name, for US firms."
    )
    return said


def _in_the_eu(out: Outcome[FiberContent]) -> list[str]:
    said = []
    if out.case.small:
        small = ", ".join(NAMES[key][out.case.sold] for key in sorted(out.case.small))
        said.append(
            f"{small[0].upper()}{small[1:]} may go as “other fibers” where the share is hard to"
            " state when it is made: one of 5 % or less, several of 15 % or less together (from"
            " memory, unverified). You know it, so it is named."
        )
    said.append(
        "In the language of the place where it is sold. “Contains non-textile parts of animal"
        " origin” is added where that is so (from memory, unverified)."
    )
    return said
