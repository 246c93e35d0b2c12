"""Weaker acid from stronger: acetic, citric and formic only."""

from ...core.card import CHOICE, STANDARD, TEXT, Basis, Card, Carry, Caution, Input, Option, Result
from ...core.problem import Refused
from ...core.table import read_table
from ...core.units import DENSITY, MASS, PERCENT, VOLUME
from ...sources import ARITHMETIC, CLP_ANNEXES, CLP_MEMORY, DENSITY_TABLE, HANDBOOK_DENSITIES
from ..acids import density
from ..dilution import acid_for_mass, mass_of_volume, water_volume
from ..label import classes, signal_word, to_ask
from ..limits import published
from ..liquids import liquid_name
from ..pictures.mixing import water_then_acid

BY_MASS, BY_VOLUME = "mass", "volume"
ACIDS = ("acetic", "citric", "formic")
MINERAL = (
    "mineral acids are left out: they spit, fume and burn far worse, and dyers have no need of"
    " them; buy them ready diluted or not at all"
)
STRONGEST_CITRIC = 50.0  # %: as strong as it stays dissolved and is tabled


def answer(w, acid, have, wanted, by, mass, volume):
    if wanted >= have:
        raise Refused(
            f"Strength wanted: {wanted:g} % is not weaker than the {have:g} % you have; give less.",
            "wanted",
        )
    if acid == "citric" and have > STRONGEST_CITRIC:
        raise Refused(
            f"Strength you have: citric acid is a solution up to {STRONGEST_CITRIC:g} %; weigh"
            " crystals as a stock solution instead.",
            "have",
        )
    dense = _density(w, acid, have, "have")
    if by == BY_VOLUME:
        thin = _density(w, acid, wanted, "wanted")
        total, total_name = (
            w.step(
                "total",
                f"volume * {thin}",
                mass_of_volume(acid, volume, wanted),
                MASS,
                label="Weight of the weak acid",
            ),
            "total",
        )
    else:
        total, total_name = mass, "mass"
    strong = w.step(
        "acid_mass",
        f"{total_name} * wanted / have",
        acid_for_mass(total, wanted, have),
        MASS,
        label="Strong acid, by weight",
    )
    water = w.step(
        "water_mass", f"{total_name} - acid_mass", total - strong, MASS, label="Water, by weight"
    )
    pour = w.step(
        "acid_volume",
        f"acid_mass / {dense}",
        strong / density(acid, have),
        VOLUME,
        label=f"{have:g} % {acid} acid, by volume",
    )
    return {
        "acid_mass": strong,
        "acid_volume": pour,
        "water_mass": water,
        "water_volume": w.step(
            "water_volume",
            "water_mass / 0.998",
            water_volume(water),
            VOLUME,
            label="Water, by volume at 20 °C",
        ),
        "strong_class": _class(acid, have),
        "weak_class": _class(acid, wanted),
        "limit": published(_limits(acid), "clp-annexes" if acid == "acetic" else "clp-memory"),
    }


def _density(w, acid, percent, which):
    """Name of the step that finds a density between two tabled strengths."""
    rows = [row for row in read_table("safe", "stock-densities").rows if row["chemical"] == acid]
    below, above = next(
        (low, high) for low, high in zip(rows, rows[1:]) if percent <= high["percent"]
    )
    for side, row in (("below", below), ("above", above)):
        w.looked_up(
            f"{which}_{side}",
            "safe",
            "stock-densities",
            "key",
            row["key"],
            "density",
            DENSITY,
            label=f"Density at {row['percent']:g} %",
        )
    span = above["percent"] - below["percent"]
    name = f"{which}_density"
    w.step(
        name,
        f"{which}_below + ({which}_above - {which}_below) * ({which} - {below['percent']:g}) /"
        f" {span:g}",
        density(acid, percent),
        DENSITY,
        label=f"Density at {percent:g} %",
    )
    return name


def _class(acid, percent):
    found, asked = classes({acid: percent}), to_ask({acid: percent})
    if not found:
        return "below the limits for skin and eyes" + (
            f"; ask about {', '.join(asked)}" if asked else ""
        )
    return (
        f"{signal_word((*found, *asked))}: {', '.join(found)}"
        f" ({', '.join(dict.fromkeys(found.values()))})"
        + (f"; ask about {', '.join(asked)}" if asked else "")
    )


def _limits(acid):
    row = read_table("safe", "label-limits").row("key", acid)
    if row["corr"] == "":
        return f"eye irritation from {row['eye']:g} %"
    return f"burns from {row['corr']:g} %, irritates from {row['irrit']:g} %"


def say(r):
    first = (
        f"Put in {r.text('water_volume')} of cool water first, then {r.text('acid_volume')}"
        f" ({r.text('acid_mass')}) of {_named(r, 'have')}, slowly, stirring."
    )
    return (
        first,
        (
            f"That makes {_made(r)} of {_named(r, 'wanted')}. The strong acid is"
            f" {r.value('strong_class')}; the weak one is {r.value('weak_class')}."
        ),
    )


