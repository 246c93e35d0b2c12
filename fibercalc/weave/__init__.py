"""Weaving on a small loom: setts, a whole run of pieces planned on one warp, the cloth seen
before it is threaded.
"""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ..ask.weave import *  # noqa: F403
else:
    from ..core.functions import functions_of

    __getattr__, __dir__ = functions_of(__name__)
