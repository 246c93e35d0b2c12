"""Sources first cited by the weave chapter: setts and sizes on the loom. Another chapter may cite
them too.
"""

from .source import Source

# Weave: setts, cover, sizes on the loom.
TRADE_PAGES_SETT = Source(
    "trade-pages-sett",
    "",
    "Two trade pages quoting Ashenhurst: closest sett D R / (R + I), an 8/2 cotton worked, about"
    " three quarters of it to work with",
    how="secondary",
    read="2026-11",
)
GATE_TEXTILE_2006 = Source(
    "gate-textile-2006",
    "Graduate Aptitude Test in Engineering, India",
    "Textile paper TF 2006, question 66 (Brierley: cotton, K 200, m 0.39), with a worked answer",
    "2006",
    "secondary",
    "2026-11",
    "https://www.textiletriangle.com/gate-textile/question-paper/2006-2/66-2/",
)
TAYLOR_1909_FIRMNESS = Source(
    "taylor-1909-firmness",
    "J. T. Taylor",
    "Cotton Weaving and Designing, 6th ed., page 464 of the stored text: equal firmness in another"
    " weave",
    "1909",
    read="2026-11",
    address="https://bitlit.ru/page/en/john-t-taylor/cotton-weaving-and-designing-6th-edition/464",
)
WOVEN_CALCULATION_NOTES = Source(
    "woven-calculation-notes",
    "",
    "Woven fabric calculation, lecture notes: cover factors, and how close a plain weave can be"
    " woven",
    read="2026-11",
    address="https://www.scribd.com/document/455076497",
)
TRADE_PAGES_WARP = Source(
    "trade-pages-warp",
    "",
    "Trade pages on planning a warp: shrinkage divided out, draw-in, take-up, loom waste",
    how="secondary",
    read="2026-11",
)
MAGAZINE_TOWELS = Source(
    "magazine-towels",
    "",
    "A weaving magazine's answer: 5 yd of warp for four towels of 34 in",
    how="secondary",
    read="2026-11",
)
TRADE_PAGES_REEDS = Source(
    "trade-pages-reeds",
    "",
    "Trade pages on metric reeds and the inch numbers they are sold under",
    how="secondary",
    read="2026-11",
)
TRADE_PAGES_WAFFLE = Source(
    "trade-pages-waffle",
    "",
    "Trade pages on waffle weave: floats around a plain center, shrinkage of half and of all over",
    how="secondary",
    read="2026-11",
)
