"""What the page of a job says."""

import json
from typing import Any

import pytest

from shopcalc import exact, files
from shopcalc.render import render

BOATHOUSE = json.loads(files.static_text("boathouse.json"))


def asked(path: str, **changed: Any) -> dict[str, Any]:
    """The server's answer about the boathouse with some fields changed."""
    return exact.answer_document(path, json.dumps({**BOATHOUSE, **changed}))


def test_an_item_leads_back_to_its_card_with_its_entries() -> None:
    """The address is the card's, with what was typed."""
    view = asked("/job")["view"]

    assert view["items"][0]["address"].startswith("/frame?opening_width=31+1%2F4&opening_height=78&")


def test_an_item_says_what_tells_it_from_others_of_its_card() -> None:
    """The first two lengths that were typed for it, as they were; nothing where none was."""
    typed: list[dict[str, str]] = [{"opening_height": "21", "stile": "", "mid_rails": "0", "stock": "1 3/8", "horn": "1"}, {}]
    view = asked("/job", items=[{**BOATHOUSE["items"][0], "id": place, "inputs": inputs} for place, inputs in enumerate(typed, 1)])["view"]

    assert ["Opening height 21, Stock thickness 1\u00a03/8", ""] == [item["entries"] for item in view["items"]]


def test_an_item_that_is_stopped_says_so() -> None:
    """A frame with no glass left is flagged at its item."""
    items = [{**BOATHOUSE["items"][0], "inputs": {"stile": "20"}}]
    view = asked("/job", items=items)["view"]

    [stop] = view["items"][0]["wrong"]
    assert "Stop" == stop["label"]
    assert "no glass is left" in stop["note"]


def test_the_fewest_is_said_only_when_it_is_proven() -> None:
    """Where strips come from wider boards nothing is claimed."""
    laid = asked("/job")["view"]["laid"]

    assert {one["section"]: one["proven"] for one in laid}["1 3/8 in x 9 in"]
    assert not {one["section"]: one["proven"] for one in laid}["1 3/8 in x 3 in"]


def test_cards_whose_wood_must_be_typed_are_named() -> None:
    """A tenon is cut on a rail that no card gives; hinges are let into what is there already."""
    items = [{"id": 1, "setup": "tenon", "label": "Spare rail"}, {"id": 2, "setup": "hinge-layout"}, {"id": 3, "setup": "slats"}]

    assert "Spare rail" == asked("/job", items=items)["view"]["partless"]
    assert not asked("/job")["view"]["has_partless"]


@pytest.mark.parametrize("text", ["", "{", "[1", '{"format": "shopcalc job", "version": NaN}', '{"title": "\\ud800"}', "[" * 100_000])
def test_a_text_that_is_no_json_is_a_job_refused(text: str) -> None:
    """The server never fails on it."""
    found = exact.answer_document("/job", text)

    assert (found["status"], found["template"]) == (422, "refused")


def test_a_number_of_thousands_of_digits_is_refused_where_it_stands() -> None:
    """Python reads no whole number so long, and a phone reads it as one without end."""
    text = json.dumps({**BOATHOUSE, "version": 0}).replace('"version": 0', '"version": ' + "1" * 5000)

    assert "This should be a whole number from 1 to 999999." == exact.answer_document("/job", text)["view"]["why"]


def test_a_pane_is_as_small_as_its_card_says() -> None:
    """The card rounds a pane down, and so does the cut list."""
    frame = {**BOATHOUSE["items"][0], "inputs": {"stock": "1 3/8", "opening_width": "30 5/64"}}
    card = exact.answer("/frame.json", frame["inputs"])["data"]["results"]["panel_width"]["text"]
    [pane] = [section for section in asked("/job", items=[frame], parts=[])["view"]["sections"] if section["pane"]]

    assert pane["section"].startswith(f"Panes {card.removesuffix(' full')} in")


