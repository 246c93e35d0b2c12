"""The helper's table against the full calculation, and the page's reader against Python's: the same links, the same answers."""

import json
import random
import re
import subprocess
from itertools import product
from pathlib import Path
from urllib.parse import quote

import pytest

from fibercalc.core.registry import find_card
from fibercalc.site import helper
from fibercalc.site.helper_page import counter_body, helper_body
from fibercalc.workbook.base_link import RULES, BaseLink, read_link, write_link

ROOT = Path(__file__).resolve().parents[2]
LINKS = json.loads((Path(__file__).parent / "helper-links.json").read_text("utf-8"))
SKEINS = (
    (100.0, 230.0),
    (100.0, 420.0),
    (50.0, 115.0),
    (113.4, 180.5),
    (100.0, 61.3),
    (100.0, 37.0),
    (500.0, 70.0),
    (20.0, 97.1),
    (250.0, 3120.0),
)
WORDS = [words for _, words in helper.phrases()["odds"]]


@pytest.fixture(scope="module")
def table() -> dict:
    return json.loads(json.dumps(helper.table()))


def in_node(table: dict, links: list = (), asked: list = ()) -> dict:
    """What the page's script says."""
    done = subprocess.run(
        ["node", "site_js/helper/in_node.mjs"],
        input=json.dumps({"table": table, "links": list(links), "asked": list(asked)}),
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    return json.loads(done.stdout)


def hostile_links(count: int) -> list[list[str]]:
    """Links put together at random, the same in every run, from parts that a careless or wicked hand would use."""
    dice = random.Random(5)
    numbers = [
        "100",
        "230",
        "1e3",
        "-1",
        "007",
        "1.5",
        "1.555",
        "",
        "0x10",
        "٣",
        "1,5",
        "９",
        "99999",
        "100 ",
        "%20100",
        "+100",
        "1%2E5",
        "𝟙",
    ]
    keys = ["v", "g", "m", "c", "V", "n", "theme", "__proto__", "%67", "", "g%00"]
    texts = [
        "Dunmel DK",
        "<b>x</b>",
        "\u202eabc",
        "a\u0000b",
        "🧶" * 50,
        "é" * 45,
        "%",
        "%zz",
        "+",
        "a&b=c",
        "a;b",
        "\ud7ff\ue000",
        "  x  ",
        "\u2028y",
        "&lt;",
        "x" * 500,
        "日本語\u200d",
        "=",
        "#",
    ]
    made = []
    for _ in range(count):
        pairs = [
            (
                dice.choice(keys[:4]) if dice.random() < 0.8 else dice.choice(keys),
                dice.choice(numbers),
            )
            for _ in range(dice.randint(1, 5))
        ]
        if dice.random() < 0.6:
            pairs = [
                ("v", "1"),
                ("g", dice.choice(["100", "50", "113.4"])),
                ("m", "230"),
                *pairs[: dice.randint(0, 1)],
            ]
        fragment = "&".join(
            f"{dice.choice('nlpx')}={text if dice.random() < 0.4 else quote(text)}"
            for text in dice.choices(texts, k=dice.randint(0, 4))
        )
        made.append(["?" + "&".join(f"{key}={number}" for key, number in pairs), "#" + fragment])
    return made


def test_links_are_read_as_they_were_worked_out_by_hand(table):
    said = in_node(table, [[search, hash_] for search, hash_, *_ in LINKS])["links"]
    for (search, hash_, *wanted), script in zip(LINKS, said):
        assert list(vars(read_link(search, hash_)).values()) == wanted, (search, hash_)
        assert script == vars(BaseLink(*wanted)), (search, hash_)


def test_any_link_is_read_alike_in_both_languages(table):
    links = hostile_links(1500)
    read = [read_link(*link) for link in links]
    assert {each.kind for each in read} == {"base", "broken", "none"} and sum(
        each.kind == "base" for each in read
    ) > 200
    for link, python, script in zip(links, read, in_node(table, links)["links"]):
        assert script == vars(python), link


@pytest.mark.parametrize("search", ["?" + "a" * 5000, "?v=1&g=100&m=230&x=" + "9" * 400])
def test_a_link_beyond_the_length_is_broken(table, search):
    assert (
        read_link(search, "").kind == "broken" == in_node(table, [[search, ""]])["links"][0]["kind"]
    )


def test_a_written_link_reads_back_and_is_short():
    base = BaseLink("base", 100.0, 229.5, "3", "Dunmel DK", "14", "€24")
    link = write_link("https://brackwend.example/", base)
    query, fragment = link.partition("?")[2].split("#")
    assert read_link(query, fragment) == base
    assert "Dunmel" not in query and "14" not in query and "24" not in query, (
        "what is private stands in the fragment"
    )
    assert (
        len(write_link("https://brackwend.example/", BaseLink(**vars(base) | {"price": ""}))) < 80
    )


def odds_of(said: dict) -> list[str]:
    """The odds in the two sentences."""
    return re.findall(
        r"(?:; | for )(.*?)(?: would want|\.$)", f"{said['say']}\n{said['fewer']}", re.MULTILINE
    )


def test_the_table_answers_as_the_full_calculation_does(table):
    """Every project and size, several skeins, every surety. Where the odds lie on the edge of what is wished, either count may be said."""
    questions = [
        {"grams": grams, "meters": meters, "project": project["key"], "size": size["key"]}
        for project in table["projects"]
        for size in project["sizes"]
        for grams, meters in SKEINS
    ]
    answers = [helper.work(*each.values()) for each in questions]
    asked = [each | {"sure": sure} for each, sure in product(questions, helper.SURE)]
    same = 0
    for question, answer, said in zip(
        asked, (each for each in answers for _ in helper.SURE), in_node(table, asked=asked)["asked"]
    ):
        full = helper.say(answer, question["sure"], table)
        if said["count"] != full["count"]:
            edge = (
                answer.chance(min(each for each in (said["count"], full["count"]) if each))
                - int(question["sure"]) / 100
            )
            assert abs(edge) <= helper.ODDS_WITHIN / 100, question
        elif said["say"] == full["say"] and said["fewer"] == full["fewer"]:
            same += 1
        else:
            for mine, theirs in zip(odds_of(full), odds_of(said)):
                assert abs(WORDS.index(mine) - WORDS.index(theirs)) <= 1, (question, full, said)
        assert near(said["need"], full["need"]), question
    assert same > 0.95 * len(asked)


def near(mine: str, theirs: str) -> bool:
    """Both sentences, with each length at most a written step apart."""
    numbers = [
        [
            float(word.strip("(").replace("\u202f", ""))
            for word in text.split()
            if word.strip("(").replace("\u202f", "").isdigit()
        ]
        for text in (mine, theirs)
    ]
    return len(numbers[0]) == len(numbers[1]) and all(
        abs(a - b) <= max(1, 0.055 * b) for a, b in zip(*numbers)
    )


def interpolated(table: dict, grams: float, meters: float, project: str, size: str):
    """The numbers behind the page's answer, by a second hand: need, and the chance for a count."""
    import numpy

    row = next(
        each
        for made in table["projects"]
        if made["key"] == project
        for each in made["sizes"]
        if each["key"] == size
    )
    need = numpy.exp(
        numpy.interp(
            numpy.log(100 * meters / grams), numpy.log(table["grists"]), numpy.log(row["need"])
        )
    )
    odds = lambda count: (
        1
        / (
            1
            + numpy.exp(
                -numpy.interp(
                    numpy.log(count * meters / need),
                    numpy.log(table["ratios"]),
                    table["curves"][row["curve"]],
                )
                / 1000
            )
        )
    )
    return need, odds


def test_the_stated_error_holds(table):
    """The need within NEED_WITHIN per cent and each chance within ODDS_WITHIN in 100 of the full calculation, as the page says."""
    worst = [0.0, 0.0]
    for project in table["projects"]:
        for size in project["sizes"]:
            for grams, meters in SKEINS:
                need, odds = interpolated(table, grams, meters, project["key"], size["key"])
                full = helper.work(grams, meters, project["key"], size["key"])
                worst[0] = max(worst[0], 100 * abs(need / full.need - 1))
                worst[1] = max(
                    worst[1],
                    *(100 * abs(odds(count) - full.chance(count)) for count in range(1, 31)),
                )
    assert worst[0] <= helper.NEED_WITHIN and worst[1] <= helper.ODDS_WITHIN, worst
    assert (
        f"{helper.NEED_WITHIN} %" in helper.WORDS["table"]
        and f"{helper.ODDS_WITHIN} in 100" in helper.WORDS["table"]
    )


def test_the_surer_the_more(table):
    asked = [
        {"grams": 100, "meters": 230, "project": "plain-woman", "size": size, "sure": sure}
        for size in ("woman-xs", "woman-m", "woman-3x")
        for sure in helper.SURE
    ]
    counts = [each["count"] for each in in_node(table, asked=asked)["asked"]]
    assert counts == sorted(counts) and counts[0] < counts[-1]


def test_too_many_skeins_is_said_and_not_counted(table):
    said = in_node(
        table, asked=[{"grams": 5, "meters": 5, "project": "blanket", "size": "bed", "sure": "95"}]
    )["asked"][0]
    assert said["count"] == 0 and "ask the maker" in said["say"]
    assert said == helper.say(helper.work(5, 5, "blanket", "bed"), "95", table)


def test_what_is_asked_for_is_refused_outside_the_rules():
    good = {"grams": 100, "meters": 230, "project": "plain-woman", "size": "woman-m", "sure": "90"}
    assert helper.reply(good)["count"] > 0
    for bad in (
        {"grams": 0},
        {"meters": 1e9},
        {"grams": "nan"},
        {"sure": "99"},
        {"grams": 5000, "meters": 5},
    ):
        with pytest.raises(ValueError):
            helper.reply(good | bad)
    for bad in ({"project": "yacht"}, {"size": "__proto__"}):
        with pytest.raises(KeyError):
            helper.reply(good | bad)


def test_every_size_offered_is_one_that_the_card_works(table):
    for project in helper.projects():
        assert project.first in {size.key for size in project.sizes}
        assert len({size.key for size in project.sizes}) == len(project.sizes)
    for name, rule in (("skein_mass", "grams"), ("skein_length", "meters")):
        low, high = find_card(helper.CARD).item(name).edges
        assert low <= RULES[rule][0] and RULES[rule][1] <= high, (
            "a link may not ask what the card refuses"
        )
    grist = RULES["grist"]
    assert table["grists"][0] == grist[0] and table["grists"][-1] == grist[1]


def test_a_customer_is_not_met_with_how_the_sizes_are_known(table):
    """That they are from memory stands behind a fold, still true, and beside no address."""
    page = str(helper_body(table))
    fold = re.search(r"<details>.*?</details>", page, re.DOTALL)[0]
    first_view = (
        page.replace(fold, "")
        + " ".join(project["assumes"] for project in table["projects"])
        + str(counter_body())
    )
    assert "unverified" not in first_view and "YarnStandards" not in page
    assert "How it is worked out" in fold and "from memory, unverified" in fold
    for project in table["projects"]:
        of_bodies = project["key"] == "hat" or project["key"].startswith(("plain-", "cables-"))
        assert (
            "from memory, unverified" in project["sizes_from"]
        ) == of_bodies and "www" not in project["sizes_from"]
