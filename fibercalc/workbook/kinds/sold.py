"""What is sold: products, the plans that make them, what past sales say, and the orders that took a lot. No customer is in any of them."""

from ...core.card import DATE, Input
from ...core.units import COUNT, LENGTH, MASS, MONEY, TIME
from ..kind import DECIDED, LABEL, LONGEST_NAME, Kind, choice, name, names, note, number, rows, words
from ..lines import holds_line, skeins_line, work_line

PRODUCT = Kind(
    "product", "product", "Products", "What stands in your shop: a skein, a kit or a set, and what goes into it.",
    (
        name(),
        choice("sort", "It is a", ("skein", "Skein"), ("kit", "Kit"), ("set-whole", "Set, dyed whole and cut"), ("set-cut", "Set, cut first")),
        rows("parts", "Goes into one", "part", words("name", "Part", "Such as “A”, “day 7”."), names("base", "Base"), names("colorway", "Colorway"),
             *number("needed", LENGTH, "Yarn it needs", ("0 m", "20000 m"), ("m", "yd"), known=LABEL),
             *number("skeins", COUNT, "Skeins", ("0", "1000"), known=DECIDED),
             *number("mass", MASS, "or weight of a small skein", ("0.5 g", "5 kg"), ("g", "oz"), known=DECIDED), most=40),
        *number("price", MONEY, "Sells at", ("0", "99999"), known=DECIDED, measure="As on the ticket."),
        *number("net", MONEY, "Brings, without tax", ("0", "10000"), known=DECIDED),
        *number("other", MONEY, "Label, box, pattern for one", ("0", "5000")),
        *number("small", COUNT, "Small skeins from a full one", ("1", "200"), measure="For a set."),
        *number("cost", MONEY, "Costs you", ("0", "99999")),
        *number("parcel", MASS, "Packed, it weighs", ("1 g", "30 kg"), ("g", "oz")),
        *number("work", TIME, "Your minutes for one", ("0 min", "100 h"), ("min", "h")),
        note(),
    ),
    shown=("sort", "price"), refers={"parts.base": "base", "parts.colorway": "colorway"}, derived={"holds": holds_line, "skeins_in": skeins_line, "work_each": work_line})

PLAN = Kind(
    "plan", "plan", "Plans", "A release to come: what, how many, by when.",
    (
        name(),
        choice("state", "It is", ("open", "Open"), ("done", "Done"), ("dropped", "Dropped")),
        rows("items", "To be made", "line", names("product", "Product"), *number("count", COUNT, "How many", ("0", "100000"), known=DECIDED),
             *number("spare", COUNT, "and spares", ("0", "10000"), known=DECIDED, default="0"), most=40),
        Input("release", DATE, "Release", optional=True),
        Input("needed", DATE, "In the buyer’s hand by", optional=True),
        Input("starts", DATE, "Starts on, such as part one", optional=True),
        rows("closed", "Closed days", "stretch", Input("first", DATE, "From", optional=True), Input("last", DATE, "to", optional=True), most=12),
        note(),
    ),
    shown=("state", "release"), refers={"items.product": "product"})

SALE = Kind(
    "sale", "past sale", "Past sales", "What a release or a fair taught you: how many were offered, how many went, how fast.",
    (
        name("Release or fair", what="event"),
        names("product", "Product"),
        Input("day", DATE, "On", optional=True),
        *number("offered", COUNT, "Offered", ("0", "100000")),
        *number("sold", COUNT, "Sold", ("0", "100000")),
        choice("sold_out", "Sold out?", ("", "Not said"), ("yes", "Yes"), ("no", "No")),
        *number("after", TIME, "Sold out after", ("0 min", "365 day"), ("min", "h", "day"), when={"sold_out": ("yes",)}),
        *number("price", MONEY, "At", ("0", "99999"), known=LABEL),
        note(),
    ),
    title="event", shown=("product", "day", "sold"), newest="day", refers={"product": "product"})

ORDER = Kind(
    "order", "order", "Orders", "Which lots went out under which order number, so that a lot can be called back. The number alone: no name, no address.",
    (
        name("Order number", "The number alone. Who it is stands in your shop’s own books.", what="number", longest=LONGEST_NAME // 2),
        Input("sent", DATE, "Sent on", optional=True),
        rows("lots", "What went out", "line", names("dye_lot", "Dye lot"), names("product", "Product"),
             *number("count", COUNT, "How many", ("0", "10000")), most=40),
        note(),
    ),
    title="number", shown=("sent",), refers={"lots.dye_lot": "dye-lot", "lots.product": "product"})
