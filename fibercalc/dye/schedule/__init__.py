"""A plan for the dye room: which load goes into which pot when, so that no pot, burner, pair of
hands or place on the rail is booked twice, with a bound beside it that no plan can beat.

Clock: minutes from the opening of the first working day. Day d runs from 1440 d; work is done in
its first `day` minutes.
"""
