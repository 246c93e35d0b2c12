"""Charts of yarn by project and size, with odds, for five yarns: what the card yarn-needed says
when only the yarn is known."""

from collections.abc import Callable
from functools import cache
from typing import Any

from ...core.answer import Table
from ...core.outcome import Outcome
from ...core.table import read_table
from ...core.units import METERS_PER_INCH, METERS_PER_YARD
from ...core.work import work_card
from ...yarn.count import tex_from_count
from ...yarn.weight_class import COUNCIL, classes_by_grist
from ..cards.yarn_needed import CARD
from ..odds import smallest_enough
from ..projects.sweater import SIZES, WORDS

Texts = tuple[tuple[str, str], ...]  # inputs of the card, each with its text

YARNS = (420, 300, 230, 180, 110)  # m in 100 g, one for each class from Super Fine to Bulky
SIZED = (
    "child-4",
    "child-8",
    "child-12",
    "woman-s",
    "woman-m",
    "woman-l",
    "woman-2x",
    "woman-4x",
    "man-m",
    "man-l",
    "man-xxl",
)
EASE = "8 cm"
HALF, MOST = 0.5, 0.9
SURE = (0.8, 0.9, 0.95)
SOURCES = (
    "munden-1959",
    "craft-yarn-council-sizes",
    "head-girths-girls",
    "head-girths-adults",
    "common-practice",
)
NOTE = (
    "Plain stocking stitch at the usual tightness for the yarn and the piece, skeins true to 1.5"
    " %; the odds hold loose and tight knitters alike. Sweaters are raglans from the size tables"
    f" (mostly from memory) with {EASE} of ease. Computed here."
)


def yarn_by_project() -> list[Table]:
    """Yards, and meters, that are enough for 9 knitters in 10 and for 5 in 10.

    Source: as the card yarn-needed: Munden 1959 (munden-1959, from memory), common practice, Craft
    Yarn Council (craft-yarn-council-sizes).
    """
    made = []
    for words, sign, per, size, note in (
        ("Yards", "yd", METERS_PER_YARD, _in, NOTE),
        ("Meters", "m", 1.0, _cm, "Otherwise as the yards. Computed here."),
    ):
        rows = tuple(
            (
                label,
                *(
                    f"{_rounded(_enough(texts, yarn, MOST) / per)}"
                    f" ({_rounded(_enough(texts, yarn, HALF) / per)})"
                    for yarn in YARNS
                ),
            )
            for label, texts in _projects(size)
        )
        heads = tuple(f"{_class(yarn)}, {yarn / per:.0f} {sign}" for yarn in YARNS)
        made.append(
            Table(
                f"{words} that are enough for 9 knitters in 10 (for 5 in 10), by {words.lower()} in"
                " 100 g",
                ("What it will be", *heads),
                rows,
                f"Rounded up to the next 10 {sign}. {note}",
                SOURCES,
            )
        )
    return made


def skeins_by_project() -> list[Table]:
    """Whole skeins of 100 g for three chances of not running out.

    Source: as the card yarn-needed: Munden 1959 (munden-1959, from memory), common practice, Craft
    Yarn Council (craft-yarn-council-sizes).
    """
    rows = tuple(
        (label, *(" / ".join(str(_skeins(texts, yarn, sure)) for sure in SURE) for yarn in YARNS))
        for label, texts in _projects(_cm)
    )
    return [
        Table(
            "Skeins of 100 g that are enough for 80 / 90 / 95 knitters in 100, by meters in 100 g",
            ("What it will be", *(f"{_class(yarn)}, {yarn} m" for yarn in YARNS)),
            rows,
            f"From one lot. {NOTE}",
            SOURCES,
        )
    ]


def _projects(said: Callable[..., str]) -> list[tuple[str, Texts]]:
    """Each project: what it is called, its sizes said in one unit, and the
    card's inputs that make it."""
    sweaters = [
        (
            (
                f"Sweater, {WORDS[SIZES[size]].lower()},"
                f" {read_table('knit', SIZES[size]).row('key', size)['label']}"
            ),
            {"make": "sweater", "size_by": "table", "size": size, "ease": EASE},
        )
        for size in SIZED
    ]
    hats = [
        (
            (
                f"Hat, {read_table('knit', 'head-girths').row('key', who)['label'].lower()},"
                f" {said(height)} tall"
            ),
            {"make": "hat", "size_by": "table", "head_size": who, "hat_height": f"{height} cm"},
        )
        for who, height in (("child", 19), ("woman", 22))
    ]
    socks = [
        (
            f"Socks, foot {said(foot)}",
            {
                "make": "socks",
                "foot_length": f"{foot} cm",
                "foot_girth": f"{girth} cm",
                "leg": f"{leg} cm",
            },
        )
        for foot, girth, leg in ((20, 19, 14), (25, 23, 18), (28, 26, 20))
    ]
    flat = [
        (
            f"{word}, {said(width, length)}",
            {"make": make, "width": f"{width} cm", "length": f"{length} cm"},
        )
        for word, make, width, length in (
            ("Scarf", "scarf", 30, 180),
            ("Baby blanket", "blanket", 80, 100),
            ("Blanket", "blanket", 120, 150),
        )
    ]
    shawls = [
        (
            f"Triangle, {said(span, depth)}",
            {"make": "shawl", "shape": "top", "span": f"{span} cm", "depth": f"{depth} cm"},
        )
        for span, depth in ((160, 70), (200, 90))
    ]
    others = [
        ("Mittens, woman", {"make": "mittens"}),
        (f"Cowl, {said(60, 25)}", {"make": "cowl", "around": "60 cm", "height": "25 cm"}),
    ]
    return [
        (label, tuple(texts.items()))
        for label, texts in (*sweaters, *hats, *others, *socks, *flat[:1], *shawls, *flat[1:])
    ]


@cache
def _worked(texts: Texts, yarn: int) -> Outcome[Any]:
    return work_card(
        CARD, {"known": "yarn", "skein_mass": "100 g", "skein_length": f"{yarn} m", **dict(texts)}
    ).outcome


def _enough(texts: Texts, yarn: int, sure: float) -> int:
    """Whole meters that are enough with a chance."""
    outcome = _worked(texts, yarn)
    return smallest_enough(outcome.value("need"), outcome.found["need"].spread, sure)


def _skeins(texts: Texts, yarn: int, sure: float) -> int:
    outcome = _worked(texts, yarn)
    return smallest_enough(outcome.value("skeins"), outcome.found["skeins"].spread, sure)


def _class(yarn: int) -> str:
    tex = tex_from_count(float(yarn), "m/100 g")
    return classes_by_grist(COUNCIL, tex, tex)[0]


def _rounded(length: float) -> str:
    """Up to the next ten: what she must buy rounds up."""
    return f"{-(-length // 10) * 10:,.0f}"


def _cm(*sizes: int) -> str:
    return f"{' x '.join(str(one) for one in sizes)} cm"


def _in(*sizes: int) -> str:
    return f"{' x '.join(f'{one / 100 / METERS_PER_INCH:.0f}' for one in sizes)} in"
