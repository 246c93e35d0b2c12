"""Wall charts of the safe chapter: published limits with their bodies and dates."""

from .limits import air_limits, burn_times, drain_limits, label_limits, mordant_marks
from .masks import masks

__all__ = ["air_limits", "burn_times", "drain_limits", "label_limits", "masks", "mordant_marks"]
