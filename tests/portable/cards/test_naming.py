"""The names and the order of values and formulas."""

import pytest
from py_mini_racer import MiniRacer

from shopcalc.catalogue import setups
from shopcalc.describe import describe
from shopcalc.portable.cards.naming import formula_keys, short_name, value_names

from ...helpers import run


@pytest.mark.parametrize("slug", setups())
def test_the_order_is_that_of_the_setup(slug: str) -> None:
    """The keys that follow from a card's data are those of its formulas, in their order: the phone puts them together by it."""
    setup = setups()[slug]

    assert list(setup.formulas()) == formula_keys(describe(setup))


@pytest.mark.parametrize("slug", setups())
def test_every_value_has_a_name_of_its_own(slug: str) -> None:
    """All values a formula may use are named once."""
    names = value_names(describe(setups()[slug]))

    assert set(setups()[slug].kinds()) == set(names)
    assert len(names) == len(set(names))


def test_short_names_are_short_and_differ(phone_brain: MiniRacer) -> None:
    """The first 52 values have one letter, more have two, on both sides the same."""
    names = [short_name(place) for place in range(300)]

    assert (300, 1, 2) == (len(set(names)), len(names[51]), len(names[52]))
    assert names == run(phone_brain, "given[0].map(short_name)", list(range(300)))
