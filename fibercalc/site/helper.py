"""The customers' yardage helper: its answer in words, and the one table from which a page answers before Python runs.

A customer names a project, a size and how sure she wants to be. The answer comes from the card yarn-needed. For each project and
size the yarn needed depends smoothly on the skein's meters in 100 g, and the odds on what is bought over what is needed; both are
written into the table together with the sentences, so that the page's small reader only interpolates, compares and joins.
"""

from collections.abc import Callable
from importlib import import_module
from math import exp, log, sqrt

from ..core.number import write_number
from ..core.registry import find_card
from ..core.units import GRAMS_PER_OUNCE, METERS_PER_YARD
from ..core.work import work_card
from ..workbook.base_link import RULES, class_name

CARD = "yarn-needed"
SURE = ("80", "90", "95")  # in 100, as a customer may want it
FIRST_SURE = "90"
MOST = 60  # skeins: beyond that, ask the maker
# How far the table may be from the full calculation; held by tests/site/test_helper_table.py and said on the page.
NEED_WITHIN, ODDS_WITHIN = 0.2, 0.2  # per cent of the yarn, in 100 knitters

GRIDS = 7  # counts of yarn in the table: between them need follows a power of the count very nearly
RATIO_STEP = 0.025  # between two points of the odds, in the logarithm of bought over needed
RATIOS = 65
SUREST = 1e-4  # odds nearer to none or all than this are never told apart

ODDS = ((0.97, "nearly everyone"), (9 / 10, "about 9 in 10"), (4 / 5, "about 4 in 5"), (3 / 4, "about 3 in 4"), (2 / 3, "about 2 in 3"),
        (3 / 5, "about 3 in 5"), (1 / 2, "about half"), (2 / 5, "about 2 in 5"),
        *((1 / count, f"about 1 in {count}") for count in (3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100)), (1 / 180, "fewer than 1 in 100"))
ORDINALS = ("", "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth")

# Sentences; what stands in braces is filled in from the other lists. A large first sentence, then the lines below it.
WORDS = {
    "say": "Buy {count}; {odds} would want {next}.",
    "none": "This takes more than {most}: ask the maker.",
    "fewer": "{fewer} would run out for {odds}.",
    "need": "It takes about {meters} m ({yards} yd); 95 in 100 knitters need {low_meters} to {high_meters} m ({low_yards} to {high_yards} yd).",
    "lot": "Buy from one lot: two lots of a color seldom match.",
    "this_lot": "Buy from one lot ({lot}): two lots of a color seldom match.",
    "price": "{price} a skein",
    "skein": "{grams} g, {meters} m (about {yards} yd) in a skein",
    "class": "weight class {name}",
    "in_lot": "lot {lot}",
    "asked": "{project}, {size}; {sure} in 100 sure",
    "table": f"Read from a table: within {NEED_WITHIN} % of the full calculation in yarn and {ODDS_WITHIN} in 100 in odds.",
    "live": "From the full calculation.",
    "broken": "This link could not be read. Type what stands on the skein’s label, or ask the maker for a new link.",
    "empty": "Type the weight and the length of a skein.",
    "kept": "This answer is still for the last good numbers.",
    "grams": f"Give the weight of a skein, {RULES['grams'][0]} to {RULES['grams'][1]} g, as printed on its label.",
    "meters": f"Give the length of a skein, {RULES['meters'][0]} to {RULES['meters'][1]} m, as printed on its label.",
    "grist": "This weight and this length do not go together: check grams and ounces, meters and yards.",
    "copied": "Copied.",
    "not_copied": "Copying did not work here: mark the text and copy it.",
    "no_bases": "There is no base to offer yet: write yours down on My bench or in the workbook, then come back.",
    "which_base": "Which base?", "which_project": "What is it for?", "which_size": "Which size?", "how_sure": "How sure?",
    "other_size": "Another size", "start_again": "Next customer", "back": "Back", "show_code": "Code to take home", "scan": "Scan it to ask again at home.", "done": "Done",
    "late": "The list of answers did not arrive. Load this page again.",
}


class Answer:
    """What follows for one skein, project and size: the median need, and the chance that so many skeins are enough.

    need    m, median;  low, high  m, the 95 % range;  chance  skeins (whole or not) -> 0 to 1
    """

    def __init__(self, need: float, low: float, high: float, chance: Callable[[float], float]):
        self.need, self.low, self.high, self.chance = need, low, high, chance


def work(grams: float, meters: float, project: str, size: str) -> Answer:
    """The full calculation for a skein of so many grams and meters. Raises KeyError for a project or size that is not offered."""
    given = _found(size, _found(project, projects()).sizes).texts | {"known": "yarn", "skein_mass": f"{grams:.12g} g", "skein_length": f"{meters:.12g} m"}
    outcome = work_card(find_card(CARD), given).outcome
    return Answer(outcome.value("skeins") * meters, outcome.low("skeins") * meters, outcome.high("skeins") * meters,
                  lambda skeins: outcome.chance_below("skeins", skeins))


def reply(request: dict) -> dict:
    """The full calculation for the page's questions: say() of one. Raises ValueError for numbers out of range, KeyError for unknown words."""
    grams, meters = float(request["grams"]), float(request["meters"])
    within = all(low <= value <= high for value, (low, high) in ((grams, RULES["grams"]), (meters, RULES["meters"])))
    if not within or not RULES["grist"][0] <= 100 * meters / grams <= RULES["grist"][1] or request["sure"] not in SURE:
        raise ValueError("a skein or a surety that is not offered")
    return say(work(grams, meters, request["project"], request["size"]), request["sure"], phrases())


