"""The rafter, against the framing square, three manuals' worked examples, and a rafter cut from half-planes.

Square: the row "length common rafters per foot run", in inches, as in test_angle.py: the whole row read in a page that transcribes
it; 6, 7, 13 and 16 also in publications. Worked examples: U.S. Navy 14044, U.S. Army EN0069 and Griffith, *Carpentry*, each read in
the publication. Half of the ridge taken off each rafter: Miller, *Carpenters' Guide*, read in the publication. The rest is
recomputed with the half-planes of slabs.py.
"""

from decimal import ROUND_HALF_UP, Decimal

import numpy as np
import pytest

from .asking import ask, results_of, texts_of
from .slabs import EVERYWHERE, between, build, clip, face, roof
from .test_angle import COMMON_RAFTER_PER_FOOT

NAMES = ("span", "pitch", "ridge", "overhang", "rafter_depth", "seat")
RAFTERS = [
    (96, 30.2564, 0.75, 6, 3.5, 2),
    (120, 45, 1.5, 12, 5.5, 3),
    (288, 18.4, 0, 16, 7.25, 3.5),
    (60.5, 60, 0.8, 4, 5.5, 1.5),
    (200, 10, 2, 0, 5.5, 5.5),
]
ACROSS, UP = np.eye(2)

every_rafter = pytest.mark.parametrize("rafter", RAFTERS)


def entries_of(rafter, **more):
    """Name the entries of a rafter."""
    return {**dict(zip(NAMES, rafter, strict=True)), **more}


def stick(rafter):
    """Cut a left-hand rafter from half-planes, its birdsmouth not yet sawn: the plate's outside corner is at the origin, the ridge to the right."""
    span, pitch, ridge, overhang, depth, seat = rafter
    side = roof(pitch, -1)
    under = float(side.out @ np.array([seat, 0.0]))  # the lower edge comes out of the plate so far inside
    ends = [(ACROSS, span / 2 - ridge / 2), (-ACROSS, float(overhang))]
    return side, clip(EVERYWHERE, (side.out, under + depth), (-side.out, -under), *ends)


def upper_edge(polygon, side):
    """Find the two ends of a rafter's upper edge, the lower one first."""
    reach = polygon @ side.out
    found = polygon[np.isclose(reach, reach.max())]
    return min(found, key=lambda point: point[0]), max(found, key=lambda point: point[0])


@pytest.mark.parametrize(("rise", "printed"), COMMON_RAFTER_PER_FOOT.items())
def test_a_run_of_a_foot_gives_the_length_on_the_framing_square(rise, printed):
    """The card's line_length over a run of 12 in is the square's number, to the hundredth that is stamped."""
    values = results_of("rafter", span="2 ft", pitch=f"{rise} in 12", ridge=0, rafter_depth=12, cap_thickness=0)

    assert values["run"] == 12
    assert Decimal(values["line_length"]).quantize(Decimal(".01"), ROUND_HALF_UP) == Decimal(printed)
    assert values["rise"] == pytest.approx(rise, abs=1e-12)


def test_the_navys_rafter_is_nine_feet_three_and_an_eighth():
    """U.S. Navy 14044, read in the publication: 7 in 12 over a span of 16 ft, a run of 8 ft, is 111 1/8 in or 9 ft 3 1/8 in."""
    entries = {"span": "16 ft", "pitch": "7 in 12", "ridge": 0, "tape": 16}

    assert results_of("rafter", **entries)["run"] == 8 * 12
    assert texts_of("rafter", **entries)["line_length"] == "111 1/8 full"
    assert results_of("fractions", entry="9 ft 3 1/8 in")["length"] == 111.125


def test_the_armys_rafter_is_fifteen_feet_three():
    """U.S. Army EN0069, read in the publication: 13 in 12 over a run of 10 ft 4 in is 182.79 in, which it gives as 15 ft 3 in."""
    values = results_of("rafter", span="20 ft 8 in", pitch="13 in 12", ridge=0)

    assert values["run"] == 10 * 12 + 4
    assert values["line_length"] == pytest.approx(17.69 * 10.333, abs=0.05)
    assert values["line_length"] == pytest.approx(15 * 12 + 3, abs=0.25)


def test_griffiths_rafter_of_a_quarter_pitch():
    """Griffith, Carpentry, read in the publication: a span of 25 ft at quarter pitch is 12.5 times 13.42, 167.75 in, framed at 14 ft."""
    values = results_of("rafter", span="25 ft", pitch="6 in 12", ridge=0)

    assert values["rise"] == pytest.approx(25 * 12 / 4, abs=1e-9)  # a quarter of the span
    assert values["line_length"] == pytest.approx(167.75, abs=12.5 * 0.005)
    assert values["line_length"] == pytest.approx(14 * 12, abs=0.5)


@pytest.mark.parametrize("ridge", [0.75, 1.5, 2])
def test_each_rafter_loses_half_of_the_ridge_square_to_its_plumb_cut(ridge):
    """Miller, Carpenters' Guide, read in the publication (the direction from memory): half of the ridge's thickness, level."""
    assert results_of("rafter", ridge=0)["run"] - results_of("rafter", ridge=ridge)["run"] == ridge / 2


@every_rafter
def test_the_lengths_are_those_of_the_rafter_cut(rafter):
    """On the stick as cut: line_length and tail along its upper edge, run and rise, and board_needed from long point to long point."""
    values = results_of("rafter", **entries_of(rafter))
    side, whole = stick(rafter)
    low, high = upper_edge(whole, side)
    plate, _ = upper_edge(clip(whole, (-ACROSS, 0.0)), side)

    assert values["line_length"] == pytest.approx(np.hypot(*(high - plate)), abs=1e-6)
    assert values["tail"] == pytest.approx(np.hypot(*(plate - low)), abs=1e-6)
    assert [values["run"], values["rise"]] == pytest.approx(list(high - plate), abs=1e-6)
    assert values["board_needed"] == pytest.approx(np.ptp(whole @ side.down), abs=1e-6)


