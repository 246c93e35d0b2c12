"""What washing did to marked samples: change by direction, area, several samples, several washes; relaxing and felting kept apart."""

from math import hypot

from ...core.answer import Table
from ...core.card import (
    CHOICE,
    STANDARD,
    Basis,
    Card,
    Carry,
    Caution,
    Input,
    Option,
    Result,
    Rows,
    row_of,
    Save,
)
from ...core.problem import Refused
from ...core.units import LENGTH, PERCENT
from ...sources import ARITHMETIC, HAHN_1970, ISO_5077, TWC_TM31, WOOL_SHRINKAGE_LECTURE
from ...yarn.sample import half_width_of_mean, mean, standard_deviation
from ..pictures.cloth import cloth_sizes
from ..several import next_piece_half_width
from ..shrink import MOST_GROWTH, MOST_SHRINK, area_change, change_percent, compounded

FELTS, TREATED, OTHER = "felts", "treated", "other"
GENTLE, WORKED = "gentle", "worked"
SHORT_OF_MARKS = 35.0  # cm between marks, ISO 3759
AHEAD = 5  # further washes looked at as a worst case


def answer(w, samples, fiber, first, again, later):
    _refuse_slips(samples, later if again == "yes" else [])
    found, each = {}, {}
    for way in ("length", "width"):
        each[way] = [
            w.step(
                f"{way}_{n}",
                f"100 * (samples[{n}].{way}_after - samples[{n}].{way}) / samples[{n}].{way}",
                change_percent(getattr(row, way), getattr(row, f"{way}_after")),
                PERCENT,
                label=f"{way.capitalize()} of sample {n}, first wash",
            )
            for n, row in enumerate(samples, 1)
        ]
        names = [f"{way}_{n}" for n in range(1, len(samples) + 1)]
        found[way] = w.step(
            f"{way}_change",
            f"({' + '.join(names)}) / {len(names)}" if len(names) > 1 else names[0],
            mean(each[way]),
            PERCENT,
            label=f"{way.capitalize()}, mean",
        )
        found[f"{way}_of_mean"] = (
            half_width_of_mean(standard_deviation(each[way]), len(samples))
            if len(samples) > 1
            else 0.0
        )
        found[f"{way}_of_next"] = next_piece_half_width(each[way])
        w.error(f"{way}_change", found[f"{way}_of_mean"])
    area = _area(w, "area_change", "length_change", "width_change", found, "Area, first wash")
    results = {
        "length_change": found["length"],
        "width_change": found["width"],
        "area_change": area,
        "each": each,
        "later_each": [],
        "later": {},
    }
    total = {"length": "length_change", "width": "width_change"}
    if again == "yes":
        for way in ("length", "width"):
            results["later"][way] = results[f"later_{way}"] = w.step(
                f"later_{way}",
                f"100 * (later[{len(later)}].{way} - samples[1].{way}_after) /"
                f" samples[1].{way}_after",
                change_percent(getattr(samples[0], f"{way}_after"), getattr(later[-1], way)),
                PERCENT,
                label=f"{way.capitalize()} of sample 1, later washes",
            )
            found[way] = results[f"total_{way}"] = w.step(
                f"total_{way}",
                f"100 * ((1 + {way}_change / 100) * (1 + later_{way} / 100) - 1)",
                compounded([found[way], results[f"later_{way}"]]),
                PERCENT,
                label=f"{way.capitalize()}, all washes compounded",
            )
            w.error(f"total_{way}", found[f"{way}_of_mean"])
            total[way] = f"total_{way}"
    for way in ("length", "width"):
        results[f"{way}_lost"] = w.step(
            f"{way}_lost",
            f"0 - {total[way]}",
            -found[way],
            PERCENT,
            label=f"Shrinkage in {way} to reckon with",
        )
        w.error(f"{way}_lost", found[f"{way}_of_next"])
    results["next"] = max(found["length_of_next"], found["width_of_next"])
    return results


def _refuse_slips(samples, later):
    """No cloth loses nine tenths of a side or doubles it: such a pair of measures is a slip of the pen."""
    for way in ("length", "width"):
        pairs = [
            (
                f"samples.{n}.{way}_after",
                f"Sample {n}",
                getattr(row, way),
                getattr(row, f"{way}_after"),
            )
            for n, row in enumerate(samples, 1)
        ]
        sizes = [getattr(samples[0], f"{way}_after"), *(getattr(row, way) for row in later)]
        pairs += [
            (f"later.{n}.{way}", f"Wash {n + 1}", old, new)
            for n, (old, new) in enumerate(zip(sizes, sizes[1:]), 1)
        ]
        pairs += (
            [
                (
                    f"later.{len(later)}.{way}",
                    f"Wash {len(later) + 1}",
                    getattr(samples[0], way),
                    sizes[-1],
                )
            ]
            if later
            else []
        )
        for name, label, before, after in pairs:
            if not -MOST_SHRINK <= change_percent(before, after) <= MOST_GROWTH:
                raise Refused(
                    f"{label}: the {way} goes from {before:g} to {after:g} cm; check both, a change"
                    f" must lie between −{MOST_SHRINK:g} and +{MOST_GROWTH:g} %.",
                    name,
                )


