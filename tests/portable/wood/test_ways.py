"""The ways to lay one section that are worth trying."""

from fractions import Fraction
from typing import Any

import pytest

from shopcalc.portable.wood.buying import begin_cutting
from shopcalc.portable.wood.ways import MOST_CHOICES, buys_outside, choices_of, is_used, lay_next, next_steps, room_on, room_wanted, unlike
from shopcalc.portable.wood.wood import make_task, whole_board

KERF = Fraction(1, 8)


def task(lengths: list[int], width: int, *sold: tuple[int, int, Any]) -> dict[str, Any]:
    """A section of these parts, and what is sold for it: width, length, price."""
    parts = [{"label": "Part", "length": length, "count": 1} for length in sorted(lengths, reverse=True)]
    section = {"name": f"{width}", "thickness": 1, "width": width, "parts": parts}
    lines = [
        {"thickness": 1, "width": wide, "place": place, "on_hand": [], "to_buy": [{"length": length, "price": price}]}
        for place, (wide, length, price) in enumerate(sorted(sold))
    ]
    return dict(make_task(section, lines, KERF, 0, True, 400))


def rest(length: int, width: int) -> dict[str, Any]:
    """What is left of a board."""
    return {**whole_board(f"r{length}", length, width, 0, None, True), "how": "rest"}


def cutting() -> dict[str, Any]:
    """A search that has just begun."""
    return dict(begin_cutting(KERF, 0, 64000, 3000))


def offer(line: int, length: int, strips: int = 2) -> dict[str, Any]:
    """A board that is sold."""
    return {"line": line, "length": length, "width": 5, "strips": strips, "board_price": 10, "price": 5}


@pytest.mark.parametrize(
    ("offers", "is_last", "choices"),
    [
        ([(0, 96), (0, 120), (1, 96)], False, [[(0, 96), (0, 120)], [(1, 96)], [(0, 96)], [(0, 120)]]),
        ([(0, 96), (0, 120)], True, [[(0, 96)], [(0, 120)]]),
        ([(0, 96)], False, []),
    ],
)
def test_a_line_alone_or_a_length_of_it_may_be_bought(offers: list[tuple[int, int]], is_last: bool, choices: list[list[tuple[int, int]]]) -> None:
    """Of lines with one length the line is that length; one board is no choice."""
    found = choices_of([offer(line, length) for line, length in offers], is_last)

    assert choices == [[(each["line"], each["length"]) for each in choice] for choice in found]


def test_where_nothing_is_left_over_there_is_no_choice() -> None:
    """The last section takes single strips of what is cheapest for it already."""
    assert [] == choices_of([offer(0, 96, 1), offer(0, 120, 1)], True)


def test_no_more_choices_are_tried_than_there_is_time_for() -> None:
    """A dozen."""
    assert MOST_CHOICES == len(choices_of([offer(line, length) for line in range(9) for length in (96, 120)], False))


def test_what_is_left_over_goes_before_a_board() -> None:
    """Where all of a section fits on it, no board is touched; where it does not, a board is bought."""
    sold = task([20, 20], 2, (5, 96, 10))
    kept = lay_next(sold, sold["offers"], [rest(41, 2)], cutting(), [])
    bought = lay_next(sold, sold["offers"], [rest(40, 2)], cutting(), [])

    assert ([0, 1], [0, 0]) == ([len(step["laid"]["shopping"]) for step in (kept, bought)], [step["missing"] for step in (kept, bought)])


def test_two_parts_need_a_kerf_between_them() -> None:
    """As much room as is wanted: 20 and 20 and a cut fit in 40 1/8 in, and not in 40."""
    wanted = room_wanted(task([20, 20], 2), KERF)

    assert [True, False] == [room_on([rest(length, 2)], task([20, 20], 2), KERF) >= wanted for length in (41, 40)]


def test_other_ways_buy_other_boards_or_keep_some_back() -> None:
    """The usual one first; with a narrower section to come each length alone, and the board on hand left for it."""
    wide, narrow = task([40], 4, (5, 48, 10), (5, 96, 12)), task([40], 2)
    store = [whole_board("h0", 60, 5, 0, None, True)]
    search = cutting()
    usual = lay_next(wide, wide["offers"], store, search, [narrow])
    steps = next_steps(usual, wide, store, search, [narrow])

    assert usual["nth"] == steps[0]["nth"]
    assert is_used(store[0], usual, store)
    assert {0, 1} == {len(step["laid"]["shopping"]) for step in steps}
    assert any(not is_used(store[0], step, store) for step in steps)


def test_a_step_buys_outside_of_what_it_may() -> None:
    """By size: which line sold it is all one."""
    sold = task([40], 4, (5, 48, 10))
    step = lay_next(sold, sold["offers"], [], cutting(), [])

    assert [False, True] == [buys_outside(step, [{"length": length, "width": 5}]) for length in (48, 96)]


def test_woods_of_one_size_are_tried_once() -> None:
    """Two rests alike serve alike."""
    assert [41, 30] == [wood["length"] for wood in unlike([rest(41, 2), rest(41, 2), rest(30, 2)])]
