"""The contract that everything else builds on: the command line, its exit codes and lines, the JSON answer, and Python's work()."""

import io
import json
import re
import shutil
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest

import fibercalc
from fibercalc.cli import main
from fibercalc.completion import SHELLS, names_of
from fibercalc.core import registry
from fibercalc.core.problem import BadInputs
from fibercalc.core.registry import UnknownCard, all_cards, find_card
from tests import cards  # noqa: F401  (registers the fixture card)

ROOT = Path(fibercalc.__file__).parents[1]
KEYS = [
    "card",
    "version",
    "inputs",
    "answer",
    "results",
    "working",
    "basis",
    "sources",
    "cautions",
    "notes",
    "pictures",
    "tables",
]


def run(capsys, *words):
    code = main(list(words))
    out = capsys.readouterr()
    return code, out.out, out.err


def test_the_answer_has_the_contract_s_keys_and_work_gives_the_same_object(capsys):
    code, out, _ = run(capsys, "work", "skein-length", "turns=285", "circumference=59 in", "--json")
    answer = json.loads(out)
    assert code == 0 and list(answer) == KEYS
    assert answer == json.loads(
        json.dumps(fibercalc.work("skein-length", {"turns": "285", "circumference": "59 in"}))
    )
    for result in answer["results"].values():
        assert {"value", "unit", "low", "high", "text"} <= result.keys()
    for step in answer["working"]:
        assert {"label", "formula", "filled", "value"} <= step.keys()
    for picture in answer["pictures"]:
        assert {"title", "alt", "svg"} == picture.keys()
    assert answer["inputs"]["circumference"] == {
        "given": "59 in",
        "understood": "59\u00a0in (1.499\u00a0m)",
        "value": 59.0,
        "unit": "in",
    }


def test_numbers_are_taken_as_numbers():
    assert (
        fibercalc.work("skein-length", {"turns": 285})["results"]
        == fibercalc.work("skein-length", {"turns": "285"})["results"]
    )


def test_bad_inputs_exit_2_with_one_line_each(capsys):
    code, out, err = run(capsys, "work", "skein-length", "turns=0", "sample_mass=abc")
    assert code == 2 and out == ""
    assert err.splitlines() == [
        "Turns of the reel: 0 given; give a whole number from 1 to 20000.",
        "Weight of the sample: abc given (no number was found); give 0.05\u00a0g to 2\u00a0kg.",
    ]


@pytest.mark.parametrize(
    "words",
    [
        ("work", "no-such-card"),
        ("show", "../../etc"),
        ("work", "skein-length", "turns"),
        ("work", "skein-length", "--file", "/nonexistent"),
    ],
)
def test_unusable_words_exit_2_with_one_line(capsys, words):
    code, out, err = run(capsys, *words)
    assert code == 2 and out == "" and len(err.splitlines()) == 1


SHAPES = {
    "a list for a number": (
        "skein-length",
        {"turns": [1]},
        "Turns of the reel: a list given; give a text or a number.",
    ),
    "a dict for a number": (
        "skein-length",
        {"turns": {"value": 1}},
        "Turns of the reel: a dict given; give a text or a number.",
    ),
    "true for a number": (
        "skein-length",
        {"turns": True},
        "Turns of the reel: true given; give a text or a number.",
    ),
    "a list for what is no input": (
        "skein-length",
        {"turn": [1]},
        "turn: a list given; give a text or a number.",
    ),
    "rows of numbers": ("every-kind", {"dyes": [1]}, "Dye 1: 1 given; give its fields by name."),
    "a list in a row": (
        "every-kind",
        {"dyes": [{"name": "navy"}, {"depth": [[1]]}]},
        "Dye 2, Depth of shade: a list given; give a text or a number.",
    ),
    "one row for a list of rows": (
        "every-kind",
        {"dyes": {"name": "navy"}},
        "Dyes: a dict given; give a list of rows.",
    ),
    "a text for a list of rows": (
        "every-kind",
        {"dyes": "navy"},
        "Dyes: navy given; give a list of rows.",
    ),
    "no rows where one is needed": (
        "every-kind",
        {"dyes": []},
        "Dyes: 0 rows given; give 1 to 6 rows.",
    ),
    "a number for a name": ("skein-length", {7: "x"}, "7: not an input of this card."),
    "a list for all inputs": (
        "skein-length",
        ["turns"],
        "Inputs: a list given; give each by its name.",
    ),
}


