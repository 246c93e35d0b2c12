"""The fiber line of a label, in the order and words the law of the place asks: largest first, whole percents that make 100."""

from ...core.answer import Table
from ...core.card import (
    CHOICE,
    STANDARD,
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
from ...core.shares import whole_shares
from ...core.table import read_table
from ...core.units import COUNT, MASS, PERCENT
from ...sources import (
    CFR_16_303,
    CFR_16_303_3,
    COMMON_PRACTICE,
    EU_1007_2011,
    EU_1007_MEMORY,
    TEXTILE_LAW_OLDER,
    US_LABEL_MEMORY,
    WOOL_ACT,
)
from ..fiber_label import (
    EU,
    OFF_BY,
    OTHERS_TOGETHER,
    POINTS,
    US,
    tolerance,
    unnamed,
    whole_percents,
)
from ..pictures.fiber_bars import fiber_bars

PERCENTS, GRAMS = "percent", "weight"
UNKNOWN, OTHER, NO, YES = "unknown", "other", "no", "yes"
NAMES = {row["key"]: row for row in read_table("sell", "fiber-names").rows}
WOOLS = frozenset(key for key, row in NAMES.items() if row["wool"])


def answer(w, sold, by, fibers, blend, loading, maker, spun):
    rows, column = (blend, "blend") if by == GRAMS else (fibers, "fibers")
    if by == GRAMS:
        amounts = [row.mass for row in blend]
        w.step("total", "sum(blend.mass)", sum(amounts), MASS, label="All fibers")
    else:
        amounts = whole_shares(w, fibers, "fibers", "share", "fiber", OFF_BY)
    shares = {}
    for row, amount in zip(rows, amounts):
        shares[row.fiber] = shares.get(row.fiber, 0.0) + amount
    total = sum(shares.values())
    if len(shares) > 1 and min(shares.values()) / total < 1e-4:
        raise Refused(
            "Fibers: one of them is less than 1 in 10,000; leave it out.", f"{column}.1.fiber"
        )
    shares = {fiber: 100 * amount / total for fiber, amount in shares.items()}
    most = max(shares, key=shares.get)
    picked = [_name(number, row, column) for number, row in enumerate(rows, 1) if row.fiber == most]
    text = " + ".join(picked)
    w.step(
        "largest",
        f"100 * ({text}) / {'total' if by == GRAMS else f'{total:.12g}'}",
        shares[most],
        PERCENT,
        label=f"Largest: {NAMES[most]['label'].lower()}",
    )
    functional = frozenset(row.fiber for row in rows if row.function == YES)
    kept = functional | {UNKNOWN} | (WOOLS if sold == US else frozenset())
    small = unnamed(shares, sold, kept)
    joined = small if sold == US else frozenset()
    lines = _lines(shares, joined)
    allowed = len(shares) > 1 and not (
        sold == US and set(shares) & WOOLS
    )  # the Wool Act has no three points
    if allowed:
        stated = dict(lines)[most]
        low, high = tolerance(stated, len(shares))
        w.step(
            "test_low",
            f"max({stated} - {POINTS:g}, 0)",
            low,
            PERCENT,
            label="A test may find, of the largest",
        )
        w.step("test_high", f"min({stated} + {POINTS:g}, 100)", high, PERCENT, label="and up to")
    found = {
        "largest": shares[most],
        "named": len([key for key, _ in lines if key not in (OTHER, UNKNOWN)]),
        "content": (
            _written(sold, lines, len(joined))
            + (f", up to {loading:g}% weight that is no fiber" if loading else "")
        ),
        "maker_line": _maker(sold, maker),
        "origin": _origin(sold, spun),
    }
    if allowed:
        found |= {"test_low": low, "test_high": high}
    if small and sold == US:
        found["other"] = w.step(
            "other",
            " + ".join(f"{shares[fiber]:.12g}" for fiber in small),
            sum(shares[fiber] for fiber in small),
            PERCENT,
            label="Together, under 5 % each",
        )
    return found | {
        "shares": shares,
        "lines": lines,
        "small": small,
        "most": most,
        "allowed": allowed,
    }


def _name(number, row, column):
    """How a formula calls the amount of one row: the one left blank is the rest."""
    if column == "blend":
        return f"blend[{number}].mass"
    return "rest" if row.share is None else f"fibers[{number}].share"


def _lines(shares, small):
    """(fiber, whole percent) in the order of a label; "other" and the unknown stand last."""
    joined = {fiber: share for fiber, share in shares.items() if fiber not in small}
    if small:
        joined[OTHER] = sum(shares[fiber] for fiber in small)
    whole = whole_percents(joined)
    last = [key for key in (UNKNOWN, OTHER) if key in whole]
    return [(key, percent) for key, percent in whole.items() if key not in last] + [
        (key, whole[key]) for key in last
    ]


def _written(sold, lines, others):
    percents = dict(lines)
    if (
        sold == EU
        and UNKNOWN in percents
        and percents[UNKNOWN] > OTHERS_TOGETHER
        or percents.get(UNKNOWN) == 100
    ):
        return (
            "Made of undetermined fiber content"
            if sold == US
            else "Unspecified textile composition"
        )
    said = []
    for key, percent in lines:
        words = (
            ("other fiber" if others == 1 else "other fibers")
            if key == OTHER
            else "other fibers"
            if key == UNKNOWN and sold == EU
            else NAMES[key][sold]
        )
        said.append(
            f"{percent}{'%' if sold == US else ' %'} {words}"
            if percent
            else f"under 1{'%' if sold == US else ' %'} {words}"
        )
    return ", ".join(said)


def _maker(sold, maker):
    return (maker or "").strip() or (
        "(name of maker or dealer, or RN)"
        if sold == US
        else "(name and address of the maker or importer)"
    )


def _origin(sold, spun):
    country = (spun or "").strip() or "(country)"
    return f"Made in {country}" if sold == US else "Not asked by the textile rule"


def say(r):
    content, sold = r.value("content"), r.given["sold"]
    first = f"{content}. {r.value('maker_line')}." + (
        f" {r.value('origin')}." if sold == US else ""
    )
    if r.has("test_low"):
        return (
            first,
            (
                f"A test may find {r.value('test_low'):g} to {r.value('test_high'):g} %"
                f" {NAMES[r.kept['most']][sold]}: three points of the fiber weight either way."
            ),
        )
    if UNKNOWN in r.kept["shares"]:
        return first, "What is not known is said, not guessed."
    if len(r.kept["shares"]) > 1:
        return (
            first,
            (
                "The Wool Act gives no points either way: a test must find it so, save what due"
                " care cannot help."
            ),
        )
    return first, "One fiber alone: nothing else may be in it but strays that cannot be helped."


def notes(r):
    said, shares, sold = [], r.kept["shares"], r.given["sold"]
    moved = [
        f"{NAMES[key]['label'].lower()} {r.number(shares[key], 1)} to {percent}"
        for key, percent in r.kept["lines"]
        if key in shares and abs(shares[key] - percent) > 0.05
    ]
    if moved:
        said.append(
            "Rounded so that the label makes 100: "
            + "; ".join(moved)
            + ". Tenths may be printed as well."
        )
    if sold == US:
        if r.has("other"):
            said.append(
                "Under 5 % and without a function:"
                f" {', '.join(NAMES[key]['label'].lower() for key in sorted(r.kept['small']))}"
                " become “other fiber”. Wool is named however little there is."
            )
        if set(shares) & WOOLS:
            said.append(
                "The Wool Act holds for it: wool and recycled wool are always named. Other fiber"
                " blends have three points of the fiber weight either way; wool has not."
            )
        said.append(
            "Yarn is taken to come from where it was spun; dyeing does not change that (from"
            " memory, unverified). A registered number (RN) may stand for the name, for US firms."
        )
    else:
        if r.kept["small"]:
            said.append(
                f"{_list(r, sold)} may go as “other fibers” where the share is hard to state when"
                " it is made: one of 5 % or less, several of 15 % or less together (from memory,"
                " unverified). You know it, so it is named."
            )
        said.append(
            "In the language of the place where it is sold. “Contains non-textile parts of animal"
            " origin” is added where that is so (from memory, unverified)."
        )
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


def _list(r, sold):
    names = ", ".join(NAMES[key][sold] for key in sorted(r.kept["small"]))
    return names[0].upper() + names[1:]


def _may_find(r, percent):
    return tolerance(percent) if r.kept["allowed"] else (percent, percent)


def table(r):
    shares, rows = r.kept["shares"], []
    for key, percent in r.kept["lines"]:
        exact = sum(shares[fiber] for fiber in r.kept["small"]) if key == OTHER else shares[key]
        low, high = _may_find(r, percent)
        rows.append(
            (
                "Other" if key == OTHER else NAMES[key]["label"],
                f"{r.number(exact, 2)} %",
                f"{percent} %",
                f"{low:g} to {high:g} %" if high > low else "no tolerance",
            )
        )
    return Table(
        "Each fiber",
        ("Fiber", "Exactly", "On the label", "A test may find"),
        tuple(rows),
        "By weight as sold, agreed moisture included.",
    )


def picture(r):
    sold, rows = r.given["sold"], []
    for key, percent in r.kept["lines"]:
        words = "other fibers" if key == OTHER else NAMES[key][sold]
        rows.append((words, percent, *_may_find(r, percent)))
    return fiber_bars(rows)


FIBER = Input(
    CHOICE,
    "Fiber",
    default="silk",
    options=tuple(Option(key, row["label"]) for key, row in NAMES.items()),
    name="fiber",
)
FUNCTION = Input(
    CHOICE,
    "Under 5 %, but it does something",
    default=NO,
    options=(Option(NO, "No"), Option(YES, "Yes: strength, stretch")),
    name="function",
)

CARD = Card(
    id="fiber-content",
    chapter="sell",
    place=90,
    question="What do I write for its fiber content?",
    inputs=(
        Input(
            CHOICE,
            "It is sold in",
            default=US,
            options=(Option(US, "The US"), Option(EU, "The EU or the UK")),
            name="sold",
        ),
        Input(
            CHOICE,
            "You know",
            default=PERCENTS,
            options=(
                Option(PERCENTS, "Percent, from the mill"),
                Option(GRAMS, "Grams of each, blended by you"),
            ),
            name="by",
        ),
        Rows(
            row_of(
                (
                    FIBER,
                    Input(
                        PERCENT,
                        "Share",
                        default="",
                        allowed=("0.1 %", "100 %"),
                        optional=True,
                        name="share",
                    ),
                    FUNCTION,
                )
            ),
            "Fibers",
            "fiber",
            record="base.fibers",
            least=1,
            most=8,
            when={"by": (PERCENTS,)},
            measure=(
                "Together 100 %; one left blank is the rest. The same fiber may stand twice: it is"
                " added up."
            ),
            default=({"fiber": "wool", "share": "75 %"}, {"fiber": "nylon", "share": ""}),
            name="fibers",
        ),
        Rows(
            row_of(
                (
                    FIBER,
                    Input(
                        MASS,
                        "Weight",
                        default="20 g",
                        allowed=("0.01 g", "100 kg"),
                        units=("g", "oz", "kg"),
                        name="mass",
                    ),
                    FUNCTION,
                )
            ),
            "Fibers, weighed",
            "fiber",
            least=1,
            most=8,
            when={"by": (GRAMS,)},
            measure=(
                "Of a yarn that is a blend itself, give each of its fibers: 50 g of 75/25 are 37.5"
                " and 12.5 g."
            ),
            default=(
                {"fiber": "wool", "mass": "37.5 g"},
                {"fiber": "nylon", "mass": "12.5 g"},
                {"fiber": "wool", "mass": "50 g"},
            ),
            name="blend",
        ),
        Input(
            PERCENT,
            "Weight that is no fiber",
            default="0 %",
            allowed=("0 %", "50 %"),
            usual=("0 %", "20 %"),
            when={"sold": (US,)},
            measure=(
                "Weighting or filling, at most; 0 for nearly all yarn. The Wool Act wants it on the"
                " label."
            ),
            name="loading",
        ),
        Input(
            TEXT,
            "Who answers for it",
            default="Brackwend Dyehouse",
            longest=50,
            optional=True,
            name="maker",
        ),
        Input(
            TEXT,
            "Spun in (country)",
            default="",
            longest=30,
            optional=True,
            measure="From the mill’s papers. Blank leaves a place to write it.",
            name="spun",
        ),
    ),
    results=(
        Result(TEXT, "Fiber line", name="content"),
        Result(TEXT, "Maker", name="maker_line"),
        Result(TEXT, "Origin line", name="origin"),
        Result(PERCENT, "Largest share, exactly", finest=(0.01,), name="largest"),
        Result(COUNT, "Fibers named", name="named"),
        Result(PERCENT, "Other fiber, exactly", finest=(0.01,), name="other"),
        Result(PERCENT, "A test may find, of the largest", finest=(0.1,), name="test_low"),
        Result(PERCENT, "and up to", finest=(0.1,), name="test_high"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(table,),
    basis=Basis(
        STANDARD,
        "US: 16 CFR 303 and the Wool Act, sections read. EU and UK: Regulation 1007/2011, scope"
        " read, order and tolerance as quoted, small shares from memory. Names from memory.",
    ),
    sources=(
        CFR_16_303,
        CFR_16_303_3,
        WOOL_ACT,
        US_LABEL_MEMORY,
        EU_1007_2011,
        EU_1007_MEMORY,
        TEXTILE_LAW_OLDER,
        COMMON_PRACTICE,
    ),
    cautions=(
        Caution(
            "Not legal advice.",
            "Checked on 26 November 2026 for the US, the EU and the UK, some of it from memory. The"
            " law of the place of sale decides, and a label is a promise: never print a guess.",
        ),
    ),
    carry=(
        Carry("label", "Put it on the label", {"fiber": "content", "maker": "maker"}),
        Carry("care-label", "What goes on the care label?", {}),
        Carry("net-contents", "Is there as much in it as it says?", {}),
    ),
)
