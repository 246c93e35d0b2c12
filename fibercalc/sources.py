"""The one bibliography. Each source is a constant, so a misspelt one fails at import; cards and tables name sources by id."""

from dataclasses import dataclass


@dataclass(frozen=True, eq=False)
class Source:
    """A published source, or a stated lack of one.

    id       short name used in tables and JSON
    body     who publishes it
    title    what it is called
    year     of the edition meant; "" where undated
    how      "read", "secondary" (read in a page that quotes it), "memory" (unverified) or "practice" (common practice, no source)
    read     year-month when it was read; "" for memory and common practice
    address  where it was read; "" where there is none
    """

    id: str
    body: str
    title: str
    year: str = ""
    how: str = "read"
    read: str = ""
    address: str = ""


# Not publications: what stands in place of one.
COMMON_PRACTICE = Source("common-practice", "", "Common practice (no published source)", how="practice")
ARITHMETIC = Source("arithmetic", "", "Arithmetic from the definitions (no published source needed)", how="practice")
TRADE_MEMORY = Source("trade-memory", "", "Memory of the trade (no source read)", how="memory")

# Yarn: counts.
ASTM_D2260 = Source(
    "astm-d2260", "ASTM International", "D2260 Standard Tables of Conversion Factors and Equivalent Yarn Numbers, scope and Table 1 (extract)",
    "2003, reapproved 2013", read="2026-11", address="https://www.astm.org/Standards/D2260.htm")
COUNT_CONVERSION_TABLE = Source(
    "count-conversion-table", "", "Yarn count conversion table on a textile education page",
    read="2026-11", address="https://www.textileschool.com/articles/159/yarn-conversions")
TEXTILE_CALCULATIONS = Source(
    "textile-calculations", "", "Textile Calculations, an old scanned handbook, woolen counts (author page not read)", read="2026-11")
BROOKS = Source(
    "brooks-cotton-manufacturing", "C. P. Brooks", "Cotton Manufacturing, page 91 of the stored text",
    read="2026-11", address="https://bitlit.ru/page/en/christopher-parkinson-brooks/cotton-manufacturing/91")
TRADE_PAGE_COUNTS = Source("trade-page-counts", "", "Trade pages on yarn counts", how="secondary", read="2026-11")

# Yarn: thickness and wraps.
PEIRCE_1937 = Source(
    "peirce-1937", "F. T. Peirce", "Journal of the Textile Institute 28, T45 (yarn diameter), as quoted by N. Balasubramanian, Yarn and Cloth",
    "1937", "secondary", "2026-11", "https://business.vsnl.com/balasubramanian/YarnCloth.html")
TEXTILE_HANDBOOK_2023 = Source(
    "textile-handbook-2023", "", "Textile technical handbook, page 147 (knitting formulas)", "2023", read="2026-11")
ASHENHURST = Source(
    "ashenhurst", "T. R. Ashenhurst", "Diameters per inch from yards per pound, as quoted by trade pages", how="secondary", read="2026-11")
TAYLOR_1909 = Source(
    "taylor-1909", "J. T. Taylor", "Cotton Weaving and Designing, 6th ed., table of diameters per inch", "1909", read="2026-11",
    address="https://bitlit.ru/page/en/john-t-taylor/cotton-weaving-and-designing-6th-edition/453")
CRAFT_YARN_COUNCIL = Source(
    "craft-yarn-council", "Craft Yarn Council", "Standards & Guidelines, Standard Yarn Weight System (www.YarnStandards.com); tables read in secondary copies",
    "2018", "secondary", "2026-11")
TRADE_PAGE_SPINNERS = Source(
    "trade-page-spinners", "", "Trade pages and hand-outs for spinners (wraps per inch beside yards per pound)", how="secondary", read="2026-11")
TRADE_PAGE_WEAVERS = Source("trade-page-weavers", "", "Trade page for weavers (ruler wraps and sett)", how="secondary", read="2026-11")
TRADE_PAGE_PLY_TERMS = Source("trade-page-ply-terms", "", "Trade page on ply names and typical put-ups", how="secondary", read="2026-11")

