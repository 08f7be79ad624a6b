"""The phone says what the server says: thousands of entries through both, and everything they show compared."""

import json
import random
from functools import cache
from typing import Any

import pytest
from py_mini_racer import MiniRacer

from shopcalc import exact
from shopcalc.catalogue import setups
from shopcalc.portable.cards.bench import read_and_set
from shopcalc.portable.cards.work import read_shop
from shopcalc.portable.jobs.operations import worked_operations
from shopcalc.records import Result, symbols_of
from shopcalc.render import render

from .helpers import MARKED, fold, run, unlike
from .typed import queries

pytestmark = pytest.mark.sweep

COUNT = 2000
SOME = 1000
BATCH = 50
PARTS = ["", "opening", "rest", "answer", "sheet"]

ASKED = """given[0].map(([path, query, part]) => {
    const found = decide(path, query, part);
    const html = Mustache.render(TEMPLATES[found.template], found.view, TEMPLATES).replace(/\\s+/g, ' ').trim();
    const data = part === '' ? decide(path + '.json', query, '') : null;
    return { status: found.status, template: found.template, view: found.view, html, data };
})"""

# A text each, to be compared as it is: read back into values only where it differs. Only data may hold a `null` that a
# number that is none could hide behind.
TEXTS = f"{ASKED}.map(each => each.data === null ? JSON.stringify(each) : JSON.stringify(each, {MARKED}))"


def in_pairs(batch: list[tuple[str, dict[str, str], str]]) -> list[list[Any]]:
    """The requests with their queries as pairs, which keep their order in JavaScript whatever the names."""
    return [[path, list(query.items()), part] for path, query, part in batch]


# what entries by chance hardly ever meet
RARE: dict[str, list[dict[str, str]]] = {
    "compound": [{"sides": "3", "lean": "10", "measured_face": "75", "measured_edge": "33"}] * 3,
    "dado-stack": [
        {"target": "0.751", "clearance": "0", "chippers": "1/8, 5/32, 1/8, 3/32", "shims": "0.004", "under": "0.01", "measured_dado": "47/64"},
        {"shims": ", ".join(f"0.00{size * size}" for size in range(107, 107 + 12))},
        {"chippers": ", ".join(f"0.0{size * size}" for size in range(307, 307 + 12))},
        {"target": "0.84", "clearance": "0", "arbor": "1", "measured_dado": "0.86"},
    ]
    * 3,
    "gauge-stack": [
        {"blocks": ", ".join(f"0.{size * size:06}" for size in range(307, 307 + 40))},
        *({"blocks": ", ".join(f"{size}/64" for size in range(4, 44)), "height": height, "most": "40"} for height in ("0.7", "2.3", "14")),
    ]
    * 2,
    "frame": [
        {"foot": "shed", "opening_width": "5 1/2"},
        {"cutter": "1/4", "measured_groove": "0.252"},
        {"groove_width": "5/16", "cutter": "5/32", "measured_groove": "0.32"},
        {"opening_height": "7 1/2", "top_rail": "1 1/2", "bottom_rail": "1 1/2", "horn": "0"},
    ]
    * 3,
    "groove": [{"measured_groove": "0.252"}, {"groove_width": "1/4", "cutter": "1/8", "measured_groove": "0.262"}] * 3,
    "screw": [{"gauge": "8", "measured_body": "0.169"}] * 3,
}


@cache
def asked(slug: str) -> list[tuple[str, dict[str, str], str]]:
    """The requests of a setup's sweep, always the same."""
    inputs = exact.world()["setups"][slug]["about"]["inputs"]
    rng = random.Random(slug)
    typed = [*RARE.get(slug, []), *queries(inputs, COUNT, rng)]
    return [("/" + slug, query, PARTS[place % len(PARTS)]) for place, query in enumerate(typed)]


