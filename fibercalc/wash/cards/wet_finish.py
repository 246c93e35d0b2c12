"""What a first soak or wash likely does to a knitted swatch, by the constants of plain knitting, and how far the own one differs."""

from ...core.card import CHOICE, MODEL, Basis, Card, Carry, Caution, Input, Option, Result, Save
from ...core.table import read_table
from ...core.onward import spread_text
from ...core.units import LENGTH, NUMBER, PER_LENGTH, PERCENT
from ...sources import ARITHMETIC, GATE_TEXTILE_2015, KNITTING_SCIENCE_NOTES, MUNDEN_1959
from ..pictures.changes import change_bars
from ..relaxed import gauge_after, relaxed_change, relaxed_range
from ..shrink import change_percent

CONSTANTS = read_table("wash", "munden-constants")
DRY = "dry"
AFTER = tuple(
    Option(row["state"], row["label"].partition(": ")[2].capitalize())
    for row in CONSTANTS.rows
    if row["state"] != DRY
)
WAYS = (("width", "Kw", "Wider or narrower"), ("height", "Kc", "Taller or shorter"))


def answer(w, wide, tall, stitches, rows, after, measured, wide_after, tall_after):
    before, now, found = (
        {"width": wide, "height": tall},
        {"width": wide_after, "height": tall_after},
        {"bands": {}},
    )
    for way, constant, _ in WAYS:
        dry = w.looked_up(
            f"{way}_dry",
            "wash",
            "munden-constants",
            "state",
            DRY,
            constant,
            label=f"{constant}, off the needles and rested",
        )
        wet = w.looked_up(
            f"{way}_wet",
            "wash",
            "munden-constants",
            "state",
            after,
            constant,
            label=f"{constant}, after",
        )
        band = found["bands"][way] = relaxed_range(dry, wet)
        given = "wide" if way == "width" else "tall"
        change = found[f"{way}_likely"] = w.step(
            f"{way}_likely",
            f"100 * ({way}_dry / {way}_wet - 1)",
            relaxed_change(dry, wet),
            PERCENT,
            label=f"Change in {way}, by the constants",
        )
        w.band(f"{way}_likely", *band)
        size = w.step(
            f"{way}_after",
            f"{given} * (1 + {way}_likely / 100)",
            before[way] * (1 + change / 100),
            LENGTH,
            "cm",
            f"{way.capitalize()} it would come to",
        )
        found[f"{way}_after"] = 0.01 * size
        w.band(f"{way}_after", *(0.01 * before[way] * (1 + end / 100) for end in band))
        counted, name = (stitches, "stitches") if way == "width" else (rows, "rows")
        if counted is not None:
            found[f"{name}_after"] = w.step(
                f"{name}_after",
                f"{name} / {given} / (1 + {way}_likely / 100)",
                gauge_after(counted / before[way], change),
                PER_LENGTH,
                label=f"{name.capitalize()} it would have",
            )
            w.band(f"{name}_after", *(gauge_after(counted / before[way], end) for end in band))
        if measured == "yes":
            own = found[f"{way}_own"] = w.step(
                f"{way}_own",
                f"100 * ({given}_after - {given}) / {given}",
                change_percent(before[way], now[way]),
                PERCENT,
                label=f"Your change in {way}",
            )
            found[f"{way}_off"] = w.step(
                f"{way}_off",
                f"{way}_own - {way}_likely",
                own - change,
                PERCENT,
                label=f"Yours less the constants’, in {way}",
            )
            w.band(f"{way}_off", *(own - end for end in band))
    if stitches is not None and rows is not None:
        found["proportion"] = w.step(
            "proportion",
            "rows / tall / (stitches / wide)",
            (rows / tall) / (stitches / wide),
            NUMBER,
            label="Rows over stitches",
        )
    return found


def _differs(r, way):
    """Whether the own change lies beyond what constants and tape leave open."""
    return not r.low(f"{way}_off") <= 0 <= r.high(f"{way}_off")


def _signed(r, name):
    return f"{'+' if r.value(name) > 0 else ''}{r.text(name)}"


def say(r):
    first = (
        f"By the constants of plain wool knitting it changes by {r.text('width_likely')} in width"
        f" and {r.text('height_likely')} in height."
    )
    if not r.has("width_own"):
        return (
            first,
            (
                f"From {r.span('width_likely')} and {r.span('height_likely')}; measure yours after"
                " the wash to see how it differs."
            ),
        )
    beyond = [way for way, *_ in WAYS if _differs(r, way)]
    yours = f"Yours changed by {_signed(r, 'width_own')} and {_signed(r, 'height_own')}"
    apart = f"in {' and '.join(beyond)} it is another cloth than they describe"
    return first, f"{yours}: {apart if beyond else 'as they say, as far as a tape can tell'}."


def notes(r):
    said = []
    if r.has("width_own"):
        grew = [way for way, *_ in WAYS if r.value(f"{way}_own") > 0.5]
        if grew:
            said.append(
                f"It grew in {' and '.join(grew)}. Superwash wool, alpaca, silk and cotton do; so"
                " does a swatch that was tight on the needles or was pinned out. Trust your own"
                " swatch."
            )
        elif any(_differs(r, way) for way, *_ in WAYS):
            said.append(
                "More than the constants say is felting, or a swatch that had not rested; less is"
                " yarn with little spring."
            )
    if r.has("proportion"):
        state = CONSTANTS.row("state", DRY)
        said.append(
            f"Rows over stitches: {r.text('proportion')}; the constants have"
            f" {r.number(state['Kc'] / state['Kw'], 2)}. Hand knitting lies anywhere from 1.3 to"
            " 1.45."
        )
    said.append(
        "Off the needles means rested a day, flat, not pinned. The constants are of wool stocking"
        " stitch: no rib, no garter, no lace."
    )
    return said


