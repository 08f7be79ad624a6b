"""The card of parts on boards: what it reads, what it says, what it draws."""

import pytest

from shopcalc import exact

from ..helpers import raised, value, worked
from ..published.asking import ask, results_of


def refused(**entries):
    """Say why the entries are refused, by name."""
    found = exact.answer("/boards.json", entries)
    assert found["status"] == 422
    return found["data"]["errors"]


def read(parts):
    """Read a row of parts as label, length and count."""
    rows = ask("boards", parts=parts)["inputs"]["parts"]["value"]
    return [(row["label"], row["length"], row["count"]) for row in rows]


@pytest.mark.parametrize(
    ("typed", "rows"),
    [
        ("36 x4, 24 1/2 x6", [("", 36, 4), ("", 24.5, 6)]),
        ("rail 22 15/16 x2", [("rail", 22.9375, 2)]),
        ("22 15/16 x2 rail", [("rail", 22.9375, 2)]),
        ("end rail: 22 15/16", [("end rail", 22.9375, 1)]),
        ("2 ft 6 in x 3; (36 + 1/2) \u00d74,", [("", 30, 3), ("", 36.5, 4)]),
        ("leg 381 mm x2", [("leg", 15, 2)]),
    ],
)
def test_a_part_is_a_length_how_many_and_a_label(typed, rows):
    """The label stands before or behind, and one part needs no count."""
    assert read(typed) == rows


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        ("36 x4, rial x2", "Part 2, \u201crial x2\u201d"),
        ("36 x4, 24 1/2 rail", "Part 2, \u201c24 1/2 rail\u201d"),
        ("36 x0", "how many"),
        ("0 x2", "cannot be zero"),
        ("36 x201", "at most 200"),
        ("", "at least one"),
        ("36, , 24", "Part 2"),
        ("a" * 41 + " 36", "40 characters"),
    ],
)
def test_a_part_that_cannot_be_read_is_named(typed, words):
    """The message says which part is meant and what is wrong with it."""
    assert words in refused(parts=typed)["parts"]


@pytest.mark.parametrize(
    ("typed", "words"), [("96 @", "price"), ("96, 120 @ x", "Number 2"), ("@ 5", "Number 1"), ("96 @ 1000000", "costs"), ("0", "zero")]
)
def test_a_length_to_buy_that_cannot_be_read_is_named(typed, words):
    """A price must be a number, and a board must have a length."""
    assert words in refused(lengths=typed)["lengths"]


def test_the_first_card_is_a_bench():
    """It opens with the parts of a bench, laid on as few boards as can be, and raises no stop."""
    card = ask("boards")

    assert [check["name"] for check in card["checks"]] == ["as_few_as_can_be"]
    assert card["results"]["count"]["text"] == "4"


def test_how_many_to_buy_stands_largest():
    """The count comes first at the top of the card, then the cost and the waste."""
    answer = exact.answer("/boards", {"lengths": "96 @ 9, 120 @ 12.50"}, "answer")["view"]["answers"][0]

    assert [one["label"] for one in answer["first"] + answer["others"]] == ["Boards to buy", "Cost", "Waste"]


def test_the_layout_is_a_list_of_boards_with_their_cuts():
    """Each board says its length, whether it is owned, its cuts in order and what is left."""
    layout = results_of("boards", parts="rail 40 x1, leg 16 x2", on_hand="60", lengths="96", kerf="1/8", trim="1/2")["layout"]

    assert layout[0] == {
        "length": 60,
        "owned": True,
        "cuts": [{"label": "rail", "length": 40}, {"label": "leg", "length": 16}],
        "rest": 3.25,
    }
    assert [board["owned"] for board in layout] == [True, False]


@pytest.mark.parametrize(
    ("entries", "name", "words"),
    [
        ({"parts": "rail 130 x2, leg 10"}, "too_long", "rail 130 in x2"),
        ({"parts": "rail 50 x2", "on_hand": "60", "lengths": "48"}, "used_up", "rail 50 in"),
        ({"parts": "rail 50 x2", "on_hand": "60", "lengths": ""}, "used_up", "rail 50 in"),
    ],
)
def test_a_part_without_a_board_stops_and_is_named(entries, name, words):
    """Nothing is said to buy, nothing is drawn and no step is told while a part has no board."""
    card = ask("boards", **entries)

    assert [(check["name"], check["level"]) for check in card["checks"]] == [(name, "stop")]
    assert words in card["checks"][0]["text"]
    assert set(card["results"]) == {"left_over"}
    assert card["steps"] == []
    assert exact.answer("/boards", entries)["view"]["sheets"][0]["boards"] == []


def test_boards_cut_alike_are_drawn_once():
    """Six boards of two sorts make two drawings, and the words say how many of each."""
    boards = exact.answer("/boards", {"parts": "40 x10, 90", "lengths": "96"})["view"]["sheets"][0]["boards"]

    assert [one["caption"] for one in boards] == [
        "1 of 96\u00a0in: 90; 5\u00a03/8\u00a0in left.",
        "5 of 96\u00a0in: 40 x2; 15\u00a01/4\u00a0in left.",
    ]


def test_a_size_stands_on_its_part_where_there_is_room():
    """In one line, in two, or not at all."""
    board = exact.answer("/boards", {"parts": "46 1/2, 9 1/2, 2 1/2", "lengths": "96"})["view"]["sheets"][0]["boards"][0]

    assert [word["text"] for word in board["words"]] == ["46 1/2", "9", "1/2"]


def test_no_kerf_is_warned_of():
    """A saw without a kerf makes short parts."""
    assert "no_kerf" in [check["name"] for check in ask("boards", kerf="0")["checks"]]


# thirty sizes whose 24 boards nobody finds in the time there is
HARD = (
    "357 x1, 394 x2, 449 x3, 336 x1, 329 x3, 253 x4, 444 x1, 284 x2, 430 x1, 252 x1, 369 x4, 295 x2, 364 x2, 437 x2, 357 x4, 279 x4, 357 x2, 250 x3, "
    "401 x3, 255 x2, 297 x4, 404 x1, 260 x2, 304 x4, 316 x1, 447 x3, 325 x4, 268 x1, 273 x2, 399 x2"
)


def test_the_fewest_is_not_claimed_where_it_is_not_proven() -> None:
    """With more boards than the bound says, nothing is said of the fewest."""
    data = worked("boards", parts=HARD, lengths="1000", kerf="0", trim="0")

    assert value(data, "count") > value(data, "fewest")
    assert (False, False) == (value(data, "proven"), "as_few_as_can_be" in raised(data))


def test_the_cheapest_is_said_of_prices_alone() -> None:
    """Two of 96 in at 8.50 hold four of 46; without prices there is no bill."""
    priced, unpriced = worked("boards", parts="46 x4", lengths="96 @ 8.50, 120 @ 11"), worked("boards")

    assert (17, True) == (value(priced, "cost"), "as_cheap_as_can_be" in raised(priced))
    assert set() == {"cost", "cheapest"} & set(unpriced["results"]) | {"as_cheap_as_can_be"} & raised(unpriced)


def test_what_is_too_long_is_not_what_is_used_up() -> None:
    """Squared by half an inch a board of 96 in has no 95 3/4 in it; with two of 95 1/2 the second has no board left."""
    assert {"too_long"} == raised(worked("boards", parts="rail 95 3/4", lengths="96", trim="1/2"))
    assert {"used_up"} == raised(worked("boards", parts="rail 95 1/2 x2", on_hand="96", lengths="", trim="1/2"))