def _area(w, name, length, width, found, label):
    area = w.step(
        name,
        f"100 * ((1 + {length} / 100) * (1 + {width} / 100) - 1)",
        area_change(found["length"], found["width"]),
        PERCENT,
        label=label,
    )
    w.error(
        name,
        hypot(
            found["length_of_mean"] * (1 + found["width"] / 100),
            found["width_of_mean"] * (1 + found["length"] / 100),
        ),
    )
    return area


def _moved(r, name):
    """A change as people say it: "lost 18 %" or "grew 3 %"."""
    text = r.text(name).replace("−", "").replace("-", "")
    return f"lost {text}" if r.value(name) < 0 else f"grew {text}"


def say(r):
    first = (
        f"In the first wash the length {_moved(r, 'length_change')} and the width"
        f" {_moved(r, 'width_change')}; the area {_moved(r, 'area_change')}."
    )
    parts = []
    if r.has("total_length"):
        parts.append(
            f"In {1 + len(r.given['later'])} washes: length {_moved(r, 'total_length')}, width"
            f" {_moved(r, 'total_width')}."
        )
    if r.kept["next"]:
        parts.append(
            f"A next piece likely loses {r.span('length_lost')} and {r.span('width_lost')}."
        )
    else:
        parts.append("One sample says nothing of how the next one differs: wash three.")
    return first, " ".join(parts)


def notes(r):
    said = [_cause(r)]
    if (
        r.has("later_length")
        and max(abs(r.value("later_length")), abs(r.value("later_width"))) > 0.05
    ):
        ahead = (
            compounded([r.value("total_length"), *[_last(r, "length")] * AHEAD]),
            compounded([r.value("total_width"), *[_last(r, "width")] * AHEAD]),
        )
        said.append(
            f"Should each further wash take what the last one took, {AHEAD} more make"
            f" {_signed(r, ahead[0])} and {_signed(r, ahead[1])} in all: a worst case, most cloth"
            " settles."
        )
    said.append(
        f"Percents of length and width do not add to the area: {r.text('length_change')} and"
        f" {r.text('width_change')} make {r.text('area_change')}."
    )
    if min(min(row.length, row.width) for row in r.given["samples"]) < SHORT_OF_MARKS:
        said.append(
            f"The standard marks {SHORT_OF_MARKS:.0f} cm apart and more, 5 cm from the edges;"
            " shorter marks make the tape’s error larger, which is in the range."
        )
    return said


def _cause(r):
    fiber, first = r.given["fiber"], r.given["first"]
    if fiber == OTHER:
        return (
            "This fiber cannot felt: all of it is relaxing, the strain of making going out, mostly"
            " in the first wash."
        )
    if fiber == TREATED:
        return (
            "Superwash wool hardly felts: what it loses is relaxing. It grows when it is hung wet."
        )
    if first == WORKED:
        return (
            "The first wash worked the wool, so relaxing and felting are mixed in it. Soak another"
            " sample without rubbing to part them."
        )
    return (
        "The first wash was gentle, so that is relaxing; what the later washes took is felting,"
        " which nothing undoes."
    )


def _last(r, way):
    rows = [
        getattr(r.given["samples"][0], f"{way}_after"),
        *(getattr(row, way) for row in r.given["later"]),
    ]
    return change_percent(rows[-2], rows[-1])


def _signed(r, value):
    return f"{'−' if value < 0 else '+'}{r.number(abs(value), 1)} %"


def samples(r):
    each = r.kept["each"]
    rows = tuple(
        (str(n), _signed(r, length), _signed(r, width), _signed(r, area_change(length, width)))
        for n, (length, width) in enumerate(zip(each["length"], each["width"]), 1)
    )
    return Table(
        "Sample by sample, first wash",
        ("Sample", "Length", "Width", "Area"),
        rows,
        "Minus is shrinkage.",
    )


def washes(r):
    if not r.has("later_length"):
        return None
    first = r.given["samples"][0]
    steps = [
        (first.length, first.width),
        (first.length_after, first.width_after),
        *((row.length, row.width) for row in r.given["later"]),
    ]
    rows = []
    for n, (before, now) in enumerate(zip(steps, steps[1:]), 1):
        rows.append(
            (
                str(n),
                *(_signed(r, change_percent(old, new)) for old, new in zip(before, now)),
                *(_signed(r, change_percent(old, new)) for old, new in zip(steps[0], now)),
            )
        )
    return Table(
        "Sample 1, wash by wash",
        ("Wash", "Length", "Width", "Length in all", "Width in all"),
        tuple(rows),
        "Each wash is a percent of the size before it; they multiply, they do not add.",
    )


