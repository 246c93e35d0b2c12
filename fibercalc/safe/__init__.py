"""Safe: people, air, acids, heat, drains and loads; published limits beside every answer, and the
chemistry of a bath.
"""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ..ask.safe import *  # noqa: F403
else:
    from ..core.functions import functions_of

    __getattr__, __dir__ = functions_of(__name__)
