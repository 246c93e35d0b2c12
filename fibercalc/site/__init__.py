"""How a card is shown: form, page, print sheet and fence as HTML, the same code at build time and
in the browser. Knows no formula.
"""
