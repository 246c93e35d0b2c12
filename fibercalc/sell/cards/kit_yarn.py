"""A kit sized to a pattern: skeins of each color, what is spare, who runs short and in which color, and whether cut skeins would do."""

from ...core.answer import Table
from ...core.card import CHOICE, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows, Save
from ...core.units import COUNT, LENGTH, MASS, NUMBER, PERCENT
from ...dye.pots import MOST_SKEINS, days_at_rounds, loads_needed
from ...knit.needs import BUFFERS, KNITTER_ERROR
from ...knit.odds import smallest_enough
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ...yarn.reel import whole_turns_for_length
from ...yarn.split import full_skeins_for, small_skeins, usable_amount
from ..kits import chance_short, color_in_skeins, skeins_for_chance, spare_share
from ..plans import ways
from ..pictures.kits import kit_picture


def answer(w, kits, spare, skein_mass, skein_length, colors, buffer, sure, load, a_day, reel, loss_share):
    holds, _ = BUFFERS[buffer]
    for number, row in enumerate(colors, 1):
        bare = w.step(f"bare_{number}", f"colors[{number}].needed / {holds:g}", row.needed / holds, LENGTH, label=f"{row.name}: the pattern’s figure without a buffer")
        w.step(f"taken_{number}", f"bare_{number} / skein_length", bare / skein_length, NUMBER, label=f"{row.name}, in skeins")
    w.step("packed", "kits + spare", kits + spare, COUNT, label="Kits to pack")
    return {"packed": kits + spare}


def _colors(r):
    """For each color: its row, what it takes in skeins, that spread, skeins given, the chance that they are short."""
    if "colors" not in r.kept:
        holds, half = BUFFERS[r.given["buffer"]]
        sure, found = float(r.given["sure"]) / 100, []
        for number, row in enumerate(r.given["colors"], 1):
            rough = r.readings[f"colors.{number}.needed"].rough
            needed, parts = color_in_skeins(row.needed, rough, r.given["skein_length"], r.readings["skein_length"].rough, holds, half, KNITTER_ERROR)
            given = row.give or smallest_enough(needed, parts, sure)
            found.append((row, needed, parts, given, chance_short(given, needed, parts)))
        r.kept["colors"] = found
    return r.kept["colors"]


def _tightest(r):
    return max(_colors(r), key=lambda color: (round(color[4], 4), color[1] / color[3]))


def in_a_kit(r):
    return sum(given for _, _, _, given, _ in _colors(r))


def in_all(r):
    return r.value("packed") * in_a_kit(r)


def loads(r):
    skeins = [r.value("packed") * given for _, _, _, given, _ in _colors(r)]
    return loads_needed(skeins, r.given["load"]) if sum(skeins) <= MOST_SKEINS else None  # no room is planned for more


def dye_days(r):
    return days_at_rounds(r.value("loads"), 1, r.given["a_day"]) if r.has("loads") else None


def say(r):
    parts = [f"{given} of {row.name}" for row, _, _, given, _ in _colors(r)]
    listed = f"{', '.join(parts[:-1])} and {parts[-1]}" if len(parts) > 1 else parts[0]
    row, _, _, given, short = _tightest(r)
    spare = spare_share(row.needed, given, r.given["skein_length"])
    left = f"{spare:.0f} % over the pattern’s figure" if spare >= 0 else f"{-spare:.0f} % under the pattern’s figure"
    knitters = "under 1 in 100 knitters runs" if short < 0.01 else f"{r.in_100(short)} knitters run"
    room = f" They make {r.value('loads')} loads in {r.value('dye_days')} dye {'day' if r.value('dye_days') == 1 else 'days'}." if r.has("loads") else ""
    return f"Pack {listed} in each kit: {r.value('in_all')} skeins in all.", f"The tightest color is {row.name}, {left}: {knitters} short.{room}"


