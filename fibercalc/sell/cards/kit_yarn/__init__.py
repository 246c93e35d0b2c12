"""A kit sized to a pattern: skeins of each color, what is spare, who runs short, and cut skeins."""

from __future__ import annotations

from ....core.card import MODEL, Basis, Card, Carry, Caution, Constant, Save
from ....held import RECORD
from ....sources import ARITHMETIC, COMMON_PRACTICE
from ...plans import ways
from .asked import KitYarn
from .said import notes, say
from .shown import by_color, cutting, picture
from .worked import answer

CARD = Card(
    id="kit-yarn",
    chapter="sell",
    place=40,
    tall_sheet=True,
    question="How many skeins of each color go in a kit?",
    case=KitYarn,
    answer=answer,
    say=say,
    notes=notes,
    pictures=(picture,),
    tables=(by_color, cutting),
    basis=Basis(
        MODEL,
        "Each color’s need has a range: the pattern’s rounding and its buffer, the skein’s length,"
        " the knitter’s tension (9 %, common practice, 95 %). No flat padding: odds.",
    ),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(
        Caution(
            "Ask what the pattern’s figure is.",
            "A buffer added twice prices the kit out; one that is not there leaves a knitter short"
            " in the last part, when the lot is gone.",
        ),
    ),
    carry=(
        Carry(
            "yarn-needed",
            "From a swatch instead",
            {"skein_mass": KitYarn.skein_mass, "skein_length": KitYarn.skein_length},
        ),
        Carry(
            "pots",
            "How long does the whole run take?",
            {"recipes": ways.kit_recipes, "skein_mass": KitYarn.skein_mass},
        ),
        Carry("back-plan", "By when must I do what?", {"dye_days": KitYarn.dye_days}),
        Carry(
            "parcels",
            "Share them out by lot",
            {
                "kits": KitYarn.kits,
                "spare": KitYarn.spare,
                "kit": ways.kit_colors,
                "lots": ways.kit_color_lots,
                "club": ways.nobody,
                "skein_mass": KitYarn.skein_mass,
            },
        ),
        Carry("keep-pace", "Can knitters keep pace with the parts?", {}),
    ),
    saves=(
        Save(
            RECORD.product,
            "A product: this kit’s yarn by color",
            {RECORD.product.sort: Constant("kit"), RECORD.product.parts: KitYarn.colors},
        ),
    ),
)
