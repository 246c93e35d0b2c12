"""What hazard statements a bottle needs, from what is in it."""

from ...core.answer import Table
from ...core.card import (
    CHOICE,
    STANDARD,
    TEXT,
    Basis,
    Card,
    Caution,
    Input,
    Option,
    Result,
    Rows,
    row_of,
)
from ...core.problem import Refused
from ...core.table import STATUS_WORDS, read_table
from ...core.units import NUMBER, PERCENT
from ...sources import (
    CLP_3_2_3,
    CLP_ACUTE,
    CLP_ANNEXES,
    CLP_MEMORY,
    CLP_SENSITIZERS,
    ECHA_FORMIC,
    ECHA_NOTIFIED,
    EURO_INDUSTRY_NAOH,
    GHS_MEMORY,
    GISCHEM_AMMONIA,
)
from ..label import (
    ASKED,
    RELEVANT,
    acute_estimate,
    classes,
    listed,
    share_of_limit,
    signal_word,
    to_ask,
)
from ..limits import published
from ..pictures.bars import shares_of_limit

SHOWN = (
    ("burns", "corr", "Severe burns"),
    ("skin", "irrit", "Skin irritation"),
    ("damage", "dam", "Eye damage"),
    ("eyes", "eye", "Eye irritation"),
)
SUBSTANCES = tuple(
    Option(row["key"], row["label"]) for row in read_table("safe", "label-limits").rows
)
NO_LIMITS = "0"
ROUTES = (("oral", "Swallowed", "mg/kg"), ("vapor", "Vapor inhaled", "mg/L"))


def answer(w, contents, ph):
    total = sum(row.strength for row in contents)
    if total > 100.0001:
        raise Refused(
            f"Strengths: together they are {total:.4g} %; a bottle holds no more than 100 %.",
            f"contents.{len(contents)}.strength",
        )
    mixed: dict[str, float] = {}
    for row in contents:
        mixed[row.what] = mixed.get(row.what, 0.0) + row.strength
    found = {}
    for name, kind, label in SHOWN:
        parts = []
        for place, row in enumerate(contents, 1):
            if read_table("safe", "label-limits").row("key", row.what)[kind] == "":
                continue
            limit = f"{name}_limit_{place}"
            w.looked_up(
                limit,
                "safe",
                "label-limits",
                "key",
                row.what,
                kind,
                PERCENT,
                label=f"{label}: limit for {place}",
            )
            parts.append(f"contents[{place}].strength / {limit}")
        found[name] = w.step(
            name,
            " + ".join(parts) or NO_LIMITS,
            share_of_limit(mixed, kind),
            NUMBER,
            label=f"{label}: sum of shares of limits",
        )
    for route, label, unit in ROUTES:
        parts = []
        for place, row in enumerate(contents, 1):
            if (
                mixed[row.what] < RELEVANT
                or read_table("safe", "label-limits").row("key", row.what)[route] == ""
            ):
                continue
            w.looked_up(
                f"{route}_{place}",
                "safe",
                "label-limits",
                "key",
                row.what,
                route,
                NUMBER,
                label=f"{label}: acute toxicity estimate of {place}, {unit}",
            )
            parts.append(f"contents[{place}].strength / {route}_{place}")
        if parts:
            w.step(
                f"{route}_estimate",
                f"100 / ({' + '.join(parts)})",
                acute_estimate(mixed, route),
                NUMBER,
                label=f"{label}: acute toxicity estimate of the mixture, {unit}",
            )
    sure, ask = classes(mixed, 7.0 if ph is None else ph), to_ask(mixed)
    ask = tuple(code for code in ask if code not in sure)
    missing = [
        row["label"]
        for key in mixed
        if (row := read_table("safe", "label-limits").row("key", key))["status"] == "unknown"
    ]
    return found | {
        "signal": signal_word((*sure, *ask)),
        "codes": ", ".join(sure) or "none by these limits",
        "class": ", ".join(dict.fromkeys(sure.values())) or "none by these limits",
        "ask": ", ".join(ask) or "nothing beyond them",
        "precautions": ", ".join(_precautions((*sure, *ask))) or "none by these limits",
        "limit": "; ".join(_limit_words(key) for key in mixed),
        "sure": sure,
        "asked": ask,
        "missing": missing,
    }


def _precautions(codes):
    words = [
        code
        for statement in codes
        for code in read_table("safe", "statements").row("code", statement)["precautions"].split()
    ]
    return dict.fromkeys(words)


def _limit_words(key):
    """One substance's limits with body and date; what has none counts from the general cut-off."""
    row = read_table("safe", "label-limits").row("key", key)
    known = [
        f"{words} {row[kind]:g} %"
        for kind, words in (("corr", "burns"), ("irrit", "skin"), ("eye", "eyes"))
        if row[kind] != ""
    ]
    others = [
        f"{code} {limit:g} %"
        for code, limit in listed(key)
        if limit is not None and code != "EUH208"
    ]  # EUH208 is from memory: see the notes
    known = known or others
    said = published(
        (
            f"{row['label']} from: {', '.join(known)}"
            if known
            else f"{row['label']}: counts from {ASKED:g} %"
        ),
        row["source"] or "clp-annexes",
    )
    if row["also_source"]:
        acute = (
            [f"acute toxicity {row['oral']:g} mg/kg swallowed, {row['vapor']:g} mg/L inhaled"]
            if row["oral"] != ""
            else []
        )
        said += "; " + published(", ".join(acute + others), row["also_source"])
    return said