def notes(r):
    said = [{"held": "The pattern’s buffer was taken off again (common practice: 5 to 15 %), so that it is not added twice.",
             "unknown": "Nobody knows whether these figures hold a buffer, so they may hold none or a tenth. Ask the designer: it decides the tightest color.",
             "none": "The figures are taken as bare; the odds add what is needed."}[r.given["buffer"]]]
    fixed = [row.name for row, needed, parts, given, short in _colors(r) if short > 1 - float(r.given["sure"]) / 100]
    if fixed:
        said.append(f"Less sure than wished: {', '.join(fixed)}. Add a skein, or a part of one, or say on the kit how much is in it.")
    said.append(f"A knitter strays from the pattern by up to {100 * KNITTER_ERROR:.0f} % either way in 95 cases of 100 (common practice), in all colors alike: who runs short in one is close in the others.")
    if all(saved <= 0 for *_, saved in _cuts(r)):
        said.append("Cutting skeins would save none here.")
    said.append("Pack all skeins of one color of one kit from one lot.")
    return said


def by_color(r):
    rows = []
    for row, needed, parts, given, short in _colors(r):
        length = given * r.given["skein_length"]
        rows.append((row.name, r.amount(row.needed, LENGTH, "m", 4), r.amount(row.needed, LENGTH, "yd", 4), str(given), r.amount(length, LENGTH, "m", 4), f"{r.number(spare_share(row.needed, given, r.given['skein_length']))} %", r.in_100(short),
                     str(r.value("packed") * given)))
    return Table("Color by color", ("Color", "Pattern, m", "Pattern, yd", "Skeins", "Given", "Spare", "Short", "All kits"), tuple(rows),
                 "Spare is over the pattern’s figure; “short” is how many knitters in 100 need more than is given.")


def _cuts(r):
    """For each color: whole skeins, a part in turns and its length, parts from one skein, full skeins for all kits, skeins saved."""
    if "cuts" in r.kept:
        return r.kept["cuts"]
    found, kits, full, reel = [], r.value("packed"), r.given["skein_length"], r.given["reel"]
    usable = usable_amount(full, r.given["loss_share"])
    for row, needed, parts, given, _ in _colors(r):
        wanted = given * full if row.give else skeins_for_chance(needed, parts, float(r.given["sure"]) / 100) * full
        whole = int(wanted / full + 1e-9)
        turns = whole_turns_for_length(wanted - whole * full, reel) if wanted - whole * full > 1e-6 else 0
        per = small_skeins(usable, turns * reel) if turns else 0
        skeins = kits * whole + (full_skeins_for(kits, per) if per else kits if turns else 0)
        found.append((row, whole, turns, turns * reel, per, skeins, kits * given - skeins))
    r.kept["cuts"] = found
    return found


def cutting(r):
    rows = []
    for row, whole, turns, length, per, skeins, saved in _cuts(r):
        part = f"{turns} turns, {r.amount(length, LENGTH, 'm', 3)} ({r.amount(length, LENGTH, 'yd', 3)})" if turns else "–"
        rows.append((row.name, str(whole), part, str(per) if per else "–", str(skeins), str(max(saved, 0)) if per else "0"))
    return Table("If skeins were cut to what is wanted", ("Color", "Whole", "and a part of", "Parts a skein", "Skeins, all kits", "Saved"), tuple(rows),
                 "A part is wound in whole turns, long enough for the wished chance. Weigh and label each: a part looks like any other small skein.")


def picture(r):
    colors = []
    for row, needed, parts, given, short in _colors(r):
        spare = spare_share(row.needed, given, r.given["skein_length"])
        colors.append((row.name, given, needed, needed - parts.half_width("down"), needed + parts.half_width("up"), f"{given} given, spare {spare:.0f} %, short {r.in_100(short)}"))
    return kit_picture(colors)


