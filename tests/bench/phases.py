"""Where an answer's time goes inside Python: read, work, and each slot. Runs in the browser's Python and in this one.

The real path is timed: the boundary's own parts are wrapped, not copied.
"""

import json
from time import perf_counter

from fibercalc.site import asked, boundary, parts


def spent_by_phase(requests: list[str]) -> dict[str, list[float]]:
    """ms of every request, for the whole and for each of its phases. The first request is asked once before, uncounted."""
    spent: dict[str, float] = {}

    def timed(name, function):
        def run(*arguments, **named):
            began = perf_counter()
            try:
                return function(*arguments, **named)
            finally:
                spent[name] = spent.get(name, 0.0) + 1000 * (perf_counter() - began)

        return run

    originals = asked.read_inputs, asked.work_given, asked.query_of, dict(parts.SLOTS)
    boundary.handle(requests[0])
    asked.read_inputs, asked.work_given, asked.query_of = (
        timed(name, function) for name, function in zip(("read", "work", "link"), originals)
    )
    parts.SLOTS |= {name: timed(name, function) for name, function in parts.SLOTS.items()}
    whole = timed("whole", boundary.handle)
    times: dict[str, list[float]] = {}
    try:
        for request in requests:
            spent.clear()
            reply = json.loads(whole(request))
            if not reply.get("ok", {}).get("answered"):
                raise RuntimeError(f"not answered: {request[:200]}")
            for name, value in spent.items():
                times.setdefault(name, []).append(value)
    finally:
        asked.read_inputs, asked.work_given, asked.query_of = originals[:3]
        parts.SLOTS |= originals[3]
    return times
