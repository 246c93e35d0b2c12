"""The cards of the wash chapter, one declaration in each file."""