# Yarn: fiber data and moisture.
MORTON_HEARLE_2008 = Source(
    "morton-hearle-2008", "W. E. Morton and J. W. S. Hearle", "Physical Properties of Textile Fibres, 4th ed., Table 5.1", "2008", read="2026-11")
TECHNICAL_FIBRES_HANDBOOK = Source(
    "technical-fibres-handbook", "", "Handbook of Properties of Textile and Technical Fibres, Table 1.1, page 9", read="2026-11")
EC_ALLOWANCES_1998 = Source(
    "ec-allowances-1998", "French Republic", "Order of 24 June 1998 (ECOC9800073A), Annex II: the EU agreed allowances", "1998", read="2026-11")
EU_1007_2011 = Source(
    "eu-1007-2011", "European Union", "Regulation (EU) No 1007/2011, Annex IX: three agreed allowances quoted elsewhere (the list itself not read)",
    "2011", "secondary", "2026-11")
ASTM_D1909 = Source(
    "astm-d1909", "ASTM International", "D1909 Standard Tables of Commercial Moisture Regains; values quoted in Bioresources and Bioprocessing 2020, Table 10",
    "2013", "secondary", "2026-11", "https://doi.org/10.1186/s40643-020-00339-1")
ASTM_D1909_EXTRACT = Source(
    "astm-d1909-extract", "ASTM International", "D1909 Standard Table of Commercial Moisture Regains, extract with clause 4.1",
    "2004", read="2026-11", address="https://standards.iteh.ai")
BIORESOURCES_2020 = Source(
    "bioresources-2020", "Bioresources and Bioprocessing", "Fibre attributes of industrial cellulosic crops, Table 10 (quotes Morton and Hearle 2008)",
    "2020", "secondary", "2026-11", "https://bioresourcesbioprocessing.springeropen.com/articles/10.1186/s40643-020-00339-1/tables/10")
NRC_2001 = Source(
    "nrc-2001", "US National Research Council", "Carbon Management, Table 11.1", "2001", read="2026-11",
    address="https://www.ncbi.nlm.nih.gov/books/NBK44131/")
AWTA_GLOSSARY = Source(
    "awta-glossary", "Australian Wool Testing Authority", "Glossary: standard regain of wool", read="2026-11", address="https://www.awtawooltesting.com.au")
ISO_139 = Source(
    "iso-139", "ISO", "ISO 139 Textiles: standard atmospheres for conditioning and testing (summary)", "2005", read="2026-11",
    address="https://standards.iteh.ai")
HORIKITA_1989 = Source(
    "horikita-1989", "M. Horikita and others", "Moisture sorption properties of wool and hair fibers, Sen'i Gakkaishi (abstract)", "1989", read="2026-11",
    address="https://tressless.com/research/moisture-sorption-properties-of-wool-and-hair-fibers-y7jW")
TRADE_PAGE_MOISTURE = Source("trade-page-moisture", "", "Trade page with regain beside moisture content", how="secondary", read="2026-11")
REGAIN_CURVES = Source(
    "regain-curves", "", "Regain of textile fibers against relative humidity, handbook table of the 1920s recalled, not read", how="memory")

# Yarn: several skeins, and what may be printed.
IUPAC_CONFIDENCE_LIMITS = Source(
    "iupac-confidence-limits", "IUPAC", "Compendium of Chemical Terminology, C01247: confidence limits (about the mean)", "1994", read="2026-11",
    address="https://goldbook.iupac.org/terms/view/C01247")
STUDENT_TABLE = Source(
    "student-table", "K. F. Riley, M. P. Hobson, S. J. Bence",
    "Mathematical Methods for Physics and Engineering, Table 31.3 (Student's t), read in a text copy", read="2026-11")
ABRAMOWITZ_STEGUN = Source(
    "abramowitz-stegun", "M. Abramowitz and I. A. Stegun", "Handbook of Mathematical Functions, 26.7.3 and 26.7.4", "1964", "memory")
HAHN_1970 = Source(
    "hahn-1970", "G. J. Hahn", "Prediction intervals for samples from a normal distribution, Journal of the American Statistical Association 65", "1970", "memory")
