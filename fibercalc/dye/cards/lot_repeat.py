"""A recipe nudged toward an old lot from two colors, and what difference is likely seen."""

from ...core.answer import Table
from ...core.card import CHOICE, COLOR, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.problem import OutOfRange, Refused
from ...core.table import read_table
from ...core.units import MASS, NUMBER, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE, KM_APPLICATION_NOTE, SHARMA_2005
from ..color.difference import between
from ..color.kubelka_munk import ERROR_OF_A_MIXTURE, ERROR_OF_ONE_DYE, palette
from ..color.match import color_after, gentlest_nudge
from ..color.seeing import corrected_by_card, half_width_between, likely_seen
from ..pots import skeins_for
from ..pictures.lots import lots_picture

SEEN = {row["how"]: row for row in read_table("dye", "color-seeing").rows}
SHORT = read_table("dye", "visible-differences").rows


def answer(w, old, new, seen, undyed, dyes, fiber, only_add, gray):
    if gray is not None:
        try:
            old, new = corrected_by_card(old, gray), corrected_by_card(new, gray)
        except OutOfRange as error:
            raise Refused(f"{error.reason[0].upper()}{error.reason[1:]}.", "gray") from None
    apart = between(old, new)

    def difference():
        return apart

    difference.__name__ = "ciede2000_of_the_two"
    w.solved("before", "ciede2000_of_the_two() - before", apart, NUMBER, label="Old lot to new lot, CIEDE2000", using=(difference,))
    w.error("before", half_width_between(seen))
    try:
        mixer = palette(undyed, [(row.sample, row.percent) for row in dyes])
        change = gentlest_nudge(mixer, [row.depth for row in dyes], old, new, only_add == "yes")
    except OutOfRange as error:
        raise Refused(f"Dyes: {error.reason or 'a sample must be darker than the undyed fiber'}.", "dyes.1.sample") from None

    def left():
        return between(color_after(mixer, new, change.changes), old)

    left.__name__ = "ciede2000_after_the_nudge"
    w.solved("after", "ciede2000_after_the_nudge() - after", change.after, NUMBER, label="Left of it once the changed dyes are mixed, CIEDE2000", using=(left,))
    w.error("after", (half_width_between(seen) ** 2 + (ERROR_OF_ONE_DYE if len(dyes) == 1 else ERROR_OF_A_MIXTURE) ** 2 / 4) ** 0.5)
    return {"before": apart, "after": change.after, "nudge": change, "seen_as": likely_seen(apart), "colors": (old, new)}


def say(r):
    words = r.value("seen_as")
    change = r.kept["nudge"]
    moves = [f"{row.name} {_signed(r, 100 * move / row.depth)}" for row, move in zip(r.given["dyes"], change.changes) if row.depth > 0 and abs(move) > 0.005 * row.depth]
    first = f"The difference is {words}."
    return first, (f"Next time change {', '.join(moves)}: the difference left is then {likely_seen(change.after)}." if moves else "No change of these dyes brings it closer.") + " It is a new lot either way."


def _signed(r, percent):
    return f"{'+' if percent > 0 else '−'}{abs(percent):.0f} %"


def notes(r):
    row = SEEN[r.given["seen"]]
    said = [f"The colors were seen so: {row['words']}. Between two such colors that leaves ± {row['between']:g}: a difference of {r.text('before')} may be {r.span('before')}."]
    if r.given["gray"] is not None:
        said.append("Both colors were corrected by the gray card in the photo: " + " and ".join(f"L* {each.lightness:.0f}, a* {each.a:.0f}, b* {each.b:.0f}" for each in r.kept["colors"]) + ".")
    if r.value("before") < row["between"]:
        said.append("What was seen is less than the way of seeing can tell: compare dry yarn side by side in daylight before you change anything.")
    if r.given["only_add"] == "yes":
        said.append("Only additions are counted, since this lot goes back into the pot: what is too dark cannot be made lighter.")
    said.append("Always label it as a new lot. Screens and phone cameras lie; a match is decided on dry yarn in daylight and under a lamp.")
    return said


