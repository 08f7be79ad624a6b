"""The setups are found, not listed."""

import pkgutil
import re
import types

import pytest

import shopcalc.setups
from shopcalc import catalogue
from shopcalc.catalogue import setups
from shopcalc.declare import DeclarationError, Setup


def test_every_module_is_a_setup() -> None:
    """Each module of the folder is one setup, named by its slug."""
    modules = {module.name.replace("_", "-") for module in pkgutil.iter_modules(shopcalc.setups.__path__)}

    assert modules == set(setups())


def test_slugs_are_addresses() -> None:
    """A slug is lower-case words joined by dashes, and is not the name of something else at that address."""
    assert [] == [slug for slug in setups() if not re.fullmatch(r"[a-z]+(-[a-z]+)*", slug)]
    assert set() == {"static", "worker", "manifest", "index"} & set(setups())


@pytest.fixture
def found(monkeypatch: pytest.MonkeyPatch):  # type: ignore[no-untyped-def]
    """Finds these setups in place of the real ones."""

    def find(*made: Setup) -> dict[str, Setup]:
        modules = {f"shopcalc.setups.m{place}": types.SimpleNamespace(setup=setup) for place, setup in enumerate(made)}
        monkeypatch.setattr(catalogue.pkgutil, "iter_modules", lambda path: [types.SimpleNamespace(name=name.rsplit(".")[-1]) for name in modules])
        monkeypatch.setattr(catalogue.importlib, "import_module", modules.__getitem__)
        return dict(catalogue.setups.__wrapped__())

    return find


def page(slug: str) -> Setup:
    """A whole page."""
    setup = Setup(slug=slug, title=slug, stand="at the desk", job="A job.")
    setup.setting("double", "Double", 2 * setup.length("stock", "Stock", "1", "Calipers."))
    setup.source("Geometry.")
    return setup


def test_setups_are_known_by_their_slugs(found) -> None:  # type: ignore[no-untyped-def]
    """What is found is known by its slug."""
    assert ["one", "two"] == list(found(page("one"), page("two")))


def test_two_of_one_slug_are_refused(found) -> None:  # type: ignore[no-untyped-def]
    """Two setups cannot share an address."""
    with pytest.raises(DeclarationError, match="two setups are called 'one'"):
        found(page("one"), page("one"))


def test_a_way_to_nowhere_is_refused(found) -> None:  # type: ignore[no-untyped-def]
    """A setup leads on only to setups that are there."""
    one = page("one")
    one.onward("three", "On", stock=next(iter(one.results["double"].formula.free_symbols)))
    with pytest.raises(DeclarationError, match="one leads on to 'three', which is no setup"):
        found(one, page("two"))


def test_a_way_on_with_a_name_too_many_is_refused(found) -> None:  # type: ignore[no-untyped-def]
    """What is carried along must be an input of the setup it is carried to."""
    one = page("one")
    one.onward("two", "On", depth=next(iter(one.results["double"].formula.free_symbols)))
    with pytest.raises(DeclarationError, match="one carries 'depth' on to two, which has no such input"):
        found(one, page("two"))


def test_an_unfinished_page_is_refused(found) -> None:  # type: ignore[no-untyped-def]
    """A page that is not whole is not served."""
    unfinished = page("one")
    unfinished.sources.clear()
    with pytest.raises(DeclarationError, match="one: no source is given"):
        found(unfinished)


@pytest.mark.parametrize("slug", setups())
def test_every_setup_has_a_small_drawing(slug: str) -> None:
    """It is one short path of lines within the box of 24 by 24, with none of the others' shape."""
    icon = setups()[slug].icon
    absolute = [float(number) for number in re.findall(r"[ML]([\d.]+) ([\d.]+)", icon) for number in number]

    assert re.fullmatch(r"M[MLHVAZmlhvaz0-9 .-]+", icon)
    assert len(icon) <= 70
    assert absolute and all(0 <= each <= 24 for each in absolute)
    assert [slug] == [each for each, setup in setups().items() if setup.icon == icon]


@pytest.mark.parametrize("icon", ['M1 1"/><script>', "url(x)", "M1 1&#34;"])
def test_a_drawing_that_is_no_path_is_refused(icon: str) -> None:
    """It stands in a page as it is, so it is nothing but a path."""
    with pytest.raises(DeclarationError, match="its icon is not the data of a path"):
        Setup("a", "A", "at the saw", "job", icon=icon)


def test_the_address_of_another_page_is_refused() -> None:
    """No setup is called as a page that is no card."""
    with pytest.raises(DeclarationError, match="the address is that of another page"):
        Setup("shop", "A", "at the saw", "job")
