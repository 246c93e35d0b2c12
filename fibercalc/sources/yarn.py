"""Sources first cited by the yarn chapter: counts, thickness, fibers, moisture. Another chapter
may cite them too.
"""

from .source import Source

# Yarn: counts.
ASTM_D2260 = Source(
    "astm-d2260",
    "ASTM International",
    "D2260 Standard Tables of Conversion Factors and Equivalent Yarn Numbers, scope and Table 1"
    " (extract)",
    "2003, reapproved 2013",
    read="2026-11",
    address="https://www.astm.org/Standards/D2260.htm",
)
COUNT_CONVERSION_TABLE = Source(
    "count-conversion-table",
    "",
    "Yarn count conversion table on a textile education page",
    read="2026-11",
    address="https://www.textileschool.com/articles/159/yarn-conversions",
)
TEXTILE_CALCULATIONS = Source(
    "textile-calculations",
    "",
    "Textile Calculations, an old scanned handbook, woolen counts (author page not read)",
    read="2026-11",
)
BROOKS = Source(
    "brooks-cotton-manufacturing",
    "C. P. Brooks",
    "Cotton Manufacturing, page 91 of the stored text",
    read="2026-11",
    address="https://bitlit.ru/page/en/christopher-parkinson-brooks/cotton-manufacturing/91",
)
TRADE_PAGE_COUNTS = Source(
    "trade-page-counts", "", "Trade pages on yarn counts", how="secondary", read="2026-11"
)

# Yarn: thickness and wraps.
PEIRCE_1937 = Source(
    "peirce-1937",
    "F. T. Peirce",
    "Journal of the Textile Institute 28, T45 (yarn diameter), as quoted by N. Balasubramanian,"
    " Yarn and Cloth",
    "1937",
    "secondary",
    "2026-11",
    "https://business.vsnl.com/balasubramanian/YarnCloth.html",
)
TEXTILE_HANDBOOK_2023 = Source(
    "textile-handbook-2023",
    "",
    "Textile technical handbook, page 147 (knitting formulas)",
    "2023",
    read="2026-11",
)
ASHENHURST = Source(
    "ashenhurst",
    "T. R. Ashenhurst",
    "Diameters per inch from yards per pound, as quoted by trade pages",
    how="secondary",
    read="2026-11",
)
TAYLOR_1909 = Source(
    "taylor-1909",
    "J. T. Taylor",
    "Cotton Weaving and Designing, 6th ed., table of diameters per inch",
    "1909",
    read="2026-11",
    address="https://bitlit.ru/page/en/john-t-taylor/cotton-weaving-and-designing-6th-edition/453",
)
CRAFT_YARN_COUNCIL = Source(
    "craft-yarn-council",
    "Craft Yarn Council",
    "Standards & Guidelines, Standard Yarn Weight System (www.YarnStandards.com); tables read in"
    " secondary copies",
    "2018",
    "secondary",
    "2026-11",
)
TRADE_PAGE_SPINNERS = Source(
    "trade-page-spinners",
    "",
    "Trade pages and hand-outs for spinners (wraps per inch beside yards per pound)",
    how="secondary",
    read="2026-11",
)
TRADE_PAGE_WEAVERS = Source(
    "trade-page-weavers",
    "",
    "Trade page for weavers (ruler wraps and sett)",
    how="secondary",
    read="2026-11",
)
TRADE_PAGE_PLY_TERMS = Source(
    "trade-page-ply-terms",
    "",
    "Trade page on ply names and typical put-ups",
    how="secondary",
    read="2026-11",
)

