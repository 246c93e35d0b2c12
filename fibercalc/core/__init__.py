"""The small core: units, amounts, spread, cards, answers. It knows no chapter, no HTML and no
browser.
"""
