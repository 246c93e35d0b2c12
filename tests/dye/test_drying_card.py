"""Drying by a weighing on the way."""

import pytest

from fibercalc import work
from fibercalc.core.problem import BadInputs


def weighed(mass):
    return work("drying", {"weighed": "yes", "weighed_mass": mass})


def test_a_weighing_before_anything_has_gone_tells_no_pace():
    """Of 760 g wet about 350 g are to go: 2 g are under one percent of that, 20 g are not."""
    with pytest.raises(BadInputs, match="weigh later"):
        weighed("758 g")
    assert weighed("740 g")["results"]["time"]["value"] > 0
