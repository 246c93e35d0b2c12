"""How wide words stand on a label: advance widths of the book's sans face, so that a label is
laid out before any browser draws it.

Measured at 1,000 units to the em, each rounded up to 20, so that a line is never wider than this
says (kerning only tightens it). A letter that the face lacks comes from whatever face the machine
has: it counts as very wide, and the drawing holds it to that width.
"""

from functools import cache

MM_PER_POINT = 25.4 / 72
UNKNOWN = 1250

REGULAR = {
    140: "\u2009\u202f",
    160: "'",
    220: ",.:;",
    240: "|¦·‘’",
    260: "`ij´¹ìíî",
    280: " l\u00a0¸ï",
    300: "!()¡",
    320: '"[f',
    340: "t",
    360: "]r{}¯°",
    380: "-_¨ªº",
    400: "/I\\²³ÌÍÎÏ“”",
    420: "1",
    440: "•",
    460: "yz¿ýÿ",
    480: "?sv",
    500: "*ckx¢ç",
    520: "7J¶–",
    540: "aeu§×àáâãäåèéêëùúûü",
    560: "2<>FLT^ghno~ñòóôõöø",
    580: "3EYbdpq¤¥«±»ÈÉÊËÝðþŸ",
    600: "$569PSVÞß",
    620: "+48BRZ£¬÷−",
    640: "=AKXÀÁÂÃÄÅ",
    660: "#0CÇ",
    680: "D€…",
    700: "GHNUwÐÑÙÚÛÜ",
    720: "OÒÓÔÕÖØ",
    740: "&Q",
    780: "@",
    800: "©®",
    820: "¼½",
    840: "M—",
    860: "Wm",
    880: "¾æ",
    900: "Æ",
    920: "%",
    940: "œ",
    1020: "Œ",
}
BOLD = {
    160: "\u2009\u202f",
    200: "'",
    260: ",.:;j|¦‘’",
    280: "`´·¹",
    300: "!i¡¸ìíîï",
    320: " l\u00a0",
    340: "()[",
    360: "]ft",
    380: '"-r{}¯',
    400: "_ª°²³º",
    420: "I¨ÌÍÎÏ",
    440: "/1\\•",
    460: "“”",
    500: "*syzýÿ",
    520: "cv¢¶¿ç–",
    540: "7?kx×",
    560: "JLaeu~§àáâãäåèéêëùúûü",
    580: "29<>F^hnoñòóôõöø",
    600: "+3ETbdgpq¤ÈÉÊËð÷þ−",
    620: "$56=PSZ¬±Þß",
    640: "48BRVY£¥«»ÝŸ",
    660: "0CKÇ",
    680: "AXÀÁÂÃÄÅ€",
    700: "DHUÙÚÛÜ",
    720: "GNÐÑ",
    740: "#&OwÒÓÔÕÖØ",
    760: "Q…",
    780: "@",
    800: "©®",
    840: "¼—",
    860: "M½",
    880: "Wmæ",
    920: "¾",
    940: "œ",
    960: "%Æ",
    1020: "Œ",
}


@cache
def _widths(bold: bool) -> dict[str, int]:
    return {char: width for width, chars in (BOLD if bold else REGULAR).items() for char in chars}


def text_width(words: str, points: float, bold: bool = False) -> float:
    """Width of a line, mm, never less than it is drawn.

    words   any text;  points  size of the letters, pt, above 0;  bold  at weight 600
    """
    widths = _widths(bold)
    return sum(widths.get(char, UNKNOWN) for char in words) * points * MM_PER_POINT / 1000


def is_known(words: str) -> bool:
    """Whether the book's own face has every letter of a line, at a width that is known."""
    return all(char in _widths(False) for char in words)
