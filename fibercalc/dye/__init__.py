"""Dye: from the recipe to the rail: weights and volumes, stocks, heat, rinsing and drying."""
