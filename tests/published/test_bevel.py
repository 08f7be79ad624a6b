"""The bevelled rip, made on a saw of polygons: fence, table and a tilted blade, and the board that comes off it, measured.

Source: half-planes cut with numpy (recomputed; see slabs.py for the cutting). The face and the shift of a tilted cut,
t / cos and t x tan, are geometry that was recomputed for the reference values of the project too. The fence stands at x = 0
and the table at y = 0.
"""

from itertools import product

import numpy as np
import pytest

from .asking import ask, results_of
from .slabs import area, clip

BOARDS = list(product(("0.5", "0.75", "1.5"), (1, 7.5, 15, 22.5, 30, 45), ("4", "6.25"), ("1", "2")))
NAMES = ("thickness", "tilt", "wide_face", "edges")


def board(wide, thickness):
    """A board on the saw before it is ripped, its edge against the fence."""
    return np.array([(0.0, 0.0), (wide, 0.0), (wide, thickness), (0.0, thickness)])


def ripped(piece, fence, tilt):
    """Rip a board at a blade that leaves the table so far from the fence and leans away from it."""
    turn = np.radians(tilt)
    normal = np.array([np.cos(turn), -np.sin(turn)])
    return clip(piece, (normal, float(normal @ (fence, 0.0))))


def turned(piece):
    """Turn a board end for end, the same face down, and push it against the fence."""
    over = (piece * (-1, 1))[::-1]
    return over - (over[:, 0].min(), 0)


def face(piece, height):
    """Measure the face that lies at a height."""
    return float(np.ptp(piece[np.isclose(piece[:, 1], height, atol=1e-9), 0]))


def made(fence, tilt, thickness, edges):
    """Rip one edge, or both, from a board that is wide enough."""
    piece = ripped(board(40.0, thickness), fence, tilt)
    return ripped(turned(piece), fence, tilt) if edges == "2" else piece


@pytest.mark.parametrize(NAMES, BOARDS)
def test_the_fence_leaves_both_faces_as_the_card_says(thickness, tilt, wide_face, edges):
    """A board ripped at the card's fence, once or from both edges, has the wide face wanted and the card's narrow one (recomputed)."""
    values = results_of("bevel", thickness=thickness, tilt=tilt, wide_face=wide_face, edges=edges)
    high = float(thickness)
    piece = made(values["fence"], tilt, high, edges)

    assert face(piece, high) == pytest.approx(float(wide_face), abs=1e-9)
    assert face(piece, 0) == pytest.approx(values["narrow_face"], abs=1e-9)
    assert (face(piece, high) - face(piece, 0)) / int(edges) == pytest.approx(values["offset"], abs=1e-9)
    assert area(piece) == pytest.approx(high * (float(wide_face) + values["narrow_face"]) / 2, abs=1e-9)


@pytest.mark.parametrize(("thickness", "tilt"), [("0.5", 5), ("0.75", 30), ("1.375", 45), ("1", 0)])
def test_the_blade_travel_is_the_length_of_the_cut(thickness, tilt):
    """The cut through the board, measured corner to corner along its slope, is how much blade must stand clear (recomputed)."""
    values = results_of("bevel", thickness=thickness, tilt=tilt)
    piece = ripped(board(40.0, float(thickness)), 5.0, tilt)
    low, high = (piece[np.isclose(piece[:, 1], height)] for height in (0.0, float(thickness)))
    cut = high[np.argmax(high[:, 0])] - low[np.argmax(low[:, 0])]

    assert values["blade_travel"] == pytest.approx(float(np.hypot(*cut)), abs=1e-9)


@pytest.mark.parametrize("tilt", [0.5, 3.576, 15, 22.5, 37, 45])
@pytest.mark.parametrize("run", ["6", "11.5"])
def test_the_gauge_holds_the_bevel(tilt, run):
    """The angle of run and rise, by numpy's arctangent, is the tilt (recomputed)."""
    values = results_of("bevel", tilt=tilt, gauge_run=run)

    assert np.degrees(np.arctan2(values["gauge_rise"], float(run))) == pytest.approx(tilt, abs=1e-9)


@pytest.mark.parametrize(("slope", "offset"), [("1/8 in 2", "0.0625"), ("1:8", "0.125"), ("1:1", "1")])
def test_a_bevel_typed_as_a_slope_takes_that_slope_off_the_face(slope, offset):
    """A door edge of 1/8 in 2 (from memory) and plain slopes: over 1 in of thickness the faces differ by the slope itself."""
    assert results_of("bevel", thickness="1", tilt=slope)["offset"] == pytest.approx(float(offset), abs=1e-12)


@pytest.mark.parametrize("error", [-3, -0.4, 0.25, 2])
@pytest.mark.parametrize(("thickness", "tilt"), [("0.75", 15), ("1.5", 30)])
def test_a_saw_that_is_off_is_put_right_by_the_correction(thickness, tilt, error):
    """A saw that tilts too far by so much bevels a scrap; the correction takes back just that, and a fence is given for the rest (recomputed)."""
    high = float(thickness)
    scrap = ripped(board(40.0, high), 5.0, tilt + error)
    measured = round(face(scrap, high) - face(scrap, 0), 9)
    values = results_of("bevel", thickness=thickness, tilt=tilt, wide_face="6", measured_offset=measured)
    piece = made(values["fence_as_cut"], tilt + error, high, "1")

    assert values["tilt_move"] == pytest.approx(-error, abs=1e-6)
    assert values["tilt_as_cut"] == pytest.approx(tilt + error, abs=1e-6)
    assert face(piece, high) == pytest.approx(6, abs=1e-8)


@pytest.mark.parametrize(("off", "words"), [(1, "less"), (-1, "more")])
def test_the_correction_says_which_way_to_tilt(off, words):
    """A scrap cut a degree past the bevel wants a degree less, one cut a degree short of it a degree more."""
    scrap = ripped(board(40.0, 0.75), 5.0, 15 + off)
    measured = round(face(scrap, 0.75) - face(scrap, 0), 9)

    assert ask("bevel", thickness="3/4", tilt=15, measured_offset=measured)["trial"]["corrections"] == [f"Tilt the blade 1\u00b0 {words}."]
