"""Knitting: how much yarn, how many stitches."""
