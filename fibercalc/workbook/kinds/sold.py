"""What is sold: products, the plans that make them, what past sales say, and the orders that took
a lot. No customer is in any of them.
"""

from ...core.card import DATE, Input
from ...core.units import COUNT, LENGTH, MASS, MONEY, TIME
from ...held import RECORD
from ..kind import (
    DECIDED,
    LABEL,
    LONGEST_NAME,
    Kind,
    choice,
    name,
    names,
    note,
    number,
    rows,
    words,
)
from ..lines import holds_line, skeins_line, work_line

PRODUCT = Kind(
    RECORD.product,
    "product",
    "Products",
    "What stands in your shop: a skein, a kit or a set, and what goes into it.",
    (
        name(),
        choice(
            RECORD.product.sort,
            "It is a",
            ("skein", "Skein"),
            ("kit", "Kit"),
            ("set-whole", "Set, dyed whole and cut"),
            ("set-cut", "Set, cut first"),
        ),
        rows(
            RECORD.product.parts,
            "Goes into one",
            "part",
            words(RECORD.product.parts.name, "Part", "Such as “A”, “day 7”."),
            names(RECORD.product.parts.base, "Base"),
            names(RECORD.product.parts.colorway, "Colorway"),
            *number(
                RECORD.product.parts.needed,
                LENGTH,
                "Yarn it needs",
                ("0 m", "20000 m"),
                ("m", "yd"),
                known=LABEL,
            ),
            *number(RECORD.product.parts.skeins, COUNT, "Skeins", ("0", "1000"), known=DECIDED),
            *number(
                RECORD.product.parts.mass,
                MASS,
                "or weight of a small skein",
                ("0.5 g", "5 kg"),
                ("g", "oz"),
                known=DECIDED,
            ),
            most=40,
        ),
        *number(
            RECORD.product.price,
            MONEY,
            "Sells at",
            ("0", "99999"),
            known=DECIDED,
            measure="As on the ticket.",
        ),
        *number(RECORD.product.net, MONEY, "Brings, without tax", ("0", "10000"), known=DECIDED),
        *number(RECORD.product.other, MONEY, "Label, box, pattern for one", ("0", "5000")),
        *number(
            RECORD.product.small,
            COUNT,
            "Small skeins from a full one",
            ("1", "200"),
            measure="For a set.",
        ),
        *number(RECORD.product.cost, MONEY, "Costs you", ("0", "99999")),
        *number(RECORD.product.parcel, MASS, "Packed, it weighs", ("1 g", "30 kg"), ("g", "oz")),
        *number(
            RECORD.product.work, TIME, "Your minutes for one", ("0 min", "100 h"), ("min", "h")
        ),
        note(),
    ),
    shows=(RECORD.product.sort, RECORD.product.price),
    derived={
        RECORD.product.holds: holds_line,
        RECORD.product.skeins_in: skeins_line,
        RECORD.product.work_each: work_line,
    },
)

PLAN = Kind(
    RECORD.plan,
    "plan",
    "Plans",
    "A release to come: what, how many, by when.",
    (
        name(),
        choice(
            RECORD.plan.state, "It is", ("open", "Open"), ("done", "Done"), ("dropped", "Dropped")
        ),
        rows(
            RECORD.plan.items,
            "To be made",
            "line",
            names(RECORD.plan.items.product, "Product"),
            *number(RECORD.plan.items.count, COUNT, "How many", ("0", "100000"), known=DECIDED),
            *number(
                RECORD.plan.items.spare,
                COUNT,
                "and spares",
                ("0", "10000"),
                known=DECIDED,
                default="0",
            ),
            most=40,
        ),
        Input(DATE, "Release", optional=True, name=RECORD.plan.release.name),
        Input(DATE, "In the buyer’s hand by", optional=True, name=RECORD.plan.needed.name),
        Input(DATE, "Starts on, such as part one", optional=True, name=RECORD.plan.starts.name),
        rows(
            RECORD.plan.closed,
            "Closed days",
            "stretch",
            Input(DATE, "From", optional=True, name=RECORD.plan.closed.first.name),
            Input(DATE, "to", optional=True, name=RECORD.plan.closed.last.name),
            most=12,
        ),
        note(),
    ),
    shows=(RECORD.plan.state, RECORD.plan.release),
)

SOLD_OUT = choice(RECORD.sale.sold_out, "Sold out?", ("", "Not said"), ("yes", "Yes"), ("no", "No"))

SALE = Kind(
    RECORD.sale,
    "past sale",
    "Past sales",
    "What a release or a fair taught you: how many were offered, how many went, how fast.",
    (
        name("Release or fair", what=RECORD.sale.event),
        names(RECORD.sale.product, "Product"),
        Input(DATE, "On", optional=True, name=RECORD.sale.day.name),
        *number(RECORD.sale.offered, COUNT, "Offered", ("0", "100000")),
        *number(RECORD.sale.sold, COUNT, "Sold", ("0", "100000")),
        SOLD_OUT,
        *number(
            RECORD.sale.after,
            TIME,
            "Sold out after",
            ("0 min", "365 day"),
            ("min", "h", "day"),
            when={SOLD_OUT: ("yes",)},
        ),
        *number(RECORD.sale.price, MONEY, "At", ("0", "99999"), known=LABEL),
        note(),
    ),
    titled=RECORD.sale.event,
    shows=(RECORD.sale.product, RECORD.sale.day, RECORD.sale.sold),
    newest=RECORD.sale.day,
)

ORDER = Kind(
    RECORD.order,
    "order",
    "Orders",
    "Which lots went out under which order number, so that a lot can be called back. The number"
    " alone: no name, no address.",
    (
        name(
            "Order number",
            "The number alone. Who it is stands in your shop’s own books.",
            what=RECORD.order.number,
            longest=LONGEST_NAME // 2,
        ),
        Input(DATE, "Sent on", optional=True, name=RECORD.order.sent.name),
        rows(
            RECORD.order.lots,
            "What went out",
            "line",
            names(RECORD.order.lots.dye_lot, "Dye lot"),
            names(RECORD.order.lots.product, "Product"),
            *number(RECORD.order.lots.count, COUNT, "How many", ("0", "10000")),
            most=40,
        ),
        note(),
    ),
    titled=RECORD.order.number,
    shows=(RECORD.order.sent,),
)
