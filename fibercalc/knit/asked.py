"""What a customer may ask for with only a skein in hand: projects and their sizes, as inputs of the card yarn-needed.

Data only. Whoever shows it adds the skein and how sure one wants to be.
"""

from dataclasses import dataclass


@dataclass(frozen=True)
class Size:
    """One size: its key, the words a customer picks, and the card's inputs that stand for it."""

    key: str
    label: str
    texts: dict[str, str]


@dataclass(frozen=True)
class Project:
    """One thing to make: its key, the words a customer picks, what is taken for granted, its sizes and the size shown first."""

    key: str
    label: str
    assumes: str
    sizes: tuple[Size, ...]
    first: str


PROJECTS = (
    Project("sweater-woman", "Sweater, woman", "Plain knitting, long sleeves, some ease.",
            tuple(Size(key, key.upper(), {"make": "sweater", "size": f"woman-{key}"}) for key in ("xs", "s", "m", "l", "xl")), "m"),
    Project("hat", "Hat", "Plain knitting.", tuple(Size(key, key.capitalize(), {"make": "hat", "size": key}) for key in ("baby", "child", "woman", "man")), "woman"),
)
