"""Parts of no card: typed as lines, cut and run like any other."""

import json
from typing import Any

import pytest

from shopcalc import exact
from shopcalc.portable.jobs.job import read_job
from shopcalc.portable.jobs.jobdata import job_data
from shopcalc.portable.jobs.order import work_job
from shopcalc.portable.jobs.own import own_parts

RAIL = {"label": "Bench rail", "count": 2, "length": "60", "width": "2 1/4", "thickness": "1 3/8"}
SASH = {"id": 1, "setup": "frame", "label": "Sash", "quantity": 2, "inputs": {"stock": "1 3/8", "stile": "2 1/4"}}


def job_of(*parts: dict[str, Any], **more: Any) -> dict[str, Any]:
    """A job of these lines, taken."""
    found = read_job({"format": "shopcalc job", "version": 1, "parts": list(parts), **more}, exact.world())
    assert found["ok"], found
    return dict(found["job"])


def runs_of(job: dict[str, Any]) -> list[dict[str, Any]]:
    """The runs of a job, as data."""
    return list(job_data(job, exact.world())["order"])


def test_a_part_is_milled_ripped_and_cut_to_length() -> None:
    """Each run has the line's size as its setting, and the line's count passes."""
    runs = runs_of(job_of(RAIL))

    assert [("mill", "1 3/8 in"), ("rip", "2 1/4 in"), ("crosscut", "60 in")] == [(run["stage"], run["settings"][0]["text"]) for run in runs]
    assert [[("Bench rail", 2)]] * 3 == [[(part["label"], part["count"]) for part in run["parts"]] for run in runs]


def test_a_part_passes_with_those_of_the_cards() -> None:
    """A rail as wide and thick as a sash's stiles is milled and ripped with them."""
    runs = runs_of(job_of(RAIL, items=[SASH]))
    shared = [run for run in runs if {"Bench rail", "Stile"} <= {part["label"] for part in run["parts"]}]

    assert ["Mill to thickness", "Rip to width"] == [run["operation"] for run in shared]


@pytest.mark.parametrize("slip", [{"width": ""}, {"length": "0"}, {"thickness": "thick"}, {"length": "-3"}])
def test_a_line_that_is_not_whole_is_run_nowhere_and_says_why(slip: dict[str, str]) -> None:
    """Half a part is no part."""
    job = job_of({**RAIL, **slip})

    assert [] == runs_of(job)
    assert ["parts 1"] == list(job_data(job, exact.world())["errors"])


def test_an_emptied_line_keeps_the_places_of_the_others() -> None:
    """So a tick stays with its part when a line before it is emptied."""
    empty = {"label": "", "count": 1, "length": "", "width": "", "thickness": ""}
    ticks = {"1000001/part/rip": "2.250 in"}

    for first in (RAIL, empty):
        runs = runs_of(job_of(first, {**RAIL, "label": "Leg", "width": "3"}, ticks=ticks))
        [rip] = [run for run in runs if run["stints"] == ["1000001/part/rip"]]
        assert ["Leg, Fence to blade: cut at 2.250 in, now 3.000 in. What was cut is too small: cut it new."] == rip["changed"]


def test_a_count_that_waits_for_its_part_is_shown_and_no_part_yet() -> None:
    """It stands in its box, and nothing is wrong with it."""
    document = json.dumps({"format": "shopcalc job", "version": 1, "parts": [{"count": 3}]})
    view = exact.answer_document("/job", document)["view"]
    shown = [[field["value"] for field in line["fields"] if field["is_count"]] for line in view["loose"]]

    assert ([["3"], [""]], [], {}) == (shown, view["sections"], exact.answer_document("/job.json", document)["data"]["errors"])


def test_a_part_without_a_name_is_called_a_part() -> None:
    """It has to be called something at the saw."""
    [mill, *_] = runs_of(job_of({**RAIL, "label": ""}))

    assert ["Part"] == [part["label"] for part in mill["parts"]]


def test_the_numbers_of_parts_are_those_of_no_item() -> None:
    """An item's number ends where those of the lines begin."""
    [part] = own_parts(job_of(RAIL), exact.world())["parts"]

    assert part["id"] > 999_999
    assert [] == work_job(job_of(), exact.world())["runs"]


@pytest.mark.parametrize("name", ["2x6", "2 X 4", "5/4x6", "2\u00d76", "2*6", '2x6"', "2 x 6 in", "2x5.5"])
def test_a_yards_name_is_no_thickness(name: str) -> None:
    """Two by six would be twelve inches thick: it is asked for what it measures, of parts and of boards."""
    boards = {"thickness": name, "width": "6", "on_hand": "74", "to_buy": ""}
    errors = job_data(job_of({**RAIL, "thickness": name}, lumber=[boards]), exact.world())["errors"]

    assert ["lumber 1", "parts 1"] == sorted(errors)
    assert all("Type one measure" in message for message in errors.values())


def test_a_sum_is_a_width() -> None:
    """What is no yard's name is worked out."""
    assert {} == job_data(job_of({**RAIL, "width": "1 1/8 + 1 1/8 + 1/4"}), exact.world())["errors"]


def test_a_length_may_be_a_product_and_a_width_may_not() -> None:
    """Twice 4 5/8 in is 9 1/4 in long; as a width it could be a board as a yard calls it."""
    found = own_parts(job_of({**RAIL, "length": "2 x 4 5/8"}, {**RAIL, "width": "2 x 4 5/8"}, {**RAIL, "thickness": "2x6"}), exact.world())

    assert [9.25] == [float(part["length"]) for part in found["parts"]]
    assert ["parts 2", "parts 3"] == sorted(found["errors"])
