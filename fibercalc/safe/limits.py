"""How a published limit is named beside an answer: what it says, whose it is, and when it was
read.
"""

import re

from ..core.amount import NO_BREAK
from ..sources import all_sources

WHEN = {
    "read": "read {}",
    "secondary": "read {} in a page that quotes it",
    "memory": "from memory, unverified",
}


def published(what: str, source_id: str, how: str = "") -> str:
    """A limit with its body and the date on which it was read.

    what       the limit in words, "10 ppm over 8 hours"
    source_id  of the bibliography; what has no body is named by the head of its title
    how        this one value was come by, where it is not as its source was: read, secondary or
               memory
    Raises KeyError for an unknown source.
    Source: definition (the bibliography says how each was come by).
    """
    source = all_sources()[source_id]
    body = source.body or source.title.partition(",")[0].partition(" (")[0]
    what = re.sub(r"(?<=\d) (?=(?:%|°C|ppm|mg|kg|min|s|h)\b|%)", NO_BREAK, what)
    return f"{what}: {body}, {WHEN[how or source.how].format(source.read)}"
