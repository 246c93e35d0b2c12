"""Cautions that more than one card of the dye chapter shows, each written once."""

from collections.abc import Callable
from typing import Any

from ..core.card import Caution
from ..core.outcome import Outcome

When = Callable[[Outcome[Any]], bool]


def gas_indoors(when: When | None = None) -> Caution:
    """A flame in a room lets off carbon monoxide.

    when  decides from the outcome whether it applies; always, if None
    Source: cpsc-carbon-monoxide (no odor; an open window or a fan is no proof
    against it); common-practice.
    """
    return Caution(
        "Gas indoors: carbon monoxide.",
        "It has no smell, and an open window alone is no proof against it. Camping stoves and"
        " charcoal burn outdoors only. A fixed burner: hood or fan blowing out, and a carbon"
        " monoxide alarm in the room. Headache, dizzy, sick: everybody out, then call for help.",
        when,
    )


def one_circuit(when: When | None = None) -> Caution:
    """Two large plates are more than one circuit carries.

    when  decides from the outcome whether it applies; always, if None
    Source: arithmetic (volts times amperes); common-practice (four fifths for hours).
    """
    return Caution(
        "Two large plates on one circuit overload it.",
        "A circuit carries 3.7 kW at 230 V and 16 A, 1.8 kW at 120 V and 15 A, and for hours four"
        " fifths of that. Add up all that is plugged in; one large plate to a circuit, no adapter,"
        " no coiled lead. A warm plug or lead: switch off.",
        when,
    )


def soda_in_aluminum(when: When | None = None) -> Caution:
    """Alkali dissolves aluminum.

    when  decides from the outcome whether it applies; always, if None
    Source: common-practice.
    """
    return Caution(
        "No soda in aluminum.",
        "Soda ash and other alkali eat an aluminum pot, let off hydrogen, which burns, and spoil"
        " the bath: stainless steel or whole enamel only.",
        when,
    )
