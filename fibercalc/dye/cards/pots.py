"""A run planned: loads, pots, burners, hands and the rail, hour by hour, beside a bound that no plan beats."""

from ...core.card import CHOICE, MODEL, TEXT, Basis, Card, Carry, Caution, Input, Option, Result, Rows
from ...core.problem import OutOfRange, Refused
from ...core.units import COUNT, MASS, NUMBER, TIME, VOLUME
from ...sources import ARITHMETIC, COMMON_PRACTICE, CPSC_CARBON_MONOXIDE
from ..cautions import gas_indoors, one_circuit
from ..pictures.timeline import room_timeline
from ..pots import loads_needed, skeins_that_fit
from ..ramp import minutes_of_clock
from ..schedule.plan import make_plan, retimed
from ..schedule.room import Recipe, Room, Step
from ..schedule.timetable import hands_table, load_table, moment

FIBER_TAKES = 0.76  # mL that a gram of wool takes up itself: 1 / 1.31 g/cm³
NEEDS = {"nothing": (False, False, False), "pot": (True, False, False), "pot-hands": (True, False, True), "burner": (True, True, False), "burner-hands": (True, True, True), "hands": (False, False, True)}
BY = {"one load": "one load’s own steps", "pots": "the pots", "burners": "the burners", "hands": "the hands", "rail": "the rail"}


def answer(w, recipes, skein_mass, liquor_ratio, pots, burners, hands, steps, day, opens, rail, drying):
    fits = []
    for number, row in enumerate(pots, 1):
        try:
            fits.append(skeins_that_fit(row.fill, skein_mass, liquor_ratio, FIBER_TAKES))
        except OutOfRange as error:
            raise Refused(f"Pot {number}, filled to at most: {error.reason}.", f"pots.{number}.fill") from None
    loads = loads_needed([row.skeins for row in recipes], max(fits))
    w.step("skeins", "sum(recipes.skeins)", sum(row.skeins for row in recipes), COUNT, label="Skeins in all")
    w.searched("fit", max(fits), (f"fit * skein_mass * (liquor_ratio + {FIBER_TAKES}) <= max(pots.fill)",), f"max(pots.fill) / (skein_mass * (liquor_ratio + {FIBER_TAKES}))", label="Skeins in the largest pot")
    done = tuple(Step(row.name or f"step {number}", row.minutes, *NEEDS[row.needs]) for number, row in enumerate(steps, 1))
    wanted = [Recipe(row.name or f"recipe {number}", row.skeins, done) for number, row in enumerate(recipes, 1)]
    known = w.decisions.get("plan")
    try:
        plan = retimed(known, wanted, drying, day) if known else w.decide("plan", make_plan(wanted, Room(tuple(fits), burners, hands, day, rail, drying)))
    except OutOfRange as error:
        raise Refused(f"This room: {error.reason or 'no plan can be made; change pots, steps or hours'}.", "steps.1.minutes") from None
    found = len(plan.numbered)
    w.searched("loads", found, (f"loads >= {loads}",), f"{loads}", label="Loads")
    work = w.searched("work", plan.work_end, (f"work >= {plan.bound.work:.6f}",), f"{plan.bound.work:.6f}", TIME, "min", "Until the last load is rinsed, nights and all")
    return {"loads": found, "dye_days": plan.dye_days, "drying_days": plan.drying_days if drying else None, "work": work, "bound": plan.bound.work, "over": 100 * (work / plan.bound.work - 1), "plan": plan,
            "opens": _clock(opens), "fit": max(fits)}


def _clock(text):
    try:
        return minutes_of_clock(text)
    except OutOfRange:
        raise Refused("The day begins at: give a time of day such as 8:00.", "opens") from None


def _days(count, what):
    return f"{count:.0f} {what} {'day' if count == 1 else 'days'}"


def say(r):
    plan = r.kept["plan"]
    dry = f" and {_days(r.value('drying_days'), 'drying')} more" if r.has("drying_days") and r.value("drying_days") > 0 else ""
    loads = r.value("loads")
    first = f"{loads:.0f} {'load' if loads == 1 else 'loads'}: {_days(r.value('dye_days'), 'dye')}{dry}."
    return first, f"The last load is rinsed on {_moment(plan.work_end, r.kept['opens'])}. No plan can end before {_moment(plan.bound.work, r.kept['opens'])}."


def _moment(minute, opens):
    text = moment(minute, opens)
    return text[0].lower() + text[1:]


def notes(r):
    plan = r.kept["plan"]
    over = r.value("over")
    said = [f"What sets that bound: {BY[plan.bound.by_work]}. " + ("This plan meets it: nothing is faster in this room." if over < 0.5 else f"This plan takes {over:.0f} % longer; the bound itself may not be reachable.")]
    said.append("More of what sets the bound (pots, burners, hands, rail) is what makes the run shorter; more of anything else does not.")
    said.append("No two recipes share a pot. A hold on a burner is never left overnight; a soak or a bath that cools by itself may be.")
    return said


def timetable(r):
    return load_table(r.kept["plan"], r.kept["opens"])


def first_day(r):
    return hands_table(r.kept["plan"], r.kept["opens"], 1)


def _yarn_of_load(r):
    """The yarn of a full load; the fullest load is what a heater has to bring up."""
    return f"{_fullest(r) * r.given['skein_mass']:.6g}g"


