"""One card a file."""
