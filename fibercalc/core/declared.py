"""What a declaration is in code: a frozen object that is told apart by being itself."""

from dataclasses import dataclass

# What is declared stands once: it is never compared or printed, and the browser's Python would write the functions for that
# anew at every start.
declared = dataclass(frozen=True, eq=False, repr=False)
