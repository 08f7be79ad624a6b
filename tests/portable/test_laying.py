"""What is said of a layout: the numbers taken from it, and the boards as bars."""

from fractions import Fraction
from typing import Any

from shopcalc.portable.laying import (
    boards_bought,
    boards_cost,
    boards_least,
    boards_priced,
    boards_used,
    boards_waste,
    cuts_in_words,
    lay_on_boards,
    left_out,
    longest_board,
    longest_part,
    shown_boards,
)

from ..helpers import INCH_SHOP, MM_SHOP, UNITS

PARTS = [{"label": "rail", "length": Fraction(40), "count": Fraction(3)}, {"label": "", "length": Fraction(16), "count": Fraction(2)}]
STOCK = [{"length": Fraction(96), "price": Fraction(10)}]
KERF, TRIM = Fraction(1, 8), Fraction(1, 2)


def laid(stock: Any = STOCK, on_hand: Any = ()) -> dict[str, Any]:
    """The parts on boards."""
    return dict(lay_on_boards(PARTS, list(on_hand), stock, KERF, TRIM))


def drawn(shop: dict[str, Any] = INCH_SHOP) -> list[dict[str, Any]]:
    """The boards as pictures."""
    found = laid()
    return list(shown_boards("bench", found["boards"], found["labels"], found["lengths"], KERF, TRIM, shop, UNITS))


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


def test_cuts_alike_are_counted_in_order() -> None:
    """Only neighbours are taken together."""
    assert ["a x2", "b", "a"] == cuts_in_words(["a", "a", "b", "a"])


def test_a_bar_is_drawn_to_scale() -> None:
    """The whole board stands hatched under its parts, every cut is marked, and the words say what is left."""
    first = drawn()[0]

    assert "bench-0" == first["id"]
    assert ["waste", "wood", "wood"] == [area["style"] for area in first["areas"]]
    assert "M4 7h352v30H4Z" == first["areas"][0]["path"]
    assert 2 == first["marks"][0]["path"].count("M")
    assert "1 of 96\u00a0in: rail 40 x2; 15\u00a01/4\u00a0in left." == first["caption"]


def test_a_metric_shop_has_millimetres() -> None:
    """Sizes and words are in the shop's unit."""
    assert "1 of 2438.4\u00a0mm: rail 1016.0\u00a0mm x2; 387.4\u00a0mm left." == drawn(MM_SHOP)[0]["caption"]
