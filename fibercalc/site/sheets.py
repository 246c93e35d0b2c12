"""Our style sheets as a page gets them: several joined into one. Never in the browser's package."""

import re
from collections.abc import Iterable
from pathlib import Path

FOR_READERS = re.compile(r"/\*.*?\*/|(?<=\n)\s+", re.DOTALL)  # comments, indents, empty lines


def joined(sheets: Iterable[Path]) -> str:
    """The rules of these sheets in their order, without what only who writes them needs."""
    return FOR_READERS.sub("", "".join(each.read_text("utf-8") for each in sheets))
