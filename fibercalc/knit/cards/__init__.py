"""The cards of the knit chapter, one declaration in each file."""