def _named(r, which):
    """The acid of one of the two bottles."""
    key, percent = r.given["acid"], r.given[which]
    written = r.amount(percent, PERCENT)
    return f"{written} citric acid" if key == "citric" else liquid_name(key, percent, written)


def _made(r):
    return (
        r.amount(r.given["volume"], VOLUME, "L" if r.given["volume"] >= 1000 else "mL")
        if r.given["by"] == BY_VOLUME
        else r.amount(r.given["mass"], MASS, "g")
    )


def notes(r):
    said = [
        (
            "Volumes do not add up exactly when acid meets water; weights do. By weight is better"
            " where a scale can stand on a tray."
        ),
        f"Mineral acids (sulfuric, hydrochloric, nitric, phosphoric) are refused here: {MINERAL}.",
    ]
    if r.given["acid"] != "acetic":
        said.append(
            "The limits for this acid are from memory, unverified: the supplier’s data sheet"
            " decides."
        )
    return said


def picture(r):
    return water_then_acid(
        r.value("water_mass"),
        r.value("acid_mass"),
        r.text("water_volume"),
        f"{r.text('acid_volume')} of {r.amount(r.given['have'], PERCENT)}",
    )


CARD = Card(
    id="acid-dilution",
    chapter="safe",
    place=10,
    tall_sheet=True,
    question="How do I make weaker acid from stronger?",
    inputs=(
        Input(
            CHOICE,
            "Acid",
            default="acetic",
            refused={
                word: MINERAL
                for word in (
                    "sulfuric",
                    "sulphuric",
                    "hydrochloric",
                    "muriatic",
                    "nitric",
                    "phosphoric",
                    "hydrofluoric",
                    "mineral",
                )
            },
            options=(
                Option("acetic", "Acetic (vinegar)"),
                Option("citric", "Citric, in solution"),
                Option("formic", "Formic"),
            ),
            measure="A closed list: mineral acids are refused.",
            name="acid",
        ),
        Input(
            PERCENT,
            "Strength you have",
            default="50",
            allowed=("1", "100"),
            usual=("5", "99"),
            rough="1",
            strict=True,
            measure="% by weight, from the bottle’s label or data sheet.",
            name="have",
        ),
        Input(
            PERCENT,
            "Strength wanted",
            default="5",
            allowed=("0.1", "99"),
            usual=("1", "30"),
            strict=True,
            name="wanted",
        ),
        Input(
            CHOICE,
            "You measure the weak acid",
            default=BY_VOLUME,
            options=(Option(BY_VOLUME, "by volume"), Option(BY_MASS, "by weight")),
            name="by",
        ),
        Input(
            MASS,
            "Weak acid wanted",
            default="1000 g",
            allowed=("10 g", "50 kg"),
            usual=("100 g", "5 kg"),
            units=("g", "kg", "oz"),
            when={"by": (BY_MASS,)},
            strict=True,
            name="mass",
        ),
        Input(
            VOLUME,
            "Weak acid wanted",
            default="1 L",
            allowed=("10 mL", "50 L"),
            usual=("100 mL", "5 L"),
            units=("L", "mL", "qt"),
            when={"by": (BY_VOLUME,)},
            strict=True,
            name="volume",
        ),
    ),
    results=(
        Result(
            VOLUME, "1. Water first", units=("mL",), finest=(1,), floor=0.0, name="water_volume"
        ),
        Result(
            VOLUME,
            "2. Strong acid into it",
            units=("mL",),
            finest=(0.5,),
            floor=0.0,
            named=lambda r: f"2. {_named(r, 'have')} into it",
            name="acid_volume",
        ),
        Result(
            MASS, "or by weight: acid", units=("g",), finest=(0.1,), floor=0.0, name="acid_mass"
        ),
        Result(MASS, "and water", units=("g",), finest=(1,), floor=0.0, name="water_mass"),
        Result(TEXT, "The strong acid is", name="strong_class"),
        Result(TEXT, "The weak acid is", name="weak_class"),
        Result(TEXT, "Published limit", name="limit"),
    ),
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    basis=Basis(
        STANDARD,
        "The pure acid stays the same. Densities at 20 °C stand between tabled values; classes are"
        " by the regulation’s limits, % by weight.",
    ),
    sources=(CLP_ANNEXES, CLP_MEMORY, DENSITY_TABLE, HANDBOOK_DENSITIES, ARITHMETIC),
    cautions=(
        Caution(
            "Acid into water, slowly, stirring; never water into acid.",
            "Goggles and gloves on first, window open, cool water, away from children and food."
            " Strong acid in the eye or on skin: rinse at once, go on rinsing, get help.",
        ),
        Caution(
            "Nothing else into it.",
            "No bleach, no hydrosulfite, no peroxide. Label the bottle; never a drinks bottle. The"
            " data sheet decides.",
        ),
    ),
    carry=(
        Carry(
            "hazard-label",
            "What goes on the bottle?",
            {
                "contents": lambda r: [
                    {"what": r.given["acid"], "strength": f"{r.given['wanted']:.4g}%"}
                ]
            },
        ),
    ),
    handles=("acid",),
)
