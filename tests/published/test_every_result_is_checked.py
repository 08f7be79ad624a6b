"""No card gives a number that was only ever compared with its own formula."""

import re
from importlib import import_module
from inspect import getsource

import pytest

from shopcalc.catalogue import setups

from .results import CHECKED

# a ranking is not shown itself; the parts for the cut list are
RESULTS = [(slug, each.name) for slug, setup in setups().items() for each in setup.results.values() if each.kind != "ranking"]
RESULTS += [(slug, "parts") for slug, setup in setups().items() if setup.parts]
ENTRIES = [(slug, name) for slug, results in CHECKED.items() for name in results]
HOW_FAR = ("read in the publication", "read in a page that", "recomputed", "from memory")


@pytest.mark.parametrize(("slug", "name"), RESULTS)
def test_a_result_has_a_source_and_a_test(slug, name):
    """Every result of every card stands in the table, also that of a card that was added yesterday."""
    assert name in CHECKED.get(slug, {}), f"name a source and a test for {slug}'s {name} in results.py"


@pytest.mark.parametrize(("slug", "name"), ENTRIES)
def test_the_table_names_no_result_that_is_gone(slug, name):
    """A result that was renamed or taken away takes its entry with it."""
    assert (slug, name) in RESULTS


@pytest.mark.parametrize(("slug", "name"), ENTRIES)
def test_the_test_named_is_there_and_reads_the_result(slug, name):
    """The entry leads to a test function that has the result's name in it."""
    module, _, function = CHECKED[slug][name].test.partition("::")
    test = getattr(import_module(f".{module}", __package__), function)

    assert function.startswith("test_")
    assert re.search(rf"\b{name}\b", getsource(test))


@pytest.mark.parametrize(("slug", "name"), ENTRIES)
def test_the_source_says_how_far_it_was_followed(slug, name):
    """A source says in words whether it was read, quoted, recomputed or remembered."""
    assert any(words in CHECKED[slug][name].source for words in HOW_FAR)
