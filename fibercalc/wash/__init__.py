"""What washing does to cloth: size, relaxation, fastness of the color, lint, and the care that
goes on a label.
"""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ..ask.wash import *  # noqa: F403
else:
    from ..core.functions import functions_of

    __getattr__, __dir__ = functions_of(__name__)
