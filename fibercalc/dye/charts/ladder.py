"""Chart of the dilution ladder: jars, each half as strong as the one before, to read
what is left in a bath."""

from ...core.answer import Picture, Table
from ...core.number import write_plain
from ...core.picture import INK, SOFT, Drawing
from ..bleed import ladder_range, left_from_ladder

JARS = range(8)  # 0 is the bath before the yarn went in
PAPER_GRAY, FULL_GRAY = 250.0, 60.0  # printed gray of clear water and of jar 0, 0 to 255
STEP, HIGH = 38, 26


def dilution_ladder() -> list[Picture | Table]:
    """The ladder drawn as grays, with the strength of each jar and what a match says.

    Source: arithmetic (equal parts of a jar and water halve it); half a jar
    either way is common practice.
    """
    rows = tuple(
        (
            f"{jar}",
            _mixed(jar),
            _percent(left_from_ladder(jar)),
            "-".join(write_plain(end, digits=2 if end < 100 else 3) for end in ladder_range(jar))
            + " %",
        )
        for jar in JARS
    )
    return [
        _strip(),
        Table(
            "What a jar says",
            ("Jar", "Mixed from", "Left in the bath", "With half a jar either way"),
            rows,
            "Half a jar and as much water make the next. Jar 0 is kept from the bath before the"
            " yarn goes in. Jars of one kind, filled to one height, on white paper, looked at from"
            " above, all cool. What is not left is in the yarn. Computed here.",
            ("arithmetic", "common-practice"),
        ),
    ]


def gray(share: float) -> float:
    """Printed gray, 0 to 255, for a strength of 0 to 1: each layer of dye takes the
    same part of the light."""
    shade: float = PAPER_GRAY * (FULL_GRAY / PAPER_GRAY) ** share
    return shade


def _mixed(jar: int) -> str:
    return f"half jar {jar - 1}" if jar else "the bath"


def _percent(value: float) -> str:
    return f"{write_plain(value, digits=3 if value > 1 else 2)} %"


def _strip() -> Picture:
    drawing = Drawing(len(JARS) * STEP + 8)
    said = []
    for jar in JARS:
        top, level = 6 + jar * STEP, round(gray(left_from_ladder(jar) / 100))
        drawing.text(12, top + 18, f"jar {jar}", bold=True)
        drawing.rect(64, top, 130, HIGH, fill=f"rgb({level},{level},{level})", stroke=INK)
        drawing.text(208, top + 18, _percent(left_from_ladder(jar)))
        drawing.text(278, top + 18, f"1 in {2**jar}" if jar else "the bath", fill=SOFT)
        said.append(f"jar {jar} {_percent(left_from_ladder(jar))}")
    return drawing.picture(
        "The ladder: each jar half as strong as the one before (the grays are a sketch: your dye"
        " decides)",
        "Eight jars from dark to clear, each half as strong as the one before: "
        + ", ".join(said)
        + ".",
    )
