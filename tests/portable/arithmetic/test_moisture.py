"""The moisture of wood at rest in air."""

from fractions import Fraction

import pytest
import sympy
from py_mini_racer import MiniRacer

from shopcalc.portable.arithmetic.moisture import FIRST_ROW, settled_moisture
from shopcalc.terms import settled_moisture as settled_term
from shopcalc.units import UnitsError, dimension_of
from shopcalc.working import working_text

from ...helpers import close, run

AIRS = [(30, 5), (30, 100), (70, 50), (Fraction("60.5"), Fraction("72.3")), (100, 95), (250, 1), (-40, 80), (70, Fraction("0.1"))]


def settled(temperature: int | Fraction, humidity: int | Fraction) -> Fraction:
    """The moisture in exact fractions, as a card works it out."""
    return Fraction(settled_moisture(Fraction(temperature), Fraction(humidity)))


@pytest.mark.parametrize(("temperature", "humidity"), AIRS)
def test_the_phone_finds_the_same_moisture(temperature: int | Fraction, humidity: int | Fraction, phone_brain: MiniRacer) -> None:
    """Doubles and exact fractions give one number."""
    given = [float(temperature), float(humidity)]

    assert close(settled(temperature, humidity), run(phone_brain, "settled_moisture(given[0][0], given[0][1])", given))


def test_fractions_stay_exact() -> None:
    """No part of the equation turns into a float on the server."""
    assert Fraction is type(Fraction(1) * settled_moisture(Fraction(70), Fraction(50)))


def test_dry_air_dries_wood_out() -> None:
    """Air without moisture leaves none in wood."""
    assert 0 == settled(70, 0)


def test_damper_air_makes_damper_wood() -> None:
    """Moisture rises with humidity all the way, at any temperature that can be typed."""
    for temperature in range(-100, 251, 25):
        row = [settled(temperature, humidity) for humidity in range(0, 101, 5)]

        assert row == sorted(set(row))


def test_frost_counts_as_the_first_row_of_the_table() -> None:
    """Below the table the air counts as its coldest row."""
    assert settled(FIRST_ROW, 60) == settled(-20, 60)


def test_a_formula_takes_a_temperature_and_a_percentage() -> None:
    """It gives a plain number, is refused a length, and is written in words."""
    air, damp = sympy.symbols("air damp", real=True)

    assert "number" == dimension_of(settled_term(air, damp), {"air": "temperature", "damp": "percent"})
    assert "moisture of wood at rest in air of {air} and {damp}" == working_text(settled_term(air, damp))
    with pytest.raises(UnitsError, match="takes a temperature, and air is a length"):
        dimension_of(settled_term(air, damp), {"air": "length", "damp": "percent"})
