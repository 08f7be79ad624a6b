"""The records a setup is made of."""

import dataclasses

import pytest
import sympy

from shopcalc.records import QUOTED, Choice, DeclarationError, Input, limit_text, symbols_of
from shopcalc.terms import degrees, inches

a, b = sympy.symbols("a b", real=True)


def test_records_do_not_change() -> None:
    """What is declared stays as it was declared."""
    record = Input("stock", "length", "Stock", "1", "Calipers.")
    with pytest.raises(dataclasses.FrozenInstanceError):
        record.name = "other"  # type: ignore[misc]


def test_quoted_names_are_found() -> None:
    """A text quotes values between braces."""
    assert ["fence", "blade_height"] == QUOTED.findall("Set {fence}, then {blade_height}. {not this}")


def test_symbols_of_a_list() -> None:
    """The names of a list of formulas are those of all of them."""
    assert {a, b} == symbols_of([a + 1, 2 * b, 3])
    assert {a} == symbols_of(a > 0)


def test_a_choice_is_compared_by_its_place() -> None:
    """The condition that an option is chosen compares the choice with the option's place."""
    choice = Choice(a, ["lapped", "mitred"])

    assert sympy.Eq(a, 1) == choice.is_("mitred")
    with pytest.raises(DeclarationError, match="a has no option 'glued'"):
        choice.is_("glued")


def test_a_limit_is_quoted_in_its_own_unit() -> None:
    """A length stands between braces, to be written in the shop's unit; an angle has its sign."""
    assert ("{1/16 in}", "5\u00b0") == (limit_text(inches("1/16"), "length"), limit_text(degrees(5), "angle"))
    for limit, kind in ((inches("1/100"), "length"), (inches(1), "percent"), (2 * inches(1), "length")):
        with pytest.raises(ValueError, match="no"):
            limit_text(limit, kind)
