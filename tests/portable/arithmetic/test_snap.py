"""Comparing and rounding so that fractions and doubles agree."""

from fractions import Fraction

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.arithmetic.snap import above, at_least, ceiling_of, floor_of, larger, magnitude, nearest_of, same, smaller

from ...helpers import run

# Divisions whose quotient is whole but not so in doubles: 0.6 / 0.2 is 2.9999999999999996 there.
WHOLE = [("0.6", "0.2", 3), ("0.3", "0.1", 3), ("0.7", "0.1", 7), ("4.35", "0.01", 435), ("1.1", "0.1", 11), ("0.9", "0.3", 3)]


@pytest.mark.parametrize(("top", "under", "whole"), WHOLE)
def test_quotients_that_are_whole_stay_whole(top: str, under: str, whole: int, phone_brain: MiniRacer) -> None:
    """Where a quotient is a whole number, floor, ceiling and nearest give it on both sides."""
    quotient = Fraction(top) / Fraction(under)

    assert [whole] * 3 == [floor_of(quotient), ceiling_of(quotient), nearest_of(quotient)]
    assert [whole] * 3 == run(phone_brain, f"[floor_of({top}/{under}), ceiling_of({top}/{under}), nearest_of({top}/{under})]")


@pytest.mark.parametrize(
    ("x", "floor", "ceiling", "nearest"),
    [("5/2", 2, 3, 3), ("-5/2", -3, -2, -2), ("7/3", 2, 3, 2), ("-7/3", -3, -2, -2), ("1/2", 0, 1, 1), ("0", 0, 0, 0)],
)
def test_rounding(x: str, floor: int, ceiling: int, nearest: int, phone_brain: MiniRacer) -> None:
    """Below, above and nearest are what they say, of negative numbers too; a tie goes up."""
    value = Fraction(x)

    assert [floor, ceiling, nearest] == [floor_of(value), ceiling_of(value), nearest_of(value)]
    assert [floor, ceiling, nearest] == run(phone_brain, f"[floor_of({x}), ceiling_of({x}), nearest_of({x})].map(each => each + 0)")


def test_sums_people_type_compare_equal(phone_brain: MiniRacer) -> None:
    """0.1 and 0.2 are 0.3, and neither is above the other."""
    tenth = Fraction(1, 10)

    assert [True, False, True] == [same(tenth + 2 * tenth, 3 * tenth), above(tenth + 2 * tenth, 3 * tenth), at_least(3 * tenth, tenth + 2 * tenth)]
    assert [True, False, True] == run(phone_brain, "[same(0.1 + 0.2, 0.3), above(0.1 + 0.2, 0.3), at_least(0.3, 0.1 + 0.2)]")


def test_a_micrometer_tells_numbers_apart() -> None:
    """A millionth is a difference."""
    assert (True, False) == (above(Fraction(1000001, 1000000), 1), same(Fraction(1000001, 1000000), 1))


@pytest.mark.parametrize("start", ["0.25", "0.3", "0.375", "1", "1.375", "9.99"])
def test_a_typed_billionth_is_decided_alike(start: str, phone_brain: MiniRacer) -> None:
    """Entries may have nine places, so two that differ in the ninth compare the same way on both sides."""
    longer = Fraction(start) + Fraction(1, 10**9)

    assert above(longer, Fraction(start)) == run(phone_brain, f"above({float(longer)!r}, {start})")


def test_larger_smaller_and_size() -> None:
    """The larger, the smaller, and a number without its sign."""
    assert (3, 2, 4, 4) == (larger(2, 3), smaller(2, 3), magnitude(-4), magnitude(4))
