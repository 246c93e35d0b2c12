"""What washing does to cloth: size, relaxation, fastness of the color, lint, and the care that
goes on a label.
"""
