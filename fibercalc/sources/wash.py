"""Sources first cited by the wash chapter: dimensional change, fastness, care. Another chapter
may cite them too.
"""

from .source import Source

# Wash: dimensional change.
ISO_5077 = Source(
    "iso-5077",
    "ISO",
    "ISO 5077 Textiles: determination of dimensional change in washing and drying (summary and"
    " extract; marks by ISO 3759)",
    "2007",
    read="2026-11",
    address="https://www.texfire.net",
)
AATCC_135 = Source(
    "aatcc-135",
    "AATCC",
    "TM135 Dimensional changes of fabrics after home laundering (extract: averages to 0.1 %; a"
    " smaller size is shrinkage)",
    "2018",
    read="2026-11",
)
TWC_TM31 = Source(
    "twc-tm31",
    "The Woolmark Company",
    "TWC-TM31 Washing of wool textile products: relaxation after one 7A cycle, felting after five"
    " 5A cycles more",
    "2009",
    read="2026-11",
)
WOOL_SHRINKAGE_LECTURE = Source(
    "wool-shrinkage-lecture",
    "",
    "Lecture notes on the shrinkage of wool: relaxation in any fiber, felting in wool and hair"
    " alone",
    read="2026-11",
)
WOOL_FLAT_KNITS = Source(
    "wool-flat-knits",
    "",
    "Dimensional change of wool flat knits in 24 structures, Korean journal (JAKO202219559534586)",
    "2022",
    read="2026-11",
    address="https://koreascience.kr",
)
COTTON_JERSEY_GRAPH = Source(
    "cotton-jersey-graph",
    "Cotton Technology International",
    "Shrinkage of cotton jersey finished to constant weight and to constant courses",
    read="2026-11",
)
TRADE_PAGE_SHRINKAGE = Source(
    "trade-page-shrinkage",
    "",
    "Trade pages for weavers and felters on what washing and fulling take",
    how="secondary",
    read="2026-11",
)
TRADE_PAGE_SUPERWASH = Source(
    "trade-page-superwash",
    "",
    "Trade and lecture pages on shrink-resist wool: chlorination and a thin coat of resin",
    how="secondary",
    read="2026-11",
)

# Wash: fastness and care.
ISO_105_A02 = Source(
    "iso-105-a02",
    "ISO",
    "EN 20105-A02 (ISO 105-A02) Gray scale for assessing change in color (sample pages), with GOST"
    " R ISO 105-A02-99",
    "1994",
    read="2026-11",
    address="https://standards.iteh.ai/catalog/standards/cen/333e3b22-261f-4026-947b-4d1ca186db32/en-20105-a02-1994",
)
ISO_105_A03 = Source(
    "iso-105-a03",
    "ISO",
    "ISO 105-A03 Gray scale for assessing staining, its steps recalled, not read",
    "1993",
    "memory",
)
ISO_105_A04 = Source(
    "iso-105-a04",
    "ISO",
    "ISO 105-A04 Instrumental assessment of staining, formula recalled, not read; it agrees with"
    " the recalled steps of A03",
    how="memory",
)
ISO_105_A05 = Source(
    "iso-105-a05",
    "ISO",
    "ISO 105-A05 Instrumental assessment of change in color, formula recalled, not read; it agrees"
    " with the steps of A02, which were",
    how="memory",
)
ISO_105_C06 = Source(
    "iso-105-c06",
    "ISO",
    "ISO 105-C06 Color fastness to domestic and commercial laundering: what the tests stand for, as"
    " quoted by two pages (doses recalled)",
    how="secondary",
    read="2026-11",
)
ISO_105_X12 = Source(
    "iso-105-x12",
    "ISO",
    "ISO 105-X12 Color fastness to rubbing (extracts; number of strokes recalled)",
    "2016",
    read="2026-11",
)
ISO_3758 = Source(
    "iso-3758",
    "ISO",
    "ISO 3758 Care labeling code using symbols: its tables and temperatures as printed on four"
    " makers' pages (the standard itself not read)",
    how="secondary",
    read="2026-11",
)
