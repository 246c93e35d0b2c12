"""How a person likes numbers written: number style, unit system and money sign. Kept in My bench,
stated on every page.
"""

from dataclasses import dataclass
from typing import Any

SYSTEMS = ("both", "metric", "us")


@dataclass(frozen=True)
class Settings:
    """style: "point" (1,200.5) or "comma" (1 200,5); system: "both", "metric" or "us"; money: the
    user's own sign.
    """

    style: str = "point"
    system: str = "both"
    money: str = "€"

    @classmethod
    def from_texts(cls, given: Any) -> "Settings":
        """Settings from untrusted texts; what is not understood keeps its default."""
        given = given if isinstance(given, dict) else {}
        style, system, money = given.get("style"), given.get("system"), given.get("money")
        return cls(
            style if style in ("point", "comma") else cls.style,
            system if system in SYSTEMS else cls.system,
            (
                money.strip()
                if isinstance(money, str)
                and 0 < len(money.strip()) <= 4
                and not any(c.isdigit() for c in money)
                else cls.money
            ),
        )
