"""The numbers that are taken from a layout."""

from fractions import Fraction
from typing import Any

from shopcalc.portable.wood.layout import (
    boards_bought,
    boards_cost,
    boards_least,
    boards_priced,
    boards_used,
    boards_waste,
    lay_on_boards,
    left_out,
    longest_board,
    longest_part,
)

PARTS = [{"label": "rail", "length": Fraction(40), "count": Fraction(3)}, {"label": "", "length": Fraction(16), "count": Fraction(2)}]
STOCK = [{"length": Fraction(96), "price": Fraction(10)}]
KERF, TRIM = Fraction(1, 8), Fraction(1, 2)


def laid(stock: Any = STOCK, on_hand: Any = ()) -> dict[str, Any]:
    """The parts on boards."""
    return dict(lay_on_boards(PARTS, list(on_hand), stock, KERF, TRIM))


def test_numbers_are_taken_from_a_layout() -> None:
    """Boards to buy, the bound, the cost, the length used and wasted."""
    found = laid()

    assert (2, 2, 20, 2) == (boards_bought(found), boards_least(found), boards_cost(found), boards_priced(found))
    assert (192, 40) == (boards_used(found), boards_waste(found))
    assert 0 == boards_priced(laid([{"length": Fraction(96), "price": None}]))


def test_parts_without_a_board_keep_their_names() -> None:
    """Of a sort only as many are named as have no board."""
    found = laid([], [Fraction(60), Fraction(60)])

    assert [("rail", 1)] == [(each["label"], each["count"]) for each in left_out(PARTS, found)]


def test_the_longest_of_parts_and_boards() -> None:
    """The longest part, and the longest board of both sorts."""
    assert 40 == longest_part(PARTS)
    assert (100, 0) == (longest_board([Fraction(100)], STOCK), longest_board([], []))
