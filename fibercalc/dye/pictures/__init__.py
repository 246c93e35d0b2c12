"""Pictures of the dye chapter: the pot, the heat, the rinses, the rail."""
