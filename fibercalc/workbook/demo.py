"""The demo workbook: the invented studio's records, as the file that the book would export."""

import sys

from ..core.table import data_in


def demo_text() -> str:
    """The file's text: inside the package in the browser, where it comes out of a zip; beside it in
    a checkout.
    """
    package = sys.modules[__name__.partition(".")[0]]
    try:
        return data_in(package, "_shared", "demo", "workbook.json").decode()
    except OSError:
        return data_in(package, "..", "shared", "demo", "workbook.json").decode()