@pytest.mark.parametrize("name", SHAPES)
def test_values_of_another_shape_are_bad_inputs_with_one_line(name):
    card, inputs, line = SHAPES[name]
    with pytest.raises(BadInputs) as error:
        fibercalc.work(card, inputs)
    assert [problem.text for problem in error.value.problems] == [line]


@pytest.mark.parametrize(
    "content",
    [
        '{"turns": [1]}',
        '{"turns": {"a": 1}}',
        '{"turns": true}',
        "[1]",
        '{"turns": ' + "[" * 200_000,
        "{",
        "\x00",
    ],
)
def test_a_file_of_another_shape_exits_2_with_one_line(capsys, tmp_path, content):
    path = tmp_path / "inputs.json"
    path.write_text(content, "utf-8")
    code, out, err = run(capsys, "work", "skein-length", "--file", str(path))
    assert code == 2 and out == "" and len(err.splitlines()) == 1 and "give" in err


def test_a_fault_inside_a_card_is_not_called_an_unknown_card(monkeypatch, capsys):
    """A misspelt name raises KeyError, and so does a card that is not there: only the second is the reader's mistake."""
    broken = replace(find_card("skein-length"), id="broken", answer=lambda case: {}["circumfrence"])
    monkeypatch.setitem(registry.ADDED, "broken", broken)
    with pytest.raises(KeyError, match="circumfrence"):
        main(["work", "broken"])
    assert "no card has this id" not in capsys.readouterr().err
    with pytest.raises(UnknownCard):
        fibercalc.work("no-such-card")
    assert (
        run(capsys, "work", "no-such-card")[2]
        == "no-such-card: no card has this id; `fibercalc cards` lists them.\n"
    )


def test_rows_by_number_and_as_a_list_are_the_same(capsys):
    code, out, _ = run(
        capsys,
        "work",
        "every-kind",
        "dyes.1.name=navy",
        "dyes.1.depth=0.62",
        "dyes.2.name=black",
        "dyes.2.depth=0.24 %",
        "--json",
    )
    listed = fibercalc.work(
        "every-kind",
        {"dyes": [{"name": "navy", "depth": 0.62}, {"name": "black", "depth": "0.24 %"}]},
    )
    answer = json.loads(out)
    assert code == 0 and answer["results"] == json.loads(json.dumps(listed))["results"]
    # 16 skeins of 100 g less 2 % are 1,568 g; 0.86 % of it is 13.4848 g, by hand.
    assert answer["results"]["dye"]["value"] == pytest.approx(13.4848)


def test_inputs_from_a_file(capsys, tmp_path):
    path = tmp_path / "inputs.json"
    path.write_text(
        json.dumps({"turns": "300", "dyes": []} | {"turns": "300"}).replace(', "dyes": []', ""),
        "utf-8",
    )
    code, out, _ = run(capsys, "work", "skein-length", "--file", str(path), "way=turns", "--json")
    assert code == 0 and json.loads(out)["results"]["by_turns"]["value"] == pytest.approx(
        450 / 0.9144
    )


@pytest.mark.parametrize(
    ("data", "code", "told"),
    [
        (b'{"turns": "300"}', 0, "about 492"),
        (b'{"turns": "300"', 2, "--file: - given; give a JSON file that holds inputs by name."),
        (b"\xff", 2, "--file: - given; give a JSON file that holds inputs by name."),
        (b"", 2, "--file: - given; give a JSON file that holds inputs by name."),
    ],
)
def test_inputs_from_standard_input(capsys, monkeypatch, data, code, told):
    """300 turns of 1.50 m are 450 m, 492.1 yd."""
    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(data)))
    done, out, err = run(capsys, "work", "skein-length", "way=turns", "--file", "-")
    assert (
        done == code and told in (out if code == 0 else err) and len(err.splitlines()) == code / 2
    )


