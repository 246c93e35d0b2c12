"""Length of yarn in a skein: by turns of a reel, and by weighing a measured sample.

By turns is good when the circumference was measured on yarn at winding tension and the stretch is
known; by weight is good when the sample is long and both were weighed equally dry. Their spreads
say which to trust today.
"""

from ..core.problem import require


def relaxed_circumference(circumference: float, stretch: float = 0.0) -> float:
    """Length of yarn, m, that one turn holds once it is off the reel and rested.

    circumference  m, 0.05 to 10; measured on the yarn as it lies on the reel
    stretch        % by which yarn on the reel is longer than rested yarn, 0 to 20 (1 to 3 is usual)
    Raises OutOfRange outside these.
    Source: common practice (usual stretch from memory, trade-memory).
    """
    require("circumference", circumference, 0.05, 10.0)
    require("stretch", stretch, 0.0, 20.0)
    return circumference / (1 + stretch / 100)


def length_by_turns(turns: float, turn_length: float) -> float:
    """Length of a skein, m: turns x the length one turn holds.

    turns        number of turns, above 0 to 100,000
    turn_length  m, 0.05 to 10; see relaxed_circumference
    Raises OutOfRange outside these.
    Source: common practice.
    """
    require("turns", turns, 0.0, 100_000.0, above=0.0)
    require("turn_length", turn_length, 0.05, 10.0)
    return turns * turn_length


def length_by_weighing(skein_mass: float, sample_length: float, sample_mass: float) -> float:
    """Length of a skein, m, from a weighed sample of the same yarn.

    skein_mass     g, above 0; yarn only, without ties or band
    sample_length  m, above 0; measured rested
    sample_mass    g, above 0; weighed as dry as the skein
    Raises OutOfRange when any of them is not above 0.
    Source: common practice (weight and length are proportional).
    """
    require("skein_mass", skein_mass, above=0.0)
    require("sample_length", sample_length, above=0.0)
    require("sample_mass", sample_mass, above=0.0)
    return skein_mass * sample_length / sample_mass
