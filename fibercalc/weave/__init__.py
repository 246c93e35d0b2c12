"""Weave: setts, warp plans, cloth in pictures, weft left over, and the time it all takes."""
