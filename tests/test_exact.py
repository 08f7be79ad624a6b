"""The server's side of a card."""

from fractions import Fraction
from typing import Any

import pytest

from shopcalc import __version__, exact
from shopcalc.catalogue import setups

from .helpers import bench_of


def test_the_world_has_every_setup() -> None:
    """The world knows every setup, the version and the units."""
    assert (set(setups()), __version__) == (set(exact.world()["setups"]), exact.world()["version"])


def numbers_in(value: Any) -> list[Any]:
    """A value itself, or every number of a row, a ranking or a layout, which holds words and truths and nothings too."""
    if value is None or isinstance(value, (str, bool)):
        return []
    inside = value.values() if isinstance(value, dict) else value
    return [each for one in inside for each in numbers_in(one)] if isinstance(value, (list, dict)) else [value]


@pytest.mark.parametrize("slug", setups())
def test_every_value_is_an_exact_fraction(slug: str) -> None:
    """No float is known on any bench: not of the entries, not of the results."""
    assert [] == [name for name, value in bench_of(slug).get("known").items() if any(isinstance(each, float) for each in numbers_in(value))]


def test_decimals_stay_exact() -> None:
    """Three tenths less a tenth and two tenths is nothing, not 0.00000000000000004."""
    assert Fraction(0) == bench_of("fractions", entry="0.3 - 0.1 - 0.2")["known"]["length"]


def test_the_query_is_left_alone() -> None:
    """Answering changes nothing in what was asked."""
    query = {"stock": "2"}
    exact.answer("/groove", query)

    assert {"stock": "2"} == query


def test_a_world_of_some_setups() -> None:
    """A world may be made of chosen setups."""
    assert ["groove"] == list(exact.make_world({"groove": setups()["groove"]})["setups"])