DIRECTIVE_76_211 = Source(
    "directive-76-211", "European Economic Community", "Directive 76/211/EEC on prepackages by weight or volume, Annex I, 1 and 2.4, and Annex II, 2.3",
    "1976", read="2026-11", address="https://www.legislation.gov.uk/eudr/1976/211/annexes")

# Knit: loop geometry, sizes, needles, rules of yardage.
MUNDEN_1959 = Source(
    "munden-1959", "D. L. Munden", "The geometry and dimensional properties of plain-knit fabrics, Journal of the Textile Institute 50, T448; "
    "with Knapton, Ahrens, Ingenthron and Fong 1968 for the fully relaxed state (neither read)", "1959", "memory")
GATE_TEXTILE_2015 = Source(
    "gate-textile-2015", "Graduate Aptitude Test in Engineering, India", "Textile paper TF 2015, question 54 (fully relaxed plain: Kc 5.5, Kw 4.2)",
    "2015", "secondary", "2026-11")
KNITTING_SCIENCE_NOTES = Source(
    "knitting-science-notes", "J. Lam (after K. F. Au)", "Knitting Science 1, lecture notes: the three states of rest", read="2026-11",
    address="https://studylib.net/doc/5713719")
RIB_CONSTANTS_ABSTRACT = Source(
    "rib-constants-abstract", "", "Journal of the Textile Machinery Society of Japan 36(3): 1x1 rib of cotton has constants per pair of loops (abstract, no values)",
    read="2026-11")
TRADE_PAGE_YARDAGE = Source("trade-page-yardage", "", "Trade pages with rules of yardage for plain knitting", how="secondary", read="2026-11")
CRAFT_YARN_COUNCIL_SIZES = Source(
    "craft-yarn-council-sizes", "Craft Yarn Council", "Standards & Guidelines, body and head sizes (www.YarnStandards.com); "
    "read only in part, in secondary copies: the rest is from memory and marked", "2018", "secondary", "2026-11")
TRADE_PAGE_EASE = Source("trade-page-ease", "", "Trade pages on ease", how="secondary", read="2026-11")
TRADE_PAGE_NEEDLES = Source("trade-page-needles", "", "Five needle charts in trade pages", how="secondary", read="2026-11")

# Dye: recipes, heat, rinsing, drying.
TEXTILE_PAGES_RECIPE = Source(
    "textile-pages-recipe", "", "Two textile education pages on laboratory dips and dye recipes: volume of stock = W P / C", how="read", read="2026-11")
DYEING_TERMS_SLIDES = Source("dyeing-terms-slides", "B. Venkatesh", "Basic dyeing terms, lecture slides: depth on weight of fiber, liquor ratio", read="2026-11")
TRADE_PAGE_DYES = Source("trade-page-dyes", "", "Trade pages on weighing dye by depth of shade", how="read", read="2026-11")
DYE_LAB_MANUAL = Source("dye-lab-manual", "", "Laboratory manual page: a mixed shade from 1 % stocks, salt by the liter", read="2026-11")
DYEING_TEXTBOOK = Source("dyeing-textbook", "", "Textbooks of dyeing: baths, holds, exhaustion, fixation, rates of rise (recalled, not read)", how="memory")
HEAT_HANDBOOK = Source("heat-handbook", "", "Handbook values of specific heat and of heater efficiency (recalled, not read)", how="memory")
STANDARD_ATMOSPHERE = Source("standard-atmosphere", "", "Pressure of the standard atmosphere by altitude, constants recalled, not read", how="memory")
ANTOINE_WATER = Source(
    "antoine-water", "", "Antoine equation of water, 1 to 100 °C, constants recalled, not read; boiling points checked against pocket-ref-boiling", how="memory")
POCKET_REF_BOILING = Source(
    "pocket-ref-boiling", "", "Boiling points by altitude from a pocket handbook, 4th ed., as quoted and fitted by a web page", "2018", "secondary", "2026-11",
    "https://edspi31415.blogspot.com/2018/09/")

# Dye: classes, depths, auxiliaries, mordants.
TRADE_PAGE_SMALL_LOTS = Source(
    "trade-page-small-lots", "", "Trade pages on acid dyes for small lots of wool: depth in words, citric acid and Glauber's salt", how="secondary", read="2026-11")
