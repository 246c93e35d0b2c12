"""What a cloth gives to the next cards."""

from __future__ import annotations

from ....core.card import Carry
from ....core.outcome import Outcome
from .asked import ClothPicture


def _stick_share(out: Outcome[ClothPicture]) -> str:
    """As fine as it is worth: a weaver counts no hundredths of a percent of her picks."""
    return f"{out.case.stick_share:.3g}%"


CARRY = (
    Carry(
        "weft-left",
        "What does the rest of a ball weave?",
        {
            "beat": ClothPicture.beat,
            "hem": ClothPicture.hem,
            "shrink": ClothPicture.shrink_length,
            "pieces": ClothPicture.number_of_pieces,
            "piece_picks": ClothPicture.mean_picks,
        },
    ),
    Carry(
        "weave-pace",
        "How long will it take?",
        {
            "ends": ClothPicture.ends,
            "pieces": ClothPicture.number_of_pieces,
            "piece_picks": ClothPicture.mean_picks,
            "stick_share": _stick_share,
            "changes": ClothPicture.mean_changes,
        },
    ),
)
