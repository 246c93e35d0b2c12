"""The sett: how closely to set a yarn for a weave and a use, on which heddle, and how the cloth will be."""

from ...core.amount import NO_BREAK
from ...core.answer import Table
from ...core.card import (
    CHOICE,
    MODEL,
    TEXT,
    Basis,
    Card,
    Carry,
    Caution,
    Input,
    Option,
    Result,
    Rows,
    row_of,
)
from ...core.problem import Refused
from ...core.table import read_table
from ...core.units import COUNT, LINEAR_DENSITY, NUMBER, PER_LENGTH, PERCENT
from ...sources import (
    ARITHMETIC,
    ASHENHURST,
    COMMON_PRACTICE,
    GATE_TEXTILE_2006,
    PEIRCE_1937,
    TAYLOR_1909,
    TRADE_MEMORY,
    TRADE_PAGE_SPINNERS,
    TRADE_PAGES_REEDS,
    TRADE_PAGES_SETT,
    WOVEN_CALCULATION_NOTES,
)
from ...yarn.count import count_from_tex
from ...yarn.diameter import PEIRCE_CONSTANT, ashenhurst_constants, ashenhurst_diameters_per_inch
from ...yarn.wraps import wrap_conventions
from ..cover import TOUCHING, closest_picks, cloth_cover, cover_factor
from ..pictures.spacing import ends_across
from ..setting import (
    average_float,
    brierley_maximum,
    interlacings,
    maximum_sett,
    sett_in_another_weave,
    working_sett,
)
from ..settings import INCH, METRIC, OWN, PER_INCH, REED, RIGID, nearest, threadings

ASHENHURST_K, PEIRCE, PACKED = "ashenhurst", "peirce", "packed"
WEAVES = {row["key"]: row for row in interlacings().rows}
USES = {row["key"]: row for row in read_table("weave", "sett-uses").rows}
LOOSE = 0.75  # of what a close-packed wrap would count: below lies another way of wrapping (between the bands of the wrap conventions)
FAR = 1.15  # a setting farther than this from the wanted one is said to be
RELAXED = (
    "a relaxed hand wrap counts about half the diameters in an inch, and no two hands wrap alike:"
    " the cloth would be half as close as it should be. Push the turns together until they touch,"
    " or go by the yarn’s length and weight"
)


