"""Care words for a label: what the most delicate of fibers, dye, finish and what was tried allows."""

from ...core.answer import Table
from ...core.card import BENCH_RULE, CHOICE, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.shares import whole_shares
from ...core.table import STATUS_WORDS, read_table
from ...core.units import COUNT, NUMBER, PERCENT
from ...sources import COMMON_PRACTICE, DYEING_TEXTBOOK, ISO_3758
from ..care import TREATMENTS, care_words, strictest

TABLES = {"fiber": "care-fibers", "dye": "care-dyes", "finish": "care-finishes", "proof": "care-proofs"}
LABELS = {"wash": "Washing", "bleach": "Bleaching", "tumble": "Tumble drying", "dry": "Drying", "iron": "Ironing", "clean": "Dry cleaning"}
LABEL_OFF_BY = 0.5  # %: mills round each share to a whole percent
TRIED_DRYER, NO, YES = "tumble", "no", "yes"
APART = {"unknown": "Wash separately.", "stains": "Wash separately.", "slight": "Wash with like colors.", "undyed": ""}


def answer(w, fibers, dye, finish, proof, times, tumbled, stains):
    shares = whole_shares(w, fibers, "fibers", "percent", "fiber", LABEL_OFF_BY)
    parts = [(f"fiber_{n}", "fiber", row.fiber) for n, row in enumerate(fibers, 1)] + [("dye", "dye", dye), ("finish", "finish", finish), ("proof", "proof", proof)]
    levels, reasons = {}, {}
    for treatment in TREATMENTS:
        found = {}
        for name, table, key in parts:
            row = read_table("wash", TABLES[table]).row("key", key)
            if isinstance(row.get(treatment), float):
                step = f"{treatment}_{name}"
                found[step] = w.looked_up(step, "wash", TABLES[table], "key", key, treatment, NUMBER, label=f"{LABELS[treatment]}: level that “{row['label']}” allows")
        text, values = ", ".join(found), list(found.values())
        if treatment == TRIED_DRYER and tumbled == NO:
            text, values = f"{text}, 0", [*values, 0.0]
        levels[treatment] = w.step(f"{treatment}_level", f"min({text})" if len(values) > 1 else text, strictest(values), NUMBER, label=f"{LABELS[treatment]}: the gentlest of these")
        reasons[treatment] = _reasons(found, parts, levels[treatment], treatment, tumbled)
    spoken = [words for words in (*care_words(_shown(levels)), APART[stains]) if words]
    return {"label": " ".join(spoken), **{treatment: _word(treatment, levels[treatment]) for treatment in TREATMENTS}, "content": _content(fibers, shares), "reasons": reasons, "levels": levels}


def _shown(levels):
    """A dryer that is allowed makes the way of drying the owner's own choice; the label keeps both words otherwise."""
    return {name: level for name, level in levels.items() if not (name == "dry" and levels["tumble"] > 0)}


def _word(treatment, level):
    return read_table("wash", "care-words").row("key", f"{treatment} {level:g}")["words"].rstrip(".")


def _content(fibers, shares):
    ordered = sorted(zip(fibers, shares), key=lambda pair: -pair[1])
    return ", ".join(f"{share:g} % {_fiber(row.fiber)}" for row, share in ordered)


def _fiber(key):
    return read_table("wash", TABLES["fiber"]).row("key", key)["label"].lower()


def _reasons(found, parts, level, treatment, tumbled):
    """Which of the parts hold a treatment to its level."""
    said = [read_table("wash", TABLES[table]).row("key", key)["label"] for name, table, key in parts if found.get(f"{treatment}_{name}") == level]
    if treatment == TRIED_DRYER and tumbled == NO and level == 0:
        said.append("no sample was tumbled")
    return "; ".join(dict.fromkeys(said))


def say(r):
    return r.kept["label"], f"For {r.value('content')}. The gentlest of fiber, dye, finish and what was tried decides."


