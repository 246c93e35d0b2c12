"""Safe: people, air, acids, heat, drains and loads; published limits beside every answer, and the
chemistry of a bath.
"""
