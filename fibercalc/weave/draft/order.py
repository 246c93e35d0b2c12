"""Orders of colors: how a short list of stripes fills a warp or a piece, thread by thread."""

import re
from collections.abc import Sequence
from functools import lru_cache

from ...core.problem import OutOfRange, require

MOST = 4000  # threads
BETWEEN = re.compile(r"[\s,;+]*")


def letter(place: int) -> str:
    """The letter that stands for a yarn: A for the first.

    place  from 0 to 25
    Raises OutOfRange outside these.
    Source: common practice (color orders in letters).
    """
    require("place", place, 0, 25)
    return chr(ord("A") + int(place))


def read_order(text: str, names: Sequence[str]) -> tuple[tuple[int, int], ...]:
    """Stripes (yarn, threads) from an order as a weaver notes it: "10 A, 4 B" or "10 Natural 4
    Slate"; a yarn alone is one thread.

    text   the order
    names  of the yarns, up to 26; a yarn is called by its name or its letter, in capitals or small
    Raises OutOfRange for what is no yarn, for no stripe at all, for more than 64 stripes, and for a
    stripe outside 1 to 4,000 threads.
    Source: common practice (color orders in letters).
    """
    return _read_order(text, tuple(names))


@lru_cache(maxsize=256)
def _read_order(text: str, names: tuple[str, ...]) -> tuple[tuple[int, int], ...]:
    known = {letter(place).lower(): place for place in range(len(names))} | {
        name.lower(): place for place, name in enumerate(names) if name
    }
    choices = "|".join(re.escape(name) for name in sorted(known, key=len, reverse=True)) or "(?!)"
    token = re.compile(rf"(?:(\d{{1,5}})\s*[x×]?\s*)?({choices})(?![^\W\d_])", re.IGNORECASE)
    found: list[tuple[int, int]] = []
    at = _after(text, 0)
    while at < len(text):
        stripe = token.match(text, at)
        # A letter's case is not always undone by lower().
        yarn = known.get(stripe[2].lower()) if stripe else None
        if stripe is None or yarn is None:
            raise OutOfRange(
                "text",
                0,
                reason=(
                    f"“{' '.join(text[at : at + 16].split())}” is not understood; write threads and"
                    " yarn, such as 10 A, 4 B"
                ),
            )
        found.append((yarn, int(stripe[1] or 1)))
        at = _after(text, stripe.end())
    if not 1 <= len(found) <= 64:
        raise OutOfRange(
            "text", len(found), reason=f"{len(found)} stripes; give 1 to 64, such as 10 A, 4 B"
        )
    if any(not 1 <= count <= MOST for _, count in found):
        raise OutOfRange("text", 0, reason=f"a stripe has 1 to {MOST:,} threads")
    return tuple(found)


def _after(text: str, at: int) -> int:
    """Where the next stripe begins, past what stands between."""
    between = BETWEEN.match(text, at)
    return between.end() if between else at


def there_and_back(counts: Sequence[int]) -> list[int]:
    """Places (from 0) of an order that is mirrored: to the last stripe and back, the first and the
    last standing once.

    counts  threads of each stripe; one or more
    Raises OutOfRange for none.
    Source: common practice (a mirrored stripe order).
    """
    require("counts", len(counts), 1)
    there = list(range(len(counts)))
    return there + there[-2:0:-1]


def stripes(counts: Sequence[int], total: int) -> list[tuple[int, int]]:
    """Stripes (place in the order, threads) of an order woven over and over until it has total
    threads; the last one is cut.

    counts  threads of each stripe, in order, each 1 to 4,000
    total   threads to fill, 0 to 4,000
    Raises OutOfRange outside these, or for no stripe.
    Source: arithmetic.
    """
    times, rest = repeats(counts, total)
    return [*enumerate(counts)] * times + rest


def repeats(counts: Sequence[int], total: int) -> tuple[int, list[tuple[int, int]]]:
    """How often a whole order fits into total threads, and the stripes (place, threads) that are
    left over.

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
    places  how many places the order has
    Raises OutOfRange for fewer places than the stripes have.
    Source: arithmetic.
    """
    require("places", places, max((place + 1 for place, _ in runs), default=1))
    found = [0] * int(places)
    for place, count in runs:
        found[place] += count
    return found


def merged(runs: Sequence[tuple[int, int]], names: Sequence[int]) -> list[tuple[int, int]]:
    """Stripes by color: each place of the order replaced by its color, neighbors of one color
    joined.

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
