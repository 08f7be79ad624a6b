"""The frame, laid out part by part on the floor in exact fractions, and measured there."""

import random
from fractions import Fraction
from typing import Any

import pytest

from .asking import results_of

SEEDS = range(12)


def cut(seed: int, foot: str = "captive") -> tuple[dict[str, Any], dict[str, Fraction]]:
    """A sensible frame: what was typed, and what the card says, both as exact fractions of a 128th."""
    rng = random.Random(seed)

    def inches(low: float, high: float) -> Fraction:
        return Fraction(rng.randint(int(low * 32), int(high * 32)), 32)

    typed: dict[str, Any] = {
        "opening_width": inches(24, 40), "opening_height": inches(50, 84), "gap_side": inches(0.03, 0.2), "gap_head": inches(0.03, 0.2),
        "gap_foot": inches(0.1, 0.5), "stock": inches(1.25, 2), "stile": inches(2, 5), "top_rail": inches(2, 5), "bottom_rail": inches(2, 9),
        "mid_rail": inches(2, 5), "mid_rails": rng.randint(0, 4), "horn": inches(0, 1), "groove_width": inches(0.25, 0.5),
        "groove_depth": inches(0.5, 0.75), "end_play": inches(0, 0.1), "panel_clearance": inches(0.05, 0.25), "foot": foot,
        "shed_overhang": inches(0.1, 0.4),
    }  # fmt: skip
    found = results_of("frame", **typed)
    return typed, {name: found[name] for name in found}


def exact(value: float) -> Fraction:
    """The fraction that a double stands for; bays of a frame with mid rails are thirds, fifths and sevenths of a 32nd."""
    return Fraction(value).limit_denominator(10000)


@pytest.mark.parametrize("seed", SEEDS)
def test_the_frame_leaves_the_gaps_wanted(seed):
    """Stood in its opening the frame leaves the gap at both sides, the head and the foot."""
    typed, found = cut(seed)

    assert typed["opening_width"] == typed["gap_side"] + exact(found["frame_width"]) + typed["gap_side"]
    assert typed["opening_height"] == typed["gap_foot"] + exact(found["frame_height"]) + typed["gap_head"]


@pytest.mark.parametrize("seed", SEEDS)
def test_stiles_run_through_with_a_horn_at_each_end(seed):
    """When both horns are sawn off a stile is as long as the frame is high."""
    typed, found = cut(seed)

    sawn_off = exact(found["stile_length"]) - typed["horn"] - typed["horn"]

    assert sawn_off == typed["opening_height"] - typed["gap_head"] - typed["gap_foot"]


@pytest.mark.parametrize("seed", SEEDS)
def test_rails_fill_the_room_between_the_stiles(seed):
    """A rail laid between the stiles closes at both shoulders and stops short of both grooves' bottoms."""
    typed, found = cut(seed)
    left_shoulder = typed["stile"]
    right_shoulder = exact(found["frame_width"]) - typed["stile"]
    left_end = left_shoulder - typed["groove_depth"] + typed["end_play"]

    assert right_shoulder == left_shoulder + exact(found["rail_shoulder"])
    assert right_shoulder + typed["groove_depth"] - typed["end_play"] == left_end + exact(found["rail_length"])


@pytest.mark.parametrize("seed", SEEDS)
def test_all_bays_are_equal_with_the_rails_on_their_marks(seed):
    """Rails stood on the marks, from the foot of a stile that still has its horns, leave equal bays."""
    typed, found = cut(seed)
    foot = typed["horn"]
    marks = [exact(mark) for mark in found.get("mid_rail_marks", [])]
    tops = [foot + typed["bottom_rail"], *(mark + typed["mid_rail"] for mark in marks)]
    undersides = [*marks, foot + exact(found["frame_height"]) - typed["top_rail"]]

    assert typed["mid_rails"] == len(marks)
    assert {exact(found["bay_height"])} == {under - top for top, under in zip(tops, undersides, strict=True)}


@pytest.mark.parametrize("seed", SEEDS)
def test_panes_stand_short_of_the_groove_all_round(seed):
    """Between the bottoms of two grooves a pane has its clearance at both edges."""
    typed, found = cut(seed)
    across = exact(found["rail_shoulder"]) + typed["groove_depth"] + typed["groove_depth"]
    upright = exact(found["bay_height"]) + typed["groove_depth"] + typed["groove_depth"]

    assert across == typed["panel_clearance"] + exact(found["panel_width"]) + typed["panel_clearance"]
    assert upright == typed["panel_clearance"] + exact(found["panel_height"]) + typed["panel_clearance"]


@pytest.mark.parametrize("seed", SEEDS)
def test_a_shed_pane_hangs_over_the_bottom_rail(seed):
    """The lowest pane reaches from its clearance in the groove above to its overhang below the rail, outside what is left of it."""
    typed, found = cut(seed, "shed")
    top = typed["bottom_rail"] + exact(found["bay_height"]) + typed["groove_depth"] - typed["panel_clearance"]
    cheek = (typed["stock"] - typed["groove_width"]) / 2

    assert -typed["shed_overhang"] == top - exact(found["shed_panel_height"])
    assert exact(found["groove_found"]) == typed["groove_width"]
    assert exact(found["shed_rail_thickness"]) == typed["stock"] - cheek - typed["groove_width"]


@pytest.mark.parametrize("seed", SEEDS)
def test_a_notched_pane_clears_the_ends_of_a_shed_rail(seed):
    """A pane stood in both stiles clears what stayed whole of the rail by the room it has everywhere, at the side and in the groove there."""
    typed, found = cut(seed, "shed")
    edge = typed["stile"] - typed["groove_depth"] + typed["panel_clearance"]
    whole_to = typed["stile"] + typed["groove_depth"]
    groove_bottom = typed["bottom_rail"] - typed["groove_depth"]

    assert typed["panel_clearance"] == edge + exact(found["notch_width"]) - whole_to
    assert typed["panel_clearance"] == -typed["shed_overhang"] + exact(found["notch_height"]) - groove_bottom


@pytest.mark.parametrize("seed", SEEDS)
@pytest.mark.parametrize("foot", ["captive", "shed"])
def test_the_parts_make_the_frame_and_nothing_else(seed, foot):
    """There are two stiles, a top, a bottom and the mid rails, and one pane a bay, of the sizes on the card."""
    typed, found = cut(seed, foot)
    parts = {part["label"]: part for part in results_of("frame", **typed)["parts"]}
    panes = [part for part in parts.values() if "ane" in part["label"]]

    assert (2, 1, 1) == tuple(parts[label]["count"] for label in ("Stile", "Top rail", "Bottom rail"))
    assert typed["mid_rails"] == (parts["Mid rail"]["count"] if "Mid rail" in parts else 0)
    assert typed["mid_rails"] + 1 == sum(part["count"] for part in panes)
    assert {found["rail_length"]} == {part["length"] for label, part in parts.items() if label.endswith("rail")}
    assert {found["panel_width"]} == {part["width"] for part in panes}
    assert {float(typed["stock"])} == {
        part["thickness"] for label, part in parts.items() if label in ("Stile", "Top rail", "Bottom rail", "Mid rail")
    }
