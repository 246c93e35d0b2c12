"""Reading and writing bare numbers in the two number styles people use: 1,200.5 and 1.200,5.

`1,200` alone is ambiguous: twelve hundred, or one and a fifth. The style setting decides, the
caller is told that it was ambiguous, and the page echoes the reading; where a mistake would hurt,
the caller refuses it instead.
"""

import re
from dataclasses import dataclass
from math import floor, isfinite, log10

STYLES = ("point", "comma", "canonical")
MAX_DIGITS = 15  # more digits than a double keeps
MAX_EXPONENT = 6  # nobody weighs 1e7 of anything here; larger exponents are typing accidents
NARROW_SPACE = "\u202f"

VULGAR = {
    "¼": "1/4",
    "½": "1/2",
    "¾": "3/4",
    "⅓": "1/3",
    "⅔": "2/3",
    "⅛": "1/8",
    "⅜": "3/8",
    "⅝": "5/8",
    "⅞": "7/8",
    "⅕": "1/5",
    "⅖": "2/5",
    "⅗": "3/5",
    "⅘": "4/5",
    "⅙": "1/6",
    "⅚": "5/6",
}
PLAIN = str.maketrans(
    {sign: f" {plain}" for sign, plain in VULGAR.items()} | {"\u2212": "-", "⁄": "/", "\u200b": ""}
)
SPACES = re.compile(r"[\s\u00a0\u2000-\u200a\u202f\u205f]+")

# A whole part and a fraction, a fraction, or a decimal with either sign for the point, groups and
# an exponent.
NUMBER = re.compile(
    r"(?:\d+[ -]\d+/\d+|\d+/\d+|(?:\d{1,3}(?:"
    r" \d{3})+(?:[.,]\d+)?|\d[\d.,]*|[.,]\d+)(?:e[+-]?\d{1,3}(?![\d/]))?)",
    re.IGNORECASE,
)
GROUP_LIKE = re.compile(r"[1-9]\d{0,2}[.,]\d{3}")


@dataclass(frozen=True)
class ReadNumber:
    """A number as understood; other is its second possible reading, None where there is none."""

    value: float
    other: float | None = None


def tidy(text: str) -> str:
    """Text with every kind of space made plain, fractions and signs spelled in plain characters."""
    return SPACES.sub(" ", text.translate(PLAIN)).strip()


def read_number(text: str, style: str = "point") -> ReadNumber:
    """Read one unsigned number written as NUMBER matches. Raises ValueError with a plain reason
    when it cannot be read.
    """
    if "/" in text:
        whole, _, part = text.replace("-", " ").rpartition(" ")
        top, bottom = part.split("/")
        if int(bottom) == 0:
            raise ValueError("a fraction needs a number other than 0 below the line")
        return ReadNumber((int(whole or 0) * int(bottom) + int(top)) / int(bottom))
    digits, _, exponent = text.lower().partition("e")
    if exponent and abs(int(exponent)) > MAX_EXPONENT:
        raise ValueError(f"exponents go up to {MAX_EXPONENT}")
    if sum(c.isdigit() for c in digits.lstrip("0.,")) > MAX_DIGITS:
        raise ValueError(f"at most {MAX_DIGITS} digits can be read")
    scale = 10.0 ** int(exponent or 0)
    if style != "canonical" and GROUP_LIKE.fullmatch(digits):
        as_decimal, as_group = (
            float(digits.replace(",", ".")),
            float(digits.replace(",", "").replace(".", "")),
        )
        decimal_first = ("." in digits) == (style == "point")
        value, other = (as_decimal, as_group) if decimal_first else (as_group, as_decimal)
        return _finite(value * scale, other * scale)
    return _finite(float(_plain_decimal(digits)) * scale, None)


def _finite(value: float, other: float | None) -> ReadNumber:
    if not isfinite(value):
        raise ValueError("that is not a number")
    return ReadNumber(value, other)


def _plain_decimal(digits: str) -> str:
    """Digits with groups removed and a point for the decimal sign. The reading here has no second
    one.
    """
    digits = digits.rstrip(".,") if digits[-1] in ".," else digits
    compact = digits.replace(" ", "")
    marks = [c for c in compact if c in ".,"]
    if not marks:
        return compact
    if len(set(marks)) == 2:  # both signs: the last one is the decimal sign
        last = compact.rfind(marks[-1])
        head, tail = compact[:last], compact[last + 1 :]
        if marks.count(marks[-1]) > 1 or not _grouped(head, marks[0]):
            raise ValueError("the points and commas do not fit together")
        return head.replace(marks[0], "") + "." + tail
    if len(marks) > 1:  # one sign, several times: groups
        if not _grouped(compact, marks[0]):
            raise ValueError("the points and commas do not fit together")
        return compact.replace(marks[0], "")
    return compact.replace(",", ".")


def _grouped(digits: str, mark: str) -> bool:
    first, *rest = digits.split(mark)
    return 1 <= len(first) <= 3 and all(len(group) == 3 for group in rest)


def decimals_of_step(step: float) -> int:
    """Decimals that show a rounding step: 10 -> 0, 0.1 -> 1, 0.25 -> 2."""
    text = f"{step:.6f}".rstrip("0")
    return len(text.partition(".")[2])


def write_number(value: float, decimals: int, style: str = "point") -> str:
    """A number with a fixed count of decimals, grouped by thousands, in a number style."""
    text = f"{value:,.{max(decimals, 0)}f}"
    if float(text.replace(",", "")) == 0:
        text = text.lstrip("-")  # never "-0"
    text = text.replace("-", "\u2212")
    if style == "comma":
        return text.replace(",", NARROW_SPACE).replace(".", ",")
    return text


def significant(value: float, digits: int) -> int:
    """Decimals that show value with so many significant digits."""
    if value == 0 or not isfinite(value):
        return 0
    return max(0, digits - 1 - floor(log10(abs(value))))


def write_plain(value: float, style: str = "point", digits: int = 6) -> str:
    """A number as a person would type it: no trailing zeros, no groups, up to so many significant
    digits.
    """
    decimals = min(significant(value, digits), 10)
    text = f"{value:.{decimals}f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    text = "0" if text in ("-0", "") else text
    return text.replace(".", ",") if style == "comma" else text


def canonical(value: float) -> str:
    """A number for links and files: a point, no groups, twelve digits (more than any scale or
    tape gives).
    """
    return f"{value:.12g}"