# Yarn: fiber data and moisture.
MORTON_HEARLE_2008 = Source(
    "morton-hearle-2008",
    "W. E. Morton and J. W. S. Hearle",
    "Physical Properties of Textile Fibres, 4th ed., Table 5.1",
    "2008",
    read="2026-11",
)
TECHNICAL_FIBRES_HANDBOOK = Source(
    "technical-fibres-handbook",
    "",
    "Handbook of Properties of Textile and Technical Fibres, Table 1.1, page 9",
    read="2026-11",
)
EC_ALLOWANCES_1998 = Source(
    "ec-allowances-1998",
    "French Republic",
    "Order of 24 June 1998 (ECOC9800073A), Annex II: the EU agreed allowances",
    "1998",
    read="2026-11",
)
EU_1007_2011 = Source(
    "eu-1007-2011",
    "European Union",
    "Regulation (EU) No 1007/2011, Annex IX: three agreed allowances quoted elsewhere (the list"
    " itself not read)",
    "2011",
    "secondary",
    "2026-11",
)
ASTM_D1909 = Source(
    "astm-d1909",
    "ASTM International",
    "D1909 Standard Tables of Commercial Moisture Regains; values quoted in Bioresources and"
    " Bioprocessing 2020, Table 10",
    "2013",
    "secondary",
    "2026-11",
    "https://doi.org/10.1186/s40643-020-00339-1",
)
ASTM_D1909_EXTRACT = Source(
    "astm-d1909-extract",
    "ASTM International",
    "D1909 Standard Table of Commercial Moisture Regains, extract with clause 4.1",
    "2004",
    read="2026-11",
    address="https://standards.iteh.ai",
)
BIORESOURCES_2020 = Source(
    "bioresources-2020",
    "Bioresources and Bioprocessing",
    "Fibre attributes of industrial cellulosic crops, Table 10 (quotes Morton and Hearle 2008)",
    "2020",
    "secondary",
    "2026-11",
    "https://bioresourcesbioprocessing.springeropen.com/articles/10.1186/s40643-020-00339-1/tables/10",
)
NRC_2001 = Source(
    "nrc-2001",
    "US National Research Council",
    "Carbon Management, Table 11.1",
    "2001",
    read="2026-11",
    address="https://www.ncbi.nlm.nih.gov/books/NBK44131/",
)
AWTA_GLOSSARY = Source(
    "awta-glossary",
    "Australian Wool Testing Authority",
    "Glossary: standard regain of wool",
    read="2026-11",
    address="https://www.awtawooltesting.com.au",
)
ISO_139 = Source(
    "iso-139",
    "ISO",
    "ISO 139 Textiles: standard atmospheres for conditioning and testing (summary)",
    "2005",
    read="2026-11",
    address="https://standards.iteh.ai",
)
HORIKITA_1989 = Source(
    "horikita-1989",
    "M. Horikita and others",
    "Moisture sorption properties of wool and hair fibers, Sen'i Gakkaishi (abstract)",
    "1989",
    read="2026-11",
    address=(
        "https://tressless.com/research/moisture-sorption-properties-of-wool-and-hair-fibers-y7jW"
    ),
)
TRADE_PAGE_MOISTURE = Source(
    "trade-page-moisture",
    "",
    "Trade page with regain beside moisture content",
    how="secondary",
    read="2026-11",
)
REGAIN_CURVES = Source(
    "regain-curves",
    "",
    "Regain of textile fibers against relative humidity, handbook table of the 1920s recalled, not"
    " read",
    how="memory",
)

# Yarn: several skeins, and what may be printed.
IUPAC_CONFIDENCE_LIMITS = Source(
    "iupac-confidence-limits",
    "IUPAC",
    "Compendium of Chemical Terminology, C01247: confidence limits (about the mean)",
    "1994",
    read="2026-11",
    address="https://goldbook.iupac.org/terms/view/C01247",
)
STUDENT_TABLE = Source(
    "student-table",
    "K. F. Riley, M. P. Hobson, S. J. Bence",
    "Mathematical Methods for Physics and Engineering, Table 31.3 (Student's t), read in a text"
    " copy",
    read="2026-11",
)
ABRAMOWITZ_STEGUN = Source(
    "abramowitz-stegun",
    "M. Abramowitz and I. A. Stegun",
    "Handbook of Mathematical Functions, 26.7.3 and 26.7.4",
    "1964",
    "memory",
)
HAHN_1970 = Source(
    "hahn-1970",
    "G. J. Hahn",
    "Prediction intervals for samples from a normal distribution, Journal of the American"
    " Statistical Association 65",
    "1970",
    "memory",
)
DIRECTIVE_76_211 = Source(
    "directive-76-211",
    "European Economic Community",
    "Directive 76/211/EEC on prepackages by weight or volume, Annex I, 1 and 2.4, and Annex"
    " II, 2.3",
    "1976",
    read="2026-11",
    address="https://www.legislation.gov.uk/eudr/1976/211/annexes",
)
