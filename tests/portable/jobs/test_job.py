"""The document of a job: what is taken, what is refused, and where the reason points."""

import json
import re
from copy import deepcopy
from typing import Any

import jsonschema
import pytest
from py_mini_racer import MiniRacer

from shopcalc import exact, files
from shopcalc.portable.jobs.job import ITEM_KEYS, JOB_KEYS, LOOSE_KEYS, LUMBER_KEYS, read_job
from shopcalc.portable.jobs.jobform import DEEPEST

from ...helpers import run

SCHEMA = json.loads(files.static_text("job.schema.json"))
BOATHOUSE = json.loads(files.static_text("boathouse.json"))
LEAST = {"format": "shopcalc job", "version": 1}
ITEM = {"id": 1, "setup": "tenon", "label": "Rail", "quantity": 2, "inputs": {"stock": "1 3/8"}}

# a document, the place of its fault, a word of the reason, and whether the schema can see the fault too
REFUSED: list[tuple[Any, str, str, bool]] = [
    (None, "", "no JSON", True),
    ([], "", "a list", True),
    ("job", "", "a text", True),
    ({}, "format", "no job of shopcalc", True),
    ({**LEAST, "format": "another"}, "format", "no job of shopcalc", True),
    ({"format": "shopcalc job"}, "version", "missing", True),
    ({**LEAST, "version": "1"}, "version", "a number", True),
    ({**LEAST, "version": 0}, "version", "whole number", True),
    ({**LEAST, "version": 1.5}, "version", "whole number", True),
    ({**LEAST, "version": 2}, "version", "newer shopcalc", True),
    ({**LEAST, "colour": "chalk"}, "", "colour", True),
    ({**LEAST, "title": 7}, "title", "a text", True),
    ({**LEAST, "title": "x" * 121}, "title", "longer than 120", True),
    ({**LEAST, "notes": None}, "notes", "null", True),
    ({**LEAST, "shop": []}, "shop", "an object", True),
    ({**LEAST, "shop": {"__proto__": "1"}}, "shop, __proto__", "cannot be a name", False),
    ({**LEAST, "shop": {"constructor": "1"}}, "shop, constructor", "cannot be a name", False),
    ({**LEAST, "shop": {"units": "MM"}}, "shop, units", "in or mm", True),
    ({**LEAST, "shop": {"tape": "7"}}, "shop, tape", "marked in one of", True),
    ({**LEAST, "readings": {"1/groove/groove": 3}}, "readings, 1/groove/groove", "a text", True),
    ({**LEAST, "ticks": {"Ö": "1"}}, "ticks, Ö", "cannot be a name", True),
    ({**LEAST, "items": {}}, "items", "a list", True),
    ({**LEAST, "items": [3]}, "items 1", "an object", True),
    ({**LEAST, "items": [ITEM] * 201}, "items", "more than 200", True),
    ({**LEAST, "items": [{**ITEM, "id": True}]}, "items 1, id", "true or false", True),
    ({**LEAST, "items": [{**ITEM, "id": 1.0000000001}]}, "items 1, id", "whole number", True),
    ({**LEAST, "items": [{**ITEM, "quantity": 0}]}, "items 1, quantity", "from 1 to 999", True),
    ({**LEAST, "items": [{**ITEM, "quantity": -2}]}, "items 1, quantity", "from 1 to 999", True),
    ({**LEAST, "items": [{**ITEM, "setup": "nonsense"}]}, "items 1, setup", "no card called", False),
    ({**LEAST, "items": [{**ITEM, "setup": "constructor"}]}, "items 1, setup", "no card called", False),
    ({**LEAST, "items": [{**ITEM, "setup": "boards", "inputs": {}}]}, "items 1, setup", "no place in a job", False),
    ({**LEAST, "items": [{**ITEM, "inputs": {"colour": "1"}}]}, "items 1, inputs", "no input", False),
    ({**LEAST, "items": [{**ITEM, "inputs": {"stock": 1.375}}]}, "items 1, inputs, stock", "a text", True),
    ({**LEAST, "items": [ITEM, {**ITEM, "quantity": 1}]}, "items 2, id", "Another item", False),
    ({**LEAST, "parts": [{"label": "Leg", "count": 1000}]}, "parts 1, count", "from 1 to 999", True),
    ({**LEAST, "lumber": [{"grade": "A"}]}, "lumber 1", "grade", True),
    ({**LEAST, "lumber": [{"width": 4}]}, "lumber 1, width", "a text", True),
]


