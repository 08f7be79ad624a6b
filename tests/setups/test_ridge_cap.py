"""The ridge cap."""

import json
import math

import pytest

from shopcalc import exact
from shopcalc.portable.jobs.operations import worked_operations

from ..helpers import bench_of, close, raised, value, worked

THIRTY = {
    "inside_angle": 120, "edge_bevel": 30, "wide_outside": 4, "wide_inside": 4 + 0.75 / math.sqrt(3), "narrow_outside": 4 - 1.5 / math.sqrt(3),
    "narrow_inside": 4 - 0.75 / math.sqrt(3), "wide_rip": 4 + 0.75 / math.sqrt(3), "narrow_rip": 4 - 0.75 / math.sqrt(3),
    "difference": 1.5 / math.sqrt(3), "board_needed": 8.125,
}  # fmt: skip


@pytest.mark.parametrize(("name", "expected"), THIRTY.items())
def test_results_lapped(name: str, expected: float) -> None:
    """Two roofs of 30 degrees, boards 3/4 thick, cover 4: by the geometry of the equilateral triangle."""
    assert close(expected, value(worked("ridge-cap"), name))


def test_a_square_peak_needs_no_bevel() -> None:
    """At 45 and 45 the narrow board is the cover less one thickness."""
    data = worked("ridge-cap", pitch_left="45", pitch_right="45")

    assert (0, 4, 3.25, 0.75) == tuple(value(data, name) for name in ("edge_bevel", "wide_rip", "narrow_rip", "difference"))
    assert "square_peak" in raised(data)


def test_mitred_boards_are_alike() -> None:
    """Mitred, both boards cover to the peak and are bevelled by half of the whole turn."""
    data = worked("ridge-cap", joint="mitred")

    assert close(30, value(data, "edge_bevel"))
    assert (value(data, "wide_rip"), value(data, "wide_inside")) == (value(data, "narrow_rip"), value(data, "narrow_inside"))
    assert close(4 - 0.75 / math.sqrt(3), value(data, "wide_inside"))
    assert close(0, value(data, "difference"))


@pytest.mark.parametrize("joint", ["lapped", "mitred"])
def test_the_pitches_may_change_sides(joint: str) -> None:
    """A cap for 20 and 40 is the cap for 40 and 20 seen from the other gable."""
    one = worked("ridge-cap", pitch_left="20", pitch_right="40", joint=joint)["results"]
    other = worked("ridge-cap", pitch_left="40", pitch_right="20", joint=joint)["results"]

    assert one == other


FIRES = {
    "no_run": ({"pitch_left": "90", "pitch_right": "90"}, {"pitch_left": "60", "pitch_right": "60"}),
    "cover_too_small": ({"pitch_left": "45", "pitch_right": "45", "cover": "3/4"}, {"pitch_left": "45", "pitch_right": "45", "cover": "0.76"}),
    "steep_bevel": ({"pitch_left": "22", "pitch_right": "22"}, {"pitch_left": "22.5", "pitch_right": "22.5"}),
    "past_the_saw": ({"pitch_left": "46", "pitch_right": "46", "joint": "mitred"}, {"pitch_left": "45", "pitch_right": "45", "joint": "mitred"}),
    "too_much_blade": ({"thickness": "2.71", "cover": "12"}, {"thickness": "2.7", "cover": "12"}),
    "wall_left": ({"pitch_left": "75.1"}, {"pitch_left": "75"}),
    "wall_right": ({"pitch_right": "90"}, {"pitch_right": "75"}),
    "board_too_narrow": ({"board_width": "8.124"}, {"board_width": "8 1/8"}),
    "tilt_move_far_off": ({"measured_bevel": "24.9"}, {"measured_bevel": "25"}),
    "square_peak": ({"pitch_left": "50", "pitch_right": "40"}, {"pitch_left": "50", "pitch_right": "39"}),
}


@pytest.mark.parametrize("check", FIRES)
def test_checks(check: str) -> None:
    """Each check holds past its limit and not on the safe side of it."""
    past, on = FIRES[check]

    assert (True, False) == (check in raised(worked("ridge-cap", **past)), check in raised(worked("ridge-cap", **on)))


def test_two_upright_roofs_have_no_cap() -> None:
    """Without a peak no number is given."""
    assert {} == worked("ridge-cap", **FIRES["no_run"][0])["results"]


