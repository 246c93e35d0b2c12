"""Sources first cited by the knit chapter: loops, sizes, needles, yardage. Another chapter may
cite them too.
"""

from .source import Source

# Knit: loop geometry, sizes, needles, rules of yardage.
MUNDEN_1959 = Source(
    "munden-1959",
    "D. L. Munden",
    "The geometry and dimensional properties of plain-knit fabrics, Journal of the Textile"
    " Institute 50, T448; with Knapton, Ahrens, Ingenthron and Fong 1968 for the fully relaxed"
    " state (neither read)",
    "1959",
    "memory",
)
GATE_TEXTILE_2015 = Source(
    "gate-textile-2015",
    "Graduate Aptitude Test in Engineering, India",
    "Textile paper TF 2015, question 54 (fully relaxed plain: Kc 5.5, Kw 4.2)",
    "2015",
    "secondary",
    "2026-11",
)
KNITTING_SCIENCE_NOTES = Source(
    "knitting-science-notes",
    "J. Lam (after K. F. Au)",
    "Knitting Science 1, lecture notes: the three states of rest",
    read="2026-11",
    address="https://studylib.net/doc/5713719",
)
RIB_CONSTANTS_ABSTRACT = Source(
    "rib-constants-abstract",
    "",
    "Journal of the Textile Machinery Society of Japan 36(3): 1x1 rib of cotton has constants per"
    " pair of loops (abstract, no values)",
    read="2026-11",
)
TRADE_PAGE_YARDAGE = Source(
    "trade-page-yardage",
    "",
    "Yardage rules of trade pages, for plain knitting",
    how="secondary",
    read="2026-11",
)
CRAFT_YARN_COUNCIL_SIZES = Source(
    "craft-yarn-council-sizes",
    "Craft Yarn Council",
    "Standards & Guidelines, body sizes (www.YarnStandards.com); "
    "read only in part, in secondary copies: the rest is from memory and marked",
    "2018",
    "secondary",
    "2026-11",
)
HEAD_GIRTHS_GIRLS = Source(
    "head-girths-girls",
    "",
    "Head circumference by age, medical table: girls from 0 to 36 months, median (undated)",
    how="secondary",
    read="2026-11",
)
HEAD_GIRTHS_ADULTS = Source(
    "head-girths-adults",
    "",
    "Heads of adults, a study in the United States: 55 cm of women, 57 cm of men, as quoted in a"
    " page",
    "2023",
    "secondary",
    "2026-11",
)
TRADE_PAGE_EASE = Source(
    "trade-page-ease", "", "Trade pages on ease", how="secondary", read="2026-11"
)
TRADE_PAGE_NEEDLES = Source(
    "trade-page-needles", "", "Five needle charts in trade pages", how="secondary", read="2026-11"
)