def picture(r):
    rows = [
        (
            way.capitalize(),
            *r.kept["bands"][way],
            r.value(f"{way}_own") if r.has(f"{way}_own") else None,
        )
        for way, *_ in WAYS
    ]
    return change_bars("What the wash does to the swatch", rows)


def _cm(name, label, default, instrument, when=None, said=""):
    return Input(
        LENGTH,
        label,
        default=default,
        allowed=("2 cm", "200 cm"),
        usual=("8 cm", "30 cm"),
        rough="0.15 cm",
        units=("cm", "in"),
        unit="cm",
        instrument=instrument,
        when=when or {},
        measure=said,
        name=name,
    )


def _lost(side):
    """What a side loses, by the own swatch where there is one; a swatch that grew loses less than nothing."""

    def lost(r):
        name = f"{side}_own" if r.has(f"{side}_own") else f"{side}_likely"
        return spread_text(-r.value(name), -r.high(name), -r.low(name), "%")

    return lost


def _sample(r):
    """The swatch as one sample, once it has been measured again."""
    if r.given["measured"] != "yes":
        return None
    return [
        {
            "length": r.readings["tall"].text,
            "length_after": r.readings["tall_after"].text,
            "width": r.readings["wide"].text,
            "width_after": r.readings["wide_after"].text,
        }
    ]


AFTERWARD = {"measured": ("yes",)}

CARD = Card(
    id="wet-finish",
    chapter="wash",
    place=30,
    question="What does the first wash do to my knitted swatch?",
    inputs=(
        _cm(
            "wide",
            "Width before",
            "14.6 cm",
            "tape before",
            said="Off the needles, rested a day, not pinned.",
        ),
        _cm("tall", "Height before", "15.3 cm", "tape before"),
        Input(
            NUMBER,
            "Stitches in that width",
            default="30",
            allowed=("2", "1000"),
            usual=("15", "80"),
            rough="0.25",
            optional=True,
            name="stitches",
        ),
        Input(
            NUMBER,
            "Rows in that height",
            default="40.5",
            allowed=("2", "1000"),
            usual=("20", "120"),
            rough="0.25",
            optional=True,
            name="rows",
        ),
        Input(CHOICE, "Then it is", default="wet", options=AFTER, name="after"),
        Input(
            CHOICE,
            "Measured afterward?",
            default="yes",
            options=(Option("yes", "Yes"), Option("no", "Not yet")),
            name="measured",
        ),
        _cm(
            "wide_after",
            "Width after",
            "15 cm",
            "tape after",
            AFTERWARD,
            "The same stitches, dry again and rested.",
        ),
        _cm("tall_after", "Height after", "15 cm", "tape after", AFTERWARD),
    ),
    results=(
        Result(PERCENT, "Width, expected", finest=(0.5,), name="width_likely"),
        Result(PERCENT, "Height, expected", finest=(0.5,), name="height_likely"),
        Result(PERCENT, "Width, yours", finest=(0.5,), name="width_own"),
        Result(PERCENT, "Height, yours", finest=(0.5,), name="height_own"),
        Result(PERCENT, "Width, apart", finest=(0.5,), name="width_off"),
        Result(PERCENT, "Height, apart", finest=(0.5,), name="height_off"),
        Result(
            LENGTH,
            "Expected width",
            units=("cm", "in"),
            finest=(0.1, 0.1),
            floor=0.0,
            name="width_after",
        ),
        Result(
            LENGTH,
            "Expected height",
            units=("cm", "in"),
            finest=(0.1, 0.1),
            floor=0.0,
            name="height_after",
        ),
        Result(
            PER_LENGTH,
            "Expected stitches",
            units=("per 10 cm", "per 4 in"),
            finest=(0.1, 0.1),
            floor=0.0,
            name="stitches_after",
        ),
        Result(
            PER_LENGTH,
            "Expected rows",
            units=("per 10 cm", "per 4 in"),
            finest=(0.1, 0.1),
            floor=0.0,
            name="rows_after",
        ),
        Result(NUMBER, "Rows over stitches", finest=(0.01,), floor=0.0, name="proportion"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        MODEL,
        "Width goes as 1/Kw and height as 1/Kc of the state of rest; the yarn in a stitch stays."
        " The constants are from memory; their ranges are those of their last digit.",
    ),
    sources=(MUNDEN_1959, GATE_TEXTILE_2015, KNITTING_SCIENCE_NOTES, ARITHMETIC),
    cautions=(
        Caution(
            "Your own washed swatch decides.",
            "The constants are of wool that is not superwash, in stocking stitch, from memory.",
        ),
    ),
    carry=(
        Carry(
            "make-size",
            "What size to knit?",
            {"length_percent": _lost("height"), "width_percent": _lost("width")},
        ),
        Carry(
            "shrinkage",
            "Several samples, several washes",
            {"samples": _sample, "again": lambda r: "no" if _sample(r) else None},
        ),
    ),
    saves=(
        Save(
            "measurement",
            "An own measurement: the gauge after the wash",
            {
                "what": "'gauge'",
                "stitches": "stitches_after",
                "rows": "rows_after",
                "state": "after",
            },
        ),
    ),
)
