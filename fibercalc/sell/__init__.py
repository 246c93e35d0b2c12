"""Sell: from a plan to the parcel: what to dye, order and post and by when, what to ask, and what
stands on the label.
"""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ..ask.sell import *  # noqa: F403
else:
    from ..core.functions import functions_of

    __getattr__, __dir__ = functions_of(__name__)