TRADE_PAGE_REACTIVE = Source("trade-page-reactive", "", "Hobby and trade pages on reactive dyes for cotton: depth in words, pH", how="secondary", read="2026-11")
CRAFT_PAGE_DYEING = Source(
    "craft-page-dyeing", "", "A craft teacher's page on dyeing wool (40:1; to the boil over 30 min or more)", how="secondary", read="2026-11")
COTTON_DEPTH_2016 = Source(
    "cotton-depth-2016", "Hindawi", "Depth of shade on mercerized and unmercerized cotton, article 9739380, Table 2", "2016", read="2026-11")
TRADE_PAGE_MORDANTS = Source("trade-page-mordants", "", "Web page quoting two dye books and a third recipe", how="secondary", read="2026-11")
TRADE_PAGES_IRON = Source("trade-pages-iron", "", "Two trade pages on iron as a mordant", read="2026-11")
WEB_GUIDE_MORDANTS = Source("web-guide-mordants", "", "Web guide to mordants", read="2026-11")
MAIRET_1916 = Source("mairet-1916", "E. Mairet", "Vegetable Dyes (excess alum makes wool sticky; historic chrome at 3 %)", "1916", read="2026-11")

# Safe: chemistry of a bath.
LIBRETEXTS_E1 = Source(
    "libretexts-e1", "LibreTexts Chemistry", "Reference table E1: acid dissociation constants at 25 °C", read="2026-11", address="https://chem.libretexts.org")
GOLDBERG_2002 = Source(
    "goldberg-2002", "R. N. Goldberg, N. Kishore, R. M. Lennen",
    "Thermodynamic quantities for the ionization reactions of buffers, Journal of Physical and Chemical Reference Data 31 (phthalic and boric: Robinson and Stokes)", "2002", "memory")
ATOMIC_WEIGHTS = Source("atomic-weights", "IUPAC", "Standard atomic weights, added up by formula", how="memory")
SPANA_HELP = Source("spana-help", "KTH Royal Institute of Technology", "Help of an equilibrium program: activity coefficients, the Davies equation", read="2026-11",
                    address="https://www.kth.se")
HANDBOOK_DENSITIES = Source("handbook-densities", "", "Densities of aqueous solutions at 20 °C, handbook tables recalled, not read", how="memory")
REAGENT_TABLES = Source("reagent-tables", "", "Two laboratory tables of concentrated reagents (strength, density, mol/L)", read="2026-11", address="https://www.laboratorynotes.com")
PH_TABLE = Source("ph-table", "", "pH of common acids and bases, a calculated table for 25 °C", read="2026-11", address="https://www.cyrrion.com")
PH_TABLE_BASES = Source("ph-table-bases", "", "pH of common solutions, a supplier's table", read="2026-11", address="https://www.samaterials.co.uk")
NBS_RP1690 = Source("nbs-rp1690", "W. J. Hamer, G. D. Pinching, S. F. Acree", "pH standards of potassium hydrogen phthalate, NBS Research Paper RP1690", "1946", read="2026-11")
NBS_BUFFERS_1969 = Source("nbs-buffers-1969", "US National Bureau of Standards", "Two new standards for the pH scale, Journal of Research 73A, 37 (abstract)", "1969", read="2026-11")
DENSITY_TABLE = Source(
    "density-table", "", "Densities of aqueous solutions of organic acids at 20 °C, a table on an engineering page", read="2026-11", address="https://www.engineeringtoolbox.com/density-aqueous-solution-formic-lactic-oxalic-acetic-citric-acid-concentration-d_1953.html")
NBS_PRIMARY_BUFFERS = Source("nbs-primary-buffers", "US National Bureau of Standards", "Primary phosphate buffers at 25 °C, recalled", how="memory")
# Dye: color.
KM_APPLICATION_NOTE = Source(
    "km-application-note", "", "An instrument maker's application note on Kubelka-Munk theory (K/S, its additivity, where it is weak)", "2008", read="2026-11")
SHARMA_2005 = Source(
    "sharma-2005", "G. Sharma, W. Wu, E. N. Dalal", "The CIEDE2000 color-difference formula, Color Research and Application 30, 21: abstract read, the rows of "
    "Table 1 in several public test suites", "2005", "secondary", "2026-11")
