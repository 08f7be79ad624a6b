"""What the page of a job says, its data and its CSV."""

import csv
import io
import json
from typing import Any

import pytest

from shopcalc import exact, files
from shopcalc.portable.jobview import csv_field

BOATHOUSE = json.loads(files.static_text("boathouse.json"))


def asked(path: str, **changed: Any) -> dict[str, Any]:
    """The server's answer about the boathouse with some fields changed."""
    return exact.answer_document(path, json.dumps({**BOATHOUSE, **changed}))


def test_an_item_leads_back_to_its_card_with_its_entries() -> None:
    """The address is the card's, with what was typed."""
    view = asked("/job")["view"]

    assert view["items"][0]["address"].startswith("/frame?opening_width=31+1%2F4&opening_height=78&")


def test_an_item_that_is_stopped_says_so() -> None:
    """A frame with no glass left is flagged at its item."""
    items = [{**BOATHOUSE["items"][0], "inputs": {"stile": "20"}}]
    view = asked("/job", items=items)["view"]

    assert view["items"][0]["wrong"] == [{"label": "Stop", "note": "it cannot be made so; its card says why."}]


def test_the_data_has_the_four_parts_that_are_promised() -> None:
    """Order, cuts, boards and errors."""
    data = asked("/job.json")["data"]

    assert list(data) == ["order", "cuts", "boards", "errors"]
    assert data["errors"] == {}
    assert {"stage", "machine", "operation", "settings", "parts", "reading", "done"} <= set(data["order"][0])


def test_the_csv_is_one_that_a_spreadsheet_reads() -> None:
    """The standard library's reader gives back a line for each part."""
    rows = list(csv.reader(io.StringIO(asked("/job.csv")["text"])))

    assert rows[0] == ["Section", "Count", "Part", "Item", "Finished", "Rough", "Finished inches"]
    assert len(rows) - 1 == len(asked("/job.json")["data"]["cuts"])
    assert ["1 3/8 in x 4 1/2 in", "2", "Stile", "Side door", "78 1/2 in", "79 1/2 in", "78.5"] in rows


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1", "@sum", 'a "b", c'])
def test_a_csv_field_is_a_text_whatever_it_holds(text: str) -> None:
    """No field is taken for a formula, and quotes and commas stay inside."""
    [[read]] = list(csv.reader(io.StringIO(csv_field(text))))

    assert read == (text if text[0] not in "=+-@" else "'" + text)


def test_the_fewest_is_said_only_when_it_is_proven() -> None:
    """Where strips come from wider boards nothing is claimed."""
    laid = asked("/job")["view"]["laid"]

    assert {one["section"]: one["proven"] for one in laid}["1 3/8 in x 9 in"]
    assert not {one["section"]: one["proven"] for one in laid}["1 3/8 in x 3 in"]


@pytest.mark.parametrize("text", ["", "{", "[1", '{"format": "shopcalc job", "version": NaN}', '{"title": "\\ud800"}', "[" * 100_000])
def test_a_text_that_is_no_json_is_a_job_refused(text: str) -> None:
    """The server never fails on it."""
    found = exact.answer_document("/job", text)

    assert (found["status"], found["template"]) == (422, "refused")


def test_a_pane_is_as_small_as_its_card_says() -> None:
    """The card rounds a pane down, and so does the cut list."""
    frame = {**BOATHOUSE["items"][0], "inputs": {"stock": "1 3/8", "opening_width": "30 5/64"}}
    card = exact.answer("/frame.json", frame["inputs"])["data"]["results"]["panel_width"]["text"]
    [pane] = [section for section in asked("/job", items=[frame], parts=[])["view"]["sections"] if section["pane"]]

    assert pane["section"].startswith(f"Panes {card.removesuffix(' full')} in")
