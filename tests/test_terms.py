"""The terms a formula may use."""

import pytest
import sympy

from shopcalc.terms import degrees, forbidden, inches, larger, number, pick, smaller

x, y = sympy.symbols("x y", real=True)


@pytest.mark.parametrize(
    ("value", "exact"), [(3, sympy.Integer(3)), ("1/4", sympy.Rational(1, 4)), ("0.013", sympy.Rational(13, 1000)), ("-2", sympy.Integer(-2))]
)
def test_numbers_are_exact(value: int | str, exact: sympy.Rational) -> None:
    """A number is written as one or as text, and never becomes a float."""
    assert exact == number(value)


def test_nonsense_is_no_number() -> None:
    """Anything else is refused."""
    with pytest.raises(ValueError, match="abc"):
        number("abc")


@pytest.mark.parametrize(
    "fine", [x + y / 2, larger(x, y), smaller(x, 0), pick((x, x > y), otherwise=y), inches("1/4"), degrees(45), sympy.sqrt(x), x**-2, abs(x)]
)
def test_allowed(fine: sympy.Basic) -> None:
    """Sums, products, whole powers, roots, cases and the declared functions are known on both sides."""
    assert "" == forbidden(fine)


@pytest.mark.parametrize(
    ("term", "named"),
    [
        (x * sympy.Float("0.5"), "0.5"),
        (sympy.sin(x), "sin(x)"),
        (x**y, "x**y"),
        (sympy.pi, "pi"),
        (sympy.floor(x), "floor(x)"),
        (x ** sympy.Rational(1, 3), "x**(1/3)"),
    ],
)
def test_forbidden(term: sympy.Basic, named: str) -> None:
    """Anything else is named."""
    assert named in forbidden(term)


def test_a_constant_keeps_its_unit() -> None:
    """A quarter inch and a quarter degree are different terms."""
    assert inches("1/4") != degrees("1/4")


def test_a_constant_may_stand_among_larger_and_smaller() -> None:
    """The larger of a value and a length that is written out."""
    a = sympy.Symbol("a", real=True)

    assert {a, inches(1)} == set(larger(a, inches(1)).args)
