"""The maker's side of the yardage helper: a base's link, its code, the lines for a shop's page, the booth card, the counter's bases."""

from urllib.parse import urlsplit

from ..core.entry import Reading
from ..core.markup import Markup, inner, tag
from ..core.number import write_plain
from ..core.outcome import round_to
from ..core.reading import Given
from ..core.settings import Settings
from ..core.units import METERS_PER_YARD
from ..workbook import bench
from ..workbook.base_link import LOT, RULES, BaseLink, clean, price_text, write_link
from .helper import MOST
from .qr import QUIET, code_of, code_png, code_svg

OF_A_BASE = ("name", "mass", "length", "weight_class", "lot", "price")
SHORT = 80  # characters that still make a code for a small label
MODULE_MM, CARD_MODULE_MM = 0.5, 1.1  # one module on a label, and on a booth card that is read from arm's length
FRAME_HEIGHT = 640  # px, before the page around it hears the real one
LOCAL = ("localhost", "127.0.0.1", "[::1]", "")
# Believes a height only from the frame's own site and window, and only a sensible one.
LISTENER = """addEventListener("message", (event) => {
  if (event.origin !== "%s") return;
  const frame = [...document.querySelectorAll("iframe")].find((each) => each.contentWindow === event.source);
  const { type, v, height } = event.data ?? {};
  if (!frame || type !== "bench:height" || v !== 1 || !Number.isFinite(height)) return;
  frame.style.height = `${Math.min(4000, Math.max(80, height))}px`;
});"""


def made(given: Given, here: str, settings: Settings) -> dict:
    """Everything for a base as typed: the link, the code as SVG and PNG, the lines for a shop's page, the booth card; or what is wrong.

    here  the address of the book that the page is in. Raises ModuleNotFoundError until the code's library is there.
    """
    base, home, wrong = base_and_home(given, here, settings)
    if wrong:
        return {"refused": wrong}
    link = write_link(home, base)
    short = link.partition("#")[0]
    code = code_of(link)
    return {
        "refused": "", "link": link, "short": short, "about": _about(link, home, code), "svg": code_svg(code, MODULE_MM), "png": code_png(code),
        "snippet": snippet(link, base), "listener": tag("script", Markup(LISTENER % origin(home))), "booth": booth_card(code, base, short),
    }


def base_and_home(given: Given, here: str, settings: Settings) -> tuple[BaseLink, str, str]:
    """The base as typed, the address of its book, and one line when either cannot be used."""
    home, wrong = home_of(given.readings["home"].text or here)
    base = base_of({name: given.readings[name] for name in OF_A_BASE}, settings)
    return base, home, wrong or out_of_range(base)


def home_of(text: str) -> tuple[str, str]:
    """The address of a book with a "/" at its end, and one line when it is none."""
    try:
        address = urlsplit(text.strip())
        plain = address.scheme in ("http", "https") and address.hostname and not address.username and not set(text) & set(" \"'<>\\`{}|^")
    except ValueError:
        plain = False
    if not plain:
        return "", "Where your book stands: give its address, such as https://example.org/book/."
    return f"{address.scheme}://{address.netloc}{address.path.removesuffix('index.html').rstrip('/')}/", ""


def origin(home: str) -> str:
    """The scheme and host of an address, as a browser names where a message comes from."""
    address = urlsplit(home)
    return f"{address.scheme}://{address.netloc.lower()}"


def host_of(home: str) -> str:
    """The machine that an address leads to; one of LOCAL is this very one."""
    return urlsplit(home).hostname or ""


def base_of(readings: dict, settings: Settings) -> BaseLink:
    """The base that these readings describe."""
    price = readings["price"].value
    chosen = readings["weight_class"].value or "none"
    return BaseLink("base", round(readings["mass"].amount.value, 1), round(readings["length"].amount.value, 1), "" if chosen == "none" else chosen,
                    *(clean(readings[name].text, RULES["texts"][key]) for name, key in (("name", "n"), ("lot", "l"))),
                    "" if not price else clean(price_text(price, settings), RULES["texts"]["p"]))


def out_of_range(base: BaseLink) -> str:
    """One line when the helper could not answer for a base; "" when it can."""
    low, high = RULES["grist"]
    for value, (least, most), what in ((base.grams, RULES["grams"], "g in a skein"), (base.meters, RULES["meters"], "m in a skein")):
        if not least <= value <= most:
            return f"The helper answers for {least} to {most} {what}."
    if not low <= 100 * base.meters / base.grams <= high:
        return f"The helper answers for {low} to {high} m in 100 g; check grams and ounces, meters and yards."
    return ""


def _about(link: str, home: str, code) -> str:
    width = code.symbol_size(border=QUIET)[0] * MODULE_MM
    lines = [f"{len(link)} characters; the code is {write_plain(width)} mm wide at {MODULE_MM} mm a square, with its white edge."]
    if len(link) > SHORT:
        lines.append("That is long for a small label: leave out the price or the lot, or shorten the name.")
    if host_of(home) in LOCAL:
        lines.append("It leads to this machine only: open the book where it stands on the web, or give that address in the last field.")
    return " ".join(lines)


