"""The door's edge, swung: a door cut from half-planes is turned about its pin in small steps, and its reach toward the jamb measured.

Source: the sweep, in numpy (recomputed). The door of 18 in was worked out by such a sweep when the card was specified. The bevel
to which locks are made, 1/8 in 2 1/4, was read in ICS, *Building Trades Pocketbook*; 1/8 in 2 for a leading edge is from memory.
"""

from itertools import product

import numpy as np
import pytest

from .asking import ask, results_of
from .slabs import EVERYWHERE, clip

TURNS = np.radians(np.linspace(0, 90, 40001))
NAMES = ("door_width", "thickness", "pin_offset", "gap_hinge", "gap_latch")
DOORS = [
    (18, 1.5, 0.25, 0.125, 0.0625),
    (30, 1.75, 0.3, 0.09375, 0.125),
    (36.3, 2.25, 0, 0.125, 0.1),
    (6.5, 0.75, 0.2, 0.0625, 0.05),
    (5.1, 2, 0.4, 0.1, 0.1),
    (12.2, 1.375, 0.5, 0, 0.04),
]
BEVELS = [0, 1, 3, 5, 12]

every_door = pytest.mark.parametrize("door", DOORS)


def entries_of(door, **more):
    """Name the entries of a door."""
    return {**dict(zip(NAMES, door, strict=True)), **more}


def shut(door, bevel):
    """Cut the shut door from half-planes: across from the pin, and down from it toward the stop; the bevel starts at the opening face."""
    width, thickness, pin, hinge_gap, _ = door
    near = np.array([hinge_gap / 2 + width, pin])
    slant = np.array([np.cos(np.radians(bevel)), np.sin(np.radians(bevel))])
    square = np.eye(2)
    return clip(
        EVERYWHERE, (-square[0], -hinge_gap / 2), (square[0], near[0]), (-square[1], -pin), (square[1], pin + thickness), (slant, float(slant @ near))
    )


def corners(door, bevel):
    """Find the latch edge's corners: on the face the door opens toward, and on the stop face."""
    polygon = shut(door, bevel)
    faces = (door[2], door[2] + door[1])
    return [max(polygon[np.isclose(polygon[:, 1], face)], key=lambda corner: corner[0]) for face in faces]


def reach(points):
    """Turn points about the pin, a quarter of a turn in small steps, and measure how far across they ever come."""
    x, y = np.atleast_2d(points).T
    return float((np.outer(np.cos(TURNS), x) + np.outer(np.sin(TURNS), y)).max())


def jamb(door):
    """Place the latch jamb, across from the pin."""
    return door[3] / 2 + door[0] + door[4]


def least(door):
    """Halve down to the least bevel with which the corner on the stop face never comes past the jamb."""
    low, high = 0.0, 45.0
    if reach(corners(door, 0)[1]) <= jamb(door):
        return 0.0
    for _ in range(36):
        middle = (low + high) / 2
        low, high = (low, middle) if reach(corners(door, middle)[1]) <= jamb(door) else (middle, high)
    return high


@every_door
@pytest.mark.parametrize("bevel", BEVELS)
def test_the_clearance_is_what_the_sweep_leaves(door, bevel):
    """Each corner's near_corner and far_corner is its reach when turned; clearance is what is left to pin_to_jamb, or foul what is not."""
    values = results_of("door-edge", **entries_of(door, bevel=bevel))
    near, far = corners(door, bevel)
    left = jamb(door) - reach(shut(door, bevel))

    assert values["near_corner"] == pytest.approx(reach(near), abs=1e-6)
    assert values["far_corner"] == pytest.approx(reach(far), abs=1e-6)
    assert values["clearance"] == pytest.approx(left, abs=1e-6)
    assert values["pin_to_jamb"] == pytest.approx(jamb(door), abs=1e-12)
    assert values.get("foul", 0) == pytest.approx(max(-left, 0), abs=1e-6)


