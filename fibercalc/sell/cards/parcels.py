"""Good skeins to kits, club and shop with no kit across two lots; and what each parcel weighs against the post's own bands."""

from ...core.answer import Table
from ...core.card import MODEL, TEXT, Basis, Card, Carry, Caution, Chance, Input, Result, Rows
from ...core.paper import Paper
from ...core.problem import Refused
from ...core.spread import Parts
from ...core.units import COUNT, MASS, MONEY, PERCENT
from ...sources import ARITHMETIC, COMMON_PRACTICE
from ..allocate import allocate, band_of, kits_possible
from ..pictures.parcels import bands_picture, lots_picture


def answer(w, kits, spare, kit, lots, club, skein_mass, parcels, bands):
    colors = {row.color.strip().lower(): row.color for row in lots}
    parts = [(_color(row.color, colors, f"kit.{number}.color", f"Kit {number}"), row.each) for number, row in enumerate(kit, 1)]
    promised = [(_color(row.color, colors, f"club.{number}.color", f"Club {number}"), row.places) for number, row in enumerate(club, 1)]
    names = [(row.color.strip().lower(), row.lot.strip().lower()) for row in lots]
    for number, name in enumerate(names):
        if name in names[:number]:
            raise Refused(f"Lot {number + 1}: this lot of this color is listed twice.", f"lots.{number + 1}.lot")
    known = [(colors[row.color.strip().lower()], row.lot, row.good) for row in lots]
    most = kits_possible([(color, good) for color, _, good in known], parts)
    wanted = w.step("wanted", "kits + spare", kits + spare, COUNT, label="Kits wanted, spares and all")
    packed = min(wanted, most)
    for number, color in enumerate(dict.fromkeys(color for color, _ in parts), 1):
        each = sum(count for name, count in parts if name == color)
        text = " + ".join(f"floor(lots[{place}].good / {each})" for place, lot in enumerate(known, 1) if lot[0] == color) or "0"
        w.step(f"kits_{number}", text, sum(good // each for name, _, good in known if name == color), COUNT, label=f"Kits that {color} serves, {each} of one lot in each")
    if parts:
        w.step("packed", "min(wanted, " + ", ".join(f"kits_{number}" for number in range(1, len({color for color, _ in parts}) + 1)) + ")", packed, COUNT, label="Kits to pack")
    shares = w.decisions.get("shares") or w.decide("shares", allocate(known, parts, packed if parts else 0, promised))
    given = sum(share.club for share in shares)
    w.searched("to_club", given, ("to_club <= sum(club.places)",), "sum(club.places)", label="Skeins for the club, of what kits leave")
    in_kits = f" - packed * {sum(each for _, each in parts)}" if parts else ""
    shop = w.step("shop", f"sum(lots.good){in_kits} - to_club", sum(share.shop for share in shares), COUNT, label="Skeins for the shop: all good ones but kits and club")
    for number, (before, after) in enumerate(zip(bands, bands[1:]), 2):
        if after.most <= before.most:
            raise Refused(f"Band {number}: bands go up, each heavier than the one before.", f"bands.{number}.most")
    first = parcels[0]
    mass = w.step("mass", "parcels[1].skeins * skein_mass + parcels[1].extras + parcels[1].wrapping", first.skeins * skein_mass + first.extras + first.wrapping, MASS, label=f"{first.name}, packed")
    place = w.decide("band", band_of(mass, [band.most for band in bands]))
    slack = w.step("slack", f"bands[{place + 1}].most - mass", bands[place].most - mass, MASS, label="To spare in its band") if place is not None else None
    return {"packed": packed if parts else 0, "to_club": given, "shop": shop, "good": sum(lot[2] for lot in known), "mass": mass, "slack": slack, "postage": bands[place].price if place is not None else None, "shares": shares, "most": most,
            "short_club": sum(count for _, count in promised) - given, "has_kit": bool(parts)}


def _color(text, colors, where, words):
    if text.strip().lower() not in colors:
        raise Refused(f"{words}: there is no lot of “{text}”; give one of: {', '.join(colors.values())}.", where)
    return colors[text.strip().lower()]


def _parcels(r):
    """Each kind of parcel: its row, grams, the spread of that, and its band's place."""
    damp, found = r.readings["skein_mass"].rough, []
    for number, row in enumerate(r.given["parcels"], 1):
        mass = row.skeins * r.given["skein_mass"] + row.extras + row.wrapping
        widths = [row.skeins * damp, r.readings[f"parcels.{number}.extras"].rough, r.readings[f"parcels.{number}.wrapping"].rough]
        parts = Parts(list(widths), list(widths), [])
        found.append((row, mass, parts, band_of(mass, [band.most for band in r.given["bands"]])))
    return found


def say(r):
    kits, spare = r.value("packed"), max(r.value("packed") - r.given["kits"], 0)
    packed = f"Pack {kits - spare} kits{f' and {spare} spare' if spare else ''}; " if r.kept["has_kit"] else ""
    first = f"{packed}{r.value('to_club')} skeins go to the club and {r.value('shop')} to the shop."
    name = r.given["parcels"][0].name
    if not r.has("slack"):
        return first, f"{name} weighs {r.said('mass')}: over the heaviest band."
    return first, f"{name} weighs {r.said('mass')}: {r.amount(max(r.value('slack'), 0), MASS, 'g', 3)} to spare in its band, {r.text('postage')}; over it in {r.text('over')}."


def notes(r):
    said, wanted = [], r.given["kits"] + r.given["spare"]
    if r.kept["has_kit"] and r.kept["most"] < wanted:
        missing = wanted - r.kept["most"]
        said.append(f"{missing} {'kit is' if missing == 1 else 'kits are'} short: only {r.kept['most']} can be packed with each color from one lot. Sell fewer, or dye the color that is short again as a lot of its own for whole kits.")
    if r.kept["short_club"]:
        said.append(f"{r.kept['short_club']} club {'skein is' if r.kept['short_club'] == 1 else 'skeins are'} short.")
    risky = [row.name for row, mass, parts, place in _parcels(r) if place is not None and 1 - parts.chance_below(r.given["bands"][place].most - mass) > 0.05]
    if risky:
        said.append(f"Near the edge of its band: {', '.join(risky)}. Weigh one packed, dry and rested, before you set what postage costs.")
    said.append("Keep the spare kits until no claim can come any more. Damp yarn weighs more: that is why a skein’s weight has a range here.")
    return said


def lots_table(r):
    rows = tuple((share.color, share.lot, str(share.good), f"{share.kits} ({share.in_kits})" if share.kits else "–", str(share.club) if share.club else "–", str(share.shop) if share.shop else "–") for share in r.kept["shares"])
    return Table("Lot by lot", ("Color", "Lot", "Good", "Kits (skeins)", "Club", "Shop"), rows, "All skeins of one color of one kit are from one lot. Write the lots on each kit’s card.")


def parcels_table(r):
    rows = []
    for row, mass, parts, place in _parcels(r):
        low, high = mass - parts.half_width("down"), mass + parts.half_width("up")
        if place is None:
            rows.append((row.name, r.amount(mass, MASS, "g", 4), f"{r.number(low)} to {r.number(high)} g", "over all", "–", "–", "–"))
            continue
        band = r.given["bands"][place]
        rows.append((row.name, r.amount(mass, MASS, "g", 4), f"{r.number(low)} to {r.number(high)} g", f"to {r.amount(band.most, MASS, 'g', 4)}", r.settings.money + r.number(band.price, 2), r.amount(band.most - mass, MASS, "g", 3),
                     r.in_100(1 - parts.chance_below(band.most - mass))))
    return Table("Parcel by parcel", ("Parcel", "Weighs", "Likely", "Band", "Postage", "To spare", "Over it"), tuple(rows), "Bands and prices are your own post’s, as you gave them.")


def picking_list(r):
    lots = lots_table(r)
    return (Table("Pick", (*lots.columns, "Done"), tuple((*row, "☐") for row in lots.rows)), parcels_table(r))


def picture(r):
    return lots_picture([(f"{share.color}, {share.lot}", share.in_kits, share.club, share.shop) for share in r.kept["shares"]])


def scale(r):
    parcels = [(row.name, mass, mass - parts.half_width("down"), mass + parts.half_width("up")) for row, mass, parts, _ in _parcels(r)]
    return bands_picture(parcels, [band.most for band in r.given["bands"]], lambda grams: r.amount(grams, MASS, "kg" if grams >= 1000 else "g", 3))


CARD = Card(
    id="parcels", chapter="sell", place=60, tall_sheet=True,
    question="What goes into which parcel?",
    inputs=(
        Input("kits", COUNT, "Kits sold", default="16", allowed=("0", "2000"), usual=("0", "200")),
        Input("spare", COUNT, "Spare kits to keep", default="2", allowed=("0", "200"), usual=("0", "20")),
        Rows("kit", "In one kit", "color", least=0, most=8, fields=(Input("color", TEXT, "Color", default="Wet Slate", longest=40), Input("each", COUNT, "Skeins", default="1", allowed=("1", "60"))),
             default=({"color": "Wet Slate", "each": "2"}, {"color": "Peat Gold"}, {"color": "Sheepfold"})),
        Rows("lots", "Good skeins, lot by lot", "lot", record="dye-lot", least=1, most=24, measure="A pot is a lot, unless its skeins were mixed with another’s and looked at side by side. Leave out seconds.",
             fields=(Input("color", TEXT, "Color", record="colorway>name", default="Wet Slate", longest=40), Input("lot", TEXT, "Lot", default="new", longest=24), Input("good", COUNT, "Good skeins", default="4", allowed=("0", "2000"))),
             default=({"color": "Wet Slate", "lot": "L41", "good": "24"}, {"color": "Wet Slate", "lot": "L42", "good": "23"}, {"color": "Peat Gold", "lot": "L43", "good": "12"}, {"color": "Peat Gold", "lot": "L44", "good": "11"},
                      {"color": "Sheepfold", "lot": "L45", "good": "20"})),
        Rows("club", "Promised to the club", "color", lent="lots", least=0, most=8, fields=(Input("color", TEXT, "Color", default="Wet Slate", longest=40), Input("places", COUNT, "Skeins", default="1", allowed=("0", "2000"))),
             default=({"color": "Wet Slate", "places": "8"},)),
        Input("skein_mass", MASS, "A skein weighs", record="base.mass", default="100 g", allowed=("1 g", "5 kg"), usual=("20 g", "250 g"), rough="3 %", units=("g", "oz"), bench="bases.mass", measure="With its band, as it lies in your room: ± 3 % for damp (common practice)."),
        Rows("parcels", "Parcels", "parcel", least=1, most=10,
             fields=(Input("name", TEXT, "Name", default="another parcel", longest=40), Input("skeins", COUNT, "Skeins", default="1", allowed=("0", "400")),
                     Input("extras", MASS, "Pattern, card, notions", default="10 g", allowed=("0 g", "20 kg"), rough="2 g", units=("g", "oz")), Input("wrapping", MASS, "Box and wrapping", default="40 g", allowed=("0 g", "20 kg"), rough="5 g", units=("g", "oz"))),
             default=({"name": "Culvert Stole", "skeins": "4", "extras": "35 g", "wrapping": "55 g"}, {"name": "Club", "skeins": "1", "wrapping": "22 g"}, {"name": "Two skeins", "skeins": "2", "wrapping": "30 g"})),
        Rows("bands", "Your post’s bands", "band", least=1, most=10, measure="From your own post’s price list, lightest first.",
             fields=(Input("most", MASS, "Up to", default="5 kg", allowed=("1 g", "100 kg"), units=("g", "kg", "oz", "lb")), Input("price", MONEY, "Postage", default="9.90", allowed=("0", "2000"))),
             default=({"most": "100 g", "price": "2.40"}, {"most": "250 g", "price": "3.60"}, {"most": "500 g", "price": "5.20"}, {"most": "1 kg", "price": "6.80"}, {"most": "2 kg", "price": "8.40"})),
    ),
    results=(
        Result("packed", COUNT, "Kits to pack", rounding="down"), Result("to_club", COUNT, "Skeins for the club", rounding="down"), Result("shop", COUNT, "Skeins for the shop", rounding="down"), Result("good", COUNT, "Good skeins in all"),
        Result("mass", MASS, "The first parcel weighs", units=("g", "oz"), finest=(1, 0.1), rounding="up"), Result("slack", MASS, "To spare in its band", units=("g", "oz"), finest=(1, 0.1), rounding="down"),
        Result("over", PERCENT, "Chance that it is over its band", chance=Chance("slack", below=0.0)), Result("postage", MONEY, "Its postage", finest=(0.01,)),
    ),
    answer=answer, say=say, notes=notes, pictures=(picture, scale), tables=(lots_table, parcels_table), papers=(Paper("Picking list, A5", "A5", picking_list),),
    basis=Basis(MODEL, "Kits first, each color of a kit from one lot; then the club; the rest is the shop’s. Parcels by adding up, with the damp of yarn as a range."),
    sources=(COMMON_PRACTICE, ARITHMETIC),
    cautions=(Caution("Weigh the first parcel, packed and closed.", "Two grams over a band cost the next one. Whoever lifts many boxes tires: see “May I lift this?”."),),
    carry=(Carry("lift", "May I lift this?", {}), Carry("back-plan", "By when must I post?", {})),
)
