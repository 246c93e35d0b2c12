"""The demo workbook: the invented studio's records, as the file that the book would export."""

import sys
from os.path import dirname, join


def demo_text() -> str:
    """The file's text: inside the package in the browser, where it comes out of a zip; beside it in a checkout."""
    package = sys.modules[__name__.partition(".")[0]]
    home = dirname(package.__file__)
    try:
        return package.__loader__.get_data(join(home, "_shared", "demo", "workbook.json")).decode()
    except OSError:
        return package.__loader__.get_data(
            join(dirname(home), "shared", "demo", "workbook.json")
        ).decode()
