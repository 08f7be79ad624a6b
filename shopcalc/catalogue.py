"""Finds the setups: every module in `shopcalc/setups/` that declares one. There is no list to keep."""

import importlib
import pkgutil
from functools import cache

import shopcalc.setups
from shopcalc.declare import DeclarationError, Setup


@cache
def setups() -> dict[str, Setup]:
    """All setups by slug, in the order of their slugs.

    Raises DeclarationError for a page that is not whole, two of one slug, or a way on to a card that is not there.
    """
    found: dict[str, Setup] = {}
    for module in sorted(pkgutil.iter_modules(shopcalc.setups.__path__), key=lambda each: each.name):
        setup = importlib.import_module(f"shopcalc.setups.{module.name}").setup.finish()
        if setup.slug in found:
            raise DeclarationError(f"two setups are called {setup.slug!r}")
        found[setup.slug] = setup
    for setup in found.values():
        _check_ways_on(setup, found)
    return found


def _check_ways_on(setup: Setup, found: dict[str, Setup]) -> None:
    for onward in setup.onwards:
        if onward.slug not in found:
            raise DeclarationError(f"{setup.slug} leads on to {onward.slug!r}, which is no setup")
        for name in onward.carry:
            if name not in found[onward.slug].inputs:
                raise DeclarationError(f"{setup.slug} carries {name!r} on to {onward.slug}, which has no such input")
