"""Wood that can be cut: a construction of its own for the groove and the tenon, which knows no formula of either card.

Along a line it is exact: a piece is a list of intervals of fractions, and a cut takes an interval out. In the plane it is a
grid of cells 1/64 in wide, and what is no longer joined to the body of the piece has fallen off.
"""

from collections.abc import Sequence
from fractions import Fraction

import numpy as np
from numpy.typing import NDArray

Interval = tuple[Fraction, Fraction]
Grid = NDArray[np.bool_]


def cut_out(wood: Sequence[Interval], start: Fraction, end: Fraction) -> list[Interval]:
    """Cut everything from `start` to `end` away, and give the intervals that are left."""
    left = []
    for low, high in wood:
        left += [(low, min(high, start)), (max(low, end), high)]
    return [(low, high) for low, high in left if low < high]


def both_ways(wood: Sequence[Interval], stock: Fraction, start: Fraction, end: Fraction) -> list[Interval]:
    """Make the same cut from one face and then, the piece turned, from the other."""
    return cut_out(cut_out(wood, start, end), stock - end, stock - start)


def cells(length: Fraction) -> int:
    """Count a length in cells of the grid. Fails for a length that is no whole number of 64ths."""
    count = Fraction(length) * 64
    assert count.denominator == 1, f"{length} is no whole number of 64ths"
    return int(count)


def joined(wood: Grid, row: int, column: int) -> Grid:
    """Find the part of the wood that is still of one piece with a cell."""
    found = np.zeros_like(wood)
    found[row, column] = wood[row, column]
    while True:
        grown = found.copy()
        grown[1:] |= found[:-1]
        grown[:-1] |= found[1:]
        grown[:, 1:] |= found[:, :-1]
        grown[:, :-1] |= found[:, 1:]
        grown &= wood
        if (grown == found).all():
            return found
        found = grown
