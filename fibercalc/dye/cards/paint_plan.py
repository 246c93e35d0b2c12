"""Hand-painting: how much liquor each section takes, how strong it must be, and how long the steaming takes."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.problem import OutOfRange, Refused
from ...core.table import read_table
from ...core.units import CONCENTRATION, COUNT, MASS, NUMBER, PERCENT, TIME, VOLUME
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ..paint import paint_strength, paint_volume, section_masses, stock_in_paint, steaming_time
from ..pictures.sections import sections_picture

STEAM = {row["key"]: row for row in read_table("dye", "steam-times").rows}


def answer(w, skein_mass, full, damp, sections, stock, skeins, at_once, fiber):
    if full <= damp:
        raise Refused("Wet through: it must hold more than the damp yarn brings along; squeeze or spin the yarn drier.", "full")
    liquor = w.step("liquor", "skein_mass * (full - damp) / 100", paint_volume(skein_mass, full, damp), VOLUME, label="Liquor that one skein takes up")
    total = sum(row.share for row in sections)
    masses = section_masses(skein_mass, [row.share / total for row in sections])
    lines, stock_all = [], 0.0
    for number, (row, mass) in enumerate(zip(sections, masses), 1):
        volume = liquor * row.share / total
        w.step(f"volume_{number}", f"liquor * sections[{number}].share / sum(sections.share)", volume, VOLUME, label=f"Liquor for {row.name}")
        try:
            strength = paint_strength(row.depth, full, damp)
            of_stock = stock_in_paint(volume, strength, stock)
        except OutOfRange as error:
            raise Refused(f"Section {number}, depth: {error.reason}.", f"sections.{number}.depth") from None
        w.step(f"strength_{number}", f"sections[{number}].depth * 100 / (full - damp)", strength, CONCENTRATION, label=f"Strength of {row.name}")
        w.step(f"stock_{number}", f"volume_{number} * strength_{number} / stock", of_stock, VOLUME, label=f"Stock in it, {row.name}")
        lines.append((row, mass, volume, strength, of_stock))
        stock_all += of_stock
    steam = STEAM[fiber]
    rounds = -(-skeins // at_once)
    low, high = steaming_time(skeins, at_once, steam["low"]), steaming_time(skeins, at_once, steam["high"])
    middle = w.step("steaming", f"{rounds} * ({steam['low']:g} + {steam['high']:g}) / 2", (low + high) / 2, TIME, label="Steaming, all rounds")
    w.band("steaming", low, high)
    run = w.step("run_liquor", "liquor * skeins", liquor * skeins, VOLUME, label="Liquor for all skeins")
    return {"liquor": liquor, "run_liquor": run, "stock_all": stock_all * skeins, "steaming": middle, "rounds": rounds, "lines": lines, "total": total}


def say(r):
    parts = [f"{_liquor(r, volume)} for {row.name}" for row, _, volume, _, _ in r.kept["lines"]]
    listed = parts[0] if len(parts) == 1 else f"{', '.join(parts[:-1])} and {parts[-1]}"
    steam = STEAM[r.given["fiber"]]
    return f"Each skein takes {listed}.", f"That is {r.text('liquor', 'mL')} in all. Steam {steam['low']:g} to {steam['high']:g} minutes once it is hot through, in {_rounds(r.value('rounds'))}."


def _liquor(r, volume):
    """What one skein takes in a section, in sentence and picture as in the table."""
    return r.times("liquor", volume / r.value("liquor"), "mL")


def _yarn(r, mass):
    return r.measured(mass, MASS, "g", 1)


def _rounds(count):
    return f"{count:.0f} {'round' if count == 1 else 'rounds'}"


def notes(r):
    said = ["More liquor than the yarn takes up runs to the low end and muddies: stop when it is wet through, blot what stands.",
            f"Steam times are common practice; no published time was found. {STEAM[r.given['fiber']]['note']}".strip()]
    if abs(r.kept["total"] - 100) > 0.5:
        said.append(f"The sections add up to {r.kept['total']:g}; that was taken as the whole skein.")
    return said


def _stock_of_section(r, number):
    """All that the run takes of one section's stock; None where it takes none."""
    of_stock = r.kept["lines"][number - 1][4] * r.given["skeins"]
    return f"{of_stock:.6g}mL" if of_stock else None


