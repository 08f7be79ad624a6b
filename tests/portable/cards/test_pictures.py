"""Pictures to scale, as strings ready for SVG."""

import re
from typing import Any

import pytest

from shopcalc import exact
from shopcalc.portable.cards.pictures import SHEET, TALLEST, coordinate, draw_picture, fit, place_boxes, place_shape

from ...helpers import bench_of


def drawn(slug: str, page: int = 0, **typed: str) -> dict[str, Any]:
    """One picture of a card."""
    bench = bench_of(slug, **typed)
    return dict(draw_picture(bench["about"]["pictures"][page], bench, page)[0])


def points(path: str) -> list[tuple[float, float]]:
    """The points of a path of straight lines."""
    return [(float(x), float(y)) for x, y in re.findall(r"(-?[\d.]+) (-?[\d.]+)", path)]


def outline(picture: dict[str, Any], style: str) -> list[tuple[float, float]]:
    """The points of the first area of a style."""
    return points(next(area["path"] for area in picture["areas"] if area["style"] == style))


def test_the_drawing_is_to_scale() -> None:
    """The groove drawn is as wide, for its stock, as the groove cut, and as deep for its width."""
    picture = drawn("groove", stock="2", groove_width="1/2", groove_depth="3/4")
    wood, waste = outline(picture, "end-grain"), outline(picture, "waste")
    stock_wide = max(x for x, _ in wood) - min(x for x, _ in wood)
    groove_wide = max(x for x, _ in waste) - min(x for x, _ in waste)
    groove_deep = max(y for _, y in waste) - min(y for _, y in waste)

    assert pytest.approx((1 / 4, 3 / 2), abs=0.001) == (groove_wide / stock_wide, groove_deep / groove_wide)


@pytest.mark.parametrize("slug", exact.world()["setups"])
def test_everything_stays_on_the_sheet(slug: str) -> None:
    """No outline of a starting card leaves the sheet."""
    bench = bench_of(slug)
    for page, picture in enumerate(bench["about"]["pictures"]):
        for sheet in draw_picture(picture, bench, page):  # none for a picture of the method that is not chosen
            height = float(sheet["view"].split()[-1])
            for area in sheet["areas"]:
                assert [] == [point for point in points(area["path"]) if not (0 <= point[0] <= SHEET and 0 <= point[1] <= height)]


# Beside a font's usual digits stand narrow marks; in the widest fonts of phones and desks a bold digit is 0.7 of the size.
NARROW = " /.,\u00b0"


def stretch(word: dict[str, Any]) -> tuple[float, float]:
    """From where to where the number of a dimension reaches, in a wide font."""
    wide = sum(4.5 if one in NARROW else 8.75 for one in word["text"])
    start = float(word["x"]) - {"start": 0, "middle": wide / 2, "end": wide}[word["anchor"]]
    return start, start + wide


@pytest.mark.parametrize("units", ["in", "mm"])
@pytest.mark.parametrize("slug", exact.world()["setups"])
def test_no_number_is_cut_off_or_runs_into_another(slug: str, units: str) -> None:
    """There is room at the edges for the widest number of each row, whatever the shop measures in."""
    bench = bench_of(slug, units=units)
    for page, picture in enumerate(bench["about"]["pictures"]):
        for sheet in draw_picture(picture, bench, page):
            words = [word for word in sheet["words"] if word["style"] == "size" and word["text"].replace(" ", "")[0].isdigit()]
            reach = {word["of"]: stretch(word) for word in words}
            assert {} == {of: ends for of, ends in reach.items() if ends[0] < 0 or ends[1] > SHEET}
            for one in words:
                for other in words:
                    level = abs(float(one["y"]) - float(other["y"])) < 11
                    assert one is other or not level or reach[one["of"]][1] <= reach[other["of"]][0] or reach[other["of"]][1] <= reach[one["of"]][0]


def test_a_picture_is_no_taller_than_the_screen_lets_it_be() -> None:
    """A steep triangle is drawn as tall as allowed and no taller."""
    slope = outline(drawn("angle", angle="80"), "wood")

    assert pytest.approx(TALLEST, abs=0.02) == max(y for _, y in slope) - min(y for _, y in slope)


