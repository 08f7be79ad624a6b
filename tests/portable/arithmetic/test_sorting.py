"""One sort for both runtimes."""

import random

from shopcalc.portable.arithmetic.sorting import merged_sort


def test_sorting_is_stable_and_whole() -> None:
    """Every row comes out once, by the comparison given, equals in their order."""
    rng = random.Random(3)
    rows = [(rng.randrange(9), place) for place in range(200)]

    assert merged_sort(rows, lambda one, other: one[0] < other[0]) == sorted(rows, key=lambda row: row[0])