CIE_15 = Source("cie-15", "CIE", "CIE 15 Colorimetry: CIELAB and the D65 white, recalled and checked against two libraries", "2004", "memory")
IEC_61966 = Source("iec-61966", "IEC", "IEC 61966-2-1: sRGB, recalled and checked against two libraries", "1999", "memory")
ITU_BT2020 = Source("itu-bt2020", "ITU", "Recommendation ITU-R BT.2020: primaries, recalled and checked against a library", "2015", "memory")

# Safe: air.
OSHA_1910_1000 = Source("osha-1910-1000", "OSHA", "29 CFR 1910.1000 Air contaminants, Table Z-1 and paragraph (d)", read="2026-11", address="https://www.ecfr.gov/current/title-29/section-1910.1000")
NIOSH_LIMITS = Source("niosh-limits", "NIOSH", "Recommended exposure limits and IDLH documentation: acetic and formic acid read, ammonia in pages that quote it", read="2026-11",
                      address="https://www.cdc.gov/niosh/idlh/64186.html")
UK_EH40 = Source("uk-eh40", "UK Health and Safety Executive", "EH40/2005 Workplace exposure limits, 4th ed.; values recalled, ammonia in an extract", "2020", "memory")
SANDER_2023 = Source("sander-2023", "R. Sander", "Compilation of Henry's law constants, version 5, Atmospheric Chemistry and Physics 23: formic acid and ammonia", "2023", read="2026-11",
                     address="https://www.henrys-law.org")
CDC_2003 = Source("cdc-2003", "CDC", "Guidelines for Environmental Infection Control, Appendix B: air changes and time to purge", "2003", read="2026-11")
HSE_DYES = Source("hse-dyes", "UK Health and Safety Executive", "Dyes and dyeing; Reactive dyes: handling in textile finishing (TIS5)", read="2026-11", address="https://www.hse.gov.uk/textiles/dyes-dyeing.htm")
GESTIS = Source("gestis", "GESTIS substance database", "Acetic acid: 2.50 mg/m³ for 1 ppm at 20 °C", read="2026-11")

# Safe: labels.
CLP_ANNEXES = Source("clp-annexes", "European Union", "Regulation (EC) No 1272/2008 (CLP), Annexes I and VI: limits as quoted by others", "2008", "secondary", "2026-11")
CLP_MEMORY = Source("clp-memory", "European Union", "Regulation (EC) No 1272/2008 (CLP), Annexes I and VI: entries recalled, not read", "2008", "memory")
CLP_3_2_3 = Source("clp-3-2-3", "European Union", "Regulation (EC) No 1272/2008 (CLP), Annex I, 3.2.3: pH of 2 and less, 11.5 and more", "2008", read="2026-11")
EURO_INDUSTRY_NAOH = Source("euro-industry-naoh", "", "Industry note on the labeling of sodium hydroxide solutions", read="2026-11")
ECHA_NOTIFIED = Source("echa-notified", "European Chemicals Agency", "Classification and labeling inventory, 233-135-0 (notified)", read="2026-11")
GHS_MEMORY = Source("ghs-memory", "United Nations", "Globally Harmonized System (GHS), wording of the statements recalled", how="memory")

