"""The size to knit or weave so that washing leaves the size wanted; a loss is divided out, never added."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, Basis, Card, Carry, Caution, Input, Option, Result
from ...core.table import read_table
from ...core.units import LENGTH, NUMBER, PER_LENGTH, PERCENT
from ...sources import (
    ARITHMETIC,
    COTTON_JERSEY_GRAPH,
    ISO_5077,
    MUNDEN_1959,
    TRADE_MEMORY,
    TRADE_PAGE_SHRINKAGE,
)
from ..pictures.cloth import cloth_sizes
from ..shrink import change_percent, size_after, size_before

SWATCH, OWN, PUBLISHED = "swatch", "percent", "published"
CLOTHS = tuple(
    row
    for row in read_table("wash", "shrink-ranges").rows
    if isinstance(row["length_high"], float) and row["length_high"] > row["length_low"]
)
WAYS = ("length", "width")


def answer(
    w,
    wanted_length,
    wanted_width,
    how,
    length_percent,
    width_percent,
    swatch_length,
    swatch_length_after,
    swatch_width,
    swatch_width_after,
    cloth,
    stitches,
    rows,
):
    wanted, swatches = (
        {"length": wanted_length, "width": wanted_width},
        {
            "length": (swatch_length, swatch_length_after),
            "width": (swatch_width, swatch_width_after),
        },
    )
    found = {}
    for way in WAYS:
        ends = None
        name = f"{way}_percent" if how == OWN else f"{way}_shrink"
        if how == OWN:
            shrink = {"length": length_percent, "width": width_percent}[way]
        elif how == SWATCH:
            shrink = w.step(
                f"{way}_shrink",
                f"100 * (swatch_{way} - swatch_{way}_after) / swatch_{way}",
                -change_percent(*swatches[way]),
                PERCENT,
                label=f"Shrinkage in {way}",
            )
        else:
            ends = _published(w, cloth, way)
            if ends is None:
                continue
            shrink = w.step(
                f"{way}_shrink",
                f"({way}_low + {way}_high) / 2",
                sum(ends) / 2,
                PERCENT,
                label=f"Shrinkage in {way}, middle",
            )
        make = w.step(
            f"make_{way}",
            f"wanted_{way} / (1 - {name} / 100)",
            size_before(wanted[way], shrink),
            LENGTH,
            "cm",
            f"{way.capitalize()} to make",
        )
        decided = w.decide(way, make)
        after = w.step(
            f"finished_{way}",
            f"make_{way} * (1 - {name} / 100)",
            size_after(decided, shrink),
            LENGTH,
            "cm",
            f"{way.capitalize()} after washing, made so",
        )
        found |= {
            f"{way}_shrink": shrink,
            f"make_{way}": 0.01 * make,
            f"finished_{way}": 0.01 * after,
        }
        if ends:
            w.band(f"{way}_shrink", *ends)
            w.band(f"make_{way}", *(0.01 * size_before(wanted[way], end) for end in ends))
            w.band(f"finished_{way}", *(0.01 * size_after(decided, end) for end in ends))
    for name, gauge, way in (("across", stitches, "width"), ("along", rows, "length")):
        if gauge is not None and f"make_{way}" in found:
            found[name] = w.step(
                name,
                f"make_{way} * {'stitches' if way == 'width' else 'rows'}",
                100 * found[f"make_{way}"] * gauge,
                NUMBER,
                label=f"{'Stitches or ends' if way == 'width' else 'Rows or picks'} for it",
            )
            if ends := _ends(found, way, how, cloth):
                w.band(name, *(gauge * size_before(wanted[way], end) for end in ends))
    if "make_length" in found and "make_width" in found:
        found["more"] = w.step(
            "more",
            "100 * (make_length * make_width / (wanted_length * wanted_width) - 1)",
            100
            * (
                1e4 * found["make_length"] * found["make_width"] / (wanted_length * wanted_width)
                - 1
            ),
            PERCENT,
            label="More cloth to make than will be left",
        )
        if how == PUBLISHED:
            w.band(
                "more",
                *(
                    100 * (size_before(1, length) * size_before(1, width) - 1)
                    for length, width in zip(_row_ends(cloth, "length"), _row_ends(cloth, "width"))
                ),
            )
    return found


def _row_ends(cloth, way):
    row = read_table("wash", "shrink-ranges").row("key", cloth)
    return row[f"{way}_low"], row[f"{way}_high"]


def _ends(found, way, how, cloth):
    return _row_ends(cloth, way) if how == PUBLISHED and f"make_{way}" in found else None


def _published(w, cloth, way):
    """Both ends of a published range as steps; None where there is none in that direction."""
    if not all(isinstance(end, float) for end in _row_ends(cloth, way)):
        return None
    return tuple(
        w.looked_up(
            f"{way}_{end}",
            "wash",
            "shrink-ranges",
            "key",
            cloth,
            f"{way}_{end}",
            PERCENT,
            label=f"Shrinkage in {way}, {'least' if end == 'low' else 'most'}",
        )
        for end in ("low", "high")
    )


def say(r):
    ways = [way for way in WAYS if r.has(f"make_{way}")]
    words = " and ".join(
        f"{r.said(f'make_{way}')} {'long' if way == 'length' else 'wide'}" for way in ways
    )
    left = " and ".join(
        f"{r.span(f'finished_{way}') or r.text(f'finished_{way}')}"
        f" {'long' if way == 'length' else 'wide'}"
        for way in ways
    )
    missing = (
        "" if len(ways) == 2 else " No figure was found for the other direction: measure a swatch."
    )
    return (
        f"Make it {words} before washing.",
        f"Made so, washing will likely leave it {left}.{missing}",
    )


def notes(r):
    said = []
    way = next(
        (way for way in WAYS if r.has(f"make_{way}") and abs(r.value(f"{way}_shrink")) > 1), None
    )
    if way:
        wanted, shrink = r.given[f"wanted_{way}"], r.value(f"{way}_shrink")
        added = wanted * (1 + shrink / 100)
        said.append(
            f"Divide, do not add: {_long(r, wanted)} and {r.number(shrink, 0)} % on top are"
            f" {_long(r, added)}, of which washing leaves {_long(r, size_after(added, shrink))}."
        )
    if r.has("more"):
        said.append(
            f"That is {r.text('more')} more cloth than will be left, and as much more yarn."
        )
    if r.given["how"] == PUBLISHED:
        row = read_table("wash", "shrink-ranges").row("key", r.given["cloth"])
        said.append(f"{row['what']}. Others’ cloths: a swatch of your own, washed, is worth more.")
    if r.given["stitches"] is not None or r.given["rows"] is not None:
        said.append(
            "Stitches and rows are those of the cloth before washing, as it comes off the needles"
            " or the loom."
        )
    said.append(
        "Hems, fringe and draw-in come on top, in their own place: shrinkage is a percent of the"
        " size before washing, draw-in of the width in the heddle."
    )
    return said


def _long(r, cm):
    """A length given in cm, in the user's units."""
    return f"{r.number(cm / 2.54, 1)} in" if r.settings.system == "us" else f"{r.number(cm, 1)} cm"


