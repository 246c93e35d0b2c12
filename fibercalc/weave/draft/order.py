"""Orders of colors: how a short list of stripes fills a warp or a piece, thread by thread."""

from collections.abc import Sequence

from ...core.problem import OutOfRange, require

MOST = 4000  # threads


def there_and_back(counts: Sequence[int]) -> list[int]:
    """Places (from 0) of an order that is mirrored: to the last stripe and back, the first and the last standing once.

    counts  threads of each stripe; one or more
    Raises OutOfRange for none.
    Source: common practice (a mirrored stripe order).
    """
    require("counts", len(counts), 1)
    there = list(range(len(counts)))
    return there + there[-2:0:-1]


def stripes(counts: Sequence[int], total: int) -> list[tuple[int, int]]:
    """Stripes (place in the order, threads) of an order woven over and over until it has total threads; the last one is cut.

    counts  threads of each stripe, in order, each 1 to 4,000
    total   threads to fill, 0 to 4,000
    Raises OutOfRange outside these, or for no stripe.
    Source: arithmetic.
    """
    times, rest = repeats(counts, total)
    return [*enumerate(counts)] * times + rest


def repeats(counts: Sequence[int], total: int) -> tuple[int, list[tuple[int, int]]]:
    """How often a whole order fits into total threads, and the stripes (place, threads) that are left over.

    counts  threads of each stripe, in order, each 1 to 4,000
    total   threads to fill, 0 to 4,000
    Raises OutOfRange outside these, or for no stripe.
    Source: arithmetic.
    """
    require("total", total, 0, MOST)
    require("counts", len(counts), 1)
    for count in counts:
        require("counts", count, 1, MOST)
    times, left = divmod(int(total), sum(counts))
    rest = []
    for place, count in enumerate(counts):
        if left <= 0:
            break
        rest.append((place, min(count, left)))
        left -= count
    return times, rest


def threads_by_stripe(runs: Sequence[tuple[int, int]], places: int) -> list[int]:
    """Threads of each place of an order.

    runs    stripes (place, threads), as stripes gives them
    places  how many places the order has, 1 or more
    Raises OutOfRange for fewer places than the stripes have.
    Source: arithmetic.
    """
    require("places", places, max((place + 1 for place, _ in runs), default=1))
    found = [0] * int(places)
    for place, count in runs:
        found[place] += count
    return found


def merged(runs: Sequence[tuple[int, int]], names: Sequence[int]) -> list[tuple[int, int]]:
    """Stripes by color: each place of the order replaced by its color, neighbors of one color joined.

    runs   stripes (place, threads)
    names  the color of each place
    Raises OutOfRange for a place without a color.
    Source: arithmetic.
    """
    found: list[tuple[int, int]] = []
    for place, count in runs:
        if place >= len(names):
            raise OutOfRange("runs", place, 0, len(names) - 1)
        if found and found[-1][0] == names[place]:
            found[-1] = (found[-1][0], found[-1][1] + count)
        else:
            found.append((names[place], count))
    return found
