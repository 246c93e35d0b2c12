"""The cards of the chapter sell as functions; written from them by `make answers`.

Values, what is left out, and what comes back are told in `fibercalc.ask`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal, TypedDict

from . import EXAMPLE, Number, ask

if TYPE_CHECKING:
    from datetime import date

    from ..answered import Answer

__all__ = [
    "back_plan",
    "base_order",
    "count_to_dye",
    "fair_stock",
    "fiber_content",
    "kit_yarn",
    "label",
    "net_contents",
    "parcels",
    "price",
    "release_plan",
    "set_plan",
]


class ReleasePlanProduct(TypedDict, total=False):
    """Product of `release_plan`: a row of its products."""

    name: str
    kind: Literal["skein", "kit", "set-whole", "set-cut"]
    holds: str
    wanted: Number
    spare: Number
    price: Number
    other: Number
    small: Number


class ReleasePlanColorway(TypedDict, total=False):
    """Colorway of `release_plan`: a row of its colorways."""

    name: str
    recipe: str | None
    shades: Number
    base: str | None


class ReleasePlanBase(TypedDict, total=False):
    """Base of `release_plan`: a row of its bases."""

    name: str
    mass: Number
    on_hand: Number
    pack: Number
    price: Number


class ReleasePlanJar(TypedDict, total=False):
    """Jar of `release_plan`: a row of its jars."""

    dye: str
    on_hand: Number
    price: Number


def release_plan(
    *,
    products: list[ReleasePlanProduct] = EXAMPLE,
    colorways: list[ReleasePlanColorway] = EXAMPLE,
    bases: list[ReleasePlanBase] = EXAMPLE,
    jars: list[ReleasePlanJar] = EXAMPLE,
    load: Number = EXAMPLE,
    a_day: Number = EXAMPLE,
    rail: Number = EXAMPLE,
    drying: Number = EXAMPLE,
    acid_share: Number = EXAMPLE,
    acid_on_hand: Number | None = EXAMPLE,
    energy: Number = EXAMPLE,
    minutes: Number = EXAMPLE,
    wage: Number = EXAMPLE,
    scale: Number = EXAMPLE,
    days_free: Number | None = EXAMPLE,
) -> Answer:
    """What does this release take?

    Args:
        products: Products, 1 to 40 rows.
            - name: Name. Text, up to 40 characters of text; example Culvert Stole.
            - kind: It is. One of skein (a skein), kit (a kit), set-whole (a set, dyed whole and
              cut), set-cut (a set, cut first); example kit.
            - holds: What one holds. Text, up to 600 characters of text; example 2 Wet Slate, Peat
              Gold, Sheepfold.
            - wanted: To sell. A whole number from 0 to 1000; example 16.
            - spare: and spare. A whole number from 0 to 200; example 2.
            - price: Price. Money, 0 to 10000; example 96.
            - other: Other cost of one. Money, 0 to 5000; example 3.10.
            - small: Small skeins from a full one. A whole number from 1 to 200; example 5. Asked
              where kind is set-whole or set-cut.
        colorways: Colorways, 1 to 40 rows.
            - name: Name. Text, up to 40 characters of text; example Wet Slate.
            - recipe: Recipe. Text, up to 400 characters of text; example navy 0.62, black 0.24,
              brown 0.04. None leaves it open.
            - shades: Shades. A whole number from 1 to 60; example 1.
            - base: Base, if not the first. Text, up to 40 characters of text. None leaves it
              open.
        bases: Bases, 1 to 40 rows.
            - name: Name. Text, up to 40 characters of text; example Tarrow Sock.
            - mass: A skein weighs. Weight, g; 5 g to 2 kg; example 100 g.
            - on_hand: Skeins on hand. A whole number from 0 to 5000; example 12.
            - pack: Skeins in a pack. A whole number from 1 to 500; example 10.
            - price: A pack costs. Money, 0 to 20000; example 92.
        jars: Dye on hand, 0 to 40 rows.
            - dye: Dye. Text, up to 40 characters of text; example navy.
            - on_hand: On hand. Weight, g; 0 g to 20 kg; example 140 g.
            - price: Costs for 100 g. Money, 0 to 5000; example 48.
        load: Skeins in a load. A whole number from 1 to 200; example 4.
        a_day: Loads in a day. A whole number from 1 to 100; example 6.
        rail: Skeins that hang on the rail. A whole number from 1 to 2000; example 48.
        drying: They dry in. Time, h; 0 h to 160 h; example 40 h.
        acid_share: Acid, percent of the yarn. 0 % to 20 %; example 1 %.
        acid_on_hand: Acid on hand. Weight, g; 0 g to 50 kg; example 500 g. None leaves it open.
        energy: Acid and energy for a skein. Money, 0 to 50; example 0.60.
        minutes: Work for a skein. Time, min; 0 min to 10 h; example 9 min.
        wage: Your hour. Money, 0 to 500; example 18.
        scale: What if: all numbers to sell at. 10 % to 400 %; example 100 %.
        days_free: Dye days that you have. A whole number from 0 to 400; example 10. None leaves
            it open.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - skeins: Skeins to dye.
        - packs: Packs of base to order.
        - short_base: Skeins of base short.
        - to_pay: To pay for them.
        - loads: Loads.
        - dye_days: Dye days.
        - drying_days: Drying days after that.
        - yarn: Yarn dyed, g.
        - dye: Dye in all, g.
        - acid: Acid in all, pure, g.
        - bands: Bands for full skeins.
        - small_labels: Small labels, and day stickers.
        - boxes: Boxes, with a kit card each.
        - takings: If all is sold, without tax.
        - cost: Yarn, dye, energy and the rest, used.
        - left: Left for labor, fees and overhead.
        - work: Work, min.
        - left_after_work: Left after your hours.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Two textile education pages on laboratory dips and dye recipes: volume of stock = W P / C.
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("release-plan", locals())


class CountToDyeRelease(TypedDict, total=False):
    """Release of `count_to_dye`: a row of its releases."""

    name: str
    offered: Number
    sold: Number