def table(r):
    """What the wanted size becomes at each shrinkage around the own one."""
    way = next((way for way in WAYS if r.has(f"make_{way}")), None)
    if way is None:
        return None
    low, high = sorted((r.low(f"{way}_shrink"), r.high(f"{way}_shrink")))
    made, wanted = 100 * r.value(f"make_{way}"), r.given[f"wanted_{way}"]
    places = (
        [low + (high - low) * k / 4 for k in range(5)]
        if high - low > 0.2
        else [low - 2, low, low + 2]
    )
    rows = tuple(
        (
            f"{r.number(shrink, 1)} %",
            _long(r, size_before(wanted, shrink)),
            _long(r, size_after(made, shrink)),
        )
        for shrink in places
    )
    return Table(
        f"If the {way} shrinks otherwise",
        ("Shrinkage", "Should have been made", "Made as above, is left"),
        rows,
    )


def picture(r):
    if not (r.has("make_length") and r.has("make_width")):
        return None
    sign = "in" if r.settings.system == "us" else "cm"
    each = 0.0254 if sign == "in" else 0.01
    sizes = [
        ("make", r.value("make_length"), r.value("make_width")),
        ("after washing", r.value("finished_length"), r.value("finished_width")),
    ]
    return cloth_sizes(
        "As made, and as it will likely be",
        sizes,
        [
            f"{r.number(length / each, 1)} x {r.number(width / each, 1)} {sign}"
            for _, length, width in sizes
        ],
    )


def _cm(
    name,
    label,
    default,
    allowed=("2 cm", "2000 cm"),
    usual=("5 cm", "500 cm"),
    rough="",
    instrument="",
    when=None,
    said="",
):
    return Input(
        LENGTH,
        label,
        default=default,
        allowed=allowed,
        usual=usual,
        rough=rough,
        units=("cm", "in"),
        unit="cm",
        instrument=instrument,
        when=when or {},
        measure=said,
        name=name,
    )


def _percent(name, label, default, record):
    return Input(
        PERCENT,
        label,
        record=record,
        default=default,
        allowed=("-50 %", "80 %"),
        usual=("-15 %", "50 %"),
        rough="2 %",
        when={"how": (OWN,)},
        name=name,
    )


