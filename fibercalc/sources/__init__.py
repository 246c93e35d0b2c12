"""The one bibliography. Each source is a constant, so a misspelt one fails at import; cards and
tables name sources by id.
"""

from functools import cache

from .dye import *  # noqa: F403
from .knit import *  # noqa: F403
from .safe import *  # noqa: F403
from .sell import *  # noqa: F403
from .source import *  # noqa: F403
from .wash import *  # noqa: F403
from .weave import *  # noqa: F403
from .yarn import *  # noqa: F403


@cache
def all_sources() -> dict[str, Source]:  # noqa: F405
    """Every source by its id."""
    found = globals().values()
    return {value.id: value for value in found if isinstance(value, Source)}  # noqa: F405
