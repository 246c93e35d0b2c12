"""The cards of the weave chapter, one declaration in each file."""