def differences(server: dict[str, Any], text: str) -> list[str]:
    """How the phone's answer to one request, as JSON, differs from the server's; mostly not in a letter."""
    if json.dumps(server, ensure_ascii=False, separators=(",", ":")) == text:
        return []
    phone = json.loads(text)
    return unlike(server, {**phone, "html": fold(phone["html"])})


def answered(path: str, query: dict[str, str], part: str) -> dict[str, Any]:
    """The server's answer, rendered, and of whole pages the same as data. White space is folded on both sides."""
    found = exact.answer(path, query, part)
    data = json.loads(json.dumps(exact.answer(path + ".json", query))) if part == "" else None
    return {**found, "html": fold(render(found["template"], found["view"])), "data": data}


@pytest.fixture(scope="module", params=setups())
def compared(request: pytest.FixtureRequest, phone_brain: MiniRacer) -> tuple[list[Any], set[type]]:
    """Of a setup's sweep what differs between both sides, and the types of what the server's views hold."""
    requests = asked(request.param)
    found: list[Any] = []
    kinds: set[type] = set()
    for start in range(0, len(requests), BATCH):
        batch = requests[start : start + BATCH]
        for each, phone in zip(batch, run(phone_brain, TEXTS, in_pairs(batch)), strict=True):
            server = answered(*each)
            found += [(each, fault) for fault in differences(server, phone)]
            # what a view is made of is not a matter of numbers: the first few of each setup show it
            if start < 4 * BATCH:
                kinds |= kinds_in(server["view"])
    return found, kinds


def test_phone_shows_what_the_server_shows(compared: tuple[list[Any], set[type]]) -> None:
    """Status, view, HTML and data of every request are the same on both sides."""
    assert compared[0][:10] == []


def test_views_hold_nothing_to_format(compared: tuple[list[Any], set[type]]) -> None:
    """A view is made of texts, truths, lists and dictionaries: no number is left for a template to write its own way."""
    assert {str, bool, list, dict} == compared[1]


def kinds_in(value: Any) -> set[type]:
    """The types of everything inside a view."""
    inside = value.values() if isinstance(value, dict) else value if isinstance(value, list) else []
    return {type(value)}.union(*(kinds_in(each) for each in inside))


RUN = """given[0].map(([slug, query]) =>
    read_and_set(world, slug, query, read_shop(query)).benches.map(bench => worked_operations(bench)))"""


def runs_of(slug: str, query: dict[str, str]) -> list[Any]:
    """The operations of a card as the server works them out, in a list; nothing in it while an entry is wrong."""
    benches = read_and_set(exact.world(), slug, query, read_shop(query))["benches"]  # type: ignore[no-untyped-call]
    return [worked_operations(bench) for bench in benches]  # type: ignore[no-untyped-call]


@pytest.mark.parametrize("slug", setups())
def test_phone_runs_what_the_server_runs(slug: str, phone_brain: MiniRacer) -> None:
    """The operations of every request are the same on both sides; each is reached, and no reading has two boxes at once."""
    queries = [query for _, query, _ in asked(slug)[: 1500 if setups()[slug].includes else 400]]
    found = []
    reached = set()
    for start in range(0, len(queries), BATCH):
        batch = queries[start : start + BATCH]
        for query, phone in zip(batch, run(phone_brain, RUN, [[slug, query] for query in batch]), strict=True):
            server = runs_of(slug, query)
            found += [(query, fault) for fault in unlike(server, phone)]
            operations = [operation for each in server for operation in each]
            reached |= {operation["name"] for operation in operations}
            readings = [operation["reading"] for operation in operations if operation["reading"]]
            found += [(query, "read twice") for _ in readings[len(set(readings)) :]]

    assert [] == found[:10]
    assert set() == set(setups()[slug].operations) - reached


