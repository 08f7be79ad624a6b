"""The hinges of a door, laid out: walked down the edge piece by piece in exact fractions, and set beside numpy's even spacing.

Source: the construction itself (recomputed). Published customs, no two alike and none of them a standard: 5 in from the head of
the frame and 10 in from the foot, rest equal (door makers' practice, read in a page that quotes it); 7 in from the top, 10 or
11 in from the foot (custom in house doors, read in a page that quotes it); lower end of the lower butt level with the top of
the bottom rail, top butt 6 to 7 in below the top (ICS, Building Trades Pocketbook, read in the publication); three hinges over
5 ft 0 in and up to 7 ft 6 in (HMMA, read in a page that quotes it).
"""

from fractions import Fraction
from itertools import product

import numpy as np
import pytest

from .asking import ask, results_of

DOORS = [
    [Fraction(text) for text in row]
    for row in (
        ("155/2", "4", "7", "11", "1/8"),
        ("80", "9/2", "5", "10", "0"),
        ("60", "3.5", "6.37", "9", "3/32"),
        ("36", "2", "3", "3", "0.06"),
        ("96", "5", "0", "0", "1/4"),
    )
]
LAID = list(product(DOORS, (2, 3, 4, 5)))
NAMES = ("door_height", "hinge_length", "top_offset", "bottom_offset", "gap_head")


def exactly(value):
    """Take a number from the card as the fraction it stands for."""
    return Fraction(value).limit_denominator(10**6)


def row(values):
    """Take a row from the card as fractions."""
    return [exactly(value) for value in values]


def entries_of(door, hinges):
    """Name the entries of a door."""
    return {**dict(zip(NAMES, door, strict=True)), "hinges": hinges}


def walked(door, hinges):
    """Walk down the edge: the offset, a hinge, an equal piece of bare wood, a hinge; what is below the last is left."""
    height, hinge, top, bottom, _ = door
    bare = (height - top - bottom - hinges * hinge) / (hinges - 1)
    marks, place = [], top
    for _ in range(hinges):
        marks.append(place)
        place += hinge + bare
    return marks, place - bare, bare


@pytest.mark.parametrize(("door", "hinges"), LAID)
def test_the_hinges_are_where_a_walk_down_the_edge_meets_them(door, hinges):
    """door_marks, door_ends, spacing and between are those of hinges laid one by one; the last ends at its offset above the foot."""
    values = results_of("hinge-layout", **entries_of(door, hinges))
    marks, end, bare = walked(door, hinges)

    assert row(values["door_marks"]) == marks
    assert row(values["door_ends"]) == [mark + door[1] for mark in marks]
    assert door[0] - end == door[3]
    assert exactly(values["between"]) == bare
    assert exactly(values["spacing"]) == marks[1] - marks[0]


@pytest.mark.parametrize(("door", "hinges"), LAID)
def test_numpy_spaces_the_hinges_alike(door, hinges):
    """The marks are as many even steps from the first to the last: door_marks on the door, frame_marks and frame_ends with the gap above it."""
    height, hinge, top, bottom, gap = (float(each) for each in door)
    values = results_of("hinge-layout", **entries_of(door, hinges))
    spaced = np.linspace(top, height - bottom - hinge, hinges)

    assert values["door_marks"] == pytest.approx(spaced, abs=1e-9)
    assert values["frame_marks"] == pytest.approx(spaced + gap, abs=1e-9)
    assert values["frame_ends"] == pytest.approx(spaced + gap + hinge, abs=1e-9)


@pytest.mark.parametrize("hinge", ["3 1/2", "4", "4 1/2"])
def test_five_ten_and_equal_on_the_frame(hinge):
    """Door makers' practice, read in a page that quotes it: 5 in below the head, 10 in above the foot, measured on the frame."""
    values = ask("hinge-layout", hinge_length=hinge, top_offset="5 - 1/8", bottom_offset="10 - 3/8", gap_head="1/8", door_height="77 1/2")
    rows = {name: result["value"] for name, result in values["results"].items()}
    opening = 78  # the door, 1/8 above it and 3/8 below it

    assert rows["frame_marks"][0] == 5
    assert opening - rows["frame_ends"][-1] == 10
    assert rows["frame_marks"][1] - rows["frame_ends"][0] == rows["frame_marks"][2] - rows["frame_ends"][1]
    assert "unusual_top" not in [check["name"] for check in values["checks"]]


@pytest.mark.parametrize("foot", ["10", "11"])
def test_seven_from_the_top_and_ten_or_eleven_from_the_foot(foot):
    """Custom in house doors, read in a page that quotes it; the card has nothing to say against it."""
    card = ask("hinge-layout", top_offset="7", bottom_offset=foot)

    assert card["results"]["door_marks"]["value"][0] == 7
    assert 77.5 - card["results"]["door_ends"]["value"][-1] == int(foot)
    assert card["checks"] == []


def test_the_lower_butt_stands_level_with_the_bottom_rail():
    """ICS, Building Trades Pocketbook, read in the publication: the lower butt ends level with the top of the bottom rail."""
    card = ask("hinge-layout", top_offset="6", bottom_offset="9")  # a bottom rail of 9 in
    names = [check["name"] for check in card["checks"]]

    assert card["results"]["door_ends"]["value"][-1] == 77.5 - 9
    assert names == ["unusual_foot"]  # the note names this custom too


@pytest.mark.parametrize(("height", "said"), [("5 ft", []), ("60.01", ["wants_three"]), ("7 ft 6 in", ["wants_three"]), ("90.01", ["past_three"])])
def test_three_hinges_from_five_feet_to_seven_and_a_half(height, said):
    """HMMA, read in a page that quotes it: three hinges for doors over 5 ft 0 in and up to 7 ft 6 in."""
    assert [check["name"] for check in ask("hinge-layout", door_height=height, hinges="2")["checks"]] == said


@pytest.mark.parametrize("error", [Fraction(text) for text in ("-3/32", "-0.02", "1/64", "0.11")])
def test_a_top_hinge_that_is_off_is_mended_or_followed(error):
    """A top hinge cut too low on the frame lets the door down: head_move takes it back up, or the others follow with frame_as_hung."""
    door = DOORS[0]
    marks, _, _ = walked(door, 3)
    cut = marks[0] + door[4] + error  # where the top hinge really is, below the head
    hangs = cut - marks[0]  # the top edge of the door, below the head
    values = results_of("hinge-layout", **entries_of(door, 3), measured_head=hangs)

    assert cut - exactly(values["head_move"]) == row(values["frame_marks"])[0]
    assert row(values["frame_as_hung"]) == [hangs + mark for mark in marks]