@pytest.mark.parametrize(("measured", "move", "word"), [("29", 1, "more"), ("31.5", -1.5, "less"), ("30", 0, "leave")])
def test_the_trial_turns_the_blade(measured: str, move: float, word: str) -> None:
    """A bevel cut too small wants more tilt."""
    data = worked("ridge-cap", measured_bevel=measured)

    assert close(move, value(data, "tilt_move"))
    assert word in data["trial"]["corrections"][0]


def test_past_the_saw_the_board_stands_on_edge() -> None:
    """A lap steeper than a saw tilts is cut with the board on edge, and the correction turns the other way."""
    data = worked("ridge-cap", pitch_left="70", pitch_right="70", measured_bevel="49")

    assert "past_the_saw" in raised(data)
    assert close(40, value(data, "edge_tilt"))
    assert close(-1, value(data, "tilt_move"))
    assert any(step.startswith("Unplug the saw. Tilt the blade 40\u00b0, leaning away from a tall wooden fence") for step in data["steps"])
    assert "edge_tilt" not in worked("ridge-cap")["results"]


def test_steps_follow_the_peak_and_the_joint() -> None:
    """A flat peak keeps the inside face, a steep one the outside; a square one has no bevel to cut; each joint has its fastening."""
    flat, steep, square, mitred = (
        " ".join(worked("ridge-cap", **typed)["steps"])
        for typed in ({}, {"pitch_left": "60", "pitch_right": "60"}, {"pitch_left": "45", "pitch_right": "45"}, {"joint": "mitred"})
    )

    assert (True, False, False) == tuple("inside face up: it keeps its whole width" in text for text in (flat, steep, square))
    assert (False, True, False) == tuple("outside face up: it keeps its whole width" in text for text in (flat, steep, square))
    assert (True, False) == ("Tilt the blade 30\u00b0" in flat, "Tilt the blade" in square)
    assert (True, False) == ("Fasten the narrow board first" in flat, "Fasten the narrow board first" in mitred)
    assert "fasten both boards together along the peak" in mitred


@pytest.mark.parametrize(
    ("typed", "to_fence", "run"),
    [({"pitch_left": "20", "pitch_right": "20"}, "inside", "on_edge_inside"),
     ({"pitch_left": "60", "pitch_right": "60", "joint": "mitred"}, "outside", "on_edge_outside")],
)  # fmt: skip
def test_on_edge_the_face_that_keeps_its_width_goes_to_the_fence(typed: dict[str, str], to_fence: str, run: str) -> None:
    """On edge there is no face up and no fence for the flat cut."""
    data = worked("ridge-cap", **typed)
    steps = " ".join(data["steps"])

    assert f"{to_fence} face to the fence: it keeps its whole width" in steps
    assert "face up" not in steps
    assert [run] == [each["name"] for each in worked_operations(bench_of("ridge-cap", **typed)) if each["name"].startswith("on_edge")]


def test_a_square_peak_is_tried_without_a_bevel() -> None:
    """The trial asks for the peak edge, whether it is bevelled or square; lapped it meets a face, and mitred the other edge."""
    ways = (({}, "against the inside face"), ({"pitch_left": "60"}, "against the face"), ({"joint": "mitred"}, "hold the sawn edges together"))
    for typed, words in ways:
        assert words in worked("ridge-cap", **typed)["trial"]["text"]
    assert "Bevel" not in worked("ridge-cap", pitch_left="45", pitch_right="45")["trial"]["text"]


def test_two_boards_alike_are_told_where_they_are_mitred() -> None:
    """Lapped, the second is narrower by one thickness."""
    assert [True, False] == ["alike" in raised(worked("ridge-cap", joint=joint)) for joint in ("mitred", "lapped")]


def test_boards_that_are_alike_go_over_the_saw_together() -> None:
    """Mitred, both are one size: ripped and bevelled in one run each, with nothing to tell them apart."""
    document = {"format": "shopcalc job", "version": 1, "items": [{"id": 1, "setup": "ridge-cap", "inputs": {"joint": "mitred"}}]}
    order = exact.answer_document("/job.json", json.dumps(document))["data"]["order"]
    bevelled = [run for run in order if run["operation"].startswith("Bevel ")]

    assert [("Bevel both boards", [{"label": "Cap board", "count": 2, "item": "Ridge cap"}])] == [
        (run["operation"], run["parts"]) for run in bevelled
    ]
    assert 1 == len([run for run in order if run["operation"] == "Rip to width"])
