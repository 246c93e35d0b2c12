"""Knit: yarn for a project, gauge, what is left, socks, shaping, pace and pooling."""
