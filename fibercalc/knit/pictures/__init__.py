"""Drawings of the knit chapter: plain numbers in, one picture out."""
