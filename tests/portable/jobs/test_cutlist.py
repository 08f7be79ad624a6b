"""The cut list by section, and its parts on boards and on strips of wider ones."""

import json
from fractions import Fraction
from typing import Any

import pytest

from shopcalc import exact
from shopcalc.portable.jobs.cutlist import solve_cuts, solve_job
from shopcalc.portable.jobs.job import read_job

FRAME = {"id": 1, "setup": "frame", "label": "Sash", "quantity": 2, "inputs": {"stock": "1 3/8"}}


def slats(count: int, length: str = "10", width: str = "2", thickness: str = "3/4") -> dict[str, Any]:
    """Parts of no card."""
    return {"label": "Slat", "count": count, "length": length, "width": width, "thickness": thickness}


def boards(on_hand: str = "", to_buy: str = "", width: str = "2", thickness: str = "3/4") -> dict[str, str]:
    """A line of lumber."""
    return {"thickness": thickness, "width": width, "on_hand": on_hand, "to_buy": to_buy}


def laid(errors: dict[str, str] | None = None, **fields: Any) -> list[dict[str, Any]]:
    """The sections of a job on its boards, with no kerf, no trim and nothing left long unless it is said."""
    document = {"format": "shopcalc job", "version": 1, "kerf": "0", "trim": "0", "rough": "0", **fields}
    found = read_job(document, exact.world())
    assert found["ok"], found
    job = found["job"]
    noted: dict[str, str] = {} if errors is None else errors
    solved = solve_job(job, exact.world())
    noted.update(solved["errors"])
    return list(solved["cutting"]["laid"])


def bought(one: dict[str, Any]) -> list[tuple[Any, Any, Any]]:
    """What to buy: length, how many, cost."""
    return [(row["length"], row["count"], row["cost"]) for row in one["shopping"]]


def test_parts_of_all_items_are_counted_by_section() -> None:
    """Two frames have four stiles and four rails of one width, and two wider rails."""
    found = laid(items=[FRAME])

    assert [(one["section"]["width"], sum(part["count"] for part in one["section"]["parts"])) for one in found] == [(3, 2), (Fraction(9, 4), 6)]


def test_panes_are_no_wood() -> None:
    """The panes of a frame stand in the cut list and on no board."""
    found = read_job({"format": "shopcalc job", "version": 1, "items": [FRAME]}, exact.world())["job"]
    sections = solve_cuts(found, exact.world())["sections"]

    assert [section["pane"] for section in sections] == [False, False, True]


def test_each_part_is_laid_with_what_it_is_left_long() -> None:
    """Ten inches and one to spare are eleven on the board."""
    [one] = laid(parts=[slats(3)], lumber=[boards(to_buy="36")], rough="1")

    assert one["lengths"] == [11, 11, 11]
    assert one["layout"]["boards"][0]["rest"] == 3


def test_boards_on_hand_go_first() -> None:
    """What is owned is not bought."""
    [one] = laid(parts=[slats(6)], lumber=[boards(on_hand="30", to_buy="40")])

    assert bought(one) == [(40, 1, None)]


def test_a_board_used_for_one_section_is_gone_for_the_next() -> None:
    """One board of three inches serves the three-inch parts; the two-inch parts need another."""
    found = laid(parts=[slats(1, width="3"), slats(1)], lumber=[boards(on_hand="12", to_buy="12", width="3")])

    assert [bought(one) for one in found] == [[], [(12, 1, None)]]


def test_a_wide_board_gives_strips() -> None:
    """A board of two widths and a kerf gives two strips, and without the kerf one: four parts of ten inches need one board or two."""
    [one] = laid(parts=[slats(4)], lumber=[boards(to_buy="21 @ 12", width="4 1/8")], kerf="1/8")
    [too_narrow] = laid(parts=[slats(4)], lumber=[boards(to_buy="21 @ 12", width="4")], kerf="1/8")

    assert bought(one) == [(21, 1, 12)]
    assert bought(too_narrow) == [(21, 2, 24)]


def test_strips_are_bought_as_whole_boards() -> None:
    """Three strips of a board that gives two are two boards."""
    [one] = laid(parts=[slats(3, length="20")], lumber=[boards(to_buy="20 @ 12", width="4")])

    assert bought(one) == [(20, 2, 24)]
    assert not one["proven"]


def test_the_cheaper_strip_is_bought() -> None:
    """Two strips for eighteen cost less each than one for ten."""
    [one] = laid(parts=[slats(2, length="20")], lumber=[boards(to_buy="20 @ 10"), boards(to_buy="20 @ 18", width="4")])

    assert bought(one) == [(20, 1, 18)]


