"""The kinds of records, in the order in which work goes through them."""

from ..kind import Kind
from .dyed import COLORWAY, DYE_LOT, SKEIN
from .known import KEPT, MEASUREMENT
from .sold import ORDER, PLAN, PRODUCT, SALE
from .stock import BASE, BOTTLE, JAR, MILL_LOT

KINDS: dict[str, Kind] = {
    kind.id: kind
    for kind in (
        BASE,
        MILL_LOT,
        JAR,
        BOTTLE,
        COLORWAY,
        DYE_LOT,
        SKEIN,
        PRODUCT,
        PLAN,
        MEASUREMENT,
        SALE,
        ORDER,
        KEPT,
    )
}
