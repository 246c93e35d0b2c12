"""Sources first cited by the safe chapter: bath chemistry, air, labels, hazards. Another chapter
may cite them too.
"""

from .source import Source

# Safe: chemistry of a bath.
LIBRETEXTS_E1 = Source(
    "libretexts-e1",
    "LibreTexts Chemistry",
    "Reference table E1: acid dissociation constants at 25 °C",
    read="2026-11",
    address="https://chem.libretexts.org",
)
GOLDBERG_2002 = Source(
    "goldberg-2002",
    "R. N. Goldberg, N. Kishore, R. M. Lennen",
    "Thermodynamic quantities for the ionization reactions of buffers, Journal of Physical and"
    " Chemical Reference Data 31 (phthalic and boric: Robinson and Stokes)",
    "2002",
    "memory",
)
ATOMIC_WEIGHTS = Source(
    "atomic-weights", "IUPAC", "Standard atomic weights, added up by formula", how="memory"
)
SPANA_HELP = Source(
    "spana-help",
    "KTH Royal Institute of Technology",
    "Help of an equilibrium program: activity coefficients, the Davies equation",
    read="2026-11",
    address="https://www.kth.se",
)
HANDBOOK_DENSITIES = Source(
    "handbook-densities",
    "",
    "Densities of aqueous solutions at 20 °C, handbook tables recalled, not read",
    how="memory",
)
REAGENT_TABLES = Source(
    "reagent-tables",
    "",
    "Two laboratory tables of concentrated reagents (strength, density, mol/L)",
    read="2026-11",
    address="https://www.laboratorynotes.com",
)
PH_TABLE = Source(
    "ph-table",
    "",
    "pH of common acids and bases, a calculated table for 25 °C",
    read="2026-11",
    address="https://www.cyrrion.com",
)
PH_TABLE_BASES = Source(
    "ph-table-bases",
    "",
    "pH of common solutions, a supplier's table",
    read="2026-11",
    address="https://www.samaterials.co.uk",
)
NBS_RP1690 = Source(
    "nbs-rp1690",
    "W. J. Hamer, G. D. Pinching, S. F. Acree",
    "pH standards of potassium hydrogen phthalate, NBS Research Paper RP1690",
    "1946",
    read="2026-11",
)
NBS_BUFFERS_1969 = Source(
    "nbs-buffers-1969",
    "US National Bureau of Standards",
    "Two new standards for the pH scale, Journal of Research 73A, 37 (abstract)",
    "1969",
    read="2026-11",
)
DENSITY_TABLE = Source(
    "density-table",
    "",
    "Densities of aqueous solutions of organic acids at 20 °C, a table on an engineering page",
    read="2026-11",
    address="https://www.engineeringtoolbox.com/density-aqueous-solution-formic-lactic-oxalic-acetic-citric-acid-concentration-d_1953.html",
)
NBS_PRIMARY_BUFFERS = Source(
    "nbs-primary-buffers",
    "US National Bureau of Standards",
    "Primary phosphate buffers at 25 °C, recalled",
    how="memory",
)
# Safe: air.
OSHA_1910_1000 = Source(
    "osha-1910-1000",
    "OSHA",
    "29 CFR 1910.1000 Air contaminants, Table Z-1 and paragraph (d)",
    read="2026-11",
    address="https://www.ecfr.gov/current/title-29/section-1910.1000",
)
NIOSH_LIMITS = Source(
    "niosh-limits",
    "NIOSH",
    "Recommended exposure limits and IDLH documentation: acetic and formic acid read, ammonia in"
    " pages that quote it",
    read="2026-11",
    address="https://www.cdc.gov/niosh/idlh/64186.html",
)
UK_EH40 = Source(
    "uk-eh40",
    "UK Health and Safety Executive",
    "EH40/2005 Workplace exposure limits, 4th ed.; values recalled, ammonia in an extract",
    "2020",
    "memory",
)
SANDER_2023 = Source(
    "sander-2023",
    "R. Sander",
    "Compilation of Henry's law constants, version 5, Atmospheric Chemistry and Physics 23: formic"
    " acid and ammonia",
    "2023",
    read="2026-11",
    address="https://www.henrys-law.org",
)
CAL_AC1 = Source(
    "cal-ac1",
    "California Department of Industrial Relations",
    "Title 8, section 5155, Table AC-1: acetic acid, ceiling 40 ppm",
    read="2026-11",
)
CDC_2003 = Source(
    "cdc-2003",
    "CDC",
    "Guidelines for Environmental Infection Control, Appendix B: air changes and time to purge",
    "2003",
    read="2026-11",
)
HSE_DYES = Source(
    "hse-dyes",
    "UK Health and Safety Executive",
    "Dyes and dyeing; Reactive dyes: handling in textile finishing (TIS5)",
    read="2026-11",
    address="https://www.hse.gov.uk/textiles/dyes-dyeing.htm",
)
GESTIS = Source(
    "gestis",
    "GESTIS substance database",
    "Acetic acid: 2.50 mg/m³ for 1 ppm at 20 °C",
    read="2026-11",
)

