"""The server's side of a card: the portable code over exact fractions."""

import json
import re
from collections.abc import Iterable, Mapping
from functools import cache
from typing import Any

from shopcalc import __version__
from shopcalc.catalogue import setups
from shopcalc.declare import Setup
from shopcalc.describe import describe, describe_runs
from shopcalc.formulas import compile_exact
from shopcalc.numbers import NUMBERS
from shopcalc.portable.answer import name_at, respond, respond_document
from shopcalc.portable.jobs.jobform import DEEPEST
from shopcalc.records import STAGES, STANDS
from shopcalc.reference.cautions import CAUTIONS
from shopcalc.reference.lumber import dressed_sizes
from shopcalc.units import length_factors

LONGEST_NUMBER = 400


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
        "lumber": dressed_sizes(),
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


def answer(path: str, query: Mapping[str, str] | Iterable[tuple[str, str]], part: str = "") -> dict[str, Any]:
    """What `respond` in `shopcalc/portable/answer.py` gives for a request, exactly; `decide` in `static/brain.js` does the same.

    `query` are names and texts. Of a name given twice a page takes the first text, and data are refused.
    """
    typed: dict[str, str] = {}
    twice = set()
    for name, text in query.items() if isinstance(query, Mapping) else query:
        plain = _plain_name(name)
        if plain in typed:
            twice.add(plain)
        typed.setdefault(plain, text)
    found: dict[str, Any] = respond(world(), path, typed, part)  # type: ignore[no-untyped-call]
    if "data" not in found or found["status"] == 404:
        return found
    errors = found["data"].get("errors", {}) | {name: "This is given twice." for name in typed if name in twice}
    return {"status": 422, "data": {"errors": _as_typed(errors)}} if errors else found


def lays_boards(path: str) -> bool:
    """Whether the card at a path lays parts on boards, which may take seconds where a card takes milliseconds."""
    setup = setups().get(name_at(path).removesuffix(".json"))  # type: ignore[no-untyped-call]
    return setup is not None and any(each.kind == "pieces" for each in setup.inputs.values())


def _as_typed(errors: Mapping[str, str]) -> dict[str, str]:
    """Errors by the names as they were typed."""
    return _in_phone_order([(name.removeprefix("~"), message) for name, message in errors.items()])


def _in_phone_order(pairs: Iterable[tuple[str, Any]]) -> dict[str, Any]:
    """An object with its whole numbers first, as every object of the phone has them."""
    given = dict(pairs)
    numbers = [name for name in given if re.fullmatch(r"0|[1-9][0-9]{0,9}", name) and int(name) < 2**32 - 1]
    return {name: given[name] for name in [*sorted(numbers, key=int), *given]}


def _no_number(name: str) -> None:
    """NaN and Infinity, which Python would read and JSON does not have."""
    raise ValueError(name)


def _int_of(digits: str) -> int:
    """A whole number; of one that is longer than Python reads the beginning, which is too large for every field as well."""
    return int(digits[:LONGEST_NUMBER])


def _is_deep(text: str) -> bool:
    """Whether brackets are nested past what a job can hold, and past what a reader of JSON bears; `static/brain.js` does the same."""
    depth = 0
    for found in re.finditer(r'"(?:[^"\\]+|\\.)*"?|[\[\]{}]', text, re.DOTALL):
        depth += found[0] in "[{"
        depth -= found[0] in "]}"
        if depth > DEEPEST:
            return True
    return False


def answer_document(path: str, text: str) -> dict[str, Any]:
    """What `respond_document` gives for a job sent as JSON text; one that is no JSON, or nested beyond all jobs, is refused."""
    try:
        document = None if _is_deep(text) else json.loads(text, parse_int=_int_of, parse_constant=_no_number, object_pairs_hook=_in_phone_order)
        # half a character, which JSON can name, cannot be shown
        json.dumps(document, ensure_ascii=False).encode()
    except ValueError:
        document = None
    found: dict[str, Any] = respond_document(world(), path, document)  # type: ignore[no-untyped-call]
    return found
