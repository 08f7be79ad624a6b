"""What is left out of the lists of a job, and why."""

import csv
import io
import json
from typing import Any

import pytest

from shopcalc import exact

RAIL = {"label": "Rail", "count": 1, "length": "60", "width": "2", "thickness": "3/4"}
BOARDS = {"thickness": "3/4", "width": "2", "on_hand": "", "to_buy": "96"}


def asked(path: str, **fields: Any) -> dict[str, Any]:
    """The answer about a job with these fields."""
    return exact.answer_document(path, json.dumps({"format": "shopcalc job", "version": 1, "parts": [RAIL], "lumber": [BOARDS], **fields}))


def troubles(**fields: Any) -> list[str]:
    """What stands over every list."""
    return [row["label"] + row["text"] for row in asked("/job", **fields)["view"]["troubles"]]


SLIPS_IN_PARTS = [
    ({"parts": [RAIL, {**RAIL, "label": "Leg", "length": "3o"}]}, "Leg is left out. Length: "),
    ({"parts": [{**RAIL, "label": "", "width": ""}]}, "Part 1 is left out. Width: "),
    ({"rough": "1 im"}, "Left long, each part: "),
    ({"items": [{"id": 1, "setup": "frame", "label": "Door", "inputs": {"stock": "x"}}]}, "Door is left out. Stock thickness: "),
]
SLIPS_IN_LUMBER = [
    ({"lumber": [BOARDS, {**BOARDS, "on_hand": "9o"}]}, "Lumber, line 2: On hand: "),
    ({"kerf": "-1"}, "Kerf: "),
]


@pytest.mark.parametrize(("fields", "said"), SLIPS_IN_PARTS + SLIPS_IN_LUMBER)
def test_what_cannot_be_read_is_told_over_every_list(fields: dict[str, Any], said: str) -> None:
    """The item, the line or the length of the job, and what is wrong with it."""
    [told] = troubles(**fields)

    assert told.startswith(said)


@pytest.mark.parametrize(("fields", "said"), SLIPS_IN_PARTS)
def test_the_list_that_goes_to_the_yard_says_what_is_not_in_it(fields: dict[str, Any], said: str) -> None:
    """In its last line."""
    assert list(csv.reader(io.StringIO(asked("/job.csv", **fields)["text"])))[-1][2].startswith(said)


def test_a_job_without_slips_has_no_troubles() -> None:
    """An empty line is none."""
    assert [] == troubles(parts=[RAIL, {**RAIL, "label": "", "length": "", "width": "", "thickness": ""}])


SLATS = {"id": 1, "setup": "slats", "label": "Bench"}


@pytest.mark.parametrize(
    "slip",
    [
        {"parts": [RAIL, {**RAIL, "length": "3o"}]},
        {"lumber": [BOARDS, {**BOARDS, "on_hand": "9o"}]},
        {"items": [{**SLATS, "inputs": {"run": "banana"}}]},
        {"items": [{**SLATS, "inputs": {"run": "1"}}]},
    ],
)
def test_nothing_is_the_fewest_possible_while_something_is_left_out(slip: dict[str, Any]) -> None:
    """Nobody knows what else is to buy, or is there already."""
    assert [True] == [each["proven"] for each in asked("/job.json")["data"]["boards"]]
    assert [False] == [each["proven"] for each in asked("/job.json", **slip)["data"]["boards"]]


def test_no_rough_length_is_made_up() -> None:
    """While it cannot be read how much is left long, the finished length is all that is known."""
    [section] = asked("/job", rough="1 im")["view"]["sections"]

    assert ("60 in", "") == (section["rows"][0]["finished"], section["rows"][0]["rough"])
    assert [None] == [cut["rough"] for cut in asked("/job.json", rough="1 im")["data"]["cuts"]]