CARD = Card(
    id="kit-yarn", chapter="sell", place=40, tall_sheet=True,
    question="How many skeins of each color go in a kit?",
    inputs=(
        Input("kits", COUNT, "Kits to sell", default="16", allowed=("1", "1000"), usual=("4", "100")),
        Input("spare", COUNT, "Spare kits", default="2", allowed=("0", "200"), usual=("0", "10"), measure="For lost parcels; see “How many should I dye?”."),
        Input("skein_mass", MASS, "A skein weighs", record="base.mass", default="100 g", allowed=("5 g", "2 kg"), usual=("20 g", "250 g"), units=("g", "oz"), bench="bases.mass"),
        Input("skein_length", LENGTH, "A skein holds", record="base.length", default="420 m", allowed=("5 m", "10000 m"), usual=("50 m", "900 m"), rough="1.5 %", units=("m", "yd"), bench="bases.length", measure="In meters or yards; grams are not asked here."),
        Rows("colors", "Colors", "color", record="product.parts", least=1, most=40, measure="Each color’s length as the pattern gives it, for the size you pack.",
             fields=(Input("name", TEXT, "Name", default="D", longest=40, lent=False), Input("needed", LENGTH, "Yarn, by the pattern", default="100 m", allowed=("0.5 m", "20000 m"), usual=("10 m", "2000 m"), rough="5 m", units=("m", "yd")),
                     Input("give", COUNT, "Skeins, if you have settled it", record="skeins", allowed=("1", "60"), optional=True)),
             default=({"name": "A", "needed": "640 m"}, {"name": "B", "needed": "350 m"}, {"name": "C", "needed": "300 m"})),
        Input("buffer", CHOICE, "Do these figures hold a buffer already?", default="unknown", options=(Option("unknown", "It does not say"), Option("held", "Yes, some is added"), Option("none", "No, it is what was used"))),
        Input("sure", CHOICE, "Enough in each color for", default="95", options=tuple(Option(each, f"{each} in 100 knitters") for each in ("80", "90", "95", "99"))),
        Input("load", COUNT, "Skeins in a load", default="4", allowed=("1", "200"), usual=("1", "20")),
        Input("a_day", COUNT, "Loads in a day", default="6", allowed=("1", "100"), usual=("1", "12"), measure="Pots times rounds."),
        Input("reel", LENGTH, "One turn of your reel, rested", default="1.50 m", allowed=("0.05 m", "10 m"), usual=("0.5 m", "2 m"), units=("m", "cm", "in", "yd"), bench="reels.circumference"),
        Input("loss_share", PERCENT, "Lost in winding, when a skein is cut", default="2 %", allowed=("0 %", "50 %"), usual=("1 %", "3 %")),
    ),
    results=(
        Result("packed", COUNT, "Kits to pack"),
        Result("in_kit", COUNT, "Skeins in a kit", rounding="up", decided=in_a_kit),
        Result("in_all", COUNT, "Skeins in all kits", rounding="up", decided=in_all),
        Result("tightest", TEXT, "Tightest color", decided=lambda r: _tightest(r)[0].name),
        Result("spare_share", PERCENT, "Spare in it, over the pattern", finest=(1,), rounding="down", decided=lambda r: spare_share(_tightest(r)[0].needed, _tightest(r)[3], r.given["skein_length"])),
        Result("short", PERCENT, "Knitters who run short in it", finest=(0.1,), at_step=True, rounding="up", decided=lambda r: 100 * _tightest(r)[4]),
        Result("loads", COUNT, "Loads", rounding="up", decided=loads),
        Result("dye_days", COUNT, "Dye days", rounding="up", decided=dye_days),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(by_color, cutting),
    basis=Basis(MODEL, "Each color’s need has a range: the pattern’s rounding and its buffer, the skein’s length, the knitter’s tension (9 %, common practice, 95 %). No flat padding: odds."),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("Ask what the pattern’s figure is.", "A buffer added twice prices the kit out; one that is not there leaves a knitter short in the last part, when the lot is gone."),),
    carry=(Carry("yarn-needed", "From a swatch instead", {"skein_mass": "skein_mass", "skein_length": "skein_length"}), Carry("pots", "How long does the whole run take?", {"recipes": ways.kit_recipes, "skein_mass": "skein_mass"}),
           Carry("back-plan", "By when must I do what?", {"dye_days": "dye_days"}), Carry("parcels", "Share them out by lot", {"kits": "kits", "spare": "spare", "kit": ways.kit_colors, "lots": ways.kit_color_lots, "club": ways.nobody, "skein_mass": "skein_mass"}),
           Carry("keep-pace", "Can knitters keep pace with the parts?", {})),
    saves=(Save("product", "A product: this kit’s yarn by color", {"sort": "'kit'", "parts": "colors"}),),
)
