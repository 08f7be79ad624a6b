"""Readings and sizes from which nothing could follow, or no cut: each is told, up to its edge, and no correction is given then.

Geometry: no slot is narrower than its cutter, a square cut that is off does not say to which side, a fence at its last pass
cannot move less than not at all. How far blades reach and what bears on a table is common practice, no published source.
"""

from typing import Any

import pytest

from ..helpers import close, raised, value, worked

UPRIGHT: dict[str, str] = {"pitch_left": "45", "pitch_right": "45"}
NARROW: dict[str, str] = {"target": "0.84", "clearance": "0", "arbor": "1"}  # cut in two passes of 0.829
NO_MORE: dict[str, str] = {
    "target": "0.751", "clearance": "0", "chippers": "1/8, 5/32, 1/8, 3/32", "shims": "0.002, 0.004", "under": "0.01",
}  # fmt: skip

EDGES: list[tuple[str, str, dict[str, str], dict[str, str]]] = [
    ("ridge-cap", "narrow_bearing", {"cover": "1.61"}, {"cover": "1.62"}),
    ("ridge-cap", "narrow_bearing", {"cover": "1.2"}, {"cover": "1.2", **UPRIGHT}),
    ("ridge-cap", "close_to_fence", {"cover": "2.86"}, {"cover": "2.87"}),
    ("ridge-cap", "past_the_blade", {"pitch_left": "7", "pitch_right": "7", "cover": "8"}, {"pitch_left": "7", "pitch_right": "7.1", "cover": "8"}),
    ("ridge-cap", "board_too_narrow", {"board_width": "4.44"}, {"board_width": "4.43"}),
    ("ridge-cap", "board_narrower_than_one", {"board_width": "4.43"}, {"board_width": "4.44"}),
    ("ridge-cap", "which_side", {**UPRIGHT, "measured_bevel": "1"}, {"pitch_left": "44", "pitch_right": "45", "measured_bevel": "1"}),
    ("rabbet", "fence_at_blade", {"method": "two cuts", "width": "0.249"}, {"method": "two cuts", "width": "1/4"}),
    ("rabbet", "fence_at_blade", {"method": "two cuts", "width": "3/16"}, {"method": "dado", "width": "3/16"}),
    (
        "rabbet",
        "head_wider",
        {"width": "7/8", "head": "55/64", "measured_width": "0.891"},
        {"width": "7/8", "head": "55/64", "measured_width": "0.8906"},
    ),
    ("tenon", "kerf_takes_it", {"groove_depth": "5/32"}, {"groove_depth": "0.157"}),
    ("tenon", "cheeks_will_not_enter", {"measured_cheeks": "0.376"}, {"measured_cheeks": "3/8"}),
    ("groove", "narrower_than_cutter", {"measured_groove": "0.247"}, {"measured_groove": "0.248"}),
    ("groove", "narrower_than_cutter", {"cutter": "3/8", "measured_groove": "0.372"}, {"cutter": "3/8", "measured_groove": "0.373"}),
    ("groove", "one_pass_alone", {"measured_groove": "0.255"}, {"measured_groove": "0.256"}),
    ("groove", "one_pass_alone", {"groove_width": "0.313", "measured_groove": "0.252"}, {"groove_width": "5/16", "measured_groove": "0.252"}),
    (
        "groove",
        "fin",
        {"groove_width": "1/4", "cutter": "1/8", "measured_groove": "0.253"},
        {"groove_width": "1/4", "cutter": "1/8", "measured_groove": "0.252"},
    ),
    (
        "groove",
        "fin",
        {"groove_width": "1/4", "cutter": "1/8", "measured_groove": "0.262"},
        {"groove_width": "9/32", "cutter": "1/8", "measured_groove": "0.29"},
    ),
    (
        "frame",
        "short_stiles",
        {"opening_height": "8", "horn": "0", "gap_head": "0", "gap_foot": "1/64"},
        {"opening_height": "8", "horn": "0", "gap_head": "0", "gap_foot": "0"},
    ),
    ("ridge-cap", "board_just_wide", {"board_width": "8 1/8"}, {"board_width": "8 1/4"}),
    ("ridge-cap", "board_just_wide", {"board_width": "8 1/8"}, {"board_width": "8 1/16"}),
    ("groove", "one_pass_off", {"cutter": "3/8", "measured_groove": "0.3801"}, {"cutter": "3/8", "measured_groove": "0.38"}),
    ("gauge-stack", "too_tall", {"height": "0.484", "blocks": "1/2"}, {"height": "31/64", "blocks": "1/2"}),
    ("gauge-stack", "past_the_blade", {"height": "3.001"}, {"height": "3"}),
    ("dado-stack", "unlike_stack", {"measured_dado": "0.7853"}, {"measured_dado": "0.7852"}),
    ("dado-stack", "stack_wider", {**NARROW, "measured_dado": "0.8508"}, {**NARROW, "measured_dado": "0.8507"}),
    ("dado-stack", "stack_wider", {**NARROW, "measured_dado": "0.96"}, {**NARROW, "measured_dado": "0.97"}),
    ("dado-stack", "fence_move_far_off", {**NARROW, "measured_dado": "0.97"}, {**NARROW, "measured_dado": "0.96"}),
    ("dado-stack", "none_again", {**NO_MORE, "measured_dado": "47/64"}, {**NO_MORE, "measured_dado": "0.751"}),
    ("compound", "which_side", {"lean": "0", "measured_face": "89"}, {"lean": "0", "sides": "3", "measured_face": "89"}),
    ("compound", "which_side", {"lean": "0", "measured_face": "89"}, {"lean": "0", "measured_face": "90"}),
    ("compound", "which_face", {"lean": "90", "measured_edge": "89"}, {"lean": "90", "measured_edge": "90"}),
    ("angle", "long_rise", {"angle": "76"}, {"angle": "75.9"}),
    ("angle", "which_side", {"angle": "0", "measured_rise": "0.1"}, {"angle": "1", "measured_rise": "0.1"}),
    ("bevel", "which_side", {"tilt": "0", "measured_offset": "0.01"}, {"tilt": "1", "measured_offset": "0.01"}),
]


