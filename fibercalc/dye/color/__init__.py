"""Color of dyed fiber: mixing by Kubelka-Munk, difference by CIEDE2000, even steps, a nudge
toward an old lot, errors of seeing.
"""
