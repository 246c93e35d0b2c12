"""The card that stays with a lot."""

from fibercalc.sell.pictures.papers import BOX, lot_card


def test_a_lot_card_says_what_is_known_and_leaves_lines_for_the_rest():
    head, on = lot_card("WS-14", "Tarrow Sock", "Wet Slate", "459 yd, 420 m")
    assert head.rows[:4] == (
        ("Lot", "WS-14"),
        ("Base", "Tarrow Sock"),
        ("Color", "Wet Slate"),
        ("Put-up", "459 yd, 420 m"),
    )
    assert ("Mill lot", "") in head.rows and all(
        row[-1] == BOX and row[1:-1] == ("", "") for row in on.rows
    )
