"""The search of the lightest layout, and the bound that says when none can be lighter."""

from typing import Any

import numpy as np
import pytest
from scipy.optimize import Bounds, LinearConstraint, milp

from shopcalc.portable.wood.patterns import SLACK
from shopcalc.portable.wood.search import NO_BOARD, NO_LAYOUT, common_part, search_boards, set_worths, shaken, was_here
from shopcalc.portable.wood.wood import MOST_PIECES

from .test_patterns import WEIGHT, every_pattern, some_case, state_of


def searching(sizes: list[int], counts: list[int], room: int, limit: int = 300_000, enough: int = 1_000_000) -> dict[str, Any]:
    """What the search knows before it begins, with no price on its boards."""
    state = state_of(sizes, counts, room, sizes)
    nothing = {"bound": 0, "work": 0, "steps": 0, "fewest": 0, "least": 0, "priced": False, "cheapest": False, "cut": False, "done": False}
    return {**state, **nothing, "limit": limit, "enough": enough, "weight": NO_LAYOUT, "seen": [], "boards": [], "found": []}


def fewest_boards(sizes: list[int], counts: list[int], room: int) -> int:
    """The fewest boards by an integer program over all patterns."""
    patterns = np.array(every_pattern(sizes, counts, room)).T
    ones = np.ones(patterns.shape[1])
    return round(milp(ones, constraints=LinearConstraint(patterns, lb=counts), integrality=ones, bounds=Bounds(lb=0)).fun)


@pytest.mark.parametrize("seed", range(12))
def test_a_search_that_is_not_cut_off_finds_the_fewest_boards(seed: int) -> None:
    """As many as an integer program needs, and every part on one of them."""
    sizes, counts, room = some_case(seed)
    state = searching(sizes, counts, room)
    search_boards(state)
    laid = [sort for board in state["boards"] for sort in board["sorts"]]

    assert state["done"]
    assert state["weight"] // WEIGHT == fewest_boards(sizes, counts, room)
    assert [laid.count(sort) for sort in range(len(sizes))] == counts
    assert all(sum(sizes[sort] for sort in board["sorts"]) <= room for board in state["boards"])


@pytest.mark.parametrize("seed", range(12))
def test_no_worths_bound_more_than_the_lightest_layout_weighs(seed: int) -> None:
    """Whatever the worths, what they say at least is no more than what is needed."""
    sizes, counts, room = some_case(seed)
    state = searching(sizes, counts, room)
    for worths in (sizes, [1] * len(sizes), list(range(1, len(sizes) + 1))):
        set_worths(state, worths)

        assert state["bound"] <= WEIGHT * fewest_boards(sizes, counts, room)


def test_a_search_of_little_work_lays_every_part_and_is_done() -> None:
    """The first layout is made whatever it takes, and no other search is begun after it, though that would save a board."""
    sizes, counts, room = some_case(0)
    short, longer = searching(sizes, counts, room, enough=0), searching(sizes, counts, room)
    search_boards(short)
    search_boards(longer)

    assert sum(len(board["sorts"]) for board in short["boards"]) == sum(counts)
    assert (short["done"], longer["done"]) == (False, True)
    assert short["weight"] > longer["weight"]


@pytest.mark.parametrize("limit", [1, 10_000])
def test_a_search_leaves_what_is_left_as_it_was(limit: int) -> None:
    """Parts and boards taken on the way are put back, also where the search is cut off."""
    sizes, counts, room = some_case(3)
    state = searching(sizes, counts, room, limit)
    search_boards(state)

    assert (state["left"], state["kinds"][0]["have"], state["found"]) == (counts, 1000, [])
    assert sum(len(board["sorts"]) for board in state["boards"]) == sum(counts)


def test_a_place_is_passed_over_only_if_it_was_reached_with_no_more_waste() -> None:
    """The same parts left with less wasted on the way are worth another look."""
    state = {**searching([30_000], [2], 60_000), "seen": [[] for _ in range(509)]}

    assert [was_here(state, waste) for waste in (5, 5, 6, 4, 4)] == [False, True, True, False, True]
    state["left"] = [1]
    assert not was_here(state, 5)


def test_worths_are_shaken_by_a_tenth_and_no_more() -> None:
    """Another way at every turn, and the same way every time."""
    best = [1_000, 2_000, 3_000]
    # at these turns the plain lengths count for nothing
    by_turn = [shaken(best, [7, 7, 7], 1, turn) for turn in (0, 3, 6)]

    assert len({tuple(worths) for worths in by_turn}) == 3
    assert by_turn[0] == shaken(best, [7, 7, 7], 1, 0)
    for worths in by_turn:
        assert all(1 <= worth / (2 * 10_090 * plain) < 1.1 for worth, plain in zip(worths, best, strict=True))


@pytest.mark.parametrize(("one", "other", "common"), [(12, 18, 6), (7, 0, 7), (0, 7, 7), (9, 28, 1)])
def test_the_grain_of_prices_is_what_divides_them_all(one: int, other: int, common: int) -> None:
    """The greatest whole number that divides both."""
    assert common_part(one, other) == common


def test_what_a_search_may_hold_is_enough_for_all_pieces_of_a_section() -> None:
    """Half a tick of rounding each, all of them left without a board, and still a weight that a double holds exactly."""
    assert MOST_PIECES / 2 <= SLACK
    assert MOST_PIECES * NO_BOARD < NO_LAYOUT < 2**53
