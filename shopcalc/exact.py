"""The server's side of a card: the portable code over exact fractions."""

import json
import re
from collections.abc import Mapping
from functools import cache
from typing import Any

from shopcalc import __version__
from shopcalc.catalogue import setups
from shopcalc.declare import Setup
from shopcalc.describe import describe, describe_runs
from shopcalc.formulas import compile_exact
from shopcalc.numbers import NUMBERS
from shopcalc.parts import STAGES, STANDS
from shopcalc.portable.answer import respond, respond_document
from shopcalc.reference.cautions import CAUTIONS
from shopcalc.units import length_factors


def make_world(found: Mapping[str, Setup]) -> dict[str, Any]:
    """The world of the portable code, over exact fractions, for the setups given."""
    return {
        "version": __version__,
        "numbers": NUMBERS,
        "units": length_factors(),
        "stands": list(STANDS),
        "stages": list(STAGES),
        "runs": describe_runs(),
        "cautions": {machine: list(texts) for machine, texts in CAUTIONS.items()},
        "laid": {"key": "", "laid": []},
        "setups": {slug: {"about": describe(setup), "formulas": compile_exact(setup.formulas())} for slug, setup in found.items()},
    }


def _plain_name(name: str) -> str:
    """A name of the query that is safe as a key in both runtimes; `static/brain.js` does the same."""
    return name if re.fullmatch(r"[a-z][a-z0-9_]*", name) and name != "constructor" else "~" + name


@cache
def world() -> dict[str, Any]:
    """The world of all setups."""
    return make_world(setups())


def answer(path: str, query: Mapping[str, str], part: str = "") -> dict[str, Any]:
    """What `respond` in `shopcalc/portable/answer.py` gives for a request, exactly."""
    found: dict[str, Any] = respond(world(), path, {_plain_name(name): text for name, text in query.items()}, part)  # type: ignore[no-untyped-call]
    return found


def _no_number(name: str) -> None:
    """NaN and Infinity, which Python would read and JSON does not have."""
    raise ValueError(name)


def answer_document(path: str, text: str) -> dict[str, Any]:
    """What `respond_document` gives for a job sent as JSON text; a text that is no JSON is a job refused."""
    try:
        document = json.loads(text, parse_constant=_no_number)
        # half a character, which JSON can name, cannot be shown
        json.dumps(document, ensure_ascii=False).encode()
    except (ValueError, RecursionError):
        document = None
    found: dict[str, Any] = respond_document(world(), path, document)  # type: ignore[no-untyped-call]
    return found
