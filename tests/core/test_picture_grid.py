"""Threads on a drawing: columns as dashed lines, boxes of cells, and the line that tells a color without color."""

import re

from fibercalc.core.picture import Drawing, Grid, against, dash_of


def board():
    drawing = Drawing(100)
    return drawing, Grid(drawing, 10, 90, 2.5, 1.25)


def test_columns_are_one_path_in_whole_numbers():
    drawing, grid = board()
    grid.columns([0, 4], 0, 12, [1, 2], "#112233")
    svg = drawing.picture("Title", "Words").svg
    assert 'd="M0 0V12M4 0V12"' in svg and 'stroke-dasharray="1 2"' in svg
    assert 'transform="matrix(2.5000 0 0 -1.2500 11.250 90.00)"' in svg, (
        "a line runs through the middle of its column, first row at the bottom"
    )


def test_boxes_are_one_path_and_can_be_seen_through():
    drawing, grid = board()
    grid.boxes([(0, 0, 3, 1), (2, 5, 1, 4)], "#445566", opacity=0.5)
    svg = drawing.picture("Title", "Words").svg
    assert (
        'd="M0 0h3v1h-3zM2 5h1v4h-1z"' in svg
        and 'fill-opacity="0.5"' in svg
        and svg.count("<path") == 1
    )


def test_nothing_asked_is_nothing_drawn():
    drawing, grid = board()
    grid.columns([], 0, 5)
    grid.boxes([], "#000000")
    assert "<path" not in drawing.picture("Title", "Words").svg


def test_what_cannot_be_a_color_stays_text():
    drawing, grid = board()
    grid.boxes([(0, 0, 1, 1)], '"><script>')
    assert "<script" not in drawing.picture("Title", "Words").svg


def test_each_color_has_a_line_that_is_seen_on_it():
    assert dash_of(0) is None and len({dash_of(place) for place in range(8)}) == 8
    assert (
        against("#ffffff") == "#000000"
        and against("#101820") == "#ffffff"
        and re.fullmatch("#[0f]{6}", against("#777777"))
    )
