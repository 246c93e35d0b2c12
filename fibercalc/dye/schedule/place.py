"""Loads placed one after the other, each stretch at the earliest time at which
everything it needs is free.

A list scheduler: the order is given, the times follow. What comes before the pot (weighing, wetting
out) is then drawn back to as late as it can be, so that no skein lies wet for days.
"""

from bisect import bisect_right, insort
from collections.abc import Sequence
from dataclasses import dataclass
from math import floor

from .room import DAY, NOISE, Load, Room, Stretch

ENDLESS = float("inf")


@dataclass(slots=True)
class Place:
    """Where one stretch of one load stands: when, on which burner, by whose hands (one for
    each of its hand steps)."""

    start: float
    burner: int | None = None
    hands: tuple[int, ...] = ()


class Bookings:
    """Spans of time on several like things (burners, people), none of them booked twice."""

    def __init__(self, count: int):
        self.spans: list[list[tuple[float, float]]] = [[] for _ in range(count)]

    def earliest(self, start: float, minutes: float) -> tuple[float, int]:
        """The earliest start from a time on, and which of them is free then: among several, the
        one that was busy last."""
        best = (ENDLESS, 0.0, 0)
        for unit, spans in enumerate(self.spans):
            at = start
            place = bisect_right(spans, (start, ENDLESS))
            if place and spans[place - 1][1] > at:
                at = spans[place - 1][1]
            while place < len(spans) and spans[place][0] < at + minutes - NOISE:
                at = spans[place][1]
                place += 1
            found = (at, -spans[place - 1][1] if place else 0.0, unit)
            if found < best:
                best = found
        return best[0], best[2]

    def latest(self, end: float, minutes: float) -> tuple[float, int]:
        """The latest start that is over by a time, and which of them is free then."""
        best = (-ENDLESS, 0)
        for unit, spans in enumerate(self.spans):
            at = end - minutes
            place = bisect_right(spans, (end - NOISE, -ENDLESS)) - 1
            while place >= 0 and spans[place][1] > at + NOISE:
                at = spans[place][0] - minutes
                place -= 1
            if at > best[0]:
                best = (at, unit)
        return best

    def is_free(self, unit: int, start: float, minutes: float) -> bool:
        """Whether there is such a one, with nothing booked then."""
        return unit < len(self.spans) and all(
            end <= start + NOISE or begin >= start + minutes - NOISE
            for begin, end in self.spans[unit]
        )

    def book(self, unit: int, start: float, minutes: float) -> None:
        insort(self.spans[unit], (start, start + minutes))

    def free(self, unit: int, start: float, minutes: float) -> None:
        self.spans[unit].remove((start, start + minutes))


class Placing:
    """The room while it is being booked."""

    def __init__(self, loads: Sequence[Load], room: Room):
        self.loads, self.room = loads, room
        self.burners, self.hands = Bookings(room.burners), Bookings(room.hands)
        self.pot_free = [0.0] * len(room.pots)
        self.pot_of = [0] * len(loads)
        self.ready = [0.0] * len(loads)
        self.places: list[list[Place]] = [[] for _ in loads]

    def into_pot(self, number: int, pot: int | None = None) -> None:
        """Place a load from its first step to the last one in its pot: the pot that is free
        first, unless one is given."""
        load = self.loads[number]
        if pot is None:
            pot = min(
                (unit for unit, size in enumerate(self.room.pots) if size >= load.skeins),
                key=lambda unit: (self.pot_free[unit], self.room.pots[unit], unit),
            )
        self.pot_of[number] = pot
        for place, stretch in enumerate(load.stretches[: load.last_pot + 1]):
            if place == load.first_pot:
                self.ready[number] = max(self.ready[number], self.pot_free[pot])
            self._next(number, stretch)
            if place == load.first_pot:
                self._draw_back(number)
        self.pot_free[pot] = self.ready[number]

    def after_pot(self, number: int) -> None:
        """Place what is left to do once the pot is free for another load."""
        for stretch in self.loads[number].stretches[self.loads[number].last_pot + 1 :]:
            self._next(number, stretch)

    def _next(self, number: int, stretch: Stretch) -> None:
        start = self._earliest(stretch, self.ready[number])
        burner = None
        if stretch.burner:
            offset, minutes = stretch.burner
            pot = self.pot_of[number]  # a pot stays on the burner it stands by, where that is free
            burner = (
                pot
                if self.burners.is_free(pot, start + offset, minutes)
                else self.burners.earliest(start + offset, minutes)[1]
            )
            self.burners.book(burner, start + offset, minutes)
        hands = []
        for offset, minutes in stretch.hands:
            hands.append(self.hands.earliest(start + offset, minutes)[1])
            self.hands.book(hands[-1], start + offset, minutes)
        self.places[number].append(Place(start, burner, tuple(hands)))
        self.ready[number] = start + stretch.minutes

    def _earliest(self, stretch: Stretch, ready: float) -> float:
        """The earliest start at which burner and hands are free and the day is long enough."""
        within, start = stretch.minutes if stretch.working else 0.0, ready
        while True:
            start = moved = in_hours(start, within, self.room.day)
            if stretch.burner:
                offset, minutes = stretch.burner
                moved = max(moved, self.burners.earliest(start + offset, minutes)[0] - offset)
            for offset, minutes in stretch.hands:
                moved = max(moved, self.hands.earliest(moved + offset, minutes)[0] - offset)
            if moved <= start + NOISE:
                return start
            start = moved

    def _draw_back(self, number: int) -> None:
        """Move what comes before the pot to as late as it can be. No burner stands there: a
        burner is under a pot."""
        before = self.places[number][-1].start
        for place, stretch in reversed(
            list(zip(self.places[number][:-1], self.loads[number].stretches))
        ):
            if stretch.hands:
                self.hands.free(place.hands[0], place.start, stretch.minutes)
            within, start, end = stretch.minutes if stretch.working else 0.0, place.start, before
            while True:
                at = in_hours_before(end - stretch.minutes, within, self.room.day)
                if stretch.hands:
                    free, unit = self.hands.latest(at + stretch.minutes, stretch.minutes)
                    if free < at - NOISE:
                        end = free + stretch.minutes
                        continue
                    place.hands = (unit,)
                break
            place.start = before = max(at, start)
            if stretch.hands:
                self.hands.book(place.hands[0], place.start, stretch.minutes)


def in_hours(start: float, within: float, day: float) -> float:
    """The earliest start from a time on that leaves so many minutes of the working day."""
    morning = floor(start / DAY + 1e-9) * DAY
    return start if start + within <= morning + day + NOISE else morning + DAY


def in_hours_before(start: float, within: float, day: float) -> float:
    """The latest start up to a time that leaves so many minutes of the working day."""
    return min(start, floor(start / DAY + 1e-9) * DAY + day - within)


def hang(ready: Sequence[float], skeins: Sequence[int], room: Room) -> list[float]:
    """When each load is hung up: in the order in which they are ready, in working hours,
    where the rail has room."""
    starts, last = [0.0] * len(ready), 0.0
    hanging: list[tuple[float, int]] = []
    for number in sorted(range(len(ready)), key=lambda number: (ready[number], number)):
        at = in_hours(max(ready[number], last), 0.0, room.day)
        hanging = [(end, count) for end, count in hanging if end > at + NOISE]
        while sum(count for _, count in hanging) + skeins[number] > room.rail:
            at = in_hours(min(end for end, _ in hanging), 0.0, room.day)
            hanging = [(end, count) for end, count in hanging if end > at + NOISE]
        starts[number] = last = at
        hanging.append((at + room.drying, skeins[number]))
    return starts