def projects() -> tuple:
    """What a customer may ask for. The site knows no chapter by name in its code's imports; this is data of the card's own chapter."""
    return import_module(f"fibercalc.{find_card(CARD).chapter}.asked").PROJECTS


def _found(key: str, among: tuple):
    found = next((each for each in among if each.key == key), None)
    if found is None:
        raise KeyError(key)
    return found


def say(answer: Answer, sure: str, table: dict) -> dict:
    """The sentences of an answer, from the table's own lists: the page's reader does the same with the same lists."""
    words, wanted = table["words"], int(sure) / 100
    buy = next((count for count in range(1, MOST + 1) if answer.chance(count) >= wanted), None)
    need = words["need"].format_map({
        f"{end}{unit}": _length(table, value)[at] for end, value in (("", answer.need), ("low_", answer.low), ("high_", answer.high))
        for at, unit in ((1, "meters"), (2, "yards"))})
    if buy is None:
        return {"say": words["none"].format(most=table["counts"][MOST]), "fewer": "", "need": need, "count": 0}
    line = words["say"].format(count=table["counts"][buy], odds=_odds(table, 1 - answer.chance(buy)), next=table["nexts"][buy])
    fewer = words["fewer"].format(fewer=table["counts"][buy - 1], odds=_odds(table, 1 - answer.chance(buy - 1))) if buy > 1 else ""
    return {"say": line, "fewer": fewer, "need": need, "count": buy}


def _odds(table: dict, chance: float) -> str:
    return next((words for floor, words in table["odds"] if chance >= floor), table["odds"][-1][1])


def _length(table: dict, meters: float) -> list:
    return next((row for row in table["lengths"] if meters < row[0]), table["lengths"][-1])


def written_need(table: dict, meters: float) -> str:
    """A length as every answer writes it: "880 m (960 yd)"."""
    _, in_meters, in_yards = _length(table, meters)
    return f"{in_meters} m ({in_yards} yd)"


def phrases() -> dict:
    """The lists of words and written numbers that every answer is joined from."""
    odds = [[round(sqrt(chance * after), 6), words] for (chance, words), (after, _) in zip(ODDS, ODDS[1:])] + [[0, ODDS[-1][1]]]
    return {
        "words": WORDS, "odds": odds, "most": MOST,
        "counts": ["no skein", "1 skein", *(f"{count} skeins" for count in range(2, MOST + 1))],
        "nexts": [f"a {word}".replace("a eig", "an eig").replace("a ele", "an ele") for word in ORDINALS[1:]] + ["one more"] * (MOST + 1 - len(ORDINALS[1:])),
        "lengths": _lengths(), "classes": {number: class_name(number) for number in RULES["classes"]},
        "sure": [{"key": key, "label": f"{key} in 100"} for key in SURE], "first_sure": FIRST_SURE,
        "units": {"grams": {"g": 1, "oz": GRAMS_PER_OUNCE}, "meters": {"m": 1, "yd": METERS_PER_YARD}},
    }


def _lengths() -> list[list]:
    """[upper edge in meters, meters, yards] as written: no finer than the spread supports, 2 to 5 % apart, without groups below 10,000."""
    rows, value = [], 10.0
    while value < 40_000:
        after = value + _step(value)
        rows.append([round((value + after) / 2, 3), _plain(value), _plain(_rounded(value / METERS_PER_YARD))])
        value = after
    return rows


def _step(value: float) -> float:
    decade = 10.0 ** int(log(value * 1.000001) / log(10))
    leading = value / decade
    return decade * (0.05 if leading < 1.9999 else 0.1 if leading < 4.9999 else 0.2)


def _rounded(value: float) -> float:
    step = max(_step(value), 1.0)
    return round(value / step) * step


def _plain(value: float) -> str:
    """Four digits stay together, so that no comma or point can be taken for the other."""
    text = write_number(value, 0, "comma")
    return text.replace("\u202f", "") if value < 9999.5 else text


def table() -> dict:
    """Everything that a page needs to answer by itself: rules for links, words, and for each project and size the need and the odds."""
    low, high = RULES["grist"]
    grists = [round(exp(log(low) + (log(high) - log(low)) * at / (GRIDS - 1)), 3) for at in range(GRIDS)]
    ratios = [round(exp(RATIO_STEP * (at - RATIOS // 2)), 5) for at in range(RATIOS)]
    curves: list[list[int]] = []
    made = []
    for project in projects():
        sizes = []
        for size in project.sizes:
            answers = [work(100.0, grist, project.key, size.key) for grist in grists]
            curve = _curve(answers[GRIDS // 2], ratios, grists[GRIDS // 2])
            if curve not in curves:
                curves.append(curve)
            sizes.append({"key": size.key, "label": size.label, "measure": size.measure, "need": [round(each.need, 2) for each in answers], "curve": curves.index(curve)})
        made.append({"key": project.key, "label": project.label, "assumes": project.assumes, "sizes_from": project.sizes_from, "first": project.first, "sizes": sizes})
    return {"rules": RULES} | phrases() | {"grists": grists, "ratios": ratios, "curves": curves, "projects": made}


def _curve(answer: Answer, ratios: list[float], meters: float) -> list[int]:
    """The odds that a length bought is enough, for each ratio of it to the median need: 1,000 times the logarithm of chance over
    its rest, which bends less between two points than the chance itself does, so that rare cases are as true as common ones."""
    chances = [min(max(answer.chance(ratio * answer.need / meters), SUREST), 1 - SUREST) for ratio in ratios]
    return [round(1000 * log(chance / (1 - chance))) for chance in chances]
