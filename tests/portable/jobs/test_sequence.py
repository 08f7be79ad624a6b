"""In which order the runs of a job are made: the trade's stages, and what belongs together at one machine."""

from typing import Any

import pytest

from shopcalc import exact
from shopcalc.portable.jobs.jobview import job_view

from .test_order import job_of, runs_of


def made_of(*items: dict[str, Any]) -> list[dict[str, Any]]:
    """The runs of a job of these items alone, each with its number."""
    return runs_of(job_of(items=[{**item, "id": place + 1} for place, item in enumerate(items)], parts=[]))


def labels_of(runs: list[dict[str, Any]], stage: str) -> list[str]:
    """What is run in one stage, in order."""
    return [run["operation"]["label"] for run in runs if exact.world()["stages"][run["operation"]["stage"]] == stage]


def test_what_is_square_is_cut_before_what_is_tilted() -> None:
    """A tilt that was proved on scrap is not lost to a square cut of the same stage."""
    items = [
        {"id": 1, "setup": "ridge-cap", "label": "Cap", "quantity": 1, "inputs": {}},
        {"id": 2, "setup": "slats", "label": "Bench", "quantity": 1, "inputs": {}},
        {"id": 3, "setup": "compound", "label": "Planter", "quantity": 1, "inputs": {}},
    ]
    stages = job_view(job_of(items=items, parts=[]), exact.world())["stages"]
    labels = {stage["stage"]: [run["label"] for run in stage["runs"]] for stage in stages}

    assert labels["rip"][-1].startswith("Bevel")
    assert labels["crosscut"][-1] == "Compound mitre"


def test_a_saw_in_the_hand_follows_the_cards_order() -> None:
    """No machine loses its angle there: a rafter's notch is measured from the plumb cut, and comes after it."""
    runs = made_of({"setup": "rafter"})

    assert ["Plumb cuts", "Birdsmouth", "Notch for the cap"] == [run["operation"]["label"] for run in runs if run["operation"]["of"] == "rafter"][-3:]


def test_a_door_is_hung_when_its_edge_is_bevelled() -> None:
    """The blade meets the edge before a hinge hangs on the door."""
    runs = made_of({"setup": "hinge-layout"}, {"setup": "hinge-mortise"}, {"setup": "door-edge"})

    assert ["Rout the mortises", "Plane the bevel of the latch edge", "Hang it on the top hinge"] == [run["operation"]["label"] for run in runs][-3:]


def test_like_by_like_the_larger_setting_comes_first() -> None:
    """The fence is moved in one direction: 4 1/2 in is ripped before 3 in."""
    parts = [{"label": width, "count": 1, "length": "20", "width": width, "thickness": "1"} for width in ("3", "4 1/2", "4")]
    rips = [run["stints"][0]["item"]["label"] for run in runs_of(job_of(items=[], parts=parts)) if run["operation"]["key"] == "rip"]

    assert ["4 1/2", "4", "3"] == rips


def test_nothing_comes_between_two_passes_of_one_setting() -> None:
    """The last pass is so far from the first: a groove cut between them would have moved the fence."""
    runs = made_of(
        {"setup": "dado-stack", "inputs": {"target": "1 1/16"}},
        {"setup": "groove", "inputs": {"groove_width": "5/8"}},
        {"setup": "rabbet", "inputs": {"stock": "1 1/2", "width": "1 1/4"}},
    )

    assert labels_of(runs, "groove and rabbet") == [
        *("Dado, first pass", "Dado, last pass"),
        *("Groove", "Clear the rib"),
        *("Cutter height, on scrap", "Rabbet, first pass", "Rabbet, last pass"),
    ]


def test_all_is_cut_at_a_tilt_before_the_next_is_set() -> None:
    """Each tilt is proved on scrap once, and lost when the saw is tilted for the other cap."""
    runs = made_of({"setup": "ridge-cap"}, {"setup": "ridge-cap", "inputs": {"pitch_left": "45"}})
    tilts = [run["operation"]["settings"][0]["text"] for run in runs if run["operation"]["name"] == "tilt" or run["operation"]["parts"]]

    assert [tilt for tilt in tilts if tilt.endswith("\N{DEGREE SIGN}")] == ["30\N{DEGREE SIGN}"] * 3 + ["15\N{DEGREE SIGN}"] * 3


@pytest.mark.parametrize("second", ["30", "45"])
def test_each_board_is_bevelled_after_the_scrap_that_proves_its_tilt(second: str) -> None:
    """Whatever the tilts; and every run is there once."""
    runs = made_of({"setup": "ridge-cap"}, {"setup": "ridge-cap", "inputs": {"pitch_left": second}}, {"setup": "ridge-cap"})
    order = [(run["operation"]["name"], run["operation"]["settings"][0]["mark"]) for run in runs]
    bevels = [place for place, (name, _) in enumerate(order) if name.endswith("side_up")]

    assert len({run["key"] for run in runs}) == len(runs)
    assert bevels
    assert all(order.index(("tilt", order[place][1])) < place for place in bevels)


def test_a_run_that_several_items_share_waits_for_all_of_them() -> None:
    """Two grooves of two stocks have one fence for their ribs: neither rib is there before its groove."""
    ribs = [{"stock": "1 3/8", "groove_width": "5/8"}, {"stock": "1 7/16", "groove_width": "3/4"}]

    assert labels_of(made_of(*({"setup": "groove", "inputs": rib} for rib in ribs)), "groove and rabbet") == ["Groove", "Groove", "Clear the rib"]


def test_a_last_pass_is_run_with_the_stack_and_from_the_fence_of_its_first() -> None:
    """Two dados of one stack have fences of their own, and two of one move stacks of their own."""
    last = {"target": "1.035", "chippers": "1/8, 1/8, 1/8, 3/32", "shims": ""}
    for other in ({"target": "1 1/16"}, last):
        runs = made_of({"setup": "dado-stack", "inputs": {"target": "1 1/8"}}, {"setup": "dado-stack", "inputs": other})

        assert [len(run["stints"]) for run in runs] == [1, 1, 1, 1]
        assert labels_of(runs, "groove and rabbet") == ["Dado, first pass", "Dado, last pass"] * 2


def test_what_many_cards_run_keeps_its_place_among_them() -> None:
    """Holes are drilled when the frame has been fitted dry, and the fence is moved in one direction for all frames."""
    frame = {"setup": "frame", "inputs": {"mid_rails": "1", "opening_height": "60"}}
    runs = made_of(frame, {"setup": "ridge-cap"}, {"setup": "slats", "inputs": {"slat": "4", "count": "3"}})
    rips = [run["operation"]["settings"][0]["value"] for run in runs if run["operation"]["key"] == "rip"]

    assert labels_of(runs, "dry fit") == ["Mark the mid rails", "Dry fit", "Weep holes"]
    assert rips == sorted(rips, reverse=True)