def test_a_part_longer_than_any_board_is_named() -> None:
    """It is never dropped."""
    [one] = laid(parts=[slats(1, length="50")], lumber=[boards(to_buy="40")])

    assert [one["labels"][place] for place in one["layout"]["too_long"]] == ["Slat"]


def test_another_thickness_serves_nothing() -> None:
    """A board of an inch is no board of three quarters."""
    [one] = laid(parts=[slats(1)], lumber=[boards(to_buy="40", thickness="1")])

    assert not one["has_boards"]


@pytest.mark.parametrize(
    ("fields", "place"),
    [
        ({"kerf": "wide"}, "kerf"),
        ({"trim": "-1"}, "trim"),
        ({"parts": [slats(1, length="long")]}, "parts 1"),
        ({"lumber": [boards(to_buy="many")]}, "lumber 1"),
        ({"lumber": [boards(on_hand="12 x")]}, "lumber 1"),
        ({"lumber": [boards(width="broad")]}, "lumber 1"),
    ],
)
def test_what_cannot_be_read_is_an_error_at_its_place(fields: dict[str, Any], place: str) -> None:
    """The line is named, and the rest of the job goes on."""
    errors: dict[str, str] = {}
    laid(errors, **{"parts": [slats(1)], **fields})

    assert list(errors) == [place]


def test_pieces_of_a_section_are_every_part_once() -> None:
    """No piece is lost and none stands twice, over several boards and parts."""
    [one] = laid(parts=[slats(7), slats(5, length="14 1/2"), slats(3, length="31")], lumber=[boards(on_hand="40 x2", to_buy="48, 60")])
    places = [place for board in one["layout"]["boards"] for place in board["pieces"]]

    assert sorted(places) == list(range(15))


def test_more_pieces_than_are_laid_are_counted() -> None:
    """A section of very many pieces says how many are on no board, and claims nothing."""
    [one] = laid(parts=[slats(450)], lumber=[boards(to_buy="10")])

    assert (len(one["lengths"]), one["unlaid"], one["proven"]) == (400, 50, False)


@pytest.mark.parametrize("field", ["length", "width", "thickness"])
def test_a_part_of_no_size_is_an_error(field: str) -> None:
    """A part must be longer, wider and thicker than nothing."""
    errors: dict[str, str] = {}
    laid(errors, parts=[{**slats(1), field: "0"}], lumber=[boards(to_buy="10")])

    assert errors == {"parts 1": field.capitalize() + ": This cannot be zero or less."}


def test_a_board_gives_only_as_many_strips_as_are_ever_laid() -> None:
    """A sliver of a width does not fill the memory with strips."""
    [one] = laid(parts=[slats(1, width="0.000001")], lumber=[boards(on_hand="10 x50", to_buy="10", width="10")])

    assert bought(one) == []


def test_an_emptied_line_is_nothing() -> None:
    """A line that was typed and emptied again is no error."""
    errors: dict[str, str] = {}
    empty = {"label": "", "count": 1, "length": "", "width": "", "thickness": ""}
    laid(errors, parts=[empty, slats(1)], lumber=[boards(width="", thickness=""), boards(to_buy="10")])

    assert errors == {}


def test_a_metric_job_starts_with_the_same_saw() -> None:
    """What is not said of kerf, squaring and rough length is what one has there, the same to a hair's breadth."""
    found = read_job({"format": "shopcalc job", "version": 1, "shop": {"units": "mm"}}, exact.world())["job"]

    assert (found["kerf"], found["trim"], found["rough"]) == ("3.18 mm", "12 mm", "25 mm")


def test_a_narrow_board_is_bought_where_a_strip_of_a_wide_one_only_seems_cheaper() -> None:
    """One strip for twelve is cheaper than a board for twenty-four of which one of four strips is used, though a strip of it counts six."""
    found = laid(parts=[slats(1, length="20")], lumber=[boards(to_buy="20 @ 12"), boards(to_buy="20 @ 24", width="8")])

    assert bought(found[0]) == [(20, 1, 12)]


def test_a_slip_in_one_box_leaves_what_the_other_says() -> None:
    """The boards to buy are there although those on hand cannot be read."""
    errors: dict[str, str] = {}
    [one] = laid(errors, parts=[slats(1)], lumber=[boards(on_hand="bla", to_buy="20")])

    assert bought(one) == [(20, 1, None)]
    assert errors["lumber 1"].startswith("On hand: ")