# Safe: scalds, drains, mordants, loads, masks, first aid.
CPSC_TAP_WATER = Source("cpsc-tap-water", "US Consumer Product Safety Commission", "Hot tap water scalds, as quoted by two pages", how="secondary", read="2026-11")
BURN_FOUNDATION = Source("burn-foundation", "Burn Foundation", "Time to a third-degree burn, as quoted by two pages", how="secondary", read="2026-11")
MORITZ_HENRIQUES = Source("moritz-henriques", "A. R. Moritz and F. C. Henriques", "Studies of thermal injury II, American Journal of Pathology 23, as quoted by others", "1947", "secondary", "2026-11")
SCALD_CHILDREN = Source("scald-children", "", "Children burn in a quarter to half of an adult's time (recalled)", how="memory")
CFR_40_403_5 = Source("cfr-40-403-5", "US EPA", "40 CFR 403.5(b) prohibited discharges, as quoted by a city and a handbook", how="secondary", read="2026-11", address="https://www.ecfr.gov/current/title-40/section-403.5")
LOCAL_LIMITS_US = Source("local-limits-us", "", "Sewer limits of four US places, in their own texts", read="2026-11")
UK_TRADE_EFFLUENT = Source("uk-trade-effluent", "", "Guide to trade effluent (an example consent)", "2023", "secondary", "2026-11")
CORNELL_HAZARDOUS = Source("cornell-hazardous", "Cornell University", "Household hazardous products: septic tanks", read="2026-11", address="https://www.human.cornell.edu")
NIOSH_94_110 = Source("niosh-94-110", "NIOSH", "Applications Manual for the Revised NIOSH Lifting Equation, Publication 94-110; tables as quoted in public texts", "1994, revised 2021", "secondary", "2026-11",
                      "https://doi.org/10.26616/NIOSHPUB94110revised092021")
NIOSH_RWL_TEXT = Source("niosh-rwl-text", "NIOSH", "The revised lifting equation of 1991 as printed by a government fact sheet and an ergonomics handbook", "1991", "secondary", "2026-11",
                        "https://www.ccohs.ca/oshanswers/ergonomics/niosh/calculating_rwl.html")
OSHA_RESPIRATORS = Source("osha-respirators", "OSHA", "29 CFR 1910.134, definitions and assigned protection factors (definitions read, factors recalled)", how="memory")
WEB_PAGE_FILTERS = Source("web-page-filters", "", "Web page on European filter classes (FFP2, FFP3); UK factors recalled", read="2026-11")
CHEMICAL_BURNS = Source("chemical-burns", "UK National Health Service", "Acid and chemical burns, as quoted by a news page", "2018", "secondary", "2026-11")
ICSC_DITHIONITE = Source("icsc-dithionite", "International Chemical Safety Cards", "1717 Sodium dithionite", read="2026-11", address="https://www.inchem.org")

# Weave: setts, cover, sizes on the loom.
TRADE_PAGES_SETT = Source(
    "trade-pages-sett", "", "Two trade pages quoting Ashenhurst: closest sett D R / (R + I), an 8/2 cotton worked, about three quarters of it to work with", how="secondary", read="2026-11")
GATE_TEXTILE_2006 = Source(
    "gate-textile-2006", "Graduate Aptitude Test in Engineering, India", "Textile paper TF 2006, question 66 (Brierley: cotton, K 200, m 0.39), with a worked answer", "2006", "secondary",
    "2026-11", "https://www.textiletriangle.com/gate-textile/question-paper/2006-2/66-2/")
TAYLOR_1909_FIRMNESS = Source(
    "taylor-1909-firmness", "J. T. Taylor", "Cotton Weaving and Designing, 6th ed., page 464 of the stored text: equal firmness in another weave", "1909", read="2026-11",
    address="https://bitlit.ru/page/en/john-t-taylor/cotton-weaving-and-designing-6th-edition/464")
WOVEN_CALCULATION_NOTES = Source(
    "woven-calculation-notes", "", "Woven fabric calculation, lecture notes: cover factors, and how close a plain weave can be woven", read="2026-11",
    address="https://www.scribd.com/document/455076497")
TRADE_PAGES_WARP = Source(
    "trade-pages-warp", "", "Trade pages on planning a warp: shrinkage divided out, draw-in, take-up, loom waste", how="secondary", read="2026-11")
MAGAZINE_TOWELS = Source("magazine-towels", "", "A weaving magazine's answer: 5 yd of warp for four towels of 34 in", how="secondary", read="2026-11")
TRADE_PAGES_REEDS = Source("trade-pages-reeds", "", "Trade pages on metric reeds and the inch numbers they are sold under", how="secondary", read="2026-11")
TRADE_PAGES_WAFFLE = Source("trade-pages-waffle", "", "Trade pages on waffle weave: floats around a plain center, shrinkage of half and of all over", how="secondary", read="2026-11")

