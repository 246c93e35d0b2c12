"""What several cards ask or answer alike: the limit that each names.
A card takes one with `replace`, and says what differs there.
"""

from ..core.card import TEXT, Result

LIMIT = Result[str](TEXT, "Published limit")