@every_rafter
def test_the_part_is_a_board_that_holds_the_rafter_cut(rafter):
    """Of the parts the rafter's length and width are the extents of the stick as cut, along it and square to it."""
    [part] = results_of("rafter", **entries_of(rafter), rafter_thickness="1 1/2")["parts"]
    side, whole = stick(rafter)

    assert (1, 1.5) == (part["count"], part["thickness"])
    assert part["length"] == pytest.approx(np.ptp(whole @ side.down), abs=1e-6)
    assert part["width"] == pytest.approx(np.ptp(whole @ side.out), abs=1e-6)


@every_rafter
def test_the_cuts_are_those_of_the_rafter_cut(rafter):
    """On the stick as cut: plumb_angle and seat_angle from a square cut, and plumb_length from corner to corner of the ridge cut."""
    values = results_of("rafter", **entries_of(rafter))
    side, whole = stick(rafter)
    ridge_cut = whole[np.isclose(whole[:, 0], whole[:, 0].max())]

    assert values["plumb_angle"] == pytest.approx(between(UP, side.out), abs=1e-6)
    assert values["seat_angle"] == pytest.approx(between(-ACROSS, side.out), abs=1e-6)
    assert values["plumb_length"] == pytest.approx(np.ptp(ridge_cut[:, 1]), abs=1e-6)


@every_rafter
def test_the_birdsmouth_stands_on_the_plate(rafter):
    """What the plate takes out of the stick is birdsmouth high and the seat wide; above_plate and left_at_seat are what stays over it."""
    values = results_of("rafter", **entries_of(rafter))
    side, whole = stick(rafter)
    taken = clip(whole, (-ACROSS, 0.0), (UP, 0.0))
    over = clip(whole, (-ACROSS, 0.0))

    assert [values["birdsmouth"], rafter[5]] == pytest.approx([np.ptp(taken[:, 1]), np.ptp(taken[:, 0])], abs=1e-6)
    assert values["above_plate"] == pytest.approx(over[np.isclose(over[:, 0], 0)][:, 1].max(), abs=1e-6)
    assert values["left_at_seat"] == pytest.approx((whole @ side.out).max(), abs=1e-6)  # the corner of the cut is the origin


@pytest.mark.parametrize("joint", ["mitred", "lapped"])
@pytest.mark.parametrize(("pitch", "ridge", "thickness", "cover"), [(30, 0.75, 0.75, 4), (45, 1.5, 1, 5.5), (18, 0, 0.5, 6), (60, 1, 0.75, 5)])
def test_the_notch_is_what_a_flush_cap_takes_out_of_the_rafter(pitch, ridge, thickness, cover, joint):
    """A cap built with its outside in the rafter's upper edge: peak_notch deep, notch_length its inside face.

    Beyond the ridge it takes notch_on_rafter of that, and notch_on_edge of the edge.
    Of a lapped cap the board that counts is the narrow one: it ends where the inside faces meet.
    """
    cap = build(pitch, pitch, thickness, cover, joint)
    board, side = (cap.wide, cap.left) if joint == "mitred" else (cap.narrow, cap.right)
    inside = face(board, side, thickness)
    away = ACROSS if side.down[0] > 0 else -ACROSS
    taken = clip(board, (-away, -ridge / 2))
    values = results_of("rafter", span=120, pitch=pitch, ridge=ridge, rafter_depth=8, cap_thickness=thickness, cap_inside=f"{inside:.9f}")

    assert values["peak_notch"] == pytest.approx(np.ptp(taken @ side.out), abs=1e-6)
    assert values["notch_length"] == pytest.approx(inside, abs=1e-6)
    assert values["notch_on_rafter"] == pytest.approx(face(taken, side, thickness), abs=1e-6)
    # the cap's outside begins at the origin, above the middle of the ridge
    assert values["notch_on_edge"] == pytest.approx((taken @ side.down).max() - ridge / 2 / np.cos(np.radians(pitch)), abs=1e-6)


@pytest.mark.parametrize("error", [-2, -0.5, 0.25, 3])
@pytest.mark.parametrize("pitch", [18.5, 30, 45])
def test_a_saw_that_is_off_is_put_right_by_the_correction(pitch, error):
    """A rafter cut with a saw that is off touches the ridge with one corner: open_joint is how far the other stands off, saw_move takes it back."""
    depth, measured = 5.5, pitch + error
    values = results_of("rafter", span=200, pitch=pitch, rafter_depth=depth, measured_plumb=measured)
    side = roof(pitch, -1)
    cut = np.array([np.cos(np.radians(error)) * UP[k] + np.sin(np.radians(error)) * ACROSS[k] for k in range(2)])  # along the cut, off plumb
    length = depth / (side.out @ cut)

    assert measured + values["saw_move"] == pytest.approx(pitch, abs=1e-9)
    assert values["open_joint"] == pytest.approx(abs(length * cut[0]), abs=1e-6)


@pytest.mark.parametrize(("measured", "words"), [("31", "back toward square"), ("29", "further from square")])
def test_the_correction_says_which_way_to_swing(measured, words):
    """A plumb cut past the slope of the half-planes' rafter comes back, one short of it goes on."""
    assert (float(measured) > between(UP, roof(30, -1).out)) == (words == "back toward square")

    (correction,) = ask("rafter", pitch=30, measured_plumb=measured)["trial"]["corrections"]
    assert correction == f"Swing the saw 1\u00b0 {words}."