# Safe: labels.
CLP_ANNEXES = Source(
    "clp-annexes",
    "European Union",
    "Regulation (EC) No 1272/2008 (CLP), Annexes I and VI: limits as quoted by others",
    "2008",
    "secondary",
    "2026-11",
)
CLP_MEMORY = Source(
    "clp-memory",
    "European Union",
    "Regulation (EC) No 1272/2008 (CLP), Annexes I and VI: entries recalled, not read",
    "2008",
    "memory",
)
CLP_3_2_3 = Source(
    "clp-3-2-3",
    "European Union",
    "Regulation (EC) No 1272/2008 (CLP), Annex I, 3.2.3: pH of 2 and less, 11.5 and more",
    "2008",
    read="2026-11",
)
CLP_ACUTE = Source(
    "clp-acute",
    "European Union",
    "Regulation (EC) No 1272/2008 (CLP), Annex I, Table 3.1.1 and 3.1.3 (acute toxicity of"
    " mixtures)",
    "2008",
    read="2026-11",
    address="https://reachonline.eu/clp/en/annex-i-3-3.1-3.1.3.html",
)
CLP_SENSITIZERS = Source(
    "clp-sensitizers",
    "European Union",
    "Regulation (EC) No 1272/2008 (CLP), Annex I, Table 3.4.5 (sensitizers: 1A from 0.1 %, 1 and 1B"
    " from 1 %)",
    "2008",
    read="2026-11",
)
ECHA_FORMIC = Source(
    "echa-formic",
    "European Chemicals Agency",
    "Registration dossier 15127, formic acid: oral LD50 730 mg/kg, LC50 7,850 mg/m³ (4 h, vapor)",
    read="2026-11",
    address="https://echa.europa.eu/registration-dossier/-/registered-dossier/15127/7/3/1",
)
GISCHEM_AMMONIA = Source(
    "gischem-ammonia",
    "GisChem",
    "Ammonia solution, from 5 % to under 10 %: H290, H314, H335",
    read="2026-11",
    address="https://gischem.de",
)
EURO_INDUSTRY_NAOH = Source(
    "euro-industry-naoh",
    "",
    "Industry note on the labeling of sodium hydroxide solutions",
    read="2026-11",
)
ECHA_NOTIFIED = Source(
    "echa-notified",
    "European Chemicals Agency",
    "Classification and labeling inventory, 233-135-0 (notified)",
    read="2026-11",
)
GHS_MEMORY = Source(
    "ghs-memory",
    "United Nations",
    "Globally Harmonized System (GHS), wording of the statements recalled",
    how="memory",
)

