"""The cards of the sell chapter, one declaration in each file."""