def count_to_dye(
    *,
    releases: list[CountToDyeRelease] = EXAMPLE,
    usual_spread: Number = EXAMPLE,
    price: Number = EXAMPLE,
    cost: Number = EXAMPLE,
    left_value: Number = EXAMPLE,
    seconds: Number = EXAMPLE,
    lost: Number = EXAMPLE,
    sure: Literal["80", "90", "95", "99"] = EXAMPLE,
    club_made: Number | None = EXAMPLE,
) -> Answer:
    """How many should I dye?

    Args:
        releases: Past releases, 1 to 150 rows.
            - name: When. Text, up to 40 characters of text; example June.
            - offered: Offered. A whole number from 1 to 5000; example 40.
            - sold: Sold. A whole number from 0 to 5000; example 40.
        usual_spread: Demand goes up and down by. 2 % to 150 %; example 25 %.
        price: One sold brings. Money, 0.01 to 10000; example 21.74.
        cost: One costs to make. Money, 0 to 10000; example 13.63.
        left_value: One left still brings. Money, 0 to 10000; example 9.
        seconds: Come out as seconds. 0 % to 40 %; example 3 %.
        lost: Parcels lost or faulty. 0 % to 40 %; example 2 %.
        sure: Spares and seconds suffice in. One of 80 (80 in 100), 90 (90 in 100), 95 (95 in
            100), 99 (99 in 100); example 95.
        club_made: Skeins you can dye for a club. A whole number from 1 to 2000; example 24. None
            leaves it open.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - made: To dye.
        - count: Good ones to sell.
        - spares: Spares for lost parcels.
        - typical: Mean demand.
        - ratio: Best chance of having enough, %.
        - enough: These are enough in, %.
        - left_over: Left, on average.
        - in_vain: Asked for in vain, on average.
        - profit: Brings after cost, on average.
        - places: Places of a club.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        G. Cachon and C. Terwiesch, Matching Supply with Demand, 3rd ed., chapter 12: the
            newsvendor model; solution of Q12.1 read in a copy, 2011.
        A. C. Cohen, Truncated and Censored Samples, 3.3: estimating equations of the censored
            normal (its summary read; the lamps of Gupta recalled), 1991.
        J. Tobin, Estimation of relationships for limited dependent variables, Econometrica 26, as
            told by Amemiya, Tobit models: a survey, 1984, 1958.
        M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4,
            1964.
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("count-to-dye", locals())


class SetPlanDye(TypedDict, total=False):
    """Dye of `set_plan`: a row of its dyes."""

    name: str
    sample: str
    percent: Number
    first: Number
    last: Number


def set_plan(
    *,
    name: str | None = EXAMPLE,
    days: Number = EXAMPLE,
    sets: Number = EXAMPLE,
    spare: Number = EXAMPLE,
    skein_mass: Number = EXAMPLE,
    skein_length: Number = EXAMPLE,
    loss_share: Number = EXAMPLE,
    wanted_by: Literal["turns", "mass", "count"] = EXAMPLE,
    wanted_turns: Number = EXAMPLE,
    wanted_mass: Number = EXAMPLE,
    wanted_count: Number = EXAMPLE,
    reel: Number = EXAMPLE,
    steps: Literal["ratio", "even", "percent"] = EXAMPLE,
    undyed: str = EXAMPLE,
    dyes: list[SetPlanDye] = EXAMPLE,
    load: Number = EXAMPLE,
    a_day: Number = EXAMPLE,
    scale_step: Number = EXAMPLE,
    skein_cost: Number = EXAMPLE,
    tie: Number = EXAMPLE,
) -> Answer:
    """How do I plan a numbered set?

    Args:
        name: Name of the set. Text, up to 40 characters of text; example Twelve Lamps. None
            leaves it open.
        days: Days, or shades. A whole number from 2 to 60; example 12.
        sets: Sets to sell. A whole number from 1 to 1000; example 24.
        spare: Spare sets. A whole number from 0 to 200; example 2.
        skein_mass: A full skein weighs. Weight, g; 1 g to 5 kg; example 100 g.
        skein_length: A full skein holds. Length, m; 1 m to 20000 m; example 420 m.
        loss_share: Lost in winding. 0 % to 50 %; example 2 %.
        wanted_by: A small skein is given by. One of turns (Turns of the reel), mass (Weight),
            count (How many from one skein); example turns.
        wanted_turns: Turns for each. A whole number from 1 to 5000; example 54. Asked where
            wanted_by is turns.
        wanted_mass: Weight of each. Weight, g; 0.5 g to 1 kg; example 20 g. Asked where wanted_by
            is mass.
        wanted_count: How many from one skein. A whole number from 1 to 200; example 5. Asked
            where wanted_by is count.
        reel: One turn of your reel, rested. Length, m; 0.05 m to 10 m; example 1.50 m.
        steps: Steps between shades. One of ratio (Equal ratios of dye), even (Even to the eye),
            percent (Equal percents); example ratio.
        undyed: Undyed yarn. A color such as #6b7f8f or lab(52 -3 -9); example #efe6d2.
        dyes: Dyes, 1 to 3 rows.
            - name: Name. Text, up to 40 characters of text; example navy.
            - sample: Color of its sample. A color such as #6b7f8f or lab(52 -3 -9); example
              #27406a.
            - percent: Depth of that sample. 0.05 % to 12 %; example 2 %.
            - first: Depth on the first shade. 0 % to 12 %; example 0.08 %.
            - last: Depth on the last shade. 0 % to 12 %; example 1.92 %.
        load: Full skeins in a load. A whole number from 1 to 200; example 4.
        a_day: Loads in a day. A whole number from 1 to 100; example 6.
        scale_step: The dye scale shows steps of. Weight, g; 0.0001 g to 1 g; example 0.01 g.
        skein_cost: A full skein of base costs. Money, 0 to 1000; example 9.20.
        tie: Winding and tying one more for the pot takes. Time, min; 0 min to 60 min; example 1.5
            min.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - cut_first: Full skeins, cut first.
        - dyed_whole: Full skeins, dyed whole.
        - per: Small skeins from one.
        - turns: Turns for each.
        - small_length: Length of a small skein, m.
        - small_mass: Weight of a small skein, g.
        - all_small: Small skeins, and day stickers, in all.
        - margin: Left of each full skein, m.
        - last_short: Chance that a skein's last one is short, %.
        - shade_cut: Yarn of one shade, cut first, g.
        - dye_cut: Dye, cut first, g.
        - dye_whole: Dye, dyed whole, g.
        - ratio: Each shade against the one before.
        - loads_cut: Loads, cut first.
        - loads_whole: Loads, dyed whole.
        - days_cut: Dye days, cut first.
        - days_whole: Dye days, dyed whole.
        - more_yarn: Dyed whole costs more yarn.
        - tying: Cut first takes more tying, min.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Two textile education pages on laboratory dips and dye recipes: volume of stock = W P / C.
        An instrument maker's application note on Kubelka-Munk theory (K/S, its additivity, where
            it is weak), 2008.
        G. Sharma, W. Wu, E. N. Dalal, The CIEDE2000 color-difference formula, Color Research and
            Application 30, 21: abstract read, the rows of Table 1 in several public test suites,
            2005.
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("set-plan", locals())


class BackPlanStretch(TypedDict, total=False):
    """Stretch of `back_plan`: a row of its closed."""

    first: date | str
    last: date | str


