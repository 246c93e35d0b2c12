"""What a request from the page asks: its card, its settings, its inputs as read, and how the form then stands."""

from ..core.card import Card
from ..core.lent import DAY, HERS, OPEN
from ..core.link import query_of
from ..core.onward import LONGEST_TRAIL, lends
from ..core.problem import BadInputs
from ..core.reading import Given, read_inputs
from ..core.registry import UnknownCard, find_card
from ..core.settings import Settings
from ..core.work import work_given
from . import parts
from .form import shown_text

RECORD = "record-"


def card_of(card_id: str) -> Card:
    """The card, or the form of our own, that a request names. Those forms are declared only when asked for: a first answer waits for none. Raises UnknownCard."""
    if card_id.startswith(RECORD):
        from ..workbook.kinds import KINDS

        if card_id.removeprefix(RECORD) not in KINDS:
            raise UnknownCard(card_id)
        return KINDS[card_id.removeprefix(RECORD)].card
    if card_id == "my-bench":
        from ..workbook.bench import BENCH

        return BENCH
    if card_id == "helper-link":
        from ..workbook.base_link import LINK

        return LINK
    return find_card(card_id)


def settings_of(request: dict) -> Settings:
    """The settings that go with a request."""
    return Settings.from_texts(request.get("settings"))


def given_of(request: dict, card: Card, settings: Settings) -> Given:
    """Inputs from a request's controls: units are the names that end in .unit; own names those that a person gave, of which a number
    typed as the example has it is the example's again."""
    values = {str(name): str(value) for name, value in request.get("values", {}).items()}
    units = {name.removesuffix(".unit"): value for name, value in values.items() if name.endswith(".unit")}
    texts = {name: value for name, value in values.items() if not name.endswith(".unit")}
    exact = {str(name): str(value) for name, value in request.get("exact", {}).items()}
    counts = {str(name): value for name, value in request.get("rows", {}).items() if isinstance(value, int)}
    named = [name for name in map(str, request["own"]) if name in texts and lends(card, name)] if "own" in request else None
    return read_inputs(card, texts, settings, units, exact, counts, named)


def trail_of(request: dict) -> tuple[tuple[str, str], ...]:
    """The cards before on the way here, oldest first; read as hostile: what is no text is no card's."""
    trail = request.get("trail")
    steps = trail[-LONGEST_TRAIL:] if isinstance(trail, list) else []
    return tuple((str(step.get("card", ""))[:40], str(step.get("query", ""))) for step in steps if isinstance(step, dict))


def state_of(given: Given, settings: Settings, trail: tuple[tuple[str, str], ...] = ()) -> dict:
    """What a card shows for inputs as read: answered or not, an echo or an error line for each field."""
    problems = list(given.problems)
    made, query, say = {}, None, ""
    if not problems:
        try:
            worked = work_given(given, settings)
            made, say = parts.slots(worked, trail), " ".join(worked.sentences())
            query = query_of(given)
        except BadInputs as error:
            problems = error.problems
    fields = {name: {"read": reading.echo, "why": ""} for name, reading in given.readings.items()}
    elsewhere = []
    for problem in problems:
        if problem.input in fields:
            fields[problem.input]["why"] = problem.text
        else:
            elsewhere.append(problem.text)
    return {"answered": not problems, "fields": fields, "shown": given.asked() + given.lists(), "slots": made, "query": query, "say": say, "refused": " ".join(elsewhere)} | _whose(given, settings)


def _whose(given: Given, settings: Settings) -> dict:
    """Which values are hers, and what the controls show in place of what the example had only lent."""
    back = {name: shown_text(reading.input, reading, settings)[0] for name, reading in given.readings.items() if reading.whose in (OPEN, DAY)}
    return {"own": [name for name, reading in given.readings.items() if reading.whose == HERS], "taken_back": {"values": back, "rows": dict.fromkeys(given.emptied, 0)}}