def taken(document: Any) -> dict[str, Any]:
    """What the server says of a document."""
    return dict(read_job(document, exact.world()))


def test_the_least_job_is_taken_and_filled_in() -> None:
    """A job that says only what it is gets every field that the rest of the program reads."""
    found = taken(dict(LEAST))

    assert found["ok"]
    assert sorted(found["job"]) == sorted(JOB_KEYS)


def test_a_job_that_says_no_kerf_has_that_of_its_shop() -> None:
    """The blade is the shop's; a shop that says none has the usual one."""
    assert ["3/32", "1/16", "1/8 in"] == [
        taken({**LEAST, **fields})["job"]["kerf"] for fields in ({"shop": {"kerf": "3/32"}}, {"shop": {"kerf": "3/32"}, "kerf": "1/16"}, {})
    ]


def test_an_item_without_a_name_is_called_by_its_card() -> None:
    """A label may be left out."""
    found = taken({**LEAST, "items": [{"id": 1, "setup": "tenon"}]})

    assert found["job"]["items"] == [{"id": 1, "setup": "tenon", "label": "Stub tenon", "quantity": 1, "inputs": {}}]


@pytest.mark.parametrize(("document", "place", "why", "seen"), REFUSED)
def test_what_is_no_job_is_refused_at_its_place(document: Any, place: str, why: str, seen: bool) -> None:
    """Each fault is named where it is."""
    found = taken(deepcopy(document))

    assert not found["ok"]
    assert found["place"] == place
    assert why in found["why"]


@pytest.mark.parametrize(("document", "place", "why", "seen"), REFUSED)
def test_the_phone_refuses_the_same_for_the_same_reason(document: Any, place: str, why: str, seen: bool, phone_brain: Any) -> None:
    """Both sides say the same words."""
    assert run(phone_brain, "read_job(JSON.parse(given[0]), world)", json.dumps(document)) == taken(deepcopy(document))


@pytest.mark.parametrize(("document", "place", "why", "seen"), REFUSED)
def test_the_published_schema_refuses_what_it_can_see(document: Any, place: str, why: str, seen: bool) -> None:
    """A general validator of JSON Schema agrees on every fault that does not need the cards."""
    if seen:
        with pytest.raises(jsonschema.ValidationError):
            jsonschema.validate(document, SCHEMA)


def test_the_boathouse_keeps_to_the_schema() -> None:
    """The demo is a document like any other."""
    jsonschema.validate(BOATHOUSE, SCHEMA)
    assert taken(deepcopy(BOATHOUSE))["ok"]


def test_what_is_taken_keeps_to_the_schema_again() -> None:
    """A job that was filled in is still a job."""
    jsonschema.validate(taken(deepcopy(BOATHOUSE))["job"], SCHEMA)


def test_the_schema_knows_the_fields_that_the_program_knows() -> None:
    """Neither has a field that the other lacks."""
    defs = SCHEMA["$defs"]

    assert sorted(SCHEMA["properties"]) == sorted(JOB_KEYS)
    assert sorted(defs["item"]["properties"]) == sorted(ITEM_KEYS)
    assert sorted(defs["part"]["properties"]) == sorted(LOOSE_KEYS)
    assert sorted(defs["lumber"]["properties"]) == sorted(LUMBER_KEYS)