def answer(w, by, count, kind, wraps, known_count, weave, use, picks, on, made, own):
    tex = known_count if by == PACKED else count
    yards = (
        w.step(
            "yards_per_pound",
            f"1000 * 453.59237 / (0.9144 * {'known_count' if by == PACKED else 'count'})",
            count_from_tex(tex, "yd/lb"),
            LINEAR_DENSITY,
            "yd/lb",
            "Yards in a pound",
        )
        if tex
        else None
    )
    cotton = (
        w.step(
            "cotton_count",
            "yards_per_pound / 840",
            count_from_tex(tex, "Ne"),
            LINEAR_DENSITY,
            "Ne",
            "Cotton hanks in a pound",
        )
        if tex
        else None
    )
    if by == ASHENHURST_K:
        constant = w.looked_up(
            "constant",
            "yarn",
            "ashenhurst-constants",
            "name",
            kind,
            "constant",
            NUMBER,
            label="Ashenhurst’s constant for this kind of yarn",
        )
        diameters = w.step(
            "diameters",
            "constant * sqrt(yards_per_pound)",
            ashenhurst_diameters_per_inch(yards, constant),
            PER_LENGTH,
            "per in",
            "Diameters side by side in an inch",
        )
    elif by == PEIRCE:
        diameters = w.step(
            "diameters",
            "28 * sqrt(cotton_count)",
            PEIRCE_CONSTANT * cotton**0.5,
            PER_LENGTH,
            "per in",
            "Diameters side by side in an inch",
        )
    else:
        diameters = w.step(
            "diameters",
            "wraps",
            wraps,
            PER_LENGTH,
            "per in",
            "Diameters side by side in an inch, as wrapped",
        )
        if yards:
            _refuse_loose(w.decide("ratio", wraps / yards**0.5), wraps, yards)
    ends, crossings = (
        w.looked_up(
            column,
            "weave",
            "interlacings",
            "key",
            weave,
            column,
            COUNT,
            label=f"{column.capitalize()} in a repeat of the weave",
        )
        for column in ("ends", "crossings")
    )
    closest = w.step(
        "closest",
        "diameters * ends / (ends + crossings)",
        maximum_sett(diameters, ends, crossings),
        PER_LENGTH,
        "per in",
        "Closest sett, the same yarn both ways",
    )
    low, high = (
        w.looked_up(
            f"share_{end}",
            "weave",
            "sett-uses",
            "key",
            use,
            end,
            PERCENT,
            label=f"Share of it for this use, {end}",
        )
        for end in ("low", "high")
    )
    working = w.step(
        "working",
        "closest * (share_low + share_high) / 200",
        working_sett(closest, (low + high) / 2),
        PER_LENGTH,
        "per in",
        "Working sett",
    )
    w.band("working", *(PER_INCH.to_base(working_sett(closest, share)) for share in (low, high)))
    ways = w.decide(
        "ways",
        nearest(
            threadings(on, made, tuple(row.dents for row in own) if made == OWN else ()),
            PER_INCH.to_base(working),
        ),
    )
    way = ways[0]
    bare = f"{way.number:g} * {way.heddles} * {sum(way.order)} / {len(way.order)}"
    sett = PER_INCH.from_base(way.sett)
    w.step(
        "sett",
        bare if way.per is PER_INCH else f"{bare} * 0.254",
        sett,
        PER_LENGTH,
        "per in",
        f"Ends with {way.name}, {way.words(on)}",
    )
    closeness = w.step(
        "closeness",
        "100 * sett / closest",
        100 * sett / closest,
        PERCENT,
        label="Of the closest sett",
    )
    weft = picks or sett
    beaten = "picks" if picks else "sett"
    balance = w.step("balance", f"{beaten} / sett", weft / sett, NUMBER, label="Picks for each end")
    found = {
        "count": cotton,
        "sett": way.sett,
        "closest": PER_INCH.to_base(closest),
        "working": PER_INCH.to_base(working),
        "diameters": PER_INCH.to_base(diameters),
        "closeness": closeness,
        "balance": balance,
        "threading": f"{way.name}, {way.words(on)}",
        "ways": ways,
        "cotton": cotton if by == PEIRCE or str(kind).startswith("cotton") else None,
    }
    if cotton:
        found |= _cover(w, cotton, sett, weft, beaten, weave)
    return found


def _refuse_loose(ratio, wraps, yards):
    packed = wrap_conventions().row("name", "packed")
    if ratio < LOOSE * packed["middle"]:
        raise Refused(
            f"Wraps: {wraps:.3g} in an inch of a yarn of {yards:,.0f} yd/lb are no close-packed"
            f" wrap, which would count {packed['low'] * yards**0.5:.0f} to"
            f" {packed['high'] * yards**0.5:.0f}; {RELAXED}.",
            "wraps",
        )


