"""Pictures of the safe chapter: amounts to scale and bars against a published limit, readable in
black and white.
"""