def back_plan(
    *,
    start: date | str = EXAMPLE,
    ahead: Number = EXAMPLE,
    home_quick: Number = EXAMPLE,
    home: Number = EXAMPLE,
    home_slow: Number = EXAMPLE,
    abroad_quick: Number = EXAMPLE,
    abroad: Number = EXAMPLE,
    abroad_slow: Number = EXAMPLE,
    window: Number = EXAMPLE,
    label: Number = EXAMPLE,
    drying: Number = EXAMPLE,
    dye_days: Number = EXAMPLE,
    check: Number = EXAMPLE,
    spare: Number = EXAMPLE,
    supplier_quick: Number = EXAMPLE,
    supplier: Number = EXAMPLE,
    supplier_slow: Number = EXAMPLE,
    week: Literal["mon-fri", "mon-sat", "tue-sat", "every", "weekend"] = EXAMPLE,
    closed: list[BackPlanStretch] = EXAMPLE,
    supplier_closed: Literal["no", "yes"] = EXAMPLE,
    today: date | str = EXAMPLE,
) -> Answer:
    """By when must I do what?

    Args:
        start: It starts on. A date such as 2027-03-05 or 5 Mar 2027; example 2027-03-05.
        ahead: In hand so many days before. A whole number from 0 to 120; example 7.
        home_quick: Post at home, days, at best. A whole number from 0 to 60; example 2.
        home: Post at home, days, usually. A whole number from 0 to 60; example 4.
        home_slow: Post at home, days, at worst. A whole number from 0 to 60; example 7.
        abroad_quick: Post abroad, days, at best. A whole number from 0 to 120; example 6.
        abroad: Post abroad, days, usually. A whole number from 0 to 120; example 9.
        abroad_slow: Post abroad, days, at worst. A whole number from 0 to 120; example 14.
        window: From the release to the first parcel, days. A whole number from 0 to 365; example
            14.
        label: Labels, pictures, list: working days. A whole number from 0 to 60; example 2.
        drying: The last load hangs. Time, h; 0 h to 240 h; example 40 h.
        dye_days: Dye days. A whole number from 1 to 120; example 4.
        check: Weighing the base in: working days. A whole number from 0 to 20; example 1.
        spare: Kept free for what goes wrong: working days. A whole number from 0 to 60; example
            0.
        supplier_quick: The supplier takes, weeks, at best. A whole number from 0 to 60; example
            3.
        supplier: The supplier takes, weeks, usually. A whole number from 0 to 60; example 4.
        supplier_slow: The supplier takes, weeks, at worst. A whole number from 0 to 60; example
            5.
        week: You work. One of mon-fri (Monday to Friday), mon-sat (Monday to Saturday), tue-sat
            (Tuesday to Saturday), every (every day), weekend (Saturday and Sunday); example
            mon-fri.
        closed: Closed days, 0 to 12 rows.
            - first: From. A date such as 2027-03-05 or 5 Mar 2027; example 2026-12-24.
            - last: to. A date such as 2027-03-05 or 5 Mar 2027; example 2027-01-02.
        supplier_closed: The supplier is closed then too. One of no, yes (yes, the same days);
            example no.
        today: Today. A date such as 2027-03-05 or 5 Mar 2027; example 2026-11-26.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - order: Order base by, a day.
        - order_usual: if all are as quick as usual, a day.
        - order_quick: if all are as quick as can be, a day.
        - dye_from: Begin to dye by, a day.
        - dye_to: Last load by, a day.
        - label_from: Begin to label by, a day.
        - release: Release by, a day.
        - post_abroad: Post abroad by, a day.
        - post_home: Post at home by, a day.
        - in_hand: In buyers’ hands, a day.
        - slack: Days until the first of these.
        - late: Steps already late.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("back-plan", locals())


class KitYarnColor(TypedDict, total=False):
    """Color of `kit_yarn`: a row of its colors."""

    name: str
    needed: Number
    give: Number | None


def kit_yarn(
    *,
    kits: Number = EXAMPLE,
    spare: Number = EXAMPLE,
    skein_mass: Number = EXAMPLE,
    skein_length: Number = EXAMPLE,
    colors: list[KitYarnColor] = EXAMPLE,
    buffer: Literal["unknown", "held", "none"] = EXAMPLE,
    sure: Literal["80", "90", "95", "99"] = EXAMPLE,
    load: Number = EXAMPLE,
    a_day: Number = EXAMPLE,
    reel: Number = EXAMPLE,
    loss_share: Number = EXAMPLE,
) -> Answer:
    """How many skeins of each color go in a kit?

    Args:
        kits: Kits to sell. A whole number from 1 to 1000; example 16.
        spare: Spare kits. A whole number from 0 to 200; example 2.
        skein_mass: A skein weighs. Weight, g; 5 g to 2 kg; example 100 g.
        skein_length: A skein holds. Length, m; 5 m to 10000 m; example 420 m.
        colors: Colors, 1 to 40 rows.
            - name: Name. Text, up to 40 characters of text; example A.
            - needed: Yarn, by the pattern. Length, m; 0.5 m to 20000 m; example 640 m.
            - give: Skeins, if you have settled it. A whole number from 1 to 60. None leaves it
              open.
        buffer: Do these figures hold a buffer already? One of unknown (It does not say), held
            (Yes, some is added), none (No, it is what was used); example unknown.
        sure: Enough in each color for. One of 80 (80 in 100 knitters), 90 (90 in 100 knitters),
            95 (95 in 100 knitters), 99 (99 in 100 knitters); example 95.
        load: Skeins in a load. A whole number from 1 to 200; example 4.
        a_day: Loads in a day. A whole number from 1 to 100; example 6.
        reel: One turn of your reel, rested. Length, m; 0.05 m to 10 m; example 1.50 m.
        loss_share: Lost in winding, when a skein is cut. 0 % to 50 %; example 2 %.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - packed: Kits to pack.
        - in_kit: Skeins in a kit.
        - in_all: Skeins in all kits.
        - tightest: Tightest color, in words.
        - spare_share: Spare in it, over the pattern, %.
        - short: Knitters who run short in it, %.
        - loads: Loads.
        - dye_days: Dye days.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("kit-yarn", locals())


class BaseOrderBase(TypedDict, total=False):
    """Base of `base_order`: a row of its bases."""

    name: str
    needed: Number
    promised: Number
    on_hand: Number
    week: Number
    pack: Number
    price: Number
    large: Number
    large_price: Number
    mass: Number
    length: Number


class BaseOrderDyeOrChemical(TypedDict, total=False):
    """Dye or chemical of `base_order`: a row of its dyes."""

    name: str
    needed: Number
    jar: Number
    empty: Number
    bottle: Number
    strength: Number
    age: Number
    pack: Number
    price: Number


class BaseOrderStretch(TypedDict, total=False):
    """Stretch of `base_order`: a row of its closed."""

    first: date | str
    last: date | str


