"""The server's side of a card: the portable code over exact fractions."""

from collections.abc import Mapping
from functools import cache
from typing import Any

from shopcalc import __version__
from shopcalc.catalogue import setups
from shopcalc.declare import Setup
from shopcalc.describe import describe
from shopcalc.formulas import compile_exact
from shopcalc.numbers import NUMBERS
from shopcalc.portable.answer import respond
from shopcalc.units import length_factors


def make_world(found: Mapping[str, Setup]) -> dict[str, Any]:
    """The world of the portable code, over exact fractions, for the setups given."""
    return {
        "version": __version__,
        "numbers": NUMBERS,
        "units": length_factors(),
        "setups": {slug: {"about": describe(setup), "formulas": compile_exact(setup.formulas())} for slug, setup in found.items()},
    }


@cache
def world() -> dict[str, Any]:
    """The world of all setups."""
    return make_world(setups())


def answer(path: str, query: Mapping[str, str], part: str = "") -> dict[str, Any]:
    """What `respond` in `shopcalc/portable/answer.py` gives for a request, exactly."""
    found: dict[str, Any] = respond(world(), path, dict(query), part)  # type: ignore[no-untyped-call]
    return found