def _cover(w, cotton, sett, weft, beaten, weave):
    """Peirce's cover, and for plain weave the most picks that go in; nothing where ends would lie over each other."""
    warp_k, weft_k = cover_factor(sett, cotton), cover_factor(weft, cotton)
    w.step(
        "warp_cover",
        "sett / sqrt(cotton_count)",
        warp_k,
        NUMBER,
        label="Peirce’s cover factor of the warp; threads touch at 28",
    )
    w.step(
        "weft_cover",
        f"{beaten} / sqrt(cotton_count)",
        weft_k,
        NUMBER,
        label="Peirce’s cover factor of the weft",
    )
    if max(warp_k, weft_k) > TOUCHING:
        return {}
    both = cloth_cover(warp_k, weft_k)
    w.step(
        "cover",
        "100 * (warp_cover + weft_cover - warp_cover * weft_cover / 28) / 28",
        100 * both / TOUCHING,
        PERCENT,
        label="Covered by thread",
    )
    found = {"cover": 100 * both / TOUCHING}
    if weave == "plain":
        diameter = 1 / (PEIRCE_CONSTANT * cotton**0.5)
        most = closest_picks(sett, diameter, diameter)
        w.step(
            "diameter",
            "1 / (28 * sqrt(cotton_count))",
            diameter,
            NUMBER,
            label="Diameter after Peirce, in inches",
        )
        w.step(
            "reach",
            "1 - sqrt(max(0, 1 - (1 / (sett * 2 * diameter)) ** 2))",
            1 - max(0.0, 1 - (1 / (sett * 2 * diameter)) ** 2) ** 0.5,
            NUMBER,
            label="Left for the picks to bend (jammed, both ways add up to 1)",
        )
        w.step(
            "most_picks",
            "1 / max(diameter, 2 * diameter * sqrt(1 - reach ** 2))",
            most,
            PER_LENGTH,
            "per in",
            "Picks when the cloth is jammed",
        )
        found["most_picks"] = PER_INCH.to_base(most)
    return found


def say(r):
    way, wanted = r.kept["ways"][0], r.value("working")
    off = way.sett / wanted
    what = (
        f"{_a(way.name)} {'heddle' if r.given['on'] == RIGID else 'reed'},"
        f" {way.words(r.given['on'])},"
    )
    gives = f"gives {' ('.join(r.bare('sett', unit.sign) for unit in r.units('sett'))}" + (
        ")" if len(r.units("sett")) > 1 else ""
    )
    if way.heddles == 2:
        what, gives = (
            f"Two {way.name} heddles, one end in each hole and slot,",
            gives.replace("gives", "give"),
        )
    far = "" if 1 / FAR <= off <= FAR else "Nothing at hand comes near: "
    first = (
        f"Set it at about {r.bare('working')} ends {r.said('working').partition(NO_BREAK)[2]}."
        f" {far}{what[0].lower() + what[1:] if far else what} {gives}."
    )
    use = USES[r.given["use"]]
    inside = (
        "as is usual for"
        if use["low"] <= round(r.value("closeness")) <= use["high"]
        else (
            "closer than is usual for"
            if r.value("closeness") > use["high"]
            else "more open than is usual for"
        )
    )
    second = (
        f"That is {r.number(r.value('closeness'))} % of the closest that this weave allows,"
        f" {r.said('closest')}, {inside} {use['label'][0].lower()}{use['label'][1:]}."
    )
    return first, f"{second} {_balance(r)}"


def _a(name):
    return f"{'An' if name.startswith('8') else 'A'} {name}"


def _balance(r):
    ratio = r.value("balance")
    if r.given["picks"] is None:
        return "With as many picks as ends the cloth is balanced."
    if 0.95 <= ratio <= 1.05:
        return "With your picks the cloth is balanced."
    more = 100 * (max(ratio, 1 / ratio) - 1)
    return (
        f"With your picks the {'weft' if ratio > 1 else 'warp'} is {r.number(more)} % closer and"
        " shows more."
    )


