"""Weaving on a small loom: setts, a whole run of pieces planned on one warp, the cloth seen
before it is threaded.
"""