# Wash: dimensional change.
ISO_5077 = Source(
    "iso-5077", "ISO", "ISO 5077 Textiles: determination of dimensional change in washing and drying (summary and extract; marks by ISO 3759)",
    "2007", read="2026-11", address="https://www.texfire.net")
AATCC_135 = Source(
    "aatcc-135", "AATCC", "TM135 Dimensional changes of fabrics after home laundering (extract: averages to 0.1 %; a smaller size is shrinkage)", "2018", read="2026-11")
TWC_TM31 = Source(
    "twc-tm31", "The Woolmark Company", "TWC-TM31 Washing of wool textile products: relaxation after one 7A cycle, felting after five 5A cycles more", "2009", read="2026-11")
WOOL_SHRINKAGE_LECTURE = Source(
    "wool-shrinkage-lecture", "", "Lecture notes on the shrinkage of wool: relaxation in any fiber, felting in wool and hair alone", read="2026-11")
WOOL_FLAT_KNITS = Source(
    "wool-flat-knits", "", "Dimensional change of wool flat knits in 24 structures, Korean journal (JAKO202219559534586)", "2022", read="2026-11",
    address="https://koreascience.kr")
COTTON_JERSEY_GRAPH = Source(
    "cotton-jersey-graph", "Cotton Technology International", "Shrinkage of cotton jersey finished to constant weight and to constant courses", read="2026-11")
TRADE_PAGE_SHRINKAGE = Source("trade-page-shrinkage", "", "Trade pages for weavers and felters on what washing and fulling take", how="secondary", read="2026-11")
TRADE_PAGE_SUPERWASH = Source("trade-page-superwash", "", "Trade and lecture pages on shrink-resist wool: chlorination and a thin coat of resin", how="secondary", read="2026-11")

# Wash: fastness and care.
ISO_105_A02 = Source(
    "iso-105-a02", "ISO", "EN 20105-A02 (ISO 105-A02) Gray scale for assessing change in color (sample pages), with GOST R ISO 105-A02-99", "1994", read="2026-11",
    address="https://standards.iteh.ai/catalog/standards/cen/333e3b22-261f-4026-947b-4d1ca186db32/en-20105-a02-1994")
ISO_105_A03 = Source("iso-105-a03", "ISO", "ISO 105-A03 Gray scale for assessing staining, its steps recalled, not read", "1993", "memory")
ISO_105_A04 = Source("iso-105-a04", "ISO", "ISO 105-A04 Instrumental assessment of staining, formula recalled, not read; it agrees with the recalled steps of A03", how="memory")
ISO_105_A05 = Source("iso-105-a05", "ISO", "ISO 105-A05 Instrumental assessment of change in color, formula recalled, not read; it agrees with the steps of A02, which were", how="memory")
ISO_105_C06 = Source(
    "iso-105-c06", "ISO", "ISO 105-C06 Color fastness to domestic and commercial laundering: what the tests stand for, as quoted by two pages (doses recalled)", how="secondary",
    read="2026-11")
ISO_105_X12 = Source("iso-105-x12", "ISO", "ISO 105-X12 Color fastness to rubbing (extracts; number of strokes recalled)", "2016", read="2026-11")
ISO_3758 = Source(
    "iso-3758", "ISO", "ISO 3758 Care labeling code using symbols: its tables and temperatures as printed on four makers' pages (the standard itself not read)",
    how="secondary", read="2026-11")

# Sell: how many to make.
CACHON_TERWIESCH = Source(
    "cachon-terwiesch", "G. Cachon and C. Terwiesch", "Matching Supply with Demand, 3rd ed., chapter 12: the newsvendor model; solution of Q12.1 read in a copy",
    "2011", "secondary", "2026-11", "https://tr.scribd.com/document/324382828/Chapter-12-Betting-on-Uncertain-Demand-Answers")
COHEN_1991 = Source(
    "cohen-1991", "A. C. Cohen", "Truncated and Censored Samples, 3.3: estimating equations of the censored normal (its summary read; the lamps of Gupta recalled)",
    "1991", "secondary", "2026-11", "https://www.taylorfrancis.com/chapters/edit/10.1201/b16946-28/3-doubl-censored-samples")