def say(r):
    signal, sure, asked = r.value("signal"), r.kept["sure"], r.kept["asked"]
    if not sure and not asked:
        missing = (
            f" No entry was found for {', '.join(r.kept['missing'])}: the data sheet decides."
            if r.kept["missing"]
            else ""
        )
        return (
            "By these limits no hazard statement is called for.",
            f"What is not classified can still harm.{missing}",
        )
    first = (
        f"{'No signal word' if signal == 'none' else signal}: {', '.join(sure)}."
        if sure
        else f"{signal}, until the data sheet says otherwise: {', '.join(asked)}."
    )
    rest = (
        f"The data sheet must say on {', '.join(asked)}; until it does, act as if they hold."
        if asked and sure
        else ""
    )
    return first, rest or "In words below; take the wording from the data sheet."


def notes(r):
    said = [
        "Not legal advice: what you sell or hand on must be labeled by the law of the place, from"
        " the supplier’s data sheet."
    ]
    if any(row.what == "dye-unknown" for row in r.given["contents"]):
        said.insert(
            0,
            "A dye whose statements are not known counts as a sensitizer of category 1A, from"
            f" {ASKED:g} %: H317 and H334 until its data sheet says otherwise. Categories 1 and 1B"
            " count from 1 %.",
        )
    if r.kept["missing"]:
        said.insert(
            0,
            f"No published classification was found for {', '.join(r.kept['missing'])}: none is"
            " made up here. Ask for the data sheet.",
        )
    if "EUH208" in r.kept["sure"]:
        said.append(
            "Below its limit a sensitizer is still named on the label, from a tenth of it: EUH208"
            f" ({STATUS_WORDS['memory']})."
        )
    memory = [
        row.what
        for row in r.given["contents"]
        if read_table("safe", "label-limits").row("key", row.what)["status"] == "memory"
    ]
    if memory:
        said.append(f"Limits for {', '.join(dict.fromkeys(memory))} are {STATUS_WORDS['memory']}.")
    return said


def statements(r):
    rows = []
    for code in (*r.kept["sure"], *r.kept["asked"]):
        row = read_table("safe", "statements").row("code", code)
        rows.append((code, row["text"], r.kept["sure"].get(code, "ask the data sheet")))
    rows += [
        (code, read_table("safe", "statements").row("code", code)["text"], "what to do")
        for code in _precautions((*r.kept["sure"], *r.kept["asked"]))
    ]
    return (
        Table(
            "For the label",
            ("Code", "In words", "Why"),
            tuple(rows),
            "Wording from memory, shortened: the law’s own stands in the data sheet. Code and text"
            " only; no pictograms.",
            ("ghs-memory",),
        )
        if rows
        else None
    )


def picture(r):
    return shares_of_limit(
        "How near each limit",
        [(label, r.value(name), r.low(name), r.high(name)) for name, _, label in SHOWN],
        "the class applies from here",
    )


CARD = Card(
    id="hazard-label",
    chapter="safe",
    place=30,
    question="What hazards go on the bottle?",
    inputs=(
        Rows(
            row_of(
                (
                    Input(CHOICE, "Substance", default="acetic", options=SUBSTANCES, name="what"),
                    Input(
                        PERCENT,
                        "Strength",
                        default="10",
                        allowed=("0.01", "100"),
                        usual=("0.5", "100"),
                        rough="",
                        strict=True,
                        measure="% by weight.",
                        name="strength",
                    ),
                )
            ),
            "In the bottle",
            "substance",
            least=1,
            most=6,
            measure="What is not listed is water, or not classified by its own data sheet.",
            default=({"what": "dye-unknown", "strength": "1"}, {"what": "acetic", "strength": "5"}),
            name="contents",
        ),
        Input(
            NUMBER,
            "pH, if measured",
            default="",
            allowed=("0", "14"),
            usual=("2", "12"),
            optional=True,
            strict=True,
            measure=(
                "2 and less, 11.5 and more count as burning the skin, unless data say otherwise."
            ),
            name="ph",
        ),
    ),
    results=(
        Result(TEXT, "Signal word", name="signal"),
        Result(TEXT, "Hazard statements", name="codes"),
        Result(TEXT, "The data sheet decides on", name="ask"),
        Result(TEXT, "Class", name="class"),
        Result(TEXT, "Precautionary statements", name="precautions"),
        Result(
            NUMBER, "Severe burns, share of the limit", finest=(0.01,), rounding="up", name="burns"
        ),
        Result(
            NUMBER,
            "Skin irritation, share of the limit",
            finest=(0.01,),
            rounding="up",
            name="skin",
        ),
        Result(
            NUMBER, "Eye damage, share of the limit", finest=(0.01,), rounding="up", name="damage"
        ),
        Result(
            NUMBER, "Eye irritation, share of the limit", finest=(0.01,), rounding="up", name="eyes"
        ),
        Result(TEXT, "Published limit", name="limit"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(statements,),
    basis=Basis(
        STANDARD,
        "Strength over limit, added up over the substances: from 1 the class applies; acute"
        " toxicity by the mixture’s estimate. What has no limit here is left to the data sheet, and"
        " until then counts.",
    ),
    sources=(
        CLP_ANNEXES,
        CLP_MEMORY,
        CLP_3_2_3,
        CLP_ACUTE,
        CLP_SENSITIZERS,
        EURO_INDUSTRY_NAOH,
        ECHA_NOTIFIED,
        ECHA_FORMIC,
        GISCHEM_AMMONIA,
        GHS_MEMORY,
    ),
    cautions=(
        Caution(
            "The supplier’s data sheet comes before this card.",
            "Name, strength, date and hazards on every bottle; never a drinks bottle; out of reach"
            " of children and pets.",
        ),
    ),
    handles=("acid", "alkali", "powder"),
)