def unexplained(about: dict[str, Any], results: dict[str, Result], data: dict[str, Any]) -> list[str]:
    """The results that are absent though no check took them, no condition withholds them and no reading is awaited."""
    called = {result["known_as"] or name: name for name, result in about["results"].items()}
    known = {*data["inputs"], *(called.get(name, name) for name in data["results"])}
    # a stop of a card inside this one takes nothing from it
    taken = {name for check in data["checks"] for name in about["checks"].get(check["name"], {"spoils": []})["spoils"]}
    awaited = {each["name"] for each in about["inputs"] if each["reading"]} - known
    faults = []
    for name, result in about["results"].items():
        if name in known or result["role"] == "inner":
            continue
        if name in taken or result["when"] or awaited & {symbol.name for symbol in symbols_of(results[name].formula)}:
            awaited.add(name)
        else:
            faults.append(name)
    return faults


@pytest.fixture(scope="module", params=setups())
def swept(request: pytest.FixtureRequest) -> tuple[str, list[tuple[dict[str, str], dict[str, Any]]]]:
    """A setup, and of its sweep every query that can be worked out, with its data; worked out once for the tests that look at it."""
    answers = [(query, exact.answer(path + ".json", query)) for path, query, _ in asked(request.param)[:SOME]]
    return request.param, [(query, answer["data"]) for query, answer in answers if answer["status"] == 200]


def test_no_result_goes_missing_without_a_word(swept: tuple[str, list[tuple[dict[str, str], dict[str, Any]]]]) -> None:
    """A result is absent only because of a stop or a note, a condition of its own, or a reading not yet taken."""
    slug, worked = swept
    about = exact.world()["setups"][slug]["about"]
    found = [(query, name) for query, data in worked for name in unexplained(about, setups()[slug].results, data)]

    assert found[:10] == []


def test_the_sweep_reaches_every_check(swept: tuple[str, list[tuple[dict[str, str], dict[str, Any]]]]) -> None:
    """Among the generated entries each check of the setup holds at least once, and at least a third of them can be worked out."""
    slug, worked = swept
    about = exact.world()["setups"][slug]["about"]

    assert set() == set(about["checks"]) - {check["name"] for _, data in worked for check in data["checks"]}
    assert len(worked) > SOME / 3


AWKWARD = {
    "a name that every object has": ("/groove", {"constructor": "1"}),
    "unknown names that look like numbers": ("/groove", {"second": "1", "7": "2"}),
    "a billionth too wide": ("/groove", {"groove_width": "0.375", "cutter": "0.375000001"}),
    "a billionth of an inch past a mark": ("/fractions", {"entry": "1.000000001/64"}),
    "a small difference made large": ("/fractions", {"entry": "(1/3 - 0.33333333) * 1000000 * 100000"}),
    "a steep slope over a long base": ("/angle", {"angle": "10 in 1", "base": "120", "tape": "128"}),
    "a slope over less than nothing": ("/angle", {"angle": "5:1-2"}),
    "a degree's millionth from upright": ("/angle", {"angle": "89.999999", "base": "120"}),
    "nothing at all": ("/tenon", {"stock": "", "fit": "", "measured_tenon": " "}),
    "markup": ("/tenon", {"stock": "<script>alert('1')</script>", '"><b>': "&amp;"}),
    "an address that is a word of JavaScript": ("/constructor", {}),
    "an address with a slash more": ("/tenon/", {}),
    "the first page": ("/", {"tape": "8"}),
    "the shop": ("/shop", {"kerf": "3/32", "shims": "0.1 mm; .2", "units": "mm", "stock": "2"}),
    "a shop with a wrong kerf": ("/shop", {"kerf": "thick", "tape": "64"}),
}


@pytest.mark.parametrize("what", AWKWARD)
def test_awkward_requests_are_answered_alike(what: str, phone_brain: MiniRacer) -> None:
    """What an eager tester types is answered on the phone as on the server."""
    path, query = AWKWARD[what]

    assert [] == differences(answered(path, query, ""), run(phone_brain, TEXTS, in_pairs([(path, query, "")]))[0])