def base_order(
    *,
    bases: list[BaseOrderBase] = EXAMPLE,
    dyes: list[BaseOrderDyeOrChemical] = EXAMPLE,
    spread: Number = EXAMPLE,
    sure: Literal["80", "90", "95", "99"] = EXAMPLE,
    good_for: Number = EXAMPLE,
    carriage: Number = EXAMPLE,
    duty: Number = EXAMPLE,
    exchange: Number = EXAMPLE,
    needed_by: date | str = EXAMPLE,
    check: Number = EXAMPLE,
    lead_low: Number = EXAMPLE,
    lead: Number = EXAMPLE,
    lead_high: Number = EXAMPLE,
    closed: list[BaseOrderStretch] = EXAMPLE,
    today: date | str = EXAMPLE,
) -> Answer:
    """What must I order, and by when?

    Args:
        bases: Bases, 0 to 40 rows.
            - name: Name. Text, up to 40 characters of text; example Tarrow Sock.
            - needed: Skeins that open plans need. A whole number from 0 to 20000; example 168.
            - promised: promised: club, dyed to order. A whole number from 0 to 20000; example 12.
            - on_hand: on hand. A whole number from 0 to 20000; example 24.
            - week: used in a week besides. Number; 0 to 2000; example 3.
            - pack: Skeins in a pack. A whole number from 1 to 1000; example 10.
            - price: A pack costs. Money, 0 to 20000; example 92.
            - large: Skeins in a large pack (0: none). A whole number from 0 to 5000; example 50.
            - large_price: It costs. Money, 0 to 100000; example 430.
            - mass: A skein weighs. Weight, g; 5 g to 2 kg; example 100 g.
            - length: and holds. Length, m; 5 m to 10000 m; example 420 m.
        dyes: Dyes and chemicals, 0 to 40 rows.
            - name: Name. Text, up to 40 characters of text; example navy.
            - needed: Open plans need. Weight, g; 0 g to 50 kg; example 81.7 g.
            - jar: Jar weighs now. Weight, g; 0 g to 50 kg; example 242 g.
            - empty: Empty jar. Weight, g; 0 g to 5 kg; example 102 g.
            - bottle: Stock in its bottle. Volume, mL; 0 mL to 50 L; example 400 mL.
            - strength: its strength. Strength, g/100 mL; 0.005 g/100 mL to 20 g/100 mL; example 1
              g/100 mL.
            - age: made so many days ago. A whole number from 0 to 3650; example 20.
            - pack: Sold by. Weight, g; 1 g to 25 kg; example 100 g.
            - price: That costs. Money, 0 to 5000; example 48.
        spread: A week’s use goes up and down by. 0 % to 300 %; example 50 %.
        sure: Stock to keep is enough while waiting, in. One of 80 (80 in 100 waits), 90 (90 in
            100 waits), 95 (95 in 100 waits), 99 (99 in 100 waits); example 90.
        good_for: A dye stock is counted on for days. A whole number from 0 to 3650; example 90.
        carriage: Carriage for all. Money, 0 to 20000; example 24.
        duty: Duty on arrival. 0 % to 200 %; example 0 %.
        exchange: Your money for one of the supplier’s. Number; 0.0001 to 10000; example 1.
        needed_by: Wanted on. A date such as 2027-03-05 or 5 Mar 2027; example 2027-01-19.
        check: Days to weigh it in. A whole number from 0 to 60; example 1.
        lead_low: Supplier, weeks, at best. A whole number from 0 to 60; example 3.
        lead: Supplier, weeks, usually. A whole number from 0 to 60; example 4.
        lead_high: Supplier, weeks, at worst. A whole number from 0 to 60; example 5.
        closed: Closed days, 0 to 12 rows.
            - first: From. A date such as 2027-03-05 or 5 Mar 2027; example 2026-12-24.
            - last: to. A date such as 2027-03-05 or 5 Mar 2027; example 2027-01-02.
        today: Today. A date such as 2027-03-05 or 5 Mar 2027; example 2026-11-26.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - packs: Packs to order.
        - skeins: Skeins of base ordered.
        - dye_short: Dye and chemicals to get, g.
        - goods: Goods.
        - landed: Landed, all of it.
        - each: A skein of the first base, landed.
        - hundred: 100 m of it.
        - order_by: Order by, a day.
        - order_usual: if the lead is as usual, a day.
        - order_quick: if it is as quick as can be, a day.
        - slack: Days from today.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Textbooks of inventory: reorder point with demand and lead time both uncertain (recalled,
            not read).
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("base-order", locals())


class ParcelsKitColor(TypedDict, total=False):
    """Color of `parcels`: a row of its kit."""

    color: str
    each: Number


class ParcelsLot(TypedDict, total=False):
    """Lot of `parcels`: a row of its lots."""

    color: str
    lot: str
    good: Number


class ParcelsClubColor(TypedDict, total=False):
    """Color of `parcels`: a row of its club."""

    color: str
    places: Number


class ParcelsParcel(TypedDict, total=False):
    """Parcel of `parcels`: a row of its parcels."""

    name: str
    skeins: Number
    extras: Number
    wrapping: Number


class ParcelsBand(TypedDict, total=False):
    """Band of `parcels`: a row of its bands."""

    most: Number
    price: Number


def parcels(
    *,
    kits: Number = EXAMPLE,
    spare: Number = EXAMPLE,
    kit: list[ParcelsKitColor] = EXAMPLE,
    lots: list[ParcelsLot] = EXAMPLE,
    club: list[ParcelsClubColor] = EXAMPLE,
    skein_mass: Number = EXAMPLE,
    parcels: list[ParcelsParcel] = EXAMPLE,
    bands: list[ParcelsBand] = EXAMPLE,
) -> Answer:
    """What goes into which parcel?

    Args:
        kits: Kits sold. A whole number from 0 to 2000; example 16.
        spare: Spare kits to keep. A whole number from 0 to 200; example 2.
        kit: In one kit, 0 to 8 rows.
            - color: Color. Text, up to 40 characters of text; example Wet Slate.
            - each: Skeins. A whole number from 1 to 60; example 2.
        lots: Good skeins, lot by lot, 1 to 24 rows.
            - color: Color. Text, up to 40 characters of text; example Wet Slate.
            - lot: Lot. Text, up to 24 characters of text; example L41.
            - good: Good skeins. A whole number from 0 to 2000; example 24.
        club: Promised to the club, 0 to 8 rows.
            - color: Color. Text, up to 40 characters of text; example Wet Slate.
            - places: Skeins. A whole number from 0 to 2000; example 8.
        skein_mass: A skein weighs. Weight, g; 1 g to 5 kg; example 100 g.
        parcels: Parcels, 1 to 10 rows.
            - name: Name. Text, up to 40 characters of text; example Culvert Stole.
            - skeins: Skeins. A whole number from 0 to 400; example 4.
            - extras: Pattern, card, notions. Weight, g; 0 g to 20 kg; example 35 g.
            - wrapping: Box and wrapping. Weight, g; 0 g to 20 kg; example 55 g.
        bands: Your post’s bands, 1 to 10 rows.
            - most: Up to. Weight, g; 1 g to 100 kg; example 100 g.
            - price: Postage. Money, 0 to 2000; example 2.40.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - packed: Kits to pack.
        - to_club: Skeins for the club.
        - shop: Skeins for the shop.
        - good: Good skeins in all.
        - mass: The first parcel weighs, g.
        - slack: To spare in its band, g.
        - over: Chance that it is over its band, %.
        - postage: Its postage.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
    """
    return ask("parcels", locals())


def price(
    *,
    go_by: Literal["asked", "margin"] = EXAMPLE,
    asked: Number = EXAMPLE,
    wanted_margin: Number = EXAMPLE,
    tax_place: Literal["inside", "outside", "none"] = EXAMPLE,
    tax: Number = EXAMPLE,
    base: Number = EXAMPLE,
    dye: Number = EXAMPLE,
    energy: Number = EXAMPLE,
    minutes: Number = EXAMPLE,
    wage: Number = EXAMPLE,
    loss: Number = EXAMPLE,
    pot: Number = EXAMPLE,
    label: Number = EXAMPLE,
    overhead: Number = EXAMPLE,
    fee_percent: Number = EXAMPLE,
    fee_fixed: Number = EXAMPLE,
    fee_on: Literal["paid", "net"] = EXAMPLE,
    order: Number = EXAMPLE,
    trade: Number | None = EXAMPLE,
    month_costs: Number | None = EXAMPLE,
    skeins: Number = EXAMPLE,
) -> Answer:
    """What must this skein sell at so that I am paid?

    Args:
        go_by: You start from. One of asked (A price you have in mind), margin (A margin you
            need); example asked.
        asked: Price on the ticket. Money, 0.01 to 100000; example 27. Asked where go_by is asked.
        wanted_margin: Margin you need. 0 % to 90 %; example 30 %. Asked where go_by is margin.
        tax_place: Sales tax. One of inside (Is in the ticket price), outside (Is added at the
            till), none (None is due); example inside.
        tax: Tax rate. 0 % to 100 %; example 20 %. Asked where tax_place is inside or outside.
        base: Base yarn, a skein. Money, 0 to 100000; example 9.20.
        dye: Dye, a skein. Money, 0 to 100000; example 0.45.
        energy: Acid and energy, a skein. Money, 0 to 100000; example 0.60.
        minutes: Your time, a skein. Time, min; 0 min to 40 h; example 9 min.
        wage: Your wage, an hour. Money, 0 to 100000; example 18.
        loss: Spoilt. 0 % to 60 %; example 3 %.
        pot: Skeins in a pot. A whole number from 1 to 200; example 4.
        label: Label and packing, a skein. Money, 0 to 100000; example 0.28.
        overhead: Overhead, a skein’s share. Money, 0 to 100000; example 1.60.
        fee_percent: Payment and shop fee. 0 % to 50 %; example 1.9 %.
        fee_fixed: and for each payment. Money, 0 to 100; example 0.25.
        fee_on: The fee is taken from. One of paid (What the buyer pays, tax and all), net (The
            price before tax); example paid.
        order: Sold in one payment. Number; 1 to 1000; example 1.
        trade: A shop takes off. 0 % to 95 %; example 50 %. None leaves it open.
        month_costs: Fixed costs of a month. Money, 0 to 1000000; example 80. None leaves it open.
        skeins: Skeins in one that is sold. Number; 0.05 to 60; example 1.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - price: Ticket price.
        - paid: The buyer pays.
        - net: Before tax.
        - cost: It costs.
        - left: Left of each.
        - brings: A sale brings, after tax and fee.
        - one_more: One more costs, overhead apart.
        - margin: Margin, of the price before tax, %.
        - markup: Markup, on the cost, %.
        - contribution: Contribution before labor and overhead.
        - lowest: Nothing left at.
        - trade_price: A shop pays you, before tax.
        - trade_left: Left of each at wholesale.
        - break_even: So many a month pay the fixed costs.
        - pot_loss: One spoilt pot costs.
        - make_good: Sold, whose earnings that takes.
        - work: Your time in one, min.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Arithmetic from the definitions (no published source needed).
        Common practice (no published source).
    """
    return ask("price", locals())


class FairStockCost(TypedDict, total=False):
    """Cost of `fair_stock`: a row of its costs."""

    name: str
    amount: Number


class FairStockFair(TypedDict, total=False):
    """Fair of `fair_stock`: a row of its past."""

    brought: Number
    sold: Number


class FairStockColorBrought(TypedDict, total=False):
    """Color of `fair_stock`: a row of its colors."""

    name: str
    share: Number


def fair_stock(
    *,
    costs: list[FairStockCost] = EXAMPLE,
    days: Number = EXAMPLE,
    hours: Number = EXAMPLE,
    wage: Number = EXAMPLE,
    contribution: Number = EXAMPLE,
    home: Number = EXAMPLE,
    past: list[FairStockFair] = EXAMPLE,
    usual_spread: Number = EXAMPLE,
    colors: list[FairStockColorBrought] = EXAMPLE,
    price: Number = EXAMPLE,
    skein_mass: Number = EXAMPLE,
    skein_volume: Number = EXAMPLE,
    crate_volume: Number = EXAMPLE,
    crate_mass: Number = EXAMPLE,
    cash_sales: Number = EXAMPLE,
    note: Number = EXAMPLE,
) -> Answer:
    """How many must I sell at the fair, and what do I load?

    Args:
        costs: Costs of the fair, 1 to 10 rows.
            - name: For. Text, up to 20 characters of text; example stall.
            - amount: Amount. Money, 0 to 100000; example 180.
        days: Days. A whole number from 1 to 14; example 2.
        hours: Hours of work a day. Time, h; 0 h to 24 h; example 8 h.
        wage: Your wage, an hour. Money, 0 to 1000; example 18.
        contribution: One skein leaves. Money, 0.01 to 10000; example 10.89.
        home: One carried home costs you. Money, 0.01 to 10000; example 2.50.
        past: Past fairs like it, 1 to 20 rows.
            - brought: Brought. A whole number from 1 to 100000; example 50.
            - sold: Sold. A whole number from 0 to 100000; example 50.
        usual_spread: Fairs differ by about. 2 % to 150 %; example 30 %.
        colors: Colors, by their share, 1 to 24 rows.
            - name: Name. Text, up to 22 characters of text; example Wet Slate.
            - share: Share. Number; 0.1 to 1000; example 45.
        price: A buyer pays. Money, 0.01 to 100000; example 27.
        skein_mass: A skein weighs. Weight, g; 1 g to 5 kg; example 100 g.
        skein_volume: A skein takes up. Volume, L; 0.02 L to 50 L; example 0.7 L.
        crate_volume: A crate holds. Volume, L; 1 L to 1000 L; example 45 L.
        crate_mass: and may weigh, filled. Weight, kg; 0.1 kg to 100 kg; example 10 kg.
        cash_sales: Cash sales before takings give change. A whole number from 0 to 1000; example
            6.
        note: Largest note you take. Money, 0.01 to 100000; example 50.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - with_wage: Skeins that pay the fair and you.
        - break_even: Skeins that pay the fair alone.
        - bring: Bring.
        - enough: They are enough, of 100 such fairs, %.
        - pays: Your wage comes in, of 100 such fairs, %.
        - mean: Demand, on average.
        - fixed: Costs of the fair.
        - pay: Your wage for it.
        - crates: Crates.
        - load: Yarn in the car, g.
        - float: Change to bring.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Arithmetic from the definitions (no published source needed).
        G. Cachon and C. Terwiesch, Matching Supply with Demand, 3rd ed., chapter 12: the
            newsvendor model; solution of Q12.1 read in a copy, 2011.
        A. C. Cohen, Truncated and Censored Samples, 3.3: estimating equations of the censored
            normal (its summary read; the lamps of Gupta recalled), 1991.
        J. Tobin, Estimation of relationships for limited dependent variables, Econometrica 26, as
            told by Amemiya, Tobit models: a survey, 1984, 1958.
        Common practice (no published source).
    """
    return ask("fair-stock", locals())


class NetContentsWeighedSkein(TypedDict, total=False):
    """Skein of `net_contents`: a row of its skeins."""

    mass: Number


class NetContentsMeasuredSkein(TypedDict, total=False):
    """Skein of `net_contents`: a row of its lengths."""

    length: Number


class NetContentsFiber(TypedDict, total=False):
    """Fiber of `net_contents`: a row of its fibers."""

    fiber: Literal["wool", "cotton", "silk", "flax (linen)", "viscose", "polyamide (nylon)"]
    share: Number


def net_contents(
    *,
    by: Literal["weight", "length"] = EXAMPLE,
    label_mass: Number = EXAMPLE,
    label_length: Number = EXAMPLE,
    skeins: list[NetContentsWeighedSkein] = EXAMPLE,
    lengths: list[NetContentsMeasuredSkein] = EXAMPLE,
    lot: Number = EXAMPLE,
    sold: Literal["us", "eu", "thread"] = EXAMPLE,
    air: Literal["yes", "no"] = EXAMPLE,
    humidity: Number = EXAMPLE,
    driest: Number = EXAMPLE,
    fibers: list[NetContentsFiber] = EXAMPLE,
) -> Answer:
    """Is there as much in it as the label says?

    Args:
        by: The label says. One of weight (A weight), length (A length); example weight.
        label_mass: Weight on the label. Weight, g; 1 g to 10 kg; example 100 g. Asked where by is
            weight.
        label_length: Length on the label. Length, m; 1 m to 20000 m; example 420 m. Asked where
            by is length.
        skeins: Skeins, weighed, 2 to 100 rows. Asked where by is weight.
            - mass: Weight. Weight, g; 0.5 g to 11 kg; example 100.4 g.
        lengths: Skeins, measured, 2 to 100 rows. Asked where by is length.
            - length: Length. Length, m; 0.5 m to 25000 m; example 421 m.
        lot: Skeins under that label. A whole number from 1 to 100000; example 40.
        sold: Judge it by. One of us (US: NIST Handbook 133), eu (EU or UK: average rule), thread
            (US: a state thread law); example us.
        air: Look at drier air too. One of yes, no; example yes. Asked where by is weight.
        humidity: Humidity where they were weighed. 10 % to 90 %; example 55 %. Asked where by is
            weight and air is yes.
        driest: Driest air they may be weighed in. 10 % to 90 %; example 40 %. Asked where by is
            weight and air is yes.
        fibers: Fibers, 1 to 8 rows. Asked where by is weight and air is yes.
            - fiber: Fiber. One of wool, cotton, silk, flax (linen), viscose, polyamide (nylon);
              example wool.
            - share: Share. 0 % to 100 %; example 75 %.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - mean: Mean of the sample, g.
        - mean_length: Mean of the sample, m.
        - over: Mean, over the label, g.
        - over_length: Mean, over the label, m.
        - short: The mean is short by, %.
        - spread: Standard deviation, g.
        - spread_length: Standard deviation, m.
        - low_us: US: the mean may be down to, g.
        - low_us_length: US: the mean may be down to, m.
        - each_us: US: no skein under, g.
        - each_us_length: US: no skein under, m.
        - first: EU and UK: 1 in 40 under at most, g.
        - second: EU and UK: none under, g.
        - aim: Aim at a mean of, g.
        - dry_mean: They would weigh in the driest air, g.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        NIST, Handbook 133 Checking the Net Contents of Packaged Goods, sampling plans and Tables
            2-1, 2-5 and 2-8, recalled, not read (its correction factors agree with Student's t).
        NIST, Handbook 133, Table 2-8 (length), the rows quoted by a draft on lumber.
        NIST, Handbook 130, Uniform Packaging and Labeling Regulation: yarn by weight, thread by
            length, as paraphrased by web pages.
        European Economic Community, Directive 76/211/EEC on prepackages by weight or volume,
            Annex I, 1 and 2.4, and Annex II, 2.3, 1976.
        United Kingdom, The Weights and Measures (Packaged Goods) Regulations 2006, Schedule 2,
            paragraph 4, 2006.
        UK government, Guidance on packaged goods: packers' rules, minimum system; and a trading
            standards leaflet that counts knitting yarn as a package.
        State of Rhode Island, General Laws, chapter 6-10, thread: 6-10-1, 6-10-2, 6-10-4.
        Commonwealth of Massachusetts, General Laws, chapter 94, sections 285 and 287, thread.
        K. F. Riley, M. P. Hobson, S. J. Bence, Mathematical Methods for Physics and Engineering,
            Table 31.3 (Student's t), read in a text copy.
        Regain of textile fibers against relative humidity, handbook table of the 1920s recalled,
            not read.
    """
    return ask("net-contents", locals())


class FiberContentShare(TypedDict, total=False):
    """Fiber of `fiber_content`: a row of its fibers."""

    fiber: Literal[
        "wool",
        "recycled-wool",
        "alpaca",
        "mohair",
        "cashmere",
        "angora",
        "yak",
        "camel",
        "llama",
        "silk",
        "cotton",
        "linen",
        "hemp",
        "ramie",
        "nylon",
        "polyester",
        "acrylic",
        "viscose",
        "bamboo",
        "lyocell",
        "modal",
        "elastane",
        "metallic",
        "unknown",
    ]
    share: Number | None
    function: Literal["no", "yes"]


class FiberContentWeighed(TypedDict, total=False):
    """Fiber of `fiber_content`: a row of its blend."""

    fiber: Literal[
        "wool",
        "recycled-wool",
        "alpaca",
        "mohair",
        "cashmere",
        "angora",
        "yak",
        "camel",
        "llama",
        "silk",
        "cotton",
        "linen",
        "hemp",
        "ramie",
        "nylon",
        "polyester",
        "acrylic",
        "viscose",
        "bamboo",
        "lyocell",
        "modal",
        "elastane",
        "metallic",
        "unknown",
    ]
    mass: Number
    function: Literal["no", "yes"]


def fiber_content(
    *,
    sold: Literal["us", "eu"] = EXAMPLE,
    by: Literal["percent", "weight"] = EXAMPLE,
    fibers: list[FiberContentShare] = EXAMPLE,
    blend: list[FiberContentWeighed] = EXAMPLE,
    loading: Number = EXAMPLE,
    maker: str | None = EXAMPLE,
    spun: str | None = EXAMPLE,
) -> Answer:
    """What do I write for its fiber content?

    Args:
        sold: It is sold in. One of us (The US), eu (The EU or the UK); example us.
        by: You know. One of percent (Percent, from the mill), weight (Grams of each, blended by
            you); example percent.
        fibers: Fibers, 1 to 8 rows. Asked where by is percent.
            - fiber: Fiber. One of wool (Wool (superwash too)), recycled-wool (Recycled wool),
              alpaca, mohair, cashmere, angora (Angora rabbit), yak, camel, llama, silk, cotton,
              linen, hemp, ramie, nylon (Nylon (polyamide)), polyester, acrylic, viscose (Viscose
              (rayon)), bamboo (Viscose made from bamboo), lyocell, modal, elastane (Elastane
              (spandex)), metallic (Metallic thread), unknown (A fiber I do not know); example
              wool.
            - share: Share. 0.1 % to 100 %; example 75 %. None leaves it open.
            - function: Under 5 %, but it does something. One of no, yes (Yes: strength, stretch);
              example no.
        blend: Fibers, weighed, 1 to 8 rows. Asked where by is weight.
            - fiber: Fiber. One of wool (Wool (superwash too)), recycled-wool (Recycled wool),
              alpaca, mohair, cashmere, angora (Angora rabbit), yak, camel, llama, silk, cotton,
              linen, hemp, ramie, nylon (Nylon (polyamide)), polyester, acrylic, viscose (Viscose
              (rayon)), bamboo (Viscose made from bamboo), lyocell, modal, elastane (Elastane
              (spandex)), metallic (Metallic thread), unknown (A fiber I do not know); example
              wool.
            - mass: Weight. Weight, g; 0.01 g to 100 kg; example 37.5 g.
            - function: Under 5 %, but it does something. One of no, yes (Yes: strength, stretch);
              example no.
        loading: Weight that is no fiber. 0 % to 50 %; example 0 %. Asked where sold is us.
        maker: Who answers for it. Text, up to 50 characters of text; example Brackwend Dyehouse.
            None leaves it open.
        spun: Spun in (country). Text, up to 30 characters of text. None leaves it open.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - content: Fiber line, in words.
        - maker_line: Maker, in words.
        - origin: Origin line, in words.
        - largest: Largest share, exactly, %.
        - named: Fibers named.
        - other: Other fiber, exactly, %.
        - test_low: A test may find, of the largest, %.
        - test_high: and up to, %.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        US Federal Trade Commission, 16 CFR 303.14, .16, .23, .26 and .43, rules under the Textile
            Fiber Products Identification Act.
        US Federal Trade Commission, 16 CFR 303.3, fibers under 5 percent, in a translation.
        United States, Wool Products Labeling Act, 15 USC 68 and 68b, with 16 CFR 300.3 and
            300.16.
        US Federal Trade Commission, Wool and Textile Act rules recalled, not read: generic names,
            unknown fibers with a share, origin of imported yarn, registered numbers.
        European Union, Regulation (EU) No 1007/2011, Annex IX: three agreed allowances quoted
            elsewhere (the list itself not read), 2011.
        European Union, Regulation 1007/2011, Articles 7 to 9 and 14 to 16 and Annex I, recalled,
            not read, 2011.
        United Kingdom and France, SI 1986/26, Schedule 1, and decree 73-357, article 9, under the
            directive before: 2 percent extraneous fiber, 5 percent when carded, 3 percent
            tolerance, 1973, 1986.
        Common practice (no published source).
    """
    return ask("fiber-content", locals())


class LabelSubstance(TypedDict, total=False):
    """Substance of `label`: a row of its contents."""

    what: Literal[
        "acetic",
        "formic",
        "citric",
        "ammonia",
        "sodium-hydroxide",
        "soda-ash",
        "aluminum-sulfate",
        "ferrous",
        "copper",
        "hydros",
        "dye-unknown",
        "alum",
        "dye-skin-1a",
        "dye-skin",
        "dye-lung-1a",
        "dye-lung",
    ]
    share: Number


def label(
    *,
    kind: Literal[
        "band", "tag", "small", "sticker", "bottle", "price", "shelf", "care", "kit"
    ] = EXAMPLE,
    page: Literal["a4", "letter", "alone"] = EXAMPLE,
    copies: Number = EXAMPLE,
    name: str | None = EXAMPLE,
    color: str | None = EXAMPLE,
    maker: str | None = EXAMPLE,
    fiber: str | None = EXAMPLE,
    mass: Number = EXAMPLE,
    length: Number = EXAMPLE,
    weight_class: Literal["none", "0", "1", "2", "3", "4", "5", "6", "7"] = EXAMPLE,
    lot: str | None = EXAMPLE,
    care_1: str | None = EXAMPLE,
    care_2: str | None = EXAMPLE,
    origin: str | None = EXAMPLE,
    price: Number | None = EXAMPLE,
    of_set: str | None = EXAMPLE,
    first: Number = EXAMPLE,
    last: Number = EXAMPLE,
    kit: str | None = EXAMPLE,
    parts: Number = EXAMPLE,
    start: date | str | None = EXAMPLE,
    every: Number = EXAMPLE,
    stock: str | None = EXAMPLE,
    strength: Number = EXAMPLE,
    made: date | str = EXAMPLE,
    jar: str | None = EXAMPLE,
    contents: list[LabelSubstance] = EXAMPLE,
    right: Number = EXAMPLE,
    down: Number = EXAMPLE,
    sheet: Literal["plain", "precut"] = EXAMPLE,
    across: Number = EXAMPLE,
    rows: Number = EXAMPLE,
    left: Number = EXAMPLE,
    top: Number = EXAMPLE,
    step_across: Number = EXAMPLE,
    step_down: Number = EXAMPLE,
    used: Number = EXAMPLE,
) -> Answer:
    """What goes on the label, and does it fit?

    Args:
        kind: Label. One of band (Skein band, 40 × 210 mm), tag (Swing tag, 50 × 90 mm), small
            (Small label, 25 × 50 mm), sticker (Day sticker, 38 × 38 mm), bottle (Bottle label, 50
            × 70 mm), price (Price card, 105 × 74 mm), shelf (Shelf edge, 62 × 20 mm), care (Care
            card, 85 × 55 mm), kit (Kit card, 105 × 148 mm); example band.
        page: Paper. One of a4 (Sheets of A4), letter (Sheets of US Letter), alone (One to a page,
            for a label printer); example a4.
        copies: Copies. A whole number from 1 to 600; example 4.
        name: Name. Text, up to 40 characters of text; example Tarrow Sock. None leaves it open.
            Asked where kind is band or tag or care or small or price or shelf.
        color: Color. Text, up to 40 characters of text; example Wet Slate. None leaves it open.
            Asked where kind is band or tag or care or small or price or shelf or kit.
        maker: Maker. Text, up to 40 characters of text; example Brackwend Dyehouse. None leaves
            it open. Asked where kind is band or tag or care or kit.
        fiber: Fiber content. Text, up to 64 characters of text; example 75 % superwash wool, 25 %
            nylon. None leaves it open. Asked where kind is band or tag or care or price.
        mass: Weight of a skein. Weight, g; 1 g to 2000 g; example 100 g. Asked where kind is band
            or tag or care or small or price or shelf.
        length: Length of a skein. Length, m; 1 m to 10000 m; example 420 m. Asked where kind is
            band or tag or care or small or price or shelf.
        weight_class: Weight class for the code. One of none (Not said), 0, 1, 2, 3, 4, 5, 6, 7;
            example 1. Asked where kind is band or tag or care.
        lot: Lot. Text, up to 24 characters of text; example WS-14. None leaves it open. Asked
            where kind is band or tag or care or small or shelf or kit.
        care_1: Care. Text, up to 64 characters of text; example Machine wash at 30 °C, mild
            cycle. Do not bleach.. None leaves it open. Asked where kind is band or tag or care.
        care_2: Care, going on. Text, up to 64 characters of text; example Do not tumble dry. Dry
            flat. Wash with like colors.. None leaves it open. Asked where kind is band or tag or
            care.
        origin: Made in. Text, up to 40 characters of text. None leaves it open. Asked where kind
            is band or tag or care.
        price: Price. Money, 0.01 to 99999; example 27. None leaves it open. Asked where kind is
            price.
        of_set: Set. Text, up to 40 characters of text; example Twelve Lamps. None leaves it open.
            Asked where kind is sticker.
        first: First number. A whole number from 0 to 999; example 1. Asked where kind is sticker.
        last: Last number. A whole number from 0 to 999; example 12. Asked where kind is sticker.
        kit: Kit. Text, up to 40 characters of text; example Culvert Stole. None leaves it open.
            Asked where kind is kit.
        parts: Parts. A whole number from 1 to 12; example 5. Asked where kind is kit.
        start: Part one comes on. A date such as 2027-03-05 or 5 Mar 2027; example 2027-03-05.
            None leaves it open. Asked where kind is kit.
        every: Days from part to part. A whole number from 1 to 92; example 7. Asked where kind is
            kit.
        stock: Dye or other stock. Text, up to 40 characters of text; example navy. None leaves it
            open. Asked where kind is bottle.
        strength: Strength of the stock. Strength, g/100 mL; 0.005 g/100 mL to 40 g/100 mL;
            example 1 g/100 mL. Asked where kind is bottle.
        made: Made on. A date such as 2027-03-05 or 5 Mar 2027; example 2027-01-11. Asked where
            kind is bottle.
        jar: Lot of the jar. Text, up to 24 characters of text. None leaves it open. Asked where
            kind is bottle.
        contents: In the bottle, 1 to 6 rows. Asked where kind is bottle.
            - what: Substance. One of acetic (Acetic acid), formic (Formic acid), citric (Citric
              acid), ammonia, sodium-hydroxide (Sodium hydroxide), soda-ash (Soda ash (sodium
              carbonate)), aluminum-sulfate (Aluminum sulfate), ferrous (Ferrous sulfate), copper
              (Copper sulfate), hydros (Sodium hydrosulfite (dithionite)), dye-unknown (Dye,
              statements not known), alum (Potash alum), dye-skin-1a (Dye, skin sensitizer 1A),
              dye-skin (Dye, skin sensitizer 1 or 1B), dye-lung-1a (Dye, airway sensitizer 1A),
              dye-lung (Dye, airway sensitizer 1 or 1B); example dye-unknown.
            - share: Strength. 0.01 % to 100 %; example 1.
        right: Move right. Length, mm; -6 mm to 6 mm; example 0 mm.
        down: Move down. Length, mm; -6 mm to 6 mm; example 0 mm.
        sheet: The sheet is. One of plain (Plain, I cut it), precut (Bought with cut labels);
            example plain. Asked where page is a4 or letter.
        across: Labels across. A whole number from 1 to 20; example 4. Asked where page is a4 or
            letter and sheet is precut.
        rows: Labels down. A whole number from 1 to 40; example 1. Asked where page is a4 or
            letter and sheet is precut.
        left: Paper’s left edge to the first label. Length, mm; 0 mm to 297 mm; example 13 mm.
            Asked where page is a4 or letter and sheet is precut.
        top: Paper’s top edge to the first label. Length, mm; 0 mm to 297 mm; example 20 mm. Asked
            where page is a4 or letter and sheet is precut.
        step_across: From one label to the next, across. Length, mm; 0 mm to 297 mm; example 48
            mm. Asked where page is a4 or letter and sheet is precut.
        step_down: From one label to the next, down. Length, mm; 0 mm to 297 mm; example 48 mm.
            Asked where page is a4 or letter and sheet is precut.
        used: Places already used. A whole number from 0 to 799; example 0. Asked where page is a4
            or letter and sheet is precut.

    Returns:
        An Answer, with those of these results that the inputs lead to:
        - printed_length: Length promised, m.
        - printed_mass: Weight promised, g.
        - per_sheet: To a sheet.
        - sheets: Sheets.
        - smallest: Smallest letters, pt.

    Raises:
        BadInputs: a plain line for each value that cannot be used, or for values that cannot go
            together.

    Sources:
        Common practice (no published source).
        Arithmetic from the definitions (no published source needed).
        US Federal Trade Commission, 16 CFR 303.14, .16, .23, .26 and .43, rules under the Textile
            Fiber Products Identification Act.
        United States, Wool Products Labeling Act, 15 USC 68 and 68b, with 16 CFR 300.3 and
            300.16.
        European Union, Regulation (EU) No 1007/2011, Annex IX: three agreed allowances quoted
            elsewhere (the list itself not read), 2011.
        NIST, Handbook 130, Uniform Packaging and Labeling Regulation: yarn by weight, thread by
            length, as paraphrased by web pages.
        State of Rhode Island, General Laws, chapter 6-10, thread: 6-10-1, 6-10-2, 6-10-4.
        European Union, Regulation (EC) No 1272/2008 (CLP), Annexes I and VI: limits as quoted by
            others, 2008.
        United Nations, Globally Harmonized System (GHS), wording of the statements recalled.
    """
    return ask("label", locals())
