"""The studio's exact papers: the card with a lot, a kit's dates, what goes into a parcel."""

from datetime import date

from fibercalc.sell.pictures.papers import BOX, kit_card, lot_card, packing_list


def test_a_lot_card_says_what_is_known_and_leaves_lines_for_the_rest():
    head, on = lot_card("WS-14", "Tarrow Sock", "Wet Slate", "459 yd, 420 m")
    assert head.rows[:4] == (("Lot", "WS-14"), ("Base", "Tarrow Sock"), ("Color", "Wet Slate"), ("Put-up", "459 yd, 420 m"))
    assert ("Mill lot", "") in head.rows and all(row[-1] == BOX and row[1:-1] == ("", "") for row in on.rows)


def test_a_kit_card_has_its_parts_on_their_weekdays():
    # 5 March 2027 is a Friday; the Culvert Stole's five parts come a week apart.
    dates, inside = kit_card([(f"Part {number}", date(2027, 3, 5 + 7 * (number - 1))) for number in range(1, 4)], [("A", "640 m, 2 skeins")])
    assert [row[1] for row in dates.rows] == ["Fri 5 Mar 2027", "Fri 12 Mar 2027", "Fri 19 Mar 2027"] and inside.rows == (("A", "640 m, 2 skeins"),)
    assert len(kit_card([("Part 1", date(2027, 3, 5))], [])) == 1


def test_a_packing_list_counts_its_pieces_and_knows_no_name():
    (table,) = packing_list("0117", [("Culvert Stole kit", "WS-14", 2), ("Small skein", "WS-15", 3)])
    assert table.title == "Order 0117" and table.note == "5 pieces in all." and table.rows[0] == ("Culvert Stole kit", "WS-14", "2", BOX)
