"""No card gives a number that was only ever compared with its own formula."""

from copy import deepcopy
from importlib import import_module

import pytest

from shopcalc import exact
from shopcalc.catalogue import setups

from . import asking
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
def test_the_test_named_fails_where_the_result_is_another(slug, name, monkeypatch):
    """The entry leads to a test function, which goes on to fail when the card gives that result as another number."""
    module, _, function = CHECKED[slug][name].test.partition("::")
    test = getattr(import_module(f".{module}", __package__), function)
    about = setups()[slug].results.get(name)
    told = str(about.known_as or name) if about else name

    def mistaken(path, query):
        found = deepcopy(exact.answer(path, query))
        if path == f"/{slug}.json" and found["status"] == 200:
            falsify(found["data"], told)
        return found

    monkeypatch.setattr(asking, "answer", mistaken)
    assert function.startswith("test_")
    with pytest.raises((AssertionError, LookupError, ValueError)):
        for values in cases_of(test):
            test(**values)


def falsify(data, name):
    """Put another value, and another text, in the place of one result or of every part."""
    if name == "parts":
        for part in data["parts"]:
            part["count"] += 1
            for side in ("length", "width", "thickness"):
                part[side] = other(part[side])
    elif name in data["results"]:
        result = data["results"][name]
        result["value"], result["text"] = other(result["value"]), "not this"


def other(value):
    """Another value of the same shape."""
    if isinstance(value, dict):
        return {key: other(each) for key, each in value.items()}
    if isinstance(value, list):
        return [other(each) for each in value] or [1]
    if isinstance(value, bool):
        return not value
    return value + 1 if isinstance(value, int) else value * 1.03 + 0.07 if isinstance(value, float) else value


def cases_of(test):
    """The arguments that a test's own marks give it, case by case."""
    marks = [mark for mark in getattr(test, "pytestmark", []) if mark.name == "parametrize"]
    cases = [{}]
    for mark in marks:
        names = [each.strip() for each in mark.args[0].split(",")] if isinstance(mark.args[0], str) else list(mark.args[0])
        rows = [each.values if hasattr(each, "values") and hasattr(each, "marks") else each for each in mark.args[1]]
        rows = [(row,) if len(names) == 1 and not (isinstance(row, tuple) and len(row) == 1) else row for row in rows]
        cases = [{**case, **dict(zip(names, row, strict=True))} for case in cases for row in rows]
    return cases


@pytest.mark.parametrize(("slug", "name"), ENTRIES)
def test_the_source_says_how_far_it_was_followed(slug, name):
    """A source says in words whether it was read, quoted, recomputed or remembered."""
    assert any(words in CHECKED[slug][name].source for words in HOW_FAR)