def _ill_fits(r):
    """What is known of this dye on those of the fibers that it is not made for."""
    dye = r.given["dye"].partition("-")[0]
    kinds = {read_table("dye", "fiber-kinds").row("fiber", row.fiber)["kind"] for row in r.given["fibers"]}
    return [row for row in read_table("dye", "dye-on-fiber").rows if row["kind"] in kinds and dye in row["dyes"].split()]


def notes(r):
    said = [f"{row['words']} ({STATUS_WORDS[row['status']]})." for row in _ill_fits(r)]
    if r.given["proof"] in ("none", "hand"):
        said.append("No machine on the label, since no sample went through one. Wash a sample, measure it before and after, and ask again.")
    if r.given["times"] == 1:
        said.append("One wash shows relaxing and the first loose dye. Felting and slow bleeding show later: wash the sample five times before you print labels.")
    if r.given["stains"] == "unknown":
        said.append("It was not tested for staining: so the label says to wash it separately.")
    if any(row.fiber == "superwash" for row in r.given["fibers"]):
        said.append("Superwash wool does not felt, it grows: dry it flat, never hung wet.")
    said.append("Where the piece is sold decides what a label must say: fiber names, order, language, whether symbols may be used and of whom they must be licensed.")
    return said


def table(r):
    rows = tuple((LABELS[treatment], r.value(treatment), r.kept["reasons"][treatment]) for treatment in TREATMENTS)
    return Table("What decides each line", ("Treatment", "Label", "Held there by"), rows, "In the order of the symbols of ISO 3758, as quoted by others.")


def _options(table):
    return tuple(Option(row["key"], row["label"]) for row in read_table("wash", TABLES[table]).rows)


WASHED = tuple(row["key"] for row in read_table("wash", TABLES["proof"]).rows if row["key"] != "none")

CARD = Card(
    id="care-label", chapter="wash", place=60,
    question="What goes on the care label?",
    inputs=(
        Rows("fibers", "Fibers", "fiber", record="base.fibers", least=1, most=8, measure="By weight; one left blank is the rest. A fiber you are not sure of: say so.",
             fields=(Input("fiber", CHOICE, "Fiber", default="wool", options=_options("fiber")), Input("percent", PERCENT, "Share", record="share", default="", allowed=("0.5 %", "100 %"), optional=True)),
             default=({"fiber": "superwash", "percent": "75 %"}, {"fiber": "nylon", "percent": ""})),
        Input("dye", CHOICE, "Dye", default="acid-milling", options=_options("dye")),
        Input("finish", CHOICE, "Finish or trim", default="none", options=_options("finish")),
        Input("proof", CHOICE, "A sample was washed, measured and held", default="mild30", options=_options("proof")),
        Input("times", COUNT, "How many times", default="1", allowed=("1", "100"), usual=("1", "20"), when={"proof": WASHED}),
        Input("tumbled", CHOICE, "A sample was tumble dried and held", default=NO, options=(Option(NO, "No"), Option(YES, "Yes"))),
        Input("stains", CHOICE, "White cloth washed with it", default="slight", options=(
            Option("unknown", "Was not tried"), Option("stains", "Was stained, grade 3-4 and below"), Option("slight", "Hardly stained, grade 4 and above"), Option("undyed", "It is undyed"))),
    ),
    results=(
        Result("content", "text", "Fiber"),
        *(Result(treatment, "text", LABELS[treatment]) for treatment in TREATMENTS),
    ),
    answer=answer, say=say, notes=notes, tables=(table,),
    basis=Basis(BENCH_RULE, "Each fiber, dye and finish allows a treatment up to a level (common practice); the lowest holds, and nothing is promised that no sample went through. "
                            "Words follow ISO 3758 as quoted by others."),
    sources=(COMMON_PRACTICE, DYEING_TEXTBOOK, ISO_3758),
    cautions=(Caution("A label is a promise.", "Test it. The law of the place of sale decides what a label must hold, not this card."),),
    carry=(Carry("fastness", "How well does the color hold?", {}), Carry("shrinkage", "How much does it shrink?", {})),
)