GUESSES = {
    "a card": (
        ("show", "skein-lenght"),
        "skein-lenght: no card has this id; `fibercalc cards` lists them; did you mean"
        " skein-length?",
    ),
    "a card in Python's spelling": (
        ("work", "skein_length"),
        "skein_length: no card has this id; `fibercalc cards` lists them; did you mean"
        " skein-length?",
    ),
    "a chapter": (
        ("cards", "yarm"),
        "yarm: no chapter has this name; there are yarn, knit, weave, wash, dye, safe, sell; did"
        " you mean yarn?",
    ),
    "a chapter that is to come": (
        ("cards", "spin"),
        "spin: no chapter has this name; there are yarn, knit, weave, wash, dye, safe, sell.",
    ),
    "an input": (
        ("work", "skein-length", "turn=280"),
        "turn: not an input of this card; did you mean turns?",
    ),
    "an input like no other": (
        ("work", "skein-length", "zzz=280"),
        "zzz: not an input of this card.",
    ),
    "an input of a row": (
        ("work", "every-kind", "dyes.2.dpth=1"),
        "dyes.2.dpth: not an input of this card; did you mean dyes.2.depth?",
    ),
    "a list of rows": (
        ("work", "every-kind", "dies.2.depth=1"),
        "dies.2.depth: not an input of this card; did you mean dyes.2.depth?",
    ),
    "a choice by its value": (
        ("work", "skein-length", "way=turn"),
        "How you measured: turn given; give one of: Both ways, Turns of a reel, A weighed sample;"
        " did you mean turns?",
    ),
    "a choice by its words": (
        ("work", "skein-length", "way=weighed sample"),
        "How you measured: weighed sample given; give one of: Both ways, Turns of a reel, A weighed"
        " sample; did you mean sample?",
    ),
    "a number style": (
        ("work", "wraps", "--style", "pont"),
        "fibercalc work: argument --style: pont given; give one of: point, comma; did you mean"
        " point?",
    ),
    "a shell": (
        ("completion", "fihs"),
        "fibercalc completion: argument shell: fihs given; give one of: bash, zsh, fish; did you"
        " mean fish?",
    ),
    "a command": (
        ("wrok", "wraps"),
        "fibercalc: wrok: no such command; there are cards, show, work, completion; did you mean"
        " work?",
    ),
}


@pytest.mark.parametrize("name", GUESSES)
def test_what_is_nearly_right_is_refused_with_one_line_that_says_what_may_be_meant(capsys, name):
    words, line = GUESSES[name]
    try:
        code = main(list(words))
    except SystemExit as stopped:  # argparse's own
        code = stopped.code
    told = capsys.readouterr()
    assert (code, told.out, told.err) == (2, "", line + "\n")


def test_a_word_that_is_missing_is_one_line(capsys):
    with pytest.raises(SystemExit) as stopped:
        main(["work"])
    assert stopped.value.code == 2
    assert capsys.readouterr().err == (
        "fibercalc work: the following arguments are required: card\n"
    )


def completed(capsys, *words):
    """What bash offers for the last word, split as bash splits."""
    code, script, _ = run(capsys, "completion", "bash")
    assert code == 0
    ask = '\nCOMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _fibercalc; echo "${COMPREPLY[@]}"'
    shell = [shutil.which("bash"), "--norc", "-c", script + ask, "bash", *words]
    done = subprocess.run(shell, check=False, capture_output=True, text=True, timeout=20)
    assert done.returncode == 0 and done.stderr == ""
    return done.stdout.split()


@pytest.mark.parametrize(
    ("words", "offered"),
    [
        (("",), ["cards", "show", "work", "completion", "--help", "--version"]),
        (("cards", "w"), ["weave", "wash"]),
        (("show", "skein-"), ["skein-length", "skein-split"]),
        (("work", "skein-l"), ["skein-length"]),
        (("work", "skein-length", "tu"), ["turns="]),
        (("work", "skein-length", "turns", "=", "2"), []),
        (("work", "skein-length", "turns", "=", "2", "wa"), ["way="]),
        (("work", "--style", "comma", "--json", "skein-length", "tu"), ["turns="]),
        (("work", "--style", "=", "comma", "skein-length", "tu"), ["turns="]),
        (("work", "skein-length", "--st"), ["--style"]),
        (("work", "skein-length", "--style", "c"), ["comma"]),
        (("work", "stock-solution", "tu"), []),
        (("completion", "z"), ["zsh"]),
    ],
)
def test_bash_completes(capsys, words, offered):
    assert completed(capsys, "fibercalc", *words) == offered


@pytest.mark.parametrize("shell", SHELLS)
def test_completion_knows_every_card_and_every_input(capsys, shell):
    code, script, _ = run(capsys, "completion", shell)
    assert code == 0 and "@" not in script.replace("words[@]", "")
    for card in all_cards():
        line = next(
            line for line in script.splitlines() if re.search(rf"\bwork[: ]{card.id}[)']", line)
        )
        assert [f"{name}=" for name in names_of(card)] == re.findall(r"[\w.]+=(?=[ )'])", line)


def test_the_number_style_is_stated_and_echoed(capsys):
    _, out, _ = run(capsys, "work", "skein-length", "turns=1,200", "way=turns")
    assert "turns = 1200, not 1.2" in out
    code, _, err = run(
        capsys, "work", "skein-length", "turns=1,200", "way=turns", "--style", "comma"
    )
    assert code == 2 and "Turns of the reel" in err


