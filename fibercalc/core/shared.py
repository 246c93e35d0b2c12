"""Data of the project: beside the package in a checkout, inside it in a wheel and a browser."""

import sys
from os.path import dirname, join
from typing import Any


def shared_text(*place: str) -> str:
    """The text of a file of shared/, by its folder and name.

    Raises FileNotFoundError where it is in neither place.
    """
    package = sys.modules[__name__.partition(".")[0]]
    home = dirname(str(package.__file__))
    loader: Any = package.__loader__  # reads from a folder and from a zip alike
    for folder in (join(home, "_shared"), join(dirname(home), "shared")):
        try:
            return str(loader.get_data(join(folder, *place)), "utf-8")
        except OSError:
            continue
    raise FileNotFoundError(f"{'/'.join(place)} is neither in this package nor beside it")
