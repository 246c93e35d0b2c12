"""Knit: yarn for a project with its odds, gauge, sizes, shaping, shawls, socks and pace."""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ..ask.knit import *  # noqa: F403
else:
    from ..core.functions import functions_of

    __getattr__, __dir__ = functions_of(__name__)