MEASURED = {"how": (SWATCH,)}
GAUGE_UNITS = ("per cm", "per 10 cm", "per 4 in", "per in")

CARD = Card(
    id="make-size",
    chapter="wash",
    place=20,
    question="What size do I make it, so that it comes out right?",
    inputs=(
        _cm(
            "wanted_length",
            "Wanted length, washed",
            "63 cm",
            said="Along the rows’ way up, or the warp; hems included.",
        ),
        _cm("wanted_width", "Wanted width, washed", "34 cm"),
        Input(
            CHOICE,
            "Shrinkage from",
            default=OWN,
            options=(
                Option(OWN, "A percentage that I know"),
                Option(SWATCH, "A swatch, measured twice"),
                Option(PUBLISHED, "A published range"),
            ),
            name="how",
        ),
        _percent("length_percent", "It shrinks in length by", "18 %", "measurement.length_change"),
        _percent("width_percent", "and in width by", "14 %", "measurement.width_change"),
        _cm(
            "swatch_length",
            "Swatch length before",
            "35 cm",
            ("2 cm", "1000 cm"),
            ("8 cm", "100 cm"),
            "0.1 cm",
            "tape before",
            MEASURED,
            "Between marks, rested and flat.",
        ),
        _cm(
            "swatch_length_after",
            "Swatch length after",
            "28.7 cm",
            ("2 cm", "1000 cm"),
            ("5 cm", "100 cm"),
            "0.1 cm",
            "tape after",
            MEASURED,
        ),
        _cm(
            "swatch_width",
            "Swatch width before",
            "35 cm",
            ("2 cm", "1000 cm"),
            ("8 cm", "100 cm"),
            "0.1 cm",
            "tape before",
            MEASURED,
        ),
        _cm(
            "swatch_width_after",
            "Swatch width after",
            "30.1 cm",
            ("2 cm", "1000 cm"),
            ("5 cm", "100 cm"),
            "0.1 cm",
            "tape after",
            MEASURED,
        ),
        Input(
            CHOICE,
            "Cloth",
            default="woven-plain",
            options=tuple(Option(row["key"], row["label"]) for row in CLOTHS),
            when={"how": (PUBLISHED,)},
            name="cloth",
        ),
        Input(
            PER_LENGTH,
            "Stitches or ends, unwashed",
            default="4.26 per cm",
            allowed=("0.2 per cm", "60 per cm"),
            usual=("0.8 per cm", "30 per cm"),
            optional=True,
            units=GAUGE_UNITS,
            measure="Off the needles or off the loom; leave blank if you only want the size.",
            name="stitches",
        ),
        Input(
            PER_LENGTH,
            "Rows or picks, unwashed",
            default="5 per cm",
            allowed=("0.2 per cm", "80 per cm"),
            usual=("1 per cm", "40 per cm"),
            optional=True,
            units=GAUGE_UNITS,
            name="rows",
        ),
    ),
    results=(
        Result(
            LENGTH,
            "Length to make",
            units=("cm", "in"),
            finest=(0.1, 0.1),
            floor=0.0,
            name="make_length",
        ),
        Result(
            LENGTH,
            "Width to make",
            units=("cm", "in"),
            finest=(0.1, 0.1),
            floor=0.0,
            name="make_width",
        ),
        Result(NUMBER, "Stitches or ends for it", finest=(1,), floor=0.0, name="across"),
        Result(NUMBER, "Rows or picks for it", finest=(1,), floor=0.0, name="along"),
        Result(
            LENGTH,
            "Length after washing",
            units=("cm", "in"),
            finest=(0.1, 0.1),
            floor=0.0,
            name="finished_length",
        ),
        Result(
            LENGTH,
            "Width after washing",
            units=("cm", "in"),
            finest=(0.1, 0.1),
            floor=0.0,
            name="finished_width",
        ),
        Result(PERCENT, "Shrinkage in length", finest=(0.1,), name="length_shrink"),
        Result(PERCENT, "Shrinkage in width", finest=(0.1,), name="width_shrink"),
        Result(PERCENT, "More cloth to make", finest=(1,), name="more"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(table,),
    basis=Basis(
        MODEL,
        "Size before = size after ÷ (1 − shrinkage), each direction apart (ISO 5077, solved for the"
        " size before). Published ranges are others’ cloths.",
    ),
    sources=(
        ISO_5077,
        ARITHMETIC,
        TRADE_PAGE_SHRINKAGE,
        COTTON_JERSEY_GRAPH,
        MUNDEN_1959,
        TRADE_MEMORY,
    ),
    cautions=(
        Caution(
            "Wash a sample before you make the piece.",
            "In the same yarn, structure and gauge, washed and dried as the piece will be.",
        ),
    ),
    carry=(Carry("shrinkage", "How much does it shrink?", {}),),
)
