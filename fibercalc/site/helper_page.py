"""The two pages that stand without the theme: the customers' helper and the counter view. Written
by the build; never in the browser's package.
"""

import json
from pathlib import Path
from typing import Any

from ..core.markup import Markup, document, tag
from . import helper
from .sheets import joined

ROOT = Path(__file__).resolve().parents[2]
SITE_JS = ROOT / "site_js"
# One sheet for both pages, from the book's own: the typefaces stay in a sheet of their own (see
# faces.css).
SHEETS = (
    SITE_JS / "look" / "tokens.css",
    SITE_JS / "look" / "base.css",
    SITE_JS / "rows" / "fields.css",
    SITE_JS / "look" / "forced.css",
    SITE_JS / "look" / "print.css",
    SITE_JS / "helper" / "helper.css",
    SITE_JS / "helper" / "counter.css",
)
FIRST = SITE_JS / "helper" / "first.js"
PAGES = {"helper": "helper.js", "counter": "counter.js"}
EXAMPLE = ("100", "230")  # g and m of the skein that an unlinked helper shows
NOSCRIPT_COUNTS = (100, 200, 300, 400)  # meters in 100 g


def write_parts(folder: Path) -> None:
    """The table and the style sheet, beside the scripts that they belong to."""
    (folder / "helper.json").write_text(
        json.dumps(helper.table(), ensure_ascii=False, separators=(",", ":")), "utf-8"
    )
    (folder / "helper.css").write_text(joined(SHEETS), "utf-8")


def write_pages(site: Path, app: str, name: str) -> dict[Path, str]:
    """Both pages; their files, each with the script that wakes it. app is the scripts' folder,
    name the book's.
    """
    table = json.loads((site / app / "helper.json").read_text("utf-8"))
    made = {}
    for place, body in (("helper", helper_body(table)), ("counter", counter_body())):
        path = site / place / "index.html"
        path.parent.mkdir()
        path.write_text(document(_head(TITLES[place], name, app), body), "utf-8")
        made[path] = PAGES[place]
    return made


TITLES = {"helper": "How many skeins do I need?", "counter": "At the counter"}


def _head(title: str, name: str, app: str) -> Markup:
    return tag(
        "head",
        tag("meta", charset="utf-8"),
        tag("meta", name="viewport", content="width=device-width, initial-scale=1"),
        tag("title", f"{title} - {name}"),
        tag("link", rel="icon", href="../assets/icons/icon.svg"),
        tag("link", rel="stylesheet", href="../assets/css/faces.css"),
        tag("link", rel="stylesheet", href=f"../{app}helper.css"),
        tag(
            "link", rel="preload", href=f"../{app}helper.json", as_="fetch", crossorigin="anonymous"
        ),
    )


def helper_body(table: dict[str, Any]) -> Markup:
    """The customers' page: whole before any script, which fills in the base of the link and the
    answer.
    """
    return tag(
        "body",
        tag("script", Markup(FIRST.read_text("utf-8"))),
        tag(
            "main",
            tag(
                "header",
                tag("h1", TITLES["helper"]),
                tag("p", class_="base", data_slot="base"),
                tag("p", class_="broken", role="status", hidden=True),
            ),
            tag(
                "section",
                tag(
                    "output",
                    class_="answer",
                    role="status",
                    aria_live="polite",
                    aria_atomic="true",
                    data_slot="say",
                ),
                tag("p", data_slot="fewer"),
                tag("p", class_="kept", hidden=True),
                class_="said-large",
                aria_label="The answer",
            ),
            _questions(table),
            _no_script(table),
            tag(
                "section",
                *(tag("p", data_slot=slot) for slot in ("need", "lot", "assumes", "basis")),
                class_="about",
                aria_label="About this answer",
            ),
            tag(
                "p",
                tag("button", "Copy this answer", type="button", data_do="copy", class_="first"),
                tag("button", "Print", type="button", data_do="print"),
                tag(
                    "button",
                    "More exact (loads about 8 MB)",
                    type="button",
                    data_do="exact",
                    hidden=True,
                ),
                tag(
                    "button",
                    "Keep for no signal (about 10 MB)",
                    type="button",
                    data_do="keep",
                    hidden=True,
                ),
                class_="do",
            ),
            tag("p", class_="state", role="status", hidden=True),
            tag("p", class_="told", role="status", hidden=True),
            tag("p", data_offline_state=True, hidden=True),
            data_late=table["words"]["late"],
            data_waits=True,
        ),
        tag(
            "footer",
            _worked_out(table),
            tag("p", "No account, no tracking: what you choose here stays on this device."),
            tag("p", tag("span", data_slot="address"), class_="print-line"),
        ),
        class_="alone helper",
    )


def _worked_out(table: dict[str, Any]) -> Markup:
    """Where the answer comes from, folded away: a customer asks for skeins, and whoever asks for
    more finds it here.
    """
    return tag(
        "details",
        tag("summary", "How it is worked out"),
        tag("p", table["projects"][0]["sizes_from"], data_slot="sizes-from"),
        tag(
            "p",
            tag(
                "a",
                "The whole calculation, with your own gauge and measures",
                href="../knit/yarn-needed/",
                target="_blank",
                rel="noopener",
            ),
        ),
    )