def _bath_of_load(r):
    return f"{_fullest(r) * r.given['skein_mass'] * r.given['liquor_ratio'] / 1000:.6g}L"


def _fullest(r):
    return max(load.skeins for load in r.kept["plan"].placing.loads)


def _largest(r):
    return f"{max(row.fill for row in r.given['pots']) / 1000:.6g}L"


def picture(r):
    return room_timeline(r.kept["plan"], r.kept["opens"])


CARD = Card(
    id="pots", chapter="dye", place=110, handles=("heat",), tall_sheet=True,
    question="How long does the whole run take?",
    inputs=(
        Rows("recipes", "Recipes", "recipe", least=1, most=40, measure="No two share a pot.",
             fields=(Input("name", TEXT, "Name", default="another", longest=40, lent=False), Input("skeins", COUNT, "Skeins", default="6", allowed=("1", "400"))),
             default=({"name": "A", "skeins": "36"}, {"name": "B", "skeins": "18"}, {"name": "C", "skeins": "18"})),
        Input("skein_mass", MASS, "A skein weighs", default="100 g", allowed=("1 g", "5 kg"), usual=("5 g", "250 g"), units=("g", "oz"), bench="bases.mass", record="base.mass", strict=True),
        Input("liquor_ratio", NUMBER, "Bath for each gram of yarn, mL", default="20", allowed=("2", "120"), usual=("15", "40")),
        Rows("pots", "Pots", "pot", least=1, most=8, fields=(Input("fill", VOLUME, "Filled to at most", default="9 L", allowed=("0.1 L", "500 L"), units=("L", "qt", "gal"), strict=True),),
             default=({"fill": "9 L"}, {"fill": "9 L"})),
        Input("burners", COUNT, "Plates or burners", default="2", allowed=("1", "8"), usual=("1", "4")),
        Input("hands", COUNT, "People", default="1", allowed=("1", "6"), usual=("1", "2")),
        Rows("steps", "Steps of a load, in order", "step", least=1, most=12,
             fields=(Input("name", TEXT, "Name", default="step", longest=14, lent=False), Input("minutes", TIME, "Takes", default="15 min", allowed=("0 min", "48 h"), rough="10 %", units=("min", "h"), instrument="clock"),
                     Input("needs", CHOICE, "and needs", default="hands", options=(Option("nothing", "nothing"), Option("pot", "the pot"), Option("pot-hands", "the pot and hands"), Option("burner", "the pot on a burner"),
                                                                                 Option("burner-hands", "the pot on a burner, and hands"), Option("hands", "hands")))),
             default=({"name": "wet out", "minutes": "30 min", "needs": "nothing"}, {"name": "fill", "minutes": "10 min", "needs": "pot-hands"}, {"name": "heat", "minutes": "43 min", "needs": "burner"},
                      {"name": "hold", "minutes": "45 min", "needs": "burner"}, {"name": "cool", "minutes": "50 min", "needs": "pot"}, {"name": "rinse", "minutes": "15 min", "needs": "hands"})),
        Input("day", TIME, "Working hours of a day", default="8 h", allowed=("1 h", "24 h"), usual=("4 h", "12 h"), units=("h", "min")),
        Input("opens", TEXT, "The day begins at", default="8:00", longest=5, lent=False),
        Input("rail", COUNT, "Skeins that hang on the rail", default="48", allowed=("1", "2000"), usual=("10", "200")),
        Input("drying", TIME, "They dry in", default="40 h", allowed=("0 h", "160 h"), usual=("12 h", "72 h"), units=("h", "day"), measure="0 to leave drying out; see “When is it dry enough”."),
    ),
    results=(
        Result("loads", COUNT, "Loads", rounding="up"),
        Result("dye_days", COUNT, "Dye days", rounding="up"),
        Result("drying_days", COUNT, "Drying days after that", rounding="up"),
        Result("work", TIME, "Until the last load is rinsed, nights and all", units=("h", "day"), finest=(0.1, 0.01), rounding="up", floor=0.0),
        Result("bound", TIME, "No plan is faster than", units=("h", "day"), finest=(0.1, 0.01), rounding="down", floor=0.0),
        Result("over", NUMBER, "Over that, percent", finest=(1,), floor=0.0),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture,), tables=(timetable, first_day),
    basis=Basis(MODEL, "Nothing is booked twice: pots, burners, hands, rail. A few orders are tried and the one that is done first is kept; the bound is what the scarcest thing needs."),
    sources=(ARITHMETIC, CPSC_CARBON_MONOXIDE, COMMON_PRACTICE),
    cautions=(Caution("No heater unwatched.", "Two pots at once are two to watch. Nothing stays on a burner when you leave the room; a tired person spills: plan the last load early."), gas_indoors(), one_circuit(lambda r: r.given["burners"] > 1)),
    carry=(Carry("bath-heat", "How long does heating take?", {"bath": _bath_of_load, "fiber_mass": _yarn_of_load, "hold": "steps.4.minutes"}),
           Carry("dye-recipe", "The recipe for the first of them", {"skeins": "recipes.1.skeins", "skein_mass": "skein_mass", "liquor_ratio": "liquor_ratio", "fill": _largest}),
           Carry("drying", "How long do they dry?", {"skeins": lambda r: f"{sum(row.skeins for row in r.given['recipes'])}"}),
           Carry("drain-check", "May each bath go down the drain?", {"volume": _bath_of_load})),
)
