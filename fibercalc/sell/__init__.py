"""Sell: from a plan to the parcel: what to dye, order and post and by when, what to ask, and what
stands on the label.
"""
