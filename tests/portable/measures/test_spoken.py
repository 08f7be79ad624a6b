"""Saying a measurement in words, the same on both runtimes."""

from fractions import Fraction

import pytest
from py_mini_racer import MiniRacer

from shopcalc.portable.measures.spoken import in_words, spoken
from shopcalc.portable.measures.writing import write_value

from ...helpers import UNITS, run

# Said as it is said in a shop; the words for numbers are English and need no source.
SAID = {
    "0": "zero",
    "19/32": "nineteen thirty-seconds",
    "1/2": "one half",
    "1/4": "one quarter",
    "3/4": "three quarters",
    "1 3/8": "one and three eighths",
    "31 1/4": "thirty-one and one quarter",
    "40": "forty",
    "99 63/64": "ninety-nine and sixty-three sixty-fourths",
    "120 1/16": "120 and one sixteenth",
    "113/128": "113 hundred-twenty-eighths",
    "6 ft 6 1/2 in": "six feet six and one half",
    "1 ft 2 in": "one foot two",
    "2 ft 1/8 in": "two feet and one eighth",
    "−1 3/8": "minus one and three eighths",
    "−5/64": "minus five sixty-fourths",
    "0.004": "0.004",
    "0.5": "0.5",
}


@pytest.mark.parametrize("text", SAID)
def test_a_length_is_said_in_words(text: str, phone_brain: MiniRacer) -> None:
    """Fractions, whole inches and feet have words; decimals and long numbers are read as they are."""
    assert SAID[text] == in_words(text) == run(phone_brain, "in_words(given[0])", text)


def said(inches: Fraction, kind: str = "length", metric: bool = False) -> str:
    """What is said of a value on a tape of thirty-seconds."""
    return str(spoken(write_value(inches, kind, 32, "nearest", metric, UNITS), kind, metric))


def test_full_and_scant_are_said_after_the_mark() -> None:
    """A little over 19/32 is nineteen thirty-seconds, full."""
    assert "nineteen thirty-seconds, full" == said(Fraction(597, 1000))


def test_a_foot_and_more_is_said_in_feet_too() -> None:
    """Whoever hooks the tape hears inches, whoever calls it across the shop hears feet."""
    assert "seventy-eight and one half; six feet six and one half" == said(Fraction(157, 2))


def test_what_is_no_fraction_is_said_as_it_is_read() -> None:
    """Millimetres and degrees need no words."""
    assert ("15.1 mm", "30°") == (said(Fraction(19, 32), metric=True), said(Fraction(30), "angle"))
