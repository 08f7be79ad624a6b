"""The server's side of a card."""

from fractions import Fraction
from typing import Any

import pytest
from py_mini_racer import MiniRacer

from shopcalc import __version__, exact
from shopcalc.catalogue import setups

from .helpers import bench_of, run


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


NO_INPUT = "tenon has no input of this name."
TWICE = "This is given twice."
REFUSED = {
    "a capital": ("Stock=1", {"Stock": NO_INPUT}),
    "no name": ("=3", {"": NO_INPUT}),
    "a tilde": ("~Stock=1&Stock=1", {"~Stock": NO_INPUT, "Stock": NO_INPUT}),
    "names of every object": ("constructor=1&__proto__=1", {"constructor": NO_INPUT, "__proto__": NO_INPUT}),
    "whole numbers": ("b=1&10=1&7=1&007=1&4294967295=1", {"7": NO_INPUT, "10": NO_INPUT, "b": NO_INPUT, "007": NO_INPUT, "4294967295": NO_INPUT}),
    "a name twice": ("stock=1&stock=2", {"stock": TWICE}),
    "a name twice with one text": ("stock=1&stock=1", {"stock": TWICE}),
    "names twice in another order": ("kerf=1/8&stock=1&stock=2&kerf=1/8", {"kerf": TWICE, "stock": TWICE}),
    "a name twice that cannot be read": ("stock=x&fit=y&stock=1", {"stock": TWICE, "fit": "I do not know \u201cy\u201d: use in, ft, mm, cm or m."}),
    "an unknown name twice": ("Stock=1&Stock=2", {"Stock": TWICE}),
    "the tape twice": ("tape=8&tape=16", {"tape": TWICE}),
}


def pairs_of(query: str) -> list[list[str]]:
    """A query as names and texts, as both sides get them."""
    return [part.split("=", 1) for part in query.split("&")]


@pytest.mark.parametrize("what", REFUSED)
def test_data_are_refused_by_the_names_as_typed_on_both_sides(what: str, phone_brain: MiniRacer) -> None:
    """An error has the name that was typed, and a name given twice is one, in the same order on the phone."""
    query, errors = REFUSED[what]
    server = exact.answer("/tenon.json", [(name, text) for name, text in pairs_of(query)])
    phone = run(phone_brain, "decide('/tenon.json', given[0], '')", pairs_of(query))

    assert {"status": 422, "data": {"errors": errors}} == server == phone
    assert list(server["data"]["errors"]) == list(phone["data"]["errors"])


def test_a_page_takes_the_first_of_two_texts(phone_brain: MiniRacer) -> None:
    """A page shows what it took, so it need not refuse; and a card that is not there is no matter of its names."""
    pairs = [["stock", "2"], ["stock", "3"]]

    assert exact.answer("/tenon", {"stock": "2"}) == exact.answer("/tenon", [("stock", "2"), ("stock", "3")])
    assert 200 == run(phone_brain, "decide('/tenon', given[0], '')", pairs)["status"]
    assert exact.answer("/nothing.json", [("a", "1"), ("a", "2")]) == run(phone_brain, "decide('/nothing.json', [['a', '1'], ['a', '2']], '')")