TOBIN_1958 = Source(
    "tobin-1958", "J. Tobin", "Estimation of relationships for limited dependent variables, Econometrica 26, as told by Amemiya, Tobit models: a survey, 1984",
    "1958", "secondary", "2026-11", "https://www.scribd.com/document/467873167/Tobit-models-A-survey-pdf")
INVENTORY_TEXTBOOK = Source("inventory-textbook", "", "Textbooks of inventory: reorder point with demand and lead time both uncertain (recalled, not read)", how="memory")

# Sell: money, net contents, fiber content.
NIST_HB_133 = Source("nist-hb-133", "NIST", "Handbook 133 Checking the Net Contents of Packaged Goods, sampling plans and Tables 2-1, 2-5 and 2-8, recalled, not read (its correction factors agree with Student's t)", how="memory")
NIST_HB_133_LENGTH = Source("nist-hb-133-length", "NIST", "Handbook 133, Table 2-8 (length), the rows quoted by a draft on lumber", how="secondary", read="2026-11")
NIST_HB_130 = Source("nist-hb-130", "NIST", "Handbook 130, Uniform Packaging and Labeling Regulation: yarn by weight, thread by length, as paraphrased by web pages", how="secondary", read="2026-11")
RI_6_10 = Source("ri-6-10", "State of Rhode Island", "General Laws, chapter 6-10, thread: 6-10-1, 6-10-2, 6-10-4", read="2026-11", address="http://laws9.com/statutes/rhode-island/title-6/chapter-6-10/6-10-2")
MA_94_285 = Source("ma-94-285", "Commonwealth of Massachusetts", "General Laws, chapter 94, sections 285 and 287, thread", read="2026-11")
SI_2006_659 = Source("si-2006-659", "United Kingdom", "The Weights and Measures (Packaged Goods) Regulations 2006, Schedule 2, paragraph 4", "2006", read="2026-11", address="https://www.legislation.gov.uk/uksi/2006/659/schedule/2/paragraph/4")
UK_PACKAGED_GOODS = Source("uk-packaged-goods", "UK government", "Guidance on packaged goods: packers' rules, minimum system; and a trading standards leaflet that counts knitting yarn as a package", read="2026-11", address="https://www.gov.uk/weights-measures-and-packaging-the-law/packaged-goods")
CFR_16_303 = Source("cfr-16-303", "US Federal Trade Commission", "16 CFR 303.14, .16, .23, .26 and .43, rules under the Textile Fiber Products Identification Act", read="2026-11", address="https://www.ecfr.gov/current/title-16/part-303")
CFR_16_303_3 = Source("cfr-16-303-3", "US Federal Trade Commission", "16 CFR 303.3, fibers under 5 percent, in a translation", how="secondary", read="2026-11")
WOOL_ACT = Source("wool-act", "United States", "Wool Products Labeling Act, 15 USC 68 and 68b, with 16 CFR 300.3 and 300.16", read="2026-11", address="https://www.ecfr.gov/current/title-16/part-300")
US_LABEL_MEMORY = Source("us-label-memory", "US Federal Trade Commission", "Wool and Textile Act rules recalled, not read: generic names, unknown fibers with a share, origin of imported yarn, registered numbers", how="memory")
EU_1007_2011 = Source("eu-1007-2011", "European Union", "Regulation 1007/2011 on textile fiber names and labels: Articles 1 to 3 read; Articles 9 and 20 as quoted by another text", "2011", "secondary", "2026-11", "https://www.legislation.gov.uk/eur/2011/1007/body")
EU_1007_MEMORY = Source("eu-1007-memory", "European Union", "Regulation 1007/2011, Articles 7 to 9 and 14 to 16 and Annex I, recalled, not read", "2011", "memory")
TEXTILE_LAW_OLDER = Source("textile-law-older", "United Kingdom and France", "SI 1986/26, Schedule 1, and decree 73-357, article 9, under the directive before: 2 percent extraneous fiber, 5 percent when carded, 3 percent tolerance", "1973, 1986", read="2026-11", address="https://www.legislation.gov.uk/uksi/1986/26/schedules/made")


def all_sources() -> dict[str, Source]:
    """Every source by its id."""
    return {value.id: value for value in globals().values() if isinstance(value, Source)}
