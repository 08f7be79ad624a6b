"""Stacks found in other ways than the cards find them: every set of pieces tried, or an integer program for a general solver.

Sizes are exact. The integer program works in whole eight-thousandths of an inch, in which thousandths and 64ths are both
whole numbers, so that the solver's tolerances decide nothing.
"""

from collections.abc import Sequence
from fractions import Fraction
from itertools import combinations

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp

UNIT = Fraction(1, 8000)
FAR = 10**7


def every_set(pieces: Sequence[Fraction]) -> list[tuple[Fraction, int]]:
    """Try every set of pieces: its sum and how many it has, the empty one too."""
    return [(sum(some, Fraction(0)), count) for count in range(len(pieces) + 1) for some in combinations(pieces, count)]


def whole(length: Fraction) -> int:
    """Count a length in units. Fails for one that is no whole number of them."""
    count = Fraction(length) / UNIT
    assert count.denominator == 1, f"{length} is no whole number of units"
    return int(count)


def _solved(cost: list[float], rows: list[tuple[list[float], float, float]], free: int, upper: list[float]) -> np.ndarray:
    """Minimise a cost under rows of limits, `free` unknowns being 0 or 1 and the rest whole. Fails without an optimum."""
    limits = [LinearConstraint([row], low, high) for row, low, high in rows]
    found = milp(cost, constraints=limits, integrality=np.ones(len(cost)), bounds=Bounds(0, [1.0] * free + upper), options={"mip_rel_gap": 0})
    assert found.success, found.message
    return np.round(found.x)


def nearest_by_program(wanted: Fraction, pieces: Sequence[Fraction], under: Fraction | None = None, most: int = 99) -> Fraction:
    """Solve how far off the nearest set of pieces is: each taken or not, what is over and what is lacking least together."""
    sizes = [float(whole(each)) for each in pieces]
    count = len(sizes)
    goal = whole(wanted)
    lacking = FAR if under is None else whole(under)
    x = _solved(
        [0.0] * count + [1.0, 1.0],
        [([*sizes, -1.0, 1.0], goal, goal), ([1.0] * count + [0.0, 0.0], 0, most)],
        count,
        [FAR, lacking],
    )
    return int(x[-1] + x[-2]) * UNIT


def fewest_by_program(total: Fraction, pieces: Sequence[Fraction], cost: Sequence[int]) -> int:
    """Solve what the cheapest set of just this sum costs, each piece at its cost."""
    sizes = [float(whole(each)) for each in pieces]
    x = _solved([float(each) for each in cost], [(sizes, whole(total), whole(total))], len(sizes), [])
    return int(x @ np.array(cost))