def picture(r):
    first, sign = r.given["samples"][0], "in" if r.settings.system == "us" else "cm"
    sizes = [
        ("before", first.length, first.width),
        ("after 1 wash", first.length_after, first.width_after),
    ]
    if r.has("total_length"):
        last = r.given["later"][-1]
        sizes.append((f"after {1 + len(r.given['later'])}", last.length, last.width))
    each = 2.54 if sign == "in" else 1.0
    return cloth_sizes(
        "Sample 1 before and after",
        sizes,
        [
            f"{r.number(length / each, 1)} x {r.number(width / each, 1)} {sign}"
            for _, length, width in sizes
        ],
    )


def _cm(name, label, default, instrument):
    return Input(
        LENGTH,
        label,
        default=default,
        allowed=("2 cm", "1000 cm"),
        usual=("8 cm", "300 cm"),
        rough="0.1 cm",
        units=("cm", "in"),
        unit="cm",
        instrument=instrument,
        name=name,
    )


BEFORE, AFTER, LATER = "tape before", "tape after", "tape later"

CARD = Card(
    id="shrinkage",
    chapter="wash",
    place=10,
    question="How much does it shrink in the wash?",
    inputs=(
        Rows(
            row_of(
                (
                    _cm("length", "Length before", "35 cm", BEFORE),
                    _cm("length_after", "Length after one wash", "28.7 cm", AFTER),
                    _cm("width", "Width before", "35 cm", BEFORE),
                    _cm("width_after", "Width after one wash", "30.1 cm", AFTER),
                )
            ),
            "Samples, between marks",
            "sample",
            least=1,
            most=6,
            measure="Rested and flat, the same way each time; three samples say more than one.",
            default=(
                {
                    "length": "35 cm",
                    "length_after": "28.7 cm",
                    "width": "35 cm",
                    "width_after": "30.1 cm",
                },
                {
                    "length": "35 cm",
                    "length_after": "28.5 cm",
                    "width": "35 cm",
                    "width_after": "30 cm",
                },
                {
                    "length": "35 cm",
                    "length_after": "28.9 cm",
                    "width": "35 cm",
                    "width_after": "30.2 cm",
                },
            ),
            name="samples",
        ),
        Input(
            CHOICE,
            "Fiber",
            default=OTHER,
            options=(
                Option(OTHER, "Plant fiber, silk or man-made"),
                Option(FELTS, "Wool or hair, not superwash"),
                Option(TREATED, "Superwash wool"),
            ),
            name="fiber",
        ),
        Input(
            CHOICE,
            "The first wash",
            default=WORKED,
            options=(
                Option(WORKED, "In a machine, or rubbed"),
                Option(GENTLE, "Soaked, not worked"),
            ),
            name="first",
        ),
        Input(
            CHOICE,
            "Washed again?",
            default="yes",
            options=(Option("yes", "Yes"), Option("no", "No")),
            name="again",
        ),
        Rows(
            row_of(
                (_cm("length", "Length", "28.5 cm", LATER), _cm("width", "Width", "29.9 cm", LATER))
            ),
            "Sample 1 after each later wash",
            "wash",
            least=1,
            most=8,
            when={"again": ("yes",)},
            measure="Between the same marks.",
            default=({"length": "28.5 cm", "width": "29.9 cm"},),
            name="later",
        ),
    ),
    results=(
        Result(PERCENT, "Length, first wash", finest=(0.1,), name="length_change"),
        Result(PERCENT, "Width, first wash", finest=(0.1,), name="width_change"),
        Result(PERCENT, "Area, first wash", finest=(0.1,), name="area_change"),
        Result(PERCENT, "Length, later washes", finest=(0.1,), name="later_length"),
        Result(PERCENT, "Width, later washes", finest=(0.1,), name="later_width"),
        Result(PERCENT, "Length, all washes", finest=(0.1,), name="total_length"),
        Result(PERCENT, "Width, all washes", finest=(0.1,), name="total_width"),
        Result(PERCENT, "Next piece loses, length", finest=(0.1,), name="length_lost"),
        Result(PERCENT, "Next piece loses, width", finest=(0.1,), name="width_lost"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(samples, washes),
    basis=Basis(
        STANDARD,
        "ISO 5077: percent of the size before, each direction apart. Ranges are Student’s t; washes"
        " multiply.",
    ),
    sources=(ISO_5077, WOOL_SHRINKAGE_LECTURE, TWC_TM31, HAHN_1970, ARITHMETIC),
    cautions=(
        Caution(
            "It holds for this cloth and this wash.",
            "Another temperature, dryer, sett or gauge is another sample.",
        ),
    ),
    carry=(
        Carry(
            "make-size",
            "What size to make?",
            {"length_percent": "length_lost", "width_percent": "width_lost"},
        ),
    ),
    saves=(
        Save(
            "measurement",
            "An own measurement: this shrinkage",
            {"what": "'shrinkage'", "length_change": "length_lost", "width_change": "width_lost"},
        ),
    ),
)