def test_the_text_answer_says_everything(capsys):
    code, out, _ = run(capsys, "work", "skein-length")
    assert code == 0
    for words in ("This skein holds about 459", "Working", "280 × 1.5", "Sources:", "Caution:"):
        assert words in out


def test_cards_and_show(capsys):
    _, out, _ = run(capsys, "cards", "--json")
    listed = json.loads(out)
    assert {"id", "chapter", "question"} == listed[0].keys() and len(
        {card["id"] for card in listed}
    ) == len(listed)
    assert run(capsys, "cards")[1].count("\n") == len(listed)
    chapter = json.loads(run(capsys, "cards", "weave", "--json")[1])
    assert chapter == [card for card in listed if card["chapter"] == "weave"] and chapter
    assert fibercalc.cards("weave") == chapter and fibercalc.cards() == listed
    for card in listed:
        assert run(capsys, "show", card["id"])[0] == 0
    assert json.loads(run(capsys, "show", "skein-length", "--json")[1])["inputs"][1]["allowed"] == [
        "1",
        "20000",
    ]


def test_the_public_names_are_those_of_the_package_and_load_nothing_before_they_are_asked_for():
    done = python(
        "import fibercalc; print(sorted(name for name in sys.modules if 'fibercalc' in name));"
        " print([bool(getattr(fibercalc, name)) for name in fibercalc.__all__]);"
        " print(set(fibercalc.__all__) <= set(dir(fibercalc)))"
    )
    assert done.stdout.splitlines() == [
        "['fibercalc', 'fibercalc.version']",
        str([True] * len(fibercalc.__all__)),
        "True",
    ]
    assert fibercalc.BadInputs is BadInputs and fibercalc.UnknownCard is UnknownCard
    with pytest.raises(AttributeError, match="no attribute 'wrok'"):
        fibercalc.wrok  # noqa: B018
    with pytest.raises(fibercalc.UnknownChapter):
        fibercalc.cards("yarm")


def test_errors_from_python_carry_their_facts():
    with pytest.raises(BadInputs) as error:
        fibercalc.work("skein-length", {"skein_mass": "0.1 g"})
    problem = error.value.problems[0]
    assert (problem.input, problem.given, problem.allowed) == (
        "skein_mass",
        "0.1 g",
        "1\u00a0g to 5\u00a0kg",
    )


def python(*words):
    """A bare interpreter without site-packages, from a plain checkout."""
    return subprocess.run(
        [
            sys.executable,
            "-I",
            "-S",
            "-c",
            f"import sys; sys.path.insert(0, {str(ROOT)!r}); " + " ".join(words),
        ],
        capture_output=True,
        text=True,
        timeout=60,
    )


def test_every_card_answers_from_a_plain_checkout_without_any_third_party_package():
    done = python(
        "import fibercalc; print([bool(fibercalc.work(card['id'])['answer']) for card in"
        " fibercalc.cards()])"
    )
    assert done.returncode == 0, done.stderr
    assert "False" not in done.stdout and "True" in done.stdout


def test_the_module_runs_as_a_command():
    done = subprocess.run(
        [sys.executable, "-m", "fibercalc", "work", "skein-length", "--json"],
        capture_output=True,
        text=True,
        cwd=ROOT,
        timeout=60,
    )
    assert done.returncode == 0 and json.loads(done.stdout)["card"] == "skein-length"


HEAVY = {
    "asyncio",
    "email",
    "http",
    "pydoc",
    "ssl",
    "xml",
    "unittest",
    "subprocess",
    "multiprocessing",
    "logging",
    "argparse",
    "decimal",
}


def test_a_cold_card_loads_nothing_heavy_and_no_other_card():
    done = python(
        "import fibercalc; fibercalc.work('skein-length'); print('|'.join(sorted(sys.modules)))"
    )
    assert done.returncode == 0, done.stderr
    loaded = done.stdout.strip().split("|")
    assert not HEAVY & {name.split(".")[0] for name in loaded}
    near = {name.partition(".cards.")[2].split(".")[0] for name in loaded if ".cards." in name}
    assert near == {"skein_length"}


def test_a_list_that_is_not_asked_for_is_no_mistake_however_few_its_rows():
    """One color named where one color is all there is: it is left out, and neither refused nor a fault."""
    assert fibercalc.work("yarn-needed", {"colors.1.share": "50"})["results"]["buy"]["value"] == 5
    with pytest.raises(BadInputs, match="Colors: 1 row given; give 2 to 12 rows"):
        fibercalc.work("yarn-needed", {"many": "yes", "colors.1.share": "50"})
