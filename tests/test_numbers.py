"""The server's arithmetic."""

import math
from fractions import Fraction
from typing import Any

import mpmath
import pytest

from shopcalc.numbers import NUMBERS, attempt, exact_root, plain

from .helpers import close


@pytest.mark.parametrize(
    ("name", "given", "expected"),
    [
        ("sin", 20, math.sin(math.radians(20))), ("sin", -20, -math.sin(math.radians(20))), ("tan", 20, math.tan(math.radians(20))),
        ("tan", -20, -math.tan(math.radians(20))), ("asin", "0.3", math.degrees(math.asin(0.3))), ("asin", "-0.3", -math.degrees(math.asin(0.3))),
        ("atan", 3, math.degrees(math.atan(3))), ("atan", -3, -math.degrees(math.atan(3))), ("root", 2, math.sqrt(2)), ("root", "9/64",
        0.375), ("root", 10**30, 10**15),
    ],
)  # fmt: skip
def test_functions(name: str, given: Any, expected: float) -> None:
    """Functions of angles and roots are what mathematics says, with their sign."""
    assert close(expected, float(NUMBERS[name](Fraction(given))))


def test_irrational_values_have_forty_digits() -> None:
    """A root is good to forty digits."""
    with mpmath.workdps(60):
        error = abs(mpmath.mpf(int(exact_root(Fraction(2)) * 10**50)) / 10**50 - mpmath.sqrt(2))

    assert error < 1e-39


@pytest.mark.parametrize("name", ["sin", "tan", "asin", "atan", "root"])
def test_values_go_on_in_exact_arithmetic(name: str) -> None:
    """What a function gives can be added to, divided and compared like any exact number."""
    found = NUMBERS[name](Fraction(1, 7))

    assert (found + Fraction(1, 3)) * 3 - 1 == found * 3
    assert 2 == (found + found) / found


def test_a_root_below_zero_is_no_number() -> None:
    """The root of a negative number is refused."""
    with pytest.raises(ValueError, match="the square root of a negative number"):
        exact_root(Fraction(-1))


@pytest.mark.parametrize(
    "formula",
    [
        lambda known, numbers: 1 / known["zero"],
        lambda known, numbers: numbers["root"](known["zero"] - 1),
        lambda known, numbers: numbers["asin"](known["zero"] + 2),
    ],
    ids=["over zero", "root below zero", "arcsine past one"],
)
def test_a_formula_with_no_value_gives_nothing(formula: Any) -> None:
    """Where a formula has no value on the way, there is no result, and nothing is raised."""
    assert attempt(formula, {"zero": Fraction(0)}, NUMBERS) is None


def test_a_formula_with_a_value_gives_it() -> None:
    """A value, a truth or a list goes through."""
    assert [2, True, [1]] == [attempt(lambda known, numbers, out=out: out, {}, NUMBERS) for out in (2, True, [1])]


@pytest.mark.parametrize(("x", "written"), [("4", "4"), ("1/2", "0.5"), ("0", "0"), ("1/3", "0.3333333333333333"), ("-2", "-2")])
def test_plain(x: str, written: str) -> None:
    """A whole number stays whole in JSON, another becomes the nearest double."""
    assert written == repr(plain(Fraction(x)))
