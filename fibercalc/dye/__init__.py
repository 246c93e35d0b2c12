"""Dye: recipes, stocks, shades, acid, heat, pots and drying."""
