"""The sill, built as a polygon where it will stand, and once more on the saw that rips it; both are measured.

Source: half-planes cut with numpy (recomputed; see slabs.py for the cutting). Where the sill stands, its upper back corner is
the origin, x runs out of the wall and y up.
"""

from fractions import Fraction
from itertools import product
from typing import NamedTuple

import numpy as np
import pytest

from .asking import ask, results_of, texts_of
from .slabs import EVERYWHERE, area, clip

SILLS = list(product(("4", "5.5", "11.25"), (3, 5, 10, 18.43, 30, 45), ("0.75", "1.5")))


class Sill(NamedTuple):
    """A sill as built: the direction down its slope, the direction out of its top, and its section."""

    down: np.ndarray
    out: np.ndarray
    section: np.ndarray

    def face(self, under: float) -> np.ndarray:
        """Find the corners of the face that lies so far under the top, back to front."""
        corners = self.section[np.isclose(-self.section @ self.out, under, atol=1e-7)]
        return corners[np.argsort(corners @ self.down)]


def build(depth, slope, thickness):
    """Build a sill: plumb at the back, its upper front corner at the depth, square at the front."""
    turn = np.radians(slope)
    down, out = np.array([np.cos(turn), -np.sin(turn)]), np.array([np.sin(turn), np.cos(turn)])
    slab = clip(EVERYWHERE, (out, 0.0), (-out, thickness), (np.array([-1.0, 0.0]), 0.0))
    plumb = clip(slab, (np.array([1.0, 0.0]), depth))
    front = plumb[np.argmax(plumb @ np.array([1.0, 0.001]))]  # the upper of the two corners at the depth
    return Sill(down, out, clip(slab, (down, float(front @ down))))


def length(corners):
    """Measure from the first corner to the last."""
    return float(np.linalg.norm(corners[-1] - corners[0]))


def ripped(fence, tilt, thickness):
    """Rip a back: bottom face down, front edge against the fence at x = 0, the blade leaning away from it."""
    turn = np.radians(tilt)
    normal = np.array([np.cos(turn), -np.sin(turn)])
    board = np.array([(0.0, 0.0), (40.0, 0.0), (40.0, thickness), (0.0, thickness)])
    return clip(board, (normal, float(normal @ (fence, 0.0))))


def widths(board, thickness):
    """Measure the bottom and the top face of a board that lies on the saw."""
    return [float(np.ptp(board[np.isclose(board[:, 1], height, atol=1e-9), 0])) for height in (0.0, thickness)]


def inner_edge(sill, thickness, overhang, setback, kerf):
    """Find the wall's corner under the sill and the drip's edge nearer to it."""
    front = sill.face(thickness)[-1]
    return front - overhang * sill.down, front - (setback + kerf) * sill.down


@pytest.mark.parametrize(("depth", "slope", "thickness"), SILLS)
def test_the_faces_and_the_fall_are_those_of_the_sill_built(depth, slope, thickness):
    """Top face, bottom face, and the drop from the upper back corner to the upper front one, on the polygon (recomputed)."""
    values = results_of("sill", depth=depth, slope=slope, thickness=thickness)
    sill = build(float(depth), slope, float(thickness))
    top, bottom = sill.face(0), sill.face(float(thickness))

    assert values["top_face"] == pytest.approx(length(top), abs=1e-6)
    assert values["bottom_face"] == pytest.approx(length(bottom), abs=1e-6)
    assert values["fall"] == pytest.approx(float(top[0, 1] - top[-1, 1]), abs=1e-6)


@pytest.mark.parametrize(("depth", "slope", "thickness"), SILLS)
def test_the_part_is_a_blank_that_holds_the_sill_built(depth, slope, thickness):
    """The extents of the polygon along its top, with an eighth for its edges (common practice), and square to it (recomputed)."""
    values = results_of("sill", depth=depth, slope=slope, thickness=thickness, sill_length="40 1/4")
    [part] = values["parts"]
    sill = build(float(depth), slope, float(thickness))

    assert (1, 40.25, values["board"]) == (part["count"], part["length"], part["width"])
    assert [part["width"], part["thickness"]] == pytest.approx([np.ptp(sill.section @ sill.down) + 1 / 8, np.ptp(sill.section @ sill.out)], abs=1e-6)


@pytest.mark.parametrize(("depth", "slope", "thickness"), SILLS)
def test_the_saw_rips_the_very_section_that_was_built(depth, slope, thickness):
    """A board ripped at the card's fence and bevel has the faces and the area of the sill where it stands (recomputed)."""
    values = results_of("sill", depth=depth, slope=slope, thickness=thickness)
    sill = build(float(depth), slope, float(thickness))
    board = ripped(values["bottom_face"], values["back_bevel"], float(thickness))

    assert widths(board, float(thickness)) == pytest.approx([length(sill.face(float(thickness))), length(sill.face(0))], abs=1e-6)
    assert area(board) == pytest.approx(area(sill.section), abs=1e-6)