@every_door
@pytest.mark.parametrize("bevel", BEVELS)
def test_no_point_of_the_edge_reaches_further_than_its_corners(door, bevel):
    """The construction is sound: points all along the bevelled edge never come nearer to the jamb than its corners do."""
    near, far = corners(door, bevel)
    along = near + np.linspace(0, 1, 21)[:, None] * (far - near)

    assert reach(along) == pytest.approx(max(reach(near), reach(far)), abs=1e-9)


@every_door
@pytest.mark.parametrize("bevel", BEVELS)
def test_the_gauge_line_is_where_the_bevel_comes_out(door, bevel):
    """On the door as cut, taper and back_width are measured on the stop face, and pin_to_edge on the other."""
    values = results_of("door-edge", **entries_of(door, bevel=bevel))
    near, far = corners(door, bevel)

    assert values["taper"] == pytest.approx(near[0] - far[0], abs=1e-9)
    assert values["back_width"] == pytest.approx(far[0] - shut(door, bevel)[:, 0].min(), abs=1e-9)
    assert values["pin_to_edge"] == pytest.approx(near[0], abs=1e-12)


@every_door
def test_the_least_bevel_just_swings_clear(door):
    """Halving between square and 45 degrees finds the same least_bevel."""
    card = ask("door-edge", **entries_of(door, bevel=5))
    stops = {check["name"] for check in card["checks"] if check["level"] == "stop"}

    if reach(corners(door, 0)[0]) > jamb(door):
        assert "pin_too_proud" in stops
        assert "least_bevel" not in card["results"]
    else:
        assert card["results"]["least_bevel"]["value"] == pytest.approx(least(door), abs=1e-4)


def test_the_worked_example_of_the_door():
    """Door 18 by 1 1/2, pin 1/4, gaps 1/8 and 1/16: least bevel 0.847, 0.0608 clear at 5 degrees, foul by 0.022 when square (recomputed)."""
    door = DOORS[0]
    values = results_of("door-edge", **entries_of(door, bevel=5))
    square = results_of("door-edge", **entries_of(door, bevel=0))

    assert [round(least(door), 3), round(jamb(door) - reach(shut(door, 5)), 4), round(reach(shut(door, 0)) - jamb(door), 3)] == [0.847, 0.0608, 0.022]
    assert [round(values["least_bevel"], 3), round(values["clearance"], 4)] == [0.847, 0.0608]
    assert [round(square["clearance"], 3), round(square["foul"], 3)] == [-0.022, 0.022]


@pytest.mark.parametrize(
    ("bevel", "thickness"),
    [
        ("1/8 in 2 1/4", "2 1/4"),  # ICS, Building Trades Pocketbook, read in the publication
        ("1/8 in 2", "2"),  # from memory
    ],
)
def test_a_bevel_named_by_its_taper_comes_out_as_that_taper(bevel, thickness):
    """The bevels of locks and of leading edges are 1/8 in through the thickness that names them, and swing clear."""
    values = results_of("door-edge", door_width="30", thickness=thickness, gap_latch="1/8", bevel=bevel)

    assert values["taper"] == pytest.approx(0.125, abs=1e-12)
    assert values["clearance"] > 0


@pytest.mark.parametrize(("bevel", "error"), [*product([3, 5], [-1.5, -0.4, 0.3, 2])])
def test_a_tilt_that_is_off_is_put_right_by_the_correction(bevel, error):
    """A scrap cut at a tilt that is off: tilt_move takes it back, bevel_as_cut names it, clearance_as_cut is the sweep of such a door."""
    door = DOORS[0]
    near, far = corners(door, bevel + error)
    values = results_of("door-edge", **entries_of(door, bevel=bevel, measured_taper=f"{near[0] - far[0]:.9f}"))

    assert values["bevel_as_cut"] == pytest.approx(bevel + error, abs=1e-5)
    assert bevel + error + values["tilt_move"] == pytest.approx(bevel, abs=1e-5)
    assert values["clearance_as_cut"] == pytest.approx(jamb(door) - reach(shut(door, bevel + error)), abs=1e-6)
