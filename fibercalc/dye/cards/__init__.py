"""The cards of the dye chapter, one declaration in each file."""