@pytest.mark.parametrize("slope", [3, 10, 22.5, 45])
def test_the_back_bevel_is_how_far_a_plumb_back_is_from_square(slope):
    """The angle between the plumb back and a line square to the faces (recomputed)."""
    values = results_of("sill", slope=slope)
    sill = build(5.5, slope, 1.5)
    back = sill.face(0)[0] - sill.face(1.5)[0]
    across = back[0] * sill.out[1] - back[1] * sill.out[0]

    assert values["back_bevel"] == pytest.approx(float(np.degrees(np.arctan2(abs(across), back @ sill.out))), abs=1e-6)


@pytest.mark.parametrize(("overhang", "setback", "kerf"), [("1.25", "0.5", "0.25"), ("2", "0.375", "0.125"), ("0.76", "0.5", "0.25")])
@pytest.mark.parametrize("slope", [5, 10, 30])
def test_the_drip_clears_the_wall_by_what_the_card_says(overhang, setback, kerf, slope):
    """Along the underside from the wall's corner to the drip's near edge, and outside the wall on a plumb line too (recomputed)."""
    values = results_of("sill", slope=slope, overhang=overhang, drip_setback=setback, drip_kerf=kerf)
    wall, drip = inner_edge(build(5.5, slope, 1.5), 1.5, float(overhang), float(setback), float(kerf))

    assert values["drip_clear"] == pytest.approx(float(np.linalg.norm(drip - wall)), abs=1e-9)
    assert drip[0] > wall[0]


@pytest.mark.parametrize(("overhang", "stopped"), [("0.74", True), ("0.75", True), ("0.76", False)])
def test_a_drip_that_is_over_the_wall_is_refused(overhang, stopped):
    """The stop falls just where the drip's edge, built, is no longer outside the wall's face (recomputed)."""
    wall, drip = inner_edge(build(5.5, 10, 1.5), 1.5, float(overhang), 0.5, 0.25)
    card = ask("sill", overhang=overhang, drip_setback="1/2", drip_kerf="1/4")

    assert bool(drip[0] <= wall[0] + 1e-9) is stopped
    assert ("drip_clear" not in card["results"]) is stopped


@pytest.mark.parametrize(("thickness", "read"), [("1 1/2", "1/2"), ("1", "5/16 full"), ("1 1/16", "11/32 full"), ("1.379", "7/16 full")])
def test_the_drip_leaves_two_thirds_of_the_thickness(thickness, read):
    """Over the drip stays twice its depth, and the mark to raise the blade to is never past a third (common practice; recomputed)."""
    whole = float(sum(Fraction(part) for part in thickness.split()))
    values = results_of("sill", thickness=thickness)

    assert whole - values["drip_depth"] == pytest.approx(2 * values["drip_depth"], abs=1e-12)
    assert texts_of("sill", thickness=thickness)["drip_depth"] == read


@pytest.mark.parametrize("error", [-2, -0.3, 0.5, 1.5])
def test_a_saw_that_is_off_is_put_right_by_the_correction(error):
    """A back bevelled too far by so much is read on a scrap; the correction takes back just that, and a fence is given for the rest (recomputed)."""
    scrap = ripped(6.0, 10 + error, 1.5)
    low, high = widths(scrap, 1.5)
    values = results_of("sill", slope=10, thickness="1.5", measured_offset=round(high - low, 9))
    _, top = widths(ripped(values["bottom_as_cut"], 10 + error, 1.5), 1.5)

    assert values["tilt_move"] == pytest.approx(-error, abs=1e-6)
    assert values["back_as_cut"] == pytest.approx(10 + error, abs=1e-6)
    assert top == pytest.approx(values["top_face"], abs=1e-8)


@pytest.mark.parametrize(("stands", "move"), [("0.53", 0.03), ("0.45", -0.05)])
def test_a_drip_that_is_off_is_put_right_by_the_correction(stands, move):
    """A blade lowered by what the card says to the trial drip leaves twice the drip's depth over it (recomputed)."""
    values = results_of("sill", thickness="1.5", measured_drip=stands)
    left = 1.5 - (float(stands) - values["drip_move"])

    assert values["drip_move"] == pytest.approx(move, abs=1e-12)
    assert left == pytest.approx(2 * (1.5 - left), abs=1e-12)


@pytest.mark.parametrize(
    ("off", "drip", "said"),
    [
        (1, "0.508", ["Tilt the blade 1\u00b0 less.", "Too deep: lower the blade 0.008 in (1/128)."]),
        (-1, "0.492", ["Tilt the blade 1\u00b0 more.", "Shallower than it may be: raise the blade 0.008 in (1/128)."]),
    ],
)
def test_the_corrections_say_which_way_to_move(off, drip, said):
    """A back bevelled a degree too far wants less tilt, a drip too deep a lower blade, and the other way round."""
    low, high = widths(ripped(6.0, 10 + off, 1.5), 1.5)

    assert ask("sill", slope=10, thickness="1.5", measured_offset=round(high - low, 9), measured_drip=drip)["trial"]["corrections"] == said
