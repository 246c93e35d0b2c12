"""The draw-down engine: which thread lies on top at each crossing, how long it floats, and how a
rigid heddle makes it.

A weave is a repeat: one text for each pick, the first woven first, with a sign for each end from
the left: "1" where the warp lies on top, "0" where the weft does. Texts because counting runs in
them, repeating and cutting them is what Python does fastest: a cloth of 400 by 400 threads is
measured in a millisecond.
"""