def test_a_picture_without_height_is_as_wide_as_its_room() -> None:
    """A level slope is a line, and is drawn."""
    slope = outline(drawn("angle", angle="0"), "wood")

    assert (True, 0) == (max(x for x, _ in slope) > min(x for x, _ in slope) + 100, max(y for _, y in slope) - min(y for _, y in slope))


def test_no_picture_without_its_outline() -> None:
    """Where a stop took away what the outline rests on, there is no picture."""
    bench = bench_of("angle", angle="90")

    assert [] == draw_picture(bench["about"]["pictures"][0], bench, 0)


def test_a_shape_shows_when_its_condition_holds() -> None:
    """A rail that is there is named in the picture, and so is the pane that it makes of one."""
    none, one = ([each["text"] for each in drawn("frame", mid_rails=count)["words"]] for count in "01")

    assert (0, 1) == (none.count("mid rail"), one.count("mid rail"))
    assert (1, 2) == (none.count("pane"), one.count("pane"))


def test_a_shape_without_its_values_is_left_out() -> None:
    """A dimension of a value that is not known is not placed."""
    bench = bench_of("groove")
    shape = {"kind": "dimension", "of": "rib_fence", "text": "", "when": False}

    assert [] == place_shape(shape, 0, 0, bench)
    assert 1 == len(place_shape({**shape, "of": "fence"}, 0, 0, bench))


def test_dimensions_say_what_they_measure() -> None:
    """Every dimension of the groove is drawn with its value."""
    picture = drawn("groove", groove_width="5/16")

    assert {"stock": "1 3/8", "fence": "17/32", "groove_width": "5/16", "groove_depth": "1/2"} == {
        word["of"]: word["text"] for word in picture["words"] if word["of"]
    }
    assert {"stock", "fence", "groove_width", "groove_depth"} == {mark["of"] for mark in picture["marks"]}


def test_an_angle_has_its_arc() -> None:
    """The angle between the boards of a cap is drawn as an arc with its degrees."""
    picture = drawn("ridge-cap")

    assert ["120\u00b0"] == [word["text"] for word in picture["words"] if word["of"] == "inside_angle"]
    assert 1 == len([mark for mark in picture["marks"] if "A" in mark["path"]])


def test_room_is_kept_for_rows_of_dimensions() -> None:
    """A second row of dimensions makes the sheet taller by a row."""
    box = {"shape": {"kind": "area", "side": "", "row": 1}, "numbers": [0, 0, 1, 1]}
    below = {"kind": "dimension", "side": "below", "of": "stock", "text": ""}
    rows = [{"shape": {**below, "row": row}, "numbers": [0, 0, 1, 0]} for row in (1, 2)]
    heights = [fit([box, row], [box], bench_of("groove"))["height"] for row in rows]

    assert 2600 == heights[1] - heights[0]


@pytest.mark.parametrize(("n", "text"), [(150, "1.5"), (-150, "-1.5"), (0, "0"), (-7, "-0.07")])
def test_coordinates(n: int, text: str) -> None:
    """A coordinate may lie left of the origin."""
    assert text == coordinate(n)


def test_each_picture_has_its_own_name() -> None:
    """Pictures of one page are told apart, so that each is described by its own caption."""
    assert ["picture-tenon-0", "picture-tenon-1"] == [drawn("tenon", page)["id"] for page in (0, 1)]


def test_a_row_of_boxes_is_as_many_areas() -> None:
    """Where a box's place or width is a row, there is one box for each; what is one length is theirs in common."""
    shape = {"kind": "box", "style": "wood", "rows": [True, False, True, False]}
    placed = place_boxes(shape, [[0, 3], 1, [2, 4], 5])

    assert [[0, 1, 2, 1, 2, 6, 0, 6], [3, 1, 7, 1, 7, 6, 3, 6]] == [each["numbers"] for each in placed]
    assert [("area", "wood")] * 2 == [(each["shape"]["kind"], each["shape"]["style"]) for each in placed]
