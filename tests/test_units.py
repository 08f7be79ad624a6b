"""Units: the factors, and the proof that like is added to like."""

from fractions import Fraction

import pytest
import sympy

from shopcalc.terms import asind, atand, cosd, degrees, inches, number, pick, tand, whole_above
from shopcalc.units import UnitsError, dimension_of, length_factors, registry

KINDS = {"stock": "length", "width": "length", "tilt": "angle", "sides": "count", "joint": "choice"}
stock, width, tilt, sides = (sympy.Symbol(name, real=True) for name in ("stock", "width", "tilt", "sides"))


def test_factors_are_exact() -> None:
    """An inch is 25.4 mm and a twelfth of a foot, exactly."""
    assert {"in": [1, 1], "ft": [12, 1], "mm": [5, 127], "cm": [50, 127], "m": [5000, 127]} == length_factors()


ADD_UP = {
    "length": [stock, (stock - width) / 2, stock * tand(tilt), 2 * stock, stock * width / inches(1), inches("1/4"), abs(stock - width),
    sympy.sqrt(stock**2 + width**2),
               sympy.Max(stock - width, 0), stock / sides, pick((stock, stock > width), otherwise=width)],
    "angle": [tilt, degrees(90) - tilt, atand(stock / width), asind(number("1/2")), tilt / 2, 360 * degrees(1) / sides],
    "number": [stock / width, cosd(tilt), whole_above(stock / width), sides, sympy.Integer(2), tilt / degrees(1)],
    "truth": [stock > width, tilt >= degrees(45), stock > 0, sympy.And(stock > width, tilt > degrees(1)), sympy.Not(sympy.Eq(sides, 1)), sympy.true],
}  # fmt: skip


@pytest.mark.parametrize(("kind", "expression"), [(kind, each) for kind, many in ADD_UP.items() for each in many], ids=str)
def test_what_adds_up(kind: str, expression: sympy.Basic) -> None:
    """An expression whose units add up comes out as its kind."""
    assert kind == dimension_of(expression, KINDS)


DISAGREE = [stock + tilt, stock + 1, tilt + 1, stock > tilt, tilt > 45, tand(stock), tand(number("1/2")), atand(stock), whole_above(stock),
sympy.Max(stock, tilt),
            pick((stock, stock > width), otherwise=tilt), pick((stock, stock > tilt), otherwise=width), stock * width, 1 / stock,
            sympy.sqrt(stock), stock * tilt,
            sympy.And(stock > width, stock > 1)]  # fmt: skip


@pytest.mark.parametrize("expression", DISAGREE, ids=str)
def test_what_does_not(expression: sympy.Basic) -> None:
    """Adding, comparing or turning unlike things is refused, in every branch of a formula."""
    with pytest.raises(UnitsError):
        dimension_of(expression, KINDS)


def test_the_message_names_the_part_at_fault() -> None:
    """The message names the sum that does not add up and both units."""
    with pytest.raises(UnitsError, match=r"stock \+ tilt.*inch.*arc|stock \+ tilt.*arc.*inch"):
        dimension_of(width * (stock + tilt), KINDS)


def test_the_registry_converts_in_exact_fractions() -> None:
    """A millimetre is five 127ths of an inch, and no decimal beside it."""
    assert Fraction(5, 127) == registry().Quantity(Fraction(1), "mm").to("inch").magnitude
