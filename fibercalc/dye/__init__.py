"""Dye: recipes and stocks, the pot and its heat, color, bleeding, drying, and loads over days."""
