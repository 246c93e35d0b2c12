"""How deep a text is nested, held to what the standard parser makes of it."""

import json

from hypothesis import given
from hypothesis import strategies as st

from fibercalc.core.nesting import deeper_than

LETTERS = st.text(st.sampled_from('[]{}",:\\\\ab'), max_size=8)
CONTENT = st.recursive(LETTERS | st.integers() | st.none(), lambda inner: st.lists(inner, max_size=3) | st.dictionaries(LETTERS, inner, max_size=3), max_leaves=20)


def depth(content) -> int:
    inner = content.values() if isinstance(content, dict) else content if isinstance(content, list) else None
    return 0 if inner is None else 1 + max(map(depth, inner), default=0)


@given(CONTENT, st.sampled_from([None, 1]))
def test_it_is_as_deep_as_what_is_parsed(content, indent):
    text = json.dumps(content, indent=indent)
    assert not deeper_than(text, depth(content)) and (depth(content) == 0 or deeper_than(text, depth(content) - 1))


def test_a_text_that_never_ends_hides_nothing_before_it():
    assert deeper_than("[[[[" + '"]]]]', 3) and not deeper_than('"' + "[" * 50, 0) and deeper_than("[" * 200_000, 8)
