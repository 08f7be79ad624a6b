"""Rows that are typed with commas between."""

from fractions import Fraction
from typing import Any

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.measures.listed import read_boards, read_lengths, read_pieces, read_stock

from ...helpers import INCH_SHOP, MM_SHOP, NUMBERS, UNITS, run


def pieces(typed: str, most: int = 200) -> Any:
    """Parts as they are read: label, length, how many; or why they cannot be."""
    got = read_pieces(typed, most, INCH_SHOP, UNITS, NUMBERS)
    return [(one["label"], one["length"], one["count"]) for one in got["value"]] if got["ok"] else got["message"]


def stock(typed: str, most: int = 50) -> Any:
    """Lengths to buy as they are read: length and price; or why they cannot be."""
    got = read_stock(typed, most, INCH_SHOP, UNITS, NUMBERS)
    return [(one["length"], one["price"]) for one in got["value"]] if got["ok"] else got["message"]


@pytest.mark.parametrize(
    ("typed", "read"),
    [
        ("36", [("", 36, 1)]),
        ("36 x4, 24 1/2 x6", [("", 36, 4), ("", Fraction(49, 2), 6)]),
        ("rail 22 15/16 x2", [("rail", Fraction(367, 16), 2)]),
        ("22 15/16 x2 rail", [("rail", Fraction(367, 16), 2)]),
        ("96 x 3, 3 x96", [("", 96, 3), ("", 3, 96)]),
        ("leg: 16 1/4 x 4; 12", [("leg", Fraction(65, 4), 4), ("", 12, 1)]),
        ("36 x4,", [("", 36, 4)]),
        ("36 x4,\u00a0\t", [("", 36, 4)]),
        ("36 x4\u200b", [("", 36, 4)]),
        ("\uff13\uff16 x\uff14\uff0c leg\uff1a \uff18", [("", 36, 4), ("leg", 8, 1)]),
        ("mid-rail 22 x2, rail-22, T-bar 24, stile - 7-1/2", [("mid-rail", 22, 2), ("rail", 22, 1), ("T-bar", 24, 1), ("stile", Fraction(15, 2), 1)]),
        ("", []),
    ],
)
def test_parts_have_a_length_how_many_and_a_label(typed: str, read: Any) -> None:
    """The label stands before the length or behind the count, and one that is not said is one."""
    assert pieces(typed) == read


@pytest.mark.parametrize(
    ("typed", "message"),
    [
        ("36 x4, rail x2", "Part 2, \u201crail x2\u201d"),
        ("36 x0", "Part 1, \u201c36 x0\u201d"),
        ("banana", "Part 1, \u201cbanana\u201d"),
        ("0 x3", "cannot be zero"),
        ("rail -22", "cannot be negative"),
        ("2 x 36 1/2", "how many after the length"),
        ("36 x4 x2", "how many after the length"),
        ("36 x4 24 x2", "put a comma between them"),
        ("3 x 96", "Write 96 x3 for 3 of 96, or 3 x96 for 96 of 3."),
        ("3x96", "Write 96 x3 for 3 of 96, or 3 x96 for 96 of 3."),
    ],
)
def test_a_part_that_cannot_be_read_is_named(typed: str, message: str) -> None:
    """Its place in the row and its own words say which it is."""
    assert message in pieces(typed)


@pytest.mark.parametrize("typed", ["412,5 x4", "leg 35,5 x2", "900, 412,25", "6,4"])
def test_a_comma_in_a_metric_row_may_be_a_point(typed: str) -> None:
    """Four parts of five millimetres would be cut: it is asked about. In inches, or before three digits, it begins the next length."""
    metric = read_pieces(typed, 200, MM_SHOP, UNITS, NUMBERS)

    assert not metric["ok"]
    assert "Write decimals with a point" in metric["message"]
    assert read_pieces(typed, 200, INCH_SHOP, UNITS, NUMBERS)["ok"]
    assert read_pieces("900,450 x2, 35.5,1200", 200, MM_SHOP, UNITS, NUMBERS)["ok"]


def test_too_many_parts_are_refused() -> None:
    """The count of all of them is what counts."""
    assert "at most 200" in pieces("36 x150, 24 x51")


