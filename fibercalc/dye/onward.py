"""What a recipe gives the next card: stocks for the run, one pot's bath, acid or soda and yarn, and the run's skeins."""

from ..core.onward import spread_text
from ..core.table import read_table

# What the choices of the recipe are called where the bath's chemistry is asked.
IN_BATH = {"citric": "citric", "liquid": "acetic", "soda-ash": "soda-ash"}


def of_pot(name, sign):
    """What of a result of the lot is in the fullest pot, as the next card reads it: no pot holds a lot of several."""

    def share(r):
        if not r.has(name):
            return None
        unit = r.card.result_by_name[name].of.unit(sign)
        part = r.kept["loads"][0] / r.given["skeins"]
        return spread_text(
            *(unit.from_base(end * part) for end in (r.value(name), r.low(name), r.high(name))),
            sign,
        )

    return share


def stock_of_run(r, number):
    """All that the run takes of one stock: what has to be made up."""
    volume = r.kept["doses"][number - 1][2] * r.given["lots"]
    return f"{volume:.6g}mL" if volume else None


def keeps_as(r, number):
    """The kind of dye, as stocks keep."""
    return (
        r.given["dye_class"].partition("-")[0]
        if r.given["dye_class"].startswith(("reactive", "direct"))
        else "acid"
    )


def acid_in_it(r):
    """The acid or alkali of the recipe, as the bath's chemistry knows it; None where there is none."""
    return IN_BATH.get(r.given["acid"])


def metal_in_it(r):
    """That a metal comes with the dye, or may: how much of which one no class of dye tells."""
    return (
        "unknown"
        if "metal" in read_table("dye", "dye-classes").row("key", r.given["dye_class"])["handles"]
        else None
    )


def grams_in_pot(r):
    """Grams of it in the fullest pot."""
    return of_pot("soda_mass" if r.has("soda_mass") else "acid_pure", "g")(r)


def acid_by_weight(r):
    """A label's grams in 100 mL as percent by weight: so thin an acid is no more than 2 % heavier than water."""
    return (
        f"{r.given['acid_strength'] / 1.01:.3g}~{r.given['acid_strength'] * 0.01:.2g}%"
        if r.given["acid"] == "liquid"
        else None
    )


def heats_as(r):
    """The fiber, as far as its heat is told apart."""
    fiber = r.given["fiber"]
    return (
        "nylon" if fiber.startswith("polyamide") else fiber if fiber in ("wool", "cotton") else None
    )


def recipe_of_run(r):
    """The skeins of all lots, as one recipe of a run."""
    return [
        {
            "name": "the lot" if r.given["lots"] == 1 else "the run",
            "skeins": f"{r.given['skeins'] * r.given['lots']}",
        }
    ]