def mixing(r):
    skeins = r.given["skeins"]
    rows = tuple((row.name, _yarn(r, mass), _liquor(r, volume), r.measured(strength, PERCENT, "%", 0.01), *(r.measured(one * skeins, VOLUME, "mL", 1) for one in (of_stock, volume - of_stock)))
                 for row, mass, volume, strength, of_stock in r.kept["lines"])
    return Table(f"To mix for {skeins} {'skein' if skeins == 1 else 'skeins'}", ("Section", "Yarn", "Liquor for one", "Strength", "Stock, all", "Water, soured, all"), rows)


def picture(r):
    """The skein laid open: each section by its share, with what one skein takes of it."""
    lines = r.kept["lines"]
    return sections_picture([row.name for row, *_ in lines], [mass for _, mass, *_ in lines], [f"{_liquor(r, volume)} on {_yarn(r, mass)}" for _, mass, volume, *_ in lines])


CARD = Card(
    id="paint-plan", chapter="dye", place=50, handles=("acid", "heat"),
    question="How much liquor for each painted section?",
    inputs=(
        Input("skein_mass", MASS, "A skein weighs, dry", default="100 g", allowed=("1 g", "2 kg"), usual=("20 g", "250 g"), rough="1 g", units=("g", "oz"), bench="bases.mass", record="base.mass", strict=True),
        Input("full", PERCENT, "Wet through it holds, percent of dry", default="250 %", allowed=("10 %", "1000 %"), usual=("150 %", "400 %"), rough="20 %", measure="Weigh a skein dry, then dripping wet laid flat: the water over the dry weight."),
        Input("damp", PERCENT, "Before painting it holds", default="80 %", allowed=("0 %", "900 %"), usual=("0 %", "150 %"), rough="10 %", measure="Soaked and spun or squeezed; 0 for dry yarn."),
        Rows("sections", "Sections", "section", least=1, most=12, measure="Around the skein. What the shares add up to is the whole.",
             fields=(Input("name", TEXT, "Name", default="another", longest=20, lent=False), Input("share", NUMBER, "Share", default="10", allowed=("0.5", "1000")),
                     Input("depth", PERCENT, "Depth", default="0.5 %", allowed=("0 %", "8 %"), usual=("0.05 %", "4 %"), strict=True)),
             default=({"name": "slate", "share": "50", "depth": "0.9 %"}, {"name": "rust", "share": "20", "depth": "1.2 %"}, {"name": "cream", "share": "30", "depth": "0.05 %"})),
        Input("stock", CONCENTRATION, "Strength of the stocks", default="2 g/100 mL", allowed=("0.005 g/100 mL", "20 g/100 mL"), usual=("0.5 g/100 mL", "5 g/100 mL"), units=("g/100 mL", "g/L"), strict=True),
        Input("skeins", COUNT, "Skeins", default="4", allowed=("1", "200"), usual=("1", "40")),
        Input("at_once", COUNT, "Skeins in the steamer at once", default="4", allowed=("1", "100"), usual=("1", "12")),
        Input("fiber", CHOICE, "Fiber and dye", default="superwash-wool", options=tuple(Option(key, row["label"]) for key, row in STEAM.items())),
    ),
    results=(
        Result("liquor", VOLUME, "Liquor that one skein takes up", units=("mL",), finest=(1,), floor=0.0),
        Result("run_liquor", VOLUME, "Liquor for all skeins", units=("mL", "L"), finest=(10, 0.1), rounding="up", floor=0.0),
        Result("stock_all", VOLUME, "Stocks in it", units=("mL",), finest=(1,), rounding="up", floor=0.0),
        Result("rounds", COUNT, "Rounds in the steamer", rounding="up"),
        Result("steaming", TIME, "Steaming in all, once hot", units=("min", "h"), finest=(5, 0.1), floor=0.0, timer=True),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(mixing,),
    basis=Basis(MODEL, "Damp yarn takes up what it holds when wet through, less what it holds already. Steam times are common practice, with no published source."),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("Steam and acid.", "Open the lid away from you and let it cool before unwrapping; wet gloves hold heat. Acid into water. No food pot is used for dye again. The maker’s safety data sheet comes first."),),
    carry=(Carry("stock-solution", "Make up the stock for {}", {"name": "sections.#.name", "wanted": "stock", "volume": _stock_of_section}, each="sections"), Carry("scald", "How hot is too hot to touch?", {}), Carry("pool-picture", "What will the colors do when knitted?", {})),
)
