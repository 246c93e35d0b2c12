"""Pictures of the dye chapter."""
