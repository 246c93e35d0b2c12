"""Sources first cited by the sell chapter: demand, money, net contents, fiber names. Another
chapter may cite them too.
"""

from .source import Source

# Sell: how many to make.
CACHON_TERWIESCH = Source(
    "cachon-terwiesch",
    "G. Cachon and C. Terwiesch",
    "Matching Supply with Demand, 3rd ed., chapter 12: the newsvendor model; solution of Q12.1 read"
    " in a copy",
    "2011",
    "secondary",
    "2026-11",
    "https://tr.scribd.com/document/324382828/Chapter-12-Betting-on-Uncertain-Demand-Answers",
)
COHEN_1991 = Source(
    "cohen-1991",
    "A. C. Cohen",
    "Truncated and Censored Samples, 3.3: estimating equations of the censored normal (its summary"
    " read; the lamps of Gupta recalled)",
    "1991",
    "secondary",
    "2026-11",
    "https://www.taylorfrancis.com/chapters/edit/10.1201/b16946-28/3-doubl-censored-samples",
)
TOBIN_1958 = Source(
    "tobin-1958",
    "J. Tobin",
    "Estimation of relationships for limited dependent variables, Econometrica 26, as told by"
    " Amemiya, Tobit models: a survey, 1984",
    "1958",
    "secondary",
    "2026-11",
    "https://www.scribd.com/document/467873167/Tobit-models-A-survey-pdf",
)
INVENTORY_TEXTBOOK = Source(
    "inventory-textbook",
    "",
    "Textbooks of inventory: reorder point with demand and lead time both uncertain (recalled, not"
    " read)",
    how="memory",
)

# Sell: money, net contents, fiber content.
NIST_HB_133 = Source(
    "nist-hb-133",
    "NIST",
    "Handbook 133 Checking the Net Contents of Packaged Goods, sampling plans and Tables 2-1, 2-5"
    " and 2-8, recalled, not read (its correction factors agree with Student's t)",
    how="memory",
)
NIST_HB_133_LENGTH = Source(
    "nist-hb-133-length",
    "NIST",
    "Handbook 133, Table 2-8 (length), the rows quoted by a draft on lumber",
    how="secondary",
    read="2026-11",
)
NIST_HB_130 = Source(
    "nist-hb-130",
    "NIST",
    "Handbook 130, Uniform Packaging and Labeling Regulation: yarn by weight, thread by length, as"
    " paraphrased by web pages",
    how="secondary",
    read="2026-11",
)
RI_6_10 = Source(
    "ri-6-10",
    "State of Rhode Island",
    "General Laws, chapter 6-10, thread: 6-10-1, 6-10-2, 6-10-4",
    read="2026-11",
    address="http://laws9.com/statutes/rhode-island/title-6/chapter-6-10/6-10-2",
)
MA_94_285 = Source(
    "ma-94-285",
    "Commonwealth of Massachusetts",
    "General Laws, chapter 94, sections 285 and 287, thread",
    read="2026-11",
)
SI_2006_659 = Source(
    "si-2006-659",
    "United Kingdom",
    "The Weights and Measures (Packaged Goods) Regulations 2006, Schedule 2, paragraph 4",
    "2006",
    read="2026-11",
    address="https://www.legislation.gov.uk/uksi/2006/659/schedule/2/paragraph/4",
)
UK_PACKAGED_GOODS = Source(
    "uk-packaged-goods",
    "UK government",
    "Guidance on packaged goods: packers' rules, minimum system; and a trading standards leaflet"
    " that counts knitting yarn as a package",
    read="2026-11",
    address="https://www.gov.uk/weights-measures-and-packaging-the-law/packaged-goods",
)
CFR_16_303 = Source(
    "cfr-16-303",
    "US Federal Trade Commission",
    "16 CFR 303.14, .16, .23, .26 and .43, rules under the Textile Fiber Products"
    " Identification Act",
    read="2026-11",
    address="https://www.ecfr.gov/current/title-16/part-303",
)
CFR_16_303_3 = Source(
    "cfr-16-303-3",
    "US Federal Trade Commission",
    "16 CFR 303.3, fibers under 5 percent, in a translation",
    how="secondary",
    read="2026-11",
)
WOOL_ACT = Source(
    "wool-act",
    "United States",
    "Wool Products Labeling Act, 15 USC 68 and 68b, with 16 CFR 300.3 and 300.16",
    read="2026-11",
    address="https://www.ecfr.gov/current/title-16/part-300",
)
US_LABEL_MEMORY = Source(
    "us-label-memory",
    "US Federal Trade Commission",
    "Wool and Textile Act rules recalled, not read: generic names, unknown fibers with a share,"
    " origin of imported yarn, registered numbers",
    how="memory",
)
EU_1007_2011 = Source(
    "eu-1007-2011",
    "European Union",
    "Regulation 1007/2011 on textile fiber names and labels: Articles 1 to 3 read; Articles 9 and"
    " 20 as quoted by another text",
    "2011",
    "secondary",
    "2026-11",
    "https://www.legislation.gov.uk/eur/2011/1007/body",
)
EU_1007_MEMORY = Source(
    "eu-1007-memory",
    "European Union",
    "Regulation 1007/2011, Articles 7 to 9 and 14 to 16 and Annex I, recalled, not read",
    "2011",
    "memory",
)
TEXTILE_LAW_OLDER = Source(
    "textile-law-older",
    "United Kingdom and France",
    "SI 1986/26, Schedule 1, and decree 73-357, article 9, under the directive before: 2 percent"
    " extraneous fiber, 5 percent when carded, 3 percent tolerance",
    "1973, 1986",
    read="2026-11",
    address="https://www.legislation.gov.uk/uksi/1986/26/schedules/made",
)
