"""How deep a JSON text is nested, told before it is parsed: a parser calls itself for every level, and in a browser enough of them
end the interpreter itself, which no `except` sees."""

import re

BRACKETS = re.compile(r"[\[{]+|[\]}]+")


def deeper_than(text: str, most: int) -> bool:
    """Whether lists and objects stand more than `most` deep in a JSON text. What is no JSON may get either answer, and is deep no
    further than a parser would read it."""
    plain = text.replace("\\\\", "").replace('\\"', "")  # what is left of quotes begins and ends texts
    depth = 0
    for run in BRACKETS.findall("".join(plain.split('"')[::2])):
        depth += len(run) if run[0] in "[{" else -len(run)
        if depth > most:
            return True
    return False
