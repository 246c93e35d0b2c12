"""What can be made: each kind's measures as a class of parts, and its pieces of cloth, which the
working names one by one.
"""