def notes(r):
    said = []
    row = WEAVES[r.given["weave"]]
    if r.has("most_picks"):
        share = (
            100 * r.given["picks"] / PER_INCH.from_base(r.value("most_picks"))
            if r.given["picks"]
            else None
        )
        beat = f" Your picks are {r.number(share)} % of that." if share else ""
        touch = r.value("most_picks") >= 0.999 * PER_INCH.to_base(
            PEIRCE_CONSTANT * r.kept["count"] ** 0.5
        )
        said.append(
            "The ends stand so far apart that picks can be packed until they touch, at about"
            f" {r.said('most_picks')}.{beat}"
            if touch
            else (
                f"At this sett a plain weave jams at about {r.said('most_picks')}, by Peirce’s"
                f" geometry.{beat}"
            )
            + (
                " More than nine tenths is hard to beat on a small loom."
                if share and share > 90
                else ""
            )
        )
    elif r.given["weave"] != "plain":
        said.append(
            "When a cloth jams is known here for plain weave alone; for this weave the closest sett"
            " is the guide."
        )
    floats = row["longest_float"]
    if isinstance(floats, float) and floats > 1:
        said.append(
            f"Its longest float is {floats:.0f} threads, {_float(r, floats)} on the cloth at this"
            " sett."
        )
    elif floats == "":
        said.append(
            f"{row['label']}: {row['note'][0].lower()}{row['note'][1:]}. Count its floats in the"
            " draw-down."
        )
    if r.kept["ways"][0].heddles == 2:
        said.append(
            "Two heddles stand one behind the other and double the sett: each slot of one carries"
            " ends that the other’s holes lift."
        )
    if len(r.kept["ways"][0].order) > 1:
        said.append(
            "A denting order that is not even leaves fine lines along the cloth; most close in the"
            " wash."
        )
    said.append(
        "The shares for a use are from memory and differ from hand to hand. Weave a sample at this"
        " sett and wash it before a whole warp."
    )
    return said


def _float(r, floats):
    space = floats / r.value("sett")
    return (
        f"{r.number(10 * space, 0)} mm"
        if r.settings.system != "us"
        else f"{r.number(space / 2.54, 2)} in"
    )


def ways_table(r):
    """What is at hand and how near it comes."""
    rows = []
    for way in r.kept["ways"][:6]:
        share = 100 * way.sett / r.value("closest")
        rows.append(
            (
                way.label(),
                r.amount(way.sett, PER_LENGTH, "per cm", 3).partition("\u00a0")[0],
                r.amount(way.sett, PER_LENGTH, "per in", 3).partition("\u00a0")[0],
                f"{r.number(share)} %",
                _use_of(share),
            )
        )
    return Table(
        "At hand, nearest first",
        ("Threading", "Ends per cm", "Per in", "Of the closest", "Which is usual for"),
        tuple(rows),
        "Shares for a use: from memory, unverified.",
    )


def _use_of(share):
    """The use that a share is usual for, or between which two it lies."""
    if share > 100:
        return "closer than a square cloth can be"
    ordered = sorted(
        (use for use in USES.values() if use["key"] != "weft-faced"), key=lambda use: use["low"]
    )
    for use in ordered:
        if use["low"] <= share <= use["high"]:
            return use["label"].lower()
    below = [use for use in ordered if use["high"] < share]
    above = [use for use in ordered if use["low"] > share]
    if not below:
        return (
            USES["weft-faced"]["label"].lower()
            if share <= USES["weft-faced"]["high"]
            else f"more open than {above[0]['label'].lower()}"
        )
    return (
        f"between {below[-1]['label'].lower()} and {above[0]['label'].lower()}"
        if above
        else below[-1]["label"].lower()
    )


def closest_table(r):
    """The closest sett in other weaves, and by Brierley for cotton."""
    rows = []
    for key in ("plain", "twill-2-1", "twill-2-2", "twill-3-1", "basket-2-2", "satin-5"):
        row = WEAVES[key]
        mine = maximum_sett(PER_INCH.from_base(r.value("diameters")), row["ends"], row["crossings"])
        by_power = (
            brierley_maximum(
                r.kept["cotton"], average_float(row["ends"], row["crossings"]), row["exponent"]
            )
            if r.kept["cotton"]
            else None
        )
        rows.append(
            (
                row["label"],
                r.number(mine, 1),
                r.number(mine / 2.54, 1),
                r.number(by_power, 1) if by_power else "–",
                r.number(sett_in_another_weave(1.0, 2, 2, row["ends"], row["crossings"]), 2),
            )
        )
    return Table(
        "The closest sett in other weaves",
        ("Weave", "Per in", "Per cm", "Brierley, per in", "Times plain weave"),
        tuple(rows),
        "Brierley’s constant here is that of cotton; his power of the float is from memory for"
        " basket and satin.",
    )


