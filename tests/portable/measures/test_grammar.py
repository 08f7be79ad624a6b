"""From tokens to a value: what may be added to, multiplied with and divided by what."""

from fractions import Fraction

import pytest

from shopcalc.portable.measures.grammar import BARE, LENGTH, RATIO, as_length, parse_mixed, parse_sum
from shopcalc.portable.measures.tokens import begin

from ...helpers import NUMBERS, UNITS

SORTS = {
    "3 5/8": (Fraction(29, 8), BARE),
    "2 * 4 5/8": (Fraction(37, 4), BARE),
    "(31 1/4 - 3/8) / 2": (Fraction(247, 16), BARE),
    '2 * 4 5/8"': (Fraction(37, 4), LENGTH),
    '4 5/8" / 2': (Fraction(37, 16), LENGTH),
    "25.4 mm + 1": (2, LENGTH),
    "6' 6 in": (78, LENGTH),
    '9" / 3"': (3, RATIO),
    '2 * (9" / 3")': (6, RATIO),
    '12 / (9" / 3")': (4, RATIO),
    '(9" / 3") * 2"': (6, LENGTH),
}


@pytest.mark.parametrize(("typed", "value"), SORTS.items())
def test_a_unit_is_taken_on_when_it_is_met(typed: str, value: tuple[Fraction, int]) -> None:
    """Bare numbers stay bare among themselves, and a length over a length is a plain number."""
    parsed = parse_sum(begin(typed, UNITS, NUMBERS, "length"))

    assert (parsed["x"], parsed["sort"]) == value


REFUSED = {
    '3" * 2"': "A length times a length is an area.",
    '3 / 2"': "A plain number cannot be divided by a length.",
    "3 / (2 - 2)": "That divides by zero.",
    '(9" / 3") + 1"': "A length and a plain number cannot be added.",
}


@pytest.mark.parametrize(("typed", "fault"), REFUSED.items())
def test_what_has_no_meaning_is_a_fault(typed: str, fault: str) -> None:
    """The fault says which rule it is, and nothing is raised."""
    state = begin(typed, UNITS, NUMBERS, "length")
    parse_sum(state)

    assert state["fault"] == fault


@pytest.mark.parametrize(("metric", "inches"), [(False, 10), (True, Fraction(50, 127))])
def test_a_bare_number_is_of_the_shops_unit_in_the_end(metric: bool, inches: Fraction) -> None:
    """Inches, or millimetres in a metric shop."""
    state = {**begin("10", UNITS, NUMBERS, "length"), "metric": metric}

    assert as_length(state, parse_sum(state))["x"] == inches


def test_a_mixed_number_ends_where_it_is_whole() -> None:
    """What follows it is left for whoever asked."""
    state = begin("3 5/8 x 4", UNITS, NUMBERS, "length")

    assert parse_mixed(state) == Fraction(29, 8)
    assert state["tokens"][state["next"]]["text"] == "x"
