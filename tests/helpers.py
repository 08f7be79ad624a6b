"""What several tests need: calls into the phone's JavaScript, comparing what comes back, and what to do where a browser is missing."""

import json
import os
from collections.abc import Mapping
from fractions import Fraction
from numbers import Real
from typing import Any, NoReturn

import pytest
from py_mini_racer import MiniRacer

from shopcalc import exact
from shopcalc.numbers import NUMBERS
from shopcalc.portable.cards.bench import read_and_set
from shopcalc.portable.cards.work import read_shop
from shopcalc.units import length_factors

# JSON has no NaN, no Infinity and no undefined, and would hide all three.
MARKED = """(key, value) =>
    value === undefined ? { $odd: 'undefined' } :
    typeof value === 'number' && !Number.isFinite(value) ? { $odd: String(value) } : value"""

UNITS = length_factors()
INCH_SHOP = {"metric": False, "division": 32}
MM_SHOP = {"metric": True, "division": 32}


def without(reason: str) -> NoReturn:
    """Skip on a reader's machine; fail in CI, where a browser that is missing would go unnoticed."""
    if os.environ.get("CI") == "true":
        pytest.fail(f"{reason}, and CI=true")
    pytest.skip(reason)


def fold(html: str) -> str:
    """`html` with each run of white space as one space."""
    return " ".join(html.split())


def run(brain: MiniRacer, expression: str, *given: Any) -> Any:
    """What a JavaScript expression over the list `given` comes to; odd numbers come back as `{"$odd": name}`."""
    text = json.dumps(json.dumps(given))
    return json.loads(str(brain.eval(f"(given => JSON.stringify({expression}, {MARKED}))(JSON.parse({text}))")))


def phone_answer(brain: MiniRacer, path: str, query: Mapping[str, str], part: str = "") -> dict[str, Any]:
    """The phone's answer to a request: status, type and body."""
    return dict(run(brain, "answer(...given)", path, list(query.items()), part))


def phone_respond(brain: MiniRacer, path: str, query: Mapping[str, str], part: str = "") -> dict[str, Any]:
    """The phone's answer to a request before it is rendered."""
    return dict(run(brain, "decide(...given)", path, list(query.items()), part))


def worked(slug: str, **typed: str) -> dict[str, Any]:
    """A card as data, worked out on the server from what is typed."""
    found = exact.answer(f"/{slug}.json", typed)
    if found["status"] != 200:
        raise AssertionError(found["data"]["errors"])
    return dict(found["data"])


def bench_of(slug: str, **typed: str) -> dict[str, Any]:
    """The bench of a card, set on the server from what is typed."""
    return dict(read_and_set(exact.world(), slug, typed, read_shop(typed))["benches"][0])


def value(data: dict[str, Any], name: str) -> Any:
    """One result's value out of a card's data."""
    return data["results"][name]["value"]


def raised(data: dict[str, Any]) -> set[str]:
    """The names of the checks that hold on a card."""
    return {check["name"] for check in data["checks"]}


def exactly(text: str) -> Fraction:
    """A number as the server holds it: `"17/32"`, `"1 3/8"` or `"0.1"`."""
    return sum((Fraction(part) for part in text.split()), Fraction(0))


def close(left: Any, right: Any) -> bool:
    """Whether two numbers agree to a billionth, absolutely or of their size."""
    return abs(left - right) <= 1e-9 * max(1, abs(left), abs(right))


def unlike(server: Any, phone: Any, where: str = "") -> list[str]:
    """Where two answers differ: texts and truths letter for letter, numbers by more than a billionth."""
    if isinstance(server, dict) and isinstance(phone, dict):
        if list(server) != list(phone):
            return [f"{where}: {list(server)} is not {list(phone)}"]
        return [fault for key in server for fault in unlike(server[key], phone[key], f"{where}.{key}")]
    if isinstance(server, list) and isinstance(phone, list):
        if len(server) != len(phone):
            return [f"{where}: {len(server)} is not {len(phone)} long"]
        return [fault for place, pair in enumerate(zip(server, phone, strict=True)) for fault in unlike(*pair, f"{where}[{place}]")]
    if is_number(server) and is_number(phone):
        return [] if close(server, phone) else [f"{where}: {float(server)} is not {phone}"]
    return [] if type(server) is type(phone) and server == phone else [f"{where}: {server!r} is not {phone!r}"]


def is_number(value: Any) -> bool:
    """Whether a value is a number and not a truth."""
    return isinstance(value, Real) and not isinstance(value, bool)


__all__ = [
    "INCH_SHOP", "MARKED", "MM_SHOP", "NUMBERS", "UNITS", "bench_of", "close", "exactly", "fold", "phone_answer", "phone_respond",
    "raised", "run", "unlike", "value", "worked",
]  # fmt: skip
