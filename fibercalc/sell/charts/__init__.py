"""Wall charts of the sell chapter: tables made by the chapter's own formulas, each on one printed
page.
"""

from .fair import fair_list, fair_pays
from .labels import fiber_names, label_rules
from .net_contents import put_ups, sample_factors, short_by_length, short_by_weight
from .planning import date_wheel, release_steps, set_skeins, spares_chart
from .price import discount_volume, markup_and_margin, price_words

__all__ = [
    "date_wheel",
    "discount_volume",
    "fair_list",
    "fair_pays",
    "fiber_names",
    "label_rules",
    "markup_and_margin",
    "price_words",
    "put_ups",
    "release_steps",
    "sample_factors",
    "set_skeins",
    "short_by_length",
    "short_by_weight",
    "spares_chart",
]
