"""The demo workbook: the invented studio's records, as the file that the book would export."""

from ..core.shared import shared_text


def demo_text() -> str:
    """The file's text."""
    return shared_text("demo", "workbook.json")
