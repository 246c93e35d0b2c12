"""Yarn: counts, wraps, diameter, skein length, true weight, splitting and reeling."""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ..ask.yarn import *  # noqa: F403
else:
    from ..core.functions import functions_of

    __getattr__, __dir__ = functions_of(__name__)
