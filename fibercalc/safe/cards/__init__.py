"""The cards of the safe chapter, one declaration in each file."""