@pytest.mark.parametrize(("slug", "check", "holds", "beside"), EDGES)
def test_a_check_holds_up_to_its_edge(slug: str, check: str, holds: dict[str, str], beside: dict[str, str]) -> None:
    """It says so just past its edge, and nothing beside it."""
    assert (True, False) == (check in raised(worked(slug, **holds)), check in raised(worked(slug, **beside)))


@pytest.mark.parametrize(
    ("slug", "entries"),
    [
        *(
            (slug, holds)
            for slug, check, holds, _ in EDGES
            if check in ("which_side", "which_face", "narrower_than_cutter", "one_pass_alone", "unlike_stack")
        ),
        *((slug, holds) for slug, check, holds, _ in EDGES if check in ("head_wider", "stack_wider", "none_again")),
        ("compound", {"sides": "3", "lean": "10", "measured_face": "72", "measured_edge": "30"}),
        ("tenon", {"groove_depth": "1/8", "measured_cheeks": "0.376"}),
    ],
)
def test_nothing_is_corrected_then(slug: str, entries: dict[str, str]) -> None:
    """A move in a direction that nobody knows, or of a cut that is not made, is worse than none."""
    assert [] == worked(slug, **entries)["trial"]["corrections"]


def test_what_is_square_is_told_to_be_right() -> None:
    """Ninety degrees between face and cut of a flat frame need no word about sides."""
    assert not {"which_side", "which_face"} & raised(worked("compound", lean="90", measured_edge="90"))


def test_a_frame_does_not_follow_a_groove_narrower_than_its_cutter() -> None:
    """Tenons and panes stay as they were planned."""
    data = worked("frame", cutter="5/16", measured_groove="0.30")

    assert close(0.375, value(data, "groove_found"))
    assert {"narrower_than_cutter"} == raised(data["includes"]["groove"])


def test_a_tenon_no_longer_than_the_kerf_has_no_cheeks() -> None:
    """The shoulder cuts leave it finished: no height, no jig, no step and no trial of a cheek."""
    data: dict[str, Any] = worked("tenon", groove_depth="1/8")

    assert not {"cheek_height", "jig_to_blade"} & set(data["results"])
    assert [] == [text for text in (*data["steps"], data["trial"]["text"]) if "jig" in text]


def test_a_little_rabbet_has_its_pocket_cut_open() -> None:
    """Locked an eighth further over the cutter than 3/32 the fence would hide it, and a wall would stay in its way."""
    little = " ".join(worked("rabbet", method="dado", width="3/32", depth="1/4")["steps"])
    usual = " ".join(worked("rabbet", method="dado", width="1/4", depth="1/4")["steps"])

    assert (True, False) == ("so that 3/32 in of the cutter comes out" in little, "draw the fence back" in little)
    assert (False, True) == ("comes out beside it" in usual, "draw the fence back" in usual)


def test_a_cutter_is_not_raised_to_a_stack_that_is_too_tall() -> None:
    """It stops as far under the straightedge as the stack is over the height."""
    steps = " ".join(worked("gauge-stack", height="3/8", blocks="3/4")["steps"])

    assert (True, False) == ("so stop as far under the straightedge" in steps, "just brushes" in steps)