@pytest.mark.parametrize(
    ("typed", "read"),
    [("96, 120", [(96, None), (120, None)]), ("96 @ 12.50", [(96, Fraction(25, 2))]), ("8 ft @ $9", [(96, 9)]), ("", [])],
)
def test_lengths_to_buy_may_have_a_price(typed: str, read: Any) -> None:
    """The price stands behind an @, with a sign for its currency or without."""
    assert stock(typed) == read


@pytest.mark.parametrize("typed", ["96 @", "96 @ much", "@ 12", "96 @ 50001", "96 @ 1 @ 2", "96 @ 0"])
def test_a_price_that_is_none_is_refused(typed: str) -> None:
    """A slip in a price is said, and never taken for no price."""
    assert isinstance(stock(typed), str)


def test_a_comma_inside_a_price_is_not_the_next_length() -> None:
    """Where prices are written with a comma 96 @ 12,50 would be a board for 12 and one of 50 inches."""
    assert "with a point" in stock("96 @ 12,50")
    assert [(96, 12), (50, None)] == stock("96 @ 12, 50")


def test_a_row_in_a_metric_shop_is_in_millimetres() -> None:
    """Bare numbers are what the shop says they are."""
    got = read_lengths("25.4, 1 in", 5, MM_SHOP, UNITS, NUMBERS)

    assert got == {"ok": True, "value": [1, 1]}


@pytest.mark.parametrize("typed", ["36 x4, 24 1/2 x6", "rail 22 15/16 x2 rail", "x4", "12 x", "\u00bd x2", "a, b", ".5 x2", "leg. 5 x 2"])
def test_the_phone_reads_parts_alike(typed: str, phone_brain: MiniRacer) -> None:
    """Both sides read or refuse with the same words."""
    phone = run(phone_brain, "read_pieces(given[0], 200, { metric: false, division: 32 }, UNITS, numbers)", typed)
    server = read_pieces(typed, 200, INCH_SHOP, UNITS, NUMBERS)

    assert phone["ok"] == server["ok"]
    if server["ok"]:
        assert [[one["label"], one["length"], one["count"]] for one in phone["value"]] == [
            [one["label"], pytest.approx(float(one["length"])), one["count"]] for one in server["value"]
        ]
    else:
        assert phone["message"] == server["message"]


@pytest.mark.parametrize(
    ("typed", "read"),
    [
        ("1/8 x3, 1/16", [Fraction(1, 8)] * 3 + [Fraction(1, 16)]),
        ("70 x2", [70, 70]),
        ("3 x 96", "Write 96 x3"),
        ("1/8 1/8", "put a comma between them"),
        ("3 x 1/8", "such as 36 x3"),
        ("2 x (3 + 1)", "such as 36 x3"),
        ("70 x0", "such as x4"),
        ("70 x1000", "such as x4"),
        ("1/8 x11", "at most 10"),
    ],
)
def test_a_row_says_how_many_behind_a_length(typed: str, read: Any) -> None:
    """Three of an eighth are three pieces and not three eighths; what could be either is asked about."""
    got = read_lengths(typed, 10, INCH_SHOP, UNITS, NUMBERS)

    assert got["value"] == read if got["ok"] else read in got["message"]


def test_how_many_are_bought_is_not_typed() -> None:
    """The yard has as many as are wanted."""
    assert "leave out how many" in stock("96 x2 @ 12")


def test_a_slip_of_the_dash_in_a_row_is_asked_about() -> None:
    """A row of lengths is read as each length is."""
    assert "Number 2 in the row: The fraction after a whole number" in stock("96, 3-8/5")


@pytest.mark.parametrize(
    ("typed", "says"),
    [("80 x201", "at most 200 boards can be laid."), ("0", "Board 1, \u201c0\u201d: This cannot be zero."), ("96, 80 x", "Board 2")],
)
def test_what_is_wrong_with_boards_is_said_of_boards(typed: str, says: str) -> None:
    """A rack has no parts on it."""
    got = read_boards(typed, 200, INCH_SHOP, UNITS, NUMBERS)

    assert not got["ok"] and says in got["message"] and "art" not in got["message"]
