"""The inch, the foot and the metre, as the law has them.

Source: addendum (22 January 1960) to National Bureau of Standards Circular 572, read in the publication: from 1 July 1959
one yard is exactly 0.9144 metre, so one inch is exactly 25.4 millimetres.
"""

from fractions import Fraction

import pytest

from shopcalc.exact import world
from shopcalc.portable.measures.parsing import read_length
from shopcalc.units import length_factors

from .asking import ask

# in millimetres; recomputed from the inch of 25.4 mm, written out in full because the decimals end
FRACTIONS_OF_AN_INCH = {"1/64": "0.396875", "1/32": "0.79375", "1/16": "1.5875", "1/8": "3.175", "1/4": "6.35", "1/2": "12.7", "1": "25.4"}


def inches(text: str) -> Fraction:
    """Read an entry."""
    read = read_length(text, {"division": 32, "metric": False}, length_factors(), world()["numbers"])
    assert read["ok"], read["message"]
    return Fraction(read["value"])


def test_one_inch_is_25_point_4_millimetres_and_nothing_else():
    """The factor sent to the phone is the published one, as a fraction and not as a decimal near it."""
    top, under = length_factors()["mm"]

    assert Fraction(under, top) == Fraction("25.4")  # NBS Circular 572, read in the publication


def test_one_yard_is_0_point_9144_metre():
    """The figure that the addendum itself prints reads as three feet."""
    assert inches("0.9144 m") == 36  # NBS Circular 572, read in the publication


@pytest.mark.parametrize(("unit", "millimetres"), [("in", "25.4"), ("ft", "304.8"), ("mm", "1"), ("cm", "10"), ("m", "1000")])
def test_every_unit_has_the_length_that_follows_from_the_inch(unit, millimetres):
    """The foot is twelve inches of 25.4 mm; the metric units are decimal multiples (recomputed)."""
    top, under = length_factors()[unit]

    assert Fraction(top, under) * Fraction("25.4") == Fraction(millimetres)


def test_no_unit_is_left_out_of_the_check_above():
    """A unit that is added needs its published length here."""
    assert set(length_factors()) == {"in", "ft", "mm", "cm", "m"}


@pytest.mark.parametrize(("fraction", "millimetres"), FRACTIONS_OF_AN_INCH.items())
def test_millimetres_read_as_the_fraction_of_an_inch_they_are(fraction, millimetres):
    """An entry in mm comes to the very fraction of an inch, with no remainder (recomputed)."""
    assert inches(f"{millimetres} mm") == Fraction(fraction)


@pytest.mark.parametrize(("fraction", "millimetres"), FRACTIONS_OF_AN_INCH.items())
def test_a_card_shows_a_fraction_in_millimetres_to_a_tenth(fraction, millimetres):
    """The mm beside a fraction is its length, off by no more than half of the last place shown (recomputed)."""
    shown = ask("fractions", entry=fraction)["results"]["length"]["mm"]

    assert abs(Fraction(str(shown)) - Fraction(millimetres)) <= Fraction("0.05")