def snippet(link: str, base: BaseLink) -> Markup:
    """The lines for a shop's page: a frame that needs no script, with a plain link inside for browsers that show no frames."""
    title = "How many skeins do I need?" + (f" {base.name}" if base.name else "")
    return tag("iframe", tag("a", title, href=link), src=link, title=title, width="100%", height=FRAME_HEIGHT, loading="lazy", style="border:0")


def booth_card(code, base: BaseLink, short: str) -> Markup:
    """A card to stand on the table: the question, the base, the code in exact millimeters, the address to type."""
    what = [f"{write_plain(base.grams)} g, {write_plain(base.meters)} m ({yards_of(base)} yd) in a skein", f"Lot {base.lot}" if base.lot else "", f"{base.price} a skein" if base.price else ""]
    return inner(
        tag("div", tag("div", tag("p", "How many skeins do I need?", class_="asks"), tag("p", base.name, class_="names") if base.name else None,
                       *(tag("p", line) for line in what if line), tag("p", "Scan, choose what you make and your size."), class_="words"),
            tag("div", code_svg(code, CARD_MODULE_MM), class_="code"), tag("p", short.partition("://")[2], class_="short"), class_="booth-card"),
        tag("p", tag("span", class_="hundred"), "Print at 100 %: this bar must measure 100 mm.", class_="measure"))


def yards_of(base: BaseLink) -> str:
    """Whole yards, rounded down but for what the link's one decimal of a meter has cut off: 251 yd stay 251."""
    return write_plain(round_to((base.meters + 0.05) / METERS_PER_YARD, 1.0, "down"))


def counter_bases(record, records=(), settings: Settings | None = None) -> dict:
    """The bases of My bench and of the workbook that the helper can answer for, with the price of every count as written; notes name the
    others, each with its reason.

    record    My bench's, or what was kept as such;  records  the workbook's
    settings  how numbers are written where My bench was never saved
    """
    bases, notes = [], []
    for number, (name, base, price, wrong, settings) in enumerate(_sold(record, records, settings or Settings(), notes), 1):
        if wrong:
            notes.append(f"{name}: {wrong}")
            continue
        if base.name != name:
            notes.append(f"{name}: the code to take home says “{base.name}”, as many letters as a link takes.")
        costs = ["" if not price else price_text(price * count, settings) for count in range(MOST + 1)]
        put_up = f"{write_plain(base.grams, settings.style)} g, {write_plain(base.meters, settings.style)} m ({yards_of(base)} yd)"
        bases.append({"number": number, "label": name, "put_up": put_up, "lot": base.lot, "grams": base.grams, "meters": base.meters, "costs": costs})
    return {"bases": bases, "notes": notes}


def counter_code(record, number: int, here: str, records=(), settings: Settings | None = None) -> dict:
    """The code that a customer scans at the counter: base and lot, no price, since that is for the maker to give away."""
    home, wrong = home_of(here)
    sold = _sold(record, records, settings or Settings(), [])
    if wrong or not 1 <= number <= len(sold) or sold[number - 1][1] is None:
        return {"svg": "", "link": ""}
    link = write_link(home, BaseLink(**vars(sold[number - 1][1]) | {"price": ""}))
    return {"svg": code_svg(code_of(link), MODULE_MM), "link": link}


def _sold(record, records, settings: Settings, notes: list[str]) -> list[tuple]:
    """Every base that she has written down: its name, the base for a link, the price of one, what is wrong with it, and the settings that
    it is written in. Where My bench and the workbook have one of the same name, My bench's own words count, since the lot stands there,
    and the workbook's fill what it leaves blank.
    """
    from ..workbook.records import readable, reading_of, title_of  # only where a counter is

    kept, said = bench.read_record(record)
    notes += said
    settings, on_bench = (bench.settings_of(kept), bench.given_of(kept).readings) if isinstance(record, dict) else (settings, {})
    named: dict[str, dict] = {}
    for number in range(1, kept["rows"].get("bases", 0) + 1):
        readings = {name: on_bench[f"bases.{number}.{name}"] for name in OF_A_BASE}
        named.setdefault(_same(readings["name"].text), readings)
    found, unread = readable([each for each in records if isinstance(each, dict) and each.get("kind") == "base"])
    notes += [f"{len(unread)} of the workbook’s bases cannot be read by this version of the book."] if unread else []
    for document in sorted(found, key=title_of):
        readings = {name: reading_of(document, name) or Reading(LOT, name, "") for name in OF_A_BASE}
        own = named.setdefault(_same(title_of(document)), readings)
        for name, reading in readings.items():
            if own[name].value in (None, "", "none") and reading.text:
                own[name] = reading
            elif name in ("mass", "length", "price") and reading.text and own[name].value != reading.value:
                notes.append(f"{title_of(document)}: {reading.input.label.lower()} is another in the workbook; My bench’s is used.")
    return [_offered(readings, settings) for readings in named.values()]


def _offered(readings: dict, settings: Settings) -> tuple:
    blank = [what for name, what in (("mass", "what a skein weighs"), ("length", "what a skein holds")) if readings[name].amount is None]
    if blank:
        return readings["name"].text, None, None, f"{' and '.join(blank)} is not written down.", settings
    base = base_of(readings, settings)
    return readings["name"].text, base, readings["price"].value, out_of_range(base), settings


def _same(name: str) -> str:
    return " ".join(name.lower().split())
