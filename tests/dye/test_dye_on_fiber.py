"""What is said of a dye on a fiber that it is not made for, and the metal that goes on with a dye to the drain."""

import pytest

from fibercalc.core.registry import find_card
from fibercalc.core.table import read_table
from fibercalc.core.work import work_card
from fibercalc.dye.fit import ill_fit, kind_of
from fibercalc.yarn.fiber_density import fiber_densities
from tests.dye.test_two_jobs import Way

CLASSES = [row["key"] for row in read_table("dye", "dye-classes").rows]
ACIDS = [key for key in CLASSES if key.startswith(("acid", "premetallized"))]
REACTIVE = [key for key in CLASSES if key.startswith("reactive")]
PROTEIN = ["wool", "silk", "mohair, alpaca, cashmere, camel"]
PLANT = ["cotton", "viscose", "flax (linen)", "hemp", "lyocell", "modal"]
NEITHER = ["polyester", "acrylic", "modacrylic", "acetate", "polylactide (PLA)", "polypropylene"]


def recipe(**given):
    return work_card(find_card("dye-recipe"), given)


def notes(**given) -> str:
    return " ".join(recipe(**given).notes())


@pytest.mark.parametrize("fiber", PROTEIN)
@pytest.mark.parametrize("dye_class", REACTIVE)
def test_reactive_dye_joins_with_wool_from_a_sour_bath(dye_class, fiber):
    """From memory, unverified, and said to be."""
    told = notes(dye_class=dye_class, fiber=fiber)
    assert "will not stay" not in told and "washed out by acid" not in told
    assert "hot sour bath" in told and "from memory, unverified" in told
    assert "does not stay" not in " ".join(recipe(dye_class=dye_class, fiber=fiber).sentences())
    assert "Published for reactive dye on cotton" not in told, "soda by the liter is for cotton"


@pytest.mark.parametrize("fiber", [*NEITHER, *PLANT])
@pytest.mark.parametrize("dye_class", ACIDS)
def test_acid_dye_on_what_it_does_not_dye_is_warned_of(dye_class, fiber):
    """In the answer itself, and why in the notes."""
    assert f"does not stay on {fiber}" in " ".join(
        recipe(dye_class=dye_class, fiber=fiber).sentences()
    )
    told = notes(dye_class=dye_class, fiber=fiber).lower()
    assert ("plant fiber" if fiber in PLANT else fiber.partition(" (")[0]) in told


@pytest.mark.parametrize("fiber", NEITHER)
@pytest.mark.parametrize("dye_class", [*REACTIVE, "direct"])
def test_so_is_reactive_and_direct_dye(dye_class, fiber):
    assert f"does not stay on {fiber}" in " ".join(
        recipe(dye_class=dye_class, fiber=fiber, acid="none").sentences()
    )


@pytest.mark.parametrize(
    "dye_class, fiber",
    [
        *((dye, fiber) for dye in ACIDS for fiber in [*PROTEIN, "polyamide (nylon)"]),
        *((dye, fiber) for dye in [*REACTIVE, "direct"] for fiber in PLANT),
    ],
)
def test_what_is_made_for_each_other_is_not_warned_of(dye_class, fiber):
    assert ill_fit(dye_class, fiber) is None
    assert "stay" not in " ".join(recipe(dye_class=dye_class, fiber=fiber, acid="none").sentences())


@pytest.mark.parametrize(
    "fiber, harmed",
    [("wool", True), ("silk", True), ("acetate", True), ("cotton", False), ("polyester", False)],
)
def test_soda_is_warned_of_where_it_harms_whatever_the_dye(fiber, harmed):
    for dye_class in ("acid-milling", "reactive-unknown"):
        assert (
            f"Soda harms {fiber}."
            in notes(dye_class=dye_class, fiber=fiber, acid="soda-ash", soda="10 g/L")
        ) is harmed


def test_every_fiber_offered_beside_a_dye_has_a_kind_and_the_table_knows_the_class_of_each():
    care = [row["key"] for row in read_table("wash", "care-fibers").rows]
    for fiber in [*(row["fiber"] for row in fiber_densities().rows), *care]:
        assert kind_of(fiber)
    dyes = {key.partition("-")[0] for key in CLASSES}
    kinds = {row["kind"] for row in read_table("dye", "fiber-kinds").rows}
    for row in read_table("dye", "dye-on-fiber").rows:
        assert (
            set(row["dyes"].split()) <= dyes
            and row["kind"] in kinds
            and row["stays"] in ("no", "part")
        ), row["key"]
        assert row["status"] in ("memory", "practice"), "no source for these was read"


@pytest.mark.parametrize(
    "dye, fiber, words",
    [
        ("acid-milling", "acrylic", "basic (cationic) dye"),
        ("acid-leveling", "polyester", "disperse dye"),
        ("premetallized", "cotton", "wash out"),
        ("reactive", "wool", "hot sour bath"),
        ("acid-milling", "wool", ""),
        ("reactive", "linen", ""),
        ("undyed", "polyester", ""),
        ("unknown", "acrylic", ""),
    ],
)
def test_the_care_label_warns_as_well(dye, fiber, words):
    found = [
        note
        for note in work_card(
            find_card("care-label"),
            {"fibers.1.fiber": fiber, "fibers.1.percent": "100 %", "dye": dye},
        ).notes()
        if "unverified" in note or "common practice" in note
    ]
    assert (words in found[0]) if words else not found


METAL = [
    key for key in CLASSES if "metal" in read_table("dye", "dye-classes").row("key", key)["handles"]
]


@pytest.mark.parametrize("dye_class", METAL)
def test_a_dye_that_holds_a_metal_brings_it_to_the_drain(dye_class):
    drain = Way("dye-recipe", dye_class=dye_class).on("May it go down the drain?")
    assert (
        drain.values["metal"] == "unknown"
        and "Not yet" in drain.state["say"]
        and "metal" in drain.state["say"]
    )
    assert "metal" in notes(dye_class=dye_class)


def test_the_metal_goes_the_long_way_too():
    """By acid, heat and pots, as the two jobs go."""
    way = Way("dye-recipe", dye_class="premetallized-1-2").on("How sour will that bath be?")
    assert way.on("May it go down the drain?").values["metal"] == "unknown"
    way = way.on("How long does it take to heat?")
    assert way.on("May it go down the drain, cooled?").values["metal"] == "unknown"
    assert (
        way.on("How long does the whole run take?")
        .on("May each bath go down the drain?")
        .values["metal"]
        == "unknown"
    )


@pytest.mark.parametrize("dye_class", [key for key in CLASSES if key not in METAL])
def test_a_dye_without_one_brings_none(dye_class):
    assert (
        Way("dye-recipe", dye_class=dye_class).on("May it go down the drain?").values["metal"]
        == "none"
    )
