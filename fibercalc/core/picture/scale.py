"""A straight or logarithmic scale from values to places on a sheet, with ticks at round numbers."""

from math import ceil, floor, log10


class Scale:
    """Maps low..high to start..end; logarithmic where asked (low > 0)."""

    def __init__(
        self, low: float, high: float, start: float, end: float, logarithmic: bool = False
    ):
        if high <= low:
            high = low + max(abs(low) * 0.1, 1e-9)
        self.low, self.high, self.start, self.end, self.logarithmic = (
            low,
            high,
            start,
            end,
            logarithmic,
        )

    def __call__(self, value: float) -> float:
        """The place of a value, held to the scale's ends."""
        value = min(max(value, self.low), self.high)
        if self.logarithmic:
            share = log10(value / self.low) / log10(self.high / self.low)
        else:
            share = (value - self.low) / (self.high - self.low)
        return self.start + share * (self.end - self.start)


def nice_ticks(low: float, high: float, most: int = 6) -> list[float]:
    """Round numbers from low to high, at most so many."""
    if high <= low:
        return [low]
    rough = (high - low) / max(most - 1, 1)
    size = 10.0 ** floor(log10(rough))
    step = next(size * k for k in (1, 2, 5, 10) if size * k >= rough * (1 - 1e-9))
    first = ceil(low / step - 1e-9)
    return [k * step for k in range(first, floor(high / step + 1e-9) + 1)]