def picture(r):
    sign = r.units("sett")[0].sign
    diameter, row = 1 / r.value("diameters"), WEAVES[r.given["weave"]]
    rows = [
        ("touching: " + r.text("diameters", sign), diameter, 0),
        (f"closest in this weave: {r.text('closest', sign)}", 1 / r.value("closest"), 0),
        (f"as set: {r.text('sett', sign)}", 1 / r.value("sett"), 1 if row["key"] == "plain" else 0),
    ]
    return ends_across(
        "Ends cut across, to one scale",
        diameter,
        rows,
        "Rows of ends cut across: " + "; ".join(words for words, _, _ in rows) + ".",
    )


GOING_BY = {"by": (ASHENHURST_K, PEIRCE)}
COUNT_UNITS = ("m/100 g", "yd/lb", "yd/100 g", "tex", "Nm", "Ne", "Nw", "run", "lea", "yd/oz")

CARD = Card(
    id="sett",
    chapter="weave",
    place=10,
    tall_sheet=True,
    question="How closely do I set this yarn, and on which heddle?",
    inputs=(
        Input(
            CHOICE,
            "Thickness from",
            default=ASHENHURST_K,
            options=(
                Option(ASHENHURST_K, "Length and weight, by the kind of yarn (Ashenhurst)"),
                Option(PEIRCE, "Length and weight, cotton (Peirce)"),
                Option(PACKED, "A close-packed wrap"),
            ),
            refused={
                word: RELAXED
                for word in (
                    "relaxed",
                    "hand",
                    "hand wrap",
                    "relaxed wrap",
                    "relaxed hand wrap",
                    "ruler",
                    "wraps",
                    "wpi",
                    "wraps per inch",
                )
            },
            name="by",
        ),
        Input(
            LINEAR_DENSITY,
            "Count of the yarn",
            default="170 m/100 g",
            allowed=("0.5 tex", "50000 tex"),
            usual=("15 tex", "2000 tex"),
            rough="3 %",
            units=COUNT_UNITS,
            unit="tex",
            when=GOING_BY,
            measure="From its label or a weighed length, never from a hand wrap.",
            name="count",
        ),
        Input(
            CHOICE,
            "Kind of yarn",
            default="cotton",
            options=tuple(Option(row["name"], row["label"]) for row in ashenhurst_constants().rows),
            when={"by": (ASHENHURST_K,)},
            name="kind",
        ),
        Input(
            PER_LENGTH,
            "Turns pushed together",
            default="25 per in",
            allowed=("1 per in", "300 per in"),
            usual=("4 per in", "80 per in"),
            rough="1 per in",
            units=("per in", "per cm"),
            unit="per in",
            when={"by": (PACKED,)},
            measure=(
                "Around a smooth rod, pushed close until no more go in. A relaxed wrap is no use"
                " here."
            ),
            name="wraps",
        ),
        Input(
            LINEAR_DENSITY,
            "Its count, to test the wraps",
            default="170 m/100 g",
            allowed=("0.5 tex", "50000 tex"),
            usual=("15 tex", "2000 tex"),
            optional=True,
            units=COUNT_UNITS,
            unit="tex",
            when={"by": (PACKED,)},
            measure="Blank if it is not known; then a loose wrap cannot be told from a close one.",
            name="known_count",
        ),
        Input(
            CHOICE,
            "Weave",
            default="plain",
            options=tuple(Option(key, row["label"]) for key, row in WEAVES.items()),
            name="weave",
        ),
        Input(
            CHOICE,
            "For",
            default="cloth",
            options=tuple(Option(key, row["label"]) for key, row in USES.items()),
            name="use",
        ),
        Input(
            PER_LENGTH,
            "Picks, as you beat",
            default="5 per cm",
            allowed=("0.2 per cm", "60 per cm"),
            usual=("1 per cm", "30 per cm"),
            rough="0.2 per cm",
            units=("per cm", "per in", "per 10 cm"),
            unit="per in",
            optional=True,
            measure="On the loom, in the same yarn. Blank for as many as ends.",
            name="picks",
        ),
        Input(
            CHOICE,
            "Set in",
            default=RIGID,
            options=(Option(RIGID, "A rigid heddle"), Option(REED, "A reed")),
            name="on",
        ),
        Input(
            CHOICE,
            "At hand",
            default=METRIC,
            options=(
                Option(METRIC, "The usual metric ones"),
                Option(INCH, "The usual inch ones"),
                Option(OWN, "My own"),
            ),
            name="made",
        ),
        Rows(
            row_of(
                (
                    Input(
                        PER_LENGTH,
                        "Dents",
                        default="40 per 10 cm",
                        allowed=("1 per in", "60 per in"),
                        usual=("2 per in", "40 per in"),
                        units=("per 10 cm", "per in"),
                        unit="per in",
                        name="dents",
                    ),
                )
            ),
            "My own",
            "heddle",
            least=1,
            most=10,
            when={"made": (OWN,)},
            measure="Holes and slots together, or dents, as printed on it.",
            default=({"dents": "30 per 10 cm"}, {"dents": "40 per 10 cm"}),
            name="own",
        ),
    ),
    results=(
        Result(
            PER_LENGTH,
            "Working sett",
            units=("per cm", "per in"),
            finest=(0.1, 0.1),
            name="working",
        ),
        Result(TEXT, "Nearest at hand", name="threading"),
        Result(
            PER_LENGTH,
            "Ends that it gives",
            units=("per cm", "per in"),
            finest=(0.01, 0.1),
            name="sett",
        ),
        Result(
            PER_LENGTH,
            "Closest sett",
            units=("per cm", "per in"),
            finest=(0.1, 0.1),
            rounding="down",
            name="closest",
        ),
        Result(PERCENT, "Of the closest", finest=(1,), name="closeness"),
        Result(
            PER_LENGTH,
            "Diameters side by side",
            units=("per cm", "per in"),
            finest=(0.1, 0.1),
            name="diameters",
        ),
        Result(NUMBER, "Picks for each end", finest=(0.01,), name="balance"),
        Result(PERCENT, "Covered by thread", finest=(1,), name="cover"),
        Result(
            PER_LENGTH,
            "Picks when it jams",
            units=("per cm", "per in"),
            finest=(0.1, 0.1),
            rounding="down",
            name="most_picks",
        ),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(ways_table, closest_table),
    basis=Basis(
        MODEL,
        "Closest sett = diameters × ends ÷ (ends + crossings) of a repeat (Ashenhurst), for the"
        " same yarn both ways; the share of it for a use is a trade rule. Cover and jamming after"
        " Peirce, for round cotton yarn.",
    ),
    sources=(
        ASHENHURST,
        TRADE_PAGES_SETT,
        PEIRCE_1937,
        WOVEN_CALCULATION_NOTES,
        GATE_TEXTILE_2006,
        TAYLOR_1909,
        TRADE_PAGE_SPINNERS,
        TRADE_PAGES_REEDS,
        TRADE_MEMORY,
        COMMON_PRACTICE,
        ARITHMETIC,
    ),
    cautions=(
        Caution(
            "Never from a hand wrap.",
            "A relaxed hand wrap counts about half the diameters that a sett is reckoned from: the"
            " cloth would be half as close as it should be.",
        ),
    ),
    carry=(
        Carry("warp-plan", "Plan the warp at this sett", {"sett": "sett", "picks": "picks"}),
        Carry("yarn-diameter", "How thick is the yarn?", {"count": "count"}),
    ),
)
