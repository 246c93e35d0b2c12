"""Knit: yarn for a project with its odds, gauge, sizes, shaping, shawls, socks and pace."""
