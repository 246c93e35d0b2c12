"""Loads in which nothing that belongs together is parted: the skeins of one color of one kit come
out of one pot.
"""

from collections.abc import Sequence

from ..core.problem import require

MOST_LARGEST, MOST_SKEINS = 500, 20_000


def loads_kept_whole(blocks: Sequence[tuple[int, int]], largest: int) -> list[int]:
    """Loads of one color, as skeins in each, so that every block is in one load; the largest
    blocks are placed first, each in the fullest load that takes it.

    blocks   (skeins that belong together, how many such), each 1 or more
    largest  skeins that a load takes, 1 to 500
    Raises OutOfRange outside these. A block larger than a load is cut into full loads and a rest:
    see too_large.
    Source: common practice (best fit, largest first).
    """
    require("largest", largest, 1, MOST_LARGEST)
    counts: dict[int, int] = {}
    for size, many in blocks:
        require("blocks", size, 1, MOST_SKEINS)
        require("blocks", many, 0, MOST_SKEINS)
        full, rest = divmod(size, largest)
        for part, times in ((largest, full), (rest, 1 if rest else 0)):
            counts[part] = counts.get(part, 0) + many * times
    rooms = [0] * (largest + 1)  # how many loads have so much room left
    for size in sorted(counts, reverse=True):
        for _ in range(counts[size]):
            room = next((room for room in range(size, largest) if rooms[room]), largest)
            if room < largest:
                rooms[room] -= 1
            rooms[room - size] += 1
    return [largest - room for room in range(largest) for _ in range(rooms[room])]


def too_large(blocks: Sequence[tuple[int, int]], largest: int) -> int:
    """How many things that belong together are larger than a load, so that they must cross two.

    blocks   (skeins that belong together, how many such), each 1 or more
    largest  skeins that a load takes, 1 to 500
    Raises OutOfRange outside these.
    Source: arithmetic.
    """
    require("largest", largest, 1, MOST_LARGEST)
    return sum(many for size, many in blocks if size > largest)