def test_more_pieces_than_are_laid_in_all_are_told_in_the_bill() -> None:
    """Of six sections of four hundred the first four are laid, and the bill does not pass for that of all."""
    parts = [slats(400, length="6", width=str(width)) for width in range(1, 7)]
    document = {"format": "shopcalc job", "version": 1, "parts": parts, "lumber": [boards(to_buy="96", width="12")]}
    view = exact.answer_document("/job", json.dumps(document))["view"]

    assert view["bill"].endswith("Without 800 pieces that are on no board: make two jobs of it.")


def test_a_job_that_differs_by_a_hair_is_laid_by_itself() -> None:
    """What is kept of one job is not given to another, whose parts are of the same thousandth and no longer fit the board."""
    fits, is_too_wide = (laid(parts=[slats(1, width=width)], lumber=[boards(to_buy="12", width="3.5002")]) for width in ("3.5001", "3.5004"))

    assert ([1], [0]) == tuple([sum(row[1] for row in bought(one)) for one in found] for found in (fits, is_too_wide))


def test_a_job_whose_wood_is_the_same_is_not_laid_again() -> None:
    """A tick leaves the boards as they were; a part, a board or a cut that changes does not."""
    fields: dict[str, Any] = {"parts": [slats(3)], "lumber": [boards(on_hand="36")]}
    [first] = laid(**fields)

    assert laid(**fields, ticks={"1/tenon/shoulders": "1"})[0] is first
    for changed in ({"kerf": "1/8"}, {"trim": "1/2"}, {"rough": "1"}, {"parts": [slats(2)]}, {"parts": [slats(3, "9")]}, {"lumber": [boards("35")]}):
        laid(**fields)
        assert laid(**{**fields, **changed})[0] is not first


def test_a_part_that_is_named_anew_is_named_anew_on_its_board() -> None:
    """What is kept of a layout is kept with its words."""
    laid(parts=[slats(1)], lumber=[boards(on_hand="36")])
    [one] = laid(parts=[{**slats(1), "label": "Rung"}], lumber=[boards(on_hand="36")])

    assert one["labels"] == ["Rung"]


@pytest.mark.parametrize("typed", [["19 mm", "0.748"], ["0.748", "19 mm"]])
def test_wood_is_of_one_thickness_as_calipers_tell(typed: list[str]) -> None:
    """To the thousandth, whichever part comes first: both are laid on the board of 19 mm."""
    parts = [slats(1, thickness=typed[0], width="3"), slats(1, thickness=typed[1], width="3.0004")]
    [one] = laid(parts=parts, lumber=[boards(to_buy="96", width="3", thickness="19 mm")])

    assert (one["layout"]["too_long"], bought(one)) == ([], [(96, 1, None)])


def test_boards_that_are_used_up_are_boards() -> None:
    """Where one is too short or used already, the part is named that is left without one; only where none is wide enough is one asked for."""
    short = laid(parts=[slats(1, "90")], lumber=[boards(on_hand="50")])
    used = laid(parts=[slats(1, "90", width="3"), slats(1, "80")], lumber=[boards(on_hand="96", width="3")])
    none = laid(parts=[slats(1, "90")], lumber=[boards(on_hand="96", width="1")])

    assert [(one["has_boards"], one["layout"]["too_long"]) for one in (*short, *used, *none)] == [(True, [0]), (True, []), (True, [0]), (False, [0])]


def test_long_parts_go_before_short_ones_where_boards_run_out() -> None:
    """Each of two boards takes a stile or three rails: the stiles are laid, since a rail is sooner found a board for."""
    [one] = laid(parts=[slats(2, "79 1/2"), slats(4, "23")], lumber=[boards(on_hand="80 x2")])

    assert [[one["lengths"][piece] for piece in board["pieces"]] for board in one["layout"]["boards"]] == [[Fraction(159, 2)]] * 2
    assert [one["lengths"][piece] for piece in one["layout"]["too_long"]] == [23] * 4


def test_sections_that_a_tape_does_not_tell_apart_are_told_in_decimals() -> None:
    """Two of one title would be ripped to one width; those that the tape tells apart keep their fractions."""
    parts = [slats(1, width="2.010"), slats(1, width="2.060"), slats(1, width="3 1/2")]
    found = laid(parts=parts, lumber=[boards(to_buy="96", width="3 1/2")], shop={"tape": "8"})

    assert [("3/4 in", "3 1/2 in"), ("0.75 in", "2.06 in"), ("0.75 in", "2.01 in")] == [
        (one["section"]["texts"]["thickness"], one["section"]["texts"]["width"]) for one in found
    ]
