"""Sources first cited by the dye chapter: recipes, classes, color. Another chapter may cite them too."""

from .source import Source

# Dye: recipes, heat, rinsing, drying.
TEXTILE_PAGES_RECIPE = Source(
    "textile-pages-recipe", "", "Two textile education pages on laboratory dips and dye recipes: volume of stock = W P / C", how="read", read="2026-11")
DYEING_TERMS_SLIDES = Source("dyeing-terms-slides", "B. Venkatesh", "Basic dyeing terms, lecture slides: depth on weight of fiber, liquor ratio", read="2026-11")
TRADE_PAGE_DYES = Source("trade-page-dyes", "", "Trade pages on weighing dye by depth of shade", how="read", read="2026-11")
DYE_LAB_MANUAL = Source("dye-lab-manual", "", "Laboratory manual page: a mixed shade from 1 % stocks, salt by the liter", read="2026-11")
DYEING_TEXTBOOK = Source("dyeing-textbook", "", "Textbooks of dyeing: baths, holds, exhaustion, fixation, rates of rise (recalled, not read)", how="memory")
HEAT_HANDBOOK = Source("heat-handbook", "", "Handbook values of specific heat and of heater efficiency (recalled, not read)", how="memory")
MORTON_HEARLE_HEAT = Source(
    "morton-hearle-heat", "W. E. Morton and J. W. S. Hearle", "Physical Properties of Textile Fibres, Table 6.1 (edition not noted)", read="2026-11")
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

# Dye: color.
KM_APPLICATION_NOTE = Source(
    "km-application-note", "", "An instrument maker's application note on Kubelka-Munk theory (K/S, its additivity, where it is weak)", "2008", read="2026-11")
SHARMA_2005 = Source(
    "sharma-2005", "G. Sharma, W. Wu, E. N. Dalal", "The CIEDE2000 color-difference formula, Color Research and Application 30, 21: abstract read, the rows of "
    "Table 1 in several public test suites", "2005", "secondary", "2026-11")
CIE_15 = Source("cie-15", "CIE", "CIE 15 Colorimetry: CIELAB and the D65 white, recalled and checked against two libraries", "2004", "memory")
IEC_61966 = Source("iec-61966", "IEC", "IEC 61966-2-1: sRGB, recalled and checked against two libraries", "1999", "memory")
ITU_BT2020 = Source("itu-bt2020", "ITU", "Recommendation ITU-R BT.2020: primaries, recalled and checked against a library", "2015", "memory")