@pytest.mark.parametrize("name", ["\U0001f600" * 50, "x" + "\U0001f600" * 50, "y" * 50])
def test_a_long_name_is_cut_at_the_same_letter_on_both_sides(name: str, phone_brain: MiniRacer) -> None:
    """A rare character counts once, as in the schema, and is never cut in half."""
    document = {**LEAST, "items": [{**ITEM, "setup": name}]}
    why = read_job(document, exact.world())["why"]

    assert why == run(phone_brain, "read_job(given[0], world).why", document)
    assert name[:19] in why and name[:41] not in why


@pytest.mark.parametrize(
    "text",
    [
        '{"format": "shopcalc job", "version": 1, "b": 1, "7": 2}',
        '{"format": "shopcalc job", "version": 1, "readings": {"!": "x", "7": 5}}',
        "[" * 2000 + "]" * 2000,
        '{"format": "shopcalc job", "version": 1, "notes": ' + '{"a":' * 30 + "1" + "}" * 30 + "}",
        '{"format": "shopcalc job", "version": 1, "notes": "' + "[{" * 30 + '"}',
        '"' + '\\\\"' * 30000,
    ],
    ids=["an unknown name that is a number", "a reading named by one", "brackets", "objects", "brackets in a note", "a text that does not end"],
)
def test_an_odd_document_is_refused_or_taken_alike(text: str, phone_brain: MiniRacer) -> None:
    """The first fault is the same on both sides, whatever the order in which each keeps its names, and however deep brackets are nested."""
    server = json.loads(json.dumps(exact.answer_document("/job.json", text)["data"], default=float))

    assert server == run(phone_brain, "decideDocument('/job.json', given[0]).data", text)


@pytest.mark.parametrize(("deep", "why"), [(DEEPEST - 1, "a list"), (DEEPEST, "no JSON")])
def test_brackets_are_looked_at_so_deep_and_no_deeper(deep: int, why: str, phone_brain: MiniRacer) -> None:
    """On both sides: with one more, that of the job itself, a text is no JSON to either."""
    text = '{"format": "shopcalc job", "version": 1, "notes": ' + "[" * deep + "]" * deep + "}"
    server = exact.answer_document("/job.json", text)["data"]["errors"]

    assert why in " ".join(server.values())
    assert server == run(phone_brain, "decideDocument('/job.json', given[0]).data.errors", text)


FIELDS = ["title", "notes", "label", "reading", "size"]


def longest(field: str, letters: int) -> dict[str, Any]:
    """A job with a text of so many letters in one of its fields."""
    text = "1" * letters
    odd = {"title": {"title": text}, "notes": {"notes": text}, "size": {"trim": text}, "reading": {"readings": {"1/groove/groove": text}}}
    return {**LEAST, "items": [{**ITEM, "label": text}]} if field == "label" else {**LEAST, **odd[field]}


@pytest.mark.parametrize("field", FIELDS)
def test_a_field_of_the_page_takes_as_much_as_the_job(field: str) -> None:
    """As many letters as the field holds are taken, by the schema too, and one more is refused: nothing can be typed that is refused whole."""
    page = files.templates()["jobfield" if field == "size" else "work"]
    mark = {"title": 'id="job-title"', "notes": 'id="job-notes"', "label": 'id="label-{{id}}"', "reading": 'id="reading-{{place}}"'}.get(
        field, "<input"
    )
    most = int(re.search(rf'{re.escape(mark)}[^>]*? maxlength="(\d+)"', page)[1])  # type: ignore[index]

    assert (True, False) == tuple(taken(longest(field, letters))["ok"] for letters in (most, most + 1))
    jsonschema.validate(longest(field, most), SCHEMA)
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(longest(field, most + 1), SCHEMA)


@pytest.mark.parametrize(("letters", "taken"), [(400, True), (401, False)])
def test_an_entry_has_at_most_so_many_letters(letters: int, taken: bool) -> None:
    """One more is refused, and said where."""
    item = {"id": 1, "setup": "groove", "inputs": {"stock": "1" * letters}}
    found = read_job({"format": "shopcalc job", "version": 1, "items": [item]}, exact.world())

    assert taken == found["ok"]
    assert taken or "items 1, inputs, stock" == found["place"]