def changes(r):
    change, fiber = r.kept["nudge"], r.given["fiber"]
    rows = tuple((row.name, f"{row.depth:g} %", r.measured(depth, PERCENT, "%", 0.001), f"{'+' if move > 0 else '−' if move < 0 else ''}{r.measured(abs(fiber * move / 100), MASS, 'g', 0.01)}") for row, depth, move in
                 zip(r.given["dyes"], change.recipe, change.changes))
    return Table("The nudged recipe", ("Dye", "Was", "Becomes", f"On {fiber:g} g"), rows)


def _nudged(r):
    return [{"name": row.name, "depth": f"{depth:.4g}%"} for row, depth in zip(r.given["dyes"], r.kept["nudge"].recipe)]


def _a_skein(r):
    """The yarn in equal skeins of about 100 g, as the recipe asks for it."""
    return f"{r.given['fiber'] / skeins_for(r.given['fiber']):.6g}g"


def picture(r):
    change = r.kept["nudge"]
    return lots_picture(("Old lot", "New lot", "After the nudge"), (*r.kept["colors"], change.color), (_short(r.value("before")), _short(between(r.kept["colors"][1], change.color))))


def _short(difference):
    name = next(row["name"] for row in reversed(SHORT) if difference >= row["above"])
    return f"{difference:.1f}: {name}"


CARD = Card(
    id="lot-repeat", chapter="dye", place=80, handles=("powder",),
    question="Does this lot match the old one?",
    inputs=(
        Input("old", COLOR, "The old lot", record="colorway.color", default="lab(29.2 -0.8 -12.4)"),
        Input("new", COLOR, "The new lot", default="lab(31.8 -1 -11.4)"),
        Input("seen", CHOICE, "How they were seen", default="together", options=tuple(Option(how, row["words"][0].upper() + row["words"][1:]) for how, row in SEEN.items())),
        Input("undyed", COLOR, "Undyed fiber", default="#efe6d2"),
        Rows("dyes", "Dyes of the recipe", "dye", least=1, most=3, measure="A full-strength sample of each; the depth used for the new lot.",
             fields=(Input("name", TEXT, "Name", default="brown", longest=14), Input("sample", COLOR, "Color of its sample", default="#5a3a28"),
                     Input("percent", PERCENT, "Depth of that sample", default="1.5 %", allowed=("0.05 %", "12 %"), usual=("0.5 %", "4 %"), strict=True),
                     Input("depth", PERCENT, "Depth used", default="0.04 %", allowed=("0 %", "12 %"), usual=("0 %", "4 %"), strict=True)),
             default=({"name": "navy", "sample": "#27406a", "percent": "2 %", "depth": "0.62 %"}, {"name": "black", "sample": "#22262b", "percent": "2 %", "depth": "0.24 %"},
                      {"name": "brown", "sample": "#5a3a28", "percent": "1.5 %", "depth": "0.04 %"})),
        Input("fiber", MASS, "Yarn of the next lot", default="400 g", allowed=("1 g", "50 kg"), usual=("20 g", "2 kg"), units=("g", "oz"), strict=True),
        Input("only_add", CHOICE, "Does the new lot itself go back into the pot?", default="no", options=(Option("no", "No, the next lot is changed"), Option("yes", "Yes, dye can only be added"))),
        Input("gray", COLOR, "The gray card in that photo", optional=True, when={"seen": ("together", "photo")}, measure="An 18 % card in the same light; blank where the photo was balanced on it already."),
    ),
    results=(
        Result("seen_as", "text", "Side by side"),
        Result("before", NUMBER, "Difference, CIEDE2000", finest=(0.1,), floor=0.0),
        Result("after", NUMBER, "Left of it after the nudge", finest=(0.1,), floor=0.0),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(changes,), link_version=2, upgrades={1: lambda pairs: pairs},  # the gray card came after all that was asked before
    basis=Basis(MODEL, "CIEDE2000 between the two; the recipe is moved by Kubelka-Munk toward the old color. What is likely seen has edges of our own."),
    sources=(SHARMA_2005, KM_APPLICATION_NOTE, COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("A nudge is a guess until it is dipped.", "Dye a test skein with it first, with mask and gloves. The maker’s safety data sheet comes first."),),
    carry=(Carry("dye-recipe", "The nudged recipe for a pot", {"dyes": _nudged, "skeins": lambda r: f"{skeins_for(r.given['fiber'])}", "skein_mass": lambda r: _a_skein(r)}),),
)