# Safe: scalds, drains, mordants, loads, masks, first aid.
CPSC_TAP_WATER = Source(
    "cpsc-tap-water",
    "US Consumer Product Safety Commission",
    "Hot tap water scalds, as quoted by two pages",
    how="secondary",
    read="2026-11",
)
BURN_FOUNDATION = Source(
    "burn-foundation",
    "Burn Foundation",
    "Time to a third-degree burn (15 s at 133 °F, 5 s at 140 °F, 1 s at 156 °F), as quoted by"
    " pages",
    how="secondary",
    read="2026-11",
)
MORITZ_HENRIQUES = Source(
    "moritz-henriques",
    "A. R. Moritz and F. C. Henriques",
    "Studies of thermal injury II, American Journal of Pathology 23, as quoted by others",
    "1947",
    "secondary",
    "2026-11",
)
CHILDRENS_ALABAMA = Source(
    "childrens-alabama",
    "Children's of Alabama",
    "Prevent scald burn injuries: how fast hot water burns",
    read="2026-11",
    address="https://www.childrensal.org/PreventScaldBurnInjuries",
)
SCALD_CHILDREN = Source(
    "scald-children",
    "",
    "Children burn in half of an adult's time (3 s at 140 °F): a newspaper quoting a burn center",
    "1997",
    "secondary",
    "2026-11",
)
CPSC_CARBON_MONOXIDE = Source(
    "cpsc-carbon-monoxide",
    "US Consumer Product Safety Commission",
    "Document 5012: carbon monoxide has no odor; an open window or a fan does not assure that it"
    " stays low",
    read="2026-11",
    address="https://www.cpsc.gov",
)
CFR_40_403_5 = Source(
    "cfr-40-403-5",
    "US EPA",
    "40 CFR 403.5(b) prohibited discharges, as quoted by a city and a handbook",
    how="secondary",
    read="2026-11",
    address="https://www.ecfr.gov/current/title-40/section-403.5",
)
LOCAL_LIMITS_US = Source(
    "local-limits-us", "", "Sewer limits of four US places, in their own texts", read="2026-11"
)
UK_TRADE_EFFLUENT = Source(
    "uk-trade-effluent",
    "",
    "Guide to trade effluent (an example consent)",
    "2023",
    "secondary",
    "2026-11",
)
CORNELL_HAZARDOUS = Source(
    "cornell-hazardous",
    "Cornell University",
    "Household hazardous products: septic tanks",
    read="2026-11",
    address="https://www.human.cornell.edu",
)
NIOSH_94_110 = Source(
    "niosh-94-110",
    "NIOSH",
    "Applications Manual for the Revised NIOSH Lifting Equation, Publication 94-110; tables as"
    " quoted in public texts",
    "1994, revised 2021",
    "secondary",
    "2026-11",
    "https://doi.org/10.26616/NIOSHPUB94110revised092021",
)
NIOSH_RWL_TEXT = Source(
    "niosh-rwl-text",
    "NIOSH",
    "The revised lifting equation of 1991 as printed by a government fact sheet and an ergonomics"
    " handbook",
    "1991",
    "secondary",
    "2026-11",
    "https://www.ccohs.ca/oshanswers/ergonomics/niosh/calculating_rwl.html",
)
OSHA_RESPIRATORS = Source(
    "osha-respirators",
    "OSHA",
    "29 CFR 1910.134, definitions and assigned protection factors (definitions read, factors"
    " recalled)",
    how="memory",
)
WEB_PAGE_FILTERS = Source(
    "web-page-filters",
    "",
    "Web page on European filter classes (FFP2, FFP3); UK factors recalled",
    read="2026-11",
)
CHEMICAL_BURNS = Source(
    "chemical-burns",
    "UK National Health Service",
    "Acid and chemical burns, as quoted by a news page",
    "2018",
    "secondary",
    "2026-11",
)
ICSC_DITHIONITE = Source(
    "icsc-dithionite",
    "International Chemical Safety Cards",
    "1717 Sodium dithionite",
    read="2026-11",
    address="https://www.inchem.org",
)
