"""Sines, cosines and tangents in degrees."""

import math
from fractions import Fraction

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.arithmetic.turning import asind, atand, cosd, root, sind, tand

from ...helpers import NUMBERS, close, run

SPECIAL = [(sind, 0, 0), (sind, 30, "1/2"), (sind, 90, 1), (sind, 150, "1/2"), (sind, 180, 0), (cosd, 0, 1), (cosd, 60, "1/2"), (cosd, 90, 0),
           (cosd, 120, "-1/2"), (cosd, 180, -1), (tand, 0, 0), (tand, 45, 1), (atand, 0, 0), (atand, 1, 45), (asind, 0, 0), (asind, "1/2",
           30), (asind, 1, 90)]  # fmt: skip


@pytest.mark.parametrize(("function", "given", "value"), SPECIAL)
def test_values_a_protractor_shows_are_exact(function, given, value, phone_brain: MiniRacer) -> None:  # type: ignore[no-untyped-def]
    """Where the value is rational it is exactly that, on the server and on the phone."""
    assert Fraction(value) == function(Fraction(given), NUMBERS)
    assert float(Fraction(value)) == run(phone_brain, f"{function.__name__}({given}, numbers)") + 0


@pytest.mark.parametrize("degrees", [0.5, 10, 22.5, 44.9, 60, 75, 89])
def test_other_values_are_those_of_the_circle(degrees: float, phone_brain: MiniRacer) -> None:
    """Elsewhere they are what mathematics says, to a billionth, on both sides."""
    radians = math.radians(degrees)
    expected = [math.sin(radians), math.cos(radians), math.tan(radians)]
    exact = [each(Fraction(degrees), NUMBERS) for each in (sind, cosd, tand)]
    phone = run(phone_brain, "[sind, cosd, tand].map(each => each(given[0], numbers))", degrees)

    assert [True] * 6 == [close(*pair) for pair in zip(expected * 2, exact + phone, strict=True)]


@pytest.mark.parametrize("degrees", [1, 10, 30, 45, 80])
def test_arcs_turn_back(degrees: int) -> None:
    """The angle of a sine or a tangent is the angle it came from."""
    angle = Fraction(degrees)

    assert close(angle, asind(sind(angle, NUMBERS), NUMBERS))
    assert close(angle, atand(tand(angle, NUMBERS), NUMBERS))


def test_downward_slopes_have_negative_angles(phone_brain: MiniRacer) -> None:
    """The angle of a negative slope is negative, on both sides."""
    assert close(-math.degrees(math.atan(5)), atand(Fraction(-5), NUMBERS))
    assert close(-math.degrees(math.atan(5)), run(phone_brain, "atand(-5, numbers)"))


def test_root() -> None:
    """A square's root is its side."""
    assert (Fraction(3, 8), True) == (root(Fraction(9, 64), NUMBERS), close(math.sqrt(2), root(Fraction(2), NUMBERS)))
