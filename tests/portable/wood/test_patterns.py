"""Which parts a board can hold together, and what a part is worth."""

import itertools
import random
from typing import Any

import numpy as np
import pytest
from scipy.optimize import linprog

from shopcalc.portable.wood.patterns import most_worth, nodes_for, order_sorts, patterns_of, solve_program

WEIGHT = 1_000_000


def state_of(sizes: list[int], counts: list[int], room: int, worths: list[int]) -> dict[str, Any]:
    """What the search knows: sorts of part, how many are left of each, one kind of board to buy."""
    state = {
        "sorts": [{"size": size, "pieces": list(range(count))} for size, count in zip(sizes, counts, strict=True)],
        "sizes": sizes,
        "nodes": 3000,
        "left": list(counts),
        "kinds": [{"room": room, "owned": False, "weight": WEIGHT, "have": 1000, "dual": 0}],
        "worths": worths,
        "order": [],
        "ratios": [],
    }
    order_sorts(state)
    return state


def every_pattern(sizes: list[int], counts: list[int], room: int) -> list[tuple[int, ...]]:
    """All mixes of parts that fit one board, by trying every one."""
    ranges = [range(min(count, room // size) + 1) for size, count in zip(sizes, counts, strict=True)]
    return [mix for mix in itertools.product(*ranges) if 0 < sum(n * size for n, size in zip(mix, sizes, strict=True)) <= room]


def some_case(seed: int) -> tuple[list[int], list[int], int]:
    """Sizes in thousands of ticks, far wider apart than the slack that rounding is allowed; counts; and a board's room."""
    rng = random.Random(seed)
    sizes = sorted((1000 * size for size in rng.sample(range(11, 60), 4)), reverse=True)
    return sizes, [rng.randint(1, 5) for _ in sizes], 1000 * rng.randint(61, 140) + 500


@pytest.mark.parametrize("seed", range(12))
def test_the_most_that_a_board_can_hold_is_what_trying_every_mix_finds(seed: int) -> None:
    """By worths that have nothing to do with the sizes."""
    sizes, counts, room = some_case(seed)
    worths = [random.Random(seed + 100).randint(1, 1000) * (place + 1) for place in range(len(sizes))]
    best = max(sum(n * worth for n, worth in zip(mix, worths, strict=True)) for mix in every_pattern(sizes, counts, room))

    assert most_worth(state_of(sizes, counts, room, worths), room) == best


def test_the_best_patterns_come_in_order() -> None:
    """The best few, each worth no more than the one before it, and what is left is as it was."""
    state = state_of([50_000, 30_000, 20_000], [2, 3, 4], 100_000, [5, 3, 2])
    found = patterns_of(state, 100_000, -1, 3, 0)["list"]

    assert [one["worth"] for one in found] == sorted((one["worth"] for one in found), reverse=True)
    assert len(found) == 3
    assert state["left"] == [2, 3, 4]


@pytest.mark.parametrize("seed", range(12))
def test_the_worths_are_the_dual_of_the_program_of_all_patterns(seed: int) -> None:
    """All parts at their worths come to what the cheapest mix of boards costs: scipy solves the program of every pattern outright."""
    sizes, counts, room = some_case(seed)
    program = solve_program(state_of(sizes, counts, room, [0] * len(sizes)))
    mixes = np.array(every_pattern(sizes, counts, room)).T
    solved = linprog(np.full(mixes.shape[1], WEIGHT), A_ub=-mixes, b_ub=-np.array(counts))
    worth = sum(count * worth for count, worth in zip(counts, program["worths"], strict=True))

    assert worth == pytest.approx(solved.fun, abs=sum(counts) + 1)  # worths are whole numbers, rounded down


def test_many_kinds_and_little_work_leave_a_pattern_fewer_nodes() -> None:
    """Up to eight kinds of boards and a whole search leave each the most; never so few that none is found."""
    assert nodes_for(1, 320_000) == nodes_for(8, 320_000) == 2 * nodes_for(16, 320_000)
    assert nodes_for(8, 320_000) > nodes_for(8, 600) > nodes_for(8, 1) > 0
