"""What is printed: a line for each measure with its value, its limit, and on which side of it the value lies."""

import os
import platform
import traceback
from statistics import median


class NotMeasured(RuntimeError):
    """Something could not be measured; the message says what."""


class Report:
    """Prints as it goes, and remembers what lies above its limit and what could not be measured."""

    def __init__(self, out):
        self._out = out
        self._above: list[str] = []
        self._missing: list[str] = []
        self.say(
            f"Python {platform.python_version()}, {os.cpu_count()} cores, load {_load()}. A load"
            " above 1 makes the times worse and the ratios rough."
        )

    def say(self, text: str) -> None:
        self._out.write(text + "\n")
        self._out.flush()

    def line(
        self,
        measure: str,
        value: float,
        limit: float | None = None,
        unit: str = "",
        digits: int = 0,
        note: str = "",
    ) -> None:
        """One measure. Without a limit it is there to explain the others."""
        judged = (
            ""
            if limit is None
            else f"limit {limit:,.{digits}f}{unit}  {'within' if value <= limit else 'ABOVE'}"
        )
        self.say(f"  {measure:<66} {value:>10,.{digits}f}{unit:<3} {judged:<26} {note}".rstrip())
        if limit is not None and value > limit:
            self._above.append(
                f"{measure}: {value:,.{digits}f}{unit}, limit {limit:,.{digits}f}{unit}"
            )

    def missed(self, what: str) -> None:
        """Something that could not be measured, and why."""
        self.say(f"  NOT MEASURED: {what}")
        self._missing.append(what)

    def part(self, name: str, measure, options) -> None:
        """One part of the benchmark; what stops it is said and the next part is measured all the same."""
        self.say(f"\n{name} (load {_load()})")
        try:
            measure(self, options)
        except Exception as problem:  # a part that breaks must not take the others with it
            if not isinstance(problem, NotMeasured):
                self.say(traceback.format_exc())
            self.missed(f"{name}: {problem}")

    def end(self) -> int:
        """The last lines and the exit code."""
        self.say("\nAbove the limit: " + ("nothing." if not self._above else ""))
        for each in self._above:
            self.say(f"  {each}")
        for each in self._missing:
            self.say(f"Not measured: {each}")
        return 1 if self._missing else 0


def _load() -> str:
    return f"{os.getloadavg()[0]:.1f}"


def share(values: list[float], part: float = 0.95) -> float:
    """The value that this part of all values does not exceed (nearest rank)."""
    ordered = sorted(values)
    return ordered[max(0, -int(-part * len(ordered) // 1) - 1)]


def middle(values: list[float]) -> float:
    """The median. Raises NotMeasured when there is nothing."""
    if not values:
        raise NotMeasured("no round gave a value")
    return median(values)
