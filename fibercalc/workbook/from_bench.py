"""The workbook grows out of My bench: its saved bases become base records, a lot named there a
mill lot. What it holds besides (units, reels, scales, water, pots) stays My bench's and
travels in the same file.
"""

import re
import unicodedata
from typing import Any

from . import bench
from .records import SCHEMA

REV, BEFORE_ALL = "1-mybench", "2000-01-01T00:00:00Z"
BLEND = re.compile(r"(\d{1,3}(?:/\d{1,3})*) (.+)")


def records_of_bench(record: dict[str, Any]) -> list[dict[str, Any]]:
    """Base and mill lot records for a bench record as read. The same bench gives the same
    records, so bringing it in twice adds none.
    """
    found = []
    taken: set[str] = set()
    for number in range(1, record["rows"].get("bases", 0) + 1):
        held = {
            field: record["values"].get(f"bases.{number}.{field}", "")
            for field in ("name", "fiber", "mass", "length", "weight_class", "lot", "price")
        }
        slug = _slug(held["name"], taken)
        fibers = _fibers(held["fiber"])
        values = {
            "name": held["name"],
            **{
                name: held[name]
                for name in ("mass", "length", "weight_class", "price")
                if held[name]
            },
        }
        for row, (fiber, share) in enumerate(fibers, 1):
            values |= {f"fibers.{row}.fiber": fiber} | (
                {f"fibers.{row}.share": share} if share else {}
            )
        found.append(
            _document("base", f"base-{slug}", values, {"fibers": len(fibers)} if fibers else {})
        )
        if held["lot"]:
            found.append(
                _document(
                    "mill-lot", f"mill-lot-{slug}", {"lot": held["lot"], "base": f"base-{slug}"}, {}
                )
            )
    return found


def bench_and_records(data: Any) -> tuple[dict[str, Any], list[dict[str, Any]], list[str]]:
    """A bench file of any schema: the bench record in its newest, the records that come of it,
    and notes on what could not be read.
    """
    record, notes = bench.read_record(data)
    return record, records_of_bench(record), notes


def _document(
    kind: str, record_id: str, values: dict[str, Any], rows: dict[str, Any]
) -> dict[str, Any]:
    return {
        "id": record_id,
        "kind": kind,
        "schema": SCHEMA,
        "rev": REV,
        "past": [],
        "changed": BEFORE_ALL,
        "values": values,
        "rows": rows,
    }


def _slug(name: str, taken: set[str]) -> str:
    plain = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode().lower()
    slug = re.sub(r"[^a-z0-9]+", "-", plain).strip("-")[:40] or "base"
    while slug in taken:
        slug += "-again"
    taken.add(slug)
    return slug


def _fibers(text: str) -> list[tuple[str, str]]:
    """75/25 superwash wool/nylon as two fibers with their shares; what is not written so, as one
    text.
    """
    if found := BLEND.fullmatch(text):
        shares, fibers = found[1].split("/"), found[2].split("/")
        if len(shares) == len(fibers) and sum(map(int, shares)) == 100:
            return [(fiber.strip(), f"{share}%") for share, fiber in zip(shares, fibers)]
    return [(text, "")] if text else []
