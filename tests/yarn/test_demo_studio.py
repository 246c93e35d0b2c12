"""The demo studio's derived yarn numbers come out of the package."""

import tomllib
from pathlib import Path

import pytest

from fibercalc.yarn import count, putup, reel, split

DEMO = Path(__file__).parents[2] / "shared" / "demo"
BASES = tomllib.loads((DEMO / "bases.toml").read_text("utf-8"))["base"]
STUDIO = tomllib.loads((DEMO / "studio.toml").read_text("utf-8"))
SET = tomllib.loads((DEMO / "release.toml").read_text("utf-8"))["set"]
TURN = STUDIO["instruments"]["reel_circumference_m"]


@pytest.mark.parametrize("base", BASES, ids=lambda base: base["id"])
def test_printed_yards_of_each_base_are_the_meters_rounded_down(base):
    """459, 251 and 185 yards."""
    assert putup.printed_yards(base["meters"]) == base["printed_yards"]


@pytest.mark.parametrize("path", sorted(DEMO.glob("*.toml")), ids=lambda path: path.stem)
def test_each_demo_file_can_be_read(path):
    """TOML that Python reads."""
    assert tomllib.loads(path.read_text("utf-8"))


def test_twelve_lamps_gets_five_small_skeins_at_54_turns_and_four_at_56():
    """The set's own numbers, from its base and the studio's reel."""
    base = next(base for base in BASES if base["id"] == SET["base"])
    tex = count.linear_density(base["grams"], base["meters"])
    usable = split.usable_amount(base["grams"], SET["loss_percent"])
    asked, fewer = (
        reel.mass_of_turns(SET[name], TURN, tex) for name in ("turns_asked", "turns_that_give_five")
    )
    assert asked == pytest.approx(SET["small_skein_grams_asked"])
    assert (split.small_skeins(usable, asked), split.small_skeins(usable, fewer)) == (4, 5)
    assert putup.printed_grams(fewer) == SET["printed_grams_at_54_turns"]
    assert split.most_turns_for_count(usable * 1000 / tex, 5, TURN) == SET["turns_that_give_five"]
