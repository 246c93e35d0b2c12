"""Chart of acids that stand for each other: how much of each brings a bath to the same pH, in
soft and in hard water."""

from ...core.answer import Picture, Table
from ...core.number import significant, write_number
from ...core.picture import LINE, SOFT, Drawing, Scale
from ...safe.acids import dose_for_ph, volume_of
from ...safe.liquids import QUESTIONED, share_of_bath

LITERS = 10.0
WATERS = (
    ("Soft water", 40.0),
    ("Hard water", 150.0),
)  # alkalinity, mg/L as calcium carbonate; the first is the demo studio's
TARGETS = (6.0, 5.5, 5.0, 4.5, 4.0, 3.5, 3.0)
# What is poured: chemical, strength in % by weight (None for crystals), head of its column.
Poured = tuple[str, float | None, str]
POURED: tuple[Poured, ...] = (
    ("citric", None, "Citric acid, g"),
    ("citric-monohydrate", None, "Citric, with water, g"),
    ("acetic", 5.0, "5 % vinegar, mL"),
    ("acetic", 56.0, "56 % acetic, mL"),
    ("formic", 85.0, "85 % formic, mL"),
)
DRAWN = (("citric", "citric acid", ""), ("acetic", "acetic acid", "7 3"))
SOURCES = ("goldberg-2002", "spana-help", "handbook-densities")


def acid_equivalence() -> list[Picture | Table]:
    """How much of each acid brings 10 L of water to a pH, and what stands for 10 g of citric acid.

    Source: goldberg-2002 (constants, from memory, agreeing with libretexts-e1), spana-help
    (activities), handbook-densities (from memory).
    """
    heads = tuple(head for *_, head in POURED)
    return [
        _curves(),
        *(
            Table(
                f"{name}: {LITERS:.0f} L of plain water to a pH",
                ("pH", *heads),
                tuple(
                    (f"{target:g}", *(_poured(one, target, water) for one in POURED))
                    for target in TARGETS
                ),
                f"Water of {water:g} mg/L alkalinity (as calcium carbonate), at 25 °C, water alone,"
                " before fiber: wool takes up acid and raises it, so check with a strip. A dash:"
                f" over {QUESTIONED:g} % of the bath, which would thin it. Equal weight is not"
                " equal pH. Percents are by weight. Computed here; constants and densities partly"
                " from memory, unverified.",
                SOURCES,
            )
            for name, water in WATERS
        ),
        _swap(),
    ]


def _swap() -> Table:
    soft = WATERS[0][1]
    rows = []
    for target in TARGETS:
        citric = dose_for_ph("citric", target, LITERS, alkalinity=soft)
        amounts = [(one, _amount(one, target, soft)) for one in POURED[1:]]
        cells = [
            "–" if _thins(one, amount) else _written(10 * amount / citric)
            for one, amount in amounts
        ]
        rows.append((f"{target:g}", *cells))
    return Table(
        "In place of 10 g of citric acid, at the same pH, in soft water",
        ("Bath's pH", *(head for *_, head in POURED[1:])),
        tuple(rows),
        "The more sour the bath, the more vinegar it takes to stand for citric acid: no one figure"
        f" fits. A dash: at that pH it would be over {QUESTIONED:g} % of the bath. Computed here.",
        SOURCES,
    )


def _amount(poured: Poured, target: float, water: float) -> float:
    chemical, percent, _ = poured
    grams = dose_for_ph(chemical, target, LITERS, alkalinity=water)
    return grams if percent is None else volume_of(chemical, grams, percent)


def _poured(poured: Poured, target: float, water: float) -> str:
    amount = _amount(poured, target, water)
    return "–" if _thins(poured, amount) else _written(amount)


def _thins(poured: Poured, amount: float) -> bool:
    """Whether a liquid is too much of the bath to be poured unasked: the sum leaves out
    that it thins the bath."""
    return poured[1] is not None and share_of_bath(amount, 1000 * LITERS) > QUESTIONED


def _written(amount: float) -> str:
    """Two figures: the water is not known better."""
    return (
        write_number(amount, significant(amount, 2))
        if amount < 100
        else write_number(round(amount, -1), 0)
    )


def _curves() -> Picture:
    drawing = Drawing(250)
    sour, up = Scale(-6, -3, 46, 340), Scale(0.2, 200, 204, 12, logarithmic=True)
    left, right = sour(-6), sour(-3)
    for tick in (1, 10, 100):
        drawing.line(left, up(tick), right, up(tick), stroke=LINE)
        drawing.text(40, up(tick) + 5, f"{tick} g", anchor="end", fill=SOFT)
    for tick in (6, 5, 4, 3):
        drawing.text(sour(-tick), 222, f"{tick}", anchor="middle", fill=SOFT)
    drawing.text(sour(-4.5), 243, "pH, more sour to the right", anchor="middle", fill=SOFT)
    said = []
    phs = [6 - at / 10 for at in range(31)]
    for chemical, name, dash in DRAWN:
        for width, (water_name, water) in zip((2.4, 1.0), WATERS):
            drawing.path(
                [
                    (sour(-ph), up(dose_for_ph(chemical, ph, LITERS, alkalinity=water)))
                    for ph in phs
                ],
                width=width,
                dash=dash,
            )
            said.append(
                f"{name} in {water_name.lower()}"
                f" {_written(dose_for_ph(chemical, 5, LITERS, alkalinity=water))} g to pH 5 and"
                f" {_written(dose_for_ph(chemical, 3.5, LITERS, alkalinity=water))} g to pH 3.5"
            )
    for row, (words, width, dash) in enumerate(
        (
            ("citric, soft water", 2.4, ""),
            ("citric, hard water", 1.0, ""),
            ("acetic, soft water", 2.4, "7 3"),
            ("acetic, hard water", 1.0, "7 3"),
        )
    ):
        drawing.line(56, 22 + 19 * row, 86, 22 + 19 * row, width=width, dash=dash)
        drawing.text(92, 27 + 19 * row, words, halo=True)
    return drawing.picture(
        f"Pure acid in {LITERS:.0f} L of water, before fiber: the same pH takes different weights",
        "Grams of acid on a steep scale: " + "; ".join(said) + ".",
    )
