"""What can be made: for each kind its measures as inputs, and its pieces of cloth with their areas, recorded in the working."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Piece:
    """One piece of cloth: what it is called and its area in all (both sleeves, both socks), cm²; step names it in the working."""

    step: str
    label: str
    area: float


@dataclass(frozen=True)
class Cloth:
    """All pieces of one thing, and the measures, cm, that its outline is labeled with."""

    pieces: tuple[Piece, ...]
    measures: dict[str, float]

    @property
    def area(self) -> float:
        """cm²."""
        return sum(piece.area for piece in self.pieces)

    @property
    def sum_text(self) -> str:
        """The sum of the pieces as a working writes it."""
        return " + ".join(piece.step for piece in self.pieces)