def test_a_reading_for_a_card_inside_a_card_is_answered_too() -> None:
    """The shoulders of a frame's rails are the tenon's business, which says that half an inch is far off."""
    view = asked("/job", readings={"1/tenon/shoulders": "1/2"})["view"]
    [run] = [run for stage in view["stages"] for run in stage["runs"] if "1/tenon/shoulders" in run["names"]]

    assert any("Blade: off by more than 1/16 in." in each["text"] for each in run["warnings"])


@pytest.mark.parametrize("field", ["kerf", "trim", "rough"])
@pytest.mark.parametrize("typed", ["", "-1", "much"])
def test_nothing_is_laid_while_what_a_cut_takes_cannot_be_read(field: str, typed: str) -> None:
    """A bill for other cuts would be a wrong bill."""
    view = asked("/job", **{field: typed})["view"]

    assert ([], [], []) == (view["laid"], view["buy"], view["rips"])
    assert view["bill"].startswith("No boards are laid")
    assert view[field]["wrong"]


@pytest.mark.parametrize(("reading", "level"), [("1' 2\"", "caution"), ("1/2", "caution"), ("21/64", "note"), ("5/16", "")])
def test_a_reading_that_cannot_be_is_answered_where_it_was_typed(reading: str, level: str) -> None:
    """The run says what the cards say of it: a groove far off, or one that no stock has, had better be measured again."""
    view = asked("/job", readings={"1/groove/groove": reading})["view"]
    [run] = [run for stage in view["stages"] for run in stage["runs"] if "1/groove/groove" in run["names"]]

    assert [each["level"] for each in run["warnings"]] == ([level] if level else [])


def test_no_line_is_offered_that_would_be_refused() -> None:
    """A job of two hundred lines has no room for another."""
    line = {"label": "Leg", "count": 1, "length": "10", "width": "2", "thickness": "1"}

    assert len(asked("/job", parts=[line] * 199)["view"]["loose"]) == 200
    assert len(asked("/job", parts=[line] * 200)["view"]["loose"]) == 200


def test_a_reading_is_of_its_own_kind() -> None:
    """A bevel is read in degrees, where a length is read by the keys of fractions."""
    cap = {"id": 1, "setup": "ridge-cap", "label": "Cap", "quantity": 1, "inputs": {}}
    runs = [run for stage in asked("/job", items=[cap, {**cap, "id": 2, "setup": "groove"}])["view"]["stages"] for run in stage["runs"]]

    assert {run["reading_label"]: run["reading_kind"] for run in runs if run["has_reading"]} == {
        "Bevel as it measures": "angle", "Groove as it measures": "length",
    }  # fmt: skip


def test_a_reading_that_cannot_be_read_is_among_the_errors() -> None:
    """What a script is given names the run, as the page does."""
    assert "readings, 1/groove/groove" in asked("/job.json", readings={"1/groove/groove": "zzz"})["data"]["errors"]


def test_the_bill_says_what_it_has_no_board_for() -> None:
    """Who copies the bill alone learns that it is not all."""
    shelf = {"label": "Shelf", "count": 3, "length": "29 1/2", "width": "7 1/8", "thickness": "3/4"}

    assert asked("/job")["view"]["bill"].startswith("In all 5 to buy")
    assert asked("/job", parts=[shelf])["view"]["bill"].endswith("left over. No board for 3 pieces: see below.")


def test_a_run_that_is_near_is_named_with_what_rounding_did() -> None:
    """2 9/32 scant by a half tick is as near to 2 1/4 as it sounds far."""
    texts = [run["near"] for stage in asked("/job")["view"]["stages"] for run in stage["runs"] if run["is_near"]]

    assert "Within 1/64 in of the run at 2 9/32 in scant by 0.016: if its parts may differ by so little, one setting serves both." in texts


def test_a_done_run_keeps_its_reading_in_sight() -> None:
    """What later settings follow from can be seen where it was measured."""
    view = asked("/job")["view"]
    [run] = [each for stage in view["stages"] for each in stage["runs"] if each["reading"] == "21/64"]
    run["done"] = True

    assert f"{run['reading_label']} <b>21/64</b>" in render("work", view)