def _questions(table: dict[str, Any]) -> Markup:
    project = table["projects"][0]
    return tag(
        "form",
        tag(
            "div",
            _measure(
                "grams",
                "Weight of a skein",
                EXAMPLE[0],
                (("g", "grams (g)"), ("oz", "ounces (oz)")),
            ),
            _measure(
                "meters",
                "Length of a skein",
                EXAMPLE[1],
                (("m", "meters (m)"), ("yd", "yards (yd)")),
            ),
            class_="skein",
            data_skein=True,
        ),
        _choice(
            "project",
            "What are you making?",
            [(each["key"], each["label"]) for each in table["projects"]],
            project["key"],
        ),
        _choice(
            "size",
            "Which size?",
            [(each["key"], f"{each['label']}: {each['measure']}") for each in project["sizes"]],
            project["first"],
        ),
        tag(
            "fieldset",
            tag("legend", "How sure do you want to be?"),
            tag(
                "div",
                *(
                    tag(
                        "label",
                        tag(
                            "input",
                            type="radio",
                            name="sure",
                            value=each["key"],
                            checked=each["key"] == table["first_sure"],
                        ),
                        each["label"],
                    )
                    for each in table["sure"]
                ),
                class_="sure",
            ),
        ),
        novalidate=True,
        autocomplete="off",
        aria_label="What you know",
    )


def _measure(name: str, label: str, value: str, units: tuple[tuple[str, str], ...]) -> Markup:
    box = tag(
        "input",
        id=name,
        name=name,
        type="text",
        inputmode="decimal",
        value=value,
        autocomplete="off",
        spellcheck="false",
        aria_describedby=f"{name}-why",
    )
    unit = tag(
        "select",
        *(tag("option", words, value=sign) for sign, words in units),
        class_="unit",
        name=f"{name}.unit",
        aria_label=f"Unit for {label.lower()}",
    )
    return tag(
        "div",
        tag("label", label, for_=name),
        tag("div", box, unit, class_="entry"),
        tag("p", class_="why", id=f"{name}-why", hidden=True),
        class_="field",
        data_name=name,
    )


def _choice(name: str, label: str, options: list[tuple[str, str]], chosen: str) -> Markup:
    return tag(
        "div",
        tag("label", label, for_=name),
        tag(
            "div",
            tag(
                "select",
                *(
                    tag("option", words, value=key, selected=key == chosen)
                    for key, words in options
                ),
                id=name,
                name=name,
            ),
            class_="entry",
        ),
        class_="field",
    )


def _no_script(table: dict[str, Any]) -> Markup:
    """What can be said to a browser without scripts: the usual need of each project in its first
    size.
    """
    head = tag(
        "tr",
        tag("th", "Yarn needed, usual", scope="col"),
        *(tag("th", f"{count} m in 100 g", scope="col") for count in NOSCRIPT_COUNTS),
    )
    rows = []
    for project in table["projects"]:
        size = next(each for each in project["sizes"] if each["key"] == project["first"])
        cells = [
            helper.written_need(
                table, helper.work(100.0, float(count), project["key"], size["key"]).need
            )
            for count in NOSCRIPT_COUNTS
        ]
        rows.append(
            tag(
                "tr",
                tag("th", f"{project['label']}, {size['label']}", scope="row"),
                *(tag("td", cell) for cell in cells),
            )
        )
    return tag(
        "noscript",
        tag(
            "p",
            "Without scripts there is only this table. Divide by the length of a skein, round up,"
            " and take one more if the result is close.",
        ),
        tag(
            "div",
            tag("table", tag("thead", head), tag("tbody", *rows), class_="listing"),
            class_="listing-box",
        ),
    )


def counter_body() -> Markup:
    """The stall's page: the answer above, what is pressed next below, under the thumb."""
    return tag(
        "body",
        tag(
            "main",
            tag("header", tag("h1", TITLES["counter"]), tag("p", class_="path", data_slot="path")),
            tag(
                "section",
                tag(
                    "output",
                    class_="answer",
                    role="status",
                    aria_live="polite",
                    aria_atomic="true",
                    data_slot="say",
                ),
                tag("p", data_slot="cost", class_="cost"),
                *(tag("p", data_slot=slot) for slot in ("fewer", "need", "lot", "basis")),
                aria_label="The answer",
            ),
            tag("p", class_="notes", data_slot="notes", hidden=True),
            tag("div", data_slot="code", hidden=True),
            tag(
                "section",
                tag("h2", data_slot="step"),
                tag("div", class_="picks", data_slot="picks"),
                class_="under",
                aria_label="Choose",
            ),
            tag("p", class_="state", role="status", hidden=True),
            tag("noscript", tag("p", "The counter view needs scripts.")),
            data_late=helper.WORDS["late"],
        ),
        tag(
            "footer",
            tag(
                "p",
                tag("a", "My bench", href="../bench/"),
                tag("a", "Workbook", href="../workbook/"),
                tag("a", "Contents", href="../"),
            ),
        ),
        data_md_color_scheme="default",
        class_="alone counter",
    )
