"""Dye: from the recipe to the rail: weights and volumes, stocks, heat, rinsing and drying."""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ..ask.dye import *  # noqa: F403
else:
    from ..core.functions import functions_of

    __getattr__, __dir__ = functions_of(__name__)
